package org.roofmaths.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.mm;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.FacePoint;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.settingout.Columns;
import org.roofmaths.settingout.FaceEnd;
import org.roofmaths.settingout.FaceLayout;
import org.roofmaths.settingout.LayoutScheme;
import org.roofmaths.settingout.Opening;
import org.roofmaths.settingout.PieceKind;
import org.roofmaths.settingout.Samples;
import org.roofmaths.settingout.UnitCount;
import org.roofmaths.settingout.UnitCounts;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.w3c.dom.Element;

class FaceDrawingTest {
    private static final Pitch PITCH = Pitch.ofRiseAndRun(mm(1875), mm(3000));
    static final FaceLayout LEAN_TO = FaceLayout.on(
            FlatShape.rectangle(mm(5245), PITCH.slopeOver(mm(3150))).withPitch(PITCH), Samples.FERNSIDE);
    static final FaceLayout GARAGE = FaceLayout.on(
            FlatShape.of(Ends.of(mm(3459), mm(3441)), mm(6100)).withPitch(Pitch.ofDegrees(40)), Samples.TOLLBAR);

    @Test
    void shows_every_unit_of_the_layout_once() {
        for (FaceLayout layout : List.of(LEAN_TO, GARAGE)) {
            Drawing drawing = FaceDrawing.of("front", layout, DrawingScale.of(25));
            Picture picture = PictureChecks.check(drawing);

            UnitCounts counts = layout.counts().orThrow();
            for (PieceKind kind : PieceKind.values()) {
                assertThat(picture.polygons(kind.toString().replace(' ', '-')))
                        .as(kind.toString())
                        .isEqualTo(counts.count(kind));
                assertThat(drawing.count(kind.toString())).isEqualTo(counts.count(kind));
            }
            assertThat(counts.lines().stream().mapToLong(UnitCount::count).sum())
                    .isPositive();
        }
    }

    @Test
    void prints_the_sizes_of_the_face() {
        Picture picture = PictureChecks.check(FaceDrawing.of("front", GARAGE, DrawingScale.of(50)));

        assertThat(named(picture, "width")).containsExactly(6100.0);
        assertThat(named(picture, "slope")).containsExactly(3459.0, 3441.0); // left, then right
        assertThat(named(picture, "overhang")).containsExactly(50.0);
        assertThat(named(picture, "first")).containsExactly((double)
                Math.round(GARAGE.courses().orThrow().firstLine().left().toMillimetres()));
        assertThat(named(picture, "")).contains(250.0, 375.0); // a slate, a slate-and-a-half
    }

    private static List<Double> named(Picture picture, String name) {
        return picture.dimensions().stream()
                .filter(dimension -> dimension.getAttribute("data-name").equals(name))
                .map(Picture::printed)
                .toList();
    }

    @Test
    void prints_every_mark_of_the_courses_beside_its_line() {
        Picture picture = PictureChecks.check(FaceDrawing.of("main", LEAN_TO, DrawingScale.of(25)));
        List<Length> marks = LEAN_TO.courses().orThrow().marks().left();

        List<Element> left = picture.all("text").stream()
                .filter(text -> text.getAttribute("class").equals("label")
                        && text.getAttribute("text-anchor").equals("end"))
                .toList();
        assertThat(left.stream().map(Element::getTextContent))
                .containsExactlyElementsOf(
                        marks.stream().map(FaceDrawing::number).toList());
        // the labels stand as far apart on paper as the marks do on the roof
        double apart = (Picture.number(left.get(0), "y") - Picture.number(left.get(10), "y")) * picture.scale();
        // two coordinates, each written to 0.01 mm of paper
        assertThat(apart).isCloseTo(marks.get(10).minus(marks.get(0)).toMillimetres(), within(0.01 * picture.scale()));
    }

    @Test
    void prints_every_second_mark_where_marks_are_close() {
        Drawing drawing = FaceDrawing.of("front", GARAGE, DrawingScale.of(100));
        PictureChecks.check(drawing);
        assertThat(drawing.notes())
                .contains("Of the marks, each second is printed, the last one always.")
                .anySatisfy(note -> assertThat(note)
                        .startsWith("finding: the under-eaves course and the first full course lie 29 mm apart"));
        String last =
                FaceDrawing.number(GARAGE.courses().orThrow().marks().left().get(16));
        assertThat(drawing.toSvg()).contains(">" + last + "<");
    }

    @Test
    void prints_the_marks_of_the_columns() {
        Picture picture = PictureChecks.check(FaceDrawing.of("main", LEAN_TO, DrawingScale.of(20)));
        Columns columns = LEAN_TO.columns().orThrow();
        List<String> labels = picture.all("text").stream()
                .filter(text -> text.getAttribute("class").equals("label"))
                .map(Element::getTextContent)
                .toList();
        List<String> marks = columns.marks(columns.rows().get(0)).stream()
                .map(FaceDrawing::number)
                .toList();
        assertThat(labels).containsAll(marks);
    }

