package org.roofmaths.rules;

/**
 * The metal of a flashing: the column {@code metal} of the rule data.
 *
 * @since 0.1
 */
public enum Metal {
    /** Lead sheet. */
    LEAD,
    /** Aluminium. */
    ALUMINIUM,
    /** Zinc alloy. */
    ZINC,
    /** Copper. */
    COPPER,
    /** Stainless steel. */
    STAINLESS_STEEL,
    /** Galvanised steel. */
    GALVANISED_STEEL;

    /** Returns the word of the rule data, such as {@code lead}. */
    @Override
    public String toString() {
        return Words.of(this);
    }
}
