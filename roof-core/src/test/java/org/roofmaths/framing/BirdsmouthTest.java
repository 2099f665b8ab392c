package org.roofmaths.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;

import org.junit.jupiter.api.Test;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Length;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Assumed;
import org.roofmaths.working.Figure;

class BirdsmouthTest {
    private static final double T40 = StrictMath.toRadians(40);
    /** A third of the depth is common practice; nothing was read for it. */
    private static final Figure<Ratio> A_THIRD = Assumed.of(Ratio.of(1.0 / 3), "common practice", "give another share");

    @Test
    void a_level_seat_and_a_plumb_heel() {
        Birdsmouth mouth = Birdsmouth.of(mm(150), mm(75), pitch("40°"));

        assertThat(mouth.heel()).isEqualTo(mm(75 * Math.tan(T40)));
        assertThat(mouth.notch()).isEqualTo(mm(75 * Math.sin(T40)));
        assertThat(mouth.plumbDepth()).isEqualTo(mm(150 / Math.cos(T40)));
        assertThat(mouth.heightAbovePlate()).isEqualTo(mouth.plumbDepth().minus(mouth.heel()));
        assertThat(mouth.left()).isEqualTo(mm(150).minus(mouth.notch()));
        assertThat(mouth.notchShare().toDouble()).isCloseTo(Math.sin(T40) / 2, within(1e-8));
        assertThat(mouth.working().disagreements()).isEmpty();
        assertThat(mouth)
                .hasToString("birdsmouth: seat 75 mm, heel 62.932472 mm, notch 48.209071 mm, 101.790929 mm left");
    }

    @Test
    void the_greatest_seat_follows_from_the_share_a_notch_may_take() {
        assertThat(Birdsmouth.greatestNotch(mm(125), A_THIRD).value()).isEqualTo(mm(125.0 / 3));
        assertThat(Birdsmouth.greatestSeat(mm(125), pitch("35°"), A_THIRD)
                        .value()
                        .toMillimetres())
                .isCloseTo(125.0 / 3 / Math.sin(Math.toRadians(35)), within(2e-6));
        assertThat(Birdsmouth.greatestSeat(mm(125), pitch("35°"), A_THIRD)
                        .working()
                        .toText())
                .isEqualTo("""
                greatest birdsmouth seat = greatest birdsmouth notch ÷ sin(rafter pitch)
                  greatest birdsmouth notch = rafter depth × greatest share for a notch
                    rafter depth = 125 mm  (given)
                    greatest share for a notch = 0.3333333333333333  (assumed: common practice; to change it, give another share)
                  = 41.666667 mm
                  rafter pitch = 35°  (given)
                = 72.643617 mm
                """);
    }

    @Test
    void refuses_a_notch_that_cuts_the_rafter_in_two() {
        assertThatThrownBy(() -> Birdsmouth.of(mm(100), mm(200), pitch("40°")))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("seat must leave some of a rafter 100 mm deep at 40°, but was 200 mm");
        assertThatThrownBy(() -> Birdsmouth.of(mm(0), mm(-1), pitch("40°")))
                .hasMessage("rafter depth must be above 0 mm and at most 1000000 mm, but was 0 mm\n"
                        + "seat must be above 0 mm and at most 1000000 mm, but was -1 mm");
        assertThatThrownBy(() -> Birdsmouth.greatestNotch(Length.ZERO, Figure.given(Ratio.of(1))))
                .hasMessage("rafter depth must be above 0 mm and at most 1000000 mm, but was 0 mm\n"
                        + "share of the depth must be above 0 and below 1, but was 1");
    }
}
