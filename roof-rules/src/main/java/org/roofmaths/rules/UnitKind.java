package org.roofmaths.rules;

/**
 * Which kind of covering unit a row speaks of: the column {@code unit_kind} of the rule data.
 *
 * @since 0.1
 */
public enum UnitKind {
    /** Small flat clay tile in double lap. */
    CLAY_PLAIN_TILE,
    /** Small flat concrete tile in double lap. */
    CONCRETE_PLAIN_TILE,
    /** Clay tile that covers the next course only: interlocking tile, pantile. */
    CLAY_SINGLE_LAP_TILE,
    /** Concrete tile that covers the next course only. */
    CONCRETE_SINGLE_LAP_TILE,
    /** Split slate, sized or random. */
    NATURAL_SLATE,
    /** Stone split thick, laid like slate. */
    STONE_SLATE,
    /** Made slate of fibre cement. */
    FIBRE_CEMENT_SLATE,
    /** Made slate of concrete, double lap. */
    CONCRETE_SLATE,
    /** Shingle of asphalt. */
    ASPHALT_SHINGLE,
    /** Sawn wood shingle. */
    WOOD_SHINGLE,
    /** Split wood shake. */
    WOOD_SHAKE,
    /** Metal shingle. */
    METAL_SHINGLE,
    /** Pressed metal tile. */
    METAL_TILE,
    /** Profiled metal sheet. */
    METAL_SHEET;

    /** Returns the word of the rule data, such as {@code clay-plain-tile}. */
    @Override
    public String toString() {
        return Words.of(this);
    }
}
