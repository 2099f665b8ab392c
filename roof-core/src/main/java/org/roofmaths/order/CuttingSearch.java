package org.roofmaths.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A whole-number cutting plan for fixed pieces: greedy first, then by rounding the linear program down and solving again for the rest,
 * and for small demands by looking at every plan.
 *
 * <p>Looking at every plan: the longest piece left must lie in some stock length, and that one may be taken to be full (moving a piece into it
 * from another never costs more). So only full patterns with the longest piece left are tried, fullest first. A state seen before
 * at no greater cost is not looked at again. The number of steps is limited, not the time: the same input gives the same plan everywhere.
 */
final class CuttingSearch {
    private static final int MOST_STEPS = 200_000;
    private static final int MOST_PIECES_TO_SEARCH = 60;

    private final CuttingModel model;
    private final long[] demand;
    private final long least;

    private List<CuttingPattern> best;
    private long bestCost;
    private boolean complete;

    private int steps;
    private final Map<List<Integer>, Long> seen = new HashMap<>();

    private CuttingSearch(CuttingModel model, long[] demand, long least) {
        this.model = model;
        this.demand = demand;
        this.least = least;
        best = greedy(demand);
        bestCost = model.cost(best);
    }

    /** Finds a plan; stops as soon as one costs no more than the bound. */
    static CuttingSearch find(CuttingModel model, long[] demand, CuttingBound bound, long least) {
        CuttingSearch search = new CuttingSearch(model, demand, least);
        if (search.bestCost > least) {
            search.dive(bound);
        }
        if (search.bestCost > least && Arrays.stream(demand).sum() <= MOST_PIECES_TO_SEARCH) {
            search.lookAtAll();
        }
        return search;
    }

    static long greedyCost(CuttingModel model, long[] demand) {
        return model.cost(greedy(model, demand));
    }

    List<CuttingPattern> plan() {
        return best;
    }

    long cost() {
        return bestCost;
    }

    /** Tells whether every plan was looked at, so that none costs less. */
    boolean isComplete() {
        return complete;
    }

    private void offer(List<CuttingPattern> plan) {
        long cost = model.cost(plan);
        if (cost < bestCost) {
            bestCost = cost;
            best = new ArrayList<>(plan);
        }
    }

    private List<CuttingPattern> greedy(long[] pieces) {
        return greedy(model, pieces);
    }

    /** Fills the longest stock with the longest pieces that fit, then takes the shortest stock that holds them. */
    private static List<CuttingPattern> greedy(CuttingModel model, long[] pieces) {
        long[] left = pieces.clone();
        List<CuttingPattern> plan = new ArrayList<>();
        while (Arrays.stream(left).anyMatch(n -> n > 0)) {
            int[] counts = new int[left.length];
            long room = model.capacity(0);
            for (int i = 0; i < left.length; i++) {
                int fits = (int) Math.min(left[i], room / model.sizes[i]);
                counts[i] = fits;
                left[i] -= fits;
                room -= fits * model.sizes[i];
            }
            plan.add(model.pattern(counts));
        }
        return plan;
    }

    /** Takes the whole parts of the linear program, or else its largest part as one, and solves again for what is left. */
    private void dive(CuttingBound bound) {
        long[] left = demand.clone();
        List<CuttingPattern> plan = new ArrayList<>();
        while (Arrays.stream(left).anyMatch(n -> n > 0)) {
            double[] parts = bound.primal();
            if (parts.length == 0 || !take(bound.patterns(), parts, left, plan)) {
                break;
            }
            List<CuttingPattern> finished = new ArrayList<>(plan);
            finished.addAll(greedy(left));
            offer(finished);
            if (bestCost <= least) {
                return;
            }
            bound.find(left);
        }
    }

    private boolean take(List<CuttingPattern> patterns, double[] parts, long[] left, List<CuttingPattern> plan) {
        boolean taken = false;
        int largest = -1;
        for (int p = 0; p < patterns.size(); p++) {
            long whole = (long) StrictMath.floor(parts[p] + 1e-6);
            for (; whole > 0 && fits(patterns.get(p), left); whole--) {
                use(patterns.get(p).counts(), left, plan);
                taken = true;
            }
            if (parts[p] > 1e-6 && (largest < 0 || parts[p] > parts[largest])) {
                largest = p;
            }
        }
        if (!taken && largest >= 0) {
            int[] counts = patterns.get(largest).counts().clone();
            for (int i = 0; i < counts.length; i++) {
                counts[i] = (int) Math.min(counts[i], left[i]);
            }
            fillUp(counts, left, patterns.get(largest).stock());
            if (Arrays.stream(counts).anyMatch(n -> n > 0)) {
                use(counts, left, plan);
                taken = true;
            }
        }
        return taken;
    }

