package org.roofmaths.roof.internal;

import java.math.BigInteger;
import java.util.Arrays;

/**
 * The planes of a roof in whole numbers, and the questions asked of them, each answered exactly.
 *
 * <p>The edge at height z lies on the line {@code a·x + b·y + c = w·z}, where (a, b) points into the plan and {@code w}
 * is its length divided by the slope; read in space, that is the plane of the face. A gable has {@code w = 0}. All
 * four are whole numbers: coordinates are whole nanometres, so directions are whole, and only w is rounded, by less than
 * one part in 2<sup>50</sup> (one in 2<sup>35</sup> at the steepest slope allowed). The solver then works on the roof of
 * exactly these planes. A point where three planes meet has rational coordinates, so whether one event comes before
 * another, and on which side of a fourth plane it lies, are signs of whole numbers. A {@code double} with a bound of
 * its error answers nearly all of them; {@link BigInteger} answers the rest, among them every tie.
 *
 * <p><b>Directions are shared.</b> Whether two edges lie in one line decides whether they bear one face or two, and
 * drawings turned by an angle and rounded to the grid no longer say so. Two edges take one direction if moving their
 * ends by {@link Outline#GRID}, twice the rounding of a drawing, makes them parallel; two lines of one direction and
 * nearer than four times that are one line. Longest edges choose first, so it does not matter where a ring starts. An
 * edge moves by less than a third of the clearance that {@link RingCheck} asks for. If a ring has corners so blunt
 * or edges so short that even this would turn an edge round, directions are shared only where they agree exactly.
 */
final class Planes {
    /** Half the step between a double and the next one, as a share of it. */
    private static final double U = 0x1p-53;

    private static final double SAME_SLOPE = 1 + 1e-10;
    private static final int DIRECTION_BITS = 51;

    private final Outline outline;

    /** The plane of an edge, and before its level is reached the upright one over it, if its level is not the lowest. */
    final int[] ofEdge;

    final int[] waiting;

    int count;
    double[] nx;
    double[] ny;
    double[] c;
    double[] s;
    /** Twice the direction's number, plus one if the plane faces the other way. */
    int[] facing;
    /** The line this plane stands on. */
    int[] line;

    private long[] a;
    private long[] b;
    private long[] w;
    private long[] doubleX;
    private long[] doubleY;
    private long[] lift;
    private BigInteger[] exactC;
    private double errN;
    private double reach;

    // Directions and lines of the edges while the planes are made.
    private final int[] edgeFacing;
    private final int[] edgeLine;
    private final boolean[] onGrid;
    private long[] dirX;
    private long[] dirY;
    private int directions;
    private int[] leader;
    private int lines;

    private Planes(Outline outline, double grid) {
        this.outline = outline;
        int n = outline.size;
        ofEdge = new int[n];
        waiting = new int[n];
        edgeFacing = new int[n];
        edgeLine = new int[n];
        onGrid = new boolean[n];
        double[] length = new double[n];
        for (int e = 0; e < n; e++) {
            length[e] = outline.length(e);
        }
        shareDirections(length, grid);
        shareLines(length, 4 * grid);
        makePlanes();
    }

    static Planes of(Outline outline) throws UnroofableException {
        Planes shared = new Planes(outline, Outline.GRID);
        if (shared.firstTurnedEdge() < 0) {
            return shared;
        }
        Planes exact = new Planes(outline, 0);
        int turned = exact.firstTurnedEdge();
        if (turned >= 0) {
            throw new UnroofableException(outline.faultAtCorner(Fault.Kind.NOT_PROVED, outline.start[turned], turned));
        }
        return exact;
    }

    // ---- directions and lines ----

