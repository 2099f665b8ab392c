package org.roofmaths.flashing.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.kg;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;
import static org.roofmaths.working.Figure.given;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.roofmaths.flashing.BedJoints;
import org.roofmaths.flashing.CoverFlashing;
import org.roofmaths.flashing.CoveringLine;
import org.roofmaths.flashing.Demands;
import org.roofmaths.flashing.Flashing;
import org.roofmaths.flashing.FlashingDemand;
import org.roofmaths.flashing.FlashingPiece;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.problem.Severity;
import org.roofmaths.units.Length;

class CoverFlashingSpecTest {
    // nm storage: a length is exact to half a nanometre, so a printed hundredth of a millimetre is not rounding but
    // reading
    private static final double HUNDREDTH = 0.005;

    /** The lean-to worked by hand: crown 90 square over the rafters at 32.0054°, apex line at 4175 mm. */
    private static final CoveringLine FERNSIDE_TOP = CoveringLine.level(mm(5245), mm(4175 + 90 * Math.sqrt(89) / 8));

    private static final BedJoints JOINTS = BedJoints.of(mm(4200), mm(75));

    @Test
    void goes_into_the_lowest_joint_that_leaves_the_upstand() {
        CoverFlashing flashing = CoverFlashing.along(FERNSIDE_TOP, JOINTS, Demands.WALL);

        // covering at 4175 + 90 × √89 ÷ 8 = 4281.13; 75 over it is 4356.13; joints at 4350 and 4425
        assertThat(flashing.joint()).contains(mm(4425));
        assertThat(flashing.upstand().toMillimetres()).isCloseTo(143.87, within(HUNDREDTH));
        assertThat(flashing.girth().toMillimetres()).isCloseTo(25 + 143.867712 + 150, within(1e-6));
        assertThat(flashing.problems()).isEmpty();
    }

    @Test
    void cuts_the_run_into_equal_lapped_pieces() {
        CoverFlashing flashing = CoverFlashing.along(FERNSIDE_TOP, JOINTS, Demands.WALL);

        // (5245 − 100) ÷ (1500 − 100) = 3.675, so 4 pieces and 3 laps
        assertThat(flashing.pieceCount()).isEqualTo(4);
        assertThat(flashing.metalLength()).isEqualTo(mm(5245 + 3 * 100));
        assertThat(flashing.pieces()).extracting(FlashingPiece::length).containsOnly(mm(5545.0 / 4));
        assertThat(flashing.pieces())
                .extracting(FlashingPiece::start)
                .containsExactly(mm(0), mm(1286.25), mm(2572.5), mm(3858.75));
        assertThat(flashing.pieces().get(1).name()).isEqualTo("cover flashing 2 of 4");
        // 5.545 m × 0.318868 m × 20.41 kg/m²
        assertThat(flashing.mass().toKilograms()).isCloseTo(5.545 * 0.318867712 * 20.41, within(1e-6));
        // 5245 ÷ 450 = 11.7: 12 spaces, 13 wedges
        assertThat(flashing.wedges()).hasValue(13);
        assertThat(flashing.clips()).isEmpty();
    }

    @Test
    void a_run_that_divides_exactly_gains_no_piece() {
        // NHBC Standards 2020 cl. 7.2.20 for 1.5 m and 100 mm; counts by arithmetic
        assertThat(CoverFlashing.along(metres(1.5), Demands.WALL).pieceCount()).isEqualTo(1);
        assertThat(CoverFlashing.along(metres(2.9), Demands.WALL).pieceCount()).isEqualTo(2);
        assertThat(CoverFlashing.along(metres(2.9), Demands.WALL).metalLength()).isEqualTo(metres(3));
        assertThat(CoverFlashing.along(metres(6), Demands.WALL).pieceCount()).isEqualTo(5);
        assertThat(CoverFlashing.along(metres(6), Demands.WALL).metalLength()).isEqualTo(metres(6.4));
        assertThat(CoverFlashing.along(mm(2900.001), Demands.WALL).pieceCount()).isEqualTo(3);
        assertThat(CoverFlashing.along(mm(60), Demands.WALL).pieceCount()).isEqualTo(1);
    }

