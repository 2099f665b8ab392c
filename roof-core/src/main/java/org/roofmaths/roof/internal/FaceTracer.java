package org.roofmaths.roof.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Goes around each face along the lines the wavefront left and so makes its outline.
 *
 * <p>Every line is walked twice, as two <em>steps</em>: forwards for the face on its left, backwards for the face on its
 * right; the outline's own edges are one step each. At a node where a face meets itself there is a choice of steps
 * to go on by; the one that keeps the face whole is the first to the right of the way back.
 *
 * <p>A face that hangs together by a point only, after {@link Weld} has made one what lay a few nanometres apart, is two
 * faces, each with its own eaves; and where a part of a face has become a line there and back, the faces to both
 * sides of it meet in that line.
 */
final class FaceTracer {
    private static final int NONE = -1;

    private final Outline outline;
    private final Traces traces;
    private final int edges;

    // Step e is edge e; steps edges + 2a and edges + 2a + 1 are arc a forwards and backwards.
    private final int[] from;
    private final int[] to;
    /** The step along the same line the other way. */
    private final int[] mate;

    private final int[] group;
    private final int[] ringOf;

    private final int[] head;
    private final int[] after;
    private final boolean[] walked;

    private final int[] loop;
    private final int[] stack;
    private final int[] placeOf;
    private final List<Ring> rings = new ArrayList<>();

    /** A closed walk: its steps, its first edge if it has one, the ring it is a hole in. */
    private static final class Ring {
        final int[] steps;
        int edge = Integer.MAX_VALUE;
        int edges;
        int around = NONE;
        int face;

        Ring(int[] steps) {
            this.steps = steps;
        }
    }

    FaceTracer(Outline outline, Traces traces) {
        this.outline = outline;
        this.traces = traces;
        edges = outline.size;
        int steps = edges + 2 * traces.arcs;
        from = new int[steps];
        to = new int[steps];
        mate = new int[steps];
        group = new int[steps];
        ringOf = new int[steps];
        after = new int[steps];
        walked = new boolean[steps];
        loop = new int[steps];
        stack = new int[steps];
        head = new int[traces.nodes()];
        placeOf = new int[traces.nodes()];
        Arrays.fill(head, NONE);
        Arrays.fill(placeOf, NONE);
    }

    Skeleton skeleton() throws UnroofableException {
        makeSteps();
        traceGroups();
        List<Skeleton.Face> faces = faces();
        int nodes = traces.nodes();
        return new Skeleton(
                outline,
                Arrays.copyOf(traces.x, nodes),
                Arrays.copyOf(traces.y, nodes),
                Arrays.copyOf(traces.z, nodes),
                faces,
                arcs());
    }

    private void makeSteps() {
        for (int e = 0; e < edges; e++) {
            from[e] = outline.start[e];
            to[e] = outline.end[e];
            mate[e] = NONE;
            group[e] = traces.face(e);
        }
        for (int a = 0; a < traces.arcs; a++) {
            int forth = edges + 2 * a;
            from[forth] = traces.from[a];
            to[forth] = traces.to[a];
            mate[forth] = forth + 1;
            group[forth] = traces.face(traces.left[a]);
            from[forth + 1] = traces.to[a];
            to[forth + 1] = traces.from[a];
            mate[forth + 1] = forth;
            group[forth + 1] = traces.face(traces.right[a]);
        }
        Arrays.fill(ringOf, NONE);
    }

    /** Sorts the steps by the faces found to be one, and walks each such group. */
    private void traceGroups() throws UnroofableException {
        int[] first = new int[edges + 1];
        for (int g : group) {
            first[g + 1]++;
        }
        for (int g = 0; g < edges; g++) {
            first[g + 1] += first[g];
        }
        int[] fill = first.clone();
        int[] sorted = new int[group.length];
        for (int s = 0; s < group.length; s++) {
            sorted[fill[group[s]]++] = s;
        }
        for (int g = 0; g < edges; g++) {
            if (first[g] < first[g + 1]) {
                traceGroup(g, sorted, first[g], first[g + 1]);
            }
        }
    }

