package org.roofmaths.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The kinds that are one double with a unit share a list of methods, found here by name, so that each kind is put
 * through every test.
 */
class PlainQuantitiesTest {
    /** The number in the unit that the kind stores and prints. */
    private static final double SOME = 12.5;

    private static final double MORE = 12.75;

    record Kind(
            Class<?> type, QuantityKind kind, String factory, String reader, String unit, String more, String less) {
        Object of(double number) {
            return call(method(type, factory, double.class), null, number);
        }

        Object parse(String text) {
            return call(method(type, "parse", String.class), null, text);
        }

        Object zero() {
            try {
                return type.getField("ZERO").get(null);
            } catch (ReflectiveOperationException e) {
                throw new LinkageError(e.getMessage(), e);
            }
        }

        Object with(Object on, String name, Object argument) {
            Class<?> parameter = argument instanceof Double ? double.class : argument.getClass();
            return call(method(type, name, parameter), on, argument);
        }

        Object ask(Object on, String name) {
            return call(method(type, name), on);
        }

        @SuppressWarnings("unchecked")
        int compare(Object a, Object b) {
            return ((Comparable<Object>) a).compareTo(b);
        }

        boolean isWithin(Object a, Object tolerance, Object b) {
            return (boolean)
                    call(method(type, "isWithin", Tolerance.class, type), a, Tolerance.of((Quantity) tolerance), b);
        }

        @Override
        public String toString() {
            return kind.words();
        }
    }

    private static Method method(Class<?> type, String name, Class<?>... parameters) {
        return Arrays.stream(type.getMethods())
                .filter(m -> m.getName().equals(name) && Arrays.equals(m.getParameterTypes(), parameters))
                .findFirst()
                .orElseThrow(() -> new AssertionError(type + " has no " + name + Arrays.toString(parameters)));
    }

    private static Object call(Method method, Object on, Object... arguments) {
        try {
            return method.invoke(on, arguments);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new AssertionError(e);
        } catch (IllegalAccessException e) {
            throw new AssertionError(e);
        }
    }

    static Stream<Kind> kinds() {
        return Stream.of(
                plain(Area.class, QuantityKind.AREA, "ofSquareMetres", "toSquareMetres", " m²"),
                plain(Angle.class, QuantityKind.ANGLE, "ofDegrees", "toDegrees", "°"),
                plain(Ratio.class, QuantityKind.RATIO, "of", "toDouble", ""),
                heavy(Mass.class, QuantityKind.MASS, "ofKilograms", "toKilograms", " kg"),
                heavy(
                        ArealMass.class,
                        QuantityKind.AREAL_MASS,
                        "ofKilogramsPerSquareMetre",
                        "toKilogramsPerSquareMetre",
                        " kg/m²"),
                plain(Pressure.class, QuantityKind.PRESSURE, "ofPascals", "toPascals", " Pa"),
                plain(FlowRate.class, QuantityKind.FLOW_RATE, "ofLitresPerSecond", "toLitresPerSecond", " l/s"),
                plain(
                        RainfallIntensity.class,
                        QuantityKind.RAINFALL_INTENSITY,
                        "ofMillimetresPerHour",
                        "toMillimetresPerHour",
                        " mm/h"),
                plain(
                        AreaPerLength.class,
                        QuantityKind.AREA_PER_LENGTH,
                        "ofSquareMillimetresPerMetre",
                        "toSquareMillimetresPerMetre",
                        " mm²/m"));
    }

    private static Kind plain(Class<?> type, QuantityKind kind, String factory, String reader, String unit) {
        return new Kind(type, kind, factory, reader, unit, "isGreaterThan", "isLessThan");
    }

