package org.roofmaths.units;

import java.util.function.Function;

/** Reads a part of a text, with failures that point into the whole. */
final class Parts {
    private Parts() {}

    static <T> T read(String text, int from, int to, Function<String, T> parser) {
        String part = text.substring(from, to);
        try {
            return parser.apply(part);
        } catch (QuantityParseException e) {
            String found = e.index() == part.length() ? "that part of the text ended" : e.found();
            throw new QuantityParseException(text, from + e.index(), e.expected(), found);
        }
    }
}
