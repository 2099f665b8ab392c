package org.roofmaths.units;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How far apart two quantities may be and still count as the same; the edge counts.
 * <p>
 * There is no default tolerance and none set for a whole program: it is made where it is needed and passed on. Nearness
 * is asked of the quantities: {@code a.isWithin(Tolerance.ofMillimetres(0.5), b)}. Two tolerances are equal when their
 * amounts are. Immutable and thread-safe.
 *
 * @param <T>  the kind of quantity that is compared
 * @since 0.1
 */
public final class Tolerance<T extends Quantity> implements Serializable {
    private final T amount;

    private Tolerance(T amount) {
        this.amount = amount;
    }

    /**
     * Returns a tolerance of so much, either way.
     *
     * @param amount  the greatest difference, zero or more
     * @param <T>  the kind of quantity that is compared
     * @return the tolerance
     * @throws IllegalArgumentException if the amount is negative
     * @since 0.1
     */
    public static <T extends Quantity> Tolerance<T> of(T amount) {
        Objects.requireNonNull(amount, "amount");
        if (amount.toSi() < 0) {
            throw new IllegalArgumentException("tolerance must be zero or more, but was " + amount);
        }
        return new Tolerance<>(amount);
    }

    /**
     * Returns a tolerance of so many millimetres, either way.
     *
     * @param millimetres  the greatest difference, finite, zero or more
     * @return the tolerance
     * @throws IllegalArgumentException if the number is negative or not finite
     * @since 0.1
     */
    public static Tolerance<Length> ofMillimetres(double millimetres) {
        return of(Length.ofMillimetres(millimetres));
    }

    /**
     * Returns a tolerance of so many degrees, either way.
     *
     * @param degrees  the greatest difference, finite, zero or more
     * @return the tolerance
     * @throws IllegalArgumentException if the number is negative or not finite
     * @since 0.1
     */
    public static Tolerance<Angle> ofDegrees(double degrees) {
        return of(Angle.ofDegrees(degrees));
    }

    /**
     * Returns the greatest difference that this tolerance allows.
     *
     * @return the amount, zero or more
     * @since 0.1
     */
    public T amount() {
        return amount;
    }

    /**
     * Says whether another object is a tolerance of an equal amount.
     *
     * @param other  the other object
     * @return true if it is
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Tolerance<?> that && amount.equals(that.amount);
    }

    @Override
    public int hashCode() {
        return amount.hashCode();
    }

    /**
     * Returns the tolerance in words: {@code within 0.5 mm}.
     *
     * @return the text
     */
    @Override
    public String toString() {
        return "within " + amount;
    }
}
