package org.roofmaths.roof;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.immutables.value.Value;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;

/**
 * What a lean-to must fit between: the plate below, and a sill, soffit or other limit on the wall above.
 *
 * <p>All heights are over one datum. The builder asks for the required parts in the order in which they are listed
 * here.
 *
 * <pre>{@code
 * LeanToSite site = LeanToSite.builder()
 *         .plateHeight(metres(2.3))
 *         .projection(metres(3))
 *         .upperLimit(joints.highestUnder(given(mm(4600))))   // the bed joint under the sill
 *         .upstand(given(mm(75)))
 *         .buildUp(mm(90))
 *         .addDemands(PitchDemand.of("plain tiles", pitch("35°")))
 *         .build();
 * }</pre>
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public interface LeanToSite extends Serializable {

    /** Returns the height of the rafter plane at the plate line. */
    Length plateHeight();

    /** Returns the level distance from the face of the wall above to the plate line, above zero. */
    Length projection();

    /**
     * Returns the height up to which the flashing may reach on the wall: in brickwork the bed joint under the sill, in
     * stone or render the chase.
     */
    Figure<Length> upperLimit();

    /** Returns how far the flashing stands up the wall above the covering, plumb, zero or more. */
    Figure<Length> upstand();

    /**
     * Returns the thickness of what lies on the rafters at the wall, up to the highest part of the covering, measured
     * square to the slope, zero or more.
     */
    Length buildUp();

    /** Returns the level distance from the plate line out to the fascia line; zero unless set. */
    @Value.Default
    default Length eavesOverhang() {
        return Length.ZERO;
    }

    /**
     * Returns how far the underside of the gutter hangs plumb below the rafter plane at the fascia line; zero unless
     * set.
     */
    @Value.Default
    default Length gutterDrop() {
        return Length.ZERO;
    }

    /** Returns the height below which the gutter must not hang, such as the head of a door; empty if there is none. */
    Optional<Figure<Length>> lowerLimit();

    /** Returns the coverings in question and the pitches they ask for; may be empty. */
    List<PitchDemand> demands();

    /** Starts a site; the first part asked for is the plate height. */
    static LeanToSiteBuilderStages.BuildStart builder() {
        return LeanToSiteBuilderStages.start();
    }
}
