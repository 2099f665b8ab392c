package org.roofmaths.roof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.Problems;
import org.roofmaths.roof.internal.ArcKind;
import org.roofmaths.roof.internal.Fault;
import org.roofmaths.roof.internal.Outline;
import org.roofmaths.roof.internal.Skeleton;
import org.roofmaths.roof.internal.UnroofableException;
import org.roofmaths.units.Length;

/**
 * The faces over a plan as the solver leaves them, put in the terms of the plan: corners in metres from an origin, and
 * each face as rings of corners with what lies beyond each side of a ring.
 */
record Lifted(
        double[] x, double[] y, double[] height, Length originX, Length originY, Length lowest, List<Face> faces) {
    /** Walls count down from here, by plan side; eaves count down from -1. */
    private static final int WALL = -1_000_000_000;
    /** Walls at whose foot a face ends count down from here, by plan side. */
    private static final int FOOT = -2_000_000_000;

    private static final double NANOMETRE = 1e-9;

    /**
     * One face.
     *
     * @param side the plan side it takes its name from
     * @param rings its corners, by number: around it against the clock as seen from above, starting at the left end of
     *     its eaves, then what it encloses, the other way round
     * @param beyond for each ring, what lies beyond the line from each corner to the next
     */
    record Face(int side, List<int[]> rings, List<int[]> beyond) {}

    static boolean isFace(int beyond) {
        return beyond >= 0;
    }

    static boolean isEaves(int beyond) {
        return beyond < 0 && beyond > WALL;
    }

    /** Whether the face ends at the foot of a wall that goes on above it, and not at the top of one. */
    static boolean isFoot(int beyond) {
        return beyond <= FOOT;
    }

    static int side(int beyond) {
        return isFoot(beyond) ? FOOT - beyond : isEaves(beyond) ? -1 - beyond : WALL - beyond;
    }

    static Attempt<Lifted> over(RoofPlan plan) {
        try {
            return Attempt.of(new Reader(Skeleton.of(outline(plan))).lifted());
        } catch (UnroofableException e) {
            Problems problems = Problems.none();
            e.faults().forEach(fault -> problems.add(problem(fault, plan.sides())));
            return Attempt.failed(problems.list());
        }
    }

    private static Outline outline(RoofPlan plan) throws UnroofableException {
        Outline.Builder builder = Outline.builder();
        for (List<PlanSide> ring : plan.rings()) {
            int n = ring.size();
            long[] x = new long[n];
            long[] y = new long[n];
            double[] slope = new double[n];
            long[] level = new long[n];
            for (int i = 0; i < n; i++) {
                PlanSide side = ring.get(i);
                x[i] = side.from().x().toNanometres();
                y[i] = side.from().y().toNanometres();
                if (side.treatment() instanceof EdgeTreatment.Eaves eaves) {
                    slope[i] = eaves.pitch().value().tan();
                    level[i] = eaves.fasciaHeight().toNanometres();
                } else {
                    slope[i] = Double.POSITIVE_INFINITY;
                }
            }
            builder.ring(x, y, slope, level);
        }
        return builder.build();
    }

    /** Puts the solver's nodes, faces and lines into the terms of the plan. */
    private static final class Reader {
        private final Skeleton skeleton;
        private final int[] slopeNumber;
        private final Map<Long, Integer> faceOnLeft = new HashMap<>();
        private final Map<Long, ArcKind> arcs = new HashMap<>();

        Reader(Skeleton skeleton) {
            this.skeleton = skeleton;
            List<Skeleton.Face> all = skeleton.faces();
            this.slopeNumber = new int[all.size()];
            int slopes = 0;
            for (int i = 0; i < all.size(); i++) {
                slopeNumber[i] = all.get(i).isWall() ? -1 : slopes++;
            }
            for (Skeleton.Arc arc : skeleton.arcs()) {
                faceOnLeft.put(key(arc.from(), arc.to()), arc.left());
                faceOnLeft.put(key(arc.to(), arc.from()), arc.right());
                arcs.put(key(arc.from(), arc.to()), arc.kind());
                arcs.put(key(arc.to(), arc.from()), arc.kind());
            }
        }

        private static long key(int from, int to) {
            return ((long) from << 32) | to;
        }

        Lifted lifted() {
            int n = skeleton.nodes();
            double[] x = new double[n];
            double[] y = new double[n];
            double[] height = new double[n];
            for (int i = 0; i < n; i++) {
                x[i] = skeleton.x(i) * NANOMETRE;
                y[i] = skeleton.y(i) * NANOMETRE;
                height[i] = skeleton.z(i) * NANOMETRE;
            }
            List<Face> faces = new ArrayList<>();
            for (Skeleton.Face face : skeleton.faces()) {
                if (!face.isWall()) {
                    faces.add(face(face));
                }
            }
            return new Lifted(
                    x,
                    y,
                    height,
                    Length.ofNanometres(skeleton.originX()),
                    Length.ofNanometres(skeleton.originY()),
                    Length.ofNanometres(skeleton.lowest()),
                    faces);
        }

        private Face face(Skeleton.Face face) {
            List<int[]> rings = new ArrayList<>();
            List<int[]> beyond = new ArrayList<>();
            for (int r = 0; r < face.rings(); r++) {
                int[] ring = r == 0 ? fromLeftEnd(face) : face.ring(r);
                rings.add(ring);
                int[] neighbours = new int[ring.length];
                for (int i = 0; i < ring.length; i++) {
                    neighbours[i] = beyond(ring[i], ring[(i + 1) % ring.length]);
                }
                beyond.add(neighbours);
            }
            return new Face(face.edges()[0], rings, beyond);
        }

        /**
         * The ring around a face from the left end of its eaves, which may be several sides of the plan in one line.
         */
        private int[] fromLeftEnd(Skeleton.Face face) {
            int[] ring = face.ring(0);
            if (face.edges().length == 1) {
                return ring;
            }
            double x = skeleton.x(ring[1]) - skeleton.x(ring[0]);
            double y = skeleton.y(ring[1]) - skeleton.y(ring[0]);
            int leftmost = 0;
            for (int i = 1; i < ring.length; i++) {
                boolean eaves = !faceOnLeft.containsKey(key(ring[(i + 1) % ring.length], ring[i]));
                double along = (skeleton.x(ring[i]) - skeleton.x(ring[leftmost])) * x
                        + (skeleton.y(ring[i]) - skeleton.y(ring[leftmost])) * y;
                leftmost = eaves && along < 0 ? i : leftmost;
            }
            int[] turned = new int[ring.length];
            for (int i = 0; i < ring.length; i++) {
                turned[i] = ring[(leftmost + i) % ring.length];
            }
            return turned;
        }

        private int beyond(int from, int to) {
            Integer other = faceOnLeft.get(key(to, from));
            if (other == null) {
                return -1 - from; // an eaves: corners have the numbers of the sides that start there
            }
            if (slopeNumber[other] >= 0) {
                return slopeNumber[other];
            }
            int side = skeleton.faces().get(other).edges()[0];
            return (arcs.get(key(from, to)) == ArcKind.INWARD ? FOOT : WALL) - side;
        }
    }

    private static Problem problem(Fault fault, List<PlanSide> sides) {
        List<PlanSide> named = new ArrayList<>();
        for (int edge : fault.edges()) {
            named.add(sides.get(edge));
        }
        String place = "(" + Length.ofMetres(fault.x()) + ", " + Length.ofMetres(fault.y()) + ")";
        String first = named.isEmpty() ? "plan" : "side \"" + named.get(0).name() + "\"";
        String second = named.size() < 2 ? "" : "side \"" + named.get(1).name() + "\"";
        return switch (fault.kind()) {
            case SLOPE_OUT_OF_RANGE ->
                Problem.error(
                        Roof.PITCH_OUT_OF_RANGE,
                        "pitch of " + first,
                        named.get(0).treatment(),
                        "be from 1 in 1024 to 65536 in 1");
            case ZERO_EDGE, SPIKE, CROSSING, TOUCHING ->
                Problem.error(
                        Roof.TOO_CLOSE,
                        first,
                        "closer at " + place,
                        second.isEmpty() ? "be longer than 32 nanometres" : "keep 32 nanometres clear of " + second);
            case UNEQUAL_IN_LINE ->
                Problem.error(
                        Roof.UNEQUAL_IN_LINE,
                        first + " and " + second,
                        named.get(0).treatment() + " and " + named.get(1).treatment(),
                        "have one pitch, or a corner between them, or lie far enough apart for both to have a face");
            case LEVELS_AT_CORNER -> levels(named.get(0), named.get(1));
            case EAVES_OVERRUN ->
                Problem.error(
                        Roof.EAVES_OVERRUN,
                        "eaves of " + first,
                        "reached at " + place + " from " + names(named.subList(1, named.size())),
                        "start before the roof from other sides rises to it");
            case NEVER_COVERED ->
                Problem.error(
                        Roof.NEVER_COVERED,
                        names(named),
                        "shut in at " + place,
                        "leave a way for an eaves to cover the plan between them");
            default ->
                Problem.error(
                        Roof.NOT_PROVED,
                        "plan",
                        fault.kind() + " at " + place,
                        "have a roof that passes its own check");
        };
    }

    private static Problem levels(PlanSide one, PlanSide other) {
        Length level = ((EdgeTreatment.Eaves) one.treatment()).fasciaHeight();
        Length otherLevel = ((EdgeTreatment.Eaves) other.treatment()).fasciaHeight();
        Length less = level.minus(otherLevel);
        return Problem.error(
                        Roof.LEVELS_AT_CORNER,
                        "fascia of side \"" + other.name() + "\"",
                        otherLevel,
                        "lie at " + level + ", the level of side \"" + one.name() + "\", where the two share a corner")
                .withMend(Mend.of(
                        "plate of side \"" + other.name() + "\"",
                        less.isNegative() ? less.negated() + " lower" : less + " higher",
                        less,
                        "both fascias at " + level));
    }

    private static String names(List<PlanSide> sides) {
        return String.join(
                ", ", sides.stream().map(side -> "side \"" + side.name() + "\"").toList());
    }
}
