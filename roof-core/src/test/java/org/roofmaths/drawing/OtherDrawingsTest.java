package org.roofmaths.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.roofmaths.units.Quantities.level;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.roofmaths.flashing.CoverFlashing;
import org.roofmaths.flashing.Demands;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.End;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.roof.Roof;
import org.roofmaths.roof.RoofEnd;
import org.roofmaths.roof.Roofs;
import org.roofmaths.roof.Slope;
import org.roofmaths.settingout.EavesSection;
import org.roofmaths.settingout.FaceLayout;
import org.roofmaths.settingout.Samples;
import org.w3c.dom.Element;

class OtherDrawingsTest {
    private static final Roof GARAGE = Roofs.duoPitch()
            .length(metres(6))
            .span(metres(5))
            .slope(Slope.of(pitch("40°")))
            .eavesOverhang(level(mm(150)))
            .left(RoofEnd.verge(level(mm(50))))
            .right(RoofEnd.verge(level(mm(50))))
            .build();

    private static Map<String, List<Double>> printed(Picture picture) {
        return picture.dimensions().stream()
                .collect(Collectors.groupingBy(
                        dimension -> dimension.getAttribute("data-name"),
                        Collectors.mapping(Picture::printed, Collectors.toList())));
    }

    private static List<String> labels(Picture picture) {
        return picture.all("text").stream()
                .filter(text -> text.getAttribute("class").equals("label"))
                .map(Element::getTextContent)
                .toList();
    }

    @Test
    void a_plan_shows_edges_falls_and_sizes() {
        Drawing drawing = PlanDrawing.of("tollbar", GARAGE, DrawingScale.of(50));
        Picture picture = PictureChecks.check(drawing);

        assertThat(printed(picture))
                .containsEntry("eaves", List.of(6100.0, 6100.0)) // 6000 and 50 at each verge
                .containsEntry("", List.of(5300.0)); // 5000 and 150 at each eaves
        long verge = Math.round(2650 / Math.cos(Math.toRadians(40)));
        assertThat(labels(picture))
                .containsExactlyInAnyOrder(
                        "front 40.0°",
                        "back 40.0°",
                        "ridge 6100",
                        "verge " + verge,
                        "verge " + verge,
                        "verge " + verge,
                        "verge " + verge);
        assertThat(drawing.description()).contains("front at 40.0°").contains("ridge front/back 6100 mm");
    }

    @Test
    void falls_point_down_the_slope() {
        List<Arrow> falls = PlanDrawing.of("tollbar", GARAGE, DrawingScale.of(50))
                .shapes()
                .filter(shape -> shape instanceof Arrow)
                .map(shape -> (Arrow) shape)
                .toList();
        assertThat(falls).hasSize(2);
        assertThat(falls.get(0).to().y())
                .isLessThan(falls.get(0).from().y()); // the front falls to its eaves, towards the reader
        assertThat(falls.get(1).to().y()).isGreaterThan(falls.get(1).from().y());
    }

    @Test
    void a_plan_of_a_lean_to_shows_the_walls() {
        Roof leanTo = Roofs.leanTo()
                .wallLength(metres(5.2))
                .projection(metres(3))
                .slope(Slope.of(pitch("32°")))
                .eavesOverhang(level(mm(150)))
                .left(RoofEnd.abutment())
                .right(RoofEnd.verge(level(mm(45))))
                .build();
        Picture picture = PictureChecks.check(PlanDrawing.of("fernside", leanTo, DrawingScale.of(50)));
        assertThat(labels(picture)).contains("top abutment 5245", "side abutment 3714", "verge 3714");
    }

    private static EavesParts eavesParts(EavesSection section) {
        return EavesParts.builder()
                .section(section)
                .rafterDepth(mm(150))
                .eavesOverhang(mm(150))
                .plateWidth(mm(100))
                .fasciaThickness(mm(22))
                .fasciaDepth(mm(200))
                .gutterWidth(mm(112))
                .build();
    }

