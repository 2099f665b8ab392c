package org.roofmaths.covering;

import java.io.Serializable;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.units.ArealMass;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Range;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;

/**
 * One tile or slate of the field of a roof, with the sizes that decide where it goes.
 *
 * <p>The sizes are those of the unit in hand: measure ten of them, or take them from the papers that come with it. A unit knows no
 * rule of any document; the headlap that a document or its maker asks for is given to the layout beside it.
 *
 * @since 0.1
 */
public sealed interface CoveringUnit extends Serializable permits SingleLapUnit, DoubleLapUnit {
    /** The sizes of a unit contradict each other. */
    ProblemCode IMPOSSIBLE_UNIT = ProblemCode.of(
            "unit.impossible", "Measure ten units, and give the sizes again with their units of length.");

    /** The length of a unit from head to tail. */
    Term<Length> LENGTH = Term.of("unit length", "L", Length.class);

    /** How far a unit covers the head of the unit that it must shed over: of the next course, or of the next but one. */
    Term<Length> HEADLAP = Term.of("headlap", "h", Length.class);

    /** The spacing of the battens up the slope. */
    Term<Length> GAUGE = Term.of("gauge", "g", Length.class);

    /** The width that a unit adds to its course. */
    Term<Length> COVER_WIDTH = Term.of("cover width", "c", Length.class);

    /** The mass of one unit. */
    Term<Mass> MASS = Term.of("unit mass", "m", Mass.class);

    /** How many units lie on a square metre of slope. */
    Term<Double> UNITS_PER_SQUARE_METRE = Term.of("units per square metre", "N", Double.class);

    /** How many metres of batten lie on a square metre of slope. */
    Term<Double> BATTEN_PER_SQUARE_METRE = Term.of("batten metres per square metre", "B", Double.class);

    /** The mass of the covering on a square metre of slope, battens left out. */
    Term<ArealMass> MASS_ON_SLOPE = Term.of("covering mass on the slope", "M", ArealMass.class);

    /** The pitch at which the mass on plan is asked. */
    Term<Pitch> COVERING_PITCH = Term.of("covering pitch", "p", Pitch.class);

    /** The mass of the covering on a square metre of plan, battens left out. */
    Term<ArealMass> MASS_ON_PLAN = Term.of("covering mass on plan", "Mp", ArealMass.class);

    /** Returns what the unit is called, as it should print on the sheet. */
    String name();

    /** Returns what the unit is. */
    UnitKind kind();

    /** Returns the length from head to tail. */
    Length length();

    /** Returns the width that one unit adds to its course when laid as intended. */
    Length coverWidth();

    /** Returns the least and the greatest width that one unit can be made to add to its course. */
    Range<Length> coverRange();

    /** Returns the thickness of the unit as it lies over the batten. */
    Length thickness();

    /** Returns the mass of one unit. */
    Mass mass();

    /** Returns the height of the highest part of the laid unit above the batten; for a flat unit its thickness. */
    Length crownHeight();

    /**
     * Returns the gauge that gives a headlap, as an expression over this unit's sizes.
     *
     * @param headlap the term under which the headlap is known
     * @return for example {@code (unit length − headlap) ÷ 2}
     */
    Expression gaugeBy(Term<Length> headlap);

    /**
     * Returns the headlap that a gauge gives, as an expression over this unit's sizes.
     *
     * @param gauge the term under which the gauge is known
     * @return for example {@code unit length − gauge × 2}
     */
    Expression headlapBy(Term<Length> gauge);

    /**
     * Tells a recorder the sizes that {@link #gaugeBy} and {@link #headlapBy} name.
     *
     * @param recorder the recorder of the calculation that uses them
     */
    void tellSizes(Recorder recorder);

    /**
     * Returns the gauge that gives a headlap: the greatest gauge at which that headlap is kept.
     *
     * <p>A single-lap unit gives {@code length − headlap}: 420 mm less 75 mm is 345 mm. A double-lap unit gives half of that:
     * (500 − 90) ÷ 2 is 205 mm.
     *
     * @param headlap the headlap, zero or more and below the length
     * @return the gauge
     */
    default Worked<Length> gaugeFor(Length headlap) {
        return Worked.by(GAUGE, r -> {
            tellSizes(r);
            r.use(HEADLAP, headlap);
            return r.record(GAUGE, gaugeOf(headlap), Formula.of(GAUGE, gaugeBy(HEADLAP)));
        });
    }

