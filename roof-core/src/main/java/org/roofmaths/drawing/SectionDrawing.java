package org.roofmaths.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.covering.SingleLapUnit;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.End;
import org.roofmaths.settingout.BattenDemand;
import org.roofmaths.settingout.BattenEdge;
import org.roofmaths.settingout.Columns;
import org.roofmaths.settingout.CourseKind;
import org.roofmaths.settingout.CourseLine;
import org.roofmaths.settingout.Courses;
import org.roofmaths.settingout.FaceLayout;
import org.roofmaths.settingout.Piece;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;

/**
 * Sections through the edges of a roof, drawn to the sizes of a layout: eaves, ridge, top abutment, verge.
 *
 * <p>They are sketches of where things lie, not details to build from: nothing is said about fixing, ventilation or strength. Units are drawn as flat
 * plates of their thickness, their tails lifted by the units beneath; battens lie on the rafters. The left end of the face is shown.
 *
 * <p>The layout must have courses and battens, and its face must know its pitch.
 *
 * @since 0.1
 */
public final class SectionDrawing {
    /** A layout without what a section shows. */
    public static final ProblemCode INCOMPLETE = ProblemCode.of(
            "section.incomplete",
            "Set out the face with battens, on a shape that knows its pitch, so that its courses fit.");

    private static final Length NEAR = Length.ofMillimetres(8);
    private static final String SKETCH =
            "A sketch of where things lie: fixings, ventilation and strength are not shown.";

    private final FaceLayout layout;
    private final DrawingScale scale;
    private final double cos;
    private final double sin;
    private final List<Shape> timber = new ArrayList<>();
    private final List<Shape> covering = new ArrayList<>();
    private final List<Shape> sizes = new ArrayList<>();

    private SectionDrawing(FaceLayout layout, DrawingScale scale) {
        this.layout = layout;
        this.scale = scale;
        Pitch pitch = layout.shape().pitch().orElseThrow();
        cos = pitch.cos();
        sin = pitch.sin();
    }

    private static SectionDrawing on(FaceLayout layout, DrawingScale scale) {
        String missing = layout.shape().pitch().isEmpty()
                ? "no pitch"
                : layout.scheme().battens().isEmpty()
                        ? "no battens"
                        : layout.courses().hasValue() ? "" : "no courses that fit";
        if (!missing.isEmpty()) {
            throw new ProblemsException(List.of(
                    Problem.error(INCOMPLETE, "layout", missing, "have courses and battens, and know its pitch")));
        }
        return new SectionDrawing(layout, scale);
    }

    /**
     * Returns the section through the eaves.
     *
     * @param name what the face is called
     * @param layout the layout of the face
     * @param parts the parts that the layout does not know
     * @param scale the scale
     * @return the drawing
     * @throws ProblemsException if the layout has no courses or battens, or does not know its pitch
     */
    public static Drawing eaves(String name, FaceLayout layout, EavesParts parts, DrawingScale scale) {
        return on(layout, scale).eaves(name, parts);
    }

    /**
     * Returns the section through the ridge, where the same covering meets itself at the same pitch.
     *
     * @param name what the face is called
     * @param layout the layout of the face
     * @param parts the parts that the layout does not know
     * @param scale the scale
     * @return the drawing
     * @throws ProblemsException if the layout has no courses or battens, or does not know its pitch
     */
    public static Drawing ridge(String name, FaceLayout layout, RidgeParts parts, DrawingScale scale) {
        return on(layout, scale).ridge(name, parts);
    }

    /**
     * Returns the section through a top abutment with its cover flashing.
     *
     * @param name what the face is called
     * @param layout the layout of the face
     * @param parts the parts that the layout does not know
     * @param scale the scale
     * @return the drawing
     * @throws ProblemsException if the layout has no courses or battens, or does not know its pitch
     */
    public static Drawing abutment(String name, FaceLayout layout, AbutmentParts parts, DrawingScale scale) {
        return on(layout, scale).abutment(name, parts);
    }

