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
    private final Length[] lengths = new Length[COUNT];
    private final double[] inches = new double[COUNT];
    private final double[] tangents = new double[COUNT];

    private final List<Quantity<javax.measure.quantity.Length>> peers = new ArrayList<>(COUNT);

    // Not final, so that it is not folded away.
    private String text = TEXT;

    /** Fills the arrays with the same numbers in every shape. */
    public UnitsBenchmark() {
        for (int i = 0; i < COUNT; i++) {
            lengths[i] = Length.ofNanometres(bare[i]);
            inches[i] = lengths[i].toInches();
            peers.add(Quantities.getQuantity(lengths[i].toMillimetres(), MILLIMETRE));
            tangents[i] = 0.2 + 0.001 * i;
        }
    }

    /** The sum of bare nanometres, overflow checked. */
    @Benchmark
    @OperationsPerInvocation(COUNT)
    public long plusOfLongs() {
        long sum = 0;
        for (long nanometres : bare) {
            sum = Math.addExact(sum, nanometres);
        }
        return sum;
    }

    /** The sum of lengths. */
    @Benchmark
    @OperationsPerInvocation(COUNT)
    public Length plusOfLengths() {
        Length sum = Length.ZERO;
        for (Length length : lengths) {
            sum = sum.plus(length);
        }
        return sum;
    }

    /** The sum of the peer's lengths. */
    @Benchmark
    @OperationsPerInvocation(COUNT)
    public Quantity<javax.measure.quantity.Length> plusOfPeers() {
        Quantity<javax.measure.quantity.Length> sum = peers.get(0);
        for (int i = 1; i < COUNT; i++) {
            sum = sum.add(peers.get(i));
        }
        return sum;
    }

    /** How often bare nanometres are above their neighbour. */
    @Benchmark
    @OperationsPerInvocation(COUNT)
    public int compareOfLongs() {
        int above = 0;
        for (int i = 1; i < COUNT; i++) {
            above += Long.compare(bare[i], bare[i - 1]) > 0 ? 1 : 0;
        }
        return above;
    }

    /** How often lengths are above their neighbour. */
    @Benchmark
    @OperationsPerInvocation(COUNT)
    public int compareOfLengths() {
        int above = 0;
        for (int i = 1; i < COUNT; i++) {
            above += lengths[i].compareTo(lengths[i - 1]) > 0 ? 1 : 0;
        }
        return above;
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
