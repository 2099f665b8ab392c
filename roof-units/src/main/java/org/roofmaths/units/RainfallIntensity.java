package org.roofmaths.units;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How hard it rains: the depth of water that falls in a time.
 * <p>
 * Stored as a finite {@code double} of millimetres per hour. Two intensities are equal when their stored numbers are.
 * Immutable and thread-safe.
 * <pre>{@code
 * RainfallIntensity.ofMillimetresPerHour(75).times(Area.ofSquareMetres(96))   // 2 l/s
 * }</pre>
 *
 * @since 0.1
 */
public final class RainfallIntensity implements Quantity, Comparable<RainfallIntensity> {
    private static final String WHAT = "rainfall intensity";
    private static final double SECONDS_IN_AN_HOUR = 3600;
    private static final double MILLIMETRES_IN_AN_INCH = 25.4;
    private static final double SQUARE_METRES_IN_A_HECTARE = 10_000;
    private static final double MILLIMETRES_PER_HOUR_IN_A_METRE_PER_SECOND = 3_600_000;
    private static final Symbols SYMBOLS = new Symbols("number")
            .with("mm/h", n -> n)
            .with("in/h", n -> n * MILLIMETRES_IN_AN_INCH)
            .with("l/(s·m²)", n -> n * SECONDS_IN_AN_HOUR)
            .with("l/(s·m2)", n -> n * SECONDS_IN_AN_HOUR)
            .with("l/(s·ha)", n -> n * SECONDS_IN_AN_HOUR / SQUARE_METRES_IN_A_HECTARE);

    /**
     * No rain at all.
     *
     * @since 0.1
     */
    public static final RainfallIntensity ZERO = new RainfallIntensity(0);

    private final double millimetresPerHour;

    private RainfallIntensity(double millimetresPerHour) {
        this.millimetresPerHour = millimetresPerHour;
    }

    private static RainfallIntensity result(double millimetresPerHour) {
        return new RainfallIntensity(Decimals.result(millimetresPerHour, WHAT));
    }

    /**
     * Returns a rainfall intensity in millimetres per hour.
     *
     * @param millimetresPerHour  the number of millimetres per hour, finite
     * @return the rainfall intensity
     * @throws IllegalArgumentException if the number, or the rainfall intensity it makes, is not finite
     * @since 0.1
     */
    public static RainfallIntensity ofMillimetresPerHour(double millimetresPerHour) {
        return new RainfallIntensity(Decimals.finite(millimetresPerHour, WHAT));
    }

    /**
     * Returns a rainfall intensity in litres per second on each square metre; 0.02 of these is 72 mm/h.
     *
     * @param litresPerSecondPerSquareMetre  the number of litres per second on a square metre, finite
     * @return the rainfall intensity
     * @throws IllegalArgumentException if the number, or the rainfall intensity it makes, is not finite
     * @since 0.1
     */
    public static RainfallIntensity ofLitresPerSecondPerSquareMetre(double litresPerSecondPerSquareMetre) {
        return new RainfallIntensity(Decimals.finite(litresPerSecondPerSquareMetre * SECONDS_IN_AN_HOUR, WHAT));
    }

    /**
     * Returns a rainfall intensity in inches per hour; an inch is exactly 25.4 mm.
     *
     * @param inchesPerHour  the number of inches per hour, finite
     * @return the rainfall intensity
     * @throws IllegalArgumentException if the number, or the rainfall intensity it makes, is not finite
     * @since 0.1
     */
    public static RainfallIntensity ofInchesPerHour(double inchesPerHour) {
        return new RainfallIntensity(Decimals.finite(inchesPerHour * MILLIMETRES_IN_AN_INCH, WHAT));
    }

