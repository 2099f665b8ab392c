package org.roofmaths.units;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A force for each unit of area, such as snow on a roof or the suction of wind.
 * <p>
 * Stored as a finite {@code double} of pascals (newtons per square metre). Two pressures are equal when their stored
 * numbers are. Immutable and thread-safe.
 * <pre>{@code
 * Pressure.parse("0.6 kN/m²")   // 600 Pa
 * }</pre>
 *
 * @since 0.1
 */
public final class Pressure implements Quantity, Comparable<Pressure> {
    private static final String WHAT = "pressure";
    private static final double PASCALS_IN_A_KILOPASCAL = 1000;
    // Exact: newtons in a pound-force (0.45359237 kg × 9.80665 m/s²), square metres in a square foot.
    private static final double POUND_FORCE = 4.4482216152605;
    private static final double SQUARE_FOOT = 0.09290304;
    private static final Symbols SYMBOLS = new Symbols("number")
            .with("Pa", n -> n)
            .with("N/m²", n -> n)
            .with("N/m2", n -> n)
            .with("kPa", n -> n * PASCALS_IN_A_KILOPASCAL)
            .with("kN/m²", n -> n * PASCALS_IN_A_KILOPASCAL)
            .with("kN/m2", n -> n * PASCALS_IN_A_KILOPASCAL)
            .with("lbf/ft²", n -> n * POUND_FORCE / SQUARE_FOOT)
            .with("lbf/ft2", n -> n * POUND_FORCE / SQUARE_FOOT);

    /**
     * No pressure at all.
     *
     * @since 0.1
     */
    public static final Pressure ZERO = new Pressure(0);

    private final double pascals;

    private Pressure(double pascals) {
        this.pascals = pascals;
    }

    private static Pressure result(double pascals) {
        return new Pressure(Decimals.result(pascals, WHAT));
    }

    /**
     * Returns a pressure in pascals, which are newtons per square metre.
     *
     * @param pascals  the number of pascals, finite
     * @return the pressure
     * @throws IllegalArgumentException if the number, or the pressure it makes, is not finite
     * @since 0.1
     */
    public static Pressure ofPascals(double pascals) {
        return new Pressure(Decimals.finite(pascals, WHAT));
    }

    /**
     * Returns a pressure in kilopascals, which are kilonewtons per square metre.
     *
     * @param kilopascals  the number of kilopascals, finite
     * @return the pressure
     * @throws IllegalArgumentException if the number, or the pressure it makes, is not finite
     * @since 0.1
     */
    public static Pressure ofKilopascals(double kilopascals) {
        return new Pressure(Decimals.finite(kilopascals * PASCALS_IN_A_KILOPASCAL, WHAT));
    }

    /**
     * Returns a pressure in pounds-force per square foot.
     *
     * @param poundsForcePerSquareFoot  the number of pounds-force per square foot, finite
     * @return the pressure
     * @throws IllegalArgumentException if the number, or the pressure it makes, is not finite
     * @since 0.1
     */
    public static Pressure ofPoundsForcePerSquareFoot(double poundsForcePerSquareFoot) {
        return new Pressure(Decimals.finite(poundsForcePerSquareFoot * POUND_FORCE / SQUARE_FOOT, WHAT));
    }

    /**
     * Reads a pressure.
     * <p>
     * A number and {@code Pa}, {@code N/m²}, {@code kPa}, {@code kN/m²} or {@code lbf/ft²}, with {@code 2} read for
     * {@code ²}: {@code 0.6 kN/m²}. A number is written as for {@link Length#parse}; spaces may stand around the
     * parts.
     *
     * @param text  the whole text
     * @return the pressure
     * @throws QuantityParseException if the text is anything else
     * @since 0.1
     */
    public static Pressure parse(String text) {
        return new Pressure(SYMBOLS.read(Objects.requireNonNull(text, "text")));
    }

    /**
     * Returns the sum of this pressure and another.
     *
     * @param other  the pressure to add
     * @return the sum
     * @throws ArithmeticException if the sum is beyond the range of a double
     * @since 0.1
     */
    public Pressure plus(Pressure other) {
        return result(pascals + other.pascals);
    }

    /**
     * Returns this pressure less another.
     *
     * @param other  the pressure to take away
     * @return the difference
     * @throws ArithmeticException if the difference is beyond the range of a double
     * @since 0.1
     */
    public Pressure minus(Pressure other) {
        return result(pascals - other.pascals);
    }

    /**
     * Returns this pressure times a factor.
     *
     * @param factor  the factor, finite
     * @return the product
     * @throws IllegalArgumentException if the factor is not finite
     * @throws ArithmeticException if the product is beyond the range of a double
     * @since 0.1
     */
    public Pressure times(double factor) {
        return result(pascals * Decimals.finite(factor, "factor"));
    }

