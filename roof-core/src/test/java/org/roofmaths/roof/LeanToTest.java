package org.roofmaths.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.roofmaths.units.Quantities.level;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.onSlope;
import static org.roofmaths.units.Quantities.pitch;
import static org.roofmaths.units.Quantities.plumb;
import static org.roofmaths.units.Quantities.squareToSlope;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.problem.Severity;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Length;
import org.roofmaths.units.Offset;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Tolerance;
import org.roofmaths.working.Worked;

class LeanToTest {
    private static final double COS_32 = StrictMath.cos(StrictMath.toRadians(32));
    private static final double TAN_32 = StrictMath.tan(StrictMath.toRadians(32));

    // Sizes invented for these tests.
    private static Roofs.LeanTo fernside(Slope slope) {
        return Roofs.leanTo()
                .wallLength(metres(5.2))
                .projection(metres(3))
                .slope(slope)
                .eavesOverhang(level(mm(150)))
                .left(RoofEnd.abutment())
                .right(RoofEnd.verge(level(mm(45))));
    }

    private static Roof shed() {
        return Roofs.leanTo()
                .wallLength(metres(4.6))
                .projection(metres(2.7))
                .slope(Slope.of(pitch("32°")))
                .eavesOverhang(level(mm(150)))
                .build();
    }

    @Test
    void has_one_face_from_fascia_to_apex() {
        RoofFace main = shed().face("main");

        assertThat(main.pitch()).isEqualTo(Pitch.ofDegrees(32));
        assertThat(main.slopeLength()).isEqualTo(mm((2700 + 150) / COS_32));
        assertThat(main.eavesWidth()).isEqualTo(mm(4600));
        assertThat(main.topWidth()).isEqualTo(mm(4600));
        assertThat(main.run()).isEqualTo(mm(2700));
        assertThat(main.rise()).isEqualTo(mm(2700 * TAN_32));
        assertThat(main.eavesOverhang()).isEqualTo(mm(150));
        // area: the lengths are stored to the nanometre, 1e-9 m on a side of 4.6 m
        assertThat(main.areaAlongSlope().toSquareMetres()).isCloseTo(4.6 * 2.85 / COS_32, within(5e-9));
        assertThat(main.areaOnPlan().toSquareMetres()).isCloseTo(4.6 * 2.85, within(1e-12));
    }

    private static org.assertj.core.data.Offset<Double> within(double most) {
        return org.assertj.core.data.Offset.offset(most);
    }

    @Test
    void a_verge_adds_its_overhang_to_the_width_and_an_abutment_adds_nothing() {
        RoofFace main = fernside(Slope.of(pitch("32°"))).build().face("main");

        assertThat(main.eavesWidth()).isEqualTo(mm(5200 + 45));
    }

    @Test
    void heights_count_from_the_plate_line_unless_the_plate_has_one() {
        RoofFace main = shed().face("main");
        assertThat(main.plateHeight()).isEqualTo(Length.ZERO);
        assertThat(main.fasciaHeight()).isEqualTo(mm(-150 * TAN_32));
        assertThat(main.apexHeight()).isEqualTo(mm(2700 * TAN_32));

        RoofFace raised = fernside(Slope.of(pitch("32°")).fromPlateAt(metres(2.3)))
                .build()
                .face("main");
        assertThat(raised.plateHeight()).isEqualTo(mm(2300));
        assertThat(raised.fasciaHeight()).isEqualTo(mm(2300 - 150 * TAN_32));
        assertThat(raised.apexHeight()).isEqualTo(mm(2300 + 3000 * TAN_32));
    }

    @Test
    void two_heights_give_the_pitch() {
        RoofFace main =
                fernside(Slope.heights(metres(2.3), metres(4.175))).build().face("main");

        // a rise of 1875 on a run of 3000 is 5 in 8: slope √(5² + 8²) = √89 for a run of 8
        assertThat(main.slopeLength(RoofLine.PLATE, RoofLine.APEX).value()).isEqualTo(mm(3000 * Math.sqrt(89) / 8));
        assertThat(main.slopeLength()).isEqualTo(mm(3150 * Math.sqrt(89) / 8));
        assertThat(main.apexHeight()).isEqualTo(mm(4175));
        assertThat(main.fasciaHeight()).isEqualTo(mm(2300 - 150 * 5 / 8.0));
    }

