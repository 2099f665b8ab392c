package org.roofmaths.rules;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
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
    static final ValueKind<Length> LENGTH = new OfQuantity<>("length", Length.class, "mm", "m", "in", "ft");
    static final ValueKind<Pitch> PITCH = new OfQuantity<>("pitch", Pitch.class, "deg", "%");
    static final ValueKind<Angle> ANGLE = new OfQuantity<>("angle", Angle.class, "deg");
    static final ValueKind<Ratio> RATIO = new OfQuantity<>("ratio", Ratio.class, "1", "%", "mm/m");
    static final ValueKind<Area> AREA = new OfQuantity<>("area", Area.class, "m²", "mm²", "ft²");
    static final ValueKind<AreaPerLength> AREA_PER_LENGTH =
            new OfQuantity<>("free area per length", AreaPerLength.class, "mm²/m");
    static final ValueKind<ArealMass> AREAL_MASS =
            new OfQuantity<>("mass per area", ArealMass.class, "kg/m²", "lb/ft²");
    static final ValueKind<FlowRate> FLOW = new OfQuantity<>("flow", FlowRate.class, "l/s");
    static final ValueKind<RainfallIntensity> RAINFALL =
            new OfQuantity<>("rainfall", RainfallIntensity.class, "mm/h", "l/(s·m²)");
    static final ValueKind<Pressure> PRESSURE = new OfQuantity<>("pressure", Pressure.class, "Pa", "kPa");
    static final ValueKind<Integer> COUNT = new ValueKind<>("whole number", List.of("1", "code")) {
        @Override
        Integer read(String value, String unit) {
            return Integer.valueOf(value);
        }

        @Override
        @Nullable
        Quantity margin(Limit limit, Integer asked, Integer got) {
            return byLimit(limit, Ratio.of(asked), Ratio.of(got));
        }
    };
    static final ValueKind<BigDecimal> NUMBER =
            new ValueKind<>("number", List.of("1", "kg/m³", "1/K", "gpm", "kN", "kN/m³")) {
                @Override
                BigDecimal read(String value, String unit) {
                    return new BigDecimal(value);
                }

                @Override
                @Nullable
                Quantity margin(Limit limit, BigDecimal asked, BigDecimal got) {
                    return byLimit(limit, Ratio.of(asked.doubleValue()), Ratio.of(got.doubleValue()));
                }
            };
    static final ValueKind<String> WORD = new ValueKind<>("words", List.of("word")) {
        @Override
        String read(String value, String unit) {
            return value;
        }

        @Override
        @Nullable
        Quantity margin(Limit limit, String asked, String got) {
            return null;
        }
    };
    static final ValueKind<Range<Length>> LENGTH_RANGE = range(LENGTH);
    static final ValueKind<Range<Ratio>> RATIO_RANGE = range(RATIO);
    static final ValueKind<Range<ArealMass>> AREAL_MASS_RANGE = range(AREAL_MASS);
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
        @Nullable
        Quantity margin(Limit limit, BattenSize asked, BattenSize got) {
            Quantity inWidth = LENGTH.margin(limit, asked.width(), got.width());
            Quantity inDepth = LENGTH.margin(limit, asked.depth(), got.depth());
            if (!(inWidth instanceof Length width) || !(inDepth instanceof Length depth)) {
                return null;
            }
            return width.min(depth);
        }
    };
    static final ValueKind<JointLimit> JOINTS =
            new ValueKind<>("joints in battens, such as 3 in 12", List.of("battens")) {
                @Override
                JointLimit read(String value, String unit) {
                    String[] counts = value.split(" in ", -1);
                    if (counts.length != 2) {
                        throw new IllegalArgumentException(value);
                    }
                    return new JointLimit(Integer.parseInt(counts[0]), Integer.parseInt(counts[1]));
                }

                @Override
                @Nullable
                Quantity margin(Limit limit, JointLimit asked, JointLimit got) {
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

    /** The kinds that are quantities. */
    private static final class OfQuantity<Q extends Quantity> extends ValueKind<Q> {
        private final Class<Q> type;

        OfQuantity(String form, Class<Q> type, String... units) {
            super(form, List.of(units));
            this.type = type;
        }

        @Override
        Q read(String value, String unit) {
            return type.cast(quantity(value, unit));
        }

        private Quantity quantity(String value, String unit) {
            String text = value + " " + unit;
            if (type == Length.class) {
                return Length.parse(text);
            }
            if (type == Ratio.class) {
                return ratio(value, unit);
            }
            if (type == Pitch.class) {
                return Pitch.parse(text);
            }
            if (type == Angle.class) {
                return Angle.parse(text);
            }
            if (type == Area.class) {
                return Area.parse(text);
            }
            if (type == AreaPerLength.class) {
                return AreaPerLength.parse(text);
            }
            if (type == ArealMass.class) {
                return ArealMass.parse(text);
            }
            if (type == FlowRate.class) {
                return FlowRate.parse(text);
            }
            return type == Pressure.class ? Pressure.parse(text) : RainfallIntensity.parse(text);
        }

        private static Ratio ratio(String value, String unit) {
            if (unit.equals("mm/m")) {
                return Ratio.of(Ratio.parse(value).toDouble() / 1000);
            }
            int stroke = value.indexOf('/');
            if (stroke < 0) {
                return Ratio.parse(unit.equals("1") ? value : value + " " + unit);
            }
            return Ratio.of(Ratio.parse(value.substring(0, stroke)).toDouble()
                    / Ratio.parse(value.substring(stroke + 1)).toDouble());
        }

        @Override
        @Nullable
        Quantity margin(Limit limit, Q asked, Q got) {
            return byLimit(limit, asked, got);
        }
    }

    private static @Nullable Quantity byLimit(Limit limit, Quantity asked, Quantity got) {
        // Two values that count as equal have no margin at all, not one of a last stored digit.
        Quantity other = Limits.compare(asked, got) == 0 ? asked : got;
        return switch (limit) {
            case AT_LEAST -> minus(other, asked);
            case AT_MOST -> minus(asked, other);
            case WITHIN, AS_PRINTED -> null;
        };
    }

    /** Subtracts two quantities of one kind; the difference of two pitches is an angle. */
    private static Quantity minus(Quantity a, Quantity b) {
        if (a instanceof Length length) {
            return length.minus((Length) b);
        }
        if (a instanceof Pitch pitch) {
            return pitch.toAngle().minus(((Pitch) b).toAngle());
        }
        if (a instanceof Ratio ratio) {
            return ratio.minus((Ratio) b);
        }
        if (a instanceof Angle angle) {
            return angle.minus((Angle) b);
        }
        if (a instanceof Area area) {
            return area.minus((Area) b);
        }
        if (a instanceof AreaPerLength area) {
            return area.minus((AreaPerLength) b);
        }
        if (a instanceof ArealMass mass) {
            return mass.minus((ArealMass) b);
        }
        if (a instanceof FlowRate flow) {
            return flow.minus((FlowRate) b);
        }
        return a instanceof Pressure pressure
                ? pressure.minus((Pressure) b)
                : ((RainfallIntensity) a).minus((RainfallIntensity) b);
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
            @Nullable
            Quantity margin(Limit limit, Range<Q> asked, Range<Q> got) {
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
