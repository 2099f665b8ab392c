package org.roofmaths.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.roofmaths.units.Quantities.kg;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.percent;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemsException;

class OrderTest {
    private static final Currency POUND = Currency.getInstance("GBP");
    private static final Currency EURO = Currency.getInstance("EUR");
    private static final OrderLine TILES = OrderLine.of(
            "tile",
            Amount.pieces(187),
            OrderTerms.builder()
                    .addAllowances(Allowance.breakage(percent(3)), Allowance.cutting(percent(2)))
                    .stock(Stock.packs(180))
                    .price(Price.of(new BigDecimal("210.50"), POUND))
                    .massOfOne(kg(4.4))
                    .build());
    private static final OrderLine HALVES = OrderLine.of(
            "half tile",
            Amount.pieces(11),
            OrderTerms.builder()
                    .addAllowances(Allowance.breakage(percent(3)), Allowance.cutting(percent(2)))
                    .massOfOne(kg(2.6))
                    .build());
    private static final OrderLine BATTENS = OrderLine.of(
            "batten 25 × 50",
            Amount.of(metres(57.695)),
            OrderTerms.builder()
                    .addAllowances(Allowance.cutting(percent(5)))
                    .stock(Stock.lengths(metres(4.8)).withPallets(100))
                    .price(Price.of(new BigDecimal("5.2"), POUND))
                    .build());
    private static final OrderLine LEAD = OrderLine.of(
            "lead",
            Amount.of(kg(60.401432)),
            OrderTerms.builder().price(Price.of(new BigDecimal("3.5"), EURO)).build());
    private static final Order ORDER = Order.ofLines(TILES, HALVES, BATTENS, LEAD);

    @Test
    void prints_three_columns_and_what_is_left() {
        assertThat(ORDER.toText()).isEqualTo("""
                item            net       needed    to buy               left over
                tile            187       196.35    2 packs of 180       163.65
                half tile       11        11.55     12                   0.45
                batten 25 × 50  57.7 m    60.58 m   13 lengths of 4.8 m  1.82 m
                lead            60.41 kg  60.41 kg  60.41 kg             0 kg

                tile: allowances breakage 3 %, cutting 2 %; sold in packs of 180
                half tile: allowances breakage 3 %, cutting 2 %; sold (not said, taken as) singly
                batten 25 × 50: allowances cutting 5 %; sold in lengths of 4.8 m, 100 on a pallet; 1 pallet
                lead: allowances none; sold (not said, taken as) as needed
                mass: 911.801432 kg net, 1675.601432 kg to buy (without batten 25 × 50); for planning, lifting is not assessed
                cost: 211.405012 EUR (without half tile)
                cost: 488.60 GBP (without half tile)
                notice: tile: the last of 2 packs of 180 is opened for 16.35
                Needed is shown rounded up and left over rounded down, to 0.01.
                """);
    }

    @Test
    void prints_markdown() {
        assertThat(Order.ofLines(OrderLine.of("a|b", Amount.pieces(2), OrderTerms.none()))
                        .toMarkdown())
                .isEqualTo("""
                | item | net | needed | to buy | left over |
                | --- | ---: | ---: | ---: | ---: |
                | a\\|b | 2 | 2 | 2 | 0 |

                - a|b: allowances none; sold (not said, taken as) singly
                - Needed is shown rounded up and left over rounded down, to 0.01.
                """);
    }

    @Test
    void becomes_plain_maps() {
        Map<String, Object> tree = Order.ofLines(TILES).toTree();
        assertThat(tree)
                .containsEntry("format", "roof-maths order")
                .containsEntry("version", 1)
                .containsEntry("netMass", "822.8 kg")
                .containsEntry("massToBuy", "1584 kg")
                .containsEntry("itemsWithoutMass", List.of())
                .containsEntry("costs", List.of("421.00 GBP"))
                .containsEntry("itemsWithoutPrice", List.of());
        assertThat(tree).containsEntry("lines", List.of(TILES.toTree()));
        assertThat(TILES.toTree())
                .hasToString("{item=tile, kind=PIECES, net=187, allowances=[breakage 3 %, cutting 2 %], needed=196.35,"
                        + " soldAs=packs of 180, toBuy=360, numberToBuy=2, toBuyInWords=2 packs of 180, left=163.65,"
                        + " netMass=822.8 kg, massToBuy=1584 kg, cost=421.00 GBP}");
        assertThat(Order.ofLines(BATTENS).toTree()).doesNotContainKey("netMass");
    }

