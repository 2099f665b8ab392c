package org.roofmaths.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.roofmaths.units.Quantities.level;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import org.junit.jupiter.api.Test;
import org.roofmaths.problem.Problem;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Tolerance;

class DuoPitchTest {
    private static final double COS_40 = StrictMath.cos(StrictMath.toRadians(40));
    private static final double TAN_40 = StrictMath.tan(StrictMath.toRadians(40));

    // Sizes invented for these tests: a garage of 6 m by 5 m.
    private static Roof garage() {
        return Roofs.duoPitch()
                .length(metres(6))
                .span(metres(5))
                .slope(Slope.of(pitch("40°")).fromPlateAt(metres(2.4)))
                .eavesOverhang(level(mm(150)))
                .left(RoofEnd.verge(level(mm(50))))
                .right(RoofEnd.verge(level(mm(50))))
                .build();
    }

    @Test
    void has_two_equal_faces_with_a_ridge_over_the_middle() {
        Roof roof = garage();

        assertThat(roof.faces()).extracting(RoofFace::name).containsExactly("front", "back");
        for (RoofFace face : roof.faces()) {
            assertThat(face.run()).isEqualTo(mm(2500));
            assertThat(face.slopeLength()).isEqualTo(mm(2650 / COS_40));
            assertThat(face.eavesWidth()).isEqualTo(mm(6000 + 50 + 50));
            assertThat(face.apexHeight()).isEqualTo(mm(2400 + 2500 * TAN_40));
            assertThat(face.fasciaHeight()).isEqualTo(mm(2400 - 150 * TAN_40));
        }
        assertThat(roof.highestHeight()).isEqualTo(mm(2400 + 2500 * TAN_40));
        assertThat(roof.lowestHeight()).isEqualTo(mm(2400 - 150 * TAN_40));
        RoofEdge ridge = roof.between("front", "back");
        assertThat(ridge).isEqualTo(roof.edge("ridge front/back")).isEqualTo(roof.between("back", "front"));
        assertThat(ridge.kind()).isEqualTo(EdgeKind.RIDGE);
        assertThat(ridge.trueLength()).isEqualTo(mm(6100));
        assertThat(ridge.from()).isEqualTo(SpacePoint.of(mm(-50), mm(2500), mm(2400 + 2500 * TAN_40)));
        assertThat(ridge.to()).isEqualTo(SpacePoint.of(mm(6050), mm(2500), mm(2400 + 2500 * TAN_40)));
    }

    @Test
    void the_angle_at_the_ridge_is_a_straight_angle_less_both_pitches() {
        RoofEdge ridge = garage().between("front", "back");

        assertThat(ridge.angleInside()).isEqualTo(Angle.ofDegrees(180 - 40 - 40));
        assertThat(ridge.angleOutside()).isEqualTo(Angle.ofDegrees(180 + 40 + 40));
        assertThat(ridge.backing("front")).isEqualTo(Angle.ofDegrees(40));
        assertThat(ridge.backing("back")).isEqualTo(Angle.ofDegrees(40));
        assertThat(ridge.slopeAngle()).isEqualTo(Angle.ZERO);
    }

    @Test
    void left_and_right_of_each_face_are_as_seen_from_its_own_side() {
        Roof roof = Roofs.duoPitch()
                .length(metres(6))
                .span(metres(5))
                .slope(Slope.of(pitch("40°")))
                .eavesOverhang(level(mm(150)))
                .left(RoofEnd.abutment())
                .build();

        assertThat(roof.edges())
                .extracting(RoofEdge::name)
                .containsExactly(
                        "front eaves",
                        "front right verge",
                        "ridge front/back",
                        "front left side abutment",
                        "back eaves",
                        "back right side abutment",
                        "back left verge");
        assertThat(roof.face("back").edge(EdgeKind.SIDE_ABUTMENT, End.RIGHT).name())
                .isEqualTo("back right side abutment");
        assertThat(roof.face("front").edge(EdgeKind.SIDE_ABUTMENT, End.LEFT).name())
                .isEqualTo("front left side abutment");
        assertThat(roof.face("front").downSlope()).isEqualTo(Angle.ofDegrees(270));
        assertThat(roof.face("back").downSlope()).isEqualTo(Angle.ofDegrees(90));
    }

    @Test
    void faces_share_their_ridge_corners_and_cover_the_outline() {
        Roof roof = garage();

        assertThat(roof.face("front").polygon()).hasSize(4);
        assertThat(roof.face("front").polygon().get(2))
                .isSameAs(roof.face("back").polygon().get(3));
        assertThat(roof.face("front").polygon().get(3))
                .isSameAs(roof.face("back").polygon().get(2));
        // 6.1 m by 5.3 m
        assertThat(roof.areaOnPlan()).isEqualTo(metres(6.1).times(metres(5.3)));
    }

