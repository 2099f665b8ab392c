package org.roofmaths.sheet;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.immutables.value.Value;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.settingout.Change;
import org.roofmaths.units.Length;
import org.roofmaths.units.Offset;
import org.roofmaths.units.Range;

/**
 * What the builder decides about battens and columns, and the timber they lie on.
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public interface JobSettingOut extends Serializable {

    /** Returns how far the tails of the eaves course reach past the fascia line. */
    Offset overhangIntoGutter();

    /** Returns the distance on the slope from the top batten, or top nail line, to the apex line. */
    Length topDistance();

    /** Returns the level distance from rafter to rafter. */
    Length rafterCentres();

    /** Returns the width of a rafter. */
    Length rafterWidth();

    /** Returns the depth of a rafter, square to its top edge. */
    Length rafterDepth();

    /** Returns the depth of a batten, square to the slope. */
    Length battenDepth();

    /** Returns the width of a batten, up the slope. */
    Length battenWidth();

    /** Returns the length in which battens are sold. */
    Length battenStock();

    /** Returns how far the covering may reach past a gable; empty if no end is a verge. */
    Optional<Range<Length>> vergeOverhang();

    /** Returns the gap allowed between covering and wall; empty if no end is an abutment. */
    Optional<Range<Length>> abutmentGap();

    /** Returns what may be changed if nothing fits, the preferred change first. */
    List<Change> preference();

    /** Starts the setting out of a job. */
    static JobSettingOutBuilderStages.BuildStart builder() {
        return JobSettingOutBuilderStages.start();
    }
}