    @Test
    void a_bare_length_has_exactly_the_least_upstand() {
        CoverFlashing flashing = CoverFlashing.along(metres(5.2), Demands.WALL);

        assertThat(flashing.upstand()).isEqualTo(mm(75));
        assertThat(flashing.girth()).isEqualTo(mm(25 + 75 + 150));
        assertThat(flashing.joint()).isEmpty();
    }

    @Test
    void a_chase_beside_a_slope_follows_the_water_line() {
        CoveringLine side = CoveringLine.sloping(metres(3), pitch("35°"), metres(2.4));

        CoverFlashing flashing = CoverFlashing.inChase(side, Demands.WALL);

        assertThat(flashing.girth()).isEqualTo(mm(25 + 65 + 150));
        assertThat(flashing.upstand()).isEqualTo(mm(65));
        assertThat(flashing.line().trueLength()).isEqualTo(mm(3000 / Math.cos(Math.toRadians(35))));
    }

    @Test
    void metal_beyond_the_ends_is_cut_too_and_never_assumed_in_silence() {
        CoveringLine line = CoveringLine.level(metres(1.2), metres(4));

        assertThat(CoverFlashing.inChase(line.extendedBy(mm(150), mm(150)), Demands.WALL)
                        .metalLength())
                .isEqualTo(metres(1.5));
        assertThat(CoverFlashing.inChase(line, Demands.WALL).working().toText())
                .contains(
                        "metal beyond the end = 0 mm  (assumed: no metal beyond the ends was asked for; to change it, call"
                                + " extendedBy on the line)");
    }

    @Test
    void says_by_how_much_the_joint_lies_above_the_sill() {
        CoveringLine line = CoveringLine.level(metres(5), mm(4281)).under(mm(4400));

        Attempt<CoverFlashing> attempt = CoverFlashing.attemptAlong(line, JOINTS, Demands.WALL);

        assertThat(attempt.hasValue()).isTrue();
        assertThat(attempt.problems()).hasSize(1);
        Problem problem = attempt.problems().get(0);
        assertThat(problem.severity()).isEqualTo(Severity.FINDING);
        assertThat(problem.code()).isEqualTo(Flashing.ABOVE_LIMIT);
        assertThat(problem.toString()).isEqualTo("""
                the bed joint of the cover flashing would lie at 4425 mm, 25 mm above the limit of 4400 mm
                  mend: covering at the wall: 6 mm lower; bed joint at 4350 mm
                  mend: bed joint: a straight chase cut at 4356 mm; upstand of 75 mm""");
    }

    @Test
    void a_joint_at_the_limit_stays_under_it() {
        assertThat(CoverFlashing.along(CoveringLine.level(metres(5), mm(4350)).under(mm(4425)), JOINTS, Demands.WALL)
                        .problems())
                .isEmpty();
    }

    @Test
    void tells_of_a_chase_above_the_limit() {
        CoveringLine line = CoveringLine.level(metres(5), mm(4350)).under(mm(4400));

        assertThat(CoverFlashing.attemptInChase(line, Demands.WALL).problems())
                .extracting(Problem::toString)
                .containsExactly("""
                        the chase of the cover flashing would lie at 4425 mm, 25 mm above the limit of 4400 mm
                          mend: covering at the wall: 25 mm lower; chase at 4400 mm""");
    }

    @Test
    void notices_an_upstand_that_stands_high() {
        FlashingDemand demand = FlashingDemand.builder()
                .sheet(Demands.CODE_4)
                .upstand(given(mm(75)))
                .cover(given(mm(150)))
                .tuck(given(mm(25)))
                .sideLap(given(mm(100)))
                .longestPiece(given(metres(1.5)))
                .greatestUpstand(given(mm(140)))
                .clipSpacing(given(mm(500)))
                .build();

        CoverFlashing flashing = CoverFlashing.along(CoveringLine.level(metres(5), mm(4281)), JOINTS, demand);

        assertThat(flashing.problems())
                .extracting(Problem::toString)
                .containsExactly(
                        "the upstand of the cover flashing is 144 mm, above 140 mm; metal standing that high is better held or"
                                + " supported behind");
        assertThat(flashing.clips()).hasValue(11);
        assertThat(flashing.wedges()).isEmpty();
    }

