package org.roofmaths.ventilation;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * Single vents along an edge: how many, and where.
 *
 * <p>Enough for the free area asked, and at least one in every bay: {@code vents = greatest of (whole number up from (asked ÷ free area
 * of a vent); bays)}. Where one in every bay is not enough, the further vents are spread evenly over the bays. For example,
 * 26 225 mm² by vents of 5000 mm² takes 6, but 9 bays take 9.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class SpotVents implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** How many vents the free area takes. */
    public static final Term<Integer> BY_AREA = Term.of("vents by area", "na", Integer.class);
    /** How many vents to set. */
    public static final Term<Integer> COUNT = Term.of("vents", "nv", Integer.class);
    /** The free area of all the vents. */
    public static final Term<Area> PROVIDED = Term.of("free area provided", "Ap", Area.class);
    /** The mean distance of the vents. */
    public static final Term<Length> SPACING = Term.of("vent spacing", "sv", Length.class);
    /** What one vent in every bay would lack; below zero if it gives more than asked. */
    public static final Term<Area> SHORT_BY_ONE_A_BAY =
            Term.of("area short with one vent in every bay", "As", Area.class);

    /** One vent in every bay gives less than is asked. */
    public static final ProblemCode ONE_A_BAY_IS_SHORT = ProblemCode.of(
            "ventilation.one-a-bay-is-short",
            "Set more than one vent in some bays, or choose a vent with more free area.");

    private static final Formula COUNT_BY_AREA = Formula.of(BY_AREA, EdgeVents.ASKED.timesToCover(Vent.FREE_AREA));
    private static final Formula AT_LEAST_ONE_A_BAY = Formula.of(COUNT, BY_AREA.greatest(RafterBays.BAYS));
    private static final Formula AREA_OF_ALL = Formula.of(PROVIDED, COUNT.times(Vent.FREE_AREA));
    private static final Formula EVEN_SPACING = Formula.of(SPACING, EdgeVents.LENGTH.over(COUNT));
    private static final Formula ASKED_LESS_ONE_A_BAY =
            Formula.of(SHORT_BY_ONE_A_BAY, EdgeVents.ASKED.minus(RafterBays.BAYS.times(Vent.FREE_AREA)));

    private final EdgeVents edge;
    private final Vent vent;
    private final RafterBays bays;

    private final int count;

    SpotVents(EdgeVents edge, Vent vent, RafterBays bays) {
        this.edge = edge;
        this.vent = Objects.requireNonNull(vent, "vent");
        this.bays = Objects.requireNonNull(bays, "bays");
        count = compute(Recorder.off());
    }

    private int compute(Recorder r) {
        Length length = edge.length(r);
        Area asked = edge.asked(r);
        Area each = r.use(Vent.FREE_AREA, vent.freeArea());
        int bayCount = bays.count(r);
        int byArea = r.record(BY_AREA, EdgeVents.toCover(asked, each), COUNT_BY_AREA);
        int vents = r.record(COUNT, StrictMath.max(byArea, bayCount), AT_LEAST_ONE_A_BAY);
        r.record(PROVIDED, each.times(vents), AREA_OF_ALL);
        r.record(SPACING, length.dividedBy(vents), EVEN_SPACING);
        r.record(SHORT_BY_ONE_A_BAY, asked.minus(each.times(bayCount)), ASKED_LESS_ONE_A_BAY);
        return vents;
    }

    /** Returns the vent. */
    public Vent vent() {
        return vent;
    }

    /** Returns how many vents to set. */
    public int count() {
        return count;
    }

    /** Returns how many vents the free area alone would take; bays without a vent have no air. */
    public int countByArea() {
        return EdgeVents.toCover(edge.asked(), vent.freeArea().value());
    }

    /** Returns the free area of all the vents. */
    public Area provided() {
        return vent.freeArea().value().times(count);
    }

    /** Returns the mean distance of the vents along the edge. */
    public Length spacing() {
        return edge.length().dividedBy(count);
    }

    /** Returns how many vents go into each bay, from the left; every number is 1 or more. */
    public List<Integer> perBay() {
        int n = bays.count();
        List<Integer> each = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            // the whole vents up to the right of this bay less those up to its left: as even as whole numbers allow
            each.add((int) ((long) count * (i + 1) / n - (long) count * i / n));
        }
        return List.copyOf(each);
    }

    /** Returns where the vents go, from the left end of the edge: evenly within each bay, clear of the rafters. */
    public List<Length> places() {
        List<Length> places = new ArrayList<>();
        List<Integer> perBay = perBay();
        for (Bay bay : bays.bays()) {
            int here = perBay.get(bay.number() - 1);
            for (int i = 0; i < here; i++) {
                places.add(bay.start().plus(bay.clearWidth().times((2.0 * i + 1) / (2.0 * here))));
            }
        }
        return List.copyOf(places);
    }

    /** Returns findings and notices; empty if one vent in every bay gives what is asked. */
    public List<Problem> problems() {
        Area one = vent.freeArea().value().times(bays.count());
        if (count == bays.count()) {
            return List.of();
        }
        return List.of(Problem.notice(
                ONE_A_BAY_IS_SHORT,
                edge.name(),
                one,
                "one " + vent.name() + " in each of " + bays.count() + " bays gives "
                        + Vent.text(one) + ", " + Vent.text(edge.asked().minus(one)) + " short of the "
                        + Vent.text(edge.asked()) + " asked along the " + edge.name()
                        + ": " + count + " are set, more than one in some bays"));
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SpotVents v && edge.equals(v.edge) && vent.equals(v.vent) && bays.equals(v.bays);
    }

    @Override
    public int hashCode() {
        return Objects.hash(edge, vent, bays);
    }

    /** Returns for example {@code 9 × tile vent of 0.005 m² along the top abutment}. */
    @Override
    public String toString() {
        return count + " × " + vent + " along the " + edge.name();
    }
}
