package org.roofmaths.drawing;

import java.util.List;

/** What stands on the sheet, in millimetres of paper with y up. */
final class Placed {
    private Placed() {}

    /** A shape. */
    sealed interface Item permits Stroke, Area, Curve {}

    /** A line, with a head at its end or without. */
    record Stroke(LineKind kind, double x1, double y1, double x2, double y2, boolean headed) implements Item {}

    /** A closed shape; x and y by turns. */
    record Area(String meaning, LineKind kind, Fill fill, double[] corners) implements Item {
        @Override
        public boolean equals(Object other) {
            return this == other;
        }

        @Override
        public int hashCode() {
            return System.identityHashCode(this);
        }

        @Override
        public String toString() {
            return meaning;
        }
    }

    /** A part of a circle. */
    record Curve(LineKind kind, double x1, double y1, double x2, double y2, double radius, boolean large)
            implements Item {}

    /** A layer of them. */
    record Group(String name, List<Item> shapes) {}

    /** A dimension: its line, the two lines out to it, and its number. */
    record Measured(String name, Stroke line, Stroke first, Stroke second, PlacedText text) {}
}
