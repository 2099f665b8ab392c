package org.roofmaths.units;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The size of a surface. Whether it was measured along a slope or on plan is for the method that returns it to say.
 * <p>
 * Stored as a finite {@code double} of square metres; a sum may differ from the decimal one in its last digit. Two
 * areas are equal when their stored numbers are. Immutable and thread-safe.
 * <pre>{@code
 * Length.ofMetres(4.6).times(Length.ofMetres(2.7))   // 12.42 m²
 * }</pre>
 *
 * @since 0.1
 */
public final class Area implements Quantity, Comparable<Area> {
    private static final String WHAT = "area";
    private static final double SQUARE_MILLIMETRES_IN_A_SQUARE_METRE = 1e6;
    private static final double SQUARE_METRES_IN_A_SQUARE_FOOT = 0.09290304;
    private static final Symbols SYMBOLS = new Symbols("number")
            .with("m²", n -> n)
            .with("m2", n -> n)
            .with("mm²", n -> n / SQUARE_MILLIMETRES_IN_A_SQUARE_METRE)
            .with("mm2", n -> n / SQUARE_MILLIMETRES_IN_A_SQUARE_METRE)
            .with("ft²", n -> n * SQUARE_METRES_IN_A_SQUARE_FOOT)
            .with("ft2", n -> n * SQUARE_METRES_IN_A_SQUARE_FOOT);

    /**
     * No area at all.
     *
     * @since 0.1
     */
    public static final Area ZERO = new Area(0);

    private final double squareMetres;

    private Area(double squareMetres) {
        this.squareMetres = squareMetres;
    }

    static Area result(double squareMetres) {
        return new Area(Decimals.result(squareMetres, WHAT));
    }

    /**
     * Returns an area in square metres.
     *
     * @param squareMetres  the number of square metres, finite
     * @return the area
     * @throws IllegalArgumentException if the number, or the area it makes, is not finite
     * @since 0.1
     */
    public static Area ofSquareMetres(double squareMetres) {
        return new Area(Decimals.finite(squareMetres, WHAT));
    }

    /**
     * Returns an area in square millimetres.
     *
     * @param squareMillimetres  the number of square millimetres, finite
     * @return the area
     * @throws IllegalArgumentException if the number, or the area it makes, is not finite
     * @since 0.1
     */
    public static Area ofSquareMillimetres(double squareMillimetres) {
        return new Area(Decimals.finite(squareMillimetres / SQUARE_MILLIMETRES_IN_A_SQUARE_METRE, WHAT));
    }

    /**
     * Returns an area in square feet; a square foot is exactly 0.09290304 m².
     *
     * @param squareFeet  the number of square feet, finite
     * @return the area
     * @throws IllegalArgumentException if the number, or the area it makes, is not finite
     * @since 0.1
     */
    public static Area ofSquareFeet(double squareFeet) {
        return new Area(Decimals.finite(squareFeet * SQUARE_METRES_IN_A_SQUARE_FOOT, WHAT));
    }

    /**
     * Reads an area.
     * <p>
     * A number and {@code m²}, {@code mm²} or {@code ft²}, with {@code 2} read for {@code ²}: {@code 15.46 m²},
     * {@code 10000 mm2}. A number is written as for {@link Length#parse}; spaces may stand around the parts.
     *
     * @param text  the whole text
     * @return the area
     * @throws QuantityParseException if the text is anything else
     * @since 0.1
     */
    public static Area parse(String text) {
        return new Area(SYMBOLS.read(Objects.requireNonNull(text, "text")));
    }

    /**
     * Returns the sum of this area and another.
     *
     * @param other  the area to add
     * @return the sum
     * @throws ArithmeticException if the sum is beyond the range of a double
     * @since 0.1
     */
    public Area plus(Area other) {
        return result(squareMetres + other.squareMetres);
    }

    /**
     * Returns this area less another.
     *
     * @param other  the area to take away
     * @return the difference
     * @throws ArithmeticException if the difference is beyond the range of a double
     * @since 0.1
     */
    public Area minus(Area other) {
        return result(squareMetres - other.squareMetres);
    }

    /**
     * Returns this area times a factor.
     *
     * @param factor  the factor, finite
     * @return the product
     * @throws IllegalArgumentException if the factor is not finite
     * @throws ArithmeticException if the product is beyond the range of a double
     * @since 0.1
     */
    public Area times(double factor) {
        return result(squareMetres * Decimals.finite(factor, "factor"));
    }

    /**
     * Returns this area times a ratio.
     *
     * @param ratio  the factor
     * @return the product
     * @throws ArithmeticException if the product is beyond the range of a double
     * @since 0.1
     */
    public Area times(Ratio ratio) {
        return times(ratio.toDouble());
    }

    /**
     * Returns the other side of a rectangle of this area, to the nearest nanometre, a tie to the even one.
     * <p>
     * For example, 12.42 m² divided by 2.7 m is 4.6 m.
     *
     * @param side  the one side, not zero
     * @return the other side
     * @throws ArithmeticException if the side is zero or the answer beyond the range of a length
     * @since 0.1
     */
    public Length dividedBy(Length side) {
        return Length.result(squareMetres / Decimals.divisor(side.toMetres()));
    }

