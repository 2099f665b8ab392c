package org.roofmaths.flashing.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;
import static org.roofmaths.working.Figure.given;

import org.junit.jupiter.api.Test;
import org.roofmaths.flashing.BedJoints;
import org.roofmaths.flashing.CoveringLine;
import org.roofmaths.flashing.Demands;
import org.roofmaths.flashing.Flashing;
import org.roofmaths.flashing.FlashingDemand;
import org.roofmaths.flashing.Step;
import org.roofmaths.flashing.StepFlashing;
import org.roofmaths.flashing.Tray;
import org.roofmaths.flashing.TrayKind;
import org.roofmaths.problem.Problem;
import org.roofmaths.units.Pitch;

class StepFlashingSpecTest {
    private static final BedJoints FROM_GROUND = BedJoints.of(mm(0), mm(75));

    /** 5 in 8, the pitch of the lean-to worked by hand: 1.875 m over 3 m. */
    private static final Pitch FIVE_IN_EIGHT = Pitch.ofRiseAndRun(mm(5), mm(8));
    /** Its crown line from the fascia line, 90 square over the rafters; the fascia line lies 150 × 5 ÷ 8 under the plate line. */
    private static final CoveringLine FERNSIDE_SIDE =
            CoveringLine.sloping(mm(3150), FIVE_IN_EIGHT, mm(2300 - 150.0 * 5 / 8 + 90 * Math.sqrt(89) / 8));

    /** A line whose water line, 65 square over it, runs from one height to another. */
    private static CoveringLine waterFrom(double start, double end, Pitch pitch) {
        return CoveringLine.sloping(mm((end - start) / pitch.tan()), pitch, mm(start - 65 / pitch.cos()));
    }

    @Test
    void counts_the_joints_that_the_water_line_meets_and_not_the_rise() {
        // from 30 to 1475 mm: 20 − 0; the same roof 30 mm higher: 21 − 0
        assertThat(StepFlashing.along(waterFrom(30, 1475, pitch("35°")), FROM_GROUND, Demands.WALL)
                        .stepCount())
                .isEqualTo(20);
        assertThat(StepFlashing.along(waterFrom(60, 1505, pitch("35°")), FROM_GROUND, Demands.WALL)
                        .stepCount())
                .isEqualTo(21);
        // 2250 mm at 40°, starting and ending on a joint: 30
        assertThat(StepFlashing.along(waterFrom(0, 2250, pitch("40°")), FROM_GROUND, Demands.WALL)
                        .stepCount())
                .isEqualTo(30);
    }

    @Test
    void counts_below_the_datum_as_above_it() {
        BedJoints fromAbove = BedJoints.of(mm(7500), mm(75));

        assertThat(StepFlashing.along(waterFrom(30, 1475, pitch("35°")), fromAbove, Demands.WALL)
                        .stepCount())
                .isEqualTo(20);
    }

    @Test
    void a_wall_leg_is_the_water_line_and_the_course_with_its_tuck() {
        // 65 + (75 + 25) × cos(pitch), common practice; the trade cuts 150 to 170 mm
        StepFlashing at35 = StepFlashing.along(waterFrom(0, 1500, pitch("35°")), FROM_GROUND, Demands.WALL);

        assertThat(at35.wallLeg()).isEqualTo(mm(65 + 100 * Math.cos(Math.toRadians(35))));
        assertThat(at35.girth()).isEqualTo(mm(150 + 65 + 100 * Math.cos(Math.toRadians(35))));
        assertThat(at35.stepSpacing()).isEqualTo(mm(75 / Math.sin(Math.toRadians(35))));
        assertThat(at35.stepRun()).isEqualTo(mm(75 / Math.tan(Math.toRadians(35))));
        assertThat(StepFlashing.overSoakers(waterFrom(0, 1500, pitch("35°")), FROM_GROUND, Demands.WALL)
                        .girth())
                .isEqualTo(at35.wallLeg());
    }

    @Test
    void the_lean_to_worked_by_hand() {
        StepFlashing side = StepFlashing.along(FERNSIDE_SIDE, FROM_GROUND, Demands.WALL);

        assertThat(side.stepCount()).isEqualTo(28);
        assertThat(side.steps().get(0).joint()).isEqualTo(mm(2400));
        assertThat(side.steps().get(27).joint()).isEqualTo(mm(4425));
        // joint less water line at the fascia line, over the sine of the pitch; the page prints two digits
        assertThat(side.steps().get(0).endAlongSlope().toMillimetres()).isCloseTo(20.69, within(0.005));
        assertThat(side.steps().get(26).endAlongSlope().toMillimetres()).isCloseTo(3699.94, within(0.005));
        assertThat(side.stepSpacing()).isEqualTo(mm(75 * Math.sqrt(89) / 5));
        assertThat(side.stepRun()).isEqualTo(mm(120));
        assertThat(side.pieceCount()).isEqualTo(3);
        assertThat(side.metalLength()).isEqualTo(mm(3150 * Math.sqrt(89) / 8 + 2 * 100));
        assertThat(side.mass().toKilograms()).isCloseTo(23.95, within(0.005));
        assertThat(side.wedges()).isEqualTo(28);
        assertThat(side.trays()).hasSize(29);
        assertThat(side.working().disagreements()).isEmpty();
    }

