package org.roofmaths.units;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * All the values between two ends, such as the pitches from 30° up to, but not including, 35°.
 * <p>
 * Each end is there or not, and an end that is there belongs to the range or not. It prints its ends as they are:
 * {@code [30°..35°)}, {@code [30 mm..)}, {@code (..45°)}, {@code (..)}; a range that holds no value prints
 * {@code empty}. Containment is exact. Two ranges are equal when both ends are; all empty ranges are equal. Immutable
 * and thread-safe if its ends are.
 *
 * @param <T>  the kind of value
 * @since 0.1
 */
public final class Range<T extends Comparable<T>> implements Serializable {
    private static final String EMPTY = "empty";
    private static final String DOTS = "..";

    private final @Nullable T lower;

    private final @Nullable T upper;

    private final boolean isLowerIncluded;
    private final boolean isUpperIncluded;
    private final boolean isEmpty;

    private Range(
            @Nullable T lower, boolean isLowerIncluded, @Nullable T upper, boolean isUpperIncluded, boolean isEmpty) {
        this.lower = lower;
        this.isLowerIncluded = isLowerIncluded;
        this.upper = upper;
        this.isUpperIncluded = isUpperIncluded;
        this.isEmpty = isEmpty;
    }

    private static <T extends Comparable<T>> Range<T> between(
            T lower, boolean isLowerIncluded, T upper, boolean isUpperIncluded) {
        Objects.requireNonNull(lower, "lower");
        Objects.requireNonNull(upper, "upper");
        int order = lower.compareTo(upper);
        if (order > 0) {
            throw new IllegalArgumentException("range must not end below its start, but was "
                    + text(lower, isLowerIncluded, upper, isUpperIncluded));
        }
        return order == 0 && !(isLowerIncluded && isUpperIncluded)
                ? empty()
                : new Range<>(lower, isLowerIncluded, upper, isUpperIncluded, false);
    }

    /**
     * Returns the range from one value to another, both included: {@code [320 mm..345 mm]}.
     *
     * @param lower  the lower end
     * @param upper  the upper end, not below the lower
     * @param <T>  the kind of value
     * @return the range
     * @throws IllegalArgumentException if the upper end is below the lower
     * @since 0.1
     */
    public static <T extends Comparable<T>> Range<T> closed(T lower, T upper) {
        return between(lower, true, upper, true);
    }

    /**
     * Returns the range between two values, neither included: {@code (0°..90°)}.
     *
     * @param lower  the lower end
     * @param upper  the upper end, not below the lower
     * @param <T>  the kind of value
     * @return the range, empty if the ends are equal
     * @throws IllegalArgumentException if the upper end is below the lower
     * @since 0.1
     */
    public static <T extends Comparable<T>> Range<T> open(T lower, T upper) {
        return between(lower, false, upper, false);
    }

    /**
     * Returns the range from one value up to another, the lower included, the upper not: {@code [30°..35°)}.
     *
     * @param lower  the lower end
     * @param upper  the upper end, not below the lower
     * @param <T>  the kind of value
     * @return the range, empty if the ends are equal
     * @throws IllegalArgumentException if the upper end is below the lower
     * @since 0.1
     */
    public static <T extends Comparable<T>> Range<T> closedOpen(T lower, T upper) {
        return between(lower, true, upper, false);
    }

    /**
     * Returns the range from above one value to another, the lower not included, the upper included:
     * {@code (30°..35°]}.
     *
     * @param lower  the lower end
     * @param upper  the upper end, not below the lower
     * @param <T>  the kind of value
     * @return the range, empty if the ends are equal
     * @throws IllegalArgumentException if the upper end is below the lower
     * @since 0.1
     */
    public static <T extends Comparable<T>> Range<T> openClosed(T lower, T upper) {
        return between(lower, false, upper, true);
    }

    /**
     * Returns the range of a value and all above it: {@code [30 mm..)}.
     *
     * @param lower  the lower end
     * @param <T>  the kind of value
     * @return the range
     * @since 0.1
     */
    public static <T extends Comparable<T>> Range<T> atLeast(T lower) {
        return new Range<>(Objects.requireNonNull(lower, "lower"), true, null, false, false);
    }

