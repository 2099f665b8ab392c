package org.roofmaths.roof.internal;

import java.util.Arrays;

/**
 * What the wavefront leaves behind: nodes, arcs between them with the face on each side, and faces found to be one. The
 * first nodes are the corners of the outline, numbered alike.
 */
final class Traces {
    /** A node's coordinates are kept to this many nanometres, or to the last place of a {@code double}. */
    private static final double SHARP = 1e-3;

    private final int[] sameAs;

    private int nodes;
    double[] x;
    double[] y;
    double[] z;

    int arcs;
    int[] from;
    int[] to;
    int[] left;
    int[] right;
    ArcKind[] kind;

    Traces(Outline outline) {
        int n = outline.size;
        int room = 3 * n + 4;
        x = new double[room];
        y = new double[room];
        z = new double[room];
        from = new int[room];
        to = new int[room];
        left = new int[room];
        right = new int[room];
        kind = new ArcKind[room];
        sameAs = new int[n];
        for (int e = 0; e < n; e++) {
            sameAs[e] = e;
        }
        for (int v = 0; v < n; v++) {
            add(outline.x[v], outline.y[v], 0);
        }
        for (int e = 0; e < n; e++) {
            int after = outline.next[e];
            z[outline.end[e]] = outline.isGable(e) ? outline.level[after] : outline.level[e];
        }
    }

    private int add(double px, double py, double pz) {
        if (nodes == x.length) {
            x = Arrays.copyOf(x, 2 * nodes);
            y = Arrays.copyOf(y, 2 * nodes);
            z = Arrays.copyOf(z, 2 * nodes);
        }
        x[nodes] = px;
        y[nodes] = py;
        z[nodes] = pz;
        return nodes++;
    }

    int nodes() {
        return nodes;
    }

    double x(int node) {
        return x[node];
    }

    double y(int node) {
        return y[node];
    }

    int node(Planes planes, Meeting at) {
        planes.sharpen(at, SHARP);
        return add(at.x, at.y, at.z);
    }

    void corner(Corner corner, int end) {
        line(corner.node, end, corner.in.face, corner.out.face, corner.turn > 0 ? ArcKind.OUTWARD : ArcKind.INWARD);
    }

    void line(int start, int end, int leftFace, int rightFace, ArcKind as) {
        if (arcs == from.length) {
            from = Arrays.copyOf(from, 2 * arcs);
            to = Arrays.copyOf(to, 2 * arcs);
            left = Arrays.copyOf(left, 2 * arcs);
            right = Arrays.copyOf(right, 2 * arcs);
            kind = Arrays.copyOf(kind, 2 * arcs);
        }
        from[arcs] = start;
        to[arcs] = end;
        left[arcs] = leftFace;
        right[arcs] = rightFace;
        kind[arcs++] = as;
    }

    /** Moves an arc to an earlier place. */
    void keep(int arc, int at) {
        from[at] = from[arc];
        to[at] = to[arc];
        left[at] = left[arc];
        right[at] = right[arc];
        kind[at] = kind[arc];
    }

    void sameFace(int e, int f) {
        int p = face(e);
        int q = face(f);
        sameAs[Math.max(p, q)] = Math.min(p, q);
    }

    /** The first edge of all whose faces were found to be one with this edge's. */
    int face(int edge) {
        int root = edge;
        while (sameAs[root] != root) {
            root = sameAs[root];
        }
        while (sameAs[edge] != root) {
            int up = sameAs[edge];
            sameAs[edge] = root;
            edge = up;
        }
        return root;
    }
}
