package org.roofmaths.rules;

import java.io.Serializable;

/**
 * How many battens may be joined over one rafter: at most so many in any so many that follow one another.
 *
 * @param joints at most this many joints
 * @param battens in any this many consecutive battens
 * @since 0.1
 */
public record JointLimit(int joints, int battens) implements Serializable {

    /** Refuses a count below one, and more joints than battens. */
    public JointLimit {
        if (joints < 1 || battens < joints) {
            throw new IllegalArgumentException(
                    "joints must be from 1 to the number of battens, but was " + joints + " in " + battens);
        }
    }

    /** Returns the limit in words, such as {@code 3 in any 12}. */
    @Override
    public String toString() {
        return joints + " in any " + battens;
    }
}
