package org.roofmaths.units;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How heavy a covering is for each unit of area.
 * <p>
 * Stored as a finite {@code double} of kilograms per square metre. Two are equal when their stored numbers are.
 * Immutable and thread-safe.
 * <pre>{@code
 * ArealMass.ofKilogramsPerSquareMetre(43.6).times(Area.ofSquareMetres(10))   // 436 kg
 * }</pre>
 *
 * @since 0.1
 */
public final class ArealMass implements Quantity, Comparable<ArealMass> {
    private static final String WHAT = "mass per area";
    // Exact: kilograms in a pound, square metres in a square foot.
    private static final double POUND = 0.45359237;
    private static final double SQUARE_FOOT = 0.09290304;
    private static final Symbols SYMBOLS = new Symbols("number")
            .with("kg/m²", n -> n)
            .with("kg/m2", n -> n)
            .with("lb/ft²", n -> n * POUND / SQUARE_FOOT)
            .with("lb/ft2", n -> n * POUND / SQUARE_FOOT);

    /**
     * No mass at all on any area.
     *
     * @since 0.1
     */
    public static final ArealMass ZERO = new ArealMass(0);

    private final double kilogramsPerSquareMetre;

    private ArealMass(double kilogramsPerSquareMetre) {
        this.kilogramsPerSquareMetre = kilogramsPerSquareMetre;
    }

    static ArealMass result(double kilogramsPerSquareMetre) {
        return new ArealMass(Decimals.result(kilogramsPerSquareMetre, WHAT));
    }

    /**
     * Returns a mass per area in kilograms per square metre.
     *
     * @param kilogramsPerSquareMetre  the number of kilograms per square metre, finite
     * @return the mass per area
     * @throws IllegalArgumentException if the number, or the mass per area it makes, is not finite
     * @since 0.1
     */
    public static ArealMass ofKilogramsPerSquareMetre(double kilogramsPerSquareMetre) {
        return new ArealMass(Decimals.finite(kilogramsPerSquareMetre, WHAT));
    }

    /**
     * Returns a mass per area in pounds per square foot.
     *
     * @param poundsPerSquareFoot  the number of pounds per square foot, finite
     * @return the mass per area
     * @throws IllegalArgumentException if the number, or the mass per area it makes, is not finite
     * @since 0.1
     */
    public static ArealMass ofPoundsPerSquareFoot(double poundsPerSquareFoot) {
        return new ArealMass(Decimals.finite(poundsPerSquareFoot * POUND / SQUARE_FOOT, WHAT));
    }

    /**
     * Reads a mass per area.
     * <p>
     * A number and {@code kg/m²} or {@code lb/ft²}, with {@code 2} read for {@code ²}: {@code 43.6 kg/m²}. A number
     * is written as for {@link Length#parse}; spaces may stand around the parts.
     *
     * @param text  the whole text
     * @return the mass per area
     * @throws QuantityParseException if the text is anything else
     * @since 0.1
     */
    public static ArealMass parse(String text) {
        return new ArealMass(SYMBOLS.read(Objects.requireNonNull(text, "text")));
    }

    /**
     * Returns the sum of this mass per area and another.
     *
     * @param other  the mass per area to add
     * @return the sum
     * @throws ArithmeticException if the sum is beyond the range of a double
     * @since 0.1
     */
    public ArealMass plus(ArealMass other) {
        return result(kilogramsPerSquareMetre + other.kilogramsPerSquareMetre);
    }

    /**
     * Returns this mass per area less another.
     *
     * @param other  the mass per area to take away
     * @return the difference
     * @throws ArithmeticException if the difference is beyond the range of a double
     * @since 0.1
     */
    public ArealMass minus(ArealMass other) {
        return result(kilogramsPerSquareMetre - other.kilogramsPerSquareMetre);
    }

    /**
     * Returns this mass per area times a factor.
     *
     * @param factor  the factor, finite
     * @return the product
     * @throws IllegalArgumentException if the factor is not finite
     * @throws ArithmeticException if the product is beyond the range of a double
     * @since 0.1
     */
    public ArealMass times(double factor) {
        return result(kilogramsPerSquareMetre * Decimals.finite(factor, "factor"));
    }

    /**
     * Returns this mass per area times a ratio.
     *
     * @param ratio  the factor
     * @return the product
     * @throws ArithmeticException if the product is beyond the range of a double
     * @since 0.1
     */
    public ArealMass times(Ratio ratio) {
        return times(ratio.toDouble());
    }

    /**
     * Returns the mass of so much area.
     * <p>
     * For example, 43.6 kg/m² times 10 m² is 436 kg.
     *
     * @param area  the area
     * @return the mass
     * @throws ArithmeticException if the mass is beyond the range of a double
     * @since 0.1
     */
    public Mass times(Area area) {
        return Mass.result(kilogramsPerSquareMetre * area.toSquareMetres());
    }

