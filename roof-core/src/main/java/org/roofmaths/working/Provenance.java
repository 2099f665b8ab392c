package org.roofmaths.working;

/**
 * How we know a sourced figure: seen on its page, seen quoted, remembered, trade habit, or own arithmetic.
 *
 * @since 0.1
 */
public enum Provenance {
    /** Seen on a page of the source itself. */
    READ("read", 1),
    /** Seen in another text that cites the source. */
    QUOTED("quoted", 2),
    /** Recalled, not seen. Usable, but every result that rests on it says so. */
    MEMORY("memory", 3),
    /** Trade habit, or a page without standing. */
    PRACTICE("practice", 4),
    /** Own arithmetic on other figures; it adds no doubt of its own. */
    DERIVED("derived", 0);

    private final String word;
    private final int weakness;

    Provenance(String word, int weakness) {
        this.word = word;
        this.weakness = weakness;
    }

    /**
     * Tells whether this is a weaker ground to stand on than another. From strong to weak: derived, read, quoted, memory,
     * practice.
     *
     * @param other the provenance to compare with
     * @return true if this one is the weaker
     */
    public boolean isWeakerThan(Provenance other) {
        return weakness > other.weakness;
    }

    /** Returns the lower-case word used in rule data and printed text, such as {@code quoted}. */
    @Override
    public String toString() {
        return word;
    }
}
