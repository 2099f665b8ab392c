package org.roofmaths.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Units other than the stored one, and products of one kind with another. */
class UnitsOfQuantitiesTest {
    // Exact by definition (inch, pound, standard gravity: NIST Special Publication 811, from memory).
    private static final double FOOT = 0.3048;
    private static final double POUND = 0.45359237;
    private static final double GRAVITY = 9.80665;

    /** Two or three roundings of a double, relative. */
    private static final double FEW_ROUNDINGS = 1e-15;

    private static org.assertj.core.data.Offset<Double> nearly(double expected) {
        return within(Math.abs(expected) * FEW_ROUNDINGS);
    }

    @Test
    void areas() {
        assertThat(Area.ofSquareMillimetres(15_460_000)).isEqualTo(Area.ofSquareMetres(15.46));
        assertThat(Area.ofSquareFeet(1).toSquareMetres()).isCloseTo(FOOT * FOOT, nearly(FOOT * FOOT));
        assertThat(Area.ofSquareFeet(100).toSquareFeet()).isCloseTo(100, nearly(100));
        assertThat(Area.ofSquareMetres(15.46).toSquareMillimetres()).isEqualTo(15_460_000);
        assertThat(Area.ofSquareMetres(15.46).toSi()).isEqualTo(15.46);
        assertThat(Area.ofSquareMetres(12.42).dividedBy(Length.ofMetres(2.7))).isEqualTo(Length.ofMetres(4.6));
        assertThat(Area.ofSquareMetres(0.05).per(Length.ofMetres(5)))
                .isEqualTo(AreaPerLength.ofSquareMillimetresPerMetre(10_000));
    }

    @Test
    void ratios() {
        assertThat(Ratio.ofPercent(25)).isEqualTo(Ratio.of(0.25));
        assertThat(Ratio.of(0.25).toPercent()).isEqualTo(25);
        assertThat(Ratio.of(0.25).toSi()).isEqualTo(0.25);
    }

    @Test
    void masses() {
        assertThat(Mass.ofGrams(4400)).isEqualTo(Mass.ofKilograms(4.4));
        assertThat(Mass.ofTonnes(2.5)).isEqualTo(Mass.ofKilograms(2500));
        assertThat(Mass.ofPounds(2)).isEqualTo(Mass.ofKilograms(2 * POUND));
        assertThat(Mass.ofKilograms(2 * POUND).toPounds()).isEqualTo(2);
        assertThat(Mass.ofKilograms(4.4).toSi()).isEqualTo(4.4);
        assertThat(Mass.ofKilograms(436).dividedBy(Area.ofSquareMetres(10)))
                .isEqualTo(ArealMass.ofKilogramsPerSquareMetre(43.6));
    }

    @Test
    void masses_per_area() {
        double expected = POUND / (FOOT * FOOT);
        assertThat(ArealMass.ofPoundsPerSquareFoot(1).toKilogramsPerSquareMetre())
                .isCloseTo(expected, nearly(expected));
        assertThat(ArealMass.ofPoundsPerSquareFoot(9).toPoundsPerSquareFoot()).isCloseTo(9, nearly(9));
        assertThat(ArealMass.ofKilogramsPerSquareMetre(43.6).toSi()).isEqualTo(43.6);
        assertThat(ArealMass.ofKilogramsPerSquareMetre(43.6).times(Area.ofSquareMetres(10)))
                .isEqualTo(Mass.ofKilograms(436));
    }

    @Test
    void pressures() {
        double expected = POUND * GRAVITY / (FOOT * FOOT);
        assertThat(Pressure.ofPoundsForcePerSquareFoot(1).toPascals()).isCloseTo(expected, nearly(expected));
        assertThat(Pressure.ofPoundsForcePerSquareFoot(20).toPoundsForcePerSquareFoot())
                .isCloseTo(20, nearly(20));
        assertThat(Pressure.ofKilopascals(0.6)).isEqualTo(Pressure.ofPascals(600));
        assertThat(Pressure.ofPascals(600).toKilopascals()).isEqualTo(0.6);
        assertThat(Pressure.ofPascals(600).toSi()).isEqualTo(600);
    }

    @Test
    void flow_rates() {
        assertThat(FlowRate.ofLitresPerMinute(75)).isEqualTo(FlowRate.ofLitresPerSecond(75 / 60.0));
        assertThat(FlowRate.ofLitresPerSecond(1.25).toLitresPerMinute()).isEqualTo(75);
        assertThat(FlowRate.ofLitresPerSecond(1.25).toSi()).isEqualTo(0.001_25);
    }

