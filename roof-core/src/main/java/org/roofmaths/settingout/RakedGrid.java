package org.roofmaths.settingout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.covering.PartUnit;
import org.roofmaths.covering.SingleLapUnit;
import org.roofmaths.units.Length;

/**
 * The places that units take on a face where an end rakes: a grid without end, struck from a square end of the face or from a perp
 * anywhere.
 *
 * @param anchor where the grid is struck from
 * @param start the edge of the first unit there, to the right of the left wall line
 */
record RakedGrid(CoveringUnit unit, Anchor anchor, Length start) {
    /** Where a grid is struck from. */
    enum Anchor {
        LEFT,
        RIGHT,
        PERP
    }

    Length step() {
        return unit.coverWidth();
    }

    private Length width() {
        return unit instanceof DoubleLapUnit d ? d.width() : unit.coverWidth();
    }

    private Length joint() {
        return unit instanceof DoubleLapUnit d ? d.joint() : Length.ZERO;
    }

    /** The places of one course that reach into a stretch, from left to right; in double lap odd and even courses are half a unit apart. */
    List<Piece> places(boolean odd, Length from, Length to) {
        if (anchor == Anchor.PERP) {
            Length first = odd ? start : start.plus(step().dividedBy(2));
            return run(unit instanceof DoubleLapUnit ? first : start, from, to);
        }
        List<Piece> pieces = new ArrayList<>();
        Optional<Piece> edge = edge(odd);
        Length at = start;
        if (edge.isPresent()) {
            pieces.add(edge.orElseThrow());
            Length taken = edge.orElseThrow().width().plus(joint());
            at = anchor == Anchor.LEFT ? at.plus(taken) : at.minus(taken);
        }
        if (anchor == Anchor.LEFT) {
            for (long i = 0; at.plus(step().times(i)).isShorterThan(to); i++) {
                pieces.add(new Piece(PieceKind.WHOLE, at.plus(step().times(i)), width()));
            }
            return pieces;
        }
        for (long i = 0; at.minus(step().times(i)).isLongerThan(from); i++) {
            pieces.add(new Piece(PieceKind.WHOLE, at.minus(step().times(i)).minus(width()), width()));
        }
        Collections.reverse(pieces);
        return pieces;
    }

    private List<Piece> run(Length first, Length from, Length to) {
        long skipped = Math.floorDiv(from.minus(first).toNanometres(), step().toNanometres());
        List<Piece> pieces = new ArrayList<>();
        for (Length at = first.plus(step().times(skipped)); at.isShorterThan(to); at = at.plus(step())) {
            pieces.add(new Piece(PieceKind.WHOLE, at, width()));
        }
        return pieces;
    }

    /** The piece at the square end: a verge unit, or what keeps the bond. */
    private Optional<Piece> edge(boolean odd) {
        if (unit instanceof SingleLapUnit tile) {
            return anchor == Anchor.LEFT
                    ? tile.leftVergeUnit().map(verge -> new Piece(PieceKind.LEFT_VERGE, start, verge.width()))
                    : tile.rightVergeUnit()
                            .map(verge -> new Piece(PieceKind.RIGHT_VERGE, start.minus(verge.width()), verge.width()));
        }
        if (odd) {
            return Optional.empty();
        }
        Optional<PartUnit> wide = ((DoubleLapUnit) unit).unitAndAHalf();
        Length width = wide.map(PartUnit::width).orElse(width().dividedBy(2));
        return Optional.of(new Piece(
                wide.isPresent() ? PieceKind.UNIT_AND_A_HALF : PieceKind.HALF,
                anchor == Anchor.LEFT ? start : start.minus(width),
                width));
    }
}
