package org.roofmaths.roof.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Raises a level line from the eaves through the roof and writes down what its corners trace: the hips, valleys,
 * ridges and breaks. This is the weighted straight skeleton, lifted to its height.
 *
 * <p><b>The picture.</b> Cut the roof at height z. Seen from above the cut is a set of loops, at the start the outline
 * itself. Every stretch of it, a <em>front</em>, lies in the plane of one face and moves into the plan at its own speed,
 * run over rise; a gable's does not move. A <em>corner</em> between two fronts runs along the line where their planes
 * meet. The part of the plan not yet swept only ever shrinks, so the loops stay simple until they touch
 * themselves, and what is to be done then follows from the touching alone.
 *
 * <p><b>When they touch.</b> Where loops come to touch at a point, either a front has run out there, or an inward corner
 * (more than half a turn inside) has arrived: two outward corners cannot meet, since what lies outside them takes up
 * more than a whole turn. Two fronts that meet face to face along a line do so between points of that kind. So it is
 * enough to foresee, for every front, when its ends run together, and for every inward corner, when it reaches the
 * plane of any other front; each of these is a point where three planes meet. Whether the front is really there is
 * asked when the time has come, of the fronts as they then are. (A corner reaches a plane once only, so nothing is
 * missed; foreseeing from the neighbours at the start, as early descriptions did, is wrong at inward corners.)
 *
 * <p><b>What is done.</b> All that happens at one height is settled together, point by point, with no order among them:
 * fronts are cut where something touches them; fronts of no length go; fronts that cover each other face to
 * face go too and leave a level ridge; then the fronts that leave a point are put in order around it, and each is joined
 * to the one next to it across ground not yet swept. One rule serves an end of a ridge, a split, the apex of a
 * pyramid, a cross, or a line of ridges at one height. Events at one height in different points have nothing to do with
 * each other, and events at different heights, however near, are taken in their true order, because {@link Planes}
 * decides order and place exactly. That is why no tolerance is needed here and why the loops stay simple to the end.
 *
 * <p><b>Fronts in one line.</b> If two fronts that are joined move the same way along one line, there is no corner. With
 * one plane they are one front, and their faces one face. With two slopes the surface has a choice; here the flatter
 * slope, which is the lower surface from there on, takes the whole line, and the steeper face ends in a level
 * break.
 *
 * <p><b>Gables</b> are planes of no speed and need no case of their own. If one stands at an inward corner the
 * eaves beside it moves past it, and the gable's plane is carried on over the plan as a wall that stands on the
 * lower face. A part of the plan with gables all round is never swept, which is reported.
 *
 * <p><b>Levels.</b> An eaves above the lowest stands still, as a gable does, until its level is reached. Should anything
 * touch it before, there is no roof that rises from the whole of that eaves, which is reported.
 *
 * <p>After O. Aichholzer and F. Aurenhammer, "Straight skeletons for general polygonal figures in the plane" (1996);
 * D. Eppstein and J. Erickson, "Raising roofs, crashing cycles, and playing pool" (1999); T. Kelly and P. Wonka,
 * "Interactive architectural modeling with procedural extrusions" (2011), for events in one place taken as one; T. Biedl
 * and others, "Weighted straight skeletons in the plane" (2015), for which of them have a choice.
 */
final class Wavefront {
    private final Outline outline;
    private final Planes planes;
    private final Traces traces;
    private final PriorityQueue<Event> queue;

    private Meeting now = Planes.atHeight(0);
    private int live;
    /** The first live front on each plane. */
    private final Front[] onPlane;

    /** The planes that may yet be reached, close together for {@link #scan}. */
    private final int[] open;

    private final double[] openX;
    private final double[] openY;
    private final double[] openC;
    private final double[] openS;
    private final int[] openAt;
    private final boolean[] toCome;
    private int opened;
    private double fastest;

