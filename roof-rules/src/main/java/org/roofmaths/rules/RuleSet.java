package org.roofmaths.rules;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.roofmaths.working.Figure;

/**
 * Something that can be asked for figures: one edition of a document, or several editions asked in a stated order.
 *
 * <p>Figures of different documents are never merged: each answer comes from one row and names it.
 *
 * @since 0.1
 */
public sealed interface RuleSet extends Serializable permits Edition, EditionsInOrder {

    /** Returns the editions asked, in order. */
    List<Edition> editions();

    /** Returns what there are rows about, in a fixed order. */
    List<Subject<?>> subjects();

    /**
     * Returns the rows about a subject, in the order of the documents and of their files.
     *
     * @param <V> the type of the figures
     * @param subject the subject
     * @return the rows; empty if there are none
     */
    <V> List<RuleRow<V>> rows(Subject<V> subject);

    /**
     * Returns what is said on a subject in a situation.
     *
     * @param <V> the type of the figure
     * @param subject the subject
     * @param situation what is known of the roof
     * @return the ruling
     */
    <V> Ruling<V> find(Subject<V> subject, Situation situation);

    /**
     * Holds what the situation tells against what is asked: its pitch against the least pitch, its headlap against the least
     * headlap, and so on for every subject that is {@linkplain Subject#measuredBy() measured by} a fact. Never throws.
     *
     * @param <V> the type of the figure
     * @param subject the subject
     * @param situation what is known of the roof
     * @return the check; it needs a person's judgement if what was got was not told
     */
    default <V> Check<V> check(Subject<V> subject, Situation situation) {
        return Check.of(
                find(subject, situation),
                subject.measuredBy().flatMap(situation::get).map(Figure::given));
    }

    /**
     * Holds a value against what is asked. Never throws.
     *
     * @param <V> the type of the figure
     * @param subject the subject
     * @param situation what is known of the roof
     * @param got the value got; for a subject whose figures are ranges, the range from the least to the greatest found
     * @return the check
     */
    default <V> Check<V> check(Subject<V> subject, Situation situation, V got) {
        return check(subject, situation, Figure.given(got));
    }

    /**
     * Holds a figure against what is asked, and keeps the trail of the figure. Never throws.
     *
     * @param <V> the type of the figure
     * @param subject the subject
     * @param situation what is known of the roof
     * @param got the figure got
     * @return the check
     */
    default <V> Check<V> check(Subject<V> subject, Situation situation, Figure<V> got) {
        return Check.of(find(subject, situation), java.util.Optional.of(Objects.requireNonNull(got, "got")));
    }

    /**
     * Returns these editions with others behind them: an edition is asked only where all before it hold no row on that very thing
     * (subject, kind of unit, detail and metal) or are silent. An edition that speaks of the thing but does not cover the
     * case, or needs a fact, is not passed over.
     *
     * @param others the editions to ask next, in order
     * @return all of them, in order
     */
    default RuleSet backedBy(RuleSet... others) {
        List<Edition> all = new ArrayList<>(editions());
        Arrays.stream(others).forEach(other -> all.addAll(other.editions()));
        return new EditionsInOrder(all);
    }
}
