package org.roofmaths.loads;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Pressure;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * Snow that the wind piles against a taller wall above a lower roof, as an indication: the plain abutting case and no other.
 *
 * <p>Drift coefficient {@code = (upper width + lower width) ÷ (2 × height)}, first capped by {@code snow weight × height ÷ ground snow},
 * then held in the rule set's range; length {@code 2 × height} in its range. The load falls in a straight line from the wall to the end of
 * the drift. For example, 10 m and 40 m wide, 3 m high, 650 Pa of ground snow, 2000 N/m³, range 0.8 to 4: 4, 6 m long, 2600 Pa at the wall.
 *
 * <p>Snow that slides from the upper roof is refused: how much of it arrives is read in two ways. Immutable and thread-safe. Its caution:
 * {@link Caution#SNOW}.
 *
 * @since 0.1
 */
public final class SnowDrift implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The width of the upper roof. */
    public static final Term<Length> UPPER_WIDTH = Term.of("width of the upper roof", "b1", Length.class);
    /** The width of the lower roof. */
    public static final Term<Length> LOWER_WIDTH = Term.of("width of the lower roof", "b2", Length.class);
    /** The height of the upper roof over the lower. */
    public static final Term<Length> HEIGHT = Term.of("height of the upper roof over the lower", "hu", Length.class);
    /** The drift coefficient before its limits. */
    public static final Term<Ratio> RAW = Term.of("drift coefficient before its limits", "μr", Ratio.class);
    /** The drift coefficient. */
    public static final Term<Ratio> COEFFICIENT = Term.of("drift coefficient", "μw", Ratio.class);
    /** The length of the drift. */
    public static final Term<Length> LENGTH = Term.of("length of the drift", "ls", Length.class);
    /** The load at the wall, on plan. */
    public static final Term<Pressure> AT_WALL = Term.of("snow at the wall, on plan", "sw", Pressure.class);
    /** The load beyond the drift, on plan. */
    public static final Term<Pressure> BEYOND = Term.of("snow beyond the drift, on plan", "sb", Pressure.class);

    private static final Formula RAW_BY_WIDTHS =
            Formula.of(RAW, UPPER_WIDTH.plus(LOWER_WIDTH).over(HEIGHT.times(2)));
    private static final Formula WITHIN_LIMITS = Formula.of(
            COEFFICIENT,
            RAW.least(DriftDemand.SNOW_WEIGHT.times(HEIGHT).over(SnowDemand.GROUND))
                    .greatest(DriftDemand.LEAST)
                    .least(DriftDemand.GREATEST));
    private static final Formula TWICE_THE_HEIGHT = Formula.of(
            LENGTH, HEIGHT.times(2).greatest(DriftDemand.LEAST_LENGTH).least(DriftDemand.GREATEST_LENGTH));
    private static final Formula LOAD_AT_WALL = Formula.of(
            AT_WALL,
            COEFFICIENT.times(SnowDemand.EXPOSURE).times(SnowDemand.THERMAL).times(SnowDemand.GROUND));
    private static final Formula LOAD_BEYOND = Formula.of(
            BEYOND,
            SnowDemand.FLAT_COEFFICIENT
                    .times(SnowDemand.EXPOSURE)
                    .times(SnowDemand.THERMAL)
                    .times(SnowDemand.GROUND));

    private final Figure<Length> upper;
    private final Figure<Length> lower;
    private final Figure<Length> height;
    private final SnowDemand snow;
    private final DriftDemand drift;
    private final Numbers numbers;

    private record Numbers(Ratio coefficient, Length length, Pressure atWall, Pressure beyond)
            implements Serializable {}

    private SnowDrift(
            Figure<Length> upper, Figure<Length> lower, Figure<Length> height, SnowDemand snow, DriftDemand drift) {
        this.upper = upper;
        this.lower = lower;
        this.height = height;
        this.snow = snow;
        this.drift = drift;
        numbers = compute(Recorder.off());
    }

    /**
     * Returns the drift on a lower roof beside a taller building.
     *
     * @param upper the width of the upper roof across the wall, above zero
     * @param lower the width of the lower roof across the wall, above zero
     * @param height the height of the upper roof over the lower, above zero
     * @param upperPitch the pitch of the upper roof towards the lower
     * @param snow the rule set's figures for snow, and the site's ground snow
     * @param drift the rule set's figures for drifts
     * @return the drift; the refusal of {@link LeftToOthers#SLIDING_SNOW} where snow slides from the upper roof; the problems of wrong sizes
     */
    public static Attempt<SnowDrift> against(
            Length upper, Length lower, Length height, Pitch upperPitch, SnowDemand snow, DriftDemand drift) {
        Problems problems = Problems.none();
        CoveringItem.requirePositive(problems, UPPER_WIDTH, Given.of(upper));
        CoveringItem.requirePositive(problems, LOWER_WIDTH, Given.of(lower));
        CoveringItem.requirePositive(problems, HEIGHT, Given.of(height));
        if (problems.hasErrors()) {
            return Attempt.failed(problems.list());
        }
        if (!upperPitch.meetsGreatest(drift.noSlideUpTo().value())) {
            return LeftToOthers.SLIDING_SNOW.answer();
        }
        return Attempt.of(new SnowDrift(Given.of(upper), Given.of(lower), Given.of(height), snow, drift));
    }

    private Numbers compute(Recorder r) {
        double b1 = r.use(UPPER_WIDTH, upper).toSi();
        double b2 = r.use(LOWER_WIDTH, lower).toSi();
        Length tall = r.use(HEIGHT, height);
        double raw = r.record(RAW, Ratio.of((b1 + b2) / (2 * tall.toSi())), RAW_BY_WIDTHS)
                .toDouble();
        double weight = r.use(DriftDemand.SNOW_WEIGHT, drift.snowWeight());
        Pressure ground = r.use(SnowDemand.GROUND, snow.ground());
        double least = r.use(DriftDemand.LEAST, drift.least()).toDouble();
        double greatest = r.use(DriftDemand.GREATEST, drift.greatest()).toDouble();
        double capped = StrictMath.min(raw, weight * tall.toSi() / ground.toSi());
        Ratio coefficient =
                r.record(COEFFICIENT, Ratio.of(StrictMath.min(greatest, StrictMath.max(least, capped))), WITHIN_LIMITS);
        Length shortest = r.use(DriftDemand.LEAST_LENGTH, drift.leastLength());
        Length longest = r.use(DriftDemand.GREATEST_LENGTH, drift.greatestLength());
        Length length = r.record(LENGTH, tall.times(2L).max(shortest).min(longest), TWICE_THE_HEIGHT);
        Ratio exposure = r.use(SnowDemand.EXPOSURE, snow.exposure());
        Ratio thermal = r.use(SnowDemand.THERMAL, snow.thermal());
        Ratio flat = r.use(SnowDemand.FLAT_COEFFICIENT, snow.flatCoefficient());
        Pressure atWall =
                r.record(AT_WALL, ground.times(coefficient).times(exposure).times(thermal), LOAD_AT_WALL);
        Pressure beyond = r.record(BEYOND, ground.times(flat).times(exposure).times(thermal), LOAD_BEYOND);
        return new Numbers(coefficient, length, atWall, beyond);
    }

    /** Returns the drift coefficient. */
    public Ratio coefficient() {
        return numbers.coefficient();
    }

    /** Returns the length of the drift; it is cut off where the lower roof ends before it. */
    public Length length() {
        return numbers.length();
    }

    /** Returns the load at the wall, on plan. */
    public Pressure atWall() {
        return numbers.atWall();
    }

    /** Returns the load beyond the drift, on plan. */
    public Pressure beyond() {
        return numbers.beyond();
    }

    /**
     * Returns the load at a distance from the wall, on plan: on the straight line from {@link #atWall()} to {@link #beyond()}.
     *
     * @param fromWall the distance, zero or more
     * @return the load
     */
    public Pressure at(Length fromWall) {
        double share = StrictMath.min(1, fromWall.toSi() / length().toSi());
        return Pressure.ofPascals(atWall().toPascals() + (beyond().toPascals() - atWall().toPascals()) * share);
    }

    /** Returns the rule set with its edition. */
    public String ruleSet() {
        return snow.ruleSet();
    }

    /** Returns what must stand beside it. */
    public Caution caution() {
        return Caution.SNOW;
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SnowDrift d
                && upper.equals(d.upper)
                && lower.equals(d.lower)
                && height.equals(d.height)
                && snow.equals(d.snow)
                && drift.equals(d.drift);
    }

    @Override
    public int hashCode() {
        return Objects.hash(upper, lower, height, snow, drift);
    }

    /** Returns for example {@code drift 2600 Pa at the wall, 6000 mm long, by EN 1991-1-3:2003; indicative, not a design}. */
    @Override
    public String toString() {
        return "drift " + atWall() + " at the wall, " + length() + " long, by " + ruleSet()
                + "; indicative, not a design";
    }
}
