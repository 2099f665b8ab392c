package org.roofmaths.order;

import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;

/**
 * How many nails battens take, and how heavy a number of nails is.
 *
 * @since 0.1
 */
public final class Nails {
    /** The rows of battens. */
    public static final Term<Number> ROWS = Term.of("rows of battens", "n", Number.class);

    /** The rafters that each row crosses. */
    public static final Term<Number> RAFTERS = Term.of("rafters crossed", "r", Number.class);

    /** The joints in all rows, each of which takes one nail more. */
    public static final Term<Number> JOINTS = Term.of("joints of battens", "j", Number.class);

    /** The nails for the battens. */
    public static final Term<Long> BATTEN_NAILS = Term.of("batten nails", "N", Long.class);

    /** A number of nails to weigh. */
    public static final Term<Number> COUNT = Term.of("nails weighed", "N", Number.class);

    /** The thickness of a nail's shank. */
    public static final Term<Length> DIAMETER = Term.of("shank diameter of a nail", "d", Length.class);

    /** The length of a nail. */
    public static final Term<Length> LENGTH = Term.of("length of a nail", "l", Length.class);

    /** Kilograms per cubic metre. */
    public static final Term<Integer> DENSITY = Term.of("density of the metal in kg/m³", "ρ", Integer.class);

    /** The mass of the shanks. */
    public static final Term<Mass> MASS = Term.of("mass of the nails", "M", Mass.class);

    /** A count below nothing, or a size that is nothing. */
    public static final ProblemCode OUT_OF_RANGE =
            ProblemCode.of("nails.out-of-range", "Give counts of zero or more and sizes above zero.");

    private static final Formula AT_CROSSINGS =
            Formula.of(BATTEN_NAILS, ROWS.times(RAFTERS).plus(JOINTS));
    private static final double CIRCLE_OF_ITS_SQUARE = Math.PI / 4;
    private static final Formula BY_VOLUME = Formula.of(
            MASS,
            COUNT.times(Expression.number(CIRCLE_OF_ITS_SQUARE))
                    .times(DIAMETER.squared())
                    .times(LENGTH)
                    .times(DENSITY));

    private Nails() {}

    /**
     * Returns the nails of battens: one at each crossing of a rafter, and one more at each joint, where both ends are nailed.
     *
     * <p>For example, 11 rows over 10 rafters with one joint each take 11 × 10 + 11 = 121 nails.
     *
     * @param rows the rows of battens, zero or more
     * @param rafters the rafters that each row crosses, zero or more
     * @param joints the joints in all rows together, zero or more
     * @return the nails
     * @throws org.roofmaths.problem.ProblemsException if a count is below zero
     */
    public static Worked<Long> atCrossings(
            Figure<? extends Number> rows, Figure<? extends Number> rafters, Figure<? extends Number> joints) {
        Problems.none()
                .require(rows.value().longValue() >= 0, OUT_OF_RANGE, ROWS.name(), rows.value(), "be zero or more")
                .require(
                        rafters.value().longValue() >= 0,
                        OUT_OF_RANGE,
                        RAFTERS.name(),
                        rafters.value(),
                        "be zero or more")
                .require(
                        joints.value().longValue() >= 0, OUT_OF_RANGE, JOINTS.name(), joints.value(), "be zero or more")
                .throwIfErrors();
        return Worked.by(BATTEN_NAILS, r -> {
            long n = r.use(ROWS, rows).longValue();
            long across = r.use(RAFTERS, rafters).longValue();
            long more = r.use(JOINTS, joints).longValue();
            return r.record(BATTEN_NAILS, n * across + more, AT_CROSSINGS);
        });
    }

    /**
     * Returns the mass of a number of round nails by the volume of their shanks; heads add some 2 to 5 per cent, which is not counted.
     *
     * <p>For example, 110 steel nails of 65 × 3.35 mm have 0.49 kg.
     *
     * @param count how many, zero or more
     * @param length the length of a nail, above zero
     * @param diameter the thickness of its shank, above zero
     * @param metal what it is made of
     * @return the mass
     * @throws org.roofmaths.problem.ProblemsException if the count is below zero or a size not above it
     */
    public static Worked<Mass> mass(Figure<? extends Number> count, Length length, Length diameter, NailMetal metal) {
        Problems.none()
                .require(count.value().longValue() >= 0, OUT_OF_RANGE, COUNT.name(), count.value(), "be zero or more")
                .require(length.isPositive(), OUT_OF_RANGE, LENGTH.name(), length, "be above 0 mm")
                .require(diameter.isPositive(), OUT_OF_RANGE, DIAMETER.name(), diameter, "be above 0 mm")
                .throwIfErrors();
        int density = metal.density();
        return Worked.by(MASS, r -> {
            long n = r.use(COUNT, count).longValue();
            double l = r.use(LENGTH, length).toMetres();
            double d = r.use(DIAMETER, diameter).toMetres();
            double volume = CIRCLE_OF_ITS_SQUARE * d * d * l;
            return r.record(MASS, Mass.ofKilograms(n * volume * r.use(DENSITY, density)), BY_VOLUME);
        });
    }
}
