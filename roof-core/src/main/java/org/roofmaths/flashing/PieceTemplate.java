package org.roofmaths.flashing;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.roofmaths.roof.FacePoint;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;

/**
 * The flat shape of one piece of sheet, to draw or cut out: its outline and its folds.
 *
 * <p>Along runs from the start of the piece, up across the girth from its free edge. The outline goes round once, with the metal on its
 * left.
 *
 * @param outline the corners, in order round the piece; three or more
 * @param folds the lines to fold along; empty for a flat piece
 * @since 0.1
 */
public record PieceTemplate(List<FacePoint> outline, List<Fold> folds) implements Serializable {
    private static final long serialVersionUID = 1L;

    /** Copies the lists. */
    public PieceTemplate {
        outline = List.copyOf(outline);
        folds = List.copyOf(folds);
    }

    /** A rectangle folded parallel to its length; the legs are told from the free edge. */
    static PieceTemplate rectangle(Length length, List<Leg> legs) {
        List<Fold> folds = new ArrayList<>();
        Length up = Length.ZERO;
        for (int i = 0; i < legs.size(); i++) {
            up = up.plus(legs.get(i).width());
            if (i < legs.size() - 1) {
                folds.add(new Fold(
                        legs.get(i).name() + " to " + legs.get(i + 1).name(),
                        FacePoint.of(Length.ZERO, up),
                        FacePoint.of(length, up)));
            }
        }
        return new PieceTemplate(
                List.of(
                        FacePoint.of(Length.ZERO, Length.ZERO),
                        FacePoint.of(length, Length.ZERO),
                        FacePoint.of(length, up),
                        FacePoint.of(Length.ZERO, up)),
                folds);
    }

    /** Returns the area of the metal left after cutting out. */
    public Area area() {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            FacePoint a = outline.get(i);
            FacePoint b = outline.get((i + 1) % outline.size());
            twice += a.along().toSi() * b.up().toSi() - b.along().toSi() * a.up().toSi();
        }
        return Area.ofSquareMetres(twice / 2);
    }
}
