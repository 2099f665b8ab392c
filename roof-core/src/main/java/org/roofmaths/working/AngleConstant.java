package org.roofmaths.working;

import java.util.Set;
import java.util.function.ToDoubleFunction;

/** A plain angle in an expression, such as the 180° in a straight angle, written in degrees. */
record AngleConstant(double degrees) implements Expression {
    private static final long serialVersionUID = 1L;

    AngleConstant {
        if (!Double.isFinite(degrees)) {
            throw new IllegalArgumentException("an angle in a formula must be finite, but was " + degrees + "°");
        }
    }

    @Override
    public double evaluate(ToDoubleFunction<Term<?>> values) {
        return StrictMath.toRadians(degrees);
    }

    @Override
    public String toText() {
        return new Constant(degrees).toText() + "°";
    }

    @Override
    public void collectTerms(Set<Term<?>> into) {
        // a plain angle has none
    }
}
