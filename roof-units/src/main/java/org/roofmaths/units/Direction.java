package org.roofmaths.units;

/**
 * How a distance at a sloping face was measured. The same 50 mm is 61 mm on a slope of 35° if it was measured level.
 *
 * @since 0.1
 */
public enum Direction {
    /** Measured level, with a spirit level, at right angles to the eaves. */
    LEVEL("level"),
    /** Measured plumb, straight up or down. */
    PLUMB("plumb"),
    /** Measured along the slope, straight up or down it. */
    ON_SLOPE("on the slope"),
    /** Measured at right angles to the face, like a thickness. */
    SQUARE_TO_SLOPE("square to the slope");

    private final String words;

    Direction(String words) {
        this.words = words;
    }

    /**
     * Returns the direction as an {@link Offset} prints it, for example {@code on the slope}.
     *
     * @return the words
     * @since 0.1
     */
    public String words() {
        return words;
    }
}
