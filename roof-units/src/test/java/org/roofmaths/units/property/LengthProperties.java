package org.roofmaths.units.property;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.roofmaths.units.Direction;
import org.roofmaths.units.Length;
import org.roofmaths.units.Offset;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Range;
import org.roofmaths.units.WholeCount;

/** Laws of lengths, their counts, ranges and offsets. */
class LengthProperties {
    /** The documented storage resolution, 100 nm. */
    private static final long RESOLUTION = 100;

    /** Two roundings of a double, each half a unit in the last place, stay under half a nanometre below 2^50 nm. */
    private static final long EXACT = 1L << 50;

    @Provide
    Arbitrary<Length> lengths() {
        return Lengths.upToAKilometre();
    }

    @Provide
    Arbitrary<Length> gauges() {
        return Lengths.between(Length.ofNanometres(RESOLUTION + 1), Length.ofMetres(1));
    }

    @Provide
    Arbitrary<Length> distances() {
        return Lengths.between(Length.ZERO, Length.ofMetres(100));
    }

    @Provide
    Arbitrary<Pitch> roofPitches() {
        return Arbitraries.doubles().between(5, 85).map(Pitch::ofDegrees);
    }

    @Property
    void adding_and_taking_away_gives_the_length_back(@ForAll("lengths") Length a, @ForAll("lengths") Length b) {
        assertThat(a.plus(b).minus(b)).isEqualTo(a);
        assertThat(a.plus(b)).isEqualTo(b.plus(a));
        assertThat(a.minus(b)).isEqualTo(b.minus(a).negated());
    }

    @Property
    void order_agrees_with_equals_and_with_subtraction(
            @ForAll("lengths") Length a, @ForAll("lengths") Length b, @ForAll boolean same) {
        Length other = same ? Length.ofNanometres(a.toNanometres()) : b;
        int order = a.compareTo(other);
        assertThat(order == 0).isEqualTo(a.equals(other));
        assertThat(order > 0).isEqualTo(a.minus(other).isPositive()).isEqualTo(a.isLongerThan(other));
        assertThat(order < 0).isEqualTo(a.minus(other).isNegative()).isEqualTo(a.isShorterThan(other));
    }

    @Property(tries = 5000)
    void every_unit_gives_the_nanometres_back(@ForAll @LongRange(min = -EXACT, max = EXACT) long nanometres) {
        Length length = Length.ofNanometres(nanometres);
        assertThat(Length.ofMillimetres(length.toMillimetres())).isEqualTo(length);
        assertThat(Length.ofCentimetres(length.toCentimetres())).isEqualTo(length);
        assertThat(Length.ofMetres(length.toMetres())).isEqualTo(length);
        assertThat(Length.ofDecimalInches(length.toInches())).isEqualTo(length);
        assertThat(Length.ofDecimalFeet(length.toFeet())).isEqualTo(length);
        assertThat(Length.ofYards(length.toYards())).isEqualTo(length);
    }

    @Property
    void sixty_fourths_of_an_inch_add_up(@ForAll @IntRange(max = 10_000) int sixtyFourths) {
        assertThat(Length.ofInches(sixtyFourths / 64, sixtyFourths % 64, 64))
                .isEqualTo(Length.ofInches(0, 1, 64).times(sixtyFourths))
                .isEqualTo(Length.parse(sixtyFourths / 64 + " " + sixtyFourths % 64 + "/64 in"));
    }

    @Property
    void count_and_rest_make_up_the_distance(@ForAll("gauges") Length gauge, @ForAll("distances") Length distance) {
        WholeCount whole = gauge.timesIn(distance);
        assertThat(gauge.times(whole.count()).plus(whole.rest())).isEqualTo(distance);
        assertThat(whole.rest().toNanometres()).isBetween(-RESOLUTION, gauge.toNanometres() - RESOLUTION - 1);
    }

    @Property
    void the_count_that_covers_is_the_least(@ForAll("gauges") Length gauge, @ForAll("distances") Length distance) {
        long count = gauge.timesToCover(distance);
        assertThat(gauge.times(count).meetsLeast(distance)).isTrue();
        assertThat(count == 0 || !gauge.times(count - 1).meetsLeast(distance)).isTrue();
    }

    @Property
    void a_multiple_off_by_the_resolution_is_that_multiple(
            @ForAll("gauges") Length gauge,
            @ForAll @IntRange(min = 1, max = 1000) int count,
            @ForAll @LongRange(min = 0, max = RESOLUTION) long off) {
        Length exact = gauge.times(count);
        assertThat(gauge.timesIn(exact.minus(Length.ofNanometres(off))).count()).isEqualTo(count);
        assertThat(gauge.timesToCover(exact.plus(Length.ofNanometres(off)))).isEqualTo(count);
        Length more = Length.ofNanometres(RESOLUTION + 1);
        assertThat(gauge.timesIn(exact.minus(more)).count()).isEqualTo(count - 1);
        assertThat(gauge.timesToCover(exact.plus(more))).isEqualTo(count + 1);
    }

    @Property(edgeCases = EdgeCasesMode.NONE)
    void a_value_lies_in_an_intersection_when_it_lies_in_both(
            @ForAll @IntRange(min = 0, max = 9) int a,
            @ForAll @IntRange(min = 0, max = 9) int b,
            @ForAll @IntRange(max = 4) int from,
            @ForAll @IntRange(max = 4) int to,
            @ForAll @IntRange(max = 4) int otherFrom,
            @ForAll @IntRange(max = 4) int otherTo,
            @ForAll @IntRange(max = 4) int value) {
        Range<Integer> one = Ranges.of(a, Math.min(from, to), Math.max(from, to));
        Range<Integer> other = Ranges.of(b, Math.min(otherFrom, otherTo), Math.max(otherFrom, otherTo));
        Range<Integer> both = one.intersection(other);
        assertThat(both.contains(value)).isEqualTo(one.contains(value) && other.contains(value));
        assertThat(both).isEqualTo(other.intersection(one));
    }

    @Property
    void an_offset_measured_another_way_and_back_is_within_a_nanometre_at_each_end(
            @ForAll("distances") Length length, @ForAll("roofPitches") Pitch pitch) {
        for (Direction from : Direction.values()) {
            for (Direction to : Direction.values()) {
                if (canBeMeasured(from, to)) {
                    Length there = new Offset(length, from).to(to, pitch);
                    Length back = new Offset(there, to).to(from, pitch);
                    // Half a nanometre each time, the first grown by the sum back: at most tan 85° or 1 / cos 85°.
                    double most = 0.5 + 0.5 / Math.cos(Math.toRadians(85));
                    assertThat(back.minus(length).abs().toNanometres()).isLessThanOrEqualTo((long) Math.ceil(most));
                }
            }
        }
    }

    private static boolean canBeMeasured(Direction from, Direction to) {
        boolean isThickness = from == Direction.SQUARE_TO_SLOPE || to == Direction.SQUARE_TO_SLOPE;
        return !isThickness || from == to || from == Direction.PLUMB || to == Direction.PLUMB;
    }
}