    private void traceGroup(int g, int[] sorted, int first, int last) throws UnroofableException {
        for (int i = last - 1; i >= first; i--) {
            int s = sorted[i];
            after[s] = head[from[s]];
            head[from[s]] = s;
        }
        int firstRing = rings.size();
        for (int i = first; i < last; i++) {
            int start = sorted[i];
            if (!walked[start]) {
                int length = 0;
                int step = start;
                do {
                    walked[step] = true;
                    loop[length++] = step;
                    step = next(g, step, start);
                    if (step == NONE) {
                        throw notProved(g);
                    }
                } while (step != start);
                partLoop(g, length);
            }
        }
        for (int i = first; i < last; i++) {
            head[from[sorted[i]]] = NONE;
        }
        findParts(g, firstRing);
    }

    private UnroofableException notProved(int edge) {
        return new UnroofableException(outline.faultAtCorner(Fault.Kind.NOT_PROVED, outline.start[edge], edge));
    }

    /** The step to take after another: the only one, or the first one turning from the way back to the right. */
    private int next(int g, int step, int start) {
        int node = to[step];
        if (head[node] != NONE && after[head[node]] == NONE) {
            int only = head[node];
            return walked[only] && only != start ? NONE : only;
        }
        int best = NONE;
        double least = Double.POSITIVE_INFINITY;
        for (int s = head[node]; s != NONE; s = after[s]) {
            if (!walked[s] || s == start) {
                double turn = angle(g, node, from[step]) - angle(g, node, to[s]);
                turn = turn > 0 ? turn : turn + 2 * Math.PI;
                if (turn < least) {
                    least = turn;
                    best = s;
                }
            }
        }
        return best;
    }

    private double angle(int g, int node, int towards) {
        return StrictMath.atan2(v(g, towards) - v(g, node), u(g, towards) - u(g, node));
    }

    /** A slope is seen from above, a wall from outside. */
    private double u(int g, int node) {
        return outline.isGable(g)
                ? (traces.x[node] * outline.dx(g) + traces.y[node] * outline.dy(g)) / outline.length(g)
                : traces.x[node];
    }

    private double v(int g, int node) {
        return outline.isGable(g) ? traces.z[node] : traces.y[node];
    }

    /** Parts a walk into rings that pass no node twice. */
    private void partLoop(int g, int length) throws UnroofableException {
        int depth = 0;
        for (int i = 0; i < length; i++) {
            int step = loop[i];
            placeOf[from[step]] = depth;
            stack[depth++] = step;
            int closes = placeOf[to[step]];
            if (closes != NONE) {
                for (int k = closes; k < depth; k++) {
                    placeOf[from[stack[k]]] = NONE;
                }
                close(g, Arrays.copyOfRange(stack, closes, depth));
                depth = closes;
            }
        }
        if (depth > 0) {
            throw notProved(g);
        }
    }

    private void close(int g, int[] steps) throws UnroofableException {
        if (steps.length == 2) {
            int a = mate[steps[0]];
            int b = mate[steps[1]];
            if (a == NONE || b == NONE) {
                throw notProved(g);
            }
            mate[a] = b;
            mate[b] = a;
            return;
        }
        Ring ring = new Ring(steps);
        for (int s : steps) {
            ringOf[s] = rings.size();
            if (s < edges) {
                ring.edges++;
                ring.edge = Math.min(ring.edge, s);
            }
        }
        rings.add(ring);
    }

