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
import org.roofmaths.units.Length;

class JackRaftersTest {
    private static final MeetingLine SQUARE_40 = MeetingLine.of(pitch("40°"), pitch("40°"), degrees(90));
    private static final double C40 = Math.cos(Math.toRadians(40));

    private static JackRafters jacks() {
        return JackRafters.of(SQUARE_40, Side.FIRST, mm(600), metres(2.5));
    }

    @Test
    void over_a_square_corner_each_is_longer_by_the_centres_over_the_cosine() {
        JackRafters jacks = jacks();

        assertThat(jacks.commonDifference().toMillimetres()).isCloseTo(600 / C40, within(1e-6));
        // 600, 1200, 1800 and 2400 of run; 3000 would be past the common rafters
        assertThat(jacks.jacks()).extracting(JackRafters.Jack::number).containsExactly(1, 2, 3, 4);
        assertThat(jacks.jacks())
                .extracting(JackRafters.Jack::along)
                .containsExactly(mm(600), mm(1200), mm(1800), mm(2400));
        assertThat(jacks.jacks().get(3).length().toMillimetres()).isCloseTo(2400 / C40, within(2e-6));
        assertThat(jacks).hasToString("4 jack rafters at 600 mm, common difference " + jacks.commonDifference());
    }

    @Test
    void a_jack_with_the_run_of_a_common_rafter_is_one() {
        assertThat(JackRafters.of(SQUARE_40, Side.FIRST, mm(600), mm(2400)).jacks())
                .hasSize(3);
        assertThat(JackRafters.of(SQUARE_40, Side.FIRST, mm(600), mm(600)).jacks())
                .isEmpty();
    }

    @Test
    void they_may_be_set_out_from_another_place() {
        assertThat(jacks().withFirstAt(mm(400)).jacks())
                .extracting(JackRafters.Jack::along)
                .containsExactly(mm(400), mm(1000), mm(1600), mm(2200));
    }

    @Test
    void half_the_hip_is_taken_off_as_it_is_met_on_plan() {
        JackRafters jacks = jacks().withCornerThickness(mm(50)).withThickness(mm(38));

        // 25 mm across the hip is 25√2 along the jack on plan
        assertThat(jacks.deduction().toMillimetres()).isCloseTo(25 * Math.sqrt(2) / C40, within(1e-6));
        assertThat(jacks.longPointOverShort().toMillimetres()).isCloseTo(38 / C40, within(1e-6));
        JackRafters.Jack first = jacks.jacks().get(0);
        assertThat(first.lengthToCut().toMillimetres()).isCloseTo((600 - 25 * Math.sqrt(2) + 19) / C40, within(4e-6));
        CuttingLine line = jacks.toCut(2).lines().get(0);
        assertThat(line.longPoint().minus(line.shortPoint())).isEqualTo(jacks.longPointOverShort());
        assertThat(jacks.toCut(2).memberCount()).isEqualTo(8);
    }

    @Test
    void the_side_cut_is_told_from_the_edge_and_from_square() {
        assertThat(jacks().sideCutFromEdge().tan()).isCloseTo(C40, within(1e-12));
        assertThat(jacks().sideCutFromSquare().toDegrees())
                .isCloseTo(90 - Math.toDegrees(Math.atan(C40)), within(1e-12));
        assertThat(jacks().plumbCutFromSquare()).isEqualTo(degrees(40));
    }

    @Test
    void every_step_agrees_with_its_formula() {
        JackRafters jacks = JackRafters.of(
                        MeetingLine.of(pitch("30°"), pitch("50°"), degrees(110)), Side.SECOND, mm(450), metres(3))
                .withCornerThickness(mm(50))
                .withThickness(mm(38));

        assertThat(jacks.working().disagreements()).isEmpty();
        assertThat(jacks.working().at(JackRafters.LENGTH.at("jack 2")).value())
                .isEqualTo(jacks.jacks().get(1).length());
    }

    @Test
    void none_stand_where_the_line_runs_outside_the_square() {
        MeetingLine line = MeetingLine.of(pitch("70°"), pitch("10°"), degrees(150));

        assertThatThrownBy(() -> JackRafters.of(line, Side.SECOND, mm(600), metres(3)))
                .isInstanceOf(ProblemsException.class)
                .hasMessage(
                        "second slope must have its line at less than 90° on plan to its eaves to have jack rafters,"
                                + " but was met at " + line.planAngle(Side.SECOND));
    }

    @Test
    void refuses_sizes_that_are_none_all_at_once() {
        assertThatThrownBy(() -> JackRafters.of(SQUARE_40, Side.FIRST, mm(0), mm(-5)))
                .hasMessage("centres must be above 0 mm and at most 1000000 mm, but was 0 mm\n"
                        + "distance of the first must be above 0 mm and at most 1000000 mm, but was 0 mm\n"
                        + "greatest run must be above 0 mm and at most 1000000 mm, but was -5 mm");
        assertThatThrownBy(() -> JackRafters.of(SQUARE_40, Side.FIRST, Length.ofNanometres(1), metres(3)))
                .hasMessage("centres must give at most 10000 jack rafters, but was 0.000001 mm");
    }
}
