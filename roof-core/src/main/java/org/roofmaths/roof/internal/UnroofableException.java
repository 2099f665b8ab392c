package org.roofmaths.roof.internal;

import java.util.List;

/** Thrown when an outline has no roof; it holds every fault that could be found at once. */
public final class UnroofableException extends Exception {
    private final transient List<Fault> faults;

    UnroofableException(List<Fault> faults) {
        super(faults.toString(), null, false, false);
        this.faults = List.copyOf(faults);
    }

    UnroofableException(Fault fault) {
        this(List.of(fault));
    }

    public List<Fault> faults() {
        return faults;
    }
}