    private void shareDirections(double[] length, double grid) {
        int n = outline.size;
        double[] shortest = new double[n];
        for (int e = 0; e < n; e++) {
            shortest[e] = -length[e];
        }
        dirX = new long[n];
        dirY = new long[n];
        double[] angle = new double[n]; // of the directions so far, ascending
        int[] at = new int[n]; // which direction has that angle
        double[] lead = new double[n];
        for (int e : Sort.ascending(shortest)) {
            long dx = outline.dx(e);
            long dy = outline.dy(e);
            boolean back = dy < 0 || dy == 0 && dx < 0;
            double turn = halfTurn(back ? -dx : dx, back ? -dy : dy);
            int place = Arrays.binarySearch(angle, 0, directions, turn);
            int above = place >= 0 ? place : -1 - place;
            int found = -1;
            double least = Double.POSITIVE_INFINITY;
            for (int k = 0; k < 2 && directions > 0; k++) {
                int d = at[Math.floorMod(above - k, directions)];
                double sine = Math.abs(sine(dx, dy, length[e], d));
                double allowed = grid * (1 / lead[d] + 1 / length[e]);
                if ((sine <= allowed || isParallel(dx, dy, dirX[d], dirY[d])) && sine < least) {
                    found = d;
                    least = sine;
                }
            }
            if (found < 0) {
                found = directions++;
                System.arraycopy(angle, above, angle, above + 1, found - above);
                System.arraycopy(at, above, at, above + 1, found - above);
                angle[above] = turn;
                at[above] = found;
                lead[found] = length[e];
                long common = gcd(Math.abs(dx), Math.abs(dy));
                dirX[found] = (back ? -dx : dx) / common;
                dirY[found] = (back ? -dy : dy) / common;
            }
            onGrid[e] = isParallel(dx, dy, dirX[found], dirY[found]);
            boolean reversed = (double) dx * dirX[found] + (double) dy * dirY[found] < 0;
            edgeFacing[e] = 2 * found + (reversed ? 1 : 0);
        }
    }

    /** Grows with the angle of a direction that points up or right: 0 at the x axis, 1 at the y axis, below 2. */
    private static double halfTurn(double dx, double dy) {
        return dx >= 0 ? dy / (dx + dy) : 1 - dx / (dy - dx);
    }

    private double sine(long dx, long dy, double length, int d) {
        double px = dirX[d];
        double py = dirY[d];
        return (dx * py - dy * px) / (length * Math.sqrt(px * px + py * py));
    }

    private static boolean isParallel(long dx, long dy, long px, long py) {
        return dx * py == dy * px && Math.multiplyHigh(dx, py) == Math.multiplyHigh(dy, px);
    }

    private static long gcd(long p, long q) {
        while (q != 0) {
            long r = p % q;
            p = q;
            q = r;
        }
        return p;
    }

    /** Numbers the lines; an edge's line is the line of its leader, the longest edge on it. */
    private void shareLines(double[] length, double apart) {
        int n = outline.size;
        double[] offset = new double[n];
        for (int e = 0; e < n; e++) {
            int d = edgeFacing[e] >> 1;
            double px = dirX[d];
            double py = dirY[d];
            double mx = (outline.x[outline.start[e]] + outline.x[outline.end[e]]) * 0.5;
            double my = (outline.y[outline.start[e]] + outline.y[outline.end[e]]) * 0.5;
            offset[e] = (px * my - py * mx) / Math.sqrt(px * px + py * py);
        }
        int[] last = new int[2 * directions]; // the edge last seen with this facing
        double[] first = new double[2 * directions]; // where its line began
        Arrays.fill(last, -1);
        leader = new int[n];
        lines = 0;
        for (int e : Sort.ascending(offset)) {
            int f = edgeFacing[e];
            int before = last[f];
            last[f] = e;
            if (before >= 0 && (offset[e] - first[f] <= apart || isSameLine(e, before))) {
                int l = edgeLine[before];
                edgeLine[e] = l;
                if (length[e] > length[leader[l]]) {
                    leader[l] = e;
                }
            } else {
                first[f] = offset[e];
                edgeLine[e] = lines;
                leader[lines++] = e;
            }
        }
    }

    private boolean isSameLine(int e, int f) {
        int d = edgeFacing[e] >> 1;
        long x = outline.x[outline.start[e]] - outline.x[outline.start[f]];
        long y = outline.y[outline.start[e]] - outline.y[outline.start[f]];
        return onGrid[e] && onGrid[f] && isParallel(x, y, dirX[d], dirY[d]);
    }

