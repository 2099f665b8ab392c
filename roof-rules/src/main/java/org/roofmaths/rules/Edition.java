package org.roofmaths.rules;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.roofmaths.working.SourceKind;

/**
 * One edition of one document of one jurisdiction: its rows, and what it is.
 *
 * <p>An edition holds the rows that were read or found quoted, which may be a small part of the document; {@link #notFound()} says
 * what is known to be missing. Its tables are read when first asked for. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Edition implements RuleSet {
    private static final long serialVersionUID = 1L;

    private final transient String jurisdiction;
    private final transient String document;
    private final transient String id;
    private final transient List<Subject<?>> subjects;
    private final transient Set<Subject<?>> held;
    private final transient Tables tables;

    Edition(String jurisdiction, String document, String id, List<Subject<?>> subjects, Tables tables) {
        this.jurisdiction = jurisdiction;
        this.document = document;
        this.id = id;
        this.subjects = List.copyOf(subjects);
        this.held = Set.copyOf(subjects);
        this.tables = tables;
    }

    /** Where the rows of an edition come from, and what is said of it. */
    interface Tables {
        /** Returns what the edition is. */
        SourceInfo info();

        /** Returns the rows about a subject; empty if there are none. */
        <V> List<RuleRow<V>> rows(Subject<V> subject);
    }

    /** Rows that are at hand already. */
    private record AtHand(SourceInfo info, Map<Subject<?>, List<RuleRow<?>>> bySubject) implements Tables {
        @Override
        @SuppressWarnings("unchecked") // a row sits under its own subject
        public <V> List<RuleRow<V>> rows(Subject<V> subject) {
            return (List<RuleRow<V>>) (List<?>) bySubject.getOrDefault(subject, List.of());
        }
    }

    SourceInfo info() {
        return tables.info();
    }

    /** Returns the jurisdiction, such as {@code gb}. */
    public String jurisdiction() {
        return jurisdiction;
    }

    /** Returns the short name of the document, such as {@code nhbc-standards}. */
    public String document() {
        return document;
    }

    /** Returns the short name of the edition, such as {@code 2020}. */
    public String id() {
        return id;
    }

    /** Returns all three, such as {@code gb/nhbc-standards/2020}. */
    public String reference() {
        return jurisdiction + "/" + document + "/" + id;
    }

    /** Returns the title of the document. */
    public String title() {
        return info().get("title");
    }

    /** Returns who published it. */
    public String publisher() {
        return info().get("publisher");
    }

    /** Returns what standing the document has. */
    public SourceKind kind() {
        return info().kind();
    }

    /** Returns the edition as people name it, such as {@code 2011, amended 2016}. */
    public String editionName() {
        return info().get("edition");
    }

    /** Returns when it was published, as far as known: a year, a day, or {@code undated}. */
    public String published() {
        return info().get("published");
    }

    /** Returns the day from which it is in force; empty if that is not known, or hangs on adoption. */
    public Optional<LocalDate> inForceFrom() {
        return info().date("in-force-from");
    }

    /** Returns the last day on which it is in force; empty if it is in force still or that is not known. */
    public Optional<LocalDate> inForceTo() {
        return info().date("in-force-to");
    }

    /** Returns what is known or doubtful about these days; empty if nothing is. */
    public String datesNote() {
        return info().get("dates-note");
    }

    /** Returns where its figures were read. */
    public String whereRead() {
        return info().get("where-read");
    }

    /** Returns what was looked for and not found, so that there are no rows on it; empty if nothing is known to lack. */
    public String notFound() {
        return info().get("not-found");
    }

    @Override
    public List<Edition> editions() {
        return List.of(this);
    }

    @Override
    public List<Subject<?>> subjects() {
        return subjects;
    }

    @Override
    public <V> List<RuleRow<V>> rows(Subject<V> subject) {
        return held.contains(subject) ? tables.rows(subject) : List.of();
    }

    @Override
    public <V> Ruling<V> find(Subject<V> subject, Situation situation) {
        return Ruling.of(this, subject, Objects.requireNonNull(situation, "situation"));
    }

    /**
     * Returns what moved from this edition to another, row by row.
     *
     * @param other the other edition, usually the newer
     * @return the difference
     */
    public EditionDifference difference(Edition other) {
        return EditionDifference.between(this, Objects.requireNonNull(other, "other"));
    }

    /** An edition travels as its name if its rows are ours, else with its rows. */
    private Object writeReplace() {
        return Frozen.of(this);
    }

    private record Frozen(SourceInfo info, List<RuleRow<?>> rows) implements Serializable {
        static Frozen of(Edition edition) {
            List<RuleRow<?>> rows = edition.subjects.stream()
                    .<RuleRow<?>>flatMap(subject -> edition.rows(subject).stream())
                    .toList();
            return new Frozen(edition.info(), new ArrayList<>(rows));
        }

        private Object readResolve() {
            return ofRows(info, rows);
        }
    }

    /** Makes an edition of rows that are at hand. */
    static Edition ofRows(SourceInfo info, List<RuleRow<?>> rows) {
        Map<Subject<?>, List<RuleRow<?>>> bySubject = new LinkedHashMap<>();
        rows.forEach(row -> bySubject
                .computeIfAbsent(row.subject(), subject -> new ArrayList<>())
                .add(row));
        bySubject.replaceAll((subject, list) -> List.copyOf(list));
        return new Edition(
                info.jurisdiction,
                info.document,
                info.id,
                List.copyOf(bySubject.keySet()),
                new AtHand(info, bySubject));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Edition e
                && reference().equals(e.reference())
                && subjects.equals(e.subjects)
                && subjects.stream().allMatch(subject -> rows(subject).equals(e.rows(subject)));
    }

    @Override
    public int hashCode() {
        return reference().hashCode();
    }

    /** Returns the title, the edition and the kind of document in one line. */
    @Override
    public String toString() {
        return reference() + ": " + title() + ", edition " + editionName() + " (" + kind() + ")";
    }
}
