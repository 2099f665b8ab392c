package org.roofmaths.roof.internal;

/**
 * Reads a finished roof once more, knowing nothing of how it was made: every face lies in the plane of its own eaves,
 * is bounded, has an area, and all together have the area of the plan. A roof that fails is not handed out.
 *
 * <p>The margins are those of the input: coordinates hold to the grid, and nodes made one moved by less than the
 * clearance.
 */
final class SkeletonCheck {
    private final Outline outline;
    private final Skeleton skeleton;

    private SkeletonCheck(Outline outline, Skeleton skeleton) {
        this.outline = outline;
        this.skeleton = skeleton;
    }

    static void require(Outline outline, Skeleton skeleton) throws UnroofableException {
        new SkeletonCheck(outline, skeleton).check();
    }

    private void check() throws UnroofableException {
        double sum = 0;
        double around = 0;
        for (Skeleton.Face face : skeleton.faces()) {
            if (!face.isWall()) {
                double area = 0;
                for (int r = 0; r < face.rings(); r++) {
                    area += area(face.ring(r));
                }
                if (!(area > 0) || area(face.ring(0)) <= 0) {
                    throw fault(face);
                }
                sum += area;
                requirePlanar(face);
            }
        }
        for (int e = 0; e < outline.size; e++) {
            around += outline.length(e);
        }
        double plan = outline.area();
        if (!(Math.abs(sum - plan) <= 1e-12 * plan + Outline.CLEARANCE * around)) {
            throw fault(skeleton.faces().get(0));
        }
    }

    private UnroofableException fault(Skeleton.Face face) {
        int edge = face.edges()[0];
        return new UnroofableException(outline.faultAtCorner(Fault.Kind.NOT_PROVED, outline.start[edge], edge));
    }

    private double area(int[] ring) {
        double ox = skeleton.x(ring[0]);
        double oy = skeleton.y(ring[0]);
        double twice = 0;
        for (int i = 0; i < ring.length; i++) {
            int p = ring[i];
            int q = ring[(i + 1) % ring.length];
            twice += (skeleton.x(p) - ox) * (skeleton.y(q) - oy) - (skeleton.y(p) - oy) * (skeleton.x(q) - ox);
        }
        return twice / 2;
    }

    private void requirePlanar(Skeleton.Face face) throws UnroofableException {
        int edge = longest(face.edges());
        int start = outline.start[edge];
        double length = outline.length(edge);
        double ux = outline.dx(edge) / length;
        double uy = outline.dy(edge) / length;
        for (int r = 0; r < face.rings(); r++) {
            for (int node : face.ring(r)) {
                double px = skeleton.x(node) - outline.x[start];
                double py = skeleton.y(node) - outline.y[start];
                double run = ux * py - uy * px;
                double along = ux * px + uy * py;
                double rise = skeleton.z(node) - outline.level[edge];
                // Along the eaves and beyond, its direction is no surer than the grid allows.
                double sure = Outline.CLEARANCE * (1 + Math.abs(along) / length) + 1e-12 * Math.abs(run);
                if (!(Math.abs(run - rise / face.slope()) <= sure) || rise < -Outline.CLEARANCE) {
                    throw fault(face);
                }
            }
        }
    }

    private int longest(int[] edges) {
        int best = edges[0];
        for (int e : edges) {
            if (outline.length(e) > outline.length(best)) {
                best = e;
            }
        }
        return best;
    }
}
