package org.roofmaths.flashing;

import java.io.Serializable;
import org.roofmaths.problem.Problems;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.roof.RoofEdge;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Assumed;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Worked;

/**
 * A run of sheet up a slope whose pieces lap by the pitch of the line they lie on: valley, hip, secret gutter.
 *
 * @param length its true length
 * @param pitch the pitch of the line
 * @param extraAtFoot metal beyond its lower end
 * @param extraAtHead metal beyond its upper end
 */
record SlopingRun(Figure<Length> length, Figure<Pitch> pitch, Figure<Length> extraAtFoot, Figure<Length> extraAtHead)
        implements Serializable {
    private static final long serialVersionUID = 1L;

    private static final Formula RUN_OF_METAL = Formula.of(
            Flashing.METAL_RUN,
            Flashing.SLOPING_LENGTH.plus(CoveringLine.EXTRA_AT_START).plus(CoveringLine.EXTRA_AT_END));
    private static final Formula PITCH_OF_EDGE = Formula.of(LeadLap.TRUE_PITCH, RoofEdge.SLOPE_ANGLE);
    private static final Figure<Length> NONE_ASKED =
            Assumed.of(Length.ZERO, "no metal beyond the ends was asked for", "call extendedBy");

    static SlopingRun of(Figure<Length> length, Figure<Pitch> pitch) {
        Problems problems = Problems.none();
        Sizes.requirePositive(problems, Flashing.SLOPING_LENGTH, length);
        problems.throwIfErrors();
        return new SlopingRun(length, pitch, NONE_ASKED, NONE_ASKED);
    }

    /** The run up an edge of a kind; the pitch of the line is the slope angle of the edge. */
    static SlopingRun of(RoofEdge edge, EdgeKind kind) {
        Problems.none()
                .require(
                        edge.kind() == kind,
                        CoveringLine.WRONG_LINE,
                        "edge",
                        edge.kind() + " \"" + edge.name() + "\"",
                        "be a " + kind)
                .require(
                        !edge.slopeAngle().isZero(),
                        CoveringLine.WRONG_LINE,
                        "edge",
                        "level \"" + edge.name() + "\"",
                        "slope; sheet in a level line is not worked out here")
                .throwIfErrors();
        return of(edge.trueLengthFigure(), Worked.by(LeadLap.TRUE_PITCH, r -> {
            r.use(RoofEdge.SLOPE_ANGLE, edge.slopeAngleFigure());
            return r.record(LeadLap.TRUE_PITCH, Pitch.from(edge.slopeAngle()), PITCH_OF_EDGE);
        }));
    }

    SlopingRun extendedBy(Figure<Length> atFoot, Figure<Length> atHead) {
        Problems problems = Problems.none();
        Sizes.requireNotNegative(problems, CoveringLine.EXTRA_AT_START, atFoot);
        Sizes.requireNotNegative(problems, CoveringLine.EXTRA_AT_END, atHead);
        problems.throwIfErrors();
        return new SlopingRun(length, pitch, atFoot, atHead);
    }

    /** A lap that is as long as the longest piece would never get on: the line is too flat for this metal. */
    void requireLapShorterThan(Figure<Length> longestPiece, Figure<Length> weatheringHeight, Figure<Length> leastLap) {
        Problems problems = Problems.none();
        Sizes.requireLongerThanLap(problems, longestPiece, LeadLap.upTheSlope(pitch, weatheringHeight, leastLap));
        problems.throwIfErrors();
    }

    Length metalRun(Recorder r) {
        Length along = r.use(Flashing.SLOPING_LENGTH, length);
        Length foot = r.use(CoveringLine.EXTRA_AT_START, extraAtFoot);
        Length head = r.use(CoveringLine.EXTRA_AT_END, extraAtHead);
        return r.record(Flashing.METAL_RUN, along.plus(foot).plus(head), RUN_OF_METAL);
    }

    Length lap(Recorder r, Figure<Length> weatheringHeight, Figure<Length> leastLap) {
        return LeadLap.compute(r, pitch, weatheringHeight, leastLap);
    }
}
