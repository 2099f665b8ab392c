package org.roofmaths.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RangeTest {
    private static final Length TWO = Length.ofMillimetres(2);
    private static final Length FOUR = Length.ofMillimetres(4);

    private static Range<Length> range(String text) {
        return Range.parse(text, Length::parse);
    }

    @Test
    void prints_its_ends_as_they_are() {
        assertThat(Range.closed(TWO, FOUR)).hasToString("[2 mm..4 mm]");
        assertThat(Range.open(TWO, FOUR)).hasToString("(2 mm..4 mm)");
        assertThat(Range.closedOpen(TWO, FOUR)).hasToString("[2 mm..4 mm)");
        assertThat(Range.openClosed(TWO, FOUR)).hasToString("(2 mm..4 mm]");
        assertThat(Range.atLeast(TWO)).hasToString("[2 mm..)");
        assertThat(Range.above(TWO)).hasToString("(2 mm..)");
        assertThat(Range.atMost(TWO)).hasToString("(..2 mm]");
        assertThat(Range.below(TWO)).hasToString("(..2 mm)");
        assertThat(Range.<Length>all()).hasToString("(..)");
        assertThat(Range.<Length>empty()).hasToString("empty");
        assertThat(Range.closed(1, 2)).hasToString("[1..2]");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[2 mm..4 mm] | .xxx.",
                "(2 mm..4 mm) | ..x..",
                "[2 mm..4 mm) | .xx..",
                "(2 mm..4 mm] | ..xx.",
                "[2 mm..) | .xxxx",
                "(2 mm..) | ..xxx",
                "(..4 mm] | xxxx.",
                "(..4 mm) | xxx..",
                "(..) | xxxxx",
                "empty | .....",
                "[3 mm..3 mm] | ..x.."
            })
    void contains_exactly_what_it_prints(String text, String oneToFive) {
        for (int i = 0; i < 5; i++) {
            assertThat(range(text).contains(Length.ofMillimetres(i + 1)))
                    .as("%d mm in %s", i + 1, text)
                    .isEqualTo(oneToFive.charAt(i) == 'x');
        }
    }

    @Test
    void gives_its_ends() {
        Range<Length> range = Range.closedOpen(TWO, FOUR);
        assertThat(range.lower()).contains(TWO);
        assertThat(range.upper()).contains(FOUR);
        assertThat(range.isLowerIncluded()).isTrue();
        assertThat(range.isUpperIncluded()).isFalse();
        assertThat(range.isEmpty()).isFalse();
        assertThat(Range.atMost(TWO).lower()).isEmpty();
        assertThat(Range.atMost(TWO).isLowerIncluded()).isFalse();
        assertThat(Range.atMost(TWO).isUpperIncluded()).isTrue();
        assertThat(Range.above(TWO).upper()).isEmpty();
        assertThat(Range.above(TWO).isLowerIncluded()).isFalse();
    }

    @Test
    void equal_ends_hold_one_value_or_none() {
        assertThat(Range.closed(TWO, TWO).isEmpty()).isFalse();
        assertThat(Range.open(TWO, TWO)).isEqualTo(Range.<Length>empty());
        assertThat(Range.closedOpen(TWO, TWO)).isEqualTo(Range.<Length>empty());
        assertThat(Range.openClosed(TWO, TWO).isEmpty()).isTrue();
    }

    @Test
    void refuses_to_end_below_its_start() {
        assertThatThrownBy(() -> Range.closed(Length.ofMillimetres(345), Length.ofMillimetres(320)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("range must not end below its start, but was [345 mm..320 mm]");
        assertThatThrownBy(() -> Range.open(FOUR, TWO))
                .hasMessage("range must not end below its start, but was (4 mm..2 mm)");
        assertThatThrownBy(() -> Range.closed(null, TWO))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("lower");
        assertThatThrownBy(() -> Range.closed(TWO, null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("upper");
        assertThatThrownBy(() -> Range.atLeast(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("lower");
        assertThatThrownBy(() -> Range.above(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("lower");
        assertThatThrownBy(() -> Range.atMost(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("upper");
        assertThatThrownBy(() -> Range.below(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("upper");
        assertThatThrownBy(() -> Range.all().contains(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("value");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[1 mm..3 mm] | [2 mm..4 mm] | [2 mm..3 mm]",
                "[1 mm..3 mm] | (1 mm..3 mm) | (1 mm..3 mm)",
                "[1 mm..3 mm) | (1 mm..3 mm] | (1 mm..3 mm)",
                "[1 mm..3 mm] | [3 mm..4 mm] | [3 mm..3 mm]",
                "[1 mm..3 mm) | [3 mm..4 mm] | empty",
                "[1 mm..2 mm] | [3 mm..4 mm] | empty",
                "[1 mm..) | (..4 mm) | [1 mm..4 mm)",
                "(..1 mm] | [4 mm..) | empty",
                "(..) | [1 mm..) | [1 mm..)",
                "(..) | (..1 mm] | (..1 mm]",
                "(..) | (..) | (..)",
                "[1 mm..) | (1 mm..) | (1 mm..)",
                "(..1 mm] | (..1 mm) | (..1 mm)",
                "[1 mm..5 mm] | [2 mm..) | [2 mm..5 mm]",
                "empty | (..) | empty",
                "[1 mm..9 mm] | [2 mm..3 mm) | [2 mm..3 mm)"
            })
    void intersection_holds_what_both_hold(String a, String b, String both) {
        assertThat(range(a).intersection(range(b))).isEqualTo(range(both)).hasToString(both);
        assertThat(range(b).intersection(range(a))).isEqualTo(range(both)).hasToString(both);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"[30°..35°)", "(30°..35°]", "[30°..)", "(..30°]", "(..)", "empty", "[30°..30°]", "(5.5°..6.25°)"
            })
    void reads_what_it_prints(String text) {
        assertThat(Range.parse(text, Pitch::parse)).hasToString(text);
    }

    @Test
    void reads_ends_with_spaces_and_in_other_notations() {
        assertThat(Range.parse("[ 7 in 12 .. 45 deg )", Pitch::parse))
                .isEqualTo(Range.closedOpen(Pitch.ofRiseIn12(7), Pitch.ofDegrees(45)));
        assertThat(Range.parse("[2 mm..2 mm)", Length::parse)).isEqualTo(Range.<Length>empty());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "`` | 0 | range must start with [ or ( | the text ended",
                "30°..35° | 0 | range must start with [ or ( | was \"3\"",
                "[ | 1 | range must end in ] or ) | the text ended",
                "[30°..35° | 9 | range must end in ] or ) | the text ended",
                "[30°) | 4 | range must have .. between its ends | was \")\"",
                "[..35°) | 1 | an end that is left out must have ( or ) | was \".\"",
                "[30°..] | 6 | an end that is left out must have ( or ) | was \"]\"",
                "[30°..3x) | 7 | unit must be °, deg or %, or the number must go on with in and a run | was \"x\"",
                "[30..35°) | 3 | unit must be °, deg or %, or the number must go on with in and a run | that part of the text ended",
                "[35°..30°) | 6 | upper end must not be below the lower | was 30°",
            })
    void says_where_reading_stopped(String text, int index, String expected, String found) {
        assertThatThrownBy(() -> Range.parse(text, Pitch::parse))
                .isInstanceOf(QuantityParseException.class)
                .hasMessage('"' + text + "\": " + expected + ", but " + found + " (at index " + index + ")");
    }

    @Test
    void parse_refuses_null() {
        assertThatThrownBy(() -> Range.parse(null, Pitch::parse))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("text");
        assertThatThrownBy(() -> Range.<Pitch>parse("(..)", null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("parser");
    }

    @Test
    void is_equal_when_its_ends_are() {
        Range<Length> range = Range.closed(TWO, FOUR);
        assertThat(range)
                .isEqualTo(Range.closed(TWO, FOUR))
                .hasSameHashCodeAs(Range.closed(TWO, FOUR))
                .isNotEqualTo(Range.closedOpen(TWO, FOUR))
                .isNotEqualTo(Range.openClosed(TWO, FOUR))
                .isNotEqualTo(Range.closed(TWO, TWO))
                .isNotEqualTo(Range.closed(FOUR, FOUR))
                .isNotEqualTo("[2 mm..4 mm]");
        assertThat(Range.<Length>all()).isNotEqualTo(Range.<Length>empty());
        assertThat(range.hashCode()).isNotEqualTo(Range.closedOpen(TWO, FOUR).hashCode());
    }
}
