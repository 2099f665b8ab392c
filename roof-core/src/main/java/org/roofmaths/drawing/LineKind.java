package org.roofmaths.drawing;

/**
 * What a line of a drawing means; each kind is drawn in its own width and dashes, so that it reads without colour.
 *
 * @since 0.1
 */
public enum LineKind {
    /** The eaves. */
    EAVES("eaves", 0.7, ""),
    /** A verge. */
    VERGE("verge", 0.5, ""),
    /** A ridge or mono ridge. */
    RIDGE("ridge", 0.8, "5 1"),
    /** A hip. */
    HIP("hip", 0.5, "4 1 1 1"),
    /** A valley. */
    VALLEY("valley", 0.5, "2 1"),
    /** An edge against a wall. */
    ABUTMENT("edge against a wall", 0.8, "3 1 0.8 1 0.8 1"),
    /** A break of slope. */
    BREAK("break of slope", 0.35, "6 1.5"),
    /** The outline of a thing that is cut through or laid flat. */
    OUTLINE("outline", 0.4, ""),
    /** A unit of the covering as it shows. */
    UNIT("unit as it shows", 0.13, ""),
    /** What lies under something else. */
    HIDDEN("hidden underneath", 0.2, "1 0.7"),
    /** The line of a batten that is marked: its top edge or the nail line. */
    BATTEN("line of a batten", 0.25, "3 1"),
    /** A named line that is measured from, such as the fascia line. */
    DATUM("wall line or other line measured from", 0.25, "6 1 1 1"),
    /** A line along which sheet is folded. */
    FOLD("fold", 0.25, "2 1.2"),
    /** Sheet underlay. */
    UNDERLAY("underlay", 0.3, "0.4 0.9"),
    /** Metal sheet seen from its edge. */
    METAL("metal sheet", 1, ""),
    /** The way in which water runs. */
    FALL("fall", 0.3, ""),
    /** The lines of a dimension. */
    DIMENSION("dimension", 0.13, "");

    private final String words;
    private final double width;
    private final String dashes;

    LineKind(String words, double width, String dashes) {
        this.words = words;
        this.width = width;
        this.dashes = dashes;
    }

    /** Returns the width on paper, in millimetres. */
    double width() {
        return width;
    }

    /** Returns the lengths of dashes and gaps on paper, in millimetres; empty for a whole line. */
    String dashes() {
        return dashes;
    }

    /** Returns the words of the legend. */
    @Override
    public String toString() {
        return words;
    }
}
