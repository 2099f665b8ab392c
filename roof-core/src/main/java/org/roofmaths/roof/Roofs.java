package org.roofmaths.roof;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Length;
import org.roofmaths.units.Offset;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;

/**
 * Ready-made roofs, each from the sizes by which a builder names it.
 *
 * <p>The sizes are asked for one after another, in the order in which a person would say them; then the ends may be
 * described, and
 * {@code build()} gives the {@link Roof}, or {@code attempt()} the roof or everything that is wrong with the sizes.
 *
 * <pre>{@code
 * Roof shed = Roofs.leanTo()
 *         .wallLength(metres(4.6))
 *         .projection(metres(2.7))
 *         .slope(Slope.of(pitch("32°")))
 *         .eavesOverhang(level(mm(150)))
 *         .build();                          // lean-to at 32°: 1 face "main", 15.46 m² along the slope
 * }</pre>
 *
 * @since 0.1
 */
public final class Roofs {
    /** The level length of a roof along its eaves between the outer faces of its end walls, or the walls it abuts. */
    public static final Term<Length> WALL_LENGTH = Term.of("wall length", "W", Length.class);

    /** The level distance from the face of the wall above to the plate line. */
    public static final Term<Length> PROJECTION = Term.of("projection", "j", Length.class);

    /** The level distance from plate line to plate line. */
    public static final Term<Length> SPAN = Term.of("span", "S", Length.class);

    /** How far the covering reaches beyond the outer face of an end wall, level; at the left and at the right. */
    public static final Term<Length> VERGE_OVERHANG = Term.of("verge overhang", "v", Length.class);

    /** How far the fascia stands outside the plate line, measured on the slope. */
    public static final Term<Length> EAVES_OVERHANG_ON_SLOPE =
            Term.of("eaves overhang, on the slope", "os", Length.class);

    /** How far the rafter plane falls from the plate line to the fascia line. */
    public static final Term<Length> EAVES_DROP = Term.of("eaves overhang, plumb", "op", Length.class);

    /** The overhang, measured level, of the slopes that have the pitch of the roof. */
    public static final Term<Length> MAIN_OVERHANG =
            Term.of("eaves overhang of the other slopes, level", "om", Length.class);

    /** The pitch of the slopes for which no other is said. */
    public static final Term<Pitch> MAIN_PITCH = Term.of("pitch of the other slopes", "pm", Pitch.class);

    /** The level distance from the middle of a regular plan to its plate lines. */
    public static final Term<Length> APOTHEM =
            Term.of("distance from the middle to the plate line", "ap", Length.class);

    /** A size of a roof is zero, below zero or beyond a kilometre. */
    public static final ProblemCode SIZE = ProblemCode.of("roof.size", "Check the size and its unit.");

    /** The eaves overhang is not as it must be. */
    public static final ProblemCode EAVES = ProblemCode.of(
            "roof.eaves-overhang", "Give the overhang from the plate line to the fascia, and how it was measured.");

    /** A verge overhang is not as it must be. */
    public static final ProblemCode VERGE = ProblemCode.of(
            "roof.verge-overhang",
            "Give the overhang from the outer face of the end wall, measured level along the eaves.");

    /** A side was named that the shape does not have. */
    public static final ProblemCode SIDE =
            ProblemCode.of("roof.side", "The page of each shape names its sides; take one of these.");

    private Roofs() {}

    /**
     * Starts a lean-to: one slope, {@code main}, up to the wall of a higher building.
     *
     * <p>The wall length is level, along the eaves, between the outer faces of its end walls; at an abutment to the
     * face of the wall there. The projection is level, from the face of the wall above to the plate line. On plan the
     * left end of the plate line is the origin and the eaves run along the x axis.
     *
     * @return the next step: the wall length
     */
    public static WallLength<Projection<SlopeStep<EavesOverhang<LeanTo>>>> leanTo() {
        return length -> projection -> slope -> overhang -> new LeanTo(length, projection, slope, overhang);
    }

    /**
     * Starts a duo-pitch: two equal slopes, {@code front} and {@code back}, that meet in a level ridge over the middle
     * of the span.
     *
     * <p>The length is level, along the eaves, between the outer faces of its end walls; at an abutment to the face of
     * the wall there. The span is level, from plate line to plate line. The ends are left and right as seen from the
     * front. On plan the left end of the front plate line is the origin and the front eaves run along the x axis.
     *
     * @return the next step: the length
     */
    public static LengthStep<Span<SlopeStep<EavesOverhang<DuoPitch>>>> duoPitch() {
        return length -> span -> slope -> overhang -> new DuoPitch(length, span, slope, overhang);
    }

