package org.roofmaths.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class ToleranceTest {
    @Test
    void holds_and_prints_its_amount() {
        assertThat(Tolerance.ofMillimetres(0.5)).hasToString("within 0.5 mm");
        assertThat(Tolerance.ofMillimetres(0.5).amount()).isEqualTo(Length.ofMillimetres(0.5));
        assertThat(Tolerance.ofDegrees(0.1).amount()).isEqualTo(Angle.ofDegrees(0.1));
        assertThat(Tolerance.of(Area.ofSquareMetres(2))).hasToString("within 2 m²");
    }

    @Test
    void may_be_zero_but_not_negative() {
        assertThat(Tolerance.of(Length.ZERO)).hasToString("within 0 mm");
        assertThatThrownBy(() -> Tolerance.ofMillimetres(-0.5))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("tolerance must be zero or more, but was -0.5 mm");
        assertThatThrownBy(() -> Tolerance.of(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("amount");
    }

    @Test
    void is_equal_when_its_amount_is() {
        assertThat(Tolerance.ofMillimetres(0.5))
                .isEqualTo(Tolerance.of(Length.ofMillimetres(0.5)))
                .hasSameHashCodeAs(Tolerance.of(Length.ofMillimetres(0.5)))
                .isNotEqualTo(Tolerance.ofMillimetres(0.6))
                .isNotEqualTo(Length.ofMillimetres(0.5));
        assertThat(Tolerance.ofMillimetres(0.5).hashCode())
                .isNotEqualTo(Tolerance.ofMillimetres(0.6).hashCode());
    }
}
