package org.roofmaths.order;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;

/**
 * What one slope is loaded with before laying.
 *
 * @param name which slope, such as {@code front}
 * @param units how many units, 1 or more
 * @param massOfOne the mass of one, above zero
 * @param eaves the length of its eaves, above zero
 * @param rafterLines along how many rafters stacks are set, 1 or more
 * @since 0.1
 */
public record StackedLoad(String name, long units, Mass massOfOne, Length eaves, long rafterLines)
        implements Serializable {
    /** Keeps the parts; they are checked with the loading they become part of. */
    public StackedLoad {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(massOfOne, "massOfOne");
        Objects.requireNonNull(eaves, "eaves");
    }
}