    private static Kind heavy(Class<?> type, QuantityKind kind, String factory, String reader, String unit) {
        return new Kind(type, kind, factory, reader, unit, "isHeavierThan", "isLighterThan");
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void keeps_and_prints_the_number(Kind kind) {
        Object some = kind.of(SOME);
        assertThat(kind.ask(some, kind.reader())).isEqualTo(SOME);
        assertThat(some).hasToString("12.5" + kind.unit());
        assertThat(kind.of(-0.1)).hasToString("-0.1" + kind.unit());
        assertThat(kind.of(1e300)).hasToString("1E300" + kind.unit());
        assertThat(kind.zero()).hasToString("0" + kind.unit());
        assertThat(((Quantity) some).kind()).isEqualTo(kind.kind());
        assertThat(kind.unit().strip()).isEqualTo(kind.kind().unit());
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void reads_what_it_prints(Kind kind) {
        for (double number : new double[] {SOME, -0.1, 0, 1e300, -4.9e-324, 1 / 3.0, 1e15, 123456789012345.6, 1e-9}) {
            Object quantity = kind.of(number);
            assertThat(kind.parse(quantity.toString())).isEqualTo(quantity);
            assertThat(kind.parse("  " + quantity + " ")).isEqualTo(quantity);
        }
        assertThat(kind.parse("−12.5" + kind.unit())).isEqualTo(kind.of(-SOME));
        assertThat(kind.parse("12.5" + kind.unit().strip())).isEqualTo(kind.of(SOME));
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void zero_has_one_form(Kind kind) {
        assertThat(kind.of(-0.0))
                .isEqualTo(kind.zero())
                .hasSameHashCodeAs(kind.zero())
                .hasToString("0" + kind.unit());
        assertThat(kind.parse("-0" + kind.unit())).isEqualTo(kind.zero()).hasToString("0" + kind.unit());
        assertThat(kind.compare(kind.of(-0.0), kind.zero())).isZero();
        assertThat(kind.compare(kind.parse("-0" + kind.unit()), kind.zero())).isZero();
        assertThat(kind.compare(kind.ask(kind.zero(), "negated"), kind.zero())).isZero();
        assertThat(kind.compare(kind.with(kind.zero(), "times", -1.0), kind.zero()))
                .isZero();
        assertThat(kind.compare(kind.with(kind.zero(), "dividedBy", -1.0), kind.zero()))
                .isZero();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void does_sums(Kind kind) {
        Object some = kind.of(SOME);
        assertThat(kind.with(some, "plus", kind.of(0.25))).isEqualTo(kind.of(SOME + 0.25));
        assertThat(kind.with(some, "minus", kind.of(0.25))).isEqualTo(kind.of(SOME - 0.25));
        assertThat(kind.with(some, "times", 3.0)).isEqualTo(kind.of(SOME * 3));
        assertThat(kind.with(some, "dividedBy", 4.0)).isEqualTo(kind.of(SOME / 4));
        assertThat(kind.with(some, "dividedBy", kind.of(5))).isEqualTo(Ratio.of(SOME / 5));
        assertThat(kind.ask(some, "negated")).isEqualTo(kind.of(-SOME));
        assertThat(kind.ask(some, "abs")).isEqualTo(some);
        assertThat(kind.ask(kind.of(-SOME), "abs")).isEqualTo(some);
        assertThat(kind.with(some, "times", Ratio.of(0.5))).isEqualTo(kind.of(SOME / 2));
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void compares_exactly(Kind kind) {
        Object some = kind.of(SOME);
        Object more = kind.of(Math.nextUp(SOME));
        assertThat(kind.with(more, kind.more(), some)).isEqualTo(true);
        assertThat(kind.with(some, kind.more(), some)).isEqualTo(false);
        assertThat(kind.with(some, kind.more(), more)).isEqualTo(false);
        assertThat(kind.with(some, kind.less(), more)).isEqualTo(true);
        assertThat(kind.with(some, kind.less(), some)).isEqualTo(false);
        assertThat(kind.with(more, kind.less(), some)).isEqualTo(false);
        assertThat(kind.compare(some, more)).isNegative();
        assertThat(kind.compare(more, some)).isPositive();
        assertThat(kind.compare(some, kind.of(SOME))).isZero();
        assertThat(some)
                .isEqualTo(kind.of(SOME))
                .hasSameHashCodeAs(kind.of(SOME))
                .isNotEqualTo(more)
                .isNotEqualTo(SOME);
        assertThat(some.hashCode()).isNotEqualTo(more.hashCode());
        assertThat(kind.with(some, "min", more)).isSameAs(some);
        assertThat(kind.with(more, "min", some)).isSameAs(some);
        assertThat(kind.with(some, "max", more)).isSameAs(more);
        assertThat(kind.with(more, "max", some)).isSameAs(more);
        Object equal = kind.of(SOME);
        assertThat(kind.with(some, "min", equal)).isSameAs(some);
        assertThat(kind.with(some, "max", equal)).isSameAs(some);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void knows_its_sign(Kind kind) {
        for (int sign = -1; sign <= 1; sign++) {
            Object quantity = kind.of(sign);
            assertThat(kind.ask(quantity, "isNegative")).isEqualTo(sign < 0);
            assertThat(kind.ask(quantity, "isZero")).isEqualTo(sign == 0);
            assertThat(kind.ask(quantity, "isPositive")).isEqualTo(sign > 0);
        }
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void within_a_tolerance_includes_the_edge_as_printed(Kind kind) {
        // In doubles 0.8 - 0.7 is more than 0.1; as printed it is not.
        assertThat(kind.isWithin(kind.of(0.8), kind.of(0.1), kind.of(0.7))).isTrue();
        assertThat(kind.isWithin(kind.of(0.7), kind.of(0.1), kind.of(0.8))).isTrue();
        assertThat(kind.isWithin(kind.of(0.8), kind.of(0.0999), kind.of(0.7))).isFalse();
        assertThat(kind.isWithin(kind.of(MORE), kind.zero(), kind.of(MORE))).isTrue();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void refuses_what_is_not_finite(Kind kind) {
        for (double number : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThatThrownBy(() -> kind.of(number))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage(kind.kind().words() + " must be a finite number, but was " + number);
            assertThatThrownBy(() -> kind.with(kind.zero(), "times", number))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("factor must be a finite number, but was " + number);
            assertThatThrownBy(() -> kind.with(kind.zero(), "dividedBy", number))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("divisor must be a finite number, but was " + number);
        }
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void sums_that_leave_the_range_overflow(Kind kind) {
        Object most = kind.of(Double.MAX_VALUE);
        Object least = kind.of(-Double.MAX_VALUE);
        String message = kind.kind().words() + " is beyond the range of a double";
        assertThatThrownBy(() -> kind.with(most, "plus", most))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage(message);
        assertThatThrownBy(() -> kind.with(least, "minus", most))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage(message);
        assertThatThrownBy(() -> kind.with(most, "times", 2.0))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage(message);
        assertThatThrownBy(() -> kind.with(most, "dividedBy", 0.5))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage(message);
        assertThatThrownBy(() -> kind.with(most, "dividedBy", kind.of(0.5)))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("ratio is beyond the range of a double");
        assertThatThrownBy(() -> kind.with(most, "dividedBy", 0.0))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("divisor must not be zero");
        assertThatThrownBy(() -> kind.with(most, "dividedBy", kind.zero()))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("divisor must not be zero");
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void refuses_text_that_is_not_of_the_kind(Kind kind) {
        assertThatThrownBy(() -> kind.parse("x"))
                .isInstanceOf(QuantityParseException.class)
                .hasMessage("\"x\": number must start with a digit, but was \"x\" (at index 0)");
        assertThatThrownBy(() -> kind.parse("12.5" + kind.unit() + " or so"))
                .isInstanceOf(QuantityParseException.class)
                .hasMessageContaining(
                        "but was \"or\" (at index " + (5 + kind.unit().length()) + ")");
        assertThatThrownBy(() -> kind.parse("1E400" + kind.unit()))
                .isInstanceOf(QuantityParseException.class)
                .hasMessage("\"1E400" + kind.unit()
                        + "\": number must be within the range of a double, but was beyond it (at index 0)");
        assertThatThrownBy(() -> kind.parse(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("text");
    }
}
