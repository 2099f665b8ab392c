package org.roofmaths.units.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.math.BigDecimal;
import java.util.function.Function;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.roofmaths.units.Direction;
import org.roofmaths.units.Length;
import org.roofmaths.units.Offset;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Quantity;
import org.roofmaths.units.QuantityKind;
import org.roofmaths.units.QuantityParseException;
import org.roofmaths.units.Range;
import org.roofmaths.units.Ratio;

/** What is printed is read back; what cannot be read fails in the one documented way. */
class TextProperties {
    @Provide
    Arbitrary<Length> lengths() {
        return Lengths.any();
    }

    @Provide
    Arbitrary<Pitch> pitches() {
        return Lengths.pitches();
    }

    /** Any finite double: its bits are drawn, so that every exponent is as likely as another. */
    @Provide
    Arbitrary<Double> doubles() {
        return Arbitraries.longs().map(Double::longBitsToDouble).filter(Double::isFinite);
    }

    @Provide
    Arbitrary<QuantityKind> plainKinds() {
        return Arbitraries.of(QuantityKind.class)
                .filter(kind -> kind != QuantityKind.LENGTH && kind != QuantityKind.PITCH);
    }

    /** Pieces that texts of quantities are made of, in any order, and any other characters. */
    @Provide
    Arbitrary<String> texts() {
        Arbitrary<String> pieces = Arbitraries.of(
                "5",
                "12",
                "0",
                "-",
                "−",
                ".",
                "/",
                " ",
                "E",
                "e9",
                "E-",
                "999",
                "1E308",
                "mm",
                "m",
                "in",
                "ft",
                "yd",
                "'",
                "\"",
                "′",
                "″",
                "’",
                "”",
                "°",
                "deg",
                "rad",
                "%",
                " in ",
                "m²",
                "mm²/m",
                "kg",
                "level",
                " on the slope",
                "[",
                "..",
                ")",
                "½",
                "\u00a0",
                "\ud83d\ude00",
                "9".repeat(10_000),
                "1/64",
                "NaN",
                "Infinity",
                "0x1p3");
        return Arbitraries.oneOf(
                pieces.list().ofMaxSize(8).map(parts -> String.join("", parts)),
                Arbitraries.strings().all().ofMaxLength(40));
    }

    @Property(tries = 2000)
    void every_length_reads_back_from_its_text(@ForAll("lengths") Length length) {
        assertThat(Length.parse(length.toString())).isEqualTo(length);
    }

    @Property(tries = 2000)
    void every_pitch_reads_back_from_its_text(@ForAll("pitches") Pitch pitch) {
        assertThat(Pitch.parse(pitch.toString())).isEqualTo(pitch);
    }

    @Property(tries = 3000)
    void every_quantity_of_one_double_reads_back_from_its_text(
            @ForAll("plainKinds") QuantityKind kind, @ForAll("doubles") double number) {
        String text = new BigDecimal(number) + " " + kind.unit();
        // At most 100 characters are read, so the number is first brought to its shortest form.
        Quantity quantity = kind.parse(Ratio.of(number) + " " + kind.unit());
        assertThat(kind.parse(quantity.toString())).isEqualTo(quantity);
        if (text.length() < 100) {
            assertThat(kind.parse(text.replace("E+", "E"))).isEqualTo(quantity);
        }
    }

    @Property(tries = 2000)
    void a_ratio_prints_no_more_digits_than_it_needs(@ForAll("doubles") double number) {
        BigDecimal printed = new BigDecimal(Ratio.of(number).toString()).stripTrailingZeros();
        assertThat(printed.doubleValue()).isEqualTo(number);
        if (printed.precision() > 1) {
            BigDecimal unit = BigDecimal.ONE.scaleByPowerOfTen(1 - printed.scale());
            BigDecimal shorter = printed.divideToIntegralValue(unit).multiply(unit);
            assertThat(shorter.doubleValue()).isNotEqualTo(number);
            assertThat(shorter.add(unit.multiply(BigDecimal.valueOf(printed.signum())))
                            .doubleValue())
                    .isNotEqualTo(number);
        }
    }

    @Property
    void every_offset_reads_back_from_its_text(@ForAll("lengths") Length length, @ForAll Direction direction) {
        Offset offset = new Offset(length, direction);
        assertThat(Offset.parse(offset.toString())).isEqualTo(offset);
    }

    @Property
    void every_range_reads_back_from_its_text(
            @ForAll("lengths") Length a, @ForAll("lengths") Length b, @ForAll @IntRange(max = 9) int form) {
        Range<Length> range = Ranges.of(form, a.min(b), a.max(b));
        assertThat(Range.parse(range.toString(), Length::parse)).isEqualTo(range);
    }

    @Property(tries = 5000)
    void no_text_fails_in_any_but_the_documented_way(@ForAll("texts") String text, @ForAll QuantityKind kind) {
        assertFailsAsDocumented(text, kind::parse);
        assertFailsAsDocumented(text, Offset::parse);
        assertFailsAsDocumented(text, whole -> Range.parse(whole, Length::parse));
    }

    private static void assertFailsAsDocumented(String text, Function<String, Object> parser) {
        assertThatCode(() -> {
                    try {
                        parser.apply(text);
                    } catch (QuantityParseException e) {
                        assertThat(e.text()).isEqualTo(text);
                        assertThat(e.index()).isBetween(0, text.length());
                    }
                })
                .doesNotThrowAnyException();
    }
}
