package org.roofmaths.covering;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;

/**
 * How a double-lap unit sits on its batten: by nibs, nailed near its centre, or nailed near its head; with the one size that goes
 * with it.
 *
 * <pre>{@code
 * Hanging.onNibs(mm(250))         // plain tile: underside of the nibs to the tail
 * Hanging.centreNailed(mm(4))     // slate: clearance between the hole and the head of the slate below
 * Hanging.headNailed(mm(25))      // slate: hole to head
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Hanging implements Serializable {
    private static final long serialVersionUID = 1L;

    /**
     * The three ways of sitting on a batten.
     *
     * @since 0.1
     */
    public enum Way {
        /** Nibs under the head hang over the top edge of the batten. */
        NIBS("hung on nibs"),
        /** Two nails just above the head of the course below. */
        CENTRE_NAILED("centre-nailed"),
        /** Two nails near the head; the headlap counts from the hole. */
        HEAD_NAILED("head-nailed");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        /** Returns the way in words, such as {@code centre-nailed}. */
        @Override
        public String toString() {
            return words;
        }
    }

    private final Way way;
    private final Length size;

    private Hanging(Way way, Length size) {
        this.way = way;
        this.size = Objects.requireNonNull(size, "size");
    }

    /**
     * Returns the way of a unit with nibs.
     *
     * @param hangingLength from the underside of the nibs to the tail: measure it, it is not the length
     * @return the way
     */
    public static Hanging onNibs(Length hangingLength) {
        return new Hanging(Way.NIBS, hangingLength);
    }

    /**
     * Returns the way of a slate nailed near its centre, just clear of the head of the slate below.
     *
     * @param holeClearance from the head of the slate below up to the hole, 3 to 5 mm by common practice
     * @return the way
     */
    public static Hanging centreNailed(Length holeClearance) {
        return new Hanging(Way.CENTRE_NAILED, holeClearance);
    }

    /**
     * Returns the way of a slate nailed near its head.
     *
     * @param holeToHead from the hole to the head, an inch by common practice
     * @return the way
     */
    public static Hanging headNailed(Length holeToHead) {
        return new Hanging(Way.HEAD_NAILED, holeToHead);
    }

    /** Returns which of the three ways this is. */
    public Way way() {
        return way;
    }

    /** Returns the size that goes with the way: hanging length, hole clearance, or hole to head. */
    public Length size() {
        return size;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Hanging h && way == h.way && size.equals(h.size);
    }

    @Override
    public int hashCode() {
        return Objects.hash(way, size);
    }

    /** Returns for example {@code centre-nailed, hole clearance 4 mm}. */
    @Override
    public String toString() {
        return way
                + switch (way) {
                    case NIBS -> ", hanging length ";
                    case CENTRE_NAILED -> ", hole clearance ";
                    case HEAD_NAILED -> ", hole to head ";
                }
                + size;
    }
}
