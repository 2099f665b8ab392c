package org.roofmaths.covering;

import java.util.Optional;
import org.immutables.value.Value;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;
import org.roofmaths.units.Range;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;

/**
 * A tile that covers the next course only and locks or overlaps at its sides: an interlocking tile or a pantile.
 *
 * <pre>{@code
 * SingleLapUnit tile = SingleLapUnit.builder()
 *         .name("roll tile").kind(UnitKind.CONCRETE_SINGLE_LAP_TILE)
 *         .length(mm(420)).hangingLength(mm(395))
 *         .overallWidth(mm(330)).coverWidth(mm(300))
 *         .leastHeadlap(mm(75)).thickness(mm(25)).mass(kg(4.4))
 *         .coverRange(Range.closed(mm(297), mm(303)))
 *         .leastGauge(mm(310)).greatestGauge(mm(345))
 *         .build();
 * }</pre>
 *
 * <p>{@code build()} throws a {@link org.roofmaths.problem.ProblemsException} with every reason at once if the sizes contradict
 * each other.
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public non-sealed interface SingleLapUnit extends CoveringUnit {
    @Override
    String name();

    @Override
    UnitKind kind();

    @Override
    Length length();

    /** Returns the hanging length: from the underside of the nibs to the tail. Measure it; it is not the length. */
    Length hangingLength();

    /** Returns the overall width of one unit, side locks included. */
    Length overallWidth();

    @Override
    Length coverWidth();

    /** Returns the least headlap that the unit itself is made for. */
    Length leastHeadlap();

    @Override
    Length thickness();

    @Override
    Mass mass();

    /** Returns the widths that the shunt of the side lock allows; the cover width alone if not given. */
    @Override
    @Value.Default
    default Range<Length> coverRange() {
        return Range.closed(coverWidth(), coverWidth());
    }

    /** Returns the least gauge that the unit allows; empty if it names none. */
    Optional<Length> leastGauge();

    /** Returns the greatest gauge that the unit allows, beside the one that its headlap gives; empty if it names none. */
    Optional<Length> greatestGauge();

    /** Returns the height of the top of the roll above the batten; the thickness if not given. */
    @Override
    @Value.Default
    default Length crownHeight() {
        return thickness();
    }

    /** Returns the half unit made for this tile; empty if there is none. */
    Optional<PartUnit> halfUnit();

    /** Returns the unit made for a left-hand verge, with its own cover; empty if the ordinary unit is used there. */
    Optional<PartUnit> leftVergeUnit();

    /**
     * Returns the unit made for a right-hand verge, whose width is all that it shows; empty if the ordinary unit is used there,
     * which shows its overall width.
     */
    Optional<PartUnit> rightVergeUnit();

    /** Returns what the last unit at the right shows beyond its cover: the overall width less the cover width. */
    default Length sideLock() {
        return overallWidth().minus(coverWidth());
    }

    @Override
    default Expression gaugeBy(Term<Length> headlap) {
        return LENGTH.minus(headlap);
    }

    @Override
    default Expression headlapBy(Term<Length> gauge) {
        return LENGTH.minus(gauge);
    }

    @Override
    default void tellSizes(Recorder recorder) {
        recorder.use(LENGTH, length());
    }

    @Override
    default Length gaugeOf(Length headlap) {
        return length().minus(headlap);
    }

    @Override
    default Length headlapOf(Length gauge) {
        return length().minus(gauge);
    }

    /** Refuses sizes that contradict each other, with every reason at once. */
    @Value.Check
    default void check() {
        Problems problems = Problems.none();
        problems.require(!name().isBlank(), IMPOSSIBLE_UNIT, "name", "\"" + name() + "\"", "say what the unit is");
        problems.require(kind().lap() == Lap.SINGLE, IMPOSSIBLE_UNIT, "kind", kind(), "be of a single-lap unit");
        UnitChecks.above(problems, "length", length(), Length.ZERO);
        UnitChecks.aboveAndBelow(problems, "hangingLength", hangingLength(), "the length of ", length());
        UnitChecks.above(problems, "coverWidth", coverWidth(), Length.ZERO);
        UnitChecks.inRange(problems, "coverWidth", coverWidth(), "coverRange", coverRange(), "width");
        UnitChecks.least(problems, "overallWidth", overallWidth(), "the cover width of ", coverWidth());
        UnitChecks.aboveAndBelow(problems, "leastHeadlap", leastHeadlap(), "the length of ", length());
        UnitChecks.above(problems, "thickness", thickness(), Length.ZERO);
        UnitChecks.least(problems, "crownHeight", crownHeight(), "the thickness of ", thickness());
        problems.require(mass().isPositive(), IMPOSSIBLE_UNIT, "mass", mass(), "be above 0 kg");
        UnitChecks.gaugeLimits(problems, leastGauge(), greatestGauge(), length());
        halfUnit()
                .ifPresent(half -> UnitChecks.aboveAndBelow(
                        problems, "halfUnit", half.width(), "the cover width of ", coverWidth()));
        leftVergeUnit().ifPresent(unit -> UnitChecks.above(problems, "leftVergeUnit", unit.width(), Length.ZERO));
        rightVergeUnit().ifPresent(unit -> UnitChecks.above(problems, "rightVergeUnit", unit.width(), Length.ZERO));
        problems.throwIfErrors();
    }

    /**
     * Starts a unit; the builder asks for the parts in the order in which a person would say them.
     *
     * @return the first stage of the builder
     */
    static SingleLapUnitBuilderStages.BuildStart builder() {
        return SingleLapUnitBuilderStages.start();
    }
}
