package org.roofmaths.order;

import java.io.Serializable;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * How units are lifted and set in stacks before laying: lifts, stacks on each rafter line, and the order of loading both slopes in turn.
 *
 * <p>Capacities are the caller's: what one lift may carry and how many units make a stack. The masses are for planning; nothing here
 * says that a hoist, a scaffold or a roof can carry them, which is for whoever is licensed to say so. Battens are a foothold only if
 * they are graded for it.
 *
 * <pre>{@code
 * LoadingOut plan = LoadingOut.of(
 *         List.of(
 *                 new StackedLoad("front", 276, kg(4.4), metres(6.9), 12),
 *                 new StackedLoad("back", 276, kg(4.4), metres(6.9), 12)),
 *         kg(200),     // one lift
 *         8);          // units in a stack
 * plan.massPerMetreOfEaves("front")     // 176 kg
 * }</pre>
 *
 * @since 0.1
 */
public final class LoadingOut implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The units on a slope; at the place of the slope, as are all terms here but the mass on both slopes. */
    public static final Term<Long> UNITS = Term.of("units to load", "n", Long.class);

    /** The mass of one unit. */
    public static final Term<Mass> MASS_OF_UNIT = Term.of("mass of a unit to load", "m", Mass.class);

    /** The mass of all units of a slope. */
    public static final Term<Mass> MASS_ON_SLOPE = Term.of("mass loaded on the slope", "M", Mass.class);

    /** The length of the eaves. */
    public static final Term<Length> EAVES = Term.of("eaves loaded over", "e", Length.class);

    /** The mass for each metre of eaves. */
    public static final Term<Mass> MASS_PER_METRE = Term.of("mass to each metre of eaves", "M/m", Mass.class);

    /** What one lift may carry. */
    public static final Term<Mass> LIFT_CAPACITY = Term.of("capacity of a lift", "C", Mass.class);

    /** The units in a full lift. */
    public static final Term<Long> UNITS_IN_LIFT = Term.of("units in a lift", "a", Long.class);

    /** The lifts for a slope. */
    public static final Term<Long> LIFTS = Term.of("lifts", "k", Long.class);

    /** The units in a stack. */
    public static final Term<Long> UNITS_IN_STACK = Term.of("units in a stack", "s", Long.class);

    /** The mass of a full stack. */
    public static final Term<Mass> STACK_MASS = Term.of("mass of a stack", "Mₛ", Mass.class);

    /** The stacks on a slope, a part one included. */
    public static final Term<Long> STACKS = Term.of("stacks", "S", Long.class);

    /** The rafters along which stacks are set. */
    public static final Term<Long> RAFTER_LINES = Term.of("rafter lines loaded", "r", Long.class);

    /** The most stacks on one rafter line, when they are spread evenly. */
    public static final Term<Long> MOST_ON_A_LINE = Term.of("most stacks on a rafter line", "S₁", Long.class);

    /** The mass on all slopes. */
    public static final Term<Mass> MASS_IN_ALL = Term.of("mass loaded in all", "ΣM", Mass.class);

    /** A number or size that is nothing. */
    public static final ProblemCode OUT_OF_RANGE =
            ProblemCode.of("loading.out-of-range", "Give counts of one or more, and masses and lengths above zero.");

    /** Slopes that cannot be told apart, or none. */
    public static final ProblemCode SLOPES =
            ProblemCode.of("loading.slopes", "Name each slope once, and at least one.");

    private static final Formula SLOPE_MASS = Formula.of(MASS_ON_SLOPE, UNITS.times(MASS_OF_UNIT));
    private static final Formula METRE_MASS = Formula.of(MASS_PER_METRE, MASS_ON_SLOPE.over(EAVES));
    private static final Formula LIFT_UNITS = Formula.of(UNITS_IN_LIFT, LIFT_CAPACITY.timesIn(MASS_OF_UNIT));
    private static final Formula LIFT_COUNT = Formula.of(LIFTS, UNITS.timesToCover(UNITS_IN_LIFT));
    private static final Formula STACK_WEIGHT = Formula.of(STACK_MASS, UNITS_IN_STACK.times(MASS_OF_UNIT));
    private static final Formula STACK_COUNT = Formula.of(STACKS, UNITS.timesToCover(UNITS_IN_STACK));
    private static final Formula LINE_STACKS = Formula.of(MOST_ON_A_LINE, STACKS.timesToCover(RAFTER_LINES));
    private static final BigDecimal GUARD = new BigDecimal("0.0000001");
    private static final long MOST_UNITS = 1_000_000;

    private final List<StackedLoad> slopes;
    private final Mass capacity;
    private final long unitsInStack;
    private final List<Lift> lifts;

    private LoadingOut(List<StackedLoad> slopes, Mass capacity, long unitsInStack) {
        this.slopes = List.copyOf(slopes);
        this.capacity = capacity;
        this.unitsInStack = unitsInStack;
        this.lifts = List.copyOf(inTurns());
    }

    /**
     * Returns the loading of some slopes.
     *
     * @param slopes what each is loaded with, at least one
     * @param liftCapacity what one lift may carry, by whoever answers for the hoist
     * @param unitsInStack how many units make a stack, 1 or more
     * @return the plan
     * @throws org.roofmaths.problem.ProblemsException with every problem, if a number is out of range or a lift cannot carry one unit
     */
    public static LoadingOut of(List<StackedLoad> slopes, Mass liftCapacity, long unitsInStack) {
        return attempt(slopes, liftCapacity, unitsInStack).orThrow();
    }

    /**
     * Returns the loading of some slopes, or every problem that stands against it.
     *
     * @param slopes what each is loaded with
     * @param liftCapacity what one lift may carry
     * @param unitsInStack how many units make a stack
     * @return the plan, or the problems
     */
    public static Attempt<LoadingOut> attempt(List<StackedLoad> slopes, Mass liftCapacity, long unitsInStack) {
        Problems problems = Problems.none()
                .require(!slopes.isEmpty(), SLOPES, "slopes", "none", "be given")
                .require(unitsInStack >= 1, OUT_OF_RANGE, UNITS_IN_STACK.name(), unitsInStack, "be 1 or more");
        List<String> names = new ArrayList<>();
        for (StackedLoad slope : slopes) {
            String of = " of " + slope.name();
            problems.require(
                            !names.contains(slope.name()),
                            SLOPES,
                            "slopes",
                            "\"" + slope.name() + "\" twice",
                            "each have a name of their own")
                    .require(
                            slope.units() >= 1 && slope.units() <= MOST_UNITS,
                            OUT_OF_RANGE,
                            "units" + of,
                            slope.units(),
                            "be from 1 to " + MOST_UNITS)
                    .require(
                            slope.massOfOne().isPositive(),
                            OUT_OF_RANGE,
                            "mass of one" + of,
                            slope.massOfOne(),
                            "be above 0 kg")
                    .require(slope.eaves().isPositive(), OUT_OF_RANGE, "eaves" + of, slope.eaves(), "be above 0 mm")
                    .require(
                            slope.rafterLines() >= 1,
                            OUT_OF_RANGE,
                            "rafter lines" + of,
                            slope.rafterLines(),
                            "be 1 or more")
                    .require(
                            !liftCapacity.isLighterThan(slope.massOfOne()),
                            OUT_OF_RANGE,
                            LIFT_CAPACITY.name(),
                            liftCapacity,
                            "be at least the mass of one unit of " + slope.name() + ", " + slope.massOfOne());
            names.add(slope.name());
        }
        return problems.attempt(() -> new LoadingOut(slopes, liftCapacity, unitsInStack));
    }

    private Numbers compute(StackedLoad slope, Recorder r) {
        long units = r.use(UNITS, slope.units());
        Mass one = r.use(MASS_OF_UNIT, slope.massOfOne());
        Mass mass = r.record(MASS_ON_SLOPE, times(one, units), SLOPE_MASS);
        Length eaves = r.use(EAVES, slope.eaves());
        Mass perMetre = r.record(MASS_PER_METRE, Mass.ofKilograms(mass.toKilograms() / eaves.toMetres()), METRE_MASS);
        long inLift = r.record(UNITS_IN_LIFT, whole(r.use(LIFT_CAPACITY, capacity), one), LIFT_UNITS);
        long count = r.record(LIFTS, ceilDiv(units, inLift), LIFT_COUNT);
        long inStack = r.use(UNITS_IN_STACK, unitsInStack);
        Mass stack = r.record(STACK_MASS, times(one, inStack), STACK_WEIGHT);
        long stacks = r.record(STACKS, ceilDiv(units, inStack), STACK_COUNT);
        long lines = r.use(RAFTER_LINES, slope.rafterLines());
        long most = r.record(MOST_ON_A_LINE, ceilDiv(stacks, lines), LINE_STACKS);
        return new Numbers(mass, perMetre, inLift, count, stack, stacks, most);
    }

    /** The numbers of one slope. */
    private record Numbers(
            Mass mass, Mass perMetre, long unitsInLift, long lifts, Mass stackMass, long stacks, long mostOnALine) {}

    private Numbers numbers(String name) {
        return compute(slope(name), Recorder.off());
    }

    private StackedLoad slope(String name) {
        return slopes.stream()
                .filter(slope -> slope.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no slope \"" + name + "\" in this loading; it has: "
                        + String.join(
                                ", ", slopes.stream().map(StackedLoad::name).toList())));
    }

    private static long ceilDiv(long count, long size) {
        return -Math.floorDiv(-count, size);
    }

    private static long whole(Mass capacity, Mass one) {
        return decimal(capacity).add(GUARD).divideToIntegralValue(decimal(one)).longValueExact();
    }

    private static Mass times(Mass one, long count) {
        return Mass.ofKilograms(decimal(one).multiply(BigDecimal.valueOf(count)).doubleValue());
    }

    private static BigDecimal decimal(Mass mass) {
        return Amount.shortest(mass.toKilograms());
    }

    /** Sends each lift to the slope that carries least so far, so that no slope gets ahead of another by more than a lift. */
    private List<Lift> inTurns() {
        List<Lift> order = new ArrayList<>();
        long[] left = slopes.stream().mapToLong(StackedLoad::units).toArray();
        Mass[] there = new Mass[left.length];
        Arrays.fill(there, Mass.ZERO);
        while (true) {
            int next = -1;
            for (int i = 0; i < left.length; i++) {
                if (left[i] > 0 && (next < 0 || there[i].isLighterThan(there[next]))) {
                    next = i;
                }
            }
            if (next < 0) {
                return order;
            }
            StackedLoad slope = slopes.get(next);
            long units = Math.min(left[next], whole(capacity, slope.massOfOne()));
            left[next] -= units;
            there[next] = times(slope.massOfOne(), slope.units() - left[next]);
            order.add(new Lift(order.size() + 1, slope.name(), units, times(slope.massOfOne(), units), there[next]));
        }
    }

    /** Returns the lifts in the order of loading, slopes in turn. */
    public List<Lift> lifts() {
        return lifts;
    }

    /**
     * Returns the lifts that one slope takes.
     *
     * @param slope its name
     * @return how many
     */
    public long liftCount(String slope) {
        return numbers(slope).lifts;
    }

    /** Returns the mass of all units on all slopes. */
    public Mass mass() {
        BigDecimal sum = BigDecimal.ZERO;
        for (StackedLoad slope : slopes) {
            sum = sum.add(decimal(numbers(slope.name()).mass));
        }
        return Mass.ofKilograms(sum.doubleValue());
    }

    /**
     * Returns the mass of the units of one slope.
     *
     * @param slope its name
     * @return the mass
     */
    public Mass massOn(String slope) {
        return numbers(slope).mass;
    }

    /**
     * Returns the mass of one slope's units for each metre of its eaves.
     *
     * @param slope its name
     * @return the mass for one metre
     */
    public Mass massPerMetreOfEaves(String slope) {
        return numbers(slope).perMetre;
    }

    /**
     * Returns the stacks on one slope, a part one included.
     *
     * @param slope its name
     * @return how many
     */
    public long stackCount(String slope) {
        return numbers(slope).stacks;
    }

    /**
     * Returns the mass of a full stack on one slope.
     *
     * @param slope its name
     * @return the mass
     */
    public Mass stackMass(String slope) {
        return numbers(slope).stackMass;
    }

    /**
     * Returns how many stacks go on each rafter line of one slope, from left to right, spread evenly: no two lines differ by more than one, and the
     * lines with one more are spread along the slope.
     *
     * @param slope its name
     * @return the stacks of each line
     */
    public List<Long> stacksOnLines(String slope) {
        long stacks = numbers(slope).stacks;
        long lines = slope(slope).rafterLines();
        List<Long> spread = new ArrayList<>();
        for (long line = 0; line < lines; line++) {
            spread.add((line + 1) * stacks / lines - line * stacks / lines);
        }
        return List.copyOf(spread);
    }

    @Override
    public Working working() {
        return Working.of(r -> {
            Expression sum = null;
            for (StackedLoad slope : slopes) {
                compute(slope, r.at(slope.name()));
                Term<Mass> here = MASS_ON_SLOPE.at(slope.name());
                sum = sum == null ? here : sum.plus(here);
            }
            r.record(MASS_IN_ALL, mass(), Formula.of(MASS_IN_ALL, Objects.requireNonNull(sum)));
        });
    }

    /** Returns the plan as plain text: each slope, then the lifts in turn, then what the masses are not. */
    public String toText() {
        StringBuilder text = new StringBuilder();
        for (StackedLoad slope : slopes) {
            Numbers n = numbers(slope.name());
            text.append(slope.name())
                    .append(": ")
                    .append(slope.units())
                    .append(" units, ")
                    .append(n.mass)
                    .append(", ")
                    .append(n.perMetre)
                    .append(" to each metre of eaves; ")
                    .append(n.lifts)
                    .append(n.lifts == 1 ? " lift" : " lifts")
                    .append(" of up to ")
                    .append(n.unitsInLift)
                    .append("; ")
                    .append(n.stacks)
                    .append(n.stacks == 1 ? " stack" : " stacks")
                    .append(" of up to ")
                    .append(unitsInStack)
                    .append(" (")
                    .append(n.stackMass)
                    .append("), at most ")
                    .append(n.mostOnALine)
                    .append(" on each of ")
                    .append(slope.rafterLines())
                    .append(" rafter lines\n");
        }
        lifts.forEach(lift -> text.append(lift).append('\n'));
        return text.append("Masses are for planning; hoist, scaffold and roof were not assessed.\n")
                .toString();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof LoadingOut l
                && slopes.equals(l.slopes)
                && capacity.equals(l.capacity)
                && unitsInStack == l.unitsInStack;
    }

    @Override
    public int hashCode() {
        return Objects.hash(slopes, capacity, unitsInStack);
    }

    /** Returns a summary, such as {@code 2428.8 kg in 14 lifts on 2 slopes}. */
    @Override
    public String toString() {
        return mass() + " in " + lifts.size() + (lifts.size() == 1 ? " lift on " : " lifts on ") + slopes.size()
                + (slopes.size() == 1 ? " slope" : " slopes");
    }
}
