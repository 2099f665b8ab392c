package org.roofmaths.order;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * A counted number of units held against area over cover, with the difference explained.
 *
 * <p>The area figure uses the gauge got and the cover as laid; tables that use a round gauge are some per cent off before a tile breaks. What
 * remains has three causes, and they add up to the whole difference: the courses do not fill the slope length in whole gauges
 * (the first course overhangs, the last is covered), the units do not fill the width in whole covers (joints, what shows at a verge),
 * and the face is not the rectangle of its slope length and width.
 *
 * <p>For example, 11 courses of 17.5 tiles are 192.5; the area gives 195.48; the difference of −2.98 is −1.64 up the slope and −1.34 across.
 *
 * @since 0.1
 */
public final class CountCheck implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The courses counted. */
    public static final Term<Number> COURSES = Term.of("courses counted", "n", Number.class);

    /** The units in a course, parts counted as parts. */
    public static final Term<Ratio> UNITS_IN_COURSE = Term.of("units counted in a course", "u", Ratio.class);

    /** The gauge got. */
    public static final Term<Length> GAUGE = Term.of("gauge counted with", "g", Length.class);

    /** The width that a unit covers as laid. */
    public static final Term<Length> COVER = Term.of("cover counted with", "c", Length.class);

    /** The length of the face up its slope. */
    public static final Term<Length> SLOPE_LENGTH = Term.of("slope length counted over", "s", Length.class);

    /** The width of the face. */
    public static final Term<Length> WIDTH = Term.of("width counted over", "w", Length.class);

    /** The area of the face. */
    public static final Term<Area> AREA = Term.of("area counted over", "A", Area.class);

    /** The number by counting: courses times units in a course. */
    public static final Term<Ratio> BY_COUNT = Term.of("units by count", "N", Ratio.class);

    /** The number by area: area over gauge and cover. */
    public static final Term<Ratio> BY_AREA = Term.of("units by area", "Nₐ", Ratio.class);

    /** By what share the count is over the area figure. */
    public static final Term<Ratio> DIFFERENCE = Term.of("count over area figure", "Δ", Ratio.class);

    /** The units that the courses make more than the slope length holds gauges. */
    public static final Term<Ratio> UP_THE_SLOPE = Term.of("difference up the slope", "Δs", Ratio.class);

    /** The units that the courses hold more than the width holds covers. */
    public static final Term<Ratio> ACROSS = Term.of("difference across", "Δw", Ratio.class);

    /** The units by which the rectangle of slope length and width is more than the face. */
    public static final Term<Ratio> BY_SHAPE = Term.of("difference by the shape of the face", "Δf", Ratio.class);

    /** A part that is nothing. */
    public static final ProblemCode NOT_POSITIVE =
            ProblemCode.of("count-check.not-positive", "Give the counts and sizes of the face as laid out.");

    private static final Formula COUNTED = Formula.of(BY_COUNT, COURSES.times(UNITS_IN_COURSE));
    private static final Formula FROM_AREA = Formula.of(BY_AREA, AREA.over(GAUGE.times(COVER)));
    private static final Formula SHARE_OVER =
            Formula.of(DIFFERENCE, BY_COUNT.over(BY_AREA).minus(1));
    private static final Formula UP =
            Formula.of(UP_THE_SLOPE, COURSES.minus(SLOPE_LENGTH.over(GAUGE)).times(WIDTH.over(COVER)));
    private static final Formula SIDEWAYS = Formula.of(ACROSS, COURSES.times(UNITS_IN_COURSE.minus(WIDTH.over(COVER))));
    private static final Formula SHAPE =
            Formula.of(BY_SHAPE, SLOPE_LENGTH.times(WIDTH).minus(AREA).over(GAUGE.times(COVER)));

    private final CountToCheck given;
    private final Ratio byCount;
    private final Ratio byArea;
    private final Ratio difference;
    private final Ratio up;
    private final Ratio across;
    private final Ratio shape;

    private CountCheck(CountToCheck given) {
        this.given = given;
        Ratio[] found = compute(Recorder.off());
        byCount = found[0];
        byArea = found[1];
        difference = found[2];
        up = found[3];
        across = found[4];
        shape = found[5];
    }

    /**
     * Returns the check of a count.
     *
     * @param count the count with the sizes of its face
     * @return the check
     * @throws org.roofmaths.problem.ProblemsException with every problem, if a part is not above zero
     */
    public static CountCheck of(CountToCheck count) {
        return attempt(count).orThrow();
    }

    /**
     * Returns the check of a count, or every problem that stands against it.
     *
     * @param count the count with the sizes of its face
     * @return the check, or the problems
     */
    public static Attempt<CountCheck> attempt(CountToCheck count) {
        return Problems.none()
                .require(
                        count.courses().value().doubleValue() > 0,
                        NOT_POSITIVE,
                        COURSES.name(),
                        count.courses().value(),
                        "be above 0")
                .require(
                        count.unitsInCourse().value().isPositive(),
                        NOT_POSITIVE,
                        UNITS_IN_COURSE.name(),
                        count.unitsInCourse().value(),
                        "be above 0")
                .require(
                        count.gauge().value().isPositive(),
                        NOT_POSITIVE,
                        GAUGE.name(),
                        count.gauge().value(),
                        "be above 0 mm")
                .require(
                        count.cover().value().isPositive(),
                        NOT_POSITIVE,
                        COVER.name(),
                        count.cover().value(),
                        "be above 0 mm")
                .require(
                        count.slopeLength().value().isPositive(),
                        NOT_POSITIVE,
                        SLOPE_LENGTH.name(),
                        count.slopeLength().value(),
                        "be above 0 mm")
                .require(
                        count.width().value().isPositive(),
                        NOT_POSITIVE,
                        WIDTH.name(),
                        count.width().value(),
                        "be above 0 mm")
                .require(
                        count.area().value().isPositive(),
                        NOT_POSITIVE,
                        AREA.name(),
                        count.area().value(),
                        "be above 0 m²")
                .attempt(() -> new CountCheck(count));
    }

    private Ratio[] compute(Recorder r) {
        double n = r.use(COURSES, given.courses()).doubleValue();
        double u = r.use(UNITS_IN_COURSE, given.unitsInCourse()).toDouble();
        double g = r.use(GAUGE, given.gauge()).toMetres();
        double c = r.use(COVER, given.cover()).toMetres();
        double s = r.use(SLOPE_LENGTH, given.slopeLength()).toMetres();
        double w = r.use(WIDTH, given.width()).toMetres();
        double a = r.use(AREA, given.area()).toSquareMetres();
        double counted = n * u;
        double fromArea = a / (g * c);
        return new Ratio[] {
            r.record(BY_COUNT, Ratio.of(counted), COUNTED),
            r.record(BY_AREA, Ratio.of(fromArea), FROM_AREA),
            r.record(DIFFERENCE, Ratio.of(counted / fromArea - 1), SHARE_OVER),
            r.record(UP_THE_SLOPE, Ratio.of((n - s / g) * (w / c)), UP),
            r.record(ACROSS, Ratio.of(n * (u - w / c)), SIDEWAYS),
            r.record(BY_SHAPE, Ratio.of((s * w - a) / (g * c)), SHAPE),
        };
    }

    /** Returns the number by counting, parts of units as parts: 192.5. */
    public Ratio byCount() {
        return byCount;
    }

    /** Returns the number by area over gauge got and cover as laid. */
    public Ratio byArea() {
        return byArea;
    }

    /** Returns by what share the count is over the area figure; below zero if it is under. */
    public Ratio difference() {
        return difference;
    }

    /** Returns the units more (or, below zero, fewer) because courses are whole: they do not fill the slope length exactly. */
    public Ratio upTheSlope() {
        return up;
    }

    /** Returns the units more (or, below zero, fewer) because the units of a course do not fill the width exactly. */
    public Ratio across() {
        return across;
    }

    /** Returns the units by which the rectangle of slope length and width is more than the face. */
    public Ratio byShape() {
        return shape;
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CountCheck c && given.equals(c.given);
    }

    @Override
    public int hashCode() {
        return Objects.hash(given);
    }

    /** Returns the check in words, numbers to 0.01: {@code 192.5 units by count, 195.48 by area …}. */
    @Override
    public String toString() {
        return shown(byCount) + " units by count, " + shown(byArea) + " by area (" + shown(difference.times(100))
                + " %): " + shown(up) + " up the slope, " + shown(across) + " across, " + shown(shape)
                + " by the shape of the face";
    }

    private static String shown(Ratio ratio) {
        return Amount.plain(BigDecimal.valueOf(ratio.toDouble()).setScale(2, RoundingMode.HALF_UP));
    }
}
