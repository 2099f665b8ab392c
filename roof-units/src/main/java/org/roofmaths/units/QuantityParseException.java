package org.roofmaths.units;

import java.util.Objects;

/**
 * Thrown when a text cannot be read as a quantity. It says where the reading stopped and what had to stand there.
 * <p>
 * For example, {@code Length.parse("13 9/15 in")} fails with
 * <pre>
 * "13 9/15 in": denominator must be 1, 2, 4, 8, 16, 32 or 64, but was 15 (at index 5)
 * </pre>
 * In the message, not in {@link #text()}, a text over 60 characters is cut short with an ellipsis.
 *
 * @since 0.1
 */
public final class QuantityParseException extends IllegalArgumentException {
    private static final int MOST_CHARACTERS_SHOWN = 60;

    private final String text;
    private final int index;
    private final String expected;
    private final String found;

    /**
     * Makes an exception whose message is
     * <code>"<i>text</i>": <i>expected</i>, but <i>found</i> (at index <i>index</i>)</code>.
     *
     * @param text  the whole text that was to be read
     * @param index  where in the text reading stopped, counted from 0; the length of the text if it ended too soon
     * @param expected  what must stand there, as a clause: {@code denominator must be 1, 2 or 4}
     * @param found  what stood there instead, as a clause: {@code was 15} or {@code the text ended}
     * @since 0.1
     */
    public QuantityParseException(String text, int index, String expected, String found) {
        super('"' + shown(Objects.requireNonNull(text, "text")) + "\": " + Objects.requireNonNull(expected, "expected")
                + ", but " + Objects.requireNonNull(found, "found") + " (at index " + index + ")");
        this.text = text;
        this.index = index;
        this.expected = expected;
        this.found = found;
    }

    /**
     * Returns the whole text that was to be read.
     *
     * @return the text, uncut
     * @since 0.1
     */
    public String text() {
        return text;
    }

    /**
     * Returns where in the text reading stopped.
     *
     * @return the index, counted from 0; equal to the length of the text if the text ended too soon
     * @since 0.1
     */
    public int index() {
        return index;
    }

    /**
     * Returns what had to stand at the index, for example
     * {@code denominator must be 1, 2, 4, 8, 16, 32 or 64}.
     *
     * @return the clause
     * @since 0.1
     */
    public String expected() {
        return expected;
    }

    /**
     * Returns what stood at the index instead, for example {@code was 15}.
     *
     * @return the clause
     * @since 0.1
     */
    public String found() {
        return found;
    }

    private static String shown(String text) {
        return text.length() <= MOST_CHARACTERS_SHOWN ? text : text.substring(0, MOST_CHARACTERS_SHOWN) + "…";
    }
}
