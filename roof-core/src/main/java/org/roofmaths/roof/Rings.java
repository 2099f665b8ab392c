package org.roofmaths.roof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Closed rings of straight sides in a plane, with whole-nanometre coordinates. Corners are numbered through; side
 * {@code i} runs from corner {@code i} to the next of its ring. Tests of turn, crossing and inside are exact.
 */
final class Rings {
    private static final double SQUARE_NANOMETRES = 1e18;

    private final long[] x;
    private final long[] y;
    private final int[] next;
    private final int[] ringStart;

    private Rings(long[] x, long[] y, int[] sizes) {
        this.x = x;
        this.y = y;
        this.next = new int[x.length];
        this.ringStart = new int[sizes.length];
        int start = 0;
        for (int ring = 0; ring < sizes.length; ring++) {
            ringStart[ring] = start;
            for (int i = 0; i < sizes[ring]; i++) {
                next[start + i] = start + (i + 1) % sizes[ring];
            }
            start += sizes[ring];
        }
    }

    static Rings ofPlan(List<List<PlanPoint>> rings) {
        return new Rings(
                rings.stream()
                        .flatMap(List::stream)
                        .mapToLong(p -> p.x().toNanometres())
                        .toArray(),
                rings.stream()
                        .flatMap(List::stream)
                        .mapToLong(p -> p.y().toNanometres())
                        .toArray(),
                rings.stream().mapToInt(List::size).toArray());
    }

    static Rings ofFace(List<FacePoint> corners) {
        return new Rings(
                corners.stream().mapToLong(p -> p.along().toNanometres()).toArray(),
                corners.stream().mapToLong(p -> p.up().toNanometres()).toArray(),
                new int[] {corners.size()});
    }

    int next(int corner) {
        return next[corner];
    }

    private int ringEnd(int ring) {
        return ring + 1 == ringStart.length ? x.length : ringStart[ring + 1];
    }

    /** The area of a ring in square metres; above zero if it runs against the clock. */
    double areaInSquareMetres(int ring) {
        // about its first corner, so that a ring far from the origin loses nothing
        int o = ringStart[ring];
        double twice = 0;
        for (int i = o + 1; i + 1 < ringEnd(ring); i++) {
            twice += (double) (x[i] - x[o]) * (y[i + 1] - y[o]) - (double) (y[i] - y[o]) * (x[i + 1] - x[o]);
        }
        return twice / 2 / SQUARE_NANOMETRES;
    }

    /** The sign of the turn from a by b to c: 1 left, -1 right, 0 straight on or straight back. */
    private int turn(int a, int b, int c) {
        return sign(x[b] - x[a], y[c] - y[a], y[b] - y[a], x[c] - x[a]);
    }

    /** The sign of p × q − r × s, by 128-bit products. */
    private static int sign(long p, long q, long r, long s) {
        long high = Math.multiplyHigh(p, q);
        long otherHigh = Math.multiplyHigh(r, s);
        return high == otherHigh ? Long.compareUnsigned(p * q, r * s) : Long.compare(high, otherHigh);
    }

    /** Whether corner p, which lies in line with corners a and b, lies between them or on one of them. */
    private boolean isBetween(int a, int b, int p) {
        return Math.min(x[a], x[b]) <= x[p]
                && x[p] <= Math.max(x[a], x[b])
                && Math.min(y[a], y[b]) <= y[p]
                && y[p] <= Math.max(y[a], y[b]);
    }

    /** The corners that are the same point as the corner before them. */
    List<Integer> repeatedCorners() {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            if (x[i] == x[next[i]] && y[i] == y[next[i]]) {
                found.add(next[i]);
            }
        }
        return found;
    }

    /** The corners at which a ring turns straight back along the side before; no corner may be a repeated one. */
    List<Integer> spikes() {
        List<Integer> found = new ArrayList<>();
        for (int before = 0; before < x.length; before++) {
            int corner = next[before];
            int after = next[corner];
            if (turn(before, corner, after) == 0 && !isBetween(before, after, corner)) {
                found.add(corner);
            }
        }
        return found;
    }

    /**
     * The pairs of sides that cross or touch elsewhere than neighbours do at their shared corner, lower number first,
     * in order.
     */
    List<int[]> crossings() {
        Integer[] byLeft = new Integer[x.length];
        Arrays.setAll(byLeft, i -> i);
        Arrays.sort(byLeft, Comparator.comparingLong(i -> Math.min(x[i], x[next[i]])));
        List<int[]> found = new ArrayList<>();
        List<Integer> open = new ArrayList<>();
        for (int side : byLeft) {
            long left = Math.min(x[side], x[next[side]]);
            open.removeIf(other -> Math.max(x[other], x[next[other]]) < left);
            for (int other : open) {
                if (meet(side, other)) {
                    found.add(new int[] {Math.min(side, other), Math.max(side, other)});
                }
            }
            open.add(side);
        }
        found.sort(Comparator.<int[]>comparingInt(pair -> pair[0]).thenComparingInt(pair -> pair[1]));
        return found;
    }

    private boolean meet(int a, int c) {
        int b = next[a];
        int d = next[c];
        if (b == c || d == a) {
            return false; // neighbours; spikes are found apart
        }
        int abc = turn(a, b, c);
        int abd = turn(a, b, d);
        int cda = turn(c, d, a);
        int cdb = turn(c, d, b);
        return (abc * abd < 0 && cda * cdb < 0)
                || (abc == 0 && isBetween(a, b, c))
                || (abd == 0 && isBetween(a, b, d))
                || (cda == 0 && isBetween(c, d, a))
                || (cdb == 0 && isBetween(c, d, b));
    }

    /** Whether a point lies inside a ring; a point on the ring itself counts as either. */
    boolean isInside(int ring, PlanPoint point) {
        long px = point.x().toNanometres();
        long py = point.y().toNanometres();
        boolean inside = false;
        for (int i = ringStart[ring]; i < ringEnd(ring); i++) {
            int j = next[i];
            if (y[i] > py != y[j] > py) {
                int side = sign(x[j] - x[i], py - y[i], y[j] - y[i], px - x[i]);
                inside ^= y[j] > y[i] ? side > 0 : side < 0;
            }
        }
        return inside;
    }
}