    @Test
    void refuses_a_sloping_line_in_joints() {
        CoveringLine side = CoveringLine.sloping(metres(3), pitch("35°"), metres(2.4));

        assertThatThrownBy(() -> CoverFlashing.along(side, JOINTS, Demands.WALL))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("line must be level; beside a slope brickwork takes a step flashing, but was line of "
                        + side.trueLength() + " at 35° from 2400 mm");
        assertThat(CoverFlashing.attemptAlong(side, JOINTS, Demands.WALL).hasValue())
                .isFalse();
    }

    @Test
    void refuses_wrong_sizes_all_at_once() {
        assertThatThrownBy(() -> FlashingDemand.builder()
                        .sheet(Demands.CODE_4)
                        .upstand(given(mm(0)))
                        .cover(given(mm(-150)))
                        .tuck(given(mm(-1)))
                        .sideLap(given(mm(100)))
                        .longestPiece(given(mm(100)))
                        .build())
                .isInstanceOf(ProblemsException.class)
                .hasMessage("""
                        least flashing upstand must be above 0 mm, but was 0 mm
                        flashing cover must be above 0 mm, but was -150 mm
                        tuck must be 0 mm or more, but was -1 mm
                        longest flashing piece must be longer than its lap of 100 mm, but was 100 mm""");
    }

    @Test
    void refuses_a_line_without_length() {
        assertThatThrownBy(() -> CoverFlashing.along(Length.ZERO, Demands.WALL))
                .hasMessage("length along the wall must be above 0 mm, but was 0 mm");
    }

    @Test
    void prints_what_to_cut() {
        assertThat(CoverFlashing.along(metres(6), Demands.WALL))
                .hasToString("cover flashing: 5 pieces of 1280 mm × 250 mm, 32.656 kg of lead code 4");
        assertThat(CoverFlashing.along(metres(6), Demands.WALL).mass()).isEqualTo(kg(6.4 * 0.25 * 20.41));
    }

    @Test
    void shows_its_working() {
        CoverFlashing flashing = CoverFlashing.along(FERNSIDE_TOP, JOINTS, Demands.WALL);

        assertThat(flashing.working().at(CoverFlashing.JOINT).value()).isEqualTo(mm(4425));
        assertThat(flashing.working().at(Flashing.GIRTH).formula().toText())
                .isEqualTo("girth = tuck + flashing upstand got + flashing cover");
        assertThat(flashing.working().at(Flashing.PIECES).value()).isEqualTo(4);
        assertThat(flashing.working().at(Flashing.METAL_MASS).value()).isEqualTo(flashing.mass());
        assertThat(flashing.working().disagreements()).isEmpty();
        assertThat(List.of(
                        CoverFlashing.along(metres(6), Demands.WALL),
                        CoverFlashing.inChase(
                                CoveringLine.sloping(metres(3), pitch("35°"), metres(2.4)), Demands.WALL)))
                .allSatisfy(f -> assertThat(f.working().disagreements()).isEmpty());
    }

    @Test
    void equal_definitions_make_equal_flashings() {
        assertThat(CoverFlashing.along(FERNSIDE_TOP, JOINTS, Demands.WALL))
                .isEqualTo(CoverFlashing.along(FERNSIDE_TOP, JOINTS, Demands.WALL))
                .hasSameHashCodeAs(CoverFlashing.along(FERNSIDE_TOP, JOINTS, Demands.WALL))
                .isNotEqualTo(CoverFlashing.inChase(FERNSIDE_TOP, Demands.WALL));
    }
}
