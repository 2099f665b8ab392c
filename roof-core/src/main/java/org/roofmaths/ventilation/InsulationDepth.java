package org.roofmaths.ventilation;

import java.util.List;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;

/**
 * How much insulation goes between rafters that must keep a clear void under the underlay.
 *
 * <p>Formula: {@code rafter − void − drape}. The underlay hangs into the void between rafters, so its drape counts: a rafter of 175 mm
 * with a void of 50 mm and a drape of 15 mm leaves 110 mm, not 125 mm.
 *
 * @since 0.1
 */
public final class InsulationDepth {
    /** The depth of the rafter, square to the slope. */
    public static final Term<Length> RAFTER_DEPTH = Term.of("rafter depth of the bay", "D", Length.class);
    /** The clear void asked between insulation and underlay. */
    public static final Term<Length> CLEAR_VOID = Term.of("clear void over the insulation", "V", Length.class);
    /** How far the underlay hangs between rafters. */
    public static final Term<Length> DRAPE = Term.of("drape of the underlay", "dr", Length.class);
    /** What is left for insulation. */
    public static final Term<Length> LEFT = Term.of("depth left for insulation", "I", Length.class);

    /** No depth is left for insulation. */
    public static final ProblemCode NONE_LEFT =
            ProblemCode.of("ventilation.no-depth-left", "Deepen the rafters, or put the insulation elsewhere.");

    private static final Formula LEFT_BY_DEPTH =
            Formula.of(LEFT, RAFTER_DEPTH.minus(CLEAR_VOID).minus(DRAPE));

    private InsulationDepth() {}

    /**
     * Returns the depth left for insulation.
     *
     * @param rafterDepth the depth of the rafter, square to the slope, above zero
     * @param clearVoid the clear void asked between insulation and underlay, zero or more
     * @param drape how far the underlay hangs between rafters, zero or more
     * @return the depth; zero or below if the rafter is too shallow
     * @throws org.roofmaths.problem.ProblemsException with every size that is wrong
     */
    public static Worked<Length> left(Figure<Length> rafterDepth, Figure<Length> clearVoid, Figure<Length> drape) {
        Problems.none()
                .require(
                        rafterDepth.value().isPositive(),
                        VentDemand.WRONG_FIGURE,
                        RAFTER_DEPTH.name(),
                        rafterDepth.value(),
                        "be above 0 mm")
                .require(
                        !clearVoid.value().isNegative(),
                        VentDemand.WRONG_FIGURE,
                        CLEAR_VOID.name(),
                        clearVoid.value(),
                        "be 0 mm or more")
                .require(
                        !drape.value().isNegative(),
                        VentDemand.WRONG_FIGURE,
                        DRAPE.name(),
                        drape.value(),
                        "be 0 mm or more")
                .throwIfErrors();
        return Worked.by(LEFT, r -> {
            Length rafter = r.use(RAFTER_DEPTH, rafterDepth);
            Length open = r.use(CLEAR_VOID, clearVoid);
            Length hang = r.use(DRAPE, drape);
            return r.record(LEFT, rafter.minus(open).minus(hang), LEFT_BY_DEPTH);
        });
    }

    /**
     * Returns what {@link #left(Figure, Figure, Figure)} would with a finding if no depth is left, or its problems.
     *
     * @param rafterDepth the depth of the rafter, square to the slope
     * @param clearVoid the clear void asked between insulation and underlay
     * @param drape how far the underlay hangs between rafters
     * @return the depth with its finding, or the problems
     */
    public static Attempt<Worked<Length>> attemptLeft(
            Figure<Length> rafterDepth, Figure<Length> clearVoid, Figure<Length> drape) {
        Attempt<Worked<Length>> attempt = Attempt.call(() -> left(rafterDepth, clearVoid, drape));
        if (!attempt.hasValue() || attempt.orThrow().value().isPositive()) {
            return attempt;
        }
        Length depth = attempt.orThrow().value();
        return Attempt.of(
                attempt.orThrow(),
                List.of(Problem.finding(
                        NONE_LEFT,
                        RAFTER_DEPTH.name(),
                        rafterDepth.value(),
                        clearVoid.value().plus(drape.value()),
                        "a rafter of " + rafterDepth.value() + " leaves no depth for insulation: a void of "
                                + clearVoid.value() + " and a drape of " + drape.value() + " take "
                                + clearVoid.value().plus(drape.value()),
                        List.of(Mend.of(
                                "rafter depth",
                                "more than " + depth.negated() + " deeper",
                                depth.negated(),
                                "some depth left for insulation")))));
    }
}
