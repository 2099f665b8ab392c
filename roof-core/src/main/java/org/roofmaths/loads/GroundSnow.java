package org.roofmaths.loads;

import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pressure;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;

/**
 * Snow on the ground by altitude, in the two forms that rule sets use. The zone is read off a map by a person and never guessed from the
 * name of a place.
 *
 * @since 0.1
 */
public final class GroundSnow {
    /** The altitude of the site. */
    public static final Term<Length> ALTITUDE = Term.of("altitude of the site", "A", Length.class);
    /** The snow of the zone at the base altitude. */
    public static final Term<Pressure> OF_ZONE = Term.of("snow of the zone", "sz", Pressure.class);
    /** The altitude at which the snow of the zone holds. */
    public static final Term<Length> BASE_ALTITUDE = Term.of("base altitude of the zone", "A0", Length.class);
    /** The altitude for each kilopascal more. */
    public static final Term<Length> ALTITUDE_PER_KILOPASCAL =
            Term.of("altitude for each kPa more", "Ak", Length.class);
    /** The least ground snow of the zone. */
    public static final Term<Pressure> FLOOR = Term.of("least ground snow of the zone", "sf", Pressure.class);
    /** The factor on the square of the altitude. */
    public static final Term<Pressure> BY_SQUARE = Term.of("snow by the square of the altitude", "sq", Pressure.class);
    /** What is added to the altitude. */
    public static final Term<Length> SHIFT = Term.of("shift of the altitude", "As", Length.class);
    /** The altitude that counts as one. */
    public static final Term<Length> SCALE = Term.of("scale of the altitude", "Ac", Length.class);

    private static final Formula LINEAR = Formula.of(
            SnowDemand.GROUND,
            OF_ZONE.plus(
                    ALTITUDE.minus(BASE_ALTITUDE).over(ALTITUDE_PER_KILOPASCAL).times(1000)));
    private static final Formula SQUARE = Formula.of(
            SnowDemand.GROUND,
            OF_ZONE.plus(BY_SQUARE.times(ALTITUDE.plus(SHIFT).over(SCALE).squared()))
                    .greatest(FLOOR));
    private static final double PASCALS = 1000;

    private GroundSnow() {}

    /**
     * Returns ground snow that grows in a straight line with altitude: {@code snow of the zone + (altitude − base) ÷ altitude for each kPa}.
     *
     * @param ofZone the snow of the zone at the base altitude
     * @param altitude the altitude of the site
     * @param base the base altitude
     * @param perKilopascal the altitude for each kilopascal more, above zero
     * @return the ground snow
     * @throws org.roofmaths.problem.ProblemsException if the altitude for each kilopascal is not above zero
     */
    public static Worked<Pressure> linear(
            Figure<Pressure> ofZone, Figure<Length> altitude, Figure<Length> base, Figure<Length> perKilopascal) {
        Problems problems = Problems.none();
        CoveringItem.requirePositive(problems, ALTITUDE_PER_KILOPASCAL, perKilopascal);
        problems.throwIfErrors();
        return Worked.by(SnowDemand.GROUND, r -> {
            Pressure zone = r.use(OF_ZONE, ofZone);
            double at = r.use(ALTITUDE, altitude).toSi();
            double from = r.use(BASE_ALTITUDE, base).toSi();
            double each = r.use(ALTITUDE_PER_KILOPASCAL, perKilopascal).toSi();
            return r.record(SnowDemand.GROUND, zone.plus(Pressure.ofPascals((at - from) / each * PASCALS)), LINEAR);
        });
    }

    /**
     * Returns ground snow that grows with the square of the altitude and never falls below a floor:
     * {@code snow of the zone + factor × ((altitude + shift) ÷ scale)²}.
     *
     * @param floor the least ground snow of the zone
     * @param ofZone the constant part
     * @param bySquare the factor on the square
     * @param altitude the altitude of the site
     * @param shift what is added to the altitude
     * @param scale the altitude that counts as one, above zero
     * @return the ground snow
     * @throws org.roofmaths.problem.ProblemsException if the scale is not above zero
     */
    public static Worked<Pressure> bySquare(
            Figure<Pressure> floor,
            Figure<Pressure> ofZone,
            Figure<Pressure> bySquare,
            Figure<Length> altitude,
            Figure<Length> shift,
            Figure<Length> scale) {
        Problems problems = Problems.none();
        CoveringItem.requirePositive(problems, SCALE, scale);
        problems.throwIfErrors();
        return Worked.by(SnowDemand.GROUND, r -> {
            Pressure least = r.use(FLOOR, floor);
            Pressure zone = r.use(OF_ZONE, ofZone);
            Pressure factor = r.use(BY_SQUARE, bySquare);
            double at = r.use(ALTITUDE, altitude).toSi() + r.use(SHIFT, shift).toSi();
            double x = at / r.use(SCALE, scale).toSi();
            return r.record(
                    SnowDemand.GROUND, zone.plus(factor.times(Ratio.of(x * x))).max(least), SQUARE);
        });
    }
}
