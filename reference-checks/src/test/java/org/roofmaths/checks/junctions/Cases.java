package org.roofmaths.checks.junctions;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/** Reads published cases, puts each to an adapter, and sorts them into agree, differ and cannot decide. */
final class Cases {
    /** One row, its given values by name. */
    record Case(String id, String topic, Map<String, String> given, Map<String, String> expected, String tolerance) {
        double number(String key) {
            if (!given.containsKey(key)) {
                throw new AssertionError(id + " gives no " + key + ": " + given);
            }
            return Double.parseDouble(given.get(key));
        }

        String word(String key) {
            return given.getOrDefault(key, "");
        }

        boolean has(String key) {
            return given.containsKey(key);
        }
    }

    /** What the library answers, by the names that the row expects. */
    static final class Answers extends LinkedHashMap<String, Object> {
        private static final long serialVersionUID = 1L;

        static Answers of(String name, Object value) {
            return new Answers().and(name, value);
        }

        Answers and(String name, Object value) {
            put(name, value);
            return this;
        }
    }

    /** The three lists. */
    record Report(List<String> agree, Map<String, String> differ, Map<String, String> cannotDecide) {}

    private Cases() {}

    /**
     * Compares every row.
     *
     * @param file the rows
     * @param cannotDecide why a row is not answered, by id or by topic
     * @param adapter gives the library's answers
     */
    static Report compare(Path file, Map<String, String> cannotDecide, Function<Case, Answers> adapter)
            throws IOException {
        Report report = new Report(new ArrayList<>(), new TreeMap<>(), new TreeMap<>());
        try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(file, StandardCharsets.UTF_8)) {
            for (NamedCsvRecord row : rows) {
                Case one = new Case(
                        row.getField("id"),
                        row.getField("topic"),
                        parsed(row.getField("given")),
                        parsed(row.getField("expected")),
                        row.getField("tolerance"));
                String reason = cannotDecide.getOrDefault(one.id(), cannotDecide.get(one.topic()));
                if (reason != null) {
                    report.cannotDecide().put(one.id(), reason);
                    continue;
                }
                Answers answers = adapter.apply(one);
                String wrong = "";
                for (Map.Entry<String, String> expected : one.expected().entrySet()) {
                    Object got = answers.get(expected.getKey());
                    if (got == null || !agrees(expected.getValue(), got, one.tolerance())) {
                        wrong += expected + ", library: " + got + "; ";
                    }
                }
                if (wrong.isEmpty()) {
                    report.agree().add(one.id());
                } else {
                    report.differ().put(one.id(), wrong);
                }
            }
        }
        return report;
    }

    private static Map<String, String> parsed(String keysAndValues) {
        Map<String, String> map = new LinkedHashMap<>();
        for (String part : keysAndValues.split("; ", -1)) {
            int equals = part.indexOf('=');
            if (equals > 0 && !part.startsWith("note=")) {
                map.put(part.substring(0, equals), part.substring(equals + 1));
            }
        }
        return map;
    }

    private static boolean agrees(String expected, Object got, String tolerance) {
        if (!(got instanceof Number number)) {
            return expected.equals(got);
        }
        double value = number.doubleValue();
        double wanted = Double.parseDouble(expected);
        if (tolerance.startsWith("printed ")) {
            int digits = Integer.parseInt(tolerance.substring("printed ".length()));
            BigDecimal rounded = new BigDecimal(value).setScale(digits, RoundingMode.HALF_UP);
            return rounded.compareTo(new BigDecimal(expected)) == 0;
        }
        if (tolerance.equals("exact")) {
            // the library stores lengths to the nanometre and works in doubles: exact to ten digits
            return Math.abs(value - wanted) <= 1e-10 * Math.max(1, Math.abs(wanted));
        }
        double allowed = Double.parseDouble(tolerance.substring(4));
        return Math.abs(value - wanted)
                <= (tolerance.startsWith("abs ") ? allowed : allowed * (wanted == 0 ? 1 : Math.abs(wanted)));
    }
}
