package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.units.Length;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * The battens of one face: how many, how long each, how many metres together.
 *
 * <p>Each batten is as long as the face is wide at its line, verge overhangs as wanted included, less the openings that it meets; nothing
 * is taken off where battens stop short inside a verge, and nothing added for waste.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class BattenRuns implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** How many battens there are up the slope. */
    public static final Term<Integer> COUNT = Term.of("number of battens", "nb", Integer.class);

    /** How many courses carry their own batten beside those between the equal gauges. */
    public static final Term<Integer> SPECIAL = Term.of("battens of special courses", "ns", Integer.class);

    /** The length of one batten, from edge to edge of the face. */
    public static final Term<Length> RUN = Term.of("length of a batten", "lb", Length.class);

    /** The lengths of all battens together. */
    public static final Term<Length> TOGETHER = Term.of("battens together", "B", Length.class);

    private final Courses courses;
    private final FlatShape shape;
    private final List<Opening> openings;
    private final List<Length> runs;

    BattenRuns(Courses courses, FlatShape shape, List<Opening> openings) {
        this.courses = courses;
        this.shape = shape;
        this.openings = List.copyOf(openings);
        List<Length> found = new ArrayList<>();
        for (CourseLine line : courses.lines()) {
            if (line.kind() != CourseKind.UNDER_EAVES || !courses.sharesFirstBatten()) {
                found.add(widthAt(line));
            }
        }
        this.runs = List.copyOf(found);
    }

    private Length widthAt(CourseLine line) {
        Length up = line.exact().left().min(line.exact().right());
        Length width = isRectangle() ? shape.eavesWidth() : shape.widthAt(up);
        for (Opening opening : openings) {
            boolean crosses = up.isLongerThan(opening.up()) && up.isShorterThan(opening.top());
            width = crosses ? width.minus(opening.width()) : width;
        }
        return width;
    }

    private boolean isRectangle() {
        return shape.corners().size() == 4 && shape.eavesWidth().equals(shape.topWidth());
    }

    /** Returns the number of battens up the slope. */
    public int count() {
        return runs.size();
    }

    /** Returns the length of each batten, from the eaves up. */
    public List<Length> runs() {
        return runs;
    }

    /** Returns the lengths of all battens together. */
    public Length together() {
        return runs.stream().reduce(Length.ZERO, Length::plus);
    }

    @Override
    public Working working() {
        return Working.of(this::tell);
    }

    void tell(Recorder r) {
        if (!r.isOn()) {
            return;
        }
        r.use(Courses.GAUGE_COUNT, courses.working().at(Courses.GAUGE_COUNT));
        r.use(SPECIAL, Figure.given(runs.size() - courses.gaugeCount() - 1));
        r.record(
                COUNT,
                runs.size(),
                Formula.of(COUNT, Courses.GAUGE_COUNT.plus(1).plus(SPECIAL)));
        if (isRectangle() && openings.isEmpty()) {
            r.use(RUN, Figure.given(shape.eavesWidth()));
            r.record(TOGETHER, together(), Formula.of(TOGETHER, COUNT.times(RUN)));
            return;
        }
        Expression sum = null;
        for (int i = 0; i < runs.size(); i++) {
            Term<Length> run = RUN.at("batten " + (i + 1));
            r.use(run, Figure.given(runs.get(i)));
            sum = sum == null ? run : sum.plus(run);
        }
        r.record(TOGETHER, together(), Formula.of(TOGETHER, Objects.requireNonNull(sum)));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BattenRuns b
                && courses.equals(b.courses)
                && shape.equals(b.shape)
                && openings.equals(b.openings);
    }

    @Override
    public int hashCode() {
        return Objects.hash(courses, shape, openings);
    }

    /** Returns for example {@code 11 battens, 57695 mm together}. */
    @Override
    public String toString() {
        return count() + " battens, " + together() + " together";
    }
}
