package org.roofmaths.units;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A plain number: how many times one thing is another, a share or a factor.
 * <p>
 * Stored as a finite {@code double}. Two ratios are equal when their stored numbers are. Immutable and thread-safe.
 * <pre>{@code
 * Ratio.ofPercent(25)                                          // 0.25
 * Length.ofMetres(3).dividedBy(Length.ofMetres(4)).toPercent()   // 75.0
 * }</pre>
 *
 * @since 0.1
 */
public final class Ratio implements Quantity, Comparable<Ratio> {
    private static final String WHAT = "ratio";
    private static final double PER_CENT = 100;
    private static final Symbols SYMBOLS =
            new Symbols("number").with("%", n -> n / PER_CENT).orBare();

    /**
     * The ratio 0.
     *
     * @since 0.1
     */
    public static final Ratio ZERO = new Ratio(0);

    private final double number;

    private Ratio(double number) {
        this.number = number;
    }

    static Ratio result(double number) {
        return new Ratio(Decimals.result(number, WHAT));
    }

    /**
     * Returns a ratio.
     *
     * @param number  the number, finite
     * @return the ratio
     * @throws IllegalArgumentException if the number, or the ratio it makes, is not finite
     * @since 0.1
     */
    public static Ratio of(double number) {
        return new Ratio(Decimals.finite(number, WHAT));
    }

    /**
     * Returns a ratio in per cent: {@code ofPercent(25)} is 0.25.
     *
     * @param percent  the number of hundredths, finite
     * @return the ratio
     * @throws IllegalArgumentException if the number, or the ratio it makes, is not finite
     * @since 0.1
     */
    public static Ratio ofPercent(double percent) {
        return new Ratio(Decimals.finite(percent / PER_CENT, WHAT));
    }

    /**
     * Reads a ratio.
     * <p>
     * A bare number, {@code 0.25}, or a number and {@code %}: {@code 25 %}. A number is written as for
     * {@link Length#parse}; spaces may stand around the parts.
     *
     * @param text  the whole text
     * @return the ratio
     * @throws QuantityParseException if the text is anything else
     * @since 0.1
     */
    public static Ratio parse(String text) {
        return new Ratio(SYMBOLS.read(Objects.requireNonNull(text, "text")));
    }

    /**
     * Returns the sum of this ratio and another.
     *
     * @param other  the ratio to add
     * @return the sum
     * @throws ArithmeticException if the sum is beyond the range of a double
     * @since 0.1
     */
    public Ratio plus(Ratio other) {
        return result(number + other.number);
    }

    /**
     * Returns this ratio less another.
     *
     * @param other  the ratio to take away
     * @return the difference
     * @throws ArithmeticException if the difference is beyond the range of a double
     * @since 0.1
     */
    public Ratio minus(Ratio other) {
        return result(number - other.number);
    }

    /**
     * Returns this ratio times a factor.
     *
     * @param factor  the factor, finite
     * @return the product
     * @throws IllegalArgumentException if the factor is not finite
     * @throws ArithmeticException if the product is beyond the range of a double
     * @since 0.1
     */
    public Ratio times(double factor) {
        return result(number * Decimals.finite(factor, "factor"));
    }

    /**
     * Returns this ratio times another.
     *
     * @param other  the other ratio
     * @return the product
     * @throws ArithmeticException if the product is beyond the range of a double
     * @since 0.1
     */
    public Ratio times(Ratio other) {
        return result(number * other.number);
    }

    /**
     * Returns this ratio divided by a number.
     *
     * @param divisor  the number, finite and not zero
     * @return the quotient
     * @throws IllegalArgumentException if the divisor is not finite
     * @throws ArithmeticException if the divisor is zero or the quotient beyond the range of a double
     * @since 0.1
     */
    public Ratio dividedBy(double divisor) {
        return result(number / Decimals.divisor(divisor));
    }

    /**
     * Returns how many times as great this ratio is as another.
     *
     * @param other  the ratio to compare with, not zero
     * @return the ratio
     * @throws ArithmeticException if the other ratio is zero or the ratio beyond the range of a double
     * @since 0.1
     */
    public Ratio dividedBy(Ratio other) {
        return result(number / Decimals.divisor(other.number));
    }

    /**
     * Returns this ratio with its sign turned.
     *
     * @return the negative
     * @since 0.1
     */
    public Ratio negated() {
        return result(-number);
    }

    /**
     * Returns this ratio without its sign.
     *
     * @return the size, zero or more
     * @since 0.1
     */
    public Ratio abs() {
        return number < 0 ? negated() : this;
    }

    /**
     * Returns the lesser of this ratio and another.
     *
     * @param other  the other ratio
     * @return the one that compares as less
     * @since 0.1
     */
    public Ratio min(Ratio other) {
        return other.number < number ? other : this;
    }

    /**
     * Returns the greater of this ratio and another.
     *
     * @param other  the other ratio
     * @return the one that compares as greater
     * @since 0.1
     */
    public Ratio max(Ratio other) {
        return other.number > number ? other : this;
    }

    /**
     * Says whether this ratio is greater than another, exactly.
     *
     * @param other  the other ratio
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isGreaterThan(Ratio other) {
        return number > other.number;
    }

    /**
     * Says whether this ratio is less than another, exactly.
     *
     * @param other  the other ratio
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isLessThan(Ratio other) {
        return number < other.number;
    }

    /**
     * Says whether this ratio is as near to another as a tolerance asks; the edge counts, decided on the decimals
     * that {@code toString} prints.
     *
     * @param tolerance  how far apart they may be
     * @param other  the other ratio
     * @return true if the two differ by no more than the tolerance
     * @since 0.1
     */
    public boolean isWithin(Tolerance<Ratio> tolerance, Ratio other) {
        return Decimals.isWithin(number, other.number, tolerance.amount().number);
    }

    /**
     * Says whether this ratio is zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isZero() {
        return number == 0;
    }

    /**
     * Says whether this ratio is above zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isPositive() {
        return number > 0;
    }

    /**
     * Says whether this ratio is below zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isNegative() {
        return number < 0;
    }

    /**
     * Returns the bare number, as stored.
     *
     * @return the number
     * @since 0.1
     */
    public double toDouble() {
        return number;
    }

    /**
     * Returns the number of hundredths: 25 for 0.25.
     *
     * @return the per cent
     * @throws ArithmeticException if the number is beyond the range of a double
     * @since 0.1
     */
    public double toPercent() {
        return Decimals.result(number * PER_CENT, WHAT);
    }

    /**
     * Returns the bare number.
     *
     * @return the number
     * @since 0.1
     */
    @Override
    public double toSi() {
        return number;
    }

    /**
     * Returns {@link QuantityKind#RATIO}.
     *
     * @return the kind
     */
    @Override
    public QuantityKind kind() {
        return QuantityKind.RATIO;
    }

    /**
     * Compares this ratio with another, exactly.
     *
     * @param other  the other ratio
     * @return below, equal to or above zero as this ratio is less, equal or greater
     */
    @Override
    public int compareTo(Ratio other) {
        return Double.compare(number, other.number);
    }

    /**
     * Says whether another object is a ratio with the same stored number.
     *
     * @param other  the other object
     * @return true if it is
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Ratio that && number == that.number;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(number);
    }

    /**
     * Returns the ratio as a bare number, with the fewest digits that read back exactly: {@code 0.25}.
     *
     * @return the text, which {@link #parse} reads back to an equal ratio
     */
    @Override
    public String toString() {
        return Decimals.text(number);
    }
}
