package org.roofmaths.rules;

/**
 * How a nail is driven: the column {@code nailing} of the rule data.
 *
 * @since 0.1
 */
public enum Nailing {
    /** By hand. */
    HAND,
    /** By a nail gun. */
    GUN;

    /** Returns the word of the rule data, such as {@code hand}. */
    @Override
    public String toString() {
        return Words.of(this);
    }
}
