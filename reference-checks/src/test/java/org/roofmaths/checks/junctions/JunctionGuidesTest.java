package org.roofmaths.checks.junctions;

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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Types every line of the guides into JShell and compares what it answers with what the guide prints. */
class JunctionGuidesTest {
    private static final Path GUIDES = Path.of("..", "docs", "guide");
    private static final Path SCRIPT = Path.of("..", "roof-examples", "START.jsh");
    private static final String PROMPT = "jshell> ";
    private static final Pattern ANSWER = Pattern.compile("(\\w+ )?==> .*");

    @ParameterizedTest
    @ValueSource(strings = {"flashings.md", "ventilation.md", "rainwater.md"})
    void every_line_answers_what_is_printed(String guide) throws IOException {
        List<String> lines = Files.readAllLines(GUIDES.resolve(guide));
        List<String> wrong = new ArrayList<>();
        int answers = 0;
        try (JShell shell = JShell.builder()
                .executionEngine("local")
                .out(new PrintStream(new ByteArrayOutputStream(), true))
                .build()) {
            Stream.of(System.getProperty("java.class.path").split(File.pathSeparator, -1))
                    .forEach(shell::addToClasspath);
            type(shell, "import java.util.*;");
            for (String line : Files.readAllLines(SCRIPT)) {
                if (line.startsWith("import")) {
                    type(shell, line);
                }
            }
            for (int i = 0; i < lines.size(); i++) {
                if (!lines.get(i).startsWith(PROMPT)) {
                    continue;
                }
                String code = lines.get(i).substring(PROMPT.length());
                SnippetEvent event = type(shell, code);
                if (ANSWER.matcher(lines.get(i + 1)).matches()) {
                    answers++;
                    String printed = lines.get(i + 1).substring(lines.get(i + 1).indexOf("==> ") + 4);
                    if (!printed.equals(event.value())) {
                        wrong.add(code + "\n  guide:   " + printed + "\n  library: " + event.value());
                    }
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(answers).isGreaterThan(3);
    }

    private static SnippetEvent type(JShell shell, String code) {
        List<SnippetEvent> events = shell.eval(code.endsWith(";") ? code : code + ";");
        assertThat(events).as(code).allSatisfy(event -> {
            assertThat(event.status()).as(code).isEqualTo(Status.VALID);
            assertThat(event.exception()).as(code).isNull();
        });
        return events.get(events.size() - 1);
    }
}
