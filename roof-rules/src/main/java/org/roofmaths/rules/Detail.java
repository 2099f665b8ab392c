package org.roofmaths.rules;

/**
 * The place on a roof that a row speaks of: the column {@code detail} of the rule data.
 *
 * @since 0.1
 */
public enum Detail {
    /** Lower edge. */
    EAVES,
    /** Stiff tray that carries the underlay to the gutter. */
    EAVES_TRAY,
    /** Sloping free edge. */
    VERGE,
    /** Top meeting of two slopes. */
    RIDGE,
    /** Outer sloping meeting of two slopes. */
    HIP,
    /** Inner sloping meeting of two slopes. */
    VALLEY,
    /** Free top edge of a single slope. */
    TOP_EDGE,
    /** Where the roof meets a wall, top or side. */
    ABUTMENT,
    /** Where a side of the roof meets a wall. */
    SIDE_ABUTMENT,
    /** The face of a wall. */
    WALL,
    /** Flashing along a top edge or the front of a stack. */
    APRON,
    /** Flashing that covers another metal or the units at a top abutment. */
    COVER_FLASHING,
    /** Flashing cut to the brick joints above a sloping edge. */
    STEP_FLASHING,
    /** One sheet that steps and covers the tiles. */
    STEP_AND_COVER,
    /** Metal piece interleaved at each course beside a wall. */
    SOAKER,
    /** Sunk channel at a side wall. */
    SECRET_GUTTER,
    /** Lined channel behind a stack. */
    BACK_GUTTER,
    /** Shaped piece over a meeting of ridge and slope. */
    LEAD_SADDLE,
    /** The leg of a flashing up the wall. */
    UP_THE_WALL,
    /** The leg of a flashing on the roof. */
    ON_THE_ROOF,
    /** Flashing of a pipe or vent. */
    VENT_FLASHING,
    /** Edge of a flat built-up roof. */
    BUILT_UP_ROOF;

    /** Returns the word of the rule data, such as {@code eaves}. */
    @Override
    public String toString() {
        return Words.of(this);
    }
}
