package org.roofmaths.drawing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.roofmaths.drawing.PlacedText.Box;
import org.roofmaths.units.Length;

/**
 * A drawing put on paper: shapes scaled, texts placed so that none lies over another, title above, legend and notes beneath.
 *
 * <p>All numbers are millimetres of paper, y up; the writer turns y over.
 */
final class DrawingSheet {
    private static final double MARGIN = 8;
    private static final double TITLE_SIZE = 5;
    private static final double TEXT_SIZE = 2.5;
    private static final double NOTE_SIZE = 2.8;
    private static final double LINE_STEP = 4.6;
    private static final double LEAST_WIDTH = 110;
    private static final double SAMPLE = 11;
    private static final double TIER = 4.5;
    private static final int TIERS = 8;
    private static final double EXTENSION_GAP = 1;
    private static final double EXTENSION_PAST = 1;
    private static final double TEXT_OVER_LINE = 0.7;
    private static final double LEADER_FROM = 2;
    private static final double[] ALONG = {0.5, 0.35, 0.65, 0.2, 0.8};
    private static final double[][] AROUND = {
        {0, 1}, {0, -1}, {1, 0}, {-1, 0}, {1, 1}, {-1, 1}, {1, -1}, {-1, -1}, {2, 1}, {-2, 1}, {2, -1}, {-2, -1}
    };
    private static final int RINGS = 6;

    final Drawing drawing;
    final List<Placed.Group> groups = new ArrayList<>();
    final List<Placed.Measured> dimensions = new ArrayList<>();
    final List<PlacedText> labels = new ArrayList<>();
    final List<Placed.Stroke> leaders = new ArrayList<>();
    final List<PlacedText> frame = new ArrayList<>();
    final List<Placed.Item> samples = new ArrayList<>();
    final Set<Fill> hatches = EnumSet.noneOf(Fill.class);

    private final List<Box> taken = new ArrayList<>();
    private final List<String> withoutRoom = new ArrayList<>();
    private final Box picture = new Box();
    double left;
    double top;
    double width;
    double height;

    DrawingSheet(Drawing drawing) {
        this.drawing = drawing;
        for (DrawingLayer layer : drawing.layers()) {
            List<Placed.Item> shapes = new ArrayList<>();
            layer.shapes().forEach(shape -> place(shape, shapes));
            groups.add(new Placed.Group(layer.name(), shapes));
        }
        drawing.shapes()
                .filter(shape -> shape instanceof Dimension)
                .forEach(shape -> placeDimension((Dimension) shape));
        drawing.shapes().filter(shape -> shape instanceof Label).forEach(shape -> placeLabel((Label) shape));
        if (picture.isEmpty()) {
            picture.add(0, 0);
        }
        frame();
    }

    private double paper(Length real) {
        return real.toMillimetres() / drawing.scale().times();
    }

    private double x(DrawingPoint point) {
        return paper(point.x());
    }

    private double y(DrawingPoint point) {
        return paper(point.y());
    }

    private void place(Shape shape, List<Placed.Item> into) {
        if (shape instanceof Line line) {
            into.add(stroke(line.kind(), line.from(), line.to(), false));
        } else if (shape instanceof Arrow arrow) {
            into.add(stroke(arrow.kind(), arrow.from(), arrow.to(), true));
        } else if (shape instanceof Polygon polygon) {
            double[] corners = new double[2 * polygon.corners().size()];
            for (int i = 0; i < polygon.corners().size(); i++) {
                corners[2 * i] = x(polygon.corners().get(i));
                corners[2 * i + 1] = y(polygon.corners().get(i));
                picture.add(corners[2 * i], corners[2 * i + 1]);
            }
            if (polygon.fill().isHatched()) {
                hatches.add(polygon.fill());
            }
            into.add(new Placed.Area(polygon.meaning(), polygon.kind(), polygon.fill(), corners));
        } else if (shape instanceof Arc arc) {
            placeArc(arc, into);
        }
    }

    private Placed.Stroke stroke(LineKind kind, DrawingPoint from, DrawingPoint to, boolean headed) {
        picture.add(x(from), y(from));
        picture.add(x(to), y(to));
        return new Placed.Stroke(kind, x(from), y(from), x(to), y(to), headed);
    }

