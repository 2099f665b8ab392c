package org.roofmaths.flashing;

/**
 * The two ways of making an outside corner in sheet metal.
 *
 * @since 0.1
 */
public enum CornerKind {
    /** Cut, lapped and welded; hot work, a fire risk on a roof. */
    WELDED("welded"),
    /** Worked out of the sheet with dressers, lead only. */
    BOSSED("bossed");

    private final String word;

    CornerKind(String word) {
        this.word = word;
    }

    /** Returns the lower-case word. */
    @Override
    public String toString() {
        return word;
    }
}
