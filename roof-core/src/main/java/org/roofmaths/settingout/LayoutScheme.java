package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.immutables.value.Value;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.roof.End;
import org.roofmaths.units.Direction;
import org.roofmaths.units.Length;
import org.roofmaths.units.Offset;
import org.roofmaths.units.Range;
import org.roofmaths.units.Rounding;
import org.roofmaths.working.Figure;

/**
 * How a face is to be covered: the unit, the headlap asked, the fixed lines at eaves and top, the two ends, and what is wanted most.
 *
 * <pre>{@code
 * LayoutScheme scheme = LayoutScheme.builder()
 *         .unit(tile)
 *         .headlap(Figure.given(mm(75)))
 *         .overhangIntoGutter(level(mm(50)))
 *         .topDistance(mm(30))
 *         .left(FaceEnd.abutment(Range.closed(mm(0), mm(10))))
 *         .right(FaceEnd.verge(mm(45), Range.closed(mm(38), mm(50))))
 *         .build();
 * }</pre>
 *
 * <p>{@code build()} throws a {@link org.roofmaths.problem.ProblemsException} with every reason at once if parts contradict each
 * other. Whether the scheme fits a face is said by {@link FaceLayout}.
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public interface LayoutScheme extends Serializable {
    /** Parts of the scheme contradict each other. */
    ProblemCode CONTRADICTION =
            ProblemCode.of("layout-scheme.contradiction", "Change the part named, or the one it contradicts.");

    /** Returns the unit of the field of the roof. */
    CoveringUnit unit();

    /** Returns the least headlap asked: given by the caller, or the figure of a rule. */
    Figure<Length> headlap();

    /** Returns how far the tails reach past the fascia line: level or on the slope. */
    Offset overhangIntoGutter();

    /** Returns how far the line of the top course lies below the apex line, on the slope. */
    Length topDistance();

    /** Returns how the covering ends at the left, as seen from outside looking up the slope. */
    FaceEnd left();

    /** Returns how the covering ends at the right. */
    FaceEnd right();

    /** Returns the overhangs into the gutter that are allowed, measured like the one wanted; empty if it may not move. */
    Optional<Range<Length>> overhangRange();

    /** Returns the top distances that are allowed; empty if it may not move. */
    Optional<Range<Length>> topDistanceRange();

    /** Returns what the battens are to be; empty leaves clashes of battens unlooked at, which a notice says. */
    Optional<BattenDemand> battens();

    /** Returns the distance from rafter to rafter, centre to centre; empty leaves the joints of battens out. */
    Optional<Length> rafterCentres();

    /** Returns what the underlay is to be; empty leaves the underlay out. */
    Optional<UnderlayDemand> underlay();

    /** Returns the roll from which the underlay is laid; empty leaves the underlay out. */
    Optional<UnderlayRoll> underlayRoll();

    /** Returns the narrowest cut allowed; half a unit, as an assumed figure, if not given. */
    Optional<Figure<Length>> smallestCut();

    /** Returns the end at which a cut or half unit is laid; a wall if only one end has one, else the left, if not given. */
    Optional<End> cutEnd();

    /** Returns the distance from hole to head of under-eaves slates; 25 mm, as an assumed figure, if not given. */
    Optional<Figure<Length>> underEavesHoleToHead();

    /** Returns the openings in the face; empty if there are none. */
    List<Opening> openings();

    /** Returns what is preferred among layouts that fit, and what may change if none does. */
    @Value.Default
    default Preference preference() {
        return Preference.usual();
    }

    /** Returns how marks are rounded: to the nearest 1 mm if not given. */
    @Value.Default
    default Rounding<Length> rounding() {
        return Courses.oneMillimetre();
    }

    /** Returns the same scheme with another unit. */
    default LayoutScheme withUnit(CoveringUnit unit) {
        return copy(
                unit,
                headlap(),
                overhangIntoGutter(),
                topDistance(),
                left(),
                right(),
                battens(),
                openings(),
                preference());
    }

    /** Returns the same scheme with another least headlap. */
    default LayoutScheme withHeadlap(Figure<Length> headlap) {
        return copy(
                unit(),
                headlap,
                overhangIntoGutter(),
                topDistance(),
                left(),
                right(),
                battens(),
                openings(),
                preference());
    }

    /** Returns the same scheme with another overhang into the gutter. */
    default LayoutScheme withOverhangIntoGutter(Offset overhang) {
        return copy(unit(), headlap(), overhang, topDistance(), left(), right(), battens(), openings(), preference());
    }

    /** Returns the same scheme with another top distance. */
    default LayoutScheme withTopDistance(Length distance) {
        return copy(
                unit(),
                headlap(),
                overhangIntoGutter(),
                distance,
                left(),
                right(),
                battens(),
                openings(),
                preference());
    }

    /** Returns the same scheme with another end at the left. */
    default LayoutScheme withLeft(FaceEnd end) {
        return copy(
                unit(),
                headlap(),
                overhangIntoGutter(),
                topDistance(),
                end,
                right(),
                battens(),
                openings(),
                preference());
    }

    /** Returns the same scheme with another end at the right. */
    default LayoutScheme withRight(FaceEnd end) {
        return copy(
                unit(),
                headlap(),
                overhangIntoGutter(),
                topDistance(),
                left(),
                end,
                battens(),
                openings(),
                preference());
    }

    /** Returns the same scheme with other battens. */
    default LayoutScheme withBattens(BattenDemand battens) {
        return copy(
                unit(),
                headlap(),
                overhangIntoGutter(),
                topDistance(),
                left(),
                right(),
                Optional.of(battens),
                openings(),
                preference());
    }

    /** Returns the same scheme with another preference. */
    default LayoutScheme withPreference(Preference preference) {
        return copy(
                unit(),
                headlap(),
                overhangIntoGutter(),
                topDistance(),
                left(),
                right(),
                battens(),
                openings(),
                preference);
    }

    /** Returns the same scheme with other openings. */
    default LayoutScheme withOpenings(List<Opening> openings) {
        return copy(
                unit(),
                headlap(),
                overhangIntoGutter(),
                topDistance(),
                left(),
                right(),
                battens(),
                openings,
                preference());
    }

    private LayoutScheme copy(
            CoveringUnit unit,
            Figure<Length> headlap,
            Offset overhangIntoGutter,
            Length topDistance,
            FaceEnd left,
            FaceEnd right,
            Optional<BattenDemand> battens,
            List<Opening> openings,
            Preference preference) {
        return builder()
                .unit(unit)
                .headlap(headlap)
                .overhangIntoGutter(overhangIntoGutter)
                .topDistance(topDistance)
                .left(left)
                .right(right)
                .overhangRange(overhangRange())
                .topDistanceRange(topDistanceRange())
                .battens(battens)
                .rafterCentres(rafterCentres())
                .underlay(underlay())
                .underlayRoll(underlayRoll())
                .smallestCut(smallestCut())
                .cutEnd(cutEnd())
                .underEavesHoleToHead(underEavesHoleToHead())
                .addAllOpenings(openings)
                .preference(preference)
                .rounding(rounding())
                .build();
    }

    /** Refuses parts that contradict each other, with every reason at once. */
    @Value.Check
    default void check() {
        Problems problems = Problems.none();
        Length lap = headlap().value();
        problems.require(
                !lap.isNegative() && lap.isShorterThan(unit().length()),
                CONTRADICTION,
                "headlap",
                lap,
                "be 0 mm or more and below the unit's length of " + unit().length());
        Direction direction = overhangIntoGutter().direction();
        problems.require(
                direction == Direction.LEVEL || direction == Direction.ON_SLOPE,
                CONTRADICTION,
                "overhangIntoGutter",
                overhangIntoGutter(),
                "be measured level or on the slope");
        Length overhang = overhangIntoGutter().length();
        problems.require(
                overhang.abs().isShorterThan(unit().length()),
                CONTRADICTION,
                "overhangIntoGutter",
                overhang,
                "be shorter than the unit's length of " + unit().length());
        problems.require(!topDistance().isNegative(), CONTRADICTION, "topDistance", topDistance(), "be 0 mm or more");
        overhangRange().ifPresent(range -> inRange(problems, "overhangIntoGutter", overhang, range));
        topDistanceRange().ifPresent(range -> inRange(problems, "topDistance", topDistance(), range));
        Set<String> names = new HashSet<>();
        for (Opening opening : openings()) {
            problems.require(names.add(opening.name()), CONTRADICTION, "opening name", opening.name(), "occur once");
        }
        rafterCentres().ifPresent(centres -> above(problems, "rafterCentres", centres));
        smallestCut().ifPresent(cut -> above(problems, "smallestCut", cut.value()));
        underlayRoll().ifPresent(roll -> {
            above(problems, "underlayRoll width", roll.width());
            above(problems, "underlayRoll length", roll.length());
            underlay()
                    .ifPresent(demand -> problems.require(
                            demand.horizontalLap().value().isShorterThan(roll.width()),
                            CONTRADICTION,
                            "underlay lap",
                            demand.horizontalLap().value(),
                            "be shorter than the roll is wide, " + roll.width()));
        });
        problems.throwIfErrors();
    }

    private static void above(Problems problems, String where, Length given) {
        problems.require(given.isPositive(), CONTRADICTION, where, given, "be above 0 mm");
    }

    private static void inRange(Problems problems, String where, Length given, Range<Length> range) {
        problems.require(
                range.contains(given)
                        && range.lower().isPresent()
                        && range.upper().isPresent(),
                CONTRADICTION,
                where,
                given,
                "lie in its range " + range + ", which needs two ends");
    }

    /**
     * Starts a scheme; the builder asks for the parts in the order in which a person would say them.
     *
     * @return the first stage of the builder
     */
    static LayoutSchemeBuilderStages.BuildStart builder() {
        return LayoutSchemeBuilderStages.start();
    }
}
