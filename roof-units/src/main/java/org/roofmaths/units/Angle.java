package org.roofmaths.units;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * An angle between two lines or planes, or a turn; it may be negative or more than a full turn.
 * <p>
 * Stored as a finite {@code double} of degrees. Nothing is normalised unless asked for: 370° and 10° are different
 * angles, {@code 370°.normalised()} is 10°. Two angles are equal when their stored numbers are. The slope of a roof is
 * a {@link Pitch}. Immutable and thread-safe.
 * <pre>{@code
 * Angle.ofDegreesMinutesSeconds(22, 30, 15)   // 22.504166666666666°
 * Angle.ofDegrees(-30).normalised()           // 330°
 * }</pre>
 *
 * @since 0.1
 */
public final class Angle implements Quantity, Comparable<Angle> {
    private static final String WHAT = "angle";
    private static final double FULL_TURN = 360;
    private static final double HALF_TURN = 180;
    private static final double RIGHT_ANGLE = 90;
    private static final int SIXTY = 60;
    private static final int SECONDS_IN_A_DEGREE = 3600;

    /**
     * No angle at all.
     *
     * @since 0.1
     */
    public static final Angle ZERO = new Angle(0);

    private final double degrees;

    private Angle(double degrees) {
        this.degrees = degrees;
    }

    private static Angle result(double degrees) {
        return new Angle(Decimals.result(degrees, WHAT));
    }

    /**
     * Returns an angle in degrees.
     *
     * @param degrees  the number of degrees, finite
     * @return the angle
     * @throws IllegalArgumentException if the number is not finite
     * @since 0.1
     */
    public static Angle ofDegrees(double degrees) {
        return new Angle(Decimals.finite(degrees, WHAT));
    }

    /**
     * Returns an angle in radians.
     *
     * @param radians  the number of radians, finite
     * @return the angle
     * @throws IllegalArgumentException if the number, or the angle it makes, is not finite
     * @since 0.1
     */
    public static Angle ofRadians(double radians) {
        return new Angle(Decimals.finite(StrictMath.toDegrees(radians), WHAT));
    }

    /**
     * Returns an angle in degrees, minutes of 1/60 degree and seconds of 1/60 minute.
     * <p>
     * For example, {@code ofDegreesMinutesSeconds(22, 30, 0)} is 22.5°. For a negative angle take the
     * {@link #negated()} one.
     *
     * @param degrees  the whole degrees, 0 or more
     * @param minutes  the whole minutes, 0 to 59
     * @param seconds  the seconds, from 0 to below 60
     * @return the angle
     * @throws IllegalArgumentException if a part is outside its range
     * @since 0.1
     */
    public static Angle ofDegreesMinutesSeconds(int degrees, int minutes, double seconds) {
        if (degrees < 0) {
            throw new IllegalArgumentException(
                    "degrees must be zero or more, but was " + degrees + "; for a negative angle take the negated one");
        }
        if (minutes < 0 || minutes >= SIXTY) {
            throw new IllegalArgumentException("minutes must be from 0 to 59, but was " + minutes);
        }
        if (!(seconds >= 0 && seconds < SIXTY)) {
            throw new IllegalArgumentException(
                    "seconds must be zero or more and below 60, but was " + Decimals.text(seconds));
        }
        return new Angle(ofParts(degrees, minutes, seconds));
    }

    /** One rounding for the seconds and one for the quotient, so that whole seconds give the nearest double. */
    static double ofParts(double degrees, double minutes, double seconds) {
        return (degrees * SECONDS_IN_A_DEGREE + minutes * SIXTY + seconds) / SECONDS_IN_A_DEGREE;
    }

