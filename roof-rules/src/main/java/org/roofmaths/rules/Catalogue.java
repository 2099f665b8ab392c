package org.roofmaths.rules;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.roofmaths.rules.internal.CsvTable;

/**
 * The rule data of our own jar: what there is, known from its index, and the editions, each read when first asked for.
 *
 * <p>A jar cannot be listed everywhere, so the build writes an index of the files; a test compares it with the folders.
 */
final class Catalogue {
    private static final String FOLDER = "data/";
    private static final String TABLE = ".csv";
    private static final int GREATEST_TABLE = 10_000;
    private static final SortedMap<String, SortedMap<String, SortedMap<String, List<Subject<?>>>>> INDEX = readIndex();
    private static final Map<String, Edition> EDITIONS = new ConcurrentHashMap<>();

    private Catalogue() {}

    /** Returns jurisdictions, their documents, their editions and what these have tables about, all in order. */
    static Map<String, SortedMap<String, SortedMap<String, List<Subject<?>>>>> index() {
        return INDEX;
    }

    static Edition edition(String jurisdiction, String document, String id) {
        return EDITIONS.computeIfAbsent(
                jurisdiction + "/" + document + "/" + id, reference -> open(jurisdiction, document, id));
    }

    private static Edition open(String jurisdiction, String document, String id) {
        List<Subject<?>> subjects = INDEX.getOrDefault(jurisdiction, new TreeMap<>())
                .getOrDefault(document, new TreeMap<>())
                .getOrDefault(id, List.of());
        return new Edition(jurisdiction, document, id, subjects, new Files(jurisdiction, document, id));
    }

    /** The files of an edition, each read when first asked for. */
    private static final class Files implements Edition.Tables {
        private final String jurisdiction;
        private final String document;
        private final String id;
        private final Map<Subject<?>, List<? extends RuleRow<?>>> read = new ConcurrentHashMap<>();
        private volatile @Nullable SourceInfo info;

        Files(String jurisdiction, String document, String id) {
            this.jurisdiction = jurisdiction;
            this.document = document;
            this.id = id;
        }

        @Override
        public SourceInfo info() {
            SourceInfo known = info;
            if (known == null) {
                // Read twice at worst, with the same result.
                known = new SourceInfo(
                        jurisdiction, document, id, properties(jurisdiction + "/" + document + "/" + id));
                info = known;
            }
            return known;
        }

        @Override
        @SuppressWarnings("unchecked") // the table of a subject holds rows of its type
        public <V> List<RuleRow<V>> rows(Subject<V> subject) {
            List<? extends RuleRow<?>> rows = read.get(subject);
            return (List<RuleRow<V>>)
                    (List<?>) (rows != null ? rows : read.computeIfAbsent(subject, about -> table(info(), about)));
        }
    }

    private static Properties properties(String reference) {
        Properties properties = new Properties();
        try (Reader text = open(reference + "/source.properties")) {
            properties.load(text);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return properties;
    }

    private static List<RuleRow<?>> table(SourceInfo info, Subject<?> subject) {
        String file = info.reference() + "/" + subject.id() + TABLE;
        try (Reader text = open(file)) {
            RowReader.Result result = RowReader.readOurs(file, info, subject, CsvTable.read(text, GREATEST_TABLE));
            if (!result.problems().isEmpty()) {
                throw new IllegalStateException("rule data is broken: " + result.problems());
            }
            return result.rows();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static SortedMap<String, SortedMap<String, SortedMap<String, List<Subject<?>>>>> readIndex() {
        SortedMap<String, SortedMap<String, SortedMap<String, List<Subject<?>>>>> index = new TreeMap<>();
        try (BufferedReader lines = new BufferedReader(open("index.txt"))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (!line.endsWith(TABLE)) {
                    continue;
                }
                String[] parts = line.split("/", -1);
                index.computeIfAbsent(parts[0], key -> new TreeMap<>())
                        .computeIfAbsent(parts[1], key -> new TreeMap<>())
                        .computeIfAbsent(parts[2], key -> new ArrayList<>())
                        .add(subjectOf(parts[3]));
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return index;
    }

    private static Subject<?> subjectOf(String file) {
        return Subjects.of(file.substring(0, file.length() - TABLE.length()))
                .orElseThrow(() -> new IllegalStateException("no subject for the table " + file));
    }

    private static Reader open(String file) {
        InputStream bytes = Catalogue.class.getResourceAsStream(FOLDER + file);
        return new InputStreamReader(
                Objects.requireNonNull(bytes, () -> "rule data lacks " + file), StandardCharsets.UTF_8);
    }
}
