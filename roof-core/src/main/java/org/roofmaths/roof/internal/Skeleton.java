package org.roofmaths.roof.internal;

import java.util.List;

/**
 * A roof over an outline as bare numbers: nodes, lines between them, and faces that share them.
 *
 * <p>Lengths are nanometres from the origin: the least x and y of the plan and the lowest eaves. The faces of a
 * slope are outlined by node numbers and by nothing else, so neighbours share every node and together they are the
 * outline. {@link #of} gives a roof that has passed {@link SkeletonCheck}, or throws.
 */
public final class Skeleton {
    private final Outline outline;
    private final double[] x;
    private final double[] y;
    private final double[] z;
    private final List<Face> faces;
    private final List<Arc> arcs;

    Skeleton(Outline outline, double[] x, double[] y, double[] z, List<Face> faces, List<Arc> arcs) {
        this.outline = outline;
        this.x = x;
        this.y = y;
        this.z = z;
        this.faces = List.copyOf(faces);
        this.arcs = List.copyOf(arcs);
    }

    /** Solves an outline. */
    public static Skeleton of(Outline outline) throws UnroofableException {
        RingCheck.require(outline);
        Planes planes = Planes.of(outline);
        Traces traces = new Traces(outline);
        Wavefront.raise(outline, planes, traces);
        Weld.apply(outline, traces);
        Skeleton skeleton = new FaceTracer(outline, traces).skeleton();
        SkeletonCheck.require(outline, skeleton);
        return skeleton;
    }

    /** The corners of the outline come first, numbered as its edges. */
    public int nodes() {
        return x.length;
    }

    public double x(int node) {
        return x[node];
    }

    public double y(int node) {
        return y[node];
    }

    public double z(int node) {
        return z[node];
    }

    /** Where the caller's zero lies: add this to x and y, and {@link #lowest} to z. */
    public long originX() {
        return outline.originX;
    }

    public long originY() {
        return outline.originY;
    }

    public long lowest() {
        return outline.lowest;
    }

    /** Slopes and walls, by their first edge. */
    public List<Face> faces() {
        return faces;
    }

    /** The lines inside the outline; eaves and the feet of gables are not among them. */
    public List<Arc> arcs() {
        return arcs;
    }

    /**
     * A slope, or the wall under a gable.
     *
     * <p>The first ring runs around it with the face on the left as seen from above (of a wall, from outside); it begins
     * with the first edge. More rings, the other way round, are what it encloses: a steep courtyard can lie wholly in a
     * flat slope.
     */
    public static final class Face {
        private final int[] edges;
        private final boolean wall;
        private final double slope;
        private final List<int[]> rings;

        Face(int[] edges, boolean wall, double slope, List<int[]> rings) {
            this.edges = edges;
            this.wall = wall;
            this.slope = slope;
            this.rings = List.copyOf(rings);
        }

        public int[] edges() {
            return edges.clone();
        }

        public boolean isWall() {
            return wall;
        }

        /** The tangent of its pitch; infinite for a wall. */
        public double slope() {
            return slope;
        }

        public int rings() {
            return rings.size();
        }

        public int[] ring(int number) {
            return rings.get(number).clone();
        }
    }

    /** A line between two nodes with a face, by its number, on each side as one goes from the first to the second. */
    public static final class Arc {
        private final int from;
        private final int to;
        private final int left;
        private final int right;
        private final ArcKind kind;

        Arc(int from, int to, int left, int right, ArcKind kind) {
            this.from = from;
            this.to = to;
            this.left = left;
            this.right = right;
            this.kind = kind;
        }

        public int from() {
            return from;
        }

        public int to() {
            return to;
        }

        public int left() {
            return left;
        }

        public int right() {
            return right;
        }

        public ArcKind kind() {
            return kind;
        }
    }
}
