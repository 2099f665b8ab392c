package org.roofmaths.checks.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.roofmaths.examples.JobFile;
import org.roofmaths.sheet.Job;
import org.roofmaths.sheet.SiteSheet;

/**
 * Holds the site sheets of the two example jobs against the pages worked by hand, row by row at the digits printed. A row that the
 * library does not answer stands in known-gaps.csv with a reason, one that differs in known-differences.csv with a sentence.
 */
class HandPagesTest {

    @Test
    void fernside_agrees_with_its_page() throws IOException {
        compare("fernside", FernsideProbes.of(probes("fernside")));
    }

    @Test
    void tollbar_agrees_with_its_page() throws IOException {
        compare("tollbar", TollbarProbes.of(probes("tollbar")));
    }

    private static SheetProbes probes(String job) throws IOException {
        return new SheetProbes(
                job,
                SiteSheet.of(Job.attemptFromTree(JobFile.read(job).orThrow()).orThrow()));
    }

    private static void compare(String job, Map<String, Supplier<Object>> probes) throws IOException {
        Map<String, String> gaps = HandPage.gaps();
        Map<String, String> differences = HandPage.differences();
        List<String> wrong = new ArrayList<>();
        Map<String, String> report = new LinkedHashMap<>();
        int agree = 0;
        int differ = 0;
        int without = 0;
        List<HandPage.Row> rows = HandPage.rows(job);
        for (HandPage.Row row : rows) {
            Supplier<Object> probe = probes.get(row.id());
            if (probe == null) {
                without++;
                if (!gaps.containsKey(row.id())) {
                    wrong.add(row.id() + ": nothing answers it and no reason is given: " + row.what());
                }
                report.put(row.id(), "not covered: " + gaps.get(row.id()));
                continue;
            }
            Object got = probe.get();
            boolean same = sameAtPrintedDigits(row, got);
            if (gaps.containsKey(row.id())) {
                wrong.add(row.id() + ": is answered now, but still stands in the list of gaps");
            }
            if (same && differences.containsKey(row.id())) {
                wrong.add(row.id() + ": agrees now, but still stands in the list of differences");
            }
            if (!same && !differences.containsKey(row.id())) {
                wrong.add(row.id() + ": " + row.what() + " is " + row.value() + " " + row.unit() + " by hand, but "
                        + got);
            }
            agree += same ? 1 : 0;
            differ += same ? 0 : 1;
            report.put(row.id(), same ? "agrees" : "differs: " + differences.get(row.id()));
        }
        write(job, report, agree, differ, without);
        assertThat(wrong).isEmpty();
        assertThat(probes.keySet())
                .isSubsetOf(rows.stream().map(HandPage.Row::id).toList());
        assertThat(agree).isGreaterThan(rows.size() / 2);
    }

    private static boolean sameAtPrintedDigits(HandPage.Row row, Object got) {
        return got instanceof BigDecimal number && !row.unit().equals("word")
                ? number.setScale(row.digits(), RoundingMode.HALF_UP).compareTo(new BigDecimal(row.value())) == 0
                : row.value().equals(got.toString());
    }

    private static void write(String job, Map<String, String> report, int agree, int differ, int without)
            throws IOException {
        StringBuilder text = new StringBuilder(
                "# " + job + ": " + agree + " agree, " + differ + " differ, " + without + " not covered\n\n");
        report.forEach((id, result) ->
                text.append("- ").append(id).append(": ").append(result).append('\n'));
        Files.createDirectories(Path.of("target"));
        Files.writeString(Path.of("target/hand-" + job + ".md"), text);
    }
}
