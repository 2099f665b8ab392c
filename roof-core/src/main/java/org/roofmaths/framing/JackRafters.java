package org.roofmaths.framing;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.MeetingLine;
import org.roofmaths.roof.MeetingLine.Side;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * The short rafters between the eaves and a hip, or between a valley and the ridge, at equal centres.
 *
 * <p>Each is longer than the one before by the common difference: centres × tan(plan angle) / cos(pitch). For example,
 * at 16 in centres on a slope of 8 in 12 over a square corner the difference is 19.23 in.
 *
 * <p>Distances are along the eaves from the corner of the plates; at a valley, along the ridge from the head of the
 * valley. Lengths are along the top edge to the centre line of the hip; the length to cut takes off half the hip's
 * thickness as it is met on plan, and is measured to the long point. A cripple between a hip and a valley that run
 * parallel is a {@link CommonRafter} over a run of the length of plate between their corners.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class JackRafters implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The distance from one jack rafter to the next, centre to centre. */
    public static final Term<Length> CENTRES = Term.of("jack centres", "jc", Length.class);

    /** How much longer each jack rafter is than the one before. */
    public static final Term<Length> COMMON_DIFFERENCE = Term.of("common difference of jacks", "jd", Length.class);

    /** How far a jack rafter stands from the corner, along the eaves. */
    public static final Term<Length> ALONG = Term.of("jack distance from the corner", "ja", Length.class);

    /** The level run of a jack rafter. */
    public static final Term<Length> RUN = Term.of("jack run", "jr", Length.class);

    /** The length of a jack rafter to the centre line of the hip or valley. */
    public static final Term<Length> LENGTH = Term.of("jack length", "jl", Length.class);

    /** The thickness of the hip or valley rafter. */
    public static final Term<Length> CORNER_THICKNESS = CornerRafter.THICKNESS;

    /** What the hip or valley rafter takes off a jack, measured along the jack. */
    public static final Term<Length> DEDUCTION = Term.of("jack deduction, along it", "jt", Length.class);

    /** The length of a jack rafter to its long point. */
    public static final Term<Length> LENGTH_TO_CUT =
            Term.of("jack length to cut, to the long point", "jk", Length.class);

    /** The thickness of the jack rafters. */
    public static final Term<Length> THICKNESS = Term.of("jack thickness", "jb", Length.class);

    /** How much longer a jack is to its long point than to its short point. */
    public static final Term<Length> LONG_POINT_OVER_SHORT =
            Term.of("jack, long point over short point", "jo", Length.class);

    /** The cut across the top edge against the hip or valley, from the edge. */
    public static final Term<Angle> SIDE_CUT_FROM_EDGE = Term.of("jack side cut, from the edge", "je", Angle.class);

    /** The same cut from square. */
    public static final Term<Angle> SIDE_CUT_FROM_SQUARE = Term.of("jack side cut, from square", "jf", Angle.class);

    /** A size of the jack rafters is not as it must be. */
    public static final ProblemCode SIZE = ProblemCode.of("jack-rafters.size", "Check the size and its unit.");

    /** No jack rafter stands on that side of the line. */
    public static final ProblemCode NONE_THERE = ProblemCode.of(
            "jack-rafters.none-there", "Take the other slope; here the line runs outside the square across the eaves.");

    /** More jack rafters than anybody would cut; a slip of units. */
    private static final int MOST = 10_000;

    private final MeetingLine line;
    private final Side side;
    private final Length centres;
    private final Length first;
    private final Length greatestRun;
    private final Length cornerThickness;
    private final Length thickness;
    private final Numbers numbers;

    private record Numbers(Length difference, Length deduction, Length longOverShort, List<Jack> jacks)
            implements Serializable {}

    /**
     * One jack rafter.
     *
     * @param number counted from the corner, from 1
     * @param along how far it stands from the corner along the eaves
     * @param run its level run
     * @param length its length to the centre line of the hip or valley
     * @param lengthToCut its length to the long point
     * @since 0.1
     */
    public record Jack(int number, Length along, Length run, Length length, Length lengthToCut)
            implements Serializable {
        /** Refuses null. */
        public Jack {
            Objects.requireNonNull(along, "along");
            Objects.requireNonNull(run, "run");
            Objects.requireNonNull(length, "length");
            Objects.requireNonNull(lengthToCut, "lengthToCut");
        }

        /** Returns for example {@code jack 2: 976.86 mm, 812.8 mm from the corner}. */
        @Override
        public String toString() {
            return "jack " + number + ": " + length + ", " + along + " from the corner";
        }
    }

    private JackRafters(
            MeetingLine line,
            Side side,
            Length centres,
            Length first,
            Length greatestRun,
            Length cornerThickness,
            Length thickness) {
        this.line = Objects.requireNonNull(line, "line");
        this.side = Objects.requireNonNull(side, "side");
        this.centres = Objects.requireNonNull(centres, "centres");
        this.first = Objects.requireNonNull(first, "first");
        this.greatestRun = Objects.requireNonNull(greatestRun, "greatestRun");
        this.cornerThickness = Objects.requireNonNull(cornerThickness, "cornerThickness");
        this.thickness = Objects.requireNonNull(thickness, "thickness");
        Problems problems = Problems.none();
        problems.require(
                line.planAngle(side).cos() > 0,
                NONE_THERE,
                side + " slope",
                "met at " + line.planAngle(side),
                "have its line at less than 90° on plan to its eaves to have jack rafters");
        Checks.requireSize(problems, SIZE, "centres", centres);
        Checks.requireSize(problems, SIZE, "distance of the first", first);
        Checks.requireSize(problems, SIZE, "greatest run", greatestRun);
        Checks.requireNoLessThanZero(problems, SIZE, "thickness of the hip or valley", cornerThickness);
        Checks.requireNoLessThanZero(problems, SIZE, "thickness", thickness);
        problems.throwIfErrors();
        Length width = greatestRun.times(
                line.planAngle(side).cos() / line.planAngle(side).sin());
        if (width.toMetres() / centres.toMetres() > MOST) {
            throw new ProblemsException(
                    List.of(Problem.error(SIZE, "centres", centres, "give at most " + MOST + " jack rafters")));
        }
        this.numbers = compute(Recorder.off());
    }

    /**
     * Returns the jack rafters on one side of a line, the first one centre distance from the corner.
     *
     * @param line the hip or valley
     * @param side which of its slopes the jacks lie in
     * @param centres the distance from one to the next along the eaves, centre to centre, above zero
     * @param commonRun the run of the common rafters; jacks of at least that run are common rafters and not listed
     * @return the jacks, shortest first
     * @throws ProblemsException if a size is wrong, or no jack can stand on that side
     */
    public static JackRafters of(MeetingLine line, Side side, Length centres, Length commonRun) {
        return new JackRafters(line, side, centres, centres, commonRun, Length.ZERO, Length.ZERO);
    }

    /**
     * Returns the same jacks, set out from another place.
     *
     * @param fromCorner how far the first stands from the corner along the eaves, above zero
     * @return the jacks
     */
    public JackRafters withFirstAt(Length fromCorner) {
        return new JackRafters(line, side, centres, fromCorner, greatestRun, cornerThickness, thickness);
    }

    /**
     * Returns the same jacks against a hip or valley rafter of a thickness, half of which they give way to.
     *
     * @param width the thickness of the hip or valley rafter
     * @return the jacks with that deduction
     */
    public JackRafters withCornerThickness(Length width) {
        return new JackRafters(line, side, centres, first, greatestRun, width, thickness);
    }

    /**
     * Returns the same jacks of a thickness, from which the difference of long and short point follows.
     *
     * @param width the thickness of each jack
     * @return the jacks of that thickness
     */
    public JackRafters withThickness(Length width) {
        return new JackRafters(line, side, centres, first, greatestRun, cornerThickness, width);
    }

    private Numbers compute(Recorder r) {
        line.recordInto(r);
        String at = side.toString();
        Pitch p = line.slopePitch(side);
        Angle d = line.planAngle(side);
        double tangent = d.tan();
        Term<Pitch> pitch = RoofFace.RAFTER_PITCH.at(at);
        Expression tan = MeetingLine.PLAN_ANGLE.at(at).tan();
        r.use(CENTRES, centres);
        Length difference = r.record(
                COMMON_DIFFERENCE,
                centres.times(tangent / p.cos()),
                Formula.of(COMMON_DIFFERENCE, CENTRES.times(tan).over(pitch.cos())));
        r.use(CORNER_THICKNESS, cornerThickness);
        Length deduction = r.record(
                DEDUCTION,
                cornerThickness.dividedBy(2 * d.cos() * p.cos()),
                Formula.of(
                        DEDUCTION,
                        CORNER_THICKNESS
                                .over(2)
                                .over(MeetingLine.PLAN_ANGLE.at(at).cos())
                                .over(pitch.cos())));
        r.use(THICKNESS, thickness);
        Length longOverShort = r.record(
                LONG_POINT_OVER_SHORT,
                thickness.times(tangent / p.cos()),
                Formula.of(LONG_POINT_OVER_SHORT, THICKNESS.times(tan).over(pitch.cos())));
        r.record(
                SIDE_CUT_FROM_EDGE,
                sideCutFromEdge(),
                Formula.of(SIDE_CUT_FROM_EDGE, pitch.cos().over(tan).arcTan()));
        r.record(
                SIDE_CUT_FROM_SQUARE,
                sideCutFromSquare(),
                Formula.of(SIDE_CUT_FROM_SQUARE, Expression.degrees(90).minus(SIDE_CUT_FROM_EDGE)));
        List<Jack> jacks = new ArrayList<>();
        for (Length along = first; ; along = along.plus(centres)) {
            String place = "jack " + (jacks.size() + 1);
            Length level = along.times(tangent);
            if (level.meetsLeast(greatestRun)) {
                break;
            }
            r.use(ALONG.at(place), along);
            r.record(
                    RUN.at(place),
                    level,
                    Formula.of(RUN.at(place), ALONG.at(place).times(tan)));
            Length length = r.record(
                    LENGTH.at(place),
                    p.slopeOver(level),
                    Formula.of(LENGTH.at(place), RUN.at(place).over(pitch.cos())));
            // the long point of a jack stands half its own thickness further along
            Length toCut = r.record(
                    LENGTH_TO_CUT.at(place),
                    length.minus(deduction).plus(longOverShort.dividedBy(2)),
                    Formula.of(
                            LENGTH_TO_CUT.at(place),
                            LENGTH.at(place).minus(DEDUCTION).plus(LONG_POINT_OVER_SHORT.over(2))));
            jacks.add(new Jack(jacks.size() + 1, along, level, length, toCut));
        }
        return new Numbers(difference, deduction, longOverShort, List.copyOf(jacks));
    }

    /** Returns how much longer each jack is than the one before. */
    public Length commonDifference() {
        return numbers.difference;
    }

    /** Returns the jacks, shortest first; empty if the first already has the run of a common rafter. */
    public List<Jack> jacks() {
        return numbers.jacks;
    }

    /** Returns what half the hip or valley rafter takes off, measured along a jack. */
    public Length deduction() {
        return numbers.deduction;
    }

    /** Returns how much longer a jack is to its long point than to its short point. */
    public Length longPointOverShort() {
        return numbers.longOverShort;
    }

    /** Returns the angle of the plumb cut from square across the rafter: the pitch of the slope. */
    public Angle plumbCutFromSquare() {
        return line.slopePitch(side).toAngle();
    }

    /** Returns the angle of the cut across the top edge, from the edge: {@code tan = cos(pitch) / tan(plan angle)}. */
    public Angle sideCutFromEdge() {
        return Angle.ofRadians(StrictMath.atan(
                line.slopePitch(side).cos() / line.planAngle(side).tan()));
    }

    /** Returns the same cut from square: 90° less the angle from the edge. */
    public Angle sideCutFromSquare() {
        return Angle.ofDegrees(90).minus(sideCutFromEdge());
    }

    /**
     * Returns the lines of a cutting list, one for each jack.
     *
     * @param count how many of each, at least 1; 2 where the other slope has the same jacks the other way round
     * @return the lines, shortest jack first
     */
    public CuttingList toCut(int count) {
        List<Cut> cuts = List.of(
                new Cut("plumb cut", plumbCutFromSquare(), Cut.Datum.FROM_SQUARE),
                new Cut("seat cut", plumbCutFromSquare(), Cut.Datum.FROM_EDGE),
                new Cut("side cut", sideCutFromEdge(), Cut.Datum.FROM_EDGE));
        return CuttingList.of(jacks().stream()
                .map(jack -> new CuttingLine(
                        "jack rafter",
                        count,
                        jack.lengthToCut(),
                        jack.lengthToCut().minus(longPointOverShort()),
                        cuts))
                .toList());
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof JackRafters j
                && line.equals(j.line)
                && side == j.side
                && centres.equals(j.centres)
                && first.equals(j.first)
                && greatestRun.equals(j.greatestRun)
                && cornerThickness.equals(j.cornerThickness)
                && thickness.equals(j.thickness);
    }

    @Override
    public int hashCode() {
        return Objects.hash(line, side, centres, first, greatestRun, cornerThickness, thickness);
    }

    /** Returns for example {@code 6 jack rafters at 600 mm, common difference 783.244373 mm}. */
    @Override
    public String toString() {
        return jacks().size() + " jack rafters at " + centres + ", common difference " + commonDifference();
    }
}