    private static boolean fits(CuttingPattern pattern, long[] left) {
        for (int i = 0; i < left.length; i++) {
            if (pattern.counts()[i] > left[i]) {
                return false;
            }
        }
        return true;
    }

    private void fillUp(int[] counts, long[] left, int stock) {
        long room = model.capacity(stock) - model.used(counts);
        for (int i = 0; i < counts.length; i++) {
            int more = (int) Math.min(left[i] - counts[i], room / model.sizes[i]);
            counts[i] += more;
            room -= more * model.sizes[i];
        }
    }

    private void use(int[] counts, long[] left, List<CuttingPattern> plan) {
        plan.add(model.pattern(counts));
        for (int i = 0; i < left.length; i++) {
            left[i] -= counts[i];
        }
    }

    private void lookAtAll() {
        int[] left = Arrays.stream(demand).mapToInt(n -> (int) n).toArray();
        look(left, 0, new ArrayList<>());
        complete = steps <= MOST_STEPS;
    }

    private void look(int[] left, long cost, List<CuttingPattern> plan) {
        int longest = first(left);
        if (longest < 0) {
            offer(plan);
            return;
        }
        if (++steps > MOST_STEPS || bestCost <= least || cost + atLeast(left) >= bestCost) {
            return;
        }
        List<Integer> state = Arrays.stream(left).boxed().toList();
        Long before = seen.get(state);
        if (before != null && before <= cost) {
            return;
        }
        seen.put(state, cost);
        for (CuttingPattern pattern : fullPatterns(left, longest)) {
            for (int i = 0; i < left.length; i++) {
                left[i] -= pattern.counts()[i];
            }
            plan.add(pattern);
            look(left, cost + model.stock[pattern.stock()], plan);
            plan.remove(plan.size() - 1);
            for (int i = 0; i < left.length; i++) {
                left[i] += pattern.counts()[i];
            }
        }
    }

    private static int first(int[] left) {
        for (int i = 0; i < left.length; i++) {
            if (left[i] > 0) {
                return i;
            }
        }
        return -1;
    }

    /** The least that the pieces left can cost: their length at the best rate of any stock, rounded up to what stock adds up to. */
    private long atLeast(int[] left) {
        double rate = Double.POSITIVE_INFINITY;
        for (int k = 0; k < model.stock.length; k++) {
            rate = StrictMath.min(rate, model.metres(k) / model.capacity(k));
        }
        return model.roundedUp(model.used(left) * rate);
    }

    private List<CuttingPattern> fullPatterns(int[] left, int longest) {
        Set<CuttingPattern> found = new HashSet<>();
        for (int k = 0; k < model.stock.length; k++) {
            if (model.sizes[longest] <= model.capacity(k)) {
                int[] counts = new int[left.length];
                counts[longest] = 1;
                fill(left, counts, longest, model.capacity(k) - model.sizes[longest], found);
            }
        }
        List<CuttingPattern> patterns = new ArrayList<>(found);
        // least waste first; then by content, so that the order is the same on every machine
        patterns.sort(Comparator.<CuttingPattern>comparingLong(
                        pattern -> model.capacity(pattern.stock()) - model.used(pattern.counts()))
                .thenComparing(CuttingPattern::counts, (a, b) -> -Arrays.compare(a, b)));
        return patterns;
    }

    private void fill(int[] left, int[] counts, int from, long room, Set<CuttingPattern> found) {
        if (++steps > MOST_STEPS) {
            return;
        }
        boolean full = true;
        for (int i = 0; i < left.length; i++) {
            if (counts[i] < left[i] && model.sizes[i] <= room) {
                full = false;
                if (i >= from) {
                    counts[i]++;
                    fill(left, counts, i, room - model.sizes[i], found);
                    counts[i]--;
                }
            }
        }
        if (full) {
            found.add(model.pattern(counts));
        }
    }
}
