package org.roofmaths.sheet;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * A part of a site sheet: one step of the way from drawing to finished roof.
 *
 * @param step which step of the way
 * @param items what stands there, in order
 * @since 0.1
 */
public record SheetSection(SheetStep step, List<SheetItem> items) implements Serializable {

    /** Copies the list, so that the section cannot change. */
    public SheetSection {
        Objects.requireNonNull(step, "step");
        items = List.copyOf(items);
    }
}
