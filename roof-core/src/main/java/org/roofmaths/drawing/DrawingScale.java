package org.roofmaths.drawing;

import java.io.Serializable;
import org.roofmaths.units.Length;

/**
 * How much smaller a drawing is than the thing: 1:50.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class DrawingScale implements Serializable {
    private static final long serialVersionUID = 1L;
    private static final int[] USUAL = {1, 2, 5, 10, 20, 25, 50, 100, 200, 500, 1000, 2000, 5000, 10_000};
    private static final int MOST = 10_000;

    private final int times;

    private DrawingScale(int times) {
        this.times = times;
    }

    /**
     * Returns the scale 1:n.
     *
     * @param times n, from 1 to 10000
     * @return the scale
     * @throws IllegalArgumentException if n is out of range
     */
    public static DrawingScale of(int times) {
        if (times < 1 || times > MOST) {
            throw new IllegalArgumentException("scale must be from 1:1 to 1:" + MOST + ", but was 1:" + times);
        }
        return new DrawingScale(times);
    }

    /**
     * Returns the largest usual scale at which something fits a width and a height on paper.
     *
     * @param width how wide the thing is
     * @param height how high the thing is
     * @param paperWidth the room on paper across, above zero
     * @param paperHeight the room on paper up, above zero
     * @return one of 1:1, 2, 5, 10, 20, 25, 50, 100 … 10000; the smallest if nothing fits
     */
    public static DrawingScale fitting(Length width, Length height, Length paperWidth, Length paperHeight) {
        for (int times : USUAL) {
            if (width.meetsGreatest(paperWidth.times((long) times))
                    && height.meetsGreatest(paperHeight.times((long) times))) {
                return new DrawingScale(times);
            }
        }
        return new DrawingScale(MOST);
    }

    /** Returns the n of 1:n. */
    public int times() {
        return times;
    }

    /**
     * Returns how long a length is on paper.
     *
     * @param real the length in real size
     * @return the length on paper
     */
    public Length toPaper(Length real) {
        return real.dividedBy(times);
    }

    /**
     * Returns how long something on paper is in real size.
     *
     * @param paper the length on paper
     * @return the length in real size
     */
    public Length toReal(Length paper) {
        return paper.times((long) times);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof DrawingScale s && times == s.times;
    }

    @Override
    public int hashCode() {
        return times;
    }

    /** Returns for example {@code 1:50}. */
    @Override
    public String toString() {
        return "1:" + times;
    }
}
