package org.roofmaths.working;

import java.io.Serializable;
import org.immutables.value.Value;
import org.roofmaths.internal.style.StagedStyle;

/**
 * Where a sourced figure stands: document, edition, place in it, and how we know it.
 *
 * <p>Prints as an inspector would write it: {@code Example code, edition 2018, table 4 row 2 (standard; read)}.
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public interface Citation extends Serializable {

    /** Returns what standing the document has. */
    SourceKind kind();

    /** Returns the document's title, with its publisher where that is part of how people name it. */
    String title();

    /** Returns the edition as people name it, such as {@code 2018}. */
    String edition();

    /** Returns the place in the document: page, table, clause. */
    String locus();

    /** Returns the identifier of the row in the rule data; it never changes once published. */
    String rowId();

    /** Returns the figure as printed there, unit included where the print has one. */
    String asPrinted();

    /** Returns how we know the figure. */
    Provenance provenance();

    /**
     * Starts a citation; the builder asks for the parts in the order in which a person would say them.
     *
     * @return the first stage of the builder
     */
    static CitationBuilderStages.BuildStart builder() {
        return CitationBuilderStages.start();
    }

    /**
     * Returns the citation in one line.
     *
     * @return for example {@code Example code, edition 2018, table 4 row 2 (standard; read)}
     */
    default String toText() {
        return title() + ", edition " + edition() + ", " + locus() + " (" + kind() + "; " + provenance() + ")";
    }
}