    @Test
    void the_eaves_are_drawn_to_the_sizes_of_the_layout() {
        EavesSection section = EavesSection.of(pitch("40°"), mm(25), mm(6));
        Picture picture = PictureChecks.check(
                SectionDrawing.eaves("front", FaceDrawingTest.GARAGE, eavesParts(section), DrawingScale.of(5)));

        assertThat(printed(picture))
                .containsEntry("eaves overhang", List.of(150.0))
                .containsEntry("fascia over rafters", List.of((double)
                        Math.round(section.fasciaHeightPlumb().toMillimetres())))
                .containsEntry("gauge", List.of((double) Math.round(FaceDrawingTest.GARAGE
                        .courses()
                        .orThrow()
                        .gauge()
                        .left()
                        .toMillimetres())))
                .containsEntry("overhang", List.of(50.0))
                .containsEntry("", List.of(150.0));
        assertThat(picture.polygons("under-eaves-unit")).isEqualTo(1);
        PictureChecks.check(
                SectionDrawing.eaves("main", FaceDrawingTest.LEAN_TO, eavesParts(section), DrawingScale.of(10)));
    }

    @Test
    void the_ridge_is_the_same_on_both_sides() {
        Picture picture = PictureChecks.check(SectionDrawing.ridge(
                "front",
                FaceDrawingTest.GARAGE,
                new RidgeParts(mm(150), mm(25), mm(200), mm(15)),
                DrawingScale.of(10)));

        assertThat(printed(picture))
                .containsEntry("top distance", List.of(60.0))
                .containsEntry("ridge unit", List.of(200.0));
        assertThat(picture.polygons("ridge-unit")).isEqualTo(2);
        assertThat(picture.polygons("rafter")).isEqualTo(2);
        assertThat(picture.polygons("unit") % 2).isZero();
    }

    @Test
    void the_abutment_shows_upstand_cover_and_tuck() {
        Picture picture = PictureChecks.check(SectionDrawing.abutment(
                "main",
                FaceDrawingTest.LEAN_TO,
                new AbutmentParts(mm(150), mm(103), mm(75), mm(150), mm(25)),
                DrawingScale.of(5)));
        assertThat(printed(picture))
                .containsEntry("upstand", List.of(75.0))
                .containsEntry("cover", List.of(150.0))
                .containsEntry("tuck", List.of(25.0))
                .containsEntry("top distance", List.of(30.0))
                .containsEntry("gauge", List.of(335.0));
    }

    @Test
    void the_verge_shows_the_overhang_got() {
        VergeParts parts = new VergeParts(mm(103), mm(47), mm(150), mm(5));
        Picture right = PictureChecks.check(
                SectionDrawing.verge("main", FaceDrawingTest.LEAN_TO, End.RIGHT, parts, DrawingScale.of(5)));
        assertThat(printed(right)).containsEntry("overhang", List.of(45.0));
        Picture left = PictureChecks.check(
                SectionDrawing.verge("front", FaceDrawingTest.GARAGE, End.LEFT, parts, DrawingScale.of(5)));
        assertThat(printed(left)).containsEntry("overhang", List.of(50.0));
        assertThatThrownBy(() ->
                        SectionDrawing.verge("main", FaceDrawingTest.LEAN_TO, End.LEFT, parts, DrawingScale.of(5)))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("layout must have columns and a verge at the left, but was a wall there");
    }

    @Test
    void a_section_needs_a_pitch() {
        FaceLayout flat = FaceLayout.on(FlatShape.rectangle(mm(6100), mm(3459)), Samples.TOLLBAR);
        assertThatThrownBy(() -> SectionDrawing.ridge(
                        "front", flat, new RidgeParts(mm(150), mm(0), mm(200), mm(15)), DrawingScale.of(10)))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("layout must have courses and battens, and know its pitch, but was no pitch");
    }

    @Test
    void a_piece_of_sheet_shows_its_folds() {
        CoverFlashing flashing = CoverFlashing.along(metres(1.2), Demands.WALL);
        Drawing drawing = SheetDrawing.of(
                "cover flashing, piece 1", flashing.template(flashing.pieces().get(0)), DrawingScale.of(10));
        Picture picture = PictureChecks.check(drawing);

        assertThat(printed(picture))
                .containsEntry("length", List.of(1200.0))
                .containsEntry("girth", List.of(150.0 + 75 + 25))
                .containsEntry("", List.of(150.0, 150.0 + 75)); // where it is folded, from the free edge
        assertThat(labels(picture)).containsExactlyInAnyOrder("cover to upstand", "upstand to tuck");
    }
}