    private final List<Place> places = new ArrayList<>();
    private final List<Front> cut = new ArrayList<>();
    private final List<Corner> straight = new ArrayList<>();
    private final List<Front> changed = new ArrayList<>();

    private final Front[] ofEdge;
    private final int[] byLevel;
    private int raised;
    /** The nodes made before the height that is being settled. */
    private int oldNodes;

    private Wavefront(Outline outline, Planes planes, Traces traces) {
        this.outline = outline;
        this.planes = planes;
        this.traces = traces;
        queue = new PriorityQueue<>(2 * outline.size + 1, (p, q) -> planes.compareTime(p.at, q.at));
        onPlane = new Front[planes.count];
        open = new int[planes.count];
        openX = new double[planes.count];
        openY = new double[planes.count];
        openC = new double[planes.count];
        openS = new double[planes.count];
        openAt = new int[planes.count];
        toCome = new boolean[planes.count];
        ofEdge = new Front[outline.size];
        byLevel = higherEaves();
    }

    static void raise(Outline outline, Planes planes, Traces traces) throws UnroofableException {
        Wavefront wavefront = new Wavefront(outline, planes, traces);
        wavefront.start();
        wavefront.run();
    }

    private int[] higherEaves() {
        double[] level = new double[outline.size];
        int low = 0;
        for (int e = 0; e < outline.size; e++) {
            level[e] = outline.level[e];
            low += outline.level[e] == 0 ? 1 : 0;
        }
        return low == outline.size ? new int[0] : Arrays.copyOfRange(Sort.ascending(level), low, outline.size);
    }

    // ---- the start ----

    private void start() throws UnroofableException {
        for (int p = 0; p < planes.count; p++) {
            openAt[p] = p;
            open[p] = p;
            openX[p] = planes.nx[p];
            openY[p] = planes.ny[p];
            openC[p] = planes.c[p];
            openS[p] = planes.s[p];
            fastest = Math.max(fastest, planes.s[p]);
        }
        opened = planes.count;
        for (int e : byLevel) {
            toCome[planes.ofEdge[e]] = true;
        }
        for (int e = 0; e < outline.size; e++) {
            int before = outline.prev[e];
            if (planes.line[planes.ofEdge[before]] != planes.line[planes.ofEdge[e]]) {
                Front front = new Front(planes.waiting[e], e);
                enter(front);
                ofEdge[e] = front;
                int f = e;
                int after = outline.next[e];
                while (planes.line[planes.ofEdge[after]] == planes.line[planes.ofEdge[e]]) {
                    if (planes.ofEdge[after] != planes.ofEdge[e]) {
                        Fault.Kind kind = outline.slope[f] == outline.slope[after]
                                ? Fault.Kind.LEVELS_AT_CORNER
                                : Fault.Kind.UNEQUAL_IN_LINE;
                        throw new UnroofableException(outline.faultAtCorner(kind, outline.start[after], f, after));
                    }
                    ofEdge[after] = front;
                    traces.sameFace(e, after);
                    f = after;
                    after = outline.next[after];
                }
            }
        }
        for (int e = 0; e < outline.size; e++) {
            int after = outline.next[e];
            if (ofEdge[after] != ofEdge[e]) {
                join(ofEdge[e], ofEdge[after], outline.end[e]);
            }
        }
        refresh();
    }

    private void enter(Front front) {
        live++;
        Front other = onPlane[front.plane];
        front.onPlaneAfter = other;
        if (other != null) {
            other.onPlaneBefore = front;
        }
        onPlane[front.plane] = front;
    }

    private void leave(Front front) {
        live--;
        front.alive = false;
        if (front.onPlaneBefore != null) {
            front.onPlaneBefore.onPlaneAfter = front.onPlaneAfter;
        } else {
            onPlane[front.plane] = front.onPlaneAfter;
        }
        if (front.onPlaneAfter != null) {
            front.onPlaneAfter.onPlaneBefore = front.onPlaneBefore;
        }
        if (onPlane[front.plane] == null && !toCome[front.plane]) {
            close(front.plane);
        }
    }

