package org.roofmaths.working;

import java.io.Serializable;
import java.util.Optional;

/**
 * A number and where it came from.
 *
 * <p>There are four kinds: {@link Given} (the caller said so), {@link Sourced} (a row of a document), {@link Assumed} (the
 * library's own default, always printed) and {@link Worked} (the answer of a sum, with its working). A method that takes a plain
 * value treats it as given; where a rule or an earlier answer may speak, it takes a {@code Figure}, so that the trail is never lost.
 *
 * @param <T> the type of the value
 * @since 0.1
 */
public sealed interface Figure<T> extends Serializable permits Given, Sourced, Assumed, Worked {

    /** Returns the value. */
    T value();

    /**
     * Returns the weakest ground that the value stands on, looking through the whole working.
     *
     * @return empty if no sourced figure is involved
     */
    Optional<Provenance> weakestProvenance();

    /**
     * Returns the origin in a few words, as printed behind the value in a working: {@code given}, {@code assumed: …}, a citation.
     *
     * @return the words; empty for a worked figure, which prints its formula instead
     */
    String origin();

    /**
     * Returns a figure that the caller vouches for.
     *
     * @param <T> the type of the value
     * @param value the value
     * @return the figure
     */
    static <T> Given<T> given(T value) {
        return Given.of(value);
    }
}
