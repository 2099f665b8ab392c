package org.roofmaths.roof.internal;

import java.util.Arrays;

/**
 * Makes one what lies nearer than half the clearance: two nodes, or a node and a line of a face it belongs to.
 *
 * <p>Where more planes meet in a point on paper than three, coordinates rounded to the grid part the point into several,
 * a few nanometres apart, and where a line on paper ends on another it may pass it by as much. The wavefront takes all
 * that at its word, since it must to stay right; but nothing so small can be built or drawn, and a plan turned by an angle
 * should have the roof it had before.
 */
final class Weld {
    private static final double NEAR = Outline.CLEARANCE / 2;

    private final Traces traces;
    private final int[] sameAs;
    private boolean any;

    private int[] pending = new int[0];
    private int[] pendingNode = new int[0];
    private int count;

    private Weld(Traces traces) {
        this.traces = traces;
        sameAs = new int[traces.nodes()];
        for (int v = 0; v < sameAs.length; v++) {
            sameAs[v] = v;
        }
    }

    /** Joins the nodes and parts the lines of a finished trace. */
    static void apply(Outline outline, Traces traces) {
        Weld weld = new Weld(traces);
        weld.joinNodes();
        weld.findNodesOnLines(outline);
        weld.rewrite();
    }

    private void joinNodes() {
        double[] x = traces.x;
        int[] order = Sort.ascending(Arrays.copyOf(x, sameAs.length));
        for (int i = 0; i < order.length; i++) {
            int p = order[i];
            for (int j = i + 1; j < order.length && x[order[j]] - x[p] < NEAR; j++) {
                int q = order[j];
                if (Math.abs(traces.y[p] - traces.y[q]) < NEAR && Math.abs(traces.z[p] - traces.z[q]) < NEAR) {
                    int a = same(p);
                    int b = same(q);
                    sameAs[Math.max(a, b)] = Math.min(a, b);
                    any = true;
                }
            }
        }
    }

    private int same(int node) {
        while (sameAs[node] != node) {
            node = sameAs[node];
        }
        return node;
    }

    /** Each line of a face is held against each node of the face. */
    private void findNodesOnLines(Outline outline) {
        int n = outline.size;
        int[] first = new int[n + 1];
        for (int a = 0; a < traces.arcs; a++) {
            first[traces.face(traces.left[a]) + 1]++;
            first[traces.face(traces.right[a]) + 1]++;
        }
        for (int g = 0; g < n; g++) {
            first[g + 1] += first[g];
        }
        int[] fill = Arrays.copyOf(first, n);
        int[] arcs = new int[first[n]];
        for (int a = 0; a < traces.arcs; a++) {
            arcs[fill[traces.face(traces.left[a])]++] = a;
            arcs[fill[traces.face(traces.right[a])]++] = a;
        }
        for (int g = 0; g < n; g++) {
            for (int i = first[g]; i < first[g + 1]; i++) {
                for (int j = first[g]; j < first[g + 1]; j++) {
                    // Every inner node is an upper end of some line of each face around it.
                    int node = same(traces.to[arcs[j]]);
                    if (isOn(arcs[i], node)) {
                        note(arcs[i], node);
                    }
                }
            }
        }
    }

    private boolean isOn(int arc, int node) {
        int p = same(traces.from[arc]);
        int q = same(traces.to[arc]);
        if (node == p || node == q) {
            return false;
        }
        double px = traces.x[node] - traces.x[p];
        double py = traces.y[node] - traces.y[p];
        double dx = traces.x[q] - traces.x[p];
        double dy = traces.y[q] - traces.y[p];
        double plan = dx * dx + dy * dy;
        double across = px * dy - py * dx;
        if (across * across > NEAR * NEAR * plan) {
            return false;
        }
        double pz = traces.z[node] - traces.z[p];
        double dz = traces.z[q] - traces.z[p];
        double along = (px * dx + py * dy + pz * dz) / (plan + dz * dz);
        double rx = px - along * dx;
        double ry = py - along * dy;
        double rz = pz - along * dz;
        return along > 0 && along < 1 && rx * rx + ry * ry + rz * rz < NEAR * NEAR;
    }

    private void note(int arc, int node) {
        for (int i = 0; i < count; i++) {
            if (pending[i] == arc && pendingNode[i] == node) {
                return;
            }
        }
        if (count == pending.length) {
            pending = Arrays.copyOf(pending, 2 * count + 4);
            pendingNode = Arrays.copyOf(pendingNode, 2 * count + 4);
        }
        pending[count] = arc;
        pendingNode[count++] = node;
    }

    private void rewrite() {
        if (!any && count == 0) {
            return;
        }
        for (int a = 0; a < traces.arcs; a++) {
            traces.from[a] = same(traces.from[a]);
            traces.to[a] = same(traces.to[a]);
        }
        for (int done = 0; done < count; done++) {
            int arc = pending[done];
            if (arc < 0) {
                continue;
            }
            double[] along = new double[count];
            int parts = 0;
            int[] nodes = new int[count];
            for (int i = done; i < count; i++) {
                if (pending[i] == arc) {
                    nodes[parts] = pendingNode[i];
                    along[parts++] = distance(traces.from[arc], pendingNode[i]);
                    pending[i] = -1;
                }
            }
            part(arc, nodes, Sort.ascending(Arrays.copyOf(along, parts)));
        }
        int kept = 0;
        for (int a = 0; a < traces.arcs; a++) {
            if (traces.from[a] != traces.to[a]) {
                traces.keep(a, kept++);
            }
        }
        traces.arcs = kept;
    }

    private double distance(int p, int q) {
        double dx = traces.x[q] - traces.x[p];
        double dy = traces.y[q] - traces.y[p];
        double dz = traces.z[q] - traces.z[p];
        return dx * dx + dy * dy + dz * dz;
    }

    private void part(int arc, int[] nodes, int[] order) {
        int end = traces.to[arc];
        int head = arc;
        for (int k : order) {
            traces.to[head] = nodes[k];
            traces.line(nodes[k], end, traces.left[arc], traces.right[arc], traces.kind[arc]);
            head = traces.arcs - 1;
        }
    }
}
