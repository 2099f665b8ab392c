package org.roofmaths.settingout;

/**
 * How a width is filled with units.
 *
 * @since 0.1
 */
public enum Arrangement {
    /** Whole units only; in double lap with units-and-a-half at the ends, to keep the bond. */
    WHOLE_UNITS("whole units", 0),
    /** Whole units and a half unit; in double lap halves at the ends of every other course. */
    HALF_UNIT("a half unit", 0),
    /** One piece cut to width at one end. */
    ONE_CUT("a cut at one end", 1),
    /** One half unit and one piece cut to width, so that the cut piece is not too narrow. */
    HALF_AND_CUT("a half unit and a cut", 1),
    /** One piece cut to width at each end, so that neither is too narrow. */
    CUT_AT_BOTH_ENDS("a cut at both ends", 2),
    /** Every course cut to a hip, a valley or a verge out of square. */
    RAKED("cut to raking ends", 1),
    /** A cut that is narrower than allowed, because nothing else fits. */
    SLIVER("a sliver", 1);

    private final String words;
    private final int cuts;

    Arrangement(String words, int cuts) {
        this.words = words;
        this.cuts = cuts;
    }

    /** Returns how many pieces of a course are cut to width. */
    public int cuts() {
        return cuts;
    }

    /** Returns the way in words, such as {@code a half unit}. */
    @Override
    public String toString() {
        return words;
    }
}
