package org.roofmaths.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every table of the rule data, as a whole. */
class RuleDataTest {
    private static final Path DATA = Path.of("src/main/resources/org/roofmaths/rules/data");

    static List<Edition> editions() {
        return Rules.jurisdictions().stream()
                .flatMap(jurisdiction -> Rules.of(jurisdiction).documents().stream())
                .flatMap(document -> document.editions().stream())
                .distinct()
                .toList();
    }

    static List<RuleRow<?>> rowsOf(Edition edition) {
        return edition.subjects().stream()
                .<RuleRow<?>>flatMap(subject -> edition.rows(subject).stream())
                .toList();
    }

    @Test
    void the_index_names_every_table_in_the_folders() throws IOException {
        try (Stream<Path> files = Files.walk(DATA);
                InputStream index = Rules.class.getResourceAsStream("data/index.txt")) {
            List<String> found = files.filter(file -> file.toString().endsWith(".csv"))
                    .map(file -> DATA.relativize(file).toString().replace('\\', '/'))
                    .toList();
            assertThat(new String(index.readAllBytes(), StandardCharsets.UTF_8)
                            .lines()
                            .filter(line -> line.endsWith(".csv")))
                    .containsExactlyInAnyOrderElementsOf(found);
        }
    }

    @TestFactory
    Stream<DynamicTest> every_edition_can_be_read() {
        return editions().stream()
                .map(edition -> DynamicTest.dynamicTest(
                        edition.reference(), () -> assertThat(rowsOf(edition)).isNotEmpty()));
    }

    @Test
    void every_row_has_its_source_place_and_mark() {
        for (Edition edition : editions()) {
            for (RuleRow<?> row : rowsOf(edition)) {
                assertThat(List.of(
                                row.citation().title(),
                                row.citation().edition(),
                                row.locus(),
                                row.asPrinted(),
                                row.seenIn(),
                                row.unit()))
                        .as(edition.reference() + " " + row.id())
                        .noneMatch(String::isBlank);
            }
        }
    }

    @Test
    void ids_are_unique_in_an_edition_and_start_with_their_subject() {
        for (Edition edition : editions()) {
            Set<String> ids = new HashSet<>();
            for (RuleRow<?> row : rowsOf(edition)) {
                assertThat(ids.add(row.id()))
                        .as(edition.reference() + " has " + row.id() + " once")
                        .isTrue();
                assertThat(row.id()).startsWith(row.subject().id() + ".");
            }
        }
    }

    @Test
    void an_edition_says_what_it_is() {
        for (Edition edition : editions()) {
            assertThat(List.of(
                            edition.title(),
                            edition.publisher(),
                            edition.editionName(),
                            edition.published(),
                            edition.whereRead()))
                    .as(edition.reference())
                    .noneMatch(String::isBlank);
            assertThat(edition.info().get("terms-of-use"))
                    .as(edition.reference())
                    .isNotBlank();
            assertThat(edition.info().get("read-on")).as(edition.reference()).isNotBlank();
            assertThat(edition.kind()).isNotNull();
        }
    }

    @Test
    void every_text_listed_in_a_source_file_is_used_by_a_row() {
        for (Edition edition : editions()) {
            Set<String> used = rowsOf(edition).stream().map(RuleRow::seenIn).collect(Collectors.toSet());
            assertThat(used)
                    .as(edition.reference())
                    .containsAll(edition.info().startingWith("seen.").values());
        }
    }

    @Test
    void days_in_force_follow_one_another() {
        for (String jurisdiction : Rules.jurisdictions()) {
            for (RuleDocument document : Rules.of(jurisdiction).documents()) {
                List<Edition> dated = document.editions().stream()
                        .filter(edition -> edition.inForceFrom().isPresent())
                        .toList();
                assertThat(dated)
                        .as(document.id())
                        .isSortedAccordingTo(Comparator.comparing(
                                edition -> edition.inForceFrom().orElseThrow()));
                for (int i = 0; i < dated.size(); i++) {
                    Edition edition = dated.get(i);
                    edition.inForceTo()
                            .ifPresent(to -> assertThat(to)
                                    .as(edition.reference())
                                    .isAfterOrEqualTo(edition.inForceFrom().orElseThrow()));
                    if (i + 1 < dated.size()) {
                        assertThat(edition.inForceTo().orElseThrow())
                                .as(edition.reference())
                                .isBefore(dated.get(i + 1).inForceFrom().orElseThrow());
                    }
                }
            }
        }
    }

    @Test
    void no_two_rows_of_a_table_hold_in_the_same_case() {
        for (Edition edition : editions()) {
            Map<RuleRow<?>, Long> rows = new LinkedHashMap<>();
            rowsOf(edition).forEach(row -> rows.put(row, rows.size() + 1L));
            assertThat(RowReader.overlaps(edition.reference(), rows)).isEmpty();
        }
    }

    @Test
    void ranges_of_a_table_join_up_or_the_gap_is_declared() throws IOException {
        List<String> gaps = new ArrayList<>();
        for (Edition edition : editions()) {
            for (Subject<?> subject : edition.subjects()) {
                gaps.addAll(Gaps.of(edition, subject));
            }
        }
        // Each declared gap is followed by its reason.
        List<String> declared =
                Files.readAllLines(Path.of("src/test/resources/rules/declared-gaps.txt"), StandardCharsets.UTF_8)
                        .stream()
                        .map(line -> line.substring(0, line.indexOf("; ")))
                        .toList();
        assertThat(gaps).containsExactlyElementsOf(declared);
    }

    @Test
    void every_subject_has_a_table_and_every_fact_a_column_or_a_use_in_a_check() {
        Set<Subject<?>> subjects = new HashSet<>();
        Set<Fact<?>> facts = new HashSet<>();
        for (Edition edition : editions()) {
            subjects.addAll(edition.subjects());
            rowsOf(edition).forEach(row -> facts.addAll(row.conditions().keySet()));
        }
        Subjects.all().forEach(subject -> subject.measuredBy().ifPresent(facts::add));
        assertThat(subjects).containsAll(Subjects.all());
        assertThat(facts).containsAll(Facts.all());
    }
}
