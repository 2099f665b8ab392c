package org.roofmaths.rules;

/**
 * Whether a unit has the sizes and geometry that its product standard asks: the column {@code unit_geometry} of the rule data.
 *
 * @since 0.1
 */
public enum UnitGeometry {
    /** Inside the standard's sizes and geometry. */
    WITHIN_STANDARD,
    /** Outside them, such as hand-made units. */
    OUTSIDE_STANDARD;

    /** Returns the word of the rule data, such as {@code within-standard}. */
    @Override
    public String toString() {
        return Words.of(this);
    }
}
