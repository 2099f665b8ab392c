package org.roofmaths.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.w3c.dom.Element;

/** What every picture must keep. */
final class PictureChecks {
    /** Coordinates are written to a hundredth of a millimetre of paper. */
    private static final double WRITTEN = 0.01;

    private PictureChecks() {}

    static Picture check(Drawing drawing) {
        String svg = drawing.toSvg();
        assertThat(svg).doesNotContain("NaN").doesNotContain("Infinity").isEqualTo(drawing.toSvg());
        Picture picture = Picture.read(svg);
        String[] viewBox = picture.root().getAttribute("viewBox").split(" ", -1);
        double width = Double.parseDouble(viewBox[2]);
        double height = Double.parseDouble(viewBox[3]);
        assertThat(picture.root().getAttribute("width")).isEqualTo(viewBox[2] + "mm");
        assertThat(picture.root().getAttribute("height")).isEqualTo(viewBox[3] + "mm");
        assertThat(picture.root().getAttribute("role")).isEqualTo("img");
        assertThat(picture.all("title").get(0).getTextContent()).isEqualTo(drawing.title());
        assertThat(picture.all("desc").get(0).getTextContent()).isEqualTo(drawing.description());
        dimensionsAreWhatIsDrawn(picture, drawing);
        textsKeepApart(picture, width, height);
        return picture;
    }

    private static void dimensionsAreWhatIsDrawn(Picture picture, Drawing drawing) {
        double half = drawing.rounding().toString().equals("to the nearest 1 mm") ? 0.5 : 0;
        for (Element dimension : picture.dimensions()) {
            double slack = half + 2 * WRITTEN * picture.scale();
            assertThat(Math.abs(Picture.printed(dimension) - picture.drawn(dimension)))
                    .as(dimension.getTextContent())
                    .isLessThanOrEqualTo(slack);
        }
    }

    private static void textsKeepApart(Picture picture, double width, double height) {
        List<Element> texts = picture.all("text");
        List<double[]> boxes = texts.stream().map(Picture::box).toList();
        for (int i = 0; i < boxes.size(); i++) {
            double[] a = boxes.get(i);
            assertThat(a[0] >= -WRITTEN && a[1] >= -WRITTEN && a[2] <= width + WRITTEN && a[3] <= height + WRITTEN)
                    .as("inside the sheet: " + texts.get(i).getTextContent())
                    .isTrue();
            for (int j = i + 1; j < boxes.size(); j++) {
                double[] b = boxes.get(j);
                boolean apart = a[2] <= b[0] + 2 * WRITTEN
                        || b[2] <= a[0] + 2 * WRITTEN
                        || a[3] <= b[1] + 2 * WRITTEN
                        || b[3] <= a[1] + 2 * WRITTEN;
                assertThat(apart)
                        .as(texts.get(i).getTextContent() + " | " + texts.get(j).getTextContent())
                        .isTrue();
            }
        }
    }
}
