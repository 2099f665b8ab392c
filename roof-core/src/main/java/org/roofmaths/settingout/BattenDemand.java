package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;

/**
 * What a rule, or the caller, asks of the battens.
 *
 * @param width the width of a batten, up the slope
 * @param depth the depth of a batten, square to the slope
 * @param leastPiece the shortest piece that may be used
 * @param leastSupports the least number of rafters under a piece
 * @param joints how often joints may lie on one rafter, by gauge; empty if nothing is asked
 * @since 0.1
 */
public record BattenDemand(
        Figure<Length> width,
        Figure<Length> depth,
        Figure<Length> leastPiece,
        Figure<Integer> leastSupports,
        List<JointRule> joints)
        implements Serializable {
    /** Refuses null and copies the list. */
    public BattenDemand {
        Objects.requireNonNull(width, "width");
        Objects.requireNonNull(depth, "depth");
        Objects.requireNonNull(leastPiece, "leastPiece");
        Objects.requireNonNull(leastSupports, "leastSupports");
        joints = List.copyOf(joints);
    }
}
