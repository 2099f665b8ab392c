package org.roofmaths.working;

import java.util.Objects;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * The typed name and symbol of a number, such as {@code rafter length}, L, a length.
 *
 * <p>Terms are constants of the class that works them out and part of its interface: {@code working.at(CommonRafter.LENGTH)} picks
 * a number, {@code working.blanked(CommonRafter.RISE)} hides one on a classroom sheet. Names are unique over the library. Where one
 * number exists several times (at the left and at the right end, per piece), {@link #at(String)} tells which.
 *
 * <p>Immutable and thread-safe. Two terms are equal if name, symbol, type and place are.
 *
 * @param <T> the type of the number
 * @since 0.1
 */
public final class Term<T> implements Expression {
    private static final long serialVersionUID = 1L;

    private final String name;
    private final String symbol;
    private final Class<T> type;
    private final String place;

    private Term(String name, String symbol, Class<T> type, String place) {
        this.name = name;
        this.symbol = symbol;
        this.type = type;
        this.place = place;
    }

    /**
     * Returns a term.
     *
     * @param <T> the type of the number
     * @param name what it is, in a builder's words, lower case
     * @param symbol its short sign in a formula, such as {@code g}
     * @param type the type of its value
     * @return the term
     */
    public static <T> Term<T> of(String name, String symbol, Class<T> type) {
        if (name.isBlank() || symbol.isBlank()) {
            throw new IllegalArgumentException(
                    "a term needs a name and a symbol, but was \"" + name + "\", \"" + symbol + "\"");
        }
        return new Term<>(name, symbol, Objects.requireNonNull(type, "type"), "");
    }

    /**
     * Returns the same term at one place of several, such as {@code left}.
     *
     * @param place which of them
     * @return the term at that place
     */
    public Term<T> at(String place) {
        Objects.requireNonNull(place, "place");
        return place.equals(this.place) ? this : new Term<>(name, symbol, type, place);
    }

    /** Returns the name, without the place. */
    public String name() {
        return name;
    }

    /** Returns the short sign. */
    public String symbol() {
        return symbol;
    }

    /** Returns the type of the value. */
    public Class<T> valueType() {
        return type;
    }

    /** Returns which of several this is; empty if there is only one. */
    public String place() {
        return place;
    }

    @Override
    public double evaluate(ToDoubleFunction<Term<?>> values) {
        return values.applyAsDouble(this);
    }

    @Override
    public void collectTerms(Set<Term<?>> into) {
        into.add(this);
    }

    /** Returns the name with its place, such as {@code gauge (left)}. */
    @Override
    public String toText() {
        return place.isEmpty() ? name : name + " (" + place + ")";
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Term<?> t
                && name.equals(t.name)
                && place.equals(t.place)
                && symbol.equals(t.symbol)
                && type.equals(t.type);
    }

    @Override
    public int hashCode() {
        return name.hashCode() * 31 + place.hashCode();
    }

    /** Returns the name with its place. */
    @Override
    public String toString() {
        return toText();
    }
}
