package org.roofmaths.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.roof.EdgeTreatment.abutment;
import static org.roofmaths.roof.EdgeTreatment.eaves;
import static org.roofmaths.roof.EdgeTreatment.gable;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Length;

class RoofOverPlanTest {
    private static final double C35 = Math.cos(Math.toRadians(35));
    private static final double T35 = Math.tan(Math.toRadians(35));
    /** Corners are stored to the nanometre; a few of them in a length of some metres. */
    private static final double STORED_MM = 1e-5;

    private static RoofPlan.Builder rectangle(double x, double y) {
        return RoofPlan.builder()
                .corner("south", metres(0), metres(0))
                .corner("east", metres(x), metres(0))
                .corner("north", metres(x), metres(y))
                .corner("west", metres(0), metres(y))
                .everySide(eaves(pitch("35°")));
    }

    private static void isSound(Roof roof) {
        assertThat(roof.working().disagreements()).isEmpty();
        roof.faces().forEach(face -> assertThat(face.working().disagreements()).isEmpty());
        roof.edges().forEach(edge -> assertThat(edge.working().disagreements()).isEmpty());
    }

    @Test
    void a_hipped_roof_of_12_by_8_metres_at_35_degrees() {
        Roof roof = Roof.over(rectangle(12, 8).build());

        assertThat(roof.faces()).extracting(RoofFace::name).containsExactly("south", "east", "north", "west");
        // trapezium (12 + 4) / 2 × 4 / cos, triangle 8 / 2 × 4 / cos
        assertThat(roof.face("south").areaAlongSlope().toSquareMetres()).isCloseTo(32 / C35, within(1e-7));
        assertThat(roof.face("east").areaAlongSlope().toSquareMetres()).isCloseTo(16 / C35, within(1e-7));
        assertThat(roof.areaOnPlan().toSquareMetres()).isCloseTo(96, within(1e-7));
        RoofEdge ridge = roof.between("south", "north");
        assertThat(ridge.kind()).isEqualTo(EdgeKind.RIDGE);
        assertThat(ridge.trueLength()).isEqualTo(metres(4)); // length less width
        RoofEdge hip = roof.between("south", "east");
        assertThat(hip.kind()).isEqualTo(EdgeKind.HIP);
        assertThat(hip.trueLength().toMillimetres()).isCloseTo(4000 * Math.sqrt(2 + T35 * T35), within(STORED_MM));
        assertThat(hip.angleInside().cos()).isCloseTo(-C35 * C35, within(1e-12));
        assertThat(hip.planAngle("south").toDegrees()).isCloseTo(45, within(1e-9));
        assertThat(hip.backing("east").toDegrees())
                .isCloseTo(hip.backing("south").toDegrees(), within(1e-9));
        assertThat(roof.edges(EdgeKind.HIP)).hasSize(4);
        assertThat(roof.highestHeight().toMillimetres()).isCloseTo(4000 * T35, within(STORED_MM));
        assertThat(roof)
                .hasToString(
                        "roof at 35°: 4 faces \"south\", \"east\", \"north\", \"west\", 117.19 m² along the slope");
        assertThat(roof.face("east").flatShape().slopeLengths()).isEqualTo(Ends.both(mm(4000 / C35)));
        isSound(roof);
    }

    @Test
    void a_hip_has_the_numbers_of_its_meeting_line() {
        Roof roof = Roof.over(rectangle(12, 8).side("east", eaves(pitch("50°"))).build());
        RoofEdge hip = roof.between("south", "east");
        MeetingLine line = hip.meetingLine();
        MeetingLine expected = MeetingLine.of(pitch("35°"), pitch("50°"), Angle.ofDegrees(90));

        assertThat(line.pitch().toDegrees()).isCloseTo(expected.pitch().toDegrees(), within(1e-7));
        assertThat(hip.slopeAngle().toDegrees()).isCloseTo(expected.pitch().toDegrees(), within(1e-7));
        assertThat(hip.angleInside().toDegrees())
                .isCloseTo(expected.angleInside().toDegrees(), within(1e-7));
        assertThatThrownBy(() -> roof.between("south", "north").meetingLine())
                .isInstanceOf(ProblemsException.class)
                .hasMessage("edge must be a hip or a valley that slopes, but was \"ridge south/north\", a ridge");
        isSound(roof);
    }