    private void close(int plane) {
        int gap = openAt[plane];
        int last = --opened;
        open[gap] = open[last];
        openX[gap] = openX[last];
        openY[gap] = openY[last];
        openC[gap] = openC[last];
        openS[gap] = openS[last];
        openAt[open[gap]] = gap;
    }

    // ---- one height after another ----

    private void run() throws UnroofableException {
        while (live > 0) {
            Meeting level = raised < byLevel.length ? Planes.atHeight(outline.level[byLevel[raised]]) : null;
            Event first = queue.peek();
            if (first == null && level == null) {
                throw neverCovered();
            }
            now = first == null || level != null && planes.compareTime(level, first.at) < 0 ? level : first.at;
            while (!queue.isEmpty() && planes.compareTime(queue.peek().at, now) == 0) {
                notice(queue.poll());
            }
            if (!places.isEmpty()) {
                settle();
            }
            if (level != null && planes.compareTime(level, now) == 0) {
                raiseEaves();
            }
            refresh();
        }
    }

    private UnroofableException neverCovered() {
        List<Integer> edges = new ArrayList<>();
        Front any = null;
        for (Front first : onPlane) {
            for (Front f = first; f != null; f = f.onPlaneAfter) {
                edges.add(f.face);
                any = f;
            }
        }
        int[] shut =
                edges.stream().mapToInt(Integer::intValue).sorted().distinct().toArray();
        int node = any.start.node;
        return new UnroofableException(outline.fault(Fault.Kind.NEVER_COVERED, traces.x(node), traces.y(node), shut));
    }

    private void notice(Event event) {
        if (event.isStale()) {
            return;
        }
        if (event.front != null) {
            event.front.gone = true;
            Place place = placeAt(event.at);
            arrive(place, event.start);
            arrive(place, event.end);
            return;
        }
        Corner corner = event.start;
        if (--corner.queued == 0) {
            foreseeNext(corner);
        }
        for (Front f = onPlane[event.plane]; f != null; f = f.onPlaneAfter) {
            int fromStart = planes.side(f.start.in.plane, event.at) * f.start.turn;
            int fromEnd = planes.side(f.end.out.plane, event.at) * f.end.turn;
            if (fromStart >= 0 && fromEnd >= 0) {
                Place place = placeAt(event.at);
                arrive(place, corner);
                if (fromStart == 0) {
                    arrive(place, f.start);
                }
                if (fromEnd == 0) {
                    arrive(place, f.end);
                }
                if (fromStart > 0 && fromEnd > 0 && !place.cuts.contains(f)) {
                    place.cuts.add(f);
                }
            }
        }
    }

    private Place placeAt(Meeting at) {
        for (int i = places.size() - 1; i >= 0; i--) {
            if (planes.isSamePoint(places.get(i).at, at)) {
                return places.get(i);
            }
        }
        Place place = new Place(at);
        places.add(place);
        return place;
    }

    private static void arrive(Place place, Corner corner) {
        if (!place.corners.contains(corner)) {
            place.corners.add(corner);
        }
    }

    // ---- settling one height ----

    private void settle() throws UnroofableException {
        oldNodes = traces.nodes();
        for (Place place : places) {
            place.node = traces.node(planes, place.at);
            for (Front f : place.cuts) {
                requireRisen(f, place.corners.get(0).in, place.at.x, place.at.y);
                if (f.cutAt == null) {
                    f.cutAt = new ArrayList<>(2);
                    cut.add(f);
                }
                f.cutAt.add(place);
            }
        }
        for (Front f : cut) {
            cut(f);
        }
        for (Place place : places) {
            for (Corner corner : place.corners) {
                end(corner, place);
            }
        }
        for (Place place : places) {
            cancelFaceToFace(place);
        }
        for (Place place : places) {
            joinAround(place);
        }
        for (int i = 0; i < straight.size(); i++) {
            straighten(straight.get(i));
        }
        places.clear();
        cut.clear();
        straight.clear();
    }

