package org.roofmaths.ventilation;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.roof.RoofEdge;

/**
 * The way of the air up one bay of a face: the edge it starts from, the edge it ends at, and whether each has an opening.
 *
 * @param bay the bay, its places measured from the left end of the face's eaves
 * @param below the edge at its foot
 * @param above the edge at its head
 * @param inlet whether an opening is asked for at its foot
 * @param outlet whether an opening is asked for at its head
 * @since 0.1
 */
public record BayPath(Bay bay, RoofEdge below, RoofEdge above, Opened inlet, Opened outlet) implements Serializable {
    private static final long serialVersionUID = 1L;

    /** Whether an edge has an opening for a bay. */
    public enum Opened {
        /** An opening is asked for along the edge. */
        OPEN,
        /** The edge has no opening. */
        CLOSED
    }

    /** Keeps the parts. */
    public BayPath {
        Objects.requireNonNull(bay, "bay");
        Objects.requireNonNull(below, "below");
        Objects.requireNonNull(above, "above");
        Objects.requireNonNull(inlet, "inlet");
        Objects.requireNonNull(outlet, "outlet");
    }

    /** Tells whether the bay lacks an inlet. */
    public boolean lacksInlet() {
        return inlet == Opened.CLOSED;
    }

    /** Tells whether the bay lacks an outlet. */
    public boolean lacksOutlet() {
        return outlet == Opened.CLOSED;
    }

    /** Returns for example {@code bay 1, 47 mm to 600 mm: main eaves (open) to hip front/left (closed)}. */
    @Override
    public String toString() {
        return bay + ": " + below.name() + (lacksInlet() ? " (closed)" : " (open)") + " to " + above.name()
                + (lacksOutlet() ? " (closed)" : " (open)");
    }
}