    private void makePlanes() {
        int n = outline.size;
        int most = 2 * n;
        nx = new double[most];
        ny = new double[most];
        c = new double[most];
        s = new double[most];
        facing = new int[most];
        line = new int[most];
        a = new long[most];
        b = new long[most];
        w = new long[most];
        doubleX = new long[most];
        doubleY = new long[most];
        lift = new long[most];
        exactC = new BigInteger[most];
        double[] slope = sharedSlopes();
        int[] latest = new int[lines]; // the plane made last on this line
        int[] earlier = new int[most]; // and the one before it
        Arrays.fill(latest, -1);
        for (int e = 0; e < n; e++) {
            ofEdge[e] = planeOn(e, slope[e], outline.level[e], latest, earlier);
            boolean low = outline.isGable(e) || outline.level[e] == 0;
            waiting[e] = low ? ofEdge[e] : planeOn(e, Double.POSITIVE_INFINITY, 0, latest, earlier);
        }
        for (int p = 0; p < count; p++) {
            reach = Math.max(reach, Math.abs(c[p]));
        }
        for (int v = 0; v < n; v++) {
            reach = Math.max(reach, 2.0 * Math.max(outline.x[v], outline.y[v]));
        }
        errN = 64 * U * reach;
    }

    /** Slopes that differ by less than any drawing can say are made one. */
    private double[] sharedSlopes() {
        double[] shared = outline.slope.clone();
        double current = -1;
        for (int e : Sort.ascending(outline.slope)) {
            if (shared[e] <= current * SAME_SLOPE) {
                shared[e] = current;
            } else {
                current = shared[e];
            }
        }
        return shared;
    }

    private int planeOn(int e, double slope, long level, int[] latest, int[] earlier) {
        int l = edgeLine[e];
        int d = edgeFacing[e] >> 1;
        double px = dirX[d];
        double py = dirY[d];
        double length = Math.sqrt(px * px + py * py);
        int bits = DIRECTION_BITS - Math.getExponent(length);
        double scaled = length * (1L << bits);
        long speed = (long) Math.rint(scaled / slope);
        for (int p = latest[l]; p >= 0; p = earlier[p]) {
            if (w[p] == speed && (lift[p] == level || speed == 0)) {
                return p;
            }
        }
        int p = count++;
        earlier[p] = latest[l];
        latest[l] = p;
        boolean reversed = (edgeFacing[e] & 1) == 1;
        a[p] = (reversed ? dirY[d] : -dirY[d]) << bits;
        b[p] = (reversed ? -dirX[d] : dirX[d]) << bits;
        w[p] = speed;
        lift[p] = level;
        facing[p] = edgeFacing[e];
        line[p] = l;
        int on = leader[l];
        int from = outline.start[on];
        int to = onGrid[on] ? from : outline.end[on];
        doubleX[p] = outline.x[from] + outline.x[to];
        doubleY[p] = outline.y[from] + outline.y[to];
        nx[p] = a[p] / scaled;
        ny[p] = b[p] / scaled;
        s[p] = speed / scaled;
        c[p] = s[p] * level - 0.5 * (nx[p] * doubleX[p] + ny[p] * doubleY[p]);
        return p;
    }

    /** The first edge that would run backwards between its neighbours' lines, or that leaves its neighbour's line. */
    private int firstTurnedEdge() {
        for (int e = 0; e < outline.size; e++) {
            int n = outline.next[e];
            if (edgeFacing[e] >> 1 == edgeFacing[n] >> 1) {
                if (edgeLine[e] != edgeLine[n]) {
                    return e;
                }
                continue;
            }
            int before = outline.prev[e];
            while (edgeLine[before] == edgeLine[e]) {
                before = outline.prev[before];
            }
            int i = waiting[before];
            int j = waiting[e];
            int k = waiting[n];
            if (groundSign(i, j, k) * turn(i, j) * turn(j, k) <= 0) {
                return e;
            }
        }
        return -1;
    }

    /** The sign of the length of an edge on the ground is this sign times the turns at its two ends. */
    private int groundSign(int i, int j, int k) {
        double v = ground(i) * cross(j, k) + ground(j) * cross(k, i) + ground(k) * cross(i, j);
        if (Math.abs(v) > errN) {
            return v > 0 ? 1 : -1;
        }
        return exactGround(i)
                .multiply(exactCross(j, k))
                .add(exactGround(j).multiply(exactCross(k, i)))
                .add(exactGround(k).multiply(exactCross(i, j)))
                .signum();
    }

