package org.roofmaths.settingout;

import static org.roofmaths.covering.CoveringUnit.LENGTH;
import static org.roofmaths.covering.DoubleLapUnit.HOLE_CLEARANCE;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.covering.Hanging;
import org.roofmaths.covering.ShortUnit;
import org.roofmaths.covering.SingleLapUnit;
import org.roofmaths.roof.End;
import org.roofmaths.roof.Ends;
import org.roofmaths.units.Direction;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;

/**
 * What is fixed before the number of gauges is chosen: the limits of the gauge and, at each end, the distance that is divided.
 *
 * <p>A distance is divided into {@code gauges + extra} equal parts. Extra is 0 between two fixed lines; -1 for centre-nailed slates,
 * whose first nail line follows the gauge; +1 where the short units of a tops course shorten the last step by a fixed amount.
 */
final class CourseFrame {
    final Ends<Length> distance;
    final int extra;
    final Length greatestGauge;
    final @Nullable Length leastGauge;
    final Ends<Length> topLine;
    /** The first line, where it does not follow the gauge. */
    final @Nullable Length fixedFirst;

    final Length overhang;
    final boolean topsBattensTouch;
    final List<Places> places;

    private CourseFrame(
            Ends<Length> distance,
            int extra,
            Length greatestGauge,
            @Nullable Length leastGauge,
            Ends<Length> topLine,
            @Nullable Length fixedFirst,
            Length overhang,
            boolean topsBattensTouch,
            List<Places> places) {
        this.distance = distance;
        this.extra = extra;
        this.greatestGauge = greatestGauge;
        this.leastGauge = leastGauge;
        this.topLine = topLine;
        this.fixedFirst = fixedFirst;
        this.overhang = overhang;
        this.topsBattensTouch = topsBattensTouch;
        this.places = places;
    }

    static CourseFrame of(CoursePlan plan, Recorder r) {
        CoveringUnit unit = plan.unit();
        return unit == null ? bare(plan, r) : onFace(plan, unit, r);
    }

    private static CourseFrame bare(CoursePlan plan, Recorder r) {
        Length greatest = r.use(Courses.GREATEST_GAUGE, present(plan.greatestGauge()));
        Figure<Length> leastFigure = plan.leastGauge();
        Length least = leastFigure == null ? null : r.use(Courses.LEAST_GAUGE, leastFigure);
        List<Places> places = Places.of(plan.lengths().map(Figure::value).isEqual());
        Ends<Length> distance =
                eachEnd(places, p -> p.use(r, Courses.DISTANCE, plan.lengths().at(p.end())));
        return new CourseFrame(distance, 0, greatest, least, distance, Length.ZERO, Length.ZERO, false, places);
    }

    private static CourseFrame onFace(CoursePlan plan, CoveringUnit unit, Recorder r) {
        unit.tellSizes(r);
        Length greatest = greatestGauge(plan, unit, r);
        Figure<Length> leastFigure = plan.leastGauge();
        Length least = leastFigure == null ? null : r.use(Courses.LEAST_GAUGE, leastFigure);
        Length overhang = overhang(plan, r);
        List<Places> places = Places.of(plan.lengths().map(Figure::value).isEqual());
        Length topDistance = r.use(Courses.TOP_DISTANCE, plan.topDistance());
        Ends<Length> topLine = eachEnd(places, p -> {
            Length length = p.use(r, Courses.FACE_LENGTH, plan.lengths().at(p.end()));
            return p.record(
                    r,
                    Courses.TOP_LINE,
                    length.minus(topDistance),
                    q -> q.of(Courses.FACE_LENGTH).minus(Courses.TOP_DISTANCE));
        });
        if (unit instanceof DoubleLapUnit slate && slate.hanging().way() == Hanging.Way.CENTRE_NAILED) {
            Length fixed = slate.length().plus(slate.hanging().size()).minus(overhang);
            Ends<Length> distance = eachEnd(
                    places,
                    p -> p.record(
                            r,
                            Courses.DISTANCE,
                            topLine.at(p.end()).minus(fixed),
                            q -> q.of(Courses.TOP_LINE)
                                    .minus(LENGTH)
                                    .minus(HOLE_CLEARANCE)
                                    .plus(Courses.OVERHANG)));
            return new CourseFrame(distance, -1, greatest, least, topLine, null, overhang, false, places);
        }
        Length hanging = hangingLength(unit, r);
        Length first = r.record(Courses.FIRST_LINE, hanging.minus(overhang), Courses.FIRST_BY_HANGING);
        Optional<ShortUnit> tops = unit instanceof DoubleLapUnit d ? d.topsUnit() : Optional.empty();
        if (tops.isEmpty()) {
            Ends<Length> distance = eachEnd(
                    places,
                    p -> p.record(
                            r,
                            Courses.DISTANCE,
                            topLine.at(p.end()).minus(first),
                            q -> q.of(Courses.TOP_LINE).minus(Courses.FIRST_LINE)));
            return new CourseFrame(distance, 0, greatest, least, topLine, first, overhang, false, places);
        }
        return withTops(plan, tops.orElseThrow(), hanging, first, greatest, least, topLine, overhang, places, r);
    }

