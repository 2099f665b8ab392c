package org.roofmaths.units;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How heavy a thing is, as a balance shows it.
 * <p>
 * Stored as a finite {@code double} of kilograms. Two masses are equal when their stored numbers are. Immutable and
 * thread-safe.
 * <pre>{@code
 * Mass.ofKilograms(4.4).times(552)   // 2428.8 kg
 * }</pre>
 *
 * @since 0.1
 */
public final class Mass implements Quantity, Comparable<Mass> {
    private static final String WHAT = "mass";
    private static final double GRAMS_IN_A_KILOGRAM = 1000;
    private static final double KILOGRAMS_IN_A_TONNE = 1000;
    private static final double KILOGRAMS_IN_A_POUND = 0.45359237;
    private static final Symbols SYMBOLS = new Symbols("number")
            .with("kg", n -> n)
            .with("g", n -> n / GRAMS_IN_A_KILOGRAM)
            .with("t", n -> n * KILOGRAMS_IN_A_TONNE)
            .with("lb", n -> n * KILOGRAMS_IN_A_POUND);

    /**
     * No mass at all.
     *
     * @since 0.1
     */
    public static final Mass ZERO = new Mass(0);

    private final double kilograms;

    private Mass(double kilograms) {
        this.kilograms = kilograms;
    }

    static Mass result(double kilograms) {
        return new Mass(Decimals.result(kilograms, WHAT));
    }

    /**
     * Returns a mass in kilograms.
     *
     * @param kilograms  the number of kilograms, finite
     * @return the mass
     * @throws IllegalArgumentException if the number, or the mass it makes, is not finite
     * @since 0.1
     */
    public static Mass ofKilograms(double kilograms) {
        return new Mass(Decimals.finite(kilograms, WHAT));
    }

    /**
     * Returns a mass in grams.
     *
     * @param grams  the number of grams, finite
     * @return the mass
     * @throws IllegalArgumentException if the number, or the mass it makes, is not finite
     * @since 0.1
     */
    public static Mass ofGrams(double grams) {
        return new Mass(Decimals.finite(grams / GRAMS_IN_A_KILOGRAM, WHAT));
    }

    /**
     * Returns a mass in tonnes of 1000 kg.
     *
     * @param tonnes  the number of tonnes, finite
     * @return the mass
     * @throws IllegalArgumentException if the number, or the mass it makes, is not finite
     * @since 0.1
     */
    public static Mass ofTonnes(double tonnes) {
        return new Mass(Decimals.finite(tonnes * KILOGRAMS_IN_A_TONNE, WHAT));
    }

    /**
     * Returns a mass in pounds; a pound is exactly 0.45359237 kg.
     *
     * @param pounds  the number of pounds, finite
     * @return the mass
     * @throws IllegalArgumentException if the number, or the mass it makes, is not finite
     * @since 0.1
     */
    public static Mass ofPounds(double pounds) {
        return new Mass(Decimals.finite(pounds * KILOGRAMS_IN_A_POUND, WHAT));
    }

    /**
     * Reads a mass.
     * <p>
     * A number and {@code kg}, {@code g}, {@code t} or {@code lb}: {@code 4.4 kg}. A number is written as for
     * {@link Length#parse}; spaces may stand around the parts.
     *
     * @param text  the whole text
     * @return the mass
     * @throws QuantityParseException if the text is anything else
     * @since 0.1
     */
    public static Mass parse(String text) {
        return new Mass(SYMBOLS.read(Objects.requireNonNull(text, "text")));
    }

    /**
     * Returns the sum of this mass and another.
     *
     * @param other  the mass to add
     * @return the sum
     * @throws ArithmeticException if the sum is beyond the range of a double
     * @since 0.1
     */
    public Mass plus(Mass other) {
        return result(kilograms + other.kilograms);
    }

    /**
     * Returns this mass less another.
     *
     * @param other  the mass to take away
     * @return the difference
     * @throws ArithmeticException if the difference is beyond the range of a double
     * @since 0.1
     */
    public Mass minus(Mass other) {
        return result(kilograms - other.kilograms);
    }

    /**
     * Returns this mass times a factor.
     *
     * @param factor  the factor, finite
     * @return the product
     * @throws IllegalArgumentException if the factor is not finite
     * @throws ArithmeticException if the product is beyond the range of a double
     * @since 0.1
     */
    public Mass times(double factor) {
        return result(kilograms * Decimals.finite(factor, "factor"));
    }

    /**
     * Returns this mass times a ratio.
     *
     * @param ratio  the factor
     * @return the product
     * @throws ArithmeticException if the product is beyond the range of a double
     * @since 0.1
     */
    public Mass times(Ratio ratio) {
        return times(ratio.toDouble());
    }

