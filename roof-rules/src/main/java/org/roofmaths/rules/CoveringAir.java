package org.roofmaths.rules;

/**
 * Whether air passes through the joints of the covering: the column {@code covering_air} of the rule data.
 *
 * @since 0.1
 */
public enum CoveringAir {
    /** Air passes: tiles and slates with open joints. */
    AIR_OPEN,
    /** Air hardly passes: close-fitting units. */
    AIR_TIGHT;

    /** Returns the word of the rule data, such as {@code air-open}. */
    @Override
    public String toString() {
        return Words.of(this);
    }
}