    /**
     * Starts a hipped roof over a rectangle: slopes {@code front}, {@code right}, {@code back} and {@code left}, with
     * hips over the corners. Length and span are between plate lines; on plan the left end of the front plate line is
     * the origin.
     *
     * @return the next step: the length
     */
    public static LengthStep<Span<SlopeStep<EavesOverhang<Shape>>>> hipped() {
        return length -> span -> slope -> overhang -> {
            Problems wrong = sizes("length", length, "span", span);
            Map<String, PlanPoint> corners = new LinkedHashMap<>();
            corners.put("front", PlanPoint.of(Length.ZERO, Length.ZERO));
            corners.put("right", PlanPoint.of(length, Length.ZERO));
            corners.put("back", PlanPoint.of(length, span));
            corners.put("left", PlanPoint.of(Length.ZERO, span));
            return new Shape(ShapedRoof.of("hipped", corners, wrong.list(), halfOf(span), slope, overhang));
        };
    }

    /**
     * Starts a pyramid over a square: four equal slopes {@code front}, {@code right}, {@code back} and {@code left}.
     *
     * @return the next step: the side of the square, between plate lines
     */
    public static Span<SlopeStep<EavesOverhang<Shape>>> pyramid() {
        return span -> hipped().length(span).span(span);
    }

    /**
     * Starts a roof over a regular plan: slopes {@code 1}, {@code 2} … against the clock, all equal.
     *
     * @param sides the number of sides, from 3 to 360
     * @return the next step: the distance from the middle of the plan to each plate line
     */
    public static Apothem<SlopeStep<EavesOverhang<Shape>>> regular(int sides) {
        return apothem -> slope -> overhang -> {
            Problems wrong = Problems.none();
            wrong.require(sides >= 3 && sides <= 360, SIZE, "number of sides", sides, "be from 3 to 360");
            Sizes.requireSize(wrong, SIZE, "distance to the plate line", apothem);
            Map<String, PlanPoint> corners = new LinkedHashMap<>();
            double outer = apothem.toMetres() / StrictMath.cos(StrictMath.PI / sides);
            for (int i = 0; i < sides && !wrong.hasErrors(); i++) {
                double turn = StrictMath.PI * (2 * i - 1.0) / sides - StrictMath.PI / 2;
                corners.put(
                        Integer.toString(i + 1),
                        PlanPoint.of(
                                Length.ofMetres(outer * StrictMath.cos(turn)),
                                Length.ofMetres(outer * StrictMath.sin(turn))));
            }
            Figure<Length> run = Worked.by(
                    RoofFace.RUN,
                    r -> r.record(RoofFace.RUN, r.use(APOTHEM, apothem), Formula.of(RoofFace.RUN, APOTHEM)));
            return new Shape(ShapedRoof.of("regular", corners, wrong.list(), run, slope, overhang));
        };
    }

    /**
     * Starts an L-shaped hipped roof: a main part of a length and span along the front, and at its left end a wing that
     * runs back beyond it. Its sides, against the clock, are {@code front}, {@code right}, {@code inner back}, {@code
     * inner right},
     * {@code wing end} and {@code left}; the valley lies over the corner of {@code inner back} and {@code inner right}.
     *
     * @return the next step: the length of the main part, between plate lines
     */
    public static LengthStep<Span<WingProjection<WingSpan<SlopeStep<EavesOverhang<Shape>>>>>> lShape() {
        return length -> span -> projection -> wingSpan -> slope -> overhang -> {
            Problems wrong = sizes("length", length, "span", span)
                    .addAll(sizes("wing projection", projection, "wing span", wingSpan)
                            .list());
            wrong.require(
                    wingSpan.isShorterThan(length),
                    SIZE,
                    "wing span",
                    wingSpan,
                    "be less than the length of " + length);
            Map<String, PlanPoint> corners = new LinkedHashMap<>();
            corners.put("front", PlanPoint.of(Length.ZERO, Length.ZERO));
            corners.put("right", PlanPoint.of(length, Length.ZERO));
            corners.put("inner back", PlanPoint.of(length, span));
            corners.put("inner right", PlanPoint.of(wingSpan, span));
            corners.put("wing end", PlanPoint.of(wingSpan, span.plus(projection)));
            corners.put("left", PlanPoint.of(Length.ZERO, span.plus(projection)));
            return new Shape(ShapedRoof.of("L-shaped", corners, wrong.list(), halfOf(span), slope, overhang));
        };
    }