    /** Lets the tops batten stand where the short units want it, unless it would overlap the batten below: then the two touch. */
    private static CourseFrame withTops(
            CoursePlan plan,
            ShortUnit tops,
            Length hanging,
            Length first,
            Length greatest,
            @Nullable Length least,
            Ends<Length> topLine,
            Length overhang,
            List<Places> places,
            Recorder r) {
        Length shorter = hanging.minus(tops.hangingLength());
        Ends<Length> wanted = topLine.map(top -> top.minus(first).plus(shorter));
        CourseFrame natural = new CourseFrame(wanted, 1, greatest, least, topLine, first, overhang, false, places);
        Figure<Length> width = plan.battenWidth();
        boolean touch = width != null
                && natural.divisions(plan.preference())
                        .map(parts -> natural.shorterGauge(parts).minus(shorter).isShorterThan(width.value()))
                        .orElse(true);
        r.use(Courses.TOPS_HANGING_LENGTH, Figure.given(tops.hangingLength()));
        if (width == null || !touch) {
            Ends<Length> distance = eachEnd(
                    places,
                    p -> p.record(
                            r,
                            Courses.DISTANCE,
                            wanted.at(p.end()),
                            q -> q.of(Courses.TOP_LINE)
                                    .minus(Courses.FIRST_LINE)
                                    .plus(Courses.HANGING_LENGTH)
                                    .minus(Courses.TOPS_HANGING_LENGTH)));
            return new CourseFrame(distance, 1, greatest, least, topLine, first, overhang, false, places);
        }
        Length step = r.use(Courses.BATTEN_WIDTH, width);
        r.note("the tops batten touches the one below");
        Ends<Length> distance = eachEnd(
                places,
                p -> p.record(
                        r,
                        Courses.DISTANCE,
                        topLine.at(p.end()).minus(first).minus(step),
                        q -> q.of(Courses.TOP_LINE).minus(Courses.FIRST_LINE).minus(Courses.BATTEN_WIDTH)));
        return new CourseFrame(distance, 0, greatest, least, topLine, first, overhang, true, places);
    }

    private static Length greatestGauge(CoursePlan plan, CoveringUnit unit, Recorder r) {
        Length asked = r.use(Courses.HEADLAP_ASKED, present(plan.headlap()));
        Length needed = asked;
        Term<Length> term = Courses.HEADLAP_ASKED;
        if (unit instanceof SingleLapUnit tile) {
            Length own = r.use(Courses.UNIT_LEAST_HEADLAP, Figure.given(tile.leastHeadlap()));
            needed = r.record(Courses.HEADLAP_NEEDED, asked.max(own), Courses.NEEDED_BY_BOTH);
            term = Courses.HEADLAP_NEEDED;
        }
        Length greatest = unit.gaugeOf(needed);
        Expression by = unit.gaugeBy(term);
        Figure<Length> own = plan.greatestGauge();
        if (own != null) {
            greatest = greatest.min(r.use(Courses.UNIT_GREATEST_GAUGE, own));
            by = by.least(Courses.UNIT_GREATEST_GAUGE);
        }
        return r.isOn() ? r.record(Courses.GREATEST_GAUGE, greatest, Formula.of(Courses.GREATEST_GAUGE, by)) : greatest;
    }

