package org.roofmaths.sheet;

import java.util.Objects;

/**
 * A sentence on a site sheet: a remark, a caution, a question to be settled, a step of work.
 *
 * @param kind what the sentence is for
 * @param text the sentence
 * @since 0.1
 */
public record SheetSentence(Kind kind, String text) implements SheetItem {

    /** Checks that there is a kind and a text. */
    public SheetSentence {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(text, "text");
    }

    /** What a sentence is for. */
    public enum Kind {
        /** Something to know. */
        REMARK,
        /** Something that can hurt people or the building. */
        CAUTION,
        /** A step of the chain that this job does not have, and why. */
        DOES_NOT_APPLY,
        /** A step of work. */
        STEP,
        /** A stop in the work: look before it is covered. */
        HOLD_POINT
    }
}