    /**
     * Returns the section through a verge, square to the slope, looking up it.
     *
     * @param name what the face is called
     * @param layout the layout of the face
     * @param end which end; it must be a verge
     * @param parts the parts that the layout does not know
     * @param scale the scale
     * @return the drawing
     * @throws ProblemsException if the end is no verge, or the columns do not fit
     */
    public static Drawing verge(String name, FaceLayout layout, End end, VergeParts parts, DrawingScale scale) {
        boolean verge =
                (end == End.LEFT ? layout.scheme().left() : layout.scheme().right()).isVerge();
        if (!verge || !layout.columns().hasValue()) {
            throw new ProblemsException(List.of(Problem.error(
                    INCOMPLETE,
                    "layout",
                    verge ? "no columns that fit" : "a wall there",
                    "have columns and a verge at the " + end)));
        }
        return on(layout, scale).verge(name, end, parts);
    }

    private Courses courses() {
        return layout.courses().orThrow();
    }

    private BattenDemand battens() {
        return layout.scheme().battens().orElseThrow();
    }

    private Length thickness() {
        return layout.scheme().unit().thickness();
    }

    private boolean isDoubleLap() {
        return layout.scheme().unit() instanceof DoubleLapUnit;
    }

    /** A point so far up the slope from the fascia line, in the rafter plane, and so far square to the slope over it. */
    private DrawingPoint at(Length up, Length square) {
        double u = up.toMetres();
        double s = square.toMetres();
        return DrawingPoint.of(Length.ofMetres(u * cos - s * sin), Length.ofMetres(u * sin + s * cos));
    }

    private Length slope() {
        return layout.shape().slopeLengths().left();
    }

    private Length gauge() {
        return courses().gauge().left();
    }

    private String pitchWords() {
        return String.format(
                Locale.ROOT, "%.1f°", layout.shape().pitch().orElseThrow().toDegrees());
    }

    private Drawing drawing(String title, String description, List<DrawingLayer> more) {
        List<DrawingLayer> layers = new ArrayList<>(more);
        layers.add(new DrawingLayer("timber", timber));
        layers.add(new DrawingLayer("covering", covering));
        layers.add(new DrawingLayer("sizes", sizes));
        return Drawing.of(title, description, scale, layers).withNotes(List.of(SKETCH));
    }

    // Parts that sections share

    private void box(String meaning, Fill fill, List<Shape> into, DrawingPoint... corners) {
        into.add(new Polygon(meaning, LineKind.OUTLINE, fill, List.of(corners)));
    }

    /** The rafter from one place up the slope, cut square there, to its upper end, cut plumb. */
    private void rafter(Length from, Length to, Length depth) {
        DrawingPoint top = at(to, Length.ZERO);
        DrawingPoint under = DrawingPoint.of(top.x(), top.y().minus(Length.ofMetres(depth.toMetres() / cos)));
        box("rafter", Fill.WHITE, timber, at(from, depth.negated()), under, top, at(from, Length.ZERO));
    }

    /** The battens and units of the courses between two places up the slope. */
    private void courses(Length from, Length to) {
        Length width = battens().width().value();
        Length depth = battens().depth().value();
        for (CourseLine line : courses().lines()) {
            Length on = line.exact().left();
            if (on.isShorterThan(from) || on.isLongerThan(to)) {
                continue;
            }
            if (line.kind() != CourseKind.UNDER_EAVES || !courses().sharesFirstBatten()) {
                Length top = courses().battenEdge() == BattenEdge.TOP_EDGE ? on : on.plus(width.dividedBy(2));
                Length low = top.minus(width);
                box(
                        "batten",
                        Fill.SLANTED,
                        timber,
                        at(low, Length.ZERO),
                        at(top, Length.ZERO),
                        at(top, depth),
                        at(low, depth));
            }
        }
        for (CourseLine line : courses().lines()) {
            Length on = line.exact().left();
            if (!on.isShorterThan(from) && !on.isLongerThan(to)) {
                unit(line, on);
            }
        }
    }

    /** One unit: flat on its batten, its tail lifted by what lies beneath it. */
    private void unit(CourseLine line, Length on) {
        Length hanging = hanging(line);
        Length length = length(line);
        Length depth = battens().depth().value();
        Length thick = thickness();
        Length lift = lift(line);
        Length tail = on.minus(hanging);
        Length head = tail.plus(length).min(slope());
        // the lift at the tail is taken back evenly up to the batten
        Length overhead = lift.times(-head.minus(on).toMetres() / hanging.toMetres());
        covering.add(new Polygon(
                line.kind() == CourseKind.UNDER_EAVES ? "under-eaves unit" : "unit",
                LineKind.OUTLINE,
                Fill.WHITE,
                List.of(
                        at(tail, depth.plus(lift)),
                        at(head, depth.plus(overhead)),
                        at(head, depth.plus(overhead).plus(thick)),
                        at(tail, depth.plus(lift).plus(thick)))));
    }