    @Test
    void adds_masses_and_costs_by_currency() {
        assertThat(ORDER.netMass()).isEqualTo(kg(911.801432)); // 187 × 4.4 + 11 × 2.6 + 60.401432
        assertThat(ORDER.massToBuy()).isEqualTo(kg(1675.601432)); // 360 × 4.4 + 12 × 2.6 + 60.401432
        assertThat(ORDER.itemsWithoutMass()).containsExactly("batten 25 × 50");
        assertThat(ORDER.costs()).extracting(Price::toString).containsExactly("211.405012 EUR", "488.60 GBP");
        assertThat(ORDER.itemsWithoutPrice()).containsExactly("half tile");
        assertThat(ORDER.line("lead")).isEqualTo(LEAD);
        assertThatThrownBy(() -> ORDER.line("copper"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no \"copper\" in this order; it has: tile, half tile, batten 25 × 50, lead");
        assertThat(ORDER)
                .hasToString(
                        "order of 4 items: tile 2 packs of 180, half tile 12, batten 25 × 50 13 lengths of 4.8 m, lead 60.41 kg");
    }

    @Test
    void shows_the_working_of_its_sums_and_of_each_line() {
        assertThat(ORDER.working().at(Order.TOTAL_MASS).formula().toText())
                .isEqualTo("mass of the order = mass to buy (tile) + mass to buy (half tile) + mass to buy (lead)");
        assertThat(ORDER.working().at(Order.TOTAL_COST.at("GBP")).value()).isEqualByComparingTo("488.60");
        assertThat(ORDER.working().at(OrderLine.NEEDED.at("batten 25 × 50")).value())
                .hasToString("60.57975 m");
        assertThat(ORDER.working().disagreements()).isEmpty();
    }

    @Test
    void refuses_an_item_in_two_lines_and_an_empty_order() {
        assertThatThrownBy(() -> Order.ofLines(TILES, HALVES, TILES))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("items must each stand in one line, but was \"tile\" twice");
        assertThatThrownBy(Order::ofLines)
                .isInstanceOf(ProblemsException.class)
                .hasMessage("order must have at least one line, but was no line");
        assertThat(Order.attemptOfLines(List.of(TILES)).problems())
                .extracting(Problem::message)
                .containsExactly("tile: the last of 2 packs of 180 is opened for 16.35");
    }

    @Test
    void a_second_order_names_only_what_came_short() {
        Map<String, Amount> sound = new LinkedHashMap<>();
        sound.put("tile", Amount.pieces(170));
        sound.put("batten 25 × 50", Amount.of(metres(57.6)));
        Order second = ORDER.secondOrder(sound);

        assertThat(second.toText()).startsWith("""
                item            net     needed   on site  to buy             left over
                tile            187     196.35   170      1 pack of 180      153.65
                batten 25 × 50  57.7 m  60.58 m  57.6 m   1 length of 4.8 m  1.82 m
                """);
        assertThat(second.problems())
                .extracting(Problem::message)
                .contains("tile: a second batch may differ in shade or size");
        assertThat(second.working().disagreements()).isEmpty();
    }

    @Test
    void a_delivery_names_what_was_ordered() {
        Map<String, Amount> wrong = new LinkedHashMap<>();
        wrong.put("copper", Amount.pieces(1));
        wrong.put("tile", Amount.pieces(-1));
        assertThatThrownBy(() -> ORDER.secondOrder(wrong))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("""
                        items of the delivery must stand in the order, but was "copper"
                        tile: amount delivered must be pieces, zero or more, but was pieces (-1)""");
        assertThatThrownBy(() -> ORDER.secondOrder(Map.of()))
                .hasMessage("delivery must name at least one item, but was no item");
    }
}
