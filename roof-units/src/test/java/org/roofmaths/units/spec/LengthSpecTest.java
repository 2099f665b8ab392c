package org.roofmaths.units.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Ratio;
import org.roofmaths.units.Tolerance;
import org.roofmaths.units.WholeCount;

/** What the comments of {@code Length} promise. */
class LengthSpecTest {
    @Test
    void a_length_is_a_whole_number_of_nanometres() {
        assertThat(Length.ofMillimetres(1).toNanometres()).isEqualTo(1_000_000);
        assertThat(Length.ofInches(0, 1, 64).toNanometres()).isEqualTo(25_400_000 / 64);
    }

    @Test
    void sums_and_differences_are_exact_whatever_units_went_in() {
        assertThat(Length.ofMillimetres(0.1).plus(Length.ofMillimetres(0.2))).isEqualTo(Length.ofMillimetres(0.3));
        assertThat(Length.ofInches(1, 0, 1).minus(Length.ofMillimetres(25))).isEqualTo(Length.ofMillimetres(0.4));
        assertThat(Length.ofInches(0, 1, 3 + 1).times(4)).isEqualTo(Length.ofMillimetres(25.4));
    }

    @Test
    void sums_that_leave_the_range_throw() {
        Length most = Length.ofNanometres(Long.MAX_VALUE);
        assertThatThrownBy(() -> most.plus(most)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> most.negated().minus(most)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> most.times(2)).isInstanceOf(ArithmeticException.class);
        assertThat(most.negated().abs()).isEqualTo(most);
    }

    @Test
    void what_rounds_goes_to_the_nearest_nanometre_and_a_tie_to_the_even_one() {
        assertThat(Length.ofNanometres(1).times(0.5)).isEqualTo(Length.ZERO);
        assertThat(Length.ofNanometres(3).dividedBy(2)).isEqualTo(Length.ofNanometres(2));
        assertThat(Length.ofNanometres(10).times(0.26)).isEqualTo(Length.ofNanometres(3));
    }

    @Test
    void lengths_are_equal_whatever_units_they_were_made_from() {
        assertThat(Length.ofDecimalFeet(1))
                .isEqualTo(Length.ofMillimetres(304.8))
                .hasSameHashCodeAs(Length.ofMillimetres(304.8));
    }

    @Test
    void decimal_feet_are_not_feet_and_inches() {
        assertThat(Length.ofDecimalFeet(9.4)).isEqualTo(Length.parse("9 ft 4.8 in"));
    }

    @Test
    void two_lengths_make_an_area_or_a_ratio() {
        assertThat(Length.ofMetres(4.6).times(Length.ofMetres(2.7))).isEqualTo(Area.ofSquareMetres(12.42));
        assertThat(Length.ofMetres(1).dividedBy(Length.ofMetres(4))).isEqualTo(Ratio.of(0.25));
    }

    @Test
    void whole_counts_are_decided_at_the_storage_resolution() {
        Length gauge = Length.ofMillimetres(300);
        assertThat(Length.STORAGE_RESOLUTION).isEqualTo(Length.ofNanometres(100));
        assertThat(gauge.timesToCover(Length.ofMillimetres(3000.0001))).isEqualTo(10);
        assertThat(gauge.timesToCover(Length.ofMillimetres(3000.000_101))).isEqualTo(11);
        assertThat(gauge.timesIn(Length.ofMillimetres(2999.9999)))
                .isEqualTo(new WholeCount(10, Length.ofNanometres(-100)));
        assertThat(gauge.timesIn(Length.ofMillimetres(2999.999_899)).count()).isEqualTo(9);
    }

    @Test
    void limits_are_decided_at_the_storage_resolution_and_comparison_is_exact() {
        Length limit = Length.ofMillimetres(75);
        Length justUnder = limit.minus(Length.STORAGE_RESOLUTION);
        assertThat(justUnder.meetsLeast(limit)).isTrue();
        assertThat(justUnder.isShorterThan(limit)).isTrue();
        assertThat(justUnder.minus(Length.ofNanometres(1)).meetsLeast(limit)).isFalse();
        Length justOver = limit.plus(Length.STORAGE_RESOLUTION);
        assertThat(justOver.meetsGreatest(limit)).isTrue();
        assertThat(justOver.plus(Length.ofNanometres(1)).meetsGreatest(limit)).isFalse();
    }

    @Test
    void the_edge_of_a_tolerance_counts() {
        assertThat(Length.ofMillimetres(300.5).isWithin(Tolerance.ofMillimetres(0.5), Length.ofMillimetres(300)))
                .isTrue();
        assertThat(Length.ofMillimetres(300.500_001).isWithin(Tolerance.ofMillimetres(0.5), Length.ofMillimetres(300)))
                .isFalse();
    }
}
