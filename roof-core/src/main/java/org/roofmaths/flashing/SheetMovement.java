package org.roofmaths.flashing;

import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;

/**
 * How far a piece of sheet grows and shrinks with the weather.
 *
 * <p>Formula: {@code expansion for each kelvin × length × range}. For example, 1.5 m of a lead that grows by 29.3 millionths for each
 * kelvin moves 2.637 mm over 60 K. Metal in the sun swings further than the air does.
 *
 * @since 0.1
 */
public final class SheetMovement {
    /** By how much a length grows for each kelvin. */
    public static final Term<Ratio> EXPANSION = Term.of("expansion for each kelvin", "α", Ratio.class);
    /** The length that moves. */
    public static final Term<Length> PIECE = Term.of("length that moves", "Lx", Length.class);
    /** From coldest to hottest, in kelvins. */
    public static final Term<Double> KELVINS = Term.of("range of temperature in kelvins", "ΔT", Double.class);
    /** From shortest to longest. */
    public static final Term<Length> MOVEMENT = Term.of("movement", "ΔL", Length.class);

    private static final Formula BY_EXPANSION =
            Formula.of(MOVEMENT, EXPANSION.times(PIECE).times(KELVINS));

    private SheetMovement() {}

    /**
     * Returns how far a piece moves.
     *
     * @param length the length of the piece, above zero
     * @param expansion by how much a length grows for each kelvin, above zero
     * @param kelvins from coldest to hottest metal, in kelvins, above zero
     * @return the movement
     * @throws org.roofmaths.problem.ProblemsException with everything that is wrong with the three
     */
    public static Worked<Length> of(Figure<Length> length, Figure<Ratio> expansion, Figure<Double> kelvins) {
        Problems problems = Problems.none();
        Sizes.requirePositive(problems, PIECE, length);
        problems.require(
                expansion.value().isPositive(),
                FlashingDemand.WRONG_SIZE,
                EXPANSION.name(),
                expansion.value(),
                "be above 0");
        problems.require(
                kelvins.value() > 0 && Double.isFinite(kelvins.value()),
                FlashingDemand.WRONG_SIZE,
                KELVINS.name(),
                kelvins.value(),
                "be above 0 and finite");
        problems.throwIfErrors();
        return Worked.by(MOVEMENT, r -> {
            Ratio each = r.use(EXPANSION, expansion);
            Length piece = r.use(PIECE, length);
            double range = r.use(KELVINS, kelvins);
            return r.record(MOVEMENT, Length.ofMetres(each.toDouble() * piece.toSi() * range), BY_EXPANSION);
        });
    }
}
