package org.roofmaths.settingout;

/**
 * Which line of a batten a mark is for.
 *
 * @since 0.1
 */
public enum BattenEdge {
    /** The top edge, over which nibs hang. */
    TOP_EDGE("top edge of the batten"),
    /** The line of the nail holes, along the middle of the batten. */
    NAIL_LINE("nail line");

    private final String words;

    BattenEdge(String words) {
        this.words = words;
    }

    /** Returns the line in words, such as {@code top edge of the batten}. */
    @Override
    public String toString() {
        return words;
    }
}