    /**
     * Reads an angle.
     * <p>
     * A minus sign may stand right before the first number. Then one of these; spaces may stand between the parts,
     * before and after:
     * <ul>
     * <li>a number and {@code °}, {@code deg} or {@code rad}: {@code 35°}, {@code 35 deg}, {@code 0.5 rad};
     * <li>whole degrees and minutes, or whole degrees, whole minutes and seconds: {@code 22° 30'}, {@code 22° 30' 15"},
     *     {@code 22° 30' 15.5"}.
     * </ul>
     * A number is written as for {@link Length#parse}, and the same marks are read for minutes as there for feet, for
     * seconds as there for inches. Minutes and seconds are below 60.
     *
     * @param text  the whole text
     * @return the angle
     * @throws QuantityParseException if the text is anything else
     * @since 0.1
     */
    public static Angle parse(String text) {
        return new Angle(AngleText.read(Objects.requireNonNull(text, "text")));
    }

    /**
     * Returns the sum of this angle and another.
     *
     * @param other  the angle to add
     * @return the sum
     * @throws ArithmeticException if the sum is beyond the range of a double
     * @since 0.1
     */
    public Angle plus(Angle other) {
        return result(degrees + other.degrees);
    }

    /**
     * Returns this angle less another.
     *
     * @param other  the angle to take away
     * @return the difference
     * @throws ArithmeticException if the difference is beyond the range of a double
     * @since 0.1
     */
    public Angle minus(Angle other) {
        return result(degrees - other.degrees);
    }

    /**
     * Returns this angle times a factor.
     *
     * @param factor  the factor, finite
     * @return the product
     * @throws IllegalArgumentException if the factor is not finite
     * @throws ArithmeticException if the product is beyond the range of a double
     * @since 0.1
     */
    public Angle times(double factor) {
        return result(degrees * Decimals.finite(factor, "factor"));
    }

    /**
     * Returns this angle times a ratio.
     *
     * @param ratio  the factor
     * @return the product
     * @throws ArithmeticException if the product is beyond the range of a double
     * @since 0.1
     */
    public Angle times(Ratio ratio) {
        return times(ratio.toDouble());
    }

    /**
     * Returns this angle divided by a number.
     *
     * @param divisor  the number, finite and not zero
     * @return the quotient
     * @throws IllegalArgumentException if the divisor is not finite
     * @throws ArithmeticException if the divisor is zero or the quotient beyond the range of a double
     * @since 0.1
     */
    public Angle dividedBy(double divisor) {
        return result(degrees / Decimals.divisor(divisor));
    }

    /**
     * Returns how many times as great this angle is as another.
     *
     * @param other  the angle to compare with, not zero
     * @return the ratio
     * @throws ArithmeticException if the other angle is zero or the ratio beyond the range of a double
     * @since 0.1
     */
    public Ratio dividedBy(Angle other) {
        return Ratio.result(degrees / Decimals.divisor(other.degrees));
    }

    /**
     * Returns this angle with its sign turned.
     *
     * @return the negative
     * @since 0.1
     */
    public Angle negated() {
        return result(-degrees);
    }

    /**
     * Returns this angle without its sign.
     *
     * @return the size, zero or more
     * @since 0.1
     */
    public Angle abs() {
        return degrees < 0 ? negated() : this;
    }

    /**
     * Returns the lesser of this angle and another.
     *
     * @param other  the other angle
     * @return the one that compares as less
     * @since 0.1
     */
    public Angle min(Angle other) {
        return other.degrees < degrees ? other : this;
    }

    /**
     * Returns the greater of this angle and another.
     *
     * @param other  the other angle
     * @return the one that compares as greater
     * @since 0.1
     */
    public Angle max(Angle other) {
        return other.degrees > degrees ? other : this;
    }

    /**
     * Returns the same direction within one turn: from 0° to below 360°.
     *
     * @return the angle less as many whole turns as it holds
     * @since 0.1
     */
    public Angle normalised() {
        double signed = normalisedSigned().degrees;
        // Just below zero, adding a turn rounds up to the whole turn.
        return result(signed < 0 ? Math.min(signed + FULL_TURN, Math.nextDown(FULL_TURN)) : signed);
    }

