package org.roofmaths.flashing;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problems;
import org.roofmaths.roof.RoofEdge;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * How the units of one slope are cut along a valley or hip: the angle in the slope, and how far from the line along each course.
 *
 * <p>With {@code d} the angle on plan between the line and the eaves of that slope and {@code p} its pitch, the angle in the slope is
 * {@code arctan(tan(d) ÷ cos(p))}, and the cut stands {@code half the channel ÷ sin(that angle)} from the line, measured along the
 * course. Slopes of unequal pitch have two of each, never one: work out both. For example, 35° at a square corner: 50.7°, and 64.6 mm for
 * half a channel of 50 mm.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class CutAlongLine implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The angle on plan between the line and the eaves. */
    public static final Term<Angle> PLAN_ANGLE = Term.of("plan angle of the line to the eaves", "dl", Angle.class);
    /** The pitch of the slope that is cut. */
    public static final Term<Pitch> PITCH = Term.of("pitch of the slope that is cut", "pc", Pitch.class);
    /** Half the clear channel, square to the line. */
    public static final Term<Length> HALF_CHANNEL = Term.of("half the clear channel", "hc", Length.class);
    /** The angle in the slope between the line and a course. */
    public static final Term<Angle> ANGLE_IN_SLOPE = Term.of("angle of the cut to the course", "ac", Angle.class);
    /** How far the cut stands from the line along a course. */
    public static final Term<Length> OFFSET = Term.of("cut from the line along the course", "oc", Length.class);

    private static final Formula ANGLE_BY_PITCH =
            Formula.of(ANGLE_IN_SLOPE, PLAN_ANGLE.tan().over(PITCH.cos()).arcTan());
    private static final Formula OFFSET_BY_ANGLE = Formula.of(OFFSET, HALF_CHANNEL.over(ANGLE_IN_SLOPE.sin()));

    private final Figure<Angle> planAngle;
    private final Figure<Pitch> pitch;
    private final Figure<Length> halfChannel;

    private final Angle angleInSlope;
    private final Length offset;

    private CutAlongLine(Figure<Angle> planAngle, Figure<Pitch> pitch, Figure<Length> halfChannel) {
        this.planAngle = planAngle;
        this.pitch = pitch;
        this.halfChannel = halfChannel;
        angleInSlope = angle(Recorder.off());
        offset = compute(Recorder.off());
    }

    /**
     * Returns the cut of one slope.
     *
     * @param planAngle the angle on plan between the line and the eaves of this slope, above 0° and below 90°
     * @param pitch the pitch of this slope
     * @param halfChannel half the clear channel, square to the line; zero for a close-cut hip or a mitred valley
     * @return the cut
     * @throws org.roofmaths.problem.ProblemsException if the angle or the channel is out of range
     */
    public static CutAlongLine of(Figure<Angle> planAngle, Figure<Pitch> pitch, Figure<Length> halfChannel) {
        Objects.requireNonNull(pitch, "pitch");
        double degrees = planAngle.value().toDegrees();
        Problems problems = Problems.none()
                .require(
                        degrees > 0 && degrees < 90,
                        CoveringLine.WRONG_LINE,
                        PLAN_ANGLE.name(),
                        planAngle.value(),
                        "be above 0° and below 90°");
        Sizes.requireNotNegative(problems, HALF_CHANNEL, halfChannel);
        problems.throwIfErrors();
        return new CutAlongLine(planAngle, pitch, halfChannel);
    }

    /**
     * Returns the cut of one slope along a valley or hip of a roof.
     *
     * @param edge the valley or hip
     * @param face the name of the face that is cut
     * @param halfChannel half the clear channel, square to the line; zero for a close-cut hip or a mitred valley
     * @return the cut
     * @throws org.roofmaths.problem.ProblemsException if the face is not beside the edge, or the angle or channel is out of range
     */
    public static CutAlongLine of(RoofEdge edge, String face, Length halfChannel) {
        Angle planAngle = edge.planAngle(face);
        RoofFace cut = edge.faces().stream()
                .filter(f -> f.name().equals(face))
                .findFirst()
                .orElseThrow();
        return of(Given.of(planAngle), cut.pitchFigure(), Given.of(halfChannel));
    }

    private Angle angle(Recorder r) {
        Angle plan = r.use(PLAN_ANGLE, planAngle);
        Pitch slope = r.use(PITCH, pitch);
        return r.record(ANGLE_IN_SLOPE, Angle.ofRadians(StrictMath.atan(plan.tan() / slope.cos())), ANGLE_BY_PITCH);
    }

    private Length compute(Recorder r) {
        Angle cut = angle(r);
        Length half = r.use(HALF_CHANNEL, halfChannel);
        return r.record(OFFSET, Length.ofMetres(half.toSi() / cut.sin()), OFFSET_BY_ANGLE);
    }

    /** Returns the angle in the slope between the cut and a course. */
    public Angle angleInSlope() {
        return angleInSlope;
    }

    /** Returns how far the cut stands from the line, along a course. */
    public Length offsetAlongCourse() {
        return offset;
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof CutAlongLine c
                && planAngle.equals(c.planAngle)
                && pitch.equals(c.pitch)
                && halfChannel.equals(c.halfChannel);
    }

    @Override
    public int hashCode() {
        return Objects.hash(planAngle, pitch, halfChannel);
    }

    /** Returns for example {@code cut at 50.68° to the course, 64.64 mm from the line}. */
    @Override
    public String toString() {
        return "cut at " + angleInSlope + " to the course, " + offset + " from the line";
    }
}
