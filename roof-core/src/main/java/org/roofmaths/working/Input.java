package org.roofmaths.working;

import java.io.Serializable;

/**
 * A figure that went into a sum, and the term it stood for.
 *
 * @param term which number it was
 * @param figure its value and origin
 * @since 0.1
 */
public record Input(Term<?> term, Figure<?> figure) implements Serializable {

    /** Returns for example {@code run = 3600 mm (given)}. */
    @Override
    public String toString() {
        return term + " = " + figure;
    }
}
