package org.roofmaths.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PitchTest {
    /** A few units in the last place of a number near 100. */
    private static final double FEW_ULPS = 1e-13;

    private static final Length ONE = Length.ofMetres(1);

    @Test
    void the_notations_of_one_pitch() {
        Pitch half = Pitch.ofDegrees(45);
        assertThat(Pitch.ofRiseIn12(12)).isEqualTo(half);
        assertThat(Pitch.ofPercent(100)).isEqualTo(half);
        assertThat(Pitch.ofOneIn(1)).isEqualTo(half);
        assertThat(Pitch.ofRiseAndRun(ONE, ONE)).isEqualTo(half);
        assertThat(Pitch.ofRiseOverSpan(ONE, ONE.times(2))).isEqualTo(half);
        assertThat(Pitch.from(Angle.ofDegrees(45))).isEqualTo(half);
        assertThat(half.toRiseIn12()).isEqualTo(12);
        assertThat(half.toPercent()).isEqualTo(100);
        assertThat(half.toOneIn()).isEqualTo(1);
        assertThat(half.toRiseOverSpan()).isEqualTo(Ratio.of(0.5));
        assertThat(half.toAngle()).isEqualTo(Angle.ofDegrees(45));
        assertThat(half.toRadians()).isEqualTo(Math.PI / 4);
        assertThat(half.toSi()).isEqualTo(Math.PI / 4);
        assertThat(half.kind()).isEqualTo(QuantityKind.PITCH);
    }

    @Test
    void a_three_four_five_roof_gives_five() {
        Pitch pitch = Pitch.ofRiseAndRun(Length.ofMetres(3), Length.ofMetres(4));
        assertThat(pitch.slopeOver(Length.ofMetres(4))).isEqualTo(Length.ofMetres(5));
        assertThat(pitch.riseOver(Length.ofMetres(4))).isEqualTo(Length.ofMetres(3));
        assertThat(pitch.runOver(Length.ofMetres(3))).isEqualTo(Length.ofMetres(4));
        assertThat(pitch.runAlong(Length.ofMetres(5))).isEqualTo(Length.ofMetres(4));
        assertThat(pitch.riseAlong(Length.ofMetres(5))).isEqualTo(Length.ofMetres(3));
        assertThat(pitch.slopeFactor().toDouble()).isCloseTo(1.25, within(FEW_ULPS));
        assertThat(pitch.sin()).isCloseTo(0.6, within(FEW_ULPS));
        assertThat(pitch.cos()).isCloseTo(0.8, within(FEW_ULPS));
        assertThat(pitch.tan()).isCloseTo(0.75, within(FEW_ULPS));
    }

    @Test
    void a_rafter_at_35_degrees() {
        assertThat(Pitch.ofDegrees(35).slopeOver(Length.ofMillimetres(3600)))
                .isEqualTo(Length.ofMillimetres(3600 / Math.cos(Math.toRadians(35))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"35°", "35 deg", "35deg", " 35 ° ", "35° 0'", "35° 0' 0\"", "3.5E1 deg"})
    void reads_degrees(String text) {
        assertThat(Pitch.parse(text)).isEqualTo(Pitch.ofDegrees(35)).hasToString("35°");
    }

    @Test
    void reads_the_other_notations() {
        assertThat(Pitch.parse("7 in 12")).isEqualTo(Pitch.ofRiseIn12(7));
        assertThat(Pitch.parse("1 in 2.5")).isEqualTo(Pitch.ofOneIn(2.5));
        assertThat(Pitch.parse("70 %")).isEqualTo(Pitch.ofPercent(70));
        assertThat(Pitch.parse("70%")).isEqualTo(Pitch.ofPercent(70));
        assertThat(Pitch.parse("22° 30' 15\"")).isEqualTo(Pitch.ofDegrees((22 * 3600 + 30 * 60 + 15) / 3600.0));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "35 | 2 | unit must be °, deg or %, or the number must go on with in and a run | the text ended",
                "7 in | 4 | run must start with a digit | the text ended",
                "7 in 12 in | 8 | text must end here | was \"in\"",
                "7 in 0 | 0 | pitch must be above 0° and below 90° | was 90°",
                "0 in 0 | 0 | pitch must be above 0° and below 90° | was NaN°",
                "0° | 0 | pitch must be above 0° and below 90° | was 0°",
                "90° | 0 | pitch must be above 0° and below 90° | was 90°",
                "-5° | 1 | pitch must be above 0° and below 90° | was -5°",
                "-0° | 1 | pitch must be above 0° and below 90° | was 0°",
                "0.5 rad | 4 | unit must be °, deg or %, or the number must go on with in and a run | was \"rad\"",
                "22.5° 30' | 0 | degrees must be a whole number when minutes follow | was 22.5",
                "22° 30 | 6 | minutes must end in ' | the text ended",
                "22° 60' | 4 | minutes must be below 60 | was 60",
                "22° 30.5' 15\" | 4 | minutes must be a whole number when seconds follow | was 30.5",
                "34° 59' 60\" | 8 | seconds must be below 60 | was 60",
                "22° 30' 15' | 10 | seconds must end in \" | was \"'\"",
                "22° 30'' | 7 | text must end here | was \"'\"",
            })
    void says_where_reading_stopped(String text, int index, String expected, String found) {
        assertThatThrownBy(() -> Pitch.parse(text))
                .isInstanceOf(QuantityParseException.class)
                .hasMessage('"' + text + "\": " + expected + ", but " + found + " (at index " + index + ")");
    }

    @ParameterizedTest
    @CsvSource({"0, 0°", "-0.0, 0°", "90, 90°", "95, 95°", "-5, -5°", "NaN, NaN°", "Infinity, Infinity°"})
    void refuses_what_is_not_between_level_and_plumb(double degrees, String printed) {
        assertThatThrownBy(() -> Pitch.ofDegrees(degrees))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("pitch must be above 0° and below 90°, but was " + printed);
    }

    @Test
    void refuses_notations_that_are_not_above_zero() {
        assertThatThrownBy(() -> Pitch.ofRiseIn12(0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("rise in 12 must be a finite number above 0, but was 0");
        assertThatThrownBy(() -> Pitch.ofPercent(-1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("per cent must be a finite number above 0, but was -1");
        assertThatThrownBy(() -> Pitch.ofOneIn(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("n of 1 in n must be a finite number above 0, but was NaN");
        assertThatThrownBy(() -> Pitch.ofOneIn(Double.POSITIVE_INFINITY))
                .hasMessage("n of 1 in n must be a finite number above 0, but was Infinity");
        assertThatThrownBy(() -> Pitch.ofRiseAndRun(Length.ZERO, ONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("rise must be above 0 mm, but was 0 mm");
        assertThatThrownBy(() -> Pitch.ofRiseAndRun(ONE, ONE.negated()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("run must be above 0 mm, but was -1000 mm");
        assertThatThrownBy(() -> Pitch.ofRiseOverSpan(Length.ZERO, ONE))
                .hasMessage("rise must be above 0 mm, but was 0 mm");
        assertThatThrownBy(() -> Pitch.ofRiseOverSpan(ONE, Length.ZERO))
                .hasMessage("span must be above 0 mm, but was 0 mm");
        assertThatThrownBy(() -> Pitch.ofRiseIn12(1e300))
                .hasMessage("pitch must be above 0° and below 90°, but was 90°");
        assertThatThrownBy(() -> Pitch.ofDegrees(Double.MIN_VALUE).toOneIn())
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("n of 1 in n is beyond the range of a double");
    }

    @Test
    void compares_exactly_by_name() {
        Pitch flat = Pitch.ofDegrees(30);
        Pitch steep = Pitch.ofDegrees(35);
        assertThat(steep.isSteeperThan(flat)).isTrue();
        assertThat(steep.isSteeperThan(steep)).isFalse();
        assertThat(flat.isSteeperThan(steep)).isFalse();
        assertThat(flat.isFlatterThan(steep)).isTrue();
        assertThat(flat.isFlatterThan(flat)).isFalse();
        assertThat(steep.isFlatterThan(flat)).isFalse();
        assertThat(flat.min(steep)).isSameAs(flat);
        assertThat(steep.min(flat)).isSameAs(flat);
        assertThat(flat.max(steep)).isSameAs(steep);
        assertThat(steep.max(flat)).isSameAs(steep);
        Pitch alsoFlat = Pitch.ofDegrees(30);
        assertThat(flat.min(alsoFlat)).isSameAs(flat);
        assertThat(flat.max(alsoFlat)).isSameAs(flat);
        assertThat(flat).isLessThan(steep).isNotEqualTo(steep).hasSameHashCodeAs(Pitch.ofDegrees(30));
        assertThat(flat.hashCode()).isNotEqualTo(steep.hashCode());
    }

    @Test
    void limits_are_met_at_the_storage_resolution() {
        Pitch limit = Pitch.ofDegrees(35);
        assertThat(Pitch.ofDegrees(35).meetsLeast(limit)).isTrue();
        assertThat(Pitch.ofDegrees(36).meetsLeast(limit)).isTrue();
        assertThat(Pitch.ofDegrees(34.999_999).meetsLeast(limit)).isTrue();
        assertThat(Pitch.ofDegrees(34.999_998_9).meetsLeast(limit)).isFalse();
        assertThat(Pitch.ofDegrees(35).meetsGreatest(limit)).isTrue();
        assertThat(Pitch.ofDegrees(34).meetsGreatest(limit)).isTrue();
        assertThat(Pitch.ofDegrees(35.000_001).meetsGreatest(limit)).isTrue();
        assertThat(Pitch.ofDegrees(35.000_001_1).meetsGreatest(limit)).isFalse();
    }

    @Test
    void within_a_tolerance_includes_its_edge() {
        Tolerance<Angle> tenth = Tolerance.ofDegrees(0.1);
        assertThat(Pitch.ofDegrees(35.1).isWithin(tenth, Pitch.ofDegrees(35))).isTrue();
        assertThat(Pitch.ofDegrees(35.100_01).isWithin(tenth, Pitch.ofDegrees(35)))
                .isFalse();
    }
}
