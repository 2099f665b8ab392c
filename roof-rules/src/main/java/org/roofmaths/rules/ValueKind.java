package org.roofmaths.rules;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Area;
import org.roofmaths.units.AreaPerLength;
import org.roofmaths.units.ArealMass;
import org.roofmaths.units.FlowRate;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Pressure;
import org.roofmaths.units.Quantity;
import org.roofmaths.units.RainfallIntensity;
import org.roofmaths.units.Range;
import org.roofmaths.units.Ratio;

/**
 * What the value column of a subject holds: how it is read in which units, compared with a limit and subtracted.
 *
 * @param <V> the type of the value
 */
abstract class ValueKind<V> {
    static final ValueKind<Length> LENGTH =
            quantity("length", List.of("mm", "m", "in", "ft"), Length::parse, Limits::compare, Length::minus);
    static final ValueKind<Pitch> PITCH = of(
            "pitch", List.of("deg", "%"), Pitch::parse, Limits::compare, (a, b) -> a.toAngle().minus(b.toAngle()));
    static final ValueKind<Angle> ANGLE =
            quantity("angle", List.of("deg"), Angle::parse, Comparator.naturalOrder(), Angle::minus);
    static final ValueKind<Ratio> RATIO =
            quantity("ratio", List.of("1", "%", "mm/m"), ValueKind::ratio, Limits::compare, Ratio::minus);
    static final ValueKind<Area> AREA =
            quantity("area", List.of("m²", "mm²", "ft²"), Area::parse, Limits::compare, Area::minus);
    static final ValueKind<AreaPerLength> AREA_PER_LENGTH = quantity(
            "free area per length", List.of("mm²/m"), AreaPerLength::parse, Comparator.naturalOrder(), AreaPerLength::minus);
    static final ValueKind<ArealMass> AREAL_MASS =
            quantity("mass per area", List.of("kg/m²", "lb/ft²"), ArealMass::parse, Comparator.naturalOrder(), ArealMass::minus);
    static final ValueKind<FlowRate> FLOW =
            quantity("flow", List.of("l/s"), FlowRate::parse, Comparator.naturalOrder(), FlowRate::minus);
    static final ValueKind<RainfallIntensity> RAINFALL = quantity(
            "rainfall", List.of("mm/h", "l/(s·m²)"), RainfallIntensity::parse, Limits::compare, RainfallIntensity::minus);
    static final ValueKind<Pressure> PRESSURE =
            quantity("pressure", List.of("Pa", "kPa"), Pressure::parse, Comparator.naturalOrder(), Pressure::minus);
    static final ValueKind<Integer> COUNT = new ValueKind<>("whole number", List.of("1", "code")) {
        @Override
        Integer read(String value, String unit) {
            return Integer.valueOf(value);
        }

        @Override
        @Nullable Quantity margin(Limit limit, Integer asked, Integer got) {
            return byLimit(limit, Integer::compareTo, (a, b) -> Ratio.of(a - b), asked, got);
        }
    };
    static final ValueKind<BigDecimal> NUMBER = new ValueKind<>("number", List.of("1", "kg/m³", "1/K", "gpm")) {
        @Override
        BigDecimal read(String value, String unit) {
            return new BigDecimal(value);
        }

        @Override
        @Nullable Quantity margin(Limit limit, BigDecimal asked, BigDecimal got) {
            return byLimit(limit, BigDecimal::compareTo, (a, b) -> Ratio.of(a.subtract(b).doubleValue()), asked, got);
        }
    };
    static final ValueKind<String> WORD = new ValueKind<>("words", List.of("word")) {
        @Override
        String read(String value, String unit) {
            return value;
        }

        @Override
        @Nullable Quantity margin(Limit limit, String asked, String got) {
            return null;
        }
    };
    static final ValueKind<Range<Length>> LENGTH_RANGE = range(LENGTH);
    static final ValueKind<Range<Ratio>> RATIO_RANGE = range(RATIO);
    static final ValueKind<BattenSize> BATTEN_SIZE = new ValueKind<>("width x depth", List.of("mm", "in")) {
        @Override
        BattenSize read(String value, String unit) {
            String[] sides = value.split(" x ", -1);
            if (sides.length != 2) {
                throw new IllegalArgumentException(value);
            }
            return new BattenSize(LENGTH.read(sides[0], unit), LENGTH.read(sides[1], unit));
        }

        @Override
        @Nullable Quantity margin(Limit limit, BattenSize asked, BattenSize got) {
            Quantity inWidth = LENGTH.margin(limit, asked.width(), got.width());
            Quantity inDepth = LENGTH.margin(limit, asked.depth(), got.depth());
            if (!(inWidth instanceof Length width) || !(inDepth instanceof Length depth)) {
                return null;
            }
            return width.min(depth);
        }
    };
    static final ValueKind<JointLimit> JOINTS = new ValueKind<>("joints in battens, such as 3 in 12", List.of("battens")) {
        @Override
        JointLimit read(String value, String unit) {
            String[] counts = value.split(" in ", -1);
            if (counts.length != 2) {
                throw new IllegalArgumentException(value);
            }
            return new JointLimit(Integer.parseInt(counts[0]), Integer.parseInt(counts[1]));
        }

        @Override
        @Nullable Quantity margin(Limit limit, JointLimit asked, JointLimit got) {
            return null;
        }
    };

