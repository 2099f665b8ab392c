package org.roofmaths.units;

import java.math.BigDecimal;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A distance: the size of a part, a place along a line, or a difference of the two (so it may be negative).
 * <p>
 * Stored as a whole number of nanometres in a {@code long}. Both a millimetre and 1/64 of an inch are whole numbers of
 * nanometres, so sums and differences are exact whatever units went in. The range is about ±9.2 million kilometres;
 * sums that leave it throw {@link ArithmeticException}. Factories and products that must round go to the nearest
 * nanometre, a tie to the even one, and say so.
 * <p>
 * Two lengths are equal when their nanometres are equal, whatever units they were made from. A length does not know
 * whether it lies level, plumb or on a slope: see {@link Offset}. Immutable and thread-safe.
 * <table>
 * <caption>Methods by purpose</caption>
 * <tr><th>make</th><td>{@code ofMillimetres ofCentimetres ofMetres ofInches ofDecimalInches ofFeetAndInches
 * ofDecimalFeet ofYards ofNanometres parse}</td></tr>
 * <tr><th>sum</th><td>{@code sum plus minus times dividedBy negated abs min max}</td></tr>
 * <tr><th>count</th><td>{@code timesIn timesToCover}</td></tr>
 * <tr><th>compare</th><td>{@code isLongerThan isShorterThan meetsLeast meetsGreatest isWithin isZero isPositive
 * isNegative}</td></tr>
 * <tr><th>read</th><td>{@code toMillimetres toCentimetres toMetres toInches toFeet toYards toNanometres}</td></tr>
 * </table>
 * <pre>{@code
 * Length.ofMillimetres(0.1).plus(Length.ofMillimetres(0.2))   // 0.3 mm
 * Length.ofInches(13, 9, 16)                                  // 344.4875 mm
 * }</pre>
 *
 * @since 0.1
 */
public final class Length implements Quantity, Comparable<Length> {
    static final long NANOMETRES_IN_A_MILLIMETRE = 1_000_000;
    static final long NANOMETRES_IN_A_CENTIMETRE = 10_000_000;
    static final long NANOMETRES_IN_A_METRE = 1_000_000_000;
    // The international inch, foot and yard: exactly 25.4 mm, 304.8 mm and 914.4 mm.
    static final long NANOMETRES_IN_AN_INCH = 25_400_000;
    static final long NANOMETRES_IN_A_FOOT = 304_800_000;
    static final long NANOMETRES_IN_A_YARD = 914_400_000;

    private static final double TOO_LONG = 0x1p63;
    private static final int INCHES_IN_A_FOOT = 12;
    private static final double SQUARE_NANOMETRES_IN_A_SQUARE_METRE = 1e18;
    private static final int DECIMALS_OF_A_MILLIMETRE = 6;

    /**
     * No distance at all.
     *
     * @since 0.1
     */
    public static final Length ZERO = new Length(0);

    /**
     * The difference that counts for nothing when a limit or a whole count is decided: 0.0001 mm, that is 100 nm.
     * <p>
     * Parts of a sum are each stored to the nearest nanometre, so a distance that is ten gauges of 300 mm by
     * arithmetic may be stored as 3000.000001 mm. That must not ask for an eleventh gauge. The resolution is far below
     * what anyone can measure and far above what storage can add up to.
     *
     * @since 0.1
     */
    public static final Length STORAGE_RESOLUTION = new Length(100);

    private final long nanometres;

    private Length(long nanometres) {
        this.nanometres = nanometres;
    }

    private static Length of(long nanometres) {
        // Without the lowest long every length has a negative, and negated() and abs() cannot fail.
        if (nanometres == Long.MIN_VALUE) {
            throw new ArithmeticException("long overflow");
        }
        return new Length(nanometres);
    }

    /** The answer of a formula in metres, or an overflow. */
    static Length result(double metres) {
        return rounded(metres * NANOMETRES_IN_A_METRE);
    }

