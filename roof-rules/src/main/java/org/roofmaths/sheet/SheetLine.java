package org.roofmaths.sheet;

import java.util.Objects;
import org.roofmaths.working.Figure;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Term;

/**
 * A number on a site sheet, with the way to its working.
 *
 * <p>The text shows the number as a person needs it on site, rounded; {@link #figure()} holds it in full.
 *
 * @since 0.1
 */
public final class SheetLine implements SheetItem {
    private static final long serialVersionUID = 1L;

    private final String label;
    private final String shown;
    private final HasWorking source;
    private final Term<?> term;

    private SheetLine(String label, String shown, HasWorking source, Term<?> term) {
        this.label = Objects.requireNonNull(label, "label");
        this.shown = Objects.requireNonNull(shown, "shown");
        this.source = Objects.requireNonNull(source, "source");
        this.term = Objects.requireNonNull(term, "term");
    }

    static SheetLine of(String label, String shown, HasWorking source, Term<?> term) {
        return new SheetLine(label, shown, source, term);
    }

    /** Returns what the number is, in a builder's words. */
    public String label() {
        return label;
    }

    /** Returns the number as printed. */
    public String shown() {
        return shown;
    }

    /** Returns the term under which the number is found in its working. */
    public Term<?> term() {
        return term;
    }

    /** Returns the number in full, with its working or its source. */
    public Figure<?> figure() {
        return source.working().figure(term);
    }

    /** Returns for example {@code slope length: 3714 mm}. */
    @Override
    public String toString() {
        return label + ": " + shown;
    }
}
