package org.roofmaths.rules.property;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.roofmaths.covering.UnitKind;
import org.roofmaths.rules.Check;
import org.roofmaths.rules.Edition;
import org.roofmaths.rules.Insulation;
import org.roofmaths.rules.Outcome;
import org.roofmaths.rules.Rules;
import org.roofmaths.rules.Ruling;
import org.roofmaths.rules.Situation;
import org.roofmaths.rules.Subjects;
import org.roofmaths.rules.UnderlayClass;
import org.roofmaths.rules.UnderlaySupport;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Quantity;

/** Laws of rulings and checks. */
class ChecksProperties {
    private static final Edition NHBC = Rules.of("gb").edition("nhbc-standards", "2020");
    private static final Edition BS_5250 = Rules.of("gb").edition("bs-5250", "2011");
    private static final Edition BS_5534 = Rules.of("gb").edition("bs-5534", "unstated");
    private static final Situation TILE = Situation.of(UnitKind.CONCRETE_SINGLE_LAP_TILE);

    @Property
    @Label("a check meets its row just where its margin is not negative")
    void margin_and_outcome_agree(@ForAll @DoubleRange(min = 1, max = 89) double degrees) {
        Check<Pitch> check = NHBC.check(Subjects.LEAST_PITCH, TILE.withPitch(Pitch.ofDegrees(degrees)));
        double margin = check.margin().map(Quantity::toSi).orElseThrow();
        assertThat(check.outcome()).isEqualTo(margin < 0 ? Outcome.FALLS_SHORT : Outcome.MEETS);
        assertThat(check.mends().isEmpty()).isEqualTo(check.outcome() == Outcome.MEETS);
    }

    @Property
    @Label("what a mend adds makes the row met with no margin")
    void a_mend_mends(@ForAll @LongRange(min = 1, max = 74_999_000) long nanometres) {
        Length got = Length.ofNanometres(nanometres);
        Check<Length> check = NHBC.check(Subjects.LEAST_HEADLAP, TILE, got);
        Length more = (Length) check.mends().get(0).by().orElseThrow();
        Check<Length> mended = NHBC.check(Subjects.LEAST_HEADLAP, TILE, got.plus(more));
        assertThat(mended.outcome()).isEqualTo(Outcome.MEETS);
        assertThat(mended.margin()).contains(Length.ZERO);
    }

    @Property
    @Label("a shortfall of up to 100 nm is the limit, any larger one is reported")
    void the_resolution_of_lengths_holds(@ForAll @LongRange(min = 0, max = 1000) long nanometres) {
        Length got = Length.ofMillimetres(75).minus(Length.ofNanometres(nanometres));
        assertThat(NHBC.check(Subjects.LEAST_HEADLAP, TILE, got).outcome())
                .isEqualTo(nanometres <= 100 ? Outcome.MEETS : Outcome.FALLS_SHORT);
    }

    @Property
    @Label("a steeper roof never asks for a wider underlay lap")
    void underlay_laps_never_grow_with_pitch(
            @ForAll @DoubleRange(min = 12.5, max = 80) double one,
            @ForAll @DoubleRange(min = 12.5, max = 80) double other) {
        assertThat(lap(Math.max(one, other))).isLessThanOrEqualTo(lap(Math.min(one, other)));
    }

    private static Length lap(double degrees) {
        Situation roof = Situation.unknown()
                .withPitch(Pitch.ofDegrees(degrees))
                .withUnderlay(UnderlayClass.HIGH_RESISTANCE, UnderlaySupport.UNSUPPORTED);
        return BS_5534.find(Subjects.UNDERLAY_HORIZONTAL_LAP, roof).orThrow().value();
    }

    @Property
    @Label("every pitch has one row of eaves ventilation, and it holds there")
    void every_pitch_is_covered_by_one_row(@ForAll @DoubleRange(min = 0.1, max = 89.9) double degrees) {
        Pitch pitch = Pitch.ofDegrees(degrees);
        Situation roof = Situation.unknown()
                .withPitch(pitch)
                .withUnderlay(UnderlayClass.HIGH_RESISTANCE, UnderlaySupport.UNSUPPORTED)
                .withInsulation(Insulation.AT_CEILING);
        Ruling<Length> ruling = BS_5250.find(Subjects.LOW_VENT_GAP, roof);
        assertThat(ruling.kind()).isEqualTo(Ruling.Kind.FOUND);
        // A pitch within a millionth of a degree of 15° counts as 15°.
        assertThat(ruling.orThrow().value().toMillimetres())
                .isEqualTo(pitch.meetsGreatest(Pitch.ofDegrees(15)) ? 25 : 10);
    }
}