    @Test
    void rainfall_intensities() {
        // One litre on a square metre is one millimetre deep.
        assertThat(RainfallIntensity.ofLitresPerSecondPerSquareMetre(0.02).toMillimetresPerHour())
                .isEqualTo(0.02 * 3600);
        assertThat(RainfallIntensity.ofInchesPerHour(3)).isEqualTo(RainfallIntensity.ofMillimetresPerHour(3 * 25.4));
        assertThat(RainfallIntensity.ofMillimetresPerHour(72).toLitresPerSecondPerSquareMetre())
                .isEqualTo(0.02);
        assertThat(RainfallIntensity.ofMillimetresPerHour(50.8).toInchesPerHour())
                .isEqualTo(2);
        assertThat(RainfallIntensity.ofMillimetresPerHour(36).toSi()).isEqualTo(36 / (1000 * 3600.0));
        assertThat(RainfallIntensity.ofMillimetresPerHour(75).times(Area.ofSquareMetres(96)))
                .isEqualTo(FlowRate.ofLitresPerSecond(2));
    }

    @Test
    void areas_per_length() {
        assertThat(AreaPerLength.ofGap(Length.ofMillimetres(10)))
                .isEqualTo(AreaPerLength.ofSquareMillimetresPerMetre(10_000));
        assertThat(AreaPerLength.ofGap(Length.ZERO)).isEqualTo(AreaPerLength.ZERO);
        assertThat(AreaPerLength.ofSquareMillimetresPerMetre(10_000).toGap()).isEqualTo(Length.ofMillimetres(10));
        assertThat(AreaPerLength.ofSquareMillimetresPerMetre(10_000).toSi()).isEqualTo(0.01);
        assertThat(AreaPerLength.ofSquareMillimetresPerMetre(10_000).times(Length.ofMetres(5)))
                .isEqualTo(Area.ofSquareMetres(0.05));
        assertThatThrownBy(
                        () -> AreaPerLength.ofSquareMillimetresPerMetre(1e300).toGap())
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("length is beyond its range");
    }

    @Test
    void products_of_kinds_overflow_and_refuse_zero() {
        assertThatThrownBy(() -> Area.ofSquareMetres(1).dividedBy(Length.ZERO))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("divisor must not be zero");
        assertThatThrownBy(() -> Area.ofSquareMetres(1).per(Length.ZERO)).hasMessage("divisor must not be zero");
        assertThatThrownBy(() -> Mass.ofKilograms(1).dividedBy(Area.ZERO)).hasMessage("divisor must not be zero");
        Area most = Area.ofSquareMetres(Double.MAX_VALUE);
        assertThatThrownBy(most::toSquareMillimetres).hasMessage("area is beyond the range of a double");
        assertThatThrownBy(most::toSquareFeet).hasMessage("area is beyond the range of a double");
        assertThatThrownBy(() -> most.dividedBy(Length.ofMetres(1))).hasMessage("length is beyond its range");
        assertThatThrownBy(() -> most.per(Length.ofMetres(1))).hasMessage("area is beyond the range of a double");
        assertThatThrownBy(() -> Mass.ofKilograms(Double.MAX_VALUE).dividedBy(Area.ofSquareMetres(0.5)))
                .hasMessage("mass per area is beyond the range of a double");
        assertThatThrownBy(() -> Mass.ofKilograms(Double.MAX_VALUE).toPounds())
                .hasMessage("mass is beyond the range of a double");
        assertThatThrownBy(() ->
                        ArealMass.ofKilogramsPerSquareMetre(Double.MAX_VALUE).times(Area.ofSquareMetres(2)))
                .hasMessage("mass is beyond the range of a double");
        assertThatThrownBy(() ->
                        ArealMass.ofKilogramsPerSquareMetre(Double.MAX_VALUE).toPoundsPerSquareFoot())
                .hasMessage("mass per area is beyond the range of a double");
        assertThatThrownBy(() -> Ratio.of(Double.MAX_VALUE).toPercent())
                .hasMessage("ratio is beyond the range of a double");
        assertThatThrownBy(() -> FlowRate.ofLitresPerSecond(Double.MAX_VALUE).toLitresPerMinute())
                .hasMessage("flow rate is beyond the range of a double");
        assertThatThrownBy(() ->
                        RainfallIntensity.ofMillimetresPerHour(Double.MAX_VALUE).times(Area.ofSquareMetres(2)))
                .hasMessage("flow rate is beyond the range of a double");
        assertThatThrownBy(() -> AreaPerLength.ofSquareMillimetresPerMetre(Double.MAX_VALUE)
                        .times(Length.ofMetres(2e3)))
                .hasMessage("area is beyond the range of a double");
    }

