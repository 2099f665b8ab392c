package org.roofmaths.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.level;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.onSlope;
import static org.roofmaths.units.Quantities.pitch;
import static org.roofmaths.units.Quantities.squareToSlope;

import org.junit.jupiter.api.Test;
import org.roofmaths.problem.Problem;
import org.roofmaths.units.Length;
import org.roofmaths.units.Offset;

class RoofShapesTest {
    private static final double C35 = Math.cos(Math.toRadians(35));
    private static final double T35 = Math.tan(Math.toRadians(35));
    private static final Offset NONE = Offset.level(Length.ZERO);
    /** Corners are stored to the nanometre; a few of them in a length of some metres. */
    private static final double STORED_MM = 1e-5;

    private static void isSound(Roof roof) {
        assertThat(roof.working().disagreements()).isEmpty();
        roof.faces().forEach(face -> assertThat(face.working().disagreements()).isEmpty());
        roof.edges().forEach(edge -> assertThat(edge.working().disagreements()).isEmpty());
    }

    @Test
    void a_hipped_roof_stands_out_all_round() {
        Roof roof = Roofs.hipped()
                .length(metres(12))
                .span(metres(8))
                .slope(Slope.of(pitch("35°")))
                .eavesOverhang(level(mm(300)))
                .build();

        assertThat(roof.faces()).extracting(RoofFace::name).containsExactly("front", "right", "back", "left");
        assertThat(roof.areaAlongSlope().toSquareMetres()).isCloseTo(12.6 * 8.6 / C35, within(1e-6));
        assertThat(roof.between("front", "back").trueLength().toMillimetres()).isCloseTo(4000, within(STORED_MM));
        assertThat(roof.highestHeight().toMillimetres()).isCloseTo(4000 * T35, within(STORED_MM));
        assertThat(roof.plan().side("front").from()).isEqualTo(PlanPoint.of(mm(-300), mm(-300)));
        assertThat(roof)
                .hasToString(
                        "hipped at 35°: 4 faces \"front\", \"right\", \"back\", \"left\", 132.28 m² along the slope");
        isSound(roof);
    }

    @Test
    void a_hip_end_of_its_own_pitch_keeps_plates_and_fascias_level() {
        Roof roof = Roofs.hipped()
                .length(metres(12))
                .span(metres(8))
                .slope(Slope.of(pitch("35°")))
                .eavesOverhang(level(mm(300)))
                .pitch("right", pitch("50°"))
                .build();
        double t50 = Math.tan(Math.toRadians(50));
        RoofFace end = roof.face("right");

        assertThat(end.eavesOverhang()).isEqualTo(mm(300 * T35 / t50));
        assertThat(end.fasciaHeight()).isEqualTo(roof.face("front").fasciaHeight());
        assertThat(end.run().toMillimetres()).isCloseTo(4000 * T35 / t50, within(STORED_MM));
        assertThat(end.eavesOverhangFigure().weakestProvenance()).isEmpty();
        isSound(roof);
    }

    @Test
    void a_gable_end_takes_its_own_overhang() {
        Roof roof = Roofs.hipped()
                .length(metres(12))
                .span(metres(8))
                .slope(Slope.of(pitch("35°")))
                .eavesOverhang(NONE)
                .end("left", RoofEnd.verge(level(mm(100))))
                .end("back", RoofEnd.abutment())
                .build();

        assertThat(roof.plan().side("left").from().x()).isEqualTo(mm(-100));
        assertThat(roof.edges(EdgeKind.VERGE)).extracting(RoofEdge::name).containsExactly("front left verge");
        assertThat(roof.edges(EdgeKind.TOP_ABUTMENT)).hasSize(1);
        isSound(roof);
    }

    @Test
    void a_pyramid_has_four_equal_slopes() {
        Roof roof = Roofs.pyramid()
                .span(metres(6))
                .slope(Slope.of(pitch("50°")))
                .eavesOverhang(NONE)
                .build();
        double c50 = Math.cos(Math.toRadians(50));
        double t50 = Math.tan(Math.toRadians(50));

        roof.faces()
                .forEach(face ->
                        assertThat(face.areaAlongSlope().toSquareMetres()).isCloseTo(9 / c50, within(1e-7)));
        assertThat(roof.between("front", "right").trueLength().toMillimetres())
                .isCloseTo(3000 * Math.sqrt(2 + t50 * t50), within(STORED_MM));
        isSound(roof);
    }

