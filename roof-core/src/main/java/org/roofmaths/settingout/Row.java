package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roofmaths.units.Length;
import org.roofmaths.units.Rounding;

/**
 * The pieces of one course from left to right.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Row implements Serializable {
    private static final long serialVersionUID = 1L;

    private final List<Piece> pieces;
    private final @Nullable Length joint;

    Row(List<Piece> pieces, @Nullable Length joint) {
        this.pieces = List.copyOf(pieces);
        this.joint = joint;
    }

    /** Returns the pieces from left to right. */
    public List<Piece> pieces() {
        return pieces;
    }

    /**
     * Returns how many pieces of one kind there are.
     *
     * @param kind the kind
     * @return the number
     */
    public int count(PieceKind kind) {
        return (int) pieces.stream().filter(piece -> piece.kind() == kind).count();
    }

    /** Returns the open joint between two units; empty for single-lap units, which lock. */
    public Optional<Length> joint() {
        return Optional.ofNullable(joint);
    }

    /** Returns the first piece that is cut to width; empty if none is. */
    public Optional<Piece> cut() {
        return pieces.stream().filter(piece -> piece.kind().isCut()).findFirst();
    }

    /**
     * Returns the right edges of the pieces as running marks from a zero, rounded as running values.
     *
     * @param zero where the tape is held, to the right of the left wall line
     * @param rounding how marks are rounded
     * @return the marks, rising
     */
    public List<Length> marks(Length zero, Rounding<Length> rounding) {
        List<Length> marks = new ArrayList<>(pieces.size());
        for (Piece piece : pieces) {
            marks.add(rounding.apply(piece.to().minus(zero)));
        }
        return List.copyOf(marks);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Row r && pieces.equals(r.pieces) && Objects.equals(joint, r.joint);
    }

    @Override
    public int hashCode() {
        return pieces.hashCode();
    }

    /** Returns for example {@code half unit, 17 whole units}. */
    @Override
    public String toString() {
        List<String> words = new ArrayList<>();
        int run = 0;
        for (int i = 0; i < pieces.size(); i++) {
            run++;
            PieceKind kind = pieces.get(i).kind();
            if (i + 1 == pieces.size() || pieces.get(i + 1).kind() != kind) {
                String width = kind.isCut() ? " " + pieces.get(i).width() + " wide" : "";
                words.add((run == 1 ? "1 " : run + " ") + kind.words(run) + width);
                run = 0;
            }
        }
        return String.join(", ", words);
    }
}
