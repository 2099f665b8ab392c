package org.roofmaths.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Length;
import org.roofmaths.units.Ratio;

class StockCuttingTest {
    private static CuttingDemand quarters(Length kerf) {
        return CuttingDemand.builder()
                .kerf(kerf)
                .addStockLengths(metres(4.8))
                .addPieces(CutPiece.of("trimmer", mm(1200), 8))
                .build();
    }

    @Test
    void a_kerf_can_cost_whole_lengths_where_pieces_divide_exactly() {
        assertThat(StockCutting.of(quarters(mm(0))).toText()).isEqualTo("""
                buy 2 of 4800 mm
                cut 2 × 4800 mm: 4 of 1200 mm (trimmer); offcut 0 mm
                kerf 0 mm, waste 0 mm of 9600 mm; no plan needs less
                """);
        assertThat(StockCutting.of(quarters(mm(3))).toText()).isEqualTo("""
                buy 3 of 4800 mm
                cut 2 × 4800 mm: 3 of 1200 mm (trimmer); offcut 1191 mm
                cut 1 × 4800 mm: 2 of 1200 mm (trimmer); offcut 2394 mm
                kerf 3 mm, waste 4800 mm of 14400 mm; no plan needs less
                """);
    }

    @Test
    void a_last_cut_that_ends_on_the_end_of_the_stock_takes_no_kerf() {
        CuttingDemand demand = CuttingDemand.builder()
                .kerf(mm(4))
                .addStockLengths(metres(2.404))
                .addPieces(CutPiece.of("a", mm(1200), 2))
                .build();
        assertThat(StockCutting.of(demand).stockCount()).isEqualTo(1); // 1200 + 4 + 1200
    }

    @Test
    void takes_the_stock_length_that_leaves_least() {
        CuttingDemand demand = CuttingDemand.builder()
                .kerf(mm(3))
                .addStockLengths(metres(4.8), metres(3.6), metres(4.2))
                .addPieces(CutPiece.of("left", mm(2050), 2), CutPiece.of("right", mm(1750), 2))
                .build();
        StockCutting plan = StockCutting.of(demand);

        // 2050 + 3 + 2050 = 4103 goes into 4200, 1750 + 3 + 1750 = 3503 into 3600; 7600 of pieces need more than 3600 +
        // 3600
        assertThat(plan.totalLength()).isEqualTo(mm(4200 + 3600));
        assertThat(plan.gap()).isEqualTo(mm(0));
        assertThat(plan.waste()).isEqualTo(mm(7800 - 7600));
        assertThat(plan.wasteShare()).isEqualTo(Ratio.of(200.0 / 7800));
        assertThat(plan.stockCounts()).isEqualTo(Map.of(mm(4200), 1L, mm(3600), 1L));
        assertThat(plan.working().disagreements()).isEmpty();
        assertThat(plan.working().at(StockCutting.WASTE).formula().toText())
                .isEqualTo("waste of stock = length of stock bought − length of all pieces");
    }

    @Test
    void pieces_keep_the_names_of_what_they_are_for() {
        CuttingDemand demand = CuttingDemand.builder()
                .kerf(mm(0))
                .addStockLengths(mm(3000))
                .addPieces(
                        CutPiece.of("left", mm(1000), 2),
                        CutPiece.of("right", mm(1000), 1),
                        CutPiece.of("top", mm(3000), 1))
                .build();
        assertThat(StockCutting.of(demand).cuts())
                .extracting(StockCut::toString)
                .containsExactly(
                        "1 × 3000 mm: 1 of 3000 mm (top); offcut 0 mm",
                        "1 × 3000 mm: 2 of 1000 mm (left), 1 of 1000 mm (right); offcut 0 mm");
    }

    // Published instances, with their optima. Sizes without a unit are taken as millimetres.