    @Test
    void the_heights_rule_where_the_pitch_differs_within_the_tolerance_and_the_difference_is_a_notice() {
        Roof roof = fernside(Slope.both(pitch("32°"), metres(2.3), metres(4.175), Tolerance.of(mm(5))))
                .build();

        assertThat(roof.face("main").apexHeight()).isEqualTo(mm(4175));
        assertThat(roof.problems()).hasSize(1);
        Problem notice = roof.problems().get(0);
        assertThat(notice.severity()).isEqualTo(Severity.NOTICE);
        assertThat(notice.code()).isEqualTo(Slope.CONTRADICTION);
        // 3000 × tan 32° = 1874.608056
        assertThat(notice.message())
                .isEqualTo("pitch 32° puts the apex at 4174.608056 mm, 0.391944 mm below the given height of 4175 mm;"
                        + " the heights rule, so the pitch is "
                        + Pitch.ofRiseAndRun(mm(1875), mm(3000)));
    }

    @Test
    void pitch_and_heights_that_agree_are_no_news() {
        Slope agreed =
                Slope.both(Pitch.ofRiseAndRun(mm(5), mm(8)), metres(2.3), metres(4.175), Tolerance.of(Length.ZERO));

        assertThat(fernside(agreed).attempt().problems()).isEmpty();
    }

    @Test
    void a_contradiction_of_just_the_tolerance_is_a_notice_and_beyond_it_an_error() {
        // at 3 in 4, a run of 3 m rises 2250 mm
        Pitch drawn = Pitch.ofRiseAndRun(mm(3), mm(4));
        Attempt<Roof> just = fernside(Slope.both(drawn, metres(2), mm(4255), Tolerance.of(mm(5))))
                .attempt();
        Attempt<Roof> beyond = fernside(Slope.both(drawn, metres(2), mm(4256), Tolerance.of(mm(5))))
                .attempt();

        assertThat(just.hasValue()).isTrue();
        assertThat(just.problems()).extracting(Problem::severity).containsExactly(Severity.NOTICE);
        assertThat(beyond.hasValue()).isFalse();
        assertThat(beyond.problems())
                .extracting(Problem::message)
                .containsExactly("slope must have a pitch and heights that agree at the apex within 5 mm, but was "
                        + drawn + " from 2000 mm to 4256 mm, which puts the apex at 4250 mm");
        assertThat(beyond.problems().get(0).mends())
                .extracting(Object::toString)
                .containsExactly(
                        "pitch: take " + Pitch.ofRiseAndRun(mm(2256), mm(3000)) + "; agrees with the heights",
                        "apex height: take 4250 mm; agrees with the pitch");
    }

    @Test
    void slope_lengths_run_between_named_lines() {
        RoofFace main = shed().face("main");

        assertThat(main.slopeLength(RoofLine.FASCIA, RoofLine.APEX).value()).isEqualTo(main.slopeLength());
        assertThat(main.slopeLength(RoofLine.PLATE, RoofLine.APEX).value()).isEqualTo(mm(2700 / COS_32));
        assertThat(main.slopeLength(RoofLine.FASCIA, RoofLine.PLATE).value()).isEqualTo(mm(150 / COS_32));
        assertThat(main.slopeLength(RoofLine.PLATE, RoofLine.FASCIA).value()).isEqualTo(mm(-150 / COS_32));
        assertThat(main.slopeLength(RoofLine.APEX, RoofLine.FASCIA).value()).isEqualTo(mm(-2850 / COS_32));
        assertThat(main.slopeLength(RoofLine.PLATE, RoofLine.PLATE).value()).isEqualTo(Length.ZERO);
    }

