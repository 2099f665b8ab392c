package org.roofmaths.units;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How steep a sloping face is: its angle from the level, above 0° and below 90°.
 * <p>
 * The same pitch can be written as degrees, as a rise in 12, in per cent, as 1 in n or as rise over span; each has a
 * factory and a reader. Let {@code t} be the angle: a rise of {@code 12 tan t} in 12, {@code 100 tan t} per cent, 1 in
 * {@code 1 / tan t}, and a rise of {@code tan t / 2} over the span of a roof with two equal slopes.
 * <p>
 * Stored as a {@code double} of degrees. A number that goes in by one notation and out by the same, or by another,
 * agrees with exact arithmetic to 4 units in the last place times {@code t / (sin t cos t)}, {@code t} in radians; the
 * factor is under 1.6 up to 45° and grows towards 90°. Rise 3 on run 4 gives slope 5 to the nanometre. Two pitches are
 * equal when their stored numbers are. A level face has no pitch; use an {@link Angle}. Immutable and thread-safe.
 * <pre>{@code
 * Pitch.ofDegrees(35).slopeOver(Length.ofMillimetres(3600))   // 4394.78852 mm
 * Pitch.parse("7 in 12").toPercent()                          // 58.33333333333335
 * }</pre>
 *
 * @since 0.1
 */
public final class Pitch implements Quantity, Comparable<Pitch> {
    static final String RANGE = "pitch must be above 0° and below 90°";
    static final double PER_CENT = 100;

    private static final double TWELVE = 12;
    private static final double RIGHT_ANGLE = 90;

    /**
     * The difference that counts for nothing when a limit is decided: one millionth of a degree.
     * <p>
     * A rise is stored to the nearest nanometre, so on a run of 30 mm or more a rise of run × tan(limit) gives the
     * limit back to within this. It is far below what anyone can measure.
     *
     * @since 0.1
     */
    public static final Angle STORAGE_RESOLUTION = Angle.ofDegrees(0.000_001);

    private final double degrees;

    private Pitch(double degrees) {
        this.degrees = degrees;
    }

    static boolean isPitch(double degrees) {
        return degrees > 0 && degrees < RIGHT_ANGLE;
    }

    private static Pitch checked(double degrees) {
        if (!isPitch(degrees)) {
            throw new IllegalArgumentException(RANGE + ", but was " + Decimals.text(degrees) + "°");
        }
        return new Pitch(degrees);
    }

    /**
     * Returns a pitch in degrees from the level.
     *
     * @param degrees  the number of degrees, above 0 and below 90
     * @return the pitch
     * @throws IllegalArgumentException if the number is outside that range or not a number
     * @since 0.1
     */
    public static Pitch ofDegrees(double degrees) {
        return checked(degrees);
    }

    /**
     * Returns the pitch that makes this angle with the level.
     *
     * @param angle  the angle, above 0° and below 90°
     * @return the pitch
     * @throws IllegalArgumentException if the angle is outside that range
     * @since 0.1
     */
    public static Pitch from(Angle angle) {
        return checked(angle.toDegrees());
    }

    /**
     * Returns the pitch of a slope that gains a height over a level distance.
     * <p>
     * For example, a rise of 3 m on a run of 4 m is 36.87°.
     *
     * @param rise  the height gained, above zero
     * @param run  the level distance, above zero
     * @return the pitch
     * @throws IllegalArgumentException if a length is zero or negative, or the two are so unlike that the pitch cannot
     *     be told from level or plumb
     * @since 0.1
     */
    public static Pitch ofRiseAndRun(Length rise, Length run) {
        checkPositive(rise, "rise");
        checkPositive(run, "run");
        return checked(Degrees.atan((double) rise.toNanometres() / run.toNanometres()));
    }

    /**
     * Returns the pitch of a roof with two equal slopes that gains a height at the middle of its span.
     * <p>
     * For example, a rise of 2 m over a span of 8 m is a quarter pitch, 26.57°.
     *
     * @param rise  the height gained, above zero
     * @param span  the level distance over both slopes, above zero
     * @return the pitch
     * @throws IllegalArgumentException if a length is zero or negative, or the two are so unlike that the pitch cannot
     *     be told from level or plumb
     * @since 0.1
     */
    public static Pitch ofRiseOverSpan(Length rise, Length span) {
        checkPositive(rise, "rise");
        checkPositive(span, "span");
        return checked(Degrees.atan(2.0 * rise.toNanometres() / span.toNanometres()));
    }

    /**
     * Returns the pitch that rises so much in 12: {@code ofRiseIn12(7)} is 7 in 12, 30.26°.
     *
     * @param rise  the rise on a run of 12 of the same unit, above 0
     * @return the pitch
     * @throws IllegalArgumentException if the number is not finite and above 0, or the pitch cannot be told from plumb
     * @since 0.1
     */
    public static Pitch ofRiseIn12(double rise) {
        checkPositive(rise, "rise in 12");
        return checked(Degrees.atan(rise / TWELVE));
    }