    @Test
    void a_gable_end_has_two_verges_and_no_face() {
        Roof roof = Roof.over(rectangle(12, 8).side("east", gable()).build());

        assertThat(roof.faces()).extracting(RoofFace::name).containsExactly("south", "north", "west");
        assertThat(roof.edges(EdgeKind.VERGE))
                .extracting(RoofEdge::name)
                .containsExactly("south right verge", "north left verge");
        assertThat(roof.edge("south right verge").trueLength().toMillimetres())
                .isCloseTo(4000 / C35, within(STORED_MM));
        assertThat(roof.between("south", "north").trueLength().toMillimetres()).isCloseTo(8000, within(STORED_MM));
        isSound(roof);
    }

    @Test
    void a_single_slope_without_a_wall_above_has_a_mono_ridge() {
        Roof roof = Roof.over(rectangle(6, 4)
                .everySide(gable())
                .side("south", eaves(pitch("12°")))
                .build());

        assertThat(roof.edges())
                .extracting(RoofEdge::name)
                .containsExactly("south eaves", "south right verge", "south mono ridge", "south left verge");
        isSound(roof);
    }

    @Test
    void a_square_comes_to_a_point() {
        Roof roof = Roof.over(rectangle(6, 6).build());

        assertThat(roof.edges(EdgeKind.RIDGE)).isEmpty();
        assertThat(roof.edges(EdgeKind.HIP)).hasSize(4);
        assertThat(roof.face("south").polygon()).hasSize(3);
        isSound(roof);
    }

    /** 12 by 6 with a wing 5 wide running 7 further north at the west end. */
    private static RoofPlan.Builder ell() {
        return RoofPlan.builder()
                .corner("south", metres(0), metres(0))
                .corner("east", metres(12), metres(0))
                .corner("yard north", metres(12), metres(6))
                .corner("yard east", metres(5), metres(6))
                .corner("north", metres(5), metres(13))
                .corner("west", metres(0), metres(13))
                .everySide(eaves(pitch("35°")));
    }

    @Test
    void an_l_shape_has_a_valley_at_its_inner_corner() {
        Roof roof = Roof.over(ell().build());
        RoofEdge valley = roof.between("yard north", "yard east");

        assertThat(valley.kind()).isEqualTo(EdgeKind.VALLEY);
        // it ends where the narrower wing has its ridge, 2.5 m from either eaves
        assertThat(valley.planLength().toMillimetres()).isCloseTo(2500 * Math.sqrt(2), within(STORED_MM));
        assertThat(valley.trueLength().toMillimetres()).isCloseTo(2500 * Math.sqrt(2 + T35 * T35), within(STORED_MM));
        assertThat(valley.angleInside().toDegrees())
                .isCloseTo(360 - Math.toDegrees(Math.acos(-C35 * C35)), within(1e-9));
        assertThat(valley.planAngle("yard north").toDegrees()).isCloseTo(45, within(1e-7));
        assertThat(valley.meetingLine().isValley()).isTrue();
        // 12 × 6 + 5 × 7, all at one pitch
        assertThat(roof.areaAlongSlope().toSquareMetres()).isCloseTo(107 / C35, within(1e-6));
        isSound(roof);
    }

    @Test
    void a_courtyard_has_its_own_eaves_and_valleys() {
        Roof roof = Roof.over(rectangle(12, 12)
                .courtyard()
                .corner("inner south", metres(4), metres(4))
                .corner("inner east", metres(8), metres(4))
                .corner("inner north", metres(8), metres(8))
                .corner("inner west", metres(4), metres(8))
                .build());

        assertThat(roof.faces()).hasSize(8);
        assertThat(roof.edges(EdgeKind.VALLEY)).hasSize(4);
        assertThat(roof.edges(EdgeKind.HIP)).hasSize(4);
        assertThat(roof.lengthOf(EdgeKind.RIDGE).toMillimetres()).isCloseTo(4 * 8000, within(STORED_MM));
        assertThat(roof.areaOnPlan().toSquareMetres()).isCloseTo(144 - 16, within(1e-7));
        isSound(roof);
    }

