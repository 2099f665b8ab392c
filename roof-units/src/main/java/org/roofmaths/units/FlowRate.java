package org.roofmaths.units;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How much water passes in a time.
 * <p>
 * Stored as a finite {@code double} of litres per second. Two flow rates are equal when their stored numbers are.
 * Immutable and thread-safe.
 * <pre>{@code
 * FlowRate.ofLitresPerMinute(75)   // 1.25 l/s
 * }</pre>
 *
 * @since 0.1
 */
public final class FlowRate implements Quantity, Comparable<FlowRate> {
    private static final String WHAT = "flow rate";
    private static final double SECONDS_IN_A_MINUTE = 60;
    private static final double LITRES_IN_A_CUBIC_METRE = 1000;
    private static final Symbols SYMBOLS = new Symbols("number")
            .with("l/s", n -> n)
            .with("L/s", n -> n)
            .with("l/min", n -> n / SECONDS_IN_A_MINUTE)
            .with("L/min", n -> n / SECONDS_IN_A_MINUTE)
            .with("m³/s", n -> n * LITRES_IN_A_CUBIC_METRE)
            .with("m3/s", n -> n * LITRES_IN_A_CUBIC_METRE);

    /**
     * No flow at all.
     *
     * @since 0.1
     */
    public static final FlowRate ZERO = new FlowRate(0);

    private final double litresPerSecond;

    private FlowRate(double litresPerSecond) {
        this.litresPerSecond = litresPerSecond;
    }

    static FlowRate result(double litresPerSecond) {
        return new FlowRate(Decimals.result(litresPerSecond, WHAT));
    }

    /**
     * Returns a flow rate in litres per second.
     *
     * @param litresPerSecond  the number of litres per second, finite
     * @return the flow rate
     * @throws IllegalArgumentException if the number, or the flow rate it makes, is not finite
     * @since 0.1
     */
    public static FlowRate ofLitresPerSecond(double litresPerSecond) {
        return new FlowRate(Decimals.finite(litresPerSecond, WHAT));
    }

    /**
     * Returns a flow rate in litres per minute.
     *
     * @param litresPerMinute  the number of litres per minute, finite
     * @return the flow rate
     * @throws IllegalArgumentException if the number, or the flow rate it makes, is not finite
     * @since 0.1
     */
    public static FlowRate ofLitresPerMinute(double litresPerMinute) {
        return new FlowRate(Decimals.finite(litresPerMinute / SECONDS_IN_A_MINUTE, WHAT));
    }

    /**
     * Reads a flow rate.
     * <p>
     * A number and {@code l/s}, {@code l/min} (or {@code L}) or {@code m³/s}, with {@code 3} read for {@code ³}:
     * {@code 1.25 l/s}. A number is written as for {@link Length#parse}; spaces may stand around the parts.
     *
     * @param text  the whole text
     * @return the flow rate
     * @throws QuantityParseException if the text is anything else
     * @since 0.1
     */
    public static FlowRate parse(String text) {
        return new FlowRate(SYMBOLS.read(Objects.requireNonNull(text, "text")));
    }

    /**
     * Returns the sum of this flow rate and another.
     *
     * @param other  the flow rate to add
     * @return the sum
     * @throws ArithmeticException if the sum is beyond the range of a double
     * @since 0.1
     */
    public FlowRate plus(FlowRate other) {
        return result(litresPerSecond + other.litresPerSecond);
    }

    /**
     * Returns this flow rate less another.
     *
     * @param other  the flow rate to take away
     * @return the difference
     * @throws ArithmeticException if the difference is beyond the range of a double
     * @since 0.1
     */
    public FlowRate minus(FlowRate other) {
        return result(litresPerSecond - other.litresPerSecond);
    }

    /**
     * Returns this flow rate times a factor.
     *
     * @param factor  the factor, finite
     * @return the product
     * @throws IllegalArgumentException if the factor is not finite
     * @throws ArithmeticException if the product is beyond the range of a double
     * @since 0.1
     */
    public FlowRate times(double factor) {
        return result(litresPerSecond * Decimals.finite(factor, "factor"));
    }

    /**
     * Returns this flow rate times a ratio.
     *
     * @param ratio  the factor
     * @return the product
     * @throws ArithmeticException if the product is beyond the range of a double
     * @since 0.1
     */
    public FlowRate times(Ratio ratio) {
        return times(ratio.toDouble());
    }

    /**
     * Returns this flow rate divided by a number.
     *
     * @param divisor  the number, finite and not zero
     * @return the quotient
     * @throws IllegalArgumentException if the divisor is not finite
     * @throws ArithmeticException if the divisor is zero or the quotient beyond the range of a double
     * @since 0.1
     */
    public FlowRate dividedBy(double divisor) {
        return result(litresPerSecond / Decimals.divisor(divisor));
    }

