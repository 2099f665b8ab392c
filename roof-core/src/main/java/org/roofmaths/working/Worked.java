package org.roofmaths.working;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The answer of a sum, with its working.
 *
 * <p>A call that yields one number returns one of these. Its tree is not kept: when it is asked for, the same calculation runs
 * again with a recorder that listens.
 *
 * <p>Immutable and thread-safe.
 *
 * @param <T> the type of the value
 * @since 0.1
 */
public final class Worked<T> implements Figure<T>, HasWorking {
    private static final long serialVersionUID = 1L;

    private final Term<T> term;
    private final T value;
    private final @Nullable Calculation<T> calculation;
    private final @Nullable Formula formula;
    private final List<Input> inputs;
    private final List<String> notes;

    private Worked(
            Term<T> term,
            T value,
            @Nullable Calculation<T> calculation,
            @Nullable Formula formula,
            List<Input> inputs,
            List<String> notes) {
        this.term = Objects.requireNonNull(term, "term");
        this.value = Objects.requireNonNull(value, "value");
        this.calculation = calculation;
        this.formula = formula;
        this.inputs = List.copyOf(inputs);
        this.notes = List.copyOf(notes);
    }

    /**
     * Runs a calculation and returns its answer.
     *
     * @param <T> the type of the value
     * @param term the term that the calculation records as its answer
     * @param calculation the sum; it must give the same answer each time it runs
     * @return the answer, able to show its working
     */
    public static <T> Worked<T> by(Term<T> term, Calculation<T> calculation) {
        return new Worked<>(term, calculation.run(Recorder.off()), calculation, null, List.of(), List.of());
    }

    static <T> Worked<T> step(Term<T> term, T value, Formula formula, List<Input> inputs, List<String> notes) {
        return new Worked<>(term, value, null, formula, inputs, notes);
    }

    private Worked<T> replayed() {
        return replayedWithin(new Recording());
    }

    /** Runs the calculation again for a working under way, which keeps what was replayed before. */
    Worked<T> replayedWithin(Recording recording) {
        return calculation == null
                ? this
                : Working.of(calculation::run, recording.forFigure()).at(term);
    }

    /** Returns which number this is. */
    public Term<T> term() {
        return term;
    }

    @Override
    public T value() {
        return value;
    }

    /** Returns the formula of the last step. */
    public Formula formula() {
        return Objects.requireNonNull(replayed().formula, "formula");
    }

    /** Returns the figures that the formula names, in its order. */
    public List<Input> inputs() {
        return replayed().inputs;
    }

    /** Returns the remarks on the last step; empty if there are none. */
    public List<String> notes() {
        return replayed().notes;
    }

    @Override
    public Working working() {
        return Working.ofStep(replayed());
    }

    @Override
    public Optional<Provenance> weakestProvenance() {
        return inputs().stream()
                .flatMap(input -> input.figure().weakestProvenance().stream())
                .reduce((a, b) -> b.isWeakerThan(a) ? b : a);
    }

    @Override
    public String origin() {
        return "";
    }

    /** Two worked figures are equal if term and value are, reached by the same formula from equal figures. */
    @Override
    public boolean equals(Object other) {
        if (this == other) {
            return true;
        }
        if (!(other instanceof Worked<?> w) || !term.equals(w.term) || !value.equals(w.value)) {
            return false;
        }
        return formula().equals(w.formula()) && inputs().equals(w.inputs());
    }

    @Override
    public int hashCode() {
        return Objects.hash(term, value);
    }

    /** Returns for example {@code rise = 2520.747138 mm}. */
    @Override
    public String toString() {
        return term + " = " + value;
    }
}
