package org.roofmaths.flashing;

import java.io.Serializable;
import java.util.Optional;
import org.immutables.value.Value;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Term;

/**
 * What is asked of a flashing where a roof meets a wall: the sheet, and the least and greatest sizes of its parts.
 *
 * <p>The library holds none of these figures by itself. Rule data fills them from an edition, with the source of each; or the caller
 * does, with {@code Figure.given(…)}.
 *
 * <p>The upstand is the height of metal above the covering at a level edge; the cover is the length of metal down over the covering;
 * the water line is the least height of metal above the covering at a sloping edge, square to the slope. These three look alike and
 * are three figures.
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public interface FlashingDemand extends Serializable {
    /** The least height of metal above the covering at a level edge. */
    Term<Length> LEAST_UPSTAND = Term.of("least flashing upstand", "u", Length.class);
    /** The length of metal down over the covering. */
    Term<Length> COVER = Term.of("flashing cover", "v", Length.class);
    /** How far the metal is turned into a joint or chase. */
    Term<Length> TUCK = Term.of("tuck", "t", Length.class);
    /** How far one length of flashing laps the next. */
    Term<Length> SIDE_LAP = Term.of("flashing side lap", "l", Length.class);
    /** The longest piece in which the metal may be fixed. */
    Term<Length> LONGEST_PIECE = Term.of("longest flashing piece", "M", Length.class);
    /** The least height of metal above the covering at a sloping edge, square to the slope. */
    Term<Length> WATER_LINE = Term.of("water line", "w", Length.class);
    /** The greatest distance between wedges. */
    Term<Length> WEDGE_SPACING = Term.of("greatest wedge spacing", "sw", Length.class);
    /** The greatest distance between clips on a free edge. */
    Term<Length> CLIP_SPACING = Term.of("greatest clip spacing", "sc", Length.class);
    /** The height above which metal stands better with support behind it. */
    Term<Length> GREATEST_UPSTAND = Term.of("greatest unsupported upstand", "U", Length.class);

    /** A size that is not above zero, or that contradicts another. */
    ProblemCode WRONG_SIZE =
            ProblemCode.of("flashing.wrong-size", "Correct the size; each must be above zero and fit the others.");
    /** A figure that this flashing needs and that the demand does not hold. */
    ProblemCode MISSING_FIGURE = ProblemCode.of(
            "flashing.missing-figure", "Add the figure to the demand, from a rule row or from your own practice.");

    /** Returns the sheet to cut from. */
    MetalSheet sheet();

    /** Returns the least height of metal above the covering at a level edge. */
    Figure<Length> upstand();

    /** Returns the length of metal down over the covering. */
    Figure<Length> cover();

    /** Returns how far the metal is turned into a joint or chase. */
    Figure<Length> tuck();

    /** Returns how far one length of flashing laps the next. */
    Figure<Length> sideLap();

    /** Returns the longest piece in which the metal may be fixed. */
    Figure<Length> longestPiece();

    /** Returns the least height of metal above the covering at a sloping edge, square to the slope; empty if there is none. */
    Optional<Figure<Length>> waterLine();

    /** Returns the greatest distance between wedges; empty to count none along a level edge and one a step beside a slope. */
    Optional<Figure<Length>> wedgeSpacing();

    /** Returns the greatest distance between clips on the free edge; empty to count none. */
    Optional<Figure<Length>> clipSpacing();

    /** Returns the height above which an upstand is reported as standing high without support; empty to report none. */
    Optional<Figure<Length>> greatestUpstand();

    /**
     * Starts a demand; the builder asks for the parts in the order in which a person would say them.
     *
     * @return the first stage of the builder
     */
    static FlashingDemandBuilderStages.BuildStart builder() {
        return FlashingDemandBuilderStages.start();
    }

    /**
     * Checks that every size is above zero and that pieces are longer than their laps.
     *
     * @throws org.roofmaths.problem.ProblemsException with every size that is wrong
     */
    @Value.Check
    default void check() {
        Problems problems = Problems.none();
        Sizes.requirePositive(problems, LEAST_UPSTAND, upstand());
        Sizes.requirePositive(problems, COVER, cover());
        Sizes.requireNotNegative(problems, TUCK, tuck());
        Sizes.requireNotNegative(problems, SIDE_LAP, sideLap());
        Sizes.requirePositive(problems, LONGEST_PIECE, longestPiece());
        waterLine().ifPresent(figure -> Sizes.requirePositive(problems, WATER_LINE, figure));
        wedgeSpacing().ifPresent(figure -> Sizes.requirePositive(problems, WEDGE_SPACING, figure));
        clipSpacing().ifPresent(figure -> Sizes.requirePositive(problems, CLIP_SPACING, figure));
        greatestUpstand().ifPresent(figure -> Sizes.requirePositive(problems, GREATEST_UPSTAND, figure));
        Sizes.requireLongerThanLap(problems, longestPiece(), sideLap());
        problems.throwIfErrors();
    }

    /**
     * Returns the same demand with another water line.
     *
     * @param waterLine the least height of metal above the covering, square to the slope
     * @return the demand with it
     */
    default FlashingDemand withWaterLine(Figure<Length> waterLine) {
        return copy(sheet(), cover(), Optional.of(waterLine));
    }

    /**
     * Returns the same demand with another cover, such as one that {@link LeadLap} worked out for a flatter pitch.
     *
     * @param cover the length of metal down over the covering
     * @return the demand with it
     */
    default FlashingDemand withCover(Figure<Length> cover) {
        return copy(sheet(), cover, waterLine());
    }

    /**
     * Returns the same demand for another sheet.
     *
     * @param sheet the sheet to cut from
     * @return the demand with it
     */
    default FlashingDemand withSheet(MetalSheet sheet) {
        return copy(sheet, cover(), waterLine());
    }

    private FlashingDemand copy(MetalSheet sheet, Figure<Length> cover, Optional<Figure<Length>> waterLine) {
        return builder()
                .sheet(sheet)
                .upstand(upstand())
                .cover(cover)
                .tuck(tuck())
                .sideLap(sideLap())
                .longestPiece(longestPiece())
                .waterLine(waterLine)
                .wedgeSpacing(wedgeSpacing())
                .clipSpacing(clipSpacing())
                .greatestUpstand(greatestUpstand())
                .build();
    }
}
