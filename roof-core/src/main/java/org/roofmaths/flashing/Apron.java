package org.roofmaths.flashing;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Length;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;

/**
 * The apron in front of a stack: up the front face into a joint, out over the covering, and round both corners.
 *
 * <p>Girth as a cover flashing; the joint is the lowest one that leaves the least upstand. Length: the width of the stack, and at each
 * end the metal past the stack and the metal of the corner. For example, a stack 665 mm wide with 150 mm past it and welded corners of
 * 25 mm takes {@code 665 + 2 × (150 + 25)} = 1015 mm.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Apron extends Flashing {
    private static final long serialVersionUID = 1L;

    /** The length of the welded seams, one up each corner. */
    public static final Term<Length> SEAMS = Term.of("welded seams of the apron", "ws", Length.class);

    private static final Formula SEAM_AT_EACH_CORNER = Formula.of(SEAMS, CoverFlashing.UPSTAND.times(2));
    private static final Formula SEAM_IN_CHASE = Formula.of(SEAMS, FlashingDemand.LEAST_UPSTAND.times(2));

    private final CoveringLine line;
    private final @Nullable BedJoints joints; // null in stone or render
    private final Returns returns;
    private final FlashingDemand demand;

    private final CoverFlashing body;

    private Apron(CoveringLine line, @Nullable BedJoints joints, Returns returns, FlashingDemand demand) {
        this.line = line;
        this.joints = joints;
        this.returns = returns;
        this.demand = demand;
        body = new CoverFlashing(
                "apron",
                line.extendedBy(returns.atStart(), returns.atEnd()),
                joints,
                demand.upstand(),
                demand.cover(),
                demand);
    }

    /**
     * Returns the apron along the front of a stack of brick.
     *
     * @param line where the covering meets the front; level, without metal beyond its ends
     * @param joints the bed joints of the stack
     * @param returns how the sheet goes past the corners
     * @param demand what is asked of the flashing
     * @return the apron
     * @throws ProblemsException if the line slopes
     */
    public static Apron along(CoveringLine line, BedJoints joints, Returns returns, FlashingDemand demand) {
        return of(line, Objects.requireNonNull(joints, "joints"), returns, demand);
    }

    /**
     * Returns what {@link #along(CoveringLine, BedJoints, Returns, FlashingDemand)} would, or its problems.
     *
     * @param line where the covering meets the front; level, without metal beyond its ends
     * @param joints the bed joints of the stack
     * @param returns how the sheet goes past the corners
     * @param demand what is asked of the flashing
     * @return the apron with its findings, or the problems
     */
    public static Attempt<Apron> attemptAlong(
            CoveringLine line, BedJoints joints, Returns returns, FlashingDemand demand) {
        Attempt<Apron> attempt = Attempt.call(() -> along(line, joints, returns, demand));
        return attempt.hasValue()
                ? Attempt.of(attempt.orThrow(), attempt.orThrow().problems())
                : attempt;
    }

    /**
     * Returns the apron along the front of a stack of stone or render, in a straight chase at the least upstand.
     *
     * @param line where the covering meets the front; level, without metal beyond its ends
     * @param returns how the sheet goes past the corners
     * @param demand what is asked of the flashing
     * @return the apron
     * @throws ProblemsException if the line slopes
     */
    public static Apron inChase(CoveringLine line, Returns returns, FlashingDemand demand) {
        return of(line, null, returns, demand);
    }

    private static Apron of(CoveringLine line, @Nullable BedJoints joints, Returns returns, FlashingDemand demand) {
        if (!line.isLevel()) {
            throw new ProblemsException(List.of(
                    Problem.error(CoveringLine.WRONG_LINE, "line", line, "be level; an apron lies along the front")));
        }
        return new Apron(line, joints, returns, demand);
    }

    @Override
    SheetWork compute(Recorder r) {
        SheetWork work = body.compute(r);
        if (returns.corners().kind() == CornerKind.WELDED) {
            r.record(SEAMS, upstand().times(2L), joints == null ? SEAM_IN_CHASE : SEAM_AT_EACH_CORNER);
        }
        return work;
    }

    @Override
    SheetWork work() {
        return body.work();
    }

    @Override
    public String name() {
        return body.name();
    }

    @Override
    public MetalSheet sheet() {
        return demand.sheet();
    }

    @Override
    public List<Leg> legs() {
        return body.legs();
    }

    /** Returns the height of metal above the covering. */
    public Length upstand() {
        return body.upstand();
    }

    /** Returns the height of the bed joint that takes the metal; empty in stone or render. */
    public Optional<Length> joint() {
        return body.joint();
    }

    /** Returns the length of the welded seams, one up each corner; zero if the corners are bossed. */
    public Length seams() {
        return returns.corners().kind() == CornerKind.WELDED ? upstand().times(2L) : Length.ZERO;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Apron a
                && line.equals(a.line)
                && Objects.equals(joints, a.joints)
                && returns.equals(a.returns)
                && demand.equals(a.demand);
    }

    @Override
    public int hashCode() {
        return Objects.hash(line, joints, returns, demand);
    }
}
