package org.roofmaths.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.roofmaths.units.Quantities.kg;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.percent;
import static org.roofmaths.units.Quantities.squareMetres;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.problem.Severity;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Worked;

class OrderLineTest {
    private static final Currency POUND = Currency.getInstance("GBP");
    private static final OrderTerms TILES = OrderTerms.builder()
            .addAllowances(Allowance.breakage(percent(3)), Allowance.cutting(percent(2)))
            .stock(Stock.packs(180))
            .build();

    @Test
    void allowances_are_added_once_and_the_sum_is_rounded_up_once() {
        OrderLine line = OrderLine.of("tile", Amount.pieces(187), TILES);

        assertThat(line.needed().toBigDecimal())
                .isEqualByComparingTo("196.35"); // 187 × (1 + 0.03 + 0.02), not × 1.03 × 1.02
        assertThat(line.numberToBuy()).hasValue(2); // 196.35 / 180 = 1.09
        assertThat(line.toBuy()).isEqualTo(Amount.pieces(2 * 180));
        assertThat(line.left().toBigDecimal()).isEqualByComparingTo("163.65"); // 360 − 196.35
        assertThat(line).hasToString("tile: net 187, needed 196.35, to buy 2 packs of 180, left 163.65");
    }

    @ParameterizedTest
    @CsvSource({"2160,12", "2161,13", "180,1", "1,1", "0,0"})
    void exact_multiples_of_a_pack_never_gain_one(long net, long packs) {
        OrderTerms terms = OrderTerms.builder().stock(Stock.packs(180)).build();
        assertThat(OrderLine.of("tile", Amount.pieces(net), terms).numberToBuy())
                .hasValue(packs);
    }

    @ParameterizedTest
    @CsvSource({"12.0000001,12", "12.00000011,13", "12,12", "11.9999999,12"})
    void a_count_that_is_over_by_the_last_digit_of_a_sum_is_that_count(double kilograms, long bags) {
        OrderTerms terms = OrderTerms.builder().stock(Stock.bags(kg(1))).build();
        assertThat(OrderLine.of("mortar", Amount.of(kg(kilograms)), terms).numberToBuy())
                .hasValue(bags);
    }

    @Test
    void a_sum_of_tenths_does_not_buy_a_bag_too_many() {
        // 0.1 + 0.2 is 0.30000000000000004 in binary
        OrderTerms terms = OrderTerms.builder().stock(Stock.bags(kg(0.3))).build();
        assertThat(OrderLine.of("mortar", Amount.of(kg(0.1 + 0.2)), terms).numberToBuy())
                .hasValue(1);
    }

    @Test
    void lengths_are_bought_by_stock_length() {
        OrderTerms terms = OrderTerms.builder()
                .addAllowances(Allowance.cutting(percent(5)))
                .stock(Stock.lengths(metres(4.8)))
                .build();
        OrderLine line = OrderLine.of("batten", Amount.of(metres(57.695)), terms);

        assertThat(line.needed()).hasToString("60.57975 m"); // 57.695 × 1.05
        assertThat(line.toBuyInWords()).isEqualTo("13 lengths of 4.8 m");
        assertThat(line.toBuy()).hasToString("62.4 m"); // 13 × 4.8
        assertThat(line.left()).hasToString("1.82025 m");
    }

    @Test
    void part_packs_are_bought_to_the_piece() {
        OrderTerms terms = OrderTerms.builder()
                .addAllowances(Allowance.breakage(percent(5)))
                .stock(Stock.packs(180).withPartPacks())
                .build();
        OrderLine line = OrderLine.of("tile", Amount.pieces(187), terms);

        assertThat(line.toBuy()).isEqualTo(Amount.pieces(197)); // up from 196.35
        assertThat(line.toBuyInWords()).isEqualTo("1 pack of 180 and 17 pieces");
        assertThat(line.left()).hasToString("0.65");
        assertThat(OrderLine.of("tile", Amount.pieces(7), terms).toBuyInWords()).isEqualTo("8 pieces");
        assertThat(OrderLine.of(
                                "tile",
                                Amount.pieces(1),
                                OrderTerms.builder()
                                        .from(terms)
                                        .allowances(List.of())
                                        .build())
                        .toBuyInWords())
                .isEqualTo("1 piece");
        assertThat(OrderLine.of(
                                "tile",
                                Amount.pieces(360),
                                OrderTerms.builder()
                                        .stock(Stock.packs(180).withPartPacks())
                                        .build())
                        .toBuyInWords())
                .isEqualTo("2 packs of 180");
    }