    /** An eaves that waits for its level must not be touched. */
    private void requireRisen(Front front, Front by, double x, double y) throws UnroofableException {
        if (front.plane != planes.ofEdge[front.face]) {
            throw new UnroofableException(outline.fault(Fault.Kind.EAVES_OVERRUN, x, y, front.face, by.face));
        }
    }

    /** Cuts a front wherever something touched it between its ends. */
    private void cut(Front front) {
        List<Place> along = front.cutAt;
        front.cutAt = null;
        along.sort((p, q) -> compareAlong(front.plane, p.at, q.at));
        Front head = front;
        for (Place place : along) {
            Front tail = new Front(front.plane, front.face);
            enter(tail);
            tail.end = head.end;
            tail.end.in = tail;
            head.endPlace = place;
            tail.startPlace = place;
            place.ins.add(head);
            place.outs.add(tail);
            head = tail;
        }
    }

    /** Orders two points of one front as they come along it. */
    private int compareAlong(int plane, Meeting m, Meeting o) {
        if (m == o) {
            return 0;
        }
        int across = !planes.isParallel(o.i, plane) ? o.i : !planes.isParallel(o.j, plane) ? o.j : o.k;
        return planes.side(across, m) * planes.turn(across, plane);
    }

    private void end(Corner corner, Place place) throws UnroofableException {
        requireRisen(corner.in, corner.out, place.at.x, place.at.y);
        requireRisen(corner.out, corner.in, place.at.x, place.at.y);
        traces.corner(corner, place.node);
        corner.alive = false;
        if (corner.in.gone) {
            if (corner.in.alive) {
                leave(corner.in);
            }
        } else {
            corner.in.endPlace = place;
            place.ins.add(corner.in);
        }
        if (corner.out.gone) {
            if (corner.out.alive) {
                leave(corner.out);
            }
        } else {
            corner.out.startPlace = place;
            place.outs.add(corner.out);
        }
    }

    /** Takes away fronts that leave this place on one ray, face to face, with nothing left between them. */
    private void cancelFaceToFace(Place place) throws UnroofableException {
        for (int i = place.outs.size() - 1; i >= 0; i--) {
            Front out = place.outs.get(i);
            for (Front in : place.ins) {
                if (planes.isParallel(out.plane, in.plane) && !planes.isSameWay(out.plane, in.plane)) {
                    Place other = out.endPlace;
                    if (other == null || other != in.startPlace) {
                        throw notProved(place.at, out.face);
                    }
                    traces.line(place.node, other.node, in.face, out.face, ArcKind.RIDGE);
                    place.outs.remove(out);
                    place.ins.remove(in);
                    other.ins.remove(out);
                    other.outs.remove(in);
                    leave(out);
                    leave(in);
                    break;
                }
            }
        }
    }

    private UnroofableException notProved(Meeting at, int edge) {
        return new UnroofableException(outline.fault(Fault.Kind.NOT_PROVED, at.x, at.y, edge));
    }

    /** Joins each front that leaves the place to the one that comes in next to its left, across unswept ground. */
    private void joinAround(Place place) throws UnroofableException {
        int n = place.ins.size();
        if (n != place.outs.size()) {
            throw notProved(place.at, place.corners.get(0).in.face);
        }
        if (n == 1) {
            join(place.ins.get(0), place.outs.get(0), place.node);
            return;
        }
        List<Front> rays = new ArrayList<>(place.outs);
        rays.addAll(place.ins);
        rays.sort((p, q) -> planes.compareRays(p.plane, p.endPlace == place, q.plane, q.endPlace == place));
        for (int i = 0; i < rays.size(); i++) {
            Front out = rays.get(i);
            if (out.startPlace == place) {
                Front in = rays.get((i + 1) % rays.size());
                if (in.endPlace != place) {
                    throw notProved(place.at, out.face);
                }
                join(in, out, place.node);
            }
        }
    }

