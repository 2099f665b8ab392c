package org.roofmaths.roof;

import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Length;
import org.roofmaths.units.Offset;
import org.roofmaths.working.Term;

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

    /** A size of a roof is zero, below zero or beyond a kilometre. */
    public static final ProblemCode SIZE = ProblemCode.of("roof.size", "Check the size and its unit.");

    /** The eaves overhang is not as it must be. */
    public static final ProblemCode EAVES = ProblemCode.of(
            "roof.eaves-overhang", "Give the overhang from the plate line to the fascia, and how it was measured.");

    /** A verge overhang is not as it must be. */
    public static final ProblemCode VERGE = ProblemCode.of(
            "roof.verge-overhang",
            "Give the overhang from the outer face of the end wall, measured level along the eaves.");

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
}
