package org.roofmaths.working;

import java.io.Serializable;

/**
 * A sum that tells its steps to a recorder while it runs.
 *
 * @param <T> the type of the answer
 * @since 0.1
 */
@FunctionalInterface
public interface Calculation<T> extends Serializable {

    /**
     * Runs the sum.
     *
     * @param recorder hears each figure used and each step reached
     * @return the answer
     */
    T run(Recorder recorder);
}
