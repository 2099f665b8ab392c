package org.roofmaths.settingout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.roof.Ends;
import org.roofmaths.units.Length;
import org.roofmaths.units.Rounding;

/** Says by how much no equal division fits, and which least change of each kind would make one fit. */
final class NoDivision {
    private static final Length NEAT = Length.ofMillimetres(0.1);
    /** Beyond so many parts more than the fewest, a change is larger than a whole course and helps nobody. */
    private static final int FARTHEST = 24;

    private final CoursePlan plan;
    private final CourseFrame frame;
    private final Length least;

    private NoDivision(CoursePlan plan, CourseFrame frame, Length least) {
        this.plan = plan;
        this.frame = frame;
        this.least = least;
    }

    static Problem of(CoursePlan plan, CourseFrame frame) {
        Length least = frame.leastGauge == null ? Length.ZERO : frame.leastGauge;
        NoDivision no = new NoDivision(plan, frame, least);
        if (!frame.greatestGauge.isLongerThan(Length.STORAGE_RESOLUTION) || !frame.greatestGauge.meetsLeast(least)) {
            return no.limitsCross();
        }
        return frame.shorter().isPositive() ? no.noDivision() : no.tooShort();
    }

    private Problem limitsCross() {
        Length excess = least.minus(frame.greatestGauge);
        List<Mend> mends = new ArrayList<>();
        CoveringUnit unit = plan.unit();
        if (unit != null) {
            Length lap = excess.times(unit instanceof DoubleLapUnit ? 2 : 1);
            Length left = Objects.requireNonNull(plan.headlap()).value().minus(lap);
            if (least.isPositive()) {
                mends.add(Mend.of(
                        "headlap", lap + " less", lap.negated(), "headlap " + left + ", if the rules allow it"));
            }
            mends.add(Mend.of("unit", "a longer one", "a greater gauge at the same headlap"));
        }
        return Problem.finding(
                Courses.GAUGE_LIMITS,
                "courses",
                frame.greatestGauge,
                least,
                least.isPositive()
                        ? "the limits of the gauge cross: the greatest gauge is " + frame.greatestGauge
                                + ", the least is " + least
                        : "the headlap asked leaves no gauge: the greatest gauge is " + frame.greatestGauge,
                mends);
    }

    private Problem tooShort() {
        Length short0 = frame.shorter();
        Length wanted = least.isPositive() ? least : frame.greatestGauge;
        Length more = wanted.minus(short0);
        String message = plan.unit() == null
                ? "there is nothing to divide: the distance is " + short0
                : "the slope is too short for two courses: the distance to divide is " + short0;
        return Problem.finding(
                Courses.TOO_SHORT,
                "courses",
                short0,
                wanted,
                message,
                List.of(
                        Mend.of("slope length", more + " more", more, "2 courses at a gauge of " + wanted),
                        Mend.of("unit", "a shorter one, or one course only", "no gauge to divide")));
    }

    private Problem noDivision() {
        int parts = frame.fewest();
        Step more = null;
        Step fewer = null;
        for (int p = Math.max(Math.max(1, 1 + frame.extra), parts - 2); p <= parts + FARTHEST; p++) {
            Length low = least.times(p).minus(frame.shorter());
            Length high = frame.greatestGauge.times(p).minus(frame.longer());
            if (low.isLongerThan(high)) {
                continue; // the ends differ by more than so many gauges can take up
            }
            if (low.isPositive() && (more == null || low.isShorterThan(more.by))) {
                more = new Step(p, neat(low, high));
            }
            if (high.isNegative() && (fewer == null || high.isLongerThan(fewer.by))) {
                fewer = new Step(p, neat(high, low));
            }
        }
        return more == null && fewer == null ? tooUnequal(parts) : withMends(parts, more, fewer);
    }

    /** So many parts after the distance has changed by so much. */
    private record Step(int parts, Length by) {}

    /** The least change, or up to a tenth of a millimetre more where that still fits. */
    private static Length neat(Length nearest, Length farthest) {
        Length rounded = nearest.isPositive()
                ? Rounding.upToMultipleOf(NEAT).apply(nearest)
                : Rounding.upToMultipleOf(NEAT).apply(nearest.negated()).negated();
        boolean inside = nearest.isPositive() ? !rounded.isLongerThan(farthest) : !rounded.isShorterThan(farthest);
        return inside ? rounded : nearest;
    }

