package org.roofmaths.rules;

import java.util.Optional;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Range;
import org.roofmaths.units.Ratio;

/** Comparison at the resolution to which values are stored: a value that is a limit but for its last stored digit is the limit. */
final class Limits {
    /** Two lengths of a metre, each stored to a nanometre, give a ratio good to this. */
    private static final double RATIO_RESOLUTION = 1e-9;

    private static final double CLEARLY_APART_DEGREES = 2 * Pitch.STORAGE_RESOLUTION.toDegrees();

    private Limits() {}

    private static int compare(Length a, Length b) {
        return a.meetsLeast(b) ? a.meetsGreatest(b) ? 0 : 1 : -1;
    }

    private static int compare(Pitch a, Pitch b) {
        double apart = a.toDegrees() - b.toDegrees();
        // The exact comparison is slow, and only matters close to the resolution.
        if (Math.abs(apart) > CLEARLY_APART_DEGREES) {
            return apart < 0 ? -1 : 1;
        }
        return a.meetsLeast(b) ? a.meetsGreatest(b) ? 0 : 1 : -1;
    }

    private static int compare(Ratio a, Ratio b) {
        double apart = a.toDouble() - b.toDouble();
        return Math.abs(apart) <= RATIO_RESOLUTION ? 0 : apart < 0 ? -1 : 1;
    }

    /** Compares two values of one kind; a kind without a resolution of its own is compared exactly. */
    @SuppressWarnings({"unchecked", "rawtypes"}) // both are of the kind of one fact or subject
    static int compare(Object a, Object b) {
        if (a instanceof Length length) {
            return compare(length, (Length) b);
        }
        if (a instanceof Pitch pitch) {
            return compare(pitch, (Pitch) b);
        }
        if (a instanceof Ratio ratio) {
            return compare(ratio, (Ratio) b);
        }
        return ((Comparable) a).compareTo(b);
    }

    /** Tells whether a value lies in a range, where a value that counts as an end belongs to the range if the end does. */
    static boolean contains(Range<?> range, Object value) {
        if (range.isEmpty()) {
            return false;
        }
        Optional<?> lower = range.lower();
        int toLower = lower.isEmpty() ? 1 : compare(value, lower.get());
        Optional<?> upper = range.upper();
        int toUpper = upper.isEmpty() ? -1 : compare(value, upper.get());
        return (toLower > 0 || toLower == 0 && range.isLowerIncluded())
                && (toUpper < 0 || toUpper == 0 && range.isUpperIncluded());
    }
}
