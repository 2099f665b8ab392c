package org.roofmaths.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.degrees;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;

import org.junit.jupiter.api.Test;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.MeetingLine.Side;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;

class MeetingLineTest {
    /** A few roundings of a double on angles of up to 360°. */
    private static final double ROUNDING = 1e-12;

    @Test
    void slopes_of_45_degrees_over_a_square_corner_meet_in_a_hip_of_120_degrees() {
        MeetingLine hip = MeetingLine.of(pitch("45°"), pitch("45°"), degrees(90));

        assertThat(hip.isValley()).isFalse();
        assertThat(hip.planAngle(Side.FIRST).toDegrees()).isCloseTo(45, within(ROUNDING));
        assertThat(hip.planAngle(Side.SECOND).toDegrees()).isCloseTo(45, within(ROUNDING));
        // tan p = 1 / √2
        assertThat(hip.pitch().toDegrees()).isCloseTo(Math.toDegrees(Math.atan(1 / Math.sqrt(2))), within(ROUNDING));
        assertThat(hip.planLengthPerRun().toDouble()).isCloseTo(Math.sqrt(2), within(ROUNDING));
        assertThat(hip.trueLengthPerRun().toDouble()).isCloseTo(Math.sqrt(3), within(ROUNDING));
        // sin b = sin 45° × cos 45° = 1/2
        assertThat(hip.backing(Side.FIRST).toDegrees()).isCloseTo(30, within(ROUNDING));
        assertThat(hip.backing(Side.SECOND).toDegrees()).isCloseTo(30, within(ROUNDING));
        assertThat(hip.angleInside().toDegrees()).isCloseTo(180 - 30 - 30, within(ROUNDING));
        assertThat(hip.angleOutside().toDegrees()).isCloseTo(180 + 30 + 30, within(ROUNDING));
    }

    @Test
    void a_valley_has_the_numbers_of_the_hip_folded_the_other_way() {
        MeetingLine hip = MeetingLine.of(pitch("35°"), pitch("50°"), degrees(80));
        MeetingLine valley = MeetingLine.of(pitch("35°"), pitch("50°"), degrees(360 - 80));

        assertThat(valley.isValley()).isTrue();
        assertThat(valley.planAngle(Side.FIRST)).isEqualTo(hip.planAngle(Side.FIRST));
        assertThat(valley.planAngle(Side.SECOND)).isEqualTo(hip.planAngle(Side.SECOND));
        assertThat(valley.pitch()).isEqualTo(hip.pitch());
        assertThat(valley.trueLengthPerRun()).isEqualTo(hip.trueLengthPerRun());
        assertThat(valley.angleInside().toDegrees())
                .isCloseTo(hip.angleOutside().toDegrees(), within(ROUNDING));
        assertThat(valley.working().disagreements()).isEmpty();
    }

    @Test
    void over_a_square_corner_the_flatter_slope_has_the_greater_plan_angle() {
        MeetingLine hip = MeetingLine.of(pitch("30°"), pitch("50°"), degrees(90));

        // tan d1 = tan t2 / tan t1
        double d1 = Math.toDegrees(Math.atan(Math.tan(Math.toRadians(50)) / Math.tan(Math.toRadians(30))));
        assertThat(hip.planAngle(Side.FIRST).toDegrees()).isCloseTo(d1, within(ROUNDING));
        assertThat(hip.planAngle(Side.SECOND).toDegrees()).isCloseTo(90 - d1, within(ROUNDING));
    }

    @Test
    void the_order_of_the_slopes_only_names_them() {
        MeetingLine one = MeetingLine.of(pitch("25°"), pitch("60°"), degrees(110));
        MeetingLine other = MeetingLine.of(pitch("60°"), pitch("25°"), degrees(110));

        assertThat(other.planAngle(Side.FIRST).toDegrees())
                .isCloseTo(one.planAngle(Side.SECOND).toDegrees(), within(ROUNDING));
        assertThat(other.pitch().toDegrees()).isCloseTo(one.pitch().toDegrees(), within(ROUNDING));
        assertThat(other.angleInside().toDegrees()).isCloseTo(one.angleInside().toDegrees(), within(ROUNDING));
    }

