package org.roofmaths.roof;

/**
 * The left or the right end of a face, as seen from outside looking up the slope.
 *
 * @since 0.1
 */
public enum End {
    /** The left end, looking up the slope from outside. */
    LEFT("left"),
    /** The right end, looking up the slope from outside. */
    RIGHT("right");

    private final String word;

    End(String word) {
        this.word = word;
    }

    /** Returns the other end. */
    public End opposite() {
        return this == LEFT ? RIGHT : LEFT;
    }

    /** Returns the lower-case word used in names and text, such as {@code left}. */
    @Override
    public String toString() {
        return word;
    }
}
