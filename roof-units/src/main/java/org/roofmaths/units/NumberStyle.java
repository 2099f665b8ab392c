package org.roofmaths.units;

import java.io.Serializable;
import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
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
        StringBuilder plain = new StringBuilder();
        // Where each plain character came from, to point at it in a failure.
        int[] from = new int[text.length() + 1];
        for (int i = 0; i < text.length(); i++) {
            if (!isBetweenThousands(text, i)) {
                from[plain.length()] = i;
                plain.append(plain(text, i));
            }
        }
        from[plain.length()] = text.length();
        try {
            return parser.apply(plain.toString());
        } catch (QuantityParseException e) {
            throw new QuantityParseException(text, from[e.index()], e.expected(), e.found());
        }
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

    /** Says whether a separator stands here after one to three digits or another group, and before just three. */
    private boolean isBetweenThousands(String text, int index) {
        return hasThousands
                && isThousands(text.charAt(index))
                && digitsAfter(text, index) == DIGITS_IN_A_GROUP
                && isAfterGroup(text, index);
    }

    private boolean isThousands(char c) {
        return c == thousands || isSpace(c) && isSpace(thousands);
    }

    private int digitsAfter(String text, int index) {
        int to = index + 1;
        while (to < text.length() && isDigit(text.charAt(to))) {
            to++;
        }
        return to - index - 1;
    }

    private boolean isAfterGroup(String text, int index) {
        int from = index;
        while (from > 0 && isDigit(text.charAt(from - 1))) {
            from--;
        }
        int digits = index - from;
        if (digits == 0 || digits > DIGITS_IN_A_GROUP || from > 0 && text.charAt(from - 1) == point) {
            return false;
        }
        // The start of the number may be any short group, a later group is full.
        return from == 0
                || !isThousands(text.charAt(from - 1))
                || !isAfterDigit(text, from - 1)
                || digits == DIGITS_IN_A_GROUP && isAfterGroup(text, from - 1);
    }

    private boolean isAfterDigit(String text, int index) {
        return index > 0 && isDigit(text.charAt(index - 1));
    }

    @Override
    public String toString() {
        return (hasThousands ? ", with thousands apart" : "")
                + (locale == null ? "" : ", for " + locale.toLanguageTag());
    }
}
