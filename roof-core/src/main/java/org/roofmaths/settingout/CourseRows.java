package org.roofmaths.settingout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.covering.PartUnit;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.roof.End;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Length;

/** Cuts the pieces of every course to raking ends and round openings. */
final class CourseRows {
    private static final Length RESOLUTION = Length.STORAGE_RESOLUTION;

    private final CoveringUnit unit;
    private final Ends<FaceEnd> ends;
    private final List<Opening> openings;
    private final Length smallest;
    private final CourseStrips strips;
    private final List<CourseStrips.Strip> courses;
    private final Length faceWidth;
    private final List<Ends<CourseStrips.Edge>> edges = new ArrayList<>();

    CourseRows(
            FlatShape shape,
            CoveringUnit unit,
            Ends<FaceEnd> ends,
            Courses courses,
            List<Opening> openings,
            Length smallest) {
        this.unit = unit;
        this.ends = ends;
        this.openings = openings;
        this.smallest = smallest;
        this.strips = new CourseStrips(shape, ends);
        this.courses = strips.strips(courses, unit);
        this.faceWidth = shape.eavesWidth();
    }

    List<CourseStrips.Strip> strips() {
        return courses;
    }

    /** The rows of a face with two square ends: the columns go through, only openings cut them. */
    List<CourseRow> square(Columns columns) {
        List<CourseRow> rows = new ArrayList<>();
        for (CourseStrips.Strip strip : courses) {
            Row row = columns.row(strip.line().kind(), strip.number());
            rows.add(
                    openings.isEmpty()
                            ? new CourseRow(strip.line(), row, List.of())
                            : withOpenings(strip, row.pieces(), row.joint().orElse(null), new ArrayList<>()));
        }
        return List.copyOf(rows);
    }

    /** The rows of a face with a raking end, by a grid. */
    List<CourseRow> raked(RakedGrid grid) {
        List<CourseRow> rows = new ArrayList<>();
        if (edges.isEmpty()) {
            // every grid is cut to the same edges
            courses.forEach(strip -> edges.add(Ends.of(strips.edge(End.LEFT, strip), strips.edge(End.RIGHT, strip))));
        }
        for (int i = 0; i < courses.size(); i++) {
            rows.add(raked(courses.get(i), edges.get(i).left(), edges.get(i).right(), grid));
        }
        return List.copyOf(rows);
    }

    private CourseRow raked(CourseStrips.Strip strip, CourseStrips.Edge left, CourseStrips.Edge right, RakedGrid grid) {
        Length seenFrom = left.atTail().min(left.atMargin());
        Length seenTo = right.atTail().max(right.atMargin());
        List<Piece> pieces = new ArrayList<>();
        List<UnitCut> cuts = new ArrayList<>();
        for (Piece place : grid.places(strip.isOdd(), seenFrom, seenTo)) {
            if (place.to().minus(RESOLUTION).compareTo(seenFrom) <= 0
                    || place.from().plus(RESOLUTION).compareTo(seenTo) >= 0) {
                continue; // nothing of it is seen
            }
            boolean cutLeft =
                    place.from().plus(RESOLUTION).isShorterThan(left.atTail().max(left.atHead()));
            boolean cutRight =
                    place.to().minus(RESOLUTION).isLongerThan(right.atTail().min(right.atHead()));
            PieceKind kind = cutLeft || cutRight ? cutOf(place.kind()) : place.kind();
            Piece piece = new Piece(kind, place.from(), place.width());
            pieces.add(piece);
            if (cutLeft) {
                cuts.add(cut(strip, piece, End.LEFT, left, right));
            }
            if (cutRight) {
                cuts.add(cut(strip, piece, End.RIGHT, left, right));
            }
        }
        mergeSlivers(strip, pieces, cuts);
        Length joint = unit instanceof DoubleLapUnit d ? d.joint() : null;
        return withOpenings(strip, pieces, joint, cuts);
    }

    private static PieceKind cutOf(PieceKind kind) {
        return kind == PieceKind.UNIT_AND_A_HALF || kind == PieceKind.CUT_UNIT_AND_A_HALF
                ? PieceKind.CUT_UNIT_AND_A_HALF
                : PieceKind.CUT;
    }

    private UnitCut cut(
            CourseStrips.Strip strip, Piece piece, End end, CourseStrips.Edge left, CourseStrips.Edge right) {
        CourseStrips.Edge edge = end == End.LEFT ? left : right;
        Length run = edge.atHead().minus(edge.atTail());
        Length rise = strip.head().at(end).minus(strip.tail().at(end));
        double angle = StrictMath.atan2(rise.toMetres(), StrictMath.abs(run.toMetres()));
        return new UnitCut(
                strip.line(),
                piece.kind(),
                piece,
                end + " " + name(ends.at(end)),
                end,
                left(piece, left.atTail(), right.atTail()),
                left(piece, left.atHead(), right.atHead()),
                Angle.ofRadians(angle));
    }

    private static String name(FaceEnd end) {
        return end.kind() == EdgeKind.SIDE_ABUTMENT ? "wall" : end.kind().toString();
    }

    /** What is left of a piece between two edges. */
    private static Length left(Piece piece, Length from, Length to) {
        return piece.to().min(to).minus(piece.from().max(from)).max(Length.ZERO);
    }

