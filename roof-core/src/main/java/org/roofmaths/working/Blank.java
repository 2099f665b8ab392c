package org.roofmaths.working;

import java.io.Serializable;

/**
 * A blank on a working and its answer.
 *
 * @param letter the letter printed on the sheet, such as {@code a}
 * @param term which number is asked for
 * @param answer its value
 * @since 0.1
 */
public record Blank(String letter, Term<?> term, Object answer) implements Serializable {

    /** Returns for example {@code (a) rise = 2520.747138 mm}. */
    @Override
    public String toString() {
        return "(" + letter + ") " + term + " = " + answer;
    }
}
