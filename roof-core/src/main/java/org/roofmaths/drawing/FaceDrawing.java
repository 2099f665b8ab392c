package org.roofmaths.drawing;

import java.util.ArrayList;
import java.util.List;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.covering.ShortUnit;
import org.roofmaths.covering.SingleLapUnit;
import org.roofmaths.roof.End;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.FacePoint;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.settingout.Columns;
import org.roofmaths.settingout.CourseKind;
import org.roofmaths.settingout.CourseLine;
import org.roofmaths.settingout.CourseRow;
import org.roofmaths.settingout.Courses;
import org.roofmaths.settingout.FaceEnd;
import org.roofmaths.settingout.FaceLayout;
import org.roofmaths.settingout.Opening;
import org.roofmaths.settingout.Piece;
import org.roofmaths.settingout.PieceKind;
import org.roofmaths.settingout.Row;
import org.roofmaths.settingout.UnitCut;
import org.roofmaths.units.Length;

/**
 * A face laid flat: its outline, every unit as it shows, the lines of the battens with their running marks at both ends, the sizes.
 *
 * <p>The eaves lie along the bottom, the slope goes straight up, all at true length. Units show from their tail to the tail of the next
 * course; an under-eaves course, which shows nothing, is drawn with dashes where it lies. Part units are dotted, cut ones hatched with
 * slanting lines. Where marks stand closer than letters, every second, third … is printed, and a note says so.
 *
 * <p>With more than {@value #MOST_UNITS} units only the lines of the courses are drawn, and a note says so.
 *
 * @since 0.1
 */
public final class FaceDrawing {
    /** The most units that are drawn one by one. */
    public static final int MOST_UNITS = 40_000;

    private static final double MARK_STEP = 3.4;
    private static final double MARK_WIDTH = 8;
    private static final Length NEAR = Length.ofMillimetres(10);
    private static final Length FAR = Length.ofMillimetres(22);
    private static final Length MARK_TICK = Length.ofMillimetres(2);

    private final String name;
    private final FaceLayout layout;
    private final DrawingScale scale;
    private final FlatShape shape;
    private final List<String> notes = new ArrayList<>();

    private FaceDrawing(String name, FaceLayout layout, DrawingScale scale) {
        this.name = name;
        this.layout = layout;
        this.scale = scale;
        this.shape = layout.shape();
    }

    /**
     * Returns the drawing of a face.
     *
     * @param name the name of the face
     * @param layout the layout of the face
     * @param scale the scale
     * @return the drawing; what does not fit on the face is in its notes
     */
    public static Drawing of(String name, FaceLayout layout, DrawingScale scale) {
        return new FaceDrawing(name, layout, scale).draw();
    }

    private Drawing draw() {
        List<DrawingLayer> layers = new ArrayList<>();
        if (layout.courses().hasValue() && layout.columns().hasValue()) {
            layers.add(new DrawingLayer("units", units()));
        }
        if (layout.courses().hasValue()) {
            layers.add(new DrawingLayer("battens", battens()));
        }
        layers.add(new DrawingLayer("outline", outline()));
        if (!layout.scheme().openings().isEmpty()) {
            layers.add(new DrawingLayer("openings", openings()));
        }
        layers.add(new DrawingLayer("sizes", sizes()));
        layout.problems().stream()
                .map(problem -> problem.severity() + ": " + problem.message())
                .forEach(notes::add);
        return Drawing.of(name + ", laid flat", description(), scale, layers).withNotes(notes);
    }

    private String description() {
        return "The face " + name + " laid flat: " + shape.eavesWidth() + " along the eaves, slope length "
                + shape.slopeLengths() + ". "
                + layout.courses().value().map(Courses::toString).orElse("Its courses do not fit") + ". "
                + layout.columns().value().map(Columns::toString).orElse("Its columns do not fit") + ".";
    }

    // Units

    private List<Shape> units() {
        Courses courses = layout.courses().orThrow();
        List<Shape> shapes = new ArrayList<>();
        if (layout.counts().orThrow().total() > MOST_UNITS) {
            notes.add("More than " + MOST_UNITS + " units: they are not drawn one by one, only their tails.");
            tailLines(courses, shapes);
            return shapes;
        }
        List<CourseRow> rows = layout.rows();
        Length highest = shape.corners().stream().map(FacePoint::up).reduce(Length.ZERO, Length::max);
        Ends<Length> top = isTapered() ? Ends.both(highest) : shape.slopeLengths();
        for (int i = 0; i < rows.size(); i++) {
            CourseRow course = rows.get(i);
            Ends<Length> tail = tail(course.line());
            if (course.line().kind() == CourseKind.UNDER_EAVES) {
                // it lies wholly under the first full course: drawn up to its own line
                row(course, tail, course.line().exact(), LineKind.HIDDEN, shapes);
            } else {
                row(course, tail, i + 1 < rows.size() ? tail(rows.get(i + 1).line()) : top, LineKind.UNIT, shapes);
            }
        }
        return shapes;
    }