    /**
     * Returns how many times as great this flow rate is as another.
     *
     * @param other  the flow rate to compare with, not zero
     * @return the ratio
     * @throws ArithmeticException if the other flow rate is zero or the ratio beyond the range of a double
     * @since 0.1
     */
    public Ratio dividedBy(FlowRate other) {
        return Ratio.result(litresPerSecond / Decimals.divisor(other.litresPerSecond));
    }

    /**
     * Returns this flow rate with its sign turned.
     *
     * @return the negative
     * @since 0.1
     */
    public FlowRate negated() {
        return result(-litresPerSecond);
    }

    /**
     * Returns this flow rate without its sign.
     *
     * @return the size, zero or more
     * @since 0.1
     */
    public FlowRate abs() {
        return litresPerSecond < 0 ? negated() : this;
    }

    /**
     * Returns the lesser of this flow rate and another.
     *
     * @param other  the other flow rate
     * @return the one that compares as less
     * @since 0.1
     */
    public FlowRate min(FlowRate other) {
        return other.litresPerSecond < litresPerSecond ? other : this;
    }

    /**
     * Returns the greater of this flow rate and another.
     *
     * @param other  the other flow rate
     * @return the one that compares as greater
     * @since 0.1
     */
    public FlowRate max(FlowRate other) {
        return other.litresPerSecond > litresPerSecond ? other : this;
    }

    /**
     * Says whether this flow rate is greater than another, exactly.
     *
     * @param other  the other flow rate
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isGreaterThan(FlowRate other) {
        return litresPerSecond > other.litresPerSecond;
    }

    /**
     * Says whether this flow rate is less than another, exactly.
     *
     * @param other  the other flow rate
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isLessThan(FlowRate other) {
        return litresPerSecond < other.litresPerSecond;
    }

    /**
     * Says whether this flow rate is as near to another as a tolerance asks; the edge counts, decided on the decimals
     * that {@code toString} prints.
     *
     * @param tolerance  how far apart they may be
     * @param other  the other flow rate
     * @return true if the two differ by no more than the tolerance
     * @since 0.1
     */
    public boolean isWithin(Tolerance<FlowRate> tolerance, FlowRate other) {
        return Decimals.isWithin(litresPerSecond, other.litresPerSecond, tolerance.amount().litresPerSecond);
    }

    /**
     * Says whether this flow rate is zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isZero() {
        return litresPerSecond == 0;
    }

    /**
     * Says whether this flow rate is above zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isPositive() {
        return litresPerSecond > 0;
    }

    /**
     * Says whether this flow rate is below zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isNegative() {
        return litresPerSecond < 0;
    }

    /**
     * Returns the number of litres per second, as stored.
     *
     * @return the litres per second
     * @since 0.1
     */
    public double toLitresPerSecond() {
        return litresPerSecond;
    }

    /**
     * Returns the number of litres per minute.
     *
     * @return the litres per minute
     * @throws ArithmeticException if the number is beyond the range of a double
     * @since 0.1
     */
    public double toLitresPerMinute() {
        return Decimals.result(litresPerSecond * SECONDS_IN_A_MINUTE, WHAT);
    }

    /**
     * Returns the number of cubic metres per second.
     *
     * @return the number
     * @since 0.1
     */
    @Override
    public double toSi() {
        return litresPerSecond / LITRES_IN_A_CUBIC_METRE;
    }

    /**
     * Returns {@link QuantityKind#FLOW_RATE}.
     *
     * @return the kind
     */
    @Override
    public QuantityKind kind() {
        return QuantityKind.FLOW_RATE;
    }

    /**
     * Compares this flow rate with another, exactly.
     *
     * @param other  the other flow rate
     * @return below, equal to or above zero as this flow rate is less, equal or greater
     */
    @Override
    public int compareTo(FlowRate other) {
        return Double.compare(litresPerSecond, other.litresPerSecond);
    }

    /**
     * Says whether another object is a flow rate with the same stored number.
     *
     * @param other  the other object
     * @return true if it is
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof FlowRate that && litresPerSecond == that.litresPerSecond;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(litresPerSecond);
    }

    /**
     * Returns the flow rate in litres per second, with the fewest digits that read back exactly: {@code 1.25 l/s}.
     *
     * @return the text, which {@link #parse} reads back to an equal flow rate
     */
    @Override
    public String toString() {
        return Decimals.text(litresPerSecond) + " l/s";
    }
}
