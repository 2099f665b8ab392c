package org.roofmaths.rainwater;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;

/**
 * The stretch of a lower eaves on which the water of an upper roof lands.
 *
 * @param from where it starts, from the left end of the eaves; zero or more
 * @param to where it ends; the same place for a pipe
 * @since 0.1
 */
public record LandingStrip(Length from, Length to) implements Serializable {
    private static final long serialVersionUID = 1L;

    /**
     * Checks the places.
     *
     * @throws org.roofmaths.problem.ProblemsException if the strip starts left of the eaves or ends before it starts
     */
    public LandingStrip {
        Objects.requireNonNull(to, "to");
        Problems.none()
                .require(
                        !from.isNegative(), Catchment.WRONG_SIZE, "start of the landing strip", from, "be 0 mm or more")
                .require(
                        !to.isShorterThan(from),
                        Catchment.WRONG_SIZE,
                        "end of the landing strip",
                        to,
                        "not lie before its start of " + from)
                .throwIfErrors();
    }

    /**
     * Returns the place at which a pipe ends.
     *
     * @param place from the left end of the eaves
     * @return a strip without width
     */
    public static LandingStrip pipeAt(Length place) {
        return new LandingStrip(place, place);
    }

    /** Returns for example {@code 1200 mm to 2400 mm}. */
    @Override
    public String toString() {
        return from.equals(to) ? "at " + from : from + " to " + to;
    }
}
