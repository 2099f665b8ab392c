package org.roofmaths.checks.hand;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A page of a job worked by hand, and the list of its rows that the library does not answer, each with a reason. */
final class HandPage {
    private static final Path FOLDER = Path.of("data/hand");

    /** One row: what was worked out, the value printed, its unit, and how many digits stand after the point. */
    record Row(String id, String step, String what, String value, String unit, int digits) {}

    private HandPage() {}

    static List<Row> rows(String job) throws IOException {
        try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(FOLDER.resolve(job + ".csv"))) {
            return csv.stream().map(HandPage::row).toList();
        }
    }

    private static Row row(NamedCsvRecord line) {
        String digits = line.getField("digits");
        if (line.getField("id").isBlank() || line.getField("value").isBlank()) {
            throw new IllegalStateException("line " + line.getStartingLineNumber() + ": id and value must be there");
        }
        return new Row(
                line.getField("id"),
                line.getField("step"),
                line.getField("what"),
                line.getField("value"),
                line.getField("unit"),
                digits.isBlank() ? 0 : Integer.parseInt(digits));
    }

    /** The rows without an answer in the library, with the reason for each. */
    static Map<String, String> gaps() throws IOException {
        return reasons("known-gaps.csv");
    }

    /** The rows whose value differs, with a sentence that says why and whose reading it is. */
    static Map<String, String> differences() throws IOException {
        return reasons("known-differences.csv");
    }

    private static Map<String, String> reasons(String file) throws IOException {
        Map<String, String> reasons = new LinkedHashMap<>();
        try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(FOLDER.resolve(file))) {
            csv.forEach(line -> {
                if (line.getField("reason").isBlank()) {
                    throw new IllegalStateException(
                            file + ", line " + line.getStartingLineNumber() + ": a reason must be there");
                }
                reasons.put(line.getField("id"), line.getField("reason"));
            });
        }
        return reasons;
    }
}