    /**
     * A raw of 100 and finals of 45, 36, 31 and 14: V. Chvátal, Linear Programming, Freeman 1983, chapter 13 (from memory); the data also in a
     * public example of an optimisation service. The linear program gives 452.25, so 453 is the best.
     */
    @Test
    void finds_the_best_plan_of_a_textbook_example() {
        StockCutting plan = StockCutting.of(CuttingDemand.builder()
                .kerf(mm(0))
                .addStockLengths(mm(100))
                .addPieces(
                        CutPiece.of("a", mm(45), 97),
                        CutPiece.of("b", mm(36), 610),
                        CutPiece.of("c", mm(31), 395),
                        CutPiece.of("d", mm(14), 211))
                .build());
        assertThat(plan.stockCount()).isEqualTo(453);
        assertThat(plan.bound()).isEqualTo(mm(100 * 453));
    }

    /** Thirteen widths from rolls of 5600 mm: the illustration in the free encyclopedia's article on the cutting-stock problem, optimum 73. */
    @Test
    void finds_the_best_plan_of_an_encyclopedia_example() {
        StockCutting plan = StockCutting.of(CuttingDemand.builder()
                .kerf(mm(0))
                .addStockLengths(mm(5600))
                .addAllPieces(
                        pieces(
                                "1380 22 1520 25 1560 12 1710 14 1820 18 1880 18 1930 20 2000 10 2050 12 2100 14 2140 16 2150 18 2200 20"))
                .build());
        assertThat(plan.stockCount()).isEqualTo(73);
        assertThat(plan.pieceLength()).isEqualTo(mm(407_160));
        assertThat(plan.gap()).isEqualTo(mm(0));
    }

    /**
     * Instance u120_00 of E. Falkenauer, A hybrid grouping genetic algorithm for bin packing, Journal of Heuristics 2 (1996), as
     * kept in the OR-Library: 120 pieces of 58 sizes, bins of 150, optimum 48.
     */
    @Test
    void finds_the_best_plan_of_a_library_instance() {
        StockCutting plan = StockCutting.of(CuttingDemand.builder()
                .kerf(mm(0))
                .addStockLengths(mm(150))
                .addAllPieces(
                        pieces(
                                "98 3 96 2 94 1 93 2 92 1 91 2 90 1 87 1 86 1 85 2 84 5 83 2 82 2 81 1 80 3 79 2 78 4 76 1 74 2 73 4"
                                        + " 72 1 71 1 70 3 69 3 67 1 66 1 64 1 62 2 60 2 59 1 58 3 57 4 55 3 50 1 49 3 47 1 46 2 45 2 44 2 43 4"
                                        + " 42 5 41 3 39 2 38 3 37 1 36 3 35 1 33 3 32 2 30 3 29 1 28 1 27 2 26 1 25 2 24 1 23 2 20 1"))
                .build());
        assertThat(plan.demand().pieces()).hasSize(58);
        assertThat(plan.stockCount()).isEqualTo(48);
        assertThat(plan.gap()).isEqualTo(mm(0));
    }

    private static List<CutPiece> pieces(String lengthsAndCounts) {
        String[] numbers = lengthsAndCounts.split(" ", -1);
        return IntStream.range(0, numbers.length / 2)
                .mapToObj(i -> CutPiece.of(
                        "w" + numbers[2 * i], mm(Integer.parseInt(numbers[2 * i])), Long.parseLong(numbers[2 * i + 1])))
                .toList();
    }

    // Rows joined on supports

    @Test
    void rows_are_joined_on_supports_only() {
        JointedRun rows = JointedRun.over("main", mm(5245), mm(23.5), mm(600), mm(1200), 3, 11);
        StockCutting plan = StockCutting.of(CuttingDemand.builder()
                .kerf(mm(3))
                .addStockLengths(metres(4.8))
                .addRuns(rows)
                .build());

        assertThat(plan.rows().stream().mapToLong(JointedRows::times).sum()).isEqualTo(11);
        assertThat(plan.pieceLength()).isEqualTo(mm(11 * 5245));
        assertThat(plan.rows()).allSatisfy(row -> {
            assertThat(rows.supports()).containsAll(row.joints());
            Length from = mm(0);
            for (Length at : row.joints()) {
                assertThat(at.minus(from)).isGreaterThanOrEqualTo(mm(1200)).isLessThanOrEqualTo(mm(4800));
                from = at;
            }
            assertThat(rows.length().minus(from)).isGreaterThanOrEqualTo(mm(1200));
        });
        assertThat(plan.bound()).isGreaterThanOrEqualTo(mm(13 * 4800)); // 57.695 m over 4.8 m is 12.02
        assertThat(plan.gap()).isLessThanOrEqualTo(mm(4800));
        assertThat(plan.working().disagreements()).isEmpty();
    }