    @Test
    void an_octagon_by_its_height() {
        Roof roof = Roofs.regular(8)
                .toPlateLine(metres(3))
                .slope(Slope.heights(metres(2), metres(4)))
                .eavesOverhang(NONE)
                .build();

        assertThat(roof.faces()).hasSize(8);
        RoofEdge hip = roof.between("1", "2");
        assertThat(hip.planLength().toMillimetres()).isCloseTo(3000 / Math.cos(Math.PI / 8), within(STORED_MM));
        // eight triangles of half perimeter times slant height
        double side = 2 * 3 * Math.tan(Math.PI / 8);
        assertThat(roof.areaAlongSlope().toSquareMetres()).isCloseTo(4 * side * Math.sqrt(13), within(1e-6));
        isSound(roof);
    }

    @Test
    void an_l_shape_has_one_valley() {
        Roof roof = Roofs.lShape()
                .length(metres(12))
                .span(metres(6))
                .wingProjection(metres(7))
                .wingSpan(metres(5))
                .slope(Slope.of(pitch("35°")))
                .eavesOverhang(NONE)
                .end("wing end", RoofEnd.verge())
                .build();

        RoofEdge valley = roof.between("inner back", "inner right");
        assertThat(valley.kind()).isEqualTo(EdgeKind.VALLEY);
        assertThat(valley.trueLength().toMillimetres()).isCloseTo(2500 * Math.sqrt(2 + T35 * T35), within(STORED_MM));
        assertThat(roof.areaAlongSlope().toSquareMetres()).isCloseTo(107 / C35, within(1e-6));
        assertThat(roof.edges(EdgeKind.VERGE)).hasSize(2);
        isSound(roof);
    }

    @Test
    void a_t_shape_of_equal_spans_has_two_valleys_up_to_one_ridge() {
        // 14 by 9 with a wing 9 wide running 6 back, gables all round
        Roof roof = Roofs.tShape()
                .length(metres(14))
                .span(metres(9))
                .wingProjection(metres(6))
                .wingSpan(metres(9))
                .slope(Slope.of(pitch("35°")))
                .eavesOverhang(NONE)
                .end("right", RoofEnd.verge())
                .end("left", RoofEnd.verge())
                .end("wing end", RoofEnd.verge())
                .build();

        assertThat(roof.areaAlongSlope().toSquareMetres()).isCloseTo((14 * 9 + 9 * 6) / C35, within(1e-6));
        assertThat(roof.edges(EdgeKind.VALLEY))
                .hasSize(2)
                .allSatisfy(valley -> assertThat(valley.trueLength().toMillimetres())
                        .isCloseTo(4500 * Math.sqrt(2 + T35 * T35), within(STORED_MM)));
        assertThat(roof.between("wing right", "wing left").trueLength().toMillimetres())
                .isCloseTo(6000 + 4500, within(STORED_MM));
        isSound(roof);
    }

    @Test
    void reports_everything_that_is_wrong_at_once() {
        assertThat(Roofs.lShape()
                        .length(metres(5))
                        .span(metres(-6))
                        .wingProjection(mm(0))
                        .wingSpan(metres(5))
                        .slope(Slope.of(pitch("35°")))
                        .eavesOverhang(squareToSlope(mm(1)))
                        .end("wing", RoofEnd.verge(onSlope(mm(50))))
                        .attempt()
                        .problems())
                .extracting(Problem::message)
                .containsExactly(
                        "span must be above 0 mm and at most 1000000 mm, but was -6000 mm",
                        "wing projection must be above 0 mm and at most 1000000 mm, but was 0 mm",
                        "wing span must be less than the length of 5000 mm, but was 5000 mm",
                        "eaves overhang must be measured level, plumb or on the slope, but was 1 mm square to the slope",
                        "side must be one of front, right, inner back, inner right, wing end, left, but was \"wing\"",
                        "overhang of side \"wing\" must be measured level, but was 50 mm on the slope");
        assertThat(Roofs.regular(2)
                        .toPlateLine(mm(-1))
                        .slope(Slope.of(pitch("35°")))
                        .eavesOverhang(NONE)
                        .attempt()
                        .problems())
                .extracting(Problem::message)
                .containsExactly(
                        "number of sides must be from 3 to 360, but was 2",
                        "distance to the plate line must be above 0 mm and at most 1000000 mm, but was -1 mm");
    }
}
