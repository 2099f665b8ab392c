package org.roofmaths.covering;

import java.util.Optional;
import org.immutables.value.Value;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;
import org.roofmaths.units.Range;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;

/**
 * A flat unit laid so that every point of the roof is covered twice, with joints broken by half a unit: a plain tile or a sized
 * slate.
 *
 * <pre>{@code
 * DoubleLapUnit slate = DoubleLapUnit.builder()
 *         .name("500 x 250 slate").kind(UnitKind.NATURAL_SLATE)
 *         .length(mm(500)).width(mm(250)).joint(mm(3))
 *         .thickness(mm(6)).mass(kg(1.6))
 *         .hanging(Hanging.centreNailed(mm(4)))
 *         .build();
 * slate.gaugeFor(mm(90)).value();      // (500 − 90) ÷ 2 = 205 mm
 * }</pre>
 *
 * <p>{@code build()} throws a {@link org.roofmaths.problem.ProblemsException} with every reason at once if the sizes contradict
 * each other. A headlap above a third of the length is not refused: that limit stands in documents, and a check reports it.
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public non-sealed interface DoubleLapUnit extends CoveringUnit {
    /** The distance from the nail hole of a head-nailed slate to its head. */
    Term<Length> HOLE_TO_HEAD = Term.of("hole to head", "a", Length.class);

    /** The distance from the head of the slate below up to the nail hole of a centre-nailed slate. */
    Term<Length> HOLE_CLEARANCE = Term.of("hole clearance", "hc", Length.class);

    /** The distance from the tail of a slate up to its nail hole. */
    Term<Length> HOLING_GAUGE = Term.of("holing gauge", "t", Length.class);

    /** The length of the short units of the under-eaves course. */
    Term<Length> UNDER_EAVES_LENGTH = Term.of("under-eaves length", "Le", Length.class);

    /** The width of one unit. */
    Term<Length> UNIT_WIDTH = Term.of("unit width", "w", Length.class);

    /** The open joint between two units of a course. */
    Term<Length> JOINT = Term.of("side joint", "j", Length.class);

    /** How far a unit covers the joint of the course below, sideways. */
    Term<Length> SIDELAP = Term.of("sidelap", "sl", Length.class);

    /** The greatest headlap that holed slates can still be laid at. */
    Term<Length> GREATEST_HEADLAP_FOR_HOLE = Term.of("greatest headlap for the hole", "hmax", Length.class);

    @Override
    String name();

    @Override
    UnitKind kind();

    @Override
    Length length();

    /** Returns the width of one unit. */
    Length width();

    /** Returns the open joint between two units of a course when laid as intended. */
    Length joint();

    @Override
    Length thickness();

    @Override
    Mass mass();

    /** Returns how the unit sits on its batten. */
    Hanging hanging();

    /** Returns the joints between which the layout may choose; the joint alone if not given. */
    @Value.Default
    default Range<Length> jointRange() {
        return Range.closed(joint(), joint());
    }

    /** Returns the unit half as wide again that keeps the bond at edges; empty if there is none. */
    Optional<PartUnit> unitAndAHalf();

    /** Returns the short unit made for the under-eaves course; empty if it is cut from the full one. */
    Optional<ShortUnit> underEavesUnit();

    /** Returns the short unit made for the course under the ridge; empty if full units go to the top. */
    Optional<ShortUnit> topsUnit();

    /** Returns the least gauge that the unit allows; empty if it names none. */
    Optional<Length> leastGauge();

    /** Returns the greatest gauge that the unit allows, beside the one that its headlap gives; empty if it names none. */
    Optional<Length> greatestGauge();

    @Override
    default Length crownHeight() {
        return thickness();
    }

    @Override
    default Length coverWidth() {
        return width().plus(joint());
    }

    @Override
    default Range<Length> coverRange() {
        return Range.closed(
                width().plus(jointRange().lower().orElse(joint())),
                width().plus(jointRange().upper().orElse(joint())));
    }

    @Override
    default Expression gaugeBy(Term<Length> headlap) {
        return fixedPart().minus(headlap).over(2);
    }

    @Override
    default Expression headlapBy(Term<Length> gauge) {
        return fixedPart().minus(gauge.times(2));
    }

    private Expression fixedPart() {
        return hanging().way() == Hanging.Way.HEAD_NAILED ? LENGTH.minus(HOLE_TO_HEAD) : LENGTH;
    }

    private Length fixedLength() {
        return hanging().way() == Hanging.Way.HEAD_NAILED
                ? length().minus(hanging().size())
                : length();
    }

    @Override
    default void tellSizes(Recorder recorder) {
        recorder.use(LENGTH, length());
        switch (hanging().way()) {
            case HEAD_NAILED -> recorder.use(HOLE_TO_HEAD, hanging().size());
            case CENTRE_NAILED -> recorder.use(HOLE_CLEARANCE, hanging().size());
            case NIBS -> {
                // the length alone decides
            }
        }
    }

    @Override
    default Length gaugeOf(Length headlap) {
        return fixedLength().minus(headlap).dividedBy(2);
    }

    @Override
    default Length headlapOf(Length gauge) {
        return fixedLength().minus(gauge.times(2));
    }

    /**
     * Returns the distance from the tail of a slate up to its nail hole.
     *
     * <p>Centre-nailed it is {@code gauge + headlap + clearance}, which is {@code length − gauge + clearance}: 600 − 250 + 4 is
     * 354 mm. Head-nailed it is the length less the distance from hole to head.
     *
     * @param gauge the gauge got
     * @return the holing gauge
     * @throws IllegalStateException if the unit hangs on nibs and is not holed by the gauge
     */
    default Worked<Length> holingGauge(Length gauge) {
        if (hanging().way() == Hanging.Way.NIBS) {
            throw new IllegalStateException(
                    "holing gauge must be asked of a nailed unit, but " + name() + " is " + hanging());
        }
        return Worked.by(HOLING_GAUGE, r -> {
            tellSizes(r);
            r.use(GAUGE, gauge);
            return r.record(HOLING_GAUGE, hangingLengthAt(gauge), Formula.of(HOLING_GAUGE, hangingBy(GAUGE)));
        });
    }

    /**
     * Returns the distance from the line on the batten (underside of the nibs, or nail hole) down to the tail.
     *
     * @param gauge the gauge got; it matters to a centre-nailed slate only
     * @return the hanging length
     */
    default Length hangingLengthAt(Length gauge) {
        return switch (hanging().way()) {
            case NIBS -> hanging().size();
            case HEAD_NAILED -> length().minus(hanging().size());
            case CENTRE_NAILED -> length().minus(gauge).plus(hanging().size());
        };
    }

    private Expression hangingBy(Term<Length> gauge) {
        return hanging().way() == Hanging.Way.HEAD_NAILED
                ? LENGTH.minus(HOLE_TO_HEAD)
                : LENGTH.minus(gauge).plus(HOLE_CLEARANCE);
    }

    /**
     * Returns the length of the short units of the under-eaves course: {@code length − gauge}, for every way of nailing.
     *
     * @param gauge the gauge got
     * @return the length from head to tail
     */
    default Worked<Length> underEavesLength(Length gauge) {
        return Worked.by(UNDER_EAVES_LENGTH, r -> {
            r.use(LENGTH, length());
            r.use(GAUGE, gauge);
            return r.record(
                    UNDER_EAVES_LENGTH, length().minus(gauge), Formula.of(UNDER_EAVES_LENGTH, LENGTH.minus(GAUGE)));
        });
    }

    /**
     * Returns how far a unit covers the joint below it, sideways, in half bond: half of what is left of its width beside the joint.
     *
     * @return (width − joint) ÷ 2: 123.5 mm for a slate 250 mm wide with joints of 3 mm
     */
    default Worked<Length> sidelap() {
        return Worked.by(SIDELAP, r -> {
            Length wide = r.use(UNIT_WIDTH, width());
            Length open = r.use(JOINT, joint());
            return r.record(
                    SIDELAP,
                    wide.minus(open).dividedBy(2),
                    Formula.of(SIDELAP, UNIT_WIDTH.minus(JOINT).over(2)));
        });
    }

    /**
     * Returns the greatest headlap at which slates that are holed already can be laid again: the hole must stay clear of the head of
     * the slate below.
     *
     * <p>For example, a hole 291.5 mm above the tail of a 500 mm slate allows 2 × 291.5 − 500 = 83 mm.
     *
     * @param tailToHole the distance from the tail up to the hole
     * @return the greatest headlap; below zero if the hole is under the middle
     */
    default Worked<Length> greatestHeadlapForHole(Length tailToHole) {
        return Worked.by(GREATEST_HEADLAP_FOR_HOLE, r -> {
            r.use(LENGTH, length());
            r.use(HOLING_GAUGE, tailToHole);
            return r.record(
                    GREATEST_HEADLAP_FOR_HOLE,
                    tailToHole.times(2).minus(length()),
                    Formula.of(GREATEST_HEADLAP_FOR_HOLE, HOLING_GAUGE.times(2).minus(LENGTH)));
        });
    }

    /** Refuses sizes that contradict each other, with every reason at once. */
    @Value.Check
    default void check() {
        Problems problems = Problems.none();
        problems.require(!name().isBlank(), IMPOSSIBLE_UNIT, "name", "\"" + name() + "\"", "say what the unit is");
        problems.require(kind().lap() == Lap.DOUBLE, IMPOSSIBLE_UNIT, "kind", kind(), "be of a double-lap unit");
        UnitChecks.above(problems, "length", length(), Length.ZERO);
        UnitChecks.above(problems, "width", width(), Length.ZERO);
        problems.require(
                !joint().isNegative() && joint().isShorterThan(width()),
                IMPOSSIBLE_UNIT,
                "joint",
                joint(),
                "be 0 mm or more and below the width of " + width());
        UnitChecks.inRange(problems, "joint", joint(), "jointRange", jointRange(), "joint");
        UnitChecks.above(problems, "thickness", thickness(), Length.ZERO);
        problems.require(mass().isPositive(), IMPOSSIBLE_UNIT, "mass", mass(), "be above 0 kg");
        if (hanging().way() == Hanging.Way.NIBS) {
            UnitChecks.aboveAndBelow(problems, "hanging length", hanging().size(), "the length of ", length());
        } else {
            problems.require(
                    !hanging().size().isNegative() && hanging().size().isShorterThan(length()),
                    IMPOSSIBLE_UNIT,
                    hanging().way() == Hanging.Way.HEAD_NAILED ? "hole to head" : "hole clearance",
                    hanging().size(),
                    "be 0 mm or more and below the length of " + length());
        }
        unitAndAHalf().ifPresent(wide -> UnitChecks.above(problems, "unitAndAHalf", wide.width(), width()));
        underEavesUnit().ifPresent(unit -> shortUnit(problems, "underEavesUnit", unit));
        topsUnit().ifPresent(unit -> {
            shortUnit(problems, "topsUnit", unit);
            problems.require(
                    hanging().way() != Hanging.Way.CENTRE_NAILED,
                    IMPOSSIBLE_UNIT,
                    "topsUnit",
                    unit,
                    "be left out for a centre-nailed unit, whose top course is cut");
        });
        UnitChecks.gaugeLimits(problems, leastGauge(), greatestGauge(), length());
        problems.throwIfErrors();
    }

    private void shortUnit(Problems problems, String where, ShortUnit unit) {
        UnitChecks.aboveAndBelow(problems, where + " length", unit.length(), "the length of ", length());
        UnitChecks.aboveAndBelow(
                problems, where + " hanging length", unit.hangingLength(), "its length of ", unit.length());
    }

    /**
     * Starts a unit; the builder asks for the parts in the order in which a person would say them.
     *
     * @return the first stage of the builder
     */
    static DoubleLapUnitBuilderStages.BuildStart builder() {
        return DoubleLapUnitBuilderStages.start();
    }
}
