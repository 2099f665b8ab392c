package org.roofmaths.units.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.roofmaths.units.Angle;
import org.roofmaths.units.AngleFormat;
import org.roofmaths.units.Length;
import org.roofmaths.units.LengthFormat;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.PitchFormat;
import org.roofmaths.units.Rounding;

/** Laws of rounding, of one value, of a list, and in a text. */
class RoundingProperties {
    private static final Length RESOLUTION = Length.STORAGE_RESOLUTION;

    @Provide
    Arbitrary<Length> lengths() {
        return Lengths.between(Length.ofMetres(-20), Length.ofMetres(20));
    }

    @Provide
    Arbitrary<List<Length>> gauges() {
        return Lengths.between(Length.ofMillimetres(-50), Length.ofMillimetres(500))
                .list()
                .ofMaxSize(60);
    }

    @Provide
    Arbitrary<Length> steps() {
        return Arbitraries.of(
                Length.ofNanometres(101),
                Length.ofMillimetres(0.5),
                Length.ofMillimetres(1),
                Length.ofMillimetres(5),
                Length.ofInches(0, 1, 16),
                Length.ofNanometres(7_654_321));
    }

    @Provide
    Arbitrary<Locale> locales() {
        return Arbitraries.of(Lengths.LOCALES);
    }

    @Provide
    Arbitrary<LengthFormat> lengthFormats() {
        Arbitrary<LengthFormat> metric = Arbitraries.oneOf(
                Arbitraries.integers().between(0, 6).map(LengthFormat::millimetres),
                Arbitraries.integers().between(0, 7).map(LengthFormat::centimetres),
                Arbitraries.integers().between(0, 9).map(LengthFormat::metres));
        Arbitrary<LengthFormat> inches = Arbitraries.integers()
                .between(0, 6)
                .map(power -> 1 << power)
                .flatMap(denominator -> Arbitraries.of(
                        LengthFormat.inches(denominator),
                        LengthFormat.feetAndInches(denominator),
                        LengthFormat.feetAndInchMarks(denominator)));
        BiFunction<LengthFormat, Boolean, LengthFormat> grouped = (f, is) -> is ? f.withThousandsSeparator() : f;
        Arbitrary<LengthFormat> either = Combinators.combine(
                        Arbitraries.oneOf(metric, inches), Arbitraries.of(true, false))
                .as(grouped::apply);
        Arbitrary<LengthFormat> inALocale =
                Combinators.combine(either, locales()).as(LengthFormat::withLocale);
        return Arbitraries.oneOf(either, inALocale);
    }

    @Property
    void a_rounded_length_is_a_multiple_and_near(@ForAll("lengths") Length length, @ForAll("steps") Length step) {
        Length nearest = Rounding.toNearest(step).apply(length);
        Length even = Rounding.toNearestTiesToEven(step).apply(length);
        Length up = Rounding.upToMultipleOf(step).apply(length);
        Length down = Rounding.downToMultipleOf(step).apply(length);
        for (Length rounded : List.of(nearest, even, up, down)) {
            assertThat(rounded.toNanometres() % step.toNanometres()).isZero();
        }
        assertThat(nearest.minus(length).abs().times(2)).isLessThanOrEqualTo(step);
        assertThat(even.minus(length).abs().times(2)).isLessThanOrEqualTo(step);
        assertThat(up.meetsLeast(length)).isTrue();
        assertThat(up.minus(step).meetsLeast(length)).isFalse();
        assertThat(down.meetsGreatest(length)).isTrue();
        assertThat(down.plus(step).meetsGreatest(length)).isFalse();
    }

    @Property
    void rounding_twice_changes_nothing_more(@ForAll("lengths") Length length, @ForAll("steps") Length step) {
        for (Rounding<Length> rounding : everyWay(step)) {
            Length rounded = rounding.apply(length);
            assertThat(rounding.apply(rounded)).isEqualTo(rounded);
            assertThat(length.plus(rounding.residual(length))).isEqualTo(rounded);
        }
    }

    @Property
    void nearest_treats_both_signs_alike(@ForAll("lengths") Length length, @ForAll("steps") Length step) {
        assertThat(Rounding.toNearest(step).apply(length.negated()))
                .isEqualTo(Rounding.toNearest(step).apply(length).negated());
        assertThat(Rounding.upToMultipleOf(step).apply(length.negated()))
                .isEqualTo(Rounding.downToMultipleOf(step).apply(length).negated());
    }

