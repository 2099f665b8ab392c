package org.roofmaths.flashing;

import java.io.Serializable;
import org.roofmaths.units.Area;
import org.roofmaths.units.ArealMass;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Term;

/**
 * The sheet metal that a flashing is cut from: what it is called, how thick it is and what a square metre of it weighs.
 *
 * @since 0.1
 */
public sealed interface MetalSheet extends Serializable permits LeadSheet, HardMetalSheet {
    /** How thick the sheet is. */
    Term<Length> THICKNESS = Term.of("sheet thickness", "ts", Length.class);
    /** What a square metre of the sheet weighs. */
    Term<ArealMass> AREAL_MASS = Term.of("sheet mass per area", "ms", ArealMass.class);

    /** Returns what the sheet is called, such as {@code lead code 4}. */
    String name();

    /** Returns how thick the sheet is. */
    Figure<Length> thickness();

    /** Returns what a square metre of the sheet weighs. */
    Figure<ArealMass> arealMass();

    /**
     * Returns what a piece of this sheet weighs.
     *
     * @param area the area of the piece
     * @return its mass
     */
    default Mass massOf(Area area) {
        return arealMass().value().times(area);
    }
}