    private static Length rounded(double nanometres) {
        double whole = Math.rint(nanometres);
        if (!(Math.abs(whole) < TOO_LONG)) {
            throw new ArithmeticException("length is beyond its range");
        }
        return new Length((long) whole);
    }

    private static Length ofUnits(double number, long unit, String symbol) {
        double whole = Math.rint(number * unit);
        if (!(Math.abs(whole) < TOO_LONG)) {
            throw new IllegalArgumentException(
                    Double.isFinite(number)
                            ? LengthText.RANGE + ", but was " + Decimals.text(number) + " " + symbol
                            : "length must be a finite number, but was " + number);
        }
        return new Length((long) whole);
    }

    /**
     * Returns a length of whole nanometres.
     *
     * @param nanometres  the number of nanometres, any but {@link Long#MIN_VALUE}
     * @return the length, exact
     * @throws ArithmeticException if {@code nanometres} is {@link Long#MIN_VALUE}
     * @since 0.1
     */
    public static Length ofNanometres(long nanometres) {
        return of(nanometres);
    }

    /**
     * Returns a length in millimetres, to the nearest nanometre, a tie to the even one.
     * <p>
     * For example, {@code ofMillimetres(344.4875)} is 13 9/16 in.
     *
     * @param millimetres  the number of millimetres, finite; it may be negative
     * @return the length
     * @throws IllegalArgumentException if the number is not finite or the length beyond its range
     * @since 0.1
     */
    public static Length ofMillimetres(double millimetres) {
        return ofUnits(millimetres, NANOMETRES_IN_A_MILLIMETRE, "mm");
    }

    /**
     * Returns a length in centimetres, to the nearest nanometre, a tie to the even one.
     *
     * @param centimetres  the number of centimetres, finite; it may be negative
     * @return the length
     * @throws IllegalArgumentException if the number is not finite or the length beyond its range
     * @since 0.1
     */
    public static Length ofCentimetres(double centimetres) {
        return ofUnits(centimetres, NANOMETRES_IN_A_CENTIMETRE, "cm");
    }

    /**
     * Returns a length in metres, to the nearest nanometre, a tie to the even one.
     *
     * @param metres  the number of metres, finite; it may be negative
     * @return the length
     * @throws IllegalArgumentException if the number is not finite or the length beyond its range
     * @since 0.1
     */
    public static Length ofMetres(double metres) {
        return ofUnits(metres, NANOMETRES_IN_A_METRE, "m");
    }

    /**
     * Returns a length in whole inches and a fraction, as read off a tape; exact.
     * <p>
     * For example, {@code ofInches(13, 9, 16)} is 13 9/16 in, which is 344.4875 mm. For a negative length take the
     * {@link #negated()} one.
     *
     * @param whole  the whole inches, 0 or more
     * @param numerator  the upper number of the fraction, from 0 to below the denominator
     * @param denominator  the lower number: 1, 2, 4, 8, 16, 32 or 64
     * @return the length
     * @throws IllegalArgumentException if a part is outside its range
     * @throws ArithmeticException if the length is beyond its range
     * @since 0.1
     */
    public static Length ofInches(long whole, int numerator, int denominator) {
        checkNotNegative(whole, "inches");
        return of(Math.addExact(
                Math.multiplyExact(whole, NANOMETRES_IN_AN_INCH), nanometresOfFraction(numerator, denominator)));
    }

    /**
     * Returns a length in inches written as a decimal number, to the nearest nanometre, a tie to the even one.
     * <p>
     * For example, {@code ofDecimalInches(13.5625)} is 13 9/16 in.
     *
     * @param inches  the number of inches, finite; it may be negative
     * @return the length
     * @throws IllegalArgumentException if the number is not finite or the length beyond its range
     * @since 0.1
     */
    public static Length ofDecimalInches(double inches) {
        return ofUnits(inches, NANOMETRES_IN_AN_INCH, "in");
    }

