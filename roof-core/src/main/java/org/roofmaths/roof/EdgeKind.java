package org.roofmaths.roof;

/**
 * What kind of line bounds a face or lies between two faces.
 *
 * @since 0.1
 */
public enum EdgeKind {
    /** The level lower edge of a face, at the fascia line. */
    EAVES("eaves"),
    /** The sloping free edge of a face over a gable wall. */
    VERGE("verge"),
    /**
     * The line along the top in which two faces meet that fall away from it to opposite sides; level unless the plan is
     * skew.
     */
    RIDGE("ridge"),
    /** The level free top edge of a single slope, with no wall above it. */
    MONO_RIDGE("mono ridge"),
    /** The sloping outer line in which two faces meet, over an outward corner of the eaves. */
    HIP("hip"),
    /** The inner line in which two faces meet and towards which both drain. */
    VALLEY("valley"),
    /** The level top edge of a face against a wall that goes on above it. */
    TOP_ABUTMENT("top abutment"),
    /** The sloping edge of a face against a wall beside it. */
    SIDE_ABUTMENT("side abutment"),
    /** The level line in which a slope goes on upwards at another pitch. */
    BREAK_OF_SLOPE("break of slope");

    private final String words;

    EdgeKind(String words) {
        this.words = words;
    }

    /** Tells whether two faces meet in such a line. */
    public boolean isBetweenFaces() {
        return this == RIDGE || this == HIP || this == VALLEY || this == BREAK_OF_SLOPE;
    }

    /** Returns the lower-case words used in names and text, such as {@code top abutment}. */
    @Override
    public String toString() {
        return words;
    }
}
