package org.roofmaths.roof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Direction;
import org.roofmaths.units.Length;
import org.roofmaths.units.Offset;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Worked;

/** The sizes of a roof over a rectangle that slopes from one long side or from both, and the plan made of them. */
final class RectangularRoof {
    private static final Formula RUN_IS_PROJECTION = Formula.of(RoofFace.RUN, Roofs.PROJECTION);
    private static final Formula RUN_IS_HALF_SPAN = Formula.of(RoofFace.RUN, Roofs.SPAN.over(2));
    private static final Formula LEVEL_OF_SLOPING =
            Formula.of(RoofFace.EAVES_OVERHANG, Roofs.EAVES_OVERHANG_ON_SLOPE.times(RoofFace.RAFTER_PITCH.cos()));
    private static final Formula LEVEL_OF_PLUMB =
            Formula.of(RoofFace.EAVES_OVERHANG, Roofs.EAVES_DROP.over(RoofFace.RAFTER_PITCH.tan()));

    private final boolean bothSides;
    private final Length length;
    private final Length depth;
    private final Slope slope;
    private final Offset overhang;
    private final Ends<RoofEnd> ends;

    private RectangularRoof(
            boolean bothSides, Length length, Length depth, Slope slope, Offset overhang, Ends<RoofEnd> ends) {
        this.bothSides = bothSides;
        this.length = Objects.requireNonNull(length, "length");
        this.depth = Objects.requireNonNull(depth, bothSides ? "span" : "projection");
        this.slope = Objects.requireNonNull(slope, "slope");
        this.overhang = Objects.requireNonNull(overhang, "overhang");
        this.ends = ends;
    }

    static RectangularRoof leanTo(Length length, Length projection, Slope slope, Offset overhang) {
        return new RectangularRoof(false, length, projection, slope, overhang, Ends.both(RoofEnd.verge()));
    }

    static RectangularRoof duoPitch(Length length, Length span, Slope slope, Offset overhang) {
        return new RectangularRoof(true, length, span, slope, overhang, Ends.both(RoofEnd.verge()));
    }

    RectangularRoof withLeft(RoofEnd end) {
        return new RectangularRoof(bothSides, length, depth, slope, overhang, Ends.of(end, ends.right()));
    }

    RectangularRoof withRight(RoofEnd end) {
        return new RectangularRoof(bothSides, length, depth, slope, overhang, Ends.of(ends.left(), end));
    }

    Attempt<Roof> attempt() {
        Problems problems = Problems.none();
        Sizes.requireSize(problems, Roofs.SIZE, bothSides ? "length" : "wall length", length);
        Sizes.requireSize(problems, Roofs.SIZE, bothSides ? "span" : "projection", depth);
        boolean sized = !problems.hasErrors();
        checkVerge(End.LEFT, problems);
        checkVerge(End.RIGHT, problems);
        checkEaves(overhang, problems);
        Figure<Length> run = run();
        Slope.@Nullable Resolved resolved = slope.resolved(run, sized, problems);
        if (problems.hasErrors() || resolved == null) {
            return Attempt.failed(problems.list());
        }
        Figure<Length> level = levelOverhang(overhang, resolved.pitch());
        problems.require(
                level.value().isShorterThan(run.value()),
                Roofs.EAVES,
                "eaves overhang",
                overhang,
                "be shorter than the run of " + run.value());
        return problems.attempt(() -> roof(resolved, run, level, problems));
    }

    private void checkVerge(End end, Problems problems) {
        if (ends.at(end) instanceof RoofEnd.Verge verge) {
            String where = "verge overhang at the " + end;
            problems.require(
                    verge.overhang().direction() == Direction.LEVEL,
                    Roofs.VERGE,
                    where,
                    verge.overhang(),
                    "be measured level");
            Sizes.requireNoLessThanZero(
                    problems, Roofs.VERGE, where, verge.overhang().length());
        }
    }

    private Figure<Length> run() {
        Length whole = depth;
        return bothSides
                ? Worked.by(RoofFace.RUN, r -> {
                    Length span = r.use(Roofs.SPAN, whole);
                    return r.record(RoofFace.RUN, span.dividedBy(2), RUN_IS_HALF_SPAN);
                })
                : Worked.by(RoofFace.RUN, r -> {
                    Length projection = r.use(Roofs.PROJECTION, whole);
                    return r.record(RoofFace.RUN, projection, RUN_IS_PROJECTION);
                });
    }

