package org.roofmaths.sheet;

import java.io.Serializable;
import org.immutables.value.Value;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.rules.UnderlayClass;
import org.roofmaths.rules.UnderlaySupport;
import org.roofmaths.units.Length;

/**
 * The underlay of a job.
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public interface JobUnderlay extends Serializable {

    /** Returns how vapour passes it. */
    UnderlayClass resistance();

    /** Returns what it lies on. */
    UnderlaySupport support();

    /** Returns the width of a roll. */
    Length rollWidth();

    /** Returns the length of a roll. */
    Length rollLength();

    /** Starts the underlay of a job. */
    static JobUnderlayBuilderStages.BuildStart builder() {
        return JobUnderlayBuilderStages.start();
    }
}