    private final String form;
    private final List<String> units;

    private ValueKind(String form, List<String> units) {
        this.form = form;
        this.units = units;
    }

    /** Returns what the column holds, in words. */
    String form() {
        return form;
    }

    /** Returns the units that the column allows. */
    List<String> units() {
        return units;
    }

    /**
     * Reads a value in its printed unit.
     *
     * @throws IllegalArgumentException if it is none
     */
    abstract V read(String value, String unit);

    /**
     * Returns by how much a limit is met, negative where it is missed; zero where the two count as equal.
     *
     * @return null where there is nothing to subtract: words, and figures that limit nothing
     */
    abstract @Nullable Quantity margin(Limit limit, V asked, V got);

    private static Ratio ratio(String text) {
        String number = text.strip();
        if (number.endsWith("mm/m")) {
            return Ratio.of(Ratio.parse(number.substring(0, number.length() - 4)).toDouble() / 1000);
        }
        int stroke = number.indexOf('/');
        return stroke < 0
                ? Ratio.parse(number)
                : Ratio.of(Ratio.parse(number.substring(0, stroke)).toDouble()
                        / Ratio.parse(number.substring(stroke + 1)).toDouble());
    }

    private static <Q extends Quantity> ValueKind<Q> quantity(
            String form, List<String> units, Function<String, Q> parser, Comparator<Q> order, BinaryOperator<Q> minus) {
        return of(form, units, parser, order, minus);
    }

    private static <Q extends Quantity> ValueKind<Q> of(
            String form,
            List<String> units,
            Function<String, Q> parser,
            Comparator<Q> order,
            BiFunction<Q, Q, ? extends Quantity> minus) {
        return new ValueKind<>(form, units) {
            @Override
            Q read(String value, String unit) {
                return parser.apply(unit.equals("1") ? value : value + " " + unit);
            }

            @Override
            @Nullable Quantity margin(Limit limit, Q asked, Q got) {
                return byLimit(limit, order, minus, asked, got);
            }
        };
    }

    private static <V> @Nullable Quantity byLimit(
            Limit limit, Comparator<V> order, BiFunction<V, V, ? extends Quantity> minus, V asked, V got) {
        // Two values that count as equal have no margin at all, not one of a last stored digit.
        V other = order.compare(asked, got) == 0 ? asked : got;
        return switch (limit) {
            case AT_LEAST -> minus.apply(other, asked);
            case AT_MOST -> minus.apply(asked, other);
            case WITHIN, AS_PRINTED -> null;
        };
    }

    private static <Q extends Quantity & Comparable<Q>> ValueKind<Range<Q>> range(ValueKind<Q> ends) {
        return new ValueKind<>("range, such as 38..50", ends.units()) {
            @Override
            Range<Q> read(String value, String unit) {
                int dots = value.indexOf("..");
                if (dots < 0) {
                    throw new IllegalArgumentException(value);
                }
                return Range.closed(
                        ends.read(value.substring(0, dots), unit), ends.read(value.substring(dots + 2), unit));
            }

            @Override
            @Nullable Quantity margin(Limit limit, Range<Q> asked, Range<Q> got) {
                Optional<Quantity> above = side(Limit.AT_LEAST, asked.lower(), got.lower());
                Optional<Quantity> below = side(Limit.AT_MOST, asked.upper(), got.upper());
                if (above.isEmpty() || below.isEmpty()) {
                    return above.or(() -> below).orElse(null);
                }
                return above.get().toSi() <= below.get().toSi() ? above.get() : below.get();
            }

            private Optional<Quantity> side(Limit limit, Optional<Q> asked, Optional<Q> got) {
                return asked.isEmpty() || got.isEmpty()
                        ? Optional.empty()
                        : Optional.ofNullable(ends.margin(limit, asked.get(), got.get()));
            }
        };
    }
}