    private void placeArc(Arc arc, List<Placed.Item> into) {
        double radius = paper(arc.radius());
        double start = arc.start().toRadians();
        double end = start + arc.sweep().toRadians();
        double cx = x(arc.centre());
        double cy = y(arc.centre());
        int steps = 36;
        for (int i = 0; i <= steps; i++) {
            double at = start + (end - start) * i / steps;
            picture.add(cx + radius * StrictMath.cos(at), cy + radius * StrictMath.sin(at));
        }
        into.add(new Placed.Curve(
                arc.kind(),
                cx + radius * StrictMath.cos(start),
                cy + radius * StrictMath.sin(start),
                cx + radius * StrictMath.cos(end),
                cy + radius * StrictMath.sin(end),
                radius,
                arc.sweep().toDegrees() > 180));
    }

    // Dimensions

    /** Returns the number of a dimension as printed: millimetres, rounded as the drawing says. */
    private String number(Dimension dimension) {
        BigDecimal millimetres =
                BigDecimal.valueOf(drawing.rounding().apply(dimension.value()).toNanometres(), 6);
        String number = millimetres.signum() == 0
                ? "0"
                : millimetres.stripTrailingZeros().toPlainString();
        return dimension.name().isEmpty() ? number : dimension.name() + " " + number;
    }

    private void placeDimension(Dimension dimension) {
        String text = number(dimension);
        Placed.Measured last = null;
        for (int tier = 0; tier < TIERS; tier++) {
            double away = dimension.away().toMillimetres() + tier * TIER;
            double[] line = dimensionLine(dimension, away);
            for (PlacedText candidate : textsOn(line, text)) {
                last = measured(dimension, line, candidate);
                if (isFree(candidate.box())) {
                    add(last);
                    return;
                }
            }
        }
        withoutRoom.add(text);
    }

    private void add(Placed.Measured measured) {
        dimensions.add(measured);
        Box box = measured.text().box();
        taken.add(box);
        picture.add(box);
        for (Placed.Stroke stroke : List.of(measured.line(), measured.first(), measured.second())) {
            picture.add(stroke.x1(), stroke.y1());
            picture.add(stroke.x2(), stroke.y2());
        }
    }

    /** The two ends of the dimension's line. */
    private double[] dimensionLine(Dimension dimension, double away) {
        double x1 = x(dimension.from());
        double y1 = y(dimension.from());
        double x2 = x(dimension.to());
        double y2 = y(dimension.to());
        switch (dimension.side()) {
            case ABOVE -> {
                double y = StrictMath.max(y1, y2) + away;
                return new double[] {x1, y, x2, y};
            }
            case BELOW -> {
                double y = StrictMath.min(y1, y2) - away;
                return new double[] {x1, y, x2, y};
            }
            case LEFT -> {
                double x = StrictMath.min(x1, x2) - away;
                return new double[] {x, y1, x, y2};
            }
            case RIGHT -> {
                double x = StrictMath.max(x1, x2) + away;
                return new double[] {x, y1, x, y2};
            }
            default -> {
                double length = StrictMath.hypot(x2 - x1, y2 - y1);
                double out =
                        (dimension.side() == DimensionSide.LEFT_OF_THE_WAY ? away : -away) / (length == 0 ? 1 : length);
                double dx = -(y2 - y1) * out;
                double dy = (x2 - x1) * out;
                return new double[] {x1 + dx, y1 + dy, x2 + dx, y2 + dy};
            }
        }
    }

    /** Where the number could stand: on the line if it is long enough, or past one of its ends. */
    private static List<PlacedText> textsOn(double[] line, String text) {
        double x1 = line[0];
        double y1 = line[1];
        double x2 = line[2];
        double y2 = line[3];
        // read from left to right, or from below upwards
        if (x2 < x1 - 1e-9 || StrictMath.abs(x2 - x1) <= 1e-9 && y2 < y1) {
            return textsOn(new double[] {x2, y2, x1, y1}, text);
        }
        double length = StrictMath.hypot(x2 - x1, y2 - y1);
        double turn = length == 0 ? 0 : StrictMath.atan2(y2 - y1, x2 - x1);
        double ux = StrictMath.cos(turn);
        double uy = StrictMath.sin(turn);
        double wide = PlacedText.width(text, TEXT_SIZE);
        List<PlacedText> texts = new ArrayList<>();
        for (double t : ALONG) {
            double room = StrictMath.min(t, 1 - t) * length;
            if (room >= wide / 2) {
                texts.add(onLine(text, x1 + t * length * ux, y1 + t * length * uy, Anchor.MIDDLE, turn));
            }
        }
        texts.add(onLine(text, x2 + 1.5 * ux, y2 + 1.5 * uy, Anchor.START, turn));
        texts.add(onLine(text, x1 - 1.5 * ux, y1 - 1.5 * uy, Anchor.END, turn));
        return texts;
    }

