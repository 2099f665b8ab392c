package org.roofmaths.rules;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.working.Sourced;

/**
 * What a document says on a subject in a situation: a figure, that it is silent, or why there is no answer.
 *
 * <p>Immutable and thread-safe.
 *
 * @param <V> the type of the figure
 * @since 0.1
 */
public final class Ruling<V> implements Serializable {
    private static final long serialVersionUID = 1L;

    /** There is no figure to give; the message says why. */
    static final ProblemCode NO_FIGURE = ProblemCode.of(
            "rules.no-figure", "Give the figure yourself, tell the missing fact, or ask another document.");

    /**
     * What kind of answer a ruling is.
     *
     * @since 0.1
     */
    public enum Kind {
        /** A row holds: there is a figure. */
        FOUND,
        /** A row holds, and it says that the document gives no figure here. */
        SILENT,
        /** No row held speaks of the case: it lies outside the rows, or there are none. */
        NOT_COVERED,
        /** The answer hangs on a fact that was not told. */
        FACT_MISSING
    }

    private final Kind kind;
    private final Subject<V> subject;
    private final ArrayList<RuleRow<V>> rows;
    private final ArrayList<Fact<?>> missing;
    private final @Nullable String message;
    private final boolean speaksOfIt;

    private Ruling(
            Kind kind,
            Subject<V> subject,
            List<RuleRow<V>> rows,
            List<Fact<?>> missing,
            @Nullable String message,
            boolean speaksOfIt) {
        this.kind = kind;
        this.subject = subject;
        this.rows = new ArrayList<>(rows);
        this.missing = new ArrayList<>(missing);
        this.message = message;
        this.speaksOfIt = speaksOfIt;
    }

    /** Answers from the rows of one edition. */
    static <V> Ruling<V> of(Edition edition, Subject<V> subject, Situation situation) {
        List<RuleRow<V>> rows = edition.rows(subject);
        if (rows.isEmpty()) {
            return new Ruling<>(
                    Kind.NOT_COVERED,
                    subject,
                    List.of(),
                    List.of(),
                    edition.reference() + " holds no row on " + subject.words(),
                    false);
        }
        List<RuleRow<V>> open = new ArrayList<>();
        for (RuleRow<V> row : rows) {
            switch (row.match(situation)) {
                case YES -> {
                    return new Ruling<>(
                            row.value().isPresent() ? Kind.FOUND : Kind.SILENT,
                            subject,
                            List.of(row),
                            List.of(),
                            null,
                            true);
                }
                case UNKNOWN -> open.add(row);
                case NO -> {}
            }
        }
        return open.isEmpty() ? outside(edition, subject, situation, rows) : missing(edition, subject, situation, open);
    }

    private static <V> Ruling<V> missing(
            Edition edition, Subject<V> subject, Situation situation, List<RuleRow<V>> open) {
        List<Fact<?>> missing = open.stream()
                .flatMap(row -> row.conditionList().stream())
                .filter(condition -> condition.match(situation) == Condition.Match.UNKNOWN)
                .<Fact<?>>map(Condition::fact)
                .distinct()
                .toList();
        String facts = missing.stream().map(fact -> namedBy(open, fact)).collect(Collectors.joining(", the "));
        return new Ruling<>(
                Kind.FACT_MISSING,
                subject,
                open,
                missing,
                subject.words() + " depends on the " + facts + ", which " + (missing.size() == 1 ? "was" : "were")
                        + " not told (" + edition.reference() + ")",
                true);
    }

    /** Returns a fact with the choices that rows name, in the order of the fact; a size has none. */
    private static <T, V> String namedBy(List<RuleRow<V>> rows, Fact<T> fact) {
        String choices = fact.choices().stream()
                .filter(choice -> rows.stream()
                        .flatMap(row -> row.conditionList().stream())
                        .anyMatch(condition -> condition.fact().equals(fact) && condition.names(choice)))
                .map(fact::text)
                .collect(Collectors.joining(", "));
        return choices.isEmpty() ? fact.words() : fact.words() + " (" + choices + ")";
    }

    private static <V> Ruling<V> outside(
            Edition edition, Subject<V> subject, Situation situation, List<RuleRow<V>> rows) {
        List<RuleRow<V>> near = rows;
        // The choices first, one after another: the first that no row left allows is what the table lacks.
        for (Fact<?> fact : factsOf(rows, true)) {
            List<RuleRow<V>> left = near.stream()
                    .filter(row -> row.conditionList().stream()
                            .filter(condition -> condition.fact().equals(fact))
                            .allMatch(condition -> condition.match(situation) != Condition.Match.NO))
                    .toList();
            if (left.isEmpty()) {
                String there = near.stream()
                        .flatMap(row -> row.conditionList().stream())
                        .filter(condition -> condition.fact().equals(fact))
                        .map(Condition::toString)
                        .distinct()
                        .collect(Collectors.joining(", "));
                return new Ruling<>(
                        Kind.NOT_COVERED,
                        subject,
                        near,
                        List.of(),
                        subject.words() + " has no row for " + fact.words() + " " + told(situation, fact)
                                + "; there are rows for " + there + " (" + edition.reference() + ")",
                        !Facts.NAMES_THE_THING.contains(fact));
            }
            near = left;
        }
        return new Ruling<>(
                Kind.NOT_COVERED, subject, near, List.of(), outsideRanges(edition, subject, situation, near), true);
    }

