package org.roofmaths.working;

import java.io.Serializable;
import java.util.Objects;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * How one term follows from others: {@code rise = run × tan(rafter pitch)}, as data.
 *
 * <p>A formula is printed, and it can be evaluated: a test evaluates the formula of every recorded step on its inputs and compares
 * the answer with the recorded value, so the words beside a number cannot drift from the code that computed it.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Formula implements Serializable {
    private static final long serialVersionUID = 1L;

    private final Term<?> result;
    private final Expression expression;

    private Formula(Term<?> result, Expression expression) {
        this.result = Objects.requireNonNull(result, "result");
        this.expression = Objects.requireNonNull(expression, "expression");
    }

    /**
     * Returns the formula {@code result = expression}.
     *
     * @param result the term on the left
     * @param expression what it equals
     * @return the formula
     */
    public static Formula of(Term<?> result, Expression expression) {
        return new Formula(result, expression);
    }

    /** Returns the term on the left. */
    public Term<?> result() {
        return result;
    }

    /** Returns what it equals. */
    public Expression expression() {
        return expression;
    }

    /** Returns the terms on the right, each once, in the order in which they appear. */
    public Set<Term<?>> terms() {
        return expression.terms();
    }

    /**
     * Returns the value of the right-hand side in coherent SI units.
     *
     * @param values gives the SI value of each term: metres, square metres, radians, kilograms
     * @return the value in SI units
     */
    public double evaluate(ToDoubleFunction<Term<?>> values) {
        return expression.evaluate(values);
    }

    /** Returns the formula in words and signs, such as {@code rise = run × tan(rafter pitch)}. */
    public String toText() {
        return result.toText() + " = " + expression.toText();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Formula f && result.equals(f.result) && expression.equals(f.expression);
    }

    @Override
    public int hashCode() {
        return Objects.hash(result, expression);
    }

    /** Returns the formula in words and signs. */
    @Override
    public String toString() {
        return toText();
    }
}
