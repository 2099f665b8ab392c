package org.roofmaths.rules;

/**
 * Whether a vapour retarder lies on the warm side: the column {@code vapour_retarder} of the rule data.
 *
 * @since 0.1
 */
public enum VapourRetarder {
    /** There is one, of the class the row names. */
    WARM_SIDE,
    /** There is none. */
    NONE;

    /** Returns the word of the rule data, such as {@code warm-side}. */
    @Override
    public String toString() {
        return Words.of(this);
    }
}
