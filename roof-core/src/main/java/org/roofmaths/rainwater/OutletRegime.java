package org.roofmaths.rainwater;

/**
 * How water enters an outlet.
 *
 * @since 0.1
 */
public enum OutletRegime {
    /** Over its rim, while the head is at most half the diameter. */
    WEIR("weir"),
    /** Through the drowned hole, under a greater head. */
    ORIFICE("orifice");

    private final String word;

    OutletRegime(String word) {
        this.word = word;
    }

    /** Returns the word. */
    @Override
    public String toString() {
        return word;
    }
}
