package org.roofmaths.rainwater;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Term;

/**
 * The figures of one rule set by which an outlet's capacity is worked out.
 *
 * @param grating the factor of the outlet: 1 if it is open, less with a grating
 * @param weirDivisor the divisor of the weir formula, for millimetres and litres a second
 * @param orificeDivisor the divisor of the orifice formula, for millimetres and litres a second
 * @since 0.1
 */
public record OutletDemand(Figure<Ratio> grating, Figure<Double> weirDivisor, Figure<Double> orificeDivisor)
        implements Serializable {
    private static final long serialVersionUID = 1L;

    /** The factor of the outlet. */
    public static final Term<Ratio> GRATING = Term.of("grating factor of the outlet", "ko", Ratio.class);
    /** The divisor of the weir formula. */
    public static final Term<Double> WEIR_DIVISOR = Term.of("weir divisor of the outlet", "cw", Double.class);
    /** The divisor of the orifice formula. */
    public static final Term<Double> ORIFICE_DIVISOR = Term.of("orifice divisor of the outlet", "co", Double.class);

    /**
     * Checks the figures.
     *
     * @throws org.roofmaths.problem.ProblemsException with every figure that is not above zero
     */
    public OutletDemand {
        Objects.requireNonNull(orificeDivisor, "orificeDivisor");
        Problems problems = Problems.none()
                .require(
                        grating.value().isPositive(),
                        Catchment.WRONG_SIZE,
                        GRATING.name(),
                        grating.value(),
                        "be above 0");
        requirePositive(problems, WEIR_DIVISOR, weirDivisor);
        requirePositive(problems, ORIFICE_DIVISOR, orificeDivisor);
        problems.throwIfErrors();
    }

    private static void requirePositive(Problems problems, Term<Double> term, Figure<Double> figure) {
        problems.require(
                figure.value() > 0 && Double.isFinite(figure.value()),
                Catchment.WRONG_SIZE,
                term.name(),
                figure.value(),
                "be above 0 and finite");
    }
}