    /**
     * Returns the range of all above a value: {@code (30 mm..)}.
     *
     * @param lower  the lower end
     * @param <T>  the kind of value
     * @return the range
     * @since 0.1
     */
    public static <T extends Comparable<T>> Range<T> above(T lower) {
        return new Range<>(Objects.requireNonNull(lower, "lower"), false, null, false, false);
    }

    /**
     * Returns the range of a value and all below it: {@code (..30 mm]}.
     *
     * @param upper  the upper end
     * @param <T>  the kind of value
     * @return the range
     * @since 0.1
     */
    public static <T extends Comparable<T>> Range<T> atMost(T upper) {
        return new Range<>(null, false, Objects.requireNonNull(upper, "upper"), true, false);
    }

    /**
     * Returns the range of all below a value: {@code (..30 mm)}.
     *
     * @param upper  the upper end
     * @param <T>  the kind of value
     * @return the range
     * @since 0.1
     */
    public static <T extends Comparable<T>> Range<T> below(T upper) {
        return new Range<>(null, false, Objects.requireNonNull(upper, "upper"), false, false);
    }

    /**
     * Returns the range of all values: {@code (..)}.
     *
     * @param <T>  the kind of value
     * @return the range
     * @since 0.1
     */
    public static <T extends Comparable<T>> Range<T> all() {
        return new Range<>(null, false, null, false, false);
    }

    /**
     * Returns the range of no value: {@code empty}.
     *
     * @param <T>  the kind of value
     * @return the range
     * @since 0.1
     */
    public static <T extends Comparable<T>> Range<T> empty() {
        return new Range<>(null, false, null, false, true);
    }

    /**
     * Reads a range as it prints, its ends by the parser of their kind.
     * <p>
     * For example, {@code Range.parse("[30°..35°)", Pitch::parse)}. Spaces may stand around the ends.
     *
     * @param text  the whole text
     * @param parser  reads one end
     * @param <T>  the kind of value
     * @return the range
     * @throws QuantityParseException if the text is not a range, an end cannot be read or the upper end is below the
     *     lower
     * @since 0.1
     */
    public static <T extends Comparable<T>> Range<T> parse(String text, Function<String, T> parser) {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(parser, "parser");
        if (text.equals(EMPTY)) {
            return empty();
        }
        boolean isLowerIncluded = text.startsWith("[");
        boolean isUpperIncluded = text.endsWith("]");
        if (!isLowerIncluded && !text.startsWith("(")) {
            throw failure(text, 0, "range must start with [ or (");
        }
        int last = text.length() - 1;
        if (last == 0 || !isUpperIncluded && !text.endsWith(")")) {
            throw new QuantityParseException(text, text.length(), "range must end in ] or )", "the text ended");
        }
        int dots = text.indexOf(DOTS);
        if (dots < 0) {
            throw failure(text, last, "range must have .. between its ends");
        }
        @Nullable T lower = end(text, 1, dots, isLowerIncluded, parser);
        @Nullable T upper = end(text, dots + DOTS.length(), last, isUpperIncluded, parser);
        if (lower == null || upper == null) {
            return new Range<>(lower, isLowerIncluded, upper, isUpperIncluded, false);
        }
        if (lower.compareTo(upper) > 0) {
            throw new QuantityParseException(
                    text, dots + DOTS.length(), "upper end must not be below the lower", "was " + upper);
        }
        return between(lower, isLowerIncluded, upper, isUpperIncluded);
    }

    private static <T> @Nullable T end(String text, int from, int to, boolean isIncluded, Function<String, T> parser) {
        if (!text.substring(from, to).isBlank()) {
            return Parts.read(text, from, to, parser);
        }
        if (isIncluded) {
            throw failure(text, to, "an end that is left out must have ( or )");
        }
        return null;
    }

    private static QuantityParseException failure(String text, int index, String expected) {
        String found = index >= text.length() ? "the text ended" : "was \"" + text.charAt(index) + '"';
        return new QuantityParseException(text, index, expected, found);
    }

    /**
     * Says whether a value lies in this range, exactly.
     *
     * @param value  the value
     * @return true if it does
     * @since 0.1
     */
    public boolean contains(T value) {
        Objects.requireNonNull(value, "value");
        return !isEmpty && isAboveLower(value) && isBelowUpper(value);
    }

