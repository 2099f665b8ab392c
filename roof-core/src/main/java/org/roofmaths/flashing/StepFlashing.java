package org.roofmaths.flashing;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;

/**
 * A flashing beside a slope in brickwork: it steps up from bed joint to bed joint, and covers the covering or the soakers under it.
 *
 * <p>The metal must reach above the water line, which runs parallel to the covering. Over each stretch it goes into the lowest joint
 * above the water line, so with {@code z} the height of the water line over a joint and {@code c} the course:
 *
 * <ul>
 *   <li>{@code steps = whole number up from (z at the end ÷ c) − whole number down from (z at the start ÷ c)}: from 30 mm to 1475 mm
 *       20 steps, from 60 mm to 1505 mm 21;
 *   <li>a step ends where the water line reaches its joint: {@code (c × k − z at the start) ÷ tan(pitch)} from the start, level;
 *   <li>wall leg {@code = water line + (course + tuck) × cos(pitch)}: 146.9 mm at 35° with 65, 75 and 25 mm;
 *   <li>girth {@code = cover + wall leg} for step-and-cover; the wall leg alone over soakers.
 * </ul>
 *
 * <p>Trays for a cavity wall: a stepped tray for each step, and a catch tray with stop end and weep at the foot (common practice).
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class StepFlashing extends Flashing {
    private static final long serialVersionUID = 1L;

    /** The height of the water line at the lower end, over the bed-joint datum. */
    public static final Term<Length> WATER_START =
            Term.of("water line at the start, over the bed joint", "zs", Length.class);
    /** The height of the water line at the upper end, over the bed-joint datum. */
    public static final Term<Length> WATER_END =
            Term.of("water line at the end, over the bed joint", "ze", Length.class);
    /** How many steps. */
    public static final Term<Integer> STEPS = Term.of("steps", "ns", Integer.class);
    /** How far a whole step goes along the slope. */
    public static final Term<Length> STEP_SPACING = Term.of("step spacing along the slope", "s", Length.class);
    /** How far a whole step goes on the level. */
    public static final Term<Length> STEP_RUN = Term.of("level length of a step", "rs", Length.class);
    /** The width of metal on the wall, square to the slope. */
    public static final Term<Length> WALL_LEG = Term.of("wall leg", "g", Length.class);
    /** Where a step ends, level from the lower end of the line. */
    public static final Term<Length> CORNER = Term.of("corner of the step", "x", Length.class);
    /** Where a step ends, along the slope from the lower end of the line. */
    public static final Term<Length> CORNER_ALONG_SLOPE =
            Term.of("corner of the step along the slope", "xs", Length.class);
    /** The height of the bed joint of a step. */
    public static final Term<Length> STEP_JOINT = Term.of("bed joint of the step", "zk", Length.class);
    /** Which step, counted from the lower end. */
    public static final Term<Integer> STEP_NUMBER = Term.of("number of the step", "i", Integer.class);
    /** The height of the bed joint of the highest step. */
    public static final Term<Length> TOP_JOINT = Term.of("bed joint of the top step", "zt", Length.class);
    /** How far the plumb cut at the upper end reaches past the line, along the slope. */
    public static final Term<Length> PAST_END = Term.of("plumb cut past the end, along the slope", "xe", Length.class);
    /** How many cavity trays. */
    public static final Term<Integer> TRAYS = Term.of("cavity trays", "nt", Integer.class);

    private static final Formula PLUMB_CUT_AT_END = Formula.of(
            PAST_END,
            TOP_JOINT
                    .minus(BedJoints.DATUM)
                    .minus(WATER_END)
                    .plus(FlashingDemand.WATER_LINE.over(CoveringLine.PITCH.cos()))
                    .plus(FlashingDemand.TUCK)
                    .times(CoveringLine.PITCH.sin()));
    private static final Formula WATER_AT_START = Formula.of(
            WATER_START,
            CoveringLine.START_HEIGHT
                    .plus(FlashingDemand.WATER_LINE.over(CoveringLine.PITCH.cos()))
                    .minus(BedJoints.DATUM));
    private static final Formula WATER_AT_END =
            Formula.of(WATER_END, WATER_START.plus(CoveringLine.RUN.times(CoveringLine.PITCH.tan())));
    private static final Formula STEPS_BETWEEN =
            Formula.of(STEPS, WATER_END.timesToCover(BedJoints.COURSE).minus(WATER_START.timesIn(BedJoints.COURSE)));
    private static final Formula SPACING_BY_PITCH =
            Formula.of(STEP_SPACING, BedJoints.COURSE.over(CoveringLine.PITCH.sin()));
    private static final Formula RUN_BY_PITCH = Formula.of(STEP_RUN, BedJoints.COURSE.over(CoveringLine.PITCH.tan()));
    private static final Formula LEG_BY_PITCH = Formula.of(
            WALL_LEG,
            FlashingDemand.WATER_LINE.plus(
                    BedJoints.COURSE.plus(FlashingDemand.TUCK).times(CoveringLine.PITCH.cos())));
    private static final Formula GIRTH_WITH_COVER = Formula.of(GIRTH, FlashingDemand.COVER.plus(WALL_LEG));
    private static final Formula GIRTH_OVER_SOAKERS = Formula.of(GIRTH, WALL_LEG);
    private static final Formula JOINT_BY_NUMBER = Formula.of(
            STEP_JOINT,
            BedJoints.DATUM.plus(
                    WATER_START.timesIn(BedJoints.COURSE).plus(STEP_NUMBER).times(BedJoints.COURSE)));
    private static final Formula CORNER_BY_JOINT = Formula.of(
            CORNER,
            STEP_JOINT
                    .minus(BedJoints.DATUM)
                    .minus(WATER_START)
                    .over(CoveringLine.PITCH.tan())
                    .least(CoveringLine.RUN));
    private static final Formula CORNER_ON_SLOPE =
            Formula.of(CORNER_ALONG_SLOPE, CORNER.over(CoveringLine.PITCH.cos()));
    private static final Formula ONE_WEDGE_A_STEP = Formula.of(WEDGES, STEPS);
    private static final Formula WEDGES_BY_SPACING = Formula.of(
            WEDGES,
            STEPS.times(STEP_RUN.timesToCover(FlashingDemand.WEDGE_SPACING).greatest(Expression.number(1))));
    private static final Formula ONE_TRAY_A_STEP = Formula.of(TRAYS, STEPS.plus(1));

    /** Whether the metal covers the covering itself, or soakers do. */
    private enum Kind {
        STEP_AND_COVER("step-and-cover flashing"),
        OVER_SOAKERS("step flashing over soakers");

        private final String words;

        Kind(String words) {
            this.words = words;
        }
    }

    private final Kind flashingKind;
    private final CoveringLine line;
    private final BedJoints joints;
    private final FlashingDemand demand;

    private final Stepping stepping;
    private final SheetWork work;

    /** What is computed about the steps before the metal is cut. */
    private record Stepping(
            List<Step> steps,
            Length waterAtEnd,
            Length pastEnd,
            Length spacing,
            Length run,
            Length wallLeg,
            int wedges,
            List<Tray> trays)
            implements Serializable {}

    private StepFlashing(Kind flashingKind, CoveringLine line, BedJoints joints, FlashingDemand demand) {
        this.flashingKind = flashingKind;
        this.line = line;
        this.joints = joints;
        this.demand = demand;
        stepping = stepping(Recorder.off());
        work = compute(Recorder.off());
    }

    /**
     * Returns the step-and-cover flashing beside a slope: one sheet that steps up the wall and covers the covering. For single-lap
     * coverings with a profile.
     *
     * @param line where the covering meets the wall; sloping
     * @param joints the bed joints of the wall, over the same datum
     * @param demand what is asked of the flashing; it must hold a water line
     * @return the flashing
     * @throws ProblemsException if the line is level or the demand holds no water line
     */
    public static StepFlashing along(CoveringLine line, BedJoints joints, FlashingDemand demand) {
        return of(Kind.STEP_AND_COVER, line, joints, demand);
    }

    /**
     * Returns what {@link #along(CoveringLine, BedJoints, FlashingDemand)} would, or its problems.
     *
     * @param line where the covering meets the wall; sloping
     * @param joints the bed joints of the wall, over the same datum
     * @param demand what is asked of the flashing
     * @return the flashing with its findings, or the problems
     */
    public static Attempt<StepFlashing> attemptAlong(CoveringLine line, BedJoints joints, FlashingDemand demand) {
        return withFindings(Attempt.call(() -> along(line, joints, demand)));
    }

    /**
     * Returns the step flashing that hangs over soakers: it steps up the wall and covers the upstands of the soakers, not the
     * covering. For plain tiles and slates.
     *
     * @param line where the covering meets the wall; sloping
     * @param joints the bed joints of the wall, over the same datum
     * @param demand what is asked of the flashing; it must hold a water line
     * @return the flashing
     * @throws ProblemsException if the line is level or the demand holds no water line
     */
    public static StepFlashing overSoakers(CoveringLine line, BedJoints joints, FlashingDemand demand) {
        return of(Kind.OVER_SOAKERS, line, joints, demand);
    }

    /**
     * Returns what {@link #overSoakers(CoveringLine, BedJoints, FlashingDemand)} would, or its problems.
     *
     * @param line where the covering meets the wall; sloping
     * @param joints the bed joints of the wall, over the same datum
     * @param demand what is asked of the flashing
     * @return the flashing with its findings, or the problems
     */
    public static Attempt<StepFlashing> attemptOverSoakers(CoveringLine line, BedJoints joints, FlashingDemand demand) {
        return withFindings(Attempt.call(() -> overSoakers(line, joints, demand)));
    }

    private static StepFlashing of(Kind kind, CoveringLine line, BedJoints joints, FlashingDemand demand) {
        Objects.requireNonNull(joints, "joints");
        if (line.isLevel()) {
            throw new ProblemsException(List.of(Problem.error(
                    CoveringLine.WRONG_LINE, "line", line, "slope; a level line takes a cover flashing")));
        }
        Sizes.requireWaterLine(demand);
        return new StepFlashing(kind, line, joints, demand);
    }

    private static Attempt<StepFlashing> withFindings(Attempt<StepFlashing> attempt) {
        return attempt.hasValue()
                ? Attempt.of(attempt.orThrow(), attempt.orThrow().problems())
                : attempt;
    }

    private Stepping stepping(Recorder r) {
        Pitch pitch = r.use(CoveringLine.PITCH, line.pitch().orElseThrow());
        double tan = pitch.tan();
        double cos = pitch.cos();
        Length run = r.use(CoveringLine.RUN, line.run());
        Length covering = line.startHeight(r);
        Length water = r.use(FlashingDemand.WATER_LINE, demand.waterLine().orElseThrow());
        Length datum = r.use(BedJoints.DATUM, joints.datum());
        Length course = r.use(BedJoints.COURSE, joints.course());
        Length tuck = r.use(FlashingDemand.TUCK, demand.tuck());

        Length atStart = r.record(
                WATER_START, covering.plus(Length.ofMetres(water.toSi() / cos)).minus(datum), WATER_AT_START);
        Length atEnd = r.record(WATER_END, atStart.plus(Length.ofMetres(run.toSi() * tan)), WATER_AT_END);
        int below = Sizes.timesIn(atStart, course);
        int count = r.record(STEPS, Sizes.toCover(atEnd, course) - below, STEPS_BETWEEN);
        Length spacing = r.record(STEP_SPACING, Length.ofMetres(course.toSi() / pitch.sin()), SPACING_BY_PITCH);
        Length level = r.record(STEP_RUN, Length.ofMetres(course.toSi() / tan), RUN_BY_PITCH);
        Length leg =
                r.record(WALL_LEG, water.plus(Length.ofMetres(course.plus(tuck).toSi() * cos)), LEG_BY_PITCH);

        List<Step> steps = new ArrayList<>();
        List<Tray> trays = new ArrayList<>();
        Length from = Length.ZERO;
        for (int i = 1; i <= count; i++) {
            Recorder at = r.isOn() ? r.at("step " + i) : r;
            at.use(STEP_NUMBER, Given.of(i));
            Length joint = at.record(STEP_JOINT, joints.joint(below + i), JOINT_BY_NUMBER);
            Length corner = at.record(
                    CORNER,
                    Length.ofMetres(joint.minus(datum).minus(atStart).toSi() / tan)
                            .min(run),
                    CORNER_BY_JOINT);
            Length onSlope = at.record(CORNER_ALONG_SLOPE, Length.ofMetres(corner.toSi() / cos), CORNER_ON_SLOPE);
            steps.add(new Step(i, joint, from, corner, onSlope));
            trays.add(new Tray(TrayKind.STEPPED, joint, from, corner));
            from = corner;
        }
        trays.add(
                0,
                new Tray(
                        TrayKind.CATCH,
                        steps.get(0).joint(),
                        Length.ZERO,
                        steps.get(0).end()));
        r.record(TRAYS, count + 1, ONE_TRAY_A_STEP);
        Length top = steps.get(count - 1).joint();
        Length pastEnd = Length.ofMetres(top.minus(datum)
                        .minus(atEnd)
                        .plus(Length.ofMetres(water.toSi() / cos))
                        .plus(tuck)
                        .toSi()
                * pitch.sin());
        if (r.isOn()) {
            r.use(TOP_JOINT, top);
            r.record(PAST_END, pastEnd, PLUMB_CUT_AT_END);
        }
        return new Stepping(
                List.copyOf(steps), atEnd, pastEnd, spacing, level, leg, wedges(r, count, level), List.copyOf(trays));
    }

    private int wedges(Recorder r, int steps, Length stepRun) {
        if (demand.wedgeSpacing().isEmpty()) {
            return r.record(WEDGES, steps, ONE_WEDGE_A_STEP);
        }
        Length apart = r.use(FlashingDemand.WEDGE_SPACING, demand.wedgeSpacing().get());
        return r.record(WEDGES, steps * StrictMath.max(1, Sizes.toCover(stepRun, apart)), WEDGES_BY_SPACING);
    }

    @Override
    SheetWork compute(Recorder r) {
        Stepping steps = stepping(r);
        Length girth;
        if (flashingKind == Kind.STEP_AND_COVER) {
            Length cover = r.use(FlashingDemand.COVER, demand.cover());
            girth = r.record(GIRTH, cover.plus(steps.wallLeg()), GIRTH_WITH_COVER);
        } else {
            girth = r.record(GIRTH, steps.wallLeg(), GIRTH_OVER_SOAKERS);
        }
        Length run = line.metalRun(r);
        demand.clipSpacing().ifPresent(spacing -> SheetWork.clipsAlong(r, run, spacing));
        return SheetWork.along(
                r, name(), run, girth, demand.sideLap(), demand.longestPiece(), demand.sheet(), findings(steps));
    }

    private List<Problem> findings(Stepping found) {
        Length top = found.steps().get(found.steps().size() - 1).joint();
        return line.limit().filter(limit -> !top.meetsGreatest(limit)).stream()
                .map(limit -> {
                    Length highest = joints.atOrBelow(limit);
                    Length water = joints.datum().value().plus(found.waterAtEnd());
                    Length lower = water.minus(highest);
                    return Problem.finding(
                            ABOVE_LIMIT,
                            name(),
                            top,
                            limit,
                            "the top step of the " + name() + " would go into the bed joint at " + top + ", "
                                    + top.minus(limit) + " above the limit of " + limit,
                            List.of(Mend.of(
                                    "covering at the wall",
                                    lower + " lower",
                                    lower.negated(),
                                    "top bed joint at " + highest)));
                })
                .toList();
    }

    @Override
    SheetWork work() {
        return work;
    }

    @Override
    public String name() {
        return flashingKind.words;
    }

    @Override
    public MetalSheet sheet() {
        return demand.sheet();
    }

    @Override
    public List<Leg> legs() {
        Leg wall = new Leg("up the wall, with steps and tuck", stepping.wallLeg());
        return flashingKind == Kind.STEP_AND_COVER
                ? List.of(new Leg("cover", demand.cover().value()), wall)
                : List.of(wall);
    }

    /**
     * Returns the flat shape of a piece: square at its ends along the slope, plumb where the wall starts, stepped on top.
     *
     * @param piece one of {@link #pieces()}
     * @return its template
     * @throws IllegalArgumentException if it is not a piece of this flashing
     */
    @Override
    public PieceTemplate template(FlashingPiece piece) {
        requireOwn(piece);
        Length cover = flashingKind == Kind.STEP_AND_COVER ? demand.cover().value() : Length.ZERO;
        Length foot = line.extraAtStart().value();
        double start = piece.start().minus(foot).toSi();
        return new StepOutline(
                        line.pitch().orElseThrow().value(),
                        steps(),
                        line.startHeight(),
                        line.planLength(),
                        cover,
                        demand.tuck().value(),
                        foot,
                        line.extraAtEnd().value())
                .between(start, start + piece.length().toSi());
    }

    /** Returns the line that it runs along. */
    public CoveringLine line() {
        return line;
    }

    /** Returns the steps, from the lower end upwards: joints to rake out and corners to mark. */
    public List<Step> steps() {
        return stepping.steps();
    }

    /** Returns how many steps there are. */
    public int stepCount() {
        return stepping.steps().size();
    }

    /** Returns how far a whole step goes along the slope. */
    public Length stepSpacing() {
        return stepping.spacing();
    }

    /** Returns how far a whole step goes on the level. */
    public Length stepRun() {
        return stepping.run();
    }

    /** Returns the width of metal on the wall, square to the slope. */
    public Length wallLeg() {
        return stepping.wallLeg();
    }

    /**
     * Returns how far the plumb cut at the upper end reaches past the line, along the slope: metal to ask for beyond the end of the line
     * ({@link CoveringLine#extendedBy}) unless the top step is finished in another way.
     */
    public Length plumbCutPastEnd() {
        return stepping.pastEnd();
    }

    /** Returns how many wedges hold it: one a step, more where a step is longer than the greatest spacing of the demand. */
    public int wedges() {
        return stepping.wedges();
    }

    /**
     * Returns the cavity trays, from the foot upwards: the catch tray with stop end and weep in the lowest joint, then a stepped tray
     * for each step. For a wall with a cavity; a solid wall takes none.
     *
     * @return the trays, one more than the steps
     */
    public List<Tray> trays() {
        return stepping.trays();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof StepFlashing f
                && flashingKind == f.flashingKind
                && line.equals(f.line)
                && joints.equals(f.joints)
                && demand.equals(f.demand);
    }

    @Override
    public int hashCode() {
        return Objects.hash(flashingKind, line, joints, demand);
    }
}
