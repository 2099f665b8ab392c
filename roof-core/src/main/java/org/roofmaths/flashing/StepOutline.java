package org.roofmaths.flashing;

import java.util.ArrayList;
import java.util.List;
import org.roofmaths.roof.FacePoint;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;

/**
 * The stepped shape of a step flashing, laid flat: along the slope from the lower end of the line, square to it from the free edge.
 *
 * <p>The metal over the covering is a strip. On the wall it starts and ends plumb over the ends of the line and steps up from joint to
 * joint; beyond each joint lies the tuck.
 */
final class StepOutline {
    private record Point(double along, double up) {}

    private record Segment(String name, Point from, Point to) {}

    private final double cos;
    private final double sin;
    private final double cover;
    private final List<Point> outline = new ArrayList<>();
    private final List<Segment> folds = new ArrayList<>();

    StepOutline(
            Pitch pitch,
            List<Step> steps,
            Length startHeight,
            Length run,
            Length cover,
            Length tuck,
            Length foot,
            Length head) {
        this.cos = pitch.cos();
        this.sin = pitch.sin();
        this.cover = cover.toSi();
        double length = run.toSi() / cos;
        if (this.cover > 0) {
            outline.add(new Point(-foot.toSi(), 0));
            outline.add(new Point(length + head.toSi(), 0));
            outline.add(new Point(length + head.toSi(), this.cover));
            folds.add(new Segment("cover to wall", new Point(0, this.cover), new Point(length, this.cover)));
        } else {
            outline.add(new Point(0, 0));
        }
        outline.add(new Point(length, this.cover));
        for (int i = steps.size() - 1; i >= 0; i--) {
            Step step = steps.get(i);
            double joint = step.joint().minus(startHeight).toSi();
            outline.add(onWall(step.end().toSi(), joint + tuck.toSi()));
            outline.add(onWall(step.start().toSi(), joint + tuck.toSi()));
            folds.add(new Segment(
                    "tuck of step " + step.number(),
                    onWall(step.start().toSi(), joint),
                    onWall(step.end().toSi(), joint)));
        }
        if (this.cover > 0) {
            outline.add(new Point(0, this.cover));
            outline.add(new Point(-foot.toSi(), this.cover));
        }
    }

    /** A place on the wall, level from the start of the line and plumb over the covering there, turned to lie along the slope. */
    private Point onWall(double level, double plumb) {
        return new Point(level * cos + plumb * sin, cover - level * sin + plumb * cos);
    }

    /** The part between two places along the slope. */
    PieceTemplate between(double start, double end) {
        List<Point> part = clip(clip(outline, start, 1), end, -1);
        List<Fold> lines = new ArrayList<>();
        for (Segment fold : folds) {
            double from = StrictMath.max(fold.from().along(), start);
            double to = StrictMath.min(fold.to().along(), end);
            if (to > from) {
                lines.add(new Fold(fold.name(), point(at(fold, from), start), point(at(fold, to), start)));
            }
        }
        return new PieceTemplate(
                part.stream().map(p -> point(p, start)).distinct().toList(), lines);
    }

    private static FacePoint point(Point p, double start) {
        return FacePoint.of(Length.ofMetres(p.along() - start), Length.ofMetres(p.up()));
    }

    private static Point at(Segment segment, double along) {
        double share = (along - segment.from().along())
                / (segment.to().along() - segment.from().along());
        return new Point(
                along,
                segment.from().up()
                        + share * (segment.to().up() - segment.from().up()));
    }

    /** Keeps what lies on one side of a line square to the slope; the outline goes up and back once, so one part remains. */
    private static List<Point> clip(List<Point> points, double limit, int side) {
        List<Point> kept = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % points.size());
            boolean isAInside = (a.along() - limit) * side >= 0;
            boolean isBInside = (b.along() - limit) * side >= 0;
            if (isAInside) {
                kept.add(a);
            }
            if (isAInside != isBInside) {
                double share = (limit - a.along()) / (b.along() - a.along());
                kept.add(new Point(limit, a.up() + share * (b.up() - a.up())));
            }
        }
        return kept;
    }
}
