package org.roofmaths.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;

/**
 * One object of a form: reads its fields, and collects every problem under the field's JSON Pointer.
 *
 * <p>A field that cannot be read is empty here and a problem there, so reading goes on to the last field and all problems of a form
 * come at once.
 */
final class Fields {
    private final Map<?, ?> map;
    private final String pointer;
    private final Problems problems;
    private final Set<String> known = new LinkedHashSet<>();

    private Fields(Map<?, ?> map, String pointer, Problems problems) {
        this.map = map;
        this.pointer = pointer;
        this.problems = problems;
    }

    static Fields ofForm(Map<?, ?> form, Problems problems) {
        return new Fields(form, "", problems);
    }

    String pointer(String field) {
        return pointer + "/" + field.replace("~", "~0").replace("/", "~1");
    }

    boolean has(String field) {
        known.add(field);
        return map.containsKey(field);
    }

    /** Reads a field by a parser that refuses bad text; a field that is not there is a problem. */
    <T> Optional<T> required(String field, String what, Function<String, ? extends T> parser) {
        return has(field) ? optional(field, what, parser) : missing(field, what);
    }

    /** Reads a field by a parser that refuses bad text; a field that is not there is just empty. */
    <T> Optional<T> optional(String field, String what, Function<String, ? extends T> parser) {
        if (!has(field)) {
            return Optional.empty();
        }
        if (map.get(field) instanceof String text) {
            try {
                return Optional.of(parser.apply(text));
            } catch (ProblemsException e) {
                e.problems().forEach(problem -> problems.add(problem.at(pointer(field))));
            } catch (IllegalArgumentException e) {
                refuse(field, Job.FIELD_UNREADABLE, "be " + what + " (" + e.getMessage() + ")");
            }
            return Optional.empty();
        }
        return refuse(field, Job.FIELD_UNREADABLE, "be " + what + ", written as text");
    }

    /** Reads a whole number not below a least one. */
    Optional<Integer> count(String field, int least) {
        if (!has(field)) {
            return Optional.empty();
        }
        if (map.get(field) instanceof Integer number && number >= least) {
            return Optional.of(number);
        }
        return refuse(field, Job.FIELD_UNREADABLE, "be a whole number of " + least + " or more");
    }

    Optional<Integer> requiredCount(String field, int least) {
        return has(field) ? count(field, least) : missing(field, "a whole number of " + least + " or more");
    }

    /** Reads a number that can be only one. */
    void requiredNumber(String field, int only) {
        if (!has(field)) {
            missing(field, "the number " + only);
        } else if (!Integer.valueOf(only).equals(map.get(field))) {
            refuse(field, Job.FIELD_UNREADABLE, "be the number " + only);
        }
    }

    /** Reads a list of words of a closed list; a word that is not of the list is a problem at its place. */
    <T> List<T> words(String field, Map<String, T> words) {
        List<T> read = new ArrayList<>();
        List<String> texts = texts(field);
        for (int i = 0; i < texts.size(); i++) {
            T value = words.get(texts.get(i));
            if (value == null) {
                problems.add(Problem.error(
                        Job.FIELD_UNREADABLE,
                        pointer(field) + "/" + i,
                        print(texts.get(i)),
                        "be one of " + String.join(", ", words.keySet())));
            } else {
                read.add(value);
            }
        }
        return read;
    }

    /** Returns the names of all fields; whoever asks knows them all. */
    List<String> names() {
        List<String> names = map.keySet().stream().map(String::valueOf).toList();
        known.addAll(names);
        return names;
    }

    /** Reads one word of a closed list. */
    <T> Optional<T> word(String field, Map<String, T> words) {
        if (!has(field)) {
            return Optional.empty();
        }
        if (map.get(field) instanceof String text && words.containsKey(text)) {
            return Optional.of(words.get(text));
        }
        return refuse(field, Job.FIELD_UNREADABLE, "be one of " + String.join(", ", words.keySet()));
    }