    /** In double lap a piece that would be too narrow becomes one with its neighbour, cut from a unit-and-a-half. */
    private void mergeSlivers(CourseStrips.Strip strip, List<Piece> pieces, List<UnitCut> cuts) {
        if (!(unit instanceof DoubleLapUnit d) || d.unitAndAHalf().isEmpty()) {
            return;
        }
        for (UnitCut cut : List.copyOf(cuts)) {
            int at = pieces.indexOf(cut.piece());
            if (at < 0 || cut.widest().isZero() || cut.widest().meetsLeast(smallest)) {
                continue;
            }
            boolean leftGone = cut.gone() == End.LEFT;
            int inner = leftGone ? at + 1 : at - 1;
            if (inner >= 0 && inner < pieces.size()) {
                merge(strip, pieces, cuts, cut, pieces.get(inner), d);
            }
        }
    }

    private static void merge(
            CourseStrips.Strip strip,
            List<Piece> pieces,
            List<UnitCut> cuts,
            UnitCut outer,
            Piece inner,
            DoubleLapUnit d) {
        Length wide = d.unitAndAHalf().map(PartUnit::width).orElseThrow();
        boolean isApart = inner.from()
                        .isLongerThan(outer.piece().to().plus(d.joint().times(2)))
                || outer.piece().from().isLongerThan(inner.to().plus(d.joint().times(2)));
        if (isApart || !(inner.kind() == PieceKind.WHOLE || inner.kind() == PieceKind.CUT)) {
            return;
        }
        Optional<UnitCut> innerCut =
                cuts.stream().filter(each -> each.piece().equals(inner)).findFirst();
        Length atTail =
                joined(innerCut.map(UnitCut::widthAtTail).orElse(inner.width()), outer.widthAtTail(), d.joint());
        Length atHead =
                joined(innerCut.map(UnitCut::widthAtHead).orElse(inner.width()), outer.widthAtHead(), d.joint());
        if (atTail.max(atHead).isLongerThan(wide)) {
            return;
        }
        boolean leftGone = outer.gone() == End.LEFT;
        Length from = leftGone ? inner.to().minus(wide) : inner.from();
        Piece one = new Piece(PieceKind.CUT_UNIT_AND_A_HALF, from, wide);
        cuts.removeIf(each -> each.piece().equals(outer.piece()) || each.piece().equals(inner));
        cuts.add(
                new UnitCut(strip.line(), one.kind(), one, outer.where(), outer.gone(), atTail, atHead, outer.angle()));
        pieces.set(pieces.indexOf(inner), one);
        pieces.remove(outer.piece());
    }

    private static Length joined(Length inner, Length outer, Length joint) {
        return outer.isZero() ? inner : inner.plus(joint).plus(outer);
    }

    private CourseRow withOpenings(
            CourseStrips.Strip strip, List<Piece> pieces, @Nullable Length joint, List<UnitCut> cuts) {
        List<Piece> kept = new ArrayList<>(pieces);
        for (Opening opening : openings) {
            Length from = opening.along().minus(strips.leftLine());
            Length to = opening.right().minus(strips.leftLine());
            Length middle = opening.along().plus(opening.width().dividedBy(2));
            Length tail = at(strip.tail(), middle);
            Length margin = at(strip.margin(), middle);
            Length head = at(strip.head(), middle);
            boolean apart = head.minus(RESOLUTION).compareTo(opening.up()) <= 0
                    || tail.plus(RESOLUTION).compareTo(opening.top()) >= 0;
            if (apart) {
                continue;
            }
            boolean hidden = tail.plus(RESOLUTION).compareTo(opening.up()) >= 0
                    && margin.minus(RESOLUTION).compareTo(opening.top()) <= 0;
            List<Piece> now = new ArrayList<>();
            for (Piece piece : kept) {
                Length over = piece.to().min(to).minus(piece.from().max(from));
                if (over.compareTo(RESOLUTION) <= 0) {
                    now.add(piece);
                } else if (hidden && over.plus(RESOLUTION).compareTo(piece.width()) >= 0) {
                    // all that would be seen of it lies in the opening
                    cuts.removeIf(cut -> cut.piece().equals(piece));
                } else {
                    Piece cut = new Piece(cutOf(piece.kind()), piece.from(), piece.width());
                    now.add(cut);
                    boolean tailIn = tail.plus(RESOLUTION).compareTo(opening.up()) >= 0;
                    boolean headIn = head.minus(RESOLUTION).compareTo(opening.top()) <= 0;
                    cuts.add(new UnitCut(
                            strip.line(),
                            cut.kind(),
                            cut,
                            "opening \"" + opening.name() + "\"",
                            gone(piece, from, to),
                            tailIn ? piece.width().minus(over) : piece.width(),
                            headIn ? piece.width().minus(over) : piece.width(),
                            Angle.ofDegrees(90)));
                }
            }
            kept = now;
        }
        if (!openings.isEmpty()) {
            mergeSlivers(strip, kept, cuts);
        }
        return new CourseRow(strip.line(), new Row(kept, joint), cuts);
    }

    /** The side of a piece that an opening takes the most of. */
    private static End gone(Piece piece, Length from, Length to) {
        return from.minus(piece.from()).compareTo(piece.to().minus(to)) < 0 ? End.LEFT : End.RIGHT;
    }

    /** A level between the two ends of a course, at a place along the eaves. */
    private Length at(Ends<Length> levels, Length along) {
        if (levels.isEqual()) {
            return levels.left();
        }
        double share = along.toMetres() / faceWidth.toMetres();
        return levels.left().plus(levels.right().minus(levels.left()).times(share));
    }
}