    /**
     * Returns the pitch that rises so much in 100: {@code ofPercent(100)} is 45°.
     *
     * @param percent  the rise on a run of 100 of the same unit, above 0
     * @return the pitch
     * @throws IllegalArgumentException if the number is not finite and above 0, or the pitch cannot be told from plumb
     * @since 0.1
     */
    public static Pitch ofPercent(double percent) {
        checkPositive(percent, "per cent");
        return checked(Degrees.atan(percent / PER_CENT));
    }

    /**
     * Returns the pitch that rises 1 in so much: {@code ofOneIn(2.5)} is 21.80°.
     *
     * @param run  the run on a rise of 1 of the same unit, above 0
     * @return the pitch
     * @throws IllegalArgumentException if the number is not finite and above 0, or the pitch cannot be told from plumb
     * @since 0.1
     */
    public static Pitch ofOneIn(double run) {
        checkPositive(run, "n of 1 in n");
        return checked(Degrees.atan(1 / run));
    }

    private static void checkPositive(Length length, String what) {
        if (!length.isPositive()) {
            throw new IllegalArgumentException(what + " must be above 0 mm, but was " + length);
        }
    }

    private static void checkPositive(double number, String what) {
        if (!(number > 0 && number < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    what + " must be a finite number above 0, but was " + Decimals.text(number));
        }
    }

    /**
     * Reads a pitch.
     * <p>
     * One of these; spaces may stand between the parts, before and after:
     * <ul>
     * <li>degrees, also with minutes and seconds, as {@link Angle#parse} reads them: {@code 35°}, {@code 35 deg},
     *     {@code 22° 30' 15"};
     * <li>a rise in a run of the same unit: {@code 7 in 12}, {@code 1 in 2.5};
     * <li>per cent: {@code 70 %}.
     * </ul>
     * A number is written as for {@link Length#parse}.
     *
     * @param text  the whole text
     * @return the pitch
     * @throws QuantityParseException if the text is anything else, or not above 0° and below 90°
     * @since 0.1
     */
    public static Pitch parse(String text) {
        return new Pitch(AngleText.readPitch(Objects.requireNonNull(text, "text")));
    }

    /**
     * Returns the height gained over a level distance: {@code run × tan(pitch)}, to the nearest nanometre.
     *
     * @param run  the level distance
     * @return the rise
     * @throws ArithmeticException if the rise is beyond the range of a length
     * @since 0.1
     */
    public Length riseOver(Length run) {
        return run.times(tan());
    }

    /**
     * Returns the distance along the slope over a level distance: {@code run / cos(pitch)}, to the nearest nanometre.
     * <p>
     * For example, at 35° a run of 3600 mm is 4394.79 mm along the slope.
     *
     * @param run  the level distance
     * @return the distance along the slope
     * @throws ArithmeticException if the distance is beyond the range of a length
     * @since 0.1
     */
    public Length slopeOver(Length run) {
        return run.dividedBy(cos());
    }

    /**
     * Returns the level distance over which a height is gained: {@code rise / tan(pitch)}, to the nearest nanometre.
     *
     * @param rise  the height gained
     * @return the run
     * @throws ArithmeticException if the run is beyond the range of a length
     * @since 0.1
     */
    public Length runOver(Length rise) {
        return rise.dividedBy(tan());
    }

    /**
     * Returns the level part of a distance along the slope: {@code slope × cos(pitch)}, to the nearest nanometre.
     *
     * @param slope  the distance along the slope
     * @return the run
     * @since 0.1
     */
    public Length runAlong(Length slope) {
        return slope.times(cos());
    }

    /**
     * Returns the height gained in a distance along the slope: {@code slope × sin(pitch)}, to the nearest nanometre.
     *
     * @param slope  the distance along the slope
     * @return the rise
     * @since 0.1
     */
    public Length riseAlong(Length slope) {
        return slope.times(sin());
    }

    /**
     * Returns the slope factor, {@code 1 / cos(pitch)}: how much longer a slope is than its plan, and how much greater
     * its area.
     *
     * @return the factor, above 1 except that it rounds to 1 below a millionth of a degree
     * @since 0.1
     */
    public Ratio slopeFactor() {
        return Ratio.of(1 / cos());
    }

    /**
     * Says whether this pitch is steeper than another, exactly.
     *
     * @param other  the other pitch
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isSteeperThan(Pitch other) {
        return degrees > other.degrees;
    }

    /**
     * Says whether this pitch is flatter than another, exactly.
     *
     * @param other  the other pitch
     * @return true if it is; false if they are equal
     * @since 0.1
     */
    public boolean isFlatterThan(Pitch other) {
        return degrees < other.degrees;
    }

    /**
     * Says whether this pitch is at least as steep as a lower limit, at {@link #STORAGE_RESOLUTION}: a shortfall of up
     * to one millionth of a degree still meets it, any larger one does not.
     *
     * @param limit  the least pitch allowed
     * @return true if the limit is met
     * @since 0.1
     */
    public boolean meetsLeast(Pitch limit) {
        return degrees >= limit.degrees || isApartAtMost(limit, STORAGE_RESOLUTION);
    }

