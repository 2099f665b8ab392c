package org.roofmaths.checks.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Holds the library against worked figures of old and new manuals, and against own derivations where none are printed.
 * A row agrees where the library answers at least one of its numbers and every answered one agrees; it cannot be
 * decided where the library offers none of them.
 */
class GeometryCasesTest {
    private static final Path CASES = Path.of("data", "geometry", "cases.csv");

    private static List<GeometryCase> cases() throws IOException {
        List<GeometryCase> cases = new ArrayList<>();
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(CASES)) {
            for (NamedCsvRecord row : reader) {
                cases.add(new GeometryCase(
                        row.getField("id"),
                        row.getField("topic"),
                        row.getField("given"),
                        row.getField("expected"),
                        row.getField("tolerance")));
            }
        }
        return cases;
    }

    @Test
    void no_answered_number_differs_from_its_row() throws IOException {
        List<String> differ = new ArrayList<>();
        Map<String, int[]> byTopic = new TreeMap<>();
        for (GeometryCase row : cases()) {
            Map<String, Object> answers = GeometryAnswers.to(row);
            int answered = 0;
            for (Map.Entry<String, String> wanted : row.expected().entrySet()) {
                String key = wanted.getKey();
                Object answer = answers.containsKey(key) ? answers.get(key) : answers.get(withoutUnit(key));
                if (answer == null || !isNumber(wanted.getValue())) {
                    continue;
                }
                answered++;
                double number = Double.parseDouble(wanted.getValue());
                double got = GeometryCase.in(key, answer);
                if (!(Math.abs(got - number) <= row.margin(key, number, answer))) {
                    differ.add(String.format(Locale.ROOT, "%s %s: expected %s, got %s", row.id, key, number, got));
                }
            }
            int[] counts = byTopic.computeIfAbsent(row.topic, topic -> new int[2]);
            counts[answered > 0 ? 0 : 1]++;
        }

        assertThat(differ).isEmpty();
        int agree = byTopic.values().stream().mapToInt(counts -> counts[0]).sum();
        int undecided = byTopic.values().stream().mapToInt(counts -> counts[1]).sum();
        // a change that answers fewer rows than before must say so here
        assertThat(agree).as("rows answered, by topic: " + text(byTopic)).isGreaterThanOrEqualTo(LEAST_ANSWERED);
        assertThat(agree + undecided).isEqualTo(189);
    }

    private static final int LEAST_ANSWERED = 138;

    private static String text(Map<String, int[]> byTopic) {
        List<String> parts = new ArrayList<>();
        byTopic.forEach((topic, counts) -> parts.add(topic + " " + counts[0] + " of " + (counts[0] + counts[1])));
        return String.join(", ", parts);
    }

    private static String withoutUnit(String key) {
        int at = key.lastIndexOf('_');
        return at < 0 ? key : key.substring(0, at);
    }

    private static boolean isNumber(String text) {
        return text.matches("-?[0-9.]+(e-?[0-9]+)?");
    }
}
