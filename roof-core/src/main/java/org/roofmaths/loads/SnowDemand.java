package org.roofmaths.loads;

import java.io.Serializable;
import org.immutables.value.Value;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Pressure;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Term;

/**
 * The figures of one rule set by which snow on a pitch is told. The ground snow is that of the site, looked up by a person.
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public interface SnowDemand extends Serializable {
    /** The snow on the ground. */
    Term<Pressure> GROUND = Term.of("ground snow", "sk", Pressure.class);
    /** The share of it that lies on a flat roof. */
    Term<Ratio> FLAT_COEFFICIENT = Term.of("snow coefficient of a flat roof", "μ0", Ratio.class);
    /** The pitch up to which the full share lies. */
    Term<Pitch> FULL_UP_TO = Term.of("pitch up to which snow lies in full", "pf", Pitch.class);
    /** The pitch from which no snow lies. */
    Term<Pitch> NONE_FROM = Term.of("pitch from which no snow lies", "pn", Pitch.class);
    /** The factor for a windswept or sheltered site. */
    Term<Ratio> EXPOSURE = Term.of("exposure factor of the site", "Ce", Ratio.class);
    /** The factor for heat from below. */
    Term<Ratio> THERMAL = Term.of("thermal factor of the roof", "Ct", Ratio.class);

    /** Returns the rule set with its edition, such as {@code EN 1991-1-3:2003, recommended values}. */
    String ruleSet();

    /** Returns the snow on the ground, on plan. */
    Figure<Pressure> ground();

    /** Returns the share of it that lies on a flat roof. */
    Figure<Ratio> flatCoefficient();

    /** Returns the pitch up to which the full share lies. */
    Figure<Pitch> fullUpTo();

    /** Returns the pitch from which no snow lies, where it can slide off. */
    Figure<Pitch> noneFrom();

    /** Returns the factor for a windswept or sheltered site. */
    Figure<Ratio> exposure();

    /** Returns the factor for heat from below. */
    Figure<Ratio> thermal();

    /** Returns whether snow can slide off. */
    SnowHold hold();

    /**
     * Starts a demand; the builder asks for the parts in the order in which a person would say them.
     *
     * @return the first stage of the builder
     */
    static SnowDemandBuilderStages.BuildStart builder() {
        return SnowDemandBuilderStages.start();
    }

    /**
     * Checks the figures.
     *
     * @throws org.roofmaths.problem.ProblemsException with everything that is out of range
     */
    @Value.Check
    default void check() {
        Problems problems = Problems.none()
                .require(
                        ground().value().isPositive(),
                        CoveringItem.WRONG_FIGURE,
                        GROUND.name(),
                        ground().value(),
                        "be above 0 Pa")
                .require(
                        noneFrom().value().isSteeperThan(fullUpTo().value()),
                        CoveringItem.WRONG_FIGURE,
                        NONE_FROM.name(),
                        noneFrom().value(),
                        "be steeper than the " + fullUpTo().value() + " up to which it lies in full");
        requirePositive(problems, FLAT_COEFFICIENT, flatCoefficient());
        requirePositive(problems, EXPOSURE, exposure());
        requirePositive(problems, THERMAL, thermal());
        problems.throwIfErrors();
    }

    private static void requirePositive(Problems problems, Term<Ratio> term, Figure<Ratio> figure) {
        problems.require(
                figure.value().isPositive(), CoveringItem.WRONG_FIGURE, term.name(), figure.value(), "be above 0");
    }
}
