package org.roofmaths.rainwater;

import java.io.Serializable;
import java.util.Optional;
import org.immutables.value.Value;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Term;

/**
 * The figures of one rule set by which a gutter's capacity is worked out. Rule sets have coefficients of their own, and the shapes of a
 * gutter too: keep the figures of one together.
 *
 * @since 0.1
 */
@Value.Immutable
public interface GutterDemand extends Serializable {
    /** The coefficient of the capacity, in litres a second for a section in square millimetres. */
    Term<Double> COEFFICIENT = Term.of("capacity coefficient of the gutter", "kn", Double.class);
    /** The factor from nominal to design capacity. */
    Term<Ratio> DESIGN_FACTOR = Term.of("design factor of the gutter", "kd", Ratio.class);
    /** The factor for the depth and shape of a section that is not the rule's own. */
    Term<Ratio> SHAPE_FACTOR = Term.of("shape factor of the gutter", "ks", Ratio.class);
    /** The factor for a long level run. */
    Term<Ratio> LENGTH_FACTOR = Term.of("length factor of the gutter", "kl", Ratio.class);
    /** The factor for bends. */
    Term<Ratio> BEND_FACTOR = Term.of("bend factor of the gutter", "kb", Ratio.class);

    /** Returns the coefficient: litres a second = coefficient × (square millimetres)^1.25. */
    Figure<Double> coefficient();

    /** Returns the factor from nominal to design capacity. */
    Figure<Ratio> designFactor();

    /** Returns the factor for depth and shape, from the rule's charts; empty where the section is the rule's own. */
    Optional<Figure<Ratio>> shapeFactor();

    /** Returns the factor for a long level run, from the rule's table at the drained length over the depth; empty if it is short. */
    Optional<Figure<Ratio>> lengthFactor();

    /** Returns the factor for a run with bends; empty if it is straight. */
    Optional<Figure<Ratio>> bendFactor();

    /**
     * Starts a demand.
     *
     * @return the builder
     */
    static GutterDemandBuilder builder() {
        return new GutterDemandBuilder();
    }

    /**
     * Checks the factors.
     *
     * @throws org.roofmaths.problem.ProblemsException with every factor that is not above zero
     */
    @Value.Check
    default void check() {
        Problems problems = Problems.none()
                .require(
                        coefficient().value() > 0
                                && Double.isFinite(coefficient().value()),
                        Catchment.WRONG_SIZE,
                        COEFFICIENT.name(),
                        coefficient().value(),
                        "be above 0 and finite");
        requirePositive(problems, DESIGN_FACTOR, designFactor());
        shapeFactor().ifPresent(figure -> requirePositive(problems, SHAPE_FACTOR, figure));
        lengthFactor().ifPresent(figure -> requirePositive(problems, LENGTH_FACTOR, figure));
        bendFactor().ifPresent(figure -> requirePositive(problems, BEND_FACTOR, figure));
        problems.throwIfErrors();
    }

    private static void requirePositive(Problems problems, Term<Ratio> term, Figure<Ratio> figure) {
        problems.require(figure.value().isPositive(), Catchment.WRONG_SIZE, term.name(), figure.value(), "be above 0");
    }
}
