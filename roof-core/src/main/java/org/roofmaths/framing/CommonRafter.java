package org.roofmaths.framing;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.roof.Roofs;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Direction;
import org.roofmaths.units.Length;
import org.roofmaths.units.Offset;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;
import org.roofmaths.working.Working;

/**
 * A rafter that runs straight up the slope from the wall plate to the ridge or to the wall above.
 *
 * <p>All lengths are along the top edge of the rafter. The rafter length is the geometric line from the plate line to
 * the apex line: run / cos(pitch). The length to cut takes off half the ridge board, measured level and so longer along
 * the rafter, and adds the tail. For example, a run of 3600 mm at 35° gives a rafter length of 4394.8 mm; with a ridge
 * board of 32 mm and an overhang of 300 mm level the length to cut is 4394.8 − 19.5 + 366.2 = 4741.5 mm.
 *
 * <p>The plumb cut is marked at the pitch from square across the rafter, the seat cut at the pitch from its edge. No
 * allowance is made for sawing, and no member is sized: whether a rafter carries its load is for a person competent in
 * structures. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class CommonRafter implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The level distance from the plate line to the apex line. */
    public static final Term<Length> RUN = Term.of("rafter run", "rr", Length.class);

    /** The height of the apex line over the plate line. */
    public static final Term<Length> RISE = Term.of("rafter rise", "rh", Length.class);

    /** The pitch of the rafter. */
    public static final Term<Pitch> PITCH = RoofFace.RAFTER_PITCH;

    /** The length along the top edge from the plate line to the apex line. */
    public static final Term<Length> LENGTH = Term.of("rafter length", "rl", Length.class);

    /** How far the tail reaches beyond the plate line, level. */
    public static final Term<Length> OVERHANG = Term.of("rafter overhang, level", "ro", Length.class);

    /** How far the tail falls below the plate line. */
    public static final Term<Length> DROP = Term.of("rafter overhang, plumb", "rd", Length.class);

    /** The length of the tail along the top edge, beyond the plate line. */
    public static final Term<Length> TAIL = Term.of("rafter tail", "rt", Length.class);

    /** The thickness of the ridge board. */
    public static final Term<Length> RIDGE_THICKNESS = Term.of("ridge board thickness", "rb", Length.class);

    /** What the ridge board takes off the rafter, measured level, square to the plumb cut. */
    public static final Term<Length> RIDGE_DEDUCTION_LEVEL = Term.of("ridge deduction, level", "dl", Length.class);

    /** What the ridge board takes off the rafter, measured along it. */
    public static final Term<Length> RIDGE_DEDUCTION = Term.of("ridge deduction, along the rafter", "dr", Length.class);

    /** The length along the top edge from the plumb cut at the ridge to the end of the tail. */
    public static final Term<Length> LENGTH_TO_CUT = Term.of("rafter length to cut", "rc", Length.class);

    /** The angle of the plumb cut from square across the rafter. */
    public static final Term<Angle> PLUMB_CUT_FROM_SQUARE = Term.of("plumb cut, from square", "pc", Angle.class);

    /** The angle of the seat cut from the edge of the rafter. */
    public static final Term<Angle> SEAT_CUT_FROM_EDGE = Term.of("seat cut, from the edge", "sc", Angle.class);

    /** A size of a rafter is not as it must be. */
    public static final ProblemCode SIZE = ProblemCode.of("rafter.size", "Check the size and its unit.");

    private static final Formula RUN_IS_HALF_SPAN = Formula.of(RUN, Roofs.SPAN.over(2));
    private static final Formula RUN_OF_FACE = Formula.of(RUN, RoofFace.RUN);
    private static final Formula RISE_BY_PITCH = Formula.of(RISE, RUN.times(PITCH.tan()));
    private static final Formula LENGTH_BY_PITCH = Formula.of(LENGTH, RUN.over(PITCH.cos()));
    private static final Formula TAIL_OF_LEVEL = Formula.of(TAIL, OVERHANG.over(PITCH.cos()));
    private static final Formula TAIL_OF_PLUMB = Formula.of(TAIL, DROP.over(PITCH.sin()));
    private static final Formula HALF_THE_RIDGE = Formula.of(RIDGE_DEDUCTION_LEVEL, RIDGE_THICKNESS.over(2));
    private static final Formula DEDUCTION_BY_PITCH =
            Formula.of(RIDGE_DEDUCTION, RIDGE_DEDUCTION_LEVEL.over(PITCH.cos()));
    private static final Formula LENGTH_TO_CUT_SUM =
            Formula.of(LENGTH_TO_CUT, LENGTH.minus(RIDGE_DEDUCTION).plus(TAIL));
    private static final Formula PLUMB_IS_PITCH = Formula.of(PLUMB_CUT_FROM_SQUARE, PITCH);
    private static final Formula SEAT_IS_PITCH = Formula.of(SEAT_CUT_FROM_EDGE, PITCH);
    private static final Length LONGEST = Length.ofMetres(1000);

    private final Figure<Length> run;
    private final Figure<Pitch> pitch;
    private final Offset overhang;
    private final Length ridge;
    private final Numbers numbers;

    private record Numbers(
            Length rise, Length length, Length tail, Length ridgeDeduction, Length lengthToCut, Angle cut)
            implements Serializable {}

    private CommonRafter(Figure<Length> run, Figure<Pitch> pitch, Offset overhang, Length ridge) {
        this.run = Objects.requireNonNull(run, "run");
        this.pitch = Objects.requireNonNull(pitch, "pitch");
        this.overhang = Objects.requireNonNull(overhang, "overhang");
        this.ridge = Objects.requireNonNull(ridge, "ridge");
        Problems problems = Problems.none();
        boolean inReach = run.value().isPositive() && !run.value().isLongerThan(LONGEST);
        problems.require(inReach, SIZE, "run", run.value(), "be above 0 mm and at most " + LONGEST);
        problems.require(
                !inReach || run.value().toMetres() * pitch.value().tan() <= LONGEST.toMetres(),
                SIZE,
                "pitch",
                pitch.value(),
                "give a rise of at most " + LONGEST + " over a run of " + run.value());
        problems.require(
                overhang.direction() != Direction.SQUARE_TO_SLOPE
                        && !overhang.length().isNegative()
                        && !overhang.length().isLongerThan(LONGEST),
                SIZE,
                "overhang",
                overhang,
                "be measured level, plumb or on the slope, from 0 mm to " + LONGEST);
        problems.require(
                !ridge.isNegative() && (!inReach || ridge.dividedBy(2).isShorterThan(run.value())),
                SIZE,
                "ridge thickness",
                ridge,
                "be 0 mm or more, and less than twice the run");
        problems.throwIfErrors();
        this.numbers = compute(Recorder.off());
    }

    /**
     * Returns the rafter over a run at a pitch.
     *
     * @param run the level distance from the plate line to the apex line, above zero
     * @param pitch the pitch
     * @return the rafter, without tail and without ridge board
     * @throws ProblemsException if the run is zero, below zero or over 1 km, or the rise is
     */
    public static CommonRafter of(Length run, Pitch pitch) {
        return of(
                Figure.given(Objects.requireNonNull(run, "run")), Figure.given(Objects.requireNonNull(pitch, "pitch")));
    }

    /**
     * Returns the rafter over a run at a pitch, with the origin of both.
     *
     * @param run the level distance from the plate line to the apex line, above zero
     * @param pitch the pitch
     * @return the rafter, without tail and without ridge board
     * @throws ProblemsException if the run is zero, below zero or over 1 km, or the rise is
     */
    public static CommonRafter of(Figure<Length> run, Figure<Pitch> pitch) {
        return new CommonRafter(run, pitch, Offset.level(Length.ZERO), Length.ZERO);
    }

    /**
     * Returns the rafter over a run at a pitch, or what is wrong with them.
     *
     * @param run the level distance from the plate line to the apex line
     * @param pitch the pitch
     * @return the rafter or the problems
     */
    public static Attempt<CommonRafter> attempt(Length run, Pitch pitch) {
        return Attempt.call(() -> of(run, pitch));
    }

    /**
     * Returns the rafter over half a span at a pitch.
     *
     * @param span the level distance from plate line to plate line, above zero
     * @param pitch the pitch of both slopes
     * @return the rafter, without tail and without ridge board
     * @throws ProblemsException if the span is zero, below zero or over 2 km, or the rise is
     */
    public static CommonRafter ofSpan(Length span, Pitch pitch) {
        Objects.requireNonNull(span, "span");
        Figure<Length> half = Worked.by(RUN, r -> {
            Length whole = r.use(Roofs.SPAN, span);
            return r.record(RUN, whole.dividedBy(2), RUN_IS_HALF_SPAN);
        });
        return of(half, Figure.given(Objects.requireNonNull(pitch, "pitch")));
    }

    /**
     * Returns the common rafter of a face, where the face reaches highest, with a tail out to the fascia line.
     *
     * @param face the face
     * @return the rafter, without ridge board
     */
    public static CommonRafter of(RoofFace face) {
        Figure<Length> level = face.runFigure();
        Figure<Length> run = Worked.by(RUN, r -> r.record(RUN, r.use(RoofFace.RUN, level), RUN_OF_FACE));
        return of(run, face.pitchFigure()).withOverhang(Offset.level(face.eavesOverhang()));
    }

    /**
     * Returns the same rafter with a tail beyond the plate line.
     *
     * @param beyond how far the tail reaches beyond the plate line: level, plumb or on the slope, zero or more
     * @return the rafter with that tail
     * @throws ProblemsException if the overhang is below zero, over 1 km or measured square to the slope
     */
    public CommonRafter withOverhang(Offset beyond) {
        return new CommonRafter(run, pitch, beyond, ridge);
    }

    /**
     * Returns the same rafter against a ridge board, half of which it gives way to.
     *
     * @param thickness the thickness of the board, zero or more
     * @return the rafter with that deduction
     * @throws ProblemsException if the thickness is below zero, or twice the run or more
     */
    public CommonRafter withRidge(Length thickness) {
        return new CommonRafter(run, pitch, overhang, thickness);
    }

    private Numbers compute(Recorder r) {
        Length level = r.use(RUN, run);
        Pitch p = r.use(PITCH, pitch);
        Length rise = r.record(RISE, p.riseOver(level), RISE_BY_PITCH);
        Length length = r.record(LENGTH, p.slopeOver(level), LENGTH_BY_PITCH);
        Length thickness = r.use(RIDGE_THICKNESS, ridge);
        Length back = r.record(RIDGE_DEDUCTION_LEVEL, thickness.dividedBy(2), HALF_THE_RIDGE);
        Length deduction = r.record(RIDGE_DEDUCTION, p.slopeOver(back), DEDUCTION_BY_PITCH);
        Length tail = tail(p, r);
        Length toCut = r.record(LENGTH_TO_CUT, length.minus(deduction).plus(tail), LENGTH_TO_CUT_SUM);
        Angle cut = r.record(PLUMB_CUT_FROM_SQUARE, p.toAngle(), PLUMB_IS_PITCH);
        r.record(SEAT_CUT_FROM_EDGE, cut, SEAT_IS_PITCH);
        return new Numbers(rise, length, tail, deduction, toCut, cut);
    }

    private Length tail(Pitch p, Recorder r) {
        return switch (overhang.direction()) {
            case LEVEL -> r.record(TAIL, p.slopeOver(r.use(OVERHANG, overhang.length())), TAIL_OF_LEVEL);
            case PLUMB -> r.record(TAIL, r.use(DROP, overhang.length()).dividedBy(p.sin()), TAIL_OF_PLUMB);
            default -> r.use(TAIL, overhang.length());
        };
    }

    /** Returns the level distance from the plate line to the apex line. */
    public Length run() {
        return run.value();
    }

    /** Returns the pitch. */
    public Pitch pitch() {
        return pitch.value();
    }

    /** Returns the height of the apex line over the plate line: run × tan(pitch). */
    public Length rise() {
        return numbers.rise;
    }

    /** Returns the length along the top edge from the plate line to the apex line: run / cos(pitch). */
    public Length length() {
        return numbers.length;
    }

    /** Returns the length of the tail along the top edge, beyond the plate line. */
    public Length tail() {
        return numbers.tail;
    }

    /** Returns what half the ridge board takes off, measured along the rafter. */
    public Length ridgeDeduction() {
        return numbers.ridgeDeduction;
    }

    /** Returns the length along the top edge from the plumb cut at the ridge to the end of the tail. */
    public Length lengthToCut() {
        return numbers.lengthToCut;
    }

    /** Returns the angle of the plumb cut, from square across the rafter: the pitch. */
    public Angle plumbCutFromSquare() {
        return numbers.cut;
    }

    /** Returns the angle of the seat cut, from the edge of the rafter: the pitch. */
    public Angle seatCutFromEdge() {
        return numbers.cut;
    }

    /**
     * Returns the line of a cutting list for so many of this rafter.
     *
     * @param count how many, at least 1
     * @return the line
     */
    public CuttingLine toCut(int count) {
        return new CuttingLine(
                "common rafter",
                count,
                lengthToCut(),
                lengthToCut(),
                List.of(
                        new Cut("plumb cut", plumbCutFromSquare(), Cut.Datum.FROM_SQUARE),
                        new Cut("seat cut", seatCutFromEdge(), Cut.Datum.FROM_EDGE)));
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof CommonRafter c
                && run.equals(c.run)
                && pitch.equals(c.pitch)
                && overhang.equals(c.overhang)
                && ridge.equals(c.ridge);
    }

    @Override
    public int hashCode() {
        return Objects.hash(run.value(), pitch.value(), overhang, ridge);
    }

    /** Returns for example {@code common rafter 4394.78852 mm over a run of 3600 mm at 35°}. */
    @Override
    public String toString() {
        return "common rafter " + length() + " over a run of " + run() + " at " + pitch();
    }
}
