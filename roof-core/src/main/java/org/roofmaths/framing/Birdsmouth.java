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
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;
import org.roofmaths.working.Working;

/**
 * The notch with which a rafter sits on the wall plate: a level seat and a plumb heel.
 *
 * <p>For example, a seat of 75 mm in a rafter 150 mm deep at 40° has a heel of 62.9 mm, goes 48.2 mm into the rafter
 * measured square to it, and leaves 101.8 mm.
 *
 * <p>How deep a notch may go is a rule or a habit of the trade, so its share of the depth comes from the caller. A
 * steep rafter with a full seat on the plate may pass it. Whether the rafter still carries its load is for a person
 * competent in structures. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Birdsmouth implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The depth of the rafter, square to its edges. */
    public static final Term<Length> DEPTH = Term.of("rafter depth", "D", Length.class);

    /** The level length of the seat. */
    public static final Term<Length> SEAT = Term.of("birdsmouth seat, level", "bs", Length.class);

    /** The plumb height of the heel. */
    public static final Term<Length> HEEL = Term.of("birdsmouth heel, plumb", "bh", Length.class);

    /** How deep the notch goes into the rafter. */
    public static final Term<Length> NOTCH = Term.of("birdsmouth notch, square to the rafter", "bn", Length.class);

    /** The depth of the rafter measured plumb. */
    public static final Term<Length> PLUMB_DEPTH = Term.of("rafter depth, plumb", "Dp", Length.class);

    /** How high the top edge of the rafter stands over the plate, plumb over the heel. */
    public static final Term<Length> HEIGHT_ABOVE_PLATE = Term.of("rafter height above the plate", "bt", Length.class);

    /** What the notch leaves of the rafter. */
    public static final Term<Length> LEFT = Term.of("rafter left at the birdsmouth, square to it", "bl", Length.class);

    /** The notch as a share of the depth. */
    public static final Term<Ratio> NOTCH_SHARE = Term.of("birdsmouth notch, share of the depth", "bq", Ratio.class);

    /** The greatest share of the depth that a notch may take. */
    public static final Term<Ratio> GREATEST_SHARE = Term.of("greatest share for a notch", "bg", Ratio.class);

    /** The greatest depth of a notch. */
    public static final Term<Length> GREATEST_NOTCH = Term.of("greatest birdsmouth notch", "bm", Length.class);

    /** The greatest seat whose notch keeps to that share. */
    public static final Term<Length> GREATEST_SEAT = Term.of("greatest birdsmouth seat", "bx", Length.class);

    /** A size of the birdsmouth is not as it must be. */
    public static final ProblemCode SIZE = ProblemCode.of("birdsmouth.size", "Check the size and its unit.");

    private static final Term<Pitch> PITCH = RoofFace.RAFTER_PITCH;
    private static final Formula HEEL_BY_SEAT = Formula.of(HEEL, SEAT.times(PITCH.tan()));
    private static final Formula NOTCH_BY_SEAT = Formula.of(NOTCH, SEAT.times(PITCH.sin()));
    private static final Formula PLUMB_DEPTH_BY_PITCH = Formula.of(PLUMB_DEPTH, DEPTH.over(PITCH.cos()));
    private static final Formula HEIGHT_SUM = Formula.of(HEIGHT_ABOVE_PLATE, PLUMB_DEPTH.minus(HEEL));
    private static final Formula LEFT_SUM = Formula.of(LEFT, DEPTH.minus(NOTCH));
    private static final Formula SHARE_OF_DEPTH = Formula.of(NOTCH_SHARE, NOTCH.over(DEPTH));
    private static final Formula GREATEST_NOTCH_BY_SHARE = Formula.of(GREATEST_NOTCH, DEPTH.times(GREATEST_SHARE));
    private static final Formula GREATEST_SEAT_BY_NOTCH = Formula.of(GREATEST_SEAT, GREATEST_NOTCH.over(PITCH.sin()));

    private final Length depth;
    private final Length seat;
    private final Figure<Pitch> pitch;
    private final Numbers numbers;

    private record Numbers(Length heel, Length notch, Length plumbDepth, Length above, Length left, Ratio share)
            implements Serializable {}

    private Birdsmouth(Length depth, Length seat, Figure<Pitch> pitch) {
        this.depth = Objects.requireNonNull(depth, "depth");
        this.seat = Objects.requireNonNull(seat, "seat");
        this.pitch = Objects.requireNonNull(pitch, "pitch");
        Problems problems = Problems.none();
        Checks.requireSize(problems, SIZE, "rafter depth", depth);
        Checks.requireSize(problems, SIZE, "seat", seat);
        problems.throwIfErrors();
        this.numbers = compute(Recorder.off());
        problems.require(
                numbers.left.isPositive(),
                SIZE,
                "seat",
                seat,
                "leave some of a rafter " + depth + " deep at " + pitch.value());
        problems.throwIfErrors();
    }

    /**
     * Returns a birdsmouth.
     *
     * @param depth the depth of the rafter, square to its edges, above zero
     * @param seat the level length of the seat, above zero
     * @param pitch the pitch of the rafter
     * @return the birdsmouth
     * @throws ProblemsException if a size is wrong or the notch would cut the rafter in two
     */
    public static Birdsmouth of(Length depth, Length seat, Pitch pitch) {
        return of(depth, seat, Figure.given(Objects.requireNonNull(pitch, "pitch")));
    }

    /**
     * Returns a birdsmouth, with the origin of the pitch.
     *
     * @param depth the depth of the rafter, square to its edges, above zero
     * @param seat the level length of the seat, above zero
     * @param pitch the pitch of the rafter
     * @return the birdsmouth
     * @throws ProblemsException if a size is wrong or the notch would cut the rafter in two
     */
    public static Birdsmouth of(Length depth, Length seat, Figure<Pitch> pitch) {
        return new Birdsmouth(depth, seat, pitch);
    }

    /**
     * Returns the greatest depth of a notch that keeps to a share of the rafter.
     *
     * @param depth the depth of the rafter, square to its edges, above zero
     * @param share the greatest share, as a rule or the habit of the trade has it
     * @return the depth, square to the rafter
     */
    public static Worked<Length> greatestNotch(Length depth, Figure<Ratio> share) {
        requireShare(depth, share);
        return Worked.by(GREATEST_NOTCH, r -> greatestNotch(depth, share, r));
    }

    /**
     * Returns the greatest seat whose notch keeps to a share of the rafter.
     *
     * <p>For example, a third of a rafter 125 mm deep at 35° allows a seat of 72.6 mm.
     *
     * @param depth the depth of the rafter, square to its edges, above zero
     * @param pitch the pitch of the rafter
     * @param share the greatest share, as a rule or the habit of the trade has it
     * @return the level length of the seat
     */
    public static Worked<Length> greatestSeat(Length depth, Pitch pitch, Figure<Ratio> share) {
        requireShare(depth, share);
        Objects.requireNonNull(pitch, "pitch");
        return Worked.by(GREATEST_SEAT, r -> {
            Length notch = greatestNotch(depth, share, r);
            Pitch p = r.use(PITCH, pitch);
            return r.record(GREATEST_SEAT, notch.dividedBy(p.sin()), GREATEST_SEAT_BY_NOTCH);
        });
    }

    private static void requireShare(Length depth, Figure<Ratio> share) {
        Problems problems = Problems.none();
        Checks.requireSize(problems, SIZE, "rafter depth", depth);
        double part = share.value().toDouble();
        problems.require(part > 0 && part < 1, SIZE, "share of the depth", share.value(), "be above 0 and below 1");
        problems.throwIfErrors();
    }

    private static Length greatestNotch(Length depth, Figure<Ratio> share, Recorder r) {
        Length whole = r.use(DEPTH, depth);
        Ratio part = r.use(GREATEST_SHARE, share);
        return r.record(GREATEST_NOTCH, whole.times(part), GREATEST_NOTCH_BY_SHARE);
    }

    private Numbers compute(Recorder r) {
        Length whole = r.use(DEPTH, depth);
        Length level = r.use(SEAT, seat);
        Pitch p = r.use(PITCH, pitch);
        Length heel = r.record(HEEL, p.riseOver(level), HEEL_BY_SEAT);
        Length notch = r.record(NOTCH, p.riseAlong(level), NOTCH_BY_SEAT);
        Length plumb = r.record(PLUMB_DEPTH, p.slopeOver(whole), PLUMB_DEPTH_BY_PITCH);
        Length above = r.record(HEIGHT_ABOVE_PLATE, plumb.minus(heel), HEIGHT_SUM);
        Length left = r.record(LEFT, whole.minus(notch), LEFT_SUM);
        Ratio share = r.record(NOTCH_SHARE, notch.dividedBy(whole), SHARE_OF_DEPTH);
        return new Numbers(heel, notch, plumb, above, left, share);
    }

    /** Returns the plumb height of the heel: seat × tan(pitch). */
    public Length heel() {
        return numbers.heel;
    }

    /** Returns how deep the notch goes into the rafter, measured square to it: seat × sin(pitch). */
    public Length notch() {
        return numbers.notch;
    }

    /** Returns the depth of the rafter measured plumb: depth / cos(pitch). */
    public Length plumbDepth() {
        return numbers.plumbDepth;
    }

    /** Returns how high the top edge of the rafter stands over the plate, plumb over the heel. */
    public Length heightAbovePlate() {
        return numbers.above;
    }

    /** Returns what the notch leaves of the rafter, measured square to it. */
    public Length left() {
        return numbers.left;
    }

    /** Returns the notch as a share of the depth. */
    public Ratio notchShare() {
        return numbers.share;
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Birdsmouth b && depth.equals(b.depth) && seat.equals(b.seat) && pitch.equals(b.pitch);
    }

    @Override
    public int hashCode() {
        return Objects.hash(depth, seat, pitch.value());
    }

    /**
     * Returns for example {@code birdsmouth: seat 75 mm, heel 62.932472 mm, notch 48.209071 mm, 101.790929 mm left}.
     */
    @Override
    public String toString() {
        return "birdsmouth: seat " + seat + ", heel " + heel() + ", notch " + notch() + ", " + left() + " left";
    }
}
