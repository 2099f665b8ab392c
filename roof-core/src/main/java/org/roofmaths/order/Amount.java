package org.roofmaths.order;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;

/**
 * How much of a thing: so many pieces, or a length, an area or a mass of it.
 *
 * <p>Held as a decimal number of pieces, metres, square metres or kilograms, so that 187 pieces and 5 per cent are 196.35 pieces and
 * not a hair more. Lengths are exact; areas and masses keep the shortest decimal that gives their number back. A net amount of pieces is a whole
 * number; an amount with an allowance need not be.
 *
 * <p>Two amounts are equal if kind and number are. Immutable and thread-safe. It is a {@link Number} so that a formula can be evaluated with it.
 *
 * <pre>{@code
 * Amount.pieces(187)              // 187
 * Amount.of(metres(57.695))       // 57.695 m
 * Amount.of(kg(60.4))             // 60.4 kg
 * }</pre>
 *
 * @since 0.1
 */
public final class Amount extends Number implements Comparable<Amount> {
    private static final long serialVersionUID = 1L;

    /** A count taken from somewhere else, such as a layout. */
    public static final Term<Number> COUNT_TAKEN = Term.of("count taken over", "c", Number.class);

    /** A length taken from somewhere else. */
    public static final Term<Length> LENGTH_TAKEN = Term.of("length taken over", "c", Length.class);

    /** An area taken from somewhere else. */
    public static final Term<Area> AREA_TAKEN = Term.of("area taken over", "c", Area.class);

    /** A mass taken from somewhere else. */
    public static final Term<Mass> MASS_TAKEN = Term.of("mass taken over", "c", Mass.class);

    /** A count, length, area or mass as an amount to order. */
    public static final Term<Amount> TAKEN = Term.of("amount taken over", "q", Amount.class);

    /** One of the amounts that are added up for an item, such as that of one face. */
    public static final Term<Amount> PART = Term.of("part of the amount", "q", Amount.class);

    /** The sum of the amounts of one item, before anything is rounded. */
    public static final Term<Amount> SUM = Term.of("sum of the amounts", "Q", Amount.class);

    /** Over a whole count by no more than this is that count: 100 nm, and the same number of pieces, square metres or kilograms. */
    private static final BigDecimal RESOLUTION = new BigDecimal("0.0000001");

    private static final int NANO = 9;

    private final AmountKind kind;
    private final BigDecimal number;

    private Amount(AmountKind kind, BigDecimal number) {
        this.kind = kind;
        this.number = number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
    }

    /**
     * Returns a number of pieces.
     *
     * @param count how many
     * @return the amount
     */
    public static Amount pieces(long count) {
        return new Amount(AmountKind.PIECES, BigDecimal.valueOf(count));
    }

    /**
     * Returns an amount of something sold by length.
     *
     * @param length how much
     * @return the amount
     */
    public static Amount of(Length length) {
        return new Amount(AmountKind.LENGTH, BigDecimal.valueOf(length.toNanometres(), NANO));
    }

    /**
     * Returns an amount of something sold by area.
     *
     * @param area how much
     * @return the amount
     */
    public static Amount of(Area area) {
        return new Amount(AmountKind.AREA, shortest(area.toSquareMetres()));
    }

    /**
     * Returns an amount of something sold by mass.
     *
     * @param mass how much
     * @return the amount
     */
    public static Amount of(Mass mass) {
        return new Amount(AmountKind.MASS, shortest(mass.toKilograms()));
    }

    /**
     * Takes over a count that has a working, such as the tiles of a layout, and keeps its trail.
     *
     * @param count a figure whose value is a whole number
     * @return the amount
     * @throws IllegalArgumentException if the number is not whole
     */
    public static Worked<Amount> ofCount(Figure<? extends Number> count) {
        Objects.requireNonNull(count, "count");
        return Worked.by(TAKEN, r -> {
            double value = r.use(COUNT_TAKEN, count).doubleValue();
            if (value != StrictMath.rint(value) || StrictMath.abs(value) > Long.MAX_VALUE) {
                throw new IllegalArgumentException("count must be a whole number, but was " + count.value());
            }
            return r.record(TAKEN, pieces((long) value), Formula.of(TAKEN, COUNT_TAKEN));
        });
    }

