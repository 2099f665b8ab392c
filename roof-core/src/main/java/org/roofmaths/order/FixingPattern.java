package org.roofmaths.order;

import java.io.Serializable;
import java.util.Map;
import org.immutables.value.Value;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;

/**
 * How units are fixed: so many fixings in each, and so many in each unit along the perimeter.
 *
 * <p>The pattern is the caller's. Nothing here designs against wind; that is for the code that applies and for who may use it.
 *
 * <pre>{@code
 * FixingPattern pattern = FixingPattern.builder()
 *         .inEveryUnit(1)
 *         .inPerimeterUnit(2)
 *         .putDeep(FaceSide.EAVES, 1)
 *         .putDeep(FaceSide.TOP, 1)
 *         .build();
 * }</pre>
 *
 * @since 0.1
 */
@Value.Immutable
public interface FixingPattern extends Serializable {
    /** A number below nothing. */
    ProblemCode OUT_OF_RANGE = ProblemCode.of("fixings.out-of-range", "Give whole numbers of zero or more.");

    /** Returns the fixings in each unit away from the perimeter, zero or more. */
    int inEveryUnit();

    /** Returns the fixings in each unit along the perimeter, all of them, zero or more. */
    int inPerimeterUnit();

    /** Returns how many courses, or units of each course, belong to the perimeter on a side; a side not named has none. */
    Map<FaceSide, Integer> deep();

    /**
     * Refuses numbers below nothing, all at once.
     *
     * @throws org.roofmaths.problem.ProblemsException if a number is below zero
     */
    @Value.Check
    default void check() {
        Problems problems = Problems.none()
                .require(inEveryUnit() >= 0, OUT_OF_RANGE, "fixings in every unit", inEveryUnit(), "be zero or more")
                .require(
                        inPerimeterUnit() >= 0,
                        OUT_OF_RANGE,
                        "fixings in a perimeter unit",
                        inPerimeterUnit(),
                        "be zero or more");
        deep().forEach((side, depth) -> problems.require(
                depth >= 0, OUT_OF_RANGE, "depth of the perimeter at the " + side, depth, "be zero or more"));
        problems.throwIfErrors();
    }

    /** Starts a pattern; the fixings in every unit and in a perimeter unit are required. */
    static FixingPatternBuilder builder() {
        return new FixingPatternBuilder();
    }
}
