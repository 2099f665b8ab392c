package org.roofmaths.order;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;

/**
 * How a thing is sold: singly, in packs, in rolls, in stock lengths, in bags, or as needed.
 *
 * <pre>{@code
 * Stock.packs(180)                       // packs of 180
 * Stock.packs(180).withPartPacks()       // packs of 180, part packs sold
 * Stock.rolls(metres(50))                // rolls of 50 m
 * Stock.lengths(metres(4.8)).withMinimum(10)
 * }</pre>
 *
 * <p>Checked with the {@link OrderTerms} it becomes part of, so that every problem is told at once. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Stock implements Serializable {
    private static final long serialVersionUID = 1L;

    /** A pack, roll, length or bag that holds nothing. */
    public static final ProblemCode SIZE =
            ProblemCode.of("order.stock-size", "Give what one pack, roll, length or bag holds.");

    /** A least number that is none. */
    public static final ProblemCode MINIMUM =
            ProblemCode.of("order.minimum", "Give the least number sold, or leave the minimum out.");

    /** A pallet that holds nothing. */
    public static final ProblemCode PALLET =
            ProblemCode.of("order.pallet", "Give how many packs stand on a pallet, or leave pallets out.");

    /** Part packs of something that has no packs of pieces. */
    public static final ProblemCode PART_PACKS =
            ProblemCode.of("order.part-packs", "Part packs are for things sold in packs of pieces.");

    private enum Form {
        SINGLY("piece", "pieces"),
        PACKS("pack", "packs"),
        ROLLS("roll", "rolls"),
        LENGTHS("length", "lengths"),
        BAGS("bag", "bags"),
        AS_NEEDED("", "");

        final String one;
        final String many;

        Form(String one, String many) {
            this.one = one;
            this.many = many;
        }
    }

    private final Form form;
    private final @Nullable Amount size;
    private final boolean partPacks;
    private final @Nullable Long minimum;
    private final @Nullable Long packsPerPallet;

    private Stock(
            Form form,
            @Nullable Amount size,
            boolean partPacks,
            @Nullable Long minimum,
            @Nullable Long packsPerPallet) {
        this.form = form;
        this.size = size;
        this.partPacks = partPacks;
        this.minimum = minimum;
        this.packsPerPallet = packsPerPallet;
    }

    private static Stock of(Form form, Amount size) {
        return new Stock(form, size, false, null, null);
    }

    /** Returns stock that is sold by the piece. */
    public static Stock singly() {
        return of(Form.SINGLY, Amount.pieces(1));
    }

    /**
     * Returns stock that is sold in packs of so many pieces.
     *
     * @param pieces how many are in a pack, at least 1
     * @return the stock
     */
    public static Stock packs(long pieces) {
        return of(Form.PACKS, Amount.pieces(pieces));
    }

    /**
     * Returns stock that is sold in packs which cover an area.
     *
     * @param area what a pack covers, above zero
     * @return the stock
     */
    public static Stock packs(Area area) {
        return of(Form.PACKS, Amount.of(area));
    }

    /**
     * Returns stock that is sold in rolls.
     *
     * @param length the length on a roll, above zero
     * @return the stock
     */
    public static Stock rolls(Length length) {
        return of(Form.ROLLS, Amount.of(length));
    }

    /**
     * Returns stock that is sold in straight lengths, such as battens.
     *
     * @param length one length, above zero
     * @return the stock
     */
    public static Stock lengths(Length length) {
        return of(Form.LENGTHS, Amount.of(length));
    }

    /**
     * Returns stock that is sold in bags or boxes of a mass.
     *
     * @param mass what a bag holds, above zero
     * @return the stock
     */
    public static Stock bags(Mass mass) {
        return of(Form.BAGS, Amount.of(mass));
    }

    /** Returns stock of which exactly the needed amount is bought, such as lead cut from a roll at the merchant's. */
    public static Stock asNeeded() {
        return new Stock(Form.AS_NEEDED, null, false, null, null);
    }

    /** Returns the same packs, of which the last one may be opened: then whole pieces are bought and no rest of a pack. */
    public Stock withPartPacks() {
        return new Stock(form, size, true, minimum, packsPerPallet);
    }

    /**
     * Returns the same stock with a least number sold at once.
     *
     * @param count how many packs, rolls, lengths, bags or single pieces at least, 1 or more
     * @return the stock
     */
    public Stock withMinimum(long count) {
        return new Stock(form, size, partPacks, count, packsPerPallet);
    }

    /**
     * Returns the same stock, which comes on pallets; the pallets are counted, part ones included, and change nothing in what is bought.
     *
     * @param packs how many packs, rolls, lengths or bags stand on a pallet, 1 or more
     * @return the stock
     */
    public Stock withPallets(long packs) {
        return new Stock(form, size, partPacks, minimum, packs);
    }

    /** Returns what one pack, roll, length or bag holds; empty if as much as is needed is sold. */
    public Optional<Amount> size() {
        return Optional.ofNullable(size);
    }

    /** Returns the least amount that can be bought more: a whole pack, or one piece where part packs are sold. */
    public Optional<Amount> soldBy() {
        return partPacks ? Optional.of(Amount.pieces(1)) : size();
    }

    /** Returns the least number sold at once; empty if there is none. */
    public OptionalLong minimum() {
        return minimum == null ? OptionalLong.empty() : OptionalLong.of(minimum);
    }

    /** Returns how many stand on a pallet; empty if there are no pallets. */
    public OptionalLong packsPerPallet() {
        return packsPerPallet == null ? OptionalLong.empty() : OptionalLong.of(packsPerPallet);
    }

    /** Tells whether whole packs are sold of which more than half of one can be left over unused. */
    boolean isWholePacksOfPieces() {
        return form == Form.PACKS && !partPacks && size != null && size.kind() == AmountKind.PIECES;
    }

    void check(Problems problems) {
        if (size != null && !size.isMoreThanResolution()) {
            problems.require(
                    false,
                    SIZE,
                    form == Form.LENGTHS ? "stock length" : form.one + " size",
                    size.kind() == AmountKind.PIECES ? size + " pieces" : size,
                    size.kind() == AmountKind.PIECES
                            ? "be at least 1 piece"
                            : "be above 0" + size.kind().unit());
        }
        problems.require(
                minimum == null || minimum >= 1,
                MINIMUM,
                "least number sold",
                String.valueOf(minimum),
                "be at least 1");
        problems.require(
                packsPerPallet == null || packsPerPallet >= 1,
                PALLET,
                "number on a pallet",
                String.valueOf(packsPerPallet),
                "be at least 1");
        problems.require(
                !partPacks || (form == Form.PACKS && size != null && size.kind() == AmountKind.PIECES),
                PART_PACKS,
                "stock in part packs",
                this,
                "be packs of pieces");
    }

    /** Returns how many are bought in words: {@code 2 packs of 180}, {@code 1 pack of 180 and 17 pieces}, {@code 13 lengths of 4.8 m}. */
    String bought(long count) {
        if (size == null) {
            return "as needed";
        }
        if (form == Form.SINGLY) {
            return String.valueOf(count);
        }
        if (!partPacks) {
            return many(count);
        }
        long pack = size.toPieces();
        long loose = count % pack;
        String pieces = loose + (loose == 1 ? " piece" : " pieces");
        return count < pack ? pieces : many(count / pack) + (loose == 0 ? "" : " and " + pieces);
    }

    private String many(long count) {
        return count + " " + (count == 1 ? form.one : form.many) + " of " + size;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Stock s
                && form == s.form
                && Objects.equals(size, s.size)
                && partPacks == s.partPacks
                && Objects.equals(minimum, s.minimum)
                && Objects.equals(packsPerPallet, s.packsPerPallet);
    }

    @Override
    public int hashCode() {
        return Objects.hash(form, size, partPacks, minimum, packsPerPallet);
    }

    /** Returns how it is sold, such as {@code packs of 180, part packs sold}. */
    @Override
    public String toString() {
        String text = form == Form.AS_NEEDED ? "as needed" : form == Form.SINGLY ? "singly" : form.many + " of " + size;
        return text
                + (partPacks ? ", part packs sold" : "")
                + (minimum == null ? "" : ", at least " + minimum)
                + (packsPerPallet == null ? "" : ", " + packsPerPallet + " on a pallet");
    }
}
