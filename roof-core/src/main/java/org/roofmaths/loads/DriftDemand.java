package org.roofmaths.loads;

import java.io.Serializable;
import org.immutables.value.Value;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Term;

/**
 * The figures of one rule set for snow that the wind piles against a taller wall.
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public interface DriftDemand extends Serializable {
    /** The weight of drifted snow, in newtons per cubic metre. */
    Term<Double> SNOW_WEIGHT = Term.of("weight of drifted snow in N/m³", "γ", Double.class);
    /** The least drift coefficient. */
    Term<Ratio> LEAST = Term.of("least drift coefficient", "μl", Ratio.class);
    /** The greatest drift coefficient. */
    Term<Ratio> GREATEST = Term.of("greatest drift coefficient", "μg", Ratio.class);
    /** The least length of a drift. */
    Term<Length> LEAST_LENGTH = Term.of("least length of the drift", "lk", Length.class);
    /** The greatest length of a drift. */
    Term<Length> GREATEST_LENGTH = Term.of("greatest length of the drift", "lg", Length.class);

    /** Returns the weight of drifted snow, in newtons per cubic metre. */
    Figure<Double> snowWeight();

    /** Returns the least drift coefficient. */
    Figure<Ratio> least();

    /** Returns the greatest drift coefficient. */
    Figure<Ratio> greatest();

    /** Returns the least length of a drift. */
    Figure<Length> leastLength();

    /** Returns the greatest length of a drift. */
    Figure<Length> greatestLength();

    /** Returns the pitch of the upper roof up to which no snow slides from it. */
    Figure<Pitch> noSlideUpTo();

    /**
     * Starts a demand; the builder asks for the parts in the order in which a person would say them.
     *
     * @return the first stage of the builder
     */
    static DriftDemandBuilderStages.BuildStart builder() {
        return DriftDemandBuilderStages.start();
    }

    /**
     * Checks the figures.
     *
     * @throws org.roofmaths.problem.ProblemsException with everything that is out of range
     */
    @Value.Check
    default void check() {
        Problems problems = Problems.none();
        CoveringItem.requirePositiveNumber(problems, SNOW_WEIGHT, snowWeight());
        problems.require(
                !least().value().isGreaterThan(greatest().value()),
                CoveringItem.WRONG_FIGURE,
                LEAST.name(),
                least().value(),
                "be at most the greatest of " + greatest().value());
        problems.require(
                !leastLength().value().isLongerThan(greatestLength().value()),
                CoveringItem.WRONG_FIGURE,
                LEAST_LENGTH.name(),
                leastLength().value(),
                "be at most the greatest of " + greatestLength().value());
        problems.throwIfErrors();
    }
}
