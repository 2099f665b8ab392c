package org.roofmaths.flashing;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.ArealMass;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;

/**
 * Lead sheet, by its thickness.
 *
 * <p>The thickness is what counts; a code or colour is only a name for one. The mass per area is either read off a table, or worked
 * out from what a sheet one millimetre thick weighs. For example, 1.80 mm of a lead that weighs 11.34 kg/m² for each millimetre
 * weighs 20.412 kg/m².
 *
 * <p>Lead is toxic: wash before eating, do not sand or sweep it dry, and use none on a roof that fills a drinking-water tank.
 *
 * <p>Immutable and thread-safe. Two sheets are equal if name, thickness and mass per area are.
 *
 * @since 0.1
 */
public final class LeadSheet implements MetalSheet {
    private static final long serialVersionUID = 1L;

    /** What a square metre of sheet one millimetre thick weighs: the density in a plumber's units. */
    public static final Term<ArealMass> MASS_OF_ONE_MILLIMETRE =
            Term.of("mass per area of sheet one millimetre thick", "m1", ArealMass.class);

    /** The thickness of the sheet whose mass is known. */
    public static final Term<Length> KNOWN_THICKNESS =
            Term.of("thickness of the sheet of known mass", "t1", Length.class);

    private static final Formula MASS_BY_THICKNESS =
            Formula.of(AREAL_MASS, MASS_OF_ONE_MILLIMETRE.times(THICKNESS).over(KNOWN_THICKNESS));
    private static final Length ONE_MILLIMETRE = Length.ofMillimetres(1);

    private final String name;
    private final Figure<Length> thickness;
    private final Figure<ArealMass> arealMass;

    private LeadSheet(String name, Figure<Length> thickness, Figure<ArealMass> arealMass) {
        this.name = name;
        this.thickness = thickness;
        this.arealMass = arealMass;
    }

    /**
     * Returns a sheet whose mass per area is known, such as a row of a table of codes.
     *
     * @param name what it is called, such as {@code lead code 4}
     * @param thickness how thick it is, above zero
     * @param arealMass what a square metre weighs, above zero
     * @return the sheet
     * @throws org.roofmaths.problem.ProblemsException if the thickness or the mass is not above zero
     */
    public static LeadSheet of(String name, Figure<Length> thickness, Figure<ArealMass> arealMass) {
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
        return new LeadSheet(name, thickness, arealMass);
    }

    /**
     * Returns a sheet whose mass per area follows from its thickness.
     *
     * <p>Formula: {@code mass per area = mass per area of one millimetre × thickness ÷ 1 mm}. For example, 2.24 mm at 11.34 kg/m²
     * for each millimetre gives 25.4016 kg/m².
     *
     * @param name what it is called
     * @param thickness how thick it is, above zero
     * @param massOfOneMillimetre what a square metre weighs when it is one millimetre thick, above zero
     * @return the sheet
     * @throws org.roofmaths.problem.ProblemsException if the thickness or the mass is not above zero
     */
    public static LeadSheet ofDensity(String name, Figure<Length> thickness, Figure<ArealMass> massOfOneMillimetre) {
        return of(name, thickness, Worked.by(AREAL_MASS, r -> massByThickness(r, thickness, massOfOneMillimetre)));
    }

    private static ArealMass massByThickness(
            Recorder r, Figure<Length> thickness, Figure<ArealMass> massOfOneMillimetre) {
        ArealMass one = r.use(MASS_OF_ONE_MILLIMETRE, massOfOneMillimetre);
        Length thick = r.use(THICKNESS, thickness);
        Length known = r.use(KNOWN_THICKNESS, Given.of(ONE_MILLIMETRE));
        return r.record(AREAL_MASS, one.times(thick.toSi() / known.toSi()), MASS_BY_THICKNESS);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public Figure<Length> thickness() {
        return thickness;
    }

    @Override
    public Figure<ArealMass> arealMass() {
        return arealMass;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LeadSheet s
                && name.equals(s.name)
                && thickness.equals(s.thickness)
                && arealMass.equals(s.arealMass);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, thickness, arealMass);
    }

    /** Returns for example {@code lead code 4, 1.8 mm, 20.41 kg/m²}. */
    @Override
    public String toString() {
        return name + ", " + thickness.value() + ", " + arealMass.value();
    }
}