    private static <V> String outsideRanges(
            Edition edition, Subject<V> subject, Situation situation, List<RuleRow<V>> near) {
        for (Fact<?> fact : factsOf(near, false)) {
            List<Condition<?>> asked = near.stream()
                    .<Condition<?>>flatMap(row -> row.conditionList().stream())
                    .filter(condition -> condition.fact().equals(fact))
                    .toList();
            if (asked.stream().allMatch(condition -> condition.match(situation) == Condition.Match.NO)) {
                long below = asked.stream()
                        .filter(condition -> condition.sideOf(situation) < 0)
                        .count();
                String side = below == asked.size() ? "below" : below == 0 ? "above" : "between";
                String ranges =
                        asked.stream().map(Condition::toString).distinct().collect(Collectors.joining(", "));
                return subject.words() + thing(situation) + " covers " + fact.words() + " " + ranges + "; "
                        + told(situation, fact) + " is " + side + (ranges.contains(", ") ? " them" : " it") + " ("
                        + edition.reference() + ", " + near.get(0).locus() + ")";
            }
        }
        return subject.words() + thing(situation) + " has no row for " + situation + " (" + edition.reference() + ", "
                + near.get(0).locus() + ")";
    }

    private static String told(Situation situation, Fact<?> fact) {
        return fact.text(Objects.requireNonNull(situation.facts().get(fact), fact.id()));
    }

    private static String thing(Situation situation) {
        return situation.get(Facts.UNIT_KIND).isPresent() ? " for " + told(situation, Facts.UNIT_KIND) : "";
    }

    private static <V> List<Fact<?>> factsOf(List<RuleRow<V>> rows, boolean choices) {
        Map<Fact<?>, Boolean> facts = new LinkedHashMap<>();
        rows.forEach(row -> row.conditionList().forEach(condition -> {
            if (!condition.isAny() && condition.fact().isChoice() == choices) {
                facts.put(condition.fact(), true);
            }
        }));
        return List.copyOf(facts.keySet());
    }

    /** Returns what kind of answer this is. */
    public Kind kind() {
        return kind;
    }

    /** Returns what was asked about. */
    public Subject<V> subject() {
        return subject;
    }

    /** Returns the figure with its citation; empty unless one was found. */
    public Optional<Sourced<V>> figure() {
        return kind == Kind.FOUND ? rows.get(0).figure() : Optional.empty();
    }

    /** Returns the row that holds; empty unless one was found or the document is silent. */
    public Optional<RuleRow<V>> row() {
        return kind == Kind.FOUND || kind == Kind.SILENT ? Optional.of(rows.get(0)) : Optional.empty();
    }

    /** Returns the rows concerned: the one that holds, or those that come nearest; empty if there are none. */
    public List<RuleRow<V>> rows() {
        return Collections.unmodifiableList(rows);
    }

    /** Returns the facts that were not told and on which the answer hangs; empty otherwise. */
    public List<Fact<?>> missing() {
        return Collections.unmodifiableList(missing);
    }

    /** Returns the answer in one sentence. */
    public String message() {
        if (message != null) {
            return message;
        }
        // Where a row holds it says everything; its text is made when asked for.
        RuleRow<V> row = rows.get(0);
        return kind == Kind.FOUND
                ? row.toString()
                : row.reference() + " is silent on " + subject.words() + " (" + row.locus() + "): " + row.note();
    }

    /** Tells whether the document has rows for this very thing, so that another document should not answer in its place. */
    boolean speaksOfIt() {
        return speaksOfIt;
    }

    /**
     * Returns the figure.
     *
     * @return the figure with its citation
     * @throws ProblemsException if there is none; its message says why
     */
    public Sourced<V> orThrow() {
        return figure().orElseThrow(() -> new ProblemsException(List.of(finding())));
    }

    /** Returns why there is no figure, as a finding. */
    Problem finding() {
        return Problem.finding(NO_FIGURE, subject.id(), kind.name(), "a row that holds", message(), List.of());
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Ruling<?> r
                && kind == r.kind
                && subject.equals(r.subject)
                && rows.equals(r.rows)
                && missing.equals(r.missing)
                && message().equals(r.message());
    }

    @Override
    public int hashCode() {
        return Objects.hash(kind, subject, rows);
    }

    /** Returns the answer in one sentence. */
    @Override
    public String toString() {
        return message();
    }
}
