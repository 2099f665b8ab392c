package org.roofmaths.working;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The recorder that listens: it keeps every figure used and every step reached, in order. */
final class Recording implements Recorder {
    private final @Nullable Recording parent;
    private final String place;
    private final Map<Term<?>, Figure<?>> figures = new LinkedHashMap<>();
    private final List<Worked<?>> steps;
    private final List<String> notes = new ArrayList<>();

    /** What was replayed for this working: each figure once, however often it is used, so that its steps are shown once. */
    private final Map<Worked<?>, Worked<?>> replayed;

    Recording() {
        this(null, "", new ArrayList<>(), new IdentityHashMap<>());
    }

    private Recording(
            @Nullable Recording parent, String place, List<Worked<?>> steps, Map<Worked<?>, Worked<?>> replayed) {
        this.parent = parent;
        this.place = place;
        this.steps = steps;
        this.replayed = replayed;
    }

    /** Returns a recorder for a calculation whose answer this one uses. */
    Recording forFigure() {
        return new Recording(null, "", new ArrayList<>(), replayed);
    }

    @Override
    public <T> T use(Term<T> term, Figure<? extends T> figure) {
        figures.put(term, figure instanceof Worked<?> worked ? resolved(worked) : figure);
        return figure.value();
    }

    private Worked<?> resolved(Worked<?> worked) {
        Worked<?> known = replayed.get(worked);
        if (known == null) {
            known = worked.replayedWithin(this);
            replayed.put(worked, known);
        }
        return known;
    }

    @Override
    public <T> T record(Term<T> term, T value, Formula formula) {
        List<Input> inputs = new ArrayList<>();
        for (Term<?> needed : formula.terms()) {
            inputs.add(input(needed, formula));
        }
        Worked<T> step = Worked.step(placed(term), value, formula, inputs, notes);
        notes.clear();
        figures.put(term, step);
        for (Recording above = parent; above != null; above = above.parent) {
            above.figures.put(step.term(), step); // so that a sum over the places can name it
        }
        steps.add(step);
        return value;
    }

    private Input input(Term<?> needed, Formula formula) {
        for (Recording at = this; at != null; at = at.parent) {
            Figure<?> figure = at.figures.get(needed);
            if (figure != null) {
                return new Input(at.placed(needed), figure);
            }
        }
        throw new IllegalStateException("the formula \"" + formula.toText() + "\" names \"" + needed.toText()
                + "\", which was neither used nor recorded before");
    }

    private <T> Term<T> placed(Term<T> term) {
        return place.isEmpty() || !term.place().isEmpty() ? term : term.at(place);
    }

    @Override
    public void note(String remark) {
        notes.add(remark);
    }

    @Override
    public Recorder at(String inner) {
        return new Recording(this, place.isEmpty() ? inner : place + ", " + inner, steps, replayed);
    }

    @Override
    public boolean isOn() {
        return true;
    }

    List<Worked<?>> steps() {
        return steps;
    }
}
