package org.roofmaths.loads;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Pressure;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;
import org.roofmaths.working.Working;

/**
 * Snow on one pitch, undrifted, as an indication.
 *
 * <p>Load on plan {@code = coefficient × exposure × thermal × ground snow}. The coefficient is that of a flat roof up to one pitch, falls in
 * a straight line to nothing at another, and does not fall where the snow is held. For example, with 0.8, 30° and 60°, a slope of 35° has
 * 0.667.
 *
 * <p>Immutable and thread-safe. Its caution: {@link Caution#SNOW}. Drifts, valleys, parapets and sliding snow are in
 * {@link LeftToOthers}, the plain case against a taller wall in {@link SnowDrift}.
 *
 * @since 0.1
 */
public final class SnowIndicative implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The share of the ground snow that lies on the slope. */
    public static final Term<Ratio> COEFFICIENT = Term.of("snow coefficient of the slope", "μ", Ratio.class);
    /** The load on plan. */
    public static final Term<Pressure> ON_PLAN = Term.of("snow on the slope, on plan", "s", Pressure.class);

    private static final Formula COEFFICIENT_BY_PITCH = Formula.of(
            COEFFICIENT,
            SnowDemand.FLAT_COEFFICIENT.times(SnowDemand.NONE_FROM
                    .minus(CoveringMass.PITCH)
                    .over(SnowDemand.NONE_FROM.minus(SnowDemand.FULL_UP_TO))
                    .greatest(Expression.number(0))
                    .least(Expression.number(1))));
    private static final Formula COEFFICIENT_HELD = Formula.of(COEFFICIENT, SnowDemand.FLAT_COEFFICIENT);
    private static final Formula LOAD_BY_FACTORS = Formula.of(
            ON_PLAN,
            COEFFICIENT.times(SnowDemand.EXPOSURE).times(SnowDemand.THERMAL).times(SnowDemand.GROUND));

    private final Figure<Pitch> pitch;
    private final SnowDemand demand;
    private final Pressure onPlan;

    private SnowIndicative(Figure<Pitch> pitch, SnowDemand demand) {
        this.pitch = pitch;
        this.demand = demand;
        onPlan = compute(Recorder.off());
    }

    /**
     * Returns the snow on a pitch.
     *
     * @param pitch the pitch
     * @param demand the rule set's figures and the site's ground snow
     * @return the snow
     */
    public static SnowIndicative on(Figure<Pitch> pitch, SnowDemand demand) {
        return new SnowIndicative(Objects.requireNonNull(pitch, "pitch"), Objects.requireNonNull(demand, "demand"));
    }

    /**
     * Returns the snow on a pitch.
     *
     * @param pitch the pitch
     * @param demand the rule set's figures and the site's ground snow
     * @return the snow
     */
    public static SnowIndicative on(Pitch pitch, SnowDemand demand) {
        return on(Given.of(pitch), demand);
    }

    private Ratio coefficient(Recorder r) {
        Ratio flat = r.use(SnowDemand.FLAT_COEFFICIENT, demand.flatCoefficient());
        if (demand.hold() == SnowHold.HELD) {
            return r.record(COEFFICIENT, flat, COEFFICIENT_HELD);
        }
        double at = r.use(CoveringMass.PITCH, pitch).toSi();
        double full = r.use(SnowDemand.FULL_UP_TO, demand.fullUpTo()).toSi();
        double none = r.use(SnowDemand.NONE_FROM, demand.noneFrom()).toSi();
        double share = StrictMath.min(1, StrictMath.max(0, (none - at) / (none - full)));
        return r.record(COEFFICIENT, flat.times(share), COEFFICIENT_BY_PITCH);
    }

    private Pressure compute(Recorder r) {
        Ratio share = coefficient(r);
        Ratio exposure = r.use(SnowDemand.EXPOSURE, demand.exposure());
        Ratio thermal = r.use(SnowDemand.THERMAL, demand.thermal());
        Pressure ground = r.use(SnowDemand.GROUND, demand.ground());
        return r.record(ON_PLAN, ground.times(share).times(exposure).times(thermal), LOAD_BY_FACTORS);
    }

    /** Returns the share of the ground snow that lies on the slope. */
    public Ratio coefficient() {
        return coefficient(Recorder.off());
    }

    /** Returns the load for each square metre on plan. */
    public Pressure onPlan() {
        return onPlan;
    }

    /** Returns the load in all the ways in which loads on a slope are told. */
    public SlopeLoad onSlope() {
        return SlopeLoad.ofPlan(Worked.by(ON_PLAN, this::compute), pitch);
    }

    /** Returns the rule set with its edition. */
    public String ruleSet() {
        return demand.ruleSet();
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
        return other instanceof SnowIndicative s && pitch.equals(s.pitch) && demand.equals(s.demand);
    }

    @Override
    public int hashCode() {
        return Objects.hash(pitch, demand);
    }

    /** Returns for example {@code snow 400 Pa on plan at 35° by EN 1991-1-3:2003; indicative, not a design}. */
    @Override
    public String toString() {
        return "snow " + onPlan + " on plan at " + pitch.value() + " by " + ruleSet() + "; indicative, not a design";
    }
}
