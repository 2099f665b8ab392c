package org.roofmaths.rules;

/**
 * Whether a tile hangs by nibs: the column {@code nibs} of the rule data.
 *
 * @since 0.1
 */
public enum Nibs {
    /** With nibs. */
    NIBBED,
    /** Without nibs. */
    NIBLESS;

    /** Returns the word of the rule data, such as {@code nibbed}. */
    @Override
    public String toString() {
        return Words.of(this);
    }
}
