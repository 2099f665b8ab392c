package org.roofmaths.roof.internal;

import java.util.Arrays;

/**
 * Why an outline has no roof, and where: a kind, the edges that have to do with it, and a place on plan.
 * The words for a person are made by the caller, who knows the edges' names.
 */
public final class Fault {
    /** What is wrong. The edges named with each kind are in {@link #edges()}, in the order given here. */
    public enum Kind {
        /** A ring of fewer than three corners: its first edge, or none. */
        TOO_FEW_CORNERS,
        /** The plan is wider than the solver's whole numbers allow. */
        TOO_LARGE,
        /** A slope that is not a number, not above zero, or too flat or too steep to be carried exactly: the edge. */
        SLOPE_OUT_OF_RANGE,
        /** A corner repeated, or an edge shorter than the clearance: the edge. */
        ZERO_EDGE,
        /** The ring turns back on itself at a corner: the edge before and the edge after. */
        SPIKE,
        /** Two edges cross: both. */
        CROSSING,
        /** Two edges that are not neighbours touch, or come nearer than the clearance: both. */
        TOUCHING,
        /** A courtyard lies outside the outline or inside another courtyard: its first edge. */
        COURTYARD_OUTSIDE,
        /** No edge has a slope. */
        NO_EAVES,
        /** Neighbours in one line with two slopes, one of which would have a face of no area: both. */
        UNEQUAL_IN_LINE,
        /** Two eaves that share a corner but not a level: both. */
        LEVELS_AT_CORNER,
        /** A roof rises to an eaves before that eaves' own level: the eaves, then the edges that reach it. */
        EAVES_OVERRUN,
        /** A part of the plan is shut in by gables, so that no eaves ever reaches it: the edges around it. */
        NEVER_COVERED,
        /** The result did not pass its own check, so there is none: the edge where it was noticed. */
        NOT_PROVED
    }

    private final Kind kind;
    private final int[] edges;
    private final double x;
    private final double y;

    Fault(Kind kind, double x, double y, int... edges) {
        this.kind = kind;
        this.x = x;
        this.y = y;
        this.edges = edges.clone();
    }

    public Kind kind() {
        return kind;
    }

    /** The edges concerned, numbered as the caller gave them through all rings. */
    public int[] edges() {
        return edges.clone();
    }

    /** The place in metres, in the caller's own axes. */
    public double x() {
        return x;
    }

    public double y() {
        return y;
    }

    @Override
    public String toString() {
        return kind + " " + Arrays.toString(edges) + " at (" + x + ", " + y + ")";
    }
}