    @Test
    void neighbours_in_one_line_with_one_pitch_are_one_face() {
        Roof roof = Roof.over(RoofPlan.builder()
                .corner("south", metres(0), metres(0))
                .corner("annexe", metres(7), metres(0))
                .corner("east", metres(12), metres(0))
                .corner("north", metres(12), metres(8))
                .corner("west", metres(0), metres(8))
                .everySide(eaves(pitch("35°")))
                .build());

        assertThat(roof.faces()).extracting(RoofFace::name).containsExactly("south", "east", "north", "west");
        assertThat(roof.face("south").eavesWidth()).isEqualTo(metres(12));
        assertThat(roof.face("south").edges()).extracting(RoofEdge::name).startsWith("south eaves", "annexe eaves");
        assertThat(roof.face("south").flatShape().eavesWidth()).isEqualTo(metres(12));
        isSound(roof);
    }

    @Test
    void where_the_plan_is_skew_the_ridge_slopes_and_is_still_a_ridge() {
        Roof roof = Roof.over(RoofPlan.builder()
                .corner("south", metres(0), metres(0))
                .corner("east", metres(14), metres(0))
                .corner("north", metres(14), metres(7))
                .corner("west", metres(0), metres(8))
                .everySide(eaves(pitch("40°")))
                .build());

        RoofEdge ridge = roof.between("south", "north");
        assertThat(ridge.kind()).isEqualTo(EdgeKind.RIDGE);
        assertThat(ridge.slopeAngle().toDegrees()).isBetween(0.1, 5.0);
        assertThat(ridge.from().height()).isLessThan(ridge.to().height());
        isSound(roof);
    }

    @Test
    void a_roof_far_from_the_origin_is_the_same_roof() {
        Length far = metres(9_000_000);
        Roof here = Roof.over(ell().build());
        RoofPlan.Builder moved = RoofPlan.builder().everySide(eaves(pitch("35°")));
        here.plan()
                .outline()
                .forEach(side -> moved.corner(
                        side.name(), side.from().x().plus(far), side.from().y().minus(far)));
        Roof there = Roof.over(moved.build());

        assertThat(there.areaAlongSlope()).isEqualTo(here.areaAlongSlope());
        for (int i = 0; i < here.edges().size(); i++) {
            assertThat(there.edges().get(i).trueLength())
                    .isEqualTo(here.edges().get(i).trueLength());
        }
        assertThat(there.faces().get(0).polygon().get(0).x()).isEqualTo(far);
    }

    @Test
    void overhangs_and_plate_heights_set_the_level_of_the_fascia() {
        Roof roof = Roof.over(rectangle(12, 8)
                .everySide(eaves(pitch("35°")).withOverhang(mm(300)).withPlateAt(metres(2.4)))
                .build());
        RoofFace south = roof.face("south");

        assertThat(south.fasciaHeight()).isEqualTo(mm(2400 - 300 * T35));
        assertThat(south.run().toMillimetres()).isCloseTo(3700, within(STORED_MM));
        assertThat(south.apexHeight().toMillimetres()).isCloseTo(2400 + 3700 * T35, within(STORED_MM));
        assertThat(south.slopeLength(RoofLine.PLATE, RoofLine.APEX).value().toMillimetres())
                .isCloseTo(3700 / C35, within(STORED_MM));
        isSound(roof);
    }

    @Test
    void two_levels_at_one_corner_are_refused_with_the_way_to_mend_them() {
        Attempt<Roof> roof = Roof.attempt(rectangle(12, 8)
                .side("west", eaves(pitch("35°")).withPlateAt(mm(150)))
                .build());

        assertThat(roof.problems())
                .extracting(Problem::toString)
                .containsExactly(
                        "fascia of side \"west\" must lie at 0 mm, the level of side \"north\", where the two share a corner,"
                                + " but was 150 mm\n  mend: plate of side \"west\": 150 mm lower; both fascias at 0 mm",
                        "fascia of side \"south\" must lie at 150 mm, the level of side \"west\", where the two share a corner,"
                                + " but was 0 mm\n  mend: plate of side \"south\": 150 mm higher; both fascias at 150 mm");
    }

