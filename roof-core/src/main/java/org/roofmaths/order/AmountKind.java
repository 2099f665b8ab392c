package org.roofmaths.order;

/**
 * What an amount is counted in: pieces, metres, square metres or kilograms.
 *
 * @since 0.1
 */
public enum AmountKind {
    /** Tiles, nails, vents: counted. */
    PIECES("pieces", ""),
    /** Battens, underlay, gutter: by length. */
    LENGTH("a length", " m"),
    /** Boards, membranes: by area. */
    AREA("an area", " m²"),
    /** Lead, mortar: by mass. */
    MASS("a mass", " kg");

    private final String words;
    private final String unit;

    AmountKind(String words, String unit) {
        this.words = words;
        this.unit = unit;
    }

    /** Returns the unit as it follows a number, with its space; nothing for pieces. */
    String unit() {
        return unit;
    }

    /** Returns the kind in words, such as {@code a length}. */
    @Override
    public String toString() {
        return words;
    }
}
