package org.roofmaths.rules;

import java.io.ObjectStreamException;
import java.io.Serializable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
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
    private final transient Map<String, T> choices;
    private final transient String form;

    private Fact(String id, String words, Class<T> type, Map<String, T> choices, String form) {
        this.id = id;
        this.words = words;
        this.type = type;
        this.choices = choices;
        this.form = form;
    }

    static <E extends Enum<E>> Fact<E> choice(String id, String words, Class<E> type) {
        Map<String, E> choices = new LinkedHashMap<>();
        for (E constant : type.getEnumConstants()) {
            choices.put(Words.of(constant), constant);
        }
        return new Fact<>(id, words, type, choices, String.join(", ", choices.keySet()));
    }

    static Fact<String> word(String id, String words, String... choices) {
        Map<String, String> all = new LinkedHashMap<>();
        for (String choice : choices) {
            all.put(choice, choice);
        }
        return new Fact<>(id, words, String.class, all, String.join(", ", all.keySet()));
    }

    static Fact<Length> length(String id, String words) {
        return new Fact<>(id, words, Length.class, Map.of(), "a length or a range such as (450 mm..600 mm]");
    }

    static Fact<Pitch> pitch(String id, String words) {
        return new Fact<>(id, words, Pitch.class, Map.of(), "a pitch or a range such as [30°..35°)");
    }

    static Fact<Ratio> ratio(String id, String words) {
        return new Fact<>(id, words, Ratio.class, Map.of(), "a ratio or a range such as [40 %..50 %]");
    }

    static Fact<Area> area(String id, String words) {
        return new Fact<>(id, words, Area.class, Map.of(), "an area or a range such as (25 m²..)");
    }

    static Fact<RainfallIntensity> rainfall(String id, String words) {
        return new Fact<>(id, words, RainfallIntensity.class, Map.of(), "a rainfall or a range such as (..75 mm/h]");
    }

    static Fact<Integer> number(String id, String words) {
        return new Fact<>(id, words, Integer.class, Map.of(), "a whole number or a range such as [6..8]");
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
    public Class<T> valueType() {
        return type;
    }

    /** Returns what may be chosen, in a fixed order; empty for a size. */
    public List<T> choices() {
        return List.copyOf(choices.values());
    }

    /** Returns what a cell of its column may hold, in words. */
    String form() {
        return form;
    }

    boolean isChoice() {
        return !choices.isEmpty();
    }

    /** Compares two values at the resolution to which they are stored. */
    int compare(Object a, Object b) {
        return Limits.compare(a, b);
    }

    /**
     * Reads a value as the rule data writes it, such as {@code clay-plain-tile} or {@code 35°}.
     *
     * @param text the whole text
     * @return the value; empty if the text is none
     */
    public Optional<T> read(String text) {
        Objects.requireNonNull(text, "text");
        if (isChoice()) {
            return Optional.ofNullable(choices.get(text));
        }
        try {
            return Optional.of(type.cast(size(text)));
        } catch (IllegalArgumentException unreadable) {
            return Optional.empty();
        }
    }

    private Object size(String text) {
        if (type == Length.class) {
            return Length.parse(text);
        }
        if (type == Pitch.class) {
            return Pitch.parse(text);
        }
        if (type == Ratio.class) {
            return Ratio.parse(text);
        }
        if (type == Area.class) {
            return Area.parse(text);
        }
        return type == Integer.class ? Integer.valueOf(text) : RainfallIntensity.parse(text);
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
