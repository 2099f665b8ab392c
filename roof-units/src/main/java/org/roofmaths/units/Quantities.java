package org.roofmaths.units;

/**
 * Short names for the factories of the quantities, to be imported statically: {@code metres(4.6)},
 * {@code pitch("32°")}.
 * <p>
 * Each is the factory it names and nothing more. In JShell, after
 * {@code import static org.roofmaths.units.Quantities.*}:
 * <pre>{@code
 * metres(4.6).times(metres(2.7))   // 12.42 m²
 * }</pre>
 *
 * @since 0.1
 */
public final class Quantities {
    private Quantities() {}

    /**
     * Returns a length in millimetres, as {@link Length#ofMillimetres} does.
     *
     * @param millimetres  the number of millimetres, finite
     * @return the length
     * @throws IllegalArgumentException if the number is not finite or the length beyond its range
     * @since 0.1
     */
    public static Length mm(double millimetres) {
        return Length.ofMillimetres(millimetres);
    }

    /**
     * Returns a length in centimetres, as {@link Length#ofCentimetres} does.
     *
     * @param centimetres  the number of centimetres, finite
     * @return the length
     * @throws IllegalArgumentException if the number is not finite or the length beyond its range
     * @since 0.1
     */
    public static Length cm(double centimetres) {
        return Length.ofCentimetres(centimetres);
    }

    /**
     * Returns a length in metres, as {@link Length#ofMetres} does.
     *
     * @param metres  the number of metres, finite
     * @return the length
     * @throws IllegalArgumentException if the number is not finite or the length beyond its range
     * @since 0.1
     */
    public static Length metres(double metres) {
        return Length.ofMetres(metres);
    }

    /**
     * Returns a length in inches as a decimal number, as {@link Length#ofDecimalInches} does.
     *
     * @param inches  the number of inches, finite
     * @return the length
     * @throws IllegalArgumentException if the number is not finite or the length beyond its range
     * @since 0.1
     */
    public static Length inches(double inches) {
        return Length.ofDecimalInches(inches);
    }

    /**
     * Returns a length in inches and a fraction, as {@link Length#ofInches} does.
     *
     * @param whole  the whole inches, 0 or more
     * @param numerator  the upper number of the fraction, from 0 to below the denominator
     * @param denominator  the lower number: 1, 2, 4, 8, 16, 32 or 64
     * @return the length
     * @throws IllegalArgumentException if a part is outside its range
     * @throws ArithmeticException if the length is beyond its range
     * @since 0.1
     */
    public static Length inches(long whole, int numerator, int denominator) {
        return Length.ofInches(whole, numerator, denominator);
    }

    /**
     * Returns a length in feet as a decimal number, as {@link Length#ofDecimalFeet} does. For feet and inches write
     * {@code length("9' 4 1/2\"")}.
     *
     * @param feet  the number of feet, finite
     * @return the length
     * @throws IllegalArgumentException if the number is not finite or the length beyond its range
     * @since 0.1
     */
    public static Length feet(double feet) {
        return Length.ofDecimalFeet(feet);
    }

    /**
     * Reads a length, as {@link Length#parse} does.
     *
     * @param text  the whole text
     * @return the length
     * @throws QuantityParseException if the text is not a length
     * @since 0.1
     */
    public static Length length(String text) {
        return Length.parse(text);
    }

    /**
     * Returns an angle in degrees, as {@link Angle#ofDegrees} does.
     *
     * @param degrees  the number of degrees, finite
     * @return the angle
     * @throws IllegalArgumentException if the number is not finite
     * @since 0.1
     */
    public static Angle degrees(double degrees) {
        return Angle.ofDegrees(degrees);
    }

    /**
     * Reads a pitch, as {@link Pitch#parse} does: {@code pitch("32°")}, {@code pitch("7 in 12")}.
     *
     * @param text  the whole text
     * @return the pitch
     * @throws QuantityParseException if the text is not a pitch above 0° and below 90°
     * @since 0.1
     */
    public static Pitch pitch(String text) {
        return Pitch.parse(text);
    }

    /**
     * Returns a ratio in per cent, as {@link Ratio#ofPercent} does.
     *
     * @param percent  the number of hundredths, finite
     * @return the ratio
     * @throws IllegalArgumentException if the number is not finite
     * @since 0.1
     */
    public static Ratio percent(double percent) {
        return Ratio.ofPercent(percent);
    }

    /**
     * Returns a mass in kilograms, as {@link Mass#ofKilograms} does.
     *
     * @param kilograms  the number of kilograms, finite
     * @return the mass
     * @throws IllegalArgumentException if the number is not finite
     * @since 0.1
     */
    public static Mass kg(double kilograms) {
        return Mass.ofKilograms(kilograms);
    }

    /**
     * Returns an area in square metres, as {@link Area#ofSquareMetres} does.
     *
     * @param squareMetres  the number of square metres, finite
     * @return the area
     * @throws IllegalArgumentException if the number is not finite
     * @since 0.1
     */
    public static Area squareMetres(double squareMetres) {
        return Area.ofSquareMetres(squareMetres);
    }

    /**
     * Returns an offset measured level, as {@link Offset#level} does.
     *
     * @param length  the distance
     * @return the offset
     * @since 0.1
     */
    public static Offset level(Length length) {
        return Offset.level(length);
    }

    /**
     * Returns an offset measured plumb, as {@link Offset#plumb} does.
     *
     * @param length  the distance
     * @return the offset
     * @since 0.1
     */
    public static Offset plumb(Length length) {
        return Offset.plumb(length);
    }

    /**
     * Returns an offset measured along the slope, as {@link Offset#onSlope} does.
     *
     * @param length  the distance
     * @return the offset
     * @since 0.1
     */
    public static Offset onSlope(Length length) {
        return Offset.onSlope(length);
    }

    /**
     * Returns an offset measured at right angles to the slope, as {@link Offset#squareToSlope} does.
     *
     * @param length  the distance
     * @return the offset
     * @since 0.1
     */
    public static Offset squareToSlope(Length length) {
        return Offset.squareToSlope(length);
    }
}