    <T> Optional<T> requiredWord(String field, Map<String, T> words) {
        return has(field) ? word(field, words) : missing(field, "one of " + String.join(", ", words.keySet()));
    }

    /** Reads an object inside this one; what is not there is empty, without a problem. */
    Optional<Fields> object(String field) {
        if (!has(field)) {
            return Optional.empty();
        }
        if (map.get(field) instanceof Map<?, ?> inner) {
            return Optional.of(new Fields(inner, pointer(field), problems));
        }
        return refuse(field, Job.FIELD_UNREADABLE, "be an object with fields of its own");
    }

    Optional<Fields> requiredObject(String field, String what) {
        return has(field) ? object(field) : missing(field, what);
    }

    /** Reads a list of texts. */
    List<String> texts(String field) {
        if (!has(field)) {
            return List.of();
        }
        if (map.get(field) instanceof List<?> list && list.stream().allMatch(String.class::isInstance)) {
            return list.stream().map(String.class::cast).toList();
        }
        refuse(field, Job.FIELD_UNREADABLE, "be a list of texts");
        return List.of();
    }

    /** Reads a list of texts, each held against a check that refuses bad ones at their place. */
    List<String> texts(String field, Consumer<String> check) {
        List<String> texts = texts(field);
        for (int i = 0; i < texts.size(); i++) {
            try {
                check.accept(texts.get(i));
            } catch (ProblemsException e) {
                String place = pointer(field) + "/" + i;
                e.problems().forEach(problem -> problems.add(problem.at(place)));
            }
        }
        return texts;
    }

    /** Reads a list of objects. */
    List<Fields> objects(String field) {
        if (!has(field)) {
            return List.of();
        }
        if (map.get(field) instanceof List<?> list && list.stream().allMatch(Map.class::isInstance)) {
            List<Fields> inner = new ArrayList<>();
            for (int i = 0; i < list.size(); i++) {
                inner.add(new Fields((Map<?, ?>) list.get(i), pointer(field) + "/" + i, problems));
            }
            return inner;
        }
        refuse(field, Job.FIELD_UNREADABLE, "be a list of objects");
        return List.of();
    }

    /** Reports every field that nobody asked for; to be called when all known fields were read. */
    void refuseOthers() {
        for (Object key : map.keySet()) {
            String field = String.valueOf(key);
            if (!known.contains(field)) {
                refuse(field, Job.FIELD_UNKNOWN, "not be there; the fields here are " + String.join(", ", known));
            }
        }
    }

    <T> Optional<T> missing(String field, String what) {
        known.add(field);
        problems.add(Problem.error(Job.FIELD_MISSING, pointer(field), "missing", "be " + what));
        return Optional.empty();
    }

    <T> Optional<T> refuse(String field, ProblemCode code, String allowed) {
        problems.add(Problem.error(code, pointer(field), print(map.get(field)), allowed));
        return Optional.empty();
    }

    /** Makes a thing of what was read; the problems it finds are put under the fields that its arguments are named for. */
    <T> Optional<T> make(Supplier<? extends T> maker) {
        try {
            return Optional.of(maker.get());
        } catch (ProblemsException e) {
            e.problems().forEach(problem -> problems.add(problem.at(placeOf(problem.where()))));
            return Optional.empty();
        }
    }

    /** The field that an argument is named for; this object if it has no such field. */
    private String placeOf(String argument) {
        String[] words = argument.split(" ", -1);
        StringBuilder field = new StringBuilder(words[0]);
        for (int i = 1; i < words.length; i++) {
            field.append(words[i].substring(0, 1).toUpperCase(Locale.ROOT)).append(words[i].substring(1));
        }
        return map.containsKey(field.toString()) ? pointer(field.toString()) : pointer.isEmpty() ? "/" : pointer;
    }

    static String print(@Nullable Object value) {
        if (value instanceof String text) {
            return '"' + (text.length() > 60 ? text.substring(0, 60) + "…" : text) + '"';
        }
        String text = Objects.toString(value);
        return text.length() > 60 ? text.substring(0, 60) + "…" : text;
    }
}
