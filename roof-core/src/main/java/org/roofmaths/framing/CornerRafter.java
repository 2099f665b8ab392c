package org.roofmaths.framing;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.MeetingLine;
import org.roofmaths.roof.MeetingLine.Side;
import org.roofmaths.roof.RoofEdge;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;
import org.roofmaths.working.Working;

/**
 * A hip rafter or valley rafter: the timber under the line in which two slopes meet over a corner.
 *
 * <p>All lengths are along the top edge, to the centre lines, before any deduction; the length to cut takes off half
 * the ridge board and adds the tail. For example, the hip of two slopes of 40° over a square corner with a run of 4 m
 * is 6577.6 mm long at 30.68°.
 *
 * <p>The plumb cut is marked at the pitch of the hip from square across it, the seat cut at that pitch from its edge. A
 * hip that is not backed stands proud of both slopes and is dropped instead: by {@link #dropPlumb} measured plumb, as
 * when the seat is cut deeper, or by {@link #dropSquare} measured square to the hip. The two differ.
 *
 * <p>No member is sized here. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class CornerRafter implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The level run of the first slope from its plate line to the top of the hip or valley. */
    public static final Term<Length> RUN = Term.of("run of the first slope", "hr", Length.class);

    /** The height gained along the rafter. */
    public static final Term<Length> RISE = Term.of("rise of the hip or valley", "hh", Length.class);

    /** The length of the rafter on plan. */
    public static final Term<Length> PLAN_LENGTH = Term.of("hip or valley rafter, on plan", "hp", Length.class);

    /** The length along the top edge from the plate corner to the centre of the ridge. */
    public static final Term<Length> LENGTH = Term.of("hip or valley rafter, length", "hl", Length.class);

    /** How far the tails of the first slope's rafters reach beyond the plate line, level and square to the eaves. */
    public static final Term<Length> OVERHANG = Term.of("overhang of the first slope, level", "ho", Length.class);

    /** The length of the tail beyond the plate corner. */
    public static final Term<Length> TAIL = Term.of("hip or valley tail", "ht", Length.class);

    /** The thickness of the rafter. */
    public static final Term<Length> THICKNESS = Term.of("hip or valley thickness", "hb", Length.class);

    /** The thickness of the ridge board, which is parallel to the eaves of the first slope. */
    public static final Term<Length> RIDGE_THICKNESS = CommonRafter.RIDGE_THICKNESS;

    /** What the ridge board takes off, measured level. */
    public static final Term<Length> SHORTENING_LEVEL = Term.of("hip or valley shortening, level", "hs", Length.class);

    /** What the ridge board takes off, measured along the rafter. */
    public static final Term<Length> SHORTENING = Term.of("hip or valley shortening, along it", "hd", Length.class);

    /** The length along the top edge from the ridge board to the end of the tail. */
    public static final Term<Length> LENGTH_TO_CUT = Term.of("hip or valley length to cut", "hc", Length.class);

    /** How far an unbacked hip must come down to clear one slope, measured plumb. */
    public static final Term<Length> DROP_PLUMB = Term.of("hip drop, plumb", "hv", Length.class);

    /** How far an unbacked hip must come down to clear one slope, measured square to the hip. */
    public static final Term<Length> DROP_SQUARE = Term.of("hip drop, square to the hip", "hq", Length.class);

    /** The cut across the top edge against a ridge parallel to the eaves of one slope, from the edge. */
    public static final Term<Angle> SIDE_CUT_FROM_EDGE = Term.of("hip side cut, from the edge", "he", Angle.class);

    /** The same cut from square. */
    public static final Term<Angle> SIDE_CUT_FROM_SQUARE = Term.of("hip side cut, from square", "hf", Angle.class);

    /** A size of the rafter is not as it must be. */
    public static final ProblemCode SIZE = ProblemCode.of("corner-rafter.size", "Check the size and its unit.");

    private static final Term<Pitch> FIRST_PITCH = RoofFace.RAFTER_PITCH.at(Side.FIRST.toString());
    private static final Term<Angle> FIRST_PLAN_ANGLE = MeetingLine.PLAN_ANGLE.at(Side.FIRST.toString());
    private static final Formula RISE_BY_PITCH = Formula.of(RISE, RUN.times(FIRST_PITCH.tan()));
    private static final Formula PLAN_LENGTH_BY_RUN =
            Formula.of(PLAN_LENGTH, RUN.times(MeetingLine.PLAN_LENGTH_PER_RUN));
    private static final Formula LENGTH_BY_RUN = Formula.of(LENGTH, RUN.times(MeetingLine.TRUE_LENGTH_PER_RUN));
    private static final Formula TAIL_BY_OVERHANG = Formula.of(TAIL, OVERHANG.times(MeetingLine.TRUE_LENGTH_PER_RUN));
    private static final Formula SHORTENING_BY_RIDGE =
            Formula.of(SHORTENING_LEVEL, RIDGE_THICKNESS.over(2).over(FIRST_PLAN_ANGLE.sin()));
    private static final Formula SHORTENING_ALONG =
            Formula.of(SHORTENING, SHORTENING_LEVEL.over(MeetingLine.LINE_PITCH.cos()));
    private static final Formula LENGTH_TO_CUT_SUM =
            Formula.of(LENGTH_TO_CUT, LENGTH.minus(SHORTENING).plus(TAIL));
    private static final Formula PLUMB_IS_PITCH =
            Formula.of(CommonRafter.PLUMB_CUT_FROM_SQUARE, MeetingLine.LINE_PITCH);
    private static final Formula SEAT_IS_PITCH = Formula.of(CommonRafter.SEAT_CUT_FROM_EDGE, MeetingLine.LINE_PITCH);
    private static final Formula RUN_OF_EDGE =
            Formula.of(RUN, RoofEdge.PLAN_LENGTH.times(MeetingLine.PLAN_ANGLE.sin()));

    private final MeetingLine line;
    private final Figure<Length> run;
    private final Length overhang;
    private final Length thickness;
    private final Length ridge;
    private final Numbers numbers;

    private record Numbers(Length rise, Length planLength, Length length, Length tail, Length shortening, Length toCut)
            implements Serializable {}

    private CornerRafter(MeetingLine line, Figure<Length> run, Length overhang, Length thickness, Length ridge) {
        this.line = Objects.requireNonNull(line, "line");
        this.run = Objects.requireNonNull(run, "run");
        this.overhang = Objects.requireNonNull(overhang, "overhang");
        this.thickness = Objects.requireNonNull(thickness, "thickness");
        this.ridge = Objects.requireNonNull(ridge, "ridge");
        Problems problems = Problems.none();
        Checks.requireSize(problems, SIZE, "run", run.value());
        Checks.requireNoLessThanZero(problems, SIZE, "overhang", overhang);
        Checks.requireNoLessThanZero(problems, SIZE, "thickness", thickness);
        Checks.requireNoLessThanZero(problems, SIZE, "ridge thickness", ridge);
        problems.throwIfErrors();
        this.numbers = compute(Recorder.off());
    }

    /**
     * Returns the rafter under a meeting line.
     *
     * @param line the hip or valley
     * @param run the level run of the first slope from its plate line to the top of the line, above zero
     * @return the rafter, without tail, thickness or ridge board
     * @throws ProblemsException if the run is zero, below zero or over 1 km
     */
    public static CornerRafter of(MeetingLine line, Length run) {
        return of(line, Figure.given(Objects.requireNonNull(run, "run")));
    }

    /**
     * Returns the rafter under a meeting line, with the origin of its run.
     *
     * @param line the hip or valley
     * @param run the level run of the first slope from its plate line to the top of the line, above zero
     * @return the rafter, without tail, thickness or ridge board
     * @throws ProblemsException if the run is zero, below zero or over 1 km
     */
    public static CornerRafter of(MeetingLine line, Figure<Length> run) {
        return new CornerRafter(line, run, Length.ZERO, Length.ZERO, Length.ZERO);
    }

    /**
     * Returns the rafter under a hip or valley of a roof, over the whole length of that edge, from the fascia line up.
     *
     * @param edge the hip or valley
     * @return the rafter, without tail, thickness or ridge board
     * @throws ProblemsException if the edge is neither a hip nor a valley that slopes
     */
    public static CornerRafter of(RoofEdge edge) {
        MeetingLine line = edge.meetingLine();
        Length onPlan = edge.planLength();
        Angle planAngle = line.planAngle(Side.FIRST);
        Figure<Length> run = Worked.by(RUN, r -> {
            Length length = r.use(RoofEdge.PLAN_LENGTH, Given.takenFrom(onPlan, "the plan"));
            Angle angle = r.use(MeetingLine.PLAN_ANGLE, Given.takenFrom(planAngle, "the plan"));
            return r.record(RUN, length.times(angle.sin()), RUN_OF_EDGE);
        });
        return of(line, run);
    }

    /**
     * Returns the same rafter with a tail out to the tails of the common rafters.
     *
     * @param level how far the tails of the first slope reach beyond its plate line, level and square to the eaves
     * @return the rafter with that tail
     * @throws ProblemsException if the overhang is below zero or over 1 km
     */
    public CornerRafter withOverhang(Length level) {
        return new CornerRafter(line, run, level, thickness, ridge);
    }

    /**
     * Returns the same rafter of a thickness, from which the drop of an unbacked hip follows.
     *
     * @param width the thickness of the timber, across
     * @return the rafter of that thickness
     * @throws ProblemsException if the thickness is below zero or over 1 km
     */
    public CornerRafter withThickness(Length width) {
        return new CornerRafter(line, run, overhang, width, ridge);
    }

    /**
     * Returns the same rafter against a ridge board parallel to the eaves of the first slope.
     *
     * @param board the thickness of the ridge board
     * @return the rafter with that deduction
     * @throws ProblemsException if the thickness is below zero or over 1 km
     */
    public CornerRafter withRidge(Length board) {
        return new CornerRafter(line, run, overhang, thickness, board);
    }

    private Numbers compute(Recorder r) {
        line.recordInto(r);
        Length level = r.use(RUN, run);
        Length rise = r.record(RISE, line.slopePitch(Side.FIRST).riseOver(level), RISE_BY_PITCH);
        Length onPlan = r.record(PLAN_LENGTH, level.times(line.planLengthPerRun()), PLAN_LENGTH_BY_RUN);
        Length length = r.record(LENGTH, level.times(line.trueLengthPerRun()), LENGTH_BY_RUN);
        Length tail = r.record(TAIL, r.use(OVERHANG, overhang).times(line.trueLengthPerRun()), TAIL_BY_OVERHANG);
        Length board = r.use(RIDGE_THICKNESS, ridge);
        Length back = r.record(
                SHORTENING_LEVEL,
                board.dividedBy(2).dividedBy(line.planAngle(Side.FIRST).sin()),
                SHORTENING_BY_RIDGE);
        Length shortening = r.record(SHORTENING, line.pitch().slopeOver(back), SHORTENING_ALONG);
        Length toCut = r.record(LENGTH_TO_CUT, length.minus(shortening).plus(tail), LENGTH_TO_CUT_SUM);
        Angle cut = r.record(CommonRafter.PLUMB_CUT_FROM_SQUARE, line.pitch().toAngle(), PLUMB_IS_PITCH);
        r.record(CommonRafter.SEAT_CUT_FROM_EDGE, cut, SEAT_IS_PITCH);
        if (r.isOn()) {
            recordBySide(Side.FIRST, r);
            recordBySide(Side.SECOND, r);
        }
        return new Numbers(rise, onPlan, length, tail, shortening, toCut);
    }

    private void recordBySide(Side side, Recorder r) {
        r.use(THICKNESS, thickness);
        Expression half = THICKNESS.over(2);
        Expression tan = MeetingLine.PLAN_ANGLE.at(side.toString()).tan();
        Term<Length> plumb = DROP_PLUMB.at(side.toString());
        r.record(
                plumb,
                dropPlumb(side),
                Formula.of(plumb, half.times(MeetingLine.LINE_PITCH.tan()).over(tan)));
        Term<Length> square = DROP_SQUARE.at(side.toString());
        r.record(
                square,
                dropSquare(side),
                Formula.of(square, half.times(MeetingLine.LINE_PITCH.sin()).over(tan)));
        Term<Angle> edge = SIDE_CUT_FROM_EDGE.at(side.toString());
        r.record(
                edge,
                sideCutFromEdge(side),
                Formula.of(
                        edge,
                        MeetingLine.PLAN_ANGLE
                                .at(side.toString())
                                .sin()
                                .times(MeetingLine.LINE_PITCH.cos())
                                .arcTanOver(MeetingLine.PLAN_ANGLE
                                        .at(side.toString())
                                        .cos())));
        Term<Angle> fromSquare = SIDE_CUT_FROM_SQUARE.at(side.toString());
        r.record(
                fromSquare,
                sideCutFromSquare(side),
                Formula.of(fromSquare, Expression.degrees(90).minus(edge)));
    }

    /** Returns the hip or valley above the rafter. */
    public MeetingLine line() {
        return line;
    }

    /** Returns the height gained along the rafter. */
    public Length rise() {
        return numbers.rise;
    }

    /** Returns the length of the rafter on plan. */
    public Length planLength() {
        return numbers.planLength;
    }

    /** Returns the length along the top edge, from the plate corner to the centre of the ridge. */
    public Length length() {
        return numbers.length;
    }

    /** Returns the length of the tail along the top edge, beyond the plate corner. */
    public Length tail() {
        return numbers.tail;
    }

    /** Returns what the ridge board takes off, measured along the rafter. */
    public Length shortening() {
        return numbers.shortening;
    }

    /** Returns the length along the top edge, from the ridge board to the end of the tail. */
    public Length lengthToCut() {
        return numbers.toCut;
    }

    /** Returns the angle of the plumb cut from square across the rafter: the pitch of the hip or valley. */
    public Angle plumbCutFromSquare() {
        return line.pitch().toAngle();
    }

    /** Returns the angle of the seat cut from the edge of the rafter: the pitch of the hip or valley. */
    public Angle seatCutFromEdge() {
        return line.pitch().toAngle();
    }

    /**
     * Returns the angle of the cut across the top edge, left square, against a ridge parallel to the eaves of one
     * slope, from the edge of the rafter.
     *
     * @param side the slope to whose eaves the ridge is parallel
     * @return the angle from the edge; {@code tan = tan(plan angle) × cos(pitch of the hip)}
     */
    public Angle sideCutFromEdge(Side side) {
        Angle d = line.planAngle(side);
        return Angle.ofRadians(StrictMath.atan2(d.sin() * line.pitch().cos(), d.cos()));
    }

    /**
     * Returns the same cut from square.
     *
     * @param side the slope to whose eaves the ridge is parallel
     * @return 90° less the angle from the edge
     */
    public Angle sideCutFromSquare(Side side) {
        return Angle.ofDegrees(90).minus(sideCutFromEdge(side));
    }

    /**
     * Returns how far an unbacked hip must come down for its edge to lie in one slope, measured plumb.
     *
     * @param side the slope
     * @return half the thickness × tan(pitch of the hip) ÷ tan(plan angle); with unequal pitches take the greater of
     *     both
     */
    public Length dropPlumb(Side side) {
        return halfOverTangent(side).times(line.pitch().tan());
    }

    /**
     * Returns how far an unbacked hip must come down for its edge to lie in one slope, measured square to the hip.
     *
     * @param side the slope
     * @return half the thickness × sin(pitch of the hip) ÷ tan(plan angle)
     */
    public Length dropSquare(Side side) {
        return halfOverTangent(side).times(line.pitch().sin());
    }

    private Length halfOverTangent(Side side) {
        Angle d = line.planAngle(side);
        return thickness.times(d.cos() / d.sin() / 2);
    }

    /**
     * Returns the line of a cutting list for so many of this rafter. The side cuts are those of a top edge left square,
     * against a ridge parallel to the eaves of the first slope and against one parallel to those of the second.
     *
     * @param count how many, at least 1
     * @return the line
     */
    public CuttingLine toCut(int count) {
        return new CuttingLine(
                line.isValley() ? "valley rafter" : "hip rafter",
                count,
                lengthToCut(),
                lengthToCut(),
                List.of(
                        new Cut("plumb cut", plumbCutFromSquare(), Cut.Datum.FROM_SQUARE),
                        new Cut("seat cut", seatCutFromEdge(), Cut.Datum.FROM_EDGE),
                        new Cut("side cut to the first slope", sideCutFromEdge(Side.FIRST), Cut.Datum.FROM_EDGE),
                        new Cut("side cut to the second slope", sideCutFromEdge(Side.SECOND), Cut.Datum.FROM_EDGE)));
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof CornerRafter c
                && line.equals(c.line)
                && run.equals(c.run)
                && overhang.equals(c.overhang)
                && thickness.equals(c.thickness)
                && ridge.equals(c.ridge);
    }

    @Override
    public int hashCode() {
        return Objects.hash(line, run.value(), overhang, thickness, ridge);
    }

    /** Returns for example {@code hip rafter 6577.644796 mm at 30.682056176397387°}. */
    @Override
    public String toString() {
        return (line.isValley() ? "valley" : "hip") + " rafter " + length() + " at " + line.pitch();
    }
}
