package org.roofmaths.problem;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roofmaths.units.Quantity;

/**
 * One way to mend a problem: what to change, by how much, and what results.
 *
 * <p>For example: {@code overhang into the gutter: 8 mm more; 11 gauges of 344.6 mm}.
 *
 * @since 0.1
 */
public final class Mend implements Serializable {
    private static final long serialVersionUID = 1L;

    private final String what;
    private final String change;
    private final @Nullable Quantity by;
    private final String result;

    private Mend(String what, String change, @Nullable Quantity by, String result) {
        this.what = Objects.requireNonNull(what, "what");
        this.change = Objects.requireNonNull(change, "change");
        this.by = by;
        this.result = Objects.requireNonNull(result, "result");
    }

    /**
     * Returns a mend whose change is a quantity.
     *
     * @param what the thing to change, in the trade's words
     * @param change the change in words, such as {@code 8 mm more}
     * @param by the change as a quantity, with its sign
     * @param result what results, in words
     * @return the mend
     */
    public static Mend of(String what, String change, Quantity by, String result) {
        return new Mend(what, change, Objects.requireNonNull(by, "by"), result);
    }

    /**
     * Returns a mend whose change is not a quantity, such as another kind of unit.
     *
     * @param what the thing to change, in the trade's words
     * @param change the change in words
     * @param result what results, in words
     * @return the mend
     */
    public static Mend of(String what, String change, String result) {
        return new Mend(what, change, null, result);
    }

    /** Returns the thing to change. */
    public String what() {
        return what;
    }

    /** Returns the change in words. */
    public String change() {
        return change;
    }

    /** Returns the change as a quantity with its sign; empty where the change is of another kind. */
    public Optional<Quantity> by() {
        return Optional.ofNullable(by);
    }

    /** Returns what results, in words. */
    public String result() {
        return result;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Mend m
                && what.equals(m.what)
                && change.equals(m.change)
                && Objects.equals(by, m.by)
                && result.equals(m.result);
    }

    @Override
    public int hashCode() {
        return Objects.hash(what, change, by, result);
    }

    /** Returns the mend in one line, such as {@code overhang: 8 mm more; 11 gauges of 344.6 mm}. */
    @Override
    public String toString() {
        return what + ": " + change + (result.isEmpty() ? "" : "; " + result);
    }
}
