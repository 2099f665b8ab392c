package org.roofmaths.rules;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.roofmaths.units.Quantity;
import org.roofmaths.units.Range;

/**
 * What one row asks of one fact: any of some words, or a size in a range.
 *
 * @param <T> the type of the fact
 */
final class Condition<T> implements Serializable {
    private static final long serialVersionUID = 1L;
    private static final String ANY = "any";

    /** How a situation stands to a condition. */
    enum Match {
        YES,
        NO,
        UNKNOWN
    }

    private final Fact<T> fact;
    private final String text;

    @SuppressWarnings("serial") // the values of facts are serializable
    private final ArrayList<T> words;

    private final @Nullable Range<?> range;
    private final boolean isAny;

    private Condition(Fact<T> fact, String text, List<T> words, @Nullable Range<?> range) {
        this.fact = fact;
        this.text = text;
        this.words = new ArrayList<>(words);
        this.range = range;
        this.isAny = text.equals(ANY);
    }

    /**
     * Reads a cell of a condition column.
     *
     * @return the condition; empty if the cell is not in the form that the fact allows
     */
    static <T> Optional<Condition<T>> read(Fact<T> fact, String cell) {
        if (cell.equals(ANY)) {
            return Optional.of(new Condition<>(fact, cell, List.of(), null));
        }
        if (fact.isChoice()) {
            List<T> words = new ArrayList<>();
            for (String word : cell.split("/", -1)) {
                Optional<T> choice = fact.read(word);
                if (choice.isEmpty()) {
                    return Optional.empty();
                }
                words.add(choice.get());
            }
            return Optional.of(new Condition<>(fact, cell, words, null));
        }
        return rangeOf(fact, cell).map(range -> new Condition<>(fact, cell, List.of(), range));
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // every fact that is not a choice has a comparable type
    private static <T> Optional<Range<?>> rangeOf(Fact<T> fact, String cell) {
        try {
            if (cell.startsWith("[") || cell.startsWith("(")) {
                Range<?> range = Range.parse(
                        cell, end -> (Comparable) fact.read(end).orElseThrow(() -> new IllegalArgumentException(end)));
                return range.isEmpty() ? Optional.empty() : Optional.of(range);
            }
            return fact.read(cell).map(value -> Range.closed((Comparable) value, (Comparable) value));
        } catch (IllegalArgumentException unreadable) {
            return Optional.empty();
        }
    }

    Fact<T> fact() {
        return fact;
    }

    /** Returns the cell as written. */
    String text() {
        return text;
    }

    /** Tells whether a word is one of those asked for by name. */
    boolean names(Object word) {
        return words.contains(word);
    }

    /** Returns the range of sizes; empty if the condition is one of words or holds for any. */
    Optional<Range<?>> range() {
        return Optional.ofNullable(range);
    }

    boolean isAny() {
        return isAny;
    }

    Match match(Situation situation) {
        if (isAny) {
            return Match.YES;
        }
        T value = situation.told(fact);
        if (value == null) {
            return Match.UNKNOWN;
        }
        return holds(value) ? Match.YES : Match.NO;
    }

    private boolean holds(T value) {
        return range == null ? words.contains(value) : Limits.contains(range, value);
    }

    /** Tells whether one value could satisfy both conditions on the same fact. */
    @SuppressWarnings({"unchecked", "rawtypes"})
    boolean overlaps(Condition<?> other) {
        if (isAny() || other.isAny()) {
            return true;
        }
        if (range == null || other.range == null) {
            return words.stream().anyMatch(other.words::contains);
        }
        return !((Range) range).intersection((Range) other.range).isEmpty();
    }

    /** Returns the lower end of the range as a number, for an order among the ranges of one fact; words have none. */
    double lowerEnd() {
        return range == null ? Double.NaN : range.lower().map(Condition::number).orElse(Double.NEGATIVE_INFINITY);
    }

    private static double number(Object end) {
        return end instanceof Quantity quantity ? quantity.toSi() : ((Number) end).doubleValue();
    }

    /** Tells whether the range of another condition on the same fact starts just where this one ends; whole numbers follow by one. */
    boolean joins(Condition<?> next) {
        if (range == null
                || next.range == null
                || range.upper().isEmpty()
                || next.range.lower().isEmpty()) {
            return false;
        }
        double step = next.lowerEnd() - number(range.upper().get());
        boolean isWhole = range.upper().get() instanceof Integer;
        return isWhole && range.isUpperIncluded() && next.range.isLowerIncluded()
                ? step == 1
                : step == 0 && range.isUpperIncluded() != next.range.isLowerIncluded();
    }

    /** Tells whether the range is one size only, as in a table of nominal sizes. */
    boolean isPoint() {
        return range != null && range.lower().isPresent() && range.lower().equals(range.upper());
    }

    /** Tells on which side of the range a size lies: below, above, or neither where it is within or the range has no such end. */
    int sideOf(Situation situation) {
        if (range == null || match(situation) != Match.NO) {
            return 0;
        }
        Object value = situation.get(fact).orElseThrow();
        int toLower = range.lower().map(end -> Limits.compare(value, end)).orElse(1);
        return toLower < 0 || toLower == 0 && !range.isLowerIncluded() ? -1 : 1;
    }

    /** Returns the words in print, such as {@code sheltered or moderate}, or the range. */
    @Override
    public String toString() {
        return range == null && !isAny() ? words.stream().map(fact::text).collect(Collectors.joining(" or ")) : text;
    }
}
