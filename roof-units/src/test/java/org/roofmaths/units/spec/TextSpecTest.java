package org.roofmaths.units.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Length;
import org.roofmaths.units.LengthFormat;
import org.roofmaths.units.Offset;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.QuantityKind;
import org.roofmaths.units.QuantityParseException;
import org.roofmaths.units.Range;
import org.roofmaths.units.Ratio;
import org.roofmaths.units.Rounding;

/** What the comments promise about texts, printed and read. */
class TextSpecTest {
    @Test
    void a_list_of_lengths_prints_as_a_person_would_write_it() {
        assertThat(List.of(Length.ofMillimetres(345), Length.ofMillimetres(344.4875)))
                .hasToString("[345 mm, 344.4875 mm]");
    }

    @Test
    void printing_does_not_depend_on_the_locale_of_the_machine() {
        Locale before = Locale.getDefault();
        try {
            for (Locale locale : List.of(Locale.GERMANY, Locale.forLanguageTag("fa"), Locale.forLanguageTag("tr"))) {
                Locale.setDefault(locale);
                assertThat(Length.ofMillimetres(1234.5)).hasToString("1234.5 mm");
                assertThat(Pitch.ofDegrees(22.5)).hasToString("22.5°");
                assertThat(LengthFormat.metres(2).format(Length.ofMetres(1234.5)))
                        .isEqualTo("1234.50 m");
                assertThat(LengthFormat.inches(2)).hasToString("inches by 1/2 in");
                assertThat(Length.parse("1234.5 mm")).isEqualTo(Length.ofMillimetres(1234.5));
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void the_documented_forms_are_read() {
        assertThat(Length.parse("5.2 m")).isEqualTo(Length.ofMillimetres(5200));
        assertThat(Length.parse("9' 4 1/2\"")).isEqualTo(Length.ofFeetAndInches(9, 4, 1, 2));
        assertThat(Length.parse("9 ft 4 1/2 in")).isEqualTo(Length.ofFeetAndInches(9, 4, 1, 2));
        assertThat(Length.parse("13 9/16 in")).isEqualTo(Length.ofInches(13, 9, 16));
        assertThat(Pitch.parse("35°")).isEqualTo(Pitch.ofDegrees(35));
        assertThat(Pitch.parse("35 deg")).isEqualTo(Pitch.ofDegrees(35));
        assertThat(Pitch.parse("7 in 12")).isEqualTo(Pitch.ofRiseIn12(7));
        assertThat(Pitch.parse("1 in 2.5")).isEqualTo(Pitch.ofOneIn(2.5));
        assertThat(Pitch.parse("70 %")).isEqualTo(Pitch.ofPercent(70));
        assertThat(Ratio.parse("70 %")).isEqualTo(Ratio.of(0.7));
        assertThat(Angle.parse("22° 30' 15\"")).isEqualTo(Angle.ofDegreesMinutesSeconds(22, 30, 15));
        assertThat(Offset.parse("50 mm on the slope")).isEqualTo(Offset.onSlope(Length.ofMillimetres(50)));
        assertThat(Range.parse("[30°..35°)", Pitch::parse))
                .isEqualTo(Range.closedOpen(Pitch.ofDegrees(30), Pitch.ofDegrees(35)));
    }

    @Test
    void a_number_without_its_unit_is_refused() {
        for (QuantityKind kind : QuantityKind.values()) {
            if (kind != QuantityKind.RATIO) {
                assertThatThrownBy(() -> kind.parse("5200"))
                        .as(kind.words())
                        .isInstanceOf(QuantityParseException.class);
            }
        }
    }

    @Test
    void a_prime_is_never_taken_for_a_double_prime() {
        for (String text : List.of("9'' 4'", "4''", "9' 4'", "9\" 4'", "9\" 4\"")) {
            assertThatThrownBy(() -> Length.parse(text)).isInstanceOf(QuantityParseException.class);
        }
        assertThatThrownBy(() -> Angle.parse("22° 30\"")).isInstanceOf(QuantityParseException.class);
        assertThatThrownBy(() -> Angle.parse("22° 30' 15'")).isInstanceOf(QuantityParseException.class);
    }

    @Test
    void a_failure_says_where_and_what_was_expected() {
        assertThatThrownBy(() -> Length.parse("13 9/15 in"))
                .hasMessage("\"13 9/15 in\": denominator must be 1, 2, 4, 8, 16, 32 or 64, but was 15 (at index 5)")
                .isInstanceOfSatisfying(QuantityParseException.class, e -> {
                    assertThat(e.text()).isEqualTo("13 9/15 in");
                    assertThat(e.index()).isEqualTo(5);
                    assertThat(e.expected()).isEqualTo("denominator must be 1, 2, 4, 8, 16, 32 or 64");
                    assertThat(e.found()).isEqualTo("was 15");
                });
    }

    @Test
    void feet_and_inches_carry() {
        assertThat(LengthFormat.feetAndInches(16).format(Length.ofInches(11, 31, 32)))
                .isEqualTo("1 ft 0 in");
        assertThat(LengthFormat.feetAndInches(32).format(Length.ofInches(11, 31, 32)))
                .isEqualTo("11 31/32 in");
    }

    @Test
    void a_format_reads_back_what_it_writes() {
        LengthFormat format = LengthFormat.metres(3).withLocale(Locale.GERMANY).withThousandsSeparator();
        assertThat(format.format(Length.ofMetres(1234.5674))).isEqualTo("1.234,567 m");
        assertThat(format.parse("1.234,567 m")).isEqualTo(Length.ofMetres(1234.567));
    }

    @Test
    void a_format_rounds_as_it_is_told_and_the_length_stays() {
        Length length = Length.ofMillimetres(61.038_729);
        assertThat(LengthFormat.millimetres(0)
                        .withRounding(Rounding.upToMultipleOf(Length.ofMillimetres(5)))
                        .format(length))
                .isEqualTo("65 mm");
        assertThat(length).isEqualTo(Length.ofMillimetres(61.038_729));
    }
}
