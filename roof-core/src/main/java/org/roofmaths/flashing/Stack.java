package org.roofmaths.flashing;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.FacePoint;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.units.Direction;
import org.roofmaths.units.Length;
import org.roofmaths.units.Offset;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;

/**
 * A stack that stands on one slope, square to the eaves: its width across the slope, its depth up the slope on plan, the pitch, and the
 * height of the covering at its front.
 *
 * <p>A stack across a ridge, hip or valley stands on two slopes and is refused: its pieces follow other formulas.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Stack implements Serializable {
    private static final long serialVersionUID = 1L;

    /** The width of the stack across the slope. */
    public static final Term<Length> WIDTH = Term.of("width of the stack", "sw", Length.class);
    /** The depth of the stack up the slope, on plan. */
    public static final Term<Length> DEPTH = Term.of("depth of the stack on plan", "sd", Length.class);
    /** How far up the slope the front of the stack stands. */
    public static final Term<Length> FRONT_UP = Term.of("front of the stack up the slope", "sf", Length.class);
    /** The height of the covering at the back of the stack. */
    public static final Term<Length> BACK_HEIGHT =
            Term.of("height of the covering behind the stack", "zb", Length.class);

    /** The stack does not stand on one slope alone. */
    public static final ProblemCode ON_TWO_SLOPES = ProblemCode.of(
            "flashing.stack-on-two-slopes",
            "Move the stack, or have its flashings worked out on site: a stack across an edge follows other formulas.");

    private static final Formula HEIGHT_BEHIND =
            Formula.of(BACK_HEIGHT, CoveringLine.START_HEIGHT.plus(DEPTH.times(CoveringLine.PITCH.tan())));
    private static final Formula HEIGHT_IN_FRONT = Formula.of(
            CoveringLine.START_HEIGHT,
            RoofFace.FASCIA_HEIGHT
                    .plus(FRONT_UP.times(CoveringLine.PITCH.sin()))
                    .plus(CoveringLine.COVERING_PLUMB));
    private static final Formula PLUMB_BY_PITCH =
            Formula.of(CoveringLine.COVERING_PLUMB, CoveringLine.COVERING_SQUARE.over(CoveringLine.PITCH.cos()));

    private final Figure<Length> width;
    private final Figure<Length> depth;
    private final Figure<Pitch> pitch;
    private final Figure<Length> frontHeight;

    private Stack(Figure<Length> width, Figure<Length> depth, Figure<Pitch> pitch, Figure<Length> frontHeight) {
        this.width = width;
        this.depth = depth;
        this.pitch = pitch;
        this.frontHeight = frontHeight;
    }

    /**
     * Returns a stack by its bare sizes.
     *
     * @param width the width across the slope, above zero
     * @param depth the depth up the slope, on plan, above zero
     * @param pitch the pitch of the slope
     * @param frontHeight the height of the highest part of the covering at the front of the stack
     * @return the stack
     * @throws ProblemsException if a size is not above zero
     */
    public static Stack of(Length width, Length depth, Pitch pitch, Length frontHeight) {
        return of(Given.of(width), Given.of(depth), Given.of(pitch), Given.of(frontHeight));
    }

    /**
     * Returns a stack by its bare sizes.
     *
     * @param width the width across the slope, above zero
     * @param depth the depth up the slope, on plan, above zero
     * @param pitch the pitch of the slope
     * @param frontHeight the height of the highest part of the covering at the front of the stack
     * @return the stack
     * @throws ProblemsException if a size is not above zero
     */
    public static Stack of(
            Figure<Length> width, Figure<Length> depth, Figure<Pitch> pitch, Figure<Length> frontHeight) {
        Problems problems = Problems.none();
        Sizes.requirePositive(problems, WIDTH, width);
        Sizes.requirePositive(problems, DEPTH, depth);
        problems.throwIfErrors();
        return new Stack(
                width,
                depth,
                Objects.requireNonNull(pitch, "pitch"),
                Objects.requireNonNull(frontHeight, "frontHeight"));
    }

    /**
     * Returns a stack on a face of a roof.
     *
     * @param face the face
     * @param frontLeft its front left corner on the face: along from the left end of the eaves, up the slope from the fascia line
     * @param width the width across the slope, above zero
     * @param depth the depth up the slope, on plan, above zero
     * @param covering how far the highest part of the covering lies above the rafters, square to the slope or plumb
     * @return the stack
     * @throws ProblemsException if a size is wrong or the stack does not stand on this face alone
     */
    public static Stack on(RoofFace face, FacePoint frontLeft, Length width, Length depth, Offset covering) {
        Problems problems = Problems.none();
        Sizes.requirePositive(problems, WIDTH, Given.of(width));
        Sizes.requirePositive(problems, DEPTH, Given.of(depth));
        problems.require(
                covering.direction() == Direction.SQUARE_TO_SLOPE || covering.direction() == Direction.PLUMB,
                CoveringLine.WRONG_LINE,
                "covering",
                covering,
                "be square to the slope or plumb");
        problems.throwIfErrors();
        Length back =
                frontLeft.up().plus(Length.ofMetres(depth.toSi() / face.pitch().cos()));
        if (!holds(face.flatShape(), frontLeft, width, back)) {
            throw new ProblemsException(List.of(Problem.error(
                    ON_TWO_SLOPES,
                    "stack",
                    width + " wide from " + frontLeft.along() + " along and " + frontLeft.up() + " to " + back
                            + " up the slope",
                    "stand within the face \"" + face.name() + "\"")));
        }
        return of(
                Given.of(width),
                Given.of(depth),
                face.pitchFigure(),
                Worked.by(CoveringLine.START_HEIGHT, r -> frontHeight(face, frontLeft.up(), covering, r)));
    }

    /** The sides of a face are straight between its corners, so it is enough to look at the two ends and at the corners between. */
    private static boolean holds(FlatShape shape, FacePoint frontLeft, Length width, Length back) {
        Length highest = shape.corners().stream().map(FacePoint::up).reduce(Length.ZERO, Length::max);
        if (frontLeft.up().isNegative() || back.isLongerThan(highest)) {
            return false;
        }
        Length right = frontLeft.along().plus(width);
        return Stream.concat(
                        Stream.of(frontLeft.up(), back),
                        shape.corners().stream().map(FacePoint::up))
                .filter(up -> !up.isShorterThan(frontLeft.up()) && !up.isLongerThan(back))
                .allMatch(up -> {
                    Ends<Length> edges = shape.edgesAt(up);
                    Length between = edges.right().minus(edges.left());
                    return !frontLeft.along().isShorterThan(edges.left())
                            && !right.isLongerThan(edges.right())
                            && between.meetsGreatest(shape.widthAt(up)); // no gap between the outermost edges
                });
    }

    private static Length frontHeight(RoofFace face, Length up, Offset covering, Recorder r) {
        Pitch pitch = r.use(CoveringLine.PITCH, face.pitchFigure());
        Length plumb;
        if (covering.direction() == Direction.PLUMB) {
            plumb = r.use(CoveringLine.COVERING_PLUMB, covering.length());
        } else {
            Length square = r.use(CoveringLine.COVERING_SQUARE, covering.length());
            plumb = r.record(CoveringLine.COVERING_PLUMB, Length.ofMetres(square.toSi() / pitch.cos()), PLUMB_BY_PITCH);
        }
        Length distance = r.use(FRONT_UP, up);
        if (r.isOn()) {
            r.use(RoofFace.FASCIA_HEIGHT, face.working().at(RoofFace.FASCIA_HEIGHT));
        }
        Length height = face.fasciaHeight()
                .plus(Length.ofMetres(distance.toSi() * pitch.sin()))
                .plus(plumb);
        return r.record(CoveringLine.START_HEIGHT, height, HEIGHT_IN_FRONT);
    }

    /** Returns the width across the slope. */
    public Figure<Length> width() {
        return width;
    }

    /** Returns the depth up the slope, on plan. */
    public Figure<Length> depth() {
        return depth;
    }

    /** Returns the pitch of the slope. */
    public Figure<Pitch> pitch() {
        return pitch;
    }

    /** Returns the line where the covering meets the front of the stack. */
    public CoveringLine frontLine() {
        return CoveringLine.level(width, frontHeight);
    }

    /** Returns the line where the covering meets a side of the stack. */
    public CoveringLine sideLine() {
        return CoveringLine.sloping(depth, pitch, frontHeight);
    }

    /** Returns the height of the covering at the back of the stack, where a back gutter has its sole. */
    public Worked<Length> backHeight() {
        return Worked.by(BACK_HEIGHT, this::backHeight);
    }

    Length backHeight(Recorder r) {
        Length front = r.use(CoveringLine.START_HEIGHT, frontHeight);
        Length on = r.use(DEPTH, depth);
        Pitch slope = r.use(CoveringLine.PITCH, pitch);
        return r.record(BACK_HEIGHT, front.plus(Length.ofMetres(on.toSi() * slope.tan())), HEIGHT_BEHIND);
    }

    /** Returns the length of a side along the slope: 440 mm on plan at 35° is 537.1 mm. */
    public Length sideAlongSlope() {
        return sideLine().trueLength();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Stack s
                && width.equals(s.width)
                && depth.equals(s.depth)
                && pitch.equals(s.pitch)
                && frontHeight.equals(s.frontHeight);
    }

    @Override
    public int hashCode() {
        return Objects.hash(width, depth, pitch, frontHeight);
    }

    /** Returns for example {@code stack of 665 mm × 440 mm on plan at 35°}. */
    @Override
    public String toString() {
        return "stack of " + width.value() + " × " + depth.value() + " on plan at " + pitch.value();
    }
}