    private void join(Front in, Front out, int node) throws UnroofableException {
        int turn = planes.turn(in.plane, out.plane);
        Corner corner = new Corner(in, out, node, turn);
        in.end = corner;
        out.start = corner;
        if (turn != 0) {
            change(in);
            change(out);
        } else if (planes.isSameWay(in.plane, out.plane)) {
            straight.add(corner);
        } else {
            throw new UnroofableException(
                    outline.fault(Fault.Kind.NOT_PROVED, traces.x(node), traces.y(node), in.face));
        }
    }

    private void change(Front front) {
        if (!front.changed) {
            front.changed = true;
            changed.add(front);
        }
    }

    /** Makes one front of two in one line: of one plane as they are, of two by letting the flatter one go on. */
    private void straighten(Corner corner) throws UnroofableException {
        Front in = corner.in;
        Front out = corner.out;
        corner.alive = false;
        if (in.plane == out.plane) {
            traces.sameFace(in.face, out.face);
            in.end = out.end;
            in.end.in = in;
            leave(out);
            change(in);
        } else if (planes.isFlatter(out.plane, in.plane)) {
            Corner far = in.start;
            if (straight.contains(far)) {
                far.out = out;
                out.start = far;
            } else {
                far = cornerInstead(far, far.in, out, in.plane);
            }
            traces.line(far.node, corner.node, out.face, in.face, ArcKind.BREAK);
            leave(in);
            change(out);
        } else {
            Corner far = out.end;
            if (straight.contains(far)) {
                far.in = in;
                in.end = far;
            } else {
                far = cornerInstead(far, in, far.out, out.plane);
            }
            traces.line(corner.node, far.node, in.face, out.face, ArcKind.BREAK);
            leave(out);
            change(in);
        }
    }

    /** A corner that goes on as another, because a front beside it has given way to one of another slope. */
    private Corner cornerInstead(Corner far, Front in, Front out, int gone) throws UnroofableException {
        int node = far.node;
        if (node < oldNodes) {
            int other = far.in == in ? in.plane : out.plane;
            int flatter = far.in == in ? out.plane : in.plane;
            Meeting at = planes.meet(other, gone, flatter);
            requireRisen(far.in, far.out, at.x, at.y);
            requireRisen(far.out, far.in, at.x, at.y);
            node = traces.node(planes, at);
            traces.corner(far, node);
        }
        far.alive = false;
        Corner corner = new Corner(in, out, node, far.turn);
        in.end = corner;
        out.start = corner;
        change(in);
        change(out);
        return corner;
    }

    /** Starts the eaves whose level has come: from here on each lies in the plane of its face. */
    private void raiseEaves() throws UnroofableException {
        int e = byLevel[raised];
        long level = outline.level[e];
        while (raised < byLevel.length && outline.level[byLevel[raised]] == level) {
            e = byLevel[raised++];
            Front old = ofEdge[e];
            if (!old.alive) {
                continue; // a neighbour in one line has raised it
            }
            toCome[planes.ofEdge[e]] = false;
            Front front = new Front(planes.ofEdge[e], old.face);
            enter(front);
            leave(old);
            old.start.alive = false;
            old.end.alive = false;
            join(old.start.in, front, old.start.node);
            join(front, old.end.out, old.end.node);
        }
    }

    // ---- foreseeing ----

    private void refresh() {
        for (Front front : changed) {
            front.changed = false;
            if (front.alive) {
                foreseeCollapse(front);
            }
        }
        for (Front front : changed) {
            if (front.alive) {
                scanIfNeeded(front.start);
                scanIfNeeded(front.end);
            }
        }
        changed.clear();
    }