    private boolean isAboveLower(T value) {
        if (lower == null) {
            return true;
        }
        int order = value.compareTo(lower);
        return order > 0 || order == 0 && isLowerIncluded;
    }

    private boolean isBelowUpper(T value) {
        if (upper == null) {
            return true;
        }
        int order = value.compareTo(upper);
        return order < 0 || order == 0 && isUpperIncluded;
    }

    /**
     * Returns the lower end.
     *
     * @return the end, or nothing if the range has none or is empty
     * @since 0.1
     */
    public Optional<T> lower() {
        return Optional.ofNullable(lower);
    }

    /**
     * Returns the upper end.
     *
     * @return the end, or nothing if the range has none or is empty
     * @since 0.1
     */
    public Optional<T> upper() {
        return Optional.ofNullable(upper);
    }

    /**
     * Says whether the lower end belongs to the range.
     *
     * @return true if it does; false if it does not or is not there
     * @since 0.1
     */
    public boolean isLowerIncluded() {
        return isLowerIncluded;
    }

    /**
     * Says whether the upper end belongs to the range.
     *
     * @return true if it does; false if it does not or is not there
     * @since 0.1
     */
    public boolean isUpperIncluded() {
        return isUpperIncluded;
    }

    /**
     * Says whether the range is known to hold no value: {@link #empty()}, equal ends of which one is left out, or an
     * intersection of ranges that have nothing in common.
     *
     * @return true if it is
     * @since 0.1
     */
    public boolean isEmpty() {
        return isEmpty;
    }

    /**
     * Returns the range of the values that lie in both this range and another.
     *
     * @param other  the other range
     * @return the values in common; empty if there are none
     * @since 0.1
     */
    public Range<T> intersection(Range<T> other) {
        if (isEmpty || other.isEmpty) {
            return empty();
        }
        Range<T> lowest = isLowerWithin(other) ? this : other;
        Range<T> highest = isUpperWithin(other) ? this : other;
        T from = lowest.lower;
        T to = highest.upper;
        if (from == null || to == null) {
            return new Range<>(from, lowest.isLowerIncluded, to, highest.isUpperIncluded, false);
        }
        return from.compareTo(to) > 0 ? empty() : between(from, lowest.isLowerIncluded, to, highest.isUpperIncluded);
    }

    /** Says whether the lower end of this range is the one that an intersection keeps. */
    private boolean isLowerWithin(Range<T> other) {
        if (lower == null || other.lower == null) {
            return lower != null;
        }
        int order = lower.compareTo(other.lower);
        return order > 0 || order == 0 && !isLowerIncluded;
    }

    private boolean isUpperWithin(Range<T> other) {
        if (upper == null || other.upper == null) {
            return upper != null;
        }
        int order = upper.compareTo(other.upper);
        return order < 0 || order == 0 && !isUpperIncluded;
    }

    /**
     * Says whether another object is a range with equal ends that belong alike.
     *
     * @param other  the other object
     * @return true if it is
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Range<?> that
                && isEmpty == that.isEmpty
                && isLowerIncluded == that.isLowerIncluded
                && isUpperIncluded == that.isUpperIncluded
                && Objects.equals(lower, that.lower)
                && Objects.equals(upper, that.upper);
    }

    @Override
    public int hashCode() {
        return Objects.hash(lower, isLowerIncluded, upper, isUpperIncluded, isEmpty);
    }

    /**
     * Returns the ends: a square bracket for one that is included, a round one for one that is not.
     *
     * @return the text, which {@link #parse} reads back if the ends print as their parser reads
     */
    @Override
    public String toString() {
        return isEmpty ? EMPTY : text(lower, isLowerIncluded, upper, isUpperIncluded);
    }

    private static String text(
            @Nullable Object lower, boolean isLowerIncluded, @Nullable Object upper, boolean isUpperIncluded) {
        return (isLowerIncluded ? "[" : "(")
                + (lower == null ? "" : lower)
                + DOTS
                + (upper == null ? "" : upper)
                + (isUpperIncluded ? "]" : ")");
    }
}
