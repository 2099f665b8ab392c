package org.roofmaths.order;

import java.util.Arrays;
import java.util.List;

/**
 * A cutting problem as whole numbers of nanometres: sizes of pieces and capacities of stock, both with the saw's kerf.
 *
 * <p>A stock length of S holds pieces of l₁ … lₙ if l₁ + … + lₙ + (n − 1) kerf ≤ S, which is the same as the sum of (l + kerf) ≤ S + kerf.
 */
final class CuttingModel {
    private static final double NANOMETRES = 1e9;

    /** Longest first, all different. */
    final long[] sizes;

    /** Longest first, all different. */
    final long[] stock;

    private final long kerf;
    private final long resolution;

    CuttingModel(long[] lengths, long[] stock, long kerf, long resolution) {
        this.kerf = kerf;
        this.resolution = resolution;
        this.sizes = descending(lengths);
        for (int i = 0; i < sizes.length; i++) {
            sizes[i] += kerf;
        }
        this.stock = descending(stock);
    }

    private static long[] descending(long[] values) {
        long[] rising = Arrays.stream(values).distinct().sorted().toArray();
        long[] falling = new long[rising.length];
        for (int i = 0; i < rising.length; i++) {
            falling[i] = rising[rising.length - 1 - i];
        }
        return falling;
    }

    int count() {
        return sizes.length;
    }

    int indexOf(long length) {
        for (int i = 0; i < sizes.length; i++) {
            if (sizes[i] == length + kerf) {
                return i;
            }
        }
        throw new IllegalArgumentException("no piece of " + length);
    }

    long length(int piece) {
        return sizes[piece] - kerf;
    }

    long capacity(int stockIndex) {
        return stock[stockIndex] + kerf + resolution;
    }

    double metres(int stockIndex) {
        return stock[stockIndex] / NANOMETRES;
    }

    long used(int[] counts) {
        long used = 0;
        for (int i = 0; i < counts.length; i++) {
            used += counts[i] * sizes[i];
        }
        return used;
    }

    /** Returns the pattern of these pieces in the shortest stock that holds them. */
    CuttingPattern pattern(int[] counts) {
        long used = used(counts);
        for (int k = stock.length - 1; k >= 0; k--) {
            if (used <= capacity(k)) {
                return new CuttingPattern(counts.clone(), k);
            }
        }
        throw new IllegalArgumentException("no stock holds " + Arrays.toString(counts));
    }

    /** Returns what is left of the stock after the saw; never below zero. */
    long offcut(CuttingPattern pattern) {
        return Math.max(0, stock[pattern.stock()] - used(pattern.counts()));
    }

    /** Returns the least total of stock lengths that can reach a bound: a multiple of what all stock lengths are multiples of. */
    long roundedUp(double boundMetres) {
        long step = 0;
        for (long length : stock) {
            step = gcd(step, length);
        }
        double steps = boundMetres * NANOMETRES / step;
        // the sum of doubles behind the bound is good to about twelve digits
        return ((long) StrictMath.ceil(steps - 1e-9 * StrictMath.max(1, steps))) * step;
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    long cost(List<CuttingPattern> plan) {
        long total = 0;
        for (CuttingPattern pattern : plan) {
            total += stock[pattern.stock()];
        }
        return total;
    }
}
