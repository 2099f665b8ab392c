package org.roofmaths.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthFormatTest {
    private static final Length RAFTER = Length.ofMillimetres(4394.788_52);
    private static final Locale FARSI = Locale.forLanguageTag("fa");

    @Test
    void metric_units_with_decimals() {
        assertThat(LengthFormat.metres(3).format(RAFTER)).isEqualTo("4.395 m");
        assertThat(LengthFormat.metres(0).format(RAFTER)).isEqualTo("4 m");
        assertThat(LengthFormat.metres(9).format(RAFTER)).isEqualTo("4.394788520 m");
        assertThat(LengthFormat.centimetres(1).format(RAFTER)).isEqualTo("439.5 cm");
        assertThat(LengthFormat.centimetres(7).format(RAFTER)).isEqualTo("439.4788520 cm");
        assertThat(LengthFormat.millimetres(0).format(RAFTER)).isEqualTo("4395 mm");
        assertThat(LengthFormat.millimetres(6).format(RAFTER)).isEqualTo("4394.788520 mm");
        assertThat(LengthFormat.millimetres(2).format(Length.ZERO)).isEqualTo("0.00 mm");
        assertThat(LengthFormat.millimetres(1).format(Length.ofMillimetres(-0.04)))
                .isEqualTo("0.0 mm");
        assertThat(LengthFormat.millimetres(1).format(Length.ofMillimetres(-0.05)))
                .isEqualTo("-0.1 mm");
        assertThat(LengthFormat.metres(2).format(Length.ofMetres(-0.25))).isEqualTo("-0.25 m");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0 in | 16 | 0 in | 0 in | 0\"",
                "4 1/2 in | 16 | 4 1/2 in | 4 1/2 in | 4 1/2\"",
                "1/2 in | 16 | 1/2 in | 1/2 in | 1/2\"",
                "12 in | 16 | 12 in | 1 ft 0 in | 1' 0\"",
                "12 1/2 in | 16 | 12 1/2 in | 1 ft 0 1/2 in | 1' 0 1/2\"",
                "112 1/2 in | 16 | 112 1/2 in | 9 ft 4 1/2 in | 9' 4 1/2\"",
                "-112 1/2 in | 16 | -112 1/2 in | -9 ft 4 1/2 in | -9' 4 1/2\"",
                "11 31/32 in | 16 | 12 in | 1 ft 0 in | 1' 0\"",
                "11 31/32 in | 32 | 11 31/32 in | 11 31/32 in | 11 31/32\"",
                "23 15/16 in | 8 | 24 in | 2 ft 0 in | 2' 0\"",
                "23 63/64 in | 1 | 24 in | 2 ft 0 in | 2' 0\"",
                "5 7/16 in | 1 | 5 in | 5 in | 5\"",
                "-1/64 in | 16 | 0 in | 0 in | 0\"",
                "1/32 in | 16 | 1/16 in | 1/16 in | 1/16\"",
                "3 4/16 in | 16 | 3 1/4 in | 3 1/4 in | 3 1/4\""
            })
    void inches_carry_into_feet_and_fractions_are_in_lowest_terms(
            String given, int denominator, String inches, String feet, String marks) {
        Length length = Length.parse(given);
        assertThat(LengthFormat.inches(denominator).format(length)).isEqualTo(inches);
        assertThat(LengthFormat.feetAndInches(denominator).format(length)).isEqualTo(feet);
        assertThat(LengthFormat.feetAndInchMarks(denominator).format(length)).isEqualTo(marks);
    }

    @Test
    void thousands_are_apart_only_when_asked() {
        Length far = Length.ofMillimetres(1_234_567.8);
        assertThat(LengthFormat.millimetres(1).format(far)).isEqualTo("1234567.8 mm");
        LengthFormat apart = LengthFormat.millimetres(1).withThousandsSeparator();
        assertThat(apart.format(far)).isEqualTo("1\u202f234\u202f567.8 mm");
        assertThat(apart.format(far.negated())).isEqualTo("-1\u202f234\u202f567.8 mm");
        assertThat(apart.format(Length.ofMillimetres(999))).isEqualTo("999.0 mm");
        assertThat(LengthFormat.feetAndInches(2).withThousandsSeparator().format(Length.ofFeetAndInches(1234, 5, 1, 2)))
                .isEqualTo("1\u202f234 ft 5 1/2 in");
    }

    @Test
    void a_locale_is_used_only_when_asked() {
        LengthFormat german = LengthFormat.metres(2).withLocale(Locale.GERMANY);
        assertThat(german.format(Length.ofMetres(-1234.5))).isEqualTo("-1234,50 m");
        assertThat(german.withThousandsSeparator().format(Length.ofMetres(1234.5)))
                .isEqualTo("1.234,50 m");
        assertThat(LengthFormat.metres(2)
                        .withThousandsSeparator()
                        .withLocale(Locale.UK)
                        .format(Length.ofMetres(1234.5)))
                .isEqualTo("1,234.50 m");
        assertThat(LengthFormat.metres(2).withLocale(FARSI).format(Length.ofMetres(5.25)))
                .isEqualTo("۵٫۲۵ m");
        assertThat(LengthFormat.feetAndInches(8).withLocale(FARSI).format(Length.ofFeetAndInches(9, 4, 1, 2)))
                .isEqualTo("۹ ft ۴ ۱/۲ in");
        assertThat(german.parse("5,2 m")).isEqualTo(Length.ofMetres(5.2));
        assertThat(german.parse("5200 mm")).isEqualTo(Length.ofMetres(5.2));
        assertThat(LengthFormat.feetAndInches(8).withLocale(FARSI).parse("۹ ft ۴ ۱/۲ in"))
                .isEqualTo(Length.ofFeetAndInches(9, 4, 1, 2));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1.234,5 m | 1234500 mm",
                "12.345.678 mm | 12345678 mm",
                "1234,5 m | 1234500 mm",
                "-1.234 mm | -1234 mm",
                "1.234 ft 3 1/2 in | 14811.5 in",
                "1,2 m | 1200 mm"
            })
    void reads_thousands_in_groups_of_three(String text, String expected) {
        LengthFormat format = LengthFormat.metres(3).withLocale(Locale.GERMANY).withThousandsSeparator();
        assertThat(format.parse(text)).isEqualTo(Length.parse(expected));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1.2 m | 1",
                "1.23 m | 1",
                "1.2345 m | 1",
                "1234.567 m | 4",
                "1.234.5 m | 5",
                "1.2345.678 m | 1",
                ".123 m | 0",
                "1,234.567 m | 5",
                "1,2345.678 m | 6",
                "1. 234 m | 1",
                "1234.567.890 m | 4",
                "12.34.567 m | 2"
            })
    void refuses_a_thousands_sign_anywhere_else(String text, int index) {
        LengthFormat format = LengthFormat.metres(3).withLocale(Locale.GERMANY).withThousandsSeparator();
        assertThatThrownBy(() -> format.parse(text))
                .isInstanceOf(QuantityParseException.class)
                .hasMessage('"' + text + "\": a number must be written like 1.234,5, but was \".\" (at index " + index
                        + ")");
    }

    @Test
    void refuses_the_signs_of_another_style() {
        LengthFormat german = LengthFormat.metres(2).withLocale(Locale.GERMANY);
        assertThatThrownBy(() -> german.parse("5.2 m"))
                .hasMessage("\"5.2 m\": a number must be written like 1234,5, but was \".\" (at index 1)");
        assertThatThrownBy(() -> german.parse("1.234 m"))
                .hasMessage("\"1.234 m\": a number must be written like 1234,5, but was \".\" (at index 1)");
        assertThatThrownBy(() -> LengthFormat.metres(2).withLocale(Locale.UK).parse("1,234 m"))
                .hasMessage("\"1,234 m\": a number must be written like 1234.5, but was \",\" (at index 1)");
        assertThatThrownBy(() -> LengthFormat.metres(2).parse("1,234 m"))
                .hasMessage("\"1,234 m\": unit must be mm, cm, m, in, ft or yd, but was \",\" (at index 1)");
        assertThatThrownBy(() -> german.parse(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("text");
    }

    @Test
    void points_into_the_text_as_it_was_given() {
        LengthFormat apart = LengthFormat.metres(3).withThousandsSeparator();
        assertThat(apart.parse("12\u202f345 mm")).isEqualTo(Length.ofMillimetres(12_345));
        assertThat(apart.parse("12 345\u00a0678 mm")).isEqualTo(Length.ofMillimetres(12_345_678));
        assertThat(apart.parse(" 1 234 mm")).isEqualTo(Length.ofMillimetres(1234));
        assertThat(apart.parse(" -1 234 mm")).isEqualTo(Length.ofMillimetres(-1234));
        assertThat(apart.parse("13 9/16 in")).isEqualTo(Length.ofInches(13, 9, 16));
        assertThatThrownBy(() -> apart.parse("1.5 234 mm"))
                .hasMessage("\"1.5 234 mm\": a number before a fraction must be whole, but was 1.5 (at index 0)");
        String longText = "1" + " 234".repeat(1_000_000) + " mm";
        assertThatThrownBy(() -> apart.parse(longText)).isInstanceOfSatisfying(QuantityParseException.class, e -> {
            assertThat(e.text()).isEqualTo(longText);
            assertThat(e.expected()).isEqualTo("number must have at most 100 characters");
        });
        assertThatThrownBy(() -> apart.parse("12 345 km"))
                .hasMessage("\"12 345 km\": unit must be mm, cm, m, in, ft or yd, but was \"km\" (at index 7)");
        assertThatThrownBy(() -> apart.parse("12 345"))
                .hasMessage("\"12 345\": unit must be mm, cm, m, in, ft or yd, but the text ended (at index 6)");
    }

    @Test
    void rounds_as_it_is_told() {
        LengthFormat fives = LengthFormat.millimetres(0).withRounding(Rounding.upToMultipleOf(Length.ofMillimetres(5)));
        assertThat(fives.format(Length.ofMillimetres(61.038_729))).isEqualTo("65 mm");
        assertThat(fives.rounding()).contains(Rounding.upToMultipleOf(Length.ofMillimetres(5)));
        assertThat(LengthFormat.millimetres(0).rounding()).isEmpty();
        assertThat(LengthFormat.metres(3)
                        .withRounding(Rounding.downToMultipleOf(Length.ofMillimetres(1)))
                        .format(RAFTER))
                .isEqualTo("4.394 m");
        assertThat(LengthFormat.inches(16)
                        .withRounding(Rounding.toFractionOfInch(8))
                        .format(Length.ofInches(1, 1, 16)))
                .isEqualTo("1 1/8 in");
        assertThatThrownBy(() -> LengthFormat.metres(2).withRounding(Rounding.upToMultipleOf(Length.ofMillimetres(5))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a rounding for metres by 0.01 m must have a step of whole multiples of 10 mm,"
                        + " but was up to a multiple of 5 mm");
        assertThatThrownBy(() -> LengthFormat.metres(2).withRounding(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("rounding");
    }

    @Test
    void refuses_decimals_beyond_a_nanometre_and_fractions_no_tape_has() {
        assertThatThrownBy(() -> LengthFormat.millimetres(7))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("decimals of millimetres must be from 0 to 6, but was 7");
        assertThatThrownBy(() -> LengthFormat.centimetres(8))
                .hasMessage("decimals of centimetres must be from 0 to 7, but was 8");
        assertThatThrownBy(() -> LengthFormat.metres(-1))
                .hasMessage("decimals of metres must be from 0 to 9, but was -1");
        assertThatThrownBy(() -> LengthFormat.inches(10))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("denominator must be 1, 2, 4, 8, 16, 32 or 64, but was 10");
        assertThatThrownBy(() -> LengthFormat.metres(3).withLocale(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("locale");
    }

    @Test
    void prints_what_it_does() {
        assertThat(LengthFormat.metres(3)).hasToString("metres by 0.001 m");
        assertThat(LengthFormat.millimetres(0)).hasToString("millimetres by 1 mm");
        assertThat(LengthFormat.inches(1)).hasToString("inches by 1 in");
        assertThat(LengthFormat.feetAndInches(16)).hasToString("feet and inches by 1/16 in");
        assertThat(LengthFormat.feetAndInchMarks(16)).hasToString("feet and inch marks by 1/16 in");
        assertThat(LengthFormat.millimetres(0)
                        .withRounding(Rounding.upToMultipleOf(Length.ofMillimetres(5)))
                        .withThousandsSeparator()
                        .withLocale(Locale.GERMANY))
                .hasToString("millimetres by 1 mm, rounded up to a multiple of 5 mm, with thousands apart, for de-DE");
    }

    @Test
    void is_equal_when_it_writes_alike() {
        LengthFormat format = LengthFormat.metres(3);
        Rounding<Length> rounding = Rounding.upToMultipleOf(Length.ofMillimetres(5));
        assertThat(format)
                .isEqualTo(LengthFormat.metres(3))
                .hasSameHashCodeAs(LengthFormat.metres(3))
                .isNotEqualTo(LengthFormat.metres(2))
                .isNotEqualTo(format.withThousandsSeparator())
                .isNotEqualTo(format.withRounding(rounding))
                .isNotEqualTo(format.withLocale(Locale.ROOT))
                .isNotEqualTo("4.395 m");
        assertThat(LengthFormat.inches(1)).isNotEqualTo(LengthFormat.feetAndInches(1));
        assertThat(format.withRounding(rounding))
                .isEqualTo(LengthFormat.metres(3).withRounding(rounding));
        assertThat(format.withLocale(Locale.UK)).isEqualTo(format.withLocale(Locale.UK));
        assertThat(format.hashCode()).isNotEqualTo(LengthFormat.metres(2).hashCode());
    }
}
