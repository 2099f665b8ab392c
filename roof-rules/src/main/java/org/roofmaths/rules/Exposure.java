package org.roofmaths.rules;

/**
 * How hard driving rain reaches the site: the column {@code exposure} of the rule data.
 *
 * @since 0.1
 */
public enum Exposure {
    /** Sheltered. */
    SHELTERED,
    /** Moderate. */
    MODERATE,
    /** Severe. */
    SEVERE,
    /** Very severe. */
    VERY_SEVERE;

    /** Returns the word of the rule data, such as {@code sheltered}. */
    @Override
    public String toString() {
        return Words.of(this);
    }
}
