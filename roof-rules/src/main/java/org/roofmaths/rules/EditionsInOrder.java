package org.roofmaths.rules;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Several editions, asked in a stated order; see {@link RuleSet#backedBy}.
 *
 * @since 0.1
 */
public final class EditionsInOrder implements RuleSet {
    private static final long serialVersionUID = 1L;

    private final ArrayList<Edition> editions;

    EditionsInOrder(List<Edition> editions) {
        this.editions = new ArrayList<>(editions);
    }

    @Override
    public List<Edition> editions() {
        return Collections.unmodifiableList(editions);
    }

    @Override
    public List<Subject<?>> subjects() {
        return Subjects.all().stream()
                .filter(subject ->
                        editions.stream().anyMatch(edition -> edition.subjects().contains(subject)))
                .collect(Collectors.toUnmodifiableList());
    }

    @Override
    public <V> List<RuleRow<V>> rows(Subject<V> subject) {
        return editions.stream()
                .flatMap(edition -> edition.rows(subject).stream())
                .toList();
    }

    @Override
    public <V> Ruling<V> find(Subject<V> subject, Situation situation) {
        Ruling<V> best = null;
        for (Edition edition : editions) {
            Ruling<V> ruling = edition.find(subject, situation);
            if (ruling.kind() != Ruling.Kind.SILENT && ruling.speaksOfIt()) {
                return ruling;
            }
            if (best == null || rank(ruling) > rank(best)) {
                best = ruling;
            }
        }
        return java.util.Objects.requireNonNull(best, "editions");
    }

    /** An edition that is silent in words says more than one without rows for the thing, and that more than one without any rows. */
    private static int rank(Ruling<?> ruling) {
        return ruling.kind() == Ruling.Kind.SILENT ? 2 : ruling.rows().isEmpty() ? 0 : 1;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof EditionsInOrder e && editions.equals(e.editions);
    }

    @Override
    public int hashCode() {
        return editions.hashCode();
    }

    /** Returns the editions in order, such as {@code gb/nhbc-standards/2024, then gb/nhbc-standards/2021}. */
    @Override
    public String toString() {
        return editions.stream().map(Edition::reference).collect(Collectors.joining(", then "));
    }
}
