package org.roofmaths.flashing;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Assumed;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
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
    /** How far the highest part of the covering lies above the rafters, plumb. */
    public static final Term<Length> COVERING_PLUMB = Term.of("covering over the rafters, plumb", "b", Length.class);
    /** Metal beyond the start of the line. */
    public static final Term<Length> EXTRA_AT_START = Term.of("metal beyond the start", "x1", Length.class);
    /** Metal beyond the end of the line. */
    public static final Term<Length> EXTRA_AT_END = Term.of("metal beyond the end", "x2", Length.class);

    /** A line that does not suit the flashing, or whose sizes are wrong. */
    public static final ProblemCode WRONG_LINE =
            ProblemCode.of("flashing.wrong-line", "Use the line along the wall that this flashing is made for.");

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
        Figure<Length> start = Given.of(atStart);
        Figure<Length> end = Given.of(atEnd);
        Problems problems = Problems.none();
        Sizes.requireNotNegative(problems, EXTRA_AT_START, start);
        Sizes.requireNotNegative(problems, EXTRA_AT_END, end);
        problems.throwIfErrors();
        return new CoveringLine(pitch, span, startHeight, start, end, limit);
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