    @ParameterizedTest
    @CsvSource({
        "AREA, 10000 mm², 0.01",
        "AREA, 10000 mm2, 0.01",
        "AREA, 2 m2, 2",
        "AREA, 10 ft², 0.9290304",
        "AREA, 10 ft2, 0.9290304",
        "RATIO, 25 %, 0.25",
        "RATIO, 25%, 0.25",
        "MASS, 4400 g, 4.4",
        "MASS, 2.5 t, 2500",
        "MASS, 2 lb, 0.90718474",
        "AREAL_MASS, 5 kg/m2, 5",
        "AREAL_MASS, 100 lb/ft², 488.2427636383051",
        "AREAL_MASS, 100 lb/ft2, 488.2427636383051",
        "PRESSURE, 600 N/m², 600",
        "PRESSURE, 600 N/m2, 600",
        "PRESSURE, 0.6 kPa, 600",
        "PRESSURE, 0.6 kN/m², 600",
        "PRESSURE, 0.6 kN/m2, 600",
        "PRESSURE, 100 lbf/ft², 4788.025898033584",
        "PRESSURE, 100 lbf/ft2, 4788.025898033584",
        "FLOW_RATE, 2 L/s, 2",
        "FLOW_RATE, 75 l/min, 1.25",
        "FLOW_RATE, 75 L/min, 1.25",
        "FLOW_RATE, 0.5 m³/s, 500",
        "FLOW_RATE, 0.5 m3/s, 500",
        "RAINFALL_INTENSITY, 2 in/h, 50.8",
        "RAINFALL_INTENSITY, 0.02 l/(s·m²), 72",
        "RAINFALL_INTENSITY, 0.02 l/(s·m2), 72",
        "RAINFALL_INTENSITY, 300 l/(s·ha), 108",
        "AREA_PER_LENGTH, 5 mm2/m, 5",
        "AREA_PER_LENGTH, 0.025 m²/m, 25000",
        "AREA_PER_LENGTH, 0.025 m2/m, 25000",
        "ANGLE, 35 deg, 35",
        "ANGLE, 22° 30', 22.5",
        "ANGLE, -22° 30' 36\", -22.51",
        "LENGTH, 1 in, 25.4"
    })
    void reads_the_other_units(QuantityKind kind, String text, double number) {
        String stored = kind.parse(text).toString();
        assertThat(Double.parseDouble(stored.substring(0, stored.length() - unitLength(kind))))
                .isCloseTo(number, nearly(number));
    }

    private static int unitLength(QuantityKind kind) {
        return kind.unit().isEmpty() || kind.unit().equals("°")
                ? kind.unit().length()
                : kind.unit().length() + 1;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "AREA | 5 | 1 | unit must be m², mm² or ft² | the text ended",
                "AREA | 5 m | 2 | unit must be m², mm² or ft² | was \"m\"",
                "RATIO | 5 kg | 2 | unit must be % | was \"kg\"",
                "MASS | 5 kgs | 4 | text must end here | was \"s\"",
                "AREAL_MASS | 5 kg | 2 | unit must be kg/m² or lb/ft² | was \"kg\"",
                "PRESSURE | 5 psf | 2 | unit must be Pa, N/m², kPa, kN/m² or lbf/ft² | was \"psf\"",
                "FLOW_RATE | 5 l | 2 | unit must be l/s, L/s, l/min, L/min or m³/s | was \"l\"",
                "RAINFALL_INTENSITY | 5 mm | 2 | unit must be mm/h, in/h, l/(s·m²) or l/(s·ha) | was \"mm\"",
                "AREA_PER_LENGTH | 5 mm² | 2 | unit must be mm²/m or m²/m | was \"mm²\"",
                "ANGLE | 5 | 1 | unit must be °, deg or rad | the text ended",
                "ANGLE | 5 radians | 2 | unit must be °, deg or rad | was \"radians\"",
            })
    void says_which_units_a_kind_reads(QuantityKind kind, String text, int index, String expected, String found) {
        assertThatThrownBy(() -> kind.parse(text))
                .isInstanceOf(QuantityParseException.class)
                .hasMessage('"' + text + "\": " + expected + ", but " + found + " (at index " + index + ")");
    }

    @Test
    void every_kind_has_words_and_a_unit_and_reads_its_own() {
        for (QuantityKind kind : QuantityKind.values()) {
            Quantity five = kind.parse(("5 " + kind.unit()).strip());
            assertThat(five.kind()).isEqualTo(kind);
            assertThat(kind.ofStored(kind.stored(five))).isEqualTo(five);
            assertThat(kind.words()).isNotEmpty();
            assertThatThrownBy(() -> kind.parse(null))
                    .isInstanceOf(NullPointerException.class)
                    .hasMessage("text");
        }
    }
}
