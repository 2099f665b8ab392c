package org.roofmaths.framing;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;
import org.roofmaths.working.Working;

/**
 * The plumb studs of a gable wall under a slope, at equal centres.
 *
 * <p>Each is longer than the one before by centres × tan(pitch). For example, at 24 in centres under a slope of 6 in 12
 * the difference is 12 in. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class GableStuds implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The distance from stud to stud, centre to centre. */
    public static final Term<Length> CENTRES = Term.of("stud centres", "gc", Length.class);

    /** How much longer each stud is than the one before. */
    public static final Term<Length> COMMON_DIFFERENCE = Term.of("common difference of studs", "gd", Length.class);

    /** How far a stud stands from the point where the slope meets the sole plate, level. */
    public static final Term<Length> FROM_FOOT =
            Term.of("stud distance from the foot of the slope", "gf", Length.class);

    /** The height of the slope over the sole plate at a stud. */
    public static final Term<Length> HEIGHT = Term.of("stud height", "gs", Length.class);

    /** A size of the studs is not as it must be. */
    public static final ProblemCode SIZE = ProblemCode.of("gable-studs.size", "Check the size and its unit.");

    private static final Formula DIFFERENCE = Formula.of(COMMON_DIFFERENCE, CENTRES.times(RoofFace.RAFTER_PITCH.tan()));
    private static final Formula HEIGHT_BY_PITCH = Formula.of(HEIGHT, FROM_FOOT.times(RoofFace.RAFTER_PITCH.tan()));

    private final Length centres;
    private final Figure<Pitch> pitch;
    private final Length difference;

    private GableStuds(Length centres, Figure<Pitch> pitch) {
        this.centres = Objects.requireNonNull(centres, "centres");
        this.pitch = Objects.requireNonNull(pitch, "pitch");
        Problems problems = Problems.none();
        Checks.requireSize(problems, SIZE, "centres", centres);
        problems.throwIfErrors();
        this.difference = compute(Recorder.off());
    }

    /**
     * Returns studs under a slope.
     *
     * @param centres the distance from stud to stud, centre to centre, above zero
     * @param pitch the pitch of the slope
     * @return the studs
     * @throws ProblemsException if the centres are zero, below zero or over 1 km
     */
    public static GableStuds of(Length centres, Pitch pitch) {
        return new GableStuds(centres, Figure.given(Objects.requireNonNull(pitch, "pitch")));
    }

    private Length compute(Recorder r) {
        Length apart = r.use(CENTRES, centres);
        Pitch p = r.use(RoofFace.RAFTER_PITCH, pitch);
        return r.record(COMMON_DIFFERENCE, p.riseOver(apart), DIFFERENCE);
    }

    /** Returns how much longer each stud is than the one before. */
    public Length commonDifference() {
        return difference;
    }

    /**
     * Returns the height of the slope over the sole plate at one stud.
     *
     * @param fromFoot how far the stud stands from the point where the slope meets the sole plate, level
     * @return the height, from which the caller takes what lies between stud and slope
     */
    public Worked<Length> heightAt(Length fromFoot) {
        Objects.requireNonNull(fromFoot, "fromFoot");
        return Worked.by(HEIGHT, r -> {
            Length level = r.use(FROM_FOOT, fromFoot);
            Pitch p = r.use(RoofFace.RAFTER_PITCH, pitch);
            return r.record(HEIGHT, p.riseOver(level), HEIGHT_BY_PITCH);
        });
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof GableStuds g && centres.equals(g.centres) && pitch.equals(g.pitch);
    }

    @Override
    public int hashCode() {
        return Objects.hash(centres, pitch.value());
    }

    /** Returns for example {@code studs at 600 mm, common difference 300 mm}. */
    @Override
    public String toString() {
        return "studs at " + centres + ", common difference " + difference;
    }
}
