package org.roofmaths.units;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A way to round a quantity to whole multiples of a step. It prints its own name, so a working can show it.
 * <p>
 * Nothing in this library rounds by itself, apart from the storage of a length in nanometres. Sums are made in full and
 * rounded once, at the end, by an object of this class that the caller chose.
 * <p>
 * Lengths are rounded exactly. The other kinds are rounded as the decimals that {@code toString} prints, so that 0.15
 * kg to the nearest 0.1 kg is a tie, and the answer prints as 0.2 kg. Two roundings are equal when their step and way
 * are. Immutable and thread-safe.
 * <pre>{@code
 * Rounding.toNearest(Length.ofMillimetres(1)).apply(Length.ofMillimetres(344.4875))          // 344 mm
 * Rounding.upToMultipleOf(Length.ofMillimetres(5)).apply(Length.ofMillimetres(61.038729))    // 65 mm
 * }</pre>
 *
 * @param <T>  the kind of quantity that is rounded
 * @since 0.1
 */
public final class Rounding<T extends Quantity> implements Serializable {
    private enum Way {
        NEAREST("to the nearest ", ""),
        NEAREST_TIES_TO_EVEN("to the nearest ", ", ties to the even multiple"),
        UP("up to a multiple of ", ""),
        DOWN("down to a multiple of ", "");

        private final String before;
        private final String after;

        Way(String before, String after) {
            this.before = before;
            this.after = after;
        }
    }

    private final Way way;
    private final T step;
    private final String stepText;

    private Rounding(Way way, T step, String stepText) {
        this.way = way;
        this.step = step;
        this.stepText = stepText;
    }

    private static <T extends Quantity> Rounding<T> of(Way way, T step) {
        Objects.requireNonNull(step, "step");
        if (!(step.toSi() > 0)) {
            throw new IllegalArgumentException("step must be above zero, but was " + step);
        }
        QuantityKind kind = step.kind();
        boolean isOneSided = way == Way.UP || way == Way.DOWN;
        if (isOneSided && kind.stored(step).compareTo(kind.resolution()) <= 0) {
            throw new IllegalArgumentException("step must be greater than " + kind.ofStored(kind.resolution())
                    + " to round up or down, but was " + step);
        }
        return new Rounding<>(way, step, step.toString());
    }

    /**
     * Returns the rounding to the nearest multiple of a step; a tie goes away from zero.
     *
     * @param step  the step, above zero
     * @param <T>  the kind of quantity
     * @return the rounding, printed as {@code to the nearest 1 mm}
     * @throws IllegalArgumentException if the step is zero or negative
     * @since 0.1
     */
    public static <T extends Quantity> Rounding<T> toNearest(T step) {
        return of(Way.NEAREST, step);
    }

    /**
     * Returns the rounding to the nearest multiple of a step; a tie goes to the even multiple.
     *
     * @param step  the step, above zero
     * @param <T>  the kind of quantity
     * @return the rounding, printed as {@code to the nearest 1 mm, ties to the even multiple}
     * @throws IllegalArgumentException if the step is zero or negative
     * @since 0.1
     */
    public static <T extends Quantity> Rounding<T> toNearestTiesToEven(T step) {
        return of(Way.NEAREST_TIES_TO_EVEN, step);
    }

    /**
     * Returns the rounding up to the next multiple of a step: for minima. Up is towards the greater, so -7 mm goes up
     * to -5 mm.
     * <p>
     * A length that is over a multiple by no more than {@link Length#STORAGE_RESOLUTION}, or an angle or pitch by no
     * more than {@link Pitch#STORAGE_RESOLUTION}, is taken as that multiple; of the other kinds any excess counts.
     *
     * @param step  the step, above zero and above the storage resolution
     * @param <T>  the kind of quantity
     * @return the rounding, printed as {@code up to a multiple of 5 mm}
     * @throws IllegalArgumentException if the step is not above zero and the storage resolution
     * @since 0.1
     */
    public static <T extends Quantity> Rounding<T> upToMultipleOf(T step) {
        return of(Way.UP, step);
    }

    /**
     * Returns the rounding down to the next multiple of a step: for maxima. Down is towards the lesser, so -3 mm goes
     * down to -5 mm.
     * <p>
     * A length that falls short of a multiple by no more than {@link Length#STORAGE_RESOLUTION}, or an angle or pitch
     * by no more than {@link Pitch#STORAGE_RESOLUTION}, is taken as that multiple; of the other kinds any shortfall
     * counts.
     *
     * @param step  the step, above zero and above the storage resolution
     * @param <T>  the kind of quantity
     * @return the rounding, printed as {@code down to a multiple of 5 mm}
     * @throws IllegalArgumentException if the step is not above zero and the storage resolution
     * @since 0.1
     */
    public static <T extends Quantity> Rounding<T> downToMultipleOf(T step) {
        return of(Way.DOWN, step);
    }

