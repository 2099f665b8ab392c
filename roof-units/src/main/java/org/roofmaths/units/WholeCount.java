package org.roofmaths.units;

import java.io.Serializable;
import java.util.Objects;

/**
 * How many whole times one length goes into another, and what is left over: the answer of
 * {@link Length#timesIn(Length)}.
 *
 * @param count  the whole number of times, 0 or more
 * @param rest  what is left of the distance, exact: {@code count × length + rest} is the distance to the nanometre.
 *     When the distance falls short of a whole count by no more than {@link Length#STORAGE_RESOLUTION}, that count is
 *     taken and the rest is the negative shortfall
 * @since 0.1
 */
public record WholeCount(long count, Length rest) implements Serializable {
    /**
     * Keeps the two parts.
     *
     * @throws IllegalArgumentException if {@code count} is negative
     * @since 0.1
     */
    public WholeCount {
        if (count < 0) {
            throw new IllegalArgumentException("count must be zero or more, but was " + count);
        }
        Objects.requireNonNull(rest, "rest");
    }

    /**
     * Returns the two parts in words, for example {@code 12 times, rest 8 mm}.
     *
     * @return the text
     */
    @Override
    public String toString() {
        return count + " times, rest " + rest;
    }
}
