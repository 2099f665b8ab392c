package org.roofmaths.units.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;

/** Laws of pitches and angles. */
class PitchProperties {
    /** The relative size of a unit in the last place of a double, at most. */
    private static final double ULP = 0x1p-52;

    @Provide
    Arbitrary<Double> tangents() {
        // From 1 in 1000 to 1000 in 1, as likely flat as steep.
        return Arbitraries.doubles().between(-3, 3).map(exponent -> Math.pow(10, exponent));
    }

    @Property
    void a_three_four_five_roof_gives_five_by_every_notation(
            @ForAll @LongRange(min = 1, max = 1_000_000_000_000L) long k) {
        Length unit = Length.ofNanometres(k);
        for (Pitch pitch : List.of(
                Pitch.ofRiseAndRun(unit.times(3), unit.times(4)),
                Pitch.ofRiseOverSpan(unit.times(3), unit.times(8)),
                Pitch.ofRiseIn12(9),
                Pitch.ofPercent(75),
                Pitch.ofOneIn(4 / 3.0),
                Pitch.parse("3 in 4"),
                Pitch.parse("75 %"))) {
            assertThat(pitch.slopeOver(unit.times(4))).isEqualTo(unit.times(5));
            assertThat(pitch.riseOver(unit.times(4))).isEqualTo(unit.times(3));
            assertThat(pitch.runOver(unit.times(3))).isEqualTo(unit.times(4));
            assertThat(pitch.runAlong(unit.times(5))).isEqualTo(unit.times(4));
            assertThat(pitch.riseAlong(unit.times(5))).isEqualTo(unit.times(3));
        }
    }

    @Property(tries = 3000)
    void the_nearest_nanometre_of_rise_for_a_limit_meets_the_limit(
            @ForAll @IntRange(min = 1, max = 179) int halfDegrees,
            @ForAll @LongRange(min = 30_000_000, max = 100_000_000_000L) long run) {
        Pitch limit = Pitch.ofDegrees(halfDegrees / 2.0);
        Length level = Length.ofNanometres(run);
        // Worked here with the plain library, apart from the class under test.
        Length rise = Length.ofNanometres(Math.round(run * Math.tan(Math.toRadians(halfDegrees / 2.0))));
        Pitch built = Pitch.ofRiseAndRun(rise, level);
        assertThat(built.meetsLeast(limit)).isTrue();
        assertThat(built.meetsGreatest(limit)).isTrue();
    }

    @Property(tries = 5000)
    void every_notation_agrees_with_every_other_within_the_stated_bound(@ForAll("tangents") double tangent) {
        double angle = Math.atan(tangent);
        double bound = 4 * ULP * angle / (Math.sin(angle) * Math.cos(angle));
        for (Pitch pitch :
                List.of(Pitch.ofRiseIn12(12 * tangent), Pitch.ofPercent(100 * tangent), Pitch.ofOneIn(1 / tangent))) {
            assertThat(pitch.toRiseIn12() / (12 * tangent)).isCloseTo(1, within(bound));
            assertThat(pitch.toPercent() / (100 * tangent)).isCloseTo(1, within(bound));
            assertThat(pitch.toOneIn() * tangent).isCloseTo(1, within(bound));
            assertThat(pitch.toRiseOverSpan().toDouble() * 2 / tangent).isCloseTo(1, within(bound));
            // An angle has nothing to be magnified by.
            assertThat(pitch.toRadians() / angle).isCloseTo(1, within(4 * ULP));
        }
    }

    @Property
    void sine_and_cosine_agree_with_the_plain_ones(@ForAll @DoubleRange(min = -720, max = 720) double degrees) {
        Angle angle = Angle.ofDegrees(degrees);
        // Math.toRadians is off by two units in the last place of up to 4π, which moves a sine by as much.
        double bound = 2 * 16 * ULP;
        assertThat(angle.sin()).isCloseTo(Math.sin(Math.toRadians(degrees)), within(bound));
        assertThat(angle.cos()).isCloseTo(Math.cos(Math.toRadians(degrees)), within(bound));
        assertThat(angle.sin() * angle.sin() + angle.cos() * angle.cos()).isCloseTo(1, within(4 * ULP));
        if (Math.abs(angle.cos()) > 1e-3) {
            assertThat(angle.tan() * angle.cos()).isCloseTo(angle.sin(), within(4 * ULP));
        }
        assertThat(angle.negated().sin()).isEqualTo(0 - angle.sin());
        assertThat(angle.negated().cos()).isEqualTo(angle.cos());
    }

    @Property
    void normal_forms_differ_by_whole_turns(@ForAll @DoubleRange(min = -1e6, max = 1e6) double degrees) {
        Angle angle = Angle.ofDegrees(degrees);
        double unsigned = angle.normalised().toDegrees();
        double signed = angle.normalisedSigned().toDegrees();
        assertThat(unsigned).isGreaterThanOrEqualTo(0).isLessThan(360);
        assertThat(signed).isGreaterThan(-180).isLessThanOrEqualTo(180);
        double turns = (degrees - signed) / 360;
        // The difference is rounded at the size of the angle, up to 10^6 with a unit in the last place of 2^-33.
        assertThat(turns).isCloseTo(Math.rint(turns), within(0x1p-33));
        assertThat(signed < 0 ? signed + 360 : signed).isCloseTo(unsigned, within(0x1p-44));
    }
}