    /**
     * Returns the rounding of a length to the nearest fraction of an inch; a tie goes away from zero.
     *
     * @param denominator  the lower number of the smallest fraction: 1, 2, 4, 8, 16, 32 or 64
     * @return the rounding, printed as {@code to the nearest 1/16 in}
     * @throws IllegalArgumentException if the denominator is none of these
     * @since 0.1
     */
    public static Rounding<Length> toFractionOfInch(int denominator) {
        if (denominator == 1) {
            return new Rounding<>(Way.NEAREST, Length.ofInches(1, 0, 1), "1 in");
        }
        return new Rounding<>(Way.NEAREST, Length.ofInches(0, 1, denominator), "1/" + denominator + " in");
    }

    /**
     * Returns the step, of which every rounded quantity is a whole multiple.
     *
     * @return the step, above zero
     * @since 0.1
     */
    public T step() {
        return step;
    }

    /**
     * Returns the rounded quantity.
     *
     * @param value  the quantity to round
     * @return a whole multiple of the step
     * @throws ArithmeticException if the multiple is beyond the range of a length
     * @throws IllegalArgumentException if the multiple is not allowed for the kind, such as a pitch of 0°
     * @since 0.1
     */
    public T apply(T value) {
        return ofStored(rounded(value.kind().stored(value)));
    }

    /**
     * Returns what rounding adds to a quantity: the rounded one less the given one.
     * <p>
     * For example, to the nearest 1 mm, 344.4875 mm has the residual -0.4875 mm.
     *
     * @param value  the quantity to round, not a pitch: a difference of pitches is an angle, so round
     *     {@link Pitch#toAngle()}
     * @return the residual, negative when the quantity is rounded down
     * @throws IllegalArgumentException if the quantity is a pitch
     * @since 0.1
     */
    public T residual(T value) {
        checkHasDifferences(value);
        BigDecimal stored = value.kind().stored(value);
        return ofStored(rounded(stored).subtract(stored));
    }

    /**
     * Returns the parts of a sum rounded so that every running sum is the rounded one: what to set out with one tape
     * from one zero.
     * <p>
     * Let the marks be the running sums of the given parts, and round each mark. The parts returned are the
     * differences of neighbouring rounded marks. So each mark is off by no more than the rounding of one value (half a
     * step, for the nearest), however long the list; each part is off by less than a step, or by a step at most when
     * both its marks are ties; and the parts returned add up to the rounded sum of the parts given. For example, four
     * gauges of 324.75 mm to the nearest 1 mm become 325, 325, 324 and 325 mm, together 1299 mm; rounding the gauge
     * would have made it 1300 mm.
     *
     * @param parts  the parts in order, not pitches
     * @return as many rounded parts, in the same order, unmodifiable; empty for an empty list
     * @throws IllegalArgumentException if the parts are pitches
     * @throws ArithmeticException if a sum is beyond the range of a length
     * @since 0.1
     */
    public List<T> running(List<T> parts) {
        List<T> rounded = new ArrayList<>(parts.size());
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal lastMark = BigDecimal.ZERO;
        for (T part : parts) {
            checkHasDifferences(part);
            sum = sum.add(part.kind().stored(part));
            BigDecimal mark = rounded(sum);
            rounded.add(ofStored(mark.subtract(lastMark)));
            lastMark = mark;
        }
        return List.copyOf(rounded);
    }

    private static void checkHasDifferences(Quantity value) {
        if (value.kind() == QuantityKind.PITCH) {
            throw new IllegalArgumentException("a difference of pitches is an angle: round " + value + " as an angle");
        }
    }

    private BigDecimal rounded(BigDecimal value) {
        BigDecimal size = step.kind().stored(step);
        BigDecimal below = value.divide(size, 0, RoundingMode.FLOOR);
        BigDecimal excess = value.subtract(below.multiply(size));
        boolean goesUp = goesUp(value, below, excess, size.subtract(excess));
        return (goesUp ? below.add(BigDecimal.ONE) : below).multiply(size);
    }

    /** Says whether a value goes to the multiple above, given by how much it is over one and short of the next. */
    private boolean goesUp(BigDecimal value, BigDecimal below, BigDecimal excess, BigDecimal shortfall) {
        BigDecimal resolution = step.kind().resolution();
        int side = excess.compareTo(shortfall);
        return switch (way) {
            case NEAREST -> side > 0 || side == 0 && value.signum() > 0;
            case NEAREST_TIES_TO_EVEN ->
                side > 0 || side == 0 && below.toBigInteger().testBit(0);
            case UP -> excess.compareTo(resolution) > 0;
            case DOWN -> shortfall.compareTo(resolution) <= 0;
        };
    }

    @SuppressWarnings("unchecked") // the kind of the step makes a quantity of the class of the step
    private T ofStored(BigDecimal stored) {
        return (T) step.kind().ofStored(stored);
    }

    /**
     * Says whether another object rounds in the same way to an equal step.
     *
     * @param other  the other object
     * @return true if it does
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Rounding<?> that && way == that.way && step.equals(that.step);
    }

    @Override
    public int hashCode() {
        return Objects.hash(way, step);
    }

    /**
     * Returns the name of this rounding, such as {@code to the nearest 1 mm} or {@code up to a multiple of 5 mm}; with
     * {@code rounded} before it, a line of a working.
     *
     * @return the text
     */
    @Override
    public String toString() {
        return way.before + stepText + way.after;
    }
}
