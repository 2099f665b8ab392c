package org.roofmaths.rules;

import java.io.InvalidObjectException;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a table of rows is about, such as least pitch or greatest gauge, and the type of its figures.
 *
 * <p>The subjects are the constants of {@link Subjects}; each is one table (one file) of an edition. Immutable and thread-safe; two
 * subjects are equal if they are the same constant.
 *
 * @param <V> the type of the figures
 * @since 0.1
 */
public final class Subject<V> implements Serializable {
    private static final long serialVersionUID = 1L;

    private final String id;
    private final transient String words;
    private final transient Limit limit;
    private final transient ValueKind<V> kind;
    private final transient @Nullable Fact<V> measuredBy;

    Subject(String id, String words, Limit limit, ValueKind<V> kind, @Nullable Fact<V> measuredBy) {
        this.id = id;
        this.words = words;
        this.limit = limit;
        this.kind = kind;
        this.measuredBy = measuredBy;
    }

    /** Returns the name of the table, such as {@code least-pitch}. */
    public String id() {
        return id;
    }

    /** Returns the subject in words, such as {@code least pitch}. */
    public String words() {
        return words;
    }

    /** Returns which way its figures limit. */
    public Limit limit() {
        return limit;
    }

    /** Returns the units that its figures may be printed in, as the rule data writes them. */
    public List<String> units() {
        return kind.units();
    }

    /** Returns the fact of a situation that is held against its figures; empty if a check has to be told what was got. */
    public Optional<Fact<V>> measuredBy() {
        return Optional.ofNullable(measuredBy);
    }

    ValueKind<V> kind() {
        return kind;
    }

    private Object readResolve() throws InvalidObjectException {
        return Subjects.of(id).orElseThrow(() -> new InvalidObjectException("no subject " + id));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Subject<?> s && id.equals(s.id);
    }

    @Override
    public int hashCode() {
        return id.hashCode();
    }

    /** Returns the subject in words. */
    @Override
    public String toString() {
        return words;
    }
}
