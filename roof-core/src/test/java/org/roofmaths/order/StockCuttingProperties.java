package org.roofmaths.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.roofmaths.units.Length;

class StockCuttingProperties {

    private static CuttingDemand demand(List<Integer> pieces, List<Integer> stock, int kerf) {
        return CuttingDemand.builder()
                .kerf(Length.ofMillimetres(kerf))
                .addAllStockLengths(stock.stream().map(Length::ofMillimetres).toList())
                .addAllPieces(IntStream.range(0, pieces.size())
                        .mapToObj(i -> CutPiece.of("piece " + i, Length.ofMillimetres(pieces.get(i)), 1))
                        .toList())
                .build();
    }

    /** The least stock by trying every way of sharing the pieces out: an oracle that shares no code with the plan. */
    private static int leastStock(List<Integer> pieces, List<Integer> stock, int kerf) {
        int all = 1 << pieces.size();
        int[] one = new int[all]; // the shortest stock that holds a set of pieces
        for (int set = 1; set < all; set++) {
            int length = -kerf;
            for (int i = 0; i < pieces.size(); i++) {
                length += (set >> i & 1) * (pieces.get(i) + kerf);
            }
            int needed = length;
            one[set] = stock.stream()
                    .filter(s -> s >= needed)
                    .min(Integer::compare)
                    .orElse(Integer.MAX_VALUE);
        }
        int[] least = new int[all];
        Arrays.fill(least, 1, all, Integer.MAX_VALUE);
        for (int set = 1; set < all; set++) {
            for (int part = set; part > 0; part = (part - 1) & set) {
                if (one[part] < Integer.MAX_VALUE && least[set ^ part] < Integer.MAX_VALUE) {
                    least[set] = Math.min(least[set], one[part] + least[set ^ part]);
                }
            }
        }
        return least[all - 1];
    }

    @Property(tries = 400)
    void a_small_plan_is_the_best_there_is(
            @ForAll @Size(min = 1, max = 9) List<@IntRange(min = 5, max = 100) Integer> pieces,
            @ForAll @Size(min = 1, max = 3) List<@IntRange(min = 100, max = 200) Integer> stock,
            @ForAll @IntRange(max = 7) int kerf) {
        StockCutting plan = StockCutting.of(demand(pieces, stock, kerf));

        assertThat(plan.totalLength()).isEqualTo(Length.ofMillimetres(leastStock(pieces, stock, kerf)));
        assertThat(plan.gap()).isEqualTo(Length.ZERO);
        assertHolds(plan, kerf);
        assertThat(plan.working().disagreements()).isEmpty();
    }

    @Property(tries = 60)
    void a_large_plan_is_within_one_stock_length_of_its_bound(
            @ForAll @Size(min = 12, max = 12) List<@IntRange(min = 200, max = 2400) Integer> lengths,
            @ForAll @Size(min = 12, max = 12) List<@IntRange(min = 1, max = 50) Integer> counts) {
        CuttingDemand demand = CuttingDemand.builder()
                .kerf(Length.ofMillimetres(3))
                .addStockLengths(Length.ofMillimetres(4800))
                .addAllPieces(IntStream.range(0, 12)
                        .mapToObj(i -> CutPiece.of("piece " + i, Length.ofMillimetres(lengths.get(i)), counts.get(i)))
                        .toList())
                .build();
        StockCutting plan = StockCutting.of(demand);

        assertThat(plan.gap()).isBetween(Length.ZERO, Length.ofMillimetres(4800));
        assertHolds(plan, 3);
    }

    @Property(tries = 100)
    void twice_the_pieces_need_no_more_than_twice_the_stock(
            @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 5, max = 100) Integer> pieces,
            @ForAll @IntRange(max = 5) int kerf) {
        List<Integer> twice = Stream.concat(pieces.stream(), pieces.stream()).toList();
        Length once = StockCutting.of(demand(pieces, List.of(120), kerf)).totalLength();
        assertThat(StockCutting.of(demand(twice, List.of(120), kerf)).totalLength())
                .isLessThanOrEqualTo(once.times(2));
    }

    /** Every piece asked for is cut once, and every cut with its saw kerfs fits its stock. */
    private static void assertHolds(StockCutting plan, int kerf) {
        Length asked = plan.demand().pieces().stream()
                .map(piece -> piece.length().times(piece.count()))
                .reduce(Length.ZERO, Length::plus);
        assertThat(plan.pieceLength()).isEqualTo(asked);
        for (CutPiece piece : plan.demand().pieces()) {
            long cut = plan.cuts().stream()
                    .mapToLong(c -> c.times()
                            * c.pieces().stream()
                                    .filter(p -> p.name().equals(piece.name()))
                                    .mapToLong(CutPiece::count)
                                    .sum())
                    .sum();
            assertThat(cut).as(piece.name()).isEqualTo(piece.count());
        }
        for (StockCut cut : plan.cuts()) {
            long pieces = cut.pieces().stream().mapToLong(CutPiece::count).sum();
            Length used = cut.pieces().stream()
                    .map(piece -> piece.length().times(piece.count()))
                    .reduce(Length.ZERO, Length::plus);
            assertThat(used.plus(Length.ofMillimetres(kerf).times(pieces - 1))).isLessThanOrEqualTo(cut.stock());
        }
    }
}
