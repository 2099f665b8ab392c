package org.roofmaths.flashing;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;

/**
 * The gutter behind a stack: up its back, a flat sole, and up the slope under the covering.
 *
 * <p>Girth {@code = up the stack + sole + up the slope}; length: the width of the stack, and at each end the metal past the stack and
 * the metal of the corner. A cover flashing hangs over its upstand, so that it can move. It goes in before the course above it.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class BackGutter extends Flashing {
    private static final long serialVersionUID = 1L;

    /** The length of the welded seams, one up each corner. */
    public static final Term<Length> SEAMS = Term.of("welded seams of the back gutter", "wg", Length.class);

    private static final Formula GIRTH_BY_LEGS = Formula.of(
            GIRTH, BackGutterDemand.UP_THE_STACK.plus(BackGutterDemand.SOLE).plus(BackGutterDemand.UP_THE_SLOPE));
    private static final Formula SEAM_AT_EACH_CORNER = Formula.of(SEAMS, BackGutterDemand.UP_THE_STACK.times(2));

    private final CoveringLine line; // only its length counts
    private final Returns returns;
    private final BackGutterDemand demand;

    private final SheetWork work;

    private BackGutter(CoveringLine line, Returns returns, BackGutterDemand demand) {
        this.line = line;
        this.returns = returns;
        this.demand = demand;
        work = compute(Recorder.off());
    }

    /**
     * Returns the gutter behind a stack.
     *
     * @param width the width of the stack across the slope, above zero
     * @param returns how the sheet goes past the corners
     * @param demand what is asked of the gutter
     * @return the gutter
     * @throws org.roofmaths.problem.ProblemsException if the width is not above zero
     */
    public static BackGutter behind(Figure<Length> width, Returns returns, BackGutterDemand demand) {
        CoveringLine back = CoveringLine.level(width, Given.of(Length.ZERO));
        return new BackGutter(
                back.extendedBy(returns.atStart(), returns.atEnd()), returns, Objects.requireNonNull(demand, "demand"));
    }

    /**
     * Returns the gutter behind a stack.
     *
     * @param width the width of the stack across the slope, above zero
     * @param returns how the sheet goes past the corners
     * @param demand what is asked of the gutter
     * @return the gutter
     * @throws org.roofmaths.problem.ProblemsException if the width is not above zero
     */
    public static BackGutter behind(Length width, Returns returns, BackGutterDemand demand) {
        return behind(Given.of(width), returns, demand);
    }

    @Override
    SheetWork compute(Recorder r) {
        Length run = line.metalRun(r);
        Length up = r.use(BackGutterDemand.UP_THE_STACK, demand.upTheStack());
        Length sole = r.use(BackGutterDemand.SOLE, demand.sole());
        Length slope = r.use(BackGutterDemand.UP_THE_SLOPE, demand.upTheSlope());
        Length girth = r.record(GIRTH, up.plus(sole).plus(slope), GIRTH_BY_LEGS);
        if (returns.corners().kind() == CornerKind.WELDED) {
            r.record(SEAMS, up.times(2L), SEAM_AT_EACH_CORNER);
        }
        return SheetWork.along(
                r, name(), run, girth, demand.sideLap(), demand.longestPiece(), demand.sheet(), List.of());
    }

    @Override
    SheetWork work() {
        return work;
    }

    @Override
    public String name() {
        return "back gutter";
    }

    @Override
    public MetalSheet sheet() {
        return demand.sheet();
    }

    @Override
    public List<Leg> legs() {
        return List.of(
                new Leg("up the slope", demand.upTheSlope().value()),
                new Leg("sole", demand.sole().value()),
                new Leg("up the stack", demand.upTheStack().value()));
    }

    /** Returns the length of the welded seams, one up each corner; zero if the corners are bossed. */
    public Length seams() {
        return returns.corners().kind() == CornerKind.WELDED
                ? demand.upTheStack().value().times(2L)
                : Length.ZERO;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BackGutter g
                && line.equals(g.line)
                && returns.equals(g.returns)
                && demand.equals(g.demand);
    }

    @Override
    public int hashCode() {
        return Objects.hash(line, returns, demand);
    }
}
