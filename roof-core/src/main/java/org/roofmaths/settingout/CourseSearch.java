package org.roofmaths.settingout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.units.Direction;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Range;
import org.roofmaths.working.Assumed;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Recorder;

/**
 * Finds courses for a face: as wanted if that fits; else with the least change of overhang or top distance inside their ranges, in the
 * caller's order; else not, and why.
 */
final class CourseSearch {
    private final CoursePlan plan;
    private final @Nullable Range<Length> overhangRange;
    private final @Nullable Range<Length> topDistanceRange;

    CourseSearch(CoursePlan plan, @Nullable Range<Length> overhangRange, @Nullable Range<Length> topDistanceRange) {
        this.plan = plan;
        this.overhangRange = overhangRange;
        this.topDistanceRange = topDistanceRange;
    }

    /** By how much the distance to divide can change for one kind of change, on the slope. */
    private record Play(Change change, Length least, Length greatest) {}

    Attempt<Courses> find() {
        Attempt<Courses> asWanted = Courses.attempt(plan);
        if (asWanted.hasValue()) {
            return asWanted;
        }
        List<Play> plays = plays();
        for (Play play : plays) {
            Optional<Attempt<Courses>> found = within(List.of(play));
            if (found.isPresent()) {
                return found.orElseThrow();
            }
        }
        return plays.size() > 1 ? within(plays).orElse(asWanted) : asWanted;
    }

    private List<Play> plays() {
        List<Play> plays = new ArrayList<>();
        for (Change change : plan.preference().changes()) {
            Range<Length> overhang = overhangRange;
            Range<Length> top = topDistanceRange;
            if (change == Change.OVERHANG && overhang != null) {
                Length wanted = plan.overhang().value();
                plays.add(new Play(
                        change,
                        onSlope(overhang.lower().orElseThrow().minus(wanted)),
                        onSlope(overhang.upper().orElseThrow().minus(wanted))));
            } else if (change == Change.TOP_DISTANCE && top != null) {
                Length wanted = plan.topDistance().value();
                plays.add(new Play(
                        change,
                        wanted.minus(top.upper().orElseThrow()),
                        wanted.minus(top.lower().orElseThrow())));
            }
        }
        return plays;
    }

    private Length onSlope(Length length) {
        Figure<Pitch> pitch = plan.pitch();
        return plan.overhangDirection() == Direction.LEVEL && pitch != null
                ? pitch.value().slopeOver(length)
                : length;
    }

    private Length asMeasured(Length onSlope) {
        Figure<Pitch> pitch = plan.pitch();
        return plan.overhangDirection() == Direction.LEVEL && pitch != null
                ? pitch.value().runAlong(onSlope)
                : onSlope;
    }

    /** Takes the least change that fits, from the first play as far as it goes and the rest from the next. */
    private Optional<Attempt<Courses>> within(List<Play> plays) {
        Length low = Length.ZERO;
        Length high = Length.ZERO;
        for (Play play : plays) {
            low = low.plus(play.least);
            high = high.plus(play.greatest);
        }
        CourseFrame frame = CourseFrame.of(plan, Recorder.off());
        Optional<Length> change = leastChange(frame, low, high);
        if (change.isEmpty()) {
            return Optional.empty();
        }
        Length left = change.orElseThrow();
        CoursePlan moved = plan;
        List<Problem> notices = new ArrayList<>();
        for (Play play : plays) {
            Length part = left.max(play.least).min(play.greatest);
            left = left.minus(part);
            moved = play.change == Change.OVERHANG ? moveOverhang(moved, part, notices) : moveTop(moved, part, notices);
        }
        Attempt<Courses> attempt = Courses.attempt(moved);
        if (!attempt.hasValue()) {
            return Optional.empty();
        }
        notices.addAll(attempt.problems());
        return Optional.of(Attempt.of(attempt.orThrow(), notices));
    }

    private static Optional<Length> leastChange(CourseFrame frame, Length low, Length high) {
        Length least = frame.leastGauge == null ? Length.ZERO : frame.leastGauge;
        if (!frame.greatestGauge.isLongerThan(Length.STORAGE_RESOLUTION)) {
            return Optional.empty();
        }
        Length best = null;
        long fewest = frame.greatestGauge.timesToCover(frame.longer().plus(low).max(Length.ZERO));
        long most = frame.greatestGauge.timesToCover(frame.longer().plus(high).max(Length.ZERO)) + 1;
        for (long p = Math.max(Math.max(1, 1 + frame.extra), fewest); p <= most; p++) {
            Length from = least.times(p).minus(frame.shorter()).max(low);
            Length to = frame.greatestGauge.times(p).minus(frame.longer()).min(high);
            if (!from.isLongerThan(to)) {
                Length change = Length.ZERO.max(from).min(to);
                best = best == null || change.abs().isShorterThan(best.abs()) ? change : best;
            }
        }
        return Optional.ofNullable(best);
    }

    private CoursePlan moveOverhang(CoursePlan from, Length part, List<Problem> notices) {
        if (part.isZero()) {
            return from;
        }
        Length wanted = from.overhang().value();
        Length got = wanted.plus(asMeasured(part));
        notices.add(moved(Change.OVERHANG, got, wanted, overhangRange));
        return from.withOverhang(movedFigure(got, wanted, overhangRange, "overhangRange"));
    }

    private CoursePlan moveTop(CoursePlan from, Length part, List<Problem> notices) {
        if (part.isZero()) {
            return from;
        }
        Length wanted = from.topDistance().value();
        Length got = wanted.minus(part);
        notices.add(moved(Change.TOP_DISTANCE, got, wanted, topDistanceRange));
        return from.withTopDistance(movedFigure(got, wanted, topDistanceRange, "topDistanceRange"));
    }

    private static Figure<Length> movedFigure(Length got, Length wanted, @Nullable Range<Length> range, String part) {
        return Assumed.of(
                got,
                "moved from the " + wanted + " wanted, within " + range + ", so that equal gauges fit",
                "give another " + part + " in the layout scheme");
    }

    private static Problem moved(Change change, Length got, Length wanted, @Nullable Range<Length> range) {
        return Problem.notice(
                Courses.MOVED,
                "courses",
                got,
                change + " is " + got + ", moved from the " + wanted + " wanted, within " + range
                        + ", so that equal gauges fit");
    }
}
