package org.roofmaths.ventilation;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Area;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;

/**
 * One ventilator of a kind that is set here and there, by its free area.
 *
 * @param name what it is called, such as {@code tile vent}
 * @param freeArea the area that air can pass through, as its maker states it; above zero
 * @since 0.1
 */
public record Vent(String name, Figure<Area> freeArea) implements Serializable {
    private static final long serialVersionUID = 1L;

    /** The free area of one vent. */
    public static final Term<Area> FREE_AREA = Term.of("free area of a vent", "a", Area.class);
    /** The hole behind a screen. */
    public static final Term<Area> HOLE = Term.of("hole behind the screen", "ah", Area.class);
    /** The open share of a screen. */
    public static final Term<Ratio> OPEN_SHARE = Term.of("open share of the screen", "f", Ratio.class);

    private static final Formula FREE_BY_SCREEN = Formula.of(FREE_AREA, HOLE.times(OPEN_SHARE));

    /**
     * Checks the area.
     *
     * @throws org.roofmaths.problem.ProblemsException if the free area is not above zero
     */
    public Vent {
        Objects.requireNonNull(name, "name");
        Problems.none()
                .require(
                        freeArea.value().isPositive(),
                        VentDemand.WRONG_FIGURE,
                        FREE_AREA.name(),
                        freeArea.value(),
                        "be above 0 m²")
                .throwIfErrors();
    }

    /**
     * Returns a vent of a free area.
     *
     * @param name what it is called
     * @param freeArea the area that air can pass through, above zero
     * @return the vent
     * @throws org.roofmaths.problem.ProblemsException if the free area is not above zero
     */
    public static Vent of(String name, Area freeArea) {
        return new Vent(name, Given.of(freeArea));
    }

    /**
     * Returns a vent that is a hole behind a screen: only the open share of the screen counts.
     *
     * @param name what it is called
     * @param hole the hole, above zero
     * @param openShare the open share of the screen, above zero and at most 1
     * @return the vent
     * @throws org.roofmaths.problem.ProblemsException if the hole or the share is out of range
     */
    public static Vent screened(String name, Area hole, Ratio openShare) {
        Problems.none()
                .require(hole.isPositive(), VentDemand.WRONG_FIGURE, HOLE.name(), hole, "be above 0 m²")
                .require(
                        openShare.isPositive() && openShare.toDouble() <= 1,
                        VentDemand.WRONG_FIGURE,
                        OPEN_SHARE.name(),
                        openShare,
                        "be above 0 and at most 1")
                .throwIfErrors();
        return new Vent(name, Worked.by(FREE_AREA, r -> {
            Area opening = r.use(HOLE, hole);
            Ratio share = r.use(OPEN_SHARE, openShare);
            return r.record(FREE_AREA, opening.times(share), FREE_BY_SCREEN);
        }));
    }

    /** Vents are sold and openings asked for in square millimetres; a fraction of one means nothing. */
    static String text(Area area) {
        return StrictMath.round(area.toSquareMillimetres()) + " mm²";
    }

    /** Returns for example {@code tile vent of 5000 mm²}. */
    @Override
    public String toString() {
        return name + " of " + text(freeArea.value());
    }
}