    private Problem withMends(int parts, @Nullable Step more, @Nullable Step fewer) {
        List<Step> steps = new ArrayList<>();
        if (fewer != null) {
            steps.add(fewer);
        }
        if (more != null) {
            steps.add(more);
        }
        steps.sort(Comparator.comparing(step -> step.by.abs()));
        List<Mend> mends = new ArrayList<>();
        for (Change change : plan.preference().changes()) {
            if (change == Change.COURSES) {
                mends.add(passingTheLeast(parts));
            } else {
                steps.forEach(step -> addMend(mends, change, step));
            }
        }
        return Problem.finding(
                Courses.NO_EQUAL_DIVISION,
                "courses",
                frame.distance,
                "gauge from " + least + " to " + frame.greatestGauge,
                "no equal division: " + tooWide(parts) + tooClose(parts),
                mends);
    }

    private String tooWide(int parts) {
        int fewer = parts - 1;
        if (fewer - frame.extra < 1 || fewer < 1) {
            return "";
        }
        Length gauge = frame.longer().dividedBy(fewer);
        return gauges(fewer) + " of " + gauge + " pass".concat(fewer - frame.extra == 1 ? "es" : "")
                + " the greatest gauge of " + frame.greatestGauge + " by " + gauge.minus(frame.greatestGauge)
                + ", and ";
    }

    private String tooClose(int parts) {
        Length gauge = frame.shorter().dividedBy(parts);
        return gauges(parts) + " of " + gauge + (parts - frame.extra == 1 ? " falls" : " fall")
                + " short of the least gauge of " + least + " by " + least.minus(gauge);
    }

    private String gauges(int parts) {
        int count = parts - frame.extra;
        return count == 1 ? "1 gauge" : count + " gauges";
    }

    private Mend passingTheLeast(int parts) {
        Length gauge = frame.shorter().dividedBy(parts);
        CoveringUnit unit = plan.unit();
        return Mend.of(
                Change.COURSES.toString(),
                gauges(parts) + ", " + least.minus(gauge) + " under the least gauge",
                gauge.minus(least),
                "gauge " + gauge + (unit == null ? "" : ", headlap " + unit.headlapOf(gauge))
                        + ", if the unit can be laid so close");
    }

    private void addMend(List<Mend> mends, Change change, Step step) {
        Length by = step.by;
        Length size = by.abs();
        String result = result(step);
        if (plan.unit() == null) {
            if (change == Change.OVERHANG) {
                mends.add(Mend.of("distance", size + (by.isPositive() ? " more" : " less"), by, result));
            }
            return;
        }
        switch (change) {
            case OVERHANG ->
                mends.add(Mend.of(change + ", on the slope", size + (by.isPositive() ? " more" : " less"), by, result));
            case TOP_DISTANCE -> {
                if (plan.topDistance().value().meetsLeast(by)) {
                    mends.add(Mend.of(
                            change.toString(), size + (by.isPositive() ? " less" : " more"), by.negated(), result));
                }
            }
            case FASCIA -> {
                if (by.isPositive()) {
                    mends.add(Mend.of(change.toString(), "packed out by " + size + " on the slope", by, result));
                }
            }
            default -> {
                // the number of gauges and packing at one end change no distance
            }
        }
    }

    private String result(Step step) {
        Ends<Length> gauge = frame.distance.map(d -> d.plus(step.by).dividedBy(step.parts));
        return gauges(step.parts) + (gauge.isEqual() ? " of " + gauge.left() : ": " + gauge);
    }

    private Problem tooUnequal(int parts) {
        Length apart = frame.longer().minus(frame.shorter());
        Length room = frame.greatestGauge.minus(least).times(parts);
        Length excess = apart.minus(room);
        return Problem.finding(
                Courses.ENDS_TOO_UNEQUAL,
                "courses",
                apart,
                room,
                "the ends differ by " + apart + ", but " + gauges(parts) + " from " + least + " to "
                        + frame.greatestGauge + " take up " + room + " only",
                List.of(Mend.of(
                        Change.PACKING.toString(),
                        "eaves or top packed at the " + frame.longerEnd() + " end until it is " + excess + " shorter",
                        excess.negated(),
                        "the ends differ by " + room)));
    }
}