    /**
     * Returns a length in feet, inches and a fraction of an inch; exact.
     * <p>
     * For example, {@code ofFeetAndInches(9, 4, 1, 2)} is 9 ft 4 1/2 in, which is 2857.5 mm. For a negative length take
     * the {@link #negated()} one.
     *
     * @param feet  the whole feet, 0 or more
     * @param inches  the whole inches, 0 to 11
     * @param numerator  the upper number of the fraction, from 0 to below the denominator
     * @param denominator  the lower number: 1, 2, 4, 8, 16, 32 or 64
     * @return the length
     * @throws IllegalArgumentException if a part is outside its range
     * @throws ArithmeticException if the length is beyond its range
     * @since 0.1
     */
    public static Length ofFeetAndInches(long feet, int inches, int numerator, int denominator) {
        checkNotNegative(feet, "feet");
        if (inches < 0 || inches >= INCHES_IN_A_FOOT) {
            throw new IllegalArgumentException("inches must be from 0 to 11 when feet are given, but was " + inches);
        }
        long belowAFoot = inches * NANOMETRES_IN_AN_INCH + nanometresOfFraction(numerator, denominator);
        return of(Math.addExact(Math.multiplyExact(feet, NANOMETRES_IN_A_FOOT), belowAFoot));
    }

    /**
     * Returns a length in feet written as a decimal number, to the nearest nanometre, a tie to the even one.
     * <p>
     * The digits after the point are tenths of a foot, not inches: {@code ofDecimalFeet(9.4)} is 9 ft 4.8 in.
     *
     * @param feet  the number of feet, finite; it may be negative
     * @return the length
     * @throws IllegalArgumentException if the number is not finite or the length beyond its range
     * @since 0.1
     */
    public static Length ofDecimalFeet(double feet) {
        return ofUnits(feet, NANOMETRES_IN_A_FOOT, "ft");
    }

    /**
     * Returns a length in yards, to the nearest nanometre, a tie to the even one.
     *
     * @param yards  the number of yards, finite; it may be negative
     * @return the length
     * @throws IllegalArgumentException if the number is not finite or the length beyond its range
     * @since 0.1
     */
    public static Length ofYards(double yards) {
        return ofUnits(yards, NANOMETRES_IN_A_YARD, "yd");
    }

    private static void checkNotNegative(long number, String what) {
        if (number < 0) {
            throw new IllegalArgumentException(
                    what + " must be zero or more, but was " + number + "; for a negative length take the negated one");
        }
    }

    private static long nanometresOfFraction(int numerator, int denominator) {
        if (!LengthText.isDenominator(denominator)) {
            throw new IllegalArgumentException(LengthText.DENOMINATORS + ", but was " + denominator);
        }
        if (numerator < 0 || numerator >= denominator) {
            throw new IllegalArgumentException(
                    "numerator must be from 0 to " + (denominator - 1) + ", but was " + numerator);
        }
        return NANOMETRES_IN_AN_INCH / denominator * numerator;
    }

    /**
     * Reads a length.
     * <p>
     * A minus sign may stand right before the first number. Then one of these; spaces may stand between the parts,
     * before and after:
     * <ul>
     * <li>a number and {@code mm}, {@code cm}, {@code m}, {@code in}, {@code ft} or {@code yd}: {@code 5.2 m},
     *     {@code 344.4875 mm}, {@code 13.5625 in};
     * <li>inches with a fraction: {@code 13 9/16 in}, {@code 9/16 in};
     * <li>whole feet and inches: {@code 9 ft 4 1/2 in}, {@code 9' 4 1/2"}, {@code 9 ft 4.5 in}.
     * </ul>
     * A number is written {@code 12}, {@code 12.5} or {@code 1.25E3}, with a point, a digit on each side of it, no
     * separator between thousands and at most 100 characters; it is rounded to the nearest nanometre, a tie to the even
     * one. A fraction is below one, its denominator 1, 2, 4, 8, 16, 32 or 64. Inches after feet are below 12. For feet
     * the marks {@code '}, {@code ′} and {@code ’} are read, for inches {@code "}, {@code ″} and {@code ”}; two single
     * marks are not a double one. A number without a unit is refused.
     *
     * @param text  the whole text
     * @return the length
     * @throws QuantityParseException if the text is anything else
     * @since 0.1
     */
    public static Length parse(String text) {
        return new Length(LengthText.read(Objects.requireNonNull(text, "text")));
    }

