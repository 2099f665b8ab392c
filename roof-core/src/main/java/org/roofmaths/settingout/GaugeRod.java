package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.End;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;

/**
 * A rod with the gauges marked on it, to be laid on the first batten and moved up the slope.
 *
 * <p>The rod carries as many whole gauges as go on it, each mark a running value from its foot, rounded. When it is moved, its foot
 * stands on the last mark made. A tape from one zero is better: what a rod loses by rounding it loses again at each move,
 * {@link #lossAtTop()} in all.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class GaugeRod implements Serializable {
    private static final long serialVersionUID = 1L;

    /** Not one gauge goes on the rod. */
    public static final ProblemCode TOO_SHORT = ProblemCode.of("gauge-rod.too-short", "Use a longer rod.");

    /** How much one batten is out. */
    public static final Term<Length> SLIP = Term.of("slip at one batten", "sb", Length.class);

    /** How much the last batten is out if each slips the same way. */
    public static final Term<Length> DRIFT = Term.of("drift at the last batten", "db", Length.class);

    private final Courses courses;
    private final End end;
    private final Length rodLength;
    private final int onRod;

    private GaugeRod(Courses courses, End end, Length rodLength) {
        this.courses = Objects.requireNonNull(courses, "courses");
        this.end = Objects.requireNonNull(end, "end");
        this.rodLength = Objects.requireNonNull(rodLength, "rodLength");
        Length gauge = courses.gauge().at(end);
        Problems problems = Problems.none();
        problems.require(
                !rodLength.isShorterThan(gauge), TOO_SHORT, "rod length", rodLength, "be at least a gauge of " + gauge);
        problems.throwIfErrors();
        this.onRod =
                (int) Math.min(courses.gaugeCount(), gauge.timesIn(rodLength).count());
    }

    /**
     * Returns the rod for one end of a face.
     *
     * @param courses the courses
     * @param end the end it is used at; where the ends differ, each has its own rod
     * @param rodLength how long the rod is
     * @return the rod
     * @throws ProblemsException if not one gauge goes on the rod
     */
    public static GaugeRod of(Courses courses, End end, Length rodLength) {
        return new GaugeRod(courses, end, rodLength);
    }

    /** Returns the end that the rod is for. */
    public End end() {
        return end;
    }

    /** Returns how many gauges are marked on the rod. */
    public int gaugesOnRod() {
        return onRod;
    }

    /** Returns the marks from the foot of the rod, rounded as running values; 0 is left out. */
    public List<Length> marks() {
        List<Length> marks = new ArrayList<>();
        Length gauge = courses.gauge().at(end);
        for (int i = 1; i <= onRod; i++) {
            marks.add(courses.rounding().apply(gauge.times((long) i)));
        }
        return List.copyOf(marks);
    }

    /** Returns how often the rod is laid down, the last time perhaps for fewer gauges. */
    public int placings() {
        return (courses.gaugeCount() + onRod - 1) / onRod;
    }

    /** Returns by how much the last batten lies below its line if every placing repeats the rounding of the rod. */
    public Length lossAtTop() {
        List<Length> marks = marks();
        int full = courses.gaugeCount() / onRod;
        int rest = courses.gaugeCount() % onRod;
        Length reached = marks.get(onRod - 1).times((long) full).plus(rest == 0 ? Length.ZERO : marks.get(rest - 1));
        return courses.gauge().at(end).times((long) courses.gaugeCount()).minus(reached);
    }

    /**
     * Returns how much the last batten is out if battens are marked one from another and each slips the same way.
     *
     * <p>For example, 1 mm at each of 50 battens is 50 mm at the last; if the other end slips the other way, the ends are 100 mm apart: a
     * whole course of plain tiles.
     *
     * @param gauges how many gauges are marked one from another
     * @param slip how much one batten is out
     * @return the slip so many times
     */
    public static Worked<Length> drift(int gauges, Length slip) {
        return Worked.by(DRIFT, r -> {
            r.use(Courses.GAUGE_COUNT, Figure.given(gauges));
            Length one = r.use(SLIP, slip);
            return r.record(DRIFT, one.times((long) gauges), Formula.of(DRIFT, Courses.GAUGE_COUNT.times(SLIP)));
        });
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof GaugeRod g
                && courses.equals(g.courses)
                && end == g.end
                && rodLength.equals(g.rodLength);
    }

    @Override
    public int hashCode() {
        return Objects.hash(courses, end, rodLength);
    }

    /** Returns for example {@code rod for the left end: 5 gauges, laid down 3 times}. */
    @Override
    public String toString() {
        return "rod for the " + end + " end: " + onRod + (onRod == 1 ? " gauge" : " gauges") + ", laid down "
                + placings() + (placings() == 1 ? " time" : " times");
    }
}
