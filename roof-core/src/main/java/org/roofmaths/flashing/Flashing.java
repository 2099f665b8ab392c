package org.roofmaths.flashing;

import java.io.Serializable;
import java.util.List;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * A piece of sheet-metal work at one edge or opening: what to cut, how wide, how long, and what it weighs.
 *
 * <p>The run of metal is cut into equal pieces no longer than the longest one allowed, each lapping the next:
 * {@code pieces = whole number up from ((run − lap) ÷ (longest − lap))}, at least one. A run that divides exactly gains no piece:
 * 2.9 m in pieces of 1.5 m with laps of 100 mm is 2 pieces.
 *
 * <p>The library reports sizes and mass. Lead and work at height need a competent person.
 *
 * @since 0.1
 */
public abstract sealed class Flashing implements HasWorking, Serializable
        permits CoverFlashing,
                StepFlashing,
                Soakers,
                Apron,
                BackGutter,
                ValleyLining,
                SecretGutter,
                LeadCapping,
                SheetPieces {
    private static final long serialVersionUID = 1L;

    /** The true length of a valley, hip or gutter that the sheet runs up. */
    public static final Term<Length> SLOPING_LENGTH = Term.of("true length of the sloping run", "Lr", Length.class);
    /** The length that the metal covers, with what goes beyond the ends. */
    public static final Term<Length> METAL_RUN = Term.of("run of metal", "R", Length.class);
    /** How many pieces. */
    public static final Term<Integer> PIECES = Term.of("flashing pieces", "n", Integer.class);
    /** The length of metal to cut, laps included. */
    public static final Term<Length> METAL_LENGTH = Term.of("length of metal with laps", "Lm", Length.class);
    /** The length of each piece. */
    public static final Term<Length> PIECE_LENGTH = Term.of("length of each piece", "Lp", Length.class);
    /** The width of the metal across its legs, before folding. */
    public static final Term<Length> GIRTH = Term.of("girth", "G", Length.class);
    /** The area of metal to cut. */
    public static final Term<Area> METAL_AREA = Term.of("area of metal", "Am", Area.class);
    /** What the metal weighs. */
    public static final Term<Mass> METAL_MASS = Term.of("mass of metal", "m", Mass.class);
    /** How many wedges hold it in the wall. */
    public static final Term<Integer> WEDGES = Term.of("wedges", "nw", Integer.class);
    /** How many clips hold its free edge. */
    public static final Term<Integer> CLIPS = Term.of("clips", "nc", Integer.class);

    /** The flashing would rise above a height that it must stay under. */
    public static final ProblemCode ABOVE_LIMIT = ProblemCode.of(
            "flashing.above-limit",
            "Lower the roof or its build-up, or agree with a competent person how the wall is weathered there.");
    /** The upstand stands high without support. */
    public static final ProblemCode HIGH_UPSTAND = ProblemCode.of(
            "flashing.high-upstand", "Ask for a joint nearer to the covering, or support the metal behind.");

    static final Formula METAL_RUN_BY_LINE = Formula.of(
            METAL_RUN, CoveringLine.LENGTH.plus(CoveringLine.EXTRA_AT_START).plus(CoveringLine.EXTRA_AT_END));

    Flashing() {}

    /** What the calculation found about the sheet to cut. */
    abstract SheetWork work();

    /** Computes and records; the constructor runs it with a recorder that is off. */
    abstract SheetWork compute(Recorder r);

    /** Returns what it is called, such as {@code cover flashing}. */
    public abstract String name();

    /** Returns the sheet that it is cut from. */
    public abstract MetalSheet sheet();

    /** Returns the legs across the girth, from the free edge. */
    public abstract List<Leg> legs();

    /**
     * Returns the flat shape of a piece, with its folds.
     *
     * @param piece one of {@link #pieces()}
     * @return its template
     * @throws IllegalArgumentException if it is not a piece of this flashing
     */
    public PieceTemplate template(FlashingPiece piece) {
        requireOwn(piece);
        return PieceTemplate.rectangle(piece.length(), legs());
    }

    void requireOwn(FlashingPiece piece) {
        if (!pieces().contains(piece)) {
            throw new IllegalArgumentException("piece must be one of the " + name() + ", but was " + piece);
        }
    }

    /** Returns findings and notices; empty if there are none. */
    public List<Problem> problems() {
        return work().problems();
    }

    /** Returns the pieces to cut, in order along the run. */
    public List<FlashingPiece> pieces() {
        return work().pieces();
    }

    /** Returns how many pieces there are. */
    public int pieceCount() {
        return work().pieces().size();
    }

    /** Returns the width of the metal across its legs, before folding. */
    public Length girth() {
        return work().girth();
    }

    /** Returns the length of metal to cut, laps included. */
    public Length metalLength() {
        return work().metalLength();
    }

    /** Returns the area of metal to cut. */
    public Area metalArea() {
        return work().area();
    }

    /** Returns what the metal weighs: a figure for planning; whether it can be lifted is not assessed. */
    public Mass mass() {
        return work().mass();
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    /** Returns for example {@code cover flashing: 4 pieces of 1386.25 mm × 319 mm, 36.1 kg of lead code 4}. */
    @Override
    public String toString() {
        FlashingPiece first = pieces().get(0);
        return name() + ": " + pieceCount() + (pieceCount() == 1 ? " piece of " : " pieces of ") + first.length()
                + " × " + first.girth() + ", " + mass() + " of " + sheet().name();
    }
}