    @Property
    void running_rounding_keeps_every_mark_and_every_item_within_its_bound(
            @ForAll("gauges") List<Length> gauges, @ForAll("steps") Length step) {
        for (Rounding<Length> rounding : everyWay(step)) {
            boolean isNearest = rounding.toString().startsWith("to the nearest");
            Length mostOfAMark = isNearest ? step.dividedBy(2) : step;
            List<Length> rounded = rounding.running(gauges);
            assertThat(rounded).hasSameSizeAs(gauges);
            Length mark = Length.ZERO;
            Length roundedMark = Length.ZERO;
            for (int i = 0; i < gauges.size(); i++) {
                mark = mark.plus(gauges.get(i));
                roundedMark = roundedMark.plus(rounded.get(i));
                assertThat(roundedMark).isEqualTo(rounding.apply(mark));
                assertThat(roundedMark.minus(mark).abs()).isLessThanOrEqualTo(mostOfAMark.plus(RESOLUTION));
                assertThat(rounded.get(i).minus(gauges.get(i)).abs()).isLessThanOrEqualTo(step);
                if (isNearest) {
                    assertThat(roundedMark.minus(mark).abs().times(2)).isLessThanOrEqualTo(step);
                }
            }
        }
    }

    private static List<Rounding<Length>> everyWay(Length step) {
        return List.of(
                Rounding.toNearest(step),
                Rounding.toNearestTiesToEven(step),
                Rounding.upToMultipleOf(step),
                Rounding.downToMultipleOf(step));
    }

    @Property(tries = 3000)
    void a_length_format_reads_back_what_it_writes(
            @ForAll("lengths") Length length, @ForAll("lengthFormats") LengthFormat format) {
        String text = format.format(length);
        Length read = format.parse(text);
        assertThat(format.format(read)).isEqualTo(text);
        assertThat(Rounding.toNearest(smallest(format)).apply(length)).isEqualTo(read);
    }

    /** The smallest part that a format writes, as its text names it: "metres by 0.001 m". */
    private static Length smallest(LengthFormat format) {
        Matcher part = Pattern.compile(" by ([^,]+)").matcher(format.toString());
        assertThat(part.find()).isTrue();
        return Length.parse(part.group(1));
    }

    @Property(tries = 3000)
    void feet_and_inches_never_print_twelve_inches_or_a_whole_fraction(
            @ForAll("lengths") Length length, @ForAll @IntRange(max = 6) int power) {
        String text = LengthFormat.feetAndInches(1 << power).format(length);
        assertThat(text).doesNotContain("12 in").doesNotContain("12 1/");
        Matcher fraction = Pattern.compile("(\\d+)/(\\d+)").matcher(text);
        if (fraction.find()) {
            assertThat(Integer.parseInt(fraction.group(1))).isOdd().isLessThan(Integer.parseInt(fraction.group(2)));
            assertThat(Integer.parseInt(fraction.group(2))).isLessThanOrEqualTo(1 << power);
        }
    }

    @Property(tries = 2000)
    void an_angle_format_reads_back_what_it_writes(
            @ForAll @DoubleRange(min = -400, max = 400) double degrees,
            @ForAll @IntRange(max = 6) int decimals,
            @ForAll("locales") Locale locale) {
        Angle angle = Angle.ofDegrees(degrees);
        double last = Math.pow(10, -decimals);
        for (AngleFormat format : List.of(
                AngleFormat.degrees(decimals), AngleFormat.degrees(decimals).withLocale(locale))) {
            assertReadsBack(format, angle, last / 2);
        }
        assertReadsBack(AngleFormat.degreesMinutes(decimals).withLocale(locale), angle, last / 2 / 60);
        assertReadsBack(AngleFormat.degreesMinutesSeconds(decimals).withLocale(locale), angle, last / 2 / 3600);
    }

    private static void assertReadsBack(AngleFormat format, Angle angle, double halfOfTheLast) {
        Angle read = format.parse(format.format(angle));
        assertThat(format.format(read)).isEqualTo(format.format(angle));
        // Storage in a double near 400 adds up to 2^-44 on each side.
        assertThat(Math.abs(read.toDegrees() - angle.toDegrees())).isLessThanOrEqualTo(halfOfTheLast + 0x1p-43);
    }

    @Property(tries = 2000)
    void a_pitch_format_reads_back_what_it_writes(
            @ForAll @DoubleRange(min = 3, max = 87) double degrees,
            @ForAll @IntRange(max = 6) int decimals,
            @ForAll("locales") Locale locale) {
        Pitch pitch = Pitch.ofDegrees(degrees);
        for (PitchFormat format : List.of(
                PitchFormat.degrees(decimals).withLocale(locale),
                PitchFormat.riseIn12(decimals + 1).withLocale(locale),
                PitchFormat.percent(decimals).withLocale(locale),
                PitchFormat.oneIn(decimals + 2))) {
            assertThat(format.format(format.parse(format.format(pitch)))).isEqualTo(format.format(pitch));
        }
    }
}
