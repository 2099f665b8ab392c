package org.roofmaths.roof.internal;

/** How a line of the roof came about; what it is called in the trade depends on the faces beside it too. */
public enum ArcKind {
    /** Left by an outward corner: a hip, or a verge if one face is a gable. */
    OUTWARD,
    /** Left by an inward corner: a valley, or the foot of a wall if one face is a gable. */
    INWARD,
    /** Level, where two faces of opposite direction met along a line. */
    RIDGE,
    /** Level, where a steeper face ends under a flatter one. */
    BREAK
}
