package org.roofmaths.order;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Mass;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * One item of an order: the net amount, the amount needed with its allowances, what to buy, and what is left over.
 *
 * <p>The allowances are added to the net amount once; the sum is rounded up once, to whole packs, rolls, lengths or pieces. An excess of up
 * to 0.0000001 of a piece, metre, square metre or kilogram over a whole number of packs does not ask for another one.
 *
 * <pre>{@code
 * OrderLine tiles = OrderLine.of("tile", Amount.pieces(187), OrderTerms.builder()
 *         .addAllowances(Allowance.breakage(percent(3)), Allowance.cutting(percent(2)))
 *         .stock(Stock.packs(180))
 *         .build());
 * tiles.net()        // 187
 * tiles.needed()     // 196.35 = 187 × (1 + 0.03 + 0.02)
 * tiles.toBuy()      // 360, which is 2 packs of 180
 * tiles.left()       // 163.65
 * }</pre>
 *
 * @since 0.1
 */
public final class OrderLine implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The amount that will be laid, without any allowance. */
    public static final Term<Amount> NET = Term.of("net amount", "n", Amount.class);

    /** The share of the net amount allowed for a cause; at the place of the cause. */
    public static final Term<Ratio> SHARE = Term.of("allowance", "a", Ratio.class);

    /** The extra amount allowed for a cause; at the place of the cause. */
    public static final Term<Amount> EXTRA = Term.of("extra amount", "x", Amount.class);

    /** The net amount with all allowances, not rounded. */
    public static final Term<Amount> NEEDED = Term.of("amount needed", "N", Amount.class);

    /** What has already been delivered and is sound. */
    public static final Term<Amount> DELIVERED = Term.of("amount delivered", "d", Amount.class);

    /** The least amount by which more can be bought: a pack, a roll, a length, a piece. */
    public static final Term<Amount> SOLD_BY = Term.of("amount sold at a time", "p", Amount.class);

    /** The least number sold at once. */
    public static final Term<Long> MINIMUM = Term.of("least number sold", "m", Long.class);

    /** How many packs, rolls, lengths or pieces to buy. */
    public static final Term<Long> NUMBER_TO_BUY = Term.of("number to buy", "k", Long.class);

    /** The amount bought. */
    public static final Term<Amount> TO_BUY = Term.of("amount to buy", "B", Amount.class);

    /** What is left when everything needed has been used, allowances included. */
    public static final Term<Amount> LEFT = Term.of("amount left over", "l", Amount.class);

    /** How many stand on a pallet. */
    public static final Term<Long> PACKS_PER_PALLET = Term.of("number on a pallet", "P", Long.class);

    /** How many pallets come, part ones included. */
    public static final Term<Long> PALLETS = Term.of("pallets", "K", Long.class);

    /** The mass of one piece, metre or square metre. */
    public static final Term<Mass> MASS_OF_ONE = Term.of("mass of one piece, metre or square metre", "m₁", Mass.class);

    /** The mass of the net amount: what is lifted to the roof and stays there. */
    public static final Term<Mass> NET_MASS = Term.of("net mass", "M₀", Mass.class);

    /** The mass of the amount bought: what is delivered. */
    public static final Term<Mass> MASS_TO_BUY = Term.of("mass to buy", "M", Mass.class);

    /** The price of one of what is sold; the currency is in the remark. */
    public static final Term<BigDecimal> PRICE_OF_ONE = Term.of("price of one", "c₁", BigDecimal.class);

    /** What the amount bought costs; the currency is in the remark. */
    public static final Term<BigDecimal> COST = Term.of("cost", "C", BigDecimal.class);

    /** An item without a name. */
    public static final ProblemCode NAMELESS = ProblemCode.of("order.item", "Give the item a name, such as tile.");

    /** A net amount below nothing or beyond any roof. */
    public static final ProblemCode NET_OUT_OF_RANGE =
            ProblemCode.of("order.net", "Give what will be laid: zero or more, and no more than a thousand million.");

    /** A net amount of part pieces. */
    public static final ProblemCode NET_NOT_WHOLE =
            ProblemCode.of("order.net-not-whole", "Count whole pieces; a cut piece is bought as a whole one.");

    /** A delivery below nothing or of another kind. */
    public static final ProblemCode DELIVERED_WRONG =
            ProblemCode.of("order.delivered", "Give the sound amount that came, counted as the item is counted.");

    /** An item counted in one way and sold in another. */
    public static final ProblemCode KINDS_DIFFER = ProblemCode.of(
            "order.kinds",
            "Count the item as it is sold: pieces for packs, metres for rolls and lengths, kilograms for bags.");

    /** A mass of one for an item that is itself a mass. */
    public static final ProblemCode MASS_OF_MASS =
            ProblemCode.of("order.mass-of-mass", "Leave the mass of one out: the amount is a mass already.");

    /** More than half of a pack is left over. */
    public static final ProblemCode MOST_OF_A_PACK_LEFT =
            ProblemCode.of("order.most-of-a-pack-left", "Ask whether a part pack is sold, or reduce the allowance.");

    private static final BigDecimal GREATEST = new BigDecimal("1e9");
    private static final int SHOWN_DECIMALS = 2;

    private static final Formula NUMBER_BY_SIZE = Formula.of(
            NUMBER_TO_BUY,
            NEEDED.minus(DELIVERED).greatest(Expression.number(0)).timesToCover(SOLD_BY));
    private static final Formula NUMBER_BY_SIZE_FIRST = Formula.of(NUMBER_TO_BUY, NEEDED.timesToCover(SOLD_BY));
    private static final Formula NUMBER_BY_MINIMUM = Formula.of(NUMBER_TO_BUY, MINIMUM);
    private static final Formula BUY_PACKS = Formula.of(TO_BUY, NUMBER_TO_BUY.times(SOLD_BY));
    private static final Formula BUY_REST =
            Formula.of(TO_BUY, NEEDED.minus(DELIVERED).greatest(Expression.number(0)));
    private static final Formula BUY_NEEDED = Formula.of(TO_BUY, NEEDED);
    private static final Formula LEFT_FIRST = Formula.of(LEFT, TO_BUY.minus(NEEDED));
    private static final Formula LEFT_OF_BOTH =
            Formula.of(LEFT, DELIVERED.plus(TO_BUY).minus(NEEDED));
    private static final Formula PALLETS_BY_NUMBER = Formula.of(PALLETS, NUMBER_TO_BUY.timesToCover(PACKS_PER_PALLET));
    private static final Formula NET_MASS_BY_ONE = Formula.of(NET_MASS, NET.times(MASS_OF_ONE));
    private static final Formula NET_MASS_ITSELF = Formula.of(NET_MASS, NET);
    private static final Formula MASS_BY_ONE = Formula.of(MASS_TO_BUY, TO_BUY.times(MASS_OF_ONE));
    private static final Formula MASS_ITSELF = Formula.of(MASS_TO_BUY, TO_BUY);
    private static final Formula COST_BY_NUMBER = Formula.of(COST, NUMBER_TO_BUY.times(PRICE_OF_ONE));
    private static final Formula COST_BY_AMOUNT = Formula.of(COST, TO_BUY.times(PRICE_OF_ONE));

    private final String item;
    private final Figure<Amount> net;
    private final OrderTerms terms;
    private final Stock stock;
    private final @Nullable Figure<Amount> delivered;

    // set by compute
    private final Amount needed;
    private final long number;
    private final Amount toBuy;
    private final Amount left;
    private final long pallets;
    private final @Nullable Mass netMass;
    private final @Nullable Mass massToBuy;
    private final @Nullable Price cost;
    private final List<Problem> problems;

    private OrderLine(String item, Figure<Amount> net, OrderTerms terms, @Nullable Figure<Amount> delivered) {
        this.item = item;
        this.net = net;
        this.terms = terms;
        this.stock = stock(net.value(), terms);
        this.delivered = delivered;
        Result result = compute(Recorder.off());
        needed = result.needed;
        number = result.number;
        toBuy = result.toBuy;
        left = result.left;
        pallets = result.pallets;
        netMass = result.netMass;
        massToBuy = result.massToBuy;
        cost = result.cost;
        problems = findings();
    }

    private static Stock stock(Amount net, OrderTerms terms) {
        return terms.stock().orElseGet(() -> net.kind() == AmountKind.PIECES ? Stock.singly() : Stock.asNeeded());
    }

    /**
     * Returns the order line of an item.
     *
     * @param item what it is, in the words of whoever sells it
     * @param net what will be laid, without any allowance; whole pieces, or a length, area or mass, zero or more
     * @param terms allowances, stock, price and mass
     * @return the line
     * @throws org.roofmaths.problem.ProblemsException with every problem, if the item has no name, the net amount is out of range, or the item
     *     is counted in one way and sold in another
     */
    public static OrderLine of(String item, Amount net, OrderTerms terms) {
        return of(item, Figure.given(net), terms);
    }

    /**
     * Returns the order line of an item whose net amount has a trail, such as the tiles of a layout.
     *
     * @param item what it is, in the words of whoever sells it
     * @param net what will be laid, without any allowance
     * @param terms allowances, stock, price and mass
     * @return the line
     * @throws org.roofmaths.problem.ProblemsException with every problem, as for {@link #of(String, Amount, OrderTerms)}
     */
    public static OrderLine of(String item, Figure<Amount> net, OrderTerms terms) {
        return attempt(item, net, terms).orThrow();
    }

    /**
     * Returns the order line of an item, or every problem that stands against it.
     *
     * @param item what it is, in the words of whoever sells it
     * @param net what will be laid, without any allowance
     * @param terms allowances, stock, price and mass
     * @return the line, with a notice if most of a pack is left over, or the problems
     */
    public static Attempt<OrderLine> attempt(String item, Figure<Amount> net, OrderTerms terms) {
        return attempt(item, net, terms, null);
    }

    private static Attempt<OrderLine> attempt(
            String item, Figure<Amount> net, OrderTerms terms, @Nullable Figure<Amount> delivered) {
        Amount amount = net.value();
        Problems problems = Problems.none()
                .require(!item.isBlank(), NAMELESS, "item", "\"" + item + "\"", "have a name")
                .require(
                        !amount.isNegative() && amount.toBigDecimal().compareTo(GREATEST) <= 0,
                        NET_OUT_OF_RANGE,
                        "net amount",
                        amount,
                        "be from 0 to 1000000000" + amount.kind().unit())
                .require(
                        amount.kind() != AmountKind.PIECES
                                || amount.toBigDecimal().scale() <= 0,
                        NET_NOT_WHOLE,
                        "net amount",
                        amount,
                        "be a whole number of pieces");
        terms.stock()
                .flatMap(Stock::size)
                .ifPresent(size -> problems.require(
                        size.kind() == amount.kind(),
                        KINDS_DIFFER,
                        "net amount",
                        amount.kind() + " (" + amount + ")",
                        "be " + size.kind() + ", since it is sold in "
                                + terms.stock().orElseThrow()));
        for (Allowance allowance : terms.allowances()) {
            allowance
                    .extra()
                    .ifPresent(extra -> problems.require(
                            extra.value().kind() == amount.kind(),
                            KINDS_DIFFER,
                            "allowance for " + allowance.cause(),
                            extra.value().kind() + " (" + extra.value() + ")",
                            "be " + amount.kind() + ", as the net amount is"));
        }
        terms.massOfOne()
                .ifPresent(mass -> problems.require(
                        amount.kind() != AmountKind.MASS,
                        MASS_OF_MASS,
                        "mass of one",
                        mass,
                        "be left out for an amount that is a mass"));
        if (delivered != null) {
            Amount came = delivered.value();
            problems.require(
                    came.kind() == amount.kind() && !came.isNegative(),
                    DELIVERED_WRONG,
                    "amount delivered",
                    came.kind() + " (" + came + ")",
                    "be " + amount.kind() + ", zero or more");
        }
        return problems.hasErrors()
                ? Attempt.failed(problems.list())
                : withFindings(new OrderLine(item, net, terms, delivered));
    }

    private static Attempt<OrderLine> withFindings(OrderLine line) {
        return Attempt.of(line, line.problems());
    }

    /**
     * Returns the line for a second order, after a delivery that came short.
     *
     * <p>The second order covers what is still needed, allowances included, and adds no allowance a second time: of 196.35 tiles needed
     * and 180 sound ones on site, 16.35 are missing.
     *
     * @param sound what came and is sound, counted as the item is counted
     * @return the line of the second order; {@code toBuy} is zero if nothing is missing
     * @throws org.roofmaths.problem.ProblemsException if the amount is below zero or of another kind
     */
    public OrderLine afterDelivery(Amount sound) {
        return attempt(item, net, terms, Figure.given(sound)).orThrow();
    }

    /** What compute returns; the accessors read it. */
    static final class Result {
        Amount needed;
        long number;
        Amount toBuy;
        Amount left;
        long pallets;

        @Nullable
        Mass netMass;

        @Nullable
        Mass massToBuy;

        @Nullable
        Price cost;

        Result(Amount needed) {
            this.needed = needed;
            toBuy = needed;
            left = Amount.none(needed.kind());
        }
    }

    Result compute(Recorder r) {
        Amount laid = r.use(NET, net);
        Result result = new Result(needed(laid, r));
        Amount came = delivered == null ? Amount.none(laid.kind()) : r.use(DELIVERED, delivered);
        Amount missing = result.needed.minus(came).orZero();
        Optional<Amount> soldBy = stock.soldBy();
        if (soldBy.isPresent()) {
            buyWhole(result, r.use(SOLD_BY, soldBy.get()), missing, r);
        } else {
            result.toBuy = r.record(TO_BUY, missing, delivered == null ? BUY_NEEDED : BUY_REST);
        }
        result.left = r.record(
                LEFT, came.plus(result.toBuy).minus(result.needed), delivered == null ? LEFT_FIRST : LEFT_OF_BOTH);
        weigh(result, laid, r);
        price(result, soldBy.isPresent(), r);
        return result;
    }

    /** The net amount times one plus all shares together, plus the extra amounts: added once, not one on top of the other. */
    private Amount needed(Amount laid, Recorder r) {
        BigDecimal factor = BigDecimal.ONE;
        Amount extra = Amount.none(laid.kind());
        Expression share = Expression.number(1);
        Expression sum = NET;
        for (Allowance allowance : terms.allowances()) {
            Optional<Figure<Ratio>> part = allowance.share();
            if (part.isPresent()) {
                Term<Ratio> here = SHARE.at(allowance.cause().toString());
                factor = factor.add(Amount.shortest(r.use(here, part.get()).toDouble()));
                share = share.plus(here);
                sum = NET.times(share);
            }
        }
        for (Allowance allowance : terms.allowances()) {
            Optional<Figure<Amount>> part = allowance.extra();
            if (part.isPresent()) {
                Term<Amount> here = EXTRA.at(allowance.cause().toString());
                extra = extra.plus(r.use(here, part.get()));
                sum = sum.plus(here);
            }
        }
        if (terms.allowances().isEmpty()) {
            r.note("no allowance given");
        }
        return r.record(NEEDED, laid.times(factor).plus(extra), Formula.of(NEEDED, sum));
    }

    private void buyWhole(Result result, Amount soldBy, Amount missing, Recorder r) {
        long enough = soldBy.timesToCover(missing);
        OptionalLong minimum = stock.minimum();
        if (enough > 0 && minimum.isPresent() && minimum.getAsLong() > enough) {
            r.use(MINIMUM, minimum.getAsLong());
            r.note(enough + " would be enough");
            result.number = r.record(NUMBER_TO_BUY, minimum.getAsLong(), NUMBER_BY_MINIMUM);
        } else {
            result.number = r.record(NUMBER_TO_BUY, enough, delivered == null ? NUMBER_BY_SIZE_FIRST : NUMBER_BY_SIZE);
        }
        r.note(stock.bought(result.number));
        result.toBuy = r.record(TO_BUY, soldBy.times(result.number), BUY_PACKS);
        if (stock.packsPerPallet().isPresent()) {
            long perPallet = r.use(PACKS_PER_PALLET, stock.packsPerPallet().getAsLong());
            result.pallets = r.record(PALLETS, ceilDiv(result.number, perPallet), PALLETS_BY_NUMBER);
        }
    }

    private static long ceilDiv(long count, long size) {
        return -Math.floorDiv(-count, size);
    }

    private void weigh(Result result, Amount laid, Recorder r) {
        if (laid.kind() == AmountKind.MASS) {
            result.netMass = r.record(NET_MASS, laid.toMass(), NET_MASS_ITSELF);
            result.massToBuy = r.record(MASS_TO_BUY, result.toBuy.toMass(), MASS_ITSELF);
        } else if (terms.massOfOne().isPresent()) {
            Mass one = r.use(MASS_OF_ONE, terms.massOfOne().get());
            result.netMass = r.record(NET_MASS, mass(laid, one), NET_MASS_BY_ONE);
            result.massToBuy = r.record(MASS_TO_BUY, mass(result.toBuy, one), MASS_BY_ONE);
        }
    }

    private static Mass mass(Amount amount, Mass one) {
        BigDecimal kilograms = amount.toBigDecimal().multiply(Amount.shortest(one.toKilograms()));
        return Mass.ofKilograms(kilograms.doubleValue());
    }

    private void price(Result result, boolean byNumber, Recorder r) {
        if (terms.price().isEmpty()) {
            return;
        }
        Price one = terms.price().get();
        BigDecimal count = byNumber ? BigDecimal.valueOf(result.number) : result.toBuy.toBigDecimal();
        Price all = one.times(count);
        r.use(PRICE_OF_ONE, one.amount());
        r.note("in " + one.currency().getCurrencyCode());
        r.record(COST, all.amount(), byNumber ? COST_BY_NUMBER : COST_BY_AMOUNT);
        result.cost = all;
    }

    private List<Problem> findings() {
        if (!stock.isWholePacksOfPieces() || number == 0 || stock.minimum().orElse(0) == number) {
            return List.of();
        }
        Amount pack = stock.soldBy().orElseThrow();
        if (left.times(2).compareTo(pack) <= 0) {
            return List.of();
        }
        Amount opened = pack.minus(left);
        String used = opened.toText(SHOWN_DECIMALS, RoundingMode.UP);
        return List.of(Problem.notice(
                        MOST_OF_A_PACK_LEFT,
                        item,
                        left,
                        item + ": the last of " + stock.bought(number) + " is opened for " + used)
                .withMend(Mend.of(item, "ask for a part pack", used + " instead of " + pack)));
    }

    /** Returns what it is. */
    public String item() {
        return item;
    }

    /** Returns the amount that will be laid, without any allowance. */
    public Amount net() {
        return net.value();
    }

    /** Returns the net amount with where it came from. */
    public Figure<Amount> netFigure() {
        return net;
    }

    /** Returns the terms on which it is ordered. */
    public OrderTerms terms() {
        return terms;
    }

    /** Returns how it is sold: as the terms say; otherwise pieces singly and everything else as needed. */
    public Stock stock() {
        return stock;
    }

    /** Returns the net amount with all allowances, not rounded. */
    public Amount needed() {
        return needed;
    }

    /** Returns what had come and was sound when this order was made; zero for a first order. */
    public Amount delivered() {
        return delivered == null ? Amount.none(net().kind()) : delivered.value();
    }

    boolean isSecond() {
        return delivered != null;
    }

    /** Returns the amount to buy: whole packs, rolls, lengths or pieces. */
    public Amount toBuy() {
        return toBuy;
    }

    /**
     * Returns how many packs, rolls, lengths, bags or pieces to buy; pieces where part packs are sold.
     *
     * @return the number; empty if as much is bought as is needed
     */
    public OptionalLong numberToBuy() {
        return stock.soldBy().isPresent() ? OptionalLong.of(number) : OptionalLong.empty();
    }

    /** Returns what to buy in words, such as {@code 2 packs of 180}, {@code 1 pack of 180 and 17 pieces}, {@code 60.4 kg}. */
    public String toBuyInWords() {
        return stock.soldBy().isPresent() ? stock.bought(number) : toBuy.toText(SHOWN_DECIMALS, RoundingMode.UP);
    }

    /** Returns what is left when everything needed has been used, allowances included; never below zero. */
    public Amount left() {
        return left;
    }

    /** Returns how many pallets come, part ones included; empty if pallets were not asked for. */
    public OptionalLong pallets() {
        return stock.packsPerPallet().isPresent() && stock.soldBy().isPresent()
                ? OptionalLong.of(pallets)
                : OptionalLong.empty();
    }

    /** Returns the mass of the net amount; empty if the mass of one was not given. */
    public Optional<Mass> netMass() {
        return Optional.ofNullable(netMass);
    }

    /** Returns the mass of the amount bought; empty if the mass of one was not given. */
    public Optional<Mass> massToBuy() {
        return Optional.ofNullable(massToBuy);
    }

    /** Returns what the amount bought costs; empty if no price was given. */
    public Optional<Price> cost() {
        return Optional.ofNullable(cost);
    }

    /** Returns what a person should know: a notice where more than half of a pack is left over; otherwise empty. */
    public List<Problem> problems() {
        return problems;
    }

    /** Returns the allowances in words, such as {@code breakage 3 %, cutting 2 %}, or {@code none}. */
    public String allowancesInWords() {
        return terms.allowances().isEmpty()
                ? "none"
                : terms.allowances().stream().map(Allowance::toString).collect(Collectors.joining(", "));
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    /** Returns the line as plain maps, lists, strings and numbers, ready for any JSON writer; keys are in a fixed order. */
    public Map<String, Object> toTree() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("item", item);
        map.put("kind", net().kind().name());
        map.put("net", net().toString());
        List<Object> allowed = new ArrayList<>();
        terms.allowances().forEach(allowance -> allowed.add(allowance.toString()));
        map.put("allowances", Collections.unmodifiableList(allowed));
        map.put("needed", needed.toString());
        if (delivered != null) {
            map.put("delivered", delivered().toString());
        }
        map.put("soldAs", stock.toString());
        map.put("toBuy", toBuy.toString());
        numberToBuy().ifPresent(count -> map.put("numberToBuy", count));
        map.put("toBuyInWords", toBuyInWords());
        map.put("left", left.toString());
        pallets().ifPresent(count -> map.put("pallets", count));
        netMass().ifPresent(mass -> map.put("netMass", mass.toString()));
        massToBuy().ifPresent(mass -> map.put("massToBuy", mass.toString()));
        cost().ifPresent(price -> map.put("cost", price.toString()));
        return Collections.unmodifiableMap(map);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof OrderLine l
                && item.equals(l.item)
                && net.equals(l.net)
                && terms.equals(l.terms)
                && Objects.equals(delivered, l.delivered);
    }

    @Override
    public int hashCode() {
        return Objects.hash(item, net, terms, delivered);
    }

    /** Returns the line in words, such as {@code tile: net 187, needed 196.35, to buy 2 packs of 180, left 163.65}. */
    @Override
    public String toString() {
        return item + ": net " + net() + ", needed " + needed
                + (delivered == null ? "" : ", delivered " + delivered())
                + ", to buy " + toBuyInWords() + ", left " + left;
    }
}
