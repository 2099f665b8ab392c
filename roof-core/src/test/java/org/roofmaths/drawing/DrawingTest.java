package org.roofmaths.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.degrees;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.roofmaths.units.Length;
import org.roofmaths.units.Rounding;
import org.w3c.dom.Element;

class DrawingTest {
    private static final DrawingPoint ZERO = DrawingPoint.of(mm(0), mm(0));

    private static Drawing drawing(Shape... shapes) {
        return Drawing.of(
                "a thing", "A thing.", DrawingScale.of(10), List.of(new DrawingLayer("all", List.of(shapes))));
    }

    private static DrawingPoint at(double x, double y) {
        return DrawingPoint.of(mm(x), mm(y));
    }

    @Test
    void a_dimension_prints_the_distance_drawn() {
        Dimension level = new Dimension("run", ZERO, at(300, 400), DimensionSide.BELOW, mm(8));
        Dimension plumb = new Dimension("rise", ZERO, at(300, 400), DimensionSide.LEFT, mm(8));
        Dimension straight = new Dimension("slope", ZERO, at(300, 400), DimensionSide.LEFT_OF_THE_WAY, mm(8));

        assertThat(level.value()).isEqualTo(mm(300));
        assertThat(plumb.value()).isEqualTo(mm(400));
        assertThat(straight.value()).isEqualTo(mm(500)); // 3-4-5
        Picture picture =
                PictureChecks.check(drawing(new Line(LineKind.OUTLINE, ZERO, at(300, 400)), level, plumb, straight));
        assertThat(picture.dimensions())
                .extracting(Element::getTextContent)
                .containsExactly("run 300", "rise 400", "slope 500");
    }

    @Test
    void dimensions_are_rounded_as_the_drawing_says() {
        Drawing drawing = drawing(new Dimension("", ZERO, at(300.26, 0), DimensionSide.BELOW, mm(8)));
        assertThat(drawing.toSvg()).contains(">300<", "rounded to the nearest 1 mm");
        Rounding<Length> tenths = Rounding.toNearest(mm(0.1));
        assertThat(drawing.withRounding(tenths).toSvg()).contains(">300.3<", "rounded to the nearest 0.1 mm");
    }