    private boolean isTapered() {
        return shape.corners().size() != 4 || !shape.topWidth().equals(shape.eavesWidth());
    }

    private void tailLines(Courses courses, List<Shape> shapes) {
        for (CourseLine line : courses.lines()) {
            Ends<Length> tail = tail(line);
            shapes.add(
                    new Line(LineKind.UNIT, point(Length.ZERO, tail.left()), point(shape.eavesWidth(), tail.right())));
        }
    }

    /** Where the tails of a course lie, up the slope from the fascia line: below its line by what the unit hangs. */
    private Ends<Length> tail(CourseLine line) {
        Ends<Length> gauge = layout.courses().orThrow().gauge();
        return Ends.of(
                line.exact().left().minus(hanging(line.kind(), gauge.left())),
                line.exact().right().minus(hanging(line.kind(), gauge.right())));
    }

    private Length hanging(CourseKind kind, Length gauge) {
        CoveringUnit unit = layout.scheme().unit();
        if (unit instanceof SingleLapUnit single) {
            return single.hangingLength();
        }
        DoubleLapUnit twice = (DoubleLapUnit) unit;
        Length whole = twice.hangingLengthAt(gauge);
        return switch (kind) {
            case FULL -> whole;
            case TOPS -> twice.topsUnit().map(ShortUnit::hangingLength).orElse(whole);
            // its tails lie with those of the first full course
            case UNDER_EAVES -> {
                Courses courses = layout.courses().orThrow();
                CourseLine under = courses.underEavesLine().orElseThrow();
                yield under.exact().left().minus(courses.firstLine().left().minus(whole));
            }
        };
    }

    private void row(CourseRow course, Ends<Length> low, Ends<Length> high, LineKind kind, List<Shape> shapes) {
        Length wall = wallLine();
        for (Piece piece : course.row().pieces()) {
            Length from = piece.from().plus(wall);
            Length to = piece.to().plus(wall);
            Length highFrom = from;
            Length highTo = to;
            for (UnitCut cut : course.cuts()) {
                if (cut.piece().equals(piece)) {
                    // the cut runs straight from tail to head; what shows ends before the head
                    double shown = between(high, from).minus(between(low, from)).toMetres()
                            / layout.scheme().unit().length().toMetres();
                    Length atTop = Length.ofMetres(cut.widthAtTail().toMetres()
                            + (cut.widthAtHead().toMetres() - cut.widthAtTail().toMetres()) * StrictMath.min(1, shown));
                    if (cut.gone() == End.RIGHT) {
                        to = from.plus(cut.widthAtTail());
                        highTo = highFrom.plus(atTop);
                    } else {
                        from = to.minus(cut.widthAtTail());
                        highFrom = highTo.minus(atTop);
                    }
                    break;
                }
            }
            shapes.add(new Polygon(
                    piece.kind().toString(),
                    kind,
                    fill(piece.kind(), kind),
                    List.of(
                            point(from, between(low, from)),
                            point(to, between(low, to)),
                            point(highTo, between(high, highTo)),
                            point(highFrom, between(high, highFrom)))));
        }
    }

    private static Fill fill(PieceKind kind, LineKind line) {
        if (line == LineKind.HIDDEN) {
            return Fill.NONE;
        }
        return switch (kind) {
            case WHOLE -> Fill.NONE;
            case CUT, CUT_UNIT_AND_A_HALF -> Fill.SLANTED;
            default -> Fill.DOTTED;
        };
    }

    /** Where the left wall line lies, to the right of the left edge of the face. */
    private Length wallLine() {
        FaceEnd left = layout.scheme().left();
        return left.isVerge() ? left.wanted() : Length.ZERO;
    }

    /** The height at a place along the eaves of a line that is known at both ends of the face. */
    private Length between(Ends<Length> ends, Length along) {
        if (ends.isEqual()) {
            return ends.left();
        }
        double share = along.toMetres() / shape.eavesWidth().toMetres();
        return Length.ofMetres(
                ends.left().toMetres() * (1 - share) + ends.right().toMetres() * share);
    }

    // Battens and marks

    private List<Shape> battens() {
        Courses courses = layout.courses().orThrow();
        List<Shape> shapes = new ArrayList<>();
        for (CourseLine line : courses.lines()) {
            shapes.add(new Line(
                    LineKind.BATTEN,
                    point(edge(End.LEFT, line.exact().left()), line.exact().left()),
                    point(edge(End.RIGHT, line.exact().right()), line.exact().right())));
        }
        int every = every(courses);
        if (every > 1) {
            notes.add("Of the marks, each " + ordinal(every) + " is printed, the last one always.");
        }
        notes.add("Marks: running distances up the slope from the fascia line to the " + courses.battenEdge()
                + ", in millimetres, rounded " + courses.rounding() + ".");
        marks(courses.marks().left(), End.LEFT, Anchor.END, MARK_TICK.negated(), every, shapes);
        marks(courses.marks().right(), End.RIGHT, Anchor.START, MARK_TICK, every, shapes);
        return shapes;
    }

