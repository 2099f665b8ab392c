package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;

/**
 * One layer between rafter and covering.
 *
 * @param name what it is, such as {@code counter-batten}
 * @param thickness how thick it is, square to the slope
 * @since 0.1
 */
public record Layer(String name, Length thickness) implements Serializable {
    /** Refuses null. */
    public Layer {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(thickness, "thickness");
    }

    /** Returns for example {@code counter-batten 25 mm}. */
    @Override
    public String toString() {
        return name + " " + thickness;
    }
}
