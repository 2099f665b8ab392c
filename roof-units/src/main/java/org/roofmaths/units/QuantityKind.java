package org.roofmaths.units;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * The kinds of {@link Quantity}: one constant for each class, for code that must tell them apart or read a text whose
 * kind is known only at run time.
 * <p>
 * For example, {@code QuantityKind.LENGTH.parse("5.2 m")} is the same as {@code Length.parse("5.2 m")}. No kind is ever
 * guessed from the text: {@code 70 %} is a {@link Pitch} or a {@link Ratio} because the caller says so.
 *
 * @since 0.1
 */
public enum QuantityKind {
    /** {@link Length}, printed in millimetres. */
    LENGTH(
            "length",
            "mm",
            Length::parse,
            BigDecimal.valueOf(100),
            q -> BigDecimal.valueOf(((Length) q).toNanometres()),
            d -> Length.ofNanometres(d.longValueExact())),
    /** {@link Area}, printed in square metres. */
    AREA("area", "m²", Area::parse, q -> ((Area) q).toSquareMetres(), Area::ofSquareMetres),
    /** {@link Angle}, printed in degrees. */
    ANGLE(
            "angle",
            "°",
            Angle::parse,
            Decimals.MICRO,
            q -> Decimals.exact(((Angle) q).toDegrees()),
            d -> Angle.ofDegrees(d.doubleValue())),
    /** {@link Pitch}, printed in degrees. */
    PITCH(
            "pitch",
            "°",
            Pitch::parse,
            Decimals.MICRO,
            q -> Decimals.exact(((Pitch) q).toDegrees()),
            d -> Pitch.ofDegrees(d.doubleValue())),
    /** {@link Ratio}, printed as a bare number. */
    RATIO("ratio", "", Ratio::parse, q -> ((Ratio) q).toDouble(), Ratio::of),
    /** {@link Mass}, printed in kilograms. */
    MASS("mass", "kg", Mass::parse, q -> ((Mass) q).toKilograms(), Mass::ofKilograms),
    /** {@link ArealMass}, printed in kilograms per square metre. */
    AREAL_MASS(
            "mass per area",
            "kg/m²",
            ArealMass::parse,
            q -> ((ArealMass) q).toKilogramsPerSquareMetre(),
            ArealMass::ofKilogramsPerSquareMetre),
    /** {@link Pressure}, printed in pascals. */
    PRESSURE("pressure", "Pa", Pressure::parse, q -> ((Pressure) q).toPascals(), Pressure::ofPascals),
    /** {@link FlowRate}, printed in litres per second. */
    FLOW_RATE(
            "flow rate", "l/s", FlowRate::parse, q -> ((FlowRate) q).toLitresPerSecond(), FlowRate::ofLitresPerSecond),
    /** {@link RainfallIntensity}, printed in millimetres per hour. */
    RAINFALL_INTENSITY(
            "rainfall intensity",
            "mm/h",
            RainfallIntensity::parse,
            q -> ((RainfallIntensity) q).toMillimetresPerHour(),
            RainfallIntensity::ofMillimetresPerHour),
    /** {@link AreaPerLength}, printed in square millimetres per metre. */
    AREA_PER_LENGTH(
            "area per length",
            "mm²/m",
            AreaPerLength::parse,
            q -> ((AreaPerLength) q).toSquareMillimetresPerMetre(),
            AreaPerLength::ofSquareMillimetresPerMetre);

    private final String words;
    private final String unit;
    private final Function<String, Quantity> parser;
    private final BigDecimal resolution;
    private final Function<Quantity, BigDecimal> toStored;
    private final Function<BigDecimal, Quantity> fromStored;

    QuantityKind(
            String words,
            String unit,
            Function<String, Quantity> parser,
            BigDecimal resolution,
            Function<Quantity, BigDecimal> toStored,
            Function<BigDecimal, Quantity> fromStored) {
        this.words = words;
        this.unit = unit;
        this.parser = parser;
        this.resolution = resolution;
        this.toStored = toStored;
        this.fromStored = fromStored;
    }

    QuantityKind(
            String words,
            String unit,
            Function<String, Quantity> parser,
            ToDoubleFunction<Quantity> toStored,
            DoubleFunction<Quantity> fromStored) {
        this(
                words,
                unit,
                parser,
                BigDecimal.ZERO,
                q -> Decimals.exact(toStored.applyAsDouble(q)),
                d -> fromStored.apply(d.doubleValue()));
    }

    /**
     * Returns the name of this kind as a sentence would say it, for example {@code mass per area}.
     *
     * @return the words, in lower case
     * @since 0.1
     */
    public String words() {
        return words;
    }

    /**
     * Returns the symbol of the unit in which {@code toString} prints this kind, for example {@code mm}.
     *
     * @return the symbol; empty for a ratio
     * @since 0.1
     */
    public String unit() {
        return unit;
    }

    /**
     * Reads a text as a quantity of this kind, by the {@code parse} method of its class.
     *
     * @param text  the whole text
     * @return the quantity
     * @throws QuantityParseException if the text is not in the grammar of that class
     * @since 0.1
     */
    public Quantity parse(String text) {
        return parser.apply(Objects.requireNonNull(text, "text"));
    }

    /** The difference, in the stored unit, below which two values count as one when limits and counts are compared. */
    BigDecimal resolution() {
        return resolution;
    }

    /** The stored number as the decimal that {@code toString} prints, a length in nanometres. */
    BigDecimal stored(Quantity quantity) {
        return toStored.apply(quantity);
    }

    /** The quantity whose stored number is the double (or whole nanometre) nearest to this decimal. */
    Quantity ofStored(BigDecimal decimal) {
        return fromStored.apply(decimal);
    }
}
