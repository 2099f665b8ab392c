package org.roofmaths.rules;

/**
 * Whether the plan of a roof is a simple rectangle: the column {@code plan_shape} of the rule data.
 *
 * @since 0.1
 */
public enum PlanShape {
    /** A simple rectangle. */
    RECTANGLE,
    /** Any other plan. */
    IRREGULAR;

    /** Returns the word of the rule data, such as {@code rectangle}. */
    @Override
    public String toString() {
        return Words.of(this);
    }
}
