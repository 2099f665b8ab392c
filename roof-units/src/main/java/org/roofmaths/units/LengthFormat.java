package org.roofmaths.units;

import java.io.Serializable;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A way to write lengths for people: the unit, the decimals or smallest fraction, the number signs. It writes and
 * reads.
 * <p>
 * A length is rounded when it is written, to the nearest last decimal or smallest fraction, a tie away from zero, or as
 * {@link #withRounding} says; the length itself is not changed. What {@link #format} writes, {@link #parse} reads back
 * to the rounded length. No locale is used unless {@link #withLocale} names one. Two formats are equal when they write
 * alike. Immutable and thread-safe; each {@code with} method returns a new format.
 * <pre>{@code
 * LengthFormat.metres(3).format(Length.ofMillimetres(4394.78852))       // 4.395 m
 * LengthFormat.feetAndInches(16).format(Length.ofMillimetres(2857.5))   // 9 ft 4 1/2 in
 * }</pre>
 *
 * @since 0.1
 */
public final class LengthFormat implements Serializable {
    private static final int INCHES_IN_A_FOOT = 12;

    private enum Unit {
        MILLIMETRES(Length.NANOMETRES_IN_A_MILLIMETRE, 6, " mm"),
        CENTIMETRES(Length.NANOMETRES_IN_A_CENTIMETRE, 7, " cm"),
        METRES(Length.NANOMETRES_IN_A_METRE, 9, " m"),
        INCHES(Length.NANOMETRES_IN_AN_INCH, 0, " in"),
        FEET_AND_INCHES(Length.NANOMETRES_IN_AN_INCH, 0, " in"),
        FEET_AND_INCH_MARKS(Length.NANOMETRES_IN_AN_INCH, 0, "\"");

        private final long nanometres;
        private final int mostDecimals;
        private final String symbol;

        Unit(long nanometres, int mostDecimals, String symbol) {
            this.nanometres = nanometres;
            this.mostDecimals = mostDecimals;
            this.symbol = symbol;
        }

        private boolean isMetric() {
            return mostDecimals > 0;
        }

        private String words() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    private final Unit unit;
    /** How many of the smallest part make the unit: a power of ten, or a denominator. */
    private final long parts;

    private final @Nullable Rounding<Length> rounding;
    private final NumberStyle style;

    private LengthFormat(Unit unit, long parts, @Nullable Rounding<Length> rounding, NumberStyle style) {
        this.unit = unit;
        this.parts = parts;
        this.rounding = rounding;
        this.style = style;
    }

    private static LengthFormat ofDecimals(Unit unit, int decimals) {
        if (decimals < 0 || decimals > unit.mostDecimals) {
            throw new IllegalArgumentException("decimals of " + unit.words() + " must be from 0 to " + unit.mostDecimals
                    + ", but was " + decimals);
        }
        return new LengthFormat(unit, BigDecimal.TEN.pow(decimals).longValueExact(), null, NumberStyle.PLAIN);
    }

    private static LengthFormat ofFraction(Unit unit, int denominator) {
        if (!LengthText.isDenominator(denominator)) {
            throw new IllegalArgumentException(LengthText.DENOMINATORS + ", but was " + denominator);
        }
        return new LengthFormat(unit, denominator, null, NumberStyle.PLAIN);
    }

    /**
     * Returns the format in millimetres: {@code 4394.8 mm} with one decimal.
     *
     * @param decimals  how many decimals to write, 0 to 6
     * @return the format
     * @throws IllegalArgumentException if the number of decimals is outside that range
     * @since 0.1
     */
    public static LengthFormat millimetres(int decimals) {
        return ofDecimals(Unit.MILLIMETRES, decimals);
    }

    /**
     * Returns the format in centimetres: {@code 439.5 cm} with one decimal.
     *
     * @param decimals  how many decimals to write, 0 to 7
     * @return the format
     * @throws IllegalArgumentException if the number of decimals is outside that range
     * @since 0.1
     */
    public static LengthFormat centimetres(int decimals) {
        return ofDecimals(Unit.CENTIMETRES, decimals);
    }

    /**
     * Returns the format in metres: {@code 4.395 m} with three decimals.
     *
     * @param decimals  how many decimals to write, 0 to 9
     * @return the format
     * @throws IllegalArgumentException if the number of decimals is outside that range
     * @since 0.1
     */
    public static LengthFormat metres(int decimals) {
        return ofDecimals(Unit.METRES, decimals);
    }

    /**
     * Returns the format in inches and a fraction in lowest terms: {@code 112 1/2 in}.
     *
     * @param denominator  the lower number of the smallest fraction: 1, 2, 4, 8, 16, 32 or 64
     * @return the format
     * @throws IllegalArgumentException if the denominator is none of these
     * @since 0.1
     */
    public static LengthFormat inches(int denominator) {
        return ofFraction(Unit.INCHES, denominator);
    }

    /**
     * Returns the format in feet, inches and a fraction in lowest terms: {@code 9 ft 4 1/2 in}.
     * <p>
     * A fraction that rounds up to an inch is carried into the inches, and twelve inches into the feet: 11 31/32 in to
     * the nearest 1/16 is {@code 1 ft 0 in}. Below a foot the feet are left out: {@code 4 1/2 in}.
     *
     * @param denominator  the lower number of the smallest fraction: 1, 2, 4, 8, 16, 32 or 64
     * @return the format
     * @throws IllegalArgumentException if the denominator is none of these
     * @since 0.1
     */
    public static LengthFormat feetAndInches(int denominator) {
        return ofFraction(Unit.FEET_AND_INCHES, denominator);
    }

    /**
     * Returns the format of {@link #feetAndInches} with marks for the words: {@code 9' 4 1/2"}.
     *
     * @param denominator  the lower number of the smallest fraction: 1, 2, 4, 8, 16, 32 or 64
     * @return the format
     * @throws IllegalArgumentException if the denominator is none of these
     * @since 0.1
     */
    public static LengthFormat feetAndInchMarks(int denominator) {
        return ofFraction(Unit.FEET_AND_INCH_MARKS, denominator);
    }

    /**
     * Returns this format with another rounding, such as up to a multiple of 5 mm.
     *
     * @param wanted  the rounding; its step a whole multiple of the last decimal or smallest fraction written, so that
     *     nothing is rounded twice
     * @return the format
     * @throws IllegalArgumentException if the step is no such multiple
     * @since 0.1
     */
    public LengthFormat withRounding(Rounding<Length> wanted) {
        Objects.requireNonNull(wanted, "rounding");
        if (wanted.step().toNanometres() % smallest().toNanometres() != 0) {
            throw new IllegalArgumentException("a rounding for " + this + " must have a step of whole multiples of "
                    + smallest() + ", but was " + wanted);
        }
        return new LengthFormat(unit, parts, wanted, style);
    }

    /**
     * Returns this format with thousands set apart: by a narrow no-break space, as ISO 80000-1 has it, or by the sign
     * of the locale if there is one.
     *
     * @return the format, which writes {@code 12 345 mm}
     * @since 0.1
     */
    public LengthFormat withThousandsSeparator() {
        return new LengthFormat(unit, parts, rounding, style.withThousands());
    }

    /**
     * Returns this format with the digits, decimal sign, minus sign and thousands sign of a locale; the unit stays.
     *
     * @param locale  the locale
     * @return the format
     * @since 0.1
     */
    public LengthFormat withLocale(Locale locale) {
        return new LengthFormat(unit, parts, rounding, style.withLocale(locale));
    }

    /**
     * Returns the rounding that this format was given by {@link #withRounding}.
     *
     * @return the rounding, or nothing if it rounds to the nearest last decimal or smallest fraction
     * @since 0.1
     */
    public Optional<Rounding<Length>> rounding() {
        return Optional.ofNullable(rounding);
    }

    private int decimals() {
        return BigDecimal.valueOf(parts).precision() - 1;
    }

    private Length smallest() {
        return Length.ofNanometres(unit.nanometres / parts);
    }

    /**
     * Writes a length, rounded.
     *
     * @param length  the length
     * @return the text
     * @throws ArithmeticException if the rounded length is beyond the range of a length
     * @since 0.1
     */
    public String format(Length length) {
        Rounding<Length> used = rounding == null ? Rounding.toNearest(smallest()) : rounding;
        long count = used.apply(length).toNanometres() / smallest().toNanometres();
        if (unit.isMetric()) {
            return style.text(BigDecimal.valueOf(count, decimals())) + unit.symbol;
        }
        String sign = count < 0 ? String.valueOf(style.minus()) : "";
        return sign + ofFractions(Math.abs(count)) + unit.symbol;
    }

    private String ofFractions(long count) {
        long inches = count / parts;
        long feet = unit == Unit.INCHES ? 0 : inches / INCHES_IN_A_FOOT;
        String inchText = inchText(inches - feet * INCHES_IN_A_FOOT, count % parts, feet > 0);
        if (feet == 0) {
            return inchText;
        }
        return number(feet) + (unit == Unit.FEET_AND_INCH_MARKS ? "' " : " ft ") + inchText;
    }

    private String inchText(long whole, long numerator, boolean isAfterFeet) {
        if (numerator == 0) {
            return number(whole);
        }
        long common = Long.lowestOneBit(numerator);
        String fraction = number(numerator / common) + "/" + number(parts / common);
        return whole == 0 && !isAfterFeet ? fraction : number(whole) + " " + fraction;
    }

    private String number(long whole) {
        return style.text(BigDecimal.valueOf(whole));
    }

    /**
     * Reads a length whose numbers are written in the signs of this format, in any unit that {@link Length#parse}
     * reads.
     * <p>
     * A format with thousands apart reads them with or without; one without refuses them. For example, the format
     * {@code metres(2).withLocale(Locale.GERMANY)} reads {@code 5,2 m} and refuses {@code 5.2 m}.
     *
     * @param text  the whole text
     * @return the length
     * @throws QuantityParseException if the text is anything else
     * @since 0.1
     */
    public Length parse(String text) {
        return style.read(text, Length::parse);
    }

    /**
     * Says whether another object is a format that writes alike.
     *
     * @param other  the other object
     * @return true if it is
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LengthFormat that
                && unit == that.unit
                && parts == that.parts
                && Objects.equals(rounding, that.rounding)
                && style.equals(that.style);
    }

    @Override
    public int hashCode() {
        return Objects.hash(unit, parts, rounding, style);
    }

    /**
     * Returns the format in words, such as {@code metres by 0.001 m} or {@code feet and inches by 1/16 in}.
     *
     * @return the text
     */
    @Override
    public String toString() {
        String part = unit.isMetric()
                ? BigDecimal.valueOf(1, decimals()).toPlainString() + unit.symbol
                : (parts == 1 ? "1" : "1/" + parts) + " in";
        return unit.words() + " by " + part + (rounding == null ? "" : ", rounded " + rounding) + style;
    }
}
