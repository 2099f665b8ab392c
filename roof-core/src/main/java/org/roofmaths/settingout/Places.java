package org.roofmaths.settingout;

import java.util.List;
import java.util.function.Function;
import org.roofmaths.roof.End;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;

/**
 * Where a step is recorded: at the left end, at the right end, or once for both ends where they are alike. Formulas are made only
 * when somebody listens.
 */
final class Places {
    private static final List<Places> ONE = List.of(new Places(End.LEFT, ""));
    private static final List<Places> TWO = List.of(new Places(End.LEFT, "left"), new Places(End.RIGHT, "right"));

    private final End end;
    private final String name;

    private Places(End end, String name) {
        this.end = end;
        this.name = name;
    }

    static List<Places> of(boolean endsAreAlike) {
        return endsAreAlike ? ONE : TWO;
    }

    static Places at(String name) {
        return new Places(End.LEFT, name);
    }

    End end() {
        return end;
    }

    /** The term at this place. */
    <T> Term<T> of(Term<T> term) {
        return name.isEmpty() ? term : term.at(name);
    }

    <T> T use(Recorder r, Term<T> term, org.roofmaths.working.Figure<? extends T> figure) {
        return r.isOn() ? r.use(of(term), figure) : figure.value();
    }

    <T> T record(Recorder r, Term<T> term, T value, Function<Places, Expression> by) {
        return r.isOn() ? r.record(of(term), value, Formula.of(of(term), by.apply(this))) : value;
    }
}
