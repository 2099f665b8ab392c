package org.roofmaths.framing;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Area;
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
 * A dormer with a single flatter slope that runs back until it meets the main roof.
 *
 * <p>The front is a plumb wall on the main slope. The depth is height ÷ (tan(main pitch) − tan(dormer pitch)); each
 * cheek is a triangle of half height times depth. For example, a front of 1200 mm on a roof of 40° with a dormer roof
 * of 5° is 1596.6 mm deep, with cheeks of 0.958 m².
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class ShedDormer implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The plumb height of the front, from the main slope to the dormer's slope. */
    public static final Term<Length> FRONT_HEIGHT = Term.of("dormer front height", "dh", Length.class);

    /** The pitch of the main roof. */
    public static final Term<Pitch> MAIN_PITCH = RoofFace.RAFTER_PITCH.at("main roof");

    /** The pitch of the dormer's roof. */
    public static final Term<Pitch> DORMER_PITCH = RoofFace.RAFTER_PITCH.at("dormer");

    /** The level depth of the dormer from its front to where it meets the main roof. */
    public static final Term<Length> DEPTH = Term.of("dormer depth, level", "dd", Length.class);

    /** The length of the dormer's slope from its front to where it meets the main roof. */
    public static final Term<Length> SLOPE_LENGTH = Term.of("dormer slope length", "ds", Length.class);

    /** The area of one cheek. */
    public static final Term<Area> CHEEK_AREA = Term.of("dormer cheek area", "da", Area.class);

    /** The angle between the two slopes, as at the foot of a dormer rafter on the main roof. */
    public static final Term<Angle> ANGLE_BETWEEN_SLOPES =
            Term.of("angle between main and dormer slope", "db", Angle.class);

    /** The distance between the studs of a cheek, centre to centre. */
    public static final Term<Length> STUD_CENTRES = GableStuds.CENTRES;

    /** How much longer each stud of a cheek is than the one before. */
    public static final Term<Length> STUD_DIFFERENCE = Term.of("common difference of cheek studs", "dj", Length.class);

    /** A size or pitch of the dormer is not as it must be. */
    public static final ProblemCode SIZE = ProblemCode.of(
            "shed-dormer.size", "Check the height; a dormer roof as steep as the main roof never meets it.");

    private static final Formula DEPTH_BY_PITCHES =
            Formula.of(DEPTH, FRONT_HEIGHT.over(MAIN_PITCH.tan().minus(DORMER_PITCH.tan())));
    private static final Formula SLOPE_BY_DEPTH = Formula.of(SLOPE_LENGTH, DEPTH.over(DORMER_PITCH.cos()));
    private static final Formula CHEEK_BY_DEPTH =
            Formula.of(CHEEK_AREA, FRONT_HEIGHT.times(DEPTH).over(2));
    private static final Formula BETWEEN = Formula.of(ANGLE_BETWEEN_SLOPES, MAIN_PITCH.minus(DORMER_PITCH));
    private static final Formula STUDS =
            Formula.of(STUD_DIFFERENCE, STUD_CENTRES.times(MAIN_PITCH.tan().minus(DORMER_PITCH.tan())));

    private final Length frontHeight;
    private final Figure<Pitch> mainPitch;
    private final Figure<Pitch> dormerPitch;
    private final Numbers numbers;

    private record Numbers(Length depth, Length slopeLength, Area cheek, Angle between) implements Serializable {}

    private ShedDormer(Length frontHeight, Figure<Pitch> mainPitch, Figure<Pitch> dormerPitch) {
        this.frontHeight = Objects.requireNonNull(frontHeight, "frontHeight");
        this.mainPitch = Objects.requireNonNull(mainPitch, "mainPitch");
        this.dormerPitch = Objects.requireNonNull(dormerPitch, "dormerPitch");
        Problems problems = Problems.none();
        Checks.requireSize(problems, SIZE, "front height", frontHeight);
        double gain = mainPitch.value().tan() - dormerPitch.value().tan();
        problems.require(
                gain > 0 && frontHeight.toMetres() / gain <= Checks.LONGEST.toMetres(),
                SIZE,
                "dormer pitch",
                dormerPitch.value(),
                "be flatter than the main pitch of " + mainPitch.value() + " and meet it within " + Checks.LONGEST);
        problems.throwIfErrors();
        this.numbers = compute(Recorder.off());
    }

    /**
     * Returns a dormer.
     *
     * @param frontHeight the plumb height of the front, from the main slope to the dormer's slope, above zero
     * @param mainPitch the pitch of the main roof
     * @param dormerPitch the pitch of the dormer's roof, flatter than the main roof
     * @return the dormer
     * @throws ProblemsException if the height is wrong or the dormer never meets the main roof
     */
    public static ShedDormer of(Length frontHeight, Pitch mainPitch, Pitch dormerPitch) {
        return new ShedDormer(
                frontHeight,
                Figure.given(Objects.requireNonNull(mainPitch, "mainPitch")),
                Figure.given(Objects.requireNonNull(dormerPitch, "dormerPitch")));
    }

    private Numbers compute(Recorder r) {
        Length height = r.use(FRONT_HEIGHT, frontHeight);
        Pitch p = r.use(MAIN_PITCH, mainPitch);
        Pitch q = r.use(DORMER_PITCH, dormerPitch);
        Length depth = r.record(DEPTH, height.dividedBy(p.tan() - q.tan()), DEPTH_BY_PITCHES);
        Length slope = r.record(SLOPE_LENGTH, q.slopeOver(depth), SLOPE_BY_DEPTH);
        Area cheek = r.record(CHEEK_AREA, height.times(depth).dividedBy(2), CHEEK_BY_DEPTH);
        Angle between = r.record(ANGLE_BETWEEN_SLOPES, p.toAngle().minus(q.toAngle()), BETWEEN);
        return new Numbers(depth, slope, cheek, between);
    }

    /** Returns the level depth from the front to where the dormer meets the main roof. */
    public Length depth() {
        return numbers.depth;
    }

    /** Returns the length of the dormer's slope from its front to where it meets the main roof. */
    public Length slopeLength() {
        return numbers.slopeLength;
    }

    /** Returns the area of one cheek. */
    public Area cheekArea() {
        return numbers.cheek;
    }

    /** Returns the angle between the two slopes: main pitch less dormer pitch. */
    public Angle angleBetweenSlopes() {
        return numbers.between;
    }

    /**
     * Returns how much longer each stud of a cheek is than the one before.
     *
     * @param centres the distance from stud to stud, centre to centre, above zero
     * @return the difference
     * @throws ProblemsException if the centres are zero, below zero or over 1 km
     */
    public Worked<Length> studDifference(Length centres) {
        Problems problems = Problems.none();
        Checks.requireSize(problems, SIZE, "centres", centres);
        problems.throwIfErrors();
        return Worked.by(STUD_DIFFERENCE, r -> {
            Length apart = r.use(STUD_CENTRES, centres);
            Pitch p = r.use(MAIN_PITCH, mainPitch);
            Pitch q = r.use(DORMER_PITCH, dormerPitch);
            return r.record(STUD_DIFFERENCE, apart.times(p.tan() - q.tan()), STUDS);
        });
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof ShedDormer d
                && frontHeight.equals(d.frontHeight)
                && mainPitch.equals(d.mainPitch)
                && dormerPitch.equals(d.dormerPitch);
    }

    @Override
    public int hashCode() {
        return Objects.hash(frontHeight, mainPitch.value(), dormerPitch.value());
    }

    /** Returns for example {@code shed dormer 1596.6 mm deep}, in full. */
    @Override
    public String toString() {
        return "shed dormer " + depth() + " deep";
    }
}
