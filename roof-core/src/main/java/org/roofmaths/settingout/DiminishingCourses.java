package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Length;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;
import org.roofmaths.working.Working;

/**
 * Courses of random slates that grow shorter up the slope: tails, laths and headlaps, course by course.
 *
 * <p>The longest slates lie at the eaves, and no course is longer than the one below. Each course shows half of what its headlap
 * leaves, so its neighbour's tail lies {@code (length − headlap) ÷ 2} higher; the lath lies at its head. Where a shorter length begins
 * the laths come closer for that one course, and the headlap over the last long slates grows by half the difference.
 *
 * <p>Rule and names of the Stone Roofing Association, Random slating.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class DiminishingCourses implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** There are fewer than two courses, or the headlap leaves a course nothing to show. */
    public static final ProblemCode SIZE =
            ProblemCode.of("diminishing-courses.size", "Give at least two courses, each longer than the headlap.");

    /** A course is longer than the one below. */
    public static final ProblemCode GROWS =
            ProblemCode.of("diminishing-courses.grows", "Sort the slates and lay the longest at the eaves.");

    /** The pile makes fewer courses than the slope needs. */
    public static final ProblemCode PILE_TOO_SMALL = ProblemCode.of(
            "diminishing-courses.pile-too-small", "Find more slates, or cover part of the roof with others.");

    /** The effective length of the slates of one course; at the place of its number. */
    public static final Term<Length> LENGTH_IN_COURSE = Term.of("slate length of the course", "Lc", Length.class);

    /** Where the tails of one course lie; at the place of its number. */
    public static final Term<Length> TAIL = Term.of("tail of the course", "ta", Length.class);

    /** Where the lath of one course lies, at the heads; at the place of its number. */
    public static final Term<Length> LATH = Term.of("lath of the course", "la", Length.class);

    /** From one lath to the next; at the place of the lower course's number. */
    public static final Term<Length> LATH_GAUGE = Term.of("lath gauge above the course", "gl", Length.class);

    /** The headlap that a course has over the last but one below; at the place of its number. */
    public static final Term<Length> COURSE_HEADLAP = Term.of("headlap of the course", "hc", Length.class);

    /** The length below a change. */
    public static final Term<Length> LONG_LENGTH = Term.of("length below the change", "A", Length.class);

    /** The length above a change. */
    public static final Term<Length> SHORT_LENGTH = Term.of("length above the change", "B", Length.class);

    /** The lath gauge of the one course where the length changes. */
    public static final Term<Length> DROP_GAUGE = Term.of("lath gauge at the change", "gd", Length.class);

    /** The headlap over the last long slates. */
    public static final Term<Length> LAP_OVER_LAST_LONG =
            Term.of("headlap over the last long slates", "hd", Length.class);

    private final List<Length> lengths;
    private final Length headlap;
    private final Length firstTail;
    private final List<Length> tails;

    private DiminishingCourses(List<Length> lengths, Length headlap, Length firstTail) {
        this.lengths = lengths;
        this.headlap = headlap;
        this.firstTail = firstTail;
        List<Length> found = new ArrayList<>();
        Length at = firstTail;
        for (Length length : lengths) {
            found.add(at);
            at = at.plus(length.minus(headlap).dividedBy(2));
        }
        this.tails = List.copyOf(found);
    }

    /**
     * Lays courses of given lengths.
     *
     * @param lengths the effective length of the slates of each course, from the eaves up; none longer than the one below
     * @param headlap the headlap that each course keeps, 0 mm or more
     * @param firstTail where the tails of the first course lie, up the slope from the fascia line; below zero for an overhang
     * @return the courses
     * @throws ProblemsException with every reason, if lengths or headlap are wrong
     */
    public static DiminishingCourses of(List<Length> lengths, Length headlap, Length firstTail) {
        return attempt(lengths, headlap, firstTail).orThrow();
    }

    /**
     * Lays courses of given lengths, or says what is wrong.
     *
     * @param lengths the effective length of the slates of each course, from the eaves up
     * @param headlap the headlap that each course keeps
     * @param firstTail where the tails of the first course lie
     * @return the courses; or every error
     */
    public static Attempt<DiminishingCourses> attempt(List<Length> lengths, Length headlap, Length firstTail) {
        Problems problems = Problems.none();
        problems.require(lengths.size() >= 2, SIZE, "courses", lengths.size(), "be at least 2");
        problems.require(!headlap.isNegative(), SIZE, "headlap", headlap, "be 0 mm or more");
        for (int i = 0; i < lengths.size(); i++) {
            String where = "course " + (i + 1);
            problems.require(
                    lengths.get(i).isLongerThan(headlap),
                    SIZE,
                    where,
                    lengths.get(i),
                    "be longer than the headlap of " + headlap);
            if (i > 0) {
                problems.require(
                        !lengths.get(i).isLongerThan(lengths.get(i - 1)),
                        GROWS,
                        where,
                        lengths.get(i),
                        "be at most " + lengths.get(i - 1) + ", the length below");
            }
        }
        return problems.attempt(() ->
                new DiminishingCourses(List.copyOf(lengths), headlap, Objects.requireNonNull(firstTail, "firstTail")));
    }

    /**
     * Lays as many courses of a pile as a slope takes, longest first, on a roof of one width.
     *
     * @param pile the groups of the pile, in any order
     * @param width the width of the roof
     * @param headlap the headlap that each course keeps
     * @param firstTail where the tails of the first course lie, up the slope from the fascia line
     * @param lastHead where the head of the last course may lie at most, up the slope from the fascia line
     * @return the courses; or a finding that tells how much of the slope the pile leaves bare
     */
    public static Attempt<DiminishingCourses> fromPile(
            List<SlateGroup> pile, Length width, Length headlap, Length firstTail, Length lastHead) {
        List<SlateGroup> sorted = new ArrayList<>(pile);
        sorted.sort(Comparator.comparing(SlateGroup::length).reversed());
        List<Length> lengths = new ArrayList<>();
        Length tail = firstTail;
        boolean full = false;
        for (SlateGroup group : sorted) {
            for (long i = 0; i < group.coursesOver(width) && !full; i++) {
                full = tail.plus(group.length()).isLongerThan(lastHead);
                if (!full) {
                    lengths.add(group.length());
                    tail = tail.plus(group.length().minus(headlap).dividedBy(2));
                }
            }
        }
        Attempt<DiminishingCourses> laid = attempt(lengths, headlap, firstTail);
        if (full || !laid.hasValue()) {
            return laid;
        }
        DiminishingCourses courses = laid.orThrow();
        Length reached = courses.laths().get(lengths.size() - 1);
        Length bare = lastHead.minus(reached);
        return Attempt.of(
                courses,
                List.of(Problem.finding(
                        PILE_TOO_SMALL,
                        "pile",
                        reached,
                        lastHead,
                        "the pile makes " + lengths.size() + " courses, up to " + reached + " of " + lastHead + ": "
                                + bare + " of slope stay bare",
                        List.of(Mend.of("pile", "more slates", "whole courses of " + width + " each")))));
    }

    /**
     * Returns the lath gauge of the one course where a shorter length begins.
     *
     * @param longLength the length below
     * @param shortLength the length above
     * @param headlap the headlap
     * @return (short − headlap) ÷ 2 less half the difference: 450 and 400 with 75 give 137.5 mm
     */
    public static Worked<Length> dropGauge(Length longLength, Length shortLength, Length headlap) {
        return Worked.by(DROP_GAUGE, r -> {
            r.use(LONG_LENGTH, longLength);
            r.use(SHORT_LENGTH, shortLength);
            r.use(CoveringUnit.HEADLAP, headlap);
            Length half = longLength.minus(shortLength).dividedBy(2);
            return r.record(
                    DROP_GAUGE,
                    shortLength.minus(headlap).dividedBy(2).minus(half),
                    Formula.of(
                            DROP_GAUGE,
                            SHORT_LENGTH
                                    .minus(CoveringUnit.HEADLAP)
                                    .over(2)
                                    .minus(LONG_LENGTH.minus(SHORT_LENGTH).over(2))));
        });
    }

    /**
     * Returns the headlap over the last long slates where a shorter length begins and the lath gauge drops.
     *
     * @param longLength the length below
     * @param shortLength the length above
     * @param headlap the headlap elsewhere
     * @return the headlap and half the difference: 450 and 400 with 75 give 100 mm
     */
    public static Worked<Length> lapOverLastLong(Length longLength, Length shortLength, Length headlap) {
        return Worked.by(LAP_OVER_LAST_LONG, r -> {
            r.use(LONG_LENGTH, longLength);
            r.use(SHORT_LENGTH, shortLength);
            r.use(CoveringUnit.HEADLAP, headlap);
            return r.record(
                    LAP_OVER_LAST_LONG,
                    headlap.plus(longLength.minus(shortLength).dividedBy(2)),
                    Formula.of(
                            LAP_OVER_LAST_LONG,
                            CoveringUnit.HEADLAP.plus(
                                    LONG_LENGTH.minus(SHORT_LENGTH).over(2))));
        });
    }

    /** Returns the effective length of the slates of each course, from the eaves up. */
    public List<Length> lengths() {
        return lengths;
    }

    /** Returns where the tails of each course lie, up the slope from the fascia line. */
    public List<Length> tails() {
        return tails;
    }

    /** Returns where the lath of each course lies, at the heads of its slates. */
    public List<Length> laths() {
        List<Length> laths = new ArrayList<>();
        for (int i = 0; i < lengths.size(); i++) {
            laths.add(tails.get(i).plus(lengths.get(i)));
        }
        return List.copyOf(laths);
    }

    /** Returns the distance from each lath to the next; one fewer than courses. */
    public List<Length> lathGauges() {
        List<Length> laths = laths();
        List<Length> gauges = new ArrayList<>();
        for (int i = 1; i < laths.size(); i++) {
            gauges.add(laths.get(i).minus(laths.get(i - 1)));
        }
        return List.copyOf(gauges);
    }

    /** Returns the headlap that each course from the third up has over the last but one below it; two fewer than courses. */
    public List<Length> headlaps() {
        List<Length> laps = new ArrayList<>();
        for (int i = 2; i < lengths.size(); i++) {
            laps.add(tails.get(i - 2).plus(lengths.get(i - 2)).minus(tails.get(i)));
        }
        return List.copyOf(laps);
    }

    @Override
    public Working working() {
        return Working.of(this::tell);
    }

    private void tell(Recorder r) {
        r.use(CoveringUnit.HEADLAP, headlap);
        r.use(TAIL.at("course 1"), firstTail);
        for (int i = 0; i < lengths.size(); i++) {
            String course = "course " + (i + 1);
            r.use(LENGTH_IN_COURSE.at(course), lengths.get(i));
            if (i > 0) {
                String below = "course " + i;
                r.record(
                        TAIL.at(course),
                        tails.get(i),
                        Formula.of(
                                TAIL.at(course),
                                TAIL.at(below)
                                        .plus(LENGTH_IN_COURSE
                                                .at(below)
                                                .minus(CoveringUnit.HEADLAP)
                                                .over(2))));
            }
            r.record(
                    LATH.at(course),
                    tails.get(i).plus(lengths.get(i)),
                    Formula.of(LATH.at(course), TAIL.at(course).plus(LENGTH_IN_COURSE.at(course))));
            if (i > 0) {
                String below = "course " + i;
                r.record(
                        LATH_GAUGE.at(below),
                        lathGauges().get(i - 1),
                        Formula.of(LATH_GAUGE.at(below), LATH.at(course).minus(LATH.at(below))));
            }
            if (i > 1) {
                r.record(
                        COURSE_HEADLAP.at(course),
                        headlaps().get(i - 2),
                        Formula.of(
                                COURSE_HEADLAP.at(course),
                                LATH.at("course " + (i - 1)).minus(TAIL.at(course))));
            }
        }
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof DiminishingCourses d
                && lengths.equals(d.lengths)
                && headlap.equals(d.headlap)
                && firstTail.equals(d.firstTail);
    }

    @Override
    public int hashCode() {
        return Objects.hash(lengths, headlap, firstTail);
    }

    /** Returns for example {@code 5 courses from 500 mm to 400 mm long; headlap 80 mm}. */
    @Override
    public String toString() {
        return lengths.size() + " courses from " + lengths.get(0) + " to " + lengths.get(lengths.size() - 1)
                + " long; headlap " + headlap;
    }
}
