package org.roofmaths.drawing;

/**
 * Which way a dimension measures, and on which side of what it measures it stands.
 *
 * @since 0.1
 */
public enum DimensionSide {
    /** Measures level, and stands above. */
    ABOVE,
    /** Measures level, and stands below. */
    BELOW,
    /** Measures plumb, and stands to the left. */
    LEFT,
    /** Measures plumb, and stands to the right. */
    RIGHT,
    /** Measures from point to point, and stands to the left of the way from the first to the second. */
    LEFT_OF_THE_WAY,
    /** Measures from point to point, and stands to the right of the way from the first to the second. */
    RIGHT_OF_THE_WAY
}
