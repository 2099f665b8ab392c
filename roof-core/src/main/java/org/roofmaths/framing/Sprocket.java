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
import org.roofmaths.working.Working;

/**
 * A short timber on the foot of a rafter that flattens the eaves: the template of a bellcast.
 *
 * <p>The sprocket is a wedge on the rafter: its fill, square to the rafter at the foot, is length × sin(difference of
 * the pitches), and it meets the rafter at length × cos(difference) up from the foot. For example, a sprocket 600 mm
 * long at 30° on a rafter of 45° fills 155.3 mm and meets it 579.6 mm up.
 *
 * <p>The least pitch of a covering is held against the flattest part of the rafters, which is the sprocket. Immutable
 * and thread-safe.
 *
 * @since 0.1
 */
public final class Sprocket implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The length of the sprocket along its top. */
    public static final Term<Length> LENGTH = Term.of("sprocket length", "sl", Length.class);

    /** The pitch of the rafter. */
    public static final Term<Pitch> RAFTER_PITCH = RoofFace.RAFTER_PITCH;

    /** The pitch of the sprocket. */
    public static final Term<Pitch> PITCH = Term.of("sprocket pitch", "ps", Pitch.class);

    /** The depth of the wedge at the foot. */
    public static final Term<Length> FILL =
            Term.of("sprocket fill at the foot, square to the rafter", "sf", Length.class);

    /** How far up the rafter the sprocket meets it. */
    public static final Term<Length> REACH = Term.of("sprocket reach up the rafter", "sr", Length.class);

    /** A size or pitch of the sprocket is not as it must be. */
    public static final ProblemCode SIZE =
            ProblemCode.of("sprocket.size", "Check the length; a sprocket is flatter than its rafter.");

    private static final Formula FILL_BY_PITCHES =
            Formula.of(FILL, LENGTH.times(RAFTER_PITCH.minus(PITCH).sin()));
    private static final Formula REACH_BY_PITCHES =
            Formula.of(REACH, LENGTH.times(RAFTER_PITCH.minus(PITCH).cos()));

    private final Length length;
    private final Figure<Pitch> pitch;
    private final Figure<Pitch> rafterPitch;
    private final Numbers numbers;

    private record Numbers(Length fill, Length reach) implements Serializable {}

    private Sprocket(Length length, Figure<Pitch> pitch, Figure<Pitch> rafterPitch) {
        this.length = Objects.requireNonNull(length, "length");
        this.pitch = Objects.requireNonNull(pitch, "pitch");
        this.rafterPitch = Objects.requireNonNull(rafterPitch, "rafterPitch");
        Problems problems = Problems.none();
        Checks.requireSize(problems, SIZE, "sprocket length", length);
        problems.require(
                pitch.value().isFlatterThan(rafterPitch.value()),
                SIZE,
                "sprocket pitch",
                pitch.value(),
                "be flatter than the rafter's " + rafterPitch.value());
        problems.throwIfErrors();
        this.numbers = compute(Recorder.off());
    }

    /**
     * Returns a sprocket.
     *
     * @param length its length along its top, above zero
     * @param pitch its pitch, flatter than the rafter
     * @param rafterPitch the pitch of the rafter
     * @return the sprocket
     * @throws ProblemsException if the length is wrong or the sprocket is not flatter than the rafter
     */
    public static Sprocket of(Length length, Pitch pitch, Pitch rafterPitch) {
        return new Sprocket(
                length,
                Figure.given(Objects.requireNonNull(pitch, "pitch")),
                Figure.given(Objects.requireNonNull(rafterPitch, "rafterPitch")));
    }

    private Numbers compute(Recorder r) {
        Length top = r.use(LENGTH, length);
        double difference = r.use(RAFTER_PITCH, rafterPitch).toRadians()
                - r.use(PITCH, pitch).toRadians();
        Length fill = r.record(FILL, top.times(StrictMath.sin(difference)), FILL_BY_PITCHES);
        Length reach = r.record(REACH, top.times(StrictMath.cos(difference)), REACH_BY_PITCHES);
        return new Numbers(fill, reach);
    }

    /** Returns the depth of the wedge at the foot, square to the rafter. */
    public Length fill() {
        return numbers.fill;
    }

    /** Returns how far up the rafter from its foot the sprocket meets it. */
    public Length reach() {
        return numbers.reach;
    }

    /** Returns the pitch of the sprocket: the flattest part of the rafter. */
    public Pitch pitch() {
        return pitch.value();
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Sprocket s
                && length.equals(s.length)
                && pitch.equals(s.pitch)
                && rafterPitch.equals(s.rafterPitch);
    }

    @Override
    public int hashCode() {
        return Objects.hash(length, pitch.value(), rafterPitch.value());
    }

    /** Returns for example {@code sprocket 600 mm at 30°: fill 155.29 mm, meets the rafter 579.56 mm up}, in full. */
    @Override
    public String toString() {
        return "sprocket " + length + " at " + pitch() + ": fill " + fill() + ", meets the rafter " + reach() + " up";
    }
}
