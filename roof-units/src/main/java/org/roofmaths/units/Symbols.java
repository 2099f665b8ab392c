package org.roofmaths.units;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** The unit symbols that one kind of quantity reads, each with the sum that turns its number into the stored one. */
final class Symbols {
    private record Symbol(String text, DoubleUnaryOperator toStored) {}

    private final String what;
    private final List<Symbol> symbols = new ArrayList<>();
    private final StringBuilder shown = new StringBuilder();
    private boolean mayBeBare;

    Symbols(String what) {
        this.what = what;
    }

    /** Adds a symbol. One that is only a typed form of another (m2 for m²) is not named in messages. */
    Symbols with(String symbol, DoubleUnaryOperator toStored) {
        symbols.add(new Symbol(symbol, toStored));
        if (isPrinted(symbol)) {
            shown.append(shown.isEmpty() ? "" : ", ").append(symbol);
        }
        return this;
    }

    private static boolean isPrinted(String symbol) {
        return symbol.indexOf('2') < 0 && symbol.indexOf('3') < 0;
    }

    /** Lets the unit be left out; the number is then the stored one. */
    Symbols orBare() {
        mayBeBare = true;
        return this;
    }

    /** Reads a whole text: number, unit, end. */
    double read(String text) {
        Cursor cursor = new Cursor(text);
        cursor.skipSpaces();
        boolean isNegative = cursor.skipMinus();
        cursor.readNumber(what);
        double number = cursor.toDouble();
        int numberAt = cursor.numberAt();
        cursor.skipSpaces();
        double stored = symbolAt(cursor).applyAsDouble(isNegative ? -number : number) + 0.0;
        cursor.end();
        if (!Double.isFinite(stored)) {
            throw cursor.failed(numberAt, what + " must be within the range of a double", "was beyond it");
        }
        return stored;
    }

    private DoubleUnaryOperator symbolAt(Cursor cursor) {
        // No symbol of a kind begins another of it, so the first that fits is the one.
        for (Symbol symbol : symbols) {
            if (cursor.skipText(symbol.text())) {
                return symbol.toStored();
            }
        }
        if (mayBeBare && cursor.isAtEnd()) {
            return DoubleUnaryOperator.identity();
        }
        throw cursor.fail("unit must be " + lastCommaAsOr(shown.toString()));
    }

    private static String lastCommaAsOr(String list) {
        int comma = list.lastIndexOf(", ");
        return comma < 0 ? list : list.substring(0, comma) + " or " + list.substring(comma + 2);
    }
}
