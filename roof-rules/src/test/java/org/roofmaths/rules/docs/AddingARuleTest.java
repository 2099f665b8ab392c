package org.roofmaths.rules.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.roofmaths.covering.UnitKind;
import org.roofmaths.rules.RowSource;
import org.roofmaths.rules.Situation;
import org.roofmaths.rules.Subjects;
import org.roofmaths.working.Provenance;

/** The page on adding a rule: its rows are read, its lines run, its print compared. */
class AddingARuleTest {
    private static final Path PAGE = Path.of("../docs/adding-a-rule.md");

    private static String block(String language) throws IOException {
        Matcher block =
                Pattern.compile("```" + language + "\n(.*?)```", Pattern.DOTALL).matcher(Files.readString(PAGE));
        assertThat(block.find()).isTrue();
        return block.group(1);
    }

    @Test
    void the_rows_of_the_page_are_read_and_print_as_it_says() throws IOException {
        String csv = block("csv");
        RowSource rows = RowSource.of("example-code", new StringReader(csv));
        Situation roof =
                Situation.of(UnitKind.CLAY_PLAIN_TILE).withPitch(pitch("40°")).withHeadlap(mm(70));
        assertThat(rows.edition().check(Subjects.LEAST_HEADLAP, roof).toText())
                .isEqualTo(block("text").strip());
    }

    @Test
    void the_lines_of_the_page_are_the_lines_run_here() throws IOException {
        String here =
                withoutBlanks(Files.readString(Path.of("src/test/java/org/roofmaths/rules/docs/AddingARuleTest.java")));
        for (String line : block("java").lines().toList()) {
            assertThat(here).contains(withoutBlanks(line.replace(".toText();", ".toText()")));
        }
    }

    private static String withoutBlanks(String text) {
        return text.replaceAll("\\s", "");
    }

    @Test
    void the_page_names_every_mark() throws IOException {
        String page = Files.readString(PAGE);
        assertThat(Arrays.stream(Provenance.values()).map(mark -> "`" + mark + "`"))
                .allMatch(page::contains);
    }
}
