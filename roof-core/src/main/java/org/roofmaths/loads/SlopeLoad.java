package org.roofmaths.loads;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Pressure;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * One load told in the ways in which loads on a slope are told: for each square metre on plan, for each square metre of slope, and split
 * square to the slope and along it.
 *
 * <p>A weight {@code g} on the slope is {@code g ÷ cos} on plan, {@code g × cos} square to it and {@code g × sin} along it. A load
 * {@code q} on plan, such as snow, is {@code q × cos} for each square metre of slope, {@code q × cos²} square to it and
 * {@code q × sin × cos} along it. Adding loads of different kinds without turning them into one is the classic error.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class SlopeLoad implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The load for each square metre on plan, acting down. */
    public static final Term<Pressure> ON_PLAN = Term.of("load per area on plan", "qp", Pressure.class);
    /** The load for each square metre of slope, acting down. */
    public static final Term<Pressure> ON_SLOPE = Term.of("load per area of slope", "qs", Pressure.class);
    /** The part square to the slope, for each square metre of slope. */
    public static final Term<Pressure> SQUARE = Term.of("load square to the slope", "qn", Pressure.class);
    /** The part along the slope, for each square metre of slope. */
    public static final Term<Pressure> ALONG = Term.of("load along the slope", "qa", Pressure.class);

    private static final Formula PLAN_BY_SLOPE = Formula.of(ON_PLAN, ON_SLOPE.over(CoveringMass.PITCH.cos()));
    private static final Formula SLOPE_BY_PLAN = Formula.of(ON_SLOPE, ON_PLAN.times(CoveringMass.PITCH.cos()));
    private static final Formula SQUARE_BY_SLOPE = Formula.of(SQUARE, ON_SLOPE.times(CoveringMass.PITCH.cos()));
    private static final Formula ALONG_BY_SLOPE = Formula.of(ALONG, ON_SLOPE.times(CoveringMass.PITCH.sin()));

    private final @Nullable Figure<Pressure> plan; // one of the two is given
    private final @Nullable Figure<Pressure> slope;
    private final Figure<Pitch> pitch;
    private final Numbers numbers;

    private record Numbers(Pressure onPlan, Pressure onSlope, Pressure square, Pressure along)
            implements Serializable {}

    private SlopeLoad(@Nullable Figure<Pressure> plan, @Nullable Figure<Pressure> slope, Figure<Pitch> pitch) {
        this.plan = plan;
        this.slope = slope;
        this.pitch = Objects.requireNonNull(pitch, "pitch");
        numbers = compute(Recorder.off());
    }

    /**
     * Returns a load that is told for each square metre on plan, such as snow.
     *
     * @param load the load on plan
     * @param pitch the pitch
     * @return the load in all its ways
     */
    public static SlopeLoad ofPlan(Figure<Pressure> load, Figure<Pitch> pitch) {
        return new SlopeLoad(Objects.requireNonNull(load, "load"), null, pitch);
    }

    /**
     * Returns a load that is told for each square metre on plan, such as snow.
     *
     * @param load the load on plan
     * @param pitch the pitch
     * @return the load in all its ways
     */
    public static SlopeLoad ofPlan(Pressure load, Pitch pitch) {
        return ofPlan(Given.of(load), Given.of(pitch));
    }

    /**
     * Returns a load that is told for each square metre of slope, such as the weight of a covering.
     *
     * @param load the load on the slope
     * @param pitch the pitch
     * @return the load in all its ways
     */
    public static SlopeLoad ofSlope(Figure<Pressure> load, Figure<Pitch> pitch) {
        return new SlopeLoad(null, Objects.requireNonNull(load, "load"), pitch);
    }

    /**
     * Returns a load that is told for each square metre of slope, such as the weight of a covering.
     *
     * @param load the load on the slope
     * @param pitch the pitch
     * @return the load in all its ways
     */
    public static SlopeLoad ofSlope(Pressure load, Pitch pitch) {
        return ofSlope(Given.of(load), Given.of(pitch));
    }

    private Numbers compute(Recorder r) {
        Pitch steep = r.use(CoveringMass.PITCH, pitch);
        Pressure onPlan;
        Pressure onSlope;
        if (slope == null) {
            onPlan = r.use(ON_PLAN, Objects.requireNonNull(plan));
            onSlope = r.record(ON_SLOPE, onPlan.times(steep.cos()), SLOPE_BY_PLAN);
        } else {
            onSlope = r.use(ON_SLOPE, slope);
            onPlan = r.record(ON_PLAN, onSlope.dividedBy(steep.cos()), PLAN_BY_SLOPE);
        }
        Pressure square = r.record(SQUARE, onSlope.times(steep.cos()), SQUARE_BY_SLOPE);
        Pressure along = r.record(ALONG, onSlope.times(steep.sin()), ALONG_BY_SLOPE);
        return new Numbers(onPlan, onSlope, square, along);
    }

    /** Returns the load for each square metre on plan. */
    public Pressure onPlan() {
        return numbers.onPlan();
    }

    /** Returns the load for each square metre of slope. */
    public Pressure onSlope() {
        return numbers.onSlope();
    }

    /** Returns the part square to the slope, for each square metre of slope. */
    public Pressure squareToSlope() {
        return numbers.square();
    }

    /** Returns the part along the slope, for each square metre of slope. */
    public Pressure alongSlope() {
        return numbers.along();
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SlopeLoad l
                && Objects.equals(plan, l.plan)
                && Objects.equals(slope, l.slope)
                && pitch.equals(l.pitch);
    }

    @Override
    public int hashCode() {
        return Objects.hash(plan, slope, pitch);
    }

    /** Returns for example {@code 866 Pa on plan, 750 Pa of slope, 649.5 Pa square to it, 375 Pa along it}. */
    @Override
    public String toString() {
        return onPlan() + " on plan, " + onSlope() + " of slope, " + squareToSlope() + " square to it, " + alongSlope()
                + " along it";
    }
}
