package org.roofmaths.order;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Finds the pieces that are worth most in one stock length, given what each size is worth: depth first, most worth for its length first,
 * cut off where even filling the rest at the best rate could not win.
 */
final class CuttingKnapsack {
    /** So many branches are looked at; beyond, the rate bound stands in, which keeps the bound true but weaker. */
    private static final int MOST_BRANCHES = 2_000_000;

    private final CuttingModel model;
    private final int[] most;
    private final double[] worth;
    private final int[] order;
    private int branches;
    private double best;
    private int[] bestCounts;
    private int[] counts;

    /** Starts with how many pieces of each size there can be at most, and what each is worth. */
    CuttingKnapsack(CuttingModel model, int[] most, double[] worth) {
        this.model = model;
        this.most = most;
        this.worth = worth;
        this.order = IntStream.range(0, worth.length)
                .filter(i -> worth[i] > 0 && most[i] > 0)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -worth[i] / model.sizes[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        this.bestCounts = new int[worth.length];
        this.counts = new int[worth.length];
    }

    /** Looks for the best pieces in one stock length and returns an upper bound of what any pieces are worth there. */
    double fill(int stockIndex) {
        branches = 0;
        best = 0;
        bestCounts = new int[worth.length];
        counts = new int[worth.length];
        search(0, model.capacity(stockIndex), 0);
        return branches > MOST_BRANCHES && order.length > 0 ? rate(0) * model.capacity(stockIndex) : best;
    }

    int[] bestCounts() {
        return bestCounts;
    }

    double best() {
        return best;
    }

    private double rate(int position) {
        return worth[order[position]] / model.sizes[order[position]];
    }

    private void search(int position, long room, double value) {
        if (value > best) {
            best = value;
            bestCounts = counts.clone();
        }
        if (position == order.length
                || branches > MOST_BRANCHES
                || value + room * rate(position) <= best * (1 + 1e-12)) {
            return;
        }
        branches++;
        int piece = order[position];
        int fits = (int) Math.min(most[piece], room / model.sizes[piece]);
        for (int n = fits; n >= 0; n--) {
            counts[piece] = n;
            search(position + 1, room - n * model.sizes[piece], value + n * worth[piece]);
        }
        counts[piece] = 0;
    }
}
