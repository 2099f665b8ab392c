package org.roofmaths.flashing;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Attempt;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.roof.RoofEdge;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.Recorder;

/**
 * The sheet lining of an open valley.
 *
 * <p>Girth {@code = channel + 2 × lining beyond the channel}. Its pieces lap by the pitch of the VALLEY, which is flatter than both its
 * slopes: two slopes of 35° at a square corner make a valley of 26.3°, whose lap is {@code 75 ÷ sin(26.3°)} = 169 mm where the slopes
 * themselves would take 150 mm.
 *
 * <p>The lining goes in before the covering. A clear channel by rule is a least width; whether it carries the water is not worked out
 * here. A lining that ends on a lower slope stops there: take the length to that point and a lead saddle beside it.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class ValleyLining extends Flashing {
    private static final long serialVersionUID = 1L;

    private static final Formula GIRTH_BY_CHANNEL =
            Formula.of(GIRTH, ValleyDemand.CHANNEL.plus(ValleyDemand.BEYOND_CHANNEL.times(2)));

    private final SlopingRun run;
    private final ValleyDemand demand;

    private final SheetWork work;

    private ValleyLining(SlopingRun run, ValleyDemand demand) {
        this.run = run;
        this.demand = demand;
        run.requireLapShorterThan(demand.longestPiece(), demand.weatheringHeight(), demand.leastLap());
        work = compute(Recorder.off());
    }

    /**
     * Returns the lining of a valley.
     *
     * @param length the true length of the valley, above zero
     * @param valleyPitch the pitch of the valley line itself
     * @param demand what is asked of the lining
     * @return the lining
     * @throws org.roofmaths.problem.ProblemsException if the length is not above zero, or the valley is so flat that a lap would be as
     *     long as the longest piece
     */
    public static ValleyLining along(Figure<Length> length, Figure<Pitch> valleyPitch, ValleyDemand demand) {
        return new ValleyLining(SlopingRun.of(length, valleyPitch), Objects.requireNonNull(demand, "demand"));
    }

    /**
     * Returns the lining of a valley.
     *
     * @param length the true length of the valley, above zero
     * @param valleyPitch the pitch of the valley line itself
     * @param demand what is asked of the lining
     * @return the lining
     * @throws org.roofmaths.problem.ProblemsException if the length is not above zero, or the valley is so flat that a lap would be as
     *     long as the longest piece
     */
    public static ValleyLining along(Length length, Pitch valleyPitch, ValleyDemand demand) {
        return along(Given.of(length), Given.of(valleyPitch), demand);
    }

    /**
     * Returns the lining of a valley of a roof, from end to end of its edge.
     *
     * @param valley the edge
     * @param demand what is asked of the lining
     * @return the lining
     * @throws org.roofmaths.problem.ProblemsException if the edge is no valley, or is so flat that a lap would be as long as the longest
     *     piece
     */
    public static ValleyLining along(RoofEdge valley, ValleyDemand demand) {
        return new ValleyLining(SlopingRun.of(valley, EdgeKind.VALLEY), Objects.requireNonNull(demand, "demand"));
    }

    /**
     * Returns what {@link #along(Length, Pitch, ValleyDemand)} would, or its problems.
     *
     * @param length the true length of the valley
     * @param valleyPitch the pitch of the valley line itself
     * @param demand what is asked of the lining
     * @return the lining, or the problems
     */
    public static Attempt<ValleyLining> attemptAlong(Length length, Pitch valleyPitch, ValleyDemand demand) {
        return Attempt.call(() -> along(length, valleyPitch, demand));
    }

    /**
     * Returns the same lining with metal beyond its ends: into the gutter at the foot, over the ridge at the head.
     *
     * @param atFoot beyond the lower end, zero or more
     * @param atHead beyond the upper end, zero or more
     * @return the lining with it
     * @throws org.roofmaths.problem.ProblemsException if one of them is below zero
     */
    public ValleyLining extendedBy(Length atFoot, Length atHead) {
        return new ValleyLining(run.extendedBy(Given.of(atFoot), Given.of(atHead)), demand);
    }

    @Override
    SheetWork compute(Recorder r) {
        Length along = run.metalRun(r);
        Length lap = run.lap(r, demand.weatheringHeight(), demand.leastLap());
        Length channel = r.use(ValleyDemand.CHANNEL, demand.channel());
        Length beyond = r.use(ValleyDemand.BEYOND_CHANNEL, demand.beyondChannel());
        Length girth = r.record(GIRTH, channel.plus(beyond.times(2L)), GIRTH_BY_CHANNEL);
        return SheetWork.upTheSlope(r, name(), along, girth, lap, demand.longestPiece(), demand.sheet(), List.of());
    }

    @Override
    SheetWork work() {
        return work;
    }

    @Override
    public String name() {
        return "valley lining";
    }

    @Override
    public MetalSheet sheet() {
        return demand.sheet();
    }

    @Override
    public List<Leg> legs() {
        Length side = demand.channel()
                .value()
                .dividedBy(2)
                .plus(demand.beyondChannel().value());
        return List.of(new Leg("first side", side), new Leg("second side", girth().minus(side)));
    }

    /** Returns how far each piece laps the one below, along the valley. */
    public Length lap() {
        return run.lap(Recorder.off(), demand.weatheringHeight(), demand.leastLap());
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof ValleyLining v && run.equals(v.run) && demand.equals(v.demand);
    }

    @Override
    public int hashCode() {
        return Objects.hash(run, demand);
    }
}
