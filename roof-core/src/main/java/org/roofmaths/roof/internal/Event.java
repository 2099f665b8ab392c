package org.roofmaths.roof.internal;

/** Something that may happen at a height: a front runs out, or an inward corner reaches a plane. */
final class Event {
    final Meeting at;
    /** The front that runs out, with its corners as they were; or {@code null}. */
    final Front front;

    final Corner start;
    final Corner end;
    /** The plane that the corner {@code start} reaches, if no front runs out. */
    final int plane;

    Event(Meeting at, Front front) {
        this.at = at;
        this.front = front;
        this.start = front.start;
        this.end = front.end;
        this.plane = -1;
    }

    Event(Meeting at, Corner corner, int plane) {
        this.at = at;
        this.front = null;
        this.start = corner;
        this.end = null;
        this.plane = plane;
    }

    boolean isStale() {
        return front != null ? !front.alive || front.start != start || front.end != end : !start.alive;
    }
}
