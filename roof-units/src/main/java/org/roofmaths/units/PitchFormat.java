package org.roofmaths.units;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * A way to write pitches for people: in degrees, as a rise in 12, in per cent or as 1 in n. It writes and reads.
 * <p>
 * A pitch is rounded when it is written, to the nearest last decimal, a tie away from zero. A pitch that rounds to 0°
 * or 90° is written so and cannot be read back. No locale is used unless {@link #withLocale} names one. Two formats
 * are equal when they write alike. Immutable and thread-safe.
 * <pre>{@code
 * PitchFormat.degrees(1).format(Pitch.ofRiseIn12(7))   // 30.3°
 * PitchFormat.riseIn12(2).format(Pitch.ofDegrees(35))  // 8.40 in 12
 * }</pre>
 *
 * @since 0.1
 */
public final class PitchFormat implements Serializable {
    private static final BigDecimal TWELVE = BigDecimal.valueOf(12);

    private enum Notation {
        DEGREES("degrees", Pitch::toDegrees),
        RISE_IN_12("rise in 12", Pitch::toRiseIn12),
        PERCENT("per cent", Pitch::toPercent),
        ONE_IN("1 in n", Pitch::toOneIn);

        private final String words;
        private final ToDoubleFunction<Pitch> number;

        Notation(String words, ToDoubleFunction<Pitch> number) {
            this.words = words;
            this.number = number;
        }
    }

    private final Notation notation;
    private final int decimals;
    private final NumberStyle style;

    private PitchFormat(Notation notation, int decimals, NumberStyle style) {
        this.notation = notation;
        this.decimals = decimals;
        this.style = style;
    }

    private static PitchFormat of(Notation notation, int decimals) {
        return new PitchFormat(notation, AngleFormat.checkedDecimals(decimals), NumberStyle.PLAIN);
    }

    /**
     * Returns the format in degrees: {@code 30.3°} with one decimal.
     *
     * @param decimals  how many decimals to write, 0 to 12
     * @return the format
     * @throws IllegalArgumentException if the number of decimals is outside that range
     * @since 0.1
     */
    public static PitchFormat degrees(int decimals) {
        return of(Notation.DEGREES, decimals);
    }

    /**
     * Returns the format as a rise in 12: {@code 7.0 in 12} with one decimal.
     *
     * @param decimals  how many decimals of the rise to write, 0 to 12
     * @return the format
     * @throws IllegalArgumentException if the number of decimals is outside that range
     * @since 0.1
     */
    public static PitchFormat riseIn12(int decimals) {
        return of(Notation.RISE_IN_12, decimals);
    }

    /**
     * Returns the format in per cent: {@code 58.3 %} with one decimal.
     *
     * @param decimals  how many decimals to write, 0 to 12
     * @return the format
     * @throws IllegalArgumentException if the number of decimals is outside that range
     * @since 0.1
     */
    public static PitchFormat percent(int decimals) {
        return of(Notation.PERCENT, decimals);
    }

    /**
     * Returns the format as 1 in n: {@code 1 in 2.5} with one decimal.
     *
     * @param decimals  how many decimals of the run to write, 0 to 12
     * @return the format
     * @throws IllegalArgumentException if the number of decimals is outside that range
     * @since 0.1
     */
    public static PitchFormat oneIn(int decimals) {
        return of(Notation.ONE_IN, decimals);
    }

    /**
     * Returns this format with the digits and decimal sign of a locale; the words and unit marks stay.
     *
     * @param locale  the locale
     * @return the format
     * @since 0.1
     */
    public PitchFormat withLocale(Locale locale) {
        return new PitchFormat(notation, decimals, style.withLocale(locale));
    }

    /**
     * Writes a pitch, rounded.
     *
     * @param pitch  the pitch
     * @return the text
     * @throws ArithmeticException if the pitch is too flat to be written as 1 in n
     * @since 0.1
     */
    public String format(Pitch pitch) {
        BigDecimal exact = Decimals.exact(notation.number.applyAsDouble(pitch));
        String number = style.text(exact.setScale(decimals, RoundingMode.HALF_UP));
        return switch (notation) {
            case DEGREES -> number + "°";
            case RISE_IN_12 -> number + " in " + style.text(TWELVE);
            case PERCENT -> number + " %";
            case ONE_IN -> style.text(BigDecimal.ONE) + " in " + number;
        };
    }

    /**
     * Reads a pitch whose numbers are written in the signs of this format, in any form that {@link Pitch#parse} reads.
     *
     * @param text  the whole text
     * @return the pitch
     * @throws QuantityParseException if the text is anything else
     * @since 0.1
     */
    public Pitch parse(String text) {
        return style.read(text, Pitch::parse);
    }

    /**
     * Says whether another object is a format that writes alike.
     *
     * @param other  the other object
     * @return true if it is
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof PitchFormat that
                && notation == that.notation
                && decimals == that.decimals
                && style.equals(that.style);
    }

    @Override
    public int hashCode() {
        return Objects.hash(notation, decimals, style);
    }

    /**
     * Returns the format in words, such as {@code rise in 12 with 2 decimals}.
     *
     * @return the text
     */
    @Override
    public String toString() {
        return notation.words + " with " + decimals + " decimals" + style;
    }
}