    /**
     * Returns this mass per area divided by a number.
     *
     * @param divisor  the number, finite and not zero
     * @return the quotient
     * @throws IllegalArgumentException if the divisor is not finite
     * @throws ArithmeticException if the divisor is zero or the quotient beyond the range of a double
     * @since 0.1
     */
    public ArealMass dividedBy(double divisor) {
        return result(kilogramsPerSquareMetre / Decimals.divisor(divisor));
    }

    /**
     * Returns how many times the other mass per area this one is.
     *
     * @param other  the mass per area to compare with, not zero
     * @return the ratio
     * @throws ArithmeticException if the other mass per area is zero or the ratio beyond the range of a double
     * @since 0.1
     */
    public Ratio dividedBy(ArealMass other) {
        return Ratio.result(kilogramsPerSquareMetre / Decimals.divisor(other.kilogramsPerSquareMetre));
    }

    /**
     * Returns this mass per area with its sign turned.
     *
     * @return the negative
     * @since 0.1
     */
    public ArealMass negated() {
        return result(-kilogramsPerSquareMetre);
    }

    /**
     * Returns this mass per area without its sign.
     *
     * @return the size, zero or more
     * @since 0.1
     */
    public ArealMass abs() {
        return kilogramsPerSquareMetre < 0 ? negated() : this;
    }

    /**
     * Returns the lighter of this mass per area and another.
     *
     * @param other  the other mass per area
     * @return the one that compares as less
     * @since 0.1
     */
    public ArealMass min(ArealMass other) {
        return other.kilogramsPerSquareMetre < kilogramsPerSquareMetre ? other : this;
    }

    /**
     * Returns the heavier of this mass per area and another.
     *
     * @param other  the other mass per area
     * @return the one that compares as greater
     * @since 0.1
     */
    public ArealMass max(ArealMass other) {
        return other.kilogramsPerSquareMetre > kilogramsPerSquareMetre ? other : this;
    }

    /**
     * Says whether this mass per area is heavier than another, exactly.
     *
     * @param other  the other mass per area
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isHeavierThan(ArealMass other) {
        return kilogramsPerSquareMetre > other.kilogramsPerSquareMetre;
    }

    /**
     * Says whether this mass per area is lighter than another, exactly.
     *
     * @param other  the other mass per area
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isLighterThan(ArealMass other) {
        return kilogramsPerSquareMetre < other.kilogramsPerSquareMetre;
    }

    /**
     * Says whether this mass per area is as near to another as a tolerance asks; the edge counts, decided on the
     * decimals that {@code toString} prints.
     *
     * @param tolerance  how far apart they may be
     * @param other  the other mass per area
     * @return true if the two differ by no more than the tolerance
     * @since 0.1
     */
    public boolean isWithin(Tolerance<ArealMass> tolerance, ArealMass other) {
        return Decimals.isWithin(
                kilogramsPerSquareMetre, other.kilogramsPerSquareMetre, tolerance.amount().kilogramsPerSquareMetre);
    }

    /**
     * Says whether this mass per area is zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isZero() {
        return kilogramsPerSquareMetre == 0;
    }

    /**
     * Says whether this mass per area is above zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isPositive() {
        return kilogramsPerSquareMetre > 0;
    }

    /**
     * Says whether this mass per area is below zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isNegative() {
        return kilogramsPerSquareMetre < 0;
    }

    /**
     * Returns the number of kilograms per square metre, as stored.
     *
     * @return the kilograms per square metre
     * @since 0.1
     */
    public double toKilogramsPerSquareMetre() {
        return kilogramsPerSquareMetre;
    }

    /**
     * Returns the number of pounds per square foot.
     *
     * @return the pounds per square foot
     * @throws ArithmeticException if the number is beyond the range of a double
     * @since 0.1
     */
    public double toPoundsPerSquareFoot() {
        return Decimals.result(kilogramsPerSquareMetre / POUND * SQUARE_FOOT, WHAT);
    }

    /**
     * Returns the number of kilograms per square metre.
     *
     * @return the number
     * @since 0.1
     */
    @Override
    public double toSi() {
        return kilogramsPerSquareMetre;
    }

    /**
     * Returns {@link QuantityKind#AREAL_MASS}.
     *
     * @return the kind
     */
    @Override
    public QuantityKind kind() {
        return QuantityKind.AREAL_MASS;
    }

    /**
     * Compares this mass per area with another, exactly.
     *
     * @param other  the other mass per area
     * @return below, equal to or above zero as this mass per area is lighter, equal or heavier
     */
    @Override
    public int compareTo(ArealMass other) {
        return Double.compare(kilogramsPerSquareMetre, other.kilogramsPerSquareMetre);
    }

    /**
     * Says whether another object is a mass per area with the same stored number.
     *
     * @param other  the other object
     * @return true if it is
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof ArealMass that && kilogramsPerSquareMetre == that.kilogramsPerSquareMetre;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(kilogramsPerSquareMetre);
    }

    /**
     * Returns the mass per area in kilograms per square metre, with the fewest digits that read back exactly: {@code
     * 43.6 kg/m²}.
     *
     * @return the text, which {@link #parse} reads back to an equal mass per area
     */
    @Override
    public String toString() {
        return Decimals.text(kilogramsPerSquareMetre) + " kg/m²";
    }
}
