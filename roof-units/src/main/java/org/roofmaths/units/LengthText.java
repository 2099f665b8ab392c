package org.roofmaths.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Reads the grammar that {@link Length#parse} documents, in whole nanometres. */
final class LengthText {
    static final String DENOMINATORS = "denominator must be 1, 2, 4, 8, 16, 32 or 64";
    static final String RANGE = "length must be between -9223372036854.775807 mm and 9223372036854.775807 mm";

    private static final String UNITS = "unit must be mm, cm, m, in, ft or yd";
    private static final int INCHES_IN_A_FOOT = 12;
    private static final int MOST_DIGITS_OF_A_LONG = 19;
    private static final long[] POWERS_OF_TEN = new long[MOST_DIGITS_OF_A_LONG];

    static {
        POWERS_OF_TEN[0] = 1;
        for (int i = 1; i < POWERS_OF_TEN.length; i++) {
            POWERS_OF_TEN[i] = POWERS_OF_TEN[i - 1] * 10;
        }
    }

    private final Cursor cursor;

    private LengthText(String text) {
        cursor = new Cursor(text);
    }

    static long read(String text) {
        return new LengthText(text).read();
    }

    /** Says whether an inch may be divided by this number. */
    static boolean isDenominator(long denominator) {
        return denominator >= 1 && denominator <= 64 && Long.bitCount(denominator) == 1;
    }

    private long read() {
        cursor.skipSpaces();
        boolean isNegative = cursor.skipMinus();
        int from = cursor.at();
        cursor.readNumber("number");
        cursor.skipSpaces();
        long nanometres;
        if (isAtFraction()) {
            nanometres = readFraction();
            expectInchMark();
        } else if (skipInchMark()) {
            nanometres = scaled(Length.NANOMETRES_IN_AN_INCH);
        } else if (cursor.skipPrime() || cursor.skipWord("ft")) {
            nanometres = readAfterFeet(from);
        } else {
            nanometres = scaled(readUnit());
        }
        cursor.end();
        return isNegative ? -nanometres : nanometres;
    }

    private long readUnit() {
        if (cursor.skipWord("mm")) {
            return Length.NANOMETRES_IN_A_MILLIMETRE;
        }
        if (cursor.skipWord("m")) {
            return Length.NANOMETRES_IN_A_METRE;
        }
        if (cursor.skipWord("cm")) {
            return Length.NANOMETRES_IN_A_CENTIMETRE;
        }
        if (cursor.skipWord("yd")) {
            return Length.NANOMETRES_IN_A_YARD;
        }
        throw cursor.fail(UNITS);
    }

    private boolean skipInchMark() {
        return cursor.skipDoublePrime() || cursor.skipWord("in");
    }

    private void expectInchMark() {
        cursor.skipSpaces();
        if (!skipInchMark()) {
            throw cursor.fail("inches must end in \" or in");
        }
    }

    private long readAfterFeet(int from) {
        long feet = scaled(Length.NANOMETRES_IN_A_FOOT);
        boolean isWhole = cursor.isWhole();
        cursor.skipSpaces();
        if (cursor.isAtEnd()) {
            return feet;
        }
        if (!cursor.isAtDigit()) {
            throw cursor.fail("text must end here or go on with inches");
        }
        if (!isWhole) {
            throw cursor.fail(from, "feet must be a whole number when inches follow");
        }
        int inchesFrom = cursor.at();
        cursor.readNumber("inches");
        cursor.skipSpaces();
        long inches = isAtFraction() ? readFraction() : scaled(Length.NANOMETRES_IN_AN_INCH);
        if (inches >= INCHES_IN_A_FOOT * Length.NANOMETRES_IN_AN_INCH) {
            throw cursor.fail(inchesFrom, "inches must be below 12 when feet come before");
        }
        expectInchMark();
        if (feet > Long.MAX_VALUE - inches) {
            throw cursor.failed(from, RANGE, "was beyond it");
        }
        return feet + inches;
    }

    /** Says whether a number goes on with a fraction. A digit here stands apart, or the number would have taken it. */
    private boolean isAtFraction() {
        return cursor.isAt("/") || cursor.isAtDigit();
    }

    /** Reads on after the first number of {@code 13 9/16} or of {@code 9/16}. */
    private long readFraction() {
        int numeratorAt = cursor.numberAt();
        if (!cursor.isWhole()) {
            throw cursor.fail(numeratorAt, "a number before a fraction must be whole");
        }
        long whole = 0;
        if (!cursor.isAt("/")) {
            whole = scaled(Length.NANOMETRES_IN_AN_INCH);
            cursor.readWhole("numerator");
            numeratorAt = cursor.numberAt();
        }
        long numerator = cursor.whole();
        if (!cursor.skip('/')) {
            throw cursor.fail("numerator must be followed by /");
        }
        cursor.readWhole("denominator");
        long denominator = cursor.whole();
        if (!isDenominator(denominator)) {
            throw cursor.fail(cursor.numberAt(), DENOMINATORS);
        }
        if (numerator >= denominator) {
            throw cursor.fail(numeratorAt, "numerator must be below the denominator");
        }
        long part = Length.NANOMETRES_IN_AN_INCH / denominator * numerator;
        if (whole > Long.MAX_VALUE - part) {
            throw cursor.failed(numeratorAt, RANGE, "was beyond it");
        }
        return whole + part;
    }

    /** The number read last, in a unit of so many nanometres: the nearest nanometre, a tie to the even one. */
    private long scaled(long unit) {
        if (cursor.isShort() && Math.multiplyHigh(cursor.digits(), unit) == 0) {
            long product = cursor.digits() * unit;
            if (product >= 0) {
                return divided(product, POWERS_OF_TEN[cursor.decimals()]);
            }
        }
        BigDecimal exact = cursor.toDecimal().multiply(BigDecimal.valueOf(unit));
        if (exact.precision() - exact.scale() <= MOST_DIGITS_OF_A_LONG) {
            exact = exact.setScale(0, RoundingMode.HALF_EVEN);
            if (exact.compareTo(BigDecimal.valueOf(Long.MAX_VALUE)) <= 0) {
                return exact.longValue();
            }
        }
        throw cursor.failed(cursor.numberAt(), RANGE, "was beyond it");
    }

    private static long divided(long product, long divisor) {
        long quotient = product / divisor;
        long rest = product - quotient * divisor;
        int half = Long.compare(rest, divisor - rest);
        return half > 0 || half == 0 && (quotient & 1) == 1 ? quotient + 1 : quotient;
    }
}
