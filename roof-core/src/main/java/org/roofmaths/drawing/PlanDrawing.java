package org.roofmaths.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.roof.Roof;
import org.roofmaths.roof.RoofEdge;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.roof.SpacePoint;
import org.roofmaths.units.Length;
import org.roofmaths.units.Rounding;

/**
 * A roof from above: its edges by kind with their true lengths, the fall and pitch of each face, the outer sizes.
 *
 * <p>Dimensions are level sizes, as a plan shows them. The number beside a ridge, hip, valley or verge is the true length of that line, which is longer
 * than it is drawn where the line slopes.
 *
 * @since 0.1
 */
public final class PlanDrawing {
    private static final Length NEAR = Length.ofMillimetres(10);
    private static final Rounding<Length> NEAREST = Rounding.toNearest(Length.ofMillimetres(1));
    private static final Length ARROW = Length.ofMillimetres(12);

    private PlanDrawing() {}

    /**
     * Returns the drawing of a roof from above.
     *
     * @param name what the roof is called
     * @param roof the roof
     * @param scale the scale
     * @return the drawing
     */
    public static Drawing of(String name, Roof roof, DrawingScale scale) {
        List<Shape> faces = new ArrayList<>();
        roof.faces().forEach(face -> face(face, scale, faces));
        List<Shape> edges = new ArrayList<>();
        roof.edges().forEach(edge -> edge(edge, scale, edges));
        List<DrawingLayer> layers = List.of(
                new DrawingLayer("faces", faces),
                new DrawingLayer("edges", edges),
                new DrawingLayer("sizes", sizes(roof)));
        return Drawing.of(name + ", from above", description(roof), scale, layers)
                .withNotes(
                        List.of(
                                "Numbers beside sloping edges are true lengths, longer than drawn; all other sizes are level."));
    }

    private static String description(Roof roof) {
        return "Plan of a roof: " + roof + ". Faces: "
                + roof.faces().stream()
                        .map(face -> face.name() + " at " + pitch(face))
                        .collect(Collectors.joining(", "))
                + ". Edges: "
                + roof.edges().stream()
                        .map(edge -> edge.name() + " " + rounded(edge.trueLength()))
                        .collect(Collectors.joining(", "))
                + ".";
    }

    private static String pitch(RoofFace face) {
        return String.format(Locale.ROOT, "%.1f°", face.pitch().toDegrees());
    }

    private static String rounded(Length length) {
        return Math.round(length.toMillimetres()) + " mm";
    }

    private static DrawingPoint point(SpacePoint point) {
        return DrawingPoint.of(point.x(), point.y());
    }

    private static void face(RoofFace face, DrawingScale scale, List<Shape> shapes) {
        DrawingPoint middle = middle(face);
        double down = face.downSlope().toRadians();
        Length half = scale.toReal(ARROW).dividedBy(2);
        DrawingPoint tail = middle.plus(half.times(-StrictMath.cos(down)), half.times(-StrictMath.sin(down)));
        DrawingPoint head = middle.plus(half.times(StrictMath.cos(down)), half.times(StrictMath.sin(down)));
        shapes.add(new Arrow(LineKind.FALL, tail, head));
        shapes.add(new Label(
                face.name() + " " + pitch(face),
                middle.plus(scale.toReal(Length.ofMillimetres(3)), Length.ZERO),
                Anchor.START));
    }

    /** The centre of gravity of a face on plan. */
    private static DrawingPoint middle(RoofFace face) {
        double x = 0;
        double y = 0;
        double twiceArea = 0;
        List<SpacePoint> corners = face.polygon();
        for (int i = 0; i < corners.size(); i++) {
            SpacePoint a = corners.get(i);
            SpacePoint b = corners.get((i + 1) % corners.size());
            double cross = a.x().toMetres() * b.y().toMetres() - b.x().toMetres() * a.y().toMetres();
            twiceArea += cross;
            x += (a.x().toMetres() + b.x().toMetres()) * cross;
            y += (a.y().toMetres() + b.y().toMetres()) * cross;
        }
        return DrawingPoint.of(Length.ofMetres(x / (3 * twiceArea)), Length.ofMetres(y / (3 * twiceArea)));
    }

    private static void edge(RoofEdge edge, DrawingScale scale, List<Shape> shapes) {
        DrawingPoint from = point(edge.from());
        DrawingPoint to = point(edge.to());
        shapes.add(new Line(kind(edge.kind()), from, to));
        if (edge.kind() == EdgeKind.EAVES) {
            return; // its length is a dimension
        }
        DrawingPoint middle = DrawingPoint.of(
                from.x().plus(to.x()).dividedBy(2), from.y().plus(to.y()).dividedBy(2));
        String words = edge.kind() + " " + FaceDrawing.number(NEAREST.apply(edge.trueLength()));
        Length beside = scale.toReal(Length.ofMillimetres(2));
        boolean upright =
                to.y().minus(from.y()).abs().isLongerThan(to.x().minus(from.x()).abs());
        if (!edge.kind().isBetweenFaces() && upright) {
            // beside the roof, not over its edge
            boolean atRight =
                    middle.x().isLongerThan(middle(edge.faces().get(0)).x());
            shapes.add(new Label(
                    words,
                    middle.plus(atRight ? beside : beside.negated(), Length.ZERO),
                    atRight ? Anchor.START : Anchor.END));
        } else {
            shapes.add(new Label(words, middle.plus(Length.ZERO, beside), Anchor.MIDDLE));
        }
    }

    private static LineKind kind(EdgeKind kind) {
        return switch (kind) {
            case EAVES -> LineKind.EAVES;
            case VERGE -> LineKind.VERGE;
            case RIDGE, MONO_RIDGE -> LineKind.RIDGE;
            case HIP -> LineKind.HIP;
            case VALLEY -> LineKind.VALLEY;
            case TOP_ABUTMENT, SIDE_ABUTMENT -> LineKind.ABUTMENT;
            case BREAK_OF_SLOPE -> LineKind.BREAK;
        };
    }

    private static List<Shape> sizes(Roof roof) {
        List<Shape> shapes = new ArrayList<>();
        SpacePoint any = roof.faces().get(0).polygon().get(0);
        Length left = any.x();
        Length right = any.x();
        Length low = any.y();
        Length high = any.y();
        for (RoofFace face : roof.faces()) {
            for (SpacePoint corner : face.polygon()) {
                left = left.min(corner.x());
                right = right.max(corner.x());
                low = low.min(corner.y());
                high = high.max(corner.y());
            }
        }
        Length wholeLeft = left;
        Length wholeRight = right;
        boolean said = roof.edges(EdgeKind.EAVES).stream()
                .anyMatch(edge -> edge.from().x().min(edge.to().x()).equals(wholeLeft)
                        && edge.from().x().max(edge.to().x()).equals(wholeRight)
                        && edge.from().y().equals(edge.to().y()));
        if (!said) {
            shapes.add(new Dimension(
                    "", DrawingPoint.of(left, low), DrawingPoint.of(right, low), DimensionSide.BELOW, NEAR.plus(NEAR)));
        }
        shapes.add(new Dimension(
                "", DrawingPoint.of(right, low), DrawingPoint.of(right, high), DimensionSide.RIGHT, NEAR.times(3L)));
        for (RoofEdge edge : roof.edges(EdgeKind.EAVES)) {
            // the roof lies to the left of its eaves
            shapes.add(
                    new Dimension("eaves", point(edge.from()), point(edge.to()), DimensionSide.RIGHT_OF_THE_WAY, NEAR));
        }
        return shapes;
    }
}
