package org.roofmaths.drawing;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.roofmaths.units.Length;
import org.roofmaths.units.Rounding;

/**
 * A drawing as data: shapes in real size, in layers, with a scale and a title; a picture is made of it when asked for.
 *
 * <p>Line widths, hatches and the height of letters are sizes on paper and the same at every scale. Everything reads in black and white: lines
 * differ by width and dashes, areas by hatch, and a legend explains those that occur. Numbers of dimensions are the distances drawn,
 * rounded as {@link #rounding()} says.
 *
 * <pre>{@code
 * Drawing drawing = FaceDrawing.of("front", layout, DrawingScale.of(50));
 * Files.writeString(path, drawing.toSvg());
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Drawing implements Serializable {
    private static final long serialVersionUID = 1L;

    private final String title;
    private final String description;
    private final DrawingScale scale;
    private final Rounding<Length> rounding;
    private final List<DrawingLayer> layers;
    private final List<String> notes;

    private Drawing(
            String title,
            String description,
            DrawingScale scale,
            Rounding<Length> rounding,
            List<DrawingLayer> layers,
            List<String> notes) {
        this.title = Objects.requireNonNull(title, "title");
        this.description = Objects.requireNonNull(description, "description");
        this.scale = Objects.requireNonNull(scale, "scale");
        this.rounding = Objects.requireNonNull(rounding, "rounding");
        this.layers = List.copyOf(layers);
        this.notes = List.copyOf(notes);
    }

    /**
     * Returns a drawing without notes, its dimensions rounded to the nearest millimetre.
     *
     * @param title what it shows
     * @param description the same in a sentence or two, for those who cannot see it
     * @param scale its scale
     * @param layers its layers, later ones over earlier ones
     * @return the drawing
     */
    public static Drawing of(String title, String description, DrawingScale scale, List<DrawingLayer> layers) {
        return new Drawing(title, description, scale, Rounding.toNearest(Length.ofMillimetres(1)), layers, List.of());
    }

    /**
     * Returns the same drawing with other notes beneath it.
     *
     * @param lines one sentence each
     * @return the drawing with them
     */
    public Drawing withNotes(List<String> lines) {
        return new Drawing(title, description, scale, rounding, layers, lines);
    }

    /**
     * Returns the same drawing with its dimensions rounded in another way.
     *
     * @param other how they are rounded
     * @return the drawing
     */
    public Drawing withRounding(Rounding<Length> other) {
        return new Drawing(title, description, scale, other, layers, notes);
    }

    /**
     * Returns the same drawing at another scale.
     *
     * @param other the scale
     * @return the drawing
     */
    public Drawing withScale(DrawingScale other) {
        return new Drawing(title, description, other, rounding, layers, notes);
    }

    /** Returns what it shows. */
    public String title() {
        return title;
    }

    /** Returns the same in a sentence or two. */
    public String description() {
        return description;
    }

    /** Returns its scale. */
    public DrawingScale scale() {
        return scale;
    }

    /** Returns how its dimensions are rounded. */
    public Rounding<Length> rounding() {
        return rounding;
    }

    /** Returns its layers, later ones over earlier ones. */
    public List<DrawingLayer> layers() {
        return layers;
    }

    /** Returns the notes beneath it. */
    public List<String> notes() {
        return notes;
    }

    /** Returns every shape of every layer. */
    public Stream<Shape> shapes() {
        return layers.stream().flatMap(layer -> layer.shapes().stream());
    }

    /**
     * Returns how many polygons of one meaning there are, such as {@code whole unit}.
     *
     * @param meaning the meaning
     * @return the number
     */
    public long count(String meaning) {
        return shapes().filter(shape ->
                        shape instanceof Polygon polygon && polygon.meaning().equals(meaning))
                .count();
    }

    /**
     * Returns the picture as SVG, the vector format of the World Wide Web Consortium, sized in millimetres so that it prints at its scale.
     *
     * <p>The width of letters is estimated at 0.6 of their height; no text lies over another by that estimate. A label that finds no
     * room is listed beneath the picture. Fonts are left to whoever shows it.
     *
     * @return the whole text of the picture
     */
    public String toSvg() {
        return new SvgWriter(new DrawingSheet(this)).write();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Drawing d
                && title.equals(d.title)
                && description.equals(d.description)
                && scale.equals(d.scale)
                && rounding.equals(d.rounding)
                && layers.equals(d.layers)
                && notes.equals(d.notes);
    }

    @Override
    public int hashCode() {
        return Objects.hash(title, scale, layers);
    }

    /** Returns for example {@code front, laid flat, 1:50}. */
    @Override
    public String toString() {
        return title + ", " + scale;
    }
}
