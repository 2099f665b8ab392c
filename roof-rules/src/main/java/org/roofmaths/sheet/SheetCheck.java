package org.roofmaths.sheet;

import java.util.Objects;
import org.roofmaths.rules.Check;

/**
 * A check on a site sheet: what was got, held against a row of a document.
 *
 * @param label what was checked, in a builder's words
 * @param check the check, with its row, its margin and what would mend it
 * @since 0.1
 */
public record SheetCheck(String label, Check<?> check) implements SheetItem {

    /** Refuses null. */
    public SheetCheck {
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(check, "check");
    }

    /** Returns the label and the check in words. */
    @Override
    public String toString() {
        return label + ": " + check.toText();
    }
}
