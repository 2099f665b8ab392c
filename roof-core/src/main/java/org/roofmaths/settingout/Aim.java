package org.roofmaths.settingout;

/**
 * What a layout should strive for, where several would fit.
 *
 * @since 0.1
 */
public enum Aim {
    /** No cut and no half unit, whole units only. */
    NO_CUT("no cut"),
    /** As few cut pieces as can be. */
    FEWEST_CUTS("fewest cuts"),
    /** The cover width that the unit is meant to be laid at. */
    NOMINAL_COVER("nominal cover"),
    /** Overhangs and gaps as wanted. */
    LEAST_CHANGE("least change"),
    /** As few courses as can be: the greatest gauge that fits. */
    FEWEST_COURSES("fewest courses"),
    /** As much headlap as can be: the least gauge that fits, where the unit has a least gauge. */
    LARGEST_HEADLAP("largest headlap");

    private final String words;

    Aim(String words) {
        this.words = words;
    }

    /** Returns the aim in words, such as {@code fewest cuts}. */
    @Override
    public String toString() {
        return words;
    }
}