    /**
     * Returns this pressure times a ratio.
     *
     * @param ratio  the factor
     * @return the product
     * @throws ArithmeticException if the product is beyond the range of a double
     * @since 0.1
     */
    public Pressure times(Ratio ratio) {
        return times(ratio.toDouble());
    }

    /**
     * Returns this pressure divided by a number.
     *
     * @param divisor  the number, finite and not zero
     * @return the quotient
     * @throws IllegalArgumentException if the divisor is not finite
     * @throws ArithmeticException if the divisor is zero or the quotient beyond the range of a double
     * @since 0.1
     */
    public Pressure dividedBy(double divisor) {
        return result(pascals / Decimals.divisor(divisor));
    }

    /**
     * Returns how many times as great this pressure is as another.
     *
     * @param other  the pressure to compare with, not zero
     * @return the ratio
     * @throws ArithmeticException if the other pressure is zero or the ratio beyond the range of a double
     * @since 0.1
     */
    public Ratio dividedBy(Pressure other) {
        return Ratio.result(pascals / Decimals.divisor(other.pascals));
    }

    /**
     * Returns this pressure with its sign turned.
     *
     * @return the negative
     * @since 0.1
     */
    public Pressure negated() {
        return result(-pascals);
    }

    /**
     * Returns this pressure without its sign.
     *
     * @return the size, zero or more
     * @since 0.1
     */
    public Pressure abs() {
        return pascals < 0 ? negated() : this;
    }

    /**
     * Returns the lesser of this pressure and another.
     *
     * @param other  the other pressure
     * @return the one that compares as less
     * @since 0.1
     */
    public Pressure min(Pressure other) {
        return other.pascals < pascals ? other : this;
    }

    /**
     * Returns the greater of this pressure and another.
     *
     * @param other  the other pressure
     * @return the one that compares as greater
     * @since 0.1
     */
    public Pressure max(Pressure other) {
        return other.pascals > pascals ? other : this;
    }

    /**
     * Says whether this pressure is greater than another, exactly.
     *
     * @param other  the other pressure
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isGreaterThan(Pressure other) {
        return pascals > other.pascals;
    }

    /**
     * Says whether this pressure is less than another, exactly.
     *
     * @param other  the other pressure
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isLessThan(Pressure other) {
        return pascals < other.pascals;
    }

    /**
     * Says whether this pressure is as near to another as a tolerance asks; the edge counts, decided on the decimals
     * that {@code toString} prints.
     *
     * @param tolerance  how far apart they may be
     * @param other  the other pressure
     * @return true if the two differ by no more than the tolerance
     * @since 0.1
     */
    public boolean isWithin(Tolerance<Pressure> tolerance, Pressure other) {
        return Decimals.isWithin(pascals, other.pascals, tolerance.amount().pascals);
    }

    /**
     * Says whether this pressure is zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isZero() {
        return pascals == 0;
    }

    /**
     * Says whether this pressure is above zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isPositive() {
        return pascals > 0;
    }

    /**
     * Says whether this pressure is below zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isNegative() {
        return pascals < 0;
    }

    /**
     * Returns the number of pascals, as stored.
     *
     * @return the pascals
     * @since 0.1
     */
    public double toPascals() {
        return pascals;
    }

    /**
     * Returns the number of kilopascals, which are kilonewtons per square metre.
     *
     * @return the kilopascals
     * @since 0.1
     */
    public double toKilopascals() {
        return pascals / PASCALS_IN_A_KILOPASCAL;
    }

    /**
     * Returns the number of pounds-force per square foot.
     *
     * @return the pounds-force per square foot
     * @since 0.1
     */
    public double toPoundsForcePerSquareFoot() {
        return pascals / POUND_FORCE * SQUARE_FOOT;
    }

    /**
     * Returns the number of pascals.
     *
     * @return the number
     * @since 0.1
     */
    @Override
    public double toSi() {
        return pascals;
    }

    /**
     * Returns {@link QuantityKind#PRESSURE}.
     *
     * @return the kind
     */
    @Override
    public QuantityKind kind() {
        return QuantityKind.PRESSURE;
    }

    /**
     * Compares this pressure with another, exactly.
     *
     * @param other  the other pressure
     * @return below, equal to or above zero as this pressure is less, equal or greater
     */
    @Override
    public int compareTo(Pressure other) {
        return Double.compare(pascals, other.pascals);
    }

    /**
     * Says whether another object is a pressure with the same stored number.
     *
     * @param other  the other object
     * @return true if it is
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Pressure that && pascals == that.pascals;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(pascals);
    }

    /**
     * Returns the pressure in pascals, with the fewest digits that read back exactly: {@code 600 Pa}.
     *
     * @return the text, which {@link #parse} reads back to an equal pressure
     */
    @Override
    public String toString() {
        return Decimals.text(pascals) + " Pa";
    }
}