    @Test
    void a_bare_face_has_no_tail_line() {
        RoofFace main = shed().face("main");

        assertThatThrownBy(() -> main.slopeLength(RoofLine.TAIL, RoofLine.APEX))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("from must be the fascia line, the plate line or the apex line, but was tail line");
        assertThatThrownBy(() -> main.slopeLength(RoofLine.PLATE, RoofLine.TAIL))
                .hasMessage("to must be the fascia line, the plate line or the apex line, but was tail line");
    }

    @Test
    void an_overhang_may_be_measured_on_the_slope_or_plumb() {
        Roof onSlope = with(onSlope(mm(150)));
        Roof plumb = with(plumb(mm(150)));

        assertThat(onSlope.face("main").eavesOverhang()).isEqualTo(mm(150 * COS_32));
        assertThat(plumb.face("main").eavesOverhang()).isEqualTo(mm(150 / TAN_32));
        assertThat(onSlope.face("main").working().disagreements()).isEmpty();
        assertThat(plumb.face("main").working().disagreements()).isEmpty();
    }

    private static Roof with(Offset overhang) {
        return Roofs.leanTo()
                .wallLength(metres(4.6))
                .projection(metres(2.7))
                .slope(Slope.of(pitch("32°")))
                .eavesOverhang(overhang)
                .build();
    }

    @Test
    void edges_carry_names_kinds_lengths_and_slopes() {
        Roof roof = fernside(Slope.of(pitch("32°"))).build();

        assertThat(roof.edges())
                .extracting(RoofEdge::name)
                .containsExactly("main eaves", "main right verge", "main top abutment", "main left side abutment");
        assertThat(roof.edges())
                .extracting(RoofEdge::kind)
                .containsExactly(EdgeKind.EAVES, EdgeKind.VERGE, EdgeKind.TOP_ABUTMENT, EdgeKind.SIDE_ABUTMENT);
        RoofEdge eaves = roof.edge("main eaves");
        assertThat(eaves.trueLength()).isEqualTo(eaves.planLength()).isEqualTo(mm(5245));
        assertThat(eaves.slopeAngle()).isEqualTo(Angle.ZERO);
        assertThat(eaves.planAngle("main")).isEqualTo(Angle.ZERO);
        assertThat(eaves.from()).isEqualTo(SpacePoint.of(mm(0), mm(-150), mm(-150 * TAN_32)));
        assertThat(eaves.to()).isEqualTo(SpacePoint.of(mm(5245), mm(-150), mm(-150 * TAN_32)));
        RoofEdge verge = roof.edge("main right verge");
        assertThat(verge.planLength()).isEqualTo(mm(3150));
        assertThat(verge.trueLength()).isEqualTo(mm(3150 / COS_32));
        assertThat(verge.slopeAngle()).isEqualTo(Angle.ofDegrees(32));
        assertThat(verge.planAngle("main")).isEqualTo(Angle.ofDegrees(90));
        assertThat(verge.from().height()).isLessThan(verge.to().height());
        RoofEdge top = roof.edge("main top abutment");
        assertThat(top.from().x()).isLessThan(top.to().x());
        assertThat(roof.lengthOf(EdgeKind.SIDE_ABUTMENT)).isEqualTo(mm(3150 / COS_32));
        assertThat(roof.lengthOf(EdgeKind.HIP)).isEqualTo(Length.ZERO);
    }

    @Test
    void a_face_knows_its_edges_by_kind_and_end() {
        RoofFace main = fernside(Slope.of(pitch("32°"))).build().face("main");

        assertThat(main.edges())
                .extracting(RoofEdge::name)
                .startsWith("main eaves")
                .hasSize(4);
        assertThat(main.edge(EdgeKind.EAVES).name()).isEqualTo("main eaves");
        assertThat(main.edge(EdgeKind.VERGE, End.RIGHT).name()).isEqualTo("main right verge");
        assertThat(main.edge(EdgeKind.SIDE_ABUTMENT, End.LEFT).name()).isEqualTo("main left side abutment");
        assertThatThrownBy(() -> main.edge(EdgeKind.VERGE, End.LEFT))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("edge must be one; the face has main eaves, main right verge, main top abutment,"
                        + " main left side abutment, but was 0 edges with \"verge at the left\" on face \"main\"");
    }

