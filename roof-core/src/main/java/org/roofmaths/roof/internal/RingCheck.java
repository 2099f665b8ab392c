package org.roofmaths.roof.internal;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds what is wrong with the rings of an outline before anything is solved: short edges, spikes, edges that cross or
 * touch, courtyards out of place, slopes and levels that cannot be.
 *
 * <p>A ring passes only if any two edges that are not neighbours keep {@link Outline#CLEARANCE} apart. That margin is far
 * above the rounding of a {@code double} here, so plain arithmetic settles every question of this class; and it is four
 * times what {@link Planes} may move an edge by when it makes nearly parallel edges parallel, so an outline that
 * passes stays simple.
 *
 * <p>Pairs are found by a sweep along x: each edge is compared with those whose span of x overlaps its own.
 */
final class RingCheck {
    private final Outline outline;
    private final List<Fault> faults = new ArrayList<>();

    private RingCheck(Outline outline) {
        this.outline = outline;
    }

    static void require(Outline outline) throws UnroofableException {
        RingCheck check = new RingCheck(outline);
        check.edges();
        if (check.faults.isEmpty()) {
            check.pairs();
        }
        if (check.faults.isEmpty()) {
            check.courtyards();
        }
        if (!check.faults.isEmpty()) {
            throw new UnroofableException(check.faults);
        }
    }

    private void edges() {
        int[] corners = new int[outline.rings];
        boolean anyEaves = false;
        for (int e = 0; e < outline.size; e++) {
            corners[outline.ring[e]]++;
            anyEaves |= !outline.isGable(e);
        }
        int first = 0;
        for (int r = 0; r < outline.rings; r++) {
            if (corners[r] < 3) {
                faults.add(
                        corners[r] == 0
                                ? new Fault(Fault.Kind.TOO_FEW_CORNERS, 0, 0)
                                : outline.faultAtCorner(Fault.Kind.TOO_FEW_CORNERS, first, first));
            }
            first += corners[r];
        }
        if (outline.rings == 0) {
            faults.add(new Fault(Fault.Kind.TOO_FEW_CORNERS, 0, 0));
        }
        if (!faults.isEmpty()) {
            return;
        }
        if (!anyEaves) {
            faults.add(outline.faultAtCorner(Fault.Kind.NO_EAVES, 0, 0));
        }
        for (int e = 0; e < outline.size; e++) {
            double slope = outline.slope[e];
            if (!outline.isGable(e) && !(slope >= Outline.FLATTEST && slope <= Outline.STEEPEST)) {
                faults.add(outline.faultAtCorner(Fault.Kind.SLOPE_OUT_OF_RANGE, outline.start[e], e));
            }
            if (outline.length(e) < Outline.CLEARANCE) {
                faults.add(outline.faultAtCorner(Fault.Kind.ZERO_EDGE, outline.start[e], e));
            }
        }
        for (int e = 0; e < outline.size; e++) {
            int n = outline.next[e];
            boolean eaves = !outline.isGable(e) && !outline.isGable(n);
            if (isSpike(e, n)) {
                faults.add(outline.faultAtCorner(Fault.Kind.SPIKE, outline.end[e], e, n));
            } else if (eaves && outline.level[e] != outline.level[n]) {
                faults.add(outline.faultAtCorner(Fault.Kind.LEVELS_AT_CORNER, outline.end[e], e, n));
            }
        }
    }

    /** Whether the shorter of two neighbours ends nearer than the clearance to the longer, having turned back. */
    private boolean isSpike(int e, int n) {
        double ex = outline.dx(e);
        double ey = outline.dy(e);
        double nx = outline.dx(n);
        double ny = outline.dy(n);
        double longer = Math.max(outline.length(e), outline.length(n));
        return ex * nx + ey * ny < 0 && Math.abs(ex * ny - ey * nx) < Outline.CLEARANCE * longer;
    }

    private void pairs() {
        int n = outline.size;
        double[] left = new double[n];
        for (int e = 0; e < n; e++) {
            left[e] = Math.min(outline.x[outline.start[e]], outline.x[outline.end[e]]);
        }
        int[] order = Sort.ascending(left);
        int[] open = new int[n];
        int count = 0;
        for (int e : order) {
            double from = left[e] - Outline.CLEARANCE;
            int kept = 0;
            for (int k = 0; k < count; k++) {
                int f = open[k];
                if (Math.max(outline.x[outline.start[f]], outline.x[outline.end[f]]) >= from) {
                    open[kept++] = f;
                    if (f != outline.next[e] && f != outline.prev[e]) {
                        pair(Math.min(e, f), Math.max(e, f));
                    }
                }
            }
            open[kept++] = e;
            count = kept;
        }
    }

    private void pair(int e, int f) {
        long[] y = outline.y;
        double clear = Outline.CLEARANCE;
        long eLow = Math.min(y[outline.start[e]], y[outline.end[e]]);
        long eHigh = Math.max(y[outline.start[e]], y[outline.end[e]]);
        long fLow = Math.min(y[outline.start[f]], y[outline.end[f]]);
        long fHigh = Math.max(y[outline.start[f]], y[outline.end[f]]);
        if (fLow > eHigh + clear || eLow > fHigh + clear) {
            return;
        }
        double fs = distanceFromLine(e, outline.start[f]);
        double fe = distanceFromLine(e, outline.end[f]);
        if (Math.min(fs, fe) > clear || Math.max(fs, fe) < -clear) {
            return;
        }
        double es = distanceFromLine(f, outline.start[e]);
        double ee = distanceFromLine(f, outline.end[e]);
        if (Math.min(es, ee) > clear || Math.max(es, ee) < -clear) {
            return;
        }
        if (fs * fe < 0 && es * ee < 0) {
            double share = es / (es - ee);
            double px = outline.x[outline.start[e]] + share * outline.dx(e);
            double py = outline.y[outline.start[e]] + share * outline.dy(e);
            faults.add(outline.fault(Fault.Kind.CROSSING, px, py, e, f));
            return;
        }
        touching(e, f, outline.start[f], e);
        touching(e, f, outline.end[f], e);
        touching(e, f, outline.start[e], f);
        touching(e, f, outline.end[e], f);
    }

    private void touching(int e, int f, int corner, int edge) {
        int last = faults.size() - 1;
        boolean known = last >= 0
                && faults.get(last).kind() == Fault.Kind.TOUCHING
                && faults.get(last).edges()[0] == e
                && faults.get(last).edges()[1] == f;
        if (!known && distanceFromEdge(edge, corner) < Outline.CLEARANCE) {
            faults.add(outline.faultAtCorner(Fault.Kind.TOUCHING, corner, e, f));
        }
    }

    /** Signed, to the left of the edge. */
    private double distanceFromLine(int edge, int corner) {
        double px = outline.x[corner] - outline.x[outline.start[edge]];
        double py = outline.y[corner] - outline.y[outline.start[edge]];
        return (outline.dx(edge) * py - outline.dy(edge) * px) / outline.length(edge);
    }

    private double distanceFromEdge(int edge, int corner) {
        double px = outline.x[corner] - outline.x[outline.start[edge]];
        double py = outline.y[corner] - outline.y[outline.start[edge]];
        double dx = outline.dx(edge);
        double dy = outline.dy(edge);
        double share = Math.min(1, Math.max(0, (px * dx + py * dy) / (dx * dx + dy * dy)));
        double qx = px - share * dx;
        double qy = py - share * dy;
        return Math.sqrt(qx * qx + qy * qy);
    }

    /** No two rings touch by now, so one corner of a courtyard tells where all of it lies. */
    private void courtyards() {
        int first = 0;
        for (int r = 0; r < outline.rings; r++) {
            boolean inOuter = r == 0;
            boolean inOther = false;
            for (int other = 0; other < outline.rings && r > 0; other++) {
                if (other != r && surrounds(other, first)) {
                    inOuter |= other == 0;
                    inOther |= other > 0;
                }
            }
            if (!inOuter || inOther) {
                faults.add(outline.faultAtCorner(Fault.Kind.COURTYARD_OUTSIDE, first, first));
            }
            while (first < outline.size && outline.ring[first] == r) {
                first++;
            }
        }
    }

    private boolean surrounds(int ring, int corner) {
        boolean inside = false;
        long py = outline.y[corner];
        for (int e = 0; e < outline.size; e++) {
            if (outline.ring[e] == ring) {
                boolean startsAbove = outline.y[outline.start[e]] > py;
                boolean endsAbove = outline.y[outline.end[e]] > py;
                if (startsAbove != endsAbove && (distanceFromLine(e, corner) > 0) == endsAbove) {
                    inside = !inside;
                }
            }
        }
        return inside;
    }
}
