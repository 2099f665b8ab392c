package org.roofmaths.order;

import java.io.Serializable;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.immutables.value.Value;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Mass;

/**
 * On which terms one item is ordered: what is allowed over the net amount, how it is sold, what it costs, how heavy it is.
 *
 * <p>Every part may be left out. Without an allowance none is added; without stock, pieces are bought singly and everything else as
 * needed; without a price or a mass the order says that its sums leave the item out.
 *
 * <pre>{@code
 * OrderTerms tiles = OrderTerms.builder()
 *         .addAllowances(Allowance.breakage(percent(3)), Allowance.cutting(percent(2)))
 *         .stock(Stock.packs(180))
 *         .massOfOne(kg(4.4))
 *         .build();
 * }</pre>
 *
 * <p>{@code build()} throws a {@link org.roofmaths.problem.ProblemsException} with every problem of allowances, stock, price and mass at
 * once.
 *
 * @since 0.1
 */
@Value.Immutable
public interface OrderTerms extends Serializable {
    /** A cause for which two allowances were given. */
    ProblemCode CAUSE_TWICE = ProblemCode.of("order.cause-twice", "Add the allowances of one cause to one.");

    /** A price below nothing. */
    ProblemCode PRICE_NEGATIVE = ProblemCode.of("order.price", "Give the price of one pack, roll, length or piece.");

    /** A mass below nothing. */
    ProblemCode MASS_NEGATIVE =
            ProblemCode.of("order.mass", "Give the mass of one piece, one metre or one square metre.");

    /** Returns what is allowed over the net amount, one for each cause. */
    List<Allowance> allowances();

    /** Returns how it is sold; empty if not said. */
    Optional<Stock> stock();

    /** Returns what one pack, roll, length, bag or single piece costs; where as much as needed is sold, one metre, square metre or kilogram. */
    Optional<Price> price();

    /** Returns the mass of one piece, one metre or one square metre, as the item is counted. */
    Optional<Mass> massOfOne();

    /**
     * Refuses terms that cannot be meant, with every reason at once.
     *
     * @throws org.roofmaths.problem.ProblemsException if a part is out of its range or a cause named twice
     */
    @Value.Check
    default void check() {
        Problems problems = Problems.none();
        Set<Cause> seen = EnumSet.noneOf(Cause.class);
        for (Allowance allowance : allowances()) {
            allowance.check(problems);
            problems.require(
                    seen.add(allowance.cause()),
                    CAUSE_TWICE,
                    "allowances",
                    allowance.cause() + " twice",
                    "name each cause once");
        }
        stock().ifPresent(stock -> stock.check(problems));
        price().ifPresent(price ->
                problems.require(price.amount().signum() >= 0, PRICE_NEGATIVE, "price", price, "be zero or more"));
        massOfOne()
                .ifPresent(mass ->
                        problems.require(!mass.isNegative(), MASS_NEGATIVE, "mass of one", mass, "be zero or more"));
        problems.throwIfErrors();
    }

    /** Starts terms; no part is required. */
    static OrderTermsBuilder builder() {
        return new OrderTermsBuilder();
    }

    /** Returns terms that say nothing: no allowance, no pack, no price, no mass. */
    static OrderTerms none() {
        return builder().build();
    }
}