    static void checkEaves(Offset overhang, Problems problems) {
        problems.require(
                overhang.direction() != Direction.SQUARE_TO_SLOPE,
                Roofs.EAVES,
                "eaves overhang",
                overhang,
                "be measured level, plumb or on the slope");
        problems.require(!overhang.length().isNegative(), Roofs.EAVES, "eaves overhang", overhang, "be 0 mm or more");
    }

    /** The eaves overhang measured level, whichever way it was given. */
    static Figure<Length> levelOverhang(Offset given, Figure<Pitch> pitch) {
        return switch (given.direction()) {
            case ON_SLOPE ->
                Worked.by(RoofFace.EAVES_OVERHANG, r -> {
                    Pitch p = r.use(RoofFace.RAFTER_PITCH, pitch);
                    Length sloping = r.use(Roofs.EAVES_OVERHANG_ON_SLOPE, given.length());
                    return r.record(RoofFace.EAVES_OVERHANG, p.runAlong(sloping), LEVEL_OF_SLOPING);
                });
            case PLUMB ->
                Worked.by(RoofFace.EAVES_OVERHANG, r -> {
                    Pitch p = r.use(RoofFace.RAFTER_PITCH, pitch);
                    Length drop = r.use(Roofs.EAVES_DROP, given.length());
                    return r.record(RoofFace.EAVES_OVERHANG, p.runOver(drop), LEVEL_OF_PLUMB);
                });
            default -> Figure.given(given.length());
        };
    }

    private Length beyondWall(End end) {
        return ends.at(end) instanceof RoofEnd.Verge verge ? verge.overhang().length() : Length.ZERO;
    }

    /** The width along the eaves: the length and the overhang of each verge. */
    private Figure<Length> eavesWidth() {
        Length wall = length;
        Ends<RoofEnd> at = ends;
        return Worked.by(RoofFace.EAVES_WIDTH, r -> eavesWidth(wall, at, r));
    }

    private static Length eavesWidth(Length wall, Ends<RoofEnd> ends, Recorder r) {
        Length width = r.use(Roofs.WALL_LENGTH, wall);
        Expression sum = Roofs.WALL_LENGTH;
        for (End end : End.values()) {
            if (ends.at(end) instanceof RoofEnd.Verge verge) {
                width = width.plus(r.use(
                        Roofs.VERGE_OVERHANG.at(end.toString()),
                        verge.overhang().length()));
                sum = sum.plus(Roofs.VERGE_OVERHANG.at(end.toString()));
            }
        }
        return r.record(RoofFace.EAVES_WIDTH, width, Formula.of(RoofFace.EAVES_WIDTH, sum));
    }

    private Roof roof(Slope.Resolved slope, Figure<Length> run, Figure<Length> level, Problems problems) {
        Length left = beyondWall(End.LEFT).negated();
        Length right = length.plus(beyondWall(End.RIGHT));
        Length front = level.value().negated();
        Length back = bothSides ? depth.plus(level.value()) : depth;
        List<PlanPoint> corners = List.of(
                PlanPoint.of(left, front),
                PlanPoint.of(right, front),
                PlanPoint.of(right, back),
                PlanPoint.of(left, back));
        EdgeTreatment eaves = new EdgeTreatment.Eaves(slope.pitch(), level, slope.plateHeight());
        List<String> names =
                bothSides ? List.of("front", "right", "back", "left") : List.of("main", "right", "top", "left");
        List<EdgeTreatment> treatments = List.of(
                eaves, treatment(ends.right()), bothSides ? eaves : EdgeTreatment.abutment(), treatment(ends.left()));
        List<PlanSide> sides = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            sides.add(new PlanSide(
                    names.get(i), corners.get(i), corners.get((i + 1) % corners.size()), treatments.get(i)));
        }
        Figure<Length> width = eavesWidth();
        Map<String, FaceFigures> figures = new LinkedHashMap<>();
        figures.put(names.get(0), new FaceFigures(width, width, run));
        if (bothSides) {
            figures.put(names.get(2), new FaceFigures(width, width, run));
        }
        RoofPlan plan = new RoofPlan(bothSides ? "duo-pitch" : "lean-to", List.of(sides), figures, problems.list());
        return Roof.over(plan);
    }

    private static EdgeTreatment treatment(RoofEnd end) {
        return end instanceof RoofEnd.Verge ? EdgeTreatment.gable() : EdgeTreatment.abutment();
    }
}
