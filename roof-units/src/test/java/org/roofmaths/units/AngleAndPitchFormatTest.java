package org.roofmaths.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AngleAndPitchFormatTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "22.5042 | 22.5° | 22° 30.3' | 22° 30' 15.1\"",
                "-22.5042 | -22.5° | -22° 30.3' | -22° 30' 15.1\"",
                "59.99999 | 60.0° | 60° 0.0' | 60° 0' 0.0\"",
                "-59.99999 | -60.0° | -60° 0.0' | -60° 0' 0.0\"",
                "0.9999 | 1.0° | 1° 0.0' | 0° 59' 59.6\"",
                "0 | 0.0° | 0° 0.0' | 0° 0' 0.0\"",
                "-0.00001 | 0.0° | 0° 0.0' | 0° 0' 0.0\"",
                "0.25 | 0.3° | 0° 15.0' | 0° 15' 0.0\"",
                "1234.5 | 1234.5° | 1234° 30.0' | 1234° 30' 0.0\""
            })
    void angles_in_degrees_minutes_and_seconds(double degrees, String decimal, String minutes, String seconds) {
        Angle angle = Angle.ofDegrees(degrees);
        assertThat(AngleFormat.degrees(1).format(angle)).isEqualTo(decimal);
        assertThat(AngleFormat.degreesMinutes(1).format(angle)).isEqualTo(minutes);
        assertThat(AngleFormat.degreesMinutesSeconds(1).format(angle)).isEqualTo(seconds);
    }

    @Test
    void whole_degrees_minutes_and_seconds() {
        assertThat(AngleFormat.degrees(0).format(Angle.ofDegrees(36.8699))).isEqualTo("37°");
        assertThat(AngleFormat.degreesMinutes(0).format(Angle.ofDegrees(22.5))).isEqualTo("22° 30'");
        assertThat(AngleFormat.degreesMinutesSeconds(0).format(Angle.ofDegrees(22.504_166)))
                .isEqualTo("22° 30' 15\"");
        assertThat(AngleFormat.degreesMinutesSeconds(0).parse("22° 30' 15\""))
                .isEqualTo(Angle.ofDegreesMinutesSeconds(22, 30, 15));
    }

    @Test
    void angles_in_a_locale() {
        AngleFormat german = AngleFormat.degrees(2).withLocale(Locale.GERMANY);
        assertThat(german.format(Angle.ofDegrees(-36.875))).isEqualTo("-36,88°");
        assertThat(german.parse("-36,88°")).isEqualTo(Angle.ofDegrees(-36.88));
        assertThatThrownBy(() -> german.parse("36.88°"))
                .isInstanceOf(QuantityParseException.class)
                .hasMessage("\"36.88°\": a number must be written like 1234,5, but was \".\" (at index 2)");
        assertThat(AngleFormat.degreesMinutes(1).withLocale(Locale.GERMANY).format(Angle.ofDegrees(-0.125)))
                .isEqualTo("-0° 7,5'");
    }

    @Test
    void pitches_in_every_notation() {
        Pitch pitch = Pitch.ofDegrees(35);
        assertThat(PitchFormat.degrees(1).format(Pitch.ofRiseIn12(7))).isEqualTo("30.3°");
        assertThat(PitchFormat.degrees(0).format(pitch)).isEqualTo("35°");
        assertThat(PitchFormat.riseIn12(2).format(pitch)).isEqualTo("8.40 in 12");
        assertThat(PitchFormat.percent(1).format(pitch)).isEqualTo("70.0 %");
        assertThat(PitchFormat.oneIn(2).format(pitch)).isEqualTo("1 in 1.43");
        assertThat(PitchFormat.riseIn12(0).format(Pitch.ofRiseIn12(7))).isEqualTo("7 in 12");
        assertThat(PitchFormat.oneIn(1).format(Pitch.ofOneIn(2.5))).isEqualTo("1 in 2.5");
        assertThat(PitchFormat.oneIn(1).parse("1 in 2.5")).isEqualTo(Pitch.ofOneIn(2.5));
    }

    @Test
    void pitches_in_a_locale() {
        assertThat(PitchFormat.oneIn(1).withLocale(Locale.GERMANY).format(Pitch.ofOneIn(2.5)))
                .isEqualTo("1 in 2,5");
        assertThat(PitchFormat.oneIn(1).withLocale(Locale.GERMANY).parse("1 in 2,5"))
                .isEqualTo(Pitch.ofOneIn(2.5));
        PitchFormat farsi = PitchFormat.riseIn12(1).withLocale(Locale.forLanguageTag("fa"));
        assertThat(farsi.format(Pitch.ofRiseIn12(7))).isEqualTo("۷٫۰ in ۱۲");
        assertThat(farsi.parse("۷٫۰ in ۱۲")).isEqualTo(Pitch.ofRiseIn12(7));
    }

    @Test
    void refuses_more_decimals_than_a_double_has() {
        assertThatThrownBy(() -> AngleFormat.degrees(13))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("decimals must be from 0 to 12, but was 13");
        assertThatThrownBy(() -> PitchFormat.degrees(-1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("decimals must be from 0 to 12, but was -1");
        assertThat(AngleFormat.degrees(12).format(Angle.ofDegrees(1))).isEqualTo("1.000000000000°");
        assertThatThrownBy(() -> AngleFormat.degrees(1).withLocale(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("locale");
        assertThatThrownBy(() -> AngleFormat.degrees(1).parse(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("text");
    }

    @Test
    void print_what_they_do() {
        assertThat(AngleFormat.degrees(2)).hasToString("degrees with 2 decimals");
        assertThat(AngleFormat.degreesMinutes(1)).hasToString("minutes with 1 decimals");
        assertThat(AngleFormat.degreesMinutesSeconds(0).withLocale(Locale.GERMANY))
                .hasToString("seconds with 0 decimals, for de-DE");
        assertThat(PitchFormat.degrees(1)).hasToString("degrees with 1 decimals");
        assertThat(PitchFormat.riseIn12(2)).hasToString("rise in 12 with 2 decimals");
        assertThat(PitchFormat.percent(0)).hasToString("per cent with 0 decimals");
        assertThat(PitchFormat.oneIn(1).withLocale(Locale.GERMANY)).hasToString("1 in n with 1 decimals, for de-DE");
    }

    @Test
    void are_equal_when_they_write_alike() {
        assertThat(AngleFormat.degrees(2))
                .isEqualTo(AngleFormat.degrees(2))
                .hasSameHashCodeAs(AngleFormat.degrees(2))
                .isNotEqualTo(AngleFormat.degrees(1))
                .isNotEqualTo(AngleFormat.degreesMinutes(2))
                .isNotEqualTo(AngleFormat.degrees(2).withLocale(Locale.UK))
                .isNotEqualTo(PitchFormat.degrees(2));
        assertThat(AngleFormat.degrees(2).hashCode())
                .isNotEqualTo(AngleFormat.degrees(1).hashCode());
        assertThat(PitchFormat.degrees(2))
                .isEqualTo(PitchFormat.degrees(2))
                .hasSameHashCodeAs(PitchFormat.degrees(2))
                .isNotEqualTo(PitchFormat.degrees(1))
                .isNotEqualTo(PitchFormat.percent(2))
                .isNotEqualTo(PitchFormat.degrees(2).withLocale(Locale.UK))
                .isNotEqualTo(AngleFormat.degrees(2));
        assertThat(PitchFormat.degrees(2).hashCode())
                .isNotEqualTo(PitchFormat.degrees(1).hashCode());
    }
}
