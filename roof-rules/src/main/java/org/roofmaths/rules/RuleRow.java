package org.roofmaths.rules;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roofmaths.units.Range;
import org.roofmaths.working.Citation;
import org.roofmaths.working.Provenance;
import org.roofmaths.working.Sourced;

/**
 * One row of a document's table: a figure, when it holds, where it stands and how we know it.
 *
 * <p>Rows can be listed and read without computing anything. Immutable and thread-safe.
 *
 * @param <V> the type of the figure
 * @since 0.1
 */
public final class RuleRow<V> implements Serializable {
    private static final long serialVersionUID = 1L;

    private final Subject<V> subject;
    private final String reference;
    private final ArrayList<Condition<?>> conditions;

    @SuppressWarnings("serial") // the values of subjects are serializable
    private final @Nullable V value;

    private final Citation citation;
    private final String unit;
    private final String seenIn;
    private final ArrayList<String> toConfirm;
    private final String note;

    RuleRow(
            Subject<V> subject,
            String reference,
            List<Condition<?>> conditions,
            @Nullable V value,
            Citation citation,
            String unit,
            String seenIn,
            List<String> toConfirm,
            String note) {
        this.subject = subject;
        this.reference = reference;
        this.conditions = new ArrayList<>(conditions);
        this.value = value;
        this.citation = citation;
        this.unit = unit;
        this.seenIn = seenIn;
        this.toConfirm = new ArrayList<>(toConfirm);
        this.note = note;
    }

    /** Returns the identifier of the row; it never changes once published. */
    public String id() {
        return citation.rowId();
    }

    /** Returns what the row is about. */
    public Subject<V> subject() {
        return subject;
    }

    /** Returns jurisdiction, document and edition, such as {@code gb/nhbc-standards/2020}. */
    public String reference() {
        return reference;
    }

    /** Returns what the row asks of each fact it depends on, as the rule data writes it, such as {@code [30°..35°)}. */
    public Map<Fact<?>, String> conditions() {
        Map<Fact<?>, String> texts = new LinkedHashMap<>();
        conditions.forEach(condition -> texts.put(condition.fact(), condition.text()));
        return Collections.unmodifiableMap(texts);
    }

    /**
     * Returns the sizes for which the row holds.
     *
     * @param <T> the type of the size
     * @param fact a fact that is a size, such as the gauge
     * @return the range; all sizes if the row does not depend on it
     */
    public <T extends Comparable<T>> Range<T> rangeOf(Fact<T> fact) {
        return conditions.stream()
                .filter(condition -> condition.fact().equals(fact))
                .findFirst()
                .flatMap(Condition::range)
                .map(range -> RuleRow.<T>cast(range))
                .orElse(Range.all());
    }

    @SuppressWarnings("unchecked") // the range of a condition has the type of its fact
    private static <T extends Comparable<T>> Range<T> cast(Range<?> range) {
        return (Range<T>) range;
    }

    /** Returns the figure; empty where the document is silent. */
    public Optional<V> value() {
        return Optional.ofNullable(value);
    }

    /** Returns the unit of the print, such as {@code mm}. */
    public String unit() {
        return unit;
    }

    /** Returns the figure as printed. */
    public String asPrinted() {
        return citation.asPrinted();
    }

    /** Returns the place in the document: page, table, clause. */
    public String locus() {
        return citation.locus();
    }

    /** Returns how we know the figure. */
    public Provenance provenance() {
        return citation.provenance();
    }

    /** Returns the page or text in which the figure was seen. */
    public String seenIn() {
        return seenIn;
    }

    /** Returns what a person has to confirm before the row may be relied on; empty if nothing. */
    public List<String> toConfirm() {
        return Collections.unmodifiableList(toConfirm);
    }

    /** Returns what else is worth knowing; empty if nothing. */
    public String note() {
        return note;
    }

    /** Returns the citation of the row. */
    public Citation citation() {
        return citation;
    }

    /** Returns the figure with its citation; empty where the document is silent. */
    public Optional<Sourced<V>> figure() {
        return value().map(figure -> Sourced.of(figure, citation));
    }

    List<Condition<?>> conditionList() {
        return conditions;
    }

    /** Returns how a situation stands to the whole row: no if one condition fails, unknown if a fact is missing. */
    Condition.Match match(Situation situation) {
        Condition.Match match = Condition.Match.YES;
        for (Condition<?> condition : conditions) {
            Condition.Match one = condition.match(situation);
            if (one == Condition.Match.NO) {
                return one;
            }
            match = one == Condition.Match.UNKNOWN ? one : match;
        }
        return match;
    }

    /** Tells whether some situation could satisfy this row and another. */
    boolean overlaps(RuleRow<?> other) {
        for (Condition<?> condition : conditions) {
            for (Condition<?> theirs : other.conditions) {
                if (theirs.fact().equals(condition.fact()) && !condition.overlaps(theirs)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Tells whether two rows say the same under the same conditions. */
    boolean saysTheSameAs(RuleRow<?> other) {
        return Objects.equals(value, other.value) && conditions().equals(other.conditions());
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof RuleRow<?> r
                && reference.equals(r.reference)
                && citation.equals(r.citation)
                && saysTheSameAs(r);
    }

    @Override
    public int hashCode() {
        return Objects.hash(reference, id());
    }

    /** Returns the figure and its citation in one line. */
    @Override
    public String toString() {
        return subject.words() + ": " + (value == null ? "silent" : value) + " (" + id() + "; " + citation.toText()
                + ")";
    }
}
