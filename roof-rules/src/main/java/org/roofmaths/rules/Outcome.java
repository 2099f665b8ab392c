package org.roofmaths.rules;

/**
 * How a check came out. Never more than this: no outcome says that a roof is sound.
 *
 * <p>In the order in which a list of checks is sorted: what falls short first.
 *
 * @since 0.1
 */
public enum Outcome {
    /** A row asks for more, or allows less, than was got. */
    FALLS_SHORT("falls short"),
    /** The answer hangs on something that was not told, or that only a person can judge. */
    NEEDS_JUDGEMENT("needs a person's judgement"),
    /** No row speaks of it: the document is silent, or the case lies outside its rows. */
    NOT_COVERED("not covered"),
    /** The row named is met; its conditions are still a person's to confirm. */
    MEETS("meets the row");

    private final String words;

    Outcome(String words) {
        this.words = words;
    }

    /** Returns the words, such as {@code falls short}. */
    @Override
    public String toString() {
        return words;
    }
}
