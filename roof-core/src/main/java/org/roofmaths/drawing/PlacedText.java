package org.roofmaths.drawing;

/**
 * A text on the sheet: where it stands, in millimetres of paper with y up, and how far it is turned against the clock.
 *
 * <p>A letter is taken to be 0.6 of its height wide, a wide one (Chinese, Japanese, Korean, pictographs) 1.1.
 */
record PlacedText(String role, String text, double x, double y, double size, Anchor anchor, double turn) {
    private static final double LETTER = 0.6;
    private static final double WIDE_LETTER = 1.1;
    private static final int FIRST_WIDE = 0x1100;
    private static final double ABOVE_LINE = 0.85;
    private static final double BELOW_LINE = 0.25;

    static double width(String text, double size) {
        return text.codePoints()
                .mapToDouble(letter -> (letter < FIRST_WIDE ? LETTER : WIDE_LETTER) * size)
                .sum();
    }

    /** Returns the box round the turned text, sides level and plumb. */
    Box box() {
        double width = width(text, size);
        double left = anchor == Anchor.START ? 0 : anchor == Anchor.MIDDLE ? -width / 2 : -width;
        Box box = new Box();
        double cos = StrictMath.cos(turn);
        double sin = StrictMath.sin(turn);
        for (double dx : new double[] {left, left + width}) {
            for (double dy : new double[] {-BELOW_LINE * size, ABOVE_LINE * size}) {
                box.add(x + dx * cos - dy * sin, y + dx * sin + dy * cos);
            }
        }
        return box;
    }

    PlacedText moved(double dx, double dy) {
        return new PlacedText(role, text, x + dx, y + dy, size, anchor, turn);
    }

    /** A rectangle that grows. */
    static final class Box {
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;

        void add(double x, double y) {
            left = StrictMath.min(left, x);
            right = StrictMath.max(right, x);
            low = StrictMath.min(low, y);
            high = StrictMath.max(high, y);
        }

        void add(Box other) {
            if (!other.isEmpty()) {
                add(other.left, other.low);
                add(other.right, other.high);
            }
        }

        boolean isEmpty() {
            return left > right;
        }

        boolean overlaps(Box other) {
            return left < other.right && other.left < right && low < other.high && other.low < high;
        }
    }
}
