package org.roofmaths.drawing;

/**
 * How an area is filled; each has its own hatch, so that it reads without colour.
 *
 * @since 0.1
 */
public enum Fill {
    /** Not at all: what lies behind shows. */
    NONE("", ""),
    /** White: what lies behind is covered. */
    WHITE("", ""),
    /** Slanting lines: a piece cut to size, or timber cut through. */
    SLANTED("slanted", "M-1 1L1 -1M0 3L3 0M2 4L4 2"),
    /** Crossing lines: masonry cut through. */
    CROSSED("crossed", "M-1 1L1 -1M0 3L3 0M2 4L4 2M-1 2L1 4M0 0L3 3M2 -1L4 1"),
    /** Dots: a part unit made so. */
    DOTTED("dotted", "M0.6 0.75h0.35M2.1 0.75h0.35M0.6 2.25h0.35M2.1 2.25h0.35");

    private final String id;
    private final String hatch;

    Fill(String id, String hatch) {
        this.id = id;
        this.hatch = hatch;
    }

    boolean isHatched() {
        return !id.isEmpty();
    }

    String id() {
        return id;
    }

    String hatch() {
        return hatch;
    }
}