    /** Where the face ends at a height, at one side. */
    private Length edge(End end, Length up) {
        if (!isTapered()) {
            return end == End.LEFT ? Length.ZERO : shape.eavesWidth();
        }
        Length highest = shape.corners().stream().map(FacePoint::up).reduce(Length.ZERO, Length::max);
        return shape.edgesAt(up.max(Length.ZERO).min(highest)).at(end);
    }

    private int every(Courses courses) {
        double gauge = courses.gaugeCount() == 0
                ? Double.MAX_VALUE
                : courses.gauge().left().min(courses.gauge().right()).toMillimetres() / scale.times();
        return (int) StrictMath.max(1, StrictMath.ceil(MARK_STEP / gauge));
    }

    private static String ordinal(int number) {
        return number == 2 ? "second" : number == 3 ? "third" : number + "th";
    }

    private void marks(List<Length> marks, End end, Anchor anchor, Length tick, int every, List<Shape> shapes) {
        Length out = scale.toReal(tick);
        int last = marks.size() - 1;
        for (int i = 0; i <= last; i++) {
            if (i == last || i % every == 0 && last - i >= every) {
                DrawingPoint at = point(edge(end, marks.get(i)), marks.get(i));
                shapes.add(new Line(LineKind.DIMENSION, at, at.plus(out, Length.ZERO)));
                shapes.add(new Label(number(marks.get(i)), at.plus(out.times(1.3), Length.ZERO), anchor));
            }
        }
    }

    static String number(Length length) {
        return length.toString().replace(" mm", "");
    }

    // Outline and sizes

    private List<Shape> outline() {
        List<Shape> shapes = new ArrayList<>();
        List<FacePoint> corners = shape.corners();
        for (int i = 0; i < corners.size(); i++) {
            FacePoint from = corners.get(i);
            FacePoint to = corners.get((i + 1) % corners.size());
            shapes.add(new Line(kind(i, corners.size()), point(from.along(), from.up()), point(to.along(), to.up())));
        }
        return shapes;
    }

    /** The eaves come first, the right end after them, the left end last; what is between is the top. */
    private LineKind kind(int side, int sides) {
        if (side == 0) {
            return LineKind.EAVES;
        }
        if (side == 1) {
            return end(layout.scheme().right());
        }
        return side == sides - 1 ? end(layout.scheme().left()) : LineKind.OUTLINE;
    }

    private static LineKind end(FaceEnd end) {
        return switch (end.kind()) {
            case VERGE -> LineKind.VERGE;
            case HIP -> LineKind.HIP;
            case VALLEY -> LineKind.VALLEY;
            default -> LineKind.ABUTMENT;
        };
    }

    private List<Shape> openings() {
        List<Shape> shapes = new ArrayList<>();
        for (Opening opening : layout.scheme().openings()) {
            DrawingPoint low = point(opening.along(), opening.up());
            DrawingPoint right = point(opening.right(), opening.up());
            DrawingPoint high = point(opening.right(), opening.top());
            DrawingPoint left = point(opening.along(), opening.top());
            shapes.add(new Polygon("opening", LineKind.OUTLINE, Fill.WHITE, List.of(low, right, high, left)));
            shapes.add(new Line(LineKind.UNIT, low, high));
            shapes.add(new Line(LineKind.UNIT, left, right));
            shapes.add(new Label(
                    opening.name(),
                    point(
                            opening.along().plus(opening.width().dividedBy(2)),
                            opening.up().plus(opening.height().dividedBy(2))),
                    Anchor.MIDDLE));
            Length close = Length.ofMillimetres(4);
            shapes.add(new Dimension("", left, high, DimensionSide.ABOVE, close));
            shapes.add(new Dimension("", right, high, DimensionSide.RIGHT, close));
            shapes.add(new Dimension("along", point(Length.ZERO, opening.up()), low, DimensionSide.BELOW, close));
            shapes.add(new Dimension("up", point(opening.along(), Length.ZERO), low, DimensionSide.LEFT, close));
        }
        return shapes;
    }

