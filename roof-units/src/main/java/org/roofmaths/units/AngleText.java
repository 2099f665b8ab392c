package org.roofmaths.units;

/** Reads the grammars that {@link Angle#parse} and {@link Pitch#parse} document, in degrees. */
final class AngleText {
    private static final double SIXTY = 60;

    private final Cursor cursor;

    private AngleText(String text) {
        cursor = new Cursor(text);
    }

    static double read(String text) {
        return new AngleText(text).readAngle();
    }

    static double readPitch(String text) {
        return new AngleText(text).readPitch();
    }

    private double readAngle() {
        cursor.skipSpaces();
        boolean isNegative = cursor.skipMinus();
        double first = readNumber("number");
        double degrees;
        if (cursor.skipWord("rad")) {
            degrees = StrictMath.toDegrees(first);
        } else {
            degrees = readDegrees(first, "unit must be °, deg or rad");
        }
        cursor.end();
        checkFinite(degrees);
        return (isNegative ? -degrees : degrees) + 0.0;
    }

    private double readPitch() {
        cursor.skipSpaces();
        boolean isNegative = cursor.skipMinus();
        int from = cursor.at();
        double first = readNumber("number");
        double degrees;
        if (cursor.skip('%')) {
            degrees = Degrees.atan(first / Pitch.PER_CENT);
        } else if (cursor.skipWord("in")) {
            cursor.skipSpaces();
            degrees = Degrees.atan(first / readNumber("run"));
        } else {
            degrees = readDegrees(first, "unit must be °, deg or %, or the number must go on with in and a run");
        }
        cursor.end();
        double pitch = isNegative ? -degrees : degrees;
        if (!Pitch.isPitch(pitch)) {
            throw cursor.failed(from, Pitch.RANGE, "was " + Decimals.text(pitch) + "°");
        }
        return pitch;
    }

    /** Reads a number and the spaces after it. */
    private double readNumber(String what) {
        cursor.readNumber(what);
        cursor.skipSpaces();
        return cursor.toDouble();
    }

    private double readDegrees(double degrees, String units) {
        if (cursor.skipWord("deg")) {
            return degrees;
        }
        if (!cursor.skip('°')) {
            throw cursor.fail(units);
        }
        int degreesAt = cursor.numberAt();
        boolean isWhole = cursor.isWhole();
        cursor.skipSpaces();
        if (!cursor.isAtDigit()) {
            return degrees;
        }
        if (!isWhole) {
            throw cursor.fail(degreesAt, "degrees must be a whole number when minutes follow");
        }
        double minutes = readSixtieth("minutes");
        int minutesAt = cursor.numberAt();
        isWhole = cursor.isWhole();
        if (!cursor.skipPrime()) {
            throw cursor.fail("minutes must end in '");
        }
        cursor.skipSpaces();
        if (!cursor.isAtDigit()) {
            return Angle.ofParts(degrees, minutes, 0);
        }
        if (!isWhole) {
            throw cursor.fail(minutesAt, "minutes must be a whole number when seconds follow");
        }
        double seconds = readSixtieth("seconds");
        if (!cursor.skipDoublePrime()) {
            throw cursor.fail("seconds must end in \"");
        }
        return Angle.ofParts(degrees, minutes, seconds);
    }

    private double readSixtieth(String what) {
        double number = readNumber(what);
        if (number >= SIXTY) {
            throw cursor.fail(cursor.numberAt(), what + " must be below 60");
        }
        return number;
    }

    private void checkFinite(double degrees) {
        if (!Double.isFinite(degrees)) {
            throw cursor.failed(cursor.numberAt(), "number must be within the range of a double", "was beyond it");
        }
    }
}
