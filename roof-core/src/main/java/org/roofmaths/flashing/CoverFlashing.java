package org.roofmaths.flashing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Length;
import org.roofmaths.working.Assumed;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;

/**
 * A cover flashing: let into the wall, down it, and out over the covering.
 *
 * <p>Girth: {@code tuck + upstand + cover}. Along a level line under brickwork the metal goes into the lowest bed joint that leaves
 * the least upstand, so the upstand got is usually more than the one asked. In stone or render a straight chase is cut at the upstand
 * asked; beside a slope the chase follows the slope at the water line.
 *
 * <p>For example, a line of 5.2 m whose covering meets the wall at 4281 mm, joints every 75 mm from 4200 mm, upstand 75 mm, cover
 * 150 mm, tuck 25 mm: the joint at 4425 mm, an upstand of 144 mm, a girth of 319 mm.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class CoverFlashing extends Flashing {
    private static final long serialVersionUID = 1L;

    /** The height of the bed joint that takes the metal. */
    public static final Term<Length> JOINT = Term.of("bed joint of the flashing", "zj", Length.class);
    /** The height of metal from the covering to the joint. */
    public static final Term<Length> UPSTAND = Term.of("flashing upstand got", "ug", Length.class);
    /** The least height of the joint. */
    public static final Term<Length> LEAST_JOINT = Term.of("least height of the flashing's joint", "zl", Length.class);

    private static final Formula LEAST_JOINT_BY_UPSTAND =
            Formula.of(LEAST_JOINT, CoveringLine.START_HEIGHT.plus(FlashingDemand.LEAST_UPSTAND));
    private static final Formula JOINT_BY_DATUM = Formula.of(
            JOINT,
            BedJoints.DATUM.plus(
                    BedJoints.COURSE.times(LEAST_JOINT.minus(BedJoints.DATUM).timesToCover(BedJoints.COURSE))));
    private static final Formula UPSTAND_BY_JOINT = Formula.of(UPSTAND, JOINT.minus(CoveringLine.START_HEIGHT));
    private static final Formula GIRTH_BY_JOINT =
            Formula.of(GIRTH, FlashingDemand.TUCK.plus(UPSTAND).plus(FlashingDemand.COVER));
    private static final Formula GIRTH_IN_CHASE = Formula.of(
            GIRTH, FlashingDemand.TUCK.plus(FlashingDemand.LEAST_UPSTAND).plus(FlashingDemand.COVER));
    private static final Formula GIRTH_IN_SLOPING_CHASE = Formula.of(
            GIRTH, FlashingDemand.TUCK.plus(FlashingDemand.WATER_LINE).plus(FlashingDemand.COVER));

    private static final Figure<Length> AT_THE_TOP =
            Assumed.of(Length.ZERO, "the metal may go in level with the top of the upstand", "raise the upstand");

    private final String name;
    private final CoveringLine line;
    private final @Nullable BedJoints joints; // null in stone or render
    private final Figure<Length> leastUpstand;
    private final Figure<Length> cover;
    private final FlashingDemand demand;

    private final Length upstand;
    private final @Nullable Integer wedges;
    private final @Nullable Integer clips;
    private final SheetWork work;

    CoverFlashing(
            String name,
            CoveringLine line,
            @Nullable BedJoints joints,
            Figure<Length> leastUpstand,
            Figure<Length> cover,
            FlashingDemand demand) {
        this.name = name;
        this.line = line;
        this.joints = joints;
        this.leastUpstand = leastUpstand;
        this.cover = cover;
        this.demand = demand;
        upstand = upstand(Recorder.off());
        work = compute(Recorder.off());
        Length run = line.metalRun(Recorder.off());
        wedges = demand.wedgeSpacing()
                .map(spacing -> SheetWork.wedgesAlong(Recorder.off(), run, spacing))
                .orElse(null);
        clips = demand.clipSpacing()
                .map(spacing -> SheetWork.clipsAlong(Recorder.off(), run, spacing))
                .orElse(null);
    }

    /**
     * Returns the flashing along a level line of brickwork, in the lowest bed joint that leaves the least upstand.
     *
     * <p>If the line has a height to stay under and the joint lies above it, {@link #problems()} says by how much and what would mend
     * it.
     *
     * @param line where the covering meets the wall; level
     * @param joints the bed joints of the wall
     * @param demand what is asked of the flashing
     * @return the flashing
     * @throws ProblemsException if the line slopes
     */
    public static CoverFlashing along(CoveringLine line, BedJoints joints, FlashingDemand demand) {
        Objects.requireNonNull(joints, "joints");
        if (!line.isLevel()) {
            throw new ProblemsException(List.of(Problem.error(
                    CoveringLine.WRONG_LINE,
                    "line",
                    line,
                    "be level; beside a slope brickwork takes a step flashing")));
        }
        return overCovering(line, joints, demand);
    }

    /**
     * Returns what {@link #along(CoveringLine, BedJoints, FlashingDemand)} would, or its problems.
     *
     * @param line where the covering meets the wall; level
     * @param joints the bed joints of the wall
     * @param demand what is asked of the flashing
     * @return the flashing with its findings, or the problems
     */
    public static Attempt<CoverFlashing> attemptAlong(CoveringLine line, BedJoints joints, FlashingDemand demand) {
        return withFindings(Attempt.call(() -> along(line, joints, demand)));
    }

    /**
     * Returns the flashing along a line of stone or render, in a straight chase. Along a level line the chase lies at the least
     * upstand; beside a slope it follows the slope at the water line.
     *
     * @param line where the covering meets the wall
     * @param demand what is asked of the flashing; beside a slope it must hold a water line
     * @return the flashing
     * @throws ProblemsException if the line slopes and the demand holds no water line
     */
    public static CoverFlashing inChase(CoveringLine line, FlashingDemand demand) {
        if (!line.isLevel()) {
            Sizes.requireWaterLine(demand);
        }
        return overCovering(line, null, demand);
    }

    private static CoverFlashing overCovering(CoveringLine line, @Nullable BedJoints joints, FlashingDemand demand) {
        return new CoverFlashing("cover flashing", line, joints, demand.upstand(), demand.cover(), demand);
    }

    /**
     * Returns the flashing that hangs over the upstand of another sheet, such as a back gutter, and laps down over it. It goes into the
     * lowest bed joint at or above the upstand.
     *
     * @param upstand the top of the upstand; level
     * @param joints the bed joints of the wall
     * @param lapDown how far it laps down over the upstand, above zero
     * @param demand the sheet, tuck, lap and longest piece; its upstand and cover are not used
     * @return the flashing
     * @throws ProblemsException if the line slopes or the lap is not above zero
     */
    public static CoverFlashing overUpstand(
            CoveringLine upstand, BedJoints joints, Figure<Length> lapDown, FlashingDemand demand) {
        Objects.requireNonNull(joints, "joints");
        Problems problems = Problems.none();
        if (!upstand.isLevel()) {
            problems.add(Problem.error(CoveringLine.WRONG_LINE, "line", upstand, "be level"));
        }
        problems.require(
                lapDown.value().isPositive(),
                FlashingDemand.WRONG_SIZE,
                "lap down over the upstand",
                lapDown.value(),
                "be above 0 mm");
        problems.throwIfErrors();
        return overUpstandIn(upstand, joints, lapDown, demand);
    }

    static CoverFlashing overUpstandIn(
            CoveringLine upstand, @Nullable BedJoints joints, Figure<Length> lapDown, FlashingDemand demand) {
        return new CoverFlashing("cover flashing over the upstand", upstand, joints, AT_THE_TOP, lapDown, demand);
    }

    /**
     * Returns what {@link #inChase(CoveringLine, FlashingDemand)} would, or its problems.
     *
     * @param line where the covering meets the wall
     * @param demand what is asked of the flashing
     * @return the flashing with its findings, or the problems
     */
    public static Attempt<CoverFlashing> attemptInChase(CoveringLine line, FlashingDemand demand) {
        return withFindings(Attempt.call(() -> inChase(line, demand)));
    }

    /**
     * Returns the flashing of a bare length, with exactly the least upstand.
     *
     * @param length the length along the wall, above zero
     * @param demand what is asked of the flashing
     * @return the flashing
     * @throws ProblemsException if the length is not above zero
     */
    public static CoverFlashing along(Length length, FlashingDemand demand) {
        return inChase(CoveringLine.level(length, Length.ZERO), demand);
    }

    private static Attempt<CoverFlashing> withFindings(Attempt<CoverFlashing> attempt) {
        return attempt.hasValue()
                ? Attempt.of(attempt.orThrow(), attempt.orThrow().problems())
                : attempt;
    }

    private Length upstand(Recorder r) {
        if (joints == null) {
            return line.isLevel()
                    ? r.use(FlashingDemand.LEAST_UPSTAND, leastUpstand)
                    : r.use(FlashingDemand.WATER_LINE, demand.waterLine().orElseThrow());
        }
        Length covering = line.startHeight(r);
        Length least = r.use(FlashingDemand.LEAST_UPSTAND, leastUpstand);
        Length leastJoint = r.record(LEAST_JOINT, covering.plus(least), LEAST_JOINT_BY_UPSTAND);
        r.use(BedJoints.DATUM, joints.datum());
        r.use(BedJoints.COURSE, joints.course());
        Length joint = r.record(JOINT, joints.atOrAbove(leastJoint), JOINT_BY_DATUM);
        return r.record(UPSTAND, joint.minus(covering), UPSTAND_BY_JOINT);
    }

    @Override
    SheetWork compute(Recorder r) {
        Length run = line.metalRun(r);
        Length height = upstand(r);
        Length tuck = r.use(FlashingDemand.TUCK, demand.tuck());
        Length over = r.use(FlashingDemand.COVER, cover);
        Length girth = r.record(GIRTH, tuck.plus(height).plus(over), girthFormula());
        demand.wedgeSpacing().ifPresent(spacing -> SheetWork.wedgesAlong(r, run, spacing));
        demand.clipSpacing().ifPresent(spacing -> SheetWork.clipsAlong(r, run, spacing));
        return SheetWork.along(
                r, name(), run, girth, demand.sideLap(), demand.longestPiece(), demand.sheet(), findings(height));
    }

    private Formula girthFormula() {
        if (joints != null) {
            return GIRTH_BY_JOINT;
        }
        return line.isLevel() ? GIRTH_IN_CHASE : GIRTH_IN_SLOPING_CHASE;
    }

    private List<Problem> findings(Length height) {
        List<Problem> found = new ArrayList<>();
        if (line.isLevel()) {
            line.limit()
                    .filter(limit -> !topOf(height).meetsGreatest(limit))
                    .ifPresent(limit -> found.add(aboveLimit(topOf(height), limit)));
        }
        demand.greatestUpstand()
                .filter(greatest -> !height.meetsGreatest(greatest.value()))
                .ifPresent(greatest -> found.add(Problem.notice(
                        HIGH_UPSTAND,
                        name(),
                        height,
                        "the upstand of the " + name() + " is " + height + ", above " + greatest.value()
                                + "; metal standing that high is better held or supported behind")));
        return found;
    }

    private Length topOf(Length height) {
        return line.startHeight().plus(height);
    }

    private Problem aboveLimit(Length top, Length limit) {
        Length over = top.minus(limit);
        if (joints == null) {
            return Problem.finding(
                    ABOVE_LIMIT,
                    name(),
                    top,
                    limit,
                    "the chase of the " + name() + " would lie at " + top + ", " + over + " above the limit of "
                            + limit,
                    List.of(Mend.of("covering at the wall", over + " lower", over.negated(), "chase at " + limit)));
        }
        Length highest = joints.atOrBelow(limit);
        Length leastJoint = line.startHeight().plus(leastUpstand.value());
        Length lower = leastJoint.minus(highest);
        Problem finding = Problem.finding(
                ABOVE_LIMIT,
                name(),
                top,
                limit,
                "the bed joint of the " + name() + " would lie at " + top + ", " + over + " above the limit of "
                        + limit,
                List.of(Mend.of("covering at the wall", lower + " lower", lower.negated(), "bed joint at " + highest)));
        return leastJoint.meetsGreatest(limit)
                ? finding.withMend(Mend.of(
                        "bed joint", "a straight chase cut at " + leastJoint, "upstand of " + leastUpstand.value()))
                : finding;
    }

    @Override
    SheetWork work() {
        return work;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public MetalSheet sheet() {
        return demand.sheet();
    }

    @Override
    public List<Leg> legs() {
        return List.of(
                new Leg("cover", cover.value()),
                new Leg("upstand", upstand),
                new Leg("tuck", demand.tuck().value()));
    }

    /** Returns the line that it runs along. */
    public CoveringLine line() {
        return line;
    }

    /** Returns the height of metal above the covering: plumb along a level line, square to the slope beside a sloping one. */
    public Length upstand() {
        return upstand;
    }

    /** Returns the height of the bed joint that takes the metal; empty in stone or render. */
    public Optional<Length> joint() {
        return joints == null ? Optional.empty() : Optional.of(topOf(upstand));
    }

    /** Returns how many wedges hold it; empty if the demand names no spacing. */
    public OptionalInt wedges() {
        return wedges == null ? OptionalInt.empty() : OptionalInt.of(wedges);
    }

    /** Returns how many clips hold its free edge; empty if the demand names no spacing. */
    public OptionalInt clips() {
        return clips == null ? OptionalInt.empty() : OptionalInt.of(clips);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof CoverFlashing f
                && name.equals(f.name)
                && line.equals(f.line)
                && Objects.equals(joints, f.joints)
                && leastUpstand.equals(f.leastUpstand)
                && cover.equals(f.cover)
                && demand.equals(f.demand);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, line, joints, demand);
    }
}
