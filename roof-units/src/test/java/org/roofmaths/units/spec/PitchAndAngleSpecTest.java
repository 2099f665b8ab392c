package org.roofmaths.units.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Direction;
import org.roofmaths.units.Length;
import org.roofmaths.units.Offset;
import org.roofmaths.units.Pitch;

/** What the comments of {@code Pitch}, {@code Angle} and {@code Offset} promise. */
class PitchAndAngleSpecTest {
    @Test
    void a_pitch_lies_above_level_and_below_plumb() {
        for (double degrees : new double[] {0, -5, 90, 95, Double.NaN}) {
            assertThatThrownBy(() -> Pitch.ofDegrees(degrees))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageStartingWith("pitch must be above 0° and below 90°, but was ");
        }
        assertThat(Pitch.ofDegrees(Double.MIN_VALUE).isFlatterThan(Pitch.ofDegrees(Math.nextDown(90.0))))
                .isTrue();
    }

    @Test
    void one_pitch_has_many_notations() {
        Pitch pitch = Pitch.ofDegrees(45);
        assertThat(Pitch.ofRiseIn12(12)).isEqualTo(pitch);
        assertThat(Pitch.ofPercent(100)).isEqualTo(pitch);
        assertThat(Pitch.ofOneIn(1)).isEqualTo(pitch);
        assertThat(Pitch.ofRiseOverSpan(Length.ofMetres(4), Length.ofMetres(8))).isEqualTo(pitch);
        assertThat(Pitch.ofRiseAndRun(Length.ofMetres(4), Length.ofMetres(4))).isEqualTo(pitch);
    }

    @Test
    void rise_three_on_run_four_gives_slope_five_to_the_nanometre() {
        assertThat(Pitch.ofRiseAndRun(Length.ofMetres(3), Length.ofMetres(4)).slopeOver(Length.ofMetres(4)))
                .isEqualTo(Length.ofMetres(5));
    }

    @Test
    void limits_are_decided_at_one_millionth_of_a_degree_and_comparison_is_exact() {
        Pitch limit = Pitch.ofDegrees(35);
        assertThat(Pitch.STORAGE_RESOLUTION).isEqualTo(Angle.ofDegrees(0.000_001));
        assertThat(Pitch.ofDegrees(34.999_999).meetsLeast(limit)).isTrue();
        assertThat(Pitch.ofDegrees(34.999_999).isFlatterThan(limit)).isTrue();
        assertThat(Pitch.ofDegrees(34.999_998_99).meetsLeast(limit)).isFalse();
        assertThat(Pitch.ofDegrees(35.000_001).meetsGreatest(limit)).isTrue();
        assertThat(Pitch.ofDegrees(35.000_001_01).meetsGreatest(limit)).isFalse();
    }

    @Test
    void an_angle_is_normalised_only_when_asked() {
        assertThat(Angle.ofDegrees(370)).isNotEqualTo(Angle.ofDegrees(10));
        assertThat(Angle.ofDegrees(370).normalised()).isEqualTo(Angle.ofDegrees(10));
        assertThat(Angle.ofDegrees(-30).normalised()).isEqualTo(Angle.ofDegrees(330));
        assertThat(Angle.ofDegrees(330).normalisedSigned()).isEqualTo(Angle.ofDegrees(-30));
        assertThat(Angle.ofDegrees(-180).normalisedSigned()).isEqualTo(Angle.ofDegrees(180));
    }

    @Test
    void an_offset_gives_the_length_in_the_direction_asked_for() {
        Pitch pitch = Pitch.ofRiseAndRun(Length.ofMetres(3), Length.ofMetres(4));
        assertThat(Offset.level(Length.ofMillimetres(40)).to(Direction.ON_SLOPE, pitch))
                .isEqualTo(Length.ofMillimetres(50));
        assertThat(Offset.level(Length.ofMillimetres(40)).to(Direction.PLUMB, pitch))
                .isEqualTo(Length.ofMillimetres(30));
        assertThat(Offset.squareToSlope(Length.ofMillimetres(40)).to(Direction.PLUMB, pitch))
                .isEqualTo(Length.ofMillimetres(50));
        assertThatThrownBy(() -> Offset.squareToSlope(Length.ofMillimetres(40)).to(Direction.ON_SLOPE, pitch))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
