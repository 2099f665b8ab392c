package org.roofmaths.working;

import java.util.Set;
import java.util.function.ToDoubleFunction;

/** A plain number in an expression. */
record Constant(double value) implements Expression {
    private static final long serialVersionUID = 1L;

    Constant {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a number in a formula must be finite, but was " + value);
        }
    }

    @Override
    public double evaluate(ToDoubleFunction<Term<?>> values) {
        return value;
    }

    @Override
    public String toText() {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? Long.toString((long) value)
                : Double.toString(value);
    }

    @Override
    public void collectTerms(Set<Term<?>> into) {
        // a plain number has none
    }
}
