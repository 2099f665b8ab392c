package org.roofmaths.rules;

/**
 * The form of a roof, as ventilation rows see it: the column {@code roof_form} of the rule data.
 *
 * @since 0.1
 */
public enum RoofForm {
    /** Two slopes to a ridge. */
    DUO_PITCH,
    /** One slope with a free top edge. */
    MONO_PITCH,
    /** One slope against a wall. */
    LEAN_TO,
    /** Two slopes a side. */
    MANSARD,
    /** Roof of joists with the ceiling fixed to them. */
    JOIST_ROOF;

    /** Returns the word of the rule data, such as {@code duo-pitch}. */
    @Override
    public String toString() {
        return Words.of(this);
    }
}
