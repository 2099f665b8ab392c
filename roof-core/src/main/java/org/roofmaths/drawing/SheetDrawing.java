package org.roofmaths.drawing;

import java.util.ArrayList;
import java.util.List;
import org.roofmaths.flashing.Fold;
import org.roofmaths.flashing.PieceTemplate;
import org.roofmaths.roof.FacePoint;
import org.roofmaths.units.Length;

/**
 * A piece of metal sheet laid flat: where it is cut and where it is folded.
 *
 * @since 0.1
 */
public final class SheetDrawing {
    private static final Length NEAR = Length.ofMillimetres(7);

    private SheetDrawing() {}

    /**
     * Returns the drawing of a flat piece.
     *
     * @param name what the piece is
     * @param template its outline and its folds
     * @param scale the scale; 1:1 to lay the print on the metal
     * @return the drawing
     */
    public static Drawing of(String name, PieceTemplate template, DrawingScale scale) {
        List<Shape> cut = new ArrayList<>();
        List<DrawingPoint> outline =
                template.outline().stream().map(SheetDrawing::point).toList();
        cut.add(new Polygon("sheet", LineKind.OUTLINE, Fill.NONE, outline));
        List<Shape> folds = new ArrayList<>();
        Length left = outline.get(0).x();
        Length right = left;
        Length low = outline.get(0).y();
        Length high = low;
        for (DrawingPoint corner : outline) {
            left = left.min(corner.x());
            right = right.max(corner.x());
            low = low.min(corner.y());
            high = high.max(corner.y());
        }
        List<Shape> sizes = new ArrayList<>();
        DrawingPoint corner = DrawingPoint.of(left, low);
        sizes.add(new Dimension("length", corner, DrawingPoint.of(right, low), DimensionSide.BELOW, NEAR));
        sizes.add(new Dimension("girth", corner, DrawingPoint.of(left, high), DimensionSide.LEFT, NEAR.plus(NEAR)));
        for (Fold fold : template.folds()) {
            DrawingPoint from = point(fold.from());
            DrawingPoint to = point(fold.to());
            folds.add(new Line(LineKind.FOLD, from, to));
            folds.add(new Label(fold.name(), middle(from, to), Anchor.MIDDLE));
            if (from.y().equals(to.y())) {
                sizes.add(new Dimension(
                        "", DrawingPoint.of(right, low), DrawingPoint.of(right, from.y()), DimensionSide.RIGHT, NEAR));
            }
        }
        return Drawing.of(
                name,
                "A piece of sheet laid flat, " + right.minus(left) + " long and " + high.minus(low) + " in girth, with "
                        + template.folds().size() + " folds.",
                scale,
                List.of(
                        new DrawingLayer("sheet", cut),
                        new DrawingLayer("folds", folds),
                        new DrawingLayer("sizes", sizes)));
    }

    private static DrawingPoint point(FacePoint point) {
        return DrawingPoint.of(point.along(), point.up());
    }

    private static DrawingPoint middle(DrawingPoint a, DrawingPoint b) {
        return DrawingPoint.of(a.x().plus(b.x()).dividedBy(2), a.y().plus(b.y()).dividedBy(2));
    }
}
