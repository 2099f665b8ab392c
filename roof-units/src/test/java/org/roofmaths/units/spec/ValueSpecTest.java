package org.roofmaths.units.spec;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.roofmaths.units.Angle;
import org.roofmaths.units.AngleFormat;
import org.roofmaths.units.Length;
import org.roofmaths.units.LengthFormat;
import org.roofmaths.units.Offset;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.PitchFormat;
import org.roofmaths.units.Quantity;
import org.roofmaths.units.QuantityKind;
import org.roofmaths.units.Range;
import org.roofmaths.units.Rounding;
import org.roofmaths.units.Tolerance;

/** What every value type promises: final, immutable, serializable, ordered as it is equal. */
class ValueSpecTest {
    static Stream<Object> values() {
        Stream<Object> quantities =
                Stream.of(QuantityKind.values()).map(kind -> kind.parse(("12.5 " + kind.unit()).strip()));
        return Stream.concat(
                quantities,
                Stream.of(
                        Offset.level(Length.ofMillimetres(50)),
                        Range.closedOpen(Pitch.ofDegrees(30), Pitch.ofDegrees(35)),
                        Range.<Length>all(),
                        Rounding.toFractionOfInch(16),
                        Rounding.toNearest(Angle.ofDegrees(0.5)),
                        Tolerance.ofMillimetres(0.5),
                        Length.ofMillimetres(325).timesIn(Length.ofMillimetres(3912)),
                        LengthFormat.metres(3)
                                .withLocale(Locale.GERMANY)
                                .withRounding(Rounding.toNearest(Length.ofMillimetres(5))),
                        AngleFormat.degrees(1),
                        PitchFormat.riseIn12(2)));
    }

    @ParameterizedTest
    @MethodSource("values")
    void is_final_and_has_only_final_fields(Object value) {
        assertThat(Modifier.isFinal(value.getClass().getModifiers())).isTrue();
        for (Field field : value.getClass().getDeclaredFields()) {
            // Coverage tools add counters of their own, named with a dollar.
            if (!field.isSynthetic() && !field.getName().startsWith("$")) {
                assertThat(Modifier.isFinal(field.getModifiers()))
                        .as(field.getName())
                        .isTrue();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("values")
    void travels_as_bytes_to_an_equal_value(Object value) throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(value);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            Object copy = in.readObject();
            assertThat(copy).isEqualTo(value).hasSameHashCodeAs(value).hasToString(value.toString());
        }
    }

    @Test
    void every_quantity_is_in_the_closed_family_and_knows_its_kind() {
        assertThat(Quantity.class.isSealed()).isTrue();
        assertThat(Quantity.class.getPermittedSubclasses()).hasSameSizeAs(QuantityKind.values());
        assertThat(values().filter(Quantity.class::isInstance).map(q -> ((Quantity) q).kind()))
                .containsExactly(QuantityKind.values());
    }

    @Test
    void order_agrees_with_equality() {
        List<Length> lengths =
                List.of(Length.parse("1 in"), Length.parse("25.4 mm"), Length.parse("2.54 cm"), Length.parse("1 mm"));
        assertThat(new TreeSet<>(lengths)).containsExactly(Length.parse("1 mm"), Length.parse("1 in"));
    }

    @Test
    void the_number_in_the_international_system() {
        assertThat(values().filter(Quantity.class::isInstance).map(q -> ((Quantity) q).toSi()))
                .containsExactly(
                        12.5 / 1000,
                        12.5,
                        Math.toRadians(12.5),
                        Math.toRadians(12.5),
                        12.5,
                        12.5,
                        12.5,
                        12.5,
                        12.5 / 1000,
                        12.5 / 3_600_000,
                        12.5 / 1_000_000);
    }
}
