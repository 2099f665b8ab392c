package org.roofmaths.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.degrees;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;

import org.junit.jupiter.api.Test;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.MeetingLine;
import org.roofmaths.roof.MeetingLine.Side;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;

class CornerRafterTest {
    private static final MeetingLine SQUARE_40 = MeetingLine.of(pitch("40°"), pitch("40°"), degrees(90));
    /** A nanometre of storage on each part. */
    private static final double STORED = 2e-6;
    /** A few roundings of an angle in degrees. */
    private static final double ROUNDING = 1e-12;

    @Test
    void a_hip_over_a_square_corner() {
        CornerRafter hip = CornerRafter.of(SQUARE_40, metres(4));
        double t = Math.tan(Math.toRadians(40));

        assertThat(hip.planLength().toMillimetres()).isCloseTo(4000 * Math.sqrt(2), within(STORED));
        assertThat(hip.length().toMillimetres()).isCloseTo(4000 * Math.sqrt(2 + t * t), within(STORED));
        assertThat(hip.rise()).isEqualTo(mm(4000 * t));
        assertThat(hip.plumbCutFromSquare().toDegrees())
                .isCloseTo(Math.toDegrees(Math.atan(t / Math.sqrt(2))), within(ROUNDING));
        assertThat(hip.seatCutFromEdge()).isEqualTo(hip.plumbCutFromSquare());
        assertThat(hip.lengthToCut()).isEqualTo(hip.length());
        assertThat(hip).hasToString("hip rafter " + hip.length() + " at " + SQUARE_40.pitch());
    }

    @Test
    void a_ridge_board_takes_off_half_its_thickness_across_the_corner() {
        CornerRafter hip = CornerRafter.of(SQUARE_40, metres(4)).withRidge(mm(38));

        // half of 38, times √2 on plan, over the cosine of the hip's pitch along it
        assertThat(hip.shortening().toMillimetres())
                .isCloseTo(19 * Math.sqrt(2) / SQUARE_40.pitch().cos(), within(STORED));
        assertThat(hip.lengthToCut()).isEqualTo(hip.length().minus(hip.shortening()));
    }

    @Test
    void the_tail_reaches_the_tails_of_the_common_rafters() {
        CornerRafter hip = CornerRafter.of(SQUARE_40, metres(4)).withOverhang(mm(300));
        double t = Math.tan(Math.toRadians(40));

        assertThat(hip.tail().toMillimetres()).isCloseTo(300 * Math.sqrt(2 + t * t), within(STORED));
        assertThat(hip.lengthToCut()).isEqualTo(hip.length().plus(hip.tail()));
    }

    @Test
    void an_unbacked_hip_drops_by_one_amount_plumb_and_another_square_to_it() {
        // a hip 2 in thick at 9 in 12 over a square corner
        MeetingLine line = MeetingLine.of(Pitch.ofRiseIn12(9), Pitch.ofRiseIn12(9), degrees(90));
        CornerRafter hip = CornerRafter.of(line, metres(3)).withThickness(Length.ofInches(2, 0, 1));

        assertThat(hip.dropPlumb(Side.FIRST).toInches()).isCloseTo(0.75 / Math.sqrt(2), within(1e-7));
        assertThat(hip.dropSquare(Side.SECOND).toInches())
                .isCloseTo(Math.sin(Math.atan(0.75 / Math.sqrt(2))), within(1e-7));
    }

    @Test
    void the_side_cut_is_told_from_the_edge_and_from_square() {
        CornerRafter hip = CornerRafter.of(MeetingLine.of(pitch("30°"), pitch("50°"), degrees(100)), metres(3));
        MeetingLine line = hip.line();

        for (Side side : Side.values()) {
            assertThat(hip.sideCutFromEdge(side).tan())
                    .isCloseTo(line.planAngle(side).tan() * line.pitch().cos(), within(1e-12));
            assertThat(hip.sideCutFromEdge(side)
                            .plus(hip.sideCutFromSquare(side))
                            .toDegrees())
                    .isCloseTo(90, within(ROUNDING));
        }
    }

    @Test
    void every_step_agrees_with_its_formula() {
        CornerRafter hip = CornerRafter.of(MeetingLine.of(pitch("30°"), pitch("50°"), degrees(100)), metres(3))
                .withRidge(mm(32))
                .withOverhang(mm(250))
                .withThickness(mm(50));

        assertThat(hip.working().disagreements()).isEmpty();
        assertThat(hip.working().at(CornerRafter.LENGTH).value()).isEqualTo(hip.length());
        assertThat(hip.working().at(CornerRafter.DROP_PLUMB.at("second")).value())
                .isEqualTo(hip.dropPlumb(Side.SECOND));
    }

    @Test
    void goes_on_a_cutting_list_with_the_datum_of_each_angle() {
        CornerRafter valley = CornerRafter.of(MeetingLine.of(pitch("45°"), pitch("45°"), degrees(270)), metres(3));

        assertThat(valley.toCut(2).member()).isEqualTo("valley rafter");
        assertThat(valley.toCut(2).cuts())
                .extracting(Cut::what, Cut::datum)
                .containsExactly(
                        tuple("plumb cut", Cut.Datum.FROM_SQUARE),
                        tuple("seat cut", Cut.Datum.FROM_EDGE),
                        tuple("side cut to the first slope", Cut.Datum.FROM_EDGE),
                        tuple("side cut to the second slope", Cut.Datum.FROM_EDGE));
    }

    @Test
    void refuses_sizes_that_are_none() {
        assertThatThrownBy(() -> CornerRafter.of(SQUARE_40, mm(0)))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("run must be above 0 mm and at most 1000000 mm, but was 0 mm");
        CornerRafter hip = CornerRafter.of(SQUARE_40, metres(4));
        assertThatThrownBy(() -> hip.withOverhang(mm(-1)))
                .hasMessage("overhang must be from 0 mm to 1000000 mm, but was -1 mm");
        assertThatThrownBy(() -> hip.withThickness(mm(-1)))
                .hasMessage("thickness must be from 0 mm to 1000000 mm, but was -1 mm");
        assertThatThrownBy(() -> hip.withRidge(mm(-1)))
                .hasMessage("ridge thickness must be from 0 mm to 1000000 mm, but was -1 mm");
    }
}
