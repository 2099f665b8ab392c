package org.roofmaths.framing;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * A dormer with two slopes of its own, whose level ridge runs back into the main roof and which meets it in two
 * valleys.
 *
 * <p>The ridge stands width ÷ 2 × tan(dormer pitch) over the dormer's eaves, and runs that rise ÷ tan(main pitch)
 * further back than the eaves do. For example, a dormer 1800 mm wide at 45° on a roof of 40° rises 900 mm and runs back
 * 1072.6 mm; its valleys are 1664.5 mm long at 32.7°.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class GabledDormer implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The width of the dormer from eaves to eaves, level. */
    public static final Term<Length> WIDTH = Term.of("gabled dormer width", "gw", Length.class);

    /** The pitch of the main roof. */
    public static final Term<Pitch> MAIN_PITCH = ShedDormer.MAIN_PITCH;

    /** The pitch of the dormer's slopes. */
    public static final Term<Pitch> DORMER_PITCH = ShedDormer.DORMER_PITCH;

    /** The height of the dormer's ridge over its eaves. */
    public static final Term<Length> RISE = Term.of("gabled dormer rise", "gh", Length.class);

    /** How much further back the ridge runs than the eaves, level. */
    public static final Term<Length> BACK_RUN = Term.of("gabled dormer back run", "gb", Length.class);

    /** The length of each valley. */
    public static final Term<Length> VALLEY_LENGTH = Term.of("gabled dormer valley length", "gv", Length.class);

    /** The pitch of each valley. */
    public static final Term<Pitch> VALLEY_PITCH = Term.of("gabled dormer valley pitch", "gp", Pitch.class);

    /** A size or pitch of the dormer is not as it must be. */
    public static final ProblemCode SIZE = ProblemCode.of("gabled-dormer.size", "Check the width and its unit.");

    private static final Formula RISE_BY_WIDTH = Formula.of(RISE, WIDTH.over(2).times(DORMER_PITCH.tan()));
    private static final Formula BACK_RUN_BY_RISE = Formula.of(BACK_RUN, RISE.over(MAIN_PITCH.tan()));
    private static final Formula VALLEY_BY_SIDES = Formula.of(
            VALLEY_LENGTH,
            WIDTH.over(2)
                    .squared()
                    .plus(BACK_RUN.squared())
                    .plus(RISE.squared())
                    .squareRoot());
    private static final Formula VALLEY_PITCH_BY_SIDES = Formula.of(
            VALLEY_PITCH,
            RISE.arcTanOver(WIDTH.over(2).squared().plus(BACK_RUN.squared()).squareRoot()));

    private final Length width;
    private final Figure<Pitch> mainPitch;
    private final Figure<Pitch> dormerPitch;
    private final Numbers numbers;

    private record Numbers(Length rise, Length backRun, Length valley, Pitch valleyPitch) implements Serializable {}

    private GabledDormer(Length width, Figure<Pitch> mainPitch, Figure<Pitch> dormerPitch) {
        this.width = Objects.requireNonNull(width, "width");
        this.mainPitch = Objects.requireNonNull(mainPitch, "mainPitch");
        this.dormerPitch = Objects.requireNonNull(dormerPitch, "dormerPitch");
        Problems problems = Problems.none();
        Checks.requireSize(problems, SIZE, "width", width);
        double rise = width.toMetres() / 2 * dormerPitch.value().tan();
        problems.require(
                !width.isPositive() || rise <= Checks.LONGEST.toMetres(),
                SIZE,
                "dormer pitch",
                dormerPitch.value(),
                "give a rise of at most " + Checks.LONGEST + " over half of " + width);
        problems.require(
                !width.isPositive() || rise / mainPitch.value().tan() <= Checks.LONGEST.toMetres(),
                SIZE,
                "main pitch",
                mainPitch.value(),
                "be met within " + Checks.LONGEST);
        problems.throwIfErrors();
        this.numbers = compute(Recorder.off());
    }

    /**
     * Returns a dormer.
     *
     * @param width the width from eaves to eaves, level, above zero
     * @param mainPitch the pitch of the main roof
     * @param dormerPitch the pitch of the dormer's slopes
     * @return the dormer
     * @throws ProblemsException if the width is zero, below zero or over 1 km, or the dormer would be
     */
    public static GabledDormer of(Length width, Pitch mainPitch, Pitch dormerPitch) {
        return new GabledDormer(
                width,
                Figure.given(Objects.requireNonNull(mainPitch, "mainPitch")),
                Figure.given(Objects.requireNonNull(dormerPitch, "dormerPitch")));
    }

    private Numbers compute(Recorder r) {
        Length half = r.use(WIDTH, width).dividedBy(2);
        Pitch p = r.use(MAIN_PITCH, mainPitch);
        Pitch q = r.use(DORMER_PITCH, dormerPitch);
        Length rise = r.record(RISE, q.riseOver(half), RISE_BY_WIDTH);
        Length back = r.record(BACK_RUN, p.runOver(rise), BACK_RUN_BY_RISE);
        double onPlan = StrictMath.hypot(half.toMetres(), back.toMetres());
        Length valley =
                r.record(VALLEY_LENGTH, Length.ofMetres(StrictMath.hypot(onPlan, rise.toMetres())), VALLEY_BY_SIDES);
        Pitch valleyPitch = r.record(
                VALLEY_PITCH,
                Pitch.from(Angle.ofRadians(StrictMath.atan2(rise.toMetres(), onPlan))),
                VALLEY_PITCH_BY_SIDES);
        return new Numbers(rise, back, valley, valleyPitch);
    }

    /** Returns the height of the dormer's ridge over its eaves. */
    public Length rise() {
        return numbers.rise;
    }

    /** Returns how much further back the ridge runs than the eaves, level. */
    public Length backRun() {
        return numbers.backRun;
    }

    /** Returns the length of each valley. */
    public Length valleyLength() {
        return numbers.valley;
    }

    /** Returns the pitch of each valley. */
    public Pitch valleyPitch() {
        return numbers.valleyPitch;
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof GabledDormer d
                && width.equals(d.width)
                && mainPitch.equals(d.mainPitch)
                && dormerPitch.equals(d.dormerPitch);
    }

    @Override
    public int hashCode() {
        return Objects.hash(width, mainPitch.value(), dormerPitch.value());
    }

    /** Returns for example {@code gabled dormer 1800 mm wide, valleys 1664.5 mm}, in full. */
    @Override
    public String toString() {
        return "gabled dormer " + width + " wide, valleys " + valleyLength();
    }
}