    /** By how much the tail of a unit is lifted over its batten by what lies beneath it. */
    private Length lift(CourseLine line) {
        return thickness().times(isDoubleLap() && line.kind() != CourseKind.UNDER_EAVES ? 2L : 1L);
    }

    private Length hanging(CourseLine line) {
        if (layout.scheme().unit() instanceof SingleLapUnit single) {
            return single.hangingLength();
        }
        Length whole = ((DoubleLapUnit) layout.scheme().unit()).hangingLengthAt(gauge());
        if (line.kind() == CourseKind.UNDER_EAVES) {
            return line.exact().left().minus(courses().firstLine().left().minus(whole));
        }
        return line.kind() == CourseKind.TOPS
                ? ((DoubleLapUnit) layout.scheme().unit())
                        .topsUnit()
                        .map(unit -> unit.hangingLength())
                        .orElse(whole)
                : whole;
    }

    private Length length(CourseLine line) {
        if (layout.scheme().unit() instanceof DoubleLapUnit twice) {
            if (line.kind() == CourseKind.UNDER_EAVES) {
                return courses()
                        .underEavesLength()
                        .map(ends -> ends.left())
                        .orElseGet(() -> twice.underEavesUnit()
                                .map(unit -> unit.length())
                                .orElse(twice.length()));
            }
            if (line.kind() == CourseKind.TOPS) {
                return twice.topsUnit().map(unit -> unit.length()).orElse(twice.length());
            }
        }
        return layout.scheme().unit().length();
    }

    private void underlay(Length from, Length to) {
        Length over = Length.ofMillimetres(1);
        covering.add(new Line(LineKind.UNDERLAY, at(from, over), at(to, over)));
    }

    private void along(String what, Length from, Length to, Length square, DimensionSide side, Length away) {
        sizes.add(new Dimension(what, at(from, square), at(to, square), side, away));
    }

    // The four sections

    private Drawing eaves(String name, EavesParts parts) {
        Length first = courses().firstLine().left();
        Length end = first.plus(gauge().times(1.7));
        Length tf = parts.fasciaThickness();
        Length depth = parts.rafterDepth();
        double tan = sin / cos;
        // the rafter, cut plumb behind the fascia
        Length startTop = Length.ofMetres(tf.toMetres() / cos);
        DrawingPoint heel = DrawingPoint.of(tf, Length.ofMetres(tf.toMetres() * tan - depth.toMetres() / cos));
        box(
                "rafter",
                Fill.WHITE,
                timber,
                heel,
                at(end, depth.negated()),
                at(end, Length.ZERO),
                at(startTop, Length.ZERO));
        // the seat takes the whole plate: its inner corner lies on the underside of the rafter
        Length outer = parts.eavesOverhang();
        Length inner = outer.plus(parts.plateWidth());
        Length seat = Length.ofMetres(inner.toMetres() * tan - depth.toMetres() / cos);
        Length foot = seat.minus(parts.plateWidth());
        box(
                "wall plate",
                Fill.SLANTED,
                timber,
                DrawingPoint.of(outer, foot),
                DrawingPoint.of(inner, foot),
                DrawingPoint.of(inner, seat),
                DrawingPoint.of(outer, seat));
        Length over = parts.section().fasciaHeightPlumb();
        Length low = over.minus(parts.fasciaDepth());
        box(
                "fascia",
                Fill.SLANTED,
                timber,
                DrawingPoint.of(Length.ZERO, low),
                DrawingPoint.of(tf, low),
                DrawingPoint.of(tf, over),
                DrawingPoint.of(Length.ZERO, over));
        underlay(startTop, end);
        courses(Length.ZERO, end);
        Length radius = parts.gutterWidth().dividedBy(2);
        DrawingPoint centre =
                DrawingPoint.of(radius.negated().minus(Length.ofMillimetres(5)), over.minus(Length.ofMillimetres(30)));
        covering.add(new Arc(LineKind.METAL, centre, radius, Angle.ofDegrees(180), Angle.ofDegrees(179.9)));

        Length tail = first.minus(hanging(courses().lines().stream()
                .filter(line -> line.kind() == CourseKind.FULL)
                .findFirst()
                .orElseThrow()));
        DrawingPoint fasciaLine = at(Length.ZERO, Length.ZERO);
        sizes.add(new Line(LineKind.DATUM, at(Length.ofMillimetres(-60), Length.ZERO), at(startTop, Length.ZERO)));
        sizes.add(new Label("fascia line", at(Length.ofMillimetres(-60), Length.ofMillimetres(-12)), Anchor.END));
        sizes.add(new Dimension("eaves overhang", fasciaLine, DrawingPoint.of(outer, foot), DimensionSide.BELOW, NEAR));
        sizes.add(new Dimension(
                "fascia over rafters",
                fasciaLine,
                DrawingPoint.of(Length.ZERO, over),
                DimensionSide.LEFT,
                Length.ofMillimetres(28)));
        Length above = battens().depth().value().plus(thickness().times(isDoubleLap() ? 3L : 2L));
        along("first", Length.ZERO, first, above, DimensionSide.LEFT_OF_THE_WAY, NEAR);
        along("gauge", first, first.plus(gauge()), above, DimensionSide.LEFT_OF_THE_WAY, NEAR);
        along("overhang", tail, Length.ZERO, above, DimensionSide.LEFT_OF_THE_WAY, NEAR);
        sizes.add(new Dimension(
                "", at(end, depth.negated()), at(end, Length.ZERO), DimensionSide.RIGHT_OF_THE_WAY, NEAR));
        sizes.add(new Label("rafter, " + pitchWords(), at(end.times(0.75), depth.dividedBy(-2)), Anchor.MIDDLE));
        return drawing(
                name + ", section through the eaves",
                "Section through the eaves at " + pitchWords() + ": first batten " + first
                        + " up the slope from the fascia line, gauge " + gauge() + ", fascia " + over
                        + " over the rafters, eaves overhang " + outer + ".",
                List.of());
    }