    private double ground(int p) {
        return c[p] - s[p] * lift[p];
    }

    private BigInteger exactGround(int p) {
        return exactC(p).subtract(BigInteger.valueOf(w[p]).multiply(BigInteger.valueOf(lift[p])));
    }

    // ---- exact numbers ----

    private BigInteger exactC(int p) {
        if (exactC[p] == null) {
            exactC[p] = BigInteger.valueOf(w[p])
                    .multiply(BigInteger.valueOf(lift[p]))
                    .subtract(BigInteger.valueOf(a[p] >> 1).multiply(BigInteger.valueOf(doubleX[p])))
                    .subtract(BigInteger.valueOf(b[p] >> 1).multiply(BigInteger.valueOf(doubleY[p])));
        }
        return exactC[p];
    }

    private BigInteger exactCross(int j, int k) {
        if (facing[j] >> 1 == facing[k] >> 1) {
            return BigInteger.ZERO;
        }
        return BigInteger.valueOf(a[j])
                .multiply(BigInteger.valueOf(b[k]))
                .subtract(BigInteger.valueOf(a[k]).multiply(BigInteger.valueOf(b[j])));
    }

    /** The cross product of two unit normals; exactly zero for one direction. */
    double cross(int j, int k) {
        return facing[j] >> 1 == facing[k] >> 1 ? 0 : nx[j] * ny[k] - nx[k] * ny[j];
    }

    /** 1 if going from the edge of the first plane to that of the second turns left, -1 right, 0 not or right back. */
    int turn(int j, int k) {
        double v = cross(j, k);
        if (Math.abs(v) > 16 * U || v == 0 && facing[j] >> 1 == facing[k] >> 1) {
            return v > 0 ? 1 : v < 0 ? -1 : 0;
        }
        return exactCross(j, k).signum();
    }

    boolean isParallel(int j, int k) {
        return facing[j] >> 1 == facing[k] >> 1;
    }

    boolean isSameWay(int j, int k) {
        return facing[j] == facing[k];
    }

    /** Whether the first of two planes that face the same way rises less than the second. */
    boolean isFlatter(int j, int k) {
        return w[j] > w[k];
    }

    /**
     * Whether the first of two rays from one point, along the edges or against them, comes before the second in a turn
     * to the left that starts at the x axis; 0 if they are one ray.
     */
    int compareRays(int j, boolean against, int k, boolean againstToo) {
        int sj = against ? -1 : 1;
        int sk = againstToo ? -1 : 1;
        // The edge runs along (b, -a).
        boolean lowerJ = isLower(sj * b[j], -sj * a[j]);
        boolean lowerK = isLower(sk * b[k], -sk * a[k]);
        if (lowerJ != lowerK) {
            return lowerJ ? 1 : -1;
        }
        return -sj * sk * turn(j, k);
    }

    private static boolean isLower(long dx, long dy) {
        return dy < 0 || dy == 0 && dx < 0;
    }

    /** How sure {@code s·cross} sums are. */
    double errD(int i, int j, int k) {
        return 32 * U * (s[i] + s[j] + s[k]);
    }

    double errN() {
        return errN;
    }

    double reach() {
        return reach;
    }

    // ---- where three planes meet ----

    /**
     * The sign of the determinant that tells whether the meeting of three planes comes closer as height grows; 0 if they
     * meet in no single height.
     */
    int approach(int i, int j, int k) {
        double d = s[i] * cross(j, k) + s[j] * cross(k, i) + s[k] * cross(i, j);
        if (Math.abs(d) > errD(i, j, k)) {
            return d > 0 ? 1 : -1;
        }
        if (isParallel(i, j)) {
            return turn(k, i) * closing(i, j);
        }
        if (isParallel(j, k)) {
            return turn(i, j) * closing(j, k);
        }
        if (isParallel(k, i)) {
            return turn(j, k) * closing(k, i);
        }
        return exactD(i, j, k).signum();
    }

    /** Of two planes of one direction: whether the second gains on the first, or both come to meet. */
    private int closing(int i, int j) {
        return facing[i] == facing[j] ? Long.signum(w[j] - w[i]) : Long.signum(w[i] + w[j]);
    }