    private static Length overhang(CoursePlan plan, Recorder r) {
        if (plan.overhangDirection() == Direction.ON_SLOPE) {
            return r.use(Courses.OVERHANG, plan.overhang());
        }
        Pitch pitch = r.use(Courses.PITCH, present(plan.pitch()));
        Length level = r.use(Courses.OVERHANG_LEVEL, plan.overhang());
        return r.record(Courses.OVERHANG, pitch.slopeOver(level), Courses.OVERHANG_BY_PITCH);
    }

    private static Length hangingLength(CoveringUnit unit, Recorder r) {
        if (unit instanceof DoubleLapUnit d && d.hanging().way() == Hanging.Way.HEAD_NAILED) {
            return r.record(Courses.HANGING_LENGTH, d.hangingLengthAt(Length.ZERO), Courses.HANGING_BY_HOLE);
        }
        Length hanging = unit instanceof SingleLapUnit s
                ? s.hangingLength()
                : ((DoubleLapUnit) unit).hangingLengthAt(Length.ZERO);
        return r.use(Courses.HANGING_LENGTH, Figure.given(hanging));
    }

    static Ends<Length> eachEnd(List<Places> places, Function<Places, Length> step) {
        Length left = step.apply(places.get(0));
        return places.size() == 1 ? Ends.both(left) : Ends.of(left, step.apply(places.get(1)));
    }

    private static <T> T present(@Nullable T value) {
        return Objects.requireNonNull(value);
    }

    End longerEnd() {
        return distance.right().isLongerThan(distance.left()) ? End.RIGHT : End.LEFT;
    }

    Length longer() {
        return distance.left().max(distance.right());
    }

    Length shorter() {
        return distance.left().min(distance.right());
    }

    Length shorterGauge(int parts) {
        return shorter().dividedBy(parts);
    }

    /** The fewest parts that keep the greatest gauge at the longer end. */
    int fewest() {
        return (int) Math.min(Integer.MAX_VALUE, Math.max(leastParts(), greatestGauge.timesToCover(longer())));
    }

    /** At least one gauge; two where the first line follows the gauge, one of them being a part. */
    private int leastParts() {
        return Math.max(1, 1 + extra);
    }

    boolean keepsLeastGauge(int parts) {
        Length least = leastGauge;
        return least == null || shorter().plus(Length.STORAGE_RESOLUTION).compareTo(least.times(parts)) >= 0;
    }

    boolean keepsGreatestGauge(int parts) {
        return longer().minus(Length.STORAGE_RESOLUTION).compareTo(greatestGauge.times(parts)) <= 0;
    }

    /** The number of equal parts that the preference chooses, if any number fits. */
    Optional<Integer> divisions(Preference preference) {
        if (!shorter().isPositive() || !greatestGauge.isLongerThan(Length.STORAGE_RESOLUTION)) {
            return Optional.empty();
        }
        int fewest = fewest();
        if (!keepsLeastGauge(fewest) || !keepsGreatestGauge(fewest)) {
            return Optional.empty();
        }
        return Optional.of(takesMost(preference) ? most() : fewest);
    }

    boolean takesMost(Preference preference) {
        return leastGauge != null && preference.puts(Aim.LARGEST_HEADLAP, Aim.FEWEST_COURSES);
    }

    private int most() {
        return Math.toIntExact(present(leastGauge).timesIn(shorter()).count());
    }
}
