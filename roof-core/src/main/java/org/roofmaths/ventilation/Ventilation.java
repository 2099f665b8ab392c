package org.roofmaths.ventilation;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.roof.FacePoint;
import org.roofmaths.roof.Roof;
import org.roofmaths.roof.RoofEdge;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.roof.SpacePoint;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Working;

/**
 * The ventilation of a whole roof: what is asked at each of its edges, low and high, and which bays would get no air.
 *
 * <p>Every edge is kept apart: an opening at one eaves does not make up for another. The numbers of an edge are in the working at its
 * name, such as {@code working().at(EdgeVents.ASKED.at("main eaves"))}. To hold two editions side by side, make two of these.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Ventilation implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    private static final Set<EdgeKind> LOW = Set.of(EdgeKind.EAVES);
    private static final Set<EdgeKind> HIGH =
            Set.of(EdgeKind.RIDGE, EdgeKind.MONO_RIDGE, EdgeKind.TOP_ABUTMENT, EdgeKind.HIP);

    /** A demand was given for an edge that is not of this roof, or that neither takes air in nor lets it out. */
    public static final ProblemCode WRONG_EDGE = ProblemCode.of(
            "ventilation.wrong-edge",
            "Give demands for eaves, ridges, mono ridges, hips and top abutments of the roof.");
    /** Bays that start or end at an edge without an opening. */
    public static final ProblemCode BAYS_WITHOUT_AIR = ProblemCode.of(
            "ventilation.bays-without-air",
            "Give these bays an opening at that edge, or a way across to bays that have one.");

    private final Roof roof;
    private final List<EdgeVents> edges;
    private final Map<String, EdgeVents> byName;

    private Ventilation(Roof roof, Map<String, EdgeVents> byName) {
        this.roof = roof;
        this.byName = byName;
        this.edges = List.copyOf(byName.values());
    }

    /**
     * Returns the ventilation of a roof.
     *
     * @param roof the roof
     * @param demands what is asked at each edge; an edge left out has no opening
     * @return the ventilation
     * @throws org.roofmaths.problem.ProblemsException if an edge is not of this roof, or neither takes air in nor lets it out
     */
    public static Ventilation of(Roof roof, Map<RoofEdge, VentDemand> demands) {
        Problems problems = Problems.none();
        for (RoofEdge edge : demands.keySet()) {
            problems.require(
                    roof.edges().contains(edge) && (LOW.contains(edge.kind()) || HIGH.contains(edge.kind())),
                    WRONG_EDGE,
                    "edge",
                    edge.kind() + " \"" + edge.name() + "\"",
                    "be an eaves, ridge, mono ridge, hip or top abutment of the roof");
        }
        problems.throwIfErrors();
        Map<String, EdgeVents> byName = new LinkedHashMap<>();
        for (RoofEdge edge : roof.edges()) {
            VentDemand demand = demands.get(edge);
            if (demand != null) {
                byName.put(edge.name(), EdgeVents.along(edge, demand));
            }
        }
        return new Ventilation(roof, byName);
    }

    /** Returns the ventilation of every edge for which there is a demand, in the order of the roof's edges. */
    public List<EdgeVents> edges() {
        return edges;
    }

    /** Returns the ventilation of the low edges: eaves. */
    public List<EdgeVents> low() {
        return ofKinds(LOW);
    }

    /** Returns the ventilation of the high edges: ridges, mono ridges, hips and top abutments. */
    public List<EdgeVents> high() {
        return ofKinds(HIGH);
    }

    private List<EdgeVents> ofKinds(Set<EdgeKind> kinds) {
        return edges.stream()
                .filter(vents -> kinds.contains(roof.edge(vents.name()).kind()))
                .toList();
    }

    /** Returns the free area asked at all low edges together. */
    public Area lowAsked() {
        return sum(low());
    }

    /** Returns the free area asked at all high edges together. */
    public Area highAsked() {
        return sum(high());
    }

    private static Area sum(List<EdgeVents> edges) {
        return edges.stream().map(EdgeVents::asked).reduce(Area.ZERO, Area::plus);
    }

    /**
     * Returns the ventilation of one edge.
     *
     * @param edge the name of the edge
     * @return its ventilation
     * @throws org.roofmaths.problem.ProblemsException if there is no demand for such an edge
     */
    public EdgeVents at(String edge) {
        EdgeVents found = byName.get(Objects.requireNonNull(edge, "edge"));
        Problems.none()
                .require(
                        found != null,
                        WRONG_EDGE,
                        "edge",
                        "\"" + edge + "\"",
                        "be one of " + String.join(", ", byName.keySet()))
                .throwIfErrors();
        return Objects.requireNonNull(found);
    }

    /**
     * Returns the way of the air up each bay of a face, taken at the middle of the bay.
     *
     * @param face the name of the face
     * @param bays the bays between its rafters
     * @param firstRafter how far the outside of the first rafter stands from the left end of the face's eaves, such as a verge overhang
     * @return a path for each bay whose middle lies on the face, from the left
     * @throws org.roofmaths.problem.ProblemsException if the roof has no such face
     */
    public List<BayPath> paths(String face, RafterBays bays, Length firstRafter) {
        RoofFace on = roof.face(face);
        List<BayPath> paths = new ArrayList<>();
        for (Bay bay : bays.bays()) {
            Bay placed = new Bay(
                    bay.number(), bay.start().plus(firstRafter), bay.end().plus(firstRafter));
            BayPath path = path(on, placed);
            if (path != null) {
                paths.add(path);
            }
        }
        return List.copyOf(paths);
    }

    private @Nullable BayPath path(RoofFace face, Bay bay) {
        double at = bay.middle().toSi();
        List<FacePoint> flat = face.flatShape().corners();
        List<SpacePoint> corners = face.polygon();
        RoofEdge below = null;
        RoofEdge above = null;
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < flat.size(); i++) {
            int next = (i + 1) % flat.size();
            double from = flat.get(i).along().toSi();
            double to = flat.get(next).along().toSi();
            if (from == to || at < StrictMath.min(from, to) || at > StrictMath.max(from, to)) {
                continue;
            }
            double up = flat.get(i).up().toSi()
                    + (flat.get(next).up().toSi() - flat.get(i).up().toSi()) * (at - from) / (to - from);
            RoofEdge edge = edgeBetween(face, corners.get(i), corners.get(next));
            if (up < lowest) {
                lowest = up;
                below = edge;
            }
            if (up > highest) {
                highest = up;
                above = edge;
            }
        }
        return below == null || above == null
                ? null
                : new BayPath(bay, below, above, opened(below, LOW), opened(above, HIGH));
    }

    private static RoofEdge edgeBetween(RoofFace face, SpacePoint a, SpacePoint b) {
        return face.edges().stream()
                .filter(edge -> (edge.from().equals(a) && edge.to().equals(b))
                        || (edge.from().equals(b) && edge.to().equals(a)))
                .findFirst()
                .orElseThrow(); // each side of a face is one of its edges
    }

    private BayPath.Opened opened(RoofEdge edge, Set<EdgeKind> kinds) {
        EdgeVents vents = byName.get(edge.name());
        return vents != null && vents.demand().isAsked() && kinds.contains(edge.kind())
                ? BayPath.Opened.OPEN
                : BayPath.Opened.CLOSED;
    }

    /**
     * Returns which bays of a face lack an inlet or an outlet: those that start at a valley, or end at a hip, verge, valley or wall without
     * an opening. Along which edge, and by how much air each must be helped across.
     *
     * <p>Where the insulation lies at the ceiling, the loft joins all bays and only those whose eaves are closed matter; where it follows
     * the rafters, every bay stands alone.
     *
     * @param face the name of the face
     * @param bays the bays between its rafters
     * @param firstRafter how far the outside of the first rafter stands from the left end of the face's eaves
     * @return a finding for each edge at which bays lack an opening; empty if every bay has both
     * @throws org.roofmaths.problem.ProblemsException if the roof has no such face
     */
    public List<Problem> baysWithoutAir(String face, RafterBays bays, Length firstRafter) {
        List<BayPath> paths = paths(face, bays, firstRafter);
        List<Problem> found = new ArrayList<>();
        found.addAll(lacking(
                face,
                "inlet",
                paths.stream()
                        .filter(BayPath::lacksInlet)
                        .collect(Collectors.groupingBy(BayPath::below, LinkedHashMap::new, Collectors.toList())),
                paths.stream().map(BayPath::above).distinct().toList()));
        found.addAll(lacking(
                face,
                "outlet",
                paths.stream()
                        .filter(BayPath::lacksOutlet)
                        .collect(Collectors.groupingBy(BayPath::above, LinkedHashMap::new, Collectors.toList())),
                paths.stream().map(BayPath::below).distinct().toList()));
        return List.copyOf(found);
    }

    private List<Problem> lacking(
            String face, String what, Map<RoofEdge, List<BayPath>> byEdge, List<RoofEdge> otherEnds) {
        return byEdge.entrySet().stream()
                .map(entry -> {
                    RoofEdge edge = entry.getKey();
                    List<BayPath> paths = entry.getValue();
                    String numbers = String.join(
                            ", ",
                            paths.stream().map(path -> "" + path.bay().number()).toList());
                    boolean isOne = paths.size() == 1;
                    String message = (isOne ? "bay " : "bays ") + numbers + " of the face \"" + face + "\""
                            + (isOne ? " has no " : " have no ") + what + ", since the " + edge.kind() + " \""
                            + edge.name()
                            + "\" at " + (isOne ? "its " : "their ") + (what.equals("inlet") ? "foot" : "head")
                            + " is closed";
                    return Problem.finding(
                            BAYS_WITHOUT_AIR,
                            edge.name(),
                            paths.size(),
                            0,
                            message,
                            mends(what, edge, paths, otherEnds));
                })
                .toList();
    }

    private List<Mend> mends(String what, RoofEdge edge, List<BayPath> paths, List<RoofEdge> otherEnds) {
        List<Mend> mends = new ArrayList<>();
        mends.add(Mend.of(
                edge.kind() + " \"" + edge.name() + "\"", "an opening in each of these bays", what + " in every bay"));
        otherEnds.stream()
                .map(end -> byName.get(end.name()))
                .filter(vents -> vents != null && vents.demand().isAsked())
                .findFirst()
                .ifPresent(vents -> {
                    Length widest =
                            paths.stream().map(path -> path.bay().clearWidth()).reduce(Length.ZERO, Length::max);
                    Area across = Area.ofSquareMetres(vents.asked().toSi()
                            * widest.toSi()
                            / vents.length().toSi());
                    mends.add(Mend.of(
                            "way across to the next bay",
                            "at least " + Vent.text(across) + " clear from each of these bays",
                            across,
                            "air through the neighbouring bays"));
                });
        return mends;
    }

    @Override
    public Working working() {
        return Working.of((Recorder r) -> edges.forEach(edge -> edge.compute(r.at(edge.name()))));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Ventilation v && roof.equals(v.roof) && edges.equals(v.edges);
    }

    @Override
    public int hashCode() {
        return Objects.hash(roof, edges);
    }

    /** Returns the edges, one a line. */
    @Override
    public String toString() {
        return String.join("\n", edges.stream().map(EdgeVents::toString).toList());
    }
}
