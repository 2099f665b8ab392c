package org.roofmaths.rules;

import java.util.List;
import java.util.Objects;

/**
 * The same questions put to several editions or documents, one answer each, none merged.
 *
 * <pre>{@code
 * SideBySide.of(gb.edition("nhbc-standards", "2020"), gb.edition("nhbc-standards", "2024")).check(Subjects.LEAST_PITCH, situation)
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class SideBySide {
    private final List<RuleSet> sides;

    private SideBySide(List<RuleSet> sides) {
        this.sides = sides;
    }

    /**
     * Returns editions side by side.
     *
     * @param sides the editions, in the order in which their answers are wanted
     * @return them side by side
     */
    public static SideBySide of(RuleSet... sides) {
        return new SideBySide(List.of(sides));
    }

    /** Returns the editions, in order. */
    public List<RuleSet> sides() {
        return sides;
    }

    /**
     * Returns what each says on a subject.
     *
     * @param <V> the type of the figure
     * @param subject the subject
     * @param situation what is known of the roof
     * @return one ruling for each, in order
     */
    public <V> List<Ruling<V>> find(Subject<V> subject, Situation situation) {
        return sides.stream().map(side -> side.find(subject, situation)).toList();
    }

    /**
     * Holds what the situation tells against what each asks.
     *
     * @param <V> the type of the figure
     * @param subject the subject
     * @param situation what is known of the roof
     * @return one check for each, in order
     */
    public <V> List<Check<V>> check(Subject<V> subject, Situation situation) {
        return sides.stream().map(side -> side.check(subject, situation)).toList();
    }

    /**
     * Holds a value against what each asks.
     *
     * @param <V> the type of the figure
     * @param subject the subject
     * @param situation what is known of the roof
     * @param got the value got
     * @return one check for each, in order
     */
    public <V> List<Check<V>> check(Subject<V> subject, Situation situation, V got) {
        Objects.requireNonNull(got, "got");
        return sides.stream().map(side -> side.check(subject, situation, got)).toList();
    }

    /**
     * Tells whether the covering suits the roof by each.
     *
     * @param situation what is known of the roof
     * @return one answer for each, in order
     */
    public List<Suitability> suitability(Situation situation) {
        return sides.stream().map(side -> Suitability.of(side, situation)).toList();
    }

    /** Returns the editions in one line. */
    @Override
    public String toString() {
        return String.join(" | ", sides.stream().map(RuleSet::toString).toList());
    }
}
