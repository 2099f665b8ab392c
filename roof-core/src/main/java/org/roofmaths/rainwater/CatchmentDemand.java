package org.roofmaths.rainwater;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;

/**
 * How a rule set turns a slope and a wall into the area that catches rain.
 *
 * <p>Rule sets differ: some count the area on plan, some add a share of the rise for driven rain, some count the area along the slope, some
 * multiply the plan by a factor of their own; and a wall counts with a half or a quarter of its face. Never mix them: pick one by name, and
 * keep its figures together.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class CatchmentDemand implements Serializable {
    private static final long serialVersionUID = 1L;

    /** The share of the rise that is added to the run. */
    public static final Term<Ratio> SHARE_OF_RISE = Term.of("share of the rise that catches rain", "kr", Ratio.class);
    /** The factor on the plan area. */
    public static final Term<Ratio> PLAN_FACTOR = Term.of("factor on the plan area", "kp", Ratio.class);
    /** The share of a wall's face that catches rain. */
    public static final Term<Ratio> SHARE_OF_WALL = Term.of("share of a wall that catches rain", "kw", Ratio.class);

    private static final Formula BY_RISE =
            Formula.of(Catchment.AREA_FACTOR, Expression.number(1).plus(SHARE_OF_RISE.times(Catchment.PITCH.tan())));
    private static final Formula BY_FACTOR = Formula.of(Catchment.AREA_FACTOR, PLAN_FACTOR);
    private static final Formula BY_SLOPE =
            Formula.of(Catchment.AREA_FACTOR, Expression.number(1).over(Catchment.PITCH.cos()));

    /** What a rule set counts on a slope. */
    private enum Method {
        SHARE_OF_RISE,
        FACTOR,
        SLOPE
    }

    private final Method method;
    private final @Nullable Figure<Ratio> figure; // the share or the factor; null along the slope
    private final Figure<Ratio> shareOfWall;

    private CatchmentDemand(Method method, @Nullable Figure<Ratio> figure, Figure<Ratio> shareOfWall) {
        this.method = method;
        this.figure = figure;
        this.shareOfWall = shareOfWall;
    }

    /**
     * Returns the rule that adds a share of the rise to the run, for wind-driven rain: {@code plan × (1 + share × tan(pitch))}. With a
     * half, 30° has the factor 1.289. A share of zero counts the plan alone.
     *
     * @param shareOfRise the share of the rise, from 0 to 1
     * @param shareOfWall the share of a wall's face, from 0 to 1
     * @return the demand
     * @throws org.roofmaths.problem.ProblemsException if a share is out of range
     */
    public static CatchmentDemand planAndRise(Figure<Ratio> shareOfRise, Figure<Ratio> shareOfWall) {
        Problems problems = Problems.none();
        requireShare(problems, SHARE_OF_RISE, shareOfRise);
        requireShare(problems, SHARE_OF_WALL, shareOfWall);
        problems.throwIfErrors();
        return new CatchmentDemand(Method.SHARE_OF_RISE, shareOfRise, shareOfWall);
    }

    /**
     * Returns the rule that multiplies the plan by a factor read for the pitch.
     *
     * @param factor the factor, above zero
     * @param shareOfWall the share of a wall's face, from 0 to 1
     * @return the demand
     * @throws org.roofmaths.problem.ProblemsException if the factor or the share is out of range
     */
    public static CatchmentDemand planTimes(Figure<Ratio> factor, Figure<Ratio> shareOfWall) {
        Problems problems = Problems.none()
                .require(
                        factor.value().isPositive(),
                        Catchment.WRONG_SIZE,
                        PLAN_FACTOR.name(),
                        factor.value(),
                        "be above 0");
        requireShare(problems, SHARE_OF_WALL, shareOfWall);
        problems.throwIfErrors();
        return new CatchmentDemand(Method.FACTOR, factor, shareOfWall);
    }

    /**
     * Returns the rule that counts the area along the slope, for rain square to the roof.
     *
     * @param shareOfWall the share of a wall's face, from 0 to 1
     * @return the demand
     * @throws org.roofmaths.problem.ProblemsException if the share is out of range
     */
    public static CatchmentDemand alongSlope(Figure<Ratio> shareOfWall) {
        Problems problems = Problems.none();
        requireShare(problems, SHARE_OF_WALL, shareOfWall);
        problems.throwIfErrors();
        return new CatchmentDemand(Method.SLOPE, null, shareOfWall);
    }

    private static void requireShare(Problems problems, Term<Ratio> term, Figure<Ratio> share) {
        double value = share.value().toDouble();
        problems.require(value >= 0 && value <= 1, Catchment.WRONG_SIZE, term.name(), share.value(), "be from 0 to 1");
    }

    /** The factor on the plan area; the pitch must have been recorded. */
    Ratio factor(Recorder r, Pitch pitch) {
        return switch (method) {
            case SHARE_OF_RISE -> {
                Ratio share = r.use(SHARE_OF_RISE, Objects.requireNonNull(figure));
                yield r.record(Catchment.AREA_FACTOR, Ratio.of(1 + share.toDouble() * pitch.tan()), BY_RISE);
            }
            case FACTOR ->
                r.record(Catchment.AREA_FACTOR, r.use(PLAN_FACTOR, Objects.requireNonNull(figure)), BY_FACTOR);
            case SLOPE -> r.record(Catchment.AREA_FACTOR, Ratio.of(1 / pitch.cos()), BY_SLOPE);
        };
    }

    Figure<Ratio> shareOfWall() {
        return shareOfWall;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof CatchmentDemand d
                && method == d.method
                && Objects.equals(figure, d.figure)
                && shareOfWall.equals(d.shareOfWall);
    }

    @Override
    public int hashCode() {
        return Objects.hash(method, figure, shareOfWall);
    }

    /** Returns for example {@code plan and 0.5 of the rise, 0.5 of walls}. */
    @Override
    public String toString() {
        String slope = switch (method) {
            case SHARE_OF_RISE -> "plan and " + Objects.requireNonNull(figure).value() + " of the rise";
            case FACTOR -> Objects.requireNonNull(figure).value() + " × plan";
            case SLOPE -> "area along the slope";
        };
        return slope + ", " + shareOfWall.value() + " of walls";
    }
}
