package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;

/**
 * A roll of underlay as it is bought.
 *
 * @param width the width of the roll
 * @param length the length on one roll
 * @since 0.1
 */
public record UnderlayRoll(Length width, Length length) implements Serializable {
    /** Refuses null; {@link LayoutScheme} checks the sizes. */
    public UnderlayRoll {
        Objects.requireNonNull(width, "width");
        Objects.requireNonNull(length, "length");
    }

    /** Returns for example {@code roll 1000 mm x 50000 mm}. */
    @Override
    public String toString() {
        return "roll " + width + " x " + length;
    }
}
