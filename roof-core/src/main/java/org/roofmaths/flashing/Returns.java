package org.roofmaths.flashing;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;

/**
 * How a sheet goes past the corners of a stack: how far at each end, and how the corners are made. There is no default for either.
 *
 * @param pastStack the metal past the stack at each end, zero or more
 * @param corners how the corners are made
 * @since 0.1
 */
public record Returns(Figure<Length> pastStack, CornerWork corners) implements Serializable {
    private static final long serialVersionUID = 1L;

    /** The metal past the stack at each end. */
    public static final Term<Length> PAST_STACK = Term.of("metal past the stack", "xp", Length.class);

    private static final Formula AT_START =
            Formula.of(CoveringLine.EXTRA_AT_START, PAST_STACK.plus(CornerWork.METAL_AT_CORNER));
    private static final Formula AT_END =
            Formula.of(CoveringLine.EXTRA_AT_END, PAST_STACK.plus(CornerWork.METAL_AT_CORNER));

    /**
     * Checks the length.
     *
     * @throws org.roofmaths.problem.ProblemsException if it is below zero
     */
    public Returns {
        Objects.requireNonNull(corners, "corners");
        Problems problems = Problems.none();
        Sizes.requireNotNegative(problems, PAST_STACK, pastStack);
        problems.throwIfErrors();
    }

    Figure<Length> atStart() {
        return Worked.by(CoveringLine.EXTRA_AT_START, r -> atEach(r, CoveringLine.EXTRA_AT_START, AT_START));
    }

    Figure<Length> atEnd() {
        return Worked.by(CoveringLine.EXTRA_AT_END, r -> atEach(r, CoveringLine.EXTRA_AT_END, AT_END));
    }

    private Length atEach(Recorder r, Term<Length> term, Formula formula) {
        Length past = r.use(PAST_STACK, pastStack);
        Length corner = r.use(CornerWork.METAL_AT_CORNER, corners.metal());
        return r.record(term, past.plus(corner), formula);
    }
}