    @Test
    void a_part_unit_is_dotted_and_a_cut_one_hatched() {
        assertThat(FaceDrawing.of("main", LEAN_TO, DrawingScale.of(25)).shapes())
                .filteredOn(shape ->
                        shape instanceof Polygon polygon && polygon.meaning().equals("half unit"))
                .isNotEmpty()
                .allSatisfy(shape -> assertThat(((Polygon) shape).fill()).isEqualTo(Fill.DOTTED));

        FaceLayout cut = FaceLayout.on(
                FlatShape.rectangle(mm(5245), mm(3714)).withPitch(PITCH),
                Samples.FERNSIDE.withUnit(Samples.TILE_WITHOUT_HALF));
        assertThat(cut.counts().orThrow().count(PieceKind.CUT)).isPositive();
        assertThat(FaceDrawing.of("main", cut, DrawingScale.of(25)).shapes())
                .filteredOn(shape ->
                        shape instanceof Polygon polygon && polygon.meaning().equals("cut unit"))
                .isNotEmpty()
                .allSatisfy(shape -> assertThat(((Polygon) shape).fill()).isEqualTo(Fill.SLANTED));
    }

    @Test
    void openings_are_drawn_with_their_sizes_and_their_place() {
        Opening stack = Opening.builder()
                .name("stack")
                .along(mm(2100))
                .up(mm(1850))
                .width(mm(600))
                .height(mm(720))
                .build();
        FaceLayout layout = FaceLayout.on(LEAN_TO.shape(), Samples.FERNSIDE.withOpenings(List.of(stack)));
        Drawing drawing = FaceDrawing.of("main", layout, DrawingScale.of(25));
        Picture picture = PictureChecks.check(drawing);

        assertThat(picture.polygons("opening")).isEqualTo(1);
        assertThat(named(picture, "along")).containsExactly(2100.0);
        assertThat(named(picture, "up")).containsExactly(1850.0);
        assertThat(named(picture, "")).contains(600.0, 720.0);
        for (PieceKind kind : PieceKind.values()) {
            assertThat(drawing.count(kind.toString()))
                    .as(kind.toString())
                    .isEqualTo(layout.counts().orThrow().count(kind));
        }
    }

    @Test
    void a_hipped_face_shows_every_cut_unit() {
        double in = 3950 * Math.cos(Math.toRadians(40));
        FlatShape shape = FlatShape.ofCorners(List.of(
                        FacePoint.of(mm(0), mm(0)),
                        FacePoint.of(mm(9000), mm(0)),
                        FacePoint.of(mm(9000 - in), mm(3950)),
                        FacePoint.of(mm(in), mm(3950))))
                .withPitch(Pitch.ofDegrees(40));
        LayoutScheme scheme = Samples.FERNSIDE.withLeft(FaceEnd.hip()).withRight(FaceEnd.hip());
        FaceLayout layout = FaceLayout.on(shape, scheme);
        Drawing drawing = FaceDrawing.of("front", layout, DrawingScale.of(50));
        PictureChecks.check(drawing);

        assertThat(layout.counts().orThrow().count(PieceKind.CUT)).isPositive();
        for (PieceKind kind : PieceKind.values()) {
            assertThat(drawing.count(kind.toString()))
                    .as(kind.toString())
                    .isEqualTo(layout.counts().orThrow().count(kind));
        }
    }

    @Test
    void a_face_that_does_not_fit_shows_what_fits_and_says_so() {
        FaceLayout narrow = FaceLayout.on(FlatShape.rectangle(mm(200), mm(3714)).withPitch(PITCH), Samples.FERNSIDE);
        Drawing drawing = FaceDrawing.of("main", narrow, DrawingScale.of(50));
        PictureChecks.check(drawing);
        assertThat(drawing.notes()).anySatisfy(note -> assertThat(note).startsWith("finding: "));
        assertThat(drawing.layers()).extracting(DrawingLayer::name).containsExactly("battens", "outline", "sizes");
    }

    @Test
    void a_very_large_face_stays_small_as_a_picture() {
        FaceLayout large =
                FaceLayout.on(FlatShape.rectangle(mm(55_000), mm(65_000)).withPitch(PITCH), Samples.FERNSIDE);
        assertThat(large.counts().orThrow().total()).isBetween(30_000L, (long) FaceDrawing.MOST_UNITS);
        assertThat(FaceDrawing.of("hall", large, DrawingScale.of(200)).toSvg().length())
                .isLessThan(5_000_000);

        FaceLayout larger =
                FaceLayout.on(FlatShape.rectangle(mm(75_000), mm(75_000)).withPitch(PITCH), Samples.FERNSIDE);
        assertThat(larger.counts().orThrow().total()).isGreaterThan(50_000);
        Drawing simple = FaceDrawing.of("hall", larger, DrawingScale.of(200));
        assertThat(simple.toSvg().length()).isLessThan(5_000_000);
        assertThat(simple.count("whole unit")).isZero();
        assertThat(simple.notes()).contains("More than 40000 units: they are not drawn one by one, only their tails.");
    }

    @Property(tries = 60)
    void any_face_keeps_what_every_picture_must_keep(
            @ForAll @IntRange(min = 400, max = 9000) int width,
            @ForAll @IntRange(min = 900, max = 6000) int slope,
            @ForAll @IntRange(min = -60, max = 60) int lean,
            @ForAll @IntRange(min = 10, max = 200) int scale) {
        FlatShape shape =
                FlatShape.of(Ends.of(mm(slope), mm(slope + lean)), mm(width)).withPitch(PITCH);
        PictureChecks.check(FaceDrawing.of("tiles", FaceLayout.on(shape, Samples.FERNSIDE), DrawingScale.of(scale)));
        PictureChecks.check(FaceDrawing.of("slates", FaceLayout.on(shape, Samples.TOLLBAR), DrawingScale.of(scale)));
    }
}
