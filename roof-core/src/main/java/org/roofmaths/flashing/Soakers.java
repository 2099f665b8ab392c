package org.roofmaths.flashing;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;

/**
 * Soakers: pieces of sheet laid one with each course of a double-lap covering beside a wall, half up the wall and half under the
 * units.
 *
 * <p>Length {@code = gauge + headlap + turn over the head}; width {@code = up the wall + under the covering}; one at each course above
 * the under-eaves course, tops included: 42 full courses and one of tops take 43. For example, at gauge 100 mm and headlap 65 mm with
 * 25 mm turned over, 190 mm long; 75 mm up the wall and 100 mm under the tiles, 175 mm wide.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Soakers extends Flashing {
    private static final long serialVersionUID = 1L;

    /** How many courses lie above the under-eaves course, tops included. */
    public static final Term<Integer> COURSES = Term.of("courses above the under-eaves course", "nk", Integer.class);
    /** The slope length that the courses cover. */
    public static final Term<Length> SLOPE_SIDE = Term.of("slope length beside the wall", "Ls", Length.class);
    /** The gauge beside the wall. */
    public static final Term<Length> GAUGE = Term.of("gauge beside the wall", "gw", Length.class);
    /** The headlap beside the wall. */
    public static final Term<Length> HEADLAP = Term.of("headlap beside the wall", "hw", Length.class);
    /** The length of a soaker. */
    public static final Term<Length> SOAKER_LENGTH = Term.of("soaker length", "Lk", Length.class);
    /** How many soakers. */
    public static final Term<Integer> SOAKERS = Term.of("soakers", "nS", Integer.class);

    private static final Formula LENGTH_BY_GAUGE =
            Formula.of(SOAKER_LENGTH, GAUGE.plus(HEADLAP).plus(SoakerDemand.TURN_OVER));
    private static final Formula WIDTH_BY_LEGS =
            Formula.of(GIRTH, SoakerDemand.UP_THE_WALL.plus(SoakerDemand.UNDER_COVERING));
    private static final Formula ONE_A_COURSE = Formula.of(SOAKERS, COURSES);
    private static final Formula LENGTH_OF_ALL = Formula.of(METAL_LENGTH, SOAKERS.times(SOAKER_LENGTH));
    private static final Formula AREA_OF_ALL = Formula.of(METAL_AREA, METAL_LENGTH.times(GIRTH));
    private static final Formula COURSES_ON_SLOPE = Formula.of(COURSES, SLOPE_SIDE.timesToCover(GAUGE));
    private static final Formula COURSES_AT_STACK =
            Formula.of(COURSES, SLOPE_SIDE.timesToCover(GAUGE).plus(1));

    private final Figure<Integer> courses;
    private final Figure<Length> gauge;
    private final Figure<Length> headlap;
    private final SoakerDemand demand;

    private final Length soakerLength;
    private final SheetWork work;

    private Soakers(Figure<Integer> courses, Figure<Length> gauge, Figure<Length> headlap, SoakerDemand demand) {
        this.courses = courses;
        this.gauge = gauge;
        this.headlap = headlap;
        this.demand = demand;
        soakerLength = soakerLength(Recorder.off());
        work = compute(Recorder.off());
    }

    /**
     * Returns the soakers beside a wall, one at each course.
     *
     * @param courses how many courses lie above the under-eaves course, tops included; 1 or more
     * @param gauge the gauge beside the wall, above zero
     * @param headlap the headlap beside the wall, zero or more
     * @param demand what is asked of the soakers
     * @return the soakers
     * @throws org.roofmaths.problem.ProblemsException with everything that is wrong with the three numbers
     */
    public static Soakers of(
            Figure<Integer> courses, Figure<Length> gauge, Figure<Length> headlap, SoakerDemand demand) {
        Problems problems = Problems.none()
                .require(
                        courses.value() >= 1,
                        FlashingDemand.WRONG_SIZE,
                        COURSES.name(),
                        courses.value(),
                        "be 1 or more");
        Sizes.requirePositive(problems, GAUGE, gauge);
        Sizes.requireNotNegative(problems, HEADLAP, headlap);
        problems.throwIfErrors();
        return new Soakers(courses, gauge, headlap, Objects.requireNonNull(demand, "demand"));
    }

    /**
     * Returns the soakers beside a wall, one at each course.
     *
     * @param courses how many courses lie above the under-eaves course, tops included; 1 or more
     * @param gauge the gauge beside the wall, above zero
     * @param headlap the headlap beside the wall, zero or more
     * @param demand what is asked of the soakers
     * @return the soakers
     * @throws org.roofmaths.problem.ProblemsException with everything that is wrong with the three numbers
     */
    public static Soakers of(int courses, Length gauge, Length headlap, SoakerDemand demand) {
        return of(Given.of(courses), Given.of(gauge), Given.of(headlap), demand);
    }

    /**
     * Returns what {@link #of(int, Length, Length, SoakerDemand)} would, or its problems.
     *
     * @param courses how many courses lie above the under-eaves course, tops included
     * @param gauge the gauge beside the wall
     * @param headlap the headlap beside the wall
     * @param demand what is asked of the soakers
     * @return the soakers, or the problems
     */
    public static Attempt<Soakers> attempt(int courses, Length gauge, Length headlap, SoakerDemand demand) {
        return Attempt.call(() -> of(courses, gauge, headlap, demand));
    }

    /**
     * Returns how many courses a slope length takes at a gauge, for use as the courses of the soakers: 4200 mm at 100 mm is 42.
     *
     * @param slopeLength the length along the slope, above zero
     * @param gauge the gauge, above zero
     * @return the number of courses
     * @throws org.roofmaths.problem.ProblemsException if the length or the gauge is not above zero
     */
    public static Worked<Integer> coursesOn(Length slopeLength, Length gauge) {
        return courses(slopeLength, gauge, COURSES_ON_SLOPE, 0);
    }

    /**
     * Returns how many soakers the side of a stack takes, for use as the courses of the soakers: one more than its slope side divided
     * by the gauge, since the courses do not start where the stack starts. 537.1 mm at 100 mm is 7.
     *
     * @param slopeSide the side of the stack along the slope, above zero
     * @param gauge the gauge, above zero
     * @return the number of soakers
     * @throws org.roofmaths.problem.ProblemsException if the length or the gauge is not above zero
     */
    public static Worked<Integer> coursesBesideStack(Length slopeSide, Length gauge) {
        return courses(slopeSide, gauge, COURSES_AT_STACK, 1);
    }

    private static Worked<Integer> courses(Length slopeLength, Length gauge, Formula formula, int more) {
        Problems problems = Problems.none();
        Sizes.requirePositive(problems, SLOPE_SIDE, Given.of(slopeLength));
        Sizes.requirePositive(problems, GAUGE, Given.of(gauge));
        problems.throwIfErrors();
        return Worked.by(COURSES, r -> {
            Length slope = r.use(SLOPE_SIDE, slopeLength);
            Length step = r.use(GAUGE, gauge);
            return r.record(COURSES, Sizes.toCover(slope, step) + more, formula);
        });
    }

    private Length soakerLength(Recorder r) {
        Length step = r.use(GAUGE, gauge);
        Length lap = r.use(HEADLAP, headlap);
        Length turn = r.use(SoakerDemand.TURN_OVER, demand.turnOver());
        return r.record(SOAKER_LENGTH, step.plus(lap).plus(turn), LENGTH_BY_GAUGE);
    }

    @Override
    SheetWork compute(Recorder r) {
        r.use(COURSES, courses);
        int count = r.record(SOAKERS, courses.value(), ONE_A_COURSE);
        Length length = soakerLength(r);
        Length up = r.use(SoakerDemand.UP_THE_WALL, demand.upTheWall());
        Length under = r.use(SoakerDemand.UNDER_COVERING, demand.underCovering());
        Length width = r.record(GIRTH, up.plus(under), WIDTH_BY_LEGS);
        Length total = r.record(METAL_LENGTH, length.times((long) count), LENGTH_OF_ALL);
        Area area = r.record(METAL_AREA, total.times(width), AREA_OF_ALL);
        List<FlashingPiece> pieces = IntStream.rangeClosed(1, count)
                .mapToObj(i -> new FlashingPiece(
                        "soaker " + i + " of " + count, gauge.value().times((long) (i - 1)), length, width))
                .toList();
        return new SheetWork(width, total, area, SheetWork.mass(r, area, demand.sheet()), pieces, List.of());
    }

    @Override
    SheetWork work() {
        return work;
    }

    @Override
    public String name() {
        return "soakers";
    }

    @Override
    public MetalSheet sheet() {
        return demand.sheet();
    }

    @Override
    public List<Leg> legs() {
        return List.of(
                new Leg("under the covering", demand.underCovering().value()),
                new Leg("up the wall", demand.upTheWall().value()));
    }

    /** Returns how many soakers there are. */
    public int count() {
        return pieceCount();
    }

    /** Returns the length of a soaker along the slope. */
    public Length soakerLength() {
        return soakerLength;
    }

    /** Returns the width of a soaker before folding. */
    public Length soakerWidth() {
        return girth();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Soakers s
                && courses.equals(s.courses)
                && gauge.equals(s.gauge)
                && headlap.equals(s.headlap)
                && demand.equals(s.demand);
    }

    @Override
    public int hashCode() {
        return Objects.hash(courses, gauge, headlap, demand);
    }
}
