package org.roofmaths.loads;

import java.io.Serializable;
import org.immutables.value.Value;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Term;

/**
 * The figures of one rule set by which a wind speed becomes a pressure at a height, by the logarithmic law. The speed is that of the site,
 * looked up by a person.
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public interface WindDemand extends Serializable {
    /** The basic wind speed, in metres per second. */
    Term<Double> SPEED = Term.of("basic wind speed in m/s", "vb", Double.class);
    /** The roughness length of the terrain. */
    Term<Length> ROUGHNESS = Term.of("roughness length of the terrain", "z0r", Length.class);
    /** The height below which the pressure stays the same. */
    Term<Length> LEAST_HEIGHT = Term.of("least height of the terrain", "zm", Length.class);
    /** The roughness length to which the terrain factor refers. */
    Term<Length> REFERENCE_ROUGHNESS = Term.of("reference roughness length", "zII", Length.class);
    /** The terrain factor at the reference. */
    Term<Double> TERRAIN_COEFFICIENT = Term.of("terrain factor at the reference", "k19", Double.class);
    /** The exponent of the terrain factor. */
    Term<Double> TERRAIN_EXPONENT = Term.of("exponent of the terrain factor", "k07", Double.class);
    /** The factor of the gusts. */
    Term<Double> GUST = Term.of("gust factor on turbulence", "k7", Double.class);
    /** The density of the air in kilograms per cubic metre. */
    Term<Double> AIR_DENSITY = Term.of("density of the air in kg/m³", "ρa", Double.class);

    /** Returns the rule set with its edition, such as {@code EN 1991-1-4:2005, recommended values}. */
    String ruleSet();

    /** Returns the basic wind speed, in metres per second. */
    Figure<Double> speed();

    /** Returns the roughness length of the terrain. */
    Figure<Length> roughness();

    /** Returns the height below which the pressure stays the same. */
    Figure<Length> leastHeight();

    /** Returns the roughness length to which the terrain factor refers. */
    Figure<Length> referenceRoughness();

    /** Returns the terrain factor at the reference. */
    Figure<Double> terrainCoefficient();

    /** Returns the exponent of the terrain factor. */
    Figure<Double> terrainExponent();

    /** Returns the factor of the gusts on the turbulence. */
    Figure<Double> gust();

    /** Returns the density of the air in kilograms per cubic metre. */
    Figure<Double> airDensity();

    /**
     * Starts a demand; the builder asks for the parts in the order in which a person would say them.
     *
     * @return the first stage of the builder
     */
    static WindDemandBuilderStages.BuildStart builder() {
        return WindDemandBuilderStages.start();
    }

    /**
     * Checks the figures.
     *
     * @throws org.roofmaths.problem.ProblemsException with everything that is out of range
     */
    @Value.Check
    default void check() {
        Problems problems = Problems.none();
        CoveringItem.requirePositiveNumber(problems, SPEED, speed());
        CoveringItem.requirePositive(problems, ROUGHNESS, roughness());
        problems.require(
                leastHeight().value().isLongerThan(roughness().value()),
                CoveringItem.WRONG_FIGURE,
                LEAST_HEIGHT.name(),
                leastHeight().value(),
                "be more than the roughness length of " + roughness().value());
        CoveringItem.requirePositive(problems, REFERENCE_ROUGHNESS, referenceRoughness());
        CoveringItem.requirePositiveNumber(problems, TERRAIN_COEFFICIENT, terrainCoefficient());
        CoveringItem.requirePositiveNumber(problems, TERRAIN_EXPONENT, terrainExponent());
        CoveringItem.requirePositiveNumber(problems, GUST, gust());
        CoveringItem.requirePositiveNumber(problems, AIR_DENSITY, airDensity());
        problems.throwIfErrors();
    }
}
