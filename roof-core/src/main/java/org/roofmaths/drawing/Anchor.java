package org.roofmaths.drawing;

/**
 * Which part of a text stands at its point.
 *
 * @since 0.1
 */
public enum Anchor {
    /** The text starts there. */
    START("start"),
    /** The middle of the text is there. */
    MIDDLE("middle"),
    /** The text ends there. */
    END("end");

    private final String word;

    Anchor(String word) {
        this.word = word;
    }

    /** Returns the word as the picture format writes it. */
    @Override
    public String toString() {
        return word;
    }
}
