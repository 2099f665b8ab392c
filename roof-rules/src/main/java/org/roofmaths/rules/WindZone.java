package org.roofmaths.rules;

/**
 * The wind zone of a New Zealand site: the column {@code wind_zone} of the rule data.
 *
 * @since 0.1
 */
public enum WindZone {
    /** Low. */
    LOW,
    /** Medium. */
    MEDIUM,
    /** High. */
    HIGH,
    /** Very high. */
    VERY_HIGH,
    /** Extra high. */
    EXTRA_HIGH;

    /** Returns the word of the rule data, such as {@code low}. */
    @Override
    public String toString() {
        return Words.of(this);
    }
}
