package org.roofmaths.examples.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.VarSnippet;
import org.junit.jupiter.api.Test;

/** The README says what happens: its snippets are compiled and run, and their printed output is compared. */
class ReadmeTest {
    private static final Pattern BLOCK =
            Pattern.compile("(?m)^```(\\w*)\\R(.*?)^```$", Pattern.DOTALL | Pattern.MULTILINE);

    private static String readme() throws IOException {
        return Files.readString(Path.of("../README.md"));
    }

    private static List<String> blocks(String section, String language) throws IOException {
        String text = readme();
        int start = text.indexOf("\n## " + section + "\n");
        int end = text.indexOf("\n## ", start + 4);
        Matcher matcher = BLOCK.matcher(text.substring(start, end < 0 ? text.length() : end));
        List<String> found = new ArrayList<>();
        while (matcher.find()) {
            if (matcher.group(1).equals(language)) {
                found.add(matcher.group(2));
            }
        }
        return found;
    }

    @Test
    void has_exactly_two_commands_each_on_one_line() throws IOException {
        assertThat(blocks("Two commands", ""))
                .containsExactly(
                        "mvn -q -DskipTests package && java -jar roof-examples/target/roof-examples-0.1.0-SNAPSHOT-all.jar fernside\n",
                        "mvn -B verify\n");
    }

    @Test
    void the_java_snippet_is_the_compiled_one_and_prints_what_the_readme_says() throws IOException {
        String source = Files.readString(Path.of("src/test/java/org/roofmaths/examples/docs/ReadmeSnippet.java"));
        String compiled = source.substring(
                                source.indexOf("// snippet\n") + "// snippet\n".length(),
                                source.indexOf("\n        // end"))
                        .stripIndent()
                + "\n";
        assertThat(blocks("In Java", "java")).containsExactly(compiled);
        assertThat(compiled.lines()).hasSizeLessThanOrEqualTo(10);

        PrintStream before = System.out;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        try {
            System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
            ReadmeSnippet.run();
        } finally {
            System.setOut(before);
        }
        assertThat(blocks("In Java", "text")).containsExactly(printed.toString(StandardCharsets.UTF_8));
    }

    @Test
    void the_jshell_lines_answer_what_the_readme_says() throws IOException {
        StringBuilder answered = new StringBuilder();
        try (JShell shell = JShell.builder().executionEngine("local").build()) {
            String tests = System.getProperty("java.class.path");
            shell.addToClasspath(System.getProperty("surefire.test.class.path", tests)); // Surefire hides the real one
            for (String line : Files.readAllLines(Path.of("START.jsh"))) {
                shell.eval(line);
            }
            int number = 0;
            for (String line : blocks("In JShell", "text").get(0).lines().toList()) {
                if (!line.startsWith("jshell> ")) {
                    continue;
                }
                number++;
                SnippetEvent event =
                        shell.eval(line.substring("jshell> ".length()) + ";").get(0);
                assertThat(event.status())
                        .as(() -> line + " in "
                                + shell.diagnostics(event.snippet())
                                        .map(problem -> problem.getMessage(Locale.ROOT))
                                        .toList())
                        .isEqualTo(Snippet.Status.VALID);
                String name = event.snippet() instanceof VarSnippet named
                                && event.snippet().subKind() != Snippet.SubKind.TEMP_VAR_EXPRESSION_SUBKIND
                        ? named.name()
                        : "$" + number;
                answered.append(line)
                        .append('\n')
                        .append(name)
                        .append(" ==> ")
                        .append(event.value())
                        .append('\n');
            }
        }
        assertThat(answered.toString()).isEqualTo(blocks("In JShell", "text").get(0));
    }

    @Test
    void the_excerpt_is_of_the_sheet_that_the_first_command_prints() throws IOException {
        Matcher first = BLOCK.matcher(readme());
        assertThat(first.find()).isTrue();
        assertThat(Files.readString(Path.of("src/test/resources/org/roofmaths/examples/golden/fernside.txt")))
                .contains(first.group(2));
    }

    @Test
    void every_file_it_links_to_is_there() throws IOException {
        Matcher links = Pattern.compile("\\]\\(([^)#]+)\\)").matcher(readme());
        List<String> paths = links.results().map(result -> result.group(1)).collect(Collectors.toList());
        assertThat(paths)
                .isNotEmpty()
                .allSatisfy(path -> assertThat(Path.of("..", path)).exists());
    }
}
