package org.roofmaths.rainwater;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.FlowRate;
import org.roofmaths.units.Length;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * How much water an outlet takes at a head of water above it.
 *
 * <p>Up to a head of half the diameter it is a weir, {@code k × D × h^1.5 ÷ divisor}; above that an orifice,
 * {@code k × D² × √h ÷ divisor}; in litres a second for millimetres. For example, 75 mm under 30 mm with 7500 takes 1.643 l/s, under 50 mm
 * with 15000 2.652 l/s.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Outlet implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The effective diameter of the outlet. */
    public static final Term<Length> DIAMETER = Term.of("diameter of the outlet", "Do", Length.class);
    /** The head of water above the outlet. */
    public static final Term<Length> HEAD = Term.of("head over the outlet", "ho", Length.class);
    /** The diameter in millimetres, as the formula wants it. */
    public static final Term<Double> DIAMETER_IN_MILLIMETRES =
            Term.of("diameter of the outlet in mm", "Dmm", Double.class);
    /** The head in millimetres, as the formula wants it. */
    public static final Term<Double> HEAD_IN_MILLIMETRES = Term.of("head over the outlet in mm", "hmm", Double.class);
    /** What the outlet takes. */
    public static final Term<FlowRate> CAPACITY = Term.of("capacity of the outlet", "Qo", FlowRate.class);

    private static final Formula DIAMETER_IN_MM = Formula.of(DIAMETER_IN_MILLIMETRES, DIAMETER.times(1000));
    private static final Formula HEAD_IN_MM = Formula.of(HEAD_IN_MILLIMETRES, HEAD.times(1000));
    private static final Formula AS_WEIR = Formula.of(
            CAPACITY,
            OutletDemand.GRATING
                    .times(DIAMETER_IN_MILLIMETRES)
                    .times(HEAD_IN_MILLIMETRES.toThe(1.5))
                    .over(OutletDemand.WEIR_DIVISOR)
                    .over(1000));
    private static final Formula AS_ORIFICE = Formula.of(
            CAPACITY,
            OutletDemand.GRATING
                    .times(DIAMETER_IN_MILLIMETRES.squared())
                    .times(HEAD_IN_MILLIMETRES.squareRoot())
                    .over(OutletDemand.ORIFICE_DIVISOR)
                    .over(1000));
    private static final double MILLIMETRES = 1000;

    private final Figure<Length> diameter;
    private final Figure<Length> head;
    private final OutletDemand demand;
    private final FlowRate capacity;

    private Outlet(Figure<Length> diameter, Figure<Length> head, OutletDemand demand) {
        this.diameter = diameter;
        this.head = head;
        this.demand = demand;
        capacity = compute(Recorder.off());
    }

    /**
     * Returns an outlet under a head of water.
     *
     * @param diameter its effective diameter, above zero
     * @param head the head of water above it, above zero
     * @param demand the figures of the rule set
     * @return the outlet
     * @throws org.roofmaths.problem.ProblemsException if a size is not above zero
     */
    public static Outlet of(Length diameter, Length head, OutletDemand demand) {
        Problems problems = Problems.none();
        GutterSection.requirePositive(problems, DIAMETER, diameter);
        GutterSection.requirePositive(problems, HEAD, head);
        problems.throwIfErrors();
        return new Outlet(Given.of(diameter), Given.of(head), Objects.requireNonNull(demand, "demand"));
    }

    private FlowRate compute(Recorder r) {
        double across = r.use(DIAMETER, diameter).toMetres() * MILLIMETRES;
        double over = r.use(HEAD, head).toMetres() * MILLIMETRES;
        r.record(DIAMETER_IN_MILLIMETRES, across, DIAMETER_IN_MM);
        r.record(HEAD_IN_MILLIMETRES, over, HEAD_IN_MM);
        double factor = r.use(OutletDemand.GRATING, demand.grating()).toDouble();
        if (regime() == OutletRegime.WEIR) {
            double divisor = r.use(OutletDemand.WEIR_DIVISOR, demand.weirDivisor());
            return r.record(
                    CAPACITY,
                    FlowRate.ofLitresPerSecond(factor * across * StrictMath.pow(over, 1.5) / divisor),
                    AS_WEIR);
        }
        double divisor = r.use(OutletDemand.ORIFICE_DIVISOR, demand.orificeDivisor());
        return r.record(
                CAPACITY,
                FlowRate.ofLitresPerSecond(factor * across * across * StrictMath.sqrt(over) / divisor),
                AS_ORIFICE);
    }

    /** Returns how the water enters: a weir up to a head of half the diameter, an orifice above. */
    public OutletRegime regime() {
        return head.value().times(2L).meetsGreatest(diameter.value()) ? OutletRegime.WEIR : OutletRegime.ORIFICE;
    }

    /** Returns what the outlet takes. */
    public FlowRate capacity() {
        return capacity;
    }

    /**
     * Returns what to know when a flow reaches this outlet: that it is too small and by how much, or that the margin is no real one.
     *
     * @param flow the flow
     * @param realMargin the share of the flow below which a margin is no real one, such as 5 % (common practice)
     * @return a finding or a notice; empty if the margin is real
     */
    public List<Problem> problems(FlowRate flow, Ratio realMargin) {
        return Gutter.Margin.problems("outlet of " + diameter.value(), flow, capacity, realMargin);
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Outlet o
                && diameter.equals(o.diameter)
                && head.equals(o.head)
                && demand.equals(o.demand);
    }

    @Override
    public int hashCode() {
        return Objects.hash(diameter, head, demand);
    }

    /** Returns for example {@code outlet of 75 mm under 30 mm (weir): 1.643167672515498 l/s}. */
    @Override
    public String toString() {
        return "outlet of " + diameter.value() + " under " + head.value() + " (" + regime() + "): " + capacity;
    }
}