    @Test
    void labels_that_would_lie_over_each_other_move_apart() {
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            shapes.add(new Label("label " + i, at(i, 0), Anchor.MIDDLE));
        }
        Picture picture = PictureChecks.check(drawing(shapes.toArray(new Shape[0])));
        assertThat(picture.all("text").stream()
                        .filter(t -> t.getAttribute("class").equals("label")))
                .hasSize(12);
        assertThat(picture.all("line")).isNotEmpty(); // from a moved label back to its point
    }

    @Test
    void a_label_without_room_is_listed_beneath() {
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            shapes.add(new Label("number " + i, ZERO, Anchor.MIDDLE));
        }
        Picture picture = PictureChecks.check(drawing(shapes.toArray(new Shape[0])));
        String notes = picture.all("text").stream()
                .filter(text -> text.getAttribute("class").equals("note"))
                .map(Element::getTextContent)
                .reduce("", (a, b) -> a + " " + b);
        assertThat(notes).contains("No room in the picture for:").contains("number 199.");
    }

    @Test
    void the_legend_explains_what_occurs_and_nothing_else() {
        Picture picture = PictureChecks.check(drawing(
                new Line(LineKind.RIDGE, ZERO, at(500, 0)),
                new Polygon("cut unit", LineKind.UNIT, Fill.SLANTED, List.of(ZERO, at(100, 0), at(100, 100))),
                new Arrow(LineKind.FALL, at(0, 50), at(100, 50)),
                new Dimension("", ZERO, at(500, 0), DimensionSide.BELOW, mm(8))));
        assertThat(picture.all("text").stream()
                        .filter(text -> text.getAttribute("class").equals("legend"))
                        .map(Element::getTextContent))
                .containsExactly("ridge", "unit as it shows", "fall", "cut unit");
    }

    @Test
    void lines_of_different_meaning_look_different_without_colour() {
        List<String> looks = new ArrayList<>();
        for (LineKind kind : LineKind.values()) {
            looks.add(kind.width() + "/" + kind.dashes() + (kind == LineKind.FALL ? " with a head" : ""));
        }
        // a dimension is known by its ticks, not by its line
        looks.set(LineKind.DIMENSION.ordinal(), "with ticks");
        assertThat(looks).doesNotHaveDuplicates();
        String svg = drawing(new Line(LineKind.HIP, ZERO, at(500, 0))).toSvg();
        assertThat(svg.replaceAll("(stroke|fill)=\"(black|white|none)\"", ""))
                .doesNotContain("stroke=\"#")
                .doesNotContain("rgb");
    }

    @Test
    void any_words_can_stand_in_a_picture() {
        String hostile = "<script>&\"' \u0007 שלום \uD83C\uDFE0 \uD800 end";
        Drawing drawing = Drawing.of(
                        hostile,
                        hostile,
                        DrawingScale.of(10),
                        List.of(new DrawingLayer(hostile, List.of(new Label(hostile, ZERO, Anchor.START)))))
                .withNotes(List.of(hostile));
        Picture picture = Picture.read(drawing.toSvg());
        assertThat(picture.all("title").get(0).getTextContent())
                .isEqualTo("<script>&\"' \uFFFD שלום \uD83C\uDFE0 \uFFFD end");
        assertThat(picture.all("script")).isEmpty();
    }

    @Test
    void a_long_title_is_broken() {
        Drawing drawing = Drawing.of(
                "a very long name of a building that goes on and on, with a word" + "x".repeat(300)
                        + " that has no end",
                "A thing.",
                DrawingScale.of(10),
                List.of());
        assertThat(Picture.read(drawing.toSvg()).all("text").stream()
                        .filter(text -> text.getAttribute("class").equals("title")))
                .hasSizeGreaterThan(3);
    }

    @Test
    void an_arc_runs_against_the_clock() {
        String svg = drawing(new Arc(LineKind.METAL, ZERO, mm(100), degrees(180), degrees(90)))
                .toSvg();
        Element path = Picture.read(svg).all("path").get(0);
        // from the left to the bottom of a circle of 10 mm on paper: y is down
        assertThat(path.getAttribute("d")).matches("M[\\d.]+ [\\d.]+A10 10 0 0 0 [\\d.]+ [\\d.]+");
        String[] numbers =
                path.getAttribute("d").replace("A", " ").replace("M", "").split(" ", -1);
        assertThat(Double.parseDouble(numbers[7]) - Double.parseDouble(numbers[0]))
                .isCloseTo(10, within(0.011));
        assertThat(Double.parseDouble(numbers[8]) - Double.parseDouble(numbers[1]))
                .isCloseTo(10, within(0.011));
    }

    @Test
    void the_usual_scale_that_fits_is_found() {
        assertThat(DrawingScale.fitting(metres(5.2), metres(3.7), mm(190), mm(250)))
                .hasToString("1:50"); // 208 mm at 1:25
        assertThat(DrawingScale.fitting(mm(190), mm(250), mm(190), mm(250))).hasToString("1:1");
        assertThat(DrawingScale.of(50).toPaper(metres(5))).isEqualTo(mm(100));
        assertThat(DrawingScale.of(50).toReal(mm(100))).isEqualTo(metres(5));
        assertThatThrownBy(() -> DrawingScale.of(0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("scale must be from 1:1 to 1:10000, but was 1:0");
    }

    @Test
    void refuses_shapes_that_are_none() {
        assertThatThrownBy(() -> new Polygon("x", LineKind.OUTLINE, Fill.NONE, List.of(ZERO, ZERO)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a polygon must have at least three corners, but had 2");
        assertThatThrownBy(() -> new Arc(LineKind.METAL, ZERO, mm(0), degrees(0), degrees(90)))
                .hasMessage("radius must be above 0 mm, but was 0 mm");
        assertThatThrownBy(() -> new Arc(LineKind.METAL, ZERO, mm(1), degrees(0), degrees(360)))
                .hasMessage("sweep must be above 0° and below 360°, but was 360°");
    }

    @Test
    void a_drawing_is_data() throws Exception {
        Drawing drawing = FaceDrawing.of("main", FaceDrawingTest.LEAN_TO, DrawingScale.of(25));
        assertThat(drawing).isEqualTo(FaceDrawing.of("main", FaceDrawingTest.LEAN_TO, DrawingScale.of(25)));
        assertThat(drawing.withScale(DrawingScale.of(50))).isNotEqualTo(drawing).hasToString("main, laid flat, 1:50");
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(drawing);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            assertThat(in.readObject()).isEqualTo(drawing);
        }
    }
}