    /**
     * Returns the same direction by the shorter way round: from above -180° to 180°.
     *
     * @return the angle less as many whole turns as it takes
     * @since 0.1
     */
    public Angle normalisedSigned() {
        double remainder = Math.IEEEremainder(degrees, FULL_TURN);
        return result(remainder == -HALF_TURN ? HALF_TURN : remainder);
    }

    /**
     * Says whether this angle is greater than another, exactly and without normalising.
     *
     * @param other  the other angle
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isGreaterThan(Angle other) {
        return degrees > other.degrees;
    }

    /**
     * Says whether this angle is less than another, exactly and without normalising.
     *
     * @param other  the other angle
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isLessThan(Angle other) {
        return degrees < other.degrees;
    }

    /**
     * Says whether this angle is as near to another as a tolerance asks, without normalising; the edge counts, decided
     * on the decimals that {@code toString} prints.
     *
     * @param tolerance  how far apart they may be
     * @param other  the other angle
     * @return true if the two differ by no more than the tolerance
     * @since 0.1
     */
    public boolean isWithin(Tolerance<Angle> tolerance, Angle other) {
        return Decimals.isWithin(degrees, other.degrees, tolerance.amount().degrees);
    }

    /**
     * Says whether this angle is zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isZero() {
        return degrees == 0;
    }

    /**
     * Says whether this angle is above zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isPositive() {
        return degrees > 0;
    }

    /**
     * Says whether this angle is below zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isNegative() {
        return degrees < 0;
    }

    /**
     * Returns the sine, exact at whole multiples of 30° where it is a half or a whole.
     *
     * @return the sine, from -1 to 1
     * @since 0.1
     */
    public double sin() {
        return Degrees.sin(degrees);
    }

    /**
     * Returns the cosine, exact at whole multiples of 30° where it is a half or a whole.
     *
     * @return the cosine, from -1 to 1
     * @since 0.1
     */
    public double cos() {
        return Degrees.cos(degrees);
    }

    /**
     * Returns the tangent, exact at whole multiples of 45°.
     *
     * @return the tangent
     * @throws ArithmeticException if the angle is a right angle, or one with whole half turns added
     * @since 0.1
     */
    public double tan() {
        if (Math.abs(Math.IEEEremainder(degrees, HALF_TURN)) == RIGHT_ANGLE) {
            throw new ArithmeticException("there is no tangent of " + this);
        }
        return Degrees.tan(degrees);
    }

    /**
     * Returns the number of degrees, as stored.
     *
     * @return the degrees
     * @since 0.1
     */
    public double toDegrees() {
        return degrees;
    }

    /**
     * Returns the number of radians.
     *
     * @return the radians
     * @since 0.1
     */
    public double toRadians() {
        return StrictMath.toRadians(degrees);
    }

    /**
     * Returns the number of radians.
     *
     * @return the radians
     * @since 0.1
     */
    @Override
    public double toSi() {
        return toRadians();
    }

    /**
     * Returns {@link QuantityKind#ANGLE}.
     *
     * @return the kind
     */
    @Override
    public QuantityKind kind() {
        return QuantityKind.ANGLE;
    }

    /**
     * Compares this angle with another, exactly and without normalising.
     *
     * @param other  the other angle
     * @return below, equal to or above zero as this angle is less, equal or greater
     */
    @Override
    public int compareTo(Angle other) {
        return Double.compare(degrees, other.degrees);
    }

    /**
     * Says whether another object is an angle with the same stored number.
     *
     * @param other  the other object
     * @return true if it is
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Angle that && degrees == that.degrees;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(degrees);
    }

    /**
     * Returns the angle in degrees, with the fewest digits that read back exactly: {@code 35°}.
     *
     * @return the text, which {@link #parse} reads back to an equal angle
     */
    @Override
    public String toString() {
        return Decimals.text(degrees) + "°";
    }
}
