package org.roofmaths.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.roofmaths.internal.numerics.LinearProgram;

/**
 * The least stock that any cutting plan can need, by column generation.
 *
 * <p>The linear program lets every pattern be used in parts. Its dual gives each size a worth; the pattern worth most for its stock
 * length is added until none is worth more than its stock. At every stage the demand's worth, scaled down until no pattern exceeds its
 * stock, is a bound that holds whatever was rounded on the way.
 */
final class CuttingBound {
    private static final int MOST_ROUNDS = 400;
    private static final double BETTER = 1e-9;

    private final CuttingModel model;
    private final List<CuttingRows> rows;
    private final Set<CuttingPattern> patterns = new LinkedHashSet<>();

    private long[] demand = new long[0];
    private double bound;
    private double[] worth = new double[0];

    CuttingBound(CuttingModel model, List<CuttingRows> rows) {
        this.model = model;
        this.rows = rows;
    }

    double bound() {
        return bound;
    }

    double[] worth() {
        return worth;
    }

    List<CuttingPattern> patterns() {
        return new ArrayList<>(patterns);
    }

    /** Finds the bound for a demand, keeping the patterns found for earlier ones. */
    void find(long[] pieces) {
        demand = pieces.clone();
        bound = 0;
        int[] most = most();
        addSinglePatterns(most);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double[] dual = dual();
            if (dual.length == 0) {
                return; // no answer: the bound so far stands
            }
            worth = Arrays.copyOf(dual, model.count());
            CuttingKnapsack knapsack = new CuttingKnapsack(model, most, worth);
            double ratio = 1;
            boolean added = false;
            for (int k = 0; k < model.stock.length; k++) {
                ratio = StrictMath.max(ratio, knapsack.fill(k) / model.metres(k));
                if (knapsack.best() > model.metres(k) * (1 + BETTER)) {
                    added |= patterns.add(model.pattern(knapsack.bestCounts()));
                }
            }
            bound = StrictMath.max(bound, value(dual) / ratio);
            if (!added) {
                return;
            }
        }
    }

    /** How many pieces of a size a plan can need at most, whichever way the rows are joined. */
    private int[] most() {
        int[] most = new int[model.count()];
        for (int i = 0; i < most.length; i++) {
            long count = demand[i];
            for (CuttingRows row : rows) {
                int greatest = 0;
                for (int[] way : row.pieces) {
                    greatest = Math.max(greatest, way[i]);
                }
                count += greatest * row.run.count();
            }
            most[i] = (int) Math.min(count, model.capacity(0) / model.sizes[i]);
        }
        return most;
    }

    private void addSinglePatterns(int[] most) {
        for (int i = 0; i < most.length; i++) {
            for (int k = 0; k < model.stock.length; k++) {
                int[] counts = new int[most.length];
                counts[i] = (int) Math.min(most[i], model.capacity(k) / model.sizes[i]);
                if (counts[i] > 0) {
                    patterns.add(model.pattern(counts));
                }
            }
        }
    }

    private double value(double[] dual) {
        double sum = 0;
        for (int i = 0; i < demand.length; i++) {
            sum += demand[i] * dual[i];
        }
        for (int r = 0; r < rows.size(); r++) {
            sum += rows.get(r).run.count() * dual[demand.length + r];
        }
        return sum;
    }

    /** The worth of each size, then of a row of each run. */
    private double[] dual() {
        int pieces = model.count();
        int all = pieces + rows.size();
        double[] objective = new double[all];
        for (int i = 0; i < pieces; i++) {
            objective[i] = demand[i];
        }
        for (int r = 0; r < rows.size(); r++) {
            objective[pieces + r] = rows.get(r).run.count();
        }
        LinearProgram program = new LinearProgram(objective);
        for (CuttingPattern pattern : patterns) {
            double[] coefficients = new double[all];
            for (int i = 0; i < pieces; i++) {
                coefficients[i] = pattern.counts()[i];
            }
            program.addAtMost(coefficients, model.metres(pattern.stock()));
        }
        for (int r = 0; r < rows.size(); r++) {
            for (int[] way : rows.get(r).pieces) {
                double[] coefficients = new double[all];
                for (int i = 0; i < pieces; i++) {
                    coefficients[i] = -way[i];
                }
                coefficients[pieces + r] = 1;
                program.addAtMost(coefficients, 0);
            }
        }
        return program.maximize();
    }

    /** Returns how often each pattern is used, in parts, then how often each way of joining each run; empty if no answer was found. */
    double[] primal() {
        List<CuttingPattern> all = patterns();
        int ways = rows.stream().mapToInt(row -> row.pieces.size()).sum();
        int variables = all.size() + ways;
        double[] objective = new double[variables];
        for (int p = 0; p < all.size(); p++) {
            objective[p] = model.metres(all.get(p).stock());
        }
        LinearProgram program = new LinearProgram(objective);
        for (int i = 0; i < model.count(); i++) {
            double[] coefficients = new double[variables];
            for (int p = 0; p < all.size(); p++) {
                coefficients[p] = all.get(p).counts()[i];
            }
            int at = all.size();
            for (CuttingRows row : rows) {
                for (int[] way : row.pieces) {
                    coefficients[at++] = -way[i];
                }
            }
            program.addAtLeast(coefficients, demand[i]);
        }
        int at = all.size();
        for (CuttingRows row : rows) {
            double[] coefficients = new double[variables];
            for (int way = 0; way < row.pieces.size(); way++) {
                coefficients[at++] = 1;
            }
            program.addAtLeast(coefficients, row.run.count());
        }
        return program.minimize();
    }
}