    @Test
    void a_minimum_is_bought_if_less_would_do_but_not_for_nothing() {
        OrderTerms terms = OrderTerms.builder()
                .stock(Stock.lengths(metres(4.8)).withMinimum(10))
                .build();
        OrderLine few = OrderLine.of("batten", Amount.of(metres(20)), terms);

        assertThat(few.numberToBuy()).hasValue(10);
        assertThat(few.left()).hasToString("28 m"); // 48 − 20
        assertThat(few.working().at(OrderLine.NUMBER_TO_BUY).notes()).containsExactly("5 would be enough");
        assertThat(OrderLine.of("batten", Amount.of(metres(0)), terms).numberToBuy())
                .hasValue(0);
        assertThat(OrderLine.of("batten", Amount.of(metres(100)), terms).numberToBuy())
                .hasValue(21);
    }

    @Test
    void pallets_are_counted_with_the_part_one() {
        OrderTerms terms =
                OrderTerms.builder().stock(Stock.packs(6).withPallets(30)).build();
        OrderLine line = OrderLine.of("tile", Amount.pieces(187), terms);

        assertThat(line.numberToBuy()).hasValue(32); // 187 / 6 = 31.2
        assertThat(line.pallets()).hasValue(2); // 32 / 30
        assertThat(OrderLine.of("tile", Amount.pieces(180), terms).pallets()).hasValue(1);
    }

    @Test
    void without_stock_pieces_are_bought_singly_and_the_rest_as_needed() {
        assertThat(OrderLine.of("vent", Amount.pieces(9), OrderTerms.none()).toBuyInWords())
                .isEqualTo("9");
        OrderLine lead = OrderLine.of("lead", Amount.of(kg(60.401432)), OrderTerms.none());

        assertThat(lead.toBuy()).isEqualTo(lead.net());
        assertThat(lead.toBuyInWords()).isEqualTo("60.41 kg");
        assertThat(lead.numberToBuy()).isEmpty();
        assertThat(lead.left()).hasToString("0 kg");
        assertThat(lead.massToBuy()).hasValue(kg(60.401432));
    }

    @Test
    void an_extra_amount_is_added_as_it_is() {
        OrderTerms terms = OrderTerms.builder()
                .addAllowances(Allowance.breakage(percent(3)), Allowance.cutting(Amount.pieces(6)))
                .build();
        OrderLine line = OrderLine.of("slate", Amount.pieces(810), terms);

        assertThat(line.needed().toBigDecimal()).isEqualByComparingTo("840.3"); // 810 × 1.03 + 6
        assertThat(line.numberToBuy()).hasValue(841);
        assertThat(line.allowancesInWords()).isEqualTo("breakage 3 %, cutting 6");
    }

    @Test
    void packs_can_cover_an_area() {
        OrderTerms terms =
                OrderTerms.builder().stock(Stock.packs(squareMetres(2.5))).build();
        assertThat(OrderLine.of("board", Amount.of(squareMetres(12.5)), terms).toBuyInWords())
                .isEqualTo("5 packs of 2.5 m²");
    }

    @Test
    void weighs_what_is_laid_and_what_is_bought() {
        OrderTerms terms = OrderTerms.builder().from(TILES).massOfOne(kg(4.4)).build();
        OrderLine line = OrderLine.of("tile", Amount.pieces(187), terms);

        assertThat(line.netMass()).hasValue(kg(822.8)); // 187 × 4.4
        assertThat(line.massToBuy()).hasValue(kg(1584)); // 360 × 4.4
    }

    @Test
    void prices_are_exact_and_belong_to_what_is_sold() {
        OrderLine nails = OrderLine.of(
                "nail",
                Amount.pieces(198),
                OrderTerms.builder()
                        .price(Price.of(new BigDecimal("0.0125"), POUND))
                        .build());
        assertThat(nails.cost().orElseThrow()).hasToString("2.475 GBP");

        OrderLine packs = OrderLine.of(
                "tile",
                Amount.pieces(187),
                OrderTerms.builder()
                        .from(TILES)
                        .price(Price.of(new BigDecimal("210.50"), POUND))
                        .build());
        assertThat(packs.cost().orElseThrow()).hasToString("421.00 GBP"); // 2 × 210.50

        OrderLine lead = OrderLine.of(
                "lead",
                Amount.of(kg(60.5)),
                OrderTerms.builder().price(Price.of(new BigDecimal("3"), POUND)).build());
        assertThat(lead.cost().orElseThrow()).hasToString("181.50 GBP"); // 60.5 × 3
        assertThat(Price.of(new BigDecimal("1200"), Currency.getInstance("JPY")))
                .hasToString("1200 JPY");
    }

