package org.roofmaths.order;

import java.io.Serializable;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Mass;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * Everything to buy for a job, in three columns: the net amount, the amount needed with its allowances, and what to buy.
 *
 * <p>An order knows nothing of a roof: it is made of lines, and a line of a counted amount. Each item stands in one line, so that it is
 * rounded up once; amounts from several faces are added first with {@link Amount#sum}.
 *
 * <pre>{@code
 * Order order = Order.ofLines(
 *         OrderLine.of("tile", Amount.pieces(187), tiles),
 *         OrderLine.of("batten 25 × 50", Amount.of(metres(57.695)), battens));
 * System.out.println(order.toText());
 * }</pre>
 *
 * @since 0.1
 */
public final class Order implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The net mass of all items whose mass is known: what is lifted to the roof. */
    public static final Term<Mass> TOTAL_NET_MASS = Term.of("net mass of the order", "ΣM₀", Mass.class);

    /** The mass bought of all items whose mass is known: what is delivered. */
    public static final Term<Mass> TOTAL_MASS = Term.of("mass of the order", "ΣM", Mass.class);

    /** The cost of all items with a price; at the place of the currency's code. */
    public static final Term<BigDecimal> TOTAL_COST = Term.of("cost of the order", "ΣC", BigDecimal.class);

    /** An item that stands in two lines. */
    public static final ProblemCode ITEM_TWICE = ProblemCode.of(
            "order.item-twice", "Add the amounts of one item before ordering, so that it is rounded up once.");

    /** An order without a line. */
    public static final ProblemCode EMPTY = ProblemCode.of("order.empty", "Give at least one line.");

    /** A delivery of something that was not ordered. */
    public static final ProblemCode NOT_ORDERED =
            ProblemCode.of("order.not-ordered", "Name the items of the delivery as they stand in the order.");

    /** A second batch that may look different. */
    public static final ProblemCode SECOND_BATCH = ProblemCode.of(
            "order.second-batch",
            "Ask for the same batch; otherwise mix both over the whole face, or use the second where it is not seen.");

    private final List<OrderLine> lines;
    private final List<Problem> notices;

    private Order(List<OrderLine> lines, List<Problem> notices) {
        this.lines = List.copyOf(lines);
        this.notices = List.copyOf(notices);
    }

    /**
     * Returns the order of some lines.
     *
     * @param lines at least one, each item once
     * @return the order
     * @throws org.roofmaths.problem.ProblemsException if there is no line or an item stands in two
     */
    public static Order ofLines(OrderLine... lines) {
        return ofLines(Arrays.asList(lines));
    }

    /**
     * Returns the order of some lines.
     *
     * @param lines at least one, each item once
     * @return the order
     * @throws org.roofmaths.problem.ProblemsException if there is no line or an item stands in two
     */
    public static Order ofLines(List<OrderLine> lines) {
        return attemptOfLines(lines).orThrow();
    }

    /**
     * Returns the order of some lines, or every problem that stands against it.
     *
     * @param lines at least one, each item once
     * @return the order with the notices of its lines, or the problems
     */
    public static Attempt<Order> attemptOfLines(List<OrderLine> lines) {
        Problems problems =
                Problems.none().require(!lines.isEmpty(), EMPTY, "order", "no line", "have at least one line");
        Set<String> seen = new HashSet<>();
        for (OrderLine line : lines) {
            problems.require(
                    seen.add(line.item()),
                    ITEM_TWICE,
                    "items",
                    "\"" + line.item() + "\" twice",
                    "each stand in one line");
        }
        if (problems.hasErrors()) {
            return Attempt.failed(problems.list());
        }
        Order order = new Order(lines, List.of());
        return Attempt.of(order, order.problems());
    }

    /**
     * Returns the second order after a delivery that came short or damaged.
     *
     * <p>Name each item that came short and the sound amount that is on site. Items not named came in full and are left out. No
     * allowance is added a second time.
     *
     * @param sound the sound amounts on site, by item
     * @return the second order
     * @throws org.roofmaths.problem.ProblemsException with every problem, if an item was not ordered, no item is named, or an amount is below
     *     zero or of another kind
     */
    public Order secondOrder(Map<String, Amount> sound) {
        Problems problems =
                Problems.none().require(!sound.isEmpty(), EMPTY, "delivery", "no item", "name at least one item");
        for (String item : sound.keySet()) {
            problems.require(
                    lines.stream().anyMatch(line -> line.item().equals(item)),
                    NOT_ORDERED,
                    "items of the delivery",
                    "\"" + item + "\"",
                    "stand in the order");
        }
        List<OrderLine> second = new ArrayList<>();
        List<Problem> shades = new ArrayList<>();
        for (OrderLine line : lines) {
            Amount came = sound.get(line.item());
            if (came == null) {
                continue;
            }
            Attempt<OrderLine> again = Attempt.call(() -> line.afterDelivery(came));
            if (!again.hasValue()) {
                again.problems().forEach(problem -> problems.add(problem.at(line.item() + ": " + problem.where())));
                continue;
            }
            OrderLine more = again.orThrow();
            second.add(more);
            if (more.net().kind() == AmountKind.PIECES && more.numberToBuy().orElse(0) > 0) {
                shades.add(Problem.notice(
                        SECOND_BATCH,
                        line.item(),
                        more.toBuy(),
                        line.item() + ": a second batch may differ in shade or size"));
            }
        }
        problems.throwIfErrors();
        return new Order(second, shades);
    }

    /** Returns the lines in the order given. */
    public List<OrderLine> lines() {
        return lines;
    }

    /**
     * Returns the line of an item.
     *
     * @param item its name
     * @return the line
     * @throws IllegalArgumentException if there is none; the message lists those there are
     */
    public OrderLine line(String item) {
        return lines.stream()
                .filter(line -> line.item().equals(item))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no \"" + item + "\" in this order; it has: "
                        + String.join(", ", lines.stream().map(OrderLine::item).toList())));
    }

    /** Returns the net mass of the items whose mass is known. */
    public Mass netMass() {
        return sum(lines.stream().flatMap(line -> line.netMass().stream()).toList());
    }

    /** Returns the mass bought of the items whose mass is known. */
    public Mass massToBuy() {
        return sum(lines.stream().flatMap(line -> line.massToBuy().stream()).toList());
    }

    /** Adds decimals, so that the order of the lines cannot change the sum. */
    private static Mass sum(List<Mass> masses) {
        BigDecimal kilograms = BigDecimal.ZERO;
        for (Mass mass : masses) {
            kilograms = kilograms.add(Amount.shortest(mass.toKilograms()));
        }
        return Mass.ofKilograms(kilograms.doubleValue());
    }

    /** Returns the items whose mass is not known and which the masses leave out. */
    public List<String> itemsWithoutMass() {
        return lines.stream()
                .filter(line -> line.massToBuy().isEmpty())
                .map(OrderLine::item)
                .toList();
    }

    /** Returns what the items with a price cost together: one sum for each currency, by its code; empty if no price was given. */
    public List<Price> costs() {
        return List.copyOf(costsByCode().values());
    }

    private Map<String, Price> costsByCode() {
        Map<String, Price> sums = new TreeMap<>();
        for (OrderLine line : lines) {
            line.cost()
                    .ifPresent(cost -> sums.merge(
                            cost.currency().getCurrencyCode(),
                            cost,
                            (a, b) -> Price.of(a.amount().add(b.amount()), a.currency())));
        }
        return sums;
    }

    /** Returns the items without a price, which the costs leave out. */
    public List<String> itemsWithoutPrice() {
        return lines.stream()
                .filter(line -> line.cost().isEmpty())
                .map(OrderLine::item)
                .toList();
    }

    /** Returns what a person should know: where most of a pack is left over, and where a second batch may differ. */
    public List<Problem> problems() {
        List<Problem> all = new ArrayList<>();
        lines.forEach(line -> all.addAll(line.problems()));
        all.addAll(notices);
        return List.copyOf(all);
    }

    /** Returns the working of the sums, which holds that of every line. */
    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    private void compute(Recorder r) {
        Expression net = null;
        Expression bought = null;
        Map<String, Expression> costs = new TreeMap<>();
        for (OrderLine line : lines) {
            String item = line.item();
            line.compute(r.at(item));
            if (line.massToBuy().isPresent()) {
                net = add(net, OrderLine.NET_MASS.at(item));
                bought = add(bought, OrderLine.MASS_TO_BUY.at(item));
            }
            if (line.cost().isPresent()) {
                String code = line.cost().orElseThrow().currency().getCurrencyCode();
                costs.put(code, add(costs.get(code), OrderLine.COST.at(item)));
            }
        }
        if (net != null && bought != null) {
            r.record(TOTAL_NET_MASS, netMass(), Formula.of(TOTAL_NET_MASS, net));
            r.record(TOTAL_MASS, massToBuy(), Formula.of(TOTAL_MASS, bought));
        }
        for (Price cost : costs()) {
            Term<BigDecimal> here = TOTAL_COST.at(cost.currency().getCurrencyCode());
            Expression sum = costs.get(cost.currency().getCurrencyCode());
            r.record(here, cost.amount(), Formula.of(here, Objects.requireNonNull(sum)));
        }
    }

    private static Expression add(@Nullable Expression sum, Expression more) {
        return sum == null ? more : sum.plus(more);
    }

    /** Returns the order as a table of plain text, one item a line, with allowances, sums and notices beneath. */
    public String toText() {
        return OrderText.text(this);
    }

    /** Returns the order as a Markdown table, with allowances, sums and notices beneath. */
    public String toMarkdown() {
        return OrderText.markdown(this);
    }

    /**
     * Returns the order as plain maps, lists, strings and numbers, ready for any JSON writer.
     *
     * <p>Keys: {@code format}, {@code version} (1), {@code lines} (see {@link OrderLine#toTree()}), {@code netMass}, {@code massToBuy},
     * {@code itemsWithoutMass}, {@code costs}, {@code itemsWithoutPrice}, {@code problems}. Masses are left out if none is known.
     *
     * @return an unmodifiable map in a fixed order of keys
     */
    public Map<String, Object> toTree() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("format", "roof-maths order");
        map.put("version", 1);
        map.put("lines", lines.stream().map(OrderLine::toTree).toList());
        if (hasMass()) {
            map.put("netMass", netMass().toString());
            map.put("massToBuy", massToBuy().toString());
        }
        map.put("itemsWithoutMass", itemsWithoutMass());
        map.put("costs", costs().stream().map(Price::toString).toList());
        map.put("itemsWithoutPrice", itemsWithoutPrice());
        map.put("problems", Problem.toTree(problems()));
        return Collections.unmodifiableMap(map);
    }

    boolean hasMass() {
        return lines.stream().map(OrderLine::massToBuy).anyMatch(Optional::isPresent);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Order o && lines.equals(o.lines) && notices.equals(o.notices);
    }

    @Override
    public int hashCode() {
        return Objects.hash(lines, notices);
    }

    /** Returns a summary, such as {@code order of 8 items: tile 2 packs of 180, …}. */
    @Override
    public String toString() {
        StringBuilder text =
                new StringBuilder("order of " + lines.size() + (lines.size() == 1 ? " item: " : " items: "));
        String gap = "";
        for (OrderLine line : lines) {
            text.append(gap).append(line.item()).append(' ').append(line.toBuyInWords());
            gap = ", ";
        }
        return text.toString();
    }
}
