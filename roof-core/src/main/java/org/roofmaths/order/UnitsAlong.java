package org.roofmaths.order;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * How many units cover a line, such as ridge units along a ridge, and how long the last piece is.
 *
 * <p>The number is the length over the cover of a unit, rounded up. If the last piece would be shorter than half a unit, a finding says
 * so, and the rest is shared with its neighbour: the last two pieces are then equal and none is under half. A ridge of 6100 mm takes
 * 14 units of 450 mm, the last cut to 250 mm; one of 6000 mm would leave 150 mm for the last, so the last two are cut to 300 mm each.
 *
 * @since 0.1
 */
public final class UnitsAlong implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The length of the line that is covered. */
    public static final Term<Length> LENGTH = Term.of("length of the line", "L", Length.class);

    /** The length that one unit covers. */
    public static final Term<Length> COVER = Term.of("cover of a unit along the line", "c", Length.class);

    /** The number of units. */
    public static final Term<Long> COUNT = Term.of("units along the line", "n", Long.class);

    /** What is left for the last unit when all others are whole. */
    public static final Term<Length> LAST = Term.of("length of the last unit", "z", Length.class);

    /** The length of each of the last two units, where the last alone would be under half. */
    public static final Term<Length> SHARED = Term.of("length of each of the last two units", "z₂", Length.class);

    /** A length or cover that is nothing. */
    public static final ProblemCode NOT_POSITIVE =
            ProblemCode.of("units-along.not-positive", "Give the length of the line and the cover of one unit.");

    /** A last piece under half a unit. */
    public static final ProblemCode UNDER_HALF = ProblemCode.of(
            "units-along.under-half", "Share the rest over the last two units, or move the end of the line.");

    private static final Formula COUNT_BY_COVER = Formula.of(COUNT, LENGTH.timesToCover(COVER));
    private static final Formula LAST_BY_COUNT =
            Formula.of(LAST, LENGTH.minus(COUNT.minus(1).times(COVER)));
    private static final Formula SHARED_BY_LAST =
            Formula.of(SHARED, COVER.plus(LAST).over(Expression.number(2)));

    private final Figure<Length> length;
    private final Figure<Length> cover;
    private final long count;
    private final Length last;
    private final Length shared;

    private UnitsAlong(Figure<Length> length, Figure<Length> cover) {
        this.length = length;
        this.cover = cover;
        count = cover.value().timesToCover(length.value());
        last = length.value().minus(cover.value().times(count - 1));
        shared = isUnderHalf() ? cover.value().plus(last).dividedBy(2) : last;
    }

    /**
     * Returns the units along a line.
     *
     * @param length the length of the line, above zero
     * @param cover the length that one unit covers, above zero
     * @return the units
     * @throws org.roofmaths.problem.ProblemsException if one of them is not above zero
     */
    public static UnitsAlong of(Length length, Length cover) {
        return of(Figure.given(length), Figure.given(cover));
    }

    /**
     * Returns the units along a line whose length has a trail, such as the true length of an edge.
     *
     * @param length the length of the line, above zero
     * @param cover the length that one unit covers, above zero
     * @return the units
     * @throws org.roofmaths.problem.ProblemsException if one of them is not above zero
     */
    public static UnitsAlong of(Figure<Length> length, Figure<Length> cover) {
        return attempt(length, cover).orThrow();
    }

    /**
     * Returns the units along a line, or every problem that stands against them.
     *
     * @param length the length of the line
     * @param cover the length that one unit covers
     * @return the units, with a finding if the last would be under half a unit, or the problems
     */
    public static Attempt<UnitsAlong> attempt(Figure<Length> length, Figure<Length> cover) {
        Problems problems = Problems.none()
                .require(isCountable(length.value()), NOT_POSITIVE, LENGTH.name(), length.value(), "be above 0 mm")
                .require(isCountable(cover.value()), NOT_POSITIVE, COVER.name(), cover.value(), "be above 0 mm");
        if (problems.hasErrors()) {
            return Attempt.failed(problems.list());
        }
        UnitsAlong units = new UnitsAlong(length, cover);
        return Attempt.of(units, units.problems());
    }

    private static boolean isCountable(Length length) {
        return length.isLongerThan(Length.STORAGE_RESOLUTION);
    }

    private boolean isUnderHalf() {
        return count > 1 && !last.times(2).meetsLeast(cover.value());
    }

    private void compute(Recorder r) {
        r.use(LENGTH, length);
        r.use(COVER, cover);
        r.record(COUNT, count, COUNT_BY_COVER);
        r.record(LAST, last, LAST_BY_COUNT);
        if (isUnderHalf()) {
            r.note("the last alone would be under half a unit");
            r.record(SHARED, shared, SHARED_BY_LAST);
        }
    }

    /** Returns how many units are needed. */
    public long count() {
        return count;
    }

    /** Returns how many are laid whole: all but the last, or all but the last two where these share the rest. */
    public long wholeUnits() {
        return last.equals(cover.value()) ? count : isUnderHalf() ? count - 2 : count - 1;
    }

    /** Returns the length that each cut unit covers; the cover of a unit where none is cut. */
    public Length cutLength() {
        return shared;
    }

    /** Returns a finding if the last unit alone would be under half; otherwise empty. */
    public List<Problem> problems() {
        if (!isUnderHalf()) {
            return List.of();
        }
        return List.of(Problem.finding(
                UNDER_HALF,
                "last unit",
                last,
                cover.value().dividedBy(2),
                "the last of " + count + " units would be " + last + " long, under half of " + cover.value(),
                List.of(
                        Mend.of(
                                "last two units",
                                "cut both to " + shared,
                                shared.minus(cover.value()),
                                "no piece under half a unit"),
                        Mend.of(
                                "length of the line",
                                last + " shorter",
                                last.negated(),
                                (count - 1) + " whole units"))));
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof UnitsAlong u && length.equals(u.length) && cover.equals(u.cover);
    }

    @Override
    public int hashCode() {
        return Objects.hash(length, cover);
    }

    /** Returns the units in words, such as {@code 14 units of 450 mm along 6100 mm: 13 whole, 1 cut to 250 mm}. */
    @Override
    public String toString() {
        long cut = count - wholeUnits();
        return count + (count == 1 ? " unit of " : " units of ") + cover.value() + " along " + length.value() + ": "
                + wholeUnits() + " whole" + (cut == 0 ? "" : ", " + cut + " cut to " + shared);
    }
}
