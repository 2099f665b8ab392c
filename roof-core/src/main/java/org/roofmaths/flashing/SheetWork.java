package org.roofmaths.flashing;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.roofmaths.problem.Problem;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;

/** What every flashing comes down to: pieces, girth, length, area, mass; and what a person should know about it. */
record SheetWork(
        Length girth, Length metalLength, Area area, Mass mass, List<FlashingPiece> pieces, List<Problem> problems)
        implements Serializable {
    private static final long serialVersionUID = 1L;

    /** Pieces that lap sideways, by a lap that is asked; and pieces that lap up a slope, by a lap that was worked out. */
    private static final Laps SIDEWAYS = new Laps(FlashingDemand.SIDE_LAP);

    private static final Laps UP_THE_SLOPE = new Laps(LeadLap.LAP);

    private record Laps(Formula pieces, Formula length) {
        Laps(Term<Length> lap) {
            this(
                    Formula.of(
                            Flashing.PIECES,
                            Flashing.METAL_RUN
                                    .minus(lap)
                                    .timesToCover(FlashingDemand.LONGEST_PIECE.minus(lap))
                                    .greatest(Expression.number(1))),
                    Formula.of(
                            Flashing.METAL_LENGTH,
                            Flashing.METAL_RUN.plus(Flashing.PIECES.minus(1).times(lap))));
        }
    }

    private static final Formula LENGTH_OF_EACH =
            Formula.of(Flashing.PIECE_LENGTH, Flashing.METAL_LENGTH.over(Flashing.PIECES));
    private static final Formula AREA_OF_RUN =
            Formula.of(Flashing.METAL_AREA, Flashing.METAL_LENGTH.times(Flashing.GIRTH));
    private static final Formula MASS_OF_AREA =
            Formula.of(Flashing.METAL_MASS, Flashing.METAL_AREA.times(MetalSheet.AREAL_MASS));
    private static final Formula WEDGES_ALONG = Formula.of(
            Flashing.WEDGES,
            Flashing.METAL_RUN.timesToCover(FlashingDemand.WEDGE_SPACING).plus(1));
    private static final Formula CLIPS_ALONG = Formula.of(
            Flashing.CLIPS,
            Flashing.METAL_RUN.timesToCover(FlashingDemand.CLIP_SPACING).plus(1));

    SheetWork {
        pieces = List.copyOf(pieces);
        problems = List.copyOf(problems);
    }

    /** Cuts a run, already recorded with its girth, into equal pieces that lap sideways. */
    static SheetWork along(
            Recorder r,
            String name,
            Length run,
            Length girth,
            Figure<Length> sideLap,
            Figure<Length> longestPiece,
            MetalSheet sheet,
            List<Problem> problems) {
        Length lap = r.use(FlashingDemand.SIDE_LAP, sideLap);
        return along(r, SIDEWAYS, name, run, girth, lap, longestPiece, sheet, problems);
    }

    /** Cuts a run, already recorded with its girth and the lap of its slope, into equal pieces that lap up the slope. */
    static SheetWork upTheSlope(
            Recorder r,
            String name,
            Length run,
            Length girth,
            Length lap,
            Figure<Length> longestPiece,
            MetalSheet sheet,
            List<Problem> problems) {
        return along(r, UP_THE_SLOPE, name, run, girth, lap, longestPiece, sheet, problems);
    }

    private static SheetWork along(
            Recorder r,
            Laps laps,
            String name,
            Length run,
            Length girth,
            Length lap,
            Figure<Length> longestPiece,
            MetalSheet sheet,
            List<Problem> problems) {
        Length longest = r.use(FlashingDemand.LONGEST_PIECE, longestPiece);
        int count = r.record(
                Flashing.PIECES, StrictMath.max(1, Sizes.toCover(run.minus(lap), longest.minus(lap))), laps.pieces());
        Length total = r.record(Flashing.METAL_LENGTH, run.plus(lap.times(count - 1L)), laps.length());
        Length each = r.record(Flashing.PIECE_LENGTH, total.dividedBy(count), LENGTH_OF_EACH);
        List<FlashingPiece> pieces = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String which = count == 1 ? name : name + " " + (i + 1) + " of " + count;
            pieces.add(new FlashingPiece(which, each.minus(lap).times((long) i), each, girth));
        }
        Area area = r.record(Flashing.METAL_AREA, total.times(girth), AREA_OF_RUN);
        return new SheetWork(girth, total, area, mass(r, area, sheet), pieces, problems);
    }

    static Mass mass(Recorder r, Area area, MetalSheet sheet) {
        var arealMass = r.use(MetalSheet.AREAL_MASS, sheet.arealMass());
        return r.record(Flashing.METAL_MASS, arealMass.times(area), MASS_OF_AREA);
    }

    /** Wedges along a level run or chase: one at each end and none further apart than asked. */
    static int wedgesAlong(Recorder r, Length run, Figure<Length> spacing) {
        Length apart = r.use(FlashingDemand.WEDGE_SPACING, spacing);
        return r.record(Flashing.WEDGES, Sizes.toCover(run, apart) + 1, WEDGES_ALONG);
    }

    /** Clips along the free edge: one at each end and none further apart than asked. */
    static int clipsAlong(Recorder r, Length run, Figure<Length> spacing) {
        Length apart = r.use(FlashingDemand.CLIP_SPACING, spacing);
        return r.record(Flashing.CLIPS, Sizes.toCover(run, apart) + 1, CLIPS_ALONG);
    }
}
