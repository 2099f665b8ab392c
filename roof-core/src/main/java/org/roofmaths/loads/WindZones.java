package org.roofmaths.loads;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * The zones of a duo-pitch roof with the wind on its eaves, by their areas on plan: corners, eaves and field of the windward slope, ridge
 * strip and field of the leeward one.
 *
 * <p>All follow from one length, the lesser of the width across the wind and a multiple of the height. The five areas make up the plan, the
 * corner twice. For example, 12 m across, 8 m along, ridge at 7 m, with twice the height, a quarter and a tenth: corners of 3.6 m², eaves
 * 7.2 m², fields 33.6 m², ridge strip 14.4 m².
 *
 * <p>Hipped roofs are refused: {@link LeftToOthers#HIPPED_WIND_ZONES}. Immutable and thread-safe. Its caution: {@link Caution#WIND}.
 *
 * @since 0.1
 */
public final class WindZones implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The width of the building across the wind. */
    public static final Term<Length> ACROSS = Term.of("width across the wind", "bw", Length.class);
    /** The depth of the building along the wind. */
    public static final Term<Length> ALONG = Term.of("depth along the wind", "dw", Length.class);
    /** The height of the ridge. */
    public static final Term<Length> RIDGE_HEIGHT = Term.of("ridge height for the zones", "hz", Length.class);
    /** How many heights the length of the zones is at most. */
    public static final Term<Ratio> HEIGHTS = Term.of("heights in the zone length", "fh", Ratio.class);
    /** The share of the zone length that a corner is long. */
    public static final Term<Ratio> CORNER_SHARE = Term.of("corner's share of the zone length", "f4", Ratio.class);
    /** The share of the zone length that an edge strip is deep. */
    public static final Term<Ratio> EDGE_SHARE = Term.of("edge strip's share of the zone length", "f10", Ratio.class);
    /** The length from which the zones follow. */
    public static final Term<Length> ZONE_LENGTH = Term.of("zone length", "ez", Length.class);
    /** Each of the two corners. */
    public static final Term<Area> CORNER = Term.of("windward corner zone, each", "ZF", Area.class);
    /** The eaves between the corners. */
    public static final Term<Area> EAVES = Term.of("windward eaves zone", "ZG", Area.class);
    /** The field of the windward slope. */
    public static final Term<Area> WINDWARD_FIELD = Term.of("windward field zone", "ZH", Area.class);
    /** The strip along the ridge of the leeward slope. */
    public static final Term<Area> RIDGE = Term.of("leeward ridge zone", "ZJ", Area.class);
    /** The field of the leeward slope. */
    public static final Term<Area> LEEWARD_FIELD = Term.of("leeward field zone", "ZI", Area.class);

    private static final Formula LESSER = Formula.of(ZONE_LENGTH, ACROSS.least(HEIGHTS.times(RIDGE_HEIGHT)));
    private static final Formula CORNER_AREA =
            Formula.of(CORNER, ZONE_LENGTH.times(CORNER_SHARE).times(ZONE_LENGTH.times(EDGE_SHARE)));
    private static final Formula EAVES_AREA = Formula.of(
            EAVES, ACROSS.minus(ZONE_LENGTH.times(CORNER_SHARE).times(2)).times(ZONE_LENGTH.times(EDGE_SHARE)));
    private static final Formula FIELD_AREA =
            Formula.of(WINDWARD_FIELD, ACROSS.times(ALONG.over(2).minus(ZONE_LENGTH.times(EDGE_SHARE))));
    private static final Formula RIDGE_AREA = Formula.of(RIDGE, ACROSS.times(ZONE_LENGTH.times(EDGE_SHARE)));
    private static final Formula LEEWARD_AREA =
            Formula.of(LEEWARD_FIELD, ACROSS.times(ALONG.over(2).minus(ZONE_LENGTH.times(EDGE_SHARE))));

    private final Figure<Length> across;
    private final Figure<Length> along;
    private final Figure<Length> height;
    private final Figure<Ratio> heights;
    private final Figure<Ratio> cornerShare;
    private final Figure<Ratio> edgeShare;
    private final Numbers numbers;

    private record Numbers(Length zoneLength, Area corner, Area eaves, Area windward, Area ridge, Area leeward)
            implements Serializable {}

    private WindZones(
            Figure<Length> across,
            Figure<Length> along,
            Figure<Length> height,
            Figure<Ratio> heights,
            Figure<Ratio> cornerShare,
            Figure<Ratio> edgeShare) {
        this.across = across;
        this.along = along;
        this.height = height;
        this.heights = heights;
        this.cornerShare = cornerShare;
        this.edgeShare = edgeShare;
        numbers = compute(Recorder.off());
    }

    /**
     * Returns the zones of a duo-pitch roof with a central ridge and the wind on its eaves.
     *
     * @param across the width of the building across the wind, above zero
     * @param along its depth along the wind, above zero
     * @param ridgeHeight the height of the ridge over the ground, above zero
     * @param heights how many heights the zone length is at most, by the rule set
     * @param cornerShare the share of the zone length that a corner is long
     * @param edgeShare the share of the zone length that an edge strip is deep
     * @return the zones, or the problems of wrong sizes
     */
    public static Attempt<WindZones> duoPitch(
            Length across,
            Length along,
            Length ridgeHeight,
            Figure<Ratio> heights,
            Figure<Ratio> cornerShare,
            Figure<Ratio> edgeShare) {
        Problems problems = Problems.none();
        CoveringItem.requirePositive(problems, ACROSS, Given.of(across));
        CoveringItem.requirePositive(problems, ALONG, Given.of(along));
        CoveringItem.requirePositive(problems, RIDGE_HEIGHT, Given.of(ridgeHeight));
        problems.require(
                heights.value().isPositive(), CoveringItem.WRONG_FIGURE, HEIGHTS.name(), heights.value(), "be above 0");
        requireHalf(problems, CORNER_SHARE, cornerShare);
        requireHalf(problems, EDGE_SHARE, edgeShare);
        if (!problems.hasErrors()) {
            Length zone = across.min(ridgeHeight.times(heights.value()));
            problems.require(
                    along.dividedBy(2).isLongerThan(zone.times(edgeShare.value())),
                    CoveringItem.WRONG_FIGURE,
                    ALONG.name(),
                    along,
                    "be more than twice the edge strip of " + zone.times(edgeShare.value()));
        }
        return problems.attempt(() -> new WindZones(
                Given.of(across), Given.of(along), Given.of(ridgeHeight), heights, cornerShare, edgeShare));
    }

    private static void requireHalf(Problems problems, Term<Ratio> term, Figure<Ratio> share) {
        problems.require(
                share.value().isPositive() && share.value().toDouble() <= 0.5,
                CoveringItem.WRONG_FIGURE,
                term.name(),
                share.value(),
                "be above 0 and at most 0.5");
    }

    private Numbers compute(Recorder r) {
        Length b = r.use(ACROSS, across);
        Length d = r.use(ALONG, along);
        Length h = r.use(RIDGE_HEIGHT, height);
        Ratio times = r.use(HEIGHTS, heights);
        Ratio quarter = r.use(CORNER_SHARE, cornerShare);
        Ratio tenth = r.use(EDGE_SHARE, edgeShare);
        Length zone = r.record(ZONE_LENGTH, b.min(h.times(times)), LESSER);
        Length corner = zone.times(quarter);
        Length strip = zone.times(tenth);
        Area corners = r.record(CORNER, corner.times(strip), CORNER_AREA);
        Area eaves = r.record(EAVES, b.minus(corner.times(2L)).times(strip), EAVES_AREA);
        Area windward = r.record(WINDWARD_FIELD, b.times(d.dividedBy(2).minus(strip)), FIELD_AREA);
        Area ridge = r.record(RIDGE, b.times(strip), RIDGE_AREA);
        Area leeward = r.record(LEEWARD_FIELD, b.times(d.dividedBy(2).minus(strip)), LEEWARD_AREA);
        return new Numbers(zone, corners, eaves, windward, ridge, leeward);
    }

    /** Returns the length from which the zones follow. */
    public Length zoneLength() {
        return numbers.zoneLength();
    }

    /** Returns each of the two corners of the windward slope. */
    public Area corner() {
        return numbers.corner();
    }

    /** Returns the eaves of the windward slope between the corners. */
    public Area eaves() {
        return numbers.eaves();
    }

    /** Returns the field of the windward slope. */
    public Area windwardField() {
        return numbers.windward();
    }

    /** Returns the strip along the ridge of the leeward slope. */
    public Area ridge() {
        return numbers.ridge();
    }

    /** Returns the field of the leeward slope. */
    public Area leewardField() {
        return numbers.leeward();
    }

    /** Returns what must stand beside it. */
    public Caution caution() {
        return Caution.WIND;
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof WindZones z
                && across.equals(z.across)
                && along.equals(z.along)
                && height.equals(z.height)
                && heights.equals(z.heights)
                && cornerShare.equals(z.cornerShare)
                && edgeShare.equals(z.edgeShare);
    }

    @Override
    public int hashCode() {
        return Objects.hash(across, along, height, heights, cornerShare, edgeShare);
    }

    /** Returns the zones with their areas on plan. */
    @Override
    public String toString() {
        return "corners " + corner() + " each, eaves " + eaves() + ", windward field " + windwardField()
                + ", ridge strip " + ridge() + ", leeward field " + leewardField() + "; indicative, not a design";
    }
}
