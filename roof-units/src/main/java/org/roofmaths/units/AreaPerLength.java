package org.roofmaths.units;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * An area for each unit of length, such as the open area of a long slot.
 * <p>
 * A slot of an even width has as many thousand square millimetres per metre as its width has millimetres: see
 * {@link #ofGap} and {@link #toGap}.
 * <p>
 * Stored as a finite {@code double} of square millimetres per metre. Two are equal when their stored numbers are.
 * Immutable and thread-safe.
 * <pre>{@code
 * AreaPerLength.ofGap(Length.ofMillimetres(10))   // 10000 mm²/m
 * }</pre>
 *
 * @since 0.1
 */
public final class AreaPerLength implements Quantity, Comparable<AreaPerLength> {
    private static final String WHAT = "area per length";
    private static final double SQUARE_MILLIMETRES_IN_A_SQUARE_METRE = 1e6;
    private static final double SQUARE_MILLIMETRES_PER_METRE_IN_A_MILLIMETRE = 1000;
    private static final Symbols SYMBOLS = new Symbols("number")
            .with("mm²/m", n -> n)
            .with("mm2/m", n -> n)
            .with("m²/m", n -> n * SQUARE_MILLIMETRES_IN_A_SQUARE_METRE)
            .with("m2/m", n -> n * SQUARE_MILLIMETRES_IN_A_SQUARE_METRE);

    /**
     * No area at all on any length.
     *
     * @since 0.1
     */
    public static final AreaPerLength ZERO = new AreaPerLength(0);

    private final double squareMillimetresPerMetre;

    private AreaPerLength(double squareMillimetresPerMetre) {
        this.squareMillimetresPerMetre = squareMillimetresPerMetre;
    }

    static AreaPerLength result(double squareMillimetresPerMetre) {
        return new AreaPerLength(Decimals.result(squareMillimetresPerMetre, WHAT));
    }

    /**
     * Returns an area per length in square millimetres per metre.
     *
     * @param squareMillimetresPerMetre  the number of square millimetres per metre, finite
     * @return the area per length
     * @throws IllegalArgumentException if the number, or the area per length it makes, is not finite
     * @since 0.1
     */
    public static AreaPerLength ofSquareMillimetresPerMetre(double squareMillimetresPerMetre) {
        return new AreaPerLength(Decimals.finite(squareMillimetresPerMetre, WHAT));
    }

    /**
     * Returns the area per length of a slot of an even width: 10000 mm²/m for 10 mm.
     *
     * @param width  the width of the slot
     * @return the area per length
     * @since 0.1
     */
    public static AreaPerLength ofGap(Length width) {
        return new AreaPerLength(width.toMillimetres() * SQUARE_MILLIMETRES_PER_METRE_IN_A_MILLIMETRE);
    }

    /**
     * Reads an area per length.
     * <p>
     * A number and {@code mm²/m} or {@code m²/m}, with {@code 2} read for {@code ²}: {@code 10000 mm²/m}. A number is
     * written as for {@link Length#parse}; spaces may stand around the parts.
     *
     * @param text  the whole text
     * @return the area per length
     * @throws QuantityParseException if the text is anything else
     * @since 0.1
     */
    public static AreaPerLength parse(String text) {
        return new AreaPerLength(SYMBOLS.read(Objects.requireNonNull(text, "text")));
    }

    /**
     * Returns the sum of this area per length and another.
     *
     * @param other  the area per length to add
     * @return the sum
     * @throws ArithmeticException if the sum is beyond the range of a double
     * @since 0.1
     */
    public AreaPerLength plus(AreaPerLength other) {
        return result(squareMillimetresPerMetre + other.squareMillimetresPerMetre);
    }

    /**
     * Returns this area per length less another.
     *
     * @param other  the area per length to take away
     * @return the difference
     * @throws ArithmeticException if the difference is beyond the range of a double
     * @since 0.1
     */
    public AreaPerLength minus(AreaPerLength other) {
        return result(squareMillimetresPerMetre - other.squareMillimetresPerMetre);
    }

    /**
     * Returns this area per length times a factor.
     *
     * @param factor  the factor, finite
     * @return the product
     * @throws IllegalArgumentException if the factor is not finite
     * @throws ArithmeticException if the product is beyond the range of a double
     * @since 0.1
     */
    public AreaPerLength times(double factor) {
        return result(squareMillimetresPerMetre * Decimals.finite(factor, "factor"));
    }

    /**
     * Returns this area per length times a ratio.
     *
     * @param ratio  the factor
     * @return the product
     * @throws ArithmeticException if the product is beyond the range of a double
     * @since 0.1
     */
    public AreaPerLength times(Ratio ratio) {
        return times(ratio.toDouble());
    }

    /**
     * Returns the area on so much length.
     * <p>
     * For example, 10000 mm²/m times 5 m is 0.05 m².
     *
     * @param length  the length
     * @return the area
     * @throws ArithmeticException if the area is beyond the range of a double
     * @since 0.1
     */
    public Area times(Length length) {
        return Area.result(squareMillimetresPerMetre * length.toMetres() / SQUARE_MILLIMETRES_IN_A_SQUARE_METRE);
    }

    /**
     * Returns this area per length divided by a number.
     *
     * @param divisor  the number, finite and not zero
     * @return the quotient
     * @throws IllegalArgumentException if the divisor is not finite
     * @throws ArithmeticException if the divisor is zero or the quotient beyond the range of a double
     * @since 0.1
     */
    public AreaPerLength dividedBy(double divisor) {
        return result(squareMillimetresPerMetre / Decimals.divisor(divisor));
    }

    /**
     * Returns how many times as great this area per length is as another.
     *
     * @param other  the area per length to compare with, not zero
     * @return the ratio
     * @throws ArithmeticException if the other area per length is zero or the ratio beyond the range of a double
     * @since 0.1
     */
    public Ratio dividedBy(AreaPerLength other) {
        return Ratio.result(squareMillimetresPerMetre / Decimals.divisor(other.squareMillimetresPerMetre));
    }

    /**
     * Returns this area per length with its sign turned.
     *
     * @return the negative
     * @since 0.1
     */
    public AreaPerLength negated() {
        return result(-squareMillimetresPerMetre);
    }

    /**
     * Returns this area per length without its sign.
     *
     * @return the size, zero or more
     * @since 0.1
     */
    public AreaPerLength abs() {
        return squareMillimetresPerMetre < 0 ? negated() : this;
    }

    /**
     * Returns the lesser of this area per length and another.
     *
     * @param other  the other area per length
     * @return the one that compares as less
     * @since 0.1
     */
    public AreaPerLength min(AreaPerLength other) {
        return other.squareMillimetresPerMetre < squareMillimetresPerMetre ? other : this;
    }

    /**
     * Returns the greater of this area per length and another.
     *
     * @param other  the other area per length
     * @return the one that compares as greater
     * @since 0.1
     */
    public AreaPerLength max(AreaPerLength other) {
        return other.squareMillimetresPerMetre > squareMillimetresPerMetre ? other : this;
    }

    /**
     * Says whether this area per length is greater than another, exactly.
     *
     * @param other  the other area per length
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isGreaterThan(AreaPerLength other) {
        return squareMillimetresPerMetre > other.squareMillimetresPerMetre;
    }

    /**
     * Says whether this area per length is less than another, exactly.
     *
     * @param other  the other area per length
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isLessThan(AreaPerLength other) {
        return squareMillimetresPerMetre < other.squareMillimetresPerMetre;
    }

    /**
     * Says whether this area per length is as near to another as a tolerance asks; the edge counts, decided on the
     * decimals that {@code toString} prints.
     *
     * @param tolerance  how far apart they may be
     * @param other  the other area per length
     * @return true if the two differ by no more than the tolerance
     * @since 0.1
     */
    public boolean isWithin(Tolerance<AreaPerLength> tolerance, AreaPerLength other) {
        return Decimals.isWithin(
                squareMillimetresPerMetre,
                other.squareMillimetresPerMetre,
                tolerance.amount().squareMillimetresPerMetre);
    }

    /**
     * Says whether this area per length is zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isZero() {
        return squareMillimetresPerMetre == 0;
    }

    /**
     * Says whether this area per length is above zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isPositive() {
        return squareMillimetresPerMetre > 0;
    }

    /**
     * Says whether this area per length is below zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isNegative() {
        return squareMillimetresPerMetre < 0;
    }

    /**
     * Returns the number of square millimetres per metre, as stored.
     *
     * @return the square millimetres per metre
     * @since 0.1
     */
    public double toSquareMillimetresPerMetre() {
        return squareMillimetresPerMetre;
    }

    /**
     * Returns the even width of a slot with this area per length, to the nearest nanometre, a tie to the even one.
     *
     * @return the width: 10 mm for 10000 mm²/m
     * @throws ArithmeticException if the width is beyond the range of a length
     * @since 0.1
     */
    public Length toGap() {
        return Length.result(toSi());
    }

    /**
     * Returns the number of square metres per metre.
     *
     * @return the number
     * @since 0.1
     */
    @Override
    public double toSi() {
        return squareMillimetresPerMetre / SQUARE_MILLIMETRES_IN_A_SQUARE_METRE;
    }

    /**
     * Returns {@link QuantityKind#AREA_PER_LENGTH}.
     *
     * @return the kind
     */
    @Override
    public QuantityKind kind() {
        return QuantityKind.AREA_PER_LENGTH;
    }

    /**
     * Compares this area per length with another, exactly.
     *
     * @param other  the other area per length
     * @return below, equal to or above zero as this area per length is less, equal or greater
     */
    @Override
    public int compareTo(AreaPerLength other) {
        return Double.compare(squareMillimetresPerMetre, other.squareMillimetresPerMetre);
    }

    /**
     * Says whether another object is an area per length with the same stored number.
     *
     * @param other  the other object
     * @return true if it is
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof AreaPerLength that && squareMillimetresPerMetre == that.squareMillimetresPerMetre;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(squareMillimetresPerMetre);
    }

    /**
     * Returns the area per length in square millimetres per metre, with the fewest digits that read back exactly:
     * {@code 10000 mm²/m}.
     *
     * @return the text, which {@link #parse} reads back to an equal area per length
     */
    @Override
    public String toString() {
        return Decimals.text(squareMillimetresPerMetre) + " mm²/m";
    }
}