    private static PlacedText onLine(String text, double x, double y, Anchor anchor, double turn) {
        return new PlacedText(
                "number",
                text,
                x - TEXT_OVER_LINE * StrictMath.sin(turn),
                y + TEXT_OVER_LINE * StrictMath.cos(turn),
                TEXT_SIZE,
                anchor,
                turn);
    }

    private Placed.Measured measured(Dimension dimension, double[] line, PlacedText text) {
        return new Placed.Measured(
                dimension.name(),
                new Placed.Stroke(LineKind.DIMENSION, line[0], line[1], line[2], line[3], false),
                extension(x(dimension.from()), y(dimension.from()), line[0], line[1]),
                extension(x(dimension.to()), y(dimension.to()), line[2], line[3]),
                text);
    }

    private static Placed.Stroke extension(double x, double y, double toX, double toY) {
        double length = StrictMath.hypot(toX - x, toY - y);
        if (length <= EXTENSION_GAP) {
            return new Placed.Stroke(LineKind.DIMENSION, toX, toY, toX, toY, false);
        }
        double ux = (toX - x) / length;
        double uy = (toY - y) / length;
        return new Placed.Stroke(
                LineKind.DIMENSION,
                x + EXTENSION_GAP * ux,
                y + EXTENSION_GAP * uy,
                toX + EXTENSION_PAST * ux,
                toY + EXTENSION_PAST * uy,
                false);
    }

    // Labels

    private void placeLabel(Label label) {
        PlacedText wanted = new PlacedText(
                "label", label.text(), x(label.at()), y(label.at()) - 0.3 * TEXT_SIZE, TEXT_SIZE, label.anchor(), 0);
        if (tryLabel(label, wanted)) {
            return;
        }
        for (int ring = 1; ring <= RINGS; ring++) {
            for (double[] step : AROUND) {
                if (tryLabel(label, wanted.moved(step[0] * ring * TEXT_SIZE * 1.3, step[1] * ring * TEXT_SIZE * 1.3))) {
                    return;
                }
            }
        }
        withoutRoom.add(label.text());
    }

    private boolean tryLabel(Label label, PlacedText text) {
        Box box = text.box();
        if (!isFree(box)) {
            return false;
        }
        labels.add(text);
        taken.add(box);
        picture.add(box);
        double x = x(label.at());
        double y = y(label.at());
        double nearX = StrictMath.max(box.left, StrictMath.min(x, box.right));
        double nearY = StrictMath.max(box.low, StrictMath.min(y, box.high));
        if (StrictMath.hypot(nearX - x, nearY - y) > LEADER_FROM) {
            leaders.add(new Placed.Stroke(LineKind.DIMENSION, x, y, nearX, nearY, false));
        }
        return true;
    }

    private boolean isFree(Box box) {
        for (Box other : taken) {
            if (box.overlaps(other)) {
                return false;
            }
        }
        return true;
    }

    // Title, legend, notes

    private void frame() {
        List<String> titles = wrapped(drawing.title(), TITLE_SIZE, contentWidth());
        double content = contentWidth();
        left = picture.left - MARGIN - (content - (picture.right - picture.left)) / 2;
        double x = left + MARGIN;
        double y = picture.high + 3 * LINE_STEP;
        double above = y + (titles.size() - 1) * TITLE_SIZE * 1.3;
        top = above + TITLE_SIZE + MARGIN;
        for (int i = 0; i < titles.size(); i++) {
            frame.add(text("title", titles.get(i), x, above - i * TITLE_SIZE * 1.3, TITLE_SIZE));
        }
        frame.add(text("scale", scaleLine(), x, y - 1.4 * LINE_STEP, NOTE_SIZE));
        double bottom = picture.low - 2 * LINE_STEP;
        bottom = legend(x, bottom, content);
        List<String> notes = new ArrayList<>(drawing.notes());
        if (!withoutRoom.isEmpty()) {
            notes.add("No room in the picture for: " + String.join("; ", withoutRoom) + ".");
        }
        for (String note : notes) {
            for (String line : wrapped(note, NOTE_SIZE, content)) {
                frame.add(text("note", line, x, bottom, NOTE_SIZE));
                bottom -= LINE_STEP;
            }
        }
        width = content + 2 * MARGIN;
        height = top - bottom + MARGIN - LINE_STEP + NOTE_SIZE;
    }