    private Drawing ridge(String name, RidgeParts parts) {
        Length top = slope();
        Length from = top.minus(gauge().times(1.8)).max(Length.ZERO);
        Length board = parts.ridgeBoard().dividedBy(2);
        rafter(from, top.minus(Length.ofMetres(board.toMetres() / cos)), parts.rafterDepth());
        underlay(from, top);
        courses(from, top);
        Length on = overCovering();
        covering.add(new Polygon(
                "ridge unit",
                LineKind.OUTLINE,
                Fill.WHITE,
                List.of(
                        at(top.minus(parts.unitLeg()), on),
                        at(apex(on), on),
                        at(apex(on.plus(parts.unitThickness())), on.plus(parts.unitThickness())),
                        at(top.minus(parts.unitLeg()), on.plus(parts.unitThickness())))));
        Length middle = at(top, Length.ZERO).x();
        mirror(timber, middle);
        mirror(covering, middle);
        if (board.isPositive()) {
            DrawingPoint apexPoint = at(top, Length.ZERO);
            Length foot =
                    apexPoint.y().minus(Length.ofMetres(parts.rafterDepth().toMetres() / cos + 0.02));
            box(
                    "ridge board",
                    Fill.SLANTED,
                    timber,
                    DrawingPoint.of(middle.minus(board), foot),
                    DrawingPoint.of(middle.plus(board), foot),
                    DrawingPoint.of(middle.plus(board), apexPoint.y()),
                    DrawingPoint.of(middle.minus(board), apexPoint.y()));
        }
        Length high = at(top, Length.ZERO).y().plus(Length.ofMillimetres(220));
        sizes.add(new Line(LineKind.DATUM, at(top, Length.ZERO), DrawingPoint.of(middle, high)));
        sizes.add(new Label("apex line", DrawingPoint.of(middle.plus(Length.ofMillimetres(15)), high), Anchor.START));
        Length second = Length.ofMillimetres(18);
        Length topLine = courses().topLine().left();
        along("top distance", topLine, top, on.plus(parts.unitThickness()), DimensionSide.LEFT_OF_THE_WAY, second);
        along(
                "gauge",
                topLine.minus(gauge()),
                topLine,
                on.plus(parts.unitThickness()),
                DimensionSide.LEFT_OF_THE_WAY,
                second);
        along(
                "ridge unit",
                top.minus(parts.unitLeg()),
                top,
                on.plus(parts.unitThickness()),
                DimensionSide.LEFT_OF_THE_WAY,
                NEAR);
        sizes.add(new Label(
                "rafter, " + pitchWords(),
                at(from.plus(gauge().dividedBy(2)), parts.rafterDepth().dividedBy(-2)),
                Anchor.MIDDLE));
        return drawing(
                name + ", section through the ridge",
                "Section through the ridge at " + pitchWords() + " on both sides: top batten "
                        + top.minus(courses().topLine().left()) + " below the apex line, gauge " + gauge()
                        + ", ridge unit with sides of " + parts.unitLeg() + ".",
                List.of());
    }

