package org.roofmaths.flashing;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.roof.RoofEdge;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.Recorder;

/**
 * The sheet over a ridge or hip, dressed over a roll with a wing down each slope.
 *
 * <p>Girth {@code = 2 × wing + metal over the roll}. On a ridge the pieces lap sideways; on a hip they lap by the pitch of the hip.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class LeadCapping extends Flashing {
    private static final long serialVersionUID = 1L;

    private static final Formula GIRTH_BY_WINGS =
            Formula.of(GIRTH, CappingDemand.WING.times(2).plus(CappingDemand.OVER_ROLL));

    private final @Nullable SlopingRun hip; // null over a ridge
    private final @Nullable CoveringLine ridge; // null over a hip
    private final CappingDemand demand;

    private final SheetWork work;

    private LeadCapping(@Nullable SlopingRun hip, @Nullable CoveringLine ridge, CappingDemand demand) {
        this.hip = hip;
        this.ridge = ridge;
        this.demand = demand;
        work = compute(Recorder.off());
    }

    /**
     * Returns the capping of a level ridge.
     *
     * @param length the length of the ridge, above zero
     * @param demand what is asked of the capping
     * @return the capping
     * @throws org.roofmaths.problem.ProblemsException if the length is not above zero
     */
    public static LeadCapping alongRidge(Length length, CappingDemand demand) {
        return new LeadCapping(null, CoveringLine.level(length, Length.ZERO), Objects.requireNonNull(demand, "demand"));
    }

    /**
     * Returns the capping of a ridge or hip of a roof, from end to end of its edge.
     *
     * @param edge a ridge or a hip
     * @param demand what is asked of the capping
     * @return the capping
     * @throws org.roofmaths.problem.ProblemsException if the edge is neither, or a hip so flat that a lap would be as long as the longest
     *     piece
     */
    public static LeadCapping along(RoofEdge edge, CappingDemand demand) {
        if (edge.kind() == EdgeKind.RIDGE && edge.slopeAngle().isZero()) {
            return new LeadCapping(
                    null,
                    CoveringLine.level(edge.trueLengthFigure(), Given.of(Length.ZERO)),
                    Objects.requireNonNull(demand));
        }
        SlopingRun run = SlopingRun.of(edge, EdgeKind.HIP);
        run.requireLapShorterThan(demand.longestPiece(), demand.weatheringHeight(), demand.leastLap());
        return new LeadCapping(run, null, demand);
    }

    /**
     * Returns the capping of a hip.
     *
     * @param length the true length of the hip, above zero
     * @param hipPitch the pitch of the hip line itself
     * @param demand what is asked of the capping
     * @return the capping
     * @throws org.roofmaths.problem.ProblemsException if the length is not above zero, or the hip is so flat that a lap would be as long
     *     as the longest piece
     */
    public static LeadCapping alongHip(Figure<Length> length, Figure<Pitch> hipPitch, CappingDemand demand) {
        SlopingRun run = SlopingRun.of(length, hipPitch);
        run.requireLapShorterThan(demand.longestPiece(), demand.weatheringHeight(), demand.leastLap());
        return new LeadCapping(run, null, demand);
    }

    /**
     * Returns the capping of a hip.
     *
     * @param length the true length of the hip, above zero
     * @param hipPitch the pitch of the hip line itself
     * @param demand what is asked of the capping
     * @return the capping
     * @throws org.roofmaths.problem.ProblemsException if the length is not above zero, or the hip is so flat that a lap would be as long
     *     as the longest piece
     */
    public static LeadCapping alongHip(Length length, Pitch hipPitch, CappingDemand demand) {
        return alongHip(Given.of(length), Given.of(hipPitch), demand);
    }

    @Override
    SheetWork compute(Recorder r) {
        Length wing = r.use(CappingDemand.WING, demand.wing());
        Length roll = r.use(CappingDemand.OVER_ROLL, demand.overRoll());
        Length girth = r.record(GIRTH, wing.times(2L).plus(roll), GIRTH_BY_WINGS);
        if (hip == null) {
            Length run = Objects.requireNonNull(ridge).metalRun(r);
            return SheetWork.along(
                    r, name(), run, girth, demand.sideLap(), demand.longestPiece(), demand.sheet(), List.of());
        }
        Length run = hip.metalRun(r);
        Length lap = hip.lap(r, demand.weatheringHeight(), demand.leastLap());
        return SheetWork.upTheSlope(r, name(), run, girth, lap, demand.longestPiece(), demand.sheet(), List.of());
    }

    @Override
    SheetWork work() {
        return work;
    }

    @Override
    public String name() {
        return hip == null ? "ridge capping" : "hip capping";
    }

    @Override
    public MetalSheet sheet() {
        return demand.sheet();
    }

    @Override
    public List<Leg> legs() {
        return List.of(
                new Leg("wing", demand.wing().value()),
                new Leg("over the roll", demand.overRoll().value()),
                new Leg("wing", demand.wing().value()));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LeadCapping c
                && Objects.equals(hip, c.hip)
                && Objects.equals(ridge, c.ridge)
                && demand.equals(c.demand);
    }

    @Override
    public int hashCode() {
        return Objects.hash(hip, ridge, demand);
    }
}