    /**
     * Starts a T-shaped hipped roof: a main part of a length and span, and a wing that runs back from the middle of its
     * back. Its sides, against the clock, are {@code front}, {@code right}, {@code back right}, {@code wing right},
     * {@code wing end},
     * {@code wing left}, {@code back left} and {@code left}.
     *
     * @return the next step: the length of the main part, between plate lines
     */
    public static LengthStep<Span<WingProjection<WingSpan<SlopeStep<EavesOverhang<Shape>>>>>> tShape() {
        return length -> span -> projection -> wingSpan -> slope -> overhang -> {
            Problems wrong = sizes("length", length, "span", span)
                    .addAll(sizes("wing projection", projection, "wing span", wingSpan)
                            .list());
            wrong.require(
                    wingSpan.isShorterThan(length),
                    SIZE,
                    "wing span",
                    wingSpan,
                    "be less than the length of " + length);
            Length from = length.minus(wingSpan).dividedBy(2);
            Length to = from.plus(wingSpan);
            Map<String, PlanPoint> corners = new LinkedHashMap<>();
            corners.put("front", PlanPoint.of(Length.ZERO, Length.ZERO));
            corners.put("right", PlanPoint.of(length, Length.ZERO));
            corners.put("back right", PlanPoint.of(length, span));
            corners.put("wing right", PlanPoint.of(to, span));
            corners.put("wing end", PlanPoint.of(to, span.plus(projection)));
            corners.put("wing left", PlanPoint.of(from, span.plus(projection)));
            corners.put("back left", PlanPoint.of(from, span));
            corners.put("left", PlanPoint.of(Length.ZERO, span));
            return new Shape(ShapedRoof.of("T-shaped", corners, wrong.list(), halfOf(span), slope, overhang));
        };
    }

    private static Problems sizes(String one, Length first, String other, Length second) {
        Problems problems = Problems.none();
        Sizes.requireSize(problems, SIZE, one, first);
        Sizes.requireSize(problems, SIZE, other, second);
        return problems;
    }

    private static Figure<Length> halfOf(Length span) {
        return Worked.by(
                RoofFace.RUN,
                r -> r.record(RoofFace.RUN, r.use(SPAN, span).dividedBy(2), Formula.of(RoofFace.RUN, SPAN.over(2))));
    }

    /**
     * Asks for the distance from the middle of a regular plan to its plate lines.
     *
     * @param <N> what is asked for next
     * @since 0.1
     */
    @FunctionalInterface
    public interface Apothem<N> {
        /**
         * Says how far each plate line lies from the middle of the plan, level: half the width across flats of an even
         * number of sides.
         *
         * @param distance the distance, above zero
         * @return the next step
         */
        N toPlateLine(Length distance);
    }

    /**
     * Asks for the projection of a wing.
     *
     * @param <N> what is asked for next
     * @since 0.1
     */
    @FunctionalInterface
    public interface WingProjection<N> {
        /**
         * Says how far the wing runs beyond the main part, between plate lines.
         *
         * @param projection the distance, above zero
         * @return the next step
         */
        N wingProjection(Length projection);
    }

    /**
     * Asks for the span of a wing.
     *
     * @param <N> what is asked for next
     * @since 0.1
     */
    @FunctionalInterface
    public interface WingSpan<N> {
        /**
         * Says how wide the wing is, between plate lines.
         *
         * @param span the distance, above zero and less than the length of the main part
         * @return the next step
         */
        N wingSpan(Length span);
    }

    /**
     * Asks for the wall length.
     *
     * @param <N> what is asked for next
     * @since 0.1
     */
    @FunctionalInterface
    public interface WallLength<N> {
        /**
         * Says how long the roof is along its eaves between the outer faces of the end walls, level; at an abutment to
         * the wall there.
         *
         * @param length the length, above zero
         * @return the next step
         */
        N wallLength(Length length);
    }

    /**
     * Asks for the length of a building.
     *
     * @param <N> what is asked for next
     * @since 0.1
     */
    @FunctionalInterface
    public interface LengthStep<N> {
        /**
         * Says how long the building is along its eaves between the outer faces of the end walls, level; at an abutment
         * to the wall there.
         *
         * @param length the length, above zero
         * @return the next step
         */
        N length(Length length);
    }

    /**
     * Asks for the projection.
     *
     * @param <N> what is asked for next
     * @since 0.1
     */
    @FunctionalInterface
    public interface Projection<N> {
        /**
         * Says how far the plate line stands out from the face of the wall above, level.
         *
         * @param projection the distance, above zero
         * @return the next step
         */
        N projection(Length projection);
    }

    /**
     * Asks for the span.
     *
     * @param <N> what is asked for next
     * @since 0.1
     */
    @FunctionalInterface
    public interface Span<N> {
        /**
         * Says how far apart the two plate lines are, level.
         *
         * @param span the distance, above zero
         * @return the next step
         */
        N span(Length span);
    }

