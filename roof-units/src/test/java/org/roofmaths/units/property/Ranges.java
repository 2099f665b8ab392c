package org.roofmaths.units.property;

import org.roofmaths.units.Range;

/** The ten forms of a range. */
final class Ranges {
    private Ranges() {}

    static <T extends Comparable<T>> Range<T> of(int form, T lower, T upper) {
        return switch (form) {
            case 0 -> Range.closed(lower, upper);
            case 1 -> Range.open(lower, upper);
            case 2 -> Range.closedOpen(lower, upper);
            case 3 -> Range.openClosed(lower, upper);
            case 4 -> Range.atLeast(lower);
            case 5 -> Range.above(lower);
            case 6 -> Range.atMost(upper);
            case 7 -> Range.below(upper);
            case 8 -> Range.all();
            default -> Range.empty();
        };
    }
}