    /**
     * Returns the headlap that a gauge gives.
     *
     * @param gauge the gauge, above zero
     * @return the headlap; below zero if the unit is too short for the gauge
     */
    default Worked<Length> headlapAt(Length gauge) {
        return Worked.by(HEADLAP, r -> {
            tellSizes(r);
            r.use(GAUGE, gauge);
            return r.record(HEADLAP, headlapOf(gauge), Formula.of(HEADLAP, headlapBy(GAUGE)));
        });
    }

    /**
     * Returns the gauge that gives a headlap, without its working.
     *
     * @param headlap the headlap
     * @return the gauge
     */
    Length gaugeOf(Length headlap);

    /**
     * Returns the headlap that a gauge gives, without its working.
     *
     * @param gauge the gauge
     * @return the headlap
     */
    Length headlapOf(Length gauge);

    /**
     * Returns how many units lie on a square metre of slope. A check of a count, never the count itself.
     *
     * <p>For example, a cover width of 165 mm at a gauge of 100 mm gives 60.6.
     *
     * @param gauge the gauge got, above zero
     * @return the number on a square metre
     */
    default Worked<Double> unitsPerSquareMetre(Length gauge) {
        return Worked.by(UNITS_PER_SQUARE_METRE, r -> unitsPerSquareMetre(gauge, r));
    }

    private double unitsPerSquareMetre(Length gauge, Recorder r) {
        double cover = r.use(COVER_WIDTH, coverWidth()).toMetres();
        double step = r.use(GAUGE, gauge).toMetres();
        return r.record(
                UNITS_PER_SQUARE_METRE,
                1 / (cover * step),
                Formula.of(UNITS_PER_SQUARE_METRE, Expression.number(1).over(COVER_WIDTH.times(GAUGE))));
    }

    /**
     * Returns how many metres of batten lie on a square metre of slope.
     *
     * @param gauge the gauge got, above zero
     * @return the metres on a square metre
     */
    default Worked<Double> battenPerSquareMetre(Length gauge) {
        return Worked.by(BATTEN_PER_SQUARE_METRE, r -> {
            double step = r.use(GAUGE, gauge).toMetres();
            return r.record(
                    BATTEN_PER_SQUARE_METRE,
                    1 / step,
                    Formula.of(BATTEN_PER_SQUARE_METRE, Expression.number(1).over(GAUGE)));
        });
    }

    /**
     * Returns the mass of the covering on a square metre of slope, battens left out.
     *
     * @param gauge the gauge got, above zero
     * @return the mass on the slope
     */
    default Worked<ArealMass> massOnSlope(Length gauge) {
        return Worked.by(MASS_ON_SLOPE, r -> massOnSlope(gauge, r));
    }

    private ArealMass massOnSlope(Length gauge, Recorder r) {
        Mass one = r.use(MASS, mass());
        double number = unitsPerSquareMetre(gauge, r);
        return r.record(
                MASS_ON_SLOPE,
                ArealMass.ofKilogramsPerSquareMetre(one.toKilograms() * number),
                Formula.of(MASS_ON_SLOPE, MASS.times(UNITS_PER_SQUARE_METRE)));
    }

    /**
     * Returns the mass of the covering on a square metre of plan, battens left out.
     *
     * @param gauge the gauge got, above zero
     * @param pitch the rafter pitch
     * @return the mass on plan
     */
    default Worked<ArealMass> massOnPlan(Length gauge, Pitch pitch) {
        return Worked.by(MASS_ON_PLAN, r -> {
            ArealMass onSlope = massOnSlope(gauge, r);
            double radians = r.use(COVERING_PITCH, pitch).toSi();
            return r.record(
                    MASS_ON_PLAN,
                    onSlope.dividedBy(StrictMath.cos(radians)),
                    Formula.of(MASS_ON_PLAN, MASS_ON_SLOPE.over(COVERING_PITCH.cos())));
        });
    }
}