    /**
     * Takes over a length that has a working and keeps its trail.
     *
     * @param length the figure
     * @return the amount
     */
    public static Worked<Amount> ofLength(Figure<Length> length) {
        Objects.requireNonNull(length, "length");
        return Worked.by(TAKEN, r -> r.record(TAKEN, of(r.use(LENGTH_TAKEN, length)), Formula.of(TAKEN, LENGTH_TAKEN)));
    }

    /**
     * Takes over an area that has a working and keeps its trail.
     *
     * @param area the figure
     * @return the amount
     */
    public static Worked<Amount> ofArea(Figure<Area> area) {
        Objects.requireNonNull(area, "area");
        return Worked.by(TAKEN, r -> r.record(TAKEN, of(r.use(AREA_TAKEN, area)), Formula.of(TAKEN, AREA_TAKEN)));
    }

    /**
     * Takes over a mass that has a working and keeps its trail.
     *
     * @param mass the figure
     * @return the amount
     */
    public static Worked<Amount> ofMass(Figure<Mass> mass) {
        Objects.requireNonNull(mass, "mass");
        return Worked.by(TAKEN, r -> r.record(TAKEN, of(r.use(MASS_TAKEN, mass)), Formula.of(TAKEN, MASS_TAKEN)));
    }

    /**
     * Adds up the amounts of one item from several places, such as the tiles of two faces, so that they are rounded up together and once.
     *
     * @param parts the amounts by place, all of one kind, at least one
     * @return the sum; its working shows each part
     * @throws IllegalArgumentException if there is no part, or if their kinds differ
     */
    public static Worked<Amount> sum(Map<String, ? extends Figure<Amount>> parts) {
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("a sum of amounts must have at least one part");
        }
        LinkedHashMap<String, Figure<Amount>> kept = new LinkedHashMap<>(parts);
        return Worked.by(SUM, r -> sum(kept, r));
    }

    private static Amount sum(Map<String, Figure<Amount>> parts, Recorder r) {
        Amount total = null;
        Expression terms = null;
        for (Map.Entry<String, Figure<Amount>> part : parts.entrySet()) {
            Term<Amount> here = PART.at(part.getKey());
            Amount amount = r.use(here, part.getValue());
            total = total == null ? amount : total.plus(amount);
            terms = terms == null ? here : terms.plus(here);
        }
        return r.record(SUM, Objects.requireNonNull(total), Formula.of(SUM, Objects.requireNonNull(terms)));
    }

    static Amount none(AmountKind kind) {
        return new Amount(kind, BigDecimal.ZERO);
    }

    static Amount one(AmountKind kind) {
        return new Amount(kind, BigDecimal.ONE);
    }

    /** Returns the shortest decimal that reads back to this double, the same on every release of Java. */
    static BigDecimal shortest(double value) {
        BigDecimal exact = new BigDecimal(value);
        for (int digits = 15; digits < 17; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (rounded.doubleValue() == value) {
                return rounded;
            }
        }
        return exact.round(new MathContext(17, RoundingMode.HALF_EVEN));
    }

    /** Returns what this amount is counted in. */
    public AmountKind kind() {
        return kind;
    }

    /** Returns the number of pieces, metres, square metres or kilograms, exactly as held. */
    public BigDecimal toBigDecimal() {
        return number;
    }

    /**
     * Returns this amount as a length.
     *
     * @return the length, to the nanometre
     * @throws IllegalStateException if it is not a length
     */
    public Length toLength() {
        check(AmountKind.LENGTH);
        return Length.ofNanometres(
                number.movePointRight(NANO).setScale(0, RoundingMode.HALF_EVEN).longValueExact());
    }

    /**
     * Returns this amount as an area.
     *
     * @return the area
     * @throws IllegalStateException if it is not an area
     */
    public Area toArea() {
        check(AmountKind.AREA);
        return Area.ofSquareMetres(number.doubleValue());
    }

    /**
     * Returns this amount as a mass.
     *
     * @return the mass
     * @throws IllegalStateException if it is not a mass
     */
    public Mass toMass() {
        check(AmountKind.MASS);
        return Mass.ofKilograms(number.doubleValue());
    }

    /**
     * Returns this amount as a whole number of pieces.
     *
     * @return the pieces
     * @throws IllegalStateException if it is not in pieces
     * @throws ArithmeticException if it is not a whole number
     */
    public long toPieces() {
        check(AmountKind.PIECES);
        return number.longValueExact();
    }

    private void check(AmountKind wanted) {
        if (kind != wanted) {
            throw new IllegalStateException("an amount of " + this + " is not " + wanted);
        }
    }

    /**
     * Returns this amount and another together.
     *
     * @param other an amount of the same kind
     * @return the sum
     * @throws IllegalArgumentException if the kinds differ
     */
    public Amount plus(Amount other) {
        return new Amount(sameKind(other), number.add(other.number));
    }

    /**
     * Returns this amount less another.
     *
     * @param other an amount of the same kind
     * @return the difference, below zero if the other is more
     * @throws IllegalArgumentException if the kinds differ
     */
    public Amount minus(Amount other) {
        return new Amount(sameKind(other), number.subtract(other.number));
    }

    private AmountKind sameKind(Amount other) {
        if (kind != other.kind) {
            throw new IllegalArgumentException("amounts must be of one kind, but were " + this + " and " + other);
        }
        return kind;
    }

    Amount times(BigDecimal factor) {
        return new Amount(kind, number.multiply(factor));
    }

    Amount times(long count) {
        return times(BigDecimal.valueOf(count));
    }

    Amount orZero() {
        return number.signum() < 0 ? none(kind) : this;
    }

    boolean isNegative() {
        return number.signum() < 0;
    }

    boolean isMoreThanResolution() {
        return number.compareTo(RESOLUTION) > 0;
    }

    /**
     * Returns how many of this amount it takes to cover another: rounded up, where an excess of up to 0.0000001 over a whole count asks for
     * no more.
     */
    long timesToCover(Amount wanted) {
        sameKind(wanted);
        return wanted.number
                .subtract(RESOLUTION)
                .divide(number, 0, RoundingMode.CEILING)
                .max(BigDecimal.ZERO)
                .longValueExact();
    }

    /** Returns the number with at most so many decimals, rounded the way given, and the unit. */
    String toText(int decimals, RoundingMode way) {
        BigDecimal shown = number.scale() > decimals ? number.setScale(decimals, way) : number;
        return plain(shown) + kind.unit();
    }

    static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    /** Returns the number of pieces, metres, square metres or kilograms. */
    @Override
    public double doubleValue() {
        return number.doubleValue();
    }

    @Override
    public float floatValue() {
        return number.floatValue();
    }

    /** Returns the number without its decimals. */
    @Override
    public long longValue() {
        return number.longValue();
    }

    /** Returns the number without its decimals. */
    @Override
    public int intValue() {
        return number.intValue();
    }

    /** Orders by kind, then by number. */
    @Override
    public int compareTo(Amount other) {
        int byKind = kind.compareTo(other.kind);
        return byKind != 0 ? byKind : number.compareTo(other.number);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Amount a && kind == a.kind && number.equals(a.number);
    }

    @Override
    public int hashCode() {
        return Objects.hash(kind, number);
    }

    /** Returns the number and its unit, such as {@code 57.695 m}, {@code 60.4 kg} or {@code 187}. */
    @Override
    public String toString() {
        return plain(number) + kind.unit();
    }
}
