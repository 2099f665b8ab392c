package org.roofmaths.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.roofmaths.working.Provenance;

/** The page of sources is made from the rule data; this makes it, and fails while the page kept differs. */
class SourcesPageTest {
    private static final Path PAGE = Path.of("../docs/sources.md");
    private static final Path NOT_FOUND = Path.of("src/main/resources/org/roofmaths/rules/data/not-found.properties");

    @Test
    void the_page_of_sources_is_current() throws IOException {
        String made = page();
        if (Boolean.getBoolean("roofmaths.write")) {
            Files.createDirectories(PAGE.getParent());
            Files.writeString(PAGE, made);
        }
        assertThat(Files.readString(PAGE))
                .as("docs/sources.md is made from the rule data; to make it anew:"
                        + " mvn -pl roof-rules -am test -Dtest=SourcesPageTest -Dsurefire.failIfNoSpecifiedTests=false"
                        + " -Droofmaths.write=true")
                .isEqualTo(made);
    }

    private static String page() throws IOException {
        StringBuilder page = new StringBuilder("""
                # Sources of the rule data

                Made from the rule data by a test; do not edit. Each row of the data names its place in the document and how the
                figure is known: **read** on a page of the document, **quoted** in a text that cites it, from **memory**, trade
                **practice** (or a page without standing), or **derived** by arithmetic. A check that rests on a figure from memory or
                practice says so. An edition holds what was read of it, which may be a small part.

                """);
        for (String jurisdiction : Rules.jurisdictions()) {
            page.append("## ").append(jurisdiction).append("\n\n");
            for (RuleDocument document : Rules.of(jurisdiction).documents()) {
                if (document.jurisdiction().equals(jurisdiction)) {
                    document.editions().forEach(edition -> section(edition, page));
                }
            }
        }
        page.append("## Not found\n\nLooked for and not found; no row stands in for any of these.\n\n");
        Map<String, String> lacking = new TreeMap<>();
        for (Edition edition : RuleDataTest.editions()) {
            if (!edition.notFound().isEmpty()) {
                lacking.put(edition.reference(), edition.notFound());
            }
        }
        Properties others = new Properties();
        try (Reader text = Files.newBufferedReader(NOT_FOUND)) {
            others.load(text);
        }
        others.stringPropertyNames().forEach(name -> lacking.put(name, others.getProperty(name)));
        lacking.forEach((what, why) ->
                page.append("- `").append(what).append("`: ").append(why).append(".\n"));
        return page.toString();
    }

    private static void section(Edition edition, StringBuilder page) {
        page.append("### `").append(edition.reference()).append("`\n\n");
        page.append(edition.title())
                .append(", edition ")
                .append(edition.editionName())
                .append(" (")
                .append(edition.kind())
                .append("). Published by ")
                .append(edition.publisher())
                .append("; ")
                .append(edition.published())
                .append(".\n");
        edition.inForceFrom()
                .ifPresent(from -> page.append("In force from ")
                        .append(from)
                        .append(edition.inForceTo().map(to -> " to " + to).orElse(""))
                        .append(" (days: ")
                        .append(edition.info().get("dates-mark"))
                        .append(").\n"));
        if (!edition.datesNote().isEmpty()) {
            page.append("On the days: ").append(edition.datesNote()).append(".\n");
        }
        page.append("Where read: ")
                .append(edition.whereRead())
                .append(". Last read: ")
                .append(lastRead(edition))
                .append(".\n");
        page.append("Terms: ").append(edition.info().get("terms-of-use")).append(".\n\n");
        page.append("| table | rows | marks | seen in |\n|---|---|---|---|\n");
        for (Subject<?> subject : edition.subjects()) {
            List<RuleRow<?>> rows = List.copyOf(edition.rows(subject));
            page.append("| ")
                    .append(subject.id())
                    .append(" | ")
                    .append(rows.size())
                    .append(" | ")
                    .append(marks(rows))
                    .append(" | ")
                    .append(seen(rows))
                    .append(" |\n");
        }
        page.append('\n');
    }

    private static String lastRead(Edition edition) {
        Map<String, String> days = edition.info().startingWith("read-on.");
        String ofTexts = days.entrySet().stream()
                .map(day -> day.getValue() + " (" + edition.info().seen(day.getKey()) + ")")
                .collect(Collectors.joining(", "));
        return days.isEmpty()
                ? edition.info().get("read-on")
                : ofTexts + "; the rest " + edition.info().get("read-on");
    }

    private static String marks(List<RuleRow<?>> rows) {
        Map<Provenance, Integer> counts = new EnumMap<>(Provenance.class);
        rows.forEach(row -> counts.merge(row.provenance(), 1, Integer::sum));
        return counts.entrySet().stream()
                .map(count -> count.getKey() + " " + count.getValue())
                .collect(Collectors.joining(", "));
    }

    private static String seen(List<RuleRow<?>> rows) {
        return rows.stream().map(RuleRow::seenIn).distinct().collect(Collectors.joining("; "));
    }
}