    /**
     * Returns this area shared out evenly along a length.
     * <p>
     * For example, 0.05 m² per 5 m is 10000 mm²/m.
     *
     * @param length  the length, not zero
     * @return the area per length
     * @throws ArithmeticException if the length is zero or the answer beyond the range of a double
     * @since 0.1
     */
    public AreaPerLength per(Length length) {
        return AreaPerLength.result(toSquareMillimetres() / Decimals.divisor(length.toMetres()));
    }

    /**
     * Returns this area divided by a number.
     *
     * @param divisor  the number, finite and not zero
     * @return the quotient
     * @throws IllegalArgumentException if the divisor is not finite
     * @throws ArithmeticException if the divisor is zero or the quotient beyond the range of a double
     * @since 0.1
     */
    public Area dividedBy(double divisor) {
        return result(squareMetres / Decimals.divisor(divisor));
    }

    /**
     * Returns how many times as great this area is as another.
     *
     * @param other  the area to compare with, not zero
     * @return the ratio
     * @throws ArithmeticException if the other area is zero or the ratio beyond the range of a double
     * @since 0.1
     */
    public Ratio dividedBy(Area other) {
        return Ratio.result(squareMetres / Decimals.divisor(other.squareMetres));
    }

    /**
     * Returns this area with its sign turned.
     *
     * @return the negative
     * @since 0.1
     */
    public Area negated() {
        return result(-squareMetres);
    }

    /**
     * Returns this area without its sign.
     *
     * @return the size, zero or more
     * @since 0.1
     */
    public Area abs() {
        return squareMetres < 0 ? negated() : this;
    }

    /**
     * Returns the lesser of this area and another.
     *
     * @param other  the other area
     * @return the one that compares as less
     * @since 0.1
     */
    public Area min(Area other) {
        return other.squareMetres < squareMetres ? other : this;
    }

    /**
     * Returns the greater of this area and another.
     *
     * @param other  the other area
     * @return the one that compares as greater
     * @since 0.1
     */
    public Area max(Area other) {
        return other.squareMetres > squareMetres ? other : this;
    }

    /**
     * Says whether this area is greater than another, exactly.
     *
     * @param other  the other area
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isGreaterThan(Area other) {
        return squareMetres > other.squareMetres;
    }

    /**
     * Says whether this area is less than another, exactly.
     *
     * @param other  the other area
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isLessThan(Area other) {
        return squareMetres < other.squareMetres;
    }

    /**
     * Says whether this area is as near to another as a tolerance asks; the edge counts, decided on the decimals that
     * {@code toString} prints.
     *
     * @param tolerance  how far apart they may be
     * @param other  the other area
     * @return true if the two differ by no more than the tolerance
     * @since 0.1
     */
    public boolean isWithin(Tolerance<Area> tolerance, Area other) {
        return Decimals.isWithin(squareMetres, other.squareMetres, tolerance.amount().squareMetres);
    }

    /**
     * Says whether this area is zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isZero() {
        return squareMetres == 0;
    }

    /**
     * Says whether this area is above zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isPositive() {
        return squareMetres > 0;
    }

    /**
     * Says whether this area is below zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isNegative() {
        return squareMetres < 0;
    }

    /**
     * Returns the number of square metres, as stored.
     *
     * @return the square metres
     * @since 0.1
     */
    public double toSquareMetres() {
        return squareMetres;
    }

    /**
     * Returns the number of square millimetres.
     *
     * @return the square millimetres
     * @throws ArithmeticException if the number is beyond the range of a double
     * @since 0.1
     */
    public double toSquareMillimetres() {
        return Decimals.result(squareMetres * SQUARE_MILLIMETRES_IN_A_SQUARE_METRE, WHAT);
    }

    /**
     * Returns the number of square feet.
     *
     * @return the square feet
     * @throws ArithmeticException if the number is beyond the range of a double
     * @since 0.1
     */
    public double toSquareFeet() {
        return Decimals.result(squareMetres / SQUARE_METRES_IN_A_SQUARE_FOOT, WHAT);
    }

    /**
     * Returns the number of square metres.
     *
     * @return the number
     * @since 0.1
     */
    @Override
    public double toSi() {
        return squareMetres;
    }

    /**
     * Returns {@link QuantityKind#AREA}.
     *
     * @return the kind
     */
    @Override
    public QuantityKind kind() {
        return QuantityKind.AREA;
    }

    /**
     * Compares this area with another, exactly.
     *
     * @param other  the other area
     * @return below, equal to or above zero as this area is less, equal or greater
     */
    @Override
    public int compareTo(Area other) {
        return Double.compare(squareMetres, other.squareMetres);
    }

    /**
     * Says whether another object is an area with the same stored number.
     *
     * @param other  the other object
     * @return true if it is
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Area that && squareMetres == that.squareMetres;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(squareMetres);
    }

    /**
     * Returns the area in square metres, with the fewest digits that read back exactly: {@code 15.46 m²}.
     *
     * @return the text, which {@link #parse} reads back to an equal area
     */
    @Override
    public String toString() {
        return Decimals.text(squareMetres) + " m²";
    }
}
