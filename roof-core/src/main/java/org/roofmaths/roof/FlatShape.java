package org.roofmaths.roof;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;

/**
 * A face laid flat: the eaves along the bottom, the slope straight up, every size at its true length on the slope.
 *
 * <p>Distances along are taken from the left end of the eaves to the right; distances up from the eaves (the fascia
 * line). A flat shape comes from a face of a {@link Roof}, from sizes measured on site, whose two ends may differ, or
 * from its corners. For example, {@code FlatShape.of(Ends.of(mm(3459), mm(3441)), mm(6100))} is 6100 mm wide, and 18 mm
 * out of true at the right.
 *
 * <p>Sizes are stored to the nanometre. Two flat shapes are equal if their corners and pitch are. Immutable and
 * thread-safe.
 *
 * @since 0.1
 */
public final class FlatShape implements Serializable {
    private static final long serialVersionUID = 1L;

    /** The corners do not make a face. */
    public static final ProblemCode NOT_A_FACE = ProblemCode.of(
            "flat-shape.not-a-face",
            "Give the corners once round against the clock, starting at the left end of the eaves, without crossing sides.");

    /** A size of a face is zero, below zero or beyond a kilometre. */
    public static final ProblemCode SIZE = ProblemCode.of("flat-shape.size", "Check the size and its unit.");

    /** A level lies above or below the face. */
    public static final ProblemCode NOT_ON_FACE =
            ProblemCode.of("flat-shape.not-on-face", "Ask for a level between the eaves and the top of the face.");

    private final List<FacePoint> corners;
    private final int eavesRight;
    private final int topLeft;
    private final int topRight;
    private final @Nullable Pitch pitch;

    private FlatShape(List<FacePoint> corners, int eavesRight, int topLeft, int topRight, @Nullable Pitch pitch) {
        this.corners = List.copyOf(corners);
        this.eavesRight = eavesRight;
        this.topLeft = topLeft;
        this.topRight = topRight;
        this.pitch = pitch;
    }

    /**
     * Returns a face with four square corners.
     *
     * @param width the width along the eaves, above zero
     * @param slopeLength the length up the slope from the fascia line, above zero
     * @return the face
     * @throws ProblemsException if a size is zero, below zero or over 1 km
     */
    public static FlatShape rectangle(Length width, Length slopeLength) {
        return of(Ends.both(slopeLength), width);
    }

    /**
     * Returns a face with both ends square to the eaves and of the lengths found there.
     *
     * @param slopeLengths the length up the slope from the fascia line, at the left end and at the right end, above
     *     zero
     * @param eavesWidth the width along the eaves, above zero
     * @return the face
     * @throws ProblemsException if a size is zero, below zero or over 1 km
     */
    public static FlatShape of(Ends<Length> slopeLengths, Length eavesWidth) {
        return of(slopeLengths, eavesWidth, eavesWidth);
    }

    /**
     * Returns a face whose width differs between eaves and top. The left end stands square to the eaves and the right
     * end takes the whole taper; where a face tapers otherwise, give its corners.
     *
     * @param slopeLengths the length up the slope from the fascia line, at the left end and at the right end, measured
     *     square to the eaves, above zero
     * @param eavesWidth the width along the eaves, above zero
     * @param topWidth the width along the top, measured parallel to the eaves, above zero
     * @return the face
     * @throws ProblemsException if a size is zero, below zero or over 1 km
     */
    public static FlatShape of(Ends<Length> slopeLengths, Length eavesWidth, Length topWidth) {
        Problems problems = Problems.none();
        Sizes.requireSize(problems, SIZE, "slope length at the left", slopeLengths.left());
        Sizes.requireSize(problems, SIZE, "slope length at the right", slopeLengths.right());
        Sizes.requireSize(problems, SIZE, "width at the eaves", eavesWidth);
        Sizes.requireSize(problems, SIZE, "width at the top", topWidth);
        problems.throwIfErrors();
        return ofCorners(List.of(
                FacePoint.of(Length.ZERO, Length.ZERO),
                FacePoint.of(eavesWidth, Length.ZERO),
                FacePoint.of(topWidth, slopeLengths.right()),
                FacePoint.of(Length.ZERO, slopeLengths.left())));
    }

