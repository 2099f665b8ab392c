package org.roofmaths.flashing;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Worked;
import org.roofmaths.working.Working;

/**
 * The sheet metal round a stack on four sides: apron in front, a flashing up each side, back gutter with its cover flashing behind.
 *
 * <p>Order of work: the apron when the courses reach it, soakers with each course, the back gutter before the course above it, the cover
 * flashings last.
 *
 * <p>The numbers of each part are in the working at the name of its place, such as
 * {@code working().at(Flashing.GIRTH.at("left side"))}. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class StackFlashings implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** A rule asks for a stack cricket behind a stack as wide as this one. */
    public static final ProblemCode CRICKET_ASKED = ProblemCode.of(
            "flashing.cricket-asked",
            "Frame a stack cricket behind the stack; its pieces are worked out by StackCricket.");

    private static final Formula TOP_OF_UPSTAND =
            Formula.of(CoveringLine.START_HEIGHT, Stack.BACK_HEIGHT.plus(BackGutterDemand.UP_THE_STACK));

    private final Stack stack;
    private final StackDemand demand;
    private final Apron apron;
    private final Flashing left;
    private final Flashing right;
    private final @Nullable Soakers soakers; // of one side
    private final BackGutter gutter;
    private final CoverFlashing backCover;

    private StackFlashings(Stack stack, @Nullable BedJoints joints, StackDemand demand, @Nullable Soakers soakers) {
        this.stack = stack;
        this.demand = demand;
        this.soakers = soakers;
        FlashingDemand walls = demand.walls();
        apron = joints == null
                ? Apron.inChase(stack.frontLine(), demand.apronReturns(), walls)
                : Apron.along(stack.frontLine(), joints, demand.apronReturns(), walls);
        CoveringLine side = stack.sideLine();
        if (demand.sideBeyondFront().isPresent() || demand.sideBeyondBack().isPresent()) {
            Figure<Length> none = Given.of(Length.ZERO);
            side = side.extendedBy(
                    demand.sideBeyondFront().orElse(none),
                    demand.sideBeyondBack().orElse(none));
        }
        left = side(side, joints, soakers != null, walls);
        right = left; // the two sides are mirror images, and a template turned over serves for both
        gutter = BackGutter.behind(stack.width(), demand.gutterReturns(), demand.gutter());
        Figure<Length> top = Worked.by(CoveringLine.START_HEIGHT, this::topOfUpstand);
        backCover =
                CoverFlashing.overUpstandIn(CoveringLine.level(stack.width(), top), joints, demand.lapDown(), walls);
    }

    private static Flashing side(
            CoveringLine line, @Nullable BedJoints joints, boolean hasSoakers, FlashingDemand demand) {
        if (joints == null) {
            return CoverFlashing.inChase(line, demand);
        }
        return hasSoakers ? StepFlashing.overSoakers(line, joints, demand) : StepFlashing.along(line, joints, demand);
    }

    private Length topOfUpstand(Recorder r) {
        Length back = stack.backHeight(r);
        Length up = r.use(BackGutterDemand.UP_THE_STACK, demand.gutter().upTheStack());
        return r.record(CoveringLine.START_HEIGHT, back.plus(up), TOP_OF_UPSTAND);
    }

    /**
     * Returns the flashings round a stack of brick in a single-lap covering: step-and-cover flashings up its sides.
     *
     * @param stack the stack
     * @param joints its bed joints, over the datum of the stack's heights
     * @param demand what is asked; its walls must hold a water line
     * @return the flashings
     * @throws org.roofmaths.problem.ProblemsException if the demand holds no water line
     */
    public static StackFlashings around(Stack stack, BedJoints joints, StackDemand demand) {
        return new StackFlashings(stack, Objects.requireNonNull(joints, "joints"), demand, null);
    }

    /**
     * Returns what {@link #around(Stack, BedJoints, StackDemand)} would, or its problems.
     *
     * @param stack the stack
     * @param joints its bed joints
     * @param demand what is asked
     * @return the flashings with their findings, or the problems
     */
    public static Attempt<StackFlashings> attemptAround(Stack stack, BedJoints joints, StackDemand demand) {
        Attempt<StackFlashings> attempt = Attempt.call(() -> around(stack, joints, demand));
        return attempt.hasValue()
                ? Attempt.of(attempt.orThrow(), attempt.orThrow().problems())
                : attempt;
    }

    /**
     * Returns the flashings round a stack of brick in a double-lap covering: soakers with step flashings over them up its sides.
     *
     * @param stack the stack
     * @param joints its bed joints, over the datum of the stack's heights
     * @param gauge the gauge of the covering, above zero
     * @param headlap the headlap of the covering, zero or more
     * @param demand what is asked; its walls must hold a water line
     * @param soakers what is asked of the soakers
     * @return the flashings
     * @throws org.roofmaths.problem.ProblemsException if the demand holds no water line or a size is wrong
     */
    public static StackFlashings aroundWithSoakers(
            Stack stack, BedJoints joints, Length gauge, Length headlap, StackDemand demand, SoakerDemand soakers) {
        Objects.requireNonNull(joints, "joints");
        Soakers oneSide = Soakers.of(
                Soakers.coursesBesideStack(stack.sideAlongSlope(), gauge), Given.of(gauge), Given.of(headlap), soakers);
        return new StackFlashings(stack, joints, demand, oneSide);
    }

    /**
     * Returns the flashings round a stack of stone or render, in straight chases.
     *
     * @param stack the stack
     * @param demand what is asked; its walls must hold a water line
     * @return the flashings
     * @throws org.roofmaths.problem.ProblemsException if the demand holds no water line
     */
    public static StackFlashings inChases(Stack stack, StackDemand demand) {
        return new StackFlashings(stack, null, demand, null);
    }

    /** Returns the stack. */
    public Stack stack() {
        return stack;
    }

    /** Returns the apron in front. */
    public Apron apron() {
        return apron;
    }

    /** Returns the flashing up the left side, as seen from outside looking up the slope. */
    public Flashing left() {
        return left;
    }

    /** Returns the flashing up the right side: the mirror image of the left. */
    public Flashing right() {
        return right;
    }

    /** Returns the soakers of one side; empty in a single-lap covering. */
    public Optional<Soakers> soakersOfOneSide() {
        return Optional.ofNullable(soakers);
    }

    /** Returns the gutter behind. */
    public BackGutter backGutter() {
        return gutter;
    }

    /** Returns the cover flashing over the upstand of the back gutter. */
    public CoverFlashing backCover() {
        return backCover;
    }

    /** Returns every part in the order of work, both sides and the soakers of both sides. */
    public List<Flashing> all() {
        List<Flashing> parts = new ArrayList<>(List.of(apron));
        if (soakers != null) {
            parts.add(soakers);
            parts.add(soakers);
        }
        parts.addAll(List.of(left, right, gutter, backCover));
        return List.copyOf(parts);
    }

    /** Returns what all the metal weighs: a figure for planning; whether it can be lifted is not assessed. */
    public Mass mass() {
        return all().stream().map(Flashing::mass).reduce(Mass.ZERO, Mass::plus);
    }

    /** Returns the findings and notices of every part, and whether a rule asks for a stack cricket. */
    public List<Problem> problems() {
        List<Problem> found = new ArrayList<>();
        demand.cricketAbove()
                .filter(limit -> !stack.width().value().meetsGreatest(limit.value()))
                .ifPresent(limit -> found.add(Problem.finding(
                        CRICKET_ASKED,
                        "stack",
                        stack.width().value(),
                        limit.value(),
                        "a stack " + stack.width().value() + " wide is above " + limit.value()
                                + ": a stack cricket is asked for behind it",
                        List.of(Mend.of("stack", "a stack cricket behind it", "water led round both sides")))));
        List.of(apron, left, gutter, backCover).forEach(part -> found.addAll(part.problems()));
        return List.copyOf(found);
    }

    @Override
    public Working working() {
        return Working.of(r -> {
            apron.compute(r.at("apron"));
            if (soakers != null) {
                soakers.compute(r.at("soakers of one side"));
            }
            left.compute(r.at("left side"));
            right.compute(r.at("right side"));
            gutter.compute(r.at("back gutter"));
            backCover.compute(r.at("back cover"));
        });
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof StackFlashings s && stack.equals(s.stack) && all().equals(s.all());
    }

    @Override
    public int hashCode() {
        return Objects.hash(stack, all());
    }

    /** Returns what to cut, a part a line, with its legs from the free edge. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(stack.toString());
        all().forEach(part -> text.append("\n  ").append(part).append("; ").append(legs(part)));
        return text.toString();
    }

    private static String legs(Flashing part) {
        return String.join(" + ", part.legs().stream().map(Leg::toString).toList());
    }
}
