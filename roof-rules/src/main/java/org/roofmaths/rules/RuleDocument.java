package org.roofmaths.rules;

import java.util.List;
import org.roofmaths.working.SourceKind;

/**
 * A document of which rule data holds one edition or more.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class RuleDocument {
    private final String id;
    private final List<Edition> editions;

    RuleDocument(String id, List<Edition> editions) {
        this.id = id;
        this.editions = List.copyOf(editions);
    }

    /** Returns the short name of the document, which never changes, such as {@code nhbc-standards}. */
    public String id() {
        return id;
    }

    /** Returns the jurisdiction, such as {@code gb}. */
    public String jurisdiction() {
        return editions.get(0).jurisdiction();
    }

    /** Returns the title, as its last edition has it. */
    public String title() {
        return editions.get(editions.size() - 1).title();
    }

    /** Returns what standing the document has. */
    public SourceKind kind() {
        return editions.get(editions.size() - 1).kind();
    }

    /** Returns its editions, oldest first; those without a date last. */
    public List<Edition> editions() {
        return editions;
    }

    /** Returns the short name, the title and the editions in one line. */
    @Override
    public String toString() {
        return id + ": " + title() + " (" + kind() + "; "
                + String.join(", ", editions.stream().map(Edition::id).toList()) + ")";
    }
}
