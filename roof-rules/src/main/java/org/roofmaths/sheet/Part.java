package org.roofmaths.sheet;

import java.util.ArrayList;
import java.util.List;
import org.roofmaths.problem.Problem;
import org.roofmaths.rules.Check;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Term;

/** Gathers what stands under one heading of a site sheet. */
final class Part {
    private final SheetStep step;
    private final List<SheetItem> items = new ArrayList<>();

    Part(SheetStep step) {
        this.step = step;
    }

    Part line(String label, String shown, HasWorking source, Term<?> term) {
        items.add(SheetLine.of(label, shown, source, term));
        return this;
    }

    Part table(String title, List<String> header, List<List<String>> rows) {
        if (!rows.isEmpty()) {
            items.add(new SheetTable(title, header, rows));
        }
        return this;
    }

    <V> Part checks(String label, List<Check<V>> checks) {
        checks.forEach(check -> items.add(new SheetCheck(label, check)));
        return this;
    }

    Part remark(String text) {
        return sentence(SheetSentence.Kind.REMARK, text);
    }

    Part caution(String text) {
        return sentence(SheetSentence.Kind.CAUTION, text);
    }

    Part doesNotApply(String why) {
        return sentence(SheetSentence.Kind.DOES_NOT_APPLY, why);
    }

    Part step(String text) {
        return sentence(SheetSentence.Kind.STEP, text);
    }

    Part holdPoint(String text) {
        return sentence(SheetSentence.Kind.HOLD_POINT, text);
    }

    /** Repeats the problems of a part where a reader looks for it; the ways to mend them stand at the top of the sheet. */
    Part problems(String face, List<Problem> problems) {
        problems.forEach(
                problem -> remark(face + ": " + problem.message() + ". The top of the sheet says what would mend it."));
        return this;
    }

    private Part sentence(SheetSentence.Kind kind, String text) {
        items.add(new SheetSentence(kind, text));
        return this;
    }

    SheetSection section() {
        if (items.isEmpty()) {
            remark("Could not be worked out; the problems at the top say why.");
        }
        return new SheetSection(step, items);
    }
}
