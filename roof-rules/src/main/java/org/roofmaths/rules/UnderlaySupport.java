package org.roofmaths.rules;

/**
 * What lies under an underlay: the column {@code support} of the rule data.
 *
 * @since 0.1
 */
public enum UnderlaySupport {
    /** Draped over rafters or counter-battens. */
    UNSUPPORTED,
    /** On boarding or sarking. */
    SUPPORTED;

    /** Returns the word of the rule data, such as {@code unsupported}. */
    @Override
    public String toString() {
        return Words.of(this);
    }
}
