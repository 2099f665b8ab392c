package org.roofmaths.loads;

/**
 * Whether snow can slide off a slope.
 *
 * @since 0.1
 */
public enum SnowHold {
    /** Nothing holds the snow: it slides off a steep slope. */
    SLIDES_OFF("slides off"),
    /** A guard, a parapet or another obstruction holds the snow at the eaves. */
    HELD("is held");

    private final String words;

    SnowHold(String words) {
        this.words = words;
    }

    /** Returns it in words. */
    @Override
    public String toString() {
        return words;
    }
}