    @Test
    void steps_follow_one_another_from_end_to_end() {
        StepFlashing side = StepFlashing.along(FERNSIDE_SIDE, FROM_GROUND, Demands.WALL);

        assertThat(side.steps().get(0).start()).isEqualTo(mm(0));
        for (int i = 1; i < side.stepCount(); i++) {
            assertThat(side.steps().get(i).start())
                    .isEqualTo(side.steps().get(i - 1).end());
        }
        assertThat(side.steps().get(27).end()).isEqualTo(mm(3150));
        assertThat(side.steps().get(3)).hasToString("step 4 in the joint at 2625 mm, 257.546584 mm to 377.546584 mm");
    }

    @Test
    void the_lowest_tray_catches_and_each_step_has_its_own() {
        StepFlashing side = StepFlashing.along(waterFrom(30, 1475, pitch("35°")), FROM_GROUND, Demands.WALL);

        assertThat(side.trays()).hasSize(20 + 1);
        assertThat(side.trays().get(0).kind()).isEqualTo(TrayKind.CATCH);
        assertThat(side.trays().get(0).joint()).isEqualTo(mm(75));
        assertThat(side.trays().subList(1, 21)).extracting(Tray::kind).containsOnly(TrayKind.STEPPED);
        assertThat(side.trays().subList(1, 21))
                .extracting(Tray::joint)
                .containsExactlyElementsOf(
                        side.steps().stream().map(Step::joint).toList());
        assertThat(side.trays().get(0).toString())
                .startsWith("catch tray with stop end and weep in the joint at 75 mm, 0 mm to ");
    }

    @Test
    void a_long_step_takes_more_than_one_wedge() {
        // 75 ÷ tan(5°) = 857 mm of step: two wedges at 450 apart at most
        StepFlashing flat = StepFlashing.along(waterFrom(0, 300, pitch("5°")), FROM_GROUND, Demands.WALL);

        assertThat(flat.stepCount()).isEqualTo(4);
        assertThat(flat.wedges()).isEqualTo(4 * 2);
        assertThat(flat.working().disagreements()).isEmpty();
    }

    @Test
    void says_by_how_much_the_top_step_passes_the_limit() {
        CoveringLine line = waterFrom(30, 1475, pitch("35°")).under(mm(1450));

        assertThat(StepFlashing.attemptAlong(line, FROM_GROUND, Demands.WALL).problems())
                .extracting(Problem::toString)
                .containsExactly("""
                        the top step of the step-and-cover flashing would go into the bed joint at 1500 mm, 50 mm above the limit of 1450 mm
                          mend: covering at the wall: 50 mm lower; top bed joint at 1425 mm""");
    }

    @Test
    void refuses_a_level_line() {
        assertThatThrownBy(
                        () -> StepFlashing.along(CoveringLine.level(metres(3), metres(2)), FROM_GROUND, Demands.WALL))
                .hasMessage(
                        "line must slope; a level line takes a cover flashing, but was level line of 3000 mm at 2000 mm");
        assertThat(StepFlashing.attemptOverSoakers(CoveringLine.level(metres(3), metres(2)), FROM_GROUND, Demands.WALL)
                        .hasValue())
                .isFalse();
    }

    @Test
    void refuses_a_demand_without_a_water_line() {
        FlashingDemand demand = FlashingDemand.builder()
                .sheet(Demands.CODE_4)
                .upstand(given(mm(75)))
                .cover(given(mm(150)))
                .tuck(given(mm(25)))
                .sideLap(given(mm(100)))
                .longestPiece(given(metres(1.5)))
                .build();

        assertThatThrownBy(() -> StepFlashing.along(FERNSIDE_SIDE, FROM_GROUND, demand))
                .hasMessage("water line must be given for a flashing beside a slope, but was missing");
        assertThat(StepFlashing.along(FERNSIDE_SIDE, FROM_GROUND, demand.withWaterLine(given(mm(65))))
                        .wedges())
                .isEqualTo(28);
    }

    @Test
    void refuses_a_wall_without_courses() {
        assertThatThrownBy(() -> BedJoints.of(mm(0), mm(0)))
                .hasMessage("brick course must be above 0 mm, but was 0 mm");
    }

    @Test
    void a_limit_snaps_down_and_a_flashing_up_to_a_joint() {
        assertThat(FROM_GROUND.atOrBelow(mm(3785))).isEqualTo(mm(3750));
        assertThat(FROM_GROUND.atOrAbove(mm(3785))).isEqualTo(mm(3825));
        assertThat(FROM_GROUND.atOrAbove(mm(3750))).isEqualTo(mm(3750));
        assertThat(FROM_GROUND.atOrBelow(mm(3750))).isEqualTo(mm(3750));
        assertThat(BedJoints.of(mm(4200), mm(75)).atOrBelow(mm(-10))).isEqualTo(mm(-75));
    }

    @Test
    void shows_the_corner_of_each_step() {
        StepFlashing side = StepFlashing.along(FERNSIDE_SIDE, FROM_GROUND, Demands.WALL);

        assertThat(side.working().at(StepFlashing.CORNER.at("step 4")).value())
                .isEqualTo(side.steps().get(3).end());
        assertThat(side.working().at(StepFlashing.STEPS).formula().toText())
                .isEqualTo("steps = whole number up from (water line at the end, over the bed joint ÷ brick course)"
                        + " − whole number down from (water line at the start, over the bed joint ÷ brick course)");
        assertThat(side.working().at(Flashing.GIRTH).value()).isEqualTo(side.girth());
    }
}