    /**
     * A ring without an edge of its own belongs to one that has: as a hole in it, as a part that hangs on by a point, or,
     * if only the grid's rounding let the face through somewhere, as a part on the other side of the gap.
     */
    private void findParts(int g, int firstRing) throws UnroofableException {
        for (int h = firstRing; h < rings.size(); h++) {
            Ring part = rings.get(h);
            if (part.edges == 0) {
                int best = 0;
                for (int r = firstRing; r < rings.size(); r++) {
                    Ring ring = rings.get(r);
                    if (ring.edges > 0) {
                        int fit = touches(ring, part) ? 3 : surrounds(g, ring, from[part.steps[0]]) ? 2 : 1;
                        if (fit > best) {
                            best = fit;
                            part.around = r;
                        }
                    }
                }
                if (best == 0) {
                    throw notProved(g);
                }
            }
        }
    }

    private boolean touches(Ring ring, Ring part) {
        for (int s : ring.steps) {
            placeOf[from[s]] = 0;
        }
        boolean found = false;
        for (int s : part.steps) {
            found |= placeOf[from[s]] == 0;
        }
        for (int s : ring.steps) {
            placeOf[from[s]] = NONE;
        }
        return found;
    }

    private boolean surrounds(int g, Ring ring, int node) {
        boolean inside = false;
        double u = u(g, node);
        double v = v(g, node);
        for (int s : ring.steps) {
            int p = from[s];
            int q = to[s];
            boolean above = v(g, p) > v;
            if (above != v(g, q) > v) {
                double across = (u(g, q) - u(g, p)) * (v - v(g, p)) - (v(g, q) - v(g, p)) * (u - u(g, p));
                inside ^= across > 0 != above;
            }
        }
        return inside;
    }

    private List<Skeleton.Face> faces() {
        Ring[] byEdge = new Ring[edges];
        List<List<int[]>> holes = new ArrayList<>();
        int count = 0;
        for (Ring ring : rings) {
            if (ring.edges > 0) {
                byEdge[ring.edge] = ring;
            }
        }
        for (Ring ring : byEdge) {
            if (ring != null) {
                ring.face = count++;
                holes.add(new ArrayList<>(0));
            }
        }
        for (Ring ring : rings) {
            if (ring.edges == 0) {
                ring.face = rings.get(ring.around).face;
                holes.get(ring.face).add(nodes(ring, 0));
            }
        }
        List<Skeleton.Face> faces = new ArrayList<>(count);
        for (Ring ring : byEdge) {
            if (ring != null) {
                List<int[]> all = new ArrayList<>(1);
                int[] own = new int[ring.edges];
                int first = 0;
                int k = 0;
                for (int i = 0; i < ring.steps.length; i++) {
                    int s = ring.steps[i];
                    if (s < edges) {
                        own[k++] = s;
                    }
                    if (s == ring.edge) {
                        first = i;
                    }
                }
                Arrays.sort(own);
                all.add(nodes(ring, first));
                all.addAll(holes.get(ring.face));
                boolean wall = outline.isGable(ring.edge);
                faces.add(new Skeleton.Face(own, wall, outline.slope[ring.edge], all));
            }
        }
        return faces;
    }

    private int[] nodes(Ring ring, int first) {
        int n = ring.steps.length;
        int[] nodes = new int[n];
        for (int i = 0; i < n; i++) {
            nodes[i] = from[ring.steps[(first + i) % n]];
        }
        return nodes;
    }

    private List<Skeleton.Arc> arcs() {
        List<Skeleton.Arc> arcs = new ArrayList<>(traces.arcs);
        for (int s = edges; s < from.length; s++) {
            int m = mate[s];
            boolean forward = (s - edges) % 2 == 0;
            if (ringOf[s] != NONE
                    && ringOf[m] != NONE
                    && (forward && m > s || !forward && m > s && (m - edges) % 2 == 1)) {
                int left = rings.get(ringOf[s]).face;
                int right = rings.get(ringOf[m]).face;
                if (left != right) {
                    arcs.add(new Skeleton.Arc(from[s], to[s], left, right, traces.kind[(s - edges) / 2]));
                }
            }
        }
        return arcs;
    }
}