    /**
     * Returns a face from its corners, once round against the clock as seen from outside: the left end of the eaves,
     * the right end of the eaves, then the others. Of four corners the third and fourth are the right and left end of
     * the top; of any other number the top is where the face reaches highest.
     *
     * @param corners at least three; the first two at distance 0 up the slope, no other below
     * @return the face
     * @throws ProblemsException if the corners do not make a face
     */
    public static FlatShape ofCorners(List<FacePoint> corners) {
        List<FacePoint> points = List.copyOf(corners);
        Problems problems = Problems.none();
        problems.require(
                points.size() >= 3, NOT_A_FACE, "a face", points.size() + " corners", "have at least 3 corners");
        problems.throwIfErrors();
        for (int i = 0; i < points.size(); i++) {
            FacePoint p = points.get(i);
            String where = "corner " + (i + 1);
            problems.require(
                    p.along().abs().compareTo(Sizes.LONGEST) <= 0 && p.up().compareTo(Sizes.LONGEST) <= 0,
                    SIZE,
                    where,
                    p,
                    "lie within " + Sizes.LONGEST);
            if (i < 2) {
                problems.require(p.up().isZero(), NOT_A_FACE, where, p, "lie on the eaves, 0 mm up");
            } else {
                problems.require(!p.up().isNegative(), NOT_A_FACE, where, p, "not lie below the eaves");
            }
        }
        problems.require(
                points.get(1).along().isLongerThan(points.get(0).along()),
                NOT_A_FACE,
                "corner 2",
                points.get(1),
                "lie to the right of corner 1, at " + points.get(0));
        problems.throwIfErrors();
        Rings ring = Rings.ofFace(points);
        for (int i : ring.repeatedCorners()) {
            problems.add(
                    Problem.error(NOT_A_FACE, "corner " + (i + 1), points.get(i), "differ from the corner before it"));
        }
        problems.throwIfErrors();
        for (int i : ring.spikes()) {
            problems.add(Problem.error(
                    NOT_A_FACE, "corner " + (i + 1), points.get(i), "not turn straight back along the side before it"));
        }
        problems.throwIfErrors();
        for (int[] pair : ring.crossings()) {
            problems.add(Problem.error(
                    NOT_A_FACE,
                    "side " + (pair[1] + 1),
                    "from " + points.get(pair[1]) + " to " + points.get(ring.next(pair[1])),
                    "keep clear of side " + (pair[0] + 1)));
        }
        problems.throwIfErrors();
        return points.size() == 4 ? new FlatShape(points, 1, 3, 2, null) : withHighestTop(points, 1, null);
    }

    /** A face of a solved roof, whose corners are known to be sound: its top is where it reaches highest. */
    static FlatShape ofSolvedFace(List<FacePoint> corners, Pitch pitch) {
        int right = 1;
        for (int i = 2; i < corners.size(); i++) {
            boolean further = corners.get(i).up().isZero()
                    && corners.get(i).along().isLongerThan(corners.get(right).along());
            right = further ? i : right;
        }
        return withHighestTop(corners, right, pitch);
    }

    private static FlatShape withHighestTop(List<FacePoint> points, int eavesRight, @Nullable Pitch pitch) {
        int left = 0;
        int right = 0;
        for (int i = 1; i < points.size(); i++) {
            int above = points.get(i).up().compareTo(points.get(left).up());
            if (above > 0) {
                left = i;
                right = i;
            } else if (above == 0) {
                left = points.get(i).along().isShorterThan(points.get(left).along()) ? i : left;
                right = points.get(i).along().isLongerThan(points.get(right).along()) ? i : right;
            }
        }
        return new FlatShape(points, eavesRight, left, right, pitch);
    }

    /**
     * Returns the corners, once round against the clock: the left end of the eaves, the right end of the eaves, the
     * others.
     */
    public List<FacePoint> corners() {
        return corners;
    }

    /**
     * Returns how far up the slope the left and the right end of the top lie, measured square to the eaves. On a face
     * that runs to a point, both are the height of the point.
     *
     * @return the slope length at each end
     */
    public Ends<Length> slopeLengths() {
        return Ends.of(corners.get(topLeft).up(), corners.get(topRight).up());
    }

    /** Returns the width along the eaves. */
    public Length eavesWidth() {
        return corners.get(eavesRight).along().minus(corners.get(0).along());
    }

    /** Returns the width along the top, measured parallel to the eaves; zero where the face runs to a point. */
    public Length topWidth() {
        return corners.get(topRight).along().minus(corners.get(topLeft).along());
    }

    /**
     * Returns the length of slope over one place along the eaves, measured square to the eaves.
     *
     * @param along the place, as distance to the right of the left end of the eaves
     * @return the length that lies on the face; zero beside it
     */
    public Length slopeLengthAt(Length along) {
        double at = Objects.requireNonNull(along, "along").toMetres();
        return totalOf(cuts(at, FacePoint::along, FacePoint::up));
    }

