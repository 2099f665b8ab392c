package org.roofmaths.flashing;

import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;

/**
 * How far lead laps up a slope, and at what pitch the laid unit itself lies.
 *
 * <p>A lap must rise by the same height whatever the pitch, so it grows as the slope flattens. It goes by the true pitch of what the
 * lead lies on: of the laid tile, which lies flatter than the rafter, or of the valley. Limits on headlap and least pitch mean the
 * rafter pitch and have nothing to do with this.
 *
 * @since 0.1
 */
public final class LeadLap {
    /** The height that a lap must rise. */
    public static final Term<Length> WEATHERING_HEIGHT = Term.of("weathering height of a lap", "hv", Length.class);
    /** The least lap, however steep. */
    public static final Term<Length> LEAST_LAP = Term.of("least lap up the slope", "ll", Length.class);
    /** The pitch of the surface that the lead lies on. */
    public static final Term<Pitch> TRUE_PITCH = Term.of("true pitch under the lead", "pt", Pitch.class);
    /** The lap up the slope. */
    public static final Term<Length> LAP = Term.of("lap up the slope", "la", Length.class);
    /** The pitch of the rafters. */
    public static final Term<Pitch> RAFTER_PITCH = Term.of("rafter pitch under the unit", "pr", Pitch.class);
    /** The thickness of the unit. */
    public static final Term<Length> UNIT_THICKNESS = Term.of("thickness of the unit", "tu", Length.class);
    /** The gauge at which the unit is laid. */
    public static final Term<Length> UNIT_GAUGE = Term.of("gauge of the unit", "gu", Length.class);

    /** A size or pitch that a lap cannot be worked out from. */
    public static final ProblemCode WRONG_LAP =
            ProblemCode.of("flashing.wrong-lap", "Check the pitch, the thickness and the gauge.");

    private static final Formula LAP_BY_PITCH =
            Formula.of(LAP, WEATHERING_HEIGHT.over(TRUE_PITCH.sin()).greatest(LEAST_LAP));
    private static final Formula PITCH_OF_UNIT = Formula.of(
            TRUE_PITCH, RAFTER_PITCH.minus(UNIT_THICKNESS.over(UNIT_GAUGE).arcTan()));

    private LeadLap() {}

    /**
     * Returns how far a lap goes up the slope: {@code weathering height ÷ sin(true pitch)}, and never less than the least lap. For
     * example, 75 mm at 22° is 200.2 mm; at 30° 150 mm.
     *
     * @param truePitch the pitch of the surface that the lead lies on
     * @param weatheringHeight the height that the lap must rise, above zero
     * @param leastLap the least lap, zero or more
     * @return the lap, ready to be used as the cover of a {@link FlashingDemand}
     * @throws org.roofmaths.problem.ProblemsException if a size is wrong
     */
    public static Worked<Length> upTheSlope(
            Figure<Pitch> truePitch, Figure<Length> weatheringHeight, Figure<Length> leastLap) {
        Problems problems = Problems.none();
        Sizes.requirePositive(problems, WEATHERING_HEIGHT, weatheringHeight);
        Sizes.requireNotNegative(problems, LEAST_LAP, leastLap);
        problems.throwIfErrors();
        return Worked.by(LAP, r -> compute(r, truePitch, weatheringHeight, leastLap));
    }

    static Length compute(
            Recorder r, Figure<Pitch> truePitch, Figure<Length> weatheringHeight, Figure<Length> leastLap) {
        Length height = r.use(WEATHERING_HEIGHT, weatheringHeight);
        Pitch pitch = r.use(TRUE_PITCH, truePitch);
        Length least = r.use(LEAST_LAP, leastLap);
        return r.record(LAP, Length.ofMetres(height.toSi() / pitch.sin()).max(least), LAP_BY_PITCH);
    }

    /**
     * Returns the pitch at which a laid unit lies: {@code rafter pitch − arctan(thickness ÷ gauge)}. For example, a plain tile 12 mm
     * thick at gauge 100 mm lies 6.8° flatter than its rafter.
     *
     * @param rafterPitch the pitch of the rafters
     * @param thickness the thickness of the unit, above zero
     * @param gauge the gauge at which it is laid, above zero
     * @return the true pitch
     * @throws org.roofmaths.problem.ProblemsException if a size is wrong, or the unit would lie level or fall backwards
     */
    public static Worked<Pitch> truePitch(Figure<Pitch> rafterPitch, Figure<Length> thickness, Figure<Length> gauge) {
        Problems problems = Problems.none();
        Sizes.requirePositive(problems, UNIT_THICKNESS, thickness);
        Sizes.requirePositive(problems, UNIT_GAUGE, gauge);
        problems.throwIfErrors();
        problems.require(
                rafterPitch.value().tan()
                        > thickness.value().toSi() / gauge.value().toSi(),
                WRONG_LAP,
                RAFTER_PITCH.name(),
                rafterPitch.value(),
                "be steeper than the unit kicks up; a unit of " + thickness.value() + " at gauge " + gauge.value()
                        + " would lie level or fall backwards");
        problems.throwIfErrors();
        return Worked.by(TRUE_PITCH, r -> {
            Pitch rafter = r.use(RAFTER_PITCH, rafterPitch);
            Length thick = r.use(UNIT_THICKNESS, thickness);
            Length step = r.use(UNIT_GAUGE, gauge);
            Angle kick = Angle.ofRadians(StrictMath.atan(thick.toSi() / step.toSi()));
            return r.record(TRUE_PITCH, Pitch.from(rafter.toAngle().minus(kick)), PITCH_OF_UNIT);
        });
    }
}