    private List<Shape> sizes() {
        List<Shape> shapes = new ArrayList<>();
        Length width = shape.eavesWidth();
        DrawingPoint left = point(Length.ZERO, Length.ZERO);
        DrawingPoint right = point(width, Length.ZERO);
        Ends<Length> slope = shape.slopeLengths();
        wallLines(shapes);
        shapes.add(new Dimension("width", left, right, DimensionSide.BELOW, FAR));
        Length besideMarks = Length.ofMillimetres(18);
        shapes.add(new Dimension("slope", left, point(Length.ZERO, slope.left()), DimensionSide.LEFT, besideMarks));
        shapes.add(new Dimension("slope", right, point(width, slope.right()), DimensionSide.RIGHT, besideMarks));
        if (layout.courses().hasValue()) {
            Ends<Length> first = layout.courses().orThrow().firstLine();
            shapes.add(new Dimension(
                    "first", left, point(Length.ZERO, first.left()), DimensionSide.LEFT, Length.ofMillimetres(12)));
            Ends<Length> tail = tail(layout.courses().orThrow().lines().get(0));
            shapes.add(new Dimension(
                    "overhang", point(width, tail.right()), right, DimensionSide.RIGHT, Length.ofMillimetres(12)));
        }
        layout.columns().value().ifPresent(columns -> columnSizes(columns, shapes));
        return shapes;
    }

    /** At a verge the outer face of the end wall lies inside the face. */
    private void wallLines(List<Shape> shapes) {
        Ends<Length> slope = shape.slopeLengths();
        FaceEnd right = layout.scheme().right();
        Length wall = wallLine();
        if (wall.isPositive()) {
            shapes.add(new Line(LineKind.DATUM, point(wall, Length.ZERO), point(wall, slope.left())));
        }
        if (right.isVerge() && right.wanted().isPositive()) {
            Length along = shape.eavesWidth().minus(right.wanted());
            shapes.add(new Line(LineKind.DATUM, point(along, Length.ZERO), point(along, slope.right())));
        }
    }

    private void columnSizes(Columns columns, List<Shape> shapes) {
        Length wall = wallLine();
        Length low = layout.courses()
                .value()
                .map(found -> tail(found.lines().get(0)).left())
                .orElse(Length.ZERO);
        List<Row> full = layout.rows().stream()
                .filter(course -> course.line().kind() == CourseKind.FULL)
                .map(CourseRow::row)
                .limit(isTapered() ? 1 : columns.rows().size())
                .filter(row -> !row.pieces().isEmpty())
                .toList();
        for (int i = 0; i < full.size(); i++) {
            Row row = full.get(i);
            DimensionSide side = i == 0 ? DimensionSide.BELOW : DimensionSide.ABOVE;
            List<Piece> pieces = row.pieces();
            Length y = side == DimensionSide.BELOW
                    ? low
                    : shape.slopeLengths().left().max(shape.slopeLengths().right());
            marksAlong(columns.marks(row), wall, y, side, shapes);
            part(pieces.get(0), wall, y, side, shapes);
            if (pieces.size() > 2) {
                // an ordinary piece, away from the ends
                part(pieces.get(pieces.size() / 2), wall, y, side, shapes);
            }
            part(pieces.get(pieces.size() - 1), wall, y, side, shapes);
        }
    }

    /** The right edges of the pieces as marks from the left wall line; as many as there is room for, the last one always. */
    private void marksAlong(List<Length> marks, Length wall, Length y, DimensionSide side, List<Shape> shapes) {
        Length tick = scale.toReal(side == DimensionSide.BELOW ? MARK_TICK.negated() : MARK_TICK);
        int last = marks.size() - 1;
        Length widest =
                last == 0 ? Length.ZERO : marks.get(last).minus(marks.get(0)).dividedBy(last);
        double room = scale.toPaper(widest).toMillimetres();
        int every = room == 0 ? 1 : (int) StrictMath.max(1, StrictMath.ceil(MARK_WIDTH / room));
        for (int i = 0; i <= last; i++) {
            if (i == last || i % every == 0 && last - i >= every) {
                DrawingPoint at = point(marks.get(i).plus(wall), y);
                shapes.add(new Line(LineKind.DIMENSION, at, at.plus(Length.ZERO, tick)));
                shapes.add(new Label(number(marks.get(i)), at.plus(Length.ZERO, tick.times(1.8)), Anchor.MIDDLE));
            }
        }
        String note =
                "Marks along eaves and top: running distances from the left wall line to the right edges of the units"
                        + (every > 1 ? ", each " + ordinal(every) + " printed, the last one always." : ".");
        if (!notes.contains(note)) {
            notes.add(note);
        }
    }

    private static void part(Piece piece, Length wall, Length y, DimensionSide side, List<Shape> shapes) {
        String what = piece.kind().isCut() ? "cut" : "";
        shapes.add(new Dimension(
                what, point(piece.from().plus(wall), y), point(piece.to().plus(wall), y), side, NEAR));
    }

    private static DrawingPoint point(Length along, Length up) {
        return DrawingPoint.of(along, up);
    }
}
