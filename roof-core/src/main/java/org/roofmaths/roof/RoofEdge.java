package org.roofmaths.roof;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;
import org.roofmaths.working.Working;

/**
 * One straight line of a roof: an eaves, a verge, a ridge, a hip, a valley and so on.
 *
 * <p>A sloping edge runs from its lower end to its upper one; a level edge from left to right, as seen from outside
 * looking up the slope of its first face. {@code planLength} is what a plan from above shows, {@code trueLength} is the
 * length of the line itself. The angle between two faces is given twice, measured inside, under the roof, and outside;
 * together they are a full turn. For example, the ridge of two slopes of 40° has an angle of 100° inside and 260°
 * outside.
 *
 * <p>Edges are made by {@link Roof}. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class RoofEdge implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The length of an edge as a plan from above shows it. */
    public static final Term<Length> PLAN_LENGTH = Term.of("plan length of the edge", "e", Length.class);

    /** The length of an edge itself. */
    public static final Term<Length> TRUE_LENGTH = Term.of("true length of the edge", "E", Length.class);

    /** The angle of an edge from the level; 0° for a level edge. */
    public static final Term<Angle> SLOPE_ANGLE = Term.of("slope angle of the edge", "s", Angle.class);

    /** An edge was asked for the angle between its faces, but has only one face. */
    public static final ProblemCode ONE_FACE = ProblemCode.of(
            "edge.one-face", "Ask for the angle between faces at a ridge, hip, valley or break of slope.");

    /** An edge was asked for its meeting line, but is neither a hip nor a valley that slopes. */
    public static final ProblemCode NO_MEETING_LINE =
            ProblemCode.of("edge.no-meeting-line", "Ask a hip or a valley for its meeting line.");

    private static final Formula TRUE_BY_SLOPE = Formula.of(TRUE_LENGTH, PLAN_LENGTH.over(SLOPE_ANGLE.cos()));

    private final Roof roof;
    private final String name;
    private final EdgeKind kind;
    private final int[] faceNumbers;
    private final SpacePoint from;
    private final SpacePoint to;
    private final Figure<Length> planLength;
    private final List<Angle> planAngles;
    private final Numbers numbers;

    private record Numbers(Length trueLength, Angle slopeAngle, List<Angle> backings, Angle inside, Angle outside)
            implements Serializable {}

    RoofEdge(
            Roof roof,
            String name,
            EdgeKind kind,
            int[] faceNumbers,
            SpacePoint from,
            SpacePoint to,
            Figure<Length> planLength,
            List<Angle> planAngles) {
        this.roof = roof;
        this.name = name;
        this.kind = kind;
        this.faceNumbers = faceNumbers;
        this.from = from;
        this.to = to;
        this.planLength = planLength;
        this.planAngles = List.copyOf(planAngles);
        this.numbers = compute(Recorder.off());
    }

    private Numbers compute(Recorder r) {
        RoofFace first = faces().get(0);
        Pitch pitch = r.use(RoofFace.RAFTER_PITCH.at(first.name()), first.pitchFigure());
        Angle plan = r.use(MeetingLine.PLAN_ANGLE.at(first.name()), Roof.onPlan(planAngles.get(0)));
        Length level = r.use(PLAN_LENGTH, planLength);
        Angle slope = plan.sin() == 1 ? pitch.toAngle() : Angle.ofRadians(StrictMath.atan(pitch.tan() * plan.sin()));
        if (r.isOn()) {
            r.record(SLOPE_ANGLE, slope, slopeFormula(first.name()));
        }
        Length length = r.record(TRUE_LENGTH, level.dividedBy(slope.cos()), TRUE_BY_SLOPE);
        if (faceNumbers.length == 1) {
            return new Numbers(length, slope, List.of(), Angle.ZERO, Angle.ZERO);
        }
        List<Angle> backings = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            RoofFace face = faces().get(i);
            backings.add(MeetingLine.backing(face.name(), face.pitchFigure(), Roof.onPlan(planAngles.get(i)), r));
        }
        String one = first.name();
        String other = faces().get(1).name();
        Angle inside =
                MeetingLine.angleInside(one, backings.get(0), other, backings.get(1), kind == EdgeKind.VALLEY, r);
        Angle outside = MeetingLine.angleOutside(inside, r);
        return new Numbers(length, slope, List.copyOf(backings), inside, outside);
    }

    private static Formula slopeFormula(String face) {
        return Formula.of(
                SLOPE_ANGLE,
                RoofFace.RAFTER_PITCH
                        .at(face)
                        .tan()
                        .times(MeetingLine.PLAN_ANGLE.at(face).sin())
                        .arcTan());
    }

    /** Returns the name, such as {@code main eaves}, {@code front left verge} or {@code ridge front/back}. */
    public String name() {
        return name;
    }

    /** Returns what kind of line this is. */
    public EdgeKind kind() {
        return kind;
    }

    /** Returns the one or two faces beside it, in the order of the roof's faces. */
    public List<RoofFace> faces() {
        List<RoofFace> faces = new ArrayList<>();
        for (int number : faceNumbers) {
            faces.add(roof.faces().get(number));
        }
        return List.copyOf(faces);
    }

    /** Returns the lower end, or of a level edge the left one. */
    public SpacePoint from() {
        return from;
    }

    /** Returns the upper end, or of a level edge the right one. */
    public SpacePoint to() {
        return to;
    }

    /** Returns the length as a plan from above shows it. */
    public Length planLength() {
        return planLength.value();
    }

    /** Returns the length of the line itself: plan length / cos(slope angle). */
    public Length trueLength() {
        return numbers.trueLength;
    }

    /** Returns the length as a plan from above shows it, with its origin. */
    public Figure<Length> planLengthFigure() {
        return planLength;
    }

    /** Returns the length of the line itself, with its working. */
    public Figure<Length> trueLengthFigure() {
        return Worked.by(TRUE_LENGTH, r -> compute(r).trueLength());
    }

    /** Returns the angle from the level, with its working. */
    public Figure<Angle> slopeAngleFigure() {
        return Worked.by(SLOPE_ANGLE, r -> compute(r).slopeAngle());
    }

    /** Returns the angle from the level; 0° for a level edge, the pitch of the face for a verge square to the eaves. */
    public Angle slopeAngle() {
        return numbers.slopeAngle;
    }

    /**
     * Returns the angle on plan between this edge and the eaves of a face beside it.
     *
     * <p>At a hip it is measured on that face and may exceed 90°, between a very steep and a very flat slope on an
     * obtuse corner; at a valley between the edge and the eaves line drawn on beyond the corner.
     *
     * @param face the name of the face
     * @return the angle, from 0° to 180°
     * @throws ProblemsException if the face is not beside this edge
     */
    public Angle planAngle(String face) {
        return planAngles.get(indexOf(face));
    }

    /**
     * Returns by how much the top of a rafter square to this edge is bevelled on the side of one face: the angle
     * between the face and a plane through the edge that is level across it.
     *
     * @param face the name of the face
     * @return the backing angle
     * @throws ProblemsException if the face is not beside this edge, or the edge has only one face
     */
    public Angle backing(String face) {
        int index = indexOf(face);
        requireTwoFaces();
        return numbers.backings.get(index);
    }

    /**
     * Returns the angle between the two faces, measured inside, under the roof; over 180° at a valley.
     *
     * @return the angle inside
     * @throws ProblemsException if the edge has only one face
     */
    public Angle angleInside() {
        requireTwoFaces();
        return numbers.inside;
    }

    /**
     * Returns the angle between the two faces, measured outside: 360° less the angle inside.
     *
     * @return the angle outside
     * @throws ProblemsException if the edge has only one face
     */
    public Angle angleOutside() {
        requireTwoFaces();
        return numbers.outside;
    }

    /**
     * Returns the hip or valley as a meeting line, its first slope that of the first face.
     *
     * @return the line
     * @throws ProblemsException if the edge is neither a hip nor a valley that slopes
     */
    public MeetingLine meetingLine() {
        if ((kind != EdgeKind.HIP && kind != EdgeKind.VALLEY) || slopeAngle().isZero()) {
            throw new ProblemsException(List.of(Problem.error(
                    NO_MEETING_LINE, "edge", "\"" + name + "\", a " + kind, "be a hip or a valley that slopes")));
        }
        Angle between = planAngles.get(0).plus(planAngles.get(1));
        Angle corner = kind == EdgeKind.VALLEY ? Angle.ofDegrees(360).minus(between) : between;
        return MeetingLine.of(faces().get(0).pitchFigure(), faces().get(1).pitchFigure(), Roof.onPlan(corner));
    }

    private void requireTwoFaces() {
        if (faceNumbers.length == 1) {
            throw new ProblemsException(List.of(Problem.error(
                    ONE_FACE,
                    "edge",
                    "\"" + name + "\", beside one face",
                    "lie between two faces to have an angle between them")));
        }
    }

    private int indexOf(String face) {
        Objects.requireNonNull(face, "face");
        List<String> names = faces().stream().map(RoofFace::name).toList();
        if (!names.contains(face)) {
            throw new ProblemsException(List.of(Problem.error(
                    Roof.NO_SUCH_FACE, "face", "\"" + face + "\"", "be one of " + String.join(", ", names))));
        }
        return names.indexOf(face);
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof RoofEdge e
                && name.equals(e.name)
                && kind == e.kind
                && from.equals(e.from)
                && to.equals(e.to);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, from, to);
    }

    /** Returns for example {@code main eaves: 5245 mm} or {@code hip front/left: 4242.64 mm, 3000 mm on plan}. */
    @Override
    public String toString() {
        String text = name + ": " + Summary.length(trueLength());
        return slopeAngle().isZero() ? text : text + ", " + Summary.length(planLength()) + " on plan";
    }
}
