package org.roofmaths.units;

import java.math.BigDecimal;

/**
 * Reads a text from left to right: numbers, symbols, spaces. A number is
 * {@code [-]digits[.digits][E[-]digits]}; the space may be an ordinary, a no-break or a narrow no-break one.
 */
final class Cursor {
    static final char PRIME = '\'';
    static final char DOUBLE_PRIME = '"';

    /** Longer than any number that a quantity prints, and short enough to keep the worst reading quick. */
    static final int MOST_NUMBER_CHARACTERS = 100;

    private static final int MOST_LONG_DIGITS = 18;
    private static final int MOST_EXPONENT_DIGITS = 3;

    private final String text;
    private int at;

    // The number read last. Where it is plain and short, its digits without the point are in `digits`.
    private int start;
    private int end;
    private long digits;
    private int decimals;
    private boolean isShort;

    Cursor(String text) {
        this.text = text;
    }

    int at() {
        return at;
    }

    int numberAt() {
        return start;
    }

    boolean isAtEnd() {
        return at == text.length();
    }

    void skipSpaces() {
        while (at < text.length() && isSpace(text.charAt(at))) {
            at++;
        }
    }

    private static boolean isSpace(char c) {
        return c == ' ' || c == '\u00a0' || c == '\u202f';
    }

    /** Passes over a minus, hyphen or true minus sign; says whether there was one. */
    boolean skipMinus() {
        return skip('-') || skip('\u2212');
    }

    boolean skip(char wanted) {
        if (at < text.length() && text.charAt(at) == wanted) {
            at++;
            return true;
        }
        return false;
    }

    /** Passes over a word if the text goes on with it and the word ends there. */
    boolean skipWord(String word) {
        if (text.startsWith(word, at) && !isWordCharacter(at + word.length())) {
            at += word.length();
            return true;
        }
        return false;
    }

    private boolean isWordCharacter(int index) {
        return index < text.length() && Character.isLetter(text.charAt(index));
    }

    boolean isAt(String wanted) {
        return text.startsWith(wanted, at);
    }

    /** Passes over a text if it stands here, whatever follows it; says whether it did. */
    boolean skipText(String wanted) {
        if (!isAt(wanted)) {
            return false;
        }
        at += wanted.length();
        return true;
    }

    /** Passes over a single prime in any of its typed forms. A doubled one is not a double prime. */
    boolean skipPrime() {
        return skip(PRIME) || skip('\u2032') || skip('\u2019');
    }

    /** Passes over a double prime in any of its typed forms. */
    boolean skipDoublePrime() {
        return skip(DOUBLE_PRIME) || skip('\u2033') || skip('\u201d');
    }

    /** Says whether the next character is a digit. */
    boolean isAtDigit() {
        return at < text.length() && isDigit(text.charAt(at));
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** Reads a number without its sign; {@code what} names it in the failure. */
    void readNumber(String what) {
        readDigits(what);
        if (skip('.')) {
            int point = at;
            readMoreDigits(what + " must have a digit after the point");
            decimals = at - point;
        }
        if (at < text.length() && (text.charAt(at) == 'E' || text.charAt(at) == 'e')) {
            readExponent(what);
        }
        end = at;
        if (end - start > MOST_NUMBER_CHARACTERS) {
            throw new QuantityParseException(
                    text,
                    start,
                    what + " must have at most " + MOST_NUMBER_CHARACTERS + " characters",
                    "had " + (end - start));
        }
    }

    /** Reads a whole number without its sign. */
    void readWhole(String what) {
        readDigits(what);
        end = at;
        if (!isShort) {
            throw new QuantityParseException(
                    text, start, what + " must have at most " + MOST_LONG_DIGITS + " digits", "had " + (end - start));
        }
    }

    private void readDigits(String what) {
        start = at;
        digits = 0;
        decimals = 0;
        isShort = true;
        readMoreDigits(what + " must start with a digit");
    }

    private void readMoreDigits(String expected) {
        if (!isAtDigit()) {
            throw fail(expected);
        }
        while (isAtDigit()) {
            digits = digits * 10 + (text.charAt(at) - '0');
            at++;
        }
        isShort = at - start <= MOST_LONG_DIGITS;
    }

    private void readExponent(String what) {
        at++;
        isShort = false;
        skip('-');
        int from = at;
        while (isAtDigit()) {
            at++;
        }
        if (at == from || at - from > MOST_EXPONENT_DIGITS) {
            at = from;
            throw fail(what + " must have an exponent of one to " + MOST_EXPONENT_DIGITS + " digits");
        }
    }

    /** Says whether the number read last was written with digits only. */
    boolean isWhole() {
        return isShort && decimals == 0;
    }

    /** The whole number read last. */
    long whole() {
        return digits;
    }

    /** Says whether {@link #digits} and {@link #decimals} hold the number read last. */
    boolean isShort() {
        return isShort;
    }

    long digits() {
        return digits;
    }

    int decimals() {
        return decimals;
    }

    double toDouble() {
        return Double.parseDouble(text.substring(start, end));
    }

    BigDecimal toDecimal() {
        return new BigDecimal(text.substring(start, end));
    }

    void end() {
        skipSpaces();
        if (!isAtEnd()) {
            throw fail("text must end here");
        }
    }

    QuantityParseException fail(String expected) {
        return fail(at, expected);
    }

    QuantityParseException fail(int index, String expected) {
        return new QuantityParseException(text, index, expected, found(index));
    }

    QuantityParseException failed(int index, String expected, String found) {
        return new QuantityParseException(text, index, expected, found);
    }

    private String found(int index) {
        if (index == text.length()) {
            return "the text ended";
        }
        int to = index;
        if (isDigit(text.charAt(index))) {
            while (to < text.length() && (isDigit(text.charAt(to)) || text.charAt(to) == '.')) {
                to++;
            }
            return "was " + text.substring(index, to);
        }
        while (to < text.length() && !isSpace(text.charAt(to)) && !isDigit(text.charAt(to))) {
            to++;
        }
        return "was \"" + text.substring(index, Math.max(to, index + 1)) + '"';
    }
}
