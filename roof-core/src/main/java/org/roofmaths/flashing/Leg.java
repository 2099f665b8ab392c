package org.roofmaths.flashing;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;

/**
 * One leg of a folded sheet, between two folds or a fold and an edge.
 *
 * @param name what it does, such as {@code cover}
 * @param width its width across the girth
 * @since 0.1
 */
public record Leg(String name, Length width) implements Serializable {
    private static final long serialVersionUID = 1L;

    /** Keeps the parts. */
    public Leg {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(width, "width");
    }

    /** Returns for example {@code cover 150 mm}. */
    @Override
    public String toString() {
        return name + " " + width;
    }
}