    /**
     * Reads a rainfall intensity.
     * <p>
     * A number and {@code mm/h}, {@code in/h}, {@code l/(s·m²)} or {@code l/(s·ha)}, with {@code 2} read for {@code
     * ²}: {@code 75 mm/h}. A number is written as for {@link Length#parse}; spaces may stand around the parts.
     *
     * @param text  the whole text
     * @return the rainfall intensity
     * @throws QuantityParseException if the text is anything else
     * @since 0.1
     */
    public static RainfallIntensity parse(String text) {
        return new RainfallIntensity(SYMBOLS.read(Objects.requireNonNull(text, "text")));
    }

    /**
     * Returns the sum of this rainfall intensity and another.
     *
     * @param other  the rainfall intensity to add
     * @return the sum
     * @throws ArithmeticException if the sum is beyond the range of a double
     * @since 0.1
     */
    public RainfallIntensity plus(RainfallIntensity other) {
        return result(millimetresPerHour + other.millimetresPerHour);
    }

    /**
     * Returns this rainfall intensity less another.
     *
     * @param other  the rainfall intensity to take away
     * @return the difference
     * @throws ArithmeticException if the difference is beyond the range of a double
     * @since 0.1
     */
    public RainfallIntensity minus(RainfallIntensity other) {
        return result(millimetresPerHour - other.millimetresPerHour);
    }

    /**
     * Returns this rainfall intensity times a factor.
     *
     * @param factor  the factor, finite
     * @return the product
     * @throws IllegalArgumentException if the factor is not finite
     * @throws ArithmeticException if the product is beyond the range of a double
     * @since 0.1
     */
    public RainfallIntensity times(double factor) {
        return result(millimetresPerHour * Decimals.finite(factor, "factor"));
    }

    /**
     * Returns this rainfall intensity times a ratio.
     *
     * @param ratio  the factor
     * @return the product
     * @throws ArithmeticException if the product is beyond the range of a double
     * @since 0.1
     */
    public RainfallIntensity times(Ratio ratio) {
        return times(ratio.toDouble());
    }

    /**
     * Returns the flow of this rain off an area.
     * <p>
     * For example, 75 mm/h times 96 m² is 2 l/s. Which area counts, on plan or with a share of the height, is for the
     * caller to know.
     *
     * @param area  the area that catches the rain
     * @return the flow rate
     * @throws ArithmeticException if the flow is beyond the range of a double
     * @since 0.1
     */
    public FlowRate times(Area area) {
        return FlowRate.result(millimetresPerHour * area.toSquareMetres() / SECONDS_IN_AN_HOUR);
    }

    /**
     * Returns this rainfall intensity divided by a number.
     *
     * @param divisor  the number, finite and not zero
     * @return the quotient
     * @throws IllegalArgumentException if the divisor is not finite
     * @throws ArithmeticException if the divisor is zero or the quotient beyond the range of a double
     * @since 0.1
     */
    public RainfallIntensity dividedBy(double divisor) {
        return result(millimetresPerHour / Decimals.divisor(divisor));
    }

    /**
     * Returns how many times as great this rainfall intensity is as another.
     *
     * @param other  the rainfall intensity to compare with, not zero
     * @return the ratio
     * @throws ArithmeticException if the other rainfall intensity is zero or the ratio beyond the range of a double
     * @since 0.1
     */
    public Ratio dividedBy(RainfallIntensity other) {
        return Ratio.result(millimetresPerHour / Decimals.divisor(other.millimetresPerHour));
    }

    /**
     * Returns this rainfall intensity with its sign turned.
     *
     * @return the negative
     * @since 0.1
     */
    public RainfallIntensity negated() {
        return result(-millimetresPerHour);
    }

    /**
     * Returns this rainfall intensity without its sign.
     *
     * @return the size, zero or more
     * @since 0.1
     */
    public RainfallIntensity abs() {
        return millimetresPerHour < 0 ? negated() : this;
    }

    /**
     * Returns the lesser of this rainfall intensity and another.
     *
     * @param other  the other rainfall intensity
     * @return the one that compares as less
     * @since 0.1
     */
    public RainfallIntensity min(RainfallIntensity other) {
        return other.millimetresPerHour < millimetresPerHour ? other : this;
    }

