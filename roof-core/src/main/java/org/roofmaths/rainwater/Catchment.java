package org.roofmaths.rainwater;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.roof.FacePoint;
import org.roofmaths.roof.RoofEdge;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.roof.SpacePoint;
import org.roofmaths.units.Area;
import org.roofmaths.units.FlowRate;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.RainfallIntensity;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;
import org.roofmaths.working.Working;

/**
 * The area whose rain reaches one gutter or valley: slopes, the walls above them, and upper roofs that discharge on to them.
 *
 * <p>Formula: {@code effective area = area on plan × factor + share × wall + upper roofs}, the factor by the rule set. Flow is effective
 * area × rainfall. For example, 12 m along the eaves, 7 m of run and 3 m of rise with half the rise: {@code 12 × (7 + 3 ÷ 2)} =
 * 102 m²; at 0.021 l/s for each square metre 2.142 l/s.
 *
 * <p>The run is that of ONE slope, never the span. An upper roof is not area only: its water lands on one part of the lower eaves, so it is
 * kept apart ({@link #landed()}) and a central outlet does not halve it; and the covering in its landing strip needs its own least pitch and
 * lap looked at.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Catchment implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The length along the eaves. */
    public static final Term<Length> ALONG_EAVES = Term.of("length of eaves that drains", "Le", Length.class);
    /** The level run of the slope. */
    public static final Term<Length> RUN = Term.of("run of the slope that drains", "We", Length.class);
    /** The pitch of the slope. */
    public static final Term<Pitch> PITCH = Term.of("pitch of the slope that drains", "pd", Pitch.class);
    /** The area of the slope on plan. */
    public static final Term<Area> PLAN_AREA = Term.of("plan area that drains", "Ad", Area.class);
    /** The factor by which the rule set multiplies the plan area. */
    public static final Term<Ratio> AREA_FACTOR = Term.of("catchment factor", "kc", Ratio.class);
    /** The area of the slope that catches rain. */
    public static final Term<Area> SLOPE_CATCH = Term.of("slope's share of the effective area", "Es", Area.class);
    /** The face of a wall above the slope. */
    public static final Term<Area> WALL_AREA = Term.of("face of the wall above", "Aw", Area.class);
    /** What a wall adds. */
    public static final Term<Area> WALL_CATCH = Term.of("wall's share of the effective area", "Ew", Area.class);
    /** What an upper roof adds. */
    public static final Term<Area> UPPER_CATCH = Term.of("upper roof's effective area", "Eu", Area.class);
    /** The area that counts. */
    public static final Term<Area> EFFECTIVE_AREA = Term.of("effective area", "Ae", Area.class);
    /** The rain. */
    public static final Term<RainfallIntensity> INTENSITY =
            Term.of("rainfall intensity", "ri", RainfallIntensity.class);
    /** The water that runs off. */
    public static final Term<FlowRate> FLOW = Term.of("flow of rainwater", "Q", FlowRate.class);

    /** A size that is not above zero, or a share out of range. */
    public static final ProblemCode WRONG_SIZE =
            ProblemCode.of("rainwater.wrong-size", "Correct the size; each must be above zero.");
    /** A catchment was asked for along an edge that collects no water. */
    public static final ProblemCode WRONG_EDGE =
            ProblemCode.of("rainwater.wrong-edge", "Ask for the catchment of a valley, or of a face at its eaves.");
    /** Water of an upper roof lands on this one. */
    public static final ProblemCode UPPER_ROOF = ProblemCode.of(
            "rainwater.upper-roof",
            "Look at pitch and lap of the covering in the landing strip, or carry the pipe down to the gutter.");

    private static final Formula PLAN_BY_SIZES = Formula.of(PLAN_AREA, ALONG_EAVES.times(RUN));
    private static final Formula SLOPE_BY_FACTOR = Formula.of(SLOPE_CATCH, PLAN_AREA.times(AREA_FACTOR));
    private static final Formula WALL_BY_SHARE = Formula.of(WALL_CATCH, CatchmentDemand.SHARE_OF_WALL.times(WALL_AREA));
    private static final Formula UPPER_WHOLE = Formula.of(UPPER_CATCH, EFFECTIVE_AREA);
    private static final Formula FLOW_BY_RAIN = Formula.of(FLOW, EFFECTIVE_AREA.times(INTENSITY));

    private final List<Part> parts;
    private final CatchmentDemand demand;
    private final Area effectiveArea;

    /** One thing that sheds water here. */
    private abstract static sealed class Part implements Serializable permits SlopePart, WallPart, UpperPart {
        abstract Area record(Recorder r, CatchmentDemand demand);

        abstract Term<Area> term();
    }

    /** A slope by its plan area, or by its two sizes. */
    private static final class SlopePart extends Part {
        private final @Nullable Figure<Length> along;
        private final @Nullable Figure<Length> run;
        private final @Nullable Figure<Area> onPlan;
        private final Figure<Pitch> pitch;

        SlopePart(
                @Nullable Figure<Length> along,
                @Nullable Figure<Length> run,
                @Nullable Figure<Area> onPlan,
                Figure<Pitch> pitch) {
            this.along = along;
            this.run = run;
            this.onPlan = onPlan;
            this.pitch = pitch;
        }

        @Override
        Area record(Recorder r, CatchmentDemand demand) {
            Area plan;
            if (onPlan == null) {
                Length eaves = r.use(ALONG_EAVES, Objects.requireNonNull(along));
                Length level = r.use(RUN, Objects.requireNonNull(run));
                plan = r.record(PLAN_AREA, eaves.times(level), PLAN_BY_SIZES);
            } else {
                plan = r.use(PLAN_AREA, onPlan);
            }
            Pitch slope = r.use(PITCH, pitch);
            Ratio factor = demand.factor(r, slope);
            return r.record(SLOPE_CATCH, plan.times(factor), SLOPE_BY_FACTOR);
        }

        @Override
        Term<Area> term() {
            return SLOPE_CATCH;
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof SlopePart s
                    && Objects.equals(along, s.along)
                    && Objects.equals(run, s.run)
                    && Objects.equals(onPlan, s.onPlan)
                    && pitch.equals(s.pitch);
        }

        @Override
        public int hashCode() {
            return Objects.hash(along, run, onPlan, pitch);
        }
    }

    /** A wall above the slope. */
    private static final class WallPart extends Part {
        private final Figure<Area> face;

        WallPart(Figure<Area> face) {
            this.face = face;
        }

        @Override
        Area record(Recorder r, CatchmentDemand demand) {
            Area wall = r.use(WALL_AREA, face);
            Ratio share = r.use(CatchmentDemand.SHARE_OF_WALL, demand.shareOfWall());
            return r.record(WALL_CATCH, wall.times(share), WALL_BY_SHARE);
        }

        @Override
        Term<Area> term() {
            return WALL_CATCH;
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof WallPart w && face.equals(w.face);
        }

        @Override
        public int hashCode() {
            return face.hashCode();
        }
    }

    /** An upper roof whose water lands here. */
    private static final class UpperPart extends Part {
        private final Catchment upper;
        private final LandingStrip strip;

        UpperPart(Catchment upper, LandingStrip strip) {
            this.upper = upper;
            this.strip = strip;
        }

        @Override
        Area record(Recorder r, CatchmentDemand demand) {
            Area area = r.use(EFFECTIVE_AREA, Worked.by(EFFECTIVE_AREA, upper::compute));
            return r.record(UPPER_CATCH, area, UPPER_WHOLE);
        }

        @Override
        Term<Area> term() {
            return UPPER_CATCH;
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof UpperPart u && upper.equals(u.upper) && strip.equals(u.strip);
        }

        @Override
        public int hashCode() {
            return Objects.hash(upper, strip);
        }
    }

    private Catchment(List<Part> parts, CatchmentDemand demand) {
        this.parts = List.copyOf(parts);
        this.demand = Objects.requireNonNull(demand, "demand");
        effectiveArea = compute(Recorder.off());
    }

    /**
     * Returns the catchment of one slope by its sizes.
     *
     * @param alongEaves the length along the eaves, above zero
     * @param run the level run of ONE slope from eaves to ridge, above zero
     * @param pitch the pitch of the slope
     * @param demand the rule set
     * @return the catchment
     * @throws ProblemsException if a size is not above zero
     */
    public static Catchment of(Length alongEaves, Length run, Pitch pitch, CatchmentDemand demand) {
        return of(Given.of(alongEaves), Given.of(run), Given.of(pitch), demand);
    }

    /**
     * Returns the catchment of one slope by its sizes.
     *
     * @param alongEaves the length along the eaves, above zero
     * @param run the level run of ONE slope from eaves to ridge, above zero
     * @param pitch the pitch of the slope
     * @param demand the rule set
     * @return the catchment
     * @throws ProblemsException if a size is not above zero
     */
    public static Catchment of(
            Figure<Length> alongEaves, Figure<Length> run, Figure<Pitch> pitch, CatchmentDemand demand) {
        Problems.none()
                .require(
                        alongEaves.value().isPositive(),
                        WRONG_SIZE,
                        ALONG_EAVES.name(),
                        alongEaves.value(),
                        "be above 0 mm")
                .require(run.value().isPositive(), WRONG_SIZE, RUN.name(), run.value(), "be above 0 mm")
                .throwIfErrors();
        return new Catchment(
                List.of(new SlopePart(alongEaves, run, null, Objects.requireNonNull(pitch, "pitch"))), demand);
    }

    /**
     * Returns the catchment of one slope by its area on plan.
     *
     * @param onPlan the area on plan, above zero
     * @param pitch the pitch of the slope
     * @param demand the rule set
     * @return the catchment
     * @throws ProblemsException if the area is not above zero
     */
    public static Catchment of(Area onPlan, Pitch pitch, CatchmentDemand demand) {
        Problems.none()
                .require(onPlan.isPositive(), WRONG_SIZE, PLAN_AREA.name(), onPlan, "be above 0 m²")
                .throwIfErrors();
        return new Catchment(List.of(new SlopePart(null, null, Given.of(onPlan), Given.of(pitch))), demand);
    }

    /**
     * Returns the catchment of a whole face, all of which drains to its eaves. Water that a valley takes first is the valley's: see
     * {@link #ofValley}.
     *
     * @param face the face
     * @param demand the rule set
     * @return the catchment
     */
    public static Catchment of(RoofFace face, CatchmentDemand demand) {
        Figure<Area> onPlan = Worked.by(RoofFace.AREA_ON_PLAN, r -> {
            if (r.isOn()) {
                r.use(PLAN_AREA, face.working().at(RoofFace.AREA_ON_PLAN));
                return r.record(RoofFace.AREA_ON_PLAN, face.areaOnPlan(), Formula.of(RoofFace.AREA_ON_PLAN, PLAN_AREA));
            }
            return face.areaOnPlan();
        });
        return new Catchment(List.of(new SlopePart(null, null, onPlan, face.pitchFigure())), demand);
    }

    /**
     * Returns the catchment of a valley: the parts of both slopes whose water runs into it.
     *
     * @param valley the edge
     * @param demand the rule set
     * @return the catchment
     * @throws ProblemsException if the edge is no valley
     */
    public static Catchment ofValley(RoofEdge valley, CatchmentDemand demand) {
        Problems.none()
                .require(
                        valley.kind() == EdgeKind.VALLEY,
                        WRONG_EDGE,
                        "edge",
                        valley.kind() + " \"" + valley.name() + "\"",
                        "be a valley")
                .throwIfErrors();
        List<Part> parts = new ArrayList<>();
        for (RoofFace face : valley.faces()) {
            parts.add(new SlopePart(null, null, Given.of(planAbove(face, valley)), face.pitchFigure()));
        }
        return new Catchment(parts, demand);
    }

    /** The part of a face straight up the slope from an edge, on plan. */
    private static Area planAbove(RoofFace face, RoofEdge edge) {
        List<FacePoint> flat = face.flatShape().corners();
        List<SpacePoint> corners = face.polygon();
        double one = flat.get(corners.indexOf(edge.from())).along().toSi();
        double other = flat.get(corners.indexOf(edge.to())).along().toSi();
        List<double[]> ring = new ArrayList<>();
        flat.forEach(
                point -> ring.add(new double[] {point.along().toSi(), point.up().toSi()}));
        List<double[]> strip = clip(clip(ring, StrictMath.min(one, other), 1), StrictMath.max(one, other), -1);
        double twice = 0;
        for (int i = 0; i < strip.size(); i++) {
            double[] a = strip.get(i);
            double[] b = strip.get((i + 1) % strip.size());
            twice += a[0] * b[1] - b[0] * a[1];
        }
        return Area.ofSquareMetres(StrictMath.abs(twice) / 2 * face.pitch().cos());
    }

    private static List<double[]> clip(List<double[]> ring, double limit, int side) {
        List<double[]> kept = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            double[] a = ring.get(i);
            double[] b = ring.get((i + 1) % ring.size());
            boolean isAInside = (a[0] - limit) * side >= 0;
            boolean isBInside = (b[0] - limit) * side >= 0;
            if (isAInside) {
                kept.add(a);
            }
            if (isAInside != isBInside) {
                kept.add(new double[] {limit, a[1] + (b[1] - a[1]) * (limit - a[0]) / (b[0] - a[0])});
            }
        }
        return kept;
    }

    /**
     * Returns the same catchment with a wall above it that sheds on to it. Of walls at an angle count one only, the larger.
     *
     * @param face the area of the wall's face, above zero
     * @return the catchment with it
     * @throws ProblemsException if the area is not above zero
     */
    public Catchment plusWall(Area face) {
        Problems.none()
                .require(face.isPositive(), WRONG_SIZE, WALL_AREA.name(), face, "be above 0 m²")
                .throwIfErrors();
        return plus(new WallPart(Given.of(face)));
    }

    /**
     * Returns the same catchment with an upper roof that discharges on to it.
     *
     * @param upper the catchment of the upper roof
     * @param strip where its water lands along these eaves
     * @return the catchment with it
     */
    public Catchment plusUpper(Catchment upper, LandingStrip strip) {
        return plus(new UpperPart(Objects.requireNonNull(upper, "upper"), Objects.requireNonNull(strip, "strip")));
    }

    private Catchment plus(Part part) {
        List<Part> more = new ArrayList<>(parts);
        more.add(part);
        return new Catchment(more, demand);
    }

    Area compute(Recorder r) {
        double sum = 0;
        Expression expression = Expression.number(0);
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            if (!r.isOn()) {
                sum += part.record(r, demand).toSi();
                continue;
            }
            String place = "part " + (i + 1);
            sum += part.record(r.at(place), demand).toSi();
            Expression term = part.term().at(place);
            expression = i == 0 ? term : expression.plus(term);
        }
        Area area = Area.ofSquareMetres(sum);
        return r.isOn() ? r.record(EFFECTIVE_AREA, area, Formula.of(EFFECTIVE_AREA, expression)) : area;
    }

    /** Returns the whole effective area. */
    public Area effectiveArea() {
        return effectiveArea;
    }

    /** Returns the effective area of slopes and walls, whose water reaches the eaves all along. */
    public Area spreadArea() {
        return areaOf(part -> !(part instanceof UpperPart));
    }

    private Area areaOf(Predicate<Part> which) {
        return Area.ofSquareMetres(parts.stream()
                .filter(which)
                .mapToDouble(part -> part.record(Recorder.off(), demand).toSi())
                .sum());
    }

    /** Returns the upper roofs whose water lands on one part of the eaves: where, and how much area. */
    public List<LandedArea> landed() {
        return parts.stream()
                .filter(UpperPart.class::isInstance)
                .map(UpperPart.class::cast)
                .map(part -> new LandedArea(part.strip, part.upper.effectiveArea()))
                .toList();
    }

    /**
     * Returns the flow at a rainfall intensity. The intensity is that of the place, from its authority's map.
     *
     * @param intensity the rainfall intensity, above zero
     * @return the flow
     * @throws ProblemsException if the intensity is not above zero
     */
    public Worked<FlowRate> flow(Figure<RainfallIntensity> intensity) {
        Problems.none()
                .require(
                        intensity.value().isPositive(),
                        WRONG_SIZE,
                        INTENSITY.name(),
                        intensity.value(),
                        "be above 0 mm/h")
                .throwIfErrors();
        return Worked.by(FLOW, r -> {
            Area area = compute(r);
            RainfallIntensity rain = r.use(INTENSITY, intensity);
            return r.record(FLOW, rain.times(area), FLOW_BY_RAIN);
        });
    }

    /**
     * Returns the flow at a rainfall intensity.
     *
     * @param intensity the rainfall intensity, above zero
     * @return the flow
     * @throws ProblemsException if the intensity is not above zero
     */
    public Worked<FlowRate> flow(RainfallIntensity intensity) {
        return flow(Given.of(intensity));
    }

    /** Returns a notice for each upper roof whose water lands here. */
    public List<Problem> problems() {
        return landed().stream()
                .map(
                        landed -> Problem.notice(
                                UPPER_ROOF,
                                "catchment",
                                landed.area(),
                                "water of " + landed.area() + " lands on the eaves from "
                                        + landed.strip().from() + " to "
                                        + landed.strip().to()
                                        + ": that length of gutter takes it whole, and the covering there needs its own look at pitch and lap"))
                .toList();
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Catchment c && parts.equals(c.parts) && demand.equals(c.demand);
    }

    @Override
    public int hashCode() {
        return Objects.hash(parts, demand);
    }

    /** Returns for example {@code 102 m² effective: plan and 0.5 of the rise, 0.5 of walls}. */
    @Override
    public String toString() {
        return effectiveArea + " effective: " + demand;
    }
}