    /** How far up the slope a plane that lies so far over the rafters meets the plumb line of the apex. */
    private Length apex(Length over) {
        return slope().plus(Length.ofMetres(over.toMetres() * sin / cos));
    }

    private Length overCovering() {
        return battens().depth().value().plus(thickness().times(isDoubleLap() ? 3L : 2L));
    }

    private static void mirror(List<Shape> shapes, Length middle) {
        for (Shape shape : List.copyOf(shapes)) {
            if (shape instanceof Polygon p) {
                shapes.add(new Polygon(
                        p.meaning(),
                        p.kind(),
                        p.fill(),
                        p.corners().stream().map(c -> mirrored(c, middle)).toList()));
            } else if (shape instanceof Line l) {
                shapes.add(new Line(l.kind(), mirrored(l.from(), middle), mirrored(l.to(), middle)));
            }
        }
    }

    private static DrawingPoint mirrored(DrawingPoint point, Length middle) {
        return DrawingPoint.of(middle.times(2L).minus(point.x()), point.y());
    }

    private Drawing abutment(String name, AbutmentParts parts) {
        Length top = slope();
        Length from = top.minus(gauge().times(1.8)).max(Length.ZERO);
        rafter(from, top, parts.rafterDepth());
        underlay(from, top);
        courses(from, top);
        DrawingPoint apexPoint = at(top, Length.ZERO);
        Length face = apexPoint.x();
        // the flashing lies on the top unit; its plane goes on to the wall
        CourseLine last = courses().lines().get(courses().lines().size() - 1);
        double fall = lift(last).toMetres() / hanging(last).toMetres();
        double zero = battens().depth().value().plus(thickness()).toMetres()
                + fall * last.exact().left().toMetres();
        Length wallPlace = Length.ofMetres((face.toMetres() + zero * sin) / (cos + fall * sin));
        DrawingPoint turn = onUnit(wallPlace, zero, fall);
        Length joint = turn.y().plus(parts.upstand());
        Length wallLow = apexPoint.y().minus(Length.ofMetres(parts.rafterDepth().toMetres() / cos + 0.15));
        Length wallHigh = joint.plus(Length.ofMillimetres(150));
        List<Shape> wall = new ArrayList<>();
        box(
                "wall",
                Fill.CROSSED,
                wall,
                DrawingPoint.of(face, wallLow),
                DrawingPoint.of(face.plus(parts.wallThickness()), wallLow),
                DrawingPoint.of(face.plus(parts.wallThickness()), wallHigh),
                DrawingPoint.of(face, wallHigh));
        DrawingPoint up = DrawingPoint.of(turn.x(), joint);
        Length along = Length.ofMetres(parts.cover().toMetres() / StrictMath.hypot(1, fall));
        DrawingPoint end = onUnit(wallPlace.minus(along), zero, fall);
        covering.add(new Line(LineKind.METAL, end, turn));
        covering.add(new Line(LineKind.METAL, turn, up));
        covering.add(new Line(LineKind.METAL, up, DrawingPoint.of(face.plus(parts.tuck()), joint)));
        sizes.add(new Dimension("upstand", turn, up, DimensionSide.LEFT, Length.ofMillimetres(14)));
        sizes.add(new Dimension("cover", end, turn, DimensionSide.LEFT_OF_THE_WAY, NEAR));
        sizes.add(
                new Dimension("tuck", up, DrawingPoint.of(face.plus(parts.tuck()), joint), DimensionSide.ABOVE, NEAR));
        Length topLine = courses().topLine().left();
        along("top distance", topLine, top, Length.ZERO, DimensionSide.RIGHT_OF_THE_WAY, NEAR);
        along("gauge", topLine.minus(gauge()), topLine, Length.ZERO, DimensionSide.RIGHT_OF_THE_WAY, NEAR);
        sizes.add(new Label(
                "rafter, " + pitchWords(),
                at(from.plus(gauge().dividedBy(2)), parts.rafterDepth().dividedBy(-2)),
                Anchor.MIDDLE));
        return drawing(
                name + ", section through the top abutment",
                "Section through the top abutment at " + pitchWords() + ": flashing " + parts.upstand()
                        + " up the wall over the covering, " + parts.cover() + " down the slope, " + parts.tuck()
                        + " into the wall.",
                List.of(new DrawingLayer("wall", wall)));
    }

