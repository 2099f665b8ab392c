package org.roofmaths.rules;

/**
 * Whether the ceiling lies level or follows the slope: the column {@code ceiling_form} of the rule data.
 *
 * @since 0.1
 */
public enum CeilingForm {
    /** Level. */
    LEVEL,
    /** Along the slope. */
    ALONG_SLOPE;

    /** Returns the word of the rule data, such as {@code level}. */
    @Override
    public String toString() {
        return Words.of(this);
    }
}