    private BigInteger exactD(int i, int j, int k) {
        return exactCross(j, k)
                .multiply(BigInteger.valueOf(w[i]))
                .add(exactCross(k, i).multiply(BigInteger.valueOf(w[j])))
                .add(exactCross(i, j).multiply(BigInteger.valueOf(w[k])));
    }

    /** The meeting of three planes in any order; {@link #approach} must not be 0. */
    Meeting meet(int p, int q, int r) {
        int i = Math.min(p, Math.min(q, r));
        int k = Math.max(p, Math.max(q, r));
        int j = p + q + r - i - k;
        double xjk = cross(j, k);
        double xki = cross(k, i);
        double xij = cross(i, j);
        double d = s[i] * xjk + s[j] * xki + s[k] * xij;
        double errD = errD(i, j, k);
        double most = Math.max(s[i], Math.max(s[j], s[k]));
        double size = Math.abs(d) - errD;
        Meeting m = new Meeting(i, j, k);
        if (size > 8 * errD) {
            m.x = -(c[i] * (ny[j] * s[k] - s[j] * ny[k])
                            + c[j] * (ny[k] * s[i] - s[k] * ny[i])
                            + c[k] * (ny[i] * s[j] - s[i] * ny[j]))
                    / d;
            m.y = (c[i] * (nx[j] * s[k] - s[j] * nx[k])
                            + c[j] * (nx[k] * s[i] - s[k] * nx[i])
                            + c[k] * (nx[i] * s[j] - s[i] * nx[j]))
                    / d;
            m.z = (c[i] * xjk + c[j] * xki + c[k] * xij) / d;
            m.errZ = (errN + Math.abs(m.z) * errD) / size;
            double far = Math.max(Math.abs(m.x), Math.abs(m.y));
            m.errXY = (128 * U * reach * most + far * errD) / size;
        } else {
            makeExact(m);
            makeSharp(m);
        }
        return m;
    }

    /** A time that is a height itself: no three planes, no place. */
    static Meeting atHeight(long height) {
        Meeting m = new Meeting(-1, -1, -1);
        m.z = height;
        m.errZ = Math.ulp((double) height);
        m.timeTop = BigInteger.valueOf(height);
        m.timeBottom = BigInteger.ONE;
        return m;
    }

    /** Gives a meeting the nearest coordinates, by whole numbers, if its bound is worse than this. */
    void sharpen(Meeting m, double wanted) {
        if (m.errXY > wanted || m.errZ > wanted) {
            makeExact(m);
            makeSharp(m);
        }
    }

    private static void makeSharp(Meeting m) {
        m.x = ratio(m.dx, m.d);
        m.y = ratio(m.dy, m.d);
        m.z = ratio(m.dz, m.d);
        m.errXY = 8 * U * Math.max(Math.abs(m.x), Math.abs(m.y));
        m.errZ = 4 * U * Math.abs(m.z);
    }

    private static double ratio(BigInteger top, BigInteger bottom) {
        int shift = 64 + bottom.bitLength() - top.bitLength();
        BigInteger q = shift >= 0 ? top.shiftLeft(shift).divide(bottom) : top.divide(bottom.shiftLeft(-shift));
        return Math.scalb(q.doubleValue(), -shift);
    }

