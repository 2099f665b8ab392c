package org.roofmaths.rules;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.roofmaths.working.SourceKind;

/** What the file {@code source.properties} of an edition says of it. */
final class SourceInfo implements Serializable {
    private static final long serialVersionUID = 1L;
    private static final String SEEN = "seen.";

    final String jurisdiction;
    final String document;
    final String id;
    private final TreeMap<String, String> properties = new TreeMap<>();

    SourceInfo(String jurisdiction, String document, String id, Properties properties) {
        this.jurisdiction = jurisdiction;
        this.document = document;
        this.id = id;
        properties.stringPropertyNames().forEach(name -> this.properties.put(name, properties.getProperty(name)));
    }

    String reference() {
        return jurisdiction + "/" + document + "/" + id;
    }

    SourceKind kind() {
        return kind(get("kind"));
    }

    /** Reads {@code warranty-condition} and the like. */
    static SourceKind kind(String word) {
        return SourceKind.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    /** Returns a property that every edition has, or an empty text for one that it may lack. */
    String get(String name) {
        return properties.getOrDefault(name, "");
    }

    Optional<LocalDate> date(String name) {
        return get(name).isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(get(name)));
    }

    /** Returns the page or text that a short name in the rows stands for. */
    @Nullable
    String seen(String key) {
        return properties.get(SEEN + key);
    }

    /** Returns the names and texts of the properties that start so, in the order of the alphabet. */
    SortedMap<String, String> startingWith(String start) {
        SortedMap<String, String> found = new TreeMap<>();
        properties.forEach((name, text) -> {
            if (name.startsWith(start)) {
                found.put(name.substring(start.length()), text);
            }
        });
        return found;
    }
}
