package org.roofmaths.flashing;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.roof.RoofEdge;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.units.Direction;
import org.roofmaths.units.Length;
import org.roofmaths.units.Offset;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Assumed;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;
import org.roofmaths.working.Working;

/**
 * The line that the highest part of the covering makes along a wall: level along a top abutment, sloping along a side one.
 *
 * <p>Heights stand on the highest part of the unit beside the wall: the crown of a roll, not its pan. A sloping line starts at its
 * lower end. For example, {@code CoveringLine.sloping(metres(3), pitch("35°"), metres(2.4))} climbs from 2.4 m to
 * 2.4 m + 3 m × tan(35°).
 *
 * <p>Immutable and thread-safe. Two lines are equal if all their parts are.
 *
 * @since 0.1
 */
public final class CoveringLine implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The rafter pitch of a sloping line. */
    public static final Term<Pitch> PITCH = Term.of("rafter pitch beside the wall", "p", Pitch.class);
    /** The level run of a sloping line. */
    public static final Term<Length> RUN = Term.of("level run beside the wall", "r", Length.class);
    /** The true length of the line. */
    public static final Term<Length> LENGTH = Term.of("length along the wall", "L", Length.class);
    /** The height of the covering at the start of the line. */
    public static final Term<Length> START_HEIGHT = Term.of("height of the covering at the wall", "z0", Length.class);
    /** The height of the rafter line at the start of the line. */
    public static final Term<Length> RAFTER_HEIGHT =
            Term.of("height of the rafter line at the wall", "zr", Length.class);
    /** How far the highest part of the covering lies above the rafters, square to the slope. */
    public static final Term<Length> COVERING_SQUARE =
            Term.of("covering over the rafters, square to the slope", "B", Length.class);
    /** How far the highest part of the covering lies above the rafters, plumb. */
    public static final Term<Length> COVERING_PLUMB = Term.of("covering over the rafters, plumb", "b", Length.class);
    /** Metal beyond the start of the line. */
    public static final Term<Length> EXTRA_AT_START = Term.of("metal beyond the start", "x1", Length.class);
    /** Metal beyond the end of the line. */
    public static final Term<Length> EXTRA_AT_END = Term.of("metal beyond the end", "x2", Length.class);

    /** A line that does not suit the flashing, or whose sizes are wrong. */
    public static final ProblemCode WRONG_LINE =
            ProblemCode.of("flashing.wrong-line", "Use the line along the wall that this flashing is made for.");

    private static final Formula PLUMB_BY_PITCH = Formula.of(COVERING_PLUMB, COVERING_SQUARE.over(PITCH.cos()));
    private static final Formula HEIGHT_OF_COVERING = Formula.of(START_HEIGHT, RAFTER_HEIGHT.plus(COVERING_PLUMB));
    private static final Formula HEIGHT_OF_FASCIA = Formula.of(RAFTER_HEIGHT, RoofFace.FASCIA_HEIGHT);
    private static final Formula HEIGHT_OF_APEX = Formula.of(RAFTER_HEIGHT, RoofFace.APEX_HEIGHT);
    private static final Formula PITCH_OF_EDGE = Formula.of(PITCH, RoofEdge.SLOPE_ANGLE);
    private static final Formula LENGTH_BY_PITCH = Formula.of(LENGTH, RUN.over(PITCH.cos()));
    private static final Figure<Length> NONE_ASKED =
            Assumed.of(Length.ZERO, "no metal beyond the ends was asked for", "call extendedBy on the line");

    private final @Nullable Figure<Pitch> pitch; // null on a level line
    private final Figure<Length> span; // level run of a sloping line, length of a level one
    private final Figure<Length> startHeight;
    private final Figure<Length> extraAtStart;
    private final Figure<Length> extraAtEnd;
    private final @Nullable Length limit;

    private CoveringLine(
            @Nullable Figure<Pitch> pitch,
            Figure<Length> span,
            Figure<Length> startHeight,
            Figure<Length> extraAtStart,
            Figure<Length> extraAtEnd,
            @Nullable Length limit) {
        this.pitch = pitch;
        this.span = span;
        this.startHeight = startHeight;
        this.extraAtStart = extraAtStart;
        this.extraAtEnd = extraAtEnd;
        this.limit = limit;
    }

    /**
     * Returns the line of a roof's edge at a wall.
     *
     * <p>For example, at a top abutment whose apex line lies at 4175 mm on a slope of 5 in 8, a covering of 90 mm square to the slope
     * meets the wall at {@code 4175 + 90 ÷ cos(32.0°)} = 4281.1 mm.
     *
     * @param edge a top or side abutment
     * @param covering how far the highest part of the covering lies above the rafters: the crown of a roll, not its pan; square to the
     *     slope or plumb
     * @return the line, level or sloping as the edge is
     * @throws ProblemsException if the edge is no abutment, or the offset is neither square to the slope nor plumb
     */
    public static CoveringLine of(RoofEdge edge, Offset covering) {
        Problems.none()
                .require(
                        edge.kind() == EdgeKind.TOP_ABUTMENT || edge.kind() == EdgeKind.SIDE_ABUTMENT,
                        WRONG_LINE,
                        "edge",
                        edge.kind() + " \"" + edge.name() + "\"",
                        "be a top or side abutment")
                .require(
                        covering.direction() == Direction.SQUARE_TO_SLOPE || covering.direction() == Direction.PLUMB,
                        WRONG_LINE,
                        "covering",
                        covering,
                        "be square to the slope or plumb")
                .require(!covering.length().isNegative(), WRONG_LINE, "covering", covering, "be 0 mm or more")
                .throwIfErrors();
        RoofFace face = edge.faces().get(0);
        Figure<Length> height =
                Worked.by(START_HEIGHT, r -> heightOn(face, edge.from().height(), covering, r));
        return edge.slopeAngle().isZero()
                ? level(edge.trueLengthFigure(), height)
                : sloping(edge.planLengthFigure(), pitchOf(edge, face), height);
    }

    private static Figure<Pitch> pitchOf(RoofEdge edge, RoofFace face) {
        return edge.slopeAngle().equals(face.pitch().toAngle())
                ? face.pitchFigure()
                : Worked.by(PITCH, r -> {
                    r.use(RoofEdge.SLOPE_ANGLE, edge.slopeAngleFigure());
                    return r.record(PITCH, Pitch.from(edge.slopeAngle()), PITCH_OF_EDGE);
                });
    }

    private static Length heightOn(RoofFace face, Length rafters, Offset covering, Recorder r) {
        Length plumb;
        if (covering.direction() == Direction.PLUMB) {
            plumb = r.use(COVERING_PLUMB, covering.length());
        } else {
            Pitch pitch = r.use(PITCH, face.pitchFigure());
            Length square = r.use(COVERING_SQUARE, covering.length());
            plumb = r.record(COVERING_PLUMB, Length.ofMetres(square.toSi() / pitch.cos()), PLUMB_BY_PITCH);
        }
        rafterHeight(face, rafters, r);
        return r.record(START_HEIGHT, rafters.plus(plumb), HEIGHT_OF_COVERING);
    }

    /** Most edges start at the fascia line or the apex line, whose heights have a working of their own. */
    private static void rafterHeight(RoofFace face, Length height, Recorder r) {
        if (!r.isOn()) {
            return;
        }
        if (height.equals(face.fasciaHeight())) {
            r.use(RoofFace.FASCIA_HEIGHT, face.working().at(RoofFace.FASCIA_HEIGHT));
            r.record(RAFTER_HEIGHT, height, HEIGHT_OF_FASCIA);
        } else if (height.equals(face.apexHeight())) {
            r.use(RoofFace.APEX_HEIGHT, face.working().at(RoofFace.APEX_HEIGHT));
            r.record(RAFTER_HEIGHT, height, HEIGHT_OF_APEX);
        } else {
            r.use(RAFTER_HEIGHT, height);
            r.note("the height of the rafter line is that of the corner of the face \"" + face.name() + "\"");
        }
    }

    /**
     * Returns a level line, such as the top of a lean-to against a wall.
     *
     * @param length the length along the wall, above zero
     * @param height the height of the covering at the wall
     * @return the line
     * @throws ProblemsException if the length is not above zero
     */
    public static CoveringLine level(Length length, Length height) {
        return level(Given.of(length), Given.of(height));
    }

    /**
     * Returns a level line.
     *
     * @param length the length along the wall, above zero
     * @param height the height of the covering at the wall
     * @return the line
     * @throws ProblemsException if the length is not above zero
     */
    public static CoveringLine level(Figure<Length> length, Figure<Length> height) {
        Objects.requireNonNull(height, "height");
        Problems problems = Problems.none();
        Sizes.requirePositive(problems, LENGTH, length);
        problems.throwIfErrors();
        return new CoveringLine(null, length, height, NONE_ASKED, NONE_ASKED, null);
    }

    /**
     * Returns a sloping line, such as the side of a lean-to against a wall.
     *
     * @param run the level run from its lower to its upper end, above zero
     * @param pitch the rafter pitch
     * @param startHeight the height of the covering at the lower end
     * @return the line
     * @throws ProblemsException if the run is not above zero
     */
    public static CoveringLine sloping(Length run, Pitch pitch, Length startHeight) {
        return sloping(Given.of(run), Given.of(pitch), Given.of(startHeight));
    }

    /**
     * Returns a sloping line.
     *
     * @param run the level run from its lower to its upper end, above zero
     * @param pitch the rafter pitch
     * @param startHeight the height of the covering at the lower end
     * @return the line
     * @throws ProblemsException if the run is not above zero
     */
    public static CoveringLine sloping(Figure<Length> run, Figure<Pitch> pitch, Figure<Length> startHeight) {
        Objects.requireNonNull(pitch, "pitch");
        Objects.requireNonNull(startHeight, "startHeight");
        Problems problems = Problems.none();
        Sizes.requirePositive(problems, RUN, run);
        problems.throwIfErrors();
        return new CoveringLine(pitch, run, startHeight, NONE_ASKED, NONE_ASKED, null);
    }

    /**
     * Returns the same line with metal beyond its ends, measured along the line: into the gutter, round a corner, under the next
     * flashing. How much is wanted is the builder's choice; without this call there is none, and the working says so.
     *
     * @param atStart beyond the start (the lower end of a sloping line), zero or more
     * @param atEnd beyond the end, zero or more
     * @return the line with it
     * @throws ProblemsException if one of them is below zero
     */
    public CoveringLine extendedBy(Length atStart, Length atEnd) {
        return extendedBy(Given.of(atStart), Given.of(atEnd));
    }

    /**
     * Returns the same line with metal beyond its ends, measured along the line.
     *
     * @param atStart beyond the start (the lower end of a sloping line), zero or more
     * @param atEnd beyond the end, zero or more
     * @return the line with it
     * @throws ProblemsException if one of them is below zero
     */
    public CoveringLine extendedBy(Figure<Length> atStart, Figure<Length> atEnd) {
        Problems problems = Problems.none();
        Sizes.requireNotNegative(problems, EXTRA_AT_START, atStart);
        Sizes.requireNotNegative(problems, EXTRA_AT_END, atEnd);
        problems.throwIfErrors();
        return new CoveringLine(pitch, span, startHeight, atStart, atEnd, limit);
    }

    /**
     * Returns the same line with a height that no flashing may pass, such as a window sill or a string course.
     *
     * @param limit the height
     * @return the line with it
     */
    public CoveringLine under(Length limit) {
        return new CoveringLine(
                pitch, span, startHeight, extraAtStart, extraAtEnd, Objects.requireNonNull(limit, "limit"));
    }

    /** Tells whether the line is level. */
    public boolean isLevel() {
        return pitch == null;
    }

    /** Returns the rafter pitch of a sloping line; empty for a level one. */
    public Optional<Figure<Pitch>> pitch() {
        return Optional.ofNullable(pitch);
    }

    /** Returns the level length of the line. */
    public Length planLength() {
        return span.value();
    }

    /** Returns the true length of the line. */
    public Length trueLength() {
        return length(Recorder.off());
    }

    /** Returns the height of the covering at the start. */
    public Length startHeight() {
        return startHeight.value();
    }

    /** Returns the height that no flashing may pass; empty if there is none. */
    public Optional<Length> limit() {
        return Optional.ofNullable(limit);
    }

    Length length(Recorder r) {
        if (pitch == null) {
            return r.use(LENGTH, span);
        }
        Length run = r.use(RUN, span);
        Pitch slope = r.use(PITCH, pitch);
        return r.record(LENGTH, Length.ofMetres(run.toSi() / slope.cos()), LENGTH_BY_PITCH);
    }

    /** The level run of a sloping line. */
    Figure<Length> run() {
        return span;
    }

    Length startHeight(Recorder r) {
        return r.use(START_HEIGHT, startHeight);
    }

    Figure<Length> extraAtStart() {
        return extraAtStart;
    }

    Figure<Length> extraAtEnd() {
        return extraAtEnd;
    }

    /** The run of metal: the line and what goes beyond its ends. */
    Length metalRun(Recorder r) {
        Length length = length(r);
        Length start = r.use(EXTRA_AT_START, extraAtStart);
        Length end = r.use(EXTRA_AT_END, extraAtEnd);
        return r.record(Flashing.METAL_RUN, length.plus(start).plus(end), Flashing.METAL_RUN_BY_LINE);
    }

    @Override
    public Working working() {
        return Working.of(this::metalRun);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof CoveringLine l
                && Objects.equals(pitch, l.pitch)
                && span.equals(l.span)
                && startHeight.equals(l.startHeight)
                && extraAtStart.equals(l.extraAtStart)
                && extraAtEnd.equals(l.extraAtEnd)
                && Objects.equals(limit, l.limit);
    }

    @Override
    public int hashCode() {
        return Objects.hash(pitch, span, startHeight, extraAtStart, extraAtEnd, limit);
    }

    /** Returns for example {@code level line of 5200 mm at 4281 mm}. */
    @Override
    public String toString() {
        return pitch == null
                ? "level line of " + span.value() + " at " + startHeight.value()
                : "line of " + trueLength() + " at " + pitch.value() + " from " + startHeight.value();
    }
}
