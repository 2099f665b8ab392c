package org.roofmaths.roof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * A closed ring of straight sides in a plane, with whole-nanometre coordinates; side {@code i} runs from corner {@code i} to the next.
 * Tests of side and crossing are exact.
 */
final class Ring {
    private final long[] x;
    private final long[] y;

    Ring(long[] x, long[] y) {
        this.x = x;
        this.y = y;
    }

    static Ring ofPlan(List<PlanPoint> corners) {
        return new Ring(
                corners.stream().mapToLong(p -> p.x().toNanometres()).toArray(),
                corners.stream().mapToLong(p -> p.y().toNanometres()).toArray());
    }

    static Ring ofFace(List<FacePoint> corners) {
        return new Ring(
                corners.stream().mapToLong(p -> p.along().toNanometres()).toArray(),
                corners.stream().mapToLong(p -> p.up().toNanometres()).toArray());
    }

    int size() {
        return x.length;
    }

    private int next(int i) {
        return i + 1 == x.length ? 0 : i + 1;
    }

    /** Twice the area in square metres; above zero if the ring runs against the clock. */
    double twiceAreaSquareMetres() {
        // about the first corner, so that a ring far from the origin loses nothing
        double sum = 0;
        for (int i = 1; i + 1 < x.length; i++) {
            sum += (x[i] - x[0]) * 1e-9 * ((y[i + 1] - y[0]) * 1e-9) - (y[i] - y[0]) * 1e-9 * ((x[i + 1] - x[0]) * 1e-9);
        }
        return sum;
    }

    /** The sign of the turn at b on the way from a to c: 1 left, -1 right, 0 straight on or straight back; exact. */
    private int turn(int a, int b, int c) {
        long p = x[b] - x[a];
        long q = y[c] - y[a];
        long r = y[b] - y[a];
        long s = x[c] - x[a];
        long high = Math.multiplyHigh(p, q);
        long otherHigh = Math.multiplyHigh(r, s);
        return high != otherHigh ? Long.compare(high, otherHigh) : Long.compareUnsigned(p * q, r * s);
    }

    /** Whether corner p, which lies in line with corners a and b, lies between them or on one of them. */
    private boolean isBetween(int a, int b, int p) {
        return Math.min(x[a], x[b]) <= x[p]
                && x[p] <= Math.max(x[a], x[b])
                && Math.min(y[a], y[b]) <= y[p]
                && y[p] <= Math.max(y[a], y[b]);
    }

    /** The corners at which the ring stands still: the next corner is the same point. */
    List<Integer> repeatedCorners() {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            if (x[i] == x[next(i)] && y[i] == y[next(i)]) {
                found.add(i);
            }
        }
        return found;
    }

    /** The corners at which the ring turns straight back on itself. */
    List<Integer> spikes() {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            int before = i == 0 ? x.length - 1 : i - 1;
            int after = next(i);
            if (turn(before, i, after) == 0 && !isBetween(before, after, i)) {
                found.add(i);
            }
        }
        return found;
    }

    /** The pairs of sides that cross or touch elsewhere than neighbours do at their shared corner, lower number first. */
    List<int[]> crossings() {
        int n = x.length;
        Integer[] byLeft = new Integer[n];
        Arrays.setAll(byLeft, i -> i);
        Arrays.sort(byLeft, Comparator.comparingLong(i -> Math.min(x[i], x[next(i)])));
        List<int[]> found = new ArrayList<>();
        List<Integer> open = new ArrayList<>();
        for (int side : byLeft) {
            long left = Math.min(x[side], x[next(side)]);
            open.removeIf(other -> Math.max(x[other], x[next(other)]) < left);
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

    private boolean meet(int i, int j) {
        int a = i;
        int b = next(i);
        int c = j;
        int d = next(j);
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
}