    /**
     * Returns the sum of this length and another, exact.
     *
     * @param other  the length to add
     * @return the sum
     * @throws ArithmeticException if the sum is beyond the range of a length
     * @since 0.1
     */
    public Length plus(Length other) {
        return of(Math.addExact(nanometres, other.nanometres));
    }

    /**
     * Returns the sum of some lengths, exact.
     *
     * @param lengths  the lengths
     * @return the sum; {@link #ZERO} if there are none
     * @throws ArithmeticException if a sum on the way is beyond the range of a length
     * @since 0.1
     */
    public static Length sum(Iterable<Length> lengths) {
        long sum = 0;
        for (Length length : lengths) {
            sum = Math.addExact(sum, length.nanometres);
        }
        return of(sum);
    }

    /**
     * Returns this length less another, exact.
     *
     * @param other  the length to take away
     * @return the difference
     * @throws ArithmeticException if the difference is beyond the range of a length
     * @since 0.1
     */
    public Length minus(Length other) {
        return of(Math.subtractExact(nanometres, other.nanometres));
    }

    /**
     * Returns so many times this length, exact.
     *
     * @param count  the number of times
     * @return the product
     * @throws ArithmeticException if the product is beyond the range of a length
     * @since 0.1
     */
    public Length times(long count) {
        return of(Math.multiplyExact(nanometres, count));
    }

    /**
     * Returns this length times a factor, to the nearest nanometre, a tie to the even one.
     *
     * @param factor  the factor, finite
     * @return the product
     * @throws IllegalArgumentException if the factor is not finite
     * @throws ArithmeticException if the product is beyond the range of a length
     * @since 0.1
     */
    public Length times(double factor) {
        return rounded(nanometres * Decimals.finite(factor, "factor"));
    }

    /**
     * Returns this length times a ratio, to the nearest nanometre, a tie to the even one.
     *
     * @param ratio  the factor
     * @return the product
     * @throws ArithmeticException if the product is beyond the range of a length
     * @since 0.1
     */
    public Length times(Ratio ratio) {
        return times(ratio.toDouble());
    }

    /**
     * Returns the area of the rectangle with this length and another as its sides.
     * <p>
     * For example, 4.6 m times 2.7 m is 12.42 m².
     *
     * @param width  the other side
     * @return the area; negative if just one of the two is
     * @since 0.1
     */
    public Area times(Length width) {
        return Area.ofSquareMetres(
                (double) nanometres * (double) width.nanometres / SQUARE_NANOMETRES_IN_A_SQUARE_METRE);
    }

    /**
     * Returns this length divided by a number, to the nearest nanometre, a tie to the even one.
     *
     * @param divisor  the number, finite and not zero
     * @return the quotient
     * @throws IllegalArgumentException if the divisor is not finite
     * @throws ArithmeticException if the divisor is zero or the quotient beyond the range of a length
     * @since 0.1
     */
    public Length dividedBy(double divisor) {
        return rounded(nanometres / Decimals.divisor(divisor));
    }

    /**
     * Returns how many times as long this length is as another.
     *
     * @param other  the length to compare with, not zero
     * @return the ratio, negative if just one of the two lengths is
     * @throws ArithmeticException if the other length is zero
     * @since 0.1
     */
    public Ratio dividedBy(Length other) {
        return Ratio.of((double) nanometres / Decimals.divisor(other.nanometres));
    }

    /**
     * Returns this length with its sign turned.
     *
     * @return the negative of this length
     * @since 0.1
     */
    public Length negated() {
        return new Length(-nanometres);
    }

