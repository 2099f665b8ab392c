package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Range;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;
import org.roofmaths.working.Working;

/**
 * Courses at the same levels on slopes of different pitch, so that they meet at a hip or in a valley.
 *
 * <p>All slopes gain the same height in the same number of gauges, so each gauge is that height over the number and over the sine of
 * its pitch. The flattest slope sets the number at the greatest gauge; the steepest must still keep the least. For example, 3 m of
 * height on 45° and 50° with gauges from 88 to 100 mm make 43 gauges of 98.7 and 91.1 mm.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class SameLevels implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** A size is not above zero, or fewer than two slopes are given. */
    public static final ProblemCode SIZE = ProblemCode.of(
            "same-levels.size", "Give a height, a greatest gauge and the pitches of at least two slopes.");

    /** The pitches differ by more than the limits of the gauge can take up. */
    public static final ProblemCode PITCHES_TOO_UNEQUAL = ProblemCode.of(
            "same-levels.pitches-too-unequal",
            "Let the courses pass the hip or valley at different levels, or use a unit with other gauges.");

    /** The height that all slopes gain, plumb. */
    public static final Term<Length> RISE = Term.of("height that the courses share", "Hc", Length.class);

    /** The pitch of a slope; at the place of its number, {@code slope 1} first. */
    public static final Term<Pitch> PITCH = Term.of("pitch of the slope", "ps", Pitch.class);

    /** The length of a slope over the height; at the place of its number. */
    public static final Term<Length> SLOPE = Term.of("length of the slope over the shared height", "Sc", Length.class);

    /** The gauge on a slope; at the place of its number. */
    public static final Term<Length> GAUGE_ON_SLOPE = Term.of("gauge on the slope", "gs", Length.class);

    /** The steepest pitch that a slope may have beside a flatter one. */
    public static final Term<Pitch> STEEPEST = Term.of("steepest pitch at the same levels", "pmax", Pitch.class);

    private final Length rise;
    private final Length greatest;
    private final @Nullable Length least;
    private final List<Pitch> pitches;
    private final int gauges;
    private final List<Length> gauge;

    private SameLevels(Length rise, Length greatest, @Nullable Length least, List<Pitch> pitches) {
        this.rise = rise;
        this.greatest = greatest;
        this.least = least;
        this.pitches = pitches;
        this.gauges = count(rise, greatest, pitches);
        List<Length> found = new ArrayList<>();
        for (Pitch pitch : pitches) {
            found.add(slope(rise, pitch).dividedBy(gauges));
        }
        this.gauge = List.copyOf(found);
    }

    private static Length slope(Length rise, Pitch pitch) {
        return rise.dividedBy(pitch.sin());
    }

    private static int flattest(List<Pitch> pitches) {
        int flattest = 0;
        for (int i = 1; i < pitches.size(); i++) {
            flattest = pitches.get(i).isFlatterThan(pitches.get(flattest)) ? i : flattest;
        }
        return flattest;
    }

    private static int count(Length rise, Length greatest, List<Pitch> pitches) {
        return Math.toIntExact(greatest.timesToCover(slope(rise, pitches.get(flattest(pitches)))));
    }

    /**
     * Divides a height into courses at the same levels on all slopes.
     *
     * @param rise the height between the first and the last line, plumb, above zero
     * @param gauge the gauges allowed on every slope; the least may be left open
     * @param pitches the pitches of the slopes, at least two
     * @return the courses
     * @throws ProblemsException if a size is wrong or the pitches differ too much
     */
    public static SameLevels over(Length rise, Range<Length> gauge, Pitch... pitches) {
        return attemptOver(rise, gauge, pitches).orThrow();
    }

    /**
     * Divides a height into courses at the same levels on all slopes, or says why not.
     *
     * @param rise the height between the first and the last line, plumb, above zero
     * @param gauge the gauges allowed on every slope; the least may be left open
     * @param pitches the pitches of the slopes, at least two
     * @return the courses; or errors; or a finding that tells by how much the steepest slope falls short of the least gauge
     */
    public static Attempt<SameLevels> attemptOver(Length rise, Range<Length> gauge, Pitch... pitches) {
        Problems problems = Problems.none();
        problems.require(
                rise.isPositive() && !rise.isLongerThan(Length.ofMetres(1000)),
                SIZE,
                "rise",
                rise,
                "be above 0 mm and at most 1000000 mm");
        problems.require(
                gauge.upper().filter(Length.STORAGE_RESOLUTION::isShorterThan).isPresent(),
                SIZE,
                "gauge",
                gauge,
                "have a greatest gauge above 0 mm");
        problems.require(pitches.length >= 2, SIZE, "pitches", pitches.length + " slopes", "be of at least 2 slopes");
        if (problems.hasErrors()) {
            return Attempt.failed(problems.list());
        }
        SameLevels levels =
                new SameLevels(rise, gauge.upper().orElseThrow(), gauge.lower().orElse(null), List.of(pitches));
        Length narrowest = levels.gauge.stream().reduce(Length::min).orElseThrow();
        Length limit = levels.least;
        if (limit == null || narrowest.meetsLeast(limit)) {
            return Attempt.of(levels);
        }
        int steepest = levels.gauge.indexOf(narrowest);
        Pitch flat = pitches[flattest(levels.pitches)];
        Length widest = levels.gauge.stream().reduce(Length::max).orElseThrow();
        Pitch most = steepestBeside(flat, widest, limit).value();
        return Attempt.failed(List.of(Problem.finding(
                PITCHES_TOO_UNEQUAL,
                "courses",
                narrowest,
                limit,
                levels.gauges + " gauges at the same levels are " + widest + " on " + flat + " but " + narrowest
                        + " on " + pitches[steepest] + ", " + limit.minus(narrowest) + " under the least gauge of "
                        + limit,
                List.of(
                        Mend.of("pitch", "at most " + most + " on the steeper slope", "courses at the same levels"),
                        Mend.of("courses", "divided for each slope by itself", "courses that do not meet")))));
    }

    /**
     * Returns the steepest pitch on which courses can still keep the levels of a flatter slope.
     *
     * @param flatter the pitch of the flatter slope
     * @param gauge the gauge there
     * @param least the least gauge on the steeper slope
     * @return the pitch whose sine is that of the flatter times gauge over least gauge
     * @throws ProblemsException if every pitch would do, as the gauge would stay above the least up to the plumb
     */
    public static Worked<Pitch> steepestBeside(Pitch flatter, Length gauge, Length least) {
        double sine = flatter.sin() * gauge.toMetres() / least.toMetres();
        if (sine >= 1) {
            throw new ProblemsException(List.of(
                    Problem.error(SIZE, "least gauge", least, "be so great that a pitch below 90° reaches it")));
        }
        return Worked.by(STEEPEST, r -> {
            r.use(PITCH, flatter);
            r.use(GAUGE_ON_SLOPE, gauge);
            r.use(Courses.LEAST_GAUGE, least);
            return r.record(
                    STEEPEST,
                    Pitch.ofDegrees(StrictMath.toDegrees(StrictMath.asin(sine))),
                    Formula.of(
                            STEEPEST,
                            PITCH.sin()
                                    .times(GAUGE_ON_SLOPE)
                                    .over(Courses.LEAST_GAUGE)
                                    .arcSin()));
        });
    }

    /** Returns the number of gauges, the same on all slopes. */
    public int gaugeCount() {
        return gauges;
    }

    /** Returns the gauge on each slope, in the order of the pitches given. */
    public List<Length> gauges() {
        return gauge;
    }

    /** Returns the pitches in the order given. */
    public List<Pitch> pitches() {
        return pitches;
    }

    /**
     * Returns the levels of the lines, plumb from the first.
     *
     * @return rising from 0; one more than gauges
     */
    public List<Length> levels() {
        List<Length> levels = new ArrayList<>();
        for (int i = 0; i <= gauges; i++) {
            levels.add(rise.times(i / (double) gauges));
        }
        return List.copyOf(levels);
    }

    @Override
    public Working working() {
        return Working.of(this::tell);
    }

    private void tell(Recorder r) {
        r.use(RISE, rise);
        r.use(Courses.GREATEST_GAUGE, Figure.given(greatest));
        for (int i = 0; i < pitches.size(); i++) {
            Places p = Places.at("slope " + (i + 1));
            p.use(r, PITCH, Figure.given(pitches.get(i)));
            p.record(
                    r,
                    SLOPE,
                    slope(rise, pitches.get(i)),
                    q -> RISE.over(q.of(PITCH).sin()));
        }
        Places flat = Places.at("slope " + (flattest(pitches) + 1));
        r.record(
                Courses.GAUGE_COUNT,
                gauges,
                Formula.of(Courses.GAUGE_COUNT, flat.of(SLOPE).timesToCover(Courses.GREATEST_GAUGE)));
        for (int i = 0; i < pitches.size(); i++) {
            Places p = Places.at("slope " + (i + 1));
            p.record(r, GAUGE_ON_SLOPE, gauge.get(i), q -> q.of(SLOPE).over(Courses.GAUGE_COUNT));
        }
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SameLevels s
                && rise.equals(s.rise)
                && greatest.equals(s.greatest)
                && Objects.equals(least, s.least)
                && pitches.equals(s.pitches);
    }

    @Override
    public int hashCode() {
        return Objects.hash(rise, greatest, least, pitches);
    }

    /** Returns for example {@code 43 gauges: 98.666062 mm on 45°, 91.074927 mm on 50°}. */
    @Override
    public String toString() {
        List<String> each = new ArrayList<>();
        for (int i = 0; i < pitches.size(); i++) {
            each.add(gauge.get(i) + " on " + pitches.get(i));
        }
        return gauges + (gauges == 1 ? " gauge: " : " gauges: ") + String.join(", ", each);
    }
}
