package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.roof.Ends;
import org.roofmaths.units.Length;

/**
 * How an opening meets the courses and columns of a face, and the nearest places where it would meet them better.
 *
 * <p>Across the slope a place is good if no piece beside the opening is narrower than allowed (in double lap such a piece is made one
 * with its neighbour where there is a unit-and-a-half): with covers of 300 mm an opening of
 * 850 mm wants its left edge 150 to 200 mm past a joint. Up the slope it is good if the lower edge lies on the line where a course
 * begins to show, so that no unit is cut to length there; whether the upper edge then meets one too depends on its height.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class OpeningFit implements Serializable {
    private static final long serialVersionUID = 1L;
    private static final Length RESOLUTION = Length.STORAGE_RESOLUTION;

    private final Opening opening;
    private final Courses courses;
    private final Columns columns;
    private final Length smallest;
    private final Length leftLine;

    private OpeningFit(Opening opening, Courses courses, Columns columns, Length smallest) {
        this.opening = opening;
        this.courses = courses;
        this.columns = columns;
        this.smallest = smallest;
        FaceEnd left = columns.ends().left();
        this.leftLine = left.isVerge() ? left.wanted() : Length.ZERO;
    }

    /**
     * Looks at an opening on a face.
     *
     * @param opening the opening
     * @param courses the courses of the face, laid with a unit
     * @param columns the columns of the face, between square ends
     * @param smallestCut the narrowest piece that may stand beside it
     * @return how it meets them
     */
    public static OpeningFit of(Opening opening, Courses courses, Columns columns, Length smallestCut) {
        return new OpeningFit(
                Objects.requireNonNull(opening, "opening"),
                Objects.requireNonNull(courses, "courses"),
                Objects.requireNonNull(columns, "columns"),
                Objects.requireNonNull(smallestCut, "smallestCut"));
    }

    /**
     * Returns what is left of the unit at each side of the opening, in one kind of course.
     *
     * @param row one of the rows of the columns
     * @return the widths left: zero if a unit ends there
     */
    public Ends<Length> cuts(Row row) {
        return cuts(row, opening.along());
    }

    private Ends<Length> cuts(Row row, Length along) {
        Length from = along.minus(leftLine);
        Length to = from.plus(opening.width());
        Length left = Length.ZERO;
        Length right = Length.ZERO;
        for (Piece piece : row.pieces()) {
            if (piece.from().plus(RESOLUTION).isShorterThan(from)
                    && piece.to().minus(RESOLUTION).isLongerThan(from)) {
                left = from.minus(piece.from());
            }
            if (piece.from().plus(RESOLUTION).isShorterThan(to)
                    && piece.to().minus(RESOLUTION).isLongerThan(to)) {
                right = piece.to().minus(to);
            }
        }
        return Ends.of(left, right);
    }

    /** Tells whether no piece beside the opening is narrower than allowed, in any kind of course. */
    public boolean isWithoutSlivers() {
        return isWithoutSlivers(opening.along());
    }

    private boolean isWithoutSlivers(Length along) {
        for (Row row : columns.rows()) {
            Ends<Length> cuts = cuts(row, along);
            if (!isGood(cuts.left()) || !isGood(cuts.right())) {
                return false;
            }
        }
        return true;
    }

    private boolean isGood(Length cut) {
        return cut.isZero() || cut.meetsLeast(smallest) || joinsItsNeighbour();
    }

    /** In double lap a narrow piece is made one with its neighbour, from a unit-and-a-half. */
    private boolean joinsItsNeighbour() {
        return columns.unit() instanceof DoubleLapUnit d && d.unitAndAHalf().isPresent();
    }

    /**
     * Returns the nearest places to the left and to the right at which no piece beside the opening is too narrow, as distances of its left
     * edge from the left end of the eaves.
     *
     * @return up to two places, the nearer first; the place it has, if that is good; empty if there is none on the face
     */
    public List<Length> alongsWithoutSlivers() {
        if (isWithoutSlivers()) {
            return List.of(opening.along());
        }
        TreeSet<Length> places = new TreeSet<>();
        for (Row row : columns.rows()) {
            for (Piece piece : row.pieces()) {
                // where an edge of the opening meets a joint, or leaves just enough of a unit
                places.add(piece.from());
                places.add(piece.to());
                places.add(piece.from().plus(smallest));
                places.add(piece.from().minus(opening.width()));
                places.add(piece.to().minus(opening.width()));
                places.add(piece.to().minus(smallest).minus(opening.width()));
            }
        }
        List<Length> good = new ArrayList<>();
        nearest(places.descendingSet(), false).ifPresent(good::add);
        nearest(places, true).ifPresent(good::add);
        good.sort(Comparator.comparing(along -> along.minus(opening.along()).abs()));
        return List.copyOf(good);
    }

    private Optional<Length> nearest(Iterable<Length> places, boolean rightwards) {
        Row first = columns.rows().get(0);
        Length end = first.pieces().get(first.pieces().size() - 1).to().plus(leftLine);
        for (Length place : places) {
            Length along = place.plus(leftLine);
            boolean beyond = rightwards ? along.isLongerThan(opening.along()) : along.isShorterThan(opening.along());
            boolean onFace = !along.isNegative() && !along.plus(opening.width()).isLongerThan(end);
            if (beyond && onFace && isWithoutSlivers(along)) {
                return Optional.of(along);
            }
        }
        return Optional.empty();
    }

    /**
     * Returns the lines at which courses begin to show, as distances up the slope from the fascia line at the left end: where an edge of an
     * opening meets one, no unit is cut to length.
     *
     * @return the tails of the courses, rising
     */
    private List<Length> showingLines() {
        List<Length> lines = new ArrayList<>();
        Length firstTail = courses.firstTail().left();
        Length gauge = courses.gauge().left();
        for (int i = 0; i <= courses.gaugeCount(); i++) {
            lines.add(firstTail.plus(gauge.times((long) i)));
        }
        return lines;
    }

    /**
     * Returns the nearest levels below and above at which the lower edge of the opening meets the line where a course begins to show, as
     * distances of its lower edge up the slope from the fascia line.
     *
     * @return up to two levels, the nearer first; the level it has, if that is one
     */
    public List<Length> upsOnALine() {
        List<Length> near = new ArrayList<>();
        Length below = null;
        Length above = null;
        for (Length line : showingLines()) {
            Length apart = line.minus(opening.up());
            if (apart.abs().compareTo(RESOLUTION) <= 0) {
                return List.of(opening.up());
            }
            if (apart.isNegative()) {
                below = line;
            } else if (above == null) {
                above = line;
            }
        }
        if (below != null) {
            near.add(below);
        }
        if (above != null) {
            near.add(above);
        }
        near.sort(Comparator.comparing(up -> up.minus(opening.up()).abs()));
        return List.copyOf(near);
    }

    /**
     * Returns how far the upper edge of the opening lies above the line where a course begins to show, with the opening at a level.
     *
     * @param up the level of its lower edge
     * @return zero if it meets a line: then no unit is cut to length above the opening
     */
    public Length overALineAtTop(Length up) {
        Length top = up.plus(opening.height());
        Length over = top.minus(courses.firstTail().left());
        for (Length line : showingLines()) {
            Length apart = top.minus(line);
            if (apart.plus(RESOLUTION).isNegative()) {
                break;
            }
            over = apart.max(Length.ZERO);
        }
        return over;
    }

    /** Returns the opening. */
    public Opening opening() {
        return opening;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof OpeningFit f
                && opening.equals(f.opening)
                && courses.equals(f.courses)
                && columns.equals(f.columns)
                && smallest.equals(f.smallest);
    }

    @Override
    public int hashCode() {
        return Objects.hash(opening, courses, columns, smallest);
    }

    /** Returns for example {@code opening "stack": cuts 175 mm left, 175 mm right}, one kind of course after the other. */
    @Override
    public String toString() {
        List<String> each =
                columns.rows().stream().map(row -> "cuts " + cuts(row)).toList();
        return "opening \"" + opening.name() + "\": " + String.join(", then ", each);
    }
}
