package org.roofmaths.roof.internal;

import java.util.Arrays;

/** A corner of the rising eaves line: it runs along the line where the planes of its two fronts meet. */
final class Corner {
    Front in;
    Front out;
    /** Where it began. */
    final int node;
    /** 1 for an outward corner (it leaves a hip), -1 for an inward one (a valley). */
    final int turn;

    boolean alive = true;
    /** The height up to which this corner has been held against every plane. */
    double scannedTo = Double.NEGATIVE_INFINITY;
    /** The planes it may reach, with bounds of the height; only the next ones are in the queue. */
    int[] ahead = NONE;

    double[] earliest = {};
    double[] latest = {};
    int aheadCount;
    int queued;

    private static final int[] NONE = {};

    Corner(Front in, Front out, int node, int turn) {
        this.in = in;
        this.out = out;
        this.node = node;
        this.turn = turn;
    }

    void ahead(int plane, double notBefore, double notAfter) {
        if (aheadCount == ahead.length) {
            int room = 2 * aheadCount + 6;
            ahead = Arrays.copyOf(ahead, room);
            earliest = Arrays.copyOf(earliest, room);
            latest = Arrays.copyOf(latest, room);
        }
        ahead[aheadCount] = plane;
        earliest[aheadCount] = notBefore;
        latest[aheadCount++] = notAfter;
    }

    void drop(int at) {
        aheadCount--;
        ahead[at] = ahead[aheadCount];
        earliest[at] = earliest[aheadCount];
        latest[at] = latest[aheadCount];
    }
}
