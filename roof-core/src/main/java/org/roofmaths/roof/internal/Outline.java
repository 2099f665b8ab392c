package org.roofmaths.roof.internal;

import java.util.ArrayList;
import java.util.List;

/**
 * The plan as the solver reads it: rings of whole nanometres, a slope and a level for each edge.
 *
 * <p>Edges are numbered through all rings in the order given, edge i of a ring running from its corner i to corner
 * i + 1. Rings may run either way round; the numbers stay the caller's, but {@code start}, {@code end}, {@code next}
 * and {@code prev} are arranged so that the plan always lies to the left of an edge. Coordinates are kept from the
 * least x and y of the plan, so that a plan moved as a whole gives the same roof bit for bit.
 *
 * <p>Whole nanometres are the library's own storage for lengths. They also let every question the solver asks be
 * answered exactly, in whole numbers.
 */
public final class Outline {
    /** Two nanometres: how far the ends of an edge may lie from where they were meant, rounded to the grid twice. */
    static final double GRID = 2;
    /** Features nearer than this many nanometres cannot be told from touching ones. */
    static final double CLEARANCE = 16 * GRID;
    /** Widest plan, in nanometres: about a thousand kilometres. */
    static final long WIDEST = 1L << 50;

    static final double FLATTEST = 0x1p-10;
    static final double STEEPEST = 0x1p16;

    final int size;
    final int[] ring;
    final int[] start;
    final int[] end;
    final int[] next;
    final int[] prev;
    final long[] x;
    final long[] y;
    /** The tangent of the pitch; infinite for a gable or an abutment, whose edge never moves. */
    final double[] slope;
    /** Eaves level in nanometres above the lowest eaves; of no meaning at a gable. */
    final long[] level;

    final int rings;
    final long originX;
    final long originY;
    final long lowest;

    private Outline(Builder b) throws UnroofableException {
        rings = b.xs.size();
        int n = 0;
        for (long[] xs : b.xs) {
            n += xs.length;
        }
        size = n;
        ring = new int[n];
        start = new int[n];
        end = new int[n];
        next = new int[n];
        prev = new int[n];
        x = new long[n];
        y = new long[n];
        slope = new double[n];
        level = new long[n];
        long minX = Long.MAX_VALUE;
        long minY = Long.MAX_VALUE;
        long maxX = Long.MIN_VALUE;
        long maxY = Long.MIN_VALUE;
        long minLevel = Long.MAX_VALUE;
        long maxLevel = Long.MIN_VALUE;
        int at = 0;
        for (int r = 0; r < rings; r++) {
            long[] xs = b.xs.get(r);
            for (int i = 0; i < xs.length; i++, at++) {
                ring[at] = r;
                x[at] = xs[i];
                y[at] = b.ys.get(r)[i];
                slope[at] = b.slopes.get(r)[i];
                level[at] = b.levels.get(r)[i];
                minX = Math.min(minX, x[at]);
                maxX = Math.max(maxX, x[at]);
                minY = Math.min(minY, y[at]);
                maxY = Math.max(maxY, y[at]);
                if (!isGable(at)) {
                    minLevel = Math.min(minLevel, level[at]);
                    maxLevel = Math.max(maxLevel, level[at]);
                }
            }
        }
        originX = n == 0 ? 0 : minX;
        originY = n == 0 ? 0 : minY;
        lowest = minLevel == Long.MAX_VALUE ? 0 : minLevel;
        if (n > 0 && (tooFar(minX, maxX) || tooFar(minY, maxY)) || maxLevel > minLevel && tooFar(minLevel, maxLevel)) {
            throw new UnroofableException(new Fault(Fault.Kind.TOO_LARGE, minX * 1e-9, minY * 1e-9));
        }
        for (int i = 0; i < n; i++) {
            x[i] -= originX;
            y[i] -= originY;
            level[i] = isGable(i) ? 0 : level[i] - lowest;
        }
        at = 0;
        for (int r = 0; r < rings; r++) {
            int m = b.xs.get(r).length;
            join(at, m, (areaOf(at, m) < 0) == (r == 0));
            at += m;
        }
    }

    private static boolean tooFar(long least, long greatest) {
        long width = greatest - least;
        return width < 0 || width > WIDEST;
    }

    private double areaOf(int first, int m) {
        double twice = 0;
        for (int i = 0; i < m; i++) {
            int p = first + i;
            int q = first + (i + 1) % m;
            twice += (double) (x[p] - x[first]) * (y[q] - y[p]) - (double) (y[p] - y[first]) * (x[q] - x[p]);
        }
        return twice / 2;
    }

    private void join(int first, int m, boolean turned) {
        for (int i = 0; i < m; i++) {
            int here = first + i;
            int after = first + (i + 1) % m;
            int before = first + (i + m - 1) % m;
            start[here] = turned ? after : here;
            end[here] = turned ? here : after;
            next[here] = turned ? before : after;
            prev[here] = turned ? after : before;
        }
    }

    boolean isGable(int edge) {
        return slope[edge] == Double.POSITIVE_INFINITY;
    }

    long dx(int edge) {
        return x[end[edge]] - x[start[edge]];
    }

    long dy(int edge) {
        return y[end[edge]] - y[start[edge]];
    }

    double length(int edge) {
        double dx = dx(edge);
        double dy = dy(edge);
        return Math.sqrt(dx * dx + dy * dy);
    }

    /** The plan area, courtyards taken off, in square nanometres. */
    double area() {
        double twice = 0;
        for (int e = 0; e < size; e++) {
            twice += (double) x[start[e]] * dy(e) - (double) y[start[e]] * dx(e);
        }
        return twice / 2;
    }

    Fault fault(Fault.Kind kind, double localX, double localY, int... edges) {
        return new Fault(kind, (originX + localX) * 1e-9, (originY + localY) * 1e-9, edges);
    }

    Fault faultAtCorner(Fault.Kind kind, int corner, int... edges) {
        return fault(kind, x[corner], y[corner], edges);
    }

    /** Starts an outline; the first ring is the outer one, the others are courtyards. */
    public static Builder builder() {
        return new Builder();
    }

    /** Collects the rings. */
    public static final class Builder {
        private final List<long[]> xs = new ArrayList<>();
        private final List<long[]> ys = new ArrayList<>();
        private final List<double[]> slopes = new ArrayList<>();
        private final List<long[]> levels = new ArrayList<>();

        private Builder() {}

        /**
         * Adds a ring: corner coordinates in nanometres, the tangent of the pitch of each edge (infinite at a gable or
         * abutment), and the level of each eaves in nanometres over any datum.
         */
        public Builder ring(long[] x, long[] y, double[] slope, long[] level) {
            if (x.length != y.length || x.length != slope.length || x.length != level.length) {
                throw new IllegalArgumentException("a ring needs one y, slope and level for each x");
            }
            xs.add(x.clone());
            ys.add(y.clone());
            slopes.add(slope.clone());
            levels.add(level.clone());
            return this;
        }

        /** Adds a ring whose eaves are all at one level. */
        public Builder ring(long[] x, long[] y, double[] slope) {
            return ring(x, y, slope, new long[x.length]);
        }

        /** Makes the outline; whether it has a roof is the solver's question. */
        public Outline build() throws UnroofableException {
            return new Outline(this);
        }
    }
}
