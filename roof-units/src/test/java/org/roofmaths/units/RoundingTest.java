package org.roofmaths.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundingTest {
    private static Length mm(double millimetres) {
        return Length.ofMillimetres(millimetres);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "2.4, 0",
        "2.5, 5",
        "7.4, 5",
        "7.5, 10",
        "12.5, 15",
        "-2.4, 0",
        "-2.5, -5",
        "-7.5, -10",
        "-7.4, -5"
    })
    void nearest_takes_ties_away_from_zero(double given, double expected) {
        assertThat(Rounding.toNearest(mm(5)).apply(mm(given))).isEqualTo(mm(expected));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "2.4, 0", "2.5, 0", "2.6, 5", "7.5, 10", "12.5, 10", "-2.5, 0", "-7.5, -10", "-12.5, -10"})
    void nearest_may_take_ties_to_the_even_multiple(double given, double expected) {
        assertThat(Rounding.toNearestTiesToEven(mm(5)).apply(mm(given))).isEqualTo(mm(expected));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0, 0",
        "5, 5, 5",
        "5.0001, 5, 5",
        "5.000101, 10, 5",
        "9.9999, 10, 10",
        "9.999899, 10, 5",
        "61.038729, 65, 60",
        "-3, 0, -5",
        "-5, -5, -5",
        "-4.9999, -5, -5",
        "-5.0001, -5, -5"
    })
    void up_and_down_decide_at_the_storage_resolution(double given, double up, double down) {
        assertThat(Rounding.upToMultipleOf(mm(5)).apply(mm(given))).isEqualTo(mm(up));
        assertThat(Rounding.downToMultipleOf(mm(5)).apply(mm(given))).isEqualTo(mm(down));
    }

    @Test
    void other_kinds_are_rounded_as_the_decimals_they_print() {
        assertThat(Rounding.toNearest(Mass.ofKilograms(0.1)).apply(Mass.ofKilograms(0.15)))
                .isEqualTo(Mass.ofKilograms(0.2));
        assertThat(Rounding.toNearest(Mass.ofKilograms(0.1)).apply(Mass.ofKilograms(0.25)))
                .hasToString("0.3 kg");
        assertThat(Rounding.upToMultipleOf(Area.ofSquareMetres(1)).apply(Area.ofSquareMetres(12.000_000_1)))
                .isEqualTo(Area.ofSquareMetres(13));
        assertThat(Rounding.upToMultipleOf(Pitch.ofDegrees(0.5)).apply(Pitch.ofDegrees(35.000_001)))
                .isEqualTo(Pitch.ofDegrees(35));
        assertThat(Rounding.upToMultipleOf(Angle.ofDegrees(0.5)).apply(Angle.ofDegrees(35.000_001_1)))
                .isEqualTo(Angle.ofDegrees(35.5));
        assertThat(Rounding.downToMultipleOf(Angle.ofDegrees(0.5)).apply(Angle.ofDegrees(34.999_999)))
                .isEqualTo(Angle.ofDegrees(35));
        assertThatThrownBy(() -> Rounding.toNearest(Pitch.ofDegrees(1)).apply(Pitch.ofDegrees(0.4)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("pitch must be above 0° and below 90°, but was 0°");
    }

    @Test
    void to_a_fraction_of_an_inch() {
        assertThat(Rounding.toFractionOfInch(16).apply(Length.ofDecimalInches(20.784_609_690_8)))
                .isEqualTo(Length.ofInches(20, 13, 16));
        assertThat(Rounding.toFractionOfInch(1).apply(Length.ofDecimalInches(20.5)))
                .isEqualTo(Length.ofInches(21, 0, 1));
        assertThat(Rounding.toFractionOfInch(16)).hasToString("to the nearest 1/16 in");
        assertThat(Rounding.toFractionOfInch(1)).hasToString("to the nearest 1 in");
        assertThatThrownBy(() -> Rounding.toFractionOfInch(10))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("denominator must be 1, 2, 4, 8, 16, 32 or 64, but was 10");
    }

    @Test
    void the_residual_is_what_rounding_adds() {
        assertThat(Rounding.toNearest(mm(1)).residual(mm(344.4875))).isEqualTo(mm(-0.4875));
        assertThat(Rounding.upToMultipleOf(mm(5)).residual(mm(61))).isEqualTo(mm(4));
        assertThat(Rounding.toNearest(Mass.ofKilograms(0.1)).residual(Mass.ofKilograms(0.15)))
                .isEqualTo(Mass.ofKilograms(0.05));
        assertThatThrownBy(() -> Rounding.toNearest(Pitch.ofDegrees(1)).residual(Pitch.ofDegrees(35)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a difference of pitches is an angle: round 35° as an angle");
    }

    @Test
    void running_rounding_rounds_the_marks_and_closes_the_sum() {
        Rounding<Length> whole = Rounding.toNearest(mm(1));
        assertThat(whole.running(Collections.nCopies(4, mm(324.75))))
                .containsExactly(mm(325), mm(325), mm(324), mm(325));
        // 0.2 mm over nine gauges is 1.8 mm if each gauge is rounded by itself.
        List<Length> gauges = whole.running(Collections.nCopies(9, mm(300.2)));
        assertThat(gauges.stream().reduce(Length.ZERO, Length::plus)).isEqualTo(mm(2702));
        assertThat(whole.running(List.of())).isEmpty();
        assertThat(whole.running(List.of(mm(-0.5), mm(1)))).containsExactly(mm(-1), mm(2));
        assertThat(Rounding.toNearest(Mass.ofKilograms(0.1)).running(Collections.nCopies(3, Mass.ofKilograms(0.05))))
                .containsExactly(Mass.ofKilograms(0.1), Mass.ZERO, Mass.ofKilograms(0.1));
        assertThatThrownBy(() -> gauges.add(mm(1))).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> Rounding.toNearest(Pitch.ofDegrees(1)).running(List.of(Pitch.ofDegrees(35))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a difference of pitches is an angle: round 35° as an angle");
    }

    @Test
    void prints_its_own_name() {
        assertThat(Rounding.toNearest(mm(1))).hasToString("to the nearest 1 mm");
        assertThat(Rounding.toNearestTiesToEven(mm(1))).hasToString("to the nearest 1 mm, ties to the even multiple");
        assertThat(Rounding.upToMultipleOf(mm(5))).hasToString("up to a multiple of 5 mm");
        assertThat(Rounding.downToMultipleOf(mm(5))).hasToString("down to a multiple of 5 mm");
        assertThat(Rounding.downToMultipleOf(mm(5)).step()).isEqualTo(mm(5));
    }

    @Test
    void refuses_a_step_that_is_not_above_zero() {
        assertThatThrownBy(() -> Rounding.toNearest(Length.ZERO))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("step must be above zero, but was 0 mm");
        assertThatThrownBy(() -> Rounding.upToMultipleOf(mm(-1))).hasMessage("step must be above zero, but was -1 mm");
        assertThatThrownBy(() -> Rounding.upToMultipleOf(mm(0.0001)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("step must be greater than 0.0001 mm to round up or down, but was 0.0001 mm");
        assertThatThrownBy(() -> Rounding.downToMultipleOf(Angle.ofDegrees(0.000_001)))
                .hasMessage("step must be greater than 0.000001° to round up or down, but was 0.000001°");
        assertThat(Rounding.toNearest(Length.ofNanometres(1)).apply(mm(7))).isEqualTo(mm(7));
        assertThat(Rounding.downToMultipleOf(Length.ofNanometres(101)).apply(Length.ofNanometres(101)))
                .isEqualTo(Length.ofNanometres(101));
        assertThatThrownBy(() -> Rounding.toNearest(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("step");
        Length aboveHalfTheRange = Length.ofNanometres(Long.MAX_VALUE / 2 + 1000);
        assertThatThrownBy(() -> Rounding.upToMultipleOf(aboveHalfTheRange).apply(aboveHalfTheRange.plus(mm(1))))
                .isInstanceOf(ArithmeticException.class);
    }

    @Test
    void is_equal_when_way_and_step_are() {
        assertThat(Rounding.toNearest(mm(1)))
                .isEqualTo(Rounding.toNearest(mm(1)))
                .hasSameHashCodeAs(Rounding.toNearest(mm(1)))
                .isNotEqualTo(Rounding.toNearest(mm(2)))
                .isNotEqualTo(Rounding.toNearestTiesToEven(mm(1)))
                .isNotEqualTo(mm(1));
        assertThat(Rounding.toFractionOfInch(2)).isEqualTo(Rounding.toNearest(mm(12.7)));
        assertThat(Rounding.toNearest(mm(1)).hashCode())
                .isNotEqualTo(Rounding.toNearest(mm(2)).hashCode());
    }
}