    private String scaleLine() {
        String line = "scale " + drawing.scale();
        return dimensions.isEmpty() ? line : line + "; dimensions in millimetres, rounded " + drawing.rounding();
    }

    private double contentWidth() {
        return StrictMath.max(picture.right - picture.left, LEAST_WIDTH);
    }

    private static PlacedText text(String role, String words, double x, double y, double size) {
        return new PlacedText(role, words, x, y, size, Anchor.START, 0);
    }

    private double legend(double startX, double startY, double content) {
        double x = startX;
        double y = startY;
        for (Map.Entry<Placed.Item, String> entry : legendEntries().entrySet()) {
            double wide = SAMPLE + 2 + PlacedText.width(entry.getValue(), NOTE_SIZE) + 5;
            if (x > startX && x + wide > startX + content) {
                x = startX;
                y -= LINE_STEP;
            }
            samples.add(sampleAt(entry.getKey(), x, y));
            frame.add(text("legend", entry.getValue(), x + SAMPLE + 2, y, NOTE_SIZE));
            x += wide;
        }
        return legendEntries().isEmpty() ? y : y - 1.5 * LINE_STEP;
    }

    private Map<Placed.Item, String> legendEntries() {
        Map<LineKind, Boolean> kinds = new EnumMap<>(LineKind.class);
        Map<Fill, Set<String>> fills = new EnumMap<>(Fill.class);
        drawing.shapes().forEach(shape -> {
            LineKind kind = kindOf(shape);
            if (kind != null && kind != LineKind.DIMENSION) {
                kinds.put(kind, kind == LineKind.FALL);
            }
            if (shape instanceof Polygon polygon && polygon.fill().isHatched()) {
                fills.computeIfAbsent(polygon.fill(), fill -> new LinkedHashSet<>())
                        .add(polygon.meaning());
            }
        });
        Map<Placed.Item, String> entries = new LinkedHashMap<>();
        kinds.forEach((kind, headed) -> entries.put(new Placed.Stroke(kind, 0, 0, SAMPLE, 0, headed), kind.toString()));
        fills.forEach((fill, meanings) -> entries.put(
                new Placed.Area(
                        "sample", LineKind.UNIT, fill, new double[] {0, -1.2, SAMPLE, -1.2, SAMPLE, 1.8, 0, 1.8}),
                String.join(", ", meanings)));
        return entries;
    }

    private static @Nullable LineKind kindOf(Shape shape) {
        if (shape instanceof Line line) {
            return line.kind();
        }
        if (shape instanceof Polygon polygon) {
            return polygon.kind();
        }
        if (shape instanceof Arc arc) {
            return arc.kind();
        }
        return shape instanceof Arrow arrow ? arrow.kind() : null;
    }

    private static Placed.Item sampleAt(Placed.Item sample, double x, double y) {
        if (sample instanceof Placed.Stroke s) {
            return new Placed.Stroke(s.kind(), x, y + 0.9, x + s.x2(), y + 0.9, s.headed());
        }
        Placed.Area area = (Placed.Area) sample;
        double[] corners = area.corners().clone();
        for (int i = 0; i < corners.length; i += 2) {
            corners[i] += x;
            corners[i + 1] += y + 0.6;
        }
        return new Placed.Area(area.meaning(), area.kind(), area.fill(), corners);
    }

    /** Breaks a text at spaces so that each line fits; a longer word stays whole and is broken where it must be. */
    private static List<String> wrapped(String text, double size, double content) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            String longer = line.length() == 0 ? word : line + " " + word;
            if (PlacedText.width(longer, size) <= content) {
                line.setLength(0);
                line.append(longer);
                continue;
            }
            if (line.length() > 0) {
                lines.add(line.toString());
                line.setLength(0);
            }
            String rest = word;
            while (PlacedText.width(rest, size) > content) {
                int fits = 1;
                while (PlacedText.width(rest.substring(0, rest.offsetByCodePoints(0, fits + 1)), size) <= content) {
                    fits++;
                }
                int end = rest.offsetByCodePoints(0, fits);
                lines.add(rest.substring(0, end));
                rest = rest.substring(end);
            }
            line.append(rest);
        }
        lines.add(line.toString());
        return lines;
    }
}
