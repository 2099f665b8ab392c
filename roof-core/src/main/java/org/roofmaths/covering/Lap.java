package org.roofmaths.covering;

/**
 * How many courses a unit covers: the next one only, or the next but one as well.
 *
 * @since 0.1
 */
public enum Lap {
    /** Each unit covers the head of the course below; its sides lock or overlap. */
    SINGLE("single-lap"),
    /** Each unit covers the head of the next course but one; its sides only touch, so joints are broken by half a unit. */
    DOUBLE("double-lap");

    private final String words;

    Lap(String words) {
        this.words = words;
    }

    /** Returns {@code single-lap} or {@code double-lap}. */
    @Override
    public String toString() {
        return words;
    }
}
