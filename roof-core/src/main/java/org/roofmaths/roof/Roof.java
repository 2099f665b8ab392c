package org.roofmaths.roof;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * A roof as a shape: plane faces that rise from the eaves of a plan, and the edges in which they end and meet.
 *
 * <p>Ready-made roofs come from {@link Roofs}. Every face has the name of the plan side it rises from; every edge has a
 * name made of its kind and the faces beside it, such as {@code main eaves}, {@code front left verge} or {@code ridge
 * front/back}. Faces share their corners exactly, and on plan they cover the outline without gap or overlap.
 *
 * <table>
 * <caption>Methods by purpose</caption>
 * <tr><th>parts</th><td>{@code faces face edges edge between plan}</td></tr>
 * <tr><th>sizes</th><td>{@code areaAlongSlope areaOnPlan lengthOf lowestHeight highestHeight}</td></tr>
 * <tr><th>remarks</th><td>{@code problems working}</td></tr>
 * </table>
 *
 * <p>Two roofs are equal if their plans are. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Roof implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The area of all faces, each in its own plane. */
    public static final Term<Area> TOTAL_AREA_ALONG_SLOPE =
            Term.of("area of all faces along the slope", "ΣA", Area.class);

    /** The area that all faces cover on plan. */
    public static final Term<Area> TOTAL_AREA_ON_PLAN = Term.of("area of all faces on plan", "ΣP", Area.class);

    /** A face was asked for by a name that no face has. */
    public static final ProblemCode NO_SUCH_FACE =
            ProblemCode.of("roof.no-such-face", "List the faces of the roof and pick one by its name.");

    /** An edge was asked for that the roof does not have, or has more than once. */
    public static final ProblemCode NO_SUCH_EDGE =
            ProblemCode.of("roof.no-such-edge", "List the edges of the roof and pick one by its name.");

    /** From this angle on, two slopes fall away from their line to opposite sides rather than round a corner. */
    private static final double RIDGE_RATHER_THAN_HIP = StrictMath.cos(StrictMath.toRadians(135));

    private final RoofPlan plan;
    private final List<RoofFace> faces;
    private final List<RoofEdge> edges;
    private final int[][] edgesByFace;
    private final boolean[][] climbs;
    private final Numbers numbers;

    private record Numbers(Area areaAlongSlope, Area areaOnPlan) implements Serializable {}

    Roof(RoofPlan plan, LiftedFaces lifted) {
        this.plan = plan;
        List<PlanSide> sides = plan.sides();
        PlanPoint origin = sides.get(0).from();
        SpacePoint[] corners = new SpacePoint[lifted.x().length];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = SpacePoint.of(
                    origin.x().plus(Length.ofMetres(lifted.x()[i])),
                    origin.y().plus(Length.ofMetres(lifted.y()[i])),
                    Length.ofMetres(lifted.height()[i]));
        }
        List<RoofFace> made = new ArrayList<>();
        for (LiftedFaces.Loop loop : lifted.loops()) {
            PlanSide side = sides.get(loop.side());
            made.add(new RoofFace(
                    this,
                    made.size(),
                    side,
                    Arrays.stream(loop.corners())
                            .mapToDouble(i -> lifted.x()[i])
                            .toArray(),
                    Arrays.stream(loop.corners())
                            .mapToDouble(i -> lifted.y()[i])
                            .toArray(),
                    Arrays.stream(loop.corners()).mapToObj(i -> corners[i]).toList(),
                    plan.figures().get(side.name())));
        }
        this.faces = List.copyOf(made);
        this.edgesByFace = new int[made.size()][];
        this.climbs = new boolean[made.size()][];
        this.edges = List.copyOf(new Edges(lifted, corners).list);
        this.numbers = compute(Recorder.off());
    }

    /** Makes the edges while the roof is being built. */
    private final class Edges {
        private final LiftedFaces lifted;
        private final SpacePoint[] corners;
        private final List<RoofEdge> list = new ArrayList<>();
        private final Map<Long, Integer> numberByCorners = new LinkedHashMap<>();
        private final Map<String, Integer> uses = new LinkedHashMap<>();

        Edges(LiftedFaces lifted, SpacePoint[] corners) {
            this.lifted = lifted;
            this.corners = corners;
            for (int face = 0; face < faces.size(); face++) {
                LiftedFaces.Loop loop = lifted.loops().get(face);
                int n = loop.corners().length;
                edgesByFace[face] = new int[n];
                climbs[face] = new boolean[n];
                for (int i = 0; i < n; i++) {
                    addSide(face, i, loop.corners()[i], loop.corners()[(i + 1) % n], loop.beyond()[i]);
                }
            }
        }

        private void addSide(int face, int place, int a, int b, int beyond) {
            long key = ((long) Math.min(a, b) << 32) | Math.max(a, b);
            Integer known = numberByCorners.get(key);
            if (known == null) {
                known = list.size();
                numberByCorners.put(key, known);
                list.add(beyond < 0 ? outer(face, a, b, beyond + LiftedFaces.OUTSIDE) : inner(face, beyond, a, b));
            }
            edgesByFace[face][place] = known;
            climbs[face][place] = !isLevel(a, b) && lifted.height()[b] > lifted.height()[a];
        }

        private boolean isLevel(int a, int b) {
            return corners[a].height().minus(corners[b].height()).abs().compareTo(Length.STORAGE_RESOLUTION) <= 0;
        }

        /** An edge at the outside of the plan; the face lies to the left of the way from a to b. */
        private RoofEdge outer(int face, int a, int b, int side) {
            boolean level = isLevel(a, b);
            boolean climbing = lifted.height()[b] > lifted.height()[a];
            EdgeTreatment treatment = plan.sides().get(side).treatment();
            EdgeKind kind;
            if (treatment instanceof EdgeTreatment.Eaves) {
                kind = EdgeKind.EAVES;
            } else if (treatment instanceof EdgeTreatment.Gable) {
                kind = level ? EdgeKind.MONO_RIDGE : EdgeKind.VERGE;
            } else {
                kind = level ? EdgeKind.TOP_ABUTMENT : EdgeKind.SIDE_ABUTMENT;
            }
            String end = level ? "" : (climbing ? End.RIGHT : End.LEFT) + " ";
            String name = unique(faces.get(face).name() + " " + end + kind);
            // the top of a face runs from its right to its left on the way round
            boolean turned = level ? kind != EdgeKind.EAVES : !climbing;
            int from = turned ? b : a;
            int to = turned ? a : b;
            Angle planAngle = level ? Angle.ZERO : planAngle(face, from, to, !turned);
            return new RoofEdge(
                    Roof.this,
                    name,
                    kind,
                    new int[] {face},
                    corners[from],
                    corners[to],
                    planLength(face, kind, from, to),
                    List.of(planAngle));
        }

        /** An edge between two faces; the one comes first in the roof and lies to the left of the way from a to b. */
        private RoofEdge inner(int face, int other, int a, int b) {
            boolean level = isLevel(a, b);
            boolean turned = level ? isTopOf(face, a, b) : lifted.height()[b] < lifted.height()[a];
            int from = turned ? b : a;
            int to = turned ? a : b;
            Angle one = planAngle(face, from, to, !turned);
            Angle two = planAngle(other, from, to, turned);
            if (level) {
                one = one.isGreaterThan(Angle.ofDegrees(90)) ? Angle.ofDegrees(180) : Angle.ZERO;
                two = two.isGreaterThan(Angle.ofDegrees(90)) ? Angle.ofDegrees(180) : Angle.ZERO;
            }
            double fold = StrictMath.asin(faces.get(face).pitch().sin() * one.cos())
                    + StrictMath.asin(faces.get(other).pitch().sin() * two.cos());
            EdgeKind kind = kind(face, other, from, fold < 0, level && !one.equals(two));
            if (kind == EdgeKind.VALLEY) {
                one = Angle.ofDegrees(180).minus(one);
                two = Angle.ofDegrees(180).minus(two);
            }
            String name = unique(
                    kind + " " + faces.get(face).name() + "/" + faces.get(other).name());
            return new RoofEdge(
                    Roof.this,
                    name,
                    kind,
                    new int[] {face, other},
                    corners[from],
                    corners[to],
                    planLength(face, kind, from, to),
                    List.of(one, two));
        }

        private EdgeKind kind(int face, int other, int lower, boolean hollow, boolean oneAboveOther) {
            if (oneAboveOther) {
                return EdgeKind.BREAK_OF_SLOPE;
            }
            if (hollow) {
                return EdgeKind.VALLEY;
            }
            boolean startsAtOutline = lower < plan.sides().size();
            RoofFace f = faces.get(face);
            RoofFace g = faces.get(other);
            boolean opposite = f.eavesX() * g.eavesX() + f.eavesY() * g.eavesY() < RIDGE_RATHER_THAN_HIP;
            return opposite && !startsAtOutline ? EdgeKind.RIDGE : EdgeKind.HIP;
        }

        /** Whether a level line from a to b, with the face to its left, is the top of the face and not its foot. */
        private boolean isTopOf(int face, int a, int b) {
            RoofFace f = faces.get(face);
            return (lifted.x()[b] - lifted.x()[a]) * f.eavesX() + (lifted.y()[b] - lifted.y()[a]) * f.eavesY() < 0;
        }

        /**
         * The angle on plan between an edge on its way up and the eaves line of a face, measured on the side of the
         * face.
         */
        private Angle planAngle(int face, int from, int to, boolean faceIsLeft) {
            RoofFace f = faces.get(face);
            double x = lifted.x()[to] - lifted.x()[from];
            double y = lifted.y()[to] - lifted.y()[from];
            double along = x * f.eavesX() + y * f.eavesY();
            double across = Math.abs(y * f.eavesX() - x * f.eavesY());
            return Angle.ofRadians(StrictMath.atan2(across, faceIsLeft ? -along : along));
        }

        /** The plan length, as a number the face already has a working for where there is one. */
        private Figure<Length> planLength(int face, EdgeKind kind, int from, int to) {
            Length length = Length.ofMetres(
                    StrictMath.hypot(lifted.x()[to] - lifted.x()[from], lifted.y()[to] - lifted.y()[from]));
            RoofFace f = faces.get(face);
            if (kind == EdgeKind.EAVES && f.eavesWidth().equals(length)) {
                return f.figures().eavesWidth();
            }
            if (kind != EdgeKind.EAVES && f.topWidth().equals(length)) {
                return f.figures().topWidth();
            }
            Figure<Length> run = f.runFromFascia();
            return run.value().equals(length) ? run : onPlan(length);
        }

        private String unique(String name) {
            int use = uses.merge(name, 1, Integer::sum);
            return use == 1 ? name : name + " " + use;
        }
    }

    /** A number that lies in the plan and was not given as such. */
    static <T> Figure<T> onPlan(T value) {
        return Given.takenFrom(value, "the plan");
    }

    private Numbers compute(Recorder r) {
        double alongSlope = 0;
        double onPlan = 0;
        for (RoofFace face : faces) {
            alongSlope += face.areaAlongSlope().toSquareMetres();
            onPlan += face.areaOnPlan().toSquareMetres();
        }
        Area totalAlongSlope = Area.ofSquareMetres(alongSlope);
        Area totalOnPlan = Area.ofSquareMetres(onPlan);
        if (r.isOn()) {
            for (RoofFace face : faces) {
                r.use(RoofFace.AREA_ALONG_SLOPE.at(face.name()), face.working().at(RoofFace.AREA_ALONG_SLOPE));
                r.use(RoofFace.AREA_ON_PLAN.at(face.name()), face.working().at(RoofFace.AREA_ON_PLAN));
            }
            r.record(TOTAL_AREA_ALONG_SLOPE, totalAlongSlope, total(TOTAL_AREA_ALONG_SLOPE, RoofFace.AREA_ALONG_SLOPE));
            r.record(TOTAL_AREA_ON_PLAN, totalOnPlan, total(TOTAL_AREA_ON_PLAN, RoofFace.AREA_ON_PLAN));
        }
        return new Numbers(totalAlongSlope, totalOnPlan);
    }

    private Formula total(Term<Area> total, Term<Area> part) {
        Expression sum = part.at(faces.get(0).name());
        for (RoofFace face : faces.subList(1, faces.size())) {
            sum = sum.plus(part.at(face.name()));
        }
        return Formula.of(total, sum);
    }

    /** Returns the plan over which the roof stands. */
    public RoofPlan plan() {
        return plan;
    }

    /** Returns the faces, in the order of the plan sides they rise from. */
    public List<RoofFace> faces() {
        return faces;
    }

    /**
     * Returns the face of a name.
     *
     * @param name the name, which is that of the plan side from which the face rises
     * @return the face
     * @throws ProblemsException if no face has that name
     */
    public RoofFace face(String name) {
        Objects.requireNonNull(name, "name");
        return faces.stream()
                .filter(face -> face.name().equals(name))
                .findFirst()
                .orElseThrow(() -> noSuchFace(name));
    }

    private ProblemsException noSuchFace(String name) {
        List<String> names = faces.stream().map(RoofFace::name).toList();
        return new ProblemsException(List.of(
                Problem.error(NO_SUCH_FACE, "face", "\"" + name + "\"", "be one of " + String.join(", ", names))));
    }

    /** Returns all edges, each once, in the order in which they are met going round the faces. */
    public List<RoofEdge> edges() {
        return edges;
    }

    /**
     * Returns the edges of a kind.
     *
     * @param kind the kind
     * @return the edges, in the order of {@link #edges()}; empty if the roof has none of that kind
     */
    public List<RoofEdge> edges(EdgeKind kind) {
        Objects.requireNonNull(kind, "kind");
        return edges.stream().filter(edge -> edge.kind() == kind).toList();
    }

    /**
     * Returns the edge of a name.
     *
     * @param name the name, such as {@code main eaves} or {@code ridge front/back}
     * @return the edge
     * @throws ProblemsException if no edge has that name
     */
    public RoofEdge edge(String name) {
        Objects.requireNonNull(name, "name");
        return edges.stream()
                .filter(edge -> edge.name().equals(name))
                .findFirst()
                .orElseThrow(() -> {
                    List<String> names = edges.stream().map(RoofEdge::name).toList();
                    return new ProblemsException(List.of(Problem.error(
                            NO_SUCH_EDGE, "edge", "\"" + name + "\"", "be one of " + String.join(", ", names))));
                });
    }

    /**
     * Returns the edge in which two faces meet.
     *
     * @param one the name of one face
     * @param other the name of the other
     * @return the edge
     * @throws ProblemsException if a name is unknown, or the two faces meet in no edge or in several
     */
    public RoofEdge between(String one, String other) {
        RoofFace a = face(one);
        RoofFace b = face(other);
        List<RoofEdge> found = edges.stream()
                .filter(edge -> edge.faces().contains(a) && edge.faces().contains(b) && !a.equals(b))
                .toList();
        if (found.size() != 1) {
            List<String> shared = edges.stream()
                    .filter(edge -> edge.faces().size() == 2)
                    .map(RoofEdge::name)
                    .toList();
            throw new ProblemsException(List.of(Problem.error(
                    NO_SUCH_EDGE,
                    "edge between \"" + one + "\" and \"" + other + "\"",
                    found.size() + " edges",
                    "be one; faces meet in " + (shared.isEmpty() ? "no edge" : String.join(", ", shared)))));
        }
        return found.get(0);
    }

    /** Returns the area of all faces, each in its own plane. */
    public Area areaAlongSlope() {
        return numbers.areaAlongSlope;
    }

    /** Returns the area that all faces cover on plan. */
    public Area areaOnPlan() {
        return numbers.areaOnPlan;
    }

    /**
     * Returns the true length of all edges of a kind together.
     *
     * @param kind the kind
     * @return the length; zero if the roof has none of that kind
     */
    public Length lengthOf(EdgeKind kind) {
        return edges(kind).stream().map(RoofEdge::trueLength).reduce(Length.ZERO, Length::plus);
    }

    /** Returns the height of the lowest eaves, at the fascia line, over the datum of the plan. */
    public Length lowestHeight() {
        return faces.stream().map(RoofFace::fasciaHeight).reduce(Length::min).orElseThrow();
    }

    /** Returns the height of the highest apex line, over the datum of the plan. */
    public Length highestHeight() {
        return faces.stream().map(RoofFace::apexHeight).reduce(Length::max).orElseThrow();
    }

    /** Returns what a person should know about the roof; empty if there is nothing. */
    public List<Problem> problems() {
        return plan.notices();
    }

    List<RoofEdge> edgesOf(int face) {
        List<RoofEdge> found = new ArrayList<>();
        for (int number : edgesByFace[face]) {
            found.add(edges.get(number));
        }
        return List.copyOf(found);
    }

    /**
     * Whether a sloping edge bounds a face at one end: going round against the clock, the right end climbs and the left
     * one falls.
     */
    boolean isAt(int face, RoofEdge edge, End end) {
        for (int i = 0; i < edgesByFace[face].length; i++) {
            if (edges.get(edgesByFace[face][i]).equals(edge)) {
                return !edge.slopeAngle().isZero() && climbs[face][i] == (end == End.RIGHT);
            }
        }
        return false;
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Roof r && plan.equals(r.plan);
    }

    @Override
    public int hashCode() {
        return plan.hashCode();
    }

    /** Returns a summary, such as {@code lean-to at 32°: 1 face "main", 15.46 m² along the slope}. */
    @Override
    public String toString() {
        String pitches = faces.stream()
                .map(face -> Summary.pitch(face.pitch()))
                .distinct()
                .collect(Collectors.joining(", "));
        String names = faces.stream().map(face -> "\"" + face.name() + "\"").collect(Collectors.joining(", "));
        return plan.kind() + " at " + pitches + ": " + faces.size() + (faces.size() == 1 ? " face " : " faces ") + names
                + ", " + Summary.area(areaAlongSlope()) + " along the slope";
    }
}
