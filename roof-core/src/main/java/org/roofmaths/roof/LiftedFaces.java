package org.roofmaths.roof;

import java.util.List;

/**
 * The faces of a roof as they leave the solver: corners in metres from the first corner of the plan, and each face as a
 * loop of corners against the clock as seen from above, starting at the left end of its eaves.
 */
record LiftedFaces(double[] x, double[] y, double[] height, List<Loop> loops) {

    /**
     * One face.
     *
     * @param side the number of the plan side that the face rises from
     * @param corners its corners, by number; the first two are the ends of its eaves
     * @param beyond what lies beyond the line from each corner to the next: the number of a face, or the number of a
     *     plan side less {@link #OUTSIDE}
     */
    record Loop(int side, int[] corners, int[] beyond) {}

    /** Taken from the number of a plan side to mark it as one. */
    static final int OUTSIDE = 1_000_000_000;
}
