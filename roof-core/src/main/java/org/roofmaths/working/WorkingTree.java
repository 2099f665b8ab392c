package org.roofmaths.working;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.roofmaths.units.Quantity;

/** Writes a working as plain maps and lists; the form is described in docs/working-tree.md. */
final class WorkingTree {
    private static final int VERSION = 1;

    private final Working working;
    private final IdentityHashMap<Worked<?>, Integer> ids = new IdentityHashMap<>();

    private WorkingTree(Working working) {
        this.working = working;
    }

    static Map<String, Object> of(Working working) {
        WorkingTree tree = new WorkingTree(working);
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("format", "roof-maths working");
        map.put("version", VERSION);
        List<Object> results = new ArrayList<>();
        working.results().forEach(result -> results.add(tree.step(result, result.term())));
        map.put("results", Collections.unmodifiableList(results));
        working.weakestProvenance().ifPresent(weakest -> map.put("weakestProvenance", weakest.toString()));
        return Collections.unmodifiableMap(map);
    }

    private Map<String, Object> step(Worked<?> step, Term<?> as) {
        Map<String, Object> map = named(as, step);
        Integer known = ids.get(step);
        if (known != null) {
            map.put("sameAs", known);
            return Collections.unmodifiableMap(map);
        }
        ids.put(step, ids.size() + 1);
        map.put("id", ids.size());
        map.put("kind", "worked");
        map.put("formula", step.formula().toText());
        List<Object> inputs = new ArrayList<>();
        step.inputs().forEach(input -> inputs.add(input(input)));
        map.put("inputs", Collections.unmodifiableList(inputs));
        if (!step.notes().isEmpty()) {
            map.put("notes", step.notes());
        }
        return Collections.unmodifiableMap(map);
    }

    private Map<String, Object> input(Input input) {
        Figure<?> figure = input.figure();
        if (figure instanceof Worked<?> worked) {
            return step(worked, input.term());
        }
        Map<String, Object> map = named(input.term(), figure);
        if (figure instanceof Sourced<?> sourced) {
            map.put("kind", "sourced");
            map.put("source", citation(sourced.citation()));
        } else if (figure instanceof Assumed<?> assumed) {
            map.put("kind", "assumed");
            map.put("why", assumed.why());
            map.put("howToChange", assumed.howToChange());
        } else {
            map.put("kind", "given");
            if (!figure.origin().equals("given")) {
                map.put("origin", figure.origin());
            }
        }
        return Collections.unmodifiableMap(map);
    }

    private Map<String, Object> named(Term<?> term, Figure<?> figure) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("term", term.name());
        if (!term.place().isEmpty()) {
            map.put("place", term.place());
        }
        map.put("symbol", term.symbol());
        if (working.blanks().contains(term)) {
            map.put("blank", true);
        } else {
            map.put("value", figure.value().toString());
            if (figure.value() instanceof Quantity quantity) {
                map.put("si", quantity.toSi());
            }
        }
        return map;
    }

    private static Map<String, Object> citation(Citation citation) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("kind", citation.kind().toString());
        map.put("title", citation.title());
        map.put("edition", citation.edition());
        map.put("locus", citation.locus());
        map.put("rowId", citation.rowId());
        map.put("asPrinted", citation.asPrinted());
        map.put("provenance", citation.provenance().toString());
        return Collections.unmodifiableMap(map);
    }
}
