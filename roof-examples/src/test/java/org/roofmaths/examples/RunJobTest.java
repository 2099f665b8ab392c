package org.roofmaths.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roofmaths.sheet.Job;
import org.roofmaths.sheet.SheetLine;
import org.roofmaths.sheet.SiteSheet;
import org.roofmaths.working.Worked;

class RunJobTest {
    @TempDir
    private Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String... args) throws IOException {
        return RunJob.run(
                args,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    private String errors() {
        return err.toString(StandardCharsets.UTF_8).replaceAll("(?m)^working \\.\\.\\.\\R", "");
    }

    private Path jobFile(String text) throws IOException {
        return Files.writeString(folder.resolve("job.json"), text);
    }

    private static String example(String name) throws IOException {
        return Files.readString(Path.of("src/main/resources/org/roofmaths/examples/jobs/" + name + ".json"));
    }

    private void nothingWritten() throws IOException {
        try (var files = Files.list(folder)) {
            assertThat(files.filter(file -> !file.endsWith("job.json"))).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"fernside", "tollbar"})
    void prints_the_sheet_and_writes_it_as_markdown_and_tree(String name) throws IOException {
        assertThat(run(name, folder.toString())).isZero();

        String printed = out.toString(StandardCharsets.UTF_8);
        Golden.check(name + ".txt", printed.substring(0, printed.indexOf("\nWritten: ")));
        Golden.check(name + ".md", Files.readString(folder.resolve(name + ".md")));
        Golden.check(name + ".json", Files.readString(folder.resolve(name + ".json")));
        try (var files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder(name + ".md", name + ".json");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"fernside", "tollbar"})
    void the_same_sheet_under_a_comma_locale(String name) throws IOException {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            prints_the_sheet_and_writes_it_as_markdown_and_tree(name);
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"fernside", "tollbar"})
    void every_line_reaches_its_figure_and_every_formula_gives_the_recorded_value(String name) throws IOException {
        SiteSheet sheet =
                SiteSheet.of(Job.attemptFromTree(JobFile.read(name).orThrow()).orThrow());

        assertThat(sheet.lines()).hasSizeGreaterThan(30);
        for (SheetLine line : sheet.lines()) {
            assertThat(line.figure().value()).as(line.label()).isNotNull();
            if (line.figure() instanceof Worked<?> worked) {
                assertThat(worked.working().disagreements()).as(line.label()).isEmpty();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"fernside", "tollbar"})
    void a_job_written_back_reads_as_the_same_job(String name) throws IOException {
        Job job = Job.attemptFromTree(JobFile.read(name).orThrow()).orThrow();

        assertThat(Job.attemptFromTree(job.toTree()).orThrow()).isEqualTo(job);
        String json = new ObjectMapper().writeValueAsString(job.toTree());
        Map<String, Object> back = new ObjectMapper().readValue(json, new TypeReference<>() {});
        assertThat(Job.attemptFromTree(back).orThrow()).isEqualTo(job);
    }

    @Test
    void a_pitch_without_its_unit_is_refused_at_its_path() throws IOException {
        Path file = jobFile(example("fernside").replace("\"pitch\": \"32°\"", "\"pitch\": \"35\""));

        assertThat(run(file.toString(), folder.resolve("out").toString())).isEqualTo(1);
        assertThat(errors()).isEqualTo("""
                %s: 1 problem, nothing written
                  /roof/slope/pitch must be a pitch with its sign or words, such as "35°" or "7 in 12" ("35": unit must be °, deg\
                 or %%, or the number must go on with in and a run, but the text ended (at index 2)), but was "35"
                    Write the value as the message says, with its unit.
                """.formatted(file));
        nothingWritten();
    }

    @Test
    void every_mistake_of_a_file_comes_at_once() throws IOException {
        Path file = jobFile(example("fernside")
                .replace("\"projection\": \"3 m\",", "\"colour\": \"red\",")
                .replace("\"mass\": \"4.4 kg\"", "\"mass\": \"4.4 m\"")
                .replace("\"coverRange\": \"[297 mm..303 mm]\"", "\"coverRange\": \"[303 mm..297 mm]\"")
                .replace("\"battenStock\": \"4.8 m\"", "\"battenStock\": 4.8")
                .replace("\"unitsInPack\": 180", "\"unitsInPack\": 0"));

        assertThat(run(file.toString(), folder.resolve("out").toString())).isEqualTo(1);
        assertThat(errors().lines().filter(line -> line.startsWith("  /")).map(String::strip))
                .map(line -> line.substring(0, line.indexOf(' ')))
                .containsExactlyInAnyOrder(
                        "/roof/projection",
                        "/roof/colour",
                        "/covering/mass",
                        "/covering/coverRange",
                        "/settingOut/battenStock",
                        "/order/unitsInPack");
        nothingWritten();
    }

    @Test
    void an_edition_a_share_and_a_roof_that_cannot_be_are_refused_at_their_paths() throws IOException {
        Path file = jobFile(example("tollbar")
                .replace("nhbc-standards/2024", "nhbc-standards/2030")
                .replace("\"eavesOverhang\": \"150 mm level\"", "\"eavesOverhang\": \"-150 mm level\"")
                .replace("\"unitBreakage\": \"5 %\"", "\"unitBreakage\": \"300 %\""));

        assertThat(run(file.toString(), folder.resolve("out").toString())).isEqualTo(1);
        assertThat(errors()).isEqualTo("""
                %s: 3 problems, nothing written
                  /rules/editions/0 must be one of 2011, 2012, 2019, 2020, 2021, 2024, but was "2030"
                    Choose one of the editions that the message lists.
                  /roof/eavesOverhang must be 0 mm or more, but was -150 mm level
                    Give the overhang from the plate line to the fascia, and how it was measured.
                  /order/unitBreakage must be a share, such as "5 %%" (it must be from 0 %% to 100 %%), but was "300 %%"
                    Write the value as the message says, with its unit.
                """.formatted(file));
        nothingWritten();
    }

    @Test
    void a_field_that_stands_twice_is_refused() throws IOException {
        Path file = jobFile("{\"name\": \"a\", \"name\": \"b\"}");

        assertThat(run(file.toString(), folder.resolve("out").toString())).isEqualTo(1);
        assertThat(errors()).isEqualTo("""
                %1$s: 1 problem, nothing written
                  %1$s must be one JSON object without repeated fields, but was Duplicate field 'name' at line 1, column 21
                    Correct the file at the line and column named; each field may stand once.
                """.formatted(file));
    }

    @Test
    void truncated_json_is_refused_with_its_place() throws IOException {
        Path file = jobFile("{\"format\": \"roof-maths job\",\n\"roof\": {");

        assertThat(run(file.toString(), folder.resolve("out").toString())).isEqualTo(1);
        assertThat(errors())
                .startsWith(file + ": 1 problem, nothing written\n  " + file
                        + " must be one JSON object without repeated fields, but was Unexpected end-of-input");
        assertThat(errors()).contains("at line 2, column 10\n");
        nothingWritten();
    }

    @Test
    void a_file_of_fifty_megabytes_of_spaces_is_refused_unread() throws IOException {
        Path file = jobFile(" ".repeat(50_000_000));

        assertThat(run(file.toString(), folder.resolve("out").toString())).isEqualTo(1);
        assertThat(errors()).isEqualTo("""
                %1$s: 1 problem, nothing written
                  %1$s must be at most 1000000 bytes long, but was 50000000 bytes
                    Correct the file at the line and column named; each field may stand once.
                """.formatted(file));
    }

    @Test
    void an_unknown_name_lists_the_examples() throws IOException {
        assertThat(run("no-such-job", folder.toString())).isEqualTo(1);
        assertThat(errors()).isEqualTo("""
                no-such-job: 1 problem, nothing written
                  job must be the path of a job file or one of fernside, tollbar, but was "no-such-job"
                    Give the name of an example job or the path of a job file.
                """);
    }

    @Test
    void without_a_job_the_usage_is_printed() throws IOException {
        assertThat(run()).isEqualTo(2);
        assertThat(errors()).isEqualTo("usage: RunJob NAME-OR-PATH [FOLDER]; the examples are fernside, tollbar\n");
    }

    @Test
    void a_job_with_problems_says_so_at_the_top_and_still_shows_what_fits() throws IOException {
        Path file = jobFile(example("fernside").replace("\"leastGauge\": \"310 mm\"", "\"leastGauge\": \"340 mm\""));

        assertThat(run(file.toString(), folder.resolve("out").toString())).isZero();
        String printed = out.toString(StandardCharsets.UTF_8);
        assertThat(printed)
                .contains("PROBLEMS: ")
                .contains("  finding: no equal division: 9 gauges of 372.07 mm pass the greatest gauge")
                .contains("    mend: overhang into the gutter, on the slope: 51.5 mm more; 10 gauges of 340.01 mm")
                .contains("  top: mass of metal ..................................... 36.1 kg\n");
    }
}
