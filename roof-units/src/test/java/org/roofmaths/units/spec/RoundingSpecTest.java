package org.roofmaths.units.spec;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;
import org.roofmaths.units.Rounding;

/** What the comments of {@code Rounding} promise. */
class RoundingSpecTest {
    private static Length mm(double millimetres) {
        return Length.ofMillimetres(millimetres);
    }

    @Test
    void ties_go_away_from_zero_or_to_the_even_multiple() {
        assertThat(Rounding.toNearest(mm(1)).apply(mm(2.5))).isEqualTo(mm(3));
        assertThat(Rounding.toNearest(mm(1)).apply(mm(-2.5))).isEqualTo(mm(-3));
        assertThat(Rounding.toNearestTiesToEven(mm(1)).apply(mm(2.5))).isEqualTo(mm(2));
    }

    @Test
    void up_is_for_minima_and_down_for_maxima() {
        assertThat(Rounding.upToMultipleOf(mm(5)).apply(mm(61))).isEqualTo(mm(65));
        assertThat(Rounding.downToMultipleOf(mm(5)).apply(mm(64))).isEqualTo(mm(60));
        assertThat(Rounding.upToMultipleOf(mm(5)).apply(mm(-7))).isEqualTo(mm(-5));
        assertThat(Rounding.downToMultipleOf(mm(5)).apply(mm(-3))).isEqualTo(mm(-5));
    }

    @Test
    void up_and_down_forgive_no_more_than_the_storage_resolution() {
        assertThat(Rounding.upToMultipleOf(mm(5)).apply(mm(60.0001))).isEqualTo(mm(60));
        assertThat(Rounding.upToMultipleOf(mm(5)).apply(mm(60.000_101))).isEqualTo(mm(65));
    }

    @Test
    void other_kinds_are_rounded_as_printed() {
        assertThat(Rounding.toNearest(Mass.ofKilograms(0.1)).apply(Mass.ofKilograms(0.15)))
                .hasToString("0.2 kg");
    }

    @Test
    void value_and_residual_make_the_rounded_value() {
        Rounding<Length> rounding = Rounding.toNearest(mm(1));
        assertThat(mm(344.4875).plus(rounding.residual(mm(344.4875)))).isEqualTo(rounding.apply(mm(344.4875)));
    }

    @Test
    void running_rounding_closes_the_sum_where_rounding_each_would_not() {
        List<Length> gauges = Collections.nCopies(4, mm(324.75));
        Rounding<Length> whole = Rounding.toNearest(mm(1));
        assertThat(whole.running(gauges)).containsExactly(mm(325), mm(325), mm(324), mm(325));
        assertThat(whole.apply(mm(324.75)).times(4)).isEqualTo(mm(1300));
        assertThat(whole.running(gauges).stream().reduce(Length.ZERO, Length::plus))
                .isEqualTo(mm(4 * 324.75));
    }

    @Test
    void a_rounding_prints_its_own_name() {
        assertThat(Rounding.toNearest(mm(1))).hasToString("to the nearest 1 mm");
        assertThat(Rounding.upToMultipleOf(mm(5))).hasToString("up to a multiple of 5 mm");
        assertThat(Rounding.toFractionOfInch(16)).hasToString("to the nearest 1/16 in");
    }
}
