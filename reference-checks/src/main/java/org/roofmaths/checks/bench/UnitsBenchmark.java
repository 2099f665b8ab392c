package org.roofmaths.checks.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Lengths against the bare numbers they hold, and against the reference implementation of JSR-385. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class UnitsBenchmark {
    private static final int COUNT = 1024;
    private static final String TEXT = "9' 4 1/2\"";

    private static final Unit<javax.measure.quantity.Length> MILLIMETRE = MetricPrefix.MILLI(Units.METRE);
    private static final Unit<javax.measure.quantity.Length> INCH =
            MILLIMETRE.multiply(127).divide(5);

    private final long[] bare = new SplittableRandom(1)
            .longs(COUNT, -1_000_000_000_000L, 1_000_000_000_000L)
            .toArray();
    private final List<Length> lengths = new ArrayList<>(COUNT);
    private final double[] inches = new double[COUNT];
    private final double[] tangents = new double[COUNT];

    // Not final, so that they are not folded away.
    private long oneBare = 344_487_500;
    private long otherBare = 325_000_000;
    private Length one = Length.ofNanometres(oneBare);
    private Length other = Length.ofNanometres(otherBare);
    private Quantity<javax.measure.quantity.Length> onePeer = Quantities.getQuantity(344.4875, MILLIMETRE);
    private Quantity<javax.measure.quantity.Length> otherPeer = Quantities.getQuantity(325, MILLIMETRE);
    private String text = TEXT;

    /** Fills the arrays with the same numbers in every shape. */
    public UnitsBenchmark() {
        for (int i = 0; i < COUNT; i++) {
            lengths.add(Length.ofNanometres(bare[i]));
            inches[i] = lengths.get(i).toInches();
            tangents[i] = 0.2 + 0.001 * i;
        }
    }

    /** One bare number and another, overflow checked. */
    @Benchmark
    public long plusOfTwoLongs() {
        return Math.addExact(oneBare, otherBare);
    }

    /** One length and another. */
    @Benchmark
    public long plusOfTwoLengths() {
        return one.plus(other).toNanometres();
    }

    /** One of the peer's lengths and another. */
    @Benchmark
    public double plusOfTwoPeers() {
        return onePeer.add(otherPeer).getValue().doubleValue();
    }

    /** One bare number against another. */
    @Benchmark
    public int compareOfTwoLongs() {
        return Long.compare(oneBare, otherBare);
    }

    /** One length against another. */
    @Benchmark
    public int compareOfTwoLengths() {
        return one.compareTo(other);
    }

    /** The sum of an array of bare numbers, overflow checked. */
    @Benchmark
    @OperationsPerInvocation(COUNT)
    public long sumOfLongs() {
        long sum = 0;
        for (long nanometres : bare) {
            sum = Math.addExact(sum, nanometres);
        }
        return sum;
    }

    /** The sum of a list of lengths by the method made for it. */
    @Benchmark
    @OperationsPerInvocation(COUNT)
    public Length sumOfLengths() {
        return Length.sum(lengths);
    }

    /** The sum of a list of lengths, one after another; each step makes a length. */
    @Benchmark
    @OperationsPerInvocation(COUNT)
    public Length sumOfLengthsStepByStep() {
        Length sum = Length.ZERO;
        for (Length length : lengths) {
            sum = sum.plus(length);
        }
        return sum;
    }

    /** Inches to millimetres in bare doubles. */
    @Benchmark
    @OperationsPerInvocation(COUNT)
    public double convertOfDoubles() {
        double sum = 0;
        for (double inch : inches) {
            sum += inch * 25.4;
        }
        return sum;
    }

    /** Inches to millimetres by way of a length. */
    @Benchmark
    @OperationsPerInvocation(COUNT)
    public double convertOfLengths() {
        double sum = 0;
        for (double inch : inches) {
            sum += Length.ofDecimalInches(inch).toMillimetres();
        }
        return sum;
    }

    /** Inches to millimetres by the peer. */
    @Benchmark
    @OperationsPerInvocation(COUNT)
    public double convertOfPeers() {
        double sum = 0;
        for (double inch : inches) {
            sum += Quantities.getQuantity(inch, INCH).to(MILLIMETRE).getValue().doubleValue();
        }
        return sum;
    }

    /** Feet and inches by hand, on {@code Double.parseDouble} and without checks. */
    @Benchmark
    public double parseByHand() {
        int feetEnd = text.indexOf('\'');
        int inchEnd = text.indexOf('"');
        int space = text.lastIndexOf(' ');
        int slash = text.indexOf('/');
        double feet = Double.parseDouble(text.substring(0, feetEnd));
        double inch = Double.parseDouble(text.substring(feetEnd + 1, space).trim());
        double numerator = Double.parseDouble(text.substring(space + 1, slash));
        double denominator = Double.parseDouble(text.substring(slash + 1, inchEnd));
        return (feet * 12 + inch + numerator / denominator) * 25.4;
    }

    /** Feet and inches by the whole grammar. */
    @Benchmark
    public Length parseOfLength() {
        return Length.parse(text);
    }

    /** The length of a rafter in bare doubles. */
    @Benchmark
    @OperationsPerInvocation(COUNT)
    public double slopeOfDoubles() {
        double sum = 0;
        for (double tangent : tangents) {
            sum += 3600 / StrictMath.cos(StrictMath.atan(tangent));
        }
        return sum;
    }

    /** The length of a rafter by way of a pitch and a length. */
    @Benchmark
    @OperationsPerInvocation(COUNT)
    public double slopeOfPitches() {
        Length run = Length.ofMillimetres(3600);
        double sum = 0;
        for (double tangent : tangents) {
            sum += Pitch.ofPercent(100 * tangent).slopeOver(run).toMillimetres();
        }
        return sum;
    }
}
