package org.roofmaths.roof;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Attempt;
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
 * <p>Two roofs are equal if their plans and faces are. Immutable and thread-safe.
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

    /** A pitch is too flat or too steep to be carried exactly. */
    public static final ProblemCode PITCH_OUT_OF_RANGE =
            ProblemCode.of("roof.pitch-out-of-range", "Check the pitch and its unit.");

    /** Sides of the plan come too close to tell whether they touch. */
    public static final ProblemCode TOO_CLOSE = ProblemCode.of(
            "roof.too-close", "Take out sides and gaps of a few nanometres; they are slips of rounding.");

    /** Two eaves run on in one line at two pitches, and one of them would have a face without area. */
    public static final ProblemCode UNEQUAL_IN_LINE =
            ProblemCode.of("roof.unequal-in-line", "Give both one pitch, or make a corner where the pitch changes.");

    /** Two eaves share a corner but not a level. */
    public static final ProblemCode LEVELS_AT_CORNER = ProblemCode.of(
            "roof.levels-at-corner", "Bring both fascias to one level, or part them by a gable or a wall.");

    /** A roof rises to an eaves before the eaves starts. */
    public static final ProblemCode EAVES_OVERRUN = ProblemCode.of(
            "roof.eaves-overrun", "Lower the eaves that is reached, or flatten the roof that reaches it.");

    /** A part of the plan is shut in by gables and walls. */
    public static final ProblemCode NEVER_COVERED =
            ProblemCode.of("roof.never-covered", "Make one of the sides around it an eaves.");

    /** The solver's own check refused its result. */
    public static final ProblemCode NOT_PROVED = ProblemCode.of(
            "roof.not-proved", "Move a corner by a millimetre, and report the plan: this is a fault of the library.");

    /** From this angle on, two slopes fall away from their line to opposite sides rather than round a corner. */
    private static final double RIDGE_RATHER_THAN_HIP = StrictMath.cos(StrictMath.toRadians(135));

    private final RoofPlan plan;
    private final List<RoofFace> faces;
    private final List<RoofEdge> edges;
    private final int[][] edgesByFace;
    private final boolean[][] climbs;
    private final Numbers numbers;

    private record Numbers(Area areaAlongSlope, Area areaOnPlan) implements Serializable {}

    private Roof(RoofPlan plan, Lifted lifted) {
        this.plan = plan;
        List<PlanSide> sides = plan.sides();
        SpacePoint[] corners = new SpacePoint[lifted.x().length];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = SpacePoint.of(
                    lifted.originX().plus(Length.ofMetres(lifted.x()[i])),
                    lifted.originY().plus(Length.ofMetres(lifted.y()[i])),
                    lifted.lowest().plus(Length.ofMetres(lifted.height()[i])));
        }
        List<RoofFace> made = new ArrayList<>();
        for (Lifted.Face face : lifted.faces()) {
            PlanSide side = sides.get(face.side());
            made.add(new RoofFace(
                    this,
                    made.size(),
                    side,
                    lifted,
                    face,
                    corners,
                    plan.figures().get(side.name())));
        }
        this.faces = List.copyOf(made);
        this.edgesByFace = new int[made.size()][];
        this.climbs = new boolean[made.size()][];
        this.edges = List.copyOf(new Edges(lifted, corners).list);
        this.numbers = compute(Recorder.off());
    }

    /**
     * Returns the roof over a plan.
     *
     * @param plan the plan
     * @return the roof
     * @throws ProblemsException if the plan has no roof, naming the sides and the place
     */
    public static Roof over(RoofPlan plan) {
        return attempt(plan).orThrow();
    }

    /**
     * Returns the roof over a plan with what a person should know about it, or why the plan has none.
     *
     * @param plan the plan
     * @return the roof or the problems
     */
    public static Attempt<Roof> attempt(RoofPlan plan) {
        Attempt<Lifted> lifted = Lifted.over(plan);
        return lifted.value()
                .map(found -> Attempt.of(new Roof(plan, found), plan.notices()))
                .orElseGet(() -> Attempt.failed(lifted.problems()));
    }

    /** Makes the edges while the roof is being built. */
    private final class Edges {
        private final Lifted lifted;
        private final SpacePoint[] corners;
        private final List<RoofEdge> list = new ArrayList<>();
        private final Map<Long, Integer> numberByCorners = new LinkedHashMap<>();
        private final Map<String, Integer> uses = new LinkedHashMap<>();

        Edges(Lifted lifted, SpacePoint[] corners) {
            this.lifted = lifted;
            this.corners = corners;
            for (int number = 0; number < faces.size(); number++) {
                Lifted.Face face = lifted.faces().get(number);
                int sides = face.rings().stream().mapToInt(ring -> ring.length).sum();
                edgesByFace[number] = new int[sides];
                climbs[number] = new boolean[sides];
                int place = 0;
                for (int r = 0; r < face.rings().size(); r++) {
                    int[] ring = face.rings().get(r);
                    for (int i = 0; i < ring.length; i++) {
                        int beyond = face.beyond().get(r)[i];
                        addSide(number, place++, ring[i], ring[(i + 1) % ring.length], beyond);
                    }
                }
            }
        }

        private void addSide(int face, int place, int a, int b, int beyond) {
            long key = ((long) Math.min(a, b) << 32) | Math.max(a, b);
            Integer known = Lifted.isFace(beyond) ? numberByCorners.get(key) : null;
            if (known == null) {
                known = list.size();
                numberByCorners.put(key, known);
                list.add(Lifted.isFace(beyond) ? inner(face, beyond, a, b) : outer(face, a, b, beyond));
            }
            edgesByFace[face][place] = known;
            climbs[face][place] = !isLevel(a, b) && lifted.height()[b] > lifted.height()[a];
        }

        private boolean isLevel(int a, int b) {
            return corners[a].height().minus(corners[b].height()).abs().compareTo(Length.STORAGE_RESOLUTION) <= 0;
        }

        /** An edge at an eaves or a wall; the face lies to the left of the way from a to b. */
        private RoofEdge outer(int face, int a, int b, int beyond) {
            boolean level = isLevel(a, b);
            boolean climbing = lifted.height()[b] > lifted.height()[a];
            PlanSide side = plan.sides().get(Lifted.side(beyond));
            EdgeKind kind;
            if (Lifted.isEaves(beyond)) {
                kind = EdgeKind.EAVES;
            } else if (side.treatment() instanceof EdgeTreatment.Gable && !Lifted.isFoot(beyond)) {
                kind = level ? EdgeKind.MONO_RIDGE : EdgeKind.VERGE;
            } else {
                kind = level ? EdgeKind.TOP_ABUTMENT : EdgeKind.SIDE_ABUTMENT;
            }
            String end = level ? "" : (climbing ? End.RIGHT : End.LEFT) + " ";
            String name = unique(
                    (kind == EdgeKind.EAVES ? side.name() : faces.get(face).name()) + " " + end + kind);
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
        return other instanceof Roof r && plan.equals(r.plan) && faces.equals(r.faces);
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
