package org.roofmaths.roof;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;
import org.roofmaths.working.Working;

/**
 * The hip or valley of two slopes over a corner of the eaves, from the two pitches and the corner alone.
 *
 * <p>Both eaves lie at one level. The corner is the angle between them on plan, measured inside the roof: below 180°
 * the slopes meet in a hip, above 180° in a valley. A valley has the numbers of the hip of the same slopes over the
 * corner seen from outside; only the sense of the fold changes.
 *
 * <p>With pitches t₁ and t₂ and a corner W: the line lies at d₁ = arctan(sin W ÷ (tan t₁ ÷ tan t₂ + cos W)) from the
 * first eaves and at d₂ = W − d₁ from the second; its pitch p has tan p = tan t₁ × sin d₁; the backing on either side
 * has sin b = sin t × cos d; the angle inside is 180° − b₁ − b₂ at a hip, 180° + b₁ + b₂ at a valley. For example, two
 * slopes of 45° over a square corner meet in a hip at 35.26° with an angle of 120° inside.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class MeetingLine implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /**
     * One of the two slopes that meet, by the order in which they were named. In terms it is the place: the plan angle
     * of the first slope is {@code PLAN_ANGLE.at("first")}.
     *
     * @since 0.1
     */
    public enum Side {
        /** The slope named first. */
        FIRST("first"),
        /** The slope named second. */
        SECOND("second");

        private final String word;

        Side(String word) {
            this.word = word;
        }

        /** Returns the other slope. */
        public Side opposite() {
            return this == FIRST ? SECOND : FIRST;
        }

        /** Returns the lower-case word used in terms and text, such as {@code first}. */
        @Override
        public String toString() {
            return word;
        }
    }

    /** The angle between two eaves on plan, measured inside the roof. */
    public static final Term<Angle> CORNER = Term.of("corner on plan", "W", Angle.class);

    /** The corner of a valley as seen from outside: a full turn less the corner. */
    public static final Term<Angle> OUTER_CORNER = Term.of("corner on plan, seen from outside", "V", Angle.class);

    /** The angle on plan between a line and the eaves of a face beside it. */
    public static final Term<Angle> PLAN_ANGLE = Term.of("plan angle to the eaves", "d", Angle.class);

    /** The pitch of the hip or valley. */
    public static final Term<Pitch> LINE_PITCH = Term.of("pitch of the hip or valley", "q", Pitch.class);

    /** How much longer the line is on plan than the run of the first slope under it. */
    public static final Term<Ratio> PLAN_LENGTH_PER_RUN = Term.of("plan length per run", "m", Ratio.class);

    /** How much longer the line itself is than the run of the first slope under it. */
    public static final Term<Ratio> TRUE_LENGTH_PER_RUN = Term.of("true length per run", "n", Ratio.class);

    /** The angle between a face and a plane through the line that is level across it. */
    public static final Term<Angle> BACKING = Term.of("backing", "b", Angle.class);

    /** The angle between two faces, measured under the roof. */
    public static final Term<Angle> ANGLE_INSIDE = Term.of("angle between the faces, inside", "D", Angle.class);

    /** The angle between two faces, measured outside. */
    public static final Term<Angle> ANGLE_OUTSIDE = Term.of("angle between the faces, outside", "O", Angle.class);

    /** What lies on the rafters, square to the slope. */
    public static final Term<Length> BUILD_UP = Term.of("build-up, square to the slope", "T", Length.class);

    /** How far the line of the covering lies beside the line of the rafters, on plan. */
    public static final Term<Length> SHIFT = Term.of("shift of the covering's line", "x", Length.class);

    /** The corner is not one over which two slopes meet in a line. */
    public static final ProblemCode CORNER_OUT_OF_RANGE =
            ProblemCode.of("meeting-line.corner", "Give the angle between the eaves as measured inside the roof.");

    /** The line runs outside the square across one of the eaves. */
    public static final ProblemCode BEYOND_SQUARE = ProblemCode.of(
            "meeting-line.beyond-square", "Expect no jack rafters on that side and a backing below zero.");

    private static final String FIRST = Side.FIRST.toString();
    private static final String SECOND = Side.SECOND.toString();
    private static final Angle FULL_TURN = Angle.ofDegrees(360);
    private static final Angle STRAIGHT = Angle.ofDegrees(180);
    private static final Angle SQUARE = Angle.ofDegrees(90);

    private static final Term<Pitch> PITCH_1 = RoofFace.RAFTER_PITCH.at(FIRST);
    private static final Term<Pitch> PITCH_2 = RoofFace.RAFTER_PITCH.at(SECOND);
    private static final Term<Angle> PLAN_ANGLE_1 = PLAN_ANGLE.at(FIRST);
    private static final Term<Angle> PLAN_ANGLE_2 = PLAN_ANGLE.at(SECOND);
    private static final Formula OUTER_CORNER_SUM =
            Formula.of(OUTER_CORNER, Expression.degrees(360).minus(CORNER));
    private static final Formula FIRST_AT_HIP = firstPlanAngle(CORNER);
    private static final Formula FIRST_AT_VALLEY = firstPlanAngle(OUTER_CORNER);
    private static final Formula SECOND_AT_HIP = Formula.of(PLAN_ANGLE_2, CORNER.minus(PLAN_ANGLE_1));
    private static final Formula SECOND_AT_VALLEY = Formula.of(PLAN_ANGLE_2, OUTER_CORNER.minus(PLAN_ANGLE_1));
    private static final Formula LINE_PITCH_BY_FIRST =
            Formula.of(LINE_PITCH, PITCH_1.tan().times(PLAN_ANGLE_1.sin()).arcTan());
    private static final Formula PLAN_LENGTH_BY_ANGLE =
            Formula.of(PLAN_LENGTH_PER_RUN, Expression.number(1).over(PLAN_ANGLE_1.sin()));
    private static final Formula TRUE_LENGTH_BY_PITCH =
            Formula.of(TRUE_LENGTH_PER_RUN, PLAN_LENGTH_PER_RUN.over(LINE_PITCH.cos()));
    private static final Formula OUTSIDE_SUM =
            Formula.of(ANGLE_OUTSIDE, Expression.degrees(360).minus(ANGLE_INSIDE));

    private static final Formula SHIFT_OF_HIP = Formula.of(SHIFT, shift(CORNER));
    private static final Formula SHIFT_OF_VALLEY =
            Formula.of(SHIFT, shift(OUTER_CORNER).negated());

    private final Figure<Pitch> firstPitch;
    private final Figure<Pitch> secondPitch;
    private final Figure<Angle> corner;
    private final Numbers numbers;

    private record Numbers(
            Angle firstPlanAngle,
            Angle secondPlanAngle,
            Pitch pitch,
            Ratio planLengthPerRun,
            Ratio trueLengthPerRun,
            Angle firstBacking,
            Angle secondBacking,
            Angle inside,
            Angle outside)
            implements Serializable {}

    private MeetingLine(Figure<Pitch> firstPitch, Figure<Pitch> secondPitch, Figure<Angle> corner) {
        this.firstPitch = Objects.requireNonNull(firstPitch, "firstPitch");
        this.secondPitch = Objects.requireNonNull(secondPitch, "secondPitch");
        this.corner = Objects.requireNonNull(corner, "corner");
        Problems problems = Problems.none();
        double degrees = corner.value().toDegrees();
        problems.require(
                degrees > 0 && degrees < FULL_TURN.toDegrees() && degrees != STRAIGHT.toDegrees(),
                CORNER_OUT_OF_RANGE,
                "corner",
                corner.value(),
                "be above 0° and below 360°, and not 180°");
        problems.throwIfErrors();
        this.numbers = compute(Recorder.off());
    }

    private static Formula firstPlanAngle(Term<Angle> between) {
        return Formula.of(
                PLAN_ANGLE_1,
                between.sin().arcTanOver(PITCH_1.tan().over(PITCH_2.tan()).plus(between.cos())));
    }

    /**
     * Returns the line in which two slopes meet.
     *
     * @param first the pitch of one slope
     * @param second the pitch of the other
     * @param corner the angle between their eaves on plan, measured inside the roof: above 0° and below 180° for a hip,
     *     above 180° and below 360° for a valley
     * @return the line
     * @throws ProblemsException if the corner is outside that range
     */
    public static MeetingLine of(Pitch first, Pitch second, Angle corner) {
        return of(
                Figure.given(Objects.requireNonNull(first, "first")),
                Figure.given(Objects.requireNonNull(second, "second")),
                Figure.given(Objects.requireNonNull(corner, "corner")));
    }

    /**
     * Returns the line in which two slopes meet, with the origin of its figures.
     *
     * @param first the pitch of one slope
     * @param second the pitch of the other
     * @param corner the angle between their eaves on plan, measured inside the roof: above 0° and below 180° for a hip,
     *     above 180° and below 360° for a valley
     * @return the line
     * @throws ProblemsException if the corner is outside that range
     */
    public static MeetingLine of(Figure<Pitch> first, Figure<Pitch> second, Figure<Angle> corner) {
        return new MeetingLine(first, second, corner);
    }

    /**
     * Returns the line in which two slopes meet, or what is wrong with the corner.
     *
     * @param first the pitch of one slope
     * @param second the pitch of the other
     * @param corner the angle between their eaves on plan
     * @return the line with what a person should know about it, or the problems
     */
    public static Attempt<MeetingLine> attempt(Pitch first, Pitch second, Angle corner) {
        Attempt<MeetingLine> line = Attempt.call(() -> of(first, second, corner));
        return line.value().map(found -> Attempt.of(found, found.problems())).orElse(line);
    }

    private Numbers compute(Recorder r) {
        Pitch p1 = r.use(PITCH_1, firstPitch);
        Pitch p2 = r.use(PITCH_2, secondPitch);
        Angle inner = r.use(CORNER, corner);
        boolean valley = isValley();
        Angle between = valley ? r.record(OUTER_CORNER, FULL_TURN.minus(inner), OUTER_CORNER_SUM) : inner;
        Angle d1 = r.record(
                PLAN_ANGLE_1,
                Angle.ofRadians(StrictMath.atan2(between.sin(), p1.tan() / p2.tan() + between.cos())),
                valley ? FIRST_AT_VALLEY : FIRST_AT_HIP);
        Angle d2 = r.record(PLAN_ANGLE_2, between.minus(d1), valley ? SECOND_AT_VALLEY : SECOND_AT_HIP);
        Pitch pitch = r.record(
                LINE_PITCH, Pitch.from(Angle.ofRadians(StrictMath.atan(p1.tan() * d1.sin()))), LINE_PITCH_BY_FIRST);
        Ratio onPlan = r.record(PLAN_LENGTH_PER_RUN, Ratio.of(1 / d1.sin()), PLAN_LENGTH_BY_ANGLE);
        Ratio length = r.record(TRUE_LENGTH_PER_RUN, onPlan.dividedBy(pitch.cos()), TRUE_LENGTH_BY_PITCH);
        Angle b1 = recordBacking(FIRST, p1, d1, r);
        Angle b2 = recordBacking(SECOND, p2, d2, r);
        Angle inside = angleInside(FIRST, b1, SECOND, b2, valley, r);
        return new Numbers(d1, d2, pitch, onPlan, length, b1, b2, inside, angleOutside(inside, r));
    }

    /**
     * The backing on the side of one face, from its pitch and the plan angle between line and eaves: sin b = sin t ×
     * cos d.
     */
    static Angle backing(String place, Figure<Pitch> pitch, Figure<Angle> planAngle, Recorder r) {
        Pitch p = r.use(RoofFace.RAFTER_PITCH.at(place), pitch);
        Angle d = r.use(PLAN_ANGLE.at(place), planAngle);
        return recordBacking(place, p, d, r);
    }

    private static Angle recordBacking(String place, Pitch p, Angle d, Recorder r) {
        // along the eaves (a ridge, a break of slope) the backing is the pitch itself, to the last digit
        Angle backing = d.sin() == 0 ? p.toAngle().times(d.cos()) : Angle.ofRadians(StrictMath.asin(p.sin() * d.cos()));
        return r.isOn() ? r.record(BACKING.at(place), backing, backingFormula(place)) : backing;
    }

    private static Formula backingFormula(String place) {
        return Formula.of(
                BACKING.at(place),
                RoofFace.RAFTER_PITCH
                        .at(place)
                        .sin()
                        .times(PLAN_ANGLE.at(place).cos())
                        .arcSin());
    }

    /**
     * The angle inside between two faces whose backings are recorded: a straight angle less both, at a valley with
     * both.
     */
    static Angle angleInside(String one, Angle backing, String other, Angle otherBacking, boolean valley, Recorder r) {
        Angle both = backing.plus(otherBacking);
        Angle inside = valley ? STRAIGHT.plus(both) : STRAIGHT.minus(both);
        if (!r.isOn()) {
            return inside;
        }
        Term<Angle> b1 = BACKING.at(one);
        Term<Angle> b2 = BACKING.at(other);
        Expression straight = Expression.degrees(180);
        return r.record(
                ANGLE_INSIDE,
                inside,
                Formula.of(
                        ANGLE_INSIDE,
                        valley ? straight.plus(b1).plus(b2) : straight.minus(b1).minus(b2)));
    }

    /** The angle outside, from the angle inside that is recorded. */
    static Angle angleOutside(Angle inside, Recorder r) {
        return r.record(ANGLE_OUTSIDE, FULL_TURN.minus(inside), OUTSIDE_SUM);
    }

    /** Tells whether the line is a valley; otherwise it is a hip. */
    public boolean isValley() {
        return corner.value().isGreaterThan(STRAIGHT);
    }

    /** Returns the angle between the two eaves on plan, measured inside the roof. */
    public Angle corner() {
        return corner.value();
    }

    /**
     * Returns the pitch of one of the slopes.
     *
     * @param side which slope
     * @return its pitch
     */
    public Pitch slopePitch(Side side) {
        return (side == Side.FIRST ? firstPitch : secondPitch).value();
    }

    /**
     * Returns the angle on plan between the line and the eaves of one slope; at a valley, the eaves line drawn on
     * beyond the corner.
     *
     * @param side which slope
     * @return the angle, above 0° and below 180°
     */
    public Angle planAngle(Side side) {
        return side == Side.FIRST ? numbers.firstPlanAngle : numbers.secondPlanAngle;
    }

    /** Returns the pitch of the hip or valley itself. */
    public Pitch pitch() {
        return numbers.pitch;
    }

    /**
     * Returns the length of the line on plan for each unit of run of the first slope; √2 over a square corner with
     * equal pitches.
     */
    public Ratio planLengthPerRun() {
        return numbers.planLengthPerRun;
    }

    /** Returns the length of the line itself for each unit of run of the first slope. */
    public Ratio trueLengthPerRun() {
        return numbers.trueLengthPerRun;
    }

    /**
     * Returns the backing on the side of one slope: the angle between the slope and a plane through the line that is
     * level across it.
     *
     * @param side which slope
     * @return the angle; below zero where the line runs outside the square across that slope's eaves
     */
    public Angle backing(Side side) {
        return side == Side.FIRST ? numbers.firstBacking : numbers.secondBacking;
    }

    /** Returns the angle between the two slopes, measured inside, under the roof; over 180° at a valley. */
    public Angle angleInside() {
        return numbers.inside;
    }

    /** Returns the angle between the two slopes, measured outside: 360° less the angle inside. */
    public Angle angleOutside() {
        return numbers.outside;
    }

    /**
     * Returns what a person should know: a notice for each side on which the line runs outside the square across the
     * eaves, so that no jack rafter reaches it there.
     */
    public List<Problem> problems() {
        List<Problem> problems = new ArrayList<>();
        for (Side side : Side.values()) {
            addIfBeyondSquare(side, problems);
        }
        return List.copyOf(problems);
    }

    private void addIfBeyondSquare(Side slope, List<Problem> problems) {
        Angle planAngle = planAngle(slope);
        if (planAngle.isGreaterThan(SQUARE)) {
            problems.add(Problem.notice(
                    BEYOND_SQUARE,
                    slope + " slope",
                    planAngle,
                    "the line lies at " + planAngle + " on plan to the eaves of the " + slope
                            + " slope, more than square; no jack rafter reaches it on that side"));
        }
    }

    /**
     * Returns how far the line of the covering lies beside the line of the rafters, on plan and square to it. Where the
     * pitches differ, a build-up of one thickness lifts the two slopes by different heights, and the line moves: a hip
     * towards the steeper slope, a valley towards the flatter.
     *
     * <p>For example, 63 mm of build-up on slopes of 30° and 50° over a square corner move the line by 19.1 mm.
     *
     * @param buildUp what lies on the rafters, measured square to the slope
     * @return the distance; above zero towards the second slope, below zero towards the first
     */
    public Worked<Length> shiftOfCovering(Length buildUp) {
        Objects.requireNonNull(buildUp, "buildUp");
        return Worked.by(SHIFT, r -> shift(buildUp, r));
    }

    private Length shift(Length buildUp, Recorder r) {
        compute(r);
        boolean valley = isValley();
        Length thickness = r.use(BUILD_UP, buildUp);
        double t1 = firstPitch.value().tan();
        double t2 = secondPitch.value().tan();
        double across =
                StrictMath.sqrt(t1 * t1 + t2 * t2 + 2 * t1 * t2 * corner.value().cos());
        double lift = 1 / secondPitch.value().cos() - 1 / firstPitch.value().cos();
        return r.record(
                SHIFT, thickness.times((valley ? -lift : lift) / across), valley ? SHIFT_OF_VALLEY : SHIFT_OF_HIP);
    }

    private static Expression shift(Term<Angle> between) {
        Expression lift = Expression.number(1)
                .over(PITCH_2.cos())
                .minus(Expression.number(1).over(PITCH_1.cos()));
        Expression across = PITCH_1.tan()
                .squared()
                .plus(PITCH_2.tan().squared())
                .plus(Expression.number(2)
                        .times(PITCH_1.tan())
                        .times(PITCH_2.tan())
                        .times(between.cos()))
                .squareRoot();
        return BUILD_UP.times(lift).over(across);
    }

    /**
     * Records the steps of this line in another sum that rests on it, so that formulas there may name its terms.
     *
     * @param recorder hears the steps
     */
    public void recordInto(Recorder recorder) {
        if (recorder.isOn()) {
            compute(recorder);
        }
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof MeetingLine m
                && firstPitch.equals(m.firstPitch)
                && secondPitch.equals(m.secondPitch)
                && corner.equals(m.corner);
    }

    @Override
    public int hashCode() {
        return Objects.hash(firstPitch, secondPitch, corner);
    }

    /** Returns for example {@code hip at 35.26° over a corner of 90°, 120° inside}. */
    @Override
    public String toString() {
        return (isValley() ? "valley" : "hip") + " at " + Summary.pitch(pitch()) + " over a corner of " + corner.value()
                + ", " + Summary.angle(angleInside()) + " inside";
    }
}
