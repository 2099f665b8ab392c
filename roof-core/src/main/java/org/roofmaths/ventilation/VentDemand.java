package org.roofmaths.ventilation;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Area;
import org.roofmaths.units.AreaPerLength;
import org.roofmaths.units.Length;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;

/**
 * What is asked of the ventilation at one edge: so much free area for each metre, a share of an area, or none.
 *
 * <p>The library holds none of these figures by itself. Rule data fills them from an edition; or the caller does. Free area is what air
 * can pass through: a screened opening counts by the open share of its screen.
 *
 * @since 0.1
 */
public abstract sealed class VentDemand implements Serializable
        permits VentDemand.ContinuousGap, VentDemand.PerMetre, VentDemand.ShareOfArea, VentDemand.NoneAsked {
    private static final long serialVersionUID = 1L;

    /** The width of a continuous gap. */
    public static final Term<Length> GAP = Term.of("continuous gap asked", "g", Length.class);
    /** Free area for each metre of edge. */
    public static final Term<AreaPerLength> AREA_PER_LENGTH =
            Term.of("free area asked for each metre", "am", AreaPerLength.class);
    /** The share of an area that must be open. */
    public static final Term<Ratio> SHARE = Term.of("open share asked of an area", "sa", Ratio.class);
    /** The area that the share is taken of. */
    public static final Term<Area> VENTED_AREA = Term.of("area to be ventilated", "Av", Area.class);
    /** The part of that free area that belongs to this edge. */
    public static final Term<Ratio> PORTION = Term.of("portion at this edge", "q", Ratio.class);

    /** A figure of a demand that is out of range. */
    public static final ProblemCode WRONG_FIGURE =
            ProblemCode.of("ventilation.wrong-figure", "Correct the figure; sizes and shares must be above zero.");

    private VentDemand() {}

    /**
     * Returns a demand for a continuous gap, such as 10 mm along the eaves.
     *
     * @param gap the width of the gap, above zero
     * @return the demand
     * @throws org.roofmaths.problem.ProblemsException if the gap is not above zero
     */
    public static VentDemand gap(Figure<Length> gap) {
        Problems.none()
                .require(gap.value().isPositive(), WRONG_FIGURE, GAP.name(), gap.value(), "be above 0 mm")
                .throwIfErrors();
        return new ContinuousGap(gap);
    }

    /**
     * Returns a demand for a continuous gap that the caller vouches for.
     *
     * @param gap the width of the gap, above zero
     * @return the demand
     * @throws org.roofmaths.problem.ProblemsException if the gap is not above zero
     */
    public static VentDemand gap(Length gap) {
        return gap(Given.of(gap));
    }

    /**
     * Returns a demand for so much free area on each metre of the edge.
     *
     * @param area the free area for each metre, above zero
     * @return the demand
     * @throws org.roofmaths.problem.ProblemsException if it is not above zero
     */
    public static VentDemand perMetre(Figure<AreaPerLength> area) {
        Problems.none()
                .require(
                        area.value().isPositive(),
                        WRONG_FIGURE,
                        AREA_PER_LENGTH.name(),
                        area.value(),
                        "be above 0 mm²/m")
                .throwIfErrors();
        return new PerMetre(area);
    }

    /**
     * Returns a demand for a share of an area, all of it or a portion at this edge. For example, 1/300 of 111.5 m², half of it here.
     *
     * @param share the share that must be open, such as 1/300; above zero, at most 1
     * @param area the area it is taken of, as the rule says: usually the ceiling on plan; above zero
     * @param portion the part of it that belongs to this edge; above zero, at most 1
     * @return the demand
     * @throws org.roofmaths.problem.ProblemsException with everything that is wrong with the three figures
     */
    public static VentDemand shareOfArea(Figure<Ratio> share, Figure<Area> area, Figure<Ratio> portion) {
        Problems.none()
                .require(isShare(share.value()), WRONG_FIGURE, SHARE.name(), share.value(), "be above 0 and at most 1")
                .require(area.value().isPositive(), WRONG_FIGURE, VENTED_AREA.name(), area.value(), "be above 0 m²")
                .require(
                        isShare(portion.value()),
                        WRONG_FIGURE,
                        PORTION.name(),
                        portion.value(),
                        "be above 0 and at most 1")
                .throwIfErrors();
        return new ShareOfArea(share, area, portion);
    }

    private static boolean isShare(Ratio ratio) {
        return ratio.isPositive() && ratio.toDouble() <= 1;
    }

    /**
     * Returns the demand of a rule that asks for no opening at an edge. That is not the same as no ventilation needed: the reason says
     * under which conditions, and each of them is to be confirmed on site.
     *
     * @param reason which row asks for none, and under which conditions
     * @return the demand
     */
    public static VentDemand noneAsked(String reason) {
        return new NoneAsked(Objects.requireNonNull(reason, "reason"));
    }

    /** Records the figures and returns the free area asked along a length that was recorded as {@link EdgeVents#LENGTH}. */
    abstract Area asked(Recorder r, Length length);

    /** Tells whether an opening is asked for at all. */
    public boolean isAsked() {
        return true;
    }

    /** A continuous gap. */
    static final class ContinuousGap extends VentDemand {
        private static final long serialVersionUID = 1L;
        private static final Formula ASKED = Formula.of(EdgeVents.ASKED, GAP.times(EdgeVents.LENGTH));

        private final Figure<Length> gap;

        private ContinuousGap(Figure<Length> gap) {
            this.gap = gap;
        }

        @Override
        Area asked(Recorder r, Length length) {
            return r.record(EdgeVents.ASKED, r.use(GAP, gap).times(length), ASKED);
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof ContinuousGap g && gap.equals(g.gap);
        }

        @Override
        public int hashCode() {
            return gap.hashCode();
        }

        @Override
        public String toString() {
            return "a continuous gap of " + gap.value();
        }
    }

    /** Free area for each metre. */
    static final class PerMetre extends VentDemand {
        private static final long serialVersionUID = 1L;
        private static final Formula ASKED = Formula.of(EdgeVents.ASKED, AREA_PER_LENGTH.times(EdgeVents.LENGTH));

        private final Figure<AreaPerLength> area;

        private PerMetre(Figure<AreaPerLength> area) {
            this.area = area;
        }

        @Override
        Area asked(Recorder r, Length length) {
            return r.record(EdgeVents.ASKED, r.use(AREA_PER_LENGTH, area).times(length), ASKED);
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof PerMetre p && area.equals(p.area);
        }

        @Override
        public int hashCode() {
            return area.hashCode();
        }

        @Override
        public String toString() {
            return area.value() + " of free area";
        }
    }

    /** A portion of a share of an area. */
    static final class ShareOfArea extends VentDemand {
        private static final long serialVersionUID = 1L;
        private static final Formula ASKED =
                Formula.of(EdgeVents.ASKED, SHARE.times(VENTED_AREA).times(PORTION));

        private final Figure<Ratio> share;
        private final Figure<Area> area;
        private final Figure<Ratio> portion;

        private ShareOfArea(Figure<Ratio> share, Figure<Area> area, Figure<Ratio> portion) {
            this.share = share;
            this.area = area;
            this.portion = portion;
        }

        @Override
        Area asked(Recorder r, Length length) {
            Ratio open = r.use(SHARE, share);
            Area vented = r.use(VENTED_AREA, area);
            Ratio here = r.use(PORTION, portion);
            return r.record(EdgeVents.ASKED, vented.times(open).times(here), ASKED);
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof ShareOfArea s
                    && share.equals(s.share)
                    && area.equals(s.area)
                    && portion.equals(s.portion);
        }

        @Override
        public int hashCode() {
            return Objects.hash(share, area, portion);
        }

        @Override
        public String toString() {
            return share.value() + " of " + area.value() + ", " + portion.value() + " of it here";
        }
    }

    /** No opening asked. */
    static final class NoneAsked extends VentDemand {
        private static final long serialVersionUID = 1L;
        private static final Formula ASKED = Formula.of(EdgeVents.ASKED, EdgeVents.LENGTH.times(EdgeVents.NO_GAP));

        private final String reason;

        private NoneAsked(String reason) {
            this.reason = reason;
        }

        @Override
        Area asked(Recorder r, Length length) {
            r.use(EdgeVents.NO_GAP, Given.of(Length.ZERO));
            r.note("no opening asked for: " + reason);
            return r.record(EdgeVents.ASKED, Area.ZERO, ASKED);
        }

        @Override
        public boolean isAsked() {
            return false;
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof NoneAsked n && reason.equals(n.reason);
        }

        @Override
        public int hashCode() {
            return reason.hashCode();
        }

        @Override
        public String toString() {
            return "no opening asked for: " + reason;
        }
    }
}
