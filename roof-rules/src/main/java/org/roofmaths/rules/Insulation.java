package org.roofmaths.rules;

/**
 * Where the insulation lies: the column {@code insulation} of the rule data.
 *
 * @since 0.1
 */
public enum Insulation {
    /** At the level ceiling: a cold roof. */
    AT_CEILING,
    /** Between or over the rafters: a warm roof. */
    AT_RAFTERS;

    /** Returns the word of the rule data, such as {@code at-ceiling}. */
    @Override
    public String toString() {
        return Words.of(this);
    }
}
