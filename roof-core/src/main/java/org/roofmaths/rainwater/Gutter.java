package org.roofmaths.rainwater;

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
import org.roofmaths.units.FlowRate;
import org.roofmaths.units.Length;
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
 * How much water an eaves gutter carries to its outlet.
 *
 * <p>Formula: {@code coefficient × section^1.25}, in litres a second for a section in square millimetres, then the factors of the rule set
 * for design, shape, length and bends. For example, a true half-round of 100 mm with 2.78e-5 and 0.9 carries 0.778 l/s.
 *
 * <p>Valley, parapet and internal gutters are refused: what overflows there enters the building, and they are for a competent person to
 * design.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Gutter implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The section in square millimetres, as the formula of the capacity wants it. */
    public static final Term<Double> SECTION_IN_SQUARE_MILLIMETRES =
            Term.of("section of the gutter in mm²", "Smm", Double.class);
    /** The capacity in litres a second, before the factors. */
    public static final Term<Double> NOMINAL = Term.of("nominal capacity in l/s", "Qn", Double.class);
    /** The capacity to design with. */
    public static final Term<FlowRate> CAPACITY = Term.of("capacity of the gutter", "Qd", FlowRate.class);
    /** The drained length over the depth of water. */
    public static final Term<Ratio> LENGTH_TO_DEPTH = Term.of("drained length over depth", "ld", Ratio.class);
    /** The length of gutter that drains one way to an outlet. */
    public static final Term<Length> DRAINED_LENGTH = Term.of("drained length of the gutter", "Ld", Length.class);
    /** The run over which a gutter falls. */
    public static final Term<Length> FALL_RUN = Term.of("length of the fall", "Lf", Length.class);
    /** The fall. */
    public static final Term<Ratio> FALL = Term.of("fall of the gutter", "fg", Ratio.class);
    /** How much lower the gutter lies at its outlet. */
    public static final Term<Length> DROP = Term.of("drop of the gutter", "dg", Length.class);

    /** A gutter that is not worked out here. */
    public static final ProblemCode NOT_WORKED_OUT = ProblemCode.of(
            "rainwater.not-worked-out",
            "Have the gutter designed by a competent person, with an overflow clear of the building.");
    /** The gutter or outlet carries less than reaches it. */
    public static final ProblemCode TOO_SMALL =
            ProblemCode.of("rainwater.too-small", "Take the next size, or set outlets so that each takes less.");
    /** The gutter or outlet carries hardly more than reaches it. */
    public static final ProblemCode NO_REAL_MARGIN = ProblemCode.of(
            "rainwater.no-real-margin",
            "Take the next size: leaves, dents and a crooked fall cost more than this margin.");

    private static final Formula SECTION_IN_MM2 =
            Formula.of(SECTION_IN_SQUARE_MILLIMETRES, GutterSection.SECTION.times(1_000_000));
    private static final Formula NOMINAL_BY_SECTION =
            Formula.of(NOMINAL, GutterDemand.COEFFICIENT.times(SECTION_IN_SQUARE_MILLIMETRES.toThe(1.25)));
    private static final Formula LENGTH_OVER_DEPTH =
            Formula.of(LENGTH_TO_DEPTH, DRAINED_LENGTH.over(GutterSection.DEPTH));
    private static final Formula DROP_BY_FALL = Formula.of(DROP, FALL_RUN.times(FALL));
    private static final double EXPONENT = 1.25;
    private static final double SQUARE_MILLIMETRES = 1e6;

    private final GutterSection section;
    private final GutterDemand demand;
    private final FlowRate capacity;

    private Gutter(GutterSection section, GutterDemand demand) {
        this.section = section;
        this.demand = demand;
        capacity = compute(Recorder.off());
    }

    /**
     * Returns an eaves gutter.
     *
     * @param section its section
     * @param demand the figures of the rule set
     * @return the gutter
     */
    public static Gutter of(GutterSection section, GutterDemand demand) {
        return new Gutter(Objects.requireNonNull(section, "section"), Objects.requireNonNull(demand, "demand"));
    }

    /**
     * Returns a gutter, if it is one that is worked out here.
     *
     * @param place where it lies
     * @param section its section
     * @param demand the figures of the rule set
     * @return the gutter; a problem that says so for a valley, parapet or internal gutter
     */
    public static Attempt<Gutter> attempt(GutterPlace place, GutterSection section, GutterDemand demand) {
        return place == GutterPlace.EAVES
                ? Attempt.of(of(section, demand))
                : Attempt.failed(List.of(Problem.finding(
                        NOT_WORKED_OUT,
                        place.toString(),
                        place,
                        GutterPlace.EAVES,
                        "a " + place
                                + " is not worked out here: what overflows enters the building, so it is for a competent person"
                                + " to design",
                        List.of())));
    }

    private FlowRate compute(Recorder r) {
        double area = section.compute(r).toSi() * SQUARE_MILLIMETRES;
        r.record(SECTION_IN_SQUARE_MILLIMETRES, area, SECTION_IN_MM2);
        double coefficient = r.use(GutterDemand.COEFFICIENT, demand.coefficient());
        double nominal = r.record(NOMINAL, coefficient * StrictMath.pow(area, EXPONENT), NOMINAL_BY_SECTION);
        double litres = nominal;
        Expression formula = NOMINAL;
        for (Factor factor : factors()) {
            litres *= r.use(factor.term, factor.figure).toDouble();
            formula = formula.times(factor.term);
        }
        FlowRate flow = FlowRate.ofLitresPerSecond(litres);
        return r.isOn() ? r.record(CAPACITY, flow, Formula.of(CAPACITY, formula.over(1000))) : flow;
    }

    private record Factor(Term<Ratio> term, Figure<Ratio> figure) {}

    private List<Factor> factors() {
        List<Factor> factors = new ArrayList<>();
        factors.add(new Factor(GutterDemand.DESIGN_FACTOR, demand.designFactor()));
        demand.shapeFactor().ifPresent(figure -> factors.add(new Factor(GutterDemand.SHAPE_FACTOR, figure)));
        demand.lengthFactor().ifPresent(figure -> factors.add(new Factor(GutterDemand.LENGTH_FACTOR, figure)));
        demand.bendFactor().ifPresent(figure -> factors.add(new Factor(GutterDemand.BEND_FACTOR, figure)));
        return factors;
    }

    /** Returns the section. */
    public GutterSection section() {
        return section;
    }

    /** Returns the capacity to design with. */
    public FlowRate capacity() {
        return capacity;
    }

    /**
     * Returns the drained length over the depth of water, by which rule sets look up the length factor: the gutter from an outlet to its
     * end, or to half way to the next outlet.
     *
     * @param section the section
     * @param drainedLength the drained length, above zero
     * @return the ratio
     * @throws ProblemsException if the length is not above zero
     */
    public static Worked<Ratio> lengthToDepth(GutterSection section, Length drainedLength) {
        Problems problems = Problems.none();
        GutterSection.requirePositive(problems, DRAINED_LENGTH, drainedLength);
        problems.throwIfErrors();
        return Worked.by(LENGTH_TO_DEPTH, r -> {
            Length run = r.use(DRAINED_LENGTH, drainedLength);
            Length depth = section.depth(r);
            return r.record(LENGTH_TO_DEPTH, run.dividedBy(depth), LENGTH_OVER_DEPTH);
        });
    }

    /**
     * Returns how much lower a gutter lies at its outlet. For example, 9 m at 1 in 600 drop 15 mm. A fall over a long run opens a gap under
     * the tails: hold the drop against the fascia.
     *
     * @param run the length of the fall, above zero
     * @param fall the fall, such as 1/600; above zero
     * @return the drop
     * @throws ProblemsException if a figure is not above zero
     */
    public static Worked<Length> drop(Figure<Length> run, Figure<Ratio> fall) {
        Problems problems = Problems.none();
        GutterSection.requirePositive(problems, FALL_RUN, run.value());
        problems.require(fall.value().isPositive(), Catchment.WRONG_SIZE, FALL.name(), fall.value(), "be above 0");
        problems.throwIfErrors();
        return Worked.by(DROP, r -> {
            Length along = r.use(FALL_RUN, run);
            Ratio each = r.use(FALL, fall);
            return r.record(DROP, along.times(each), DROP_BY_FALL);
        });
    }

    /**
     * Returns how much lower a gutter lies at its outlet.
     *
     * @param run the length of the fall, above zero
     * @param fall the fall, such as 1/600; above zero
     * @return the drop
     * @throws ProblemsException if a figure is not above zero
     */
    public static Worked<Length> drop(Length run, Ratio fall) {
        return drop(Given.of(run), Given.of(fall));
    }

    /**
     * Returns what to know when a flow reaches this gutter: that it is too small and by how much, or that the margin is no real one.
     *
     * @param flow the flow
     * @param realMargin the share of the flow below which a margin is no real one, such as 5 % (common practice)
     * @return a finding or a notice; empty if the margin is real
     */
    public List<Problem> problems(FlowRate flow, Ratio realMargin) {
        return Margin.problems(section.toString(), flow, capacity, realMargin);
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Gutter g && section.equals(g.section) && demand.equals(g.demand);
    }

    @Override
    public int hashCode() {
        return Objects.hash(section, demand);
    }

    /** Returns for example {@code half-round gutter of 100 mm: 0.7777896550338903 l/s}. */
    @Override
    public String toString() {
        return section + ": " + capacity;
    }

    /** The margin of a capacity over a flow, in words. */
    static final class Margin {
        private Margin() {}

        static List<Problem> problems(String what, FlowRate flow, FlowRate capacity, Ratio realMargin) {
            double margin = capacity.toLitresPerSecond() - flow.toLitresPerSecond();
            double share = margin / flow.toLitresPerSecond();
            if (margin < 0) {
                FlowRate missing = litres(-margin);
                return List.of(Problem.finding(
                        TOO_SMALL,
                        what,
                        capacity,
                        flow,
                        "the " + what + " carries " + litres(capacity.toLitresPerSecond()) + ", " + missing + " ("
                                + percent(-share) + ") short of the " + litres(flow.toLitresPerSecond())
                                + " that reach it",
                        List.of(
                                Mend.of(what, "a larger one", missing, "at least " + litres(flow.toLitresPerSecond())),
                                Mend.of(
                                        "outlets",
                                        "more of them, or set so that each takes less",
                                        "at most " + litres(capacity.toLitresPerSecond()) + " to each"))));
            }
            return share < realMargin.toDouble()
                    ? List.of(Problem.notice(
                            NO_REAL_MARGIN,
                            what,
                            capacity,
                            "the " + what + " carries " + litres(capacity.toLitresPerSecond()) + ", " + litres(margin)
                                    + " ("
                                    + percent(share) + ") over the " + litres(flow.toLitresPerSecond())
                                    + " that reach it: no real margin"))
                    : List.of();
        }

        /** To a ten-thousandth of a litre a second: no gutter is known better. */
        private static FlowRate litres(double litres) {
            return FlowRate.ofLitresPerSecond(StrictMath.rint(litres * 10_000) / 10_000);
        }

        private static String percent(double share) {
            double tenths = StrictMath.rint(share * 1000) / 10;
            return (tenths == StrictMath.rint(tenths) ? Long.toString((long) tenths) : Double.toString(tenths)) + " %";
        }
    }
}
