package org.roofmaths.rules;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.roofmaths.covering.UnitKind;

/**
 * Whether a kind of covering suits a roof by the rows of an edition: least pitch, headlap, gauge and reach, each with its margin and
 * conditions.
 *
 * <p>The pitch is that of the rafters at their flattest part. The unit's own declaration, the exposure and the site are still to be
 * shown: no outcome says that a roof is sound. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Suitability implements Serializable {
    private static final long serialVersionUID = 1L;

    /** Always checked, told or not. */
    private static final List<Subject<?>> ALWAYS = List.of(Subjects.LEAST_PITCH, Subjects.LEAST_HEADLAP);

    /** Checked where the fact was told and the document speaks of the thing. */
    private static final List<Subject<?>> IF_TOLD = List.of(
            Subjects.GREATEST_HEADLAP_SHARE,
            Subjects.LEAST_HEADLAP_SHARE,
            Subjects.LEAST_GAUGE,
            Subjects.GREATEST_GAUGE,
            Subjects.GREATEST_RAFTER_LENGTH,
            Subjects.GREATEST_PLAN_LENGTH);

    private final Situation situation;
    private final ArrayList<Check<?>> checks;

    private Suitability(Situation situation, List<Check<?>> checks) {
        this.situation = situation;
        this.checks = new ArrayList<>(checks);
    }

    /**
     * Returns whether the covering of a situation suits it.
     *
     * @param rules the edition, or editions in order
     * @param situation what is known: at least the kind of unit and the pitch, better also exposure, headlap, gauge and rafter length
     * @return the answer
     */
    public static Suitability of(RuleSet rules, Situation situation) {
        Objects.requireNonNull(rules, "rules");
        Objects.requireNonNull(situation, "situation");
        List<Check<?>> checks = new ArrayList<>();
        ALWAYS.forEach(subject -> checks.add(rules.check(subject, situation)));
        for (Subject<?> subject : IF_TOLD) {
            boolean told =
                    subject.measuredBy().filter(situation.facts()::containsKey).isPresent();
            if (told && rules.find(subject, situation).speaksOfIt()) {
                checks.add(rules.check(subject, situation));
            }
        }
        checks.sort(Comparator.comparing(Check::outcome));
        return new Suitability(situation, checks);
    }

    /**
     * Returns the answer for every kind of unit that some row on least pitch names, in the order of {@link UnitKind}. What the situation
     * tells of a unit (kind, headlap, gauge) is left out, since it belongs to one kind only.
     *
     * @param rules the edition, or editions in order
     * @param situation what is known of the roof itself
     * @return one answer for each kind; empty if no row names one
     */
    public static List<Suitability> ofEveryKind(RuleSet rules, Situation situation) {
        Situation roof = situation.without(Facts.UNIT_KIND, Facts.HEADLAP, Facts.HEADLAP_SHARE, Facts.GAUGE);
        List<RuleRow<?>> rows = new ArrayList<>(rules.rows(Subjects.LEAST_PITCH));
        return Arrays.stream(UnitKind.values())
                .filter(kind -> rows.stream().anyMatch(row -> names(row, kind)))
                .map(kind -> of(rules, roof.withUnit(kind)))
                .toList();
    }

    private static boolean names(RuleRow<?> row, UnitKind kind) {
        return row.conditionList().stream()
                .filter(condition -> condition.fact().equals(Facts.UNIT_KIND) && !condition.isAny())
                .anyMatch(condition -> condition.match(Situation.of(kind)) == Condition.Match.YES);
    }

    /** Returns what was known. */
    public Situation situation() {
        return situation;
    }

    /** Returns every check, what falls short first. */
    public List<Check<?>> checks() {
        return Collections.unmodifiableList(checks);
    }

    /** Returns the gravest outcome of the checks: one that falls short, else one that needs judgement, else one not covered. */
    public Outcome outcome() {
        return checks.get(0).outcome();
    }

    /** Returns what a person has to confirm, each thing once. */
    public List<String> conditions() {
        return checks.stream()
                .flatMap(check -> check.conditions().stream())
                .distinct()
                .toList();
    }

    /** Returns the outcome and every check, one a line, and what is still to be shown. */
    public String toText() {
        return situation + ": " + outcome() + "\n"
                + checks.stream().map(check -> "  " + check.toText()).collect(Collectors.joining("\n"))
                + "\n  The unit's own declaration, the exposure and the rafter length are still to be shown.";
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Suitability s && situation.equals(s.situation) && checks.equals(s.checks);
    }

    @Override
    public int hashCode() {
        return Objects.hash(situation, checks);
    }

    /** Returns the outcome and every check, one a line. */
    @Override
    public String toString() {
        return toText();
    }
}
