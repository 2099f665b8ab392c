package org.roofmaths.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.ProblemsException;

/**
 * The documents of one jurisdiction: where every question about a published figure starts.
 *
 * <p>A jurisdiction is named by its ISO 3166 code, with the region where law differs: {@code gb}, {@code gb-sct}, {@code us},
 * {@code ca-on}. A region has its own documents and those of its country. There is no latest edition by default: an edition is chosen by
 * name, or by the day on which it is in force.
 *
 * <pre>{@code
 * Rules gb = Rules.of("gb");
 * Edition warranty = gb.edition("nhbc-standards", "2020");
 * warranty.check(Subjects.LEAST_PITCH, Situation.of(UnitKind.CONCRETE_SINGLE_LAP_TILE).withPitch(pitch("32°")));
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Rules {
    /** There is no such jurisdiction. */
    static final ProblemCode NO_JURISDICTION =
            ProblemCode.of("rules.no-jurisdiction", "Choose one of the jurisdictions that the message lists.");

    /** There is no such document. */
    static final ProblemCode NO_DOCUMENT =
            ProblemCode.of("rules.no-document", "Choose one of the documents that the message lists.");

    /** There is no such edition. */
    static final ProblemCode NO_EDITION =
            ProblemCode.of("rules.no-edition", "Choose one of the editions that the message lists.");

    /** No edition is in force on a day. */
    static final ProblemCode NONE_IN_FORCE =
            ProblemCode.of("rules.none-in-force", "Choose an edition by name, or another day.");

    private final String jurisdiction;
    private final TreeMap<String, List<Edition>> documents;

    private Rules(String jurisdiction, Map<String, List<Edition>> documents) {
        this.jurisdiction = jurisdiction;
        this.documents = new TreeMap<>(documents);
    }

    /** Returns the jurisdictions there are, in the order of the alphabet. */
    public static List<String> jurisdictions() {
        return List.copyOf(Catalogue.index().keySet());
    }

    /**
     * Returns the documents of a jurisdiction.
     *
     * @param jurisdiction its code, such as {@code gb}
     * @return the documents
     * @throws ProblemsException if there is none; the message lists those there are
     */
    public static Rules of(String jurisdiction) {
        Objects.requireNonNull(jurisdiction, "jurisdiction");
        if (!Catalogue.index().containsKey(jurisdiction)) {
            throw none(NO_JURISDICTION, "jurisdiction", jurisdiction, jurisdictions());
        }
        TreeMap<String, List<Edition>> documents = new TreeMap<>();
        int hyphen = jurisdiction.indexOf('-');
        if (hyphen > 0) {
            addAll(jurisdiction.substring(0, hyphen), documents);
        }
        addAll(jurisdiction, documents);
        return new Rules(jurisdiction, documents);
    }

    private static void addAll(String jurisdiction, Map<String, List<Edition>> documents) {
        Catalogue.index()
                .getOrDefault(jurisdiction, new TreeMap<>())
                .forEach((document, editions) -> documents.put(
                        document,
                        editions.keySet().stream()
                                .map(id -> Catalogue.edition(jurisdiction, document, id))
                                .toList()));
    }

    /** Returns the code of the jurisdiction. */
    public String jurisdiction() {
        return jurisdiction;
    }

    /** Returns the documents, in the order of their short names. */
    public List<RuleDocument> documents() {
        return documents.entrySet().stream()
                .map(document -> new RuleDocument(document.getKey(), document.getValue()))
                .toList();
    }

    /**
     * Returns an edition by name.
     *
     * @param document the short name of the document, such as {@code nhbc-standards}
     * @param edition the short name of the edition, such as {@code 2020}
     * @return the edition
     * @throws ProblemsException if there is none; the message lists those there are
     */
    public Edition edition(String document, String edition) {
        List<Edition> editions = editions(document);
        return editions.stream()
                .filter(one -> one.id().equals(Objects.requireNonNull(edition, "edition")))
                .findFirst()
                .orElseThrow(() -> none(
                        NO_EDITION,
                        "edition of " + editions.get(0).jurisdiction() + "/" + document,
                        edition,
                        ids(editions)));
    }

    private List<Edition> editions(String document) {
        List<Edition> editions = documents.get(Objects.requireNonNull(document, "document"));
        if (editions == null) {
            throw none(NO_DOCUMENT, "document of " + jurisdiction, document, documents.keySet());
        }
        return editions;
    }

    /**
     * Returns the edition that is in force on a day, as far as the days are known. Editions whose days are not known are never
     * returned.
     *
     * @param document the short name of the document
     * @param day the day
     * @return the edition
     * @throws ProblemsException if none is; the message lists the editions and their days
     */
    public Edition inForceOn(String document, LocalDate day) {
        Objects.requireNonNull(day, "day");
        List<Edition> editions = editions(document);
        return editions.stream()
                .filter(edition ->
                        edition.inForceFrom().filter(from -> !from.isAfter(day)).isPresent())
                .filter(edition -> edition.inForceTo().filter(day::isAfter).isEmpty())
                .reduce((earlier, later) -> later)
                .orElseThrow(() -> new ProblemsException(List.of(Problem.error(
                        NONE_IN_FORCE,
                        "day for " + editions.get(0).jurisdiction() + "/" + document,
                        day,
                        "be one on which an edition held here is in force ("
                                + editions.stream().map(Rules::days).collect(Collectors.joining("; "))
                                + ")"))));
    }

    private static String days(Edition edition) {
        return edition.inForceFrom()
                .map(from -> edition.id() + " from " + from
                        + edition.inForceTo().map(to -> " to " + to).orElse(""))
                .orElse(edition.id() + " without a day");
    }

    /**
     * Returns several editions, to be asked in the order given; see {@link RuleSet#backedBy}.
     *
     * @param editions at least one, each as document and edition parted by a stroke: {@code nhbc-standards/2024}
     * @return the editions in order
     * @throws ProblemsException if one of them is none; the message lists those there are
     */
    public RuleSet inOrder(String... editions) {
        return inOrder(Arrays.asList(editions));
    }

    /**
     * Returns several editions, to be asked in the order given; see {@link RuleSet#backedBy}.
     *
     * @param editions at least one, each as document and edition parted by a stroke: {@code nhbc-standards/2024}
     * @return the editions in order
     * @throws ProblemsException with every edition that is none, and those there are
     */
    public RuleSet inOrder(List<String> editions) {
        List<Problem> problems = new ArrayList<>();
        List<Edition> found = new ArrayList<>();
        if (editions.isEmpty()) {
            problems.add(Problem.error(NO_EDITION, "editions", "none", "name at least one edition"));
        }
        for (String name : editions) {
            int stroke = name.indexOf('/');
            if (stroke < 0) {
                problems.add(Problem.error(
                        NO_EDITION,
                        "edition",
                        name,
                        "be document and edition parted by /, such as nhbc-standards/2024"));
                continue;
            }
            try {
                found.add(edition(name.substring(0, stroke), name.substring(stroke + 1)));
            } catch (ProblemsException none) {
                problems.addAll(none.problems());
            }
        }
        if (!problems.isEmpty()) {
            throw new ProblemsException(problems);
        }
        return new EditionsInOrder(found);
    }

    /**
     * Returns these documents with the caller's own rows beside them: a document of the source's name with the one edition
     * {@code own}. It hides none of ours; a source with the name of a document of ours is refused.
     *
     * @param source the own rows
     * @return the documents with it
     * @throws ProblemsException if there is a document of that name already
     */
    public Rules including(RowSource source) {
        if (documents.containsKey(source.name())) {
            throw new ProblemsException(List.of(Problem.error(
                    NO_DOCUMENT, "name of own rows", source.name(), "not be that of a document there is already")));
        }
        TreeMap<String, List<Edition>> more = new TreeMap<>(documents);
        more.put(source.name(), List.of(source.edition()));
        return new Rules(jurisdiction, more);
    }

    private static List<String> ids(List<Edition> editions) {
        return editions.stream().map(Edition::id).toList();
    }

    private static ProblemsException none(ProblemCode code, String where, String given, Collection<String> there) {
        return new ProblemsException(
                List.of(Problem.error(code, where, "\"" + given + "\"", "be one of " + String.join(", ", there))));
    }

    /** Returns the jurisdiction and the number of its documents. */
    @Override
    public String toString() {
        return "rules of " + jurisdiction + ": " + documents.size() + " documents";
    }
}