    /**
     * Returns the width of the face at one level, measured parallel to the eaves.
     *
     * @param up the level, as distance up the slope from the fascia line
     * @return the width that lies on the face, gaps left out; zero above or below it
     */
    public Length widthAt(Length up) {
        double at = Objects.requireNonNull(up, "up").toMetres();
        return totalOf(cuts(at, FacePoint::up, FacePoint::along));
    }

    /**
     * Returns the outermost ends of the face at one level, gaps between them or not.
     *
     * @param up the level, as distance up the slope from the fascia line, on the face
     * @return the distances along the eaves of the left and the right edge
     * @throws ProblemsException if the level lies above or below the face
     */
    public Ends<Length> edgesAt(Length up) {
        Objects.requireNonNull(up, "up");
        Length highest = highest();
        Problems problems = Problems.none();
        problems.require(
                !up.isNegative() && !up.isLongerThan(highest), NOT_ON_FACE, "up", up, "be from 0 mm to " + highest);
        problems.throwIfErrors();
        List<double[]> cuts = cuts(up.toMetres(), FacePoint::up, FacePoint::along);
        return Ends.of(Length.ofMetres(cuts.get(0)[0]), Length.ofMetres(cuts.get(cuts.size() - 1)[1]));
    }

    private Length highest() {
        return corners.stream().map(FacePoint::up).reduce(Length.ZERO, Length::max);
    }

    private static Length totalOf(List<double[]> cuts) {
        return Length.ofMetres(cuts.stream().mapToDouble(cut -> cut[1] - cut[0]).sum());
    }

    /**
     * The stretches of a straight line that lie on the face, edges included: the line on which one coordinate has a
     * fixed value, the stretches as pairs of the other coordinate, in rising order.
     */
    private List<double[]> cuts(double at, Function<FacePoint, Length> fixed, Function<FacePoint, Length> free) {
        // Closed stretches: where the line runs along a side or through a corner, look at it from both sides and join.
        List<double[]> found = new ArrayList<>();
        found.addAll(crossedBy(at, fixed, free, true));
        found.addAll(crossedBy(at, fixed, free, false));
        found.sort(Comparator.comparingDouble(cut -> cut[0]));
        List<double[]> joined = new ArrayList<>();
        for (double[] cut : found) {
            double[] last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && cut[0] <= last[1]) {
                last[1] = Math.max(last[1], cut[1]);
            } else {
                joined.add(cut);
            }
        }
        return joined;
    }

    private List<double[]> crossedBy(
            double at,
            Function<FacePoint, Length> fixed,
            Function<FacePoint, Length> free,
            boolean cornersCountAsBeyond) {
        double[] places = new double[corners.size()];
        int count = 0;
        for (int i = 0; i < corners.size(); i++) {
            FacePoint a = corners.get(i);
            FacePoint b = corners.get((i + 1) % corners.size());
            double from = fixed.apply(a).toMetres();
            double to = fixed.apply(b).toMetres();
            boolean fromBeyond = cornersCountAsBeyond ? from >= at : from > at;
            boolean toBeyond = cornersCountAsBeyond ? to >= at : to > at;
            if (fromBeyond != toBeyond) {
                double start = free.apply(a).toMetres();
                double end = free.apply(b).toMetres();
                places[count++] =
                        from == at ? start : to == at ? end : start + (end - start) * ((at - from) / (to - from));
            }
        }
        Arrays.sort(places, 0, count);
        List<double[]> stretches = new ArrayList<>();
        for (int i = 0; i + 1 < count; i += 2) {
            stretches.add(new double[] {places[i], places[i + 1]});
        }
        return stretches;
    }

    /** Returns the area of the face, on the slope. */
    public Area area() {
        return Area.ofSquareMetres(Rings.ofFace(corners).areaInSquareMetres(0));
    }

    /** Returns the pitch of the face; empty if the shape was made from bare sizes. */
    public Optional<Pitch> pitch() {
        return Optional.ofNullable(pitch);
    }

    /**
     * Returns the same shape with its pitch known.
     *
     * @param known the pitch of the rafters
     * @return the shape with that pitch
     */
    public FlatShape withPitch(Pitch known) {
        return new FlatShape(corners, eavesRight, topLeft, topRight, Objects.requireNonNull(known, "known"));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof FlatShape f && corners.equals(f.corners) && Objects.equals(pitch, f.pitch);
    }

    @Override
    public int hashCode() {
        return Objects.hash(corners, pitch);
    }

    /**
     * Returns for example {@code face 6100 mm wide at the eaves, 6100 mm at the top, slope length 3459 mm left, 3441 mm
     * right}.
     */
    @Override
    public String toString() {
        return "face " + eavesWidth() + " wide at the eaves, " + topWidth() + " at the top, slope length "
                + slopeLengths();
    }
}
