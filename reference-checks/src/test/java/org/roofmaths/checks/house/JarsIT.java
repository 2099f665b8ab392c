package org.roofmaths.checks.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Starts the built jars in a Java of their own, as a user would: once as modules, once as plain jars. */
class JarsIT {
    private static final String PROBE =
            Path.of("src", "test", "probe", "Probe.java").toString();

    /** Our three jars and the two that they bring in. */
    private static final String PATH = Stream.concat(
                    Published.PLACES.stream().map(Path::toString),
                    Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator, -1))
                            .filter(entry -> entry.matches(".*[/\\\\](commons-math3|fastcsv)-[^/\\\\]*\\.jar")))
            .collect(Collectors.joining(File.pathSeparator));

    /** Every class that a user can name, by module. */
    private static final Map<String, List<String>> CLASSES = Published.CLASSES.stream()
            .filter(Published::isExported)
            .filter(type -> type.getModifiers().contains(JavaModifier.PUBLIC))
            .collect(Collectors.groupingBy(
                    Published::moduleOf, TreeMap::new, Collectors.mapping(JavaClass::getName, Collectors.toList())));

    /** What the probe prints when text is read and the rule data is found inside the jar. */
    private static final String WORKS = "units read: 2857.5 mm\nrules read: true\n";

    @BeforeEach
    void jars_are_built() {
        assertThat(Published.PLACES)
                .hasSize(3)
                .allMatch(place -> place.toString().endsWith(".jar"));
    }

    @Test
    void every_class_loads_from_its_module() throws Exception {
        assertThat(java("--module-path", PATH, "--add-modules", Published.RULES, PROBE))
                .isEqualTo(CLASSES.entrySet().stream()
                                .map(module -> module.getKey() + ": "
                                        + module.getValue().size() + " classes\n")
                                .collect(Collectors.joining())
                        + WORKS);
    }

    @Test
    void every_class_loads_from_the_class_path() throws Exception {
        int all = CLASSES.values().stream().mapToInt(List::size).sum();
        assertThat(java("--class-path", PATH, PROBE)).isEqualTo("no module: " + all + " classes\n" + WORKS);
    }

    private static String java(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of(arguments));
        CLASSES.values().forEach(command::addAll);
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(printed).isZero();
        return printed;
    }
}
