package org.roofmaths.working;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.roofmaths.units.Length;
import org.roofmaths.units.Quantity;

/**
 * How a set of numbers was reached: a tree of figures, formulas and sources.
 *
 * <p>The tree is data; {@link #toText()}, {@link #toMarkdown()} and {@link #toTree()} are views of it. Values keep their full
 * precision; where one was rounded, the rounding is a step of its own. A number that was already shown is printed with
 * {@code (above)} instead of its steps.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Working implements Serializable {
    private static final long serialVersionUID = 1L;

    private final List<Worked<?>> steps;
    private final List<Worked<?>> roots;
    private final Set<Term<?>> blanks;

    private Working(List<Worked<?>> steps, List<Worked<?>> roots, Set<Term<?>> blanks) {
        this.steps = steps;
        this.roots = roots;
        this.blanks = blanks;
    }

    /**
     * Runs a calculation with a recorder that listens and returns what it recorded.
     *
     * @param calculation the calculation
     * @return its working
     */
    public static Working of(Consumer<Recorder> calculation) {
        return of(calculation, new Recording());
    }

    static Working of(Consumer<Recorder> calculation, Recording recording) {
        calculation.accept(recording);
        List<Worked<?>> steps = List.copyOf(recording.steps());
        Set<Worked<?>> used = Collections.newSetFromMap(new IdentityHashMap<>());
        steps.forEach(step -> collectSteps(step, used));
        List<Worked<?>> roots =
                steps.stream().filter(step -> !used.contains(step)).toList();
        return new Working(steps, roots, Set.of());
    }

    static Working ofStep(Worked<?> step) {
        return new Working(List.of(step), List.of(step), Set.of());
    }

    private static void collectSteps(Worked<?> step, Set<Worked<?>> used) {
        for (Input input : step.inputs()) {
            if (input.figure() instanceof Worked<?> inner && used.add(inner)) {
                collectSteps(inner, used);
            }
        }
    }

    /**
     * Returns the number recorded under a term: among the steps of this working first, then inside the figures they rest on.
     *
     * @param <T> the type of the number
     * @param term which number
     * @return the number with its own working
     * @throws IllegalArgumentException if this working has no such number; the message lists those it has
     */
    public <T> Worked<T> at(Term<T> term) {
        return find(term)
                .orElseThrow(() -> new IllegalArgumentException(
                        "no \"" + term.toText() + "\" in this working; it has: " + String.join(", ", termNames())));
    }

    /**
     * Returns the number recorded under a term, if there is one.
     *
     * @param <T> the type of the number
     * @param term which number
     * @return the number, or empty
     */
    @SuppressWarnings("unchecked") // a step is kept under the term it was recorded with, so the types agree
    public <T> Optional<Worked<T>> find(Term<T> term) {
        Objects.requireNonNull(term, "term");
        return allSteps().stream()
                .filter(step -> step.term().equals(term))
                .findFirst()
                .map(step -> (Worked<T>) step);
    }

    /**
     * Returns the figure that stands under a term, worked out or not: a step as {@link #at(Term)} finds it, or else the figure that a
     * step uses under that term.
     *
     * @param <T> the type of the number
     * @param term which number
     * @return the figure
     * @throws IllegalArgumentException if this working has no such number; the message lists those it has
     */
    @SuppressWarnings("unchecked") // a figure is kept under the term it was used with, so the types agree
    public <T> Figure<T> figure(Term<T> term) {
        Optional<Worked<T>> step = find(term);
        if (step.isPresent()) {
            return step.get();
        }
        return allSteps().stream()
                .flatMap(each -> each.inputs().stream())
                .filter(input -> input.term().equals(term))
                .findFirst()
                .map(input -> (Figure<T>) input.figure())
                .orElseThrow(() -> new IllegalArgumentException("no \"" + term.toText() + "\" in this working; it has: "
                        + String.join(", ", termNames()) + ", "
                        + String.join(
                                ", ",
                                inputs().stream()
                                        .map(input -> input.term().toText())
                                        .distinct()
                                        .toList())));
    }

    private List<String> termNames() {
        return allSteps().stream().map(step -> step.term().toText()).distinct().toList();
    }

    /** Returns every step, those of this calculation last to first, then the steps inside the figures they rest on. */
    private Collection<Worked<?>> allSteps() {
        Set<Worked<?>> all = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Worked<?>> ordered = new ArrayList<>();
        for (int i = steps.size() - 1; i >= 0; i--) {
            if (all.add(steps.get(i))) {
                ordered.add(steps.get(i));
            }
        }
        for (int i = 0; i < ordered.size(); i++) {
            for (Input input : ordered.get(i).inputs()) {
                if (input.figure() instanceof Worked<?> inner && all.add(inner)) {
                    ordered.add(inner);
                }
            }
        }
        return ordered;
    }

    /** Returns the steps of this calculation in the order in which they were reached. */
    public List<Worked<?>> steps() {
        return steps;
    }

    /** Returns the numbers that no later step of this working uses: what the calculation was for. */
    public List<Worked<?>> results() {
        return roots;
    }

    /** Returns the figures that were not worked out, each once: given, sourced and assumed, in the order in which they are used. */
    public List<Input> inputs() {
        Set<Input> leaves = new LinkedHashSet<>();
        Set<Worked<?>> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        steps.forEach(step -> collectLeaves(step, leaves, seen));
        return List.copyOf(leaves);
    }

    private static void collectLeaves(Worked<?> step, Set<Input> leaves, Set<Worked<?>> seen) {
        if (!seen.add(step)) {
            return;
        }
        for (Input input : step.inputs()) {
            if (input.figure() instanceof Worked<?> inner) {
                collectLeaves(inner, leaves, seen);
            } else {
                leaves.add(input);
            }
        }
    }

    /**
     * Returns the weakest ground that any number here stands on.
     *
     * @return empty if no sourced figure is involved
     */
    public Optional<Provenance> weakestProvenance() {
        return inputs().stream()
                .flatMap(input -> input.figure().weakestProvenance().stream())
                .reduce((a, b) -> b.isWeakerThan(a) ? b : a);
    }

    /**
     * Returns the same working with the values of some terms left blank, lettered (a), (b) … in the order in which they are printed;
     * {@link #key()} holds the answers.
     *
     * @param terms the terms to hide
     * @return the working with blanks
     * @throws IllegalArgumentException if one of the terms does not occur here
     */
    public Working blanked(Term<?>... terms) {
        Set<Term<?>> hidden = new LinkedHashSet<>(blanks);
        Set<Term<?>> present = new LinkedHashSet<>();
        allSteps().forEach(step -> {
            present.add(step.term());
            step.inputs().forEach(input -> present.add(input.term()));
        });
        for (Term<?> term : terms) {
            if (!present.contains(term)) {
                throw new IllegalArgumentException("no \"" + term.toText() + "\" in this working; it has: "
                        + String.join(", ", present.stream().map(Term::toText).toList()));
            }
            hidden.add(term);
        }
        return new Working(steps, roots, Collections.unmodifiableSet(hidden));
    }

    /** Returns the answers to the blanks in the order of their letters; empty if nothing is blanked. */
    public List<Blank> key() {
        return WorkingText.key(this);
    }

    /**
     * Evaluates the formula of every step on the figures it rests on and returns where the answer is not the recorded value.
     *
     * <p>Our own tests hold every working to this; whoever adds calculations of their own can do the same. Counts must agree exactly,
     * lengths within the storage resolution of 100 nm, everything else within one part in a thousand million.
     *
     * @return a sentence for each step that disagrees; empty if all agree
     */
    public List<String> disagreements() {
        return allSteps().stream()
                .map(Working::disagreement)
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<String> disagreement(Worked<?> step) {
        double formula = step.formula()
                .evaluate(term -> step.inputs().stream()
                        .filter(input ->
                                input.term().equals(term) || input.term().at("").equals(term))
                        .findFirst()
                        .map(input -> si(input.figure().value()))
                        .orElse(Double.NaN));
        double recorded = si(step.value());
        double allowed = step.value() instanceof Integer || step.value() instanceof Long
                ? 0
                : Math.abs(recorded) * 1e-9
                        + (step.value() instanceof Length ? Length.STORAGE_RESOLUTION.toSi() : 1e-9);
        return Math.abs(formula - recorded) <= allowed // false for NaN
                ? Optional.empty()
                : Optional.of(step.term().toText() + ": recorded " + step.value() + " (" + recorded
                        + " in SI units), but the formula \"" + step.formula().toText() + "\" gives " + formula);
    }

    private static double si(Object value) {
        if (value instanceof Quantity quantity) {
            return quantity.toSi();
        }
        return value instanceof Number number ? number.doubleValue() : Double.NaN;
    }

    Set<Term<?>> blanks() {
        return blanks;
    }

    /** Returns the working as plain text, each step indented under the number it leads to. */
    public String toText() {
        return WorkingText.text(this);
    }

    /** Returns the working as Markdown: nested lists with the formula of each step. */
    public String toMarkdown() {
        return WorkingText.markdown(this);
    }

    /**
     * Returns the working as plain maps, lists and strings, ready for any JSON writer. The form is versioned and described in
     * {@code docs/working-tree.md}.
     *
     * @return an unmodifiable map in a fixed order of keys
     */
    public Map<String, Object> toTree() {
        return WorkingTree.of(this);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Working w && steps.equals(w.steps) && blanks.equals(w.blanks);
    }

    @Override
    public int hashCode() {
        return Objects.hash(steps, blanks);
    }

    /** Returns the working as plain text. */
    @Override
    public String toString() {
        return toText();
    }
}
