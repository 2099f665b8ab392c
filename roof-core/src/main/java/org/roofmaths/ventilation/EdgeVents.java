package org.roofmaths.ventilation;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.roof.RoofEdge;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;
import org.roofmaths.working.Working;

/**
 * The ventilation along one edge: the free area asked, and the openings that give it.
 *
 * <p>For example, a continuous gap of 10 mm along 5.245 m asks for 52 450 mm². As a slot that is open only between rafters 47 mm wide
 * at 600 mm it must be {@code 10 × 600 ÷ (600 − 47)} = 10.85 mm.
 *
 * <p>Immutable and thread-safe. No moisture risk is assessed here: ceiling, underlay and use of the rooms are for a person to judge.
 *
 * @since 0.1
 */
public final class EdgeVents implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The length along which air is asked for. */
    public static final Term<Length> LENGTH = Term.of("length to be ventilated", "Lv", Length.class);
    /** The free area asked along the edge. */
    public static final Term<Area> ASKED = Term.of("free area asked", "Aa", Area.class);
    /** The gap of a demand that asks for none. */
    public static final Term<Length> NO_GAP = Term.of("gap where none is asked", "g0", Length.class);
    /** The continuous gap that gives the free area. */
    public static final Term<Length> CONTINUOUS_GAP = Term.of("continuous gap", "gc", Length.class);
    /** The slot that gives the free area where rafters block part of it. */
    public static final Term<Length> SLOT = Term.of("slot between rafters", "gs", Length.class);
    /** The slot that gives the free area through the clear width of the bays as they are. */
    public static final Term<Length> SLOT_BY_BAYS = Term.of("slot by the clear width of the bays", "gb", Length.class);
    /** The width of a slot that is made. */
    public static final Term<Length> SLOT_MADE = Term.of("slot made", "gm", Length.class);
    /** The free area that the slot gives. */
    public static final Term<Area> AREA_MADE = Term.of("free area of the slot made", "Ag", Area.class);

    /** The opening gives less than is asked. */
    public static final ProblemCode TOO_LITTLE =
            ProblemCode.of("ventilation.too-little", "Widen the opening, open more of the screen, or add vents.");

    private static final Formula GAP_BY_AREA = Formula.of(CONTINUOUS_GAP, ASKED.over(LENGTH));
    private static final Formula SLOT_BY_CENTRES = Formula.of(
            SLOT,
            CONTINUOUS_GAP
                    .times(RafterBays.CENTRES)
                    .over(RafterBays.CENTRES.minus(RafterBays.RAFTER_WIDTH).times(Vent.OPEN_SHARE)));
    private static final Formula SLOT_BY_CLEAR =
            Formula.of(SLOT_BY_BAYS, ASKED.over(RafterBays.CLEAR_WIDTH.times(Vent.OPEN_SHARE)));
    private static final Formula AREA_BY_SLOT =
            Formula.of(AREA_MADE, SLOT_MADE.times(RafterBays.CLEAR_WIDTH).times(Vent.OPEN_SHARE));
    private static final double RESOLUTION = Length.STORAGE_RESOLUTION.toSi();
    private static final Ratio OPEN = Ratio.of(1);

    private final String name;
    private final Figure<Length> length;
    private final VentDemand demand;

    private EdgeVents(String name, Figure<Length> length, VentDemand demand) {
        this.name = name;
        this.length = length;
        this.demand = demand;
    }

    /**
     * Returns the ventilation along a length.
     *
     * @param name what the edge is called, such as {@code eaves}
     * @param length the length along which air is asked for, above zero
     * @param demand what is asked of it
     * @return the ventilation of the edge
     * @throws org.roofmaths.problem.ProblemsException if the length is not above zero
     */
    public static EdgeVents along(String name, Figure<Length> length, VentDemand demand) {
        Objects.requireNonNull(name, "name");
        Problems.none()
                .require(
                        length.value().isPositive(),
                        VentDemand.WRONG_FIGURE,
                        LENGTH.name(),
                        length.value(),
                        "be above 0 mm")
                .throwIfErrors();
        return new EdgeVents(name, length, Objects.requireNonNull(demand, "demand"));
    }

    /**
     * Returns the ventilation along a length.
     *
     * @param name what the edge is called, such as {@code eaves}
     * @param length the length along which air is asked for, above zero
     * @param demand what is asked of it
     * @return the ventilation of the edge
     * @throws org.roofmaths.problem.ProblemsException if the length is not above zero
     */
    public static EdgeVents along(String name, Length length, VentDemand demand) {
        return along(name, Given.of(length), demand);
    }

    /**
     * Returns the ventilation along an edge of a roof, over its true length.
     *
     * @param edge the edge
     * @param demand what is asked of it
     * @return the ventilation of the edge
     */
    public static EdgeVents along(RoofEdge edge, VentDemand demand) {
        return along(edge.name(), edge.trueLengthFigure(), demand);
    }

    /** How many steps of an area cover another; up to 0.1 mm² over a whole count does not ask for one more. */
    static int toCover(Area area, Area step) {
        return (int) StrictMath.ceil((area.toSi() - RESOLUTION) / step.toSi());
    }

    Length length(Recorder r) {
        return r.use(LENGTH, length);
    }

    /** The free area asked; the length must have been recorded. */
    Area asked(Recorder r) {
        return demand.asked(r, length.value());
    }

    Length compute(Recorder r) {
        Length along = length(r);
        Area area = asked(r);
        return r.record(CONTINUOUS_GAP, Length.ofMetres(area.toSi() / along.toSi()), GAP_BY_AREA);
    }

    /** Returns what the edge is called. */
    public String name() {
        return name;
    }

    /** Returns the length along which air is asked for. */
    public Length length() {
        return length.value();
    }

    /** Returns what is asked. */
    public VentDemand demand() {
        return demand;
    }

    /** Returns the free area asked along the edge; zero where no opening is asked for. */
    public Area asked() {
        return demand.asked(Recorder.off(), length.value());
    }

    /** Returns the continuous gap that gives the free area; zero where no opening is asked for. */
    public Length continuousGap() {
        return compute(Recorder.off());
    }

    /**
     * Returns how wide a slot must be that is open only between rafters: {@code gap × centres ÷ (centres − rafter width)}, by full bays.
     * For example, 25 mm with rafters 47 mm wide at 600 mm takes 27.1 mm.
     *
     * @param bays the bays
     * @return the width of the slot
     */
    public Worked<Length> slot(RafterBays bays) {
        return slot(bays, OPEN);
    }

    /**
     * Returns how wide a screened slot must be that is open only between rafters. For example, 25 mm with rafters 47 mm wide at 600 mm
     * and a screen that is 0.7 open takes 38.7 mm.
     *
     * @param bays the bays
     * @param openShare the open share of the screen, above zero and at most 1
     * @return the width of the slot
     * @throws org.roofmaths.problem.ProblemsException if the share is out of range
     */
    public Worked<Length> slot(RafterBays bays, Ratio openShare) {
        requireShare(openShare);
        return Worked.by(SLOT, r -> {
            Length gap = compute(r);
            Length centres = r.use(RafterBays.CENTRES, bays.centres());
            Length width = r.use(RafterBays.RAFTER_WIDTH, bays.rafterWidth());
            double open = r.use(Vent.OPEN_SHARE, openShare).toDouble();
            double slot = gap.toSi() * centres.toSi() / (centres.minus(width).toSi() * open);
            return r.record(SLOT, Length.ofMetres(slot), SLOT_BY_CENTRES);
        });
    }

    /**
     * Returns how wide a slot must be for the whole free area to pass through the clear width of the bays as they are, a narrow last
     * one included. For example, 52 450 mm² through 4.73 m takes 11.09 mm.
     *
     * @param bays the bays
     * @param openShare the open share of the screen, above zero and at most 1
     * @return the width of the slot
     * @throws org.roofmaths.problem.ProblemsException if the share is out of range
     */
    public Worked<Length> slotByBays(RafterBays bays, Ratio openShare) {
        requireShare(openShare);
        return Worked.by(SLOT_BY_BAYS, r -> {
            length(r);
            Area area = asked(r);
            Length clear = bays.clearWidth(r);
            double open = r.use(Vent.OPEN_SHARE, openShare).toDouble();
            return r.record(SLOT_BY_BAYS, Length.ofMetres(area.toSi() / (clear.toSi() * open)), SLOT_BY_CLEAR);
        });
    }

    /**
     * Returns the free area that a slot of a width gives through the bays.
     *
     * @param width the width of the slot, zero or more
     * @param bays the bays
     * @param openShare the open share of the screen, above zero and at most 1
     * @return the free area
     * @throws org.roofmaths.problem.ProblemsException if the width or the share is out of range
     */
    public Worked<Area> areaOfSlot(Length width, RafterBays bays, Ratio openShare) {
        Problems.none()
                .require(!width.isNegative(), VentDemand.WRONG_FIGURE, SLOT_MADE.name(), width, "be 0 mm or more")
                .throwIfErrors();
        requireShare(openShare);
        return Worked.by(AREA_MADE, r -> {
            Length clear = bays.clearWidth(r);
            Length slot = r.use(SLOT_MADE, width);
            Ratio open = r.use(Vent.OPEN_SHARE, openShare);
            return r.record(AREA_MADE, slot.times(clear).times(open), AREA_BY_SLOT);
        });
    }

    /**
     * Returns what is short when an opening gives a certain free area; empty if it gives what is asked.
     *
     * @param provided the free area that the openings give
     * @return a finding with what would mend it, or nothing
     */
    public List<Problem> shortfall(Area provided) {
        Area missing = asked().minus(provided);
        if (missing.toSi() <= RESOLUTION) {
            return List.of();
        }
        Length gap = Length.ofMetres(missing.toSi() / length().toSi());
        return List.of(Problem.finding(
                TOO_LITTLE,
                name,
                provided,
                asked(),
                "the openings along the " + name + " give " + Vent.text(provided) + ", " + Vent.text(missing)
                        + " short of the " + Vent.text(asked()) + " asked",
                List.of(Mend.of(
                        "opening along the " + name,
                        "a continuous gap " + gap + " wider",
                        gap,
                        "free area of " + Vent.text(asked())))));
    }

    /**
     * Returns the single vents that give the free area, with at least one in every bay.
     *
     * @param vent the vent
     * @param bays the bays along the edge
     * @return how many, and where
     */
    public SpotVents provided(Vent vent, RafterBays bays) {
        return new SpotVents(this, vent, bays);
    }

    private static void requireShare(Ratio openShare) {
        Problems.none()
                .require(
                        openShare.isPositive() && openShare.toDouble() <= 1,
                        VentDemand.WRONG_FIGURE,
                        Vent.OPEN_SHARE.name(),
                        openShare,
                        "be above 0 and at most 1")
                .throwIfErrors();
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof EdgeVents v
                && name.equals(v.name)
                && length.equals(v.length)
                && demand.equals(v.demand);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, length, demand);
    }

    /** Returns for example {@code eaves: 52450 mm² free over 5245 mm, a continuous gap of 10 mm}. */
    @Override
    public String toString() {
        return demand.isAsked()
                ? name + ": " + Vent.text(asked()) + " free over " + length() + ", a continuous gap of "
                        + continuousGap()
                : name + ": " + demand;
    }
}