    /**
     * Returns this length without its sign.
     *
     * @return the size, zero or more
     * @since 0.1
     */
    public Length abs() {
        return nanometres < 0 ? negated() : this;
    }

    /**
     * Returns the shorter of this length and another; of two signed places, the lower.
     *
     * @param other  the other length
     * @return the one that compares as less
     * @since 0.1
     */
    public Length min(Length other) {
        return other.nanometres < nanometres ? other : this;
    }

    /**
     * Returns the longer of this length and another; of two signed places, the higher.
     *
     * @param other  the other length
     * @return the one that compares as greater
     * @since 0.1
     */
    public Length max(Length other) {
        return other.nanometres > nanometres ? other : this;
    }

    /**
     * Returns how many whole times this length goes into a distance, and what is left.
     * <p>
     * The count is decided at {@link #STORAGE_RESOLUTION}: a distance that falls short of a whole count by up to 100 nm
     * has that count, and a rest of as many nanometres below zero. Count and rest always make up the distance exactly.
     * For example, 325 mm goes 12 times into 3912 mm and leaves 12 mm.
     *
     * @param distance  the distance to fill, zero or more
     * @return the count and the rest
     * @throws IllegalArgumentException if this length is not longer than the storage resolution, or the distance is
     *     negative
     * @throws ArithmeticException if the distance is within 100 nm of the end of the range
     * @since 0.1
     */
    public WholeCount timesIn(Length distance) {
        checkCanCount(distance);
        long count = Math.addExact(distance.nanometres, STORAGE_RESOLUTION.nanometres) / nanometres;
        return new WholeCount(count, of(distance.nanometres - count * nanometres));
    }

    /**
     * Returns the least whole number of times this length that is as long as a distance.
     * <p>
     * Decided at {@link #STORAGE_RESOLUTION}: an excess of up to 100 nm over a whole count does not ask for one more,
     * any larger excess does. For example, 300 mm covers 3000 mm, and 3000.0001 mm, in 10; 3000.000101 mm takes 11.
     *
     * @param distance  the distance to cover, zero or more
     * @return the count, zero or more
     * @throws IllegalArgumentException if this length is not longer than the storage resolution, or the distance is
     *     negative
     * @since 0.1
     */
    public long timesToCover(Length distance) {
        checkCanCount(distance);
        long beyondResolution = distance.nanometres - STORAGE_RESOLUTION.nanometres;
        return Math.max(0, -Math.floorDiv(-beyondResolution, nanometres));
    }

    private void checkCanCount(Length distance) {
        if (nanometres <= STORAGE_RESOLUTION.nanometres) {
            throw new IllegalArgumentException(
                    "a length to count with must be longer than " + STORAGE_RESOLUTION + ", but was " + this);
        }
        if (distance.isNegative()) {
            throw new IllegalArgumentException("distance must be zero or more, but was " + distance);
        }
    }

    /**
     * Says whether this length is longer than another, exactly.
     *
     * @param other  the other length
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isLongerThan(Length other) {
        return nanometres > other.nanometres;
    }

    /**
     * Says whether this length is shorter than another, exactly.
     *
     * @param other  the other length
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isShorterThan(Length other) {
        return nanometres < other.nanometres;
    }

    /**
     * Says whether this length is at least as long as a lower limit, at {@link #STORAGE_RESOLUTION}: a shortfall of up
     * to 100 nm still meets it, any larger one does not.
     *
     * @param limit  the least length allowed
     * @return true if the limit is met
     * @since 0.1
     */
    public boolean meetsLeast(Length limit) {
        return nanometres >= limit.nanometres || isApartAtMost(limit, STORAGE_RESOLUTION);
    }

    /**
     * Says whether this length is no longer than an upper limit, at {@link #STORAGE_RESOLUTION}: an excess of up to
     * 100 nm still meets it, any larger one does not.
     *
     * @param limit  the greatest length allowed
     * @return true if the limit is met
     * @since 0.1
     */
    public boolean meetsGreatest(Length limit) {
        return nanometres <= limit.nanometres || isApartAtMost(limit, STORAGE_RESOLUTION);
    }

