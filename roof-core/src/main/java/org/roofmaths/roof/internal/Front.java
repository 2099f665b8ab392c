package org.roofmaths.roof.internal;

import java.util.List;

/** A straight stretch of the rising eaves line, between two corners, all in one plane. */
final class Front {
    final int plane;
    /** An edge whose face this stretch is sweeping. */
    final int face;

    Corner start;
    Corner end;
    boolean alive = true;
    /** When its ends run together, or {@code null} if never as things stand. */
    Meeting collapse;

    // The other live fronts of the plane.
    Front onPlaneBefore;
    Front onPlaneAfter;

    // While one height is being settled: its length is nothing now; the place its end or start was cut to.
    boolean gone;
    Place startPlace;
    Place endPlace;
    List<Place> cutAt;
    boolean changed;

    Front(int plane, int face) {
        this.plane = plane;
        this.face = face;
    }
}
