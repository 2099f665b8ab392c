package org.roofmaths.rules;

import java.io.ObjectStreamException;
import java.io.Serializable;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.RainfallIntensity;
import org.roofmaths.units.Ratio;

/**
 * One thing that a row may depend on, such as the pitch or the kind of unit: a column of the rule data.
 *
 * <p>The facts are the constants of {@link Facts}. A fact is either a choice from a short list or a size that a row gives a range
 * for. Immutable and thread-safe; two facts are equal if they are the same constant.
 *
 * @param <T> the type of its value
 * @since 0.1
 */
public final class Fact<T> implements Serializable {
    private static final long serialVersionUID = 1L;

    private final String id;
    private final transient String words;
    private final transient Class<T> type;
    private final transient List<T> choices;
    private final transient Function<String, T> reader;
    private final transient Comparator<T> order;
    private final transient String form;

    private Fact(
            String id,
            String words,
            Class<T> type,
            List<T> choices,
            Function<String, T> reader,
            Comparator<T> order,
            String form) {
        this.id = id;
        this.words = words;
        this.type = type;
        this.choices = List.copyOf(choices);
        this.reader = reader;
        this.order = order;
        this.form = form;
    }

    static <E extends Enum<E>> Fact<E> choice(String id, String words, Class<E> type) {
        return new Fact<>(
                id,
                words,
                type,
                Arrays.asList(type.getEnumConstants()),
                text -> Arrays.stream(type.getEnumConstants())
                        .filter(constant -> Words.of(constant).equals(text))
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException(text)),
                Comparator.naturalOrder(),
                Words.all(type));
    }

    static Fact<String> word(String id, String words, String... choices) {
        List<String> allowed = List.of(choices);
        return new Fact<>(
                id,
                words,
                String.class,
                allowed,
                text -> allowed.stream()
                        .filter(text::equals)
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException(text)),
                Comparator.naturalOrder(),
                String.join(", ", allowed));
    }

    static Fact<Length> length(String id, String words) {
        return new Fact<>(id, words, Length.class, List.of(), Length::parse, Limits::compare, "a length or a range such as (450 mm..600 mm]");
    }

    static Fact<Pitch> pitch(String id, String words) {
        return new Fact<>(id, words, Pitch.class, List.of(), Pitch::parse, Limits::compare, "a pitch or a range such as [30°..35°)");
    }

    static Fact<Ratio> ratio(String id, String words) {
        return new Fact<>(id, words, Ratio.class, List.of(), Ratio::parse, Limits::compare, "a ratio or a range such as [40 %..50 %]");
    }

    static Fact<Area> area(String id, String words) {
        return new Fact<>(id, words, Area.class, List.of(), Area::parse, Limits::compare, "an area or a range such as (25 m²..)");
    }

    static Fact<RainfallIntensity> rainfall(String id, String words) {
        return new Fact<>(
                id,
                words,
                RainfallIntensity.class,
                List.of(),
                RainfallIntensity::parse,
                Limits::compare,
                "a rainfall or a range such as (..75 mm/h]");
    }

    static Fact<Integer> number(String id, String words) {
        return new Fact<>(id, words, Integer.class, List.of(), Integer::valueOf, Comparator.naturalOrder(), "a whole number or a range such as [6..8]");
    }

    /** Returns the name of the column, such as {@code unit_kind}. */
    public String id() {
        return id;
    }

    /** Returns the fact in words, such as {@code kind of unit}. */
    public String words() {
        return words;
    }

    /** Returns the type of its value. */
    public Class<T> type() {
        return type;
    }

    /** Returns what may be chosen, in a fixed order; empty for a size. */
    public List<T> choices() {
        return choices;
    }

    /** Returns what a cell of its column may hold, in words. */
    String form() {
        return form;
    }

    boolean isChoice() {
        return !choices.isEmpty();
    }

    Comparator<T> order() {
        return order;
    }

    /**
     * Reads a value as the rule data writes it, such as {@code clay-plain-tile} or {@code 35°}.
     *
     * @param text the whole text
     * @return the value; empty if the text is none
     */
    public Optional<T> read(String text) {
        try {
            return Optional.of(reader.apply(Objects.requireNonNull(text, "text")));
        } catch (IllegalArgumentException unreadable) {
            return Optional.empty();
        }
    }

    /** Returns a value as the rule data writes it. */
    String text(Object value) {
        return value instanceof Enum<?> constant ? Words.of(constant) : value.toString();
    }

    private Object readResolve() throws ObjectStreamException {
        return Facts.of(id).orElseThrow(() -> new java.io.InvalidObjectException("no fact " + id));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Fact<?> f && id.equals(f.id);
    }

    @Override
    public int hashCode() {
        return id.hashCode();
    }

    /** Returns the fact in words. */
    @Override
    public String toString() {
        return words;
    }
}