    /** A place on the upper side of the top unit: it falls towards its head against the rafter plane. */
    private DrawingPoint onUnit(Length up, double zero, double fall) {
        return at(up, Length.ofMetres(zero - fall * up.toMetres()));
    }

    private Drawing verge(String name, End end, VergeParts parts) {
        Columns columns = layout.columns().orThrow();
        List<Piece> pieces = columns.rows().get(0).pieces();
        Length width = layout.shape().eavesWidth();
        boolean left = end == End.LEFT;
        // everything across is counted from the left wall line
        Length wallLine = left
                ? Length.ZERO
                : width.minus(layout.scheme().right().wanted())
                        .minus(
                                layout.scheme().left().isVerge()
                                        ? layout.scheme().left().wanted()
                                        : Length.ZERO);
        Length inward = parts.wallThickness().plus(Length.ofMillimetres(350)).min(width);
        List<Shape> wall = new ArrayList<>();
        Length low = parts.rafterDepth().negated().minus(Length.ofMillimetres(60));
        across(
                "wall",
                Fill.CROSSED,
                wall,
                wallLine,
                sideways(left, wallLine, parts.wallThickness()),
                low,
                parts.undercloak().negated());
        Length rafter = sideways(left, wallLine, parts.wallThickness().plus(Length.ofMillimetres(50)));
        across(
                "rafter",
                Fill.SLANTED,
                timber,
                rafter,
                sideways(left, rafter, parts.rafterWidth()),
                parts.rafterDepth().negated(),
                Length.ZERO);
        Length depth = battens().depth().value();
        Length reach = left ? columns.reachGot().left() : columns.reachGot().right();
        Length edge = sideways(!left, wallLine, reach);
        across(
                "undercloak",
                Fill.WHITE,
                timber,
                edge,
                sideways(left, wallLine, parts.wallThickness()),
                parts.undercloak().negated(),
                Length.ZERO);
        across("batten", Fill.SLANTED, timber, wallLine, sideways(left, wallLine, inward), Length.ZERO, depth);
        for (Piece piece : pieces) {
            boolean shown = left
                    ? piece.from().isShorterThan(wallLine.plus(inward))
                    : piece.to().isLongerThan(wallLine.minus(inward));
            if (shown) {
                // the last unit at the right shows its lock beyond its cover
                Length to = piece.equals(pieces.get(pieces.size() - 1)) && !left
                        ? piece.to().max(edge)
                        : piece.to();
                across("unit", Fill.WHITE, covering, piece.from(), to, depth, depth.plus(thickness()));
            }
        }
        DrawingPoint face = DrawingPoint.of(wallLine, depth.plus(thickness()));
        sizes.add(new Line(LineKind.DATUM, DrawingPoint.of(wallLine, low), face));
        sizes.add(new Dimension(
                "overhang", DrawingPoint.of(edge, depth.plus(thickness())), face, DimensionSide.ABOVE, NEAR));
        Piece last = left ? pieces.get(0) : pieces.get(pieces.size() - 1);
        sizes.add(new Dimension(
                "",
                DrawingPoint.of(last.from(), depth.plus(thickness())),
                DrawingPoint.of(last.to(), depth.plus(thickness())),
                DimensionSide.ABOVE,
                Length.ofMillimetres(16)));
        sizes.add(new Label(
                "wall line",
                DrawingPoint.of(wallLine, low.minus(scale.toReal(Length.ofMillimetres(3)))),
                Anchor.MIDDLE));
        return drawing(
                name + ", section through the " + end + " verge",
                "Section through the " + end + " verge, square to the slope: the covering reaches " + reach
                        + " past the outer face of the wall.",
                List.of(new DrawingLayer("wall", wall)));
    }

    private static Length sideways(boolean rightwards, Length from, Length by) {
        return rightwards ? from.plus(by) : from.minus(by);
    }

    private void across(String meaning, Fill fill, List<Shape> into, Length a, Length b, Length low, Length high) {
        box(
                meaning,
                fill,
                into,
                DrawingPoint.of(a.min(b), low),
                DrawingPoint.of(a.max(b), low),
                DrawingPoint.of(a.max(b), high),
                DrawingPoint.of(a.min(b), high));
    }
}
