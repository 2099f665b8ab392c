package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.units.Length;
import org.roofmaths.units.Range;

/**
 * How the covering ends at one side of a face: over a verge by a wanted overhang or at a wall with a gap, each with the room there
 * is; or cut to a hip or a valley.
 *
 * <pre>{@code
 * FaceEnd.verge(mm(45), Range.closed(mm(38), mm(50)))       // 45 mm wanted, 38 to 50 mm allowed
 * FaceEnd.abutment(Range.closed(mm(0), mm(10)))             // a gap of up to 10 mm, 5 mm wanted
 * FaceEnd.hip()                                              // every course cut to the hip
 * }</pre>
 *
 * <p>Both are measured along the eaves, from the wall line: the outer face of the end wall, or the face of the wall beside the roof.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class FaceEnd implements Serializable {
    private static final long serialVersionUID = 1L;

    /** The room at an end is no range with two ends, or the wanted size lies outside it. */
    public static final ProblemCode NO_ROOM =
            ProblemCode.of("face-end.no-room", "Give the least and the greatest size, and a wanted one between them.");

    private final EdgeKind kind;
    private final Length wanted;
    private final Length least;
    private final Length greatest;

    private FaceEnd(EdgeKind kind, String what, Length wanted, Range<Length> range) {
        this.kind = kind;
        this.wanted = wanted;
        this.least = end(what, range, range.lower().orElse(null));
        this.greatest = end(what, range, range.upper().orElse(null));
        if (!range.contains(wanted)) {
            throw new ProblemsException(List.of(Problem.error(NO_ROOM, what, wanted, "lie in " + range)));
        }
    }

    private static Length end(String what, Range<Length> range, @Nullable Length end) {
        if (end == null) {
            throw new ProblemsException(
                    List.of(Problem.error(NO_ROOM, what, range, "have a least and a greatest size")));
        }
        return end;
    }

    /**
     * Returns a verge with room in its overhang.
     *
     * @param wanted the overhang past the outer face of the end wall that is best
     * @param overhang the least and the greatest overhang
     * @return the end
     * @throws ProblemsException if the range has no two ends or does not hold the wanted overhang
     */
    public static FaceEnd verge(Length wanted, Range<Length> overhang) {
        return new FaceEnd(EdgeKind.VERGE, "verge overhang", wanted, overhang);
    }

    /**
     * Returns a verge whose overhang is fixed.
     *
     * @param overhang the overhang past the outer face of the end wall
     * @return the end
     */
    public static FaceEnd verge(Length overhang) {
        return verge(overhang, Range.closed(overhang, overhang));
    }

    /**
     * Returns a wall beside the roof, with room in the gap between wall and covering.
     *
     * @param wanted the gap that is best
     * @param gap the least and the greatest gap
     * @return the end
     * @throws ProblemsException if the range has no two ends or does not hold the wanted gap
     */
    public static FaceEnd abutment(Length wanted, Range<Length> gap) {
        return new FaceEnd(EdgeKind.SIDE_ABUTMENT, "gap at the abutment", wanted, gap);
    }

    /**
     * Returns a wall beside the roof; the middle of the room in the gap is wanted.
     *
     * @param gap the least and the greatest gap between wall and covering
     * @return the end
     * @throws ProblemsException if the range has no two ends
     */
    public static FaceEnd abutment(Range<Length> gap) {
        Length least = end("gap at the abutment", gap, gap.lower().orElse(null));
        Length greatest = end("gap at the abutment", gap, gap.upper().orElse(null));
        return abutment(least.plus(greatest).dividedBy(2), gap);
    }

    /**
     * Returns an end at a hip, to which every course is cut.
     *
     * @return the end
     */
    public static FaceEnd hip() {
        return new FaceEnd(EdgeKind.HIP, "hip", Length.ZERO, Range.closed(Length.ZERO, Length.ZERO));
    }

    /**
     * Returns an end at a valley, to which every course is cut, held back for the channel.
     *
     * @param heldBack from the valley line to the cut, square to the valley: half the clear channel, 0 mm or more
     * @return the end
     * @throws ProblemsException if it is below zero
     */
    public static FaceEnd valley(Length heldBack) {
        if (heldBack.isNegative()) {
            throw new ProblemsException(List.of(Problem.error(NO_ROOM, "heldBack", heldBack, "be 0 mm or more")));
        }
        return new FaceEnd(EdgeKind.VALLEY, "valley", heldBack, Range.closed(heldBack, heldBack));
    }

    /** Returns {@link EdgeKind#VERGE}, {@link EdgeKind#SIDE_ABUTMENT}, {@link EdgeKind#HIP} or {@link EdgeKind#VALLEY}. */
    public EdgeKind kind() {
        return kind;
    }

    /** Returns the overhang or the gap that is wanted; at a valley, how far the cut is held back. */
    public Length wanted() {
        return wanted;
    }

    /** Returns the overhangs or gaps that are allowed. */
    public Range<Length> room() {
        return Range.closed(least, greatest);
    }

    /** Tells whether the covering ends over a verge. */
    public boolean isVerge() {
        return kind == EdgeKind.VERGE;
    }

    /** Tells whether the covering is cut to a hip or a valley. */
    public boolean isRaking() {
        return kind == EdgeKind.HIP || kind == EdgeKind.VALLEY;
    }

    /** How far the covering reaches past the wall line: an overhang, or a gap with a minus sign. */
    Length wantedReach() {
        return isVerge() ? wanted : wanted.negated();
    }

    Length leastReach() {
        return isVerge() ? least : greatest.negated();
    }

    Length greatestReach() {
        return isVerge() ? greatest : least.negated();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof FaceEnd f
                && kind == f.kind
                && wanted.equals(f.wanted)
                && least.equals(f.least)
                && greatest.equals(f.greatest);
    }

    @Override
    public int hashCode() {
        return Objects.hash(kind, wanted, least, greatest);
    }

    /** Returns for example {@code verge, overhang 45 mm of [38 mm..50 mm]}. */
    @Override
    public String toString() {
        if (isRaking()) {
            return kind == EdgeKind.HIP ? "hip" : "valley, held back " + wanted;
        }
        return kind + (isVerge() ? ", overhang " : ", gap ") + wanted + " of " + room();
    }
}
