package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.units.Length;

/**
 * One way of filling the width of a face that was looked at: how, with how many units, and why not, where it does not fit.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class ColumnChoice implements Serializable {
    private static final long serialVersionUID = 1L;

    private final Arrangement arrangement;
    private final int count;
    private final String reason;
    private final List<Level> levels;

    /** What one level of the face, the eaves or the top, gets by this choice. */
    record Level(Length wall, Length covered, Length cover, Length cut, List<RowShape> rows) implements Serializable {}

    /** The pieces of one course: what stands at its ends, how many whole units between, and the joint of double-lap units. */
    record RowShape(
            List<End> left,
            int whole,
            List<End> right,
            @Nullable Length joint) implements Serializable {}

    /** One piece at the end of a row. */
    record End(PieceKind kind, Length width) implements Serializable {}

    private ColumnChoice(Arrangement arrangement, int count, String reason, List<Level> levels) {
        this.arrangement = arrangement;
        this.count = count;
        this.reason = reason;
        this.levels = levels;
    }

    static ColumnChoice fitting(Arrangement arrangement, int count, List<Level> levels) {
        return new ColumnChoice(arrangement, count, "", List.copyOf(levels));
    }

    static ColumnChoice rejected(Arrangement arrangement, int count, String reason) {
        return new ColumnChoice(arrangement, count, reason, List.of());
    }

    /** Returns how the width would be filled. */
    public Arrangement arrangement() {
        return arrangement;
    }

    /** Returns the number of ordinary whole units in a course; in double lap in the first full course. */
    public int count() {
        return count;
    }

    /** Tells whether it fits. */
    public boolean fits() {
        return reason.isEmpty();
    }

    /** Returns why it does not fit; empty if it does. */
    public String reason() {
        return reason;
    }

    List<Level> levels() {
        return levels;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof ColumnChoice c
                && arrangement == c.arrangement
                && count == c.count
                && reason.equals(c.reason)
                && levels.equals(c.levels);
    }

    @Override
    public int hashCode() {
        return Objects.hash(arrangement, count, reason);
    }

    /** Returns for example {@code 17 whole units: want a cover from 305.764706 mm to 307.058824 mm, but the unit gives …}. */
    @Override
    public String toString() {
        String what = arrangement == Arrangement.WHOLE_UNITS
                ? PieceKind.WHOLE.words(count)
                : PieceKind.WHOLE.words(count) + " and " + arrangement;
        return count + " " + what + (fits() ? ": fits" : ": " + reason);
    }
}
