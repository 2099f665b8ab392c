package org.roofmaths.order;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * How many fixings the units of a rectangular face take, each unit of the perimeter counted once.
 *
 * <p>Eaves, top and ends overlap in the corners; what is left inside them is counted and taken from the whole. 11 courses of 18 units, one
 * deep on all four sides, are 198 units of which (11 − 2) × (18 − 2) = 144 are inside and 54 on the perimeter.
 *
 * @since 0.1
 */
public final class Fixings implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The number of courses. */
    public static final Term<Number> COURSES = Term.of("courses fixed", "n", Number.class);

    /** The units in each course, part units included. */
    public static final Term<Number> UNITS_IN_COURSE = Term.of("units fixed in a course", "u", Number.class);

    /** The courses or units deep that the perimeter is; at the place of the side. */
    public static final Term<Integer> DEEP = Term.of("depth of the perimeter", "e", Integer.class);

    /** The courses away from eaves and top. */
    public static final Term<Long> COURSES_INSIDE = Term.of("courses inside the perimeter", "n₀", Long.class);

    /** The units of a course away from its ends. */
    public static final Term<Long> UNITS_INSIDE = Term.of("units of a course inside the perimeter", "u₀", Long.class);

    /** All units. */
    public static final Term<Long> ALL_UNITS = Term.of("units to fix", "N", Long.class);

    /** The units on the perimeter, each once. */
    public static final Term<Long> PERIMETER_UNITS = Term.of("units on the perimeter", "P", Long.class);

    /** The fixings in each unit away from the perimeter. */
    public static final Term<Integer> IN_EVERY_UNIT = Term.of("fixings in a unit inside", "f", Integer.class);

    /** The fixings in each unit on the perimeter. */
    public static final Term<Integer> IN_PERIMETER_UNIT =
            Term.of("fixings in a unit of the perimeter", "fₚ", Integer.class);

    /** All fixings. */
    public static final Term<Long> FIXINGS = Term.of("fixings", "F", Long.class);

    /** A count that is no count. */
    public static final ProblemCode NOT_A_COUNT = ProblemCode.of(
            "fixings.not-a-count", "Give the courses and the units of a course as whole numbers above zero.");

    private static final Expression NONE = Expression.number(0);
    private static final Formula INSIDE_COURSES = Formula.of(
            COURSES_INSIDE,
            COURSES.minus(deep(FaceSide.EAVES)).minus(deep(FaceSide.TOP)).greatest(NONE));
    private static final Formula INSIDE_UNITS = Formula.of(
            UNITS_INSIDE,
            UNITS_IN_COURSE
                    .minus(deep(FaceSide.LEFT))
                    .minus(deep(FaceSide.RIGHT))
                    .greatest(NONE));
    private static final Formula ALL = Formula.of(ALL_UNITS, COURSES.times(UNITS_IN_COURSE));
    private static final Formula PERIMETER =
            Formula.of(PERIMETER_UNITS, ALL_UNITS.minus(COURSES_INSIDE.times(UNITS_INSIDE)));
    private static final Formula SUM = Formula.of(
            FIXINGS,
            ALL_UNITS.minus(PERIMETER_UNITS).times(IN_EVERY_UNIT).plus(PERIMETER_UNITS.times(IN_PERIMETER_UNIT)));

    private final Figure<? extends Number> courses;
    private final Figure<? extends Number> unitsInCourse;
    private final FixingPattern pattern;
    private final long all;
    private final long perimeter;
    private final long fixings;

    private Fixings(Figure<? extends Number> courses, Figure<? extends Number> unitsInCourse, FixingPattern pattern) {
        this.courses = courses;
        this.unitsInCourse = unitsInCourse;
        this.pattern = pattern;
        long[] found = compute(Recorder.off());
        all = found[0];
        perimeter = found[1];
        fixings = found[2];
    }

    private static Term<Integer> deep(FaceSide side) {
        return DEEP.at(side.toString());
    }

    /**
     * Returns the fixings of a face of equal courses.
     *
     * @param courses how many courses, 1 or more
     * @param unitsInCourse how many units in each, part units included, 1 or more
     * @param pattern how they are fixed
     * @return the fixings
     * @throws org.roofmaths.problem.ProblemsException if a count is not a whole number above zero
     */
    public static Fixings of(long courses, long unitsInCourse, FixingPattern pattern) {
        return of(Figure.given(courses), Figure.given(unitsInCourse), pattern);
    }

    /**
     * Returns the fixings of a face of equal courses whose counts have a trail.
     *
     * @param courses how many courses, 1 or more
     * @param unitsInCourse how many units in each, part units included, 1 or more
     * @param pattern how they are fixed
     * @return the fixings
     * @throws org.roofmaths.problem.ProblemsException if a count is not a whole number above zero
     */
    public static Fixings of(
            Figure<? extends Number> courses, Figure<? extends Number> unitsInCourse, FixingPattern pattern) {
        return attempt(courses, unitsInCourse, pattern).orThrow();
    }

    /**
     * Returns the fixings of a face of equal courses, or every problem that stands against them.
     *
     * @param courses how many courses
     * @param unitsInCourse how many units in each, part units included
     * @param pattern how they are fixed
     * @return the fixings, or the problems
     */
    public static Attempt<Fixings> attempt(
            Figure<? extends Number> courses, Figure<? extends Number> unitsInCourse, FixingPattern pattern) {
        Objects.requireNonNull(pattern, "pattern");
        return Problems.none()
                .require(
                        isCount(courses),
                        NOT_A_COUNT,
                        COURSES.name(),
                        courses.value(),
                        "be a whole number from 1 to 1000000")
                .require(
                        isCount(unitsInCourse),
                        NOT_A_COUNT,
                        UNITS_IN_COURSE.name(),
                        unitsInCourse.value(),
                        "be a whole number from 1 to 1000000")
                .attempt(() -> new Fixings(courses, unitsInCourse, pattern));
    }

    private static boolean isCount(Figure<? extends Number> figure) {
        double value = figure.value().doubleValue();
        return value >= 1 && value <= 1_000_000 && value == StrictMath.rint(value);
    }

    private long[] compute(Recorder r) {
        long n = r.use(COURSES, courses).longValue();
        long u = r.use(UNITS_IN_COURSE, unitsInCourse).longValue();
        long coursesInside = r.record(
                COURSES_INSIDE, Math.max(0L, n - use(FaceSide.EAVES, r) - use(FaceSide.TOP, r)), INSIDE_COURSES);
        long unitsInside =
                r.record(UNITS_INSIDE, Math.max(0L, u - use(FaceSide.LEFT, r) - use(FaceSide.RIGHT, r)), INSIDE_UNITS);
        long units = r.record(ALL_UNITS, n * u, ALL);
        long edge = r.record(PERIMETER_UNITS, units - coursesInside * unitsInside, PERIMETER);
        int each = r.use(IN_EVERY_UNIT, pattern.inEveryUnit());
        int more = r.use(IN_PERIMETER_UNIT, pattern.inPerimeterUnit());
        long sum = r.record(FIXINGS, (units - edge) * each + edge * more, SUM);
        return new long[] {units, edge, sum};
    }

    private int use(FaceSide side, Recorder r) {
        return r.use(deep(side), pattern.deep().getOrDefault(side, 0));
    }

    /** Returns all units, part units included. */
    public long units() {
        return all;
    }

    /** Returns the units on the perimeter, each counted once. */
    public long perimeterUnits() {
        return perimeter;
    }

    /** Returns all fixings. */
    public long count() {
        return fixings;
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Fixings f
                && courses.equals(f.courses)
                && unitsInCourse.equals(f.unitsInCourse)
                && pattern.equals(f.pattern);
    }

    @Override
    public int hashCode() {
        return Objects.hash(courses, unitsInCourse, pattern);
    }

    /** Returns for example {@code 252 fixings in 198 units, 54 of them on the perimeter}. */
    @Override
    public String toString() {
        return fixings + " fixings in " + all + " units, " + perimeter + " of them on the perimeter";
    }
}
