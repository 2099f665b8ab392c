package org.roofmaths.units;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A way to write angles for people: in decimal degrees or in degrees, minutes and seconds. It writes and reads.
 * <p>
 * An angle is rounded when it is written, to the nearest last decimal, a tie away from zero; sixty seconds are carried
 * into the minutes and sixty minutes into the degrees. No locale is used unless {@link #withLocale} names one. Two
 * formats are equal when they write alike. Immutable and thread-safe.
 * <pre>{@code
 * AngleFormat.degrees(2).format(Angle.ofDegrees(36.8699))                   // 36.87°
 * AngleFormat.degreesMinutesSeconds(0).format(Angle.ofDegrees(22.504166))   // 22° 30' 15"
 * }</pre>
 *
 * @since 0.1
 */
public final class AngleFormat implements Serializable {
    static final int MOST_DECIMALS = 12;

    private static final BigInteger SIXTY = BigInteger.valueOf(60);

    private enum Unit {
        DEGREES(1),
        MINUTES(60),
        SECONDS(3600);

        private final int inADegree;

        Unit(int inADegree) {
            this.inADegree = inADegree;
        }

        private String words() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private final Unit last;
    private final int decimals;
    private final NumberStyle style;

    private AngleFormat(Unit last, int decimals, NumberStyle style) {
        this.last = last;
        this.decimals = decimals;
        this.style = style;
    }

    private static AngleFormat of(Unit last, int decimals) {
        return new AngleFormat(last, checkedDecimals(decimals), NumberStyle.PLAIN);
    }

    static int checkedDecimals(int decimals) {
        if (decimals < 0 || decimals > MOST_DECIMALS) {
            throw new IllegalArgumentException("decimals must be from 0 to " + MOST_DECIMALS + ", but was " + decimals);
        }
        return decimals;
    }

    /**
     * Returns the format in decimal degrees: {@code 36.87°} with two decimals.
     *
     * @param decimals  how many decimals to write, 0 to 12
     * @return the format
     * @throws IllegalArgumentException if the number of decimals is outside that range
     * @since 0.1
     */
    public static AngleFormat degrees(int decimals) {
        return of(Unit.DEGREES, decimals);
    }

    /**
     * Returns the format in whole degrees and minutes: {@code 22° 30'} with no decimals.
     *
     * @param decimals  how many decimals of a minute to write, 0 to 12
     * @return the format
     * @throws IllegalArgumentException if the number of decimals is outside that range
     * @since 0.1
     */
    public static AngleFormat degreesMinutes(int decimals) {
        return of(Unit.MINUTES, decimals);
    }

    /**
     * Returns the format in whole degrees, whole minutes and seconds: {@code 22° 30' 15"} with no decimals.
     *
     * @param decimals  how many decimals of a second to write, 0 to 12
     * @return the format
     * @throws IllegalArgumentException if the number of decimals is outside that range
     * @since 0.1
     */
    public static AngleFormat degreesMinutesSeconds(int decimals) {
        return of(Unit.SECONDS, decimals);
    }

    /**
     * Returns this format with the digits, decimal sign and minus sign of a locale; the unit marks stay.
     *
     * @param locale  the locale
     * @return the format
     * @since 0.1
     */
    public AngleFormat withLocale(Locale locale) {
        return new AngleFormat(last, decimals, style.withLocale(locale));
    }

    /**
     * Writes an angle, rounded.
     *
     * @param angle  the angle
     * @return the text
     * @since 0.1
     */
    public String format(Angle angle) {
        BigDecimal rounded = Decimals.exact(angle.toDegrees())
                .multiply(BigDecimal.valueOf(last.inADegree))
                .setScale(decimals, RoundingMode.HALF_UP);
        if (last == Unit.DEGREES) {
            return style.text(rounded) + "°";
        }
        BigDecimal size = rounded.abs();
        BigInteger whole = size.toBigInteger();
        BigDecimal part = size.subtract(new BigDecimal(whole.subtract(whole.mod(SIXTY))));
        BigInteger sixties = whole.divide(SIXTY);
        String sign = rounded.signum() < 0 ? String.valueOf(style.minus()) : "";
        if (last == Unit.MINUTES) {
            return sign + number(sixties) + "° " + style.text(part) + "'";
        }
        return sign + number(sixties.divide(SIXTY)) + "° " + number(sixties.mod(SIXTY)) + "' " + style.text(part) + '"';
    }

    private String number(BigInteger whole) {
        return style.text(new BigDecimal(whole));
    }

    /**
     * Reads an angle whose numbers are written in the signs of this format, in any form that {@link Angle#parse} reads.
     *
     * @param text  the whole text
     * @return the angle
     * @throws QuantityParseException if the text is anything else
     * @since 0.1
     */
    public Angle parse(String text) {
        return style.read(text, Angle::parse);
    }

    /**
     * Says whether another object is a format that writes alike.
     *
     * @param other  the other object
     * @return true if it is
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof AngleFormat that
                && last == that.last
                && decimals == that.decimals
                && style.equals(that.style);
    }

    @Override
    public int hashCode() {
        return Objects.hash(last, decimals, style);
    }

    /**
     * Returns the format in words, such as {@code degrees with 2 decimals} or {@code seconds with 0 decimals}.
     *
     * @return the text
     */
    @Override
    public String toString() {
        return last.words() + " with " + decimals + " decimals" + style;
    }
}
