package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;
import org.roofmaths.units.Range;
import org.roofmaths.working.Figure;

/**
 * How often battens may be joined on one rafter: at most so many joints in so many battens that follow each other.
 *
 * @param gauge the gauges for which the rule holds
 * @param most the most joints on one rafter
 * @param among in any so many consecutive battens
 * @since 0.1
 */
public record JointRule(Range<Length> gauge, Figure<Integer> most, Figure<Integer> among) implements Serializable {
    /** Refuses null. */
    public JointRule {
        Objects.requireNonNull(gauge, "gauge");
        Objects.requireNonNull(most, "most");
        Objects.requireNonNull(among, "among");
    }

    /** Returns for example {@code at most 1 joint in 4 battens on one rafter}. */
    @Override
    public String toString() {
        return "at most " + most.value() + (most.value() == 1 ? " joint in " : " joints in ") + among.value()
                + " battens on one rafter";
    }
}
