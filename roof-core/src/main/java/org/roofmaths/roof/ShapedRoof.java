package org.roofmaths.roof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Direction;
import org.roofmaths.units.Length;
import org.roofmaths.units.Offset;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Worked;

/** A ready-made shape over the plate lines of a building, all of whose sides are eaves until said otherwise. */
final class ShapedRoof {
    private static final Formula SAME_FASCIA = Formula.of(
            RoofFace.EAVES_OVERHANG,
            Roofs.MAIN_OVERHANG.times(Roofs.MAIN_PITCH.tan()).over(RoofFace.RAFTER_PITCH.tan()));

    private final String kind;
    private final Map<String, PlanPoint> corners;
    private final List<Problem> wrong;
    private final Figure<Length> run;
    private final Slope slope;
    private final Offset overhang;
    private final Map<String, Object> bySide;

    private ShapedRoof(
            String kind,
            Map<String, PlanPoint> corners,
            List<Problem> wrong,
            Figure<Length> run,
            Slope slope,
            Offset overhang,
            Map<String, Object> bySide) {
        this.kind = kind;
        this.corners = corners;
        this.wrong = wrong;
        this.run = run;
        this.slope = Objects.requireNonNull(slope, "slope");
        this.overhang = Objects.requireNonNull(overhang, "overhang");
        this.bySide = bySide;
    }

    /**
     * A shape from the corners of its plate lines, against the clock, each with the name of the side that starts there.
     *
     * @param run the run over which two heights of the slope are taken
     * @param wrong what is already known to be wrong with its sizes
     */
    static ShapedRoof of(
            String kind,
            Map<String, PlanPoint> corners,
            List<Problem> wrong,
            Figure<Length> run,
            Slope slope,
            Offset overhang) {
        return new ShapedRoof(kind, corners, wrong, run, slope, overhang, Map.of());
    }

    /** The same shape with a pitch, a roof end or nothing but an abutment along one side. */
    ShapedRoof with(String side, Object treatment) {
        Map<String, Object> more = new LinkedHashMap<>(bySide);
        more.put(Objects.requireNonNull(side, "side"), treatment);
        return new ShapedRoof(kind, corners, wrong, run, slope, overhang, more);
    }

    Attempt<Roof> attempt() {
        Problems problems = Problems.none().addAll(wrong);
        boolean sized = wrong.isEmpty();
        RectangularRoof.checkEaves(overhang, problems);
        bySide.forEach((side, treatment) -> {
            problems.require(
                    corners.containsKey(side),
                    Roofs.SIDE,
                    "side",
                    "\"" + side + "\"",
                    "be one of " + String.join(", ", corners.keySet()));
            if (treatment instanceof RoofEnd.Verge verge) {
                String where = "overhang of side \"" + side + "\"";
                problems.require(
                        verge.overhang().direction() == Direction.LEVEL,
                        Roofs.VERGE,
                        where,
                        verge.overhang(),
                        "be measured level");
                Sizes.requireNoLessThanZero(
                        problems, Roofs.VERGE, where, verge.overhang().length());
            }
        });
        Slope.@Nullable Resolved resolved = slope.resolved(run, sized, problems);
        if (problems.hasErrors() || resolved == null) {
            return Attempt.failed(problems.list());
        }
        Figure<Length> level = RectangularRoof.levelOverhang(overhang, resolved.pitch());
        Attempt<RoofPlan> plan = plan(resolved, level);
        if (!plan.hasValue()) {
            return Attempt.failed(plan.problems());
        }
        RoofPlan named = new RoofPlan(kind, plan.orThrow().rings(), Map.of(), problems.list());
        return Roof.attempt(named);
    }

    private Attempt<RoofPlan> plan(Slope.Resolved resolved, Figure<Length> level) {
        List<String> names = List.copyOf(corners.keySet());
        List<EdgeTreatment> treatments = new ArrayList<>();
        List<Length> outwards = new ArrayList<>();
        for (String name : names) {
            EdgeTreatment treatment = treatment(bySide.get(name), resolved, level);
            treatments.add(treatment);
            if (treatment instanceof EdgeTreatment.Eaves eaves) {
                outwards.add(eaves.overhang().value());
            } else {
                outwards.add(
                        bySide.get(name) instanceof RoofEnd.Verge verge
                                ? verge.overhang().length()
                                : Length.ZERO);
            }
        }
        List<PlanPoint> moved = movedOut(List.copyOf(corners.values()), outwards);
        RoofPlan.Builder builder = RoofPlan.builder();
        for (int i = 0; i < names.size(); i++) {
            builder.corner(names.get(i), moved.get(i).x(), moved.get(i).y()).side(names.get(i), treatments.get(i));
        }
        return builder.attempt();
    }

    private static EdgeTreatment treatment(
            @Nullable Object asked, Slope.Resolved resolved, Figure<Length> mainOverhang) {
        if (asked instanceof RoofEnd.Verge) {
            return EdgeTreatment.gable();
        }
        if (asked instanceof RoofEnd.Abutment) {
            return EdgeTreatment.abutment();
        }
        if (asked instanceof Pitch pitch) {
            // plates and fascias keep their levels, so the overhang of a steeper slope is the lesser
            Figure<Length> own = Worked.by(RoofFace.EAVES_OVERHANG, r -> {
                Length level = r.use(Roofs.MAIN_OVERHANG, mainOverhang);
                Pitch main = r.use(Roofs.MAIN_PITCH, resolved.pitch());
                Pitch steep = r.use(RoofFace.RAFTER_PITCH, pitch);
                return r.record(RoofFace.EAVES_OVERHANG, level.times(main.tan() / steep.tan()), SAME_FASCIA);
            });
            return new EdgeTreatment.Eaves(Figure.given(pitch), own, resolved.plateHeight());
        }
        return new EdgeTreatment.Eaves(resolved.pitch(), mainOverhang, resolved.plateHeight());
    }

    /**
     * The corners where the sides cross when each is moved out by its own distance; none may be in line with its
     * neighbour.
     */
    private static List<PlanPoint> movedOut(List<PlanPoint> points, List<Length> outwards) {
        int n = points.size();
        List<PlanPoint> moved = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            PlanPoint before = points.get((i + n - 1) % n);
            PlanPoint here = points.get(i);
            PlanPoint after = points.get((i + 1) % n);
            double ax = here.x().minus(before.x()).toMetres();
            double ay = here.y().minus(before.y()).toMetres();
            double bx = after.x().minus(here.x()).toMetres();
            double by = after.y().minus(here.y()).toMetres();
            double a = StrictMath.hypot(ax, ay);
            double b = StrictMath.hypot(bx, by);
            double da = outwards.get((i + n - 1) % n).toMetres();
            double db = outwards.get(i).toMetres();
            // here + s × a + t × b lies da outside the side before and db outside the side after
            double cross = ax * by - ay * bx;
            double s = db * b / cross;
            double t = -da * a / cross;
            moved.add(PlanPoint.of(
                    here.x().plus(Length.ofMetres(s * ax + t * bx)), here.y().plus(Length.ofMetres(s * ay + t * by))));
        }
        return moved;
    }
}
