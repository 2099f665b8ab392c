package org.roofmaths.framing;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.roofmaths.units.Length;

/**
 * One line of a cutting list: so many timbers of one kind, length and cuts.
 *
 * @param member what they are, such as {@code common rafter}
 * @param count how many, at least 1
 * @param longPoint the length along the top edge to the long points of the cuts
 * @param shortPoint the length along the top edge to the short points; equal where no cut runs across the top edge
 * @param cuts the cuts, in words with their angles and datums
 * @since 0.1
 */
public record CuttingLine(String member, int count, Length longPoint, Length shortPoint, List<Cut> cuts)
        implements Serializable {

    /** Refuses null and a count below 1. */
    public CuttingLine {
        Objects.requireNonNull(member, "member");
        Objects.requireNonNull(longPoint, "longPoint");
        Objects.requireNonNull(shortPoint, "shortPoint");
        cuts = List.copyOf(cuts);
        if (count < 1) {
            throw new IllegalArgumentException("count of " + member + " must be at least 1, but was " + count);
        }
    }

    /** Tells whether another line asks for the same timber, whatever the count. */
    boolean isSameTimber(CuttingLine other) {
        return member.equals(other.member)
                && longPoint.equals(other.longPoint)
                && shortPoint.equals(other.shortPoint)
                && cuts.equals(other.cuts);
    }

    CuttingLine withCount(int newCount) {
        return new CuttingLine(member, newCount, longPoint, shortPoint, cuts);
    }

    /**
     * Returns for example {@code 12 × common rafter 4394.78852 mm; plumb cut 35° from square; seat cut 35° from the
     * edge}.
     */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(count + " × " + member + " " + longPoint);
        if (!shortPoint.equals(longPoint)) {
            text.append(" long point, ").append(shortPoint).append(" short point");
        }
        cuts.forEach(cut -> text.append("; ").append(cut));
        return text.toString();
    }
}
