package org.roofmaths.framing;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.roof.MeetingLine;
import org.roofmaths.roof.MeetingLine.Side;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * The cuts of members that run parallel to the eaves and end over a hip or valley: roof boards, and purlins square to
 * the slope.
 *
 * <p>The cut is in the plumb plane of the hip. On the face that lies in the slope it is marked from square by
 * tan = cos(pitch) ÷ tan(plan angle); on the face square to the slope from square by tan = sin(pitch) ÷ tan(plan
 * angle). The first is the same number as the side cut of a jack rafter, which is from the edge: the datum is what
 * tells them apart.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class BoardCuts implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The angle between the hip or valley and the eaves, in the slope laid flat. */
    public static final Term<Angle> HIP_TO_EAVES_IN_SLOPE =
            Term.of("hip or valley to the eaves, in the slope", "bi", Angle.class);

    /** The cut on the face that lies in the slope, from square. */
    public static final Term<Angle> FACE_CUT_FROM_SQUARE =
            Term.of("board cut on the face in the slope, from square", "bf", Angle.class);

    /** The cut on the face square to the slope, from square. */
    public static final Term<Angle> EDGE_CUT_FROM_SQUARE =
            Term.of("board cut on the face square to the slope, from square", "be", Angle.class);

    private final MeetingLine line;
    private final Side side;
    private final Numbers numbers;

    private record Numbers(Angle toEaves, Angle faceCut, Angle edgeCut) implements Serializable {}

    private BoardCuts(MeetingLine line, Side side) {
        this.line = Objects.requireNonNull(line, "line");
        this.side = Objects.requireNonNull(side, "side");
        this.numbers = compute(Recorder.off());
    }

    /**
     * Returns the cuts of boards or purlins in one slope of a hip or valley.
     *
     * @param line the hip or valley
     * @param side which of its slopes they lie in
     * @return the cuts
     */
    public static BoardCuts of(MeetingLine line, Side side) {
        return new BoardCuts(line, side);
    }

    private Numbers compute(Recorder r) {
        line.recordInto(r);
        Pitch p = line.slopePitch(side);
        Angle d = line.planAngle(side);
        Term<Pitch> pitch = RoofFace.RAFTER_PITCH.at(side.toString());
        Term<Angle> plan = MeetingLine.PLAN_ANGLE.at(side.toString());
        Angle toEaves = r.record(
                HIP_TO_EAVES_IN_SLOPE,
                Angle.ofRadians(StrictMath.atan2(d.sin(), d.cos() * p.cos())),
                Formula.of(
                        HIP_TO_EAVES_IN_SLOPE, plan.sin().arcTanOver(plan.cos().times(pitch.cos()))));
        Angle face = r.record(
                FACE_CUT_FROM_SQUARE,
                Angle.ofDegrees(90).minus(toEaves),
                Formula.of(FACE_CUT_FROM_SQUARE, Expression.degrees(90).minus(HIP_TO_EAVES_IN_SLOPE)));
        Angle edge = r.record(
                EDGE_CUT_FROM_SQUARE,
                Angle.ofRadians(StrictMath.atan(p.sin() * d.cos() / d.sin())),
                Formula.of(
                        EDGE_CUT_FROM_SQUARE,
                        pitch.sin().times(plan.cos()).over(plan.sin()).arcTan()));
        return new Numbers(toEaves, face, edge);
    }

    /** Returns the angle between the hip or valley and the eaves, in the slope laid flat. */
    public Angle hipToEavesInSlope() {
        return numbers.toEaves;
    }

    /** Returns the cut on the face that lies in the slope, from square. */
    public Angle faceCutFromSquare() {
        return numbers.faceCut;
    }

    /** Returns the cut on the face square to the slope, from square. */
    public Angle edgeCutFromSquare() {
        return numbers.edgeCut;
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BoardCuts b && line.equals(b.line) && side == b.side;
    }

    @Override
    public int hashCode() {
        return Objects.hash(line, side);
    }

    /** Returns both cuts in words. */
    @Override
    public String toString() {
        return "face in the slope cut " + faceCutFromSquare() + " from square, face square to the slope "
                + edgeCutFromSquare() + " from square";
    }
}
