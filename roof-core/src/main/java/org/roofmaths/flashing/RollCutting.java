package org.roofmaths.flashing;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;

/**
 * Which piece of sheet is cut from which roll.
 *
 * <p>Each piece goes on the narrowest roll that holds its girth; on each width the longest pieces are placed first, each on the first roll
 * with room. That is a plan to cut by, not a proof that no roll could be saved; buying is the order's business. Pieces of different sheets
 * are not mixed.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class RollCutting implements Serializable {
    private static final long serialVersionUID = 1L;

    /** A piece fits no roll. */
    public static final ProblemCode FITS_NO_ROLL =
            ProblemCode.of("flashing.fits-no-roll", "Use a wider roll or sheet, or shorten or weld the piece.");

    /** A size of a roll that is not above zero. */
    public static final ProblemCode WRONG_ROLL =
            ProblemCode.of("flashing.wrong-roll", "Give the widths and the length of the rolls in stock.");

    private final List<Roll> rolls;
    private final List<FlashingPiece> uncut;
    private final List<Problem> problems;

    /**
     * One roll and what is cut from it.
     *
     * @param sheet the sheet
     * @param width its width
     * @param length its length
     * @param cuts the pieces, in the order in which they are cut
     * @since 0.1
     */
    public record Roll(MetalSheet sheet, Length width, Length length, List<FlashingPiece> cuts)
            implements Serializable {
        private static final long serialVersionUID = 1L;

        /** Copies the list. */
        public Roll {
            Objects.requireNonNull(sheet, "sheet");
            Objects.requireNonNull(width, "width");
            Objects.requireNonNull(length, "length");
            cuts = List.copyOf(cuts);
        }

        /** Returns the length that is left. */
        public Length left() {
            return cuts.stream().map(FlashingPiece::length).reduce(length, Length::minus);
        }

        /** Returns what the whole roll weighs: a figure for planning; whether it can be lifted is not assessed. */
        public Mass mass() {
            return sheet.massOf(width.times(length));
        }

        /** Returns the area of the pieces cut from it. */
        public Area used() {
            return cuts.stream().map(cut -> cut.length().times(cut.girth())).reduce(Area.ZERO, Area::plus);
        }

        /** Returns for example {@code lead code 4, 375 mm × 3000 mm: 2 pieces, 440 mm left}. */
        @Override
        public String toString() {
            return sheet.name() + ", " + width + " × " + length + ": " + cuts.size()
                    + (cuts.size() == 1 ? " piece, " : " pieces, ") + left() + " left";
        }
    }

    private RollCutting(List<Roll> rolls, List<FlashingPiece> uncut, List<Problem> problems) {
        this.rolls = List.copyOf(rolls);
        this.uncut = List.copyOf(uncut);
        this.problems = List.copyOf(problems);
    }

    /**
     * Returns a plan that cuts the pieces of some flashings from rolls.
     *
     * @param flashings the flashings
     * @param widths the widths of the rolls in stock; one or more
     * @param rollLength the length of each roll
     * @return the plan; a piece that fits no roll is left out of it and reported
     * @throws org.roofmaths.problem.ProblemsException if a width or the length is not above zero, or there is no width
     */
    public static RollCutting of(List<? extends Flashing> flashings, List<Length> widths, Length rollLength) {
        Problems errors = Problems.none()
                .require(!widths.isEmpty(), WRONG_ROLL, "roll widths", "none", "be one or more")
                .require(rollLength.isPositive(), WRONG_ROLL, "roll length", rollLength, "be above 0 mm");
        widths.forEach(width -> errors.require(width.isPositive(), WRONG_ROLL, "roll width", width, "be above 0 mm"));
        errors.throwIfErrors();

        List<Length> narrowFirst = widths.stream().sorted().toList();
        List<FlashingPiece> uncut = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        Map<String, List<Open>> open = new TreeMap<>();
        List<Open> all = new ArrayList<>();
        List<Cut> cuts = new ArrayList<>();
        for (Flashing flashing : flashings) {
            flashing.pieces().forEach(piece -> cuts.add(new Cut(piece, flashing.sheet())));
        }
        cuts.sort(Comparator.comparing((Cut cut) -> cut.piece.length()).reversed());
        for (Cut cut : cuts) {
            FlashingPiece piece = cut.piece;
            Length width = narrowFirst.stream()
                    .filter(w -> piece.girth().meetsGreatest(w))
                    .findFirst()
                    .orElse(null);
            if (width == null || !piece.length().meetsGreatest(rollLength)) {
                uncut.add(piece);
                problems.add(fitsNone(piece, narrowFirst.get(narrowFirst.size() - 1), rollLength));
                continue;
            }
            List<Open> same =
                    open.computeIfAbsent(cut.sheet.name() + " " + width.toNanometres(), key -> new ArrayList<>());
            Open roll = same.stream()
                    .filter(o -> piece.length().meetsGreatest(o.left))
                    .findFirst()
                    .orElse(null);
            if (roll == null) {
                roll = new Open(cut.sheet, width, rollLength);
                same.add(roll);
                all.add(roll);
            }
            roll.cuts.add(piece);
            roll.left = roll.left.minus(piece.length());
        }
        return new RollCutting(
                all.stream()
                        .sorted(Comparator.comparing((Open o) -> o.width))
                        .map(o -> new Roll(o.sheet, o.width, rollLength, o.cuts))
                        .toList(),
                uncut,
                problems);
    }

    private record Cut(FlashingPiece piece, MetalSheet sheet) {}

    /** A roll while it is being filled. */
    private static final class Open {
        private final MetalSheet sheet;
        private final Length width;
        private final List<FlashingPiece> cuts = new ArrayList<>();
        private Length left;

        Open(MetalSheet sheet, Length width, Length left) {
            this.sheet = sheet;
            this.width = width;
            this.left = left;
        }
    }

    private static Problem fitsNone(FlashingPiece piece, Length widest, Length rollLength) {
        boolean isTooWide = !piece.girth().meetsGreatest(widest);
        Length got = isTooWide ? piece.girth() : piece.length();
        Length limit = isTooWide ? widest : rollLength;
        Length over = got.minus(limit);
        return Problem.finding(
                FITS_NO_ROLL,
                piece.name(),
                got,
                limit,
                piece + " fits no roll: its " + (isTooWide ? "girth" : "length") + " is " + over + " over " + limit,
                List.of(Mend.of(
                        isTooWide ? "widest roll" : "roll length", over + " more", over, "one piece without a seam")));
    }

    /** Returns the rolls, the narrowest first. */
    public List<Roll> rolls() {
        return rolls;
    }

    /** Returns the pieces that fit no roll; empty if all do. */
    public List<FlashingPiece> uncut() {
        return uncut;
    }

    /** Returns a finding for each piece that fits no roll. */
    public List<Problem> problems() {
        return problems;
    }

    /** Returns what all the rolls weigh. */
    public Mass mass() {
        return rolls.stream().map(Roll::mass).reduce(Mass.ZERO, Mass::plus);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof RollCutting c && rolls.equals(c.rolls) && uncut.equals(c.uncut);
    }

    @Override
    public int hashCode() {
        return Objects.hash(rolls, uncut);
    }

    /** Returns the rolls, one a line. */
    @Override
    public String toString() {
        return String.join("\n", rolls.stream().map(Roll::toString).toList());
    }
}
