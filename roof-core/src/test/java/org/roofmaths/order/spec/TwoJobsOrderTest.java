package org.roofmaths.order.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.roofmaths.units.Quantities.kg;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.percent;

import org.junit.jupiter.api.Test;
import org.roofmaths.order.Allowance;
import org.roofmaths.order.Amount;
import org.roofmaths.order.Order;
import org.roofmaths.order.OrderLine;
import org.roofmaths.order.OrderTerms;
import org.roofmaths.order.Stock;
import org.roofmaths.order.UnitsAlong;

/** The orders of the two jobs that were worked by hand, apart from this library (their steps A20 and A21); all sizes are invented. */
class TwoJobsOrderTest {

    @Test
    void the_order_of_the_lean_to() {
        OrderTerms units = OrderTerms.builder()
                .addAllowances(Allowance.breakage(percent(3)), Allowance.cutting(percent(2)))
                .build();
        Order order = Order.ofLines(
                OrderLine.of(
                        "tile",
                        Amount.pieces(11 * 17),
                        OrderTerms.builder()
                                .from(units)
                                .stock(Stock.packs(180))
                                .massOfOne(kg(4.4))
                                .build()),
                OrderLine.of(
                        "half tile",
                        Amount.pieces(11),
                        OrderTerms.builder().from(units).massOfOne(kg(2.6)).build()),
                OrderLine.of(
                        "batten",
                        Amount.of(metres(11 * 5.245)),
                        OrderTerms.builder()
                                .addAllowances(Allowance.cutting(percent(5)))
                                .stock(Stock.lengths(metres(4.8)))
                                .build()),
                OrderLine.of(
                        "underlay",
                        Amount.of(metres(5 * 5.245)),
                        OrderTerms.builder().stock(Stock.rolls(metres(50))).build()));

        assertThat(order.line("tile").needed()).hasToString("196.35");
        assertThat(order.line("tile").numberToBuy()).hasValue(2);
        assertThat(order.line("tile").left()).hasToString("163.65");
        assertThat(order.line("half tile").needed()).hasToString("11.55");
        assertThat(order.line("half tile").toBuy()).isEqualTo(Amount.pieces(12));
        assertThat(order.line("batten").net()).hasToString("57.695 m");
        assertThat(order.line("batten").needed()).hasToString("60.57975 m");
        assertThat(order.line("batten").numberToBuy()).hasValue(13);
        assertThat(order.line("batten").left()).hasToString("1.82025 m");
        assertThat(order.line("underlay").numberToBuy()).hasValue(1);
        assertThat(order.line("underlay").left()).hasToString("23.775 m");
        assertThat(order.netMass()).isEqualTo(kg(851.4));
        assertThat(order.massToBuy()).isEqualTo(kg(1615.2));
    }

    @Test
    void the_order_of_the_garage() {
        OrderTerms slates = OrderTerms.builder()
                .addAllowances(Allowance.breakage(percent(5)), Allowance.cutting(percent(3)))
                .build();
        Order order = Order.ofLines(
                OrderLine.of(
                        "slate",
                        Amount.pieces(2 * 405),
                        OrderTerms.builder().from(slates).massOfOne(kg(1.6)).build()),
                OrderLine.of(
                        "slate-and-a-half",
                        Amount.pieces(2 * 18),
                        OrderTerms.builder().from(slates).massOfOne(kg(2.4)).build()),
                OrderLine.of(
                        "ridge unit",
                        Amount.pieces(UnitsAlong.of(mm(6100), mm(450)).count()),
                        OrderTerms.none()),
                OrderLine.of(
                        "batten",
                        Amount.of(metres(2 * 17 * 6.1)),
                        OrderTerms.builder()
                                .addAllowances(Allowance.cutting(percent(5)))
                                .stock(Stock.lengths(metres(4.8)))
                                .build()));

        assertThat(order.line("slate").needed()).hasToString("874.8");
        assertThat(order.line("slate").toBuy()).isEqualTo(Amount.pieces(875));
        assertThat(order.line("slate").left()).hasToString("0.2");
        assertThat(order.line("slate-and-a-half").needed()).hasToString("38.88");
        assertThat(order.line("slate-and-a-half").toBuy()).isEqualTo(Amount.pieces(39));
        assertThat(order.line("ridge unit").toBuy()).isEqualTo(Amount.pieces(14));
        assertThat(order.line("batten").needed()).hasToString("217.77 m");
        assertThat(order.line("batten").numberToBuy()).hasValue(46);
        assertThat(order.line("batten").left()).hasToString("3.03 m");
        assertThat(order.massToBuy()).isEqualTo(kg(1493.6));
    }
}