    @Test
    void an_edge_beside_one_face_has_no_angle_between_faces() {
        RoofEdge verge = fernside(Slope.of(pitch("32°"))).build().edge("main right verge");

        assertThatThrownBy(verge::angleInside)
                .isInstanceOf(ProblemsException.class)
                .hasMessage("edge must lie between two faces to have an angle between them,"
                        + " but was \"main right verge\", beside one face");
    }

    @Test
    void the_face_laid_flat_is_a_rectangle_that_knows_its_pitch() {
        FlatShape flat = shed().face("main").flatShape();

        assertThat(flat.slopeLengths()).isEqualTo(Ends.both(mm(2850 / COS_32)));
        assertThat(flat.eavesWidth()).isEqualTo(mm(4600));
        assertThat(flat.topWidth()).isEqualTo(mm(4600));
        assertThat(flat.pitch()).contains(Pitch.ofDegrees(32));
    }

    @Test
    void water_runs_off_away_from_the_wall() {
        assertThat(shed().face("main").downSlope()).isEqualTo(Angle.ofDegrees(270));
    }

    @Test
    void the_pitch_from_two_heights_shows_in_the_working_of_the_slope_length() {
        RoofFace main = Roofs.leanTo()
                .wallLength(metres(5))
                .projection(metres(4))
                .slope(Slope.heights(metres(2), metres(5)))
                .eavesOverhang(level(Length.ZERO))
                .build()
                .face("main");

        Worked<Length> slope = main.working().at(RoofFace.SLOPE_LENGTH);
        assertThat(slope.working().toText()).isEqualTo("""
                slope length, fascia to apex = run, fascia to apex ÷ cos(rafter pitch)
                  run, fascia to apex = run, plate to apex + eaves overhang, level
                    run, plate to apex = projection
                      projection = 4000 mm  (given)
                    = 4000 mm
                    eaves overhang, level = 0 mm  (given)
                  = 4000 mm
                  rafter pitch = arctan((apex height − plate height) ÷ run, plate to apex)
                    apex height = 5000 mm  (given)
                    plate height = 2000 mm  (given)
                    run, plate to apex = 4000 mm  (above)
                  = %s
                = 5000 mm
                """.formatted(main.pitch()));
    }

    @Test
    void every_step_of_every_working_agrees_with_its_formula() {
        Roof roof = fernside(Slope.heights(metres(2.3), metres(4.175))).build();

        assertThat(roof.working().disagreements()).isEmpty();
        roof.faces().forEach(face -> assertThat(face.working().disagreements()).isEmpty());
        roof.edges().forEach(edge -> assertThat(edge.working().disagreements()).isEmpty());
        assertThat(roof.face("main")
                        .slopeLength(RoofLine.APEX, RoofLine.FASCIA)
                        .working()
                        .disagreements())
                .isEmpty();
    }

    @Test
    void prints_a_summary_a_builder_understands() {
        assertThat(shed()).hasToString("lean-to at 32°: 1 face \"main\", 15.46 m² along the slope");
        assertThat(shed().face("main")).hasToString("main: 15.46 m² along the slope at 32°, slope length 3360.66 mm");
        assertThat(shed().edge("main eaves")).hasToString("main eaves: 4600 mm");
        assertThat(shed().edge("main left verge")).hasToString("main left verge: 3360.66 mm, 2850 mm on plan");
    }