    /** The two jobs worked by hand say 14 and 51 lengths if every row is jointed once. */
    @Test
    void one_joint_a_row_costs_the_stock_that_the_hand_calculation_says() {
        CuttingDemand leanTo = CuttingDemand.builder()
                .kerf(mm(3))
                .addStockLengths(metres(4.8))
                .addRuns(JointedRun.over("main", mm(5245), mm(23.5), mm(600), mm(1200), 3, 11))
                .build();
        assertThat(StockCutting.of(leanTo)).hasToString("14 stock lengths, 67200 mm; no plan needs less");

        CuttingDemand garage = CuttingDemand.builder()
                .kerf(mm(3))
                .addStockLengths(metres(4.8))
                .addRuns(JointedRun.over("front", mm(6100), mm(50 + 23.5), mm(400), mm(1200), 3, 17))
                .addRuns(JointedRun.over("back", mm(6100), mm(50 + 23.5), mm(400), mm(1200), 3, 17))
                .build();
        assertThat(StockCutting.of(garage)).hasToString("51 stock lengths, 244800 mm; no plan needs less");
    }

    @Test
    void a_second_joint_can_save_stock_where_that_matters_more() {
        StockCutting plan = StockCutting.of(CuttingDemand.builder()
                .kerf(mm(3))
                .addStockLengths(metres(4.8))
                .addRuns(JointedRun.over("main", mm(5245), mm(23.5), mm(600), mm(1200), 3, 11))
                .joining(Joining.LEAST_STOCK)
                .build());
        assertThat(plan).hasToString("13 stock lengths, 62400 mm; no plan needs less"); // 57.695 m over 4.8 m is 12.02
        assertThat(plan.rows()).anySatisfy(row -> assertThat(row.joints()).hasSize(2));
    }

    @Test
    void a_row_no_longer_than_the_stock_needs_no_joint() {
        StockCutting plan = StockCutting.of(CuttingDemand.builder()
                .kerf(mm(3))
                .addStockLengths(metres(4.8))
                .addRuns(JointedRun.over("front", mm(4800), mm(0), mm(600), mm(1200), 3, 5))
                .build());
        assertThat(plan.toText()).isEqualTo("""
                buy 5 of 4800 mm
                cut 5 × 4800 mm: 1 of 4800 mm (front); offcut 0 mm
                join 5 rows (front) in one piece
                kerf 3 mm, waste 0 mm of 24000 mm; no plan needs less
                """);
    }

    @Test
    void an_offcut_of_one_row_serves_another() {
        // 6 m over supports at 600: four rows of 3 + 3 would need 8 lengths; of 4.8 + 1.2 and 2.4 + 3.6 they need 5
        StockCutting plan = StockCutting.of(CuttingDemand.builder()
                .kerf(mm(0))
                .addStockLengths(metres(4.8))
                .addRuns(JointedRun.over("front", mm(6000), mm(0), mm(600), mm(1200), 3, 4))
                .build());
        assertThat(plan.stockCount()).isEqualTo(5); // 24 m over 4.8 m
        assertThat(plan.gap()).isEqualTo(mm(0));
    }

    // What does not fit, and what is refused

