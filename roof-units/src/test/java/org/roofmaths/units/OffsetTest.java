package org.roofmaths.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class OffsetTest {
    /** Rise 3, run 4, slope 5. */
    private static final Pitch PITCH = Pitch.ofRiseAndRun(Length.ofMetres(3), Length.ofMetres(4));

    @ParameterizedTest
    @CsvSource({
        "400, LEVEL, LEVEL, 400",
        "400, LEVEL, PLUMB, 300",
        "400, LEVEL, ON_SLOPE, 500",
        "300, PLUMB, LEVEL, 400",
        "300, PLUMB, PLUMB, 300",
        "300, PLUMB, ON_SLOPE, 500",
        "500, PLUMB, SQUARE_TO_SLOPE, 400",
        "500, ON_SLOPE, LEVEL, 400",
        "500, ON_SLOPE, PLUMB, 300",
        "500, ON_SLOPE, ON_SLOPE, 500",
        "400, SQUARE_TO_SLOPE, PLUMB, 500",
        "400, SQUARE_TO_SLOPE, SQUARE_TO_SLOPE, 400",
        "-400, LEVEL, ON_SLOPE, -500"
    })
    void measures_in_another_direction_at_a_three_four_five_slope(
            double millimetres, Direction direction, Direction wanted, double expected) {
        assertThat(new Offset(Length.ofMillimetres(millimetres), direction).to(wanted, PITCH))
                .isEqualTo(Length.ofMillimetres(expected));
    }

    @Test
    void a_worked_example_of_each_kind() {
        assertThat(Offset.level(Length.ofMillimetres(50)).to(Direction.ON_SLOPE, Pitch.ofDegrees(35)))
                .isEqualTo(Length.ofMillimetres(50 / Math.cos(Math.toRadians(35))));
        assertThat(Offset.squareToSlope(Length.ofMillimetres(45)).to(Direction.PLUMB, Pitch.ofDegrees(40)))
                .isEqualTo(Length.ofMillimetres(45 / Math.cos(Math.toRadians(40))));
    }

    @ParameterizedTest
    @CsvSource({
        "LEVEL, SQUARE_TO_SLOPE",
        "ON_SLOPE, SQUARE_TO_SLOPE",
        "SQUARE_TO_SLOPE, LEVEL",
        "SQUARE_TO_SLOPE, ON_SLOPE"
    })
    void refuses_a_thickness_along_and_a_move_across(Direction direction, Direction wanted) {
        Offset offset = new Offset(Length.ofMillimetres(25), direction);
        assertThatThrownBy(() -> offset.to(wanted, PITCH))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("25 mm " + direction.words() + " cannot be measured " + wanted.words()
                        + ": a thickness square to the slope and a distance along it have no part of each other");
    }

    @Test
    void factories_name_the_direction() {
        Length length = Length.ofMillimetres(50);
        assertThat(Offset.level(length))
                .isEqualTo(new Offset(length, Direction.LEVEL))
                .hasToString("50 mm level");
        assertThat(Offset.plumb(length))
                .isEqualTo(new Offset(length, Direction.PLUMB))
                .hasToString("50 mm plumb");
        assertThat(Offset.onSlope(length))
                .isEqualTo(new Offset(length, Direction.ON_SLOPE))
                .hasToString("50 mm on the slope");
        assertThat(Offset.squareToSlope(length))
                .isEqualTo(new Offset(length, Direction.SQUARE_TO_SLOPE))
                .hasToString("50 mm square to the slope");
    }

    @ParameterizedTest
    @EnumSource(Direction.class)
    void reads_what_it_prints(Direction direction) {
        Offset offset = new Offset(Length.ofMillimetres(-12.5), direction);
        assertThat(Offset.parse(offset.toString())).isEqualTo(offset);
        assertThat(Offset.parse("-12.5mm  " + direction.words() + " ")).isEqualTo(offset);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "50 mm | 5 | an offset must end in level, plumb, on the slope or square to the slope | the text ended",
                "50 mm sideways | 14 | an offset must end in level, plumb, on the slope or square to the slope | the text ended",
                "level | 5 | an offset must end in level, plumb, on the slope or square to the slope | the text ended",
                "50 level | 2 | unit must be mm, cm, m, in, ft or yd | that part of the text ended",
                "50 furlongs level | 3 | unit must be mm, cm, m, in, ft or yd | was \"furlongs\"",
            })
    void says_where_reading_stopped(String text, int index, String expected, String found) {
        assertThatThrownBy(() -> Offset.parse(text))
                .isInstanceOf(QuantityParseException.class)
                .hasMessage('"' + text + "\": " + expected + ", but " + found + " (at index " + index + ")");
    }

    @Test
    void null_is_refused_by_the_name_of_the_parameter() {
        assertThatThrownBy(() -> Offset.level(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("length");
        assertThatThrownBy(() -> new Offset(Length.ZERO, null)).hasMessage("direction");
        assertThatThrownBy(() -> Offset.parse(null)).hasMessage("text");
        assertThatThrownBy(() -> Offset.level(Length.ZERO).to(Direction.LEVEL, null))
                .hasMessage("pitch");
        assertThatThrownBy(() -> Offset.level(Length.ZERO).to(null, PITCH)).hasMessage("wanted");
    }
}
