package org.roofmaths.roof.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.degrees;
import static org.roofmaths.units.Quantities.level;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.Severity;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.roof.End;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.roof.MeetingLine;
import org.roofmaths.roof.Roof;
import org.roofmaths.roof.RoofEdge;
import org.roofmaths.roof.RoofEnd;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.roof.RoofLine;
import org.roofmaths.roof.Roofs;
import org.roofmaths.roof.Slope;
import org.roofmaths.roof.SpacePoint;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Tolerance;

/** What the documents promise of roofs, asked through the public methods alone. */
class RoofSpecTest {
    private static final Roof SHED = Roofs.leanTo()
            .wallLength(metres(4.6))
            .projection(metres(2.7))
            .slope(Slope.of(pitch("32°")))
            .eavesOverhang(level(mm(150)))
            .build();

    @Test
    void the_face_is_measured_from_fascia_to_apex_and_verge_to_verge() {
        double slope = 2850 / Math.cos(Math.toRadians(32));

        assertThat(SHED.face("main").slopeLength()).isEqualTo(mm(slope));
        assertThat(SHED.areaAlongSlope().toSquareMetres()).isCloseTo(4.6 * slope / 1000, within(5e-9)); // 1 nm on 4.6 m
        assertThat(SHED.areaOnPlan().toSquareMetres()).isCloseTo(4.6 * 2.85, within(1e-12));
    }

    @Test
    void left_and_right_are_as_seen_from_outside_looking_up_the_slope() {
        Roof roof = Roofs.duoPitch()
                .length(metres(6))
                .span(metres(5))
                .slope(Slope.of(pitch("40°")))
                .eavesOverhang(level(mm(150)))
                .left(RoofEnd.verge(level(mm(50))))
                .right(RoofEnd.abutment())
                .build();

        assertThat(roof.face("front").edge(EdgeKind.VERGE, End.LEFT).name()).isEqualTo("front left verge");
        assertThat(roof.face("back").edge(EdgeKind.VERGE, End.RIGHT).name()).isEqualTo("back right verge");
        assertThat(roof.face("front").edge(EdgeKind.SIDE_ABUTMENT, End.RIGHT).name())
                .isEqualTo("front right side abutment");
        assertThat(roof.face("back").edge(EdgeKind.SIDE_ABUTMENT, End.LEFT).name())
                .isEqualTo("back left side abutment");
    }

    @Test
    void a_sloping_edge_runs_from_its_lower_end_to_its_upper_end() {
        for (RoofEdge edge : SHED.edges()) {
            assertThat(edge.from().height()).isLessThanOrEqualTo(edge.to().height());
        }
    }

    @Test
    void angles_inside_and_outside_are_a_full_turn() {
        RoofEdge ridge = Roofs.duoPitch()
                .length(metres(6))
                .span(metres(5))
                .slope(Slope.of(pitch("7 in 12")))
                .eavesOverhang(level(mm(150)))
                .build()
                .between("front", "back");

        assertThat(ridge.angleInside().plus(ridge.angleOutside())).isEqualTo(degrees(360));
    }

    @Test
    void the_corners_of_a_face_go_against_the_clock_from_the_left_end_of_the_eaves() {
        List<SpacePoint> corners = SHED.face("main").polygon();

        assertThat(corners).hasSize(4);
        assertThat(corners.get(0).x()).isLessThan(corners.get(1).x());
        assertThat(corners.get(0).height())
                .isEqualTo(corners.get(1).height())
                .isLessThan(corners.get(2).height());
        assertThat(corners.get(2).x()).isGreaterThan(corners.get(3).x());
    }

    @Test
    void where_pitch_and_heights_disagree_the_heights_rule_and_it_is_said() {
        Attempt<Roof> roof = Roofs.leanTo()
                .wallLength(metres(5.2))
                .projection(metres(3))
                .slope(Slope.both(pitch("32°"), metres(2.3), metres(4.175), Tolerance.of(mm(5))))
                .eavesOverhang(level(mm(150)))
                .attempt();

        assertThat(roof.problems()).extracting(Problem::severity).containsExactly(Severity.NOTICE);
        assertThat(roof.orThrow().problems()).isEqualTo(roof.problems());
        RoofFace main = roof.orThrow().face("main");
        assertThat(main.pitch()).isEqualTo(Pitch.ofRiseAndRun(mm(1875), mm(3000)));
        assertThat(main.slopeLength(RoofLine.PLATE, RoofLine.APEX).value()).isEqualTo(mm(Math.hypot(1875, 3000)));
    }

    @Test
    void a_face_as_found_keeps_both_its_ends() {
        FlatShape face = FlatShape.of(Ends.of(mm(3459), mm(3441)), mm(6100));

        assertThat(face.slopeLengths()).isEqualTo(Ends.of(mm(3459), mm(3441)));
        assertThat(face.slopeLengthAt(mm(3050))).isEqualTo(mm(3450));
    }

    @Test
    void a_hip_of_equal_slopes_over_a_square_corner_is_root_two_runs_long_on_plan() {
        MeetingLine hip = MeetingLine.of(pitch("35°"), pitch("35°"), degrees(90));

        assertThat(hip.planLengthPerRun().toDouble()).isCloseTo(Math.sqrt(2), within(1e-15 * 4));
        // cos of the angle inside = −cos² of the pitch
        assertThat(hip.angleInside().cos()).isCloseTo(-Math.pow(Math.cos(Math.toRadians(35)), 2), within(1e-15 * 8));
    }
}
