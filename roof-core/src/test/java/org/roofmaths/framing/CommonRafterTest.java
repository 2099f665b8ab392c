package org.roofmaths.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.roofmaths.units.Quantities.degrees;
import static org.roofmaths.units.Quantities.level;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.onSlope;
import static org.roofmaths.units.Quantities.pitch;
import static org.roofmaths.units.Quantities.plumb;
import static org.roofmaths.units.Quantities.squareToSlope;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.RoofEnd;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.roof.Roofs;
import org.roofmaths.roof.Slope;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;

class CommonRafterTest {
    private static final double T35 = StrictMath.toRadians(35);

    @Test
    void runs_from_the_plate_line_to_the_apex_line() {
        CommonRafter rafter = CommonRafter.of(mm(3600), pitch("35°"));

        assertThat(rafter.length()).isEqualTo(mm(3600 / Math.cos(T35)));
        assertThat(rafter.rise()).isEqualTo(mm(3600 * Math.tan(T35)));
        assertThat(rafter.plumbCutFromSquare()).isEqualTo(degrees(35));
        assertThat(rafter.seatCutFromEdge()).isEqualTo(degrees(35));
        assertThat(rafter.tail()).isEqualTo(Length.ZERO);
        assertThat(rafter.lengthToCut()).isEqualTo(rafter.length());
    }

    @Test
    void three_four_five_is_exact_by_every_notation() {
        List<Pitch> threeInFour = List.of(
                Pitch.ofRiseAndRun(mm(3), mm(4)),
                Pitch.ofRiseIn12(9),
                Pitch.ofPercent(75),
                Pitch.ofOneIn(4.0 / 3),
                Pitch.ofRiseOverSpan(mm(3), mm(8)),
                Pitch.parse("9 in 12"),
                Pitch.parse("75 %"),
                Pitch.ofDegrees(Math.toDegrees(Math.atan(0.75))));
        for (Pitch pitch : threeInFour) {
            CommonRafter rafter = CommonRafter.ofSpan(metres(8), pitch);
            assertThat(rafter.run()).isEqualTo(mm(4000));
            assertThat(rafter.rise()).isEqualTo(mm(3000));
            assertThat(rafter.length()).isEqualTo(mm(5000));
        }
    }

    @Test
    void a_ridge_board_takes_off_half_its_thickness_measured_level() {
        CommonRafter rafter = CommonRafter.of(mm(3600), pitch("35°")).withRidge(mm(32));

        assertThat(rafter.ridgeDeduction()).isEqualTo(mm(16 / Math.cos(T35)));
        // three lengths, each to the nearest nanometre
        assertThat(rafter.lengthToCut().minus(mm((3600 - 16) / Math.cos(T35))).abs())
                .isLessThanOrEqualTo(Length.ofNanometres(2));
        assertThat(rafter.length()).isEqualTo(mm(3600 / Math.cos(T35)));
    }

    @Test
    void a_tail_may_be_given_level_plumb_or_on_the_slope() {
        CommonRafter rafter = CommonRafter.of(mm(3600), pitch("35°"));

        assertThat(rafter.withOverhang(level(mm(300))).tail()).isEqualTo(mm(300 / Math.cos(T35)));
        assertThat(rafter.withOverhang(plumb(mm(300))).tail()).isEqualTo(mm(300 / Math.sin(T35)));
        assertThat(rafter.withOverhang(onSlope(mm(300))).tail()).isEqualTo(mm(300));
        assertThat(rafter.withOverhang(onSlope(mm(300))).lengthToCut())
                .isEqualTo(rafter.length().plus(mm(300)));
        assertThat(List.of(level(mm(300)), plumb(mm(300)), onSlope(mm(300))))
                .allSatisfy(overhang -> assertThat(rafter.withOverhang(overhang)
                                .withRidge(mm(32))
                                .working()
                                .disagreements())
                        .isEmpty());
    }

    @Test
    void a_span_shows_in_the_working() {
        assertThat(CommonRafter.ofSpan(metres(6), pitch("45°"))
                        .working()
                        .at(CommonRafter.RISE)
                        .working()
                        .toText())
                .isEqualTo("""
                        rafter rise = rafter run × tan(rafter pitch)
                          rafter run = span ÷ 2
                            span = 6000 mm  (given)
                          = 3000 mm
                          rafter pitch = 45°  (given)
                        = 3000 mm
                        """);
    }

    @Test
    void a_face_has_a_common_rafter_with_a_tail_out_to_its_fascia() {
        RoofFace face = Roofs.leanTo()
                .wallLength(metres(4.6))
                .projection(metres(2.7))
                .slope(Slope.heights(metres(2), metres(4)))
                .eavesOverhang(level(mm(150)))
                .left(RoofEnd.abutment())
                .build()
                .face("main");
        CommonRafter rafter = CommonRafter.of(face);

        assertThat(rafter.run()).isEqualTo(mm(2700));
        assertThat(rafter.lengthToCut()).isEqualTo(face.slopeLength());
        assertThat(rafter.working().toText())
                .contains("run, plate to apex = projection", "apex height = 4000 mm  (given)");
        assertThat(rafter.working().disagreements()).isEmpty();
    }

    @Test
    void reports_everything_that_is_wrong_at_once() {
        CommonRafter rafter = CommonRafter.of(mm(3600), pitch("35°"));

        assertThatThrownBy(() -> CommonRafter.of(mm(0), pitch("35°")))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("run must be above 0 mm and at most 1000000 mm, but was 0 mm");
        assertThatThrownBy(() -> CommonRafter.of(mm(1e9), pitch("35°")))
                .hasMessage("run must be above 0 mm and at most 1000000 mm, but was 1000000000 mm");
        assertThatThrownBy(() -> CommonRafter.of(metres(10), pitch("89.99°")))
                .hasMessage("pitch must give a rise of at most 1000000 mm over a run of 10000 mm, but was 89.99°");
        assertThatThrownBy(() -> rafter.withOverhang(squareToSlope(mm(-3))))
                .hasMessage("overhang must be measured level, plumb or on the slope, from 0 mm to 1000000 mm,"
                        + " but was -3 mm square to the slope");
        assertThatThrownBy(() -> rafter.withRidge(mm(7200)))
                .hasMessage("ridge thickness must be 0 mm or more, and less than twice the run, but was 7200 mm");
        assertThat(CommonRafter.attempt(mm(-1), pitch("35°")).problems()).hasSize(1);
    }

    @Test
    void equal_sizes_make_equal_rafters() {
        CommonRafter rafter = CommonRafter.of(mm(3600), pitch("35°"));

        assertThat(rafter).isEqualTo(CommonRafter.of(mm(3600), pitch("35°")));
        assertThat(rafter).hasSameHashCodeAs(CommonRafter.of(mm(3600), pitch("35°")));
        assertThat(rafter).isNotEqualTo(rafter.withRidge(mm(20)));
        assertThat(rafter).hasToString("common rafter 4394.78852 mm over a run of 3600 mm at 35°");
    }
}
