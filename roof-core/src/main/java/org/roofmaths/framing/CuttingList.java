package org.roofmaths.framing;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Length;
import org.roofmaths.units.Rounding;

/**
 * The timbers to cut: what, how many, how long from point to point, and every cut in words.
 *
 * <p>Equal timbers stand on one line. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class CuttingList implements Serializable {
    private static final long serialVersionUID = 1L;

    private final List<CuttingLine> lines;

    private CuttingList(List<CuttingLine> lines) {
        this.lines = List.copyOf(lines);
    }

    /**
     * Returns a list of lines, equal timbers put together.
     *
     * @param lines the lines; may be empty
     * @return the list, in the order in which each timber is first named
     */
    public static CuttingList of(List<CuttingLine> lines) {
        List<CuttingLine> merged = new ArrayList<>();
        for (CuttingLine line : lines) {
            int known = -1;
            for (int i = 0; i < merged.size(); i++) {
                known = merged.get(i).isSameTimber(line) ? i : known;
            }
            if (known < 0) {
                merged.add(line);
            } else {
                merged.set(known, line.withCount(Math.addExact(merged.get(known).count(), line.count())));
            }
        }
        return new CuttingList(merged);
    }

    /**
     * Returns this list with another after it, equal timbers put together.
     *
     * @param other the other list
     * @return both
     */
    public CuttingList plus(CuttingList other) {
        List<CuttingLine> both = new ArrayList<>(lines);
        both.addAll(other.lines);
        return of(both);
    }

    /** Returns the lines, each timber once. */
    public List<CuttingLine> lines() {
        return lines;
    }

    /** Returns the number of timbers. */
    public int memberCount() {
        return lines.stream().mapToInt(CuttingLine::count).sum();
    }

    /** Returns the length of all timbers together, each to its long points; what is lost in sawing is not in it. */
    public Length totalLength() {
        return lines.stream()
                .map(line -> line.longPoint().times((long) line.count()))
                .reduce(Length.ZERO, Length::plus);
    }

    /**
     * Returns the list with lengths and angles rounded, as it goes to the saw.
     *
     * @param lengths how lengths are rounded
     * @param angles how angles are rounded
     * @return the rounded list
     */
    public CuttingList rounded(Rounding<Length> lengths, Rounding<Angle> angles) {
        Objects.requireNonNull(lengths, "lengths");
        Objects.requireNonNull(angles, "angles");
        return of(lines.stream()
                .map(line -> new CuttingLine(
                        line.member(),
                        line.count(),
                        lengths.apply(line.longPoint()),
                        lengths.apply(line.shortPoint()),
                        line.cuts().stream()
                                .map(cut -> new Cut(cut.what(), angles.apply(cut.angle()), cut.datum()))
                                .toList()))
                .toList());
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof CuttingList c && lines.equals(c.lines);
    }

    @Override
    public int hashCode() {
        return lines.hashCode();
    }

    /** Returns the lines, one below the other. */
    @Override
    public String toString() {
        return lines.stream().map(CuttingLine::toString).collect(Collectors.joining("\n"));
    }
}