    @Test
    void a_piece_longer_than_any_stock_is_left_out_and_said() {
        StockCutting plan = StockCutting.of(CuttingDemand.builder()
                .kerf(mm(3))
                .addStockLengths(metres(4.8))
                .addPieces(CutPiece.of("ridge board", mm(5245), 1), CutPiece.of("trimmer", mm(600), 1))
                .build());
        assertThat(plan.stockCount()).isEqualTo(1);
        assertThat(plan.problems()).singleElement().hasToString("""
                1 of 5245 mm (ridge board) left out: longer than the longest stock of 4800 mm by 445 mm
                  mend: stock length: 445 mm longer; cut in one piece
                  mend: ridge board: allow joints on supports; cut in two pieces or more""");
    }

    @Test
    void rows_that_cannot_be_joined_are_left_out_and_said() {
        StockCutting plan = StockCutting.of(CuttingDemand.builder()
                .kerf(mm(3))
                .addStockLengths(metres(4.8))
                .addRuns(new JointedRun("main", mm(5245), List.of(mm(100), mm(5000)), mm(1200), 2, 11))
                .build());
        assertThat(plan).hasToString("0 stock lengths, 0 mm; no plan needs less");
        assertThat(plan.working().steps()).isEmpty();
        assertThat(plan.problems()).singleElement().hasToString("""
                11 rows of 5245 mm (main) left out: no joint on a support leaves pieces of at least 1200 mm over at least 2 supports and no longer than 4800 mm
                  mend: stock length: 445 mm longer; rows in one piece
                  mend: least piece: shorter than 1200 mm; more places for a joint""");
    }

    @Test
    void stock_beyond_the_transport_limit_is_left_out() {
        StockCutting plan = StockCutting.of(CuttingDemand.builder()
                .kerf(mm(3))
                .addStockLengths(metres(4.8), metres(3.6))
                .addPieces(CutPiece.of("trimmer", mm(1200), 4))
                .transportLimit(metres(4))
                .build());
        assertThat(plan.stockCounts()).containsOnlyKeys(metres(3.6));
        assertThat(plan.problems())
                .extracting(Problem::message)
                .containsExactly("stock of 4800 mm is left out: it is longer than the transport limit of 4000 mm");

        assertThatThrownBy(() -> StockCutting.of(CuttingDemand.builder()
                        .kerf(mm(3))
                        .addStockLengths(metres(4.8))
                        .addPieces(CutPiece.of("trimmer", mm(1200), 4))
                        .transportLimit(metres(4))
                        .build()))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("""
                        stock of 4800 mm is left out: it is longer than the transport limit of 4000 mm
                        stock lengths must hold one no longer than the transport limit of 4000 mm, but was [4800 mm]""");
    }

    @Test
    void refuses_what_cannot_be_cut_with_every_reason_at_once() {
        assertThatThrownBy(() -> StockCutting.of(CuttingDemand.builder()
                        .kerf(mm(-1))
                        .addStockLengths(mm(0))
                        .addPieces(CutPiece.of("a", mm(0), 0), CutPiece.of("b", mm(10), 100_001))
                        .addRuns(
                                new JointedRun("r", mm(-1), List.of(), mm(0), 0, 1),
                                new JointedRun("r", mm(1000), List.of(mm(500), mm(400)), mm(100), 1, 1))
                        .transportLimit(mm(0))
                        .build()))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("""
                        kerf must be zero or more, but was -1 mm
                        stock length must be above 0 mm, but was 0 mm
                        transport limit must be above 0 mm, but was 0 mm
                        length of a must be above 0 mm, but was 0 mm
                        number of a must be from 1 to 100000, but was 0
                        number of b must be from 1 to 100000, but was 100001
                        length of r must be above 0 mm, but was -1 mm
                        least piece of r must be above 0 mm, but was 0 mm
                        least supports of r must be 1 or more, but was 0
                        supports of r must rise from the left end to no more than -1 mm, but was []
                        rows must each have a name of their own, but was "r" twice
                        supports of r must rise from the left end to no more than 1000 mm, but was [500 mm, 400 mm]""");
        assertThatThrownBy(() ->
                        StockCutting.of(CuttingDemand.builder().kerf(mm(3)).build()))
                .hasMessage("""
                        stock lengths must be given, but was none
                        pieces and rows must be given, but was none""");
    }
}
