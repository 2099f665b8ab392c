package org.roofmaths.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {
    private static final String RANGE =
            "length must be between -9223372036854.775807 mm and 9223372036854.775807 mm, but was ";

    @Test
    void every_unit_is_a_whole_number_of_nanometres() {
        assertThat(Length.ofMillimetres(1).toNanometres()).isEqualTo(1_000_000);
        assertThat(Length.ofCentimetres(1).toNanometres()).isEqualTo(10_000_000);
        assertThat(Length.ofMetres(1).toNanometres()).isEqualTo(1_000_000_000);
        assertThat(Length.ofDecimalInches(1).toNanometres()).isEqualTo(25_400_000);
        assertThat(Length.ofDecimalFeet(1).toNanometres()).isEqualTo(12 * 25_400_000);
        assertThat(Length.ofYards(1).toNanometres()).isEqualTo(3 * 12 * 25_400_000);
        assertThat(Length.ofInches(0, 1, 64).toNanometres()).isEqualTo(25_400_000 / 64);
        assertThat(Length.ofNanometres(7).toNanometres()).isEqualTo(7);
    }

    @Test
    void inches_and_fractions_add_up() {
        assertThat(Length.ofInches(13, 9, 16)).isEqualTo(Length.ofMillimetres(13.5625 * 25.4));
        assertThat(Length.ofFeetAndInches(9, 4, 1, 2)).isEqualTo(Length.ofMillimetres((9 * 12 + 4.5) * 25.4));
        assertThat(Length.ofFeetAndInches(3, 0, 0, 1)).isEqualTo(Length.ofYards(1));
        assertThat(Length.ofFeetAndInches(1, 11, 0, 1)).isEqualTo(Length.ofInches(23, 0, 1));
    }

    @Test
    void decimal_factories_round_to_the_nearest_nanometre_and_ties_to_even() {
        assertThat(Length.ofMillimetres(0.000_000_6).toNanometres()).isEqualTo(1);
        assertThat(Length.ofMillimetres(-0.000_000_6).toNanometres()).isEqualTo(-1);
        // 0.25 mm over 10^6 is not a double; a half nanometre is one eighth of 4 nm, so start from a power of two.
        assertThat(Length.ofNanometres(5).dividedBy(2).toNanometres()).isEqualTo(2);
        assertThat(Length.ofNanometres(7).dividedBy(2).toNanometres()).isEqualTo(4);
        assertThat(Length.ofNanometres(-5).times(0.5).toNanometres()).isEqualTo(-2);
    }

    @Test
    void readers_give_the_number_of_each_unit() {
        Length yard = Length.ofMillimetres(914.4);
        assertThat(yard.toYards()).isEqualTo(1);
        assertThat(yard.toFeet()).isEqualTo(3);
        assertThat(yard.toInches()).isEqualTo(36);
        assertThat(yard.toMetres()).isEqualTo(0.9144);
        assertThat(yard.toSi()).isEqualTo(0.9144);
        assertThat(yard.toCentimetres()).isEqualTo(91.44);
        assertThat(yard.toMillimetres()).isEqualTo(914.4);
        assertThat(yard.toNanometres()).isEqualTo(914_400_000);
        assertThat(yard.kind()).isEqualTo(QuantityKind.LENGTH);
    }

    @Test
    void sums_are_exact() {
        assertThat(Length.ofMillimetres(0.1).plus(Length.ofMillimetres(0.2))).isEqualTo(Length.ofMillimetres(0.3));
        assertThat(Length.ofMetres(1).minus(Length.ofNanometres(1)).toNanometres())
                .isEqualTo(999_999_999);
        assertThat(Length.ofMillimetres(324.75).times(12)).isEqualTo(Length.ofMillimetres(3897));
        assertThat(Length.sum(List.of(Length.ofMillimetres(0.1), Length.ofInches(1, 0, 1), Length.ofMillimetres(-5))))
                .isEqualTo(Length.ofMillimetres(20.5));
        assertThat(Length.sum(List.of())).isEqualTo(Length.ZERO);
        assertThat(Length.ofMillimetres(5).negated()).isEqualTo(Length.ofMillimetres(-5));
        assertThat(Length.ofMillimetres(-5).abs()).isEqualTo(Length.ofMillimetres(5));
        assertThat(Length.ofMillimetres(5).abs()).isEqualTo(Length.ofMillimetres(5));
    }

    @Test
    void products_and_quotients_with_other_kinds() {
        assertThat(Length.ofMetres(4.6).times(Length.ofMetres(2.7))).isEqualTo(Area.ofSquareMetres(12.42));
        assertThat(Length.ofMetres(3).dividedBy(Length.ofMetres(4))).isEqualTo(Ratio.of(0.75));
        assertThat(Length.ofMetres(3).times(Ratio.of(0.75))).isEqualTo(Length.ofMetres(2.25));
    }

    @Test
    void the_shorter_and_the_longer_of_two() {
        Length two = Length.ofMillimetres(2);
        Length three = Length.ofMillimetres(3);
        assertThat(two.min(three)).isSameAs(two);
        assertThat(three.min(two)).isSameAs(two);
        assertThat(two.max(three)).isSameAs(three);
        assertThat(three.max(two)).isSameAs(three);
        Length alsoTwo = Length.ofMillimetres(2);
        assertThat(two.min(alsoTwo)).isSameAs(two);
        assertThat(two.max(alsoTwo)).isSameAs(two);
    }

    @Test
    void sums_that_leave_the_range_overflow() {
        Length most = Length.ofNanometres(Long.MAX_VALUE);
        Length least = most.negated();
        for (Runnable sum : List.<Runnable>of(
                () -> most.plus(Length.ofNanometres(1)),
                () -> least.minus(Length.ofNanometres(1)),
                () -> least.minus(Length.ofNanometres(2)),
                () -> most.times(2),
                () -> Length.sum(List.of(most, Length.ofNanometres(1))),
                () -> Length.sum(List.of(least, Length.ofNanometres(-1))),
                () -> Length.ofNanometres(Long.MIN_VALUE))) {
            assertThatThrownBy(sum::run).isInstanceOf(ArithmeticException.class).hasMessage("long overflow");
        }
        assertThatThrownBy(() -> most.times(1.1))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("length is beyond its range");
        // 2^62 is within the range, 2^63 is just beyond it.
        assertThatThrownBy(() -> Length.ofNanometres(1L << 62).times(2.0))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("length is beyond its range");
        assertThatThrownBy(() -> most.dividedBy(0.5))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("length is beyond its range");
    }

    @Test
    void refuses_to_divide_by_zero_or_by_no_number() {
        Length one = Length.ofMillimetres(1);
        assertThatThrownBy(() -> one.dividedBy(0))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("divisor must not be zero");
        assertThatThrownBy(() -> one.dividedBy(Length.ZERO))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("divisor must not be zero");
        assertThatThrownBy(() -> one.dividedBy(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("divisor must be a finite number, but was NaN");
        assertThatThrownBy(() -> one.times(Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("factor must be a finite number, but was Infinity");
    }

    @Test
    void refuses_numbers_that_are_no_length() {
        assertThatThrownBy(() -> Length.ofMillimetres(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("length must be a finite number, but was NaN");
        assertThatThrownBy(() -> Length.ofMetres(Double.NEGATIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("length must be a finite number, but was -Infinity");
        assertThatThrownBy(() -> Length.ofMillimetres(1e14))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(RANGE + "100000000000000 mm");
        assertThatThrownBy(() -> Length.ofMetres(-0x1p63 / 1e9))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(RANGE + "-9223372036.854776 m");
    }

    @Test
    void refuses_parts_of_an_inch_that_no_tape_has() {
        assertThatThrownBy(() -> Length.ofInches(13, 9, 15))
                .hasMessage("denominator must be 1, 2, 4, 8, 16, 32 or 64, but was 15");
        for (int denominator : new int[] {-2, 0, 3, 128}) {
            assertThatThrownBy(() -> Length.ofInches(1, 0, denominator))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("denominator must be 1, 2, 4, 8, 16, 32 or 64, but was " + denominator);
        }
        assertThatThrownBy(() -> Length.ofInches(1, 16, 16)).hasMessage("numerator must be from 0 to 15, but was 16");
        assertThatThrownBy(() -> Length.ofInches(1, -1, 16)).hasMessage("numerator must be from 0 to 15, but was -1");
        assertThatThrownBy(() -> Length.ofInches(-1, 0, 1))
                .hasMessage("inches must be zero or more, but was -1; for a negative length take the negated one");
        assertThatThrownBy(() -> Length.ofFeetAndInches(-1, 0, 0, 1))
                .hasMessage("feet must be zero or more, but was -1; for a negative length take the negated one");
        assertThatThrownBy(() -> Length.ofFeetAndInches(1, 12, 0, 1))
                .hasMessage("inches must be from 0 to 11 when feet are given, but was 12");
        assertThatThrownBy(() -> Length.ofFeetAndInches(1, -1, 0, 1))
                .hasMessage("inches must be from 0 to 11 when feet are given, but was -1");
    }

    @Test
    void counts_whole_gauges_and_gives_the_rest() {
        assertThat(Length.ofMillimetres(325).timesIn(Length.ofMillimetres(3912)))
                .isEqualTo(new WholeCount(12, Length.ofMillimetres(3912 - 12 * 325)));
        assertThat(Length.ofMillimetres(325).timesIn(Length.ZERO)).isEqualTo(new WholeCount(0, Length.ZERO));
        assertThat(Length.ofMillimetres(300).timesIn(Length.ofMillimetres(2999.9999)))
                .isEqualTo(new WholeCount(10, Length.ofNanometres(-100)));
        assertThat(Length.ofMillimetres(300).timesIn(Length.ofMillimetres(2999.999_899)))
                .isEqualTo(new WholeCount(9, Length.ofMillimetres(299.999_899)));
    }

    @ParameterizedTest
    @CsvSource({
        "0 mm, 0",
        "0.0001 mm, 0",
        "0.000101 mm, 1",
        "300 mm, 1",
        "300.0001 mm, 1",
        "300.000101 mm, 2",
        "3000 mm, 10",
        "3000.0001 mm, 10",
        "3000.000101 mm, 11"
    })
    void counts_the_gauges_that_cover_a_distance(String distance, long count) {
        assertThat(Length.ofMillimetres(300).timesToCover(Length.parse(distance)))
                .isEqualTo(count);
    }

    @Test
    void three_stored_parts_of_ten_gauges_make_ten_gauges() {
        // 1750 + 25 + 25 mm of run at 4 in 3 is 1800 × 5/3 = 3000 mm of slope; the stored parts add up to 1 nm more.
        Pitch pitch = Pitch.ofRiseAndRun(Length.ofMillimetres(4), Length.ofMillimetres(3));
        Length slope = pitch.slopeOver(Length.ofMillimetres(1750))
                .plus(pitch.slopeOver(Length.ofMillimetres(25)))
                .plus(pitch.slopeOver(Length.ofMillimetres(25)));
        assertThat(slope).isEqualTo(Length.ofMillimetres(3000.000_001));
        assertThat(Length.ofMillimetres(300).timesToCover(slope)).isEqualTo(10);
    }

    @Test
    void refuses_to_count_with_nothing_or_over_less_than_nothing() {
        assertThatThrownBy(() -> Length.ofNanometres(100).timesIn(Length.ofMillimetres(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a length to count with must be longer than 0.0001 mm, but was 0.0001 mm");
        assertThatThrownBy(() -> Length.ofMillimetres(-3).timesToCover(Length.ofMillimetres(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a length to count with must be longer than 0.0001 mm, but was -3 mm");
        assertThatThrownBy(() -> Length.ofMillimetres(3).timesToCover(Length.ofMillimetres(-1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("distance must be zero or more, but was -1 mm");
        assertThatThrownBy(() -> Length.ofMillimetres(3).timesIn(Length.ofMillimetres(-1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("distance must be zero or more, but was -1 mm");
        assertThatThrownBy(() -> new WholeCount(-1, Length.ZERO)).hasMessage("count must be zero or more, but was -1");
    }

    @Test
    void compares_exactly_by_name() {
        Length two = Length.ofNanometres(2);
        Length three = Length.ofNanometres(3);
        assertThat(three.isLongerThan(two)).isTrue();
        assertThat(three.isLongerThan(three)).isFalse();
        assertThat(two.isLongerThan(three)).isFalse();
        assertThat(two.isShorterThan(three)).isTrue();
        assertThat(two.isShorterThan(two)).isFalse();
        assertThat(three.isShorterThan(two)).isFalse();
        assertThat(two).isLessThan(three).isNotEqualTo(three).isEqualTo(Length.ofNanometres(2));
        assertThat(two.hashCode()).isEqualTo(Length.ofNanometres(2).hashCode()).isNotEqualTo(three.hashCode());
    }

    @Test
    void knows_its_sign() {
        for (int sign = -1; sign <= 1; sign++) {
            Length length = Length.ofNanometres(sign);
            assertThat(length.isNegative()).isEqualTo(sign < 0);
            assertThat(length.isZero()).isEqualTo(sign == 0);
            assertThat(length.isPositive()).isEqualTo(sign > 0);
        }
    }

    @Test
    void limits_are_met_at_the_storage_resolution() {
        Length limit = Length.ofMillimetres(75);
        assertThat(Length.ofMillimetres(75).meetsLeast(limit)).isTrue();
        assertThat(Length.ofMillimetres(74.9999).meetsLeast(limit)).isTrue();
        assertThat(Length.ofMillimetres(74.999_899).meetsLeast(limit)).isFalse();
        assertThat(Length.ofMillimetres(76).meetsLeast(limit)).isTrue();
        assertThat(Length.ofMillimetres(75).meetsGreatest(limit)).isTrue();
        assertThat(Length.ofMillimetres(75.0001).meetsGreatest(limit)).isTrue();
        assertThat(Length.ofMillimetres(75.000_101).meetsGreatest(limit)).isFalse();
        assertThat(Length.ofMillimetres(74).meetsGreatest(limit)).isTrue();
    }

    @Test
    void within_a_tolerance_includes_its_edge() {
        Tolerance<Length> half = Tolerance.ofMillimetres(0.5);
        Length here = Length.ofMillimetres(300);
        assertThat(Length.ofMillimetres(300.5).isWithin(half, here)).isTrue();
        assertThat(Length.ofMillimetres(299.5).isWithin(half, here)).isTrue();
        assertThat(Length.ofMillimetres(300.500_001).isWithin(half, here)).isFalse();
        assertThat(Length.ofMillimetres(299.499_999).isWithin(half, here)).isFalse();
        Length most = Length.ofNanometres(Long.MAX_VALUE);
        assertThat(most.isWithin(half, most.negated())).isFalse();
        assertThat(most.isWithin(Tolerance.of(Length.ZERO), most)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0 mm",
        "1, 0.000001 mm",
        "-1, -0.000001 mm",
        "1000000, 1 mm",
        "344487500, 344.4875 mm",
        "3000000000, 3000 mm",
        "9223372036854775807, 9223372036854.775807 mm"
    })
    void prints_millimetres_with_the_decimals_it_has(long nanometres, String text) {
        assertThat(Length.ofNanometres(nanometres)).hasToString(text);
        assertThat(Length.parse(text)).isEqualTo(Length.ofNanometres(nanometres));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "9 ft 4 1/2 in",
                "9' 4 1/2\"",
                "9'4 1/2\"",
                "9′ 4 1/2″",
                "9’ 4 1/2”",
                "9 ft 4.5 in",
                "112.5 in",
                "112 1/2 in",
                "112 16/32 in",
                "9.375 ft",
                "3.125 yd",
                "2857.5 mm",
                "285.75 cm",
                "2.8575 m",
                "2.8575E0 m",
                "28575E-4 m",
                " 2857.5 mm ",
                "2857.5mm",
                "2857.5\u00a0mm",
                "2857.5\u202fmm",
                "9 ft 4 1/2\"",
                "2857.500000000000000000000 mm",
                "9  ft  4  1/2  in"
            })
    void reads_one_length_in_many_forms(String text) {
        assertThat(Length.parse(text)).isEqualTo(Length.ofFeetAndInches(9, 4, 1, 2));
        assertThat(Length.parse("-" + text.strip()))
                .isEqualTo(Length.ofFeetAndInches(9, 4, 1, 2).negated());
        assertThat(Length.parse("−" + text.strip()))
                .isEqualTo(Length.ofFeetAndInches(9, 4, 1, 2).negated());
    }

    @ParameterizedTest
    @CsvSource({
        "0.0000004 mm, 0", "0.0000005 mm, 0", "0.0000006 mm, 1", "0.0000015 mm, 2", "0.0000025 mm, 2",
        "0.00000250000000000000000001 mm, 3", "1E-999 m, 0", "9/16 in, 14287500", "0 1/2 in, 12700000",
                "6' 0 1/2\", 1841500000"
    })
    void reads_to_the_nearest_nanometre(String text, long nanometres) {
        assertThat(Length.parse(text).toNanometres()).isEqualTo(nanometres);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "13 9/15 in | 5 | denominator must be 1, 2, 4, 8, 16, 32 or 64 | was 15",
                "13 9/0 in | 5 | denominator must be 1, 2, 4, 8, 16, 32 or 64 | was 0",
                "13 9/128 in | 5 | denominator must be 1, 2, 4, 8, 16, 32 or 64 | was 128",
                "13 16/16 in | 3 | numerator must be below the denominator | was 16",
                "17/16 in | 0 | numerator must be below the denominator | was 17",
                "13 9 in | 4 | numerator must be followed by / | was \" \"",
                "13.5 9/16 in | 0 | a number before a fraction must be whole | was 13.5",
                "1/2 m | 4 | inches must end in \" or in | was \"m\"",
                "5200 | 4 | unit must be mm, cm, m, in, ft or yd | the text ended",
                "5 km | 2 | unit must be mm, cm, m, in, ft or yd | was \"km\"",
                "5 MM | 2 | unit must be mm, cm, m, in, ft or yd | was \"MM\"",
                "5,2 m | 1 | unit must be mm, cm, m, in, ft or yd | was \",\"",
                "5 mmm | 2 | unit must be mm, cm, m, in, ft or yd | was \"mmm\"",
                "`` | 0 | number must start with a digit | the text ended",
                "` ` | 1 | number must start with a digit | the text ended",
                "- | 1 | number must start with a digit | the text ended",
                "- 5 m | 1 | number must start with a digit | was \" \"",
                "+5 m | 0 | number must start with a digit | was \"+\"",
                ".5 m | 0 | number must start with a digit | was \".\"",
                "5. m | 2 | number must have a digit after the point | was \" \"",
                "5E m | 2 | number must have an exponent of one to 3 digits | was \" \"",
                "5E1234 m | 2 | number must have an exponent of one to 3 digits | was 1234",
                "5 m 3 | 4 | text must end here | was 3",
                "9'' | 2 | text must end here or go on with inches | was \"'\"",
                "9'' 4\" | 2 | text must end here or go on with inches | was \"'\"",
                "9' 4' | 4 | inches must end in \" or in | was \"'\"",
                "9' 4 | 4 | inches must end in \" or in | the text ended",
                "9\" 4' | 3 | text must end here | was 4",
                "9.5' 4\" | 0 | feet must be a whole number when inches follow | was 9.5",
                "9' 12\" | 3 | inches must be below 12 when feet come before | was 12",
                "9' 12 1/2\" | 3 | inches must be below 12 when feet come before | was 12",
                "9' 4.5 1/2\" | 3 | a number before a fraction must be whole | was 4.5",
                "1E10 m | 0 | length must be between -9223372036854.775807 mm and 9223372036854.775807 mm | was beyond it",
                "-9223372036854.775808 mm | 1 | length must be between -9223372036854.775807 mm and 9223372036854.775807 mm | was beyond it",
                "30260406945 ft 11 63/64 in | 0 | length must be between -9223372036854.775807 mm and 9223372036854.775807 mm | was beyond it",
                "363124883340 48/64 in | 13 | length must be between -9223372036854.775807 mm and 9223372036854.775807 mm | was beyond it",
                "9 123456789012345678/64 in | 2 | numerator must be below the denominator | was 123456789012345678",
                "9 1234567890123456789/64 in | 2 | numerator must have at most 18 digits | had 19",
            })
    void says_where_reading_stopped_and_what_had_to_stand_there(String text, int index, String expected, String found) {
        assertThatThrownBy(() -> Length.parse(text))
                .isInstanceOfSatisfying(QuantityParseException.class, e -> {
                    assertThat(e.text()).isEqualTo(text);
                    assertThat(e.index()).isEqualTo(index);
                    assertThat(e.expected()).isEqualTo(expected);
                    assertThat(e.found()).isEqualTo(found);
                })
                .hasMessage('"' + text + "\": " + expected + ", but " + found + " (at index " + index + ")");
    }

    @Test
    void refuses_a_number_of_more_than_a_hundred_characters() {
        String hundred = "9".repeat(2) + "." + "9".repeat(97);
        assertThat(Length.parse(hundred + " mm")).isEqualTo(Length.ofMillimetres(100));
        assertThatThrownBy(() -> Length.parse(hundred + "9 mm"))
                .isInstanceOf(QuantityParseException.class)
                .hasMessage('"' + hundred.substring(0, 60)
                        + "…\": number must have at most 100 characters, but had 101 (at index 0)");
        assertThat(Length.parse("  " + hundred + " mm")).isEqualTo(Length.ofMillimetres(100));
        assertThatThrownBy(() -> Length.parse("  " + hundred + "9 mm"))
                .hasMessageEndingWith("number must have at most 100 characters, but had 101 (at index 2)");
    }

    @Test
    void reads_the_longest_length_in_feet_and_inches() {
        assertThat(Length.parse("30260406945 ft 0.739205 in")).isEqualTo(Length.ofNanometres(Long.MAX_VALUE));
    }

    @Test
    void cuts_a_text_over_sixty_characters_short_in_the_message() {
        String sixty = "x".repeat(60);
        assertThatThrownBy(() -> Length.parse(sixty)).hasMessageStartingWith('"' + sixty + "\": number");
        assertThatThrownBy(() -> Length.parse(sixty + "y")).hasMessageStartingWith('"' + sixty + "…\": number");
    }

    @Test
    void null_is_refused_by_the_name_of_the_parameter() {
        assertThatThrownBy(() -> Length.parse(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("text");
        assertThatThrownBy(() -> Length.ZERO.plus(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessageContaining("other");
    }
}
