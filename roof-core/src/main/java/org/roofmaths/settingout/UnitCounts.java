package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How many units of each kind a face takes, counted piece by piece from its courses and columns.
 *
 * <p>A piece that is cut counts as one piece; {@link #wholeUnits()} and its like tell of how many units the pieces are made, one from
 * each. Nothing is added for breakage.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class UnitCounts implements Serializable {
    private static final long serialVersionUID = 1L;

    private final List<UnitCount> lines;

    private UnitCounts(List<UnitCount> lines) {
        this.lines = List.copyOf(lines);
    }

    static UnitCounts of(List<CourseRow> rows) {
        Map<CourseKind, Map<PieceKind, Long>> sums = new EnumMap<>(CourseKind.class);
        for (CourseRow row : rows) {
            Map<PieceKind, Long> ofKind =
                    sums.computeIfAbsent(row.line().kind(), kind -> new EnumMap<>(PieceKind.class));
            for (Piece piece : row.row().pieces()) {
                ofKind.merge(piece.kind(), 1L, Long::sum);
            }
        }
        List<UnitCount> lines = new ArrayList<>();
        sums.forEach(
                (course, kinds) -> kinds.forEach((piece, count) -> lines.add(new UnitCount(course, piece, count))));
        return new UnitCounts(lines);
    }

    /** Returns the counts by kind of course and kind of piece, from the eaves up; kinds that do not occur are left out. */
    public List<UnitCount> lines() {
        return lines;
    }

    /**
     * Returns how many pieces of one kind lie in the courses of one kind.
     *
     * @param course the kind of course
     * @param piece the kind of piece
     * @return the number, zero if there are none
     */
    public long count(CourseKind course, PieceKind piece) {
        return lines.stream()
                .filter(line -> line.course() == course && line.piece() == piece)
                .mapToLong(UnitCount::count)
                .sum();
    }

    /**
     * Returns how many pieces of one kind there are in all courses.
     *
     * @param piece the kind of piece
     * @return the number, zero if there are none
     */
    public long count(PieceKind piece) {
        return lines.stream()
                .filter(line -> line.piece() == piece)
                .mapToLong(UnitCount::count)
                .sum();
    }

    /** Returns how many pieces there are in all. */
    public long total() {
        return lines.stream().mapToLong(UnitCount::count).sum();
    }

    /** Returns of how many whole units the ordinary pieces are made: whole ones and those cut from whole ones. */
    public long wholeUnits() {
        return count(PieceKind.WHOLE) + count(PieceKind.CUT);
    }

    /** Returns of how many units-and-a-half the wide pieces are made: full ones and those cut from them. */
    public long unitsAndAHalf() {
        return count(PieceKind.UNIT_AND_A_HALF) + count(PieceKind.CUT_UNIT_AND_A_HALF);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof UnitCounts c && lines.equals(c.lines);
    }

    @Override
    public int hashCode() {
        return lines.hashCode();
    }

    /** Returns for example {@code 187 whole units, 11 half units}. */
    @Override
    public String toString() {
        return String.join(", ", lines.stream().map(UnitCount::toString).toList());
    }
}