    /**
     * Returns this mass spread evenly over an area.
     *
     * @param area  the area, not zero
     * @return the mass per area
     * @throws ArithmeticException if the area is zero or the answer beyond the range of a double
     * @since 0.1
     */
    public ArealMass dividedBy(Area area) {
        return ArealMass.result(kilograms / Decimals.divisor(area.toSquareMetres()));
    }

    /**
     * Returns this mass divided by a number.
     *
     * @param divisor  the number, finite and not zero
     * @return the quotient
     * @throws IllegalArgumentException if the divisor is not finite
     * @throws ArithmeticException if the divisor is zero or the quotient beyond the range of a double
     * @since 0.1
     */
    public Mass dividedBy(double divisor) {
        return result(kilograms / Decimals.divisor(divisor));
    }

    /**
     * Returns how many times the other mass this one is.
     *
     * @param other  the mass to compare with, not zero
     * @return the ratio
     * @throws ArithmeticException if the other mass is zero or the ratio beyond the range of a double
     * @since 0.1
     */
    public Ratio dividedBy(Mass other) {
        return Ratio.result(kilograms / Decimals.divisor(other.kilograms));
    }

    /**
     * Returns this mass with its sign turned.
     *
     * @return the negative
     * @since 0.1
     */
    public Mass negated() {
        return result(-kilograms);
    }

    /**
     * Returns this mass without its sign.
     *
     * @return the size, zero or more
     * @since 0.1
     */
    public Mass abs() {
        return kilograms < 0 ? negated() : this;
    }

    /**
     * Returns the lighter of this mass and another.
     *
     * @param other  the other mass
     * @return the one that compares as less
     * @since 0.1
     */
    public Mass min(Mass other) {
        return other.kilograms < kilograms ? other : this;
    }

    /**
     * Returns the heavier of this mass and another.
     *
     * @param other  the other mass
     * @return the one that compares as greater
     * @since 0.1
     */
    public Mass max(Mass other) {
        return other.kilograms > kilograms ? other : this;
    }

    /**
     * Says whether this mass is heavier than another, exactly.
     *
     * @param other  the other mass
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isHeavierThan(Mass other) {
        return kilograms > other.kilograms;
    }

    /**
     * Says whether this mass is lighter than another, exactly.
     *
     * @param other  the other mass
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isLighterThan(Mass other) {
        return kilograms < other.kilograms;
    }

    /**
     * Says whether this mass is as near to another as a tolerance asks; the edge counts, decided on the decimals that
     * {@code toString} prints.
     *
     * @param tolerance  how far apart they may be
     * @param other  the other mass
     * @return true if the two differ by no more than the tolerance
     * @since 0.1
     */
    public boolean isWithin(Tolerance<Mass> tolerance, Mass other) {
        return Decimals.isWithin(kilograms, other.kilograms, tolerance.amount().kilograms);
    }

    /**
     * Says whether this mass is zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isZero() {
        return kilograms == 0;
    }

    /**
     * Says whether this mass is above zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isPositive() {
        return kilograms > 0;
    }

    /**
     * Says whether this mass is below zero.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isNegative() {
        return kilograms < 0;
    }

    /**
     * Returns the number of kilograms, as stored.
     *
     * @return the kilograms
     * @since 0.1
     */
    public double toKilograms() {
        return kilograms;
    }

    /**
     * Returns the number of pounds.
     *
     * @return the pounds
     * @throws ArithmeticException if the number is beyond the range of a double
     * @since 0.1
     */
    public double toPounds() {
        return Decimals.result(kilograms / KILOGRAMS_IN_A_POUND, WHAT);
    }

    /**
     * Returns the number of kilograms.
     *
     * @return the number
     * @since 0.1
     */
    @Override
    public double toSi() {
        return kilograms;
    }

    /**
     * Returns {@link QuantityKind#MASS}.
     *
     * @return the kind
     */
    @Override
    public QuantityKind kind() {
        return QuantityKind.MASS;
    }

    /**
     * Compares this mass with another, exactly.
     *
     * @param other  the other mass
     * @return below, equal to or above zero as this mass is lighter, equal or heavier
     */
    @Override
    public int compareTo(Mass other) {
        return Double.compare(kilograms, other.kilograms);
    }

    /**
     * Says whether another object is a mass with the same stored number.
     *
     * @param other  the other object
     * @return true if it is
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Mass that && kilograms == that.kilograms;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(kilograms);
    }

    /**
     * Returns the mass in kilograms, with the fewest digits that read back exactly: {@code 4.4 kg}.
     *
     * @return the text, which {@link #parse} reads back to an equal mass
     */
    @Override
    public String toString() {
        return Decimals.text(kilograms) + " kg";
    }
}
