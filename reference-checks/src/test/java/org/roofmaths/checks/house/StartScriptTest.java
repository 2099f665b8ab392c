package org.roofmaths.checks.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import jdk.jshell.JShell;
import jdk.jshell.Snippet.Status;
import jdk.jshell.SnippetEvent;
import org.junit.jupiter.api.Test;

/** The script that starts JShell: it must import all there is, and every line of it must run. */
class StartScriptTest {
    private static final Path SCRIPT = Path.of("..", "roof-examples", "START.jsh");
    private static final Pattern IMPORT = Pattern.compile("import (org\\.roofmaths\\.\\w+)\\.\\*;");

    @Test
    void imports_every_exported_package() throws IOException {
        assertThat(Files.readAllLines(SCRIPT).stream()
                        .map(IMPORT::matcher)
                        .filter(line -> line.matches())
                        .map(line -> line.group(1)))
                .containsExactlyInAnyOrderElementsOf(Published.exportedPackages());
    }

    @Test
    void every_line_runs_and_quantities_can_be_typed_bare() throws IOException {
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        try (JShell shell = JShell.builder()
                .executionEngine("local")
                .out(new PrintStream(printed, true))
                .build()) {
            Stream.of(System.getProperty("java.class.path").split(File.pathSeparator, -1))
                    .forEach(shell::addToClasspath);
            assertThat(run(shell, Files.readString(SCRIPT)))
                    .allSatisfy(event -> assertThat(event.status())
                            .as(event.snippet().source())
                            .isEqualTo(Status.VALID))
                    .allSatisfy(event -> assertThat(event.exception()).isNull());
            assertThat(run(shell, "mm(345).plus(mm(0.5))"))
                    .extracting(SnippetEvent::value)
                    .containsExactly("345.5 mm");
        }
    }

    private static List<SnippetEvent> run(JShell shell, String source) {
        List<SnippetEvent> events = new ArrayList<>();
        String rest = source;
        while (!rest.isBlank()) {
            var next = shell.sourceCodeAnalysis().analyzeCompletion(rest);
            assertThat(next.source()).as("a whole line in: %s", rest).isNotNull();
            events.addAll(shell.eval(next.source()));
            rest = next.remaining();
        }
        return events;
    }
}
