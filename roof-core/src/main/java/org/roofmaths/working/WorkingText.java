package org.roofmaths.working;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Writes a working as text or Markdown and letters its blanks; one walk serves all three, so that sheet and key agree. */
final class WorkingText {
    private final Working working;
    private final boolean markdown;
    private final StringBuilder out = new StringBuilder();
    private final Set<Worked<?>> shown = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Map<Term<?>, Blank> letters = new LinkedHashMap<>();

    private WorkingText(Working working, boolean markdown) {
        this.working = working;
        this.markdown = markdown;
    }

    static String text(Working working) {
        return new WorkingText(working, false).write();
    }

    static String markdown(Working working) {
        return new WorkingText(working, true).write();
    }

    static List<Blank> key(Working working) {
        WorkingText walk = new WorkingText(working, false);
        walk.write();
        return new ArrayList<>(walk.letters.values());
    }

    private String write() {
        for (Worked<?> result : working.results()) {
            step(result, result.term(), 0);
        }
        return out.toString();
    }

    private void step(Worked<?> step, Term<?> as, int depth) {
        if (!shown.add(step)) {
            line(depth, as.toText() + " = " + value(as, step) + "  (above)");
            return;
        }
        line(depth, as.toText() + " = " + formula(step));
        for (Input input : step.inputs()) {
            if (input.figure() instanceof Worked<?> inner && inner.term().equals(input.term())) {
                step(inner, input.term(), depth + 1);
            } else if (input.figure() instanceof Worked<?> inner) {
                renamed(inner, input.term(), depth + 1);
            } else {
                line(
                        depth + 1,
                        input.term().toText() + " = " + value(input.term(), input.figure()) + "  ("
                                + input.figure().origin() + ")");
            }
        }
        for (String note : step.notes()) {
            line(depth + 1, "note: " + note);
        }
        line(markdown ? depth + 1 : depth, (markdown ? "**= " : "= ") + value(as, step) + (markdown ? "**" : ""));
    }

    /** A worked figure that another sum uses under a name of its own, such as a slope length that becomes a distance to divide. */
    private void renamed(Worked<?> inner, Term<?> as, int depth) {
        if (shown.contains(inner)) {
            line(depth, as.toText() + " = " + inner.term().toText() + " = " + value(as, inner) + "  (above)");
        } else {
            line(depth, as.toText() + " = " + inner.term().toText());
            step(inner, inner.term(), depth + 1);
        }
    }

    private String formula(Worked<?> step) {
        String text = step.formula().expression().toText();
        return markdown ? "`" + text + "`" : text;
    }

    private String value(Term<?> term, Figure<?> figure) {
        if (!working.blanks().contains(term)) {
            return figure.value().toString();
        }
        Blank blank = letters.computeIfAbsent(term, t -> new Blank(letter(letters.size()), t, figure.value()));
        return "(" + blank.letter() + ") ________";
    }

    /** a … z, then aa, ab …, as columns of a spreadsheet are lettered. */
    private static String letter(int index) {
        String last = String.valueOf((char) ('a' + index % 26));
        return index < 26 ? last : letter(index / 26 - 1) + last;
    }

    private void line(int depth, String content) {
        out.append("  ".repeat(depth))
                .append(markdown ? "- " : "")
                .append(content)
                .append('\n');
    }
}
