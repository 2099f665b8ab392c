package org.roofmaths.flashing;

import java.util.Objects;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.ArealMass;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;

/**
 * A sheet of a metal that is folded and not dressed, such as zinc, copper or aluminium.
 *
 * <p>What one metal tolerates beside another, or in mortar, is for the builder to check: this type holds sizes and mass only.
 *
 * @param name what it is called, such as {@code zinc}
 * @param thickness how thick it is, above zero
 * @param arealMass what a square metre weighs, above zero
 * @since 0.1
 */
public record HardMetalSheet(String name, Figure<Length> thickness, Figure<ArealMass> arealMass) implements MetalSheet {
    private static final long serialVersionUID = 1L;

    /**
     * Checks the parts.
     *
     * @throws org.roofmaths.problem.ProblemsException if the thickness or the mass is not above zero
     */
    public HardMetalSheet {
        Objects.requireNonNull(name, "name");
        Problems.none()
                .require(
                        thickness.value().isPositive(),
                        FlashingDemand.WRONG_SIZE,
                        "sheet thickness",
                        thickness.value(),
                        "be above 0 mm")
                .require(
                        arealMass.value().isPositive(),
                        FlashingDemand.WRONG_SIZE,
                        "sheet mass per area",
                        arealMass.value(),
                        "be above 0 kg/m²")
                .throwIfErrors();
    }

    /** Returns for example {@code zinc, 0.8 mm, 5.76 kg/m²}. */
    @Override
    public String toString() {
        return name + ", " + thickness.value() + ", " + arealMass.value();
    }
}
