package org.roofmaths.loads;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Pressure;
import org.roofmaths.working.Assumed;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * One tile or slate lifted by a given pressure and held by nothing but its weight, as a classroom number.
 *
 * <p>Uplift {@code = pressure × cover width × gauge}; weight square to the slope {@code = mass × gravity × cos(pitch)}; what fixings would
 * have to hold is the difference. For example, 600 Pa on 300 × 345 mm of a tile of 4.4 kg at 30°: 62.1 N up, 37.4 N down, 24.7 N short.
 *
 * <p>It is a balance of forces only and no specification: {@link LeftToOthers#FIXING_SPECIFICATION}. Immutable and thread-safe. Its caution:
 * {@link Caution#WIND}.
 *
 * @since 0.1
 */
public final class TileBalance implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The net pressure outward, square to the slope. */
    public static final Term<Pressure> PRESSURE = Term.of("outward pressure on the tile", "po", Pressure.class);
    /** The uplift in newtons. */
    public static final Term<Double> UPLIFT = Term.of("uplift on the tile in N", "Fu", Double.class);
    /** The weight square to the slope, in newtons. */
    public static final Term<Double> HELD_BY_WEIGHT =
            Term.of("weight of the tile square to the slope in N", "Fw", Double.class);
    /** What the weight lacks, in newtons. */
    public static final Term<Double> SHORT_BY = Term.of("uplift beyond the weight in N", "Fs", Double.class);

    private static final Formula UPLIFT_BY_PRESSURE =
            Formula.of(UPLIFT, PRESSURE.times(CoveringItem.UNIT_COVER).times(CoveringItem.UNIT_GAUGE));
    private static final Formula WEIGHT_SQUARE = Formula.of(
            HELD_BY_WEIGHT, CoveringItem.UNIT_MASS.times(CoveringMass.GRAVITY).times(CoveringMass.PITCH.cos()));
    private static final Formula DIFFERENCE = Formula.of(SHORT_BY, UPLIFT.minus(HELD_BY_WEIGHT));
    private static final Figure<Double> CUSTOMARY =
            Assumed.of(9.81, "customary in building", "work the balance out by hand with another");

    private final Figure<Pressure> pressure;
    private final Figure<Length> cover;
    private final Figure<Length> gauge;
    private final Figure<Mass> mass;
    private final Figure<Pitch> pitch;

    private TileBalance(
            Figure<Pressure> pressure,
            Figure<Length> cover,
            Figure<Length> gauge,
            Figure<Mass> mass,
            Figure<Pitch> pitch) {
        this.pressure = pressure;
        this.cover = cover;
        this.gauge = gauge;
        this.mass = mass;
        this.pitch = pitch;
    }

    /**
     * Returns the balance of one tile.
     *
     * @param pressure the net pressure outward, square to the slope, from elsewhere; zero or more
     * @param cover the cover width, above zero
     * @param gauge the gauge, above zero
     * @param mass the mass of one tile, above zero
     * @param pitch the pitch
     * @return the balance
     * @throws org.roofmaths.problem.ProblemsException with everything that is out of range
     */
    public static TileBalance of(
            Figure<Pressure> pressure,
            Figure<Length> cover,
            Figure<Length> gauge,
            Figure<Mass> mass,
            Figure<Pitch> pitch) {
        Problems problems = Problems.none()
                .require(
                        !pressure.value().isNegative(),
                        CoveringItem.WRONG_FIGURE,
                        PRESSURE.name(),
                        pressure.value(),
                        "be 0 Pa or more");
        CoveringItem.requirePositive(problems, CoveringItem.UNIT_COVER, cover);
        CoveringItem.requirePositive(problems, CoveringItem.UNIT_GAUGE, gauge);
        problems.require(
                mass.value().isPositive(),
                CoveringItem.WRONG_FIGURE,
                CoveringItem.UNIT_MASS.name(),
                mass.value(),
                "be above 0 kg");
        problems.throwIfErrors();
        return new TileBalance(pressure, cover, gauge, mass, Objects.requireNonNull(pitch, "pitch"));
    }

    private double compute(Recorder r) {
        double p = r.use(PRESSURE, pressure).toPascals();
        double across = r.use(CoveringItem.UNIT_COVER, cover).toSi();
        double up = r.use(CoveringItem.UNIT_GAUGE, gauge).toSi();
        double kilograms = r.use(CoveringItem.UNIT_MASS, mass).toSi();
        double pull = r.use(CoveringMass.GRAVITY, CUSTOMARY);
        Pitch steep = r.use(CoveringMass.PITCH, pitch);
        double uplift = r.record(UPLIFT, p * across * up, UPLIFT_BY_PRESSURE);
        double held = r.record(HELD_BY_WEIGHT, kilograms * pull * steep.cos(), WEIGHT_SQUARE);
        return r.record(SHORT_BY, uplift - held, DIFFERENCE);
    }

    /** Returns what must stand beside it. */
    public Caution caution() {
        return Caution.WIND;
    }

    @Override
    public Working working() {
        return Working.of((Recorder r) -> compute(r));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof TileBalance b
                && pressure.equals(b.pressure)
                && cover.equals(b.cover)
                && gauge.equals(b.gauge)
                && mass.equals(b.mass)
                && pitch.equals(b.pitch);
    }

    @Override
    public int hashCode() {
        return Objects.hash(pressure, cover, gauge, mass, pitch);
    }

    /** Returns how much the weight lacks, in newtons to a tenth. */
    @Override
    public String toString() {
        double missing = StrictMath.rint(compute(Recorder.off()) * 10) / 10;
        return "uplift beyond the weight " + missing + " N; a balance of forces, not a specification of fixings";
    }
}
