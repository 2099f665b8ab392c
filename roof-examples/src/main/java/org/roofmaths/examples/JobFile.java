package org.roofmaths.examples;

import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;

/** A job file: JSON text that becomes the plain tree from which a job is read. Jackson does the text, the library does the rest. */
public final class JobFile {
    /** The text is not JSON, or is longer than a job file can be. */
    public static final ProblemCode NOT_JSON = ProblemCode.of(
            "job-file.not-json", "Correct the file at the line and column named; each field may stand once.");
    /** There is no such file and no example of that name. */
    public static final ProblemCode NOT_FOUND =
            ProblemCode.of("job-file.not-found", "Give the name of an example job or the path of a job file.");
    /** The names of the example jobs in this jar. */
    public static final List<String> EXAMPLES = List.of("fernside", "tollbar");

    private static final int LONGEST_BYTES = 1_000_000;
    private static final TypeReference<Map<String, Object>> TREE = new TypeReference<>() {};
    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(SerializationFeature.INDENT_OUTPUT)
            .build();

    private JobFile() {}

    /**
     * Reads an example job by its name, or a job file by its path.
     *
     * @param nameOrPath such as {@code fernside} or {@code jobs/mine.json}
     * @return the plain tree, or what is wrong with the file
     * @throws IOException if the file is there but cannot be read
     */
    public static Attempt<Map<String, Object>> read(String nameOrPath) throws IOException {
        if (EXAMPLES.contains(nameOrPath)) {
            try (InputStream in = JobFile.class.getResourceAsStream("jobs/" + nameOrPath + ".json")) {
                return parse(nameOrPath, new String(in.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        Path path = Path.of(nameOrPath);
        if (!Files.isRegularFile(path)) {
            return Attempt.failed(List.of(Problem.error(
                    NOT_FOUND,
                    "job",
                    '"' + nameOrPath + '"',
                    "be the path of a job file or one of " + String.join(", ", EXAMPLES))));
        }
        long bytes = Files.size(path);
        if (bytes > LONGEST_BYTES) {
            return Attempt.failed(List.of(Problem.error(
                    NOT_JSON, nameOrPath, bytes + " bytes", "be at most " + LONGEST_BYTES + " bytes long")));
        }
        return parse(nameOrPath, Files.readString(path));
    }

    /**
     * Turns the text of a job file into a plain tree.
     *
     * @param name how messages call the text
     * @param text JSON
     * @return the plain tree, or what is wrong with the text
     */
    public static Attempt<Map<String, Object>> parse(String name, String text) {
        try {
            return Attempt.of(JSON.readValue(text, TREE));
        } catch (JsonParseException e) {
            return Attempt.failed(List.of(notJson(name, e, e.getOriginalMessage())));
        } catch (MismatchedInputException e) {
            return Attempt.failed(List.of(notJson(name, e, "an object in braces is wanted here")));
        } catch (JsonProcessingException e) {
            return Attempt.failed(List.of(notJson(name, e, e.getOriginalMessage())));
        }
    }

    private static Problem notJson(String name, JsonProcessingException e, String what) {
        String place = e.getLocation() == null
                ? "unknown place"
                : "line " + e.getLocation().getLineNr() + ", column "
                        + e.getLocation().getColumnNr();
        return Problem.error(NOT_JSON, name, what + " at " + place, "be one JSON object without repeated fields");
    }

    /**
     * Writes a plain tree as JSON text.
     *
     * @param tree maps, lists, texts and numbers
     * @return indented JSON
     */
    public static String write(Object tree) {
        try {
            return JSON.writeValueAsString(tree);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("the tree must hold maps, lists, texts and numbers only", e);
        }
    }
}
