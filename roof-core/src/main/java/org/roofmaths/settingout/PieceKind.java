package org.roofmaths.settingout;

/**
 * What one piece of a course is.
 *
 * @since 0.1
 */
public enum PieceKind {
    /** An ordinary unit. */
    WHOLE("whole unit", "whole units"),
    /** A unit made half as wide, or a double-lap unit cut in half for the bond. */
    HALF("half unit", "half units"),
    /** A double-lap unit made half as wide again. */
    UNIT_AND_A_HALF("unit-and-a-half", "units-and-a-half"),
    /** A piece cut from a whole unit. */
    CUT("cut unit", "cut units"),
    /** A piece cut from a unit-and-a-half. */
    CUT_UNIT_AND_A_HALF("cut unit-and-a-half", "cut units-and-a-half"),
    /** The unit made for a left-hand verge. */
    LEFT_VERGE("left-hand verge unit", "left-hand verge units"),
    /** The unit made for a right-hand verge. */
    RIGHT_VERGE("right-hand verge unit", "right-hand verge units");

    private final String word;
    private final String words;

    PieceKind(String word, String words) {
        this.word = word;
        this.words = words;
    }

    /** Tells whether the piece is cut to width. */
    public boolean isCut() {
        return this == CUT || this == CUT_UNIT_AND_A_HALF;
    }

    /** Returns the words for a number of such pieces, such as {@code whole units}. */
    public String words(long count) {
        return count == 1 ? word : words;
    }

    /** Returns the word for one such piece, such as {@code half unit}. */
    @Override
    public String toString() {
        return word;
    }
}