    /**
     * Says whether this length is as near to another as a tolerance asks; the edge counts.
     * <p>
     * For example, 300.5 mm is within 0.5 mm of 300 mm.
     *
     * @param tolerance  how far apart they may be
     * @param other  the other length
     * @return true if the two differ by no more than the tolerance
     * @since 0.1
     */
    public boolean isWithin(Tolerance<Length> tolerance, Length other) {
        return isApartAtMost(other, tolerance.amount());
    }

    private boolean isApartAtMost(Length other, Length most) {
        // A difference that overflows is negative here, and it is larger than any tolerance.
        long apart = Math.max(nanometres, other.nanometres) - Math.min(nanometres, other.nanometres);
        return apart >= 0 && apart <= most.nanometres;
    }

    /**
     * Says whether this length is zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isZero() {
        return nanometres == 0;
    }

    /**
     * Says whether this length is above zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isPositive() {
        return nanometres > 0;
    }

    /**
     * Says whether this length is below zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isNegative() {
        return nanometres < 0;
    }

    /**
     * Returns the whole number of nanometres, exact.
     *
     * @return the nanometres
     * @since 0.1
     */
    public long toNanometres() {
        return nanometres;
    }

    /**
     * Returns the number of millimetres, as a double.
     *
     * @return the millimetres
     * @since 0.1
     */
    public double toMillimetres() {
        return nanometres / (double) NANOMETRES_IN_A_MILLIMETRE;
    }

    /**
     * Returns the number of centimetres, as a double.
     *
     * @return the centimetres
     * @since 0.1
     */
    public double toCentimetres() {
        return nanometres / (double) NANOMETRES_IN_A_CENTIMETRE;
    }

    /**
     * Returns the number of metres, as a double.
     *
     * @return the metres
     * @since 0.1
     */
    public double toMetres() {
        return nanometres / (double) NANOMETRES_IN_A_METRE;
    }

    /**
     * Returns the number of inches as a decimal number, as a double.
     *
     * @return the inches
     * @since 0.1
     */
    public double toInches() {
        return nanometres / (double) NANOMETRES_IN_AN_INCH;
    }

    /**
     * Returns the number of feet as a decimal number, as a double. The digits after the point are not inches.
     *
     * @return the feet
     * @since 0.1
     */
    public double toFeet() {
        return nanometres / (double) NANOMETRES_IN_A_FOOT;
    }

    /**
     * Returns the number of yards as a decimal number, as a double.
     *
     * @return the yards
     * @since 0.1
     */
    public double toYards() {
        return nanometres / (double) NANOMETRES_IN_A_YARD;
    }

    /**
     * Returns the number of metres, as a double.
     *
     * @return the metres
     * @since 0.1
     */
    @Override
    public double toSi() {
        return toMetres();
    }

    /**
     * Returns {@link QuantityKind#LENGTH}.
     *
     * @return the kind
     */
    @Override
    public QuantityKind kind() {
        return QuantityKind.LENGTH;
    }

    /**
     * Compares this length with another, exactly.
     *
     * @param other  the other length
     * @return below, equal to or above zero as this length is shorter, equal or longer
     */
    @Override
    public int compareTo(Length other) {
        return Long.compare(nanometres, other.nanometres);
    }

    /**
     * Says whether another object is a length of as many nanometres.
     *
     * @param other  the other object
     * @return true if it is
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Length that && nanometres == that.nanometres;
    }

    @Override
    public int hashCode() {
        return Long.hashCode(nanometres);
    }

    /**
     * Returns the length in millimetres with as many decimals as it has, up to six: {@code 344.4875 mm}.
     *
     * @return the text, which {@link #parse} reads back to an equal length
     */
    @Override
    public String toString() {
        return BigDecimal.valueOf(nanometres, DECIMALS_OF_A_MILLIMETRE)
                        .stripTrailingZeros()
                        .toPlainString()
                + " mm";
    }
}
