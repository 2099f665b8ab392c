package org.roofmaths.drawing;

import java.util.List;

/** A shape on the sheet, in millimetres of paper with y up. */
sealed interface Placed {

    /** A line, with a head at its end or without. */
    record Stroke(LineKind kind, double x1, double y1, double x2, double y2, boolean headed) implements Placed {}

    /** A closed shape; x and y by turns. */
    record Area(String meaning, LineKind kind, Fill fill, double[] corners) implements Placed {
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
    record Curve(LineKind kind, double x1, double y1, double x2, double y2, double radius, boolean large) implements Placed {}

    /** A layer of them. */
    record Group(String name, List<Placed> shapes) {}

    /** A dimension: its line, the two lines out to it, and its number. */
    record Measured(String name, Stroke line, Stroke first, Stroke second, PlacedText text) {}
}
