package org.roofmaths.order;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.roofmaths.units.Length;

/**
 * One way of cutting a stock length, and how often it is cut so.
 *
 * @param stock the stock length
 * @param pieces the pieces in one, longest first, each as often as it is cut from it
 * @param offcut what is left at the end, after the saw
 * @param times how many stock lengths are cut so
 * @since 0.1
 */
public record StockCut(Length stock, List<CutPiece> pieces, Length offcut, long times) implements Serializable {
    /** Copies the list. */
    public StockCut {
        Objects.requireNonNull(stock, "stock");
        pieces = List.copyOf(pieces);
        Objects.requireNonNull(offcut, "offcut");
    }

    /** Returns for example {@code 3 × 4800 mm: 3 of 1200 mm (trimmer); offcut 1191 mm}. */
    @Override
    public String toString() {
        return times + " × " + stock + ": "
                + pieces.stream().map(CutPiece::toString).collect(Collectors.joining(", ")) + "; offcut " + offcut;
    }
}
