package org.roofmaths.working;

import java.io.Serializable;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.roofmaths.units.Rounding;

/**
 * The right-hand side of a formula, as data: terms, plain numbers and operations on them.
 *
 * <p>Built from terms: {@code RUN.squared().plus(RISE.squared()).squareRoot()}. Evaluated in coherent SI units, lengths in metres
 * and angles in radians, so a formula in words and a formula in code can be held against each other.
 *
 * @since 0.1
 */
public sealed interface Expression extends Serializable permits Term, Constant, AngleConstant, Operation {

    /**
     * Returns the value in coherent SI units.
     *
     * @param values gives the SI value of each term
     * @return the value
     */
    double evaluate(ToDoubleFunction<Term<?>> values);

    /** Returns the expression in words and signs, such as {@code √(run² + rise²)}. */
    String toText();

    /** Adds the terms of this expression, in the order in which they appear. */
    void collectTerms(Set<Term<?>> into);

    /** Returns the terms of this expression, each once, in the order in which they appear. */
    default Set<Term<?>> terms() {
        Set<Term<?>> found = new LinkedHashSet<>();
        collectTerms(found);
        return found;
    }

    /**
     * Returns a plain number without unit, such as the 2 in half a span.
     *
     * @param value a finite number
     * @return the constant
     */
    static Expression number(double value) {
        return new Constant(value);
    }

    /**
     * Returns a plain angle, such as the 180° of a straight angle.
     *
     * @param degrees a finite number of degrees
     * @return the constant
     */
    static Expression degrees(double degrees) {
        return new AngleConstant(degrees);
    }

    /** Returns this plus another. */
    default Expression plus(Expression other) {
        return Operation.of(Operator.PLUS, this, other);
    }

    /** Returns this less another. */
    default Expression minus(Expression other) {
        return Operation.of(Operator.MINUS, this, other);
    }

    /** Returns this times another. */
    default Expression times(Expression other) {
        return Operation.of(Operator.TIMES, this, other);
    }

    /** Returns this divided by another. */
    default Expression over(Expression other) {
        return Operation.of(Operator.OVER, this, other);
    }

    /** Returns this plus a plain number. */
    default Expression plus(double number) {
        return plus(number(number));
    }

    /** Returns this less a plain number. */
    default Expression minus(double number) {
        return minus(number(number));
    }

    /** Returns this times a plain number. */
    default Expression times(double number) {
        return times(number(number));
    }

    /** Returns this divided by a plain number. */
    default Expression over(double number) {
        return over(number(number));
    }

    /** Returns this with the other sign. */
    default Expression negated() {
        return Operation.of(Operator.NEGATED, this);
    }

    /** Returns this times itself. */
    default Expression squared() {
        return Operation.of(Operator.SQUARED, this);
    }

    /** Returns this to a power, such as the area to the power of 1.25 in a gutter's capacity. */
    default Expression toThe(Expression exponent) {
        return Operation.of(Operator.POWER, this, exponent);
    }

    /** Returns this to a power that is a plain number. */
    default Expression toThe(double exponent) {
        return toThe(number(exponent));
    }

    /** Returns the natural logarithm of this number. */
    default Expression naturalLog() {
        return Operation.of(Operator.NATURAL_LOG, this);
    }

    /** Returns the square root. */
    default Expression squareRoot() {
        return Operation.of(Operator.SQUARE_ROOT, this);
    }

    /** Returns the sine of this angle. */
    default Expression sin() {
        return Operation.of(Operator.SIN, this);
    }

    /** Returns the cosine of this angle. */
    default Expression cos() {
        return Operation.of(Operator.COS, this);
    }

    /** Returns the tangent of this angle. */
    default Expression tan() {
        return Operation.of(Operator.TAN, this);
    }

    /** Returns the angle whose sine this is. */
    default Expression arcSin() {
        return Operation.of(Operator.ARC_SIN, this);
    }

    /** Returns the angle whose cosine this is. */
    default Expression arcCos() {
        return Operation.of(Operator.ARC_COS, this);
    }

    /** Returns the angle whose tangent this is. */
    default Expression arcTan() {
        return Operation.of(Operator.ARC_TAN, this);
    }

    /** Returns the angle, from 0° up to 180°, whose tangent is this over another; the right one also when the other is below zero. */
    default Expression arcTanOver(Expression other) {
        return Operation.of(Operator.ARC_TAN_2, this, other);
    }

    /** Returns the smaller of this and another. */
    default Expression least(Expression other) {
        return Operation.of(Operator.LEAST, this, other);
    }

    /** Returns the greater of this and another. */
    default Expression greatest(Expression other) {
        return Operation.of(Operator.GREATEST, this, other);
    }

    /** Returns this number rounded up to a whole one. */
    default Expression roundedUp() {
        return Operation.of(Operator.ROUNDED_UP, this);
    }

    /** Returns this number rounded down to a whole one. */
    default Expression roundedDown() {
        return Operation.of(Operator.ROUNDED_DOWN, this);
    }

    /**
     * Returns how many steps it takes to cover this length: this over the step, rounded up, where up to 100 nm over a whole count
     * does not ask for one more.
     */
    default Expression timesToCover(Expression step) {
        return Operation.of(Operator.TIMES_TO_COVER, this, step);
    }

    /** Returns how many whole steps go into this length, where up to 100 nm short of a whole count still counts. */
    default Expression timesIn(Expression step) {
        return Operation.of(Operator.TIMES_IN, this, step);
    }

    /** Returns this length rounded by a named rule. */
    default Expression rounded(Rounding<?> rounding) {
        return Operation.rounded(this, rounding);
    }
}
