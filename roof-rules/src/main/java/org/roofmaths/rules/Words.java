package org.roofmaths.rules;

import java.util.Locale;

/** The lower-case hyphened words of the rule data, and the enum constants they stand for. */
final class Words {
    private Words() {}

    /** Returns the word of a constant: {@code CLAY_PLAIN_TILE} is {@code clay-plain-tile}. */
    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
