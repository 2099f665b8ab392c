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
import org.roofmaths.units.Length;
import org.roofmaths.units.Rounding;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * Members set out at equal centres between two fixed ones, such as rafters along a plate.
 *
 * <p>The number of gaps is the least that keeps the centres at or below the greatest allowed; there is one member more
 * than there are gaps. For example, 5153 mm at no more than 600 mm is 9 gaps of 572.6 mm and 10 members.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class EvenSpacing implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The distance from the first member to the last, centre to centre. */
    public static final Term<Length> DISTANCE = Term.of("first to last member, centre to centre", "ed", Length.class);

    /** The greatest centres allowed. */
    public static final Term<Length> GREATEST = Term.of("greatest centres", "eg", Length.class);

    /** The number of gaps. */
    public static final Term<Integer> GAPS = Term.of("gaps between members", "en", Integer.class);

    /** The centres that result. */
    public static final Term<Length> CENTRES = Term.of("equal centres", "ec", Length.class);

    /** A size is not as it must be. */
    public static final ProblemCode SIZE = ProblemCode.of("even-spacing.size", "Check the size and its unit.");

    private static final Formula GAPS_BY_GREATEST = Formula.of(GAPS, DISTANCE.timesToCover(GREATEST));
    private static final Formula CENTRES_BY_GAPS = Formula.of(CENTRES, DISTANCE.over(GAPS));
    private static final int MOST = 100_000;

    private final Length distance;
    private final Length greatest;
    private final Numbers numbers;

    private record Numbers(int gaps, Length centres) implements Serializable {}

    private EvenSpacing(Length distance, Length greatest) {
        this.distance = Objects.requireNonNull(distance, "distance");
        this.greatest = Objects.requireNonNull(greatest, "greatest");
        Problems problems = Problems.none();
        Checks.requireSize(problems, SIZE, "distance", distance);
        Checks.requireSize(problems, SIZE, "greatest centres", greatest);
        problems.throwIfErrors();
        if (distance.toMetres() / greatest.toMetres() > MOST) {
            throw new ProblemsException(
                    List.of(Problem.error(SIZE, "greatest centres", greatest, "give at most " + MOST + " gaps")));
        }
        this.numbers = compute(Recorder.off());
    }

    /**
     * Returns members at equal centres.
     *
     * @param distance the distance from the first to the last, centre to centre, above zero
     * @param greatest the greatest centres allowed, above zero
     * @return the spacing
     * @throws ProblemsException if a size is zero, below zero or over 1 km
     */
    public static EvenSpacing of(Length distance, Length greatest) {
        return new EvenSpacing(distance, greatest);
    }

    private Numbers compute(Recorder r) {
        Length whole = r.use(DISTANCE, distance);
        Length most = r.use(GREATEST, greatest);
        int gaps = r.record(GAPS, (int) most.timesToCover(whole), GAPS_BY_GREATEST);
        return new Numbers(gaps, r.record(CENTRES, whole.dividedBy(gaps), CENTRES_BY_GAPS));
    }

    /** Returns the number of gaps. */
    public int gapCount() {
        return numbers.gaps;
    }

    /** Returns the number of members, the fixed ones included: one more than there are gaps. */
    public int memberCount() {
        return numbers.gaps + 1;
    }

    /** Returns the centres that result. */
    public Length centres() {
        return numbers.centres;
    }

    /**
     * Returns where the members stand, as running distances from the first, rounded so that rounding never adds up.
     *
     * @param rounding how each mark is rounded
     * @return the marks, the first at zero; the last is the distance, rounded
     */
    public List<Length> marks(Rounding<Length> rounding) {
        Objects.requireNonNull(rounding, "rounding");
        List<Length> marks = new ArrayList<>();
        for (int i = 0; i <= numbers.gaps; i++) {
            marks.add(rounding.apply(distance.times((long) i).dividedBy(numbers.gaps)));
        }
        return List.copyOf(marks);
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof EvenSpacing e && distance.equals(e.distance) && greatest.equals(e.greatest);
    }

    @Override
    public int hashCode() {
        return Objects.hash(distance, greatest);
    }

    /** Returns for example {@code 10 members, 9 gaps of 572.555556 mm}. */
    @Override
    public String toString() {
        return memberCount() + " members, " + gapCount() + " gaps of " + centres();
    }
}
