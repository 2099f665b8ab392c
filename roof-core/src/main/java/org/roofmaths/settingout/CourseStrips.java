package org.roofmaths.settingout;

import java.util.ArrayList;
import java.util.List;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.covering.ShortUnit;
import org.roofmaths.covering.SingleLapUnit;
import org.roofmaths.roof.End;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.units.Length;

/** Where each course lies on a face: tail, upper end of what is seen of it, and head, at both ends; and where the face ends beside it. */
final class CourseStrips {
    private static final Length BASE = Length.ofMillimetres(100);

    private final FlatShape shape;
    private final Ends<FaceEnd> ends;
    private final Length lowestTop;

    /** One course: how far up the slope its tail, its margin and its head lie. */
    record Strip(CourseLine line, int number, Ends<Length> tail, Ends<Length> margin, Ends<Length> head) {
        boolean isOdd() {
            return line.kind() != CourseKind.UNDER_EAVES && number % 2 == 1;
        }
    }

    CourseStrips(FlatShape shape, Ends<FaceEnd> ends) {
        this.shape = shape;
        this.ends = ends;
        this.lowestTop = shape.slopeLengths().left().min(shape.slopeLengths().right());
    }

    List<Strip> strips(Courses courses, CoveringUnit unit) {
        List<CourseLine> lines = courses.lines();
        List<Ends<Length>> tails = new ArrayList<>();
        for (CourseLine line : lines) {
            tails.add(line.exact().combine(hanging(courses, unit, line.kind()), Length::minus));
        }
        List<Strip> strips = new ArrayList<>();
        int number = 0;
        for (int i = 0; i < lines.size(); i++) {
            CourseLine line = lines.get(i);
            boolean under = line.kind() == CourseKind.UNDER_EAVES;
            number += under ? 0 : 1;
            Ends<Length> head = tails.get(i).combine(length(courses, unit, line.kind()), Length::plus);
            Ends<Length> margin =
                    under || i + 1 == lines.size() ? head.combine(shape.slopeLengths(), Length::min) : tails.get(i + 1);
            strips.add(new Strip(line, number, tails.get(i), margin, head));
        }
        return strips;
    }

    private static Ends<Length> hanging(Courses courses, CoveringUnit unit, CourseKind kind) {
        if (unit instanceof SingleLapUnit tile) {
            return Ends.both(tile.hangingLength());
        }
        DoubleLapUnit d = (DoubleLapUnit) unit;
        if (kind == CourseKind.TOPS) {
            return Ends.both(d.topsUnit().map(ShortUnit::hangingLength).orElseThrow());
        }
        if (kind == CourseKind.FULL) {
            return courses.gauge().map(d::hangingLengthAt);
        }
        // tails of the under-eaves course lie under the tails of the first full course
        Ends<Length> firstTail = courses.firstLine().combine(courses.gauge().map(d::hangingLengthAt), Length::minus);
        return courses.underEavesLine().orElseThrow().exact().combine(firstTail, Length::minus);
    }

    private static Ends<Length> length(Courses courses, CoveringUnit unit, CourseKind kind) {
        if (unit instanceof DoubleLapUnit d && kind == CourseKind.TOPS) {
            return Ends.both(d.topsUnit().map(ShortUnit::length).orElseThrow());
        }
        if (unit instanceof DoubleLapUnit d && kind == CourseKind.UNDER_EAVES) {
            return d.underEavesUnit()
                    .map(made -> Ends.both(made.length()))
                    .orElseGet(() -> courses.gauge().map(gauge -> d.length().minus(gauge)));
        }
        return Ends.both(unit.length());
    }

    /** Where the left wall line lies, to the right of the left end of the eaves. */
    Length leftLine() {
        return ends.left().isVerge() ? ends.left().wanted() : Length.ZERO;
    }

    /** Where the covering ends at one end and level, to the right of the left wall line, before a valley holds it back. */
    Length edge(End end, Length up) {
        Length found = up.isNegative() ? below(end, up) : raw(end, up.min(lowestTop));
        FaceEnd at = ends.at(end);
        Length gap = at.isVerge() || at.isRaking() ? Length.ZERO : at.wanted();
        return found.minus(leftLine()).plus(end == End.LEFT ? gap : gap.negated());
    }

    private Length raw(End end, Length up) {
        return shape.edgesAt(up).at(end);
    }

    /** Below the fascia line the edge goes on as it came. */
    private Length below(End end, Length up) {
        Length base = BASE.min(lowestTop);
        Length first = raw(end, Length.ZERO);
        double run = first.minus(raw(end, base)).toMetres() / base.toMetres();
        return first.plus(Length.ofMetres(run * -up.toMetres()));
    }

    /** Where the face ends beside one course, at its tail, its margin and its head, to the right of the left wall line. */
    record Edge(Length atTail, Length atMargin, Length atHead) {
        Edge moved(Length by) {
            return new Edge(atTail.plus(by), atMargin.plus(by), atHead.plus(by));
        }
    }

    /** The edge beside one course, held back from a valley. */
    Edge edge(End end, Strip strip) {
        Length tail = strip.tail().at(end);
        Length head = strip.head().at(end);
        Edge edge = new Edge(edge(end, tail), edge(end, strip.margin().at(end)), edge(end, head));
        FaceEnd at = ends.at(end);
        if (!at.isRaking() || at.wanted().isZero()) {
            return edge;
        }
        Length low = tail.max(Length.ZERO);
        Length high = head.min(lowestTop).max(low.plus(Length.ofMillimetres(1)));
        double run = edge(end, high).minus(edge(end, low)).toMetres()
                / high.minus(low).toMetres();
        Length along = at.wanted().times(StrictMath.sqrt(1 + run * run));
        return edge.moved(end == End.LEFT ? along : along.negated());
    }

    Length lowestTop() {
        return lowestTop;
    }
}
