package org.roofmaths.checks.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The glossary: in order, no word twice, and every "See" leads somewhere. */
class GlossaryTest {
    private static final Pattern ROW =
            Pattern.compile("\\| (?<word>[^|]+) \\| (?<meaning>[^|]+) \\| (?<elsewhere>[^|]+) \\|");
    private static final Pattern SEE = Pattern.compile("See (?<words>[^.;]+)[.;].*");

    private final List<String> words = rows("word");

    GlossaryTest() throws IOException {}

    @Test
    void words_stand_once_and_in_order() {
        assertThat(words)
                .hasSizeGreaterThan(100)
                .doesNotHaveDuplicates()
                .isSortedAccordingTo(Comparator.comparing(GlossaryTest::withoutAccents));
    }

    @Test
    void every_see_leads_to_a_word() throws IOException {
        assertThat(rows("meaning").stream()
                        .map(SEE::matcher)
                        .filter(meaning -> meaning.matches())
                        .flatMap(meaning -> Stream.of(meaning.group("words").split(" and "))))
                .isNotEmpty()
                .allSatisfy(word -> assertThat(words).contains(word));
    }

    private static String withoutAccents(String word) {
        return Normalizer.normalize(word, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT);
    }

    private static List<String> rows(String column) throws IOException {
        return Files.readAllLines(Path.of("..", "docs", "glossary.md")).stream()
                .map(ROW::matcher)
                .filter(row -> row.matches()
                        && !row.group("word").equals("word")
                        && !row.group("word").startsWith("-"))
                .map(row -> row.group(column))
                .toList();
    }
}
