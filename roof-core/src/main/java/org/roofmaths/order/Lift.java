package org.roofmaths.order;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Mass;

/**
 * One lift in the order of loading.
 *
 * @param number which lift it is, from 1
 * @param slope the slope it goes to
 * @param units how many units it carries
 * @param mass what it weighs
 * @param onSlope what lies on that slope after it
 * @since 0.1
 */
public record Lift(int number, String slope, long units, Mass mass, Mass onSlope) implements Serializable {
    /** Refuses null. */
    public Lift {
        Objects.requireNonNull(slope, "slope");
        Objects.requireNonNull(mass, "mass");
        Objects.requireNonNull(onSlope, "onSlope");
    }

    /** Returns for example {@code lift 1 to front: 45 units, 198 kg; 198 kg there}. */
    @Override
    public String toString() {
        return "lift " + number + " to " + slope + ": " + units + " units, " + mass + "; " + onSlope + " there";
    }
}
