package org.roofmaths.rules;

/**
 * How well an underlay lets vapour through: the column {@code underlay} of the rule data.
 *
 * @since 0.1
 */
public enum UnderlayClass {
    /** Lets little vapour through (HR). */
    HIGH_RESISTANCE,
    /** Lets vapour through (LR). */
    LOW_RESISTANCE;

    /** Returns the word of the rule data, such as {@code high-resistance}. */
    @Override
    public String toString() {
        return Words.of(this);
    }
}
