package org.roofmaths.roof;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;
import org.roofmaths.working.Working;

/**
 * One plane slope of a roof: the surface that rises from one eaves.
 *
 * <p>All sizes are those of the rafter plane, the plane of the tops of the rafters. A length or area {@code alongSlope}
 * is measured in that plane; one {@code onPlan} is what a plan from above shows. For example, a face 5200 mm wide over
 * a run of 3150 mm at 32° is 3714.4 mm long up the slope and has 19.315 m² along the slope, 16.38 m² on plan.
 *
 * <p>Faces are made by {@link Roof}. Two faces are equal if they have the same name, pitch and corners. Immutable and
 * thread-safe.
 *
 * @since 0.1
 */
public final class RoofFace implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The angle of the rafters from the level. */
    public static final Term<Pitch> RAFTER_PITCH = Term.of("rafter pitch", "p", Pitch.class);

    /** The width of the face along its eaves, verge overhangs included. */
    public static final Term<Length> EAVES_WIDTH = Term.of("eaves width", "w", Length.class);

    /** The width of the face along its top. */
    public static final Term<Length> TOP_WIDTH = Term.of("top width", "t", Length.class);

    /** The level distance from the plate line to the apex line. */
    public static final Term<Length> RUN = Term.of("run, plate to apex", "r", Length.class);

    /** The level distance from the plate line out to the fascia line. */
    public static final Term<Length> EAVES_OVERHANG = Term.of("eaves overhang, level", "o", Length.class);

    /** The level distance from the fascia line to the apex line. */
    public static final Term<Length> RUN_FROM_FASCIA = Term.of("run, fascia to apex", "R", Length.class);

    /** The length up the slope from the fascia line to the apex line. */
    public static final Term<Length> SLOPE_LENGTH = Term.of("slope length, fascia to apex", "L", Length.class);

    /** The area of the face in its own plane. */
    public static final Term<Area> AREA_ALONG_SLOPE = Term.of("area along the slope", "A", Area.class);

    /** The area that the face covers on plan. */
    public static final Term<Area> AREA_ON_PLAN = Term.of("area on plan", "P", Area.class);

    /** The height of the rafter plane at the plate line, over the datum of the plan. */
    public static final Term<Length> PLATE_HEIGHT = Term.of("plate height", "H", Length.class);

    /** The height of the rafter plane at the fascia line, over the datum of the plan. */
    public static final Term<Length> FASCIA_HEIGHT = Term.of("fascia height", "F", Length.class);

    /** The height of the rafter plane at the apex line, over the datum of the plan. */
    public static final Term<Length> APEX_HEIGHT = Term.of("apex height", "Z", Length.class);

    /** The height of the apex line over the plate line. */
    public static final Term<Length> RISE = Term.of("rise, plate to apex", "h", Length.class);

    /** The level distance between two lines of the face. */
    public static final Term<Length> RUN_BETWEEN = Term.of("run between the lines", "b", Length.class);

    /** The length up the slope between two lines of the face. */
    public static final Term<Length> SLOPE_LENGTH_BETWEEN =
            Term.of("slope length between the lines", "l", Length.class);

    /** How far along the eaves a corner lies. */
    public static final Term<Length> CORNER_ALONG = Term.of("corner, along the eaves", "a", Length.class);

    /** How far from the fascia line a corner lies, level. */
    public static final Term<Length> CORNER_IN = Term.of("corner, level from the fascia line", "u", Length.class);

    /** A line was asked for that a bare roof does not have. */
    public static final ProblemCode NO_SUCH_LINE = ProblemCode.of(
            "face.no-such-line",
            "Ask the layout of the covering for its tail line; a bare face ends at its fascia line.");

    /** An edge was asked for that the face does not have, or has more than once. */
    public static final ProblemCode NO_SUCH_EDGE =
            ProblemCode.of("face.no-such-edge", "List the edges of the face and pick one by its name.");

    private static final Formula RUN_FROM_FASCIA_SUM = Formula.of(RUN_FROM_FASCIA, RUN.plus(EAVES_OVERHANG));
    private static final Formula SLOPE_LENGTH_BY_PITCH =
            Formula.of(SLOPE_LENGTH, RUN_FROM_FASCIA.over(RAFTER_PITCH.cos()));
    private static final Formula RISE_BY_PITCH = Formula.of(RISE, RUN.times(RAFTER_PITCH.tan()));
    private static final Formula APEX_OVER_PLATE = Formula.of(APEX_HEIGHT, PLATE_HEIGHT.plus(RISE));
    private static final Formula FASCIA_UNDER_PLATE =
            Formula.of(FASCIA_HEIGHT, PLATE_HEIGHT.minus(EAVES_OVERHANG.times(RAFTER_PITCH.tan())));
    private static final Formula PLAN_OF_RECTANGLE = Formula.of(AREA_ON_PLAN, EAVES_WIDTH.times(RUN_FROM_FASCIA));
    private static final Formula SLOPE_OF_RECTANGLE = Formula.of(AREA_ALONG_SLOPE, EAVES_WIDTH.times(SLOPE_LENGTH));
    private static final Formula PLAN_OF_TRIANGLE =
            Formula.of(AREA_ON_PLAN, EAVES_WIDTH.times(RUN_FROM_FASCIA).over(2));
    private static final Formula SLOPE_OF_TRIANGLE =
            Formula.of(AREA_ALONG_SLOPE, EAVES_WIDTH.times(SLOPE_LENGTH).over(2));
    private static final Formula PLAN_OF_TRAPEZIUM =
            Formula.of(AREA_ON_PLAN, EAVES_WIDTH.plus(TOP_WIDTH).over(2).times(RUN_FROM_FASCIA));
    private static final Formula SLOPE_OF_TRAPEZIUM =
            Formula.of(AREA_ALONG_SLOPE, EAVES_WIDTH.plus(TOP_WIDTH).over(2).times(SLOPE_LENGTH));
    private static final Formula SLOPE_OF_PLAN = Formula.of(AREA_ALONG_SLOPE, AREA_ON_PLAN.over(RAFTER_PITCH.cos()));
    private static final Formula SLOPE_BETWEEN_BY_PITCH =
            Formula.of(SLOPE_LENGTH_BETWEEN, RUN_BETWEEN.over(RAFTER_PITCH.cos()));

    private final Roof roof;
    private final int number;
    private final String name;
    private final Figure<Pitch> pitch;
    private final Figure<Length> overhang;
    private final Figure<Length> plateHeight;
    private final FaceFigures figures;
    private final List<SpacePoint> polygon;
    private final List<List<SpacePoint>> cutouts;
    private final double[][] along;
    private final double[][] in;
    private final double eavesX;
    private final double eavesY;
    private final Shape shape;
    private final Numbers numbers;

    /** The numbers of a face, all from one run. */
    private record Numbers(
            Length rise,
            Length fascia,
            Length apex,
            Length runFromFascia,
            Length slopeLength,
            Area areaOnPlan,
            Area areaAlongSlope)
            implements Serializable {}

    /** Which formula gives the area. */
    private enum Shape {
        RECTANGLE,
        TRIANGLE,
        TRAPEZIUM,
        OTHER
    }

    RoofFace(
            Roof roof,
            int number,
            PlanSide side,
            Lifted lifted,
            Lifted.Face face,
            SpacePoint[] corners,
            @Nullable FaceFigures known) {
        EdgeTreatment.Eaves eaves = (EdgeTreatment.Eaves) side.treatment();
        this.roof = roof;
        this.number = number;
        this.name = side.name();
        this.pitch = eaves.pitch();
        this.overhang = eaves.overhang();
        this.plateHeight = eaves.plateHeight();
        List<List<SpacePoint>> outlines = new ArrayList<>();
        for (int[] ring : face.rings()) {
            List<SpacePoint> points = new ArrayList<>();
            for (int corner : ring) {
                points.add(corners[corner]);
            }
            outlines.add(List.copyOf(points));
        }
        this.polygon = outlines.get(0);
        this.cutouts = List.copyOf(outlines.subList(1, outlines.size()));
        int[] around = face.rings().get(0);
        double length = StrictMath.hypot(
                lifted.x()[around[1]] - lifted.x()[around[0]], lifted.y()[around[1]] - lifted.y()[around[0]]);
        this.eavesX = (lifted.x()[around[1]] - lifted.x()[around[0]]) / length;
        this.eavesY = (lifted.y()[around[1]] - lifted.y()[around[0]]) / length;
        this.along = new double[face.rings().size()][];
        this.in = new double[face.rings().size()][];
        for (int r = 0; r < along.length; r++) {
            int[] ring = face.rings().get(r);
            along[r] = new double[ring.length];
            in[r] = new double[ring.length];
            for (int i = 0; i < ring.length; i++) {
                double x = lifted.x()[ring[i]] - lifted.x()[around[0]];
                double y = lifted.y()[ring[i]] - lifted.y()[around[0]];
                along[r][i] = x * eavesX + y * eavesY;
                in[r][i] = y * eavesX - x * eavesY;
                boolean onEaves = r == 0
                        && (Lifted.isEaves(face.beyond().get(0)[i])
                                || Lifted.isEaves(face.beyond().get(0)[i == 0 ? ring.length - 1 : i - 1]));
                if (onEaves) {
                    in[r][i] = 0; // to the last digit, whatever the turn of the eaves
                }
            }
        }
        this.figures = known != null ? known : found();
        this.shape = shapeFound();
        this.numbers = compute(Recorder.off());
    }

    /** The widths and the run as the corners have them. */
    private FaceFigures found() {
        FlatShape plan = FlatShape.ofSolvedFace(corners(1), pitch.value());
        return new FaceFigures(
                Roof.onPlan(plan.eavesWidth()),
                Roof.onPlan(plan.topWidth()),
                Roof.onPlan(plan.slopeLengths().left().minus(overhang.value())));
    }

    private Shape shapeFound() {
        int n = along[0].length;
        if (along.length > 1 || n > 4) {
            return Shape.OTHER;
        }
        if (n == 3) {
            return Shape.TRIANGLE;
        }
        // a top that is level but for some nanometres has its highest point for a top width: then the corners decide
        Length top = Length.ofMetres(StrictMath.abs(along[0][2] - along[0][3]));
        if (Length.ofMetres(in[0][2] - in[0][3]).abs().isLongerThan(Length.STORAGE_RESOLUTION)
                || top.minus(figures.topWidth().value()).abs().isLongerThan(Length.STORAGE_RESOLUTION)) {
            return Shape.OTHER;
        }
        return figures.eavesWidth().value().equals(figures.topWidth().value()) ? Shape.RECTANGLE : Shape.TRAPEZIUM;
    }

    private Numbers compute(Recorder r) {
        Pitch p = r.use(RAFTER_PITCH, pitch);
        Length run = r.use(RUN, figures.run());
        Length beyond = r.use(EAVES_OVERHANG, overhang);
        Length width = r.use(EAVES_WIDTH, figures.eavesWidth());
        Length rise = r.record(RISE, p.riseOver(run), RISE_BY_PITCH);
        Length plate = r.use(PLATE_HEIGHT, plateHeight);
        Length fascia = r.record(FASCIA_HEIGHT, plate.minus(p.riseOver(beyond)), FASCIA_UNDER_PLATE);
        Length apex = r.record(APEX_HEIGHT, plate.plus(rise), APEX_OVER_PLATE);
        Length runFromFascia = r.record(RUN_FROM_FASCIA, run.plus(beyond), RUN_FROM_FASCIA_SUM);
        Length slope = r.record(SLOPE_LENGTH, p.slopeOver(runFromFascia), SLOPE_LENGTH_BY_PITCH);
        Area onPlan;
        Area alongSlope;
        switch (shape) {
            case RECTANGLE -> {
                onPlan = r.record(AREA_ON_PLAN, width.times(runFromFascia), PLAN_OF_RECTANGLE);
                alongSlope = r.record(AREA_ALONG_SLOPE, width.times(slope), SLOPE_OF_RECTANGLE);
            }
            case TRIANGLE -> {
                onPlan = r.record(AREA_ON_PLAN, width.times(runFromFascia).dividedBy(2), PLAN_OF_TRIANGLE);
                alongSlope = r.record(AREA_ALONG_SLOPE, width.times(slope).dividedBy(2), SLOPE_OF_TRIANGLE);
            }
            case TRAPEZIUM -> {
                Length both = width.plus(r.use(TOP_WIDTH, figures.topWidth()));
                onPlan = r.record(AREA_ON_PLAN, both.times(runFromFascia).dividedBy(2), PLAN_OF_TRAPEZIUM);
                alongSlope = r.record(AREA_ALONG_SLOPE, both.times(slope).dividedBy(2), SLOPE_OF_TRAPEZIUM);
            }
            default -> {
                onPlan = areaByCorners(r);
                alongSlope = r.record(
                        AREA_ALONG_SLOPE, Area.ofSquareMetres(onPlan.toSquareMetres() / p.cos()), SLOPE_OF_PLAN);
            }
        }
        return new Numbers(rise, fascia, apex, runFromFascia, slope, onPlan, alongSlope);
    }

    /** The area on plan by the corners: half the sum of the cross products round each ring. */
    private Area areaByCorners(Recorder r) {
        double twice = 0;
        Expression sum = Expression.number(0);
        int corner = 0;
        for (int ring = 0; ring < along.length; ring++) {
            int n = along[ring].length;
            for (int i = 0; i < n; i++) {
                int next = (i + 1) % n;
                twice += along[ring][i] * in[ring][next] - along[ring][next] * in[ring][i];
                if (r.isOn()) {
                    String here = "corner " + (corner + i + 1);
                    String there = "corner " + (corner + next + 1);
                    r.use(CORNER_ALONG.at(here), Roof.onPlan(Length.ofMetres(along[ring][i])));
                    r.use(CORNER_IN.at(here), Roof.onPlan(Length.ofMetres(in[ring][i])));
                    Expression part = CORNER_ALONG
                            .at(here)
                            .times(CORNER_IN.at(there))
                            .minus(CORNER_ALONG.at(there).times(CORNER_IN.at(here)));
                    sum = corner + i == 0 ? part : sum.plus(part);
                }
            }
            corner += n;
        }
        Area area = Area.ofSquareMetres(twice / 2);
        return r.isOn() ? r.record(AREA_ON_PLAN, area, Formula.of(AREA_ON_PLAN, sum.over(2))) : area;
    }

    /** Returns the name, which is that of the plan side from which the face rises. */
    public String name() {
        return name;
    }

    /** Returns the pitch of the rafters. */
    public Pitch pitch() {
        return pitch.value();
    }

    /** Returns the pitch of the rafters with its origin: given, from a rule, or worked out from two heights. */
    public Figure<Pitch> pitchFigure() {
        return pitch;
    }

    /** Returns the level distance from the plate line to the apex line, with its origin. */
    public Figure<Length> runFigure() {
        return figures.run();
    }

    /** Returns the level distance from the plate line out to the fascia line, with its origin. */
    public Figure<Length> eavesOverhangFigure() {
        return overhang;
    }

    /**
     * Returns the corners in space, against the clock as seen from above: the left end of the eaves, the right end of
     * the eaves, the others.
     */
    public List<SpacePoint> polygon() {
        return polygon;
    }

    /**
     * Returns what the face encloses without covering it, such as a steep courtyard in a flat slope: rings of corners,
     * clockwise as seen from above; empty for nearly every face. They are taken off the areas.
     */
    public List<List<SpacePoint>> cutouts() {
        return cutouts;
    }

    /** Returns the area of the face in its own plane. */
    public Area areaAlongSlope() {
        return numbers.areaAlongSlope;
    }

    /** Returns the area that the face covers on plan. */
    public Area areaOnPlan() {
        return numbers.areaOnPlan;
    }

    /** Returns the length up the slope from the fascia line to the apex line, where the face reaches highest. */
    public Length slopeLength() {
        return numbers.slopeLength;
    }

    /**
     * Returns the length up the slope between two lines, in the rafter plane, where the face reaches highest.
     *
     * <p>For example, from the plate line to the apex line over a run of 3000 mm at 32°: 3000 / cos 32° = 3537.5 mm.
     *
     * @param from one line: plate, fascia or apex
     * @param to another line; the length is below zero if it lies below the first
     * @return the length and its working, under {@link #SLOPE_LENGTH_BETWEEN}
     * @throws ProblemsException if a line is the tail line, which only the layout of a covering knows
     */
    public Worked<Length> slopeLength(RoofLine from, RoofLine to) {
        requireOwnLine(from, "from");
        requireOwnLine(to, "to");
        return Worked.by(SLOPE_LENGTH_BETWEEN, r -> slopeLengthBetween(from, to, r));
    }

    private static void requireOwnLine(RoofLine line, String where) {
        if (line == RoofLine.TAIL) {
            throw new ProblemsException(List.of(
                    Problem.error(NO_SUCH_LINE, where, line, "be the fascia line, the plate line or the apex line")));
        }
    }

    private Length slopeLengthBetween(RoofLine from, RoofLine to, Recorder r) {
        Pitch p = r.use(RAFTER_PITCH, pitch);
        Length run = r.use(RUN, figures.run());
        Length beyond = r.use(EAVES_OVERHANG, overhang);
        Length between = runUpTo(to, run, beyond).minus(runUpTo(from, run, beyond));
        r.record(RUN_BETWEEN, between, Formula.of(RUN_BETWEEN, level(from, to)));
        return r.record(SLOPE_LENGTH_BETWEEN, p.slopeOver(between), SLOPE_BETWEEN_BY_PITCH);
    }

    /** The level distance between two lines, of which there are three: fascia, plate, apex, in this order. */
    private static Expression level(RoofLine from, RoofLine to) {
        if (from == to) {
            return Expression.number(0);
        }
        if (from.compareTo(to) > 0) {
            return level(to, from).negated();
        }
        if (to == RoofLine.PLATE) {
            return EAVES_OVERHANG;
        }
        return from == RoofLine.PLATE ? RUN : RUN.plus(EAVES_OVERHANG);
    }

    /** How far up from the fascia line a line lies on plan. */
    private static Length runUpTo(RoofLine line, Length run, Length overhang) {
        return switch (line) {
            case APEX -> run.plus(overhang);
            case PLATE -> overhang;
            default -> Length.ZERO;
        };
    }

    /**
     * Returns how far up the slope the left and the right end of the top lie; both are equal on a face with a level
     * top.
     */
    public Ends<Length> slopeLengths() {
        return Ends.both(numbers.slopeLength);
    }

    /** Returns the height of the apex line over the plate line. */
    public Length rise() {
        return numbers.rise;
    }

    /** Returns the height of the rafter plane at the plate line, over the datum of the plan. */
    public Length plateHeight() {
        return plateHeight.value();
    }

    /** Returns the height of the rafter plane at the fascia line, over the datum of the plan. */
    public Length fasciaHeight() {
        return numbers.fascia;
    }

    /** Returns the height of the rafter plane at the apex line, over the datum of the plan. */
    public Length apexHeight() {
        return numbers.apex;
    }

    /** Returns the level distance from the plate line to the apex line. */
    public Length run() {
        return figures.run().value();
    }

    /** Returns the level distance from the plate line out to the fascia line. */
    public Length eavesOverhang() {
        return overhang.value();
    }

    /** Returns the width along the eaves, verge overhangs included. */
    public Length eavesWidth() {
        return figures.eavesWidth().value();
    }

    /** Returns the width along the top; zero where the face runs to a point. */
    public Length topWidth() {
        return figures.topWidth().value();
    }

    /**
     * Returns the direction on plan in which water runs down the face, against the clock from the x axis of the plan,
     * from 0° up to 360°.
     */
    public Angle downSlope() {
        return Angle.ofRadians(StrictMath.atan2(-eavesX, eavesY)).normalised();
    }

    /** Returns the face laid flat. */
    public FlatShape flatShape() {
        return FlatShape.ofSolvedFace(corners(pitch.value().cos()), pitch.value());
    }

    private List<FacePoint> corners(double cosine) {
        List<FacePoint> corners = new ArrayList<>();
        for (int i = 0; i < along[0].length; i++) {
            corners.add(FacePoint.of(Length.ofMetres(along[0][i]), Length.ofMetres(in[0][i] / cosine)));
        }
        return corners;
    }

    /** Returns the edges, against the clock as seen from above, the eaves first. */
    public List<RoofEdge> edges() {
        return roof.edgesOf(number);
    }

    /**
     * Returns the one edge of a kind.
     *
     * @param kind the kind
     * @return the edge
     * @throws ProblemsException if the face has no such edge or several
     */
    public RoofEdge edge(EdgeKind kind) {
        Objects.requireNonNull(kind, "kind");
        return only(edges().stream().filter(edge -> edge.kind() == kind).toList(), kind.toString());
    }

    /**
     * Returns the one edge of a kind at one end.
     *
     * @param kind the kind
     * @param end the left or the right end, as seen from outside looking up the slope
     * @return the edge
     * @throws ProblemsException if the face has no such edge or several
     */
    public RoofEdge edge(EdgeKind kind, End end) {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(end, "end");
        return only(
                edges().stream()
                        .filter(edge -> edge.kind() == kind && roof.isAt(number, edge, end))
                        .toList(),
                kind + " at the " + end);
    }

    private RoofEdge only(List<RoofEdge> found, String asked) {
        if (found.size() != 1) {
            List<String> names = edges().stream().map(RoofEdge::name).toList();
            throw new ProblemsException(List.of(Problem.error(
                    NO_SUCH_EDGE,
                    "edge",
                    found.size() + " edges with \"" + asked + "\" on face \"" + name + "\"",
                    "be one; the face has " + String.join(", ", names))));
        }
        return found.get(0);
    }

    /** The cosine and sine of the eaves direction, left to right. */
    double eavesX() {
        return eavesX;
    }

    double eavesY() {
        return eavesY;
    }

    FaceFigures figures() {
        return figures;
    }

    /** The run from the fascia line as a figure with its working. */
    Figure<Length> runFromFascia() {
        return Worked.by(RUN_FROM_FASCIA, r -> compute(r).runFromFascia);
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof RoofFace f
                && name.equals(f.name)
                && pitch.value().equals(f.pitch.value())
                && polygon.equals(f.polygon);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, polygon);
    }

    /** Returns for example {@code main: 19.32 m² along the slope at 32°, slope length 3714.446 mm}. */
    @Override
    public String toString() {
        return name + ": " + Summary.area(areaAlongSlope()) + " along the slope at " + Summary.pitch(pitch())
                + ", slope length " + Summary.length(slopeLength());
    }
}
