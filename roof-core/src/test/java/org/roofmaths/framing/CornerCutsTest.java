package org.roofmaths.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.degrees;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;

import org.junit.jupiter.api.Test;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.MeetingLine;
import org.roofmaths.roof.MeetingLine.Side;

/** Boards that turn a corner: fascias, soffits, roof boards. */
class CornerCutsTest {
    private static final double ROUNDING = 1e-12;

    @Test
    void fascias_square_to_the_rafters_lean_by_the_pitch() {
        CompoundMitre cut = CompoundMitre.squareToRafters(pitch("30°"), degrees(90));

        assertThat(cut.mitreFromSquare().toDegrees()).isCloseTo(Math.toDegrees(Math.atan(0.5)), within(ROUNDING));
        assertThat(cut.bevelFromSquare().toDegrees())
                .isCloseTo(Math.toDegrees(Math.asin(Math.sqrt(3) / 2 * Math.sqrt(0.5))), within(ROUNDING));
        assertThat(cut.working().disagreements()).isEmpty();
        assertThat(cut).isEqualTo(CompoundMitre.squareToRafters(pitch("30°"), degrees(90)));
    }

    @Test
    void plumb_boards_have_no_mitre_across_the_face_and_level_ones_no_bevel() {
        CompoundMitre plumb = CompoundMitre.of(degrees(0), degrees(90));
        CompoundMitre level = CompoundMitre.of(degrees(90), degrees(90));

        assertThat(plumb.mitreFromSquare()).isEqualTo(degrees(0));
        assertThat(plumb.bevelFromSquare().toDegrees()).isCloseTo(45, within(ROUNDING));
        assertThat(level.mitreFromSquare().toDegrees()).isCloseTo(45, within(ROUNDING));
        assertThat(level.bevelFromSquare().toDegrees()).isCloseTo(0, within(ROUNDING));
    }

    @Test
    void the_bevel_of_boards_in_the_slope_is_the_backing_of_the_hip() {
        MeetingLine hip = MeetingLine.of(pitch("38°"), pitch("38°"), degrees(100));
        CompoundMitre cut = CompoundMitre.inTheSlope(pitch("38°"), degrees(100));

        assertThat(cut.bevelFromSquare().toDegrees())
                .isCloseTo(hip.backing(Side.FIRST).toDegrees(), within(ROUNDING));
        assertThat(cut.mitreFromSquare().toDegrees())
                .isCloseTo(BoardCuts.of(hip, Side.FIRST).faceCutFromSquare().toDegrees(), within(ROUNDING));
        assertThat(cut.working().disagreements()).isEmpty();
    }

    @Test
    void the_cut_of_a_board_from_square_is_the_side_cut_of_a_jack_from_the_edge() {
        MeetingLine hip = MeetingLine.of(pitch("30°"), pitch("50°"), degrees(80));
        BoardCuts cuts = BoardCuts.of(hip, Side.SECOND);
        JackRafters jacks = JackRafters.of(hip, Side.SECOND, mm(400), metres(2));

        assertThat(cuts.faceCutFromSquare().toDegrees())
                .isCloseTo(jacks.sideCutFromEdge().toDegrees(), within(ROUNDING));
        assertThat(cuts.edgeCutFromSquare().tan())
                .isCloseTo(
                        Math.sin(Math.toRadians(50))
                                / hip.planAngle(Side.SECOND).tan(),
                        within(ROUNDING));
        assertThat(cuts.hipToEavesInSlope().plus(cuts.faceCutFromSquare()).toDegrees())
                .isCloseTo(90, within(ROUNDING));
        assertThat(cuts.working().disagreements()).isEmpty();
    }

    @Test
    void refuses_angles_out_of_range() {
        assertThatThrownBy(() -> CompoundMitre.of(degrees(-1), degrees(180)))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("lean must be from 0° to 90°, but was -1°\n"
                        + "corner must be above 0° and below 180°, but was 180°");
    }
}
