package org.roofmaths.settingout;

import static org.roofmaths.covering.CoveringUnit.LENGTH;
import static org.roofmaths.covering.DoubleLapUnit.HOLE_CLEARANCE;
import static org.roofmaths.covering.DoubleLapUnit.HOLE_TO_HEAD;
import static org.roofmaths.covering.DoubleLapUnit.HOLING_GAUGE;
import static org.roofmaths.covering.DoubleLapUnit.UNDER_EAVES_LENGTH;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.covering.Hanging;
import org.roofmaths.covering.ShortUnit;
import org.roofmaths.covering.SingleLapUnit;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.End;
import org.roofmaths.roof.Ends;
import org.roofmaths.units.Direction;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Range;
import org.roofmaths.units.Rounding;
import org.roofmaths.working.Assumed;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * The courses up one face: how many, at what gauge, with what headlap, and the marks for the battens at both ends.
 *
 * <p>Between two fixed lines the distance is divided into equal gauges, as few as keep the greatest gauge at the longer end, so that
 * both ends have the same number. Gauges and courses are two counts: 12 gauges make 13 courses.
 *
 * <pre>{@code
 * Courses courses = Courses.divide(Ends.of(mm(3912), mm(3897)), Range.closed(mm(320), mm(345)));
 * courses                 // 13 courses, 12 gauges: 326 mm left, 324.75 mm right
 * courses.marks()         // running marks of both ends from one zero, rounded to 1 mm
 * }</pre>
 *
 * <p>Marks are running values from one zero, and the running value is rounded, never the gauge: ten gauges of 326.4 mm end at
 * 3264 mm, where ten gauges rounded to 326 mm would end 4 mm short. What rounding leaves stands at the last mark, see
 * {@link #restAtLastMark()}.
 *
 * <p>Where both ends are alike the working keeps one step for both; where they differ each end has its own, such as
 * {@code working().at(Courses.GAUGE.at("left"))}.
 *
 * <p>Immutable and thread-safe. Two are equal if they were made from equal sizes.
 *
 * @since 0.1
 */
public final class Courses implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** A size to divide is zero, below zero or beyond a kilometre. */
    public static final ProblemCode SIZE = ProblemCode.of("courses.size", "Check the size and its unit.");

    /** The range of gauges holds no gauge, or has no greatest one. */
    public static final ProblemCode GAUGE_LIMITS =
            ProblemCode.of("courses.gauge-limits", "Give the least gauge first and the greatest gauge second.");

    /** No number of equal gauges keeps both limits of the gauge. */
    public static final ProblemCode NO_EQUAL_DIVISION = ProblemCode.of(
            "courses.no-equal-division",
            "Move one of the fixed lines by the amount shown, or use a unit with other gauges.");

    /** The top line lies on the first line or below it. */
    public static final ProblemCode TOO_SHORT = ProblemCode.of(
            "courses.too-short", "Use a shorter unit, or cover the strip with a single course or with metal.");

    /** The two ends differ by more than the limits of the gauge can take up. */
    public static final ProblemCode ENDS_TOO_UNEQUAL = ProblemCode.of(
            "courses.ends-too-unequal",
            "Pack the eaves or the top at one end until the ends differ by less, or lay a tapered course.");

    /** Overhang or top distance were moved inside their ranges, because equal gauges did not fit otherwise. */
    public static final ProblemCode MOVED =
            ProblemCode.of("courses.moved", "Give another range or another wanted size if that does not suit.");

    /** The first two battens of a double-lap roof overlap. */
    public static final ProblemCode EAVES_CLASH = ProblemCode.of(
            "courses.eaves-battens-clash",
            "Carry both courses on one batten or on one wider bearer, whoever lays it decides.");

    /** The battens under the ridge overlap, or leave the tops course too little headlap. */
    public static final ProblemCode TOPS_CLASH = ProblemCode.of(
            "courses.tops-battens-clash", "Reduce the last gauge as shown, or fix the tops course in another way.");

    /** Nothing says how wide the battens are, so that nobody looked whether they overlap. */
    public static final ProblemCode NO_BATTEN_WIDTH =
            ProblemCode.of("courses.no-batten-width", "Give the batten size with the layout.");

    /** The spacing of the courses. */
    public static final Term<Length> GAUGE = CoveringUnit.GAUGE;

    /** The headlap that the gauge gives. */
    public static final Term<Length> HEADLAP = CoveringUnit.HEADLAP;

    /** The length of slope at one end, from the fascia line to the apex line. */
    public static final Term<Length> FACE_LENGTH = Term.of("slope length at the end", "S", Length.class);

    /** The pitch at which a level overhang is turned on to the slope. */
    public static final Term<Pitch> PITCH = Term.of("pitch under the covering", "p", Pitch.class);

    /** How far the tails reach past the fascia line, measured level. */
    public static final Term<Length> OVERHANG_LEVEL = Term.of("overhang into the gutter, level", "ol", Length.class);

    /** How far the tails reach past the fascia line, measured on the slope. */
    public static final Term<Length> OVERHANG = Term.of("overhang into the gutter, on the slope", "o", Length.class);

    /** How far the top line lies below the apex line, on the slope. */
    public static final Term<Length> TOP_DISTANCE = Term.of("top distance", "d", Length.class);

    /** From the underside of the nibs, or the nail hole, to the tail. */
    public static final Term<Length> HANGING_LENGTH = Term.of("hanging length", "H", Length.class);

    /** The line of the first full course, up the slope from the fascia line. */
    public static final Term<Length> FIRST_LINE = Term.of("first line", "b1", Length.class);

    /** The line of the top course, up the slope from the fascia line. */
    public static final Term<Length> TOP_LINE = Term.of("top line", "bt", Length.class);

    /** What is divided into equal gauges. */
    public static final Term<Length> DISTANCE = Term.of("distance to divide", "D", Length.class);

    /** The headlap that the caller or a rule asks for. */
    public static final Term<Length> HEADLAP_ASKED = Term.of("headlap asked", "ha", Length.class);

    /** The least headlap that the unit is made for. */
    public static final Term<Length> UNIT_LEAST_HEADLAP = Term.of("least headlap of the unit", "hu", Length.class);

    /** The greater of the headlaps that are asked. */
    public static final Term<Length> HEADLAP_NEEDED = Term.of("headlap needed", "hn", Length.class);

    /** The greatest gauge that the unit allows. */
    public static final Term<Length> UNIT_GREATEST_GAUGE = Term.of("greatest gauge of the unit", "gu", Length.class);

    /** The greatest gauge that may be used. */
    public static final Term<Length> GREATEST_GAUGE = Term.of("greatest gauge", "gmax", Length.class);

    /** The least gauge that may be used. */
    public static final Term<Length> LEAST_GAUGE = Term.of("least gauge", "gmin", Length.class);

    /** How many equal gauges there are between the first and the last full course. */
    public static final Term<Integer> GAUGE_COUNT = Term.of("number of gauges", "n", Integer.class);

    /** The gauge that one gauge fewer would have. */
    public static final Term<Length> GAUGE_WITH_ONE_FEWER = Term.of("gauge with one gauge fewer", "g1", Length.class);

    /** By how much one gauge fewer would pass the greatest gauge. */
    public static final Term<Length> EXCESS_WITH_ONE_FEWER =
            Term.of("excess over the greatest gauge with one gauge fewer", "x1", Length.class);

    /** The width of a batten, up the slope. */
    public static final Term<Length> BATTEN_WIDTH = Term.of("batten width", "bw", Length.class);

    /** The hanging length of the short unit of the under-eaves course. */
    public static final Term<Length> UNDER_EAVES_HANGING_LENGTH =
            Term.of("hanging length of the under-eaves unit", "He", Length.class);

    /** From the hole to the head of a slate of the under-eaves course. */
    public static final Term<Length> UNDER_EAVES_HOLE_TO_HEAD = Term.of("under-eaves hole to head", "ae", Length.class);

    /** The line of the under-eaves course, up the slope from the fascia line. */
    public static final Term<Length> UNDER_EAVES_LINE = Term.of("under-eaves line", "be", Length.class);

    /** From the under-eaves line to the first line. */
    public static final Term<Length> EAVES_STEP =
            Term.of("step from the under-eaves line to the first line", "se", Length.class);

    /** What is left between the first two battens. */
    public static final Term<Length> EAVES_GAP =
            Term.of("clear space between the first two battens", "ge", Length.class);

    /** The hanging length of the short unit of the tops course. */
    public static final Term<Length> TOPS_HANGING_LENGTH =
            Term.of("hanging length of the tops unit", "Ht", Length.class);

    /** From the last full course's line to the line of the tops course. */
    public static final Term<Length> TOPS_STEP = Term.of("step to the tops line", "st", Length.class);

    /** The headlap at the tops course. */
    public static final Term<Length> TOPS_HEADLAP = Term.of("headlap at the tops course", "ht", Length.class);

    /** The last gauge that would give the tops course the headlap asked. */
    public static final Term<Length> LAST_GAUGE_FOR_TOPS =
            Term.of("last gauge for the headlap of the tops", "gt", Length.class);

    /** The longest slate of the top course that stays below the apex line. */
    public static final Term<Length> TOP_COURSE_LENGTH = Term.of("longest slate of the top course", "Lt", Length.class);

    /** How far down the slope ridge or flashing must cover so that the headlap asked is kept there too. */
    public static final Term<Length> COVER_NEEDED_AT_TOP = Term.of("cover needed at the top", "ct", Length.class);

    /** The last mark, rounded like all marks. */
    public static final Term<Length> LAST_MARK = Term.of("last mark", "mt", Length.class);

    /** What rounding leaves at the last mark: above zero if the line lies above its mark. */
    public static final Term<Length> REST_AT_LAST_MARK = Term.of("rest at the last mark", "rt", Length.class);

    static final Formula FIRST_BY_HANGING = Formula.of(FIRST_LINE, HANGING_LENGTH.minus(OVERHANG));
    static final Formula HANGING_BY_HOLE = Formula.of(HANGING_LENGTH, LENGTH.minus(HOLE_TO_HEAD));
    static final Formula OVERHANG_BY_PITCH = Formula.of(OVERHANG, OVERHANG_LEVEL.over(PITCH.cos()));
    static final Formula NEEDED_BY_BOTH = Formula.of(HEADLAP_NEEDED, HEADLAP_ASKED.greatest(UNIT_LEAST_HEADLAP));

    private static final Length LONGEST = Length.ofMetres(1000);
    private static final Length INCH_OR_SO = Length.ofMillimetres(25);

    private final CoursePlan plan;
    private final Solved solved;
    private transient @Nullable List<CourseLine> lines; // made when first asked for; two threads make the same

    private Courses(CoursePlan plan) {
        this.plan = plan;
        this.solved = solve(plan, Recorder.off());
    }

    /** What the computation yields. */
    private record Solved(
            int gauges,
            Ends<Length> first,
            Ends<Length> last,
            Ends<Length> top,
            Ends<Length> gauge,
            Length greatestGauge,
            @Nullable Ends<Length> headlap,
            @Nullable Ends<Length> underEaves,
            @Nullable Ends<Length> underEavesLength,
            @Nullable Ends<Length> tops,
            @Nullable Ends<Length> topsHeadlap,
            @Nullable Ends<Length> holing,
            @Nullable Ends<Length> topCourseLength,
            @Nullable Ends<Length> coverAtTop,
            @Nullable Length excessWithOneFewer,
            List<Problem> problems)
            implements Serializable {}

    /**
     * Divides one distance into equal gauges.
     *
     * @param distance from the first to the last line, above zero
     * @param gauge the gauges allowed; the least may be left open
     * @return the courses, with marks from 0 at the first line
     * @throws ProblemsException if a size is wrong, or if no number of equal gauges fits
     */
    public static Courses divide(Length distance, Range<Length> gauge) {
        return attemptDivide(Ends.both(distance), gauge).orThrow();
    }

    /**
     * Divides the distances found at the two ends of a face into the same number of equal gauges.
     *
     * <p>For example, 3912 mm at the left and 3897 mm at the right with gauges from 320 to 345 mm make 12 gauges of 326 mm and of
     * 324.75 mm.
     *
     * @param distance from the first to the last line, at each end, above zero
     * @param gauge the gauges allowed; the least may be left open
     * @return the courses, with marks from 0 at the first line
     * @throws ProblemsException if a size is wrong, or if no number of equal gauges fits
     */
    public static Courses divide(Ends<Length> distance, Range<Length> gauge) {
        return attemptDivide(distance, gauge).orThrow();
    }

    /**
     * Divides the distances found at the two ends of a face, or says why not.
     *
     * @param distance from the first to the last line, at each end, above zero
     * @param gauge the gauges allowed; the least may be left open
     * @return the courses; or errors in the sizes; or a finding that tells by how much no division fits and what would mend it
     */
    public static Attempt<Courses> attemptDivide(Ends<Length> distance, Range<Length> gauge) {
        Problems problems = Problems.none();
        requireSize(problems, "distance at the left", distance.left());
        requireSize(problems, "distance at the right", distance.right());
        problems.require(
                gauge.upper().isPresent() && gauge.upper().orElseThrow().isPositive(),
                GAUGE_LIMITS,
                "gauge",
                gauge,
                "have a greatest gauge above 0 mm");
        gauge.lower()
                .ifPresent(least -> problems.require(
                        !least.isNegative(), GAUGE_LIMITS, "gauge", gauge, "have a least gauge of 0 mm or more"));
        if (problems.hasErrors()) {
            return Attempt.failed(problems.list());
        }
        return attempt(new CoursePlan(
                distance.map(Figure::given),
                null,
                null,
                gauge.lower()
                        .filter(Length::isPositive)
                        .<Figure<Length>>map(Figure::given)
                        .orElse(null),
                Figure.given(gauge.upper().orElseThrow()),
                Figure.given(Length.ZERO),
                Direction.ON_SLOPE,
                null,
                Figure.given(Length.ZERO),
                null,
                null,
                Preference.usual(),
                oneMillimetre()));
    }

    private static void requireSize(Problems problems, String where, Length given) {
        problems.require(
                given.isPositive() && !given.isLongerThan(LONGEST),
                SIZE,
                where,
                given,
                "be above 0 mm and at most " + LONGEST);
    }

    static Rounding<Length> oneMillimetre() {
        return Rounding.toNearest(Length.ofMillimetres(1));
    }

    /** The courses of a plan whose sizes are sound, or a finding. */
    static Attempt<Courses> attempt(CoursePlan plan) {
        CourseFrame frame = CourseFrame.of(plan, Recorder.off());
        if (frame.divisions(plan.preference()).isEmpty()) {
            return Attempt.failed(List.of(NoDivision.of(plan, frame)));
        }
        Courses courses = new Courses(plan);
        return Attempt.of(courses, courses.solved.problems());
    }

    private static Solved solve(CoursePlan plan, Recorder r) {
        CourseFrame frame = CourseFrame.of(plan, r);
        List<Problem> problems = new ArrayList<>();
        int parts = frame.divisions(plan.preference()).orElseThrow();
        int gauges =
                r.record(GAUGE_COUNT, parts - frame.extra, r.isOn() ? countFormula(frame, plan) : FIRST_BY_HANGING);
        Ends<Length> gauge = CourseFrame.eachEnd(
                frame.places,
                p -> p.record(
                        r,
                        GAUGE,
                        frame.distance.at(p.end()).dividedBy(parts),
                        q -> q.of(DISTANCE).over(more(GAUGE_COUNT, frame.extra))));
        Length excess = null;
        if (parts > 1) {
            Places longer = frame.places.get(
                    frame.places.size() == 1 ? 0 : frame.longerEnd().ordinal());
            Length wider = r.record(
                    GAUGE_WITH_ONE_FEWER,
                    frame.longer().dividedBy(parts - 1),
                    r.isOn()
                            ? Formula.of(
                                    GAUGE_WITH_ONE_FEWER, longer.of(DISTANCE).over(more(GAUGE_COUNT, frame.extra - 1)))
                            : FIRST_BY_HANGING);
            excess = r.record(
                    EXCESS_WITH_ONE_FEWER,
                    wider.minus(frame.greatestGauge),
                    Formula.of(EXCESS_WITH_ONE_FEWER, GAUGE_WITH_ONE_FEWER.minus(GREATEST_GAUGE)));
        }
        CoveringUnit unit = plan.unit();
        if (unit == null) {
            closeMarks(frame, plan, r);
            return new Solved(
                    gauges,
                    Ends.both(Length.ZERO),
                    frame.topLine,
                    frame.topLine,
                    gauge,
                    frame.greatestGauge,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    excess,
                    List.of());
        }
        Ends<Length> headlap = CourseFrame.eachEnd(
                frame.places,
                p -> p.record(r, HEADLAP, unit.headlapOf(gauge.at(p.end())), q -> unit.headlapBy(q.of(GAUGE))));
        Ends<Length> holing = null;
        Ends<Length> first;
        if (frame.fixedFirst != null) {
            first = Ends.both(frame.fixedFirst);
        } else {
            DoubleLapUnit slate = (DoubleLapUnit) unit;
            holing = CourseFrame.eachEnd(
                    frame.places,
                    p -> p.record(
                            r,
                            HOLING_GAUGE,
                            slate.hangingLengthAt(gauge.at(p.end())),
                            q -> LENGTH.minus(q.of(GAUGE)).plus(HOLE_CLEARANCE)));
            Ends<Length> holes = holing;
            first = CourseFrame.eachEnd(
                    frame.places,
                    p -> p.record(
                            r,
                            FIRST_LINE,
                            holes.at(p.end()).minus(frame.overhang),
                            q -> q.of(HOLING_GAUGE).minus(OVERHANG)));
        }
        Ends<Length> underEaves = null;
        Ends<Length> underEavesLength = null;
        Ends<Length> tops = null;
        Ends<Length> topsHeadlap = null;
        Ends<Length> topCourse = null;
        Ends<Length> coverAtTop = null;
        Ends<Length> last = frame.topLine;
        if (unit instanceof DoubleLapUnit doubleLap) {
            underEavesLength = doubleLap.underEavesUnit().isPresent()
                    ? null
                    : CourseFrame.eachEnd(
                            frame.places,
                            p -> p.record(
                                    r,
                                    UNDER_EAVES_LENGTH,
                                    doubleLap.length().minus(gauge.at(p.end())),
                                    q -> LENGTH.minus(q.of(GAUGE))));
            underEaves = underEaves(doubleLap, plan, frame, gauge, first, underEavesLength, r);
            eavesClash(plan, doubleLap, frame, first, underEaves, problems, r);
            Optional<ShortUnit> topsUnit = doubleLap.topsUnit();
            if (topsUnit.isPresent()) {
                tops = frame.topLine;
                Ends<Length> step = topsStep(frame, plan, topsUnit.orElseThrow(), doubleLap, gauge, r);
                last = Ends.of(tops.left().minus(step.left()), tops.right().minus(step.right()));
                topsHeadlap =
                        topsHeadlap(frame, plan, topsUnit.orElseThrow(), doubleLap, gauge, headlap, step, problems, r);
            } else {
                coverAtTop = coverAtTop(frame, plan, doubleLap, gauge, r);
                if (holing != null) {
                    topCourse = topCourseLength(frame, plan, doubleLap, holing, r);
                }
            }
        }
        closeMarks(frame, plan, r);
        return new Solved(
                gauges,
                first,
                last,
                frame.topLine,
                gauge,
                frame.greatestGauge,
                headlap,
                underEaves,
                underEavesLength,
                tops,
                topsHeadlap,
                holing,
                topCourse,
                coverAtTop,
                excess,
                List.copyOf(problems));
    }

    private static Formula countFormula(CourseFrame frame, CoursePlan plan) {
        boolean most = frame.takesMost(plan.preference());
        End end = most == (frame.longerEnd() == End.LEFT) ? End.RIGHT : End.LEFT;
        Places place = frame.places.get(frame.places.size() == 1 ? 0 : end.ordinal());
        Expression parts = most
                ? place.of(DISTANCE).timesIn(LEAST_GAUGE)
                : place.of(DISTANCE).timesToCover(GREATEST_GAUGE);
        return Formula.of(GAUGE_COUNT, more(parts, -frame.extra));
    }

    /** The expression so much greater, written with plus or minus as a person would. */
    private static Expression more(Expression count, int by) {
        return by == 0 ? count : by > 0 ? count.plus(by) : count.minus(-by);
    }

    private static Ends<Length> underEaves(
            DoubleLapUnit unit,
            CoursePlan plan,
            CourseFrame frame,
            Ends<Length> gauge,
            Ends<Length> first,
            @Nullable Ends<Length> shortLength,
            Recorder r) {
        Optional<ShortUnit> made = unit.underEavesUnit();
        if (made.isPresent()) {
            Length hanging = r.use(
                    UNDER_EAVES_HANGING_LENGTH, Figure.given(made.orElseThrow().hangingLength()));
            return Ends.both(r.record(
                    UNDER_EAVES_LINE,
                    hanging.minus(frame.overhang),
                    Formula.of(UNDER_EAVES_LINE, UNDER_EAVES_HANGING_LENGTH.minus(OVERHANG))));
        }
        if (unit.hanging().way() == Hanging.Way.NIBS || shortLength == null) {
            r.note("cut from full units at the tail, so that the nibs stay");
            return CourseFrame.eachEnd(
                    frame.places,
                    p -> p.record(
                            r,
                            UNDER_EAVES_LINE,
                            first.at(p.end()).minus(gauge.at(p.end())),
                            q -> FIRST_LINE.minus(q.of(GAUGE))));
        }
        Figure<Length> holeToHead = plan.underEavesHoleToHead();
        if (holeToHead == null) {
            holeToHead = unit.hanging().way() == Hanging.Way.HEAD_NAILED
                    ? Figure.given(unit.hanging().size())
                    : Assumed.of(
                            INCH_OR_SO,
                            "under-eaves slates nailed about an inch below the head, common practice",
                            "set underEavesHoleToHead in the layout scheme");
        }
        Length hole = r.use(UNDER_EAVES_HOLE_TO_HEAD, holeToHead);
        return CourseFrame.eachEnd(
                frame.places,
                p -> p.record(
                        r,
                        UNDER_EAVES_LINE,
                        shortLength.at(p.end()).minus(hole).minus(frame.overhang),
                        q -> q.of(UNDER_EAVES_LENGTH)
                                .minus(UNDER_EAVES_HOLE_TO_HEAD)
                                .minus(OVERHANG)));
    }

    private static void eavesClash(
            CoursePlan plan,
            DoubleLapUnit unit,
            CourseFrame frame,
            Ends<Length> first,
            Ends<Length> underEaves,
            List<Problem> problems,
            Recorder r) {
        boolean perEnd = unit.underEavesUnit().isEmpty();
        List<Places> places = perEnd ? frame.places : Places.of(true);
        boolean ownFirst = frame.fixedFirst == null;
        Ends<Length> step = CourseFrame.eachEnd(
                places,
                p -> p.record(
                        r,
                        EAVES_STEP,
                        first.at(p.end()).minus(underEaves.at(p.end())),
                        q -> (ownFirst ? q.of(FIRST_LINE) : FIRST_LINE).minus(q.of(UNDER_EAVES_LINE))));
        Figure<Length> width = plan.battenWidth();
        if (width == null) {
            problems.add(Problem.notice(
                    NO_BATTEN_WIDTH,
                    "courses",
                    step,
                    "the batten width was not given, so nobody looked whether the battens of the under-eaves course and of the first"
                            + " full course, " + step + " apart, overlap"));
            return;
        }
        Length wide = r.use(BATTEN_WIDTH, width);
        Ends<Length> gap = CourseFrame.eachEnd(
                places,
                p -> p.record(
                        r,
                        EAVES_GAP,
                        step.at(p.end()).minus(wide),
                        q -> q.of(EAVES_STEP).minus(BATTEN_WIDTH)));
        Length least = gap.left().min(gap.right());
        if (least.isNegative()) {
            Length apart = step.left().min(step.right());
            problems.add(ClashProblems.atEaves(apart, wide));
        }
    }

    private static Ends<Length> topsStep(
            CourseFrame frame, CoursePlan plan, ShortUnit tops, DoubleLapUnit unit, Ends<Length> gauge, Recorder r) {
        if (frame.topsBattensTouch) {
            Figure<Length> width = Objects.requireNonNull(plan.battenWidth());
            return CourseFrame.eachEnd(frame.places, p -> p.record(r, TOPS_STEP, width.value(), q -> BATTEN_WIDTH));
        }
        Length shorter = unit.hangingLengthAt(Length.ZERO).minus(tops.hangingLength());
        return CourseFrame.eachEnd(
                frame.places,
                p -> p.record(
                        r,
                        TOPS_STEP,
                        gauge.at(p.end()).minus(shorter),
                        q -> q.of(GAUGE).plus(TOPS_HANGING_LENGTH).minus(HANGING_LENGTH)));
    }

    private static Ends<Length> topsHeadlap(
            CourseFrame frame,
            CoursePlan plan,
            ShortUnit tops,
            DoubleLapUnit unit,
            Ends<Length> gauge,
            Ends<Length> headlap,
            Ends<Length> step,
            List<Problem> problems,
            Recorder r) {
        Length shorter = unit.hangingLengthAt(Length.ZERO).minus(tops.hangingLength());
        Ends<Length> got = CourseFrame.eachEnd(
                frame.places,
                p -> p.record(
                        r,
                        TOPS_HEADLAP,
                        headlap.at(p.end())
                                .plus(gauge.at(p.end()))
                                .minus(step.at(p.end()))
                                .minus(shorter),
                        q -> q.of(HEADLAP)
                                .plus(q.of(GAUGE))
                                .minus(q.of(TOPS_STEP))
                                .minus(HANGING_LENGTH)
                                .plus(TOPS_HANGING_LENGTH)));
        Length asked = Objects.requireNonNull(plan.headlap()).value();
        Length least = got.left().min(got.right());
        if (!least.meetsLeast(asked)) {
            Ends<Length> lastGauge = CourseFrame.eachEnd(
                    frame.places,
                    p -> p.record(
                            r,
                            LAST_GAUGE_FOR_TOPS,
                            got.at(p.end()).plus(gauge.at(p.end())).minus(asked),
                            q -> q.of(TOPS_HEADLAP).plus(q.of(GAUGE)).minus(HEADLAP_ASKED)));
            problems.add(ClashProblems.atTops(
                    least, asked, step.left(), lastGauge.left().min(lastGauge.right())));
        }
        return got;
    }

    private static Ends<Length> coverAtTop(
            CourseFrame frame, CoursePlan plan, DoubleLapUnit unit, Ends<Length> gauge, Recorder r) {
        Length top = plan.topDistance().value();
        Length asked = Objects.requireNonNull(plan.headlap()).value();
        if (unit.hanging().way() == Hanging.Way.CENTRE_NAILED) {
            return Ends.both(r.record(
                    COVER_NEEDED_AT_TOP,
                    top.plus(unit.hanging().size()).plus(asked),
                    Formula.of(
                            COVER_NEEDED_AT_TOP,
                            TOP_DISTANCE.plus(HOLE_CLEARANCE).plus(HEADLAP_ASKED))));
        }
        // the head of the last course but one lies a gauge below the head of the last
        Length headAboveLine = unit.length().minus(unit.hangingLengthAt(Length.ZERO));
        return CourseFrame.eachEnd(
                frame.places,
                p -> p.record(
                        r,
                        COVER_NEEDED_AT_TOP,
                        top.minus(headAboveLine).plus(gauge.at(p.end())).plus(asked),
                        q -> TOP_DISTANCE
                                .minus(LENGTH)
                                .plus(HANGING_LENGTH)
                                .plus(q.of(GAUGE))
                                .plus(HEADLAP_ASKED)));
    }

    private static Ends<Length> topCourseLength(
            CourseFrame frame, CoursePlan plan, DoubleLapUnit unit, Ends<Length> holing, Recorder r) {
        return CourseFrame.eachEnd(
                frame.places,
                p -> p.record(
                        r,
                        TOP_COURSE_LENGTH,
                        holing.at(p.end()).plus(plan.topDistance().value()).min(unit.length()),
                        q -> q.of(HOLING_GAUGE).plus(TOP_DISTANCE).least(LENGTH)));
    }

    private static void closeMarks(CourseFrame frame, CoursePlan plan, Recorder r) {
        if (!r.isOn()) {
            return;
        }
        for (Places p : frame.places) {
            Length line = frame.topLine.at(p.end());
            Length mark = plan.rounding().apply(line);
            Term<Length> of = plan.unit() == null ? DISTANCE : TOP_LINE;
            p.record(r, LAST_MARK, mark, q -> q.of(of).rounded(plan.rounding()));
            p.record(r, REST_AT_LAST_MARK, line.minus(mark), q -> q.of(of).minus(q.of(LAST_MARK)));
        }
    }

    @Override
    public Working working() {
        return Working.of(this::tell);
    }

    void tell(Recorder r) {
        solve(plan, r);
    }

    /** Returns the number of courses above the under-eaves course: one more than gauges, and one more for a tops course. */
    public int courseCount() {
        return solved.gauges + 1 + (solved.tops == null ? 0 : 1);
    }

    /** Returns the number of equal gauges between the first and the last full course. */
    public int gaugeCount() {
        return solved.gauges;
    }

    /**
     * Returns the number of battens: one for each course; the under-eaves course has its own unless its nail line lies so near to the
     * first one that one batten carries both.
     *
     * @return the number of battens up the slope
     */
    public int battenCount() {
        return courseCount() + (solved.underEaves == null || sharesFirstBatten() ? 0 : 1);
    }

    /** Tells whether the under-eaves course and the first full course are nailed to one batten or bearer. */
    public boolean sharesFirstBatten() {
        Ends<Length> line = solved.underEaves;
        Figure<Length> width = plan.battenWidth();
        return line != null
                && width != null
                && solved.first.left().minus(line.left()).isShorterThan(width.value());
    }

    /** Returns the gauge at each end. */
    public Ends<Length> gauge() {
        return solved.gauge;
    }

    /** Returns the greatest gauge that was allowed. */
    public Length greatestGauge() {
        return solved.greatestGauge;
    }

    /** Returns the headlap got at each end; empty for a bare division, which knows no unit. */
    public Optional<Ends<Length>> headlap() {
        return Optional.ofNullable(solved.headlap);
    }

    /** Returns the headlap of the tops course at each end; empty if there is none. */
    public Optional<Ends<Length>> topsHeadlap() {
        return Optional.ofNullable(solved.topsHeadlap);
    }

    /** Returns the line of the first full course at each end, up the slope from the fascia line. */
    public Ends<Length> firstLine() {
        return solved.first;
    }

    /** Returns the line of the top course at each end, up the slope from the fascia line. */
    public Ends<Length> topLine() {
        return solved.top;
    }

    /**
     * Returns where the tails of the first full course lie at each end, up the slope from the fascia line: the overhang into the gutter
     * with a minus sign. For a bare division, which knows no unit, the first line itself.
     */
    public Ends<Length> firstTail() {
        CoveringUnit unit = plan.unit();
        if (unit == null) {
            return solved.first;
        }
        return unit instanceof SingleLapUnit tile
                ? solved.first.map(line -> line.minus(tile.hangingLength()))
                : solved.first.combine(solved.gauge.map(((DoubleLapUnit) unit)::hangingLengthAt), Length::minus);
    }

    /** Returns which line of a batten the marks are for. */
    public BattenEdge battenEdge() {
        return plan.unit() instanceof DoubleLapUnit d && d.hanging().way() != Hanging.Way.NIBS
                ? BattenEdge.NAIL_LINE
                : BattenEdge.TOP_EDGE;
    }

    /**
     * Returns the line of the under-eaves course of a double-lap roof.
     *
     * @return empty for single lap and for a bare division
     */
    public Optional<CourseLine> underEavesLine() {
        return Optional.ofNullable(solved.underEaves).map(line -> line(1, CourseKind.UNDER_EAVES, line));
    }

    /** Returns the length of the under-eaves slates at each end, where they are cut from full ones; empty otherwise. */
    public Optional<Ends<Length>> underEavesLength() {
        return Optional.ofNullable(solved.underEavesLength);
    }

    /**
     * Returns the distance from tail to hole at which centre-nailed slates are holed, at each end. Hole all slates at the greater of
     * the two: the hole then stays clear of the slate below at both ends.
     *
     * @return empty if the unit is not centre-nailed
     */
    public Optional<Ends<Length>> holingGauge() {
        return Optional.ofNullable(solved.holing);
    }

    /** Returns the longest slate of the top course that stays below the apex line; empty if the unit is not centre-nailed. */
    public Optional<Ends<Length>> topCourseLength() {
        return Optional.ofNullable(solved.topCourseLength);
    }

    /**
     * Returns how far down the slope from the apex line ridge or flashing must cover, so that the head of the last course but one has
     * the headlap asked.
     *
     * @return empty for single lap, and where a tops course does it
     */
    public Optional<Ends<Length>> coverNeededAtTop() {
        return Optional.ofNullable(solved.coverAtTop);
    }

    /**
     * Returns by how much one gauge fewer would pass the greatest gauge, at the longer end.
     *
     * @return below zero if it would not pass; empty if there is one gauge only
     */
    public Optional<Length> excessWithOneFewer() {
        return Optional.ofNullable(solved.excessWithOneFewer);
    }

    /** Returns what rounding leaves at the last mark of each end: above zero if the line lies above its mark. */
    public Ends<Length> restAtLastMark() {
        return solved.top.map(line -> line.minus(plan.rounding().apply(line)));
    }

    /** Returns every line from the eaves to the top, that of the under-eaves course included. */
    public List<CourseLine> lines() {
        List<CourseLine> known = lines;
        if (known == null) {
            known = makeLines();
            lines = known;
        }
        return known;
    }

    private List<CourseLine> makeLines() {
        List<CourseLine> lines = new ArrayList<>();
        Ends<Length> under = solved.underEaves;
        if (under != null) {
            lines.add(line(1, CourseKind.UNDER_EAVES, under));
        }
        for (int i = 0; i <= solved.gauges; i++) {
            Ends<Length> exact = Ends.of(
                    at(solved.first.left(), solved.last.left(), i), at(solved.first.right(), solved.last.right(), i));
            lines.add(line(lines.size() + 1, CourseKind.FULL, exact));
        }
        Ends<Length> tops = solved.tops;
        if (tops != null) {
            lines.add(line(lines.size() + 1, CourseKind.TOPS, tops));
        }
        return List.copyOf(lines);
    }

    private Length at(Length from, Length to, int step) {
        if (step == solved.gauges) {
            return to;
        }
        // whole nanometres: a kilometre times a million gauges stays inside a long
        long way = Math.multiplyExact(to.toNanometres() - from.toNanometres(), (long) step);
        long gauges = solved.gauges;
        return Length.ofNanometres(from.toNanometres() + Math.floorDiv(2 * way + gauges, 2 * gauges));
    }

    private CourseLine line(int number, CourseKind kind, Ends<Length> exact) {
        return new CourseLine(number, kind, exact, exact.map(plan.rounding()::apply));
    }

    /**
     * Returns the running marks of the courses at each end, from the first full course to the top, as distances up the slope from the
     * fascia line (from the first line, for a bare division), rounded as running values.
     *
     * @return the marks, rising
     */
    public Ends<List<Length>> marks() {
        return byEnd(CourseLine::mark);
    }

    /** Returns the same as {@link #marks()} in full precision. */
    public Ends<List<Length>> exactMarks() {
        return byEnd(CourseLine::exact);
    }

    private Ends<List<Length>> byEnd(Function<CourseLine, Ends<Length>> part) {
        List<Ends<Length>> all = lines().stream()
                .filter(line -> line.kind() != CourseKind.UNDER_EAVES)
                .map(part)
                .toList();
        return Ends.of(
                all.stream().map(Ends::left).toList(),
                all.stream().map(Ends::right).toList());
    }

    /** Returns how the marks are rounded. */
    public Rounding<Length> rounding() {
        return plan.rounding();
    }

    /** Returns findings and notices on these courses, such as battens that clash at the eaves or under the ridge. */
    public List<Problem> problems() {
        return solved.problems;
    }

    CoursePlan plan() {
        return plan;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Courses c && plan.equals(c.plan);
    }

    @Override
    public int hashCode() {
        return plan.hashCode();
    }

    /** Returns for example {@code 13 courses, 12 gauges: 326 mm left, 324.75 mm right}. */
    @Override
    public String toString() {
        return courseCount() + " courses, " + solved.gauges + (solved.gauges == 1 ? " gauge: " : " gauges: ")
                + solved.gauge + (solved.headlap == null ? "" : "; headlap " + solved.headlap);
    }
}
