package org.roofmaths.covering;

/**
 * What a covering unit is, as rule tables tell them apart: its material and its shape.
 *
 * @since 0.1
 */
public enum UnitKind {
    /** Concrete tile whose sides lock together, flat or profiled. */
    CONCRETE_SINGLE_LAP_TILE("concrete single-lap tile", Lap.SINGLE),
    /** Clay tile whose sides lock together, flat or profiled. */
    CLAY_SINGLE_LAP_TILE("clay single-lap tile", Lap.SINGLE),
    /** Clay tile of S-shaped section whose sides overlap without a lock. */
    CLAY_PANTILE("clay pantile", Lap.SINGLE),
    /** Small flat concrete tile laid in double lap. */
    CONCRETE_PLAIN_TILE("concrete plain tile", Lap.DOUBLE),
    /** Small flat clay tile laid in double lap. */
    CLAY_PLAIN_TILE("clay plain tile", Lap.DOUBLE),
    /** Natural slate, sized or random. */
    NATURAL_SLATE("natural slate", Lap.DOUBLE),
    /** Fibre-cement slate. */
    FIBRE_CEMENT_SLATE("fibre-cement slate", Lap.DOUBLE),
    /** Flat concrete slate laid in double lap. */
    CONCRETE_SLATE("concrete slate", Lap.DOUBLE),
    /** Stone slate, mostly laid in courses that grow shorter up the slope. */
    STONE_SLATE("stone slate", Lap.DOUBLE);

    private final String words;
    private final Lap lap;

    UnitKind(String words, Lap lap) {
        this.words = words;
        this.lap = lap;
    }

    /** Returns whether units of this kind are laid in single or double lap. */
    public Lap lap() {
        return lap;
    }

    /** Returns the kind in words, such as {@code clay plain tile}. */
    @Override
    public String toString() {
        return words;
    }
}
