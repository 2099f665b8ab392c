package org.roofmaths.sheet;

import java.io.Serializable;
import org.immutables.value.Value;
import org.roofmaths.units.Ratio;

/**
 * How a job is bought: pack sizes and what the buyer allows for cutting and breakage.
 *
 * @since 0.1
 */
@Value.Immutable
public interface JobOrder extends Serializable {

    /** Returns how many tiles or slates come in a pack; 1 if they are sold singly. */
    int unitsInPack();

    /** Returns what the buyer allows for broken units. */
    Ratio unitBreakage();

    /** Returns what the buyer allows for units spoilt in cutting. */
    Ratio unitCutting();

    /** Returns what the buyer allows for offcuts of battens. */
    Ratio battenCutting();

    /** Starts the order terms of a job. */
    static JobOrderBuilder builder() {
        return new JobOrderBuilder();
    }
}
