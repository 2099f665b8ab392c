package org.roofmaths.roof;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Figure;

/**
 * The least pitch that a kind of covering asks for, as a rule or its maker states it.
 *
 * <p>For example, {@code PitchDemand.of("plain tiles", pitch("35°")).withBuildUp(mm(85))}. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class PitchDemand implements Serializable {
    private static final long serialVersionUID = 1L;

    private final String covering;
    private final Figure<Pitch> leastPitch;
    private final @Nullable Length buildUp;

    private PitchDemand(String covering, Figure<Pitch> leastPitch, @Nullable Length buildUp) {
        this.covering = Objects.requireNonNull(covering, "covering");
        this.leastPitch = Objects.requireNonNull(leastPitch, "leastPitch");
        this.buildUp = buildUp;
    }

    /**
     * Returns the demand of a covering.
     *
     * @param covering what it is called
     * @param leastPitch the least rafter pitch it asks for
     * @return the demand
     */
    public static PitchDemand of(String covering, Pitch leastPitch) {
        return of(covering, Figure.given(Objects.requireNonNull(leastPitch, "leastPitch")));
    }

    /**
     * Returns the demand of a covering, with the origin of its figure.
     *
     * @param covering what it is called
     * @param leastPitch the least rafter pitch it asks for, and where that stands
     * @return the demand
     */
    public static PitchDemand of(String covering, Figure<Pitch> leastPitch) {
        return new PitchDemand(covering, leastPitch, null);
    }

    /**
     * Returns the same demand for a covering that lies thicker or thinner than the site's usual build-up.
     *
     * @param thickness from the tops of the rafters to the top of the covering, square to the slope
     * @return the demand with that build-up
     */
    public PitchDemand withBuildUp(Length thickness) {
        return new PitchDemand(covering, leastPitch, Objects.requireNonNull(thickness, "thickness"));
    }

    /** Returns what the covering is called. */
    public String covering() {
        return covering;
    }

    /** Returns the least rafter pitch it asks for. */
    public Figure<Pitch> leastPitch() {
        return leastPitch;
    }

    /** Returns its own build-up, square to the slope; empty if that of the site holds. */
    public Optional<Length> buildUp() {
        return Optional.ofNullable(buildUp);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof PitchDemand d
                && covering.equals(d.covering)
                && leastPitch.equals(d.leastPitch)
                && Objects.equals(buildUp, d.buildUp);
    }

    @Override
    public int hashCode() {
        return Objects.hash(covering, leastPitch.value(), buildUp);
    }

    /** Returns for example {@code plain tiles: at least 35°}. */
    @Override
    public String toString() {
        return covering + ": at least " + leastPitch.value();
    }
}
