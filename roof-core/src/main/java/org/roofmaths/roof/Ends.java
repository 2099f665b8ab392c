package org.roofmaths.roof;

import java.io.Serializable;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * One thing at the left end of a face and one at its right end, as seen from outside looking up the slope.
 *
 * <p>Two ends are never replaced by their mean: a face whose ends differ keeps both. For example,
 * {@code Ends.of(mm(3912), mm(3897))} are the slope lengths of a face 15 mm out of true.
 *
 * @param <T> the type of the thing; serializable, if the ends are to be written to a stream
 * @param left what stands at the left end
 * @param right what stands at the right end
 * @since 0.1
 */
public record Ends<T>(T left, T right) implements Serializable {

    /** Refuses null at either end. */
    public Ends {
        Objects.requireNonNull(left, "left");
        Objects.requireNonNull(right, "right");
    }

    /**
     * Returns two ends.
     *
     * @param <T> the type of the thing
     * @param left what stands at the left end
     * @param right what stands at the right end
     * @return the two ends
     */
    public static <T> Ends<T> of(T left, T right) {
        return new Ends<>(left, right);
    }

    /**
     * Returns two ends that have the same.
     *
     * @param <T> the type of the thing
     * @param value what stands at either end
     * @return the two ends
     */
    public static <T> Ends<T> both(T value) {
        return new Ends<>(value, value);
    }

    /**
     * Returns what stands at one end.
     *
     * @param end which end
     * @return the thing at that end
     */
    public T at(End end) {
        return end == End.LEFT ? left : right;
    }

    /**
     * Returns the same two ends with something worked out from each.
     *
     * @param <R> the type of what is worked out
     * @param step works out one end
     * @return the two ends, each worked out
     */
    public <R> Ends<R> map(Function<? super T, ? extends R> step) {
        return new Ends<>(step.apply(left), step.apply(right));
    }

    /**
     * Returns the two ends with something worked out from each and from the like end of another pair.
     *
     * @param <U> the type of the other pair
     * @param <R> the type of what is worked out
     * @param other the other pair
     * @param step works out one end
     * @return the two ends, each worked out
     */
    public <U, R> Ends<R> combine(Ends<U> other, BiFunction<? super T, ? super U, ? extends R> step) {
        return new Ends<>(step.apply(left, other.left), step.apply(right, other.right));
    }

    /** Returns the pair as it is named when the same face is seen from its other side: left and right change places. */
    public Ends<T> mirrored() {
        return new Ends<>(/* left= */ right, /* right= */ left);
    }

    /** Tells whether both ends are exactly equal. */
    public boolean isEqual() {
        return left.equals(right);
    }

    /** Returns for example {@code 326 mm left, 324.75 mm right}, or {@code 326 mm at both ends}. */
    @Override
    public String toString() {
        return isEqual() ? left + " at both ends" : left + " left, " + right + " right";
    }
}
