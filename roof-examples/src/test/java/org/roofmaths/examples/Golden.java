package org.roofmaths.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Compares printed output with its stored copy; {@code -Dgolden.update=true} writes the copies anew, to be read before they are kept. */
final class Golden {
    private static final Path FOLDER = Path.of("src/test/resources/org/roofmaths/examples/golden");

    private Golden() {}

    static void check(String name, String printed) throws IOException {
        Path copy = FOLDER.resolve(name);
        if (Boolean.getBoolean("golden.update")) {
            Files.createDirectories(FOLDER);
            Files.writeString(copy, printed);
        }
        assertThat(copy).exists();
        assertThat(printed).isEqualTo(Files.readString(copy));
    }
}