    @Test
    void says_when_most_of_a_pack_is_left() {
        assertThat(OrderLine.of("tile", Amount.pieces(187), TILES).problems())
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.severity()).isEqualTo(Severity.NOTICE);
                    assertThat(problem).hasToString("""
                            tile: the last of 2 packs of 180 is opened for 16.35
                              mend: tile: ask for a part pack; 16.35 instead of 180""");
                });
        assertThat(OrderLine.of("tile", Amount.pieces(300), TILES).problems()).isEmpty();
    }

    @Test
    void shows_its_working() {
        OrderLine line = OrderLine.of(
                "tile",
                Amount.pieces(187),
                OrderTerms.builder().from(TILES).massOfOne(kg(4.4)).build());

        assertThat(line.working().at(OrderLine.NEEDED).working().toText()).isEqualTo("""
                amount needed = net amount × (1 + allowance (breakage) + allowance (cutting))
                  net amount = 187  (given)
                  allowance (breakage) = 0.03  (given)
                  allowance (cutting) = 0.02  (given)
                = 196.35
                """);
        assertThat(line.working().at(OrderLine.LEFT).formula().toText())
                .isEqualTo("amount left over = amount to buy − amount needed");
        assertThat(line.working().disagreements()).isEmpty();
    }

    @Test
    void keeps_the_trail_of_a_net_amount_from_two_faces() {
        Map<String, Worked<Amount>> parts = new LinkedHashMap<>();
        parts.put("front", Amount.ofCount(Figure.given(405)));
        parts.put("back", Amount.ofCount(Figure.given(404L)));
        OrderLine line = OrderLine.of("slate", Amount.sum(parts), OrderTerms.none());

        assertThat(line.net()).isEqualTo(Amount.pieces(405 + 404));
        assertThat(line.working().at(Amount.SUM).formula().toText())
                .isEqualTo("sum of the amounts = part of the amount (front) + part of the amount (back)");
        assertThat(line.working().inputs())
                .extracting(input -> input.figure().toString())
                .contains("405 (given)", "404 (given)");
        assertThat(line.working().disagreements()).isEmpty();
    }

    @Test
    void takes_over_figures_of_each_kind() {
        assertThat(Amount.ofLength(Figure.given(metres(3))).value()).isEqualTo(Amount.of(metres(3)));
        assertThat(Amount.ofArea(Figure.given(squareMetres(3))).value()).isEqualTo(Amount.of(squareMetres(3)));
        assertThat(Amount.ofMass(Figure.given(kg(3))).value()).isEqualTo(Amount.of(kg(3)));
        assertThatThrownBy(() -> Amount.ofCount(Figure.given(2.5)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("count must be a whole number, but was 2.5");
    }

    @Test
    void a_second_order_covers_what_is_missing_and_allows_nothing_twice() {
        OrderLine second = OrderLine.of("tile", Amount.pieces(187), TILES).afterDelivery(Amount.pieces(180));

        assertThat(second.toBuyInWords()).isEqualTo("1 pack of 180");
        assertThat(second.left()).hasToString("163.65"); // 180 + 180 − 196.35
        assertThat(second.working().disagreements()).isEmpty();
        assertThat(second)
                .hasToString("tile: net 187, needed 196.35, delivered 180, to buy 1 pack of 180, left 163.65");
        assertThat(OrderLine.of("tile", Amount.pieces(187), TILES)
                        .afterDelivery(Amount.pieces(197))
                        .toBuy())
                .isEqualTo(Amount.pieces(0));
    }

    @Test
    void refuses_terms_with_every_reason_at_once() {
        assertThatThrownBy(() -> OrderTerms.builder()
                        .addAllowances(
                                Allowance.breakage(percent(200)),
                                Allowance.cutting(percent(-1)),
                                Allowance.cutting(Amount.pieces(-2)))
                        .stock(Stock.packs(0).withMinimum(0).withPallets(-1))
                        .price(Price.of(new BigDecimal("-1.5"), POUND))
                        .massOfOne(kg(-4.4))
                        .build())
                .isInstanceOf(ProblemsException.class)
                .hasMessage("""
                        allowance for breakage must be a share of the net amount from 0 % to 100 %, but was 200 %
                        allowance for cutting must be a share of the net amount from 0 % to 100 %, but was -1 %
                        allowance for cutting must be zero or more, but was -2
                        allowances must name each cause once, but was cutting twice
                        pack size must be at least 1 piece, but was 0 pieces
                        least number sold must be at least 1, but was 0
                        number on a pallet must be at least 1, but was -1
                        price must be zero or more, but was -1.50 GBP
                        mass of one must be zero or more, but was -4.4 kg""");
    }

    @Test
    void refuses_a_share_that_was_meant_as_a_percentage() {
        assertThatThrownBy(() -> OrderTerms.builder()
                        .addAllowances(Allowance.breakage(Ratio.of(5)))
                        .build())
                .isInstanceOf(ProblemsException.class)
                .hasMessage("allowance for breakage must be a share of the net amount from 0 % to 100 %, but was 500 %")
                .satisfies(e -> assertThat(
                                ((ProblemsException) e).problems().get(0).code().remedy())
                        .isEqualTo(
                                "Give the share as a percentage, such as percent(5); an extra beyond the net amount is given as"
                                        + " an amount."));
        assertThat(OrderTerms.builder()
                        .addAllowances(Allowance.reserve(percent(100)))
                        .build()
                        .allowances())
                .hasSize(1);
        assertThatThrownBy(() -> Ratio.of(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void refuses_stock_that_holds_nothing() {
        assertThat(problems(Stock.rolls(metres(0)))).containsExactly("roll size must be above 0 m, but was 0 m");
        assertThat(problems(Stock.lengths(metres(-4.8))))
                .containsExactly("stock length must be above 0 m, but was -4.8 m");
        assertThat(problems(Stock.bags(kg(0)))).containsExactly("bag size must be above 0 kg, but was 0 kg");
        assertThat(problems(Stock.rolls(metres(50)).withPartPacks()))
                .containsExactly("stock in part packs must be packs of pieces, but was rolls of 50 m, part packs sold");
    }

    private static List<String> problems(Stock stock) {
        try {
            OrderTerms.builder().stock(stock).build();
            return List.of();
        } catch (ProblemsException e) {
            return e.problems().stream().map(Problem::message).toList();
        }
    }

    @Test
    void refuses_a_line_with_every_reason_at_once() {
        OrderTerms terms = OrderTerms.builder()
                .addAllowances(Allowance.cutting(Amount.of(metres(2))))
                .stock(Stock.rolls(metres(50)))
                .build();
        assertThatThrownBy(() -> OrderLine.of(" ", Amount.pieces(-1), terms))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("""
                        item must have a name, but was " "
                        net amount must be from 0 to 1000000000, but was -1
                        net amount must be a length, since it is sold in rolls of 50 m, but was pieces (-1)
                        allowance for cutting must be pieces, as the net amount is, but was a length (2 m)""");
        assertThat(OrderLine.attempt(
                                "lead",
                                Figure.given(Amount.of(kg(2))),
                                OrderTerms.builder().massOfOne(kg(1)).build())
                        .problems())
                .extracting(Problem::message)
                .containsExactly("mass of one must be left out for an amount that is a mass, but was 1 kg");
        assertThatThrownBy(() -> OrderLine.of("tile", Amount.pieces(187), TILES).afterDelivery(Amount.of(metres(-3))))
                .hasMessage("amount delivered must be pieces, zero or more, but was a length (-3 m)");
    }

    @Test
    void hints_are_shown_and_never_used_by_themselves() {
        assertThat(AllowanceHint.SLATES)
                .hasToString("slates on plain slopes, cutting and breakage together: 5 % to 10 % (common practice)");
        assertThat(AllowanceHint.BATTENS).hasToString("battens: 5 % (common practice)");
        assertThat(AllowanceHint.FIRST_ROOF.most().value()).isEqualTo(percent(15));
        OrderTerms terms = OrderTerms.builder()
                .addAllowances(Allowance.of(Cause.CUTTING, AllowanceHint.BATTENS.least()))
                .build();
        assertThat(OrderLine.of("batten", Amount.of(metres(100)), terms).allowancesInWords())
                .isEqualTo(
                        "cutting 5 % (assumed: common practice for battens; to change it, give an allowance of your own)");
        assertThat(OrderLine.of("batten", Amount.of(metres(100)), OrderTerms.none())
                        .needed())
                .isEqualTo(Amount.of(metres(100)));
    }

    @Test
    void amounts_of_two_kinds_do_not_add() {
        assertThatThrownBy(() -> Amount.pieces(1).plus(Amount.of(metres(1))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("amounts must be of one kind, but were 1 and 1 m");
        assertThatThrownBy(() -> Amount.pieces(1).toLength())
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("an amount of 1 is not a length");
        assertThat(Amount.pieces(1)).isLessThan(Amount.of(metres(1)));
        assertThat(Amount.of(metres(4.8)).toLength()).isEqualTo(metres(4.8));
        assertThat(Amount.of(squareMetres(4.8)).toArea()).isEqualTo(squareMetres(4.8));
        assertThat(Amount.of(kg(4.8)).toMass()).isEqualTo(kg(4.8));
    }
}
