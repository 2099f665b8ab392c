package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.roof.Roof;
import org.roofmaths.roof.RoofEdge;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.units.Length;

/**
 * A whole roof set out, face by face.
 *
 * <p>Where the roof has a hip or a valley beside a face, the courses of that face are cut to it, whatever end the scheme names there;
 * the scheme's ends count where the roof has a verge or a wall. Courses of neighbouring faces are divided each by itself;
 * {@link SameLevels} tells the gauges at which they would meet.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class RoofLayout implements Serializable {
    private static final long serialVersionUID = 1L;

    /** A face of the roof has no scheme, or a scheme is for a face that the roof does not have. */
    public static final ProblemCode SCHEMES =
            ProblemCode.of("roof-layout.schemes", "Give one scheme for each face of the roof, by the face's name.");

    private final Map<String, FaceLayout> faces;

    private RoofLayout(Map<String, FaceLayout> faces) {
        this.faces = faces;
    }

    /**
     * Sets out every face by the same scheme.
     *
     * @param roof the roof
     * @param scheme how its faces are to be covered; left and right are those of each face, seen from outside
     * @return the layout
     */
    public static RoofLayout on(Roof roof, LayoutScheme scheme) {
        Map<String, LayoutScheme> schemes = new LinkedHashMap<>();
        roof.faces().forEach(face -> schemes.put(face.name(), scheme));
        return on(roof, schemes);
    }

    /**
     * Sets out every face by its own scheme.
     *
     * @param roof the roof
     * @param schemes a scheme for each face, by the face's name
     * @return the layout
     * @throws ProblemsException if a face has no scheme, or a scheme no face
     */
    public static RoofLayout on(Roof roof, Map<String, LayoutScheme> schemes) {
        Problems problems = Problems.none();
        List<String> names = roof.faces().stream().map(RoofFace::name).toList();
        for (String name : names) {
            problems.require(
                    schemes.containsKey(name),
                    SCHEMES,
                    "schemes",
                    "none for \"" + name + "\"",
                    "hold one for each face");
        }
        for (String name : schemes.keySet()) {
            problems.require(
                    names.contains(name),
                    SCHEMES,
                    "schemes",
                    "one for \"" + name + "\"",
                    "be for " + String.join(", ", names));
        }
        problems.throwIfErrors();
        Map<String, FaceLayout> faces = new LinkedHashMap<>();
        for (RoofFace face : roof.faces()) {
            LayoutScheme scheme = Objects.requireNonNull(schemes.get(face.name()));
            faces.put(face.name(), FaceLayout.on(face, withEdges(face, scheme)));
        }
        return new RoofLayout(Collections.unmodifiableMap(faces));
    }

    /** The scheme with the ends that the roof has beside the eaves of a face. */
    private static LayoutScheme withEdges(RoofFace face, LayoutScheme scheme) {
        List<RoofEdge> edges = face.edges();
        // against the clock from the eaves: the right end comes next, the left end last
        FaceEnd right = end(edges.get(1).kind(), scheme.right());
        FaceEnd left = end(edges.get(edges.size() - 1).kind(), scheme.left());
        return left.equals(scheme.left()) && right.equals(scheme.right())
                ? scheme
                : scheme.withLeft(left).withRight(right);
    }

    private static FaceEnd end(EdgeKind kind, FaceEnd asked) {
        return switch (kind) {
            case HIP -> FaceEnd.hip();
            case VALLEY -> asked.kind() == EdgeKind.VALLEY ? asked : FaceEnd.valley(Length.ZERO);
            default -> asked;
        };
    }

    /** Returns the layouts by the names of their faces, in the order of the roof. */
    public Map<String, FaceLayout> faces() {
        return faces;
    }

    /**
     * Returns the layout of one face.
     *
     * @param name the name of the face
     * @return its layout
     * @throws ProblemsException if there is no such face
     */
    public FaceLayout face(String name) {
        FaceLayout found = faces.get(Objects.requireNonNull(name, "name"));
        if (found == null) {
            throw new ProblemsException(
                    List.of(Problem.error(SCHEMES, "face", name, "be one of " + String.join(", ", faces.keySet()))));
        }
        return found;
    }

    /**
     * Returns how many pieces of one kind lie on all faces that could be counted.
     *
     * @param piece the kind of piece
     * @return the number
     */
    public long count(PieceKind piece) {
        return faces.values().stream()
                .flatMap(face -> face.counts().value().stream())
                .mapToLong(counts -> counts.count(piece))
                .sum();
    }

    /** Returns every finding and notice, each at its face. */
    public List<Problem> problems() {
        List<Problem> all = new ArrayList<>();
        faces.forEach((name, face) ->
                face.problems().forEach(problem -> all.add(problem.at("face \"" + name + "\", " + problem.where()))));
        return List.copyOf(all);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof RoofLayout r && faces.equals(r.faces);
    }

    @Override
    public int hashCode() {
        return faces.hashCode();
    }

    /** Returns each face with its courses and columns. */
    @Override
    public String toString() {
        List<String> each = new ArrayList<>();
        faces.forEach((name, face) -> each.add("\"" + name + "\": " + face));
        return String.join("\n", each);
    }
}
