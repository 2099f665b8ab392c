package org.roofmaths.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Pattern;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Area;
import org.roofmaths.units.ArealMass;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;
import org.roofmaths.units.Pitch;

/** How numbers are printed on a site sheet: rounded for the eye, with their unit, the same on every machine. */
final class Show {
    private static final Pattern LONG_NUMBER = Pattern.compile("(?<![\\w.])\\d+\\.\\d{3,}(?![\\w.])");

    private Show() {}

    /** To the millimetre, as a tape is read. */
    static String whole(Length length) {
        return number(length.toMillimetres(), 0) + " mm";
    }

    /** To a hundredth of a millimetre, where many of them add up. */
    static String fine(Length length) {
        return number(length.toMillimetres(), 2) + " mm";
    }

    /** In metres to the centimetre, for amounts. */
    static String metres(Length length) {
        return number(length.toMetres(), 2) + " m";
    }

    static String area(Area area) {
        return number(area.toSquareMetres(), 2) + " m²";
    }

    /** A small opening. */
    static String opening(Area area) {
        return number(area.toSquareMillimetres(), 0) + " mm²";
    }

    static String mass(Mass mass) {
        return number(mass.toKilograms(), 1) + " kg";
    }

    static String arealMass(ArealMass mass) {
        return number(mass.toKilogramsPerSquareMetre(), 1) + " kg/m²";
    }

    static String angle(Angle angle) {
        return number(angle.toDegrees(), 1) + "°";
    }

    static String pitch(Pitch pitch) {
        return number(pitch.toDegrees(), 2) + "°";
    }

    static String percent(double percent) {
        return number(percent, 1) + " %";
    }

    /** A sentence made elsewhere, with its numbers cut to what a person reads: two decimals, and no more. */
    static String readable(String sentence) {
        return LONG_NUMBER.matcher(sentence).replaceAll(found -> {
            String cut = number(Double.parseDouble(found.group()), 2);
            return cut.equals("0") ? found.group() : cut; // what is short by a hair is not printed as short by nothing
        });
    }

    /** Halves away from zero, trailing zeros of the fraction dropped. */
    static String number(double value, int digits) {
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP).stripTrailingZeros();
        return (rounded.signum() == 0 ? BigDecimal.ZERO : rounded).toPlainString();
    }
}