    @Test
    void two_levels_parted_by_gables_make_one_roof() {
        Roof roof = Roof.over(rectangle(12, 8)
                .everySide(gable())
                .side("south", eaves(pitch("35°")))
                .side("north", eaves(pitch("35°")).withPlateAt(metres(1)))
                .build());

        // ridge where y tan = 1 + (8 − y) tan
        double ridge = (8 + 1 / T35) / 2;
        assertThat(roof.face("south").run().toMetres()).isCloseTo(ridge, within(1e-8));
        assertThat(roof.face("north").apexHeight()).isEqualTo(roof.face("south").apexHeight());
        isSound(roof);
    }

    @Test
    void an_abutment_ends_the_faces_at_the_wall() {
        Roof roof = Roof.over(rectangle(12, 8).side("north", abutment()).build());

        assertThat(roof.edges(EdgeKind.SIDE_ABUTMENT))
                .extracting(RoofEdge::name)
                .containsExactly("east right side abutment", "west left side abutment");
        assertThat(roof.edges(EdgeKind.TOP_ABUTMENT)).isEmpty();
        isSound(roof);
    }

    @Test
    void an_eaves_that_the_roof_has_risen_over_is_refused_with_the_place() {
        assertThatThrownBy(() -> Roof.over(rectangle(8, 10)
                        .side("east", gable())
                        .side("west", gable())
                        .side("north", eaves(pitch("35°")).withPlateAt(metres(20)))
                        .build()))
                .hasMessageStartingWith(
                        "eaves of side \"north\" must start before the roof from other sides rises to it,"
                                + " but was reached at (8000 mm, 10000 mm)");
    }

    @Test
    void two_pitches_that_run_on_in_one_line_are_refused() {
        assertThatThrownBy(() -> Roof.over(RoofPlan.builder()
                        .corner("a", metres(0), metres(0))
                        .corner("b", metres(4), metres(0))
                        .corner("c", metres(8), metres(0))
                        .corner("d", metres(8), metres(10))
                        .corner("e", metres(0), metres(10))
                        .everySide(eaves(pitch("35°")))
                        .side("b", eaves(pitch("45°")))
                        .build()))
                .hasMessage("side \"a\" and side \"b\" must have one pitch, or a corner between them, or lie far enough"
                        + " apart for both to have a face, but was eaves at 35° and eaves at 45°");
    }

    @Test
    void a_side_of_a_few_nanometres_is_refused() {
        assertThatThrownBy(() -> Roof.over(RoofPlan.builder()
                        .corner("a", metres(0), metres(0))
                        .corner("b", metres(4), metres(0))
                        .corner("c", metres(4), Length.ofNanometres(10))
                        .corner("d", metres(0), metres(10))
                        .everySide(eaves(pitch("35°")))
                        .build()))
                .hasMessage("side \"b\" must be longer than 32 nanometres, but was closer at (4000 mm, 0 mm)");
    }

    @Test
    void a_pitch_too_flat_to_be_carried_exactly_is_refused_by_name() {
        assertThatThrownBy(() -> Roof.over(
                        rectangle(12, 8).side("east", eaves(pitch("0.01°"))).build()))
                .hasMessage("pitch of side \"east\" must be from 1 in 1024 to 65536 in 1, but was eaves at 0.01°");
    }

    @Test
    void faces_meet_in_the_edges_they_share() {
        Roof roof = Roof.over(ell().side("north", gable()).build());

        for (RoofEdge edge : roof.edges()) {
            assertThat(edge.faces()).hasSize(edge.kind().isBetweenFaces() ? 2 : 1);
            for (RoofFace face : edge.faces()) {
                assertThat(face.edges()).contains(edge);
                assertThat(face.polygon()).contains(edge.from(), edge.to());
            }
        }
        assertThat(roof.edges().stream().map(RoofEdge::name)).doesNotHaveDuplicates();
        assertThat(List.of(EdgeKind.EAVES, EdgeKind.VERGE, EdgeKind.RIDGE, EdgeKind.HIP, EdgeKind.VALLEY))
                .allSatisfy(kind -> assertThat(roof.edges(kind)).isNotEmpty());
    }
}
