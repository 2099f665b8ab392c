package org.roofmaths.units;

import java.io.Serializable;
import java.util.Objects;

/**
 * A length together with the direction in which it was measured, such as an overhang of 50 mm level.
 * <p>
 * Whoever types an overhang or a thickness says how it was measured; whoever uses it asks for the direction the sum
 * needs. {@link #to(Direction, Pitch)} holds the sums. Immutable and thread-safe.
 * <pre>{@code
 * Offset.level(Length.ofMillimetres(50)).to(Direction.ON_SLOPE, Pitch.ofDegrees(35))       // 61.038729 mm
 * Offset.squareToSlope(Length.ofMillimetres(45)).to(Direction.PLUMB, Pitch.ofDegrees(40))  // 58.743328 mm
 * }</pre>
 *
 * @param length  the distance; it may be negative
 * @param direction  how it was measured
 * @since 0.1
 */
public record Offset(Length length, Direction direction) implements Serializable {
    /**
     * Keeps the two parts.
     *
     * @since 0.1
     */
    public Offset {
        Objects.requireNonNull(length, "length");
        Objects.requireNonNull(direction, "direction");
    }

    /**
     * Returns an offset measured level.
     *
     * @param length  the distance
     * @return the offset
     * @since 0.1
     */
    public static Offset level(Length length) {
        return new Offset(length, Direction.LEVEL);
    }

    /**
     * Returns an offset measured plumb.
     *
     * @param length  the distance
     * @return the offset
     * @since 0.1
     */
    public static Offset plumb(Length length) {
        return new Offset(length, Direction.PLUMB);
    }

    /**
     * Returns an offset measured along the slope.
     *
     * @param length  the distance
     * @return the offset
     * @since 0.1
     */
    public static Offset onSlope(Length length) {
        return new Offset(length, Direction.ON_SLOPE);
    }

    /**
     * Returns an offset measured at right angles to the slope.
     *
     * @param length  the distance
     * @return the offset
     * @since 0.1
     */
    public static Offset squareToSlope(Length length) {
        return new Offset(length, Direction.SQUARE_TO_SLOPE);
    }

    /**
     * Reads an offset: a length as {@link Length#parse} reads it, then {@code level}, {@code plumb},
     * {@code on the slope} or {@code square to the slope}. For example {@code 50 mm level}.
     *
     * @param text  the whole text
     * @return the offset
     * @throws QuantityParseException if the text is anything else
     * @since 0.1
     */
    public static Offset parse(String text) {
        Objects.requireNonNull(text, "text");
        String trimmed = text.stripTrailing();
        for (Direction direction : Direction.values()) {
            String ending = ' ' + direction.words();
            if (trimmed.endsWith(ending)) {
                return new Offset(Parts.read(text, 0, trimmed.length() - ending.length(), Length::parse), direction);
            }
        }
        throw new QuantityParseException(
                text,
                trimmed.length(),
                "an offset must end in level, plumb, on the slope or square to the slope",
                "the text ended");
    }

    /**
     * Returns this offset as it measures in another direction at a slope, to the nearest nanometre.
     * <p>
     * Level, plumb and on the slope are the three sides of one triangle: the run {@code r}, the rise {@code h} and the
     * slope {@code s} of a move up or down the face. Square to the slope is a thickness {@code t} between two faces of
     * one pitch {@code p}, and only its plumb depth {@code h} has a meaning of its own.
     * <table>
     * <caption>The sums, by the direction of this offset</caption>
     * <tr><th>of this offset</th><th>level</th><th>plumb</th><th>on the slope</th><th>square to the slope</th></tr>
     * <tr><th>level r</th><td>r</td><td>r tan p</td><td>r / cos p</td><td>refused</td></tr>
     * <tr><th>plumb h</th><td>h / tan p</td><td>h</td><td>h / sin p</td><td>h cos p</td></tr>
     * <tr><th>on the slope s</th><td>s cos p</td><td>s sin p</td><td>s</td><td>refused</td></tr>
     * <tr><th>square to the slope t</th><td>refused</td><td>t / cos p</td><td>refused</td><td>t</td></tr>
     * </table>
     * A plumb offset is therefore read as a rise when a level or sloping distance is asked for, and as a depth when a
     * thickness is. For example, at 40° a thickness of 45 mm is 58.74 mm plumb.
     *
     * @param wanted  the direction to measure in
     * @param pitch  the pitch of the face
     * @return the length in that direction, with the sign of this offset
     * @throws IllegalArgumentException if the one direction cannot be had from the other
     * @throws ArithmeticException if the answer is beyond the range of a length
     * @since 0.1
     */
    public Length to(Direction wanted, Pitch pitch) {
        Objects.requireNonNull(wanted, "wanted");
        Objects.requireNonNull(pitch, "pitch");
        if (wanted == direction) {
            return length;
        }
        return switch (direction) {
            case LEVEL ->
                switch (wanted) {
                    case PLUMB -> pitch.riseOver(length);
                    case ON_SLOPE -> pitch.slopeOver(length);
                    default -> throw refused(wanted);
                };
            case PLUMB ->
                switch (wanted) {
                    case LEVEL -> pitch.runOver(length);
                    case ON_SLOPE -> length.dividedBy(pitch.sin());
                    default -> length.times(pitch.cos());
                };
            case ON_SLOPE ->
                switch (wanted) {
                    case LEVEL -> pitch.runAlong(length);
                    case PLUMB -> pitch.riseAlong(length);
                    default -> throw refused(wanted);
                };
            case SQUARE_TO_SLOPE -> {
                if (wanted != Direction.PLUMB) {
                    throw refused(wanted);
                }
                yield length.dividedBy(pitch.cos());
            }
        };
    }

    private IllegalArgumentException refused(Direction wanted) {
        return new IllegalArgumentException(this + " cannot be measured " + wanted.words()
                + ": a thickness square to the slope and a distance along it have no part of each other");
    }

    /**
     * Returns the length and its direction: {@code 50 mm level}.
     *
     * @return the text, which {@link #parse} reads back to an equal offset
     */
    @Override
    public String toString() {
        return length + " " + direction.words();
    }
}
