package org.roofmaths.order;

/**
 * A side of a laid face, as seen from outside looking up the slope.
 *
 * @since 0.1
 */
public enum FaceSide {
    /** The lowest courses. */
    EAVES("eaves"),
    /** The highest courses, at a ridge or a top abutment. */
    TOP("top"),
    /** The left end of every course. */
    LEFT("left"),
    /** The right end of every course. */
    RIGHT("right");

    private final String word;

    FaceSide(String word) {
        this.word = word;
    }

    /** Returns the side in a word. */
    @Override
    public String toString() {
        return word;
    }
}
