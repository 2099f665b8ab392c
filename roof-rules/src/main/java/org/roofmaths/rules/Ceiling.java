package org.roofmaths.rules;

/**
 * How tight the ceiling under a roof is: the column {@code ceiling} of the rule data.
 *
 * @since 0.1
 */
public enum Ceiling {
    /** An ordinary ceiling. */
    NORMAL,
    /** A ceiling sealed against air and vapour. */
    SEALED;

    /** Returns the word of the rule data, such as {@code normal}. */
    @Override
    public String toString() {
        return Words.of(this);
    }
}
