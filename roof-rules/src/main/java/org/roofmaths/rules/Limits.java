package org.roofmaths.rules;

import java.util.Comparator;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.RainfallIntensity;
import org.roofmaths.units.Range;
import org.roofmaths.units.Ratio;

/** Comparison at the resolution to which values are stored: a value that is a limit but for its last stored digit is the limit. */
final class Limits {
    /** Two lengths of a metre, each stored to a nanometre, give a ratio good to this. */
    private static final double RATIO_RESOLUTION = 1e-9;

    private Limits() {}

    static int compare(Length a, Length b) {
        return a.meetsLeast(b) ? a.meetsGreatest(b) ? 0 : 1 : -1;
    }

    static int compare(Pitch a, Pitch b) {
        return a.meetsLeast(b) ? a.meetsGreatest(b) ? 0 : 1 : -1;
    }

    static int compare(Ratio a, Ratio b) {
        double apart = a.toDouble() - b.toDouble();
        return Math.abs(apart) <= RATIO_RESOLUTION ? 0 : apart < 0 ? -1 : 1;
    }

    static int compare(Area a, Area b) {
        return a.compareTo(b);
    }

    static int compare(RainfallIntensity a, RainfallIntensity b) {
        return a.compareTo(b);
    }

    /** Tells whether a value lies in a range, where a value that counts as an end belongs to the range if the end does. */
    static <T extends Comparable<T>> boolean contains(Range<T> range, T value, Comparator<? super T> order) {
        if (range.isEmpty()) {
            return false;
        }
        int toLower = range.lower().map(end -> order.compare(value, end)).orElse(1);
        int toUpper = range.upper().map(end -> order.compare(value, end)).orElse(-1);
        return (toLower > 0 || toLower == 0 && range.isLowerIncluded())
                && (toUpper < 0 || toUpper == 0 && range.isUpperIncluded());
    }
}