    @Test
    void the_plan_lies_with_the_front_eaves_along_x() {
        RoofPlan plan = garage().plan();

        assertThat(plan).hasToString("plan of 4 sides");
        assertThat(plan.outline()).extracting(PlanSide::name).containsExactly("front", "right", "back", "left");
        assertThat(plan.side("front")).hasToString("front: eaves at 40°, from (-50 mm, -150 mm) to (6050 mm, -150 mm)");
        assertThat(plan.side("right")).hasToString("right: gable, from (6050 mm, -150 mm) to (6050 mm, 5150 mm)");
        assertThat(plan.courtyards()).isEmpty();
    }

    @Test
    void half_the_span_shows_in_the_working() {
        assertThat(garage().face("front")
                        .working()
                        .at(RoofFace.SLOPE_LENGTH)
                        .working()
                        .toText())
                .isEqualTo("""
                slope length, fascia to apex = run, fascia to apex ÷ cos(rafter pitch)
                  run, fascia to apex = run, plate to apex + eaves overhang, level
                    run, plate to apex = span ÷ 2
                      span = 5000 mm  (given)
                    = 2500 mm
                    eaves overhang, level = 150 mm  (given)
                  = 2650 mm
                  rafter pitch = 40°  (given)
                = 3459.329317 mm
                """);
    }

    @Test
    void the_angle_at_the_ridge_shows_its_working() {
        assertThat(garage().between("front", "back")
                        .working()
                        .at(MeetingLine.ANGLE_INSIDE)
                        .working()
                        .toText())
                .isEqualTo("""
                        angle between the faces, inside = 180° − backing (front) − backing (back)
                          backing (front) = arcsin(sin(rafter pitch (front)) × cos(plan angle to the eaves (front)))
                            rafter pitch (front) = 40°  (given)
                            plan angle to the eaves (front) = 0°  (taken from the plan)
                          = 40°
                          backing (back) = arcsin(sin(rafter pitch (back)) × cos(plan angle to the eaves (back)))
                            rafter pitch (back) = 40°  (given)
                            plan angle to the eaves (back) = 0°  (taken from the plan)
                          = 40°
                        = 100°
                        """);
    }

    @Test
    void every_step_of_every_working_agrees_with_its_formula() {
        Roof roof = garage();

        assertThat(roof.working().disagreements()).isEmpty();
        roof.faces().forEach(face -> assertThat(face.working().disagreements()).isEmpty());
        roof.edges().forEach(edge -> assertThat(edge.working().disagreements()).isEmpty());
    }

    @Test
    void the_heights_give_the_pitch_over_half_the_span() {
        Roof roof = Roofs.duoPitch()
                .length(metres(6))
                .span(metres(8))
                .slope(Slope.heights(metres(2), metres(5)))
                .eavesOverhang(level(Length.ZERO))
                .build();

        assertThat(roof.face("front").slopeLength()).isEqualTo(mm(5000)); // 3-4-5
        assertThat(roof.face("front").pitch()).isEqualTo(Pitch.ofRiseAndRun(mm(3), mm(4)));
    }

    @Test
    void prints_a_summary_a_builder_understands() {
        // 2 × 6.1 × 2.65 / cos 40° = 42.2038 m²
        assertThat(garage()).hasToString("duo-pitch at 40°: 2 faces \"front\", \"back\", 42.2 m² along the slope");
        assertThat(garage().between("front", "back")).hasToString("ridge front/back: 6100 mm");
    }

    @Test
    void reports_everything_that_is_wrong_at_once() {
        assertThat(Roofs.duoPitch()
                        .length(metres(0))
                        .span(metres(-5))
                        .slope(Slope.both(pitch("40°"), metres(2), metres(1), Tolerance.of(mm(5))))
                        .eavesOverhang(level(mm(150)))
                        .attempt()
                        .problems())
                .extracting(Problem::message)
                .containsExactly(
                        "length must be above 0 mm and at most 1000000 mm, but was 0 mm",
                        "span must be above 0 mm and at most 1000000 mm, but was -5000 mm",
                        "apex height must be above the plate height of 2000 mm, but was 1000 mm");
    }

    @Test
    void the_overhang_must_be_shorter_than_half_the_span() {
        Roofs.DuoPitch sizes = Roofs.duoPitch()
                .length(metres(6))
                .span(metres(5))
                .slope(Slope.of(pitch("40°")))
                .eavesOverhang(level(metres(2.5)));

        assertThatThrownBy(sizes::build)
                .hasMessage("eaves overhang must be shorter than the run of 2500 mm, but was 2500 mm level");
    }

    @Test
    void equal_sizes_make_equal_roofs() {
        assertThat(garage()).isEqualTo(garage()).hasSameHashCodeAs(garage());
        assertThat(garage().faces()).isEqualTo(garage().faces());
        assertThat(garage().edges()).isEqualTo(garage().edges());
        assertThat(garage().face("front")).isNotEqualTo(garage().face("back"));
    }

    @Test
    void a_roof_survives_being_written_to_a_stream() throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(garage());
        }
        Roof back;
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            back = (Roof) in.readObject();
        }

        assertThat(back).isEqualTo(garage());
        assertThat(back.between("front", "back").faces()).containsExactlyElementsOf(back.faces());
        assertThat(back.face("front").working().toText())
                .isEqualTo(garage().face("front").working().toText());
    }
}
