package org.roofmaths.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Finds the places between two ranges of one column that no row of a table covers. */
final class Gaps {
    private Gaps() {}

    /** Rows that differ in one column of ranges alone are one ladder; its rungs must join. */
    static List<String> of(Edition edition, Subject<?> subject) {
        List<String> gaps = new ArrayList<>();
        List<? extends RuleRow<?>> rows = edition.rows(subject);
        List<Fact<?>> sizes = rows.stream()
                .flatMap(row -> row.conditionList().stream())
                .filter(condition -> !condition.fact().isChoice() && !condition.isAny())
                .<Fact<?>>map(Condition::fact)
                .distinct()
                .toList();
        for (Fact<?> size : sizes) {
            Map<String, List<Condition<?>>> ladders = new LinkedHashMap<>();
            for (RuleRow<?> row : rows) {
                String others = row.conditions().entrySet().stream()
                        .filter(cell -> !cell.getKey().equals(size))
                        .map(cell -> cell.getKey().id() + " " + cell.getValue())
                        .collect(Collectors.joining(", "));
                row.conditionList().stream()
                        .filter(condition -> condition.fact().equals(size) && !condition.isAny())
                        .forEach(condition -> ladders.computeIfAbsent(others, key -> new ArrayList<>())
                                .add(condition));
            }
            ladders.forEach((others, rungs) -> gaps.addAll(between(edition, subject, size, others, rungs)));
        }
        return gaps;
    }

    private static List<String> between(
            Edition edition, Subject<?> subject, Fact<?> size, String others, List<Condition<?>> rungs) {
        List<String> gaps = new ArrayList<>();
        List<Condition<?>> sorted =
                rungs.stream().sorted(Comparator.comparing(Gaps::start)).toList();
        for (int i = 1; i < sorted.size(); i++) {
            boolean areSizes = sorted.get(i - 1).isPoint() && sorted.get(i).isPoint();
            if (!areSizes && !sorted.get(i - 1).joins(sorted.get(i))) {
                gaps.add(edition.reference() + " " + subject.id() + " " + size.id()
                        + (others.isEmpty() ? "" : " (" + others + ")") + ": nothing between "
                        + sorted.get(i - 1).text() + " and " + sorted.get(i).text());
            }
        }
        return gaps;
    }

    private static double start(Condition<?> condition) {
        return condition.lowerEnd();
    }
}
