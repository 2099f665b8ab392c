package org.roofmaths.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Doubles as decimals: the text that reads back to the same double, and exact sums over those texts. */
final class Decimals {
    static final BigDecimal MICRO = new BigDecimal("0.000001");

    /** No two decimals of up to so many digits share a normal double, so one that reads back is the shortest. */
    private static final int SAFE_DIGITS = 15;

    /** So many digits always read back. */
    private static final int MOST_DIGITS = 17;

    private static final double LEAST_PLAIN = 1e-9;
    private static final double MOST_PLAIN = 1e15;

    private Decimals() {}

    /**
     * Returns the shortest decimal that reads back to this double. Written here because {@code Double.toString} gives
     * other digits before Java 19 than after.
     */
    static BigDecimal exact(double value) {
        BigDecimal whole = new BigDecimal(value);
        int fewest = Math.abs(value) < Double.MIN_NORMAL ? 1 : SAFE_DIGITS;
        for (int digits = fewest; digits < MOST_DIGITS; digits++) {
            BigDecimal nearest = whole.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (nearest.doubleValue() == value) {
                return nearest.stripTrailingZeros();
            }
            // Above a power of two the doubles lie wider apart than below it.
            BigDecimal outer = whole.round(new MathContext(digits, RoundingMode.UP));
            if (outer.doubleValue() == value) {
                return outer;
            }
        }
        return whole.round(new MathContext(MOST_DIGITS, RoundingMode.HALF_EVEN));
    }

    /** Returns the text of {@link #exact}: plain from 1e-9 up to 1e15, with an exponent beyond. */
    static String text(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        double size = Math.abs(value);
        if (size < MOST_PLAIN && value == (long) value) {
            return Long.toString((long) value);
        }
        BigDecimal exact = exact(value);
        return size >= LEAST_PLAIN && size < MOST_PLAIN ? exact.toPlainString() : scientific(exact);
    }

    private static String scientific(BigDecimal value) {
        String digits = value.unscaledValue().abs().toString();
        String tail = digits.length() == 1 ? "" : "." + digits.substring(1);
        int exponent = digits.length() - 1 - value.scale();
        return (value.signum() < 0 ? "-" : "") + digits.charAt(0) + tail + "E" + exponent;
    }

    /** Returns the value with -0 made 0, or refuses it if it is not a finite number. */
    static double finite(double value, String what) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " must be a finite number, but was " + value);
        }
        return value + 0.0;
    }

    /** Returns the result of a sum over finite numbers, or refuses it if it has left the range of a double. */
    static double result(double value, String what) {
        if (!Double.isFinite(value)) {
            throw new ArithmeticException(what + " is beyond the range of a double");
        }
        return value + 0.0;
    }

    /** Returns a divisor, or refuses it if it is zero or not a finite number. */
    static double divisor(double value) {
        if (value == 0) {
            throw new ArithmeticException("divisor must not be zero");
        }
        return finite(value, "divisor");
    }

    /** Says whether two doubles, as printed, are at most so far apart; exact, so that the edge counts. */
    static boolean isWithin(double a, double b, double most) {
        return exact(a).subtract(exact(b)).abs().compareTo(exact(most)) <= 0;
    }
}
