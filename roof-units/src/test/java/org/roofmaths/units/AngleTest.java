package org.roofmaths.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AngleTest {
    @Test
    void radians_and_degrees() {
        assertThat(Angle.ofRadians(Math.PI / 2)).isEqualTo(Angle.ofDegrees(90));
        assertThat(Angle.ofDegrees(180).toRadians()).isEqualTo(Math.PI);
        assertThat(Angle.ofDegrees(180).toSi()).isEqualTo(Math.PI);
        assertThat(Angle.parse("0.5 rad")).isEqualTo(Angle.ofRadians(0.5));
        assertThatThrownBy(() -> Angle.ofRadians(Double.MAX_VALUE))
                .hasMessage("angle must be a finite number, but was Infinity");
    }

    @Test
    void degrees_minutes_and_seconds() {
        assertThat(Angle.ofDegreesMinutesSeconds(22, 30, 0)).isEqualTo(Angle.ofDegrees(22.5));
        assertThat(Angle.ofDegreesMinutesSeconds(22, 30, 15))
                .isEqualTo(Angle.ofDegrees((22 * 3600 + 30 * 60 + 15) / 3600.0));
        assertThat(Angle.ofDegreesMinutesSeconds(22, 0, 0)).isEqualTo(Angle.ofDegrees(22));
        assertThat(Angle.ofDegreesMinutesSeconds(0, 59, 59.5)).isEqualTo(Angle.ofDegrees((59 * 60 + 59.5) / 3600));
        assertThatThrownBy(() -> Angle.ofDegreesMinutesSeconds(-1, 0, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("degrees must be zero or more, but was -1; for a negative angle take the negated one");
        assertThatThrownBy(() -> Angle.ofDegreesMinutesSeconds(1, 60, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("minutes must be from 0 to 59, but was 60");
        assertThatThrownBy(() -> Angle.ofDegreesMinutesSeconds(1, -1, 0))
                .hasMessage("minutes must be from 0 to 59, but was -1");
        assertThatThrownBy(() -> Angle.ofDegreesMinutesSeconds(1, 1, 60))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("seconds must be zero or more and below 60, but was 60");
        assertThatThrownBy(() -> Angle.ofDegreesMinutesSeconds(1, 1, -0.5))
                .hasMessage("seconds must be zero or more and below 60, but was -0.5");
        assertThatThrownBy(() -> Angle.ofDegreesMinutesSeconds(1, 1, Double.NaN))
                .hasMessage("seconds must be zero or more and below 60, but was NaN");
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0, 0",
        "360, 0, 0",
        "-360, 0, 0",
        "370, 10, 10",
        "-30, 330, -30",
        "180, 180, 180",
        "-180, 180, 180",
        "181, 181, -179",
        "540, 180, 180",
        "-1E-20, 359.99999999999994, -1E-20",
        "725.5, 5.5, 5.5"
    })
    void normal_forms(double degrees, double unsigned, double signed) {
        assertThat(Angle.ofDegrees(degrees).normalised()).isEqualTo(Angle.ofDegrees(unsigned));
        assertThat(Angle.ofDegrees(degrees).normalisedSigned()).isEqualTo(Angle.ofDegrees(signed));
        assertThat(Angle.ofDegrees(degrees)).hasToString(Decimals.text(degrees) + "°");
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "0, 0, 1", "30, 0.5, -", "60, -, 0.5", "90, 1, 0", "120, -, -0.5", "150, 0.5, -", "180, 0, -1",
                "210, -0.5, -", "240, -, -0.5", "270, -1, 0", "300, -, 0.5", "330, -0.5, -", "360, 0, 1",
                        "-30, -0.5, -",
                "-90, -1, 0", "-180, 0, -1", "1170, 1, 0"
            })
    void sines_and_cosines_are_exact_where_they_are_short(double degrees, Double sin, Double cos) {
        Angle angle = Angle.ofDegrees(degrees);
        if (sin != null) {
            // Compared as doubles, so that -0 is not 0.
            assertThat(Double.compare(angle.sin(), sin)).isZero();
        }
        if (cos != null) {
            assertThat(Double.compare(angle.cos(), cos)).isZero();
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "45, 1", "135, -1", "180, 0", "-180, 0", "225, 1", "-45, -1", "360, 0", "-135, 1"})
    void tangents_are_exact_where_they_are_short(double degrees, double tan) {
        assertThat(Double.compare(Angle.ofDegrees(degrees).tan(), tan)).isZero();
    }

    @ParameterizedTest
    @CsvSource({"90", "-90", "270", "450"})
    void a_right_angle_has_no_tangent(double degrees) {
        assertThatThrownBy(() -> Angle.ofDegrees(degrees).tan())
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("there is no tangent of " + Decimals.text(degrees) + "°");
    }

    @Test
    void steep_tangents_and_sines_keep_their_digits() {
        // The exact values are √3, √3 / 2 and 2 + √3; each is given to within a unit in its last place.
        assertThat(Angle.ofDegrees(60).tan()).isCloseTo(Math.sqrt(3), within(Math.ulp(2.0)));
        assertThat(Angle.ofDegrees(60).sin()).isCloseTo(Math.sqrt(3) / 2, within(Math.ulp(1.0)));
        assertThat(Angle.ofDegrees(75).tan()).isCloseTo(2 + Math.sqrt(3), within(Math.ulp(4.0)));
        assertThat(Angle.ofDegrees(-75).tan()).isCloseTo(-2 - Math.sqrt(3), within(Math.ulp(4.0)));
    }
}
