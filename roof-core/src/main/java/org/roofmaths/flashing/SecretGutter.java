package org.roofmaths.flashing;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;

/**
 * The sheet of a secret gutter: a channel sunk beside a wall, hidden by the covering.
 *
 * <p>Girth {@code = (depth + covering + above the covering) + width + (depth + under the covering)}: up the wall, across the channel, up
 * its other side and under the covering. Its pieces lap by the pitch of the roof. A cover flashing or render stop hangs over its
 * upstand.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class SecretGutter extends Flashing {
    private static final long serialVersionUID = 1L;

    /** How high the top of the covering stands above the roof plane, square to the slope. */
    public static final Term<Length> COVERING =
            Term.of("covering over the roof plane beside the gutter", "gt", Length.class);

    private static final Formula GIRTH_BY_LEGS = Formula.of(
            GIRTH,
            SecretGutterDemand.DEPTH
                    .plus(COVERING)
                    .plus(SecretGutterDemand.ABOVE_COVERING)
                    .plus(SecretGutterDemand.WIDTH)
                    .plus(SecretGutterDemand.DEPTH)
                    .plus(SecretGutterDemand.UNDER_COVERING));

    private final SlopingRun run;
    private final Figure<Length> covering;
    private final SecretGutterDemand demand;

    private final SheetWork work;

    private SecretGutter(SlopingRun run, Figure<Length> covering, SecretGutterDemand demand) {
        this.run = run;
        this.covering = covering;
        this.demand = demand;
        run.requireLapShorterThan(demand.longestPiece(), demand.weatheringHeight(), demand.leastLap());
        work = compute(Recorder.off());
    }

    /**
     * Returns the sheet of a secret gutter.
     *
     * @param slopeLength the length along the slope, above zero
     * @param pitch the pitch of the roof
     * @param covering how high the top of the covering stands above the roof plane, square to the slope; zero or more
     * @param demand what is asked of the gutter
     * @return the gutter
     * @throws org.roofmaths.problem.ProblemsException with every size that is wrong
     */
    public static SecretGutter along(
            Figure<Length> slopeLength, Figure<Pitch> pitch, Figure<Length> covering, SecretGutterDemand demand) {
        Problems problems = Problems.none();
        Sizes.requireNotNegative(problems, COVERING, covering);
        problems.throwIfErrors();
        return new SecretGutter(SlopingRun.of(slopeLength, pitch), covering, Objects.requireNonNull(demand, "demand"));
    }

    /**
     * Returns the sheet of a secret gutter.
     *
     * @param slopeLength the length along the slope, above zero
     * @param pitch the pitch of the roof
     * @param covering how high the top of the covering stands above the roof plane, square to the slope; zero or more
     * @param demand what is asked of the gutter
     * @return the gutter
     * @throws org.roofmaths.problem.ProblemsException with every size that is wrong
     */
    public static SecretGutter along(Length slopeLength, Pitch pitch, Length covering, SecretGutterDemand demand) {
        return along(Given.of(slopeLength), Given.of(pitch), Given.of(covering), demand);
    }

    /**
     * Returns what {@link #along(Length, Pitch, Length, SecretGutterDemand)} would, or its problems.
     *
     * @param slopeLength the length along the slope
     * @param pitch the pitch of the roof
     * @param covering how high the top of the covering stands above the roof plane
     * @param demand what is asked of the gutter
     * @return the gutter, or the problems
     */
    public static Attempt<SecretGutter> attemptAlong(
            Length slopeLength, Pitch pitch, Length covering, SecretGutterDemand demand) {
        return Attempt.call(() -> along(slopeLength, pitch, covering, demand));
    }

    /**
     * Returns the same gutter with metal beyond its ends: into the eaves gutter at the foot, up the wall at the head.
     *
     * @param atFoot beyond the lower end, zero or more
     * @param atHead beyond the upper end, zero or more
     * @return the gutter with it
     * @throws org.roofmaths.problem.ProblemsException if one of them is below zero
     */
    public SecretGutter extendedBy(Length atFoot, Length atHead) {
        return new SecretGutter(run.extendedBy(Given.of(atFoot), Given.of(atHead)), covering, demand);
    }

    @Override
    SheetWork compute(Recorder r) {
        Length along = run.metalRun(r);
        Length lap = run.lap(r, demand.weatheringHeight(), demand.leastLap());
        Length depth = r.use(SecretGutterDemand.DEPTH, demand.depth());
        Length unit = r.use(COVERING, covering);
        Length above = r.use(SecretGutterDemand.ABOVE_COVERING, demand.aboveCovering());
        Length width = r.use(SecretGutterDemand.WIDTH, demand.width());
        Length under = r.use(SecretGutterDemand.UNDER_COVERING, demand.underCovering());
        Length girth = r.record(
                GIRTH, depth.times(2L).plus(unit).plus(above).plus(width).plus(under), GIRTH_BY_LEGS);
        return SheetWork.upTheSlope(r, name(), along, girth, lap, demand.longestPiece(), demand.sheet(), List.of());
    }

    @Override
    SheetWork work() {
        return work;
    }

    @Override
    public String name() {
        return "secret gutter";
    }

    @Override
    public MetalSheet sheet() {
        return demand.sheet();
    }

    @Override
    public List<Leg> legs() {
        Length depth = demand.depth().value();
        return List.of(
                new Leg("under the covering", demand.underCovering().value()),
                new Leg("side of the channel", depth),
                new Leg("sole", demand.width().value()),
                new Leg(
                        "up the wall",
                        depth.plus(covering.value()).plus(demand.aboveCovering().value())));
    }

    /** Returns how far each piece laps the one below, along the slope. */
    public Length lap() {
        return run.lap(Recorder.off(), demand.weatheringHeight(), demand.leastLap());
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SecretGutter g
                && run.equals(g.run)
                && covering.equals(g.covering)
                && demand.equals(g.demand);
    }

    @Override
    public int hashCode() {
        return Objects.hash(run, covering, demand);
    }
}
