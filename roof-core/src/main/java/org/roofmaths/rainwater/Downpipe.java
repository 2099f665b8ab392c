package org.roofmaths.rainwater;

import org.roofmaths.problem.Problems;
import org.roofmaths.units.FlowRate;
import org.roofmaths.units.Length;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;

/**
 * How much water a downpipe carries, running part full along its walls.
 *
 * <p>Formula: {@code coefficient × roughness^−0.167 × diameter^2.667 × filling^1.667}, in litres a second for millimetres. For example,
 * 68 mm with 2.5e-4, a roughness of 0.25 mm and a filling of 0.33 carries 3.83 l/s. A pipe far outruns its gutter: the outlet decides.
 *
 * @since 0.1
 */
public final class Downpipe {
    /** The inside diameter of the pipe. */
    public static final Term<Length> DIAMETER = Term.of("inside diameter of the pipe", "Dp", Length.class);
    /** The diameter in millimetres, as the formula wants it. */
    public static final Term<Double> DIAMETER_IN_MILLIMETRES =
            Term.of("inside diameter of the pipe in mm", "Dpm", Double.class);
    /** The coefficient of the formula. */
    public static final Term<Double> COEFFICIENT = Term.of("capacity coefficient of the pipe", "cp", Double.class);
    /** The roughness of the pipe. */
    public static final Term<Length> ROUGHNESS = Term.of("roughness of the pipe", "rp", Length.class);
    /** The roughness in millimetres, as the formula wants it. */
    public static final Term<Double> ROUGHNESS_IN_MILLIMETRES =
            Term.of("roughness of the pipe in mm", "rpm", Double.class);
    /** How full the pipe runs. */
    public static final Term<Ratio> FILLING = Term.of("filling of the pipe", "fp", Ratio.class);
    /** What the pipe carries. */
    public static final Term<FlowRate> CAPACITY = Term.of("capacity of the pipe", "Qp", FlowRate.class);

    private static final double OF_ROUGHNESS = -0.167;
    private static final double OF_DIAMETER = 2.667;
    private static final double OF_FILLING = 1.667;
    private static final Formula DIAMETER_IN_MM = Formula.of(DIAMETER_IN_MILLIMETRES, DIAMETER.times(1000));
    private static final Formula ROUGHNESS_IN_MM = Formula.of(ROUGHNESS_IN_MILLIMETRES, ROUGHNESS.times(1000));
    private static final Formula CAPACITY_PART_FULL = Formula.of(
            CAPACITY,
            COEFFICIENT
                    .times(ROUGHNESS_IN_MILLIMETRES.toThe(Expression.number(OF_ROUGHNESS)))
                    .times(DIAMETER_IN_MILLIMETRES.toThe(OF_DIAMETER))
                    .times(FILLING.toThe(OF_FILLING))
                    .over(1000));
    private static final double MILLIMETRES = 1000;

    private Downpipe() {}

    /**
     * Returns what a downpipe carries.
     *
     * @param diameter its inside diameter, above zero
     * @param coefficient the coefficient of the rule set, above zero
     * @param roughness the roughness of its wall, above zero
     * @param filling how full it may run, above zero and at most 1
     * @return its capacity
     * @throws org.roofmaths.problem.ProblemsException with everything that is out of range
     */
    public static Worked<FlowRate> capacity(
            Figure<Length> diameter, Figure<Double> coefficient, Figure<Length> roughness, Figure<Ratio> filling) {
        Problems problems = Problems.none();
        GutterSection.requirePositive(problems, DIAMETER, diameter.value());
        problems.require(
                coefficient.value() > 0 && Double.isFinite(coefficient.value()),
                Catchment.WRONG_SIZE,
                COEFFICIENT.name(),
                coefficient.value(),
                "be above 0 and finite");
        GutterSection.requirePositive(problems, ROUGHNESS, roughness.value());
        problems.require(
                filling.value().isPositive() && filling.value().toDouble() <= 1,
                Catchment.WRONG_SIZE,
                FILLING.name(),
                filling.value(),
                "be above 0 and at most 1");
        problems.throwIfErrors();
        return Worked.by(CAPACITY, r -> {
            double across = r.use(DIAMETER, diameter).toMetres() * MILLIMETRES;
            double rough = r.use(ROUGHNESS, roughness).toMetres() * MILLIMETRES;
            r.record(DIAMETER_IN_MILLIMETRES, across, DIAMETER_IN_MM);
            r.record(ROUGHNESS_IN_MILLIMETRES, rough, ROUGHNESS_IN_MM);
            double factor = r.use(COEFFICIENT, coefficient);
            double full = r.use(FILLING, filling).toDouble();
            double litres = factor
                    * StrictMath.pow(rough, OF_ROUGHNESS)
                    * StrictMath.pow(across, OF_DIAMETER)
                    * StrictMath.pow(full, OF_FILLING);
            return r.record(CAPACITY, FlowRate.ofLitresPerSecond(litres), CAPACITY_PART_FULL);
        });
    }
}
