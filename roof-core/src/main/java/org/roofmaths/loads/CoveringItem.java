package org.roofmaths.loads;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.ArealMass;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;

/**
 * One layer of a covering and what a square metre of slope of it weighs.
 *
 * @param name what it is, such as {@code slates}
 * @param mass what it weighs for each square metre of slope, zero or more
 * @since 0.1
 */
public record CoveringItem(String name, Figure<ArealMass> mass) implements Serializable {
    private static final long serialVersionUID = 1L;

    /** What a layer weighs for each square metre of slope. */
    public static final Term<ArealMass> ITEM_MASS =
            Term.of("mass of the layer per area of slope", "mi", ArealMass.class);
    /** What one unit weighs. */
    public static final Term<Mass> UNIT_MASS = Term.of("mass of one unit of the layer", "mu", Mass.class);
    /** The gauge of the units. */
    public static final Term<Length> UNIT_GAUGE = Term.of("gauge of the layer's units", "gi", Length.class);
    /** The cover width of the units. */
    public static final Term<Length> UNIT_COVER = Term.of("cover width of the layer's units", "ci", Length.class);
    /** The width of a bar. */
    public static final Term<Length> BAR_WIDTH = Term.of("width of the layer's bars", "bi", Length.class);
    /** The depth of a bar. */
    public static final Term<Length> BAR_DEPTH = Term.of("depth of the layer's bars", "di", Length.class);
    /** The distance of the bars. */
    public static final Term<Length> BAR_SPACING = Term.of("spacing of the layer's bars", "si", Length.class);
    /** The thickness of a sheet. */
    public static final Term<Length> SHEET_THICKNESS = Term.of("thickness of the sheet or slab", "ti", Length.class);
    /** The density in kilograms per cubic metre. */
    public static final Term<Double> DENSITY = Term.of("density of the layer in kg/m³", "ρ", Double.class);

    /** A size or mass that is out of range. */
    public static final ProblemCode WRONG_FIGURE =
            ProblemCode.of("loads.wrong-figure", "Correct the figure; sizes, masses and pressures must be above zero.");

    private static final Formula BY_UNITS = Formula.of(ITEM_MASS, UNIT_MASS.over(UNIT_GAUGE.times(UNIT_COVER)));
    private static final Formula BY_BARS =
            Formula.of(ITEM_MASS, BAR_WIDTH.times(BAR_DEPTH).times(DENSITY).over(BAR_SPACING));
    private static final Formula BY_SHEET = Formula.of(ITEM_MASS, SHEET_THICKNESS.times(DENSITY));

    /**
     * Checks the mass.
     *
     * @throws org.roofmaths.problem.ProblemsException if the mass is below zero
     */
    public CoveringItem {
        Objects.requireNonNull(name, "name");
        Problems.none()
                .require(!mass.value().isNegative(), WRONG_FIGURE, ITEM_MASS.name(), mass.value(), "be 0 kg/m² or more")
                .throwIfErrors();
    }

    /**
     * Returns a layer by what it weighs. A value weighed by the caller comes before any table: kinds of one name differ by a factor of two.
     *
     * @param name what it is
     * @param mass what it weighs for each square metre of slope, zero or more
     * @return the layer
     * @throws org.roofmaths.problem.ProblemsException if the mass is below zero
     */
    public static CoveringItem of(String name, ArealMass mass) {
        return new CoveringItem(name, Given.of(mass));
    }

