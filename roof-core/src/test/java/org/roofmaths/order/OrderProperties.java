package org.roofmaths.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Currency;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;
import org.roofmaths.units.Ratio;

class OrderProperties {
    private static final Currency POUND = Currency.getInstance("GBP");

    @Provide
    Arbitrary<OrderTerms> packTerms() {
        Arbitrary<Integer> permille = Arbitraries.integers().between(0, 1000).withoutEdgeCases();
        return Combinators.combine(
                        permille,
                        permille,
                        Arbitraries.longs().between(1, 500).withoutEdgeCases(),
                        Arbitraries.of(true, false))
                .as((breakage, cutting, pack, split) -> OrderTerms.builder()
                        .addAllowances(
                                Allowance.breakage(Ratio.of(breakage / 1000.0)),
                                Allowance.cutting(Ratio.of(cutting / 1000.0)))
                        .stock(split ? Stock.packs(pack).withPartPacks() : Stock.packs(pack))
                        .massOfOne(Mass.ofKilograms(1.6))
                        .price(Price.of(new BigDecimal("1.25"), POUND))
                        .build());
    }

    @Property
    void never_fewer_than_needed_and_never_a_pack_too_many(
            @ForAll @LongRange(min = 0, max = 1_000_000) long net, @ForAll("packTerms") OrderTerms terms) {
        OrderLine line = OrderLine.of("tile", Amount.pieces(net), terms);

        assertThat(line.needed()).isGreaterThanOrEqualTo(line.net());
        assertThat(line.toBuy()).isGreaterThanOrEqualTo(line.needed());
        assertThat(line.left()).isLessThan(line.stock().soldBy().orElseThrow());
        assertThat(line.left()).isEqualTo(line.toBuy().minus(line.needed()));
        assertThat(line.working().disagreements()).isEmpty();
    }

    @Property
    void lengths_keep_the_same_laws(
            @ForAll @LongRange(min = 0, max = 2_000_000_000_000L) long nanometres,
            @ForAll @IntRange(min = 1, max = 20_000) int stockMillimetres,
            @ForAll @IntRange(min = 0, max = 300) int permille) {
        Length stock = Length.ofMillimetres(stockMillimetres);
        OrderLine line = OrderLine.of(
                "batten",
                Amount.of(Length.ofNanometres(nanometres)),
                OrderTerms.builder()
                        .addAllowances(Allowance.cutting(Ratio.of(permille / 1000.0)))
                        .stock(Stock.lengths(stock))
                        .build());

        // short by no more than the storage resolution, see OrderLine
        BigDecimal left = line.left().toBigDecimal();
        assertThat(left).isGreaterThanOrEqualTo(new BigDecimal("-0.0000001"));
        assertThat(line.left()).isLessThan(Amount.of(stock));
        assertThat(line.working().disagreements()).isEmpty();
    }

    @Property
    void exact_packs_are_bought_as_they_are(
            @ForAll @LongRange(min = 1, max = 10_000) long packs, @ForAll @LongRange(min = 1, max = 500) long size) {
        OrderTerms terms = OrderTerms.builder().stock(Stock.packs(size)).build();
        OrderLine line = OrderLine.of("tile", Amount.pieces(packs * size), terms);
        assertThat(line.numberToBuy()).hasValue(packs);
        assertThat(line.left()).isEqualTo(Amount.pieces(0));
    }

    @Property
    void an_order_times_k_needs_k_times_as_much_and_buys_no_more_than_k_orders(
            @ForAll @LongRange(min = 0, max = 100_000) long net,
            @ForAll @IntRange(min = 1, max = 20) int k,
            @ForAll("packTerms") OrderTerms terms) {
        OrderLine once = OrderLine.of("tile", Amount.pieces(net), terms);
        OrderLine often = OrderLine.of("tile", Amount.pieces(net * k), terms);

        assertThat(often.needed().toBigDecimal())
                .isEqualByComparingTo(once.needed().toBigDecimal().multiply(BigDecimal.valueOf(k)));
        assertThat(often.toBuy().toPieces())
                .isLessThanOrEqualTo(k * once.toBuy().toPieces());
    }

    @Property
    void a_first_and_a_second_delivery_together_cover_what_is_needed(
            @ForAll @LongRange(min = 0, max = 100_000) long net,
            @ForAll @LongRange(min = 0, max = 200_000) long came,
            @ForAll("packTerms") OrderTerms terms) {
        OrderLine first = OrderLine.of("tile", Amount.pieces(net), terms);
        OrderLine second = first.afterDelivery(Amount.pieces(came));

        assertThat(second.needed()).isEqualTo(first.needed());
        assertThat(second.toBuy().plus(Amount.pieces(came))).isGreaterThanOrEqualTo(first.needed());
        assertThat(second.toBuy()).isLessThanOrEqualTo(first.toBuy());
        assertThat(second.working().disagreements()).isEmpty();
    }

    @Property
    void the_order_of_the_lines_does_not_matter(
            @ForAll @Size(min = 1, max = 8) List<@LongRange(min = 0, max = 5000) Long> nets,
            @ForAll("packTerms") OrderTerms terms,
            @ForAll long seed) {
        List<OrderLine> lines = new ArrayList<>(IntStream.range(0, nets.size())
                .mapToObj(i -> OrderLine.of("item " + i, Amount.pieces(nets.get(i)), terms))
                .toList());
        Order straight = Order.ofLines(lines);
        Collections.shuffle(lines, new Random(seed));
        Order shuffled = Order.ofLines(lines);

        assertThat(shuffled.massToBuy()).isEqualTo(straight.massToBuy());
        assertThat(shuffled.netMass()).isEqualTo(straight.netMass());
        assertThat(shuffled.costs()).isEqualTo(straight.costs());
        assertThat(Set.copyOf(shuffled.lines())).isEqualTo(new HashSet<>(straight.lines()));
    }

    @Property
    void units_along_a_line_cover_it_and_no_more_than_one_is_spare(
            @ForAll @LongRange(min = 1_000, max = 100_000_000_000L) long length,
            @ForAll @LongRange(min = 1_000_000, max = 1_000_000_000L) long cover) {
        UnitsAlong units = UnitsAlong.of(Length.ofNanometres(length), Length.ofNanometres(cover));

        long cut = units.count() - units.wholeUnits();
        Length laid = Length.ofNanometres(cover)
                .times(units.wholeUnits())
                .plus(units.cutLength().times(cut));
        // two halves of an odd number of nanometres
        assertThat(Math.abs(laid.toNanometres() - length)).isLessThanOrEqualTo(1);
        assertThat(units.count() == 1 || 2 * units.cutLength().toNanometres() >= cover - 200)
                .isTrue();
        assertThat(units.working().disagreements()).isEmpty();
    }
}
