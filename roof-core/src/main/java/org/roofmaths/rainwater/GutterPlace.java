package org.roofmaths.rainwater;

/**
 * Where a gutter lies, which decides whether it is worked out here at all.
 *
 * @since 0.1
 */
public enum GutterPlace {
    /** Along the eaves, open at its front edge: what overflows falls outside. */
    EAVES("eaves gutter"),
    /** Between two slopes. */
    VALLEY("valley gutter"),
    /** Behind a parapet. */
    PARAPET("parapet gutter"),
    /** Within the building. */
    INTERNAL("internal gutter");

    private final String words;

    GutterPlace(String words) {
        this.words = words;
    }

    /** Returns the place in words. */
    @Override
    public String toString() {
        return words;
    }
}
