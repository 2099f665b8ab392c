package org.roofmaths.order;

/**
 * Why more is ordered than will be laid.
 *
 * @since 0.1
 */
public enum Cause {
    /** Pieces cut off that fit nowhere else. */
    CUTTING("cutting"),
    /** Pieces broken on the way, on the scaffold and in the hand. */
    BREAKAGE("breakage"),
    /** Pieces kept for later repairs. */
    RESERVE("reserve"),
    /** Anything else. */
    OTHER("other causes");

    private final String word;

    Cause(String word) {
        this.word = word;
    }

    /** Returns the cause in a word, such as {@code breakage}. */
    @Override
    public String toString() {
        return word;
    }
}