    /**
     * Its length falls with height if the sign below is positive; it is above nothing now, so it runs out later.
     */
    private void foreseeCollapse(Front front) {
        int i = front.start.in.plane;
        int j = front.plane;
        int k = front.end.out.plane;
        front.collapse = null;
        if (planes.approach(i, j, k) * front.start.turn * front.end.turn > 0) {
            front.collapse = planes.meet(i, j, k);
            queue.add(new Event(front.collapse, front));
        }
    }

    /** An inward corner lives no longer than its two fronts; what it may reach before that is foreseen. */
    private void scanIfNeeded(Corner corner) {
        if (corner.turn < 0) {
            double until = Math.min(latest(corner.in), latest(corner.out));
            if (until > corner.scannedTo) {
                scan(corner, Math.max(now.z - now.errZ, corner.scannedTo), until);
                corner.scannedTo = until;
                if (corner.queued == 0) {
                    foreseeNext(corner);
                }
            }
        }
    }

    private static double latest(Front front) {
        return front.collapse == null ? Double.POSITIVE_INFINITY : front.collapse.z + front.collapse.errZ;
    }

    /**
     * Notes each plane that an inward corner may come to between two heights. With N and D the two determinants of the
     * three planes, the height is N / D, and D is negative where the corner comes from the unswept side. What
     * lies surely outside is left out, without a division; the rest is noted with bounds.
     */
    private void scan(Corner corner, double from, double until) {
        int e = corner.in.plane;
        int g = corner.out.plane;
        double xeg = planes.cross(e, g);
        double a1 = planes.c[g] * planes.ny[e] - planes.c[e] * planes.ny[g];
        double a2 = planes.c[e] * planes.nx[g] - planes.c[g] * planes.nx[e];
        double b1 = planes.s[g] * planes.ny[e] - planes.s[e] * planes.ny[g];
        double b2 = planes.s[e] * planes.nx[g] - planes.s[g] * planes.nx[e];
        double errN = 2 * planes.errN();
        double errD = 2 * planes.errD(e, g, e) + planes.errD(e, g, g) + 0x1p-48 * fastest;
        double errFrom = errN + Math.abs(from) * errD;
        boolean endless = until == Double.POSITIVE_INFINITY;
        double to = endless ? 0 : until;
        double errTo = endless ? Double.POSITIVE_INFINITY : errN + Math.abs(to) * errD;
        for (int t = 0; t < opened; t++) {
            double d = b1 * openX[t] + b2 * openY[t] + xeg * openS[t];
            double n = a1 * openX[t] + a2 * openY[t] + xeg * openC[t];
            if (d <= errD && n - from * d <= errFrom && to * d - n <= errTo) {
                int plane = open[t];
                if (d < -2 * errD) {
                    if (plane != e && plane != g) {
                        double z = n / d;
                        double err = (errN + Math.abs(z) * errD) / (-d - errD);
                        corner.ahead(plane, z - err, z + err);
                    }
                } else if (planes.approach(e, g, plane) < 0) {
                    Meeting at = planes.meet(e, g, plane);
                    corner.ahead(plane, at.z - at.errZ, at.z + at.errZ);
                }
            }
        }
    }

    /** Puts what a corner may reach next into the queue: the first of its planes, and all that may be before it. */
    private void foreseeNext(Corner corner) {
        while (corner.queued == 0 && corner.aheadCount > 0) {
            double first = Double.POSITIVE_INFINITY;
            for (int t = 0; t < corner.aheadCount; t++) {
                first = Math.min(first, corner.latest[t]);
            }
            for (int t = corner.aheadCount - 1; t >= 0; t--) {
                if (corner.earliest[t] <= first) {
                    Meeting at = planes.meet(corner.in.plane, corner.out.plane, corner.ahead[t]);
                    if (planes.compareTime(at, now) > 0) {
                        queue.add(new Event(at, corner, corner.ahead[t]));
                        corner.queued++;
                    }
                    corner.drop(t);
                }
            }
        }
    }
}
