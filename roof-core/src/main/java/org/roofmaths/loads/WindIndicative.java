package org.roofmaths.loads;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
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
 * The peak pressure of the wind at a height over level terrain, as an indication, and the pressures that given coefficients make of it.
 *
 * <p>With the height {@code z}, not below the least one: terrain factor {@code = coefficient × (roughness ÷ reference)^exponent}, mean speed
 * {@code = terrain factor × ln(z ÷ roughness) × basic speed}, turbulence {@code = 1 ÷ ln(z ÷ roughness)}, peak pressure
 * {@code = (1 + gust × turbulence) × air density ÷ 2 × mean speed²}.
 *
 * <p>Hills, cliffs and coasts are not in it: see {@link LeftToOthers#EXPOSED_SITE}. Immutable and thread-safe. Its caution:
 * {@link Caution#WIND}.
 *
 * @since 0.1
 */
public final class WindIndicative implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The height of the ridge over the ground. */
    public static final Term<Length> HEIGHT = Term.of("height over the ground", "zg", Length.class);
    /** The height that counts. */
    public static final Term<Length> REFERENCE_HEIGHT = Term.of("height that counts for the wind", "zw", Length.class);
    /** The terrain factor. */
    public static final Term<Double> TERRAIN_FACTOR = Term.of("terrain factor", "kt", Double.class);
    /** The mean speed in metres per second. */
    public static final Term<Double> MEAN_SPEED = Term.of("mean wind speed in m/s", "vm", Double.class);
    /** The turbulence. */
    public static final Term<Double> TURBULENCE = Term.of("turbulence of the wind", "Iv", Double.class);
    /** The peak pressure. */
    public static final Term<Pressure> PEAK = Term.of("peak wind pressure", "qw", Pressure.class);
    /** A coefficient for the outside. */
    public static final Term<Ratio> OUTSIDE = Term.of("outside pressure coefficient", "cpe", Ratio.class);
    /** A coefficient for the inside. */
    public static final Term<Ratio> INSIDE = Term.of("inside pressure coefficient", "cpi", Ratio.class);
    /** The net pressure; below zero it pulls outward. */
    public static final Term<Pressure> NET = Term.of("net wind pressure", "wn", Pressure.class);
    /** A coefficient for a small area. */
    public static final Term<Ratio> SMALL_AREA_COEFFICIENT = Term.of("coefficient of a small area", "c1", Ratio.class);
    /** A coefficient for a large area. */
    public static final Term<Ratio> LARGE_AREA_COEFFICIENT = Term.of("coefficient of a large area", "c10", Ratio.class);
    /** The area up to which the first holds. */
    public static final Term<Area> SMALL_AREA = Term.of("greatest small area", "A1", Area.class);
    /** The area from which the second holds. */
    public static final Term<Area> LARGE_AREA = Term.of("least large area", "A10", Area.class);
    /** The loaded area. */
    public static final Term<Area> LOADED_AREA = Term.of("loaded area", "AL", Area.class);

    private static final Formula NOT_BELOW_LEAST =
            Formula.of(REFERENCE_HEIGHT, HEIGHT.greatest(WindDemand.LEAST_HEIGHT));
    private static final Formula FACTOR_BY_ROUGHNESS = Formula.of(
            TERRAIN_FACTOR,
            WindDemand.TERRAIN_COEFFICIENT.times(
                    WindDemand.ROUGHNESS.over(WindDemand.REFERENCE_ROUGHNESS).toThe(WindDemand.TERRAIN_EXPONENT)));
    private static final Formula MEAN_BY_HEIGHT = Formula.of(
            MEAN_SPEED,
            TERRAIN_FACTOR
                    .times(REFERENCE_HEIGHT.over(WindDemand.ROUGHNESS).naturalLog())
                    .times(WindDemand.SPEED));
    private static final Formula TURBULENCE_BY_HEIGHT = Formula.of(
            TURBULENCE,
            Expression.number(1)
                    .over(REFERENCE_HEIGHT.over(WindDemand.ROUGHNESS).naturalLog()));
    private static final Formula PEAK_BY_SPEED = Formula.of(
            PEAK,
            Expression.number(1)
                    .plus(WindDemand.GUST.times(TURBULENCE))
                    .times(WindDemand.AIR_DENSITY)
                    .over(2)
                    .times(MEAN_SPEED.squared()));
    private static final Formula NET_BY_COEFFICIENTS = Formula.of(NET, PEAK.times(OUTSIDE.minus(INSIDE)));
    private static final Formula COEFFICIENT_BY_AREA = Formula.of(
            OUTSIDE,
            SMALL_AREA_COEFFICIENT.minus(SMALL_AREA_COEFFICIENT
                    .minus(LARGE_AREA_COEFFICIENT)
                    .times(LOADED_AREA
                            .greatest(SMALL_AREA)
                            .least(LARGE_AREA)
                            .over(SMALL_AREA)
                            .naturalLog())
                    .over(LARGE_AREA.over(SMALL_AREA).naturalLog())));

    private final Figure<Length> height;
    private final WindDemand demand;
    private final Pressure peak;

    private WindIndicative(Figure<Length> height, WindDemand demand) {
        this.height = height;
        this.demand = demand;
        peak = compute(Recorder.off());
    }

    /**
     * Returns the wind at a height.
     *
     * @param height the height of the ridge over the ground, above zero
     * @param demand the rule set's figures and the site's wind speed
     * @return the wind
     * @throws org.roofmaths.problem.ProblemsException if the height is not above zero
     */
    public static WindIndicative at(Length height, WindDemand demand) {
        Problems problems = Problems.none();
        CoveringItem.requirePositive(problems, HEIGHT, Given.of(height));
        problems.throwIfErrors();
        return new WindIndicative(Given.of(height), Objects.requireNonNull(demand, "demand"));
    }

    private Pressure compute(Recorder r) {
        Length over = r.use(HEIGHT, height);
        Length least = r.use(WindDemand.LEAST_HEIGHT, demand.leastHeight());
        double z = r.record(REFERENCE_HEIGHT, over.max(least), NOT_BELOW_LEAST).toSi();
        double rough = r.use(WindDemand.ROUGHNESS, demand.roughness()).toSi();
        double reference = r.use(WindDemand.REFERENCE_ROUGHNESS, demand.referenceRoughness())
                .toSi();
        double coefficient = r.use(WindDemand.TERRAIN_COEFFICIENT, demand.terrainCoefficient());
        double exponent = r.use(WindDemand.TERRAIN_EXPONENT, demand.terrainExponent());
        double speed = r.use(WindDemand.SPEED, demand.speed());
        double gust = r.use(WindDemand.GUST, demand.gust());
        double air = r.use(WindDemand.AIR_DENSITY, demand.airDensity());
        double terrain = r.record(
                TERRAIN_FACTOR, coefficient * StrictMath.pow(rough / reference, exponent), FACTOR_BY_ROUGHNESS);
        double log = StrictMath.log(z / rough);
        double mean = r.record(MEAN_SPEED, terrain * log * speed, MEAN_BY_HEIGHT);
        double turbulence = r.record(TURBULENCE, 1 / log, TURBULENCE_BY_HEIGHT);
        return r.record(PEAK, Pressure.ofPascals((1 + gust * turbulence) * air / 2 * mean * mean), PEAK_BY_SPEED);
    }

    /** Returns the peak pressure. */
    public Pressure peakPressure() {
        return peak;
    }

    /**
     * Returns the net pressure that two coefficients make: {@code peak × (outside − inside)}. Below zero it pulls outward.
     *
     * @param outside the coefficient of the zone outside
     * @param inside the coefficient inside; with unknown openings take the worse of the rule set's two
     * @return the net pressure
     */
    public Worked<Pressure> net(Figure<Ratio> outside, Figure<Ratio> inside) {
        return Worked.by(NET, r -> {
            Pressure q = compute(r);
            Ratio out = r.use(OUTSIDE, outside);
            Ratio in = r.use(INSIDE, inside);
            return r.record(NET, q.times(out.minus(in)), NET_BY_COEFFICIENTS);
        });
    }

    /**
     * Returns a coefficient between that of a small and that of a large area, by the logarithm of the loaded area. Tiles and their fixings
     * are small areas.
     *
     * @param small the coefficient up to the small area
     * @param large the coefficient from the large area on
     * @param smallArea the small area, above zero
     * @param largeArea the large area, above the small one
     * @param loaded the loaded area, above zero
     * @return the coefficient
     * @throws org.roofmaths.problem.ProblemsException if the areas are out of range
     */
    public static Worked<Ratio> coefficientByArea(
            Figure<Ratio> small, Figure<Ratio> large, Figure<Area> smallArea, Figure<Area> largeArea, Area loaded) {
        Problems.none()
                .require(
                        smallArea.value().isPositive(),
                        CoveringItem.WRONG_FIGURE,
                        SMALL_AREA.name(),
                        smallArea.value(),
                        "be above 0 m²")
                .require(
                        largeArea.value().isGreaterThan(smallArea.value()),
                        CoveringItem.WRONG_FIGURE,
                        LARGE_AREA.name(),
                        largeArea.value(),
                        "be more than the small area of " + smallArea.value())
                .require(loaded.isPositive(), CoveringItem.WRONG_FIGURE, LOADED_AREA.name(), loaded, "be above 0 m²")
                .throwIfErrors();
        return Worked.by(OUTSIDE, r -> {
            double one = r.use(SMALL_AREA_COEFFICIENT, small).toDouble();
            double ten = r.use(LARGE_AREA_COEFFICIENT, large).toDouble();
            Area from = r.use(SMALL_AREA, smallArea);
            Area to = r.use(LARGE_AREA, largeArea);
            Area on = r.use(LOADED_AREA, loaded).max(from).min(to);
            double share = StrictMath.log(on.toSi() / from.toSi()) / StrictMath.log(to.toSi() / from.toSi());
            return r.record(OUTSIDE, Ratio.of(one - (one - ten) * share), COEFFICIENT_BY_AREA);
        });
    }

    /** Returns the rule set with its edition. */
    public String ruleSet() {
        return demand.ruleSet();
    }

    /** Returns what must stand beside it. */
    public Caution caution() {
        return Caution.WIND;
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof WindIndicative w && height.equals(w.height) && demand.equals(w.demand);
    }

    @Override
    public int hashCode() {
        return Objects.hash(height, demand);
    }

    /** Returns for example {@code peak wind 919 Pa at 10000 mm by EN 1991-1-4:2005; indicative, not a design}. */
    @Override
    public String toString() {
        return "peak wind " + peak + " at " + height.value() + " by " + ruleSet() + "; indicative, not a design";
    }
}