    @Test
    void a_line_beyond_the_square_is_a_notice_and_its_backing_is_below_zero() {
        MeetingLine hip = MeetingLine.of(pitch("70°"), pitch("10°"), degrees(150));

        assertThat(hip.planAngle(Side.SECOND).toDegrees()).isGreaterThan(90);
        assertThat(hip.backing(Side.SECOND)).isLessThan(Angle.ZERO);
        assertThat(hip.problems())
                .extracting(Problem::message)
                .containsExactly(
                        "the line lies at " + hip.planAngle(Side.SECOND)
                                + " on plan to the eaves of the second slope, more than square; no jack rafter reaches it on that side");
        assertThat(MeetingLine.attempt(pitch("70°"), pitch("10°"), degrees(150)).problems())
                .isEqualTo(hip.problems());
    }

    @Test
    void a_build_up_moves_the_line_of_the_covering_towards_the_steeper_slope_at_a_hip() {
        MeetingLine hip = MeetingLine.of(pitch("30°"), pitch("50°"), degrees(90));
        MeetingLine valley = MeetingLine.of(pitch("30°"), pitch("50°"), degrees(270));

        // 63 × (1 / cos 50° − 1 / cos 30°) / √(tan² 30° + tan² 50°)
        double t30 = Math.toRadians(30);
        double t50 = Math.toRadians(50);
        double shift = 63 * (1 / Math.cos(t50) - 1 / Math.cos(t30)) / Math.hypot(Math.tan(t30), Math.tan(t50));
        assertThat(hip.shiftOfCovering(mm(63)).value()).isEqualTo(mm(shift));
        assertThat(valley.shiftOfCovering(mm(63)).value()).isEqualTo(mm(-shift));
        assertThat(hip.shiftOfCovering(mm(63)).working().disagreements()).isEmpty();
        assertThat(valley.shiftOfCovering(mm(63)).working().disagreements()).isEmpty();
        assertThat(MeetingLine.of(pitch("40°"), pitch("40°"), degrees(90))
                        .shiftOfCovering(mm(63))
                        .value())
                .isEqualTo(Length.ZERO);
    }

    @Test
    void refuses_a_corner_that_is_none() {
        for (double corner : new double[] {0, 180, 360, -90, 400}) {
            assertThatThrownBy(() -> MeetingLine.of(pitch("30°"), pitch("30°"), degrees(corner)))
                    .isInstanceOf(ProblemsException.class)
                    .hasMessage("corner must be above 0° and below 360°, and not 180°, but was " + degrees(corner));
        }
        assertThat(MeetingLine.attempt(pitch("30°"), pitch("30°"), degrees(180)).hasValue())
                .isFalse();
    }

    @Test
    void prints_a_summary() {
        assertThat(MeetingLine.of(pitch("45°"), pitch("45°"), degrees(90)))
                .hasToString("hip at 35.26° over a corner of 90°, 120° inside");
        assertThat(MeetingLine.of(pitch("45°"), pitch("45°"), degrees(270)))
                .hasToString("valley at 35.26° over a corner of 270°, 240° inside");
    }

    @Test
    void equal_figures_make_equal_lines() {
        MeetingLine line = MeetingLine.of(Pitch.ofDegrees(30), Pitch.ofDegrees(40), degrees(90));

        assertThat(line).isEqualTo(MeetingLine.of(Pitch.ofDegrees(30), Pitch.ofDegrees(40), degrees(90)));
        assertThat(line).hasSameHashCodeAs(MeetingLine.of(Pitch.ofDegrees(30), Pitch.ofDegrees(40), degrees(90)));
        assertThat(line).isNotEqualTo(MeetingLine.of(Pitch.ofDegrees(40), Pitch.ofDegrees(30), degrees(90)));
    }
}