    /**
     * Says whether this pitch is no steeper than an upper limit, at {@link #STORAGE_RESOLUTION}: an excess of up to one
     * millionth of a degree still meets it, any larger one does not.
     *
     * @param limit  the greatest pitch allowed
     * @return true if the limit is met
     * @since 0.1
     */
    public boolean meetsGreatest(Pitch limit) {
        return degrees <= limit.degrees || isApartAtMost(limit, STORAGE_RESOLUTION);
    }

    /**
     * Says whether this pitch is as near to another as a tolerance asks; the edge counts, decided on the decimals that
     * {@code toString} prints.
     *
     * @param tolerance  how far apart they may be
     * @param other  the other pitch
     * @return true if the two differ by no more than the tolerance
     * @since 0.1
     */
    public boolean isWithin(Tolerance<Angle> tolerance, Pitch other) {
        return isApartAtMost(other, tolerance.amount());
    }

    private boolean isApartAtMost(Pitch other, Angle most) {
        return Decimals.isWithin(degrees, other.degrees, most.toDegrees());
    }

    /**
     * Returns the flatter of this pitch and another.
     *
     * @param other  the other pitch
     * @return the one that compares as less
     * @since 0.1
     */
    public Pitch min(Pitch other) {
        return other.degrees < degrees ? other : this;
    }

    /**
     * Returns the steeper of this pitch and another.
     *
     * @param other  the other pitch
     * @return the one that compares as greater
     * @since 0.1
     */
    public Pitch max(Pitch other) {
        return other.degrees > degrees ? other : this;
    }

    /**
     * Returns the sine, exact at 30°.
     *
     * @return the sine, above 0 and at most 1
     * @since 0.1
     */
    public double sin() {
        return Degrees.sin(degrees);
    }

    /**
     * Returns the cosine, exact at 60°.
     *
     * @return the cosine, above 0 and at most 1
     * @since 0.1
     */
    public double cos() {
        return Degrees.cos(degrees);
    }

    /**
     * Returns the tangent, exact at 45°.
     *
     * @return the tangent, zero or more
     * @since 0.1
     */
    public double tan() {
        return Degrees.tan(degrees);
    }

    /**
     * Returns the pitch as the angle from the level.
     *
     * @return the angle
     * @since 0.1
     */
    public Angle toAngle() {
        return Angle.ofDegrees(degrees);
    }

    /**
     * Returns the number of degrees from the level, as stored.
     *
     * @return the degrees
     * @since 0.1
     */
    public double toDegrees() {
        return degrees;
    }

    /**
     * Returns the number of radians from the level.
     *
     * @return the radians
     * @since 0.1
     */
    public double toRadians() {
        return StrictMath.toRadians(degrees);
    }

    /**
     * Returns the rise on a run of 12: {@code 12 tan(pitch)}.
     *
     * @return the rise
     * @since 0.1
     */
    public double toRiseIn12() {
        return TWELVE * tan();
    }

    /**
     * Returns the rise on a run of 100: {@code 100 tan(pitch)}.
     *
     * @return the per cent
     * @since 0.1
     */
    public double toPercent() {
        return PER_CENT * tan();
    }

    /**
     * Returns the run on a rise of 1: {@code 1 / tan(pitch)}.
     *
     * @return the n of 1 in n
     * @throws ArithmeticException if the pitch is so flat that the number is beyond the range of a double
     * @since 0.1
     */
    public double toOneIn() {
        return Decimals.result(1 / tan(), "n of 1 in n");
    }

    /**
     * Returns the rise over the span of a roof with two such slopes: {@code tan(pitch) / 2}.
     *
     * @return the ratio: 0.25 for a quarter pitch
     * @since 0.1
     */
    public Ratio toRiseOverSpan() {
        return Ratio.of(tan() / 2);
    }

    /**
     * Returns the number of radians from the level.
     *
     * @return the radians
     * @since 0.1
     */
    @Override
    public double toSi() {
        return toRadians();
    }

    /**
     * Returns {@link QuantityKind#PITCH}.
     *
     * @return the kind
     */
    @Override
    public QuantityKind kind() {
        return QuantityKind.PITCH;
    }

    /**
     * Compares this pitch with another, exactly.
     *
     * @param other  the other pitch
     * @return below, equal to or above zero as this pitch is flatter, equal or steeper
     */
    @Override
    public int compareTo(Pitch other) {
        return Double.compare(degrees, other.degrees);
    }

    /**
     * Says whether another object is a pitch with the same stored number.
     *
     * @param other  the other object
     * @return true if it is
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Pitch that && degrees == that.degrees;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(degrees);
    }

    /**
     * Returns the pitch in degrees, with the fewest digits that read back exactly: {@code 35°}.
     *
     * @return the text, which {@link #parse} reads back to an equal pitch
     */
    @Override
    public String toString() {
        return Decimals.text(degrees) + "°";
    }
}
