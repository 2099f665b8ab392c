package org.roofmaths.rules;

/**
 * Which way a figure of a document limits: at least, at most, within a range, or as printed.
 *
 * @since 0.1
 */
public enum Limit {
    /** The figure is the least allowed; equal is allowed. */
    AT_LEAST("at least"),
    /** The figure is the greatest allowed; equal is allowed. */
    AT_MOST("at most"),
    /** The figure is a range; both ends are allowed. */
    WITHIN("within"),
    /** The figure limits nothing by itself: a size, a word, a constant. */
    AS_PRINTED("as printed");

    private final String words;

    Limit(String words) {
        this.words = words;
    }

    /** Returns the words, such as {@code at least}. */
    @Override
    public String toString() {
        return words;
    }
}