    /**
     * Returns a layer of tiles or slates: {@code mass of one ÷ (gauge × cover width)}.
     *
     * @param name what it is
     * @param unitMass what one unit weighs, above zero
     * @param gauge the gauge, above zero
     * @param cover the cover width, above zero
     * @return the layer
     * @throws org.roofmaths.problem.ProblemsException with everything that is not above zero
     */
    public static CoveringItem units(String name, Figure<Mass> unitMass, Figure<Length> gauge, Figure<Length> cover) {
        Problems problems = Problems.none()
                .require(
                        unitMass.value().isPositive(),
                        WRONG_FIGURE,
                        UNIT_MASS.name(),
                        unitMass.value(),
                        "be above 0 kg");
        requirePositive(problems, UNIT_GAUGE, gauge);
        requirePositive(problems, UNIT_COVER, cover);
        problems.throwIfErrors();
        return new CoveringItem(name, Worked.by(ITEM_MASS, r -> {
            Mass one = r.use(UNIT_MASS, unitMass);
            Length up = r.use(UNIT_GAUGE, gauge);
            Length across = r.use(UNIT_COVER, cover);
            return r.record(ITEM_MASS, one.dividedBy(up.times(across)), BY_UNITS);
        }));
    }

    /**
     * Returns a layer of battens, counter-battens or rafters: {@code width × depth × density ÷ spacing}. For example, 38 × 25 mm at 100 mm
     * of 420 kg/m³ weigh 3.99 kg/m².
     *
     * @param name what it is
     * @param width the width of a bar, above zero
     * @param depth the depth of a bar, above zero
     * @param spacing the distance of the bars, centre to centre, above zero
     * @param density kilograms per cubic metre, above zero
     * @return the layer
     * @throws org.roofmaths.problem.ProblemsException with everything that is not above zero
     */
    public static CoveringItem bars(
            String name, Figure<Length> width, Figure<Length> depth, Figure<Length> spacing, Figure<Double> density) {
        Problems problems = Problems.none();
        requirePositive(problems, BAR_WIDTH, width);
        requirePositive(problems, BAR_DEPTH, depth);
        requirePositive(problems, BAR_SPACING, spacing);
        requireDensity(problems, density);
        problems.throwIfErrors();
        return new CoveringItem(name, Worked.by(ITEM_MASS, r -> {
            double section =
                    r.use(BAR_WIDTH, width).toSi() * r.use(BAR_DEPTH, depth).toSi();
            double heavy = r.use(DENSITY, density);
            double apart = r.use(BAR_SPACING, spacing).toSi();
            return r.record(ITEM_MASS, ArealMass.ofKilogramsPerSquareMetre(section * heavy / apart), BY_BARS);
        }));
    }

    /**
     * Returns a layer of boards, sheet or insulation: {@code thickness × density}.
     *
     * @param name what it is
     * @param thickness its thickness, above zero
     * @param density kilograms per cubic metre, above zero
     * @return the layer
     * @throws org.roofmaths.problem.ProblemsException with everything that is not above zero
     */
    public static CoveringItem sheet(String name, Figure<Length> thickness, Figure<Double> density) {
        Problems problems = Problems.none();
        requirePositive(problems, SHEET_THICKNESS, thickness);
        requireDensity(problems, density);
        problems.throwIfErrors();
        return new CoveringItem(name, Worked.by(ITEM_MASS, r -> {
            double thick = r.use(SHEET_THICKNESS, thickness).toSi();
            double heavy = r.use(DENSITY, density);
            return r.record(ITEM_MASS, ArealMass.ofKilogramsPerSquareMetre(thick * heavy), BY_SHEET);
        }));
    }

    static void requirePositive(Problems problems, Term<Length> term, Figure<Length> figure) {
        problems.require(figure.value().isPositive(), WRONG_FIGURE, term.name(), figure.value(), "be above 0 mm");
    }

    static void requirePositiveNumber(Problems problems, Term<Double> term, Figure<Double> figure) {
        problems.require(
                figure.value() > 0 && Double.isFinite(figure.value()),
                WRONG_FIGURE,
                term.name(),
                figure.value(),
                "be above 0 and finite");
    }

    private static void requireDensity(Problems problems, Figure<Double> density) {
        requirePositiveNumber(problems, DENSITY, density);
    }

    /** Returns for example {@code slates 40 kg/m²}. */
    @Override
    public String toString() {
        return name + " " + mass.value();
    }
}