    private void makeExact(Meeting m) {
        if (m.dx != null) {
            return;
        }
        int i = m.i;
        int j = m.j;
        int k = m.k;
        BigInteger bi = BigInteger.valueOf(b[i]);
        BigInteger bj = BigInteger.valueOf(b[j]);
        BigInteger bk = BigInteger.valueOf(b[k]);
        BigInteger ai = BigInteger.valueOf(a[i]);
        BigInteger aj = BigInteger.valueOf(a[j]);
        BigInteger ak = BigInteger.valueOf(a[k]);
        BigInteger wi = BigInteger.valueOf(w[i]);
        BigInteger wj = BigInteger.valueOf(w[j]);
        BigInteger wk = BigInteger.valueOf(w[k]);
        BigInteger ci = exactC(i);
        BigInteger cj = exactC(j);
        BigInteger ck = exactC(k);
        BigInteger dx = ci.multiply(bk.multiply(wj).subtract(bj.multiply(wk)))
                .add(cj.multiply(bi.multiply(wk).subtract(bk.multiply(wi))))
                .add(ck.multiply(bj.multiply(wi).subtract(bi.multiply(wj))));
        BigInteger dy = ci.multiply(aj.multiply(wk).subtract(ak.multiply(wj)))
                .add(cj.multiply(ak.multiply(wi).subtract(ai.multiply(wk))))
                .add(ck.multiply(ai.multiply(wj).subtract(aj.multiply(wi))));
        BigInteger xjk = exactCross(j, k);
        BigInteger xki = exactCross(k, i);
        BigInteger xij = exactCross(i, j);
        BigInteger dz = ci.multiply(xjk).add(cj.multiply(xki)).add(ck.multiply(xij));
        BigInteger d = wi.multiply(xjk).add(wj.multiply(xki)).add(wk.multiply(xij));
        boolean negative = d.signum() < 0;
        m.dx = negative ? dx.negate() : dx;
        m.dy = negative ? dy.negate() : dy;
        m.dz = negative ? dz.negate() : dz;
        m.d = negative ? d.negate() : d;
    }

    /** The height of a meeting as a quotient; two planes of one direction settle it alone. */
    private void makeExactTime(Meeting m) {
        if (m.timeTop != null) {
            return;
        }
        if (isParallel(m.i, m.j)) {
            makeTimeOfPair(m, m.i, m.j);
        } else if (isParallel(m.j, m.k)) {
            makeTimeOfPair(m, m.j, m.k);
        } else if (isParallel(m.k, m.i)) {
            makeTimeOfPair(m, m.k, m.i);
        } else {
            makeExact(m);
            m.timeTop = m.dz;
            m.timeBottom = m.d;
        }
    }

    private void makeTimeOfPair(Meeting m, int i, int j) {
        boolean swap = facing[i] == facing[j] && w[i] < w[j];
        int p = swap ? j : i;
        int q = swap ? i : j;
        if (facing[p] == facing[q]) {
            m.timeTop = exactC(p).subtract(exactC(q));
            m.timeBottom = BigInteger.valueOf(w[p] - w[q]);
        } else {
            m.timeTop = exactC(p).add(exactC(q));
            m.timeBottom = BigInteger.valueOf(w[p] + w[q]);
        }
    }

    /** Which of two meetings is lower. */
    int compareTime(Meeting m, Meeting o) {
        double gap = m.z - o.z;
        double unsure = m.errZ + o.errZ;
        if (gap > unsure) {
            return 1;
        }
        if (gap < -unsure) {
            return -1;
        }
        if (m.isOf(o)) {
            return 0;
        }
        makeExactTime(m);
        makeExactTime(o);
        return m.timeTop.multiply(o.timeBottom).compareTo(o.timeTop.multiply(m.timeBottom));
    }

    /** On which side of a plane a meeting lies, at the meeting's own height: 1 not yet swept, -1 swept, 0 on it. */
    int side(int p, Meeting m) {
        if (p == m.i || p == m.j || p == m.k) {
            return 0;
        }
        double v = nx[p] * m.x + ny[p] * m.y + c[p] - s[p] * m.z;
        double unsure = 2 * m.errXY + s[p] * m.errZ + errN;
        if (Math.abs(v) > unsure) {
            return v > 0 ? 1 : -1;
        }
        makeExact(m);
        return m.dx.multiply(BigInteger.valueOf(a[p]))
                .add(m.dy.multiply(BigInteger.valueOf(b[p])))
                .add(m.d.multiply(exactC(p)))
                .subtract(m.dz.multiply(BigInteger.valueOf(w[p])))
                .signum();
    }

    /** Whether two meetings at one height are one point. */
    boolean isSamePoint(Meeting m, Meeting o) {
        double unsure = m.errXY + o.errXY;
        if (Math.abs(m.x - o.x) > unsure || Math.abs(m.y - o.y) > unsure) {
            return false;
        }
        if (m.isOf(o)) {
            return true;
        }
        int first = m.i;
        int second = isParallel(first, m.j) ? m.k : m.j;
        return side(first, o) == 0 && side(second, o) == 0;
    }
}