    /**
     * Asks for the slope.
     *
     * @param <N> what is asked for next
     * @since 0.1
     */
    @FunctionalInterface
    public interface SlopeStep<N> {
        /**
         * Says how steep the roof is: by a pitch, by two heights, or by both.
         *
         * @param slope the slope
         * @return the next step
         */
        N slope(Slope slope);
    }

    /**
     * Asks for the eaves overhang.
     *
     * @param <N> what is asked for next
     * @since 0.1
     */
    @FunctionalInterface
    public interface EavesOverhang<N> {
        /**
         * Says how far the outer face of the fascia stands outside the plate line.
         *
         * @param overhang the distance, level, plumb or on the slope; zero or more, and less than the run of the slope
         * @return the next step
         */
        N eavesOverhang(Offset overhang);
    }

    /**
     * The sizes of a lean-to; its ends are verges without overhang unless said otherwise.
     *
     * @since 0.1
     */
    public static final class LeanTo {
        private final RectangularRoof sizes;

        private LeanTo(Length length, Length projection, Slope slope, Offset overhang) {
            this(RectangularRoof.leanTo(length, projection, slope, overhang));
        }

        private LeanTo(RectangularRoof sizes) {
            this.sizes = sizes;
        }

        /**
         * Says how the roof ends at the left, as seen from outside looking up the slope.
         *
         * @param end the end
         * @return the sizes with that end
         */
        public LeanTo left(RoofEnd end) {
            return new LeanTo(sizes.withLeft(end));
        }

        /**
         * Says how the roof ends at the right, as seen from outside looking up the slope.
         *
         * @param end the end
         * @return the sizes with that end
         */
        public LeanTo right(RoofEnd end) {
            return new LeanTo(sizes.withRight(end));
        }

        /**
         * Returns the roof.
         *
         * @return the roof
         * @throws ProblemsException with everything that is wrong with the sizes
         */
        public Roof build() {
            return sizes.attempt().orThrow();
        }

        /** Returns the roof with what a person should know about it, or everything that is wrong with the sizes. */
        public Attempt<Roof> attempt() {
            return sizes.attempt();
        }
    }

    /**
     * The sizes of a duo-pitch; its ends are verges without overhang unless said otherwise.
     *
     * @since 0.1
     */
    public static final class DuoPitch {
        private final RectangularRoof sizes;

        private DuoPitch(Length length, Length span, Slope slope, Offset overhang) {
            this(RectangularRoof.duoPitch(length, span, slope, overhang));
        }

        private DuoPitch(RectangularRoof sizes) {
            this.sizes = sizes;
        }

        /**
         * Says how the roof ends at the left, as seen from the front.
         *
         * @param end the end
         * @return the sizes with that end
         */
        public DuoPitch left(RoofEnd end) {
            return new DuoPitch(sizes.withLeft(end));
        }

        /**
         * Says how the roof ends at the right, as seen from the front.
         *
         * @param end the end
         * @return the sizes with that end
         */
        public DuoPitch right(RoofEnd end) {
            return new DuoPitch(sizes.withRight(end));
        }

        /**
         * Returns the roof.
         *
         * @return the roof
         * @throws ProblemsException with everything that is wrong with the sizes
         */
        public Roof build() {
            return sizes.attempt().orThrow();
        }

        /** Returns the roof with what a person should know about it, or everything that is wrong with the sizes. */
        public Attempt<Roof> attempt() {
            return sizes.attempt();
        }
    }

    /**
     * The sizes of a shape whose sides are all eaves at one pitch unless said otherwise.
     *
     * @since 0.1
     */
    public static final class Shape {
        private final ShapedRoof sizes;

        private Shape(ShapedRoof sizes) {
            this.sizes = sizes;
        }

        /**
         * Says that the roof ends along one side with a verge over a gable wall, or against a wall.
         *
         * @param side the name of the side
         * @param end the end
         * @return the shape with that end
         */
        public Shape end(String side, RoofEnd end) {
            return new Shape(sizes.with(side, Objects.requireNonNull(end, "end")));
        }

        /**
         * Says that the slope along one side has a pitch of its own. Plates and fascias keep their levels, so the
         * overhang of that side becomes overhang × tan(pitch of the roof) / tan(its pitch).
         *
         * @param side the name of the side
         * @param pitch the pitch of that slope
         * @return the shape with that pitch
         */
        public Shape pitch(String side, Pitch pitch) {
            return new Shape(sizes.with(side, Objects.requireNonNull(pitch, "pitch")));
        }

        /**
         * Returns the roof.
         *
         * @return the roof
         * @throws ProblemsException with everything that is wrong with the sizes
         */
        public Roof build() {
            return sizes.attempt().orThrow();
        }

        /** Returns the roof with what a person should know about it, or everything that is wrong with the sizes. */
        public Attempt<Roof> attempt() {
            return sizes.attempt();
        }
    }
}