    @Test
    void reports_everything_that_is_wrong_at_once() {
        Attempt<Roof> roof = Roofs.leanTo()
                .wallLength(metres(-1))
                .projection(mm(1e9))
                .slope(Slope.heights(metres(3), metres(2)))
                .eavesOverhang(squareToSlope(mm(-150)))
                .left(RoofEnd.verge(onSlope(mm(50))))
                .right(RoofEnd.verge(level(mm(-50))))
                .attempt();

        assertThat(roof.hasValue()).isFalse();
        assertThat(roof.problems())
                .extracting(Problem::message)
                .containsExactly(
                        "wall length must be above 0 mm and at most 1000000 mm, but was -1000 mm",
                        "projection must be above 0 mm and at most 1000000 mm, but was 1000000000 mm",
                        "verge overhang at the left must be measured level, but was 50 mm on the slope",
                        "verge overhang at the right must be from 0 mm to 1000000 mm, but was -50 mm",
                        "eaves overhang must be measured level, plumb or on the slope, but was -150 mm square to the slope",
                        "eaves overhang must be 0 mm or more, but was -150 mm square to the slope",
                        "apex height must be above the plate height of 3000 mm, but was 2000 mm");
    }

    @Test
    void refuses_an_overhang_longer_than_the_run() {
        Roofs.LeanTo sizes = Roofs.leanTo()
                .wallLength(metres(4))
                .projection(metres(3))
                .slope(Slope.of(pitch("30°")))
                .eavesOverhang(level(metres(3.5)));

        assertThatThrownBy(sizes::build)
                .isInstanceOf(ProblemsException.class)
                .hasMessage("eaves overhang must be shorter than the run of 3000 mm, but was 3500 mm level");
    }

    @Test
    void refuses_a_rise_beyond_a_kilometre() {
        Roofs.LeanTo sizes = Roofs.leanTo()
                .wallLength(metres(4))
                .projection(metres(3))
                .slope(Slope.of(pitch("89.999°")))
                .eavesOverhang(level(mm(0)));

        assertThatThrownBy(sizes::build)
                .hasMessage("pitch must give a rise of at most 1000000 mm over a run of 3000 mm, but was 89.999°");
    }

    @Test
    void refuses_heights_beyond_a_kilometre() {
        Roofs.LeanTo sizes = Roofs.leanTo()
                .wallLength(metres(4))
                .projection(metres(3))
                .slope(Slope.heights(mm(-2e6), mm(2e6)))
                .eavesOverhang(level(mm(0)));

        assertThatThrownBy(sizes::build)
                .hasMessage("plate height must be from -1000000 mm to 1000000 mm, but was -2000000 mm\n"
                        + "apex height must be from -1000000 mm to 1000000 mm, but was 2000000 mm");
    }

    @Test
    void a_pitch_that_is_none_is_refused_before_it_can_reach_a_roof() {
        for (double degrees : List.of(0.0, 90.0, -5.0, Double.NaN)) {
            assertThatThrownBy(() -> Slope.of(Pitch.ofDegrees(degrees)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageStartingWith("pitch must be above 0° and below 90°, but was ");
        }
    }

    @Test
    void null_is_refused_by_name() {
        assertThatThrownBy(() -> Slope.of((Pitch) null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("pitch");
        assertThatThrownBy(() -> Roofs.leanTo()
                        .wallLength(metres(1))
                        .projection(null)
                        .slope(Slope.of(pitch("30°")))
                        .eavesOverhang(level(mm(0))))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("projection");
        assertThatThrownBy(() -> RoofEnd.verge(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("overhang");
    }

    @Test
    void asks_for_a_face_or_an_edge_that_exists() {
        Roof roof = shed();

        assertThatThrownBy(() -> roof.face("back"))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("face must be one of main, but was \"back\"");
        assertThatThrownBy(() -> roof.edge("ridge"))
                .hasMessage("edge must be one of main eaves, main right verge, main top abutment, main left verge,"
                        + " but was \"ridge\"");
        assertThatThrownBy(() -> roof.between("main", "main"))
                .hasMessage("edge between \"main\" and \"main\" must be one; faces meet in no edge, but was 0 edges");
        assertThatThrownBy(() -> roof.edge("main eaves").planAngle("back"))
                .hasMessage("face must be one of main, but was \"back\"");
    }
}