    /**
     * Returns the greater of this rainfall intensity and another.
     *
     * @param other  the other rainfall intensity
     * @return the one that compares as greater
     * @since 0.1
     */
    public RainfallIntensity max(RainfallIntensity other) {
        return other.millimetresPerHour > millimetresPerHour ? other : this;
    }

    /**
     * Says whether this rainfall intensity is greater than another, exactly.
     *
     * @param other  the other rainfall intensity
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isGreaterThan(RainfallIntensity other) {
        return millimetresPerHour > other.millimetresPerHour;
    }

    /**
     * Says whether this rainfall intensity is less than another, exactly.
     *
     * @param other  the other rainfall intensity
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isLessThan(RainfallIntensity other) {
        return millimetresPerHour < other.millimetresPerHour;
    }

    /**
     * Says whether this rainfall intensity is as near to another as a tolerance asks; the edge counts, decided on the
     * decimals that {@code toString} prints.
     *
     * @param tolerance  how far apart they may be
     * @param other  the other rainfall intensity
     * @return true if the two differ by no more than the tolerance
     * @since 0.1
     */
    public boolean isWithin(Tolerance<RainfallIntensity> tolerance, RainfallIntensity other) {
        return Decimals.isWithin(millimetresPerHour, other.millimetresPerHour, tolerance.amount().millimetresPerHour);
    }

    /**
     * Says whether this rainfall intensity is zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isZero() {
        return millimetresPerHour == 0;
    }

    /**
     * Says whether this rainfall intensity is above zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isPositive() {
        return millimetresPerHour > 0;
    }

    /**
     * Says whether this rainfall intensity is below zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isNegative() {
        return millimetresPerHour < 0;
    }

    /**
     * Returns the number of millimetres per hour, as stored.
     *
     * @return the millimetres per hour
     * @since 0.1
     */
    public double toMillimetresPerHour() {
        return millimetresPerHour;
    }

    /**
     * Returns the number of litres per second on each square metre.
     *
     * @return the litres per second on a square metre
     * @since 0.1
     */
    public double toLitresPerSecondPerSquareMetre() {
        return millimetresPerHour / SECONDS_IN_AN_HOUR;
    }

    /**
     * Returns the number of inches per hour.
     *
     * @return the inches per hour
     * @since 0.1
     */
    public double toInchesPerHour() {
        return millimetresPerHour / MILLIMETRES_IN_AN_INCH;
    }

    /**
     * Returns the number of metres of depth per second.
     *
     * @return the number
     * @since 0.1
     */
    @Override
    public double toSi() {
        return millimetresPerHour / MILLIMETRES_PER_HOUR_IN_A_METRE_PER_SECOND;
    }

    /**
     * Returns {@link QuantityKind#RAINFALL_INTENSITY}.
     *
     * @return the kind
     */
    @Override
    public QuantityKind kind() {
        return QuantityKind.RAINFALL_INTENSITY;
    }

    /**
     * Compares this rainfall intensity with another, exactly.
     *
     * @param other  the other rainfall intensity
     * @return below, equal to or above zero as this rainfall intensity is less, equal or greater
     */
    @Override
    public int compareTo(RainfallIntensity other) {
        return Double.compare(millimetresPerHour, other.millimetresPerHour);
    }

    /**
     * Says whether another object is a rainfall intensity with the same stored number.
     *
     * @param other  the other object
     * @return true if it is
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof RainfallIntensity that && millimetresPerHour == that.millimetresPerHour;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(millimetresPerHour);
    }

    /**
     * Returns the rainfall intensity in millimetres per hour, with the fewest digits that read back exactly: {@code
     * 75 mm/h}.
     *
     * @return the text, which {@link #parse} reads back to an equal rainfall intensity
     */
    @Override
    public String toString() {
        return Decimals.text(millimetresPerHour) + " mm/h";
    }
}
