package org.roofmaths.problem;

/**
 * How much a problem stops.
 *
 * @since 0.1
 */
public enum Severity {
    /** The input is wrong: nothing can be worked out from it. */
    ERROR("error"),
    /** The input is sound but something does not fit: what fits is still worked out. */
    FINDING("finding"),
    /** Nothing is wrong, but a person should know. */
    NOTICE("notice");

    private final String word;

    Severity(String word) {
        this.word = word;
    }

    /** Returns the lower-case word used in trees and text. */
    @Override
    public String toString() {
        return word;
    }
}
