package org.roofmaths.loads;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Area;
import org.roofmaths.units.ArealMass;
import org.roofmaths.units.Mass;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Pressure;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Assumed;
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
 * What a covering weighs: its layers, their sum for each square metre of slope, and the same for each square metre on plan.
 *
 * <p>Formula: on plan {@code mass ÷ cos(pitch)}. For example, 69 kg/m² of slope at 40° are 90.1 kg/m² on plan.
 *
 * <p>Immutable and thread-safe. Its caution: {@link Caution#MASS}.
 *
 * @since 0.1
 */
public final class CoveringMass implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The mass for each square metre of slope. */
    public static final Term<ArealMass> ON_SLOPE = Term.of("covering mass per area of slope", "ms", ArealMass.class);
    /** The mass for each square metre on plan. */
    public static final Term<ArealMass> ON_PLAN = Term.of("covering mass per area on plan", "mp", ArealMass.class);
    /** The pitch. */
    public static final Term<Pitch> PITCH = Term.of("pitch of the loaded slope", "pl", Pitch.class);
    /** The pull of gravity on a mass. */
    public static final Term<Double> GRAVITY = Term.of("gravity in m/s²", "G", Double.class);
    /** The weight for each square metre of slope. */
    public static final Term<Pressure> WEIGHT = Term.of("covering weight per area of slope", "w", Pressure.class);
    /** The covering before. */
    public static final Term<ArealMass> BEFORE = Term.of("covering mass before", "m0", ArealMass.class);
    /** The new covering over the one before. */
    public static final Term<Ratio> RATIO = Term.of("new covering mass over the one before", "rm", Ratio.class);

    /** The new covering is heavier than a limit allows without a look at the structure. */
    public static final ProblemCode STRUCTURE_TO_BE_CHECKED = ProblemCode.of(
            "loads.structure-to-be-checked",
            "Have a person competent in structures look at the roof before the covering is ordered.");

    private static final Formula PLAN_BY_PITCH = Formula.of(ON_PLAN, ON_SLOPE.over(PITCH.cos()));
    private static final Formula WEIGHT_BY_MASS = Formula.of(WEIGHT, ON_SLOPE.times(GRAVITY));
    private static final Formula RATIO_TO_BEFORE = Formula.of(RATIO, ON_SLOPE.over(BEFORE));
    /** The pull of gravity as it is customary in building. */
    private static final Figure<Double> CUSTOMARY = Assumed.of(9.81, "customary in building", "give another to weight");

    private final List<CoveringItem> items;
    private final ArealMass onSlope;

    private CoveringMass(List<CoveringItem> items) {
        this.items = List.copyOf(items);
        onSlope = compute(Recorder.off());
    }

    /**
     * Returns the mass of a covering by its layers.
     *
     * @param items the layers; one or more
     * @return the mass
     * @throws org.roofmaths.problem.ProblemsException if there is no layer
     */
    public static CoveringMass of(List<CoveringItem> items) {
        Problems.none()
                .require(!items.isEmpty(), CoveringItem.WRONG_FIGURE, "layers", "none", "be one or more")
                .throwIfErrors();
        return new CoveringMass(items);
    }

    private ArealMass compute(Recorder r) {
        double sum = 0;
        Expression expression = Expression.number(0);
        for (int i = 0; i < items.size(); i++) {
            CoveringItem item = items.get(i);
            sum += item.mass().value().toSi();
            if (r.isOn()) {
                Term<ArealMass> term = CoveringItem.ITEM_MASS.at(item.name());
                r.use(term, item.mass());
                expression = i == 0 ? term : expression.plus(term);
            }
        }
        ArealMass total = ArealMass.ofKilogramsPerSquareMetre(sum);
        return r.isOn() ? r.record(ON_SLOPE, total, Formula.of(ON_SLOPE, expression)) : total;
    }

    /** Returns the layers. */
    public List<CoveringItem> items() {
        return items;
    }

    /** Returns the mass for each square metre of slope. */
    public ArealMass onSlope() {
        return onSlope;
    }

    /**
     * Returns the mass for each square metre on plan.
     *
     * @param pitch the pitch
     * @return the mass
     */
    public Worked<ArealMass> onPlan(Pitch pitch) {
        return Worked.by(ON_PLAN, r -> {
            ArealMass slope = compute(r);
            Pitch steep = r.use(PITCH, pitch);
            return r.record(ON_PLAN, slope.dividedBy(steep.cos()), PLAN_BY_PITCH);
        });
    }

    /**
     * Returns the mass of a whole area.
     *
     * @param alongSlope the area along the slope
     * @return the mass: a figure for planning
     */
    public Mass of(Area alongSlope) {
        return onSlope.times(alongSlope);
    }

    /** Returns the weight for each square metre of slope, with 9.81 m/s², which its working shows as assumed. */
    public Worked<Pressure> weight() {
        return weight(CUSTOMARY);
    }

    /**
     * Returns the weight for each square metre of slope.
     *
     * @param gravity metres per second squared, above zero
     * @return the weight
     * @throws org.roofmaths.problem.ProblemsException if the gravity is not above zero
     */
    public Worked<Pressure> weight(Figure<Double> gravity) {
        Problems problems = Problems.none();
        CoveringItem.requirePositiveNumber(problems, GRAVITY, gravity);
        problems.throwIfErrors();
        return Worked.by(WEIGHT, r -> {
            ArealMass slope = compute(r);
            double pull = r.use(GRAVITY, gravity);
            return r.record(WEIGHT, Pressure.ofPascals(slope.toSi() * pull), WEIGHT_BY_MASS);
        });
    }

    /**
     * Returns how much heavier this covering is than the one before, as a ratio.
     *
     * @param before the covering before
     * @return the ratio; below 1 if this one is lighter
     * @throws org.roofmaths.problem.ProblemsException if the covering before has no mass
     */
    public Worked<Ratio> ratioTo(CoveringMass before) {
        Problems.none()
                .require(
                        before.onSlope.isPositive(),
                        CoveringItem.WRONG_FIGURE,
                        BEFORE.name(),
                        before.onSlope,
                        "be above 0 kg/m²")
                .throwIfErrors();
        return Worked.by(RATIO, r -> {
            ArealMass now = compute(r);
            ArealMass then = r.use(BEFORE, r.isOn() ? Worked.by(ON_SLOPE, before::compute) : Given.of(before.onSlope));
            return r.record(RATIO, now.dividedBy(then), RATIO_TO_BEFORE);
        });
    }

    /**
     * Returns what to know when this covering takes the place of another: that the ratio passes a limit, up or down.
     *
     * @param before the covering before
     * @param limit how far the ratio may lie from 1 without a look at the structure, such as 15 %; a rule's figure or the caller's
     * @return a finding, or nothing; nothing does not say that the roof bears it
     * @throws org.roofmaths.problem.ProblemsException if the covering before has no mass
     */
    public List<Problem> changeFrom(CoveringMass before, Ratio limit) {
        Ratio ratio = ratioTo(before).value();
        Ratio change = ratio.minus(Ratio.of(1));
        if (change.abs().toDouble() <= limit.toDouble()) {
            return List.of();
        }
        long percent = StrictMath.round(StrictMath.abs(change.toPercent()));
        return List.of(Problem.finding(
                STRUCTURE_TO_BE_CHECKED,
                "covering",
                onSlope,
                before.onSlope,
                "the new covering weighs " + onSlope + " where the old one weighed " + before.onSlope + ", " + percent
                        + " % " + (change.isNegative() ? "less" : "more")
                        + ": a person competent in structures decides",
                List.of()));
    }

    /** Returns what must stand beside it. */
    public Caution caution() {
        return Caution.MASS;
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof CoveringMass m && items.equals(m.items);
    }

    @Override
    public int hashCode() {
        return Objects.hash(items);
    }

    /** Returns for example {@code 43.99 kg/m² of slope: slates 40 kg/m², battens 3.99 kg/m²}. */
    @Override
    public String toString() {
        return onSlope + " of slope: "
                + String.join(", ", items.stream().map(CoveringItem::toString).toList());
    }
}
