package org.roofmaths.units;

import java.io.Serializable;
import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.util.BitSet;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * How the formats write a number: the digits, the decimal sign, the minus sign and the sign between thousands, by the
 * plain rule of {@code toString} or by a locale.
 */
record NumberStyle(@Nullable Locale locale, boolean hasThousands, char zero, char point, char thousands, char minus)
        implements Serializable {
    private static final int DIGITS_IN_A_GROUP = 3;
    private static final char NARROW_NO_BREAK_SPACE = '\u202f';

    /** A point, a hyphen for minus, and no sign between thousands. */
    static final NumberStyle PLAIN = new NumberStyle(null, false, '0', '.', NARROW_NO_BREAK_SPACE, '-');

    NumberStyle withThousands() {
        return new NumberStyle(locale, true, zero, point, thousands, minus);
    }

    NumberStyle withLocale(Locale wanted) {
        DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Objects.requireNonNull(wanted, "locale"));
        return new NumberStyle(
                wanted,
                hasThousands,
                symbols.getZeroDigit(),
                symbols.getDecimalSeparator(),
                symbols.getGroupingSeparator(),
                symbols.getMinusSign());
    }

    /** Writes a number with as many decimals as its scale. */
    String text(BigDecimal number) {
        String plain = number.abs().toPlainString();
        int whole = plain.indexOf('.') < 0 ? plain.length() : plain.indexOf('.');
        StringBuilder text = new StringBuilder();
        if (number.signum() < 0) {
            text.append(minus);
        }
        for (int i = 0; i < plain.length(); i++) {
            boolean startsGroup = i > 0 && i < whole && (whole - i) % DIGITS_IN_A_GROUP == 0;
            if (hasThousands && startsGroup) {
                text.append(thousands);
            }
            text.append(i == whole ? point : (char) (plain.charAt(i) - '0' + zero));
        }
        return text.toString();
    }

    /** Reads a text whose numbers are in this style by a parser of the plain style. */
    <T> T read(String text, Function<String, T> parser) {
        Objects.requireNonNull(text, "text");
        BitSet separators = separators(text);
        StringBuilder plain = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            if (!separators.get(i)) {
                plain.append(plain(text, i));
            }
        }
        try {
            return parser.apply(plain.toString());
        } catch (QuantityParseException e) {
            throw new QuantityParseException(text, given(e.index(), separators), e.expected(), e.found());
        }
    }

    /** The place in the given text of a character of the plain one, which lacks the separators. */
    private static int given(int plainIndex, BitSet separators) {
        int index = separators.nextClearBit(0);
        for (int i = 0; i < plainIndex; i++) {
            index = separators.nextClearBit(index + 1);
        }
        return index;
    }

    /** Where thousands are set apart: after one to three digits that start a number, and before each three. */
    private BitSet separators(String text) {
        BitSet separators = new BitSet();
        for (int i = 0; hasThousands && i < text.length(); i++) {
            if (isDigit(text.charAt(i))) {
                int at = endOfDigits(text, i);
                boolean isAfterPoint = i > 0 && text.charAt(i - 1) == point;
                boolean mayHaveMore = at - i <= DIGITS_IN_A_GROUP && !isAfterPoint;
                while (mayHaveMore
                        && isThousands(text, at)
                        && endOfDigits(text, at + 1) == at + 1 + DIGITS_IN_A_GROUP) {
                    separators.set(at);
                    at = at + 1 + DIGITS_IN_A_GROUP;
                }
                // What stands here is no digit.
                i = at;
            }
        }
        return separators;
    }

    private int endOfDigits(String text, int from) {
        int to = from;
        while (to < text.length() && isDigit(text.charAt(to))) {
            to++;
        }
        return to;
    }

    private boolean isThousands(String text, int index) {
        if (index == text.length()) {
            return false;
        }
        char c = text.charAt(index);
        return c == thousands || isSpace(c) && isSpace(thousands);
    }

    private char plain(String text, int index) {
        char c = text.charAt(index);
        if (isDigit(c)) {
            return (char) (c - zero + '0');
        }
        if (c == point) {
            return '.';
        }
        if (c == minus) {
            return '-';
        }
        if (c == '.' || c == thousands && !isSpace(c)) {
            throw new QuantityParseException(
                    text, index, "a number must be written like " + text(new BigDecimal("1234.5")), "was \"" + c + '"');
        }
        return c;
    }

    private boolean isDigit(char c) {
        return c >= zero && c <= zero + 9;
    }

    private static boolean isSpace(char c) {
        return c == ' ' || c == '\u00a0' || c == NARROW_NO_BREAK_SPACE;
    }

    @Override
    public String toString() {
        return (hasThousands ? ", with thousands apart" : "")
                + (locale == null ? "" : ", for " + locale.toLanguageTag());
    }
}
