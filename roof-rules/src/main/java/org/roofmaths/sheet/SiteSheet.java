package org.roofmaths.sheet;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roofmaths.order.Order;
import org.roofmaths.problem.Problem;
import org.roofmaths.rules.Check;
import org.roofmaths.rules.Outcome;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Term;

/**
 * The whole of a job on one sheet: from the drawing agreed to the page of marks and the order, each number with its working, each rule
 * with its source.
 *
 * <p>A sheet with problems says so at its top and still shows what could be worked out. Views: {@link #toText()}, {@link #toMarkdown()},
 * {@link #toTree()}.
 *
 * @since 0.1
 */
public final class SiteSheet implements Serializable {
    private static final long serialVersionUID = 1L;

    private final Job job;
    private final List<SheetSection> sections;
    private final List<Problem> problems;
    private final @Nullable Order order;

    private SiteSheet(Job job, List<SheetSection> sections, List<Problem> problems, @Nullable Order order) {
        this.job = job;
        this.sections = List.copyOf(sections);
        this.problems = List.copyOf(problems);
        this.order = order;
    }

    /**
     * Works out a job.
     *
     * @param job the job
     * @return its sheet; what cannot be worked out is a problem on it, not an exception
     */
    public static SiteSheet of(Job job) {
        JobFigures figures = new JobFigures(Objects.requireNonNull(job, "job"));
        List<SheetSection> sections = new ArrayList<>();
        sections.addAll(new ShapeParts(figures).sections());
        sections.addAll(new CoverParts(figures).sections());
        sections.addAll(new JunctionParts(figures).sections());
        sections.addAll(new SiteParts(figures).sections());
        return new SiteSheet(job, sections, figures.problems(), figures.order().orElse(null));
    }

    /** Returns the job. */
    public Job job() {
        return job;
    }

    /** Returns the parts of the sheet, in the order in which things are decided. */
    public List<SheetSection> sections() {
        return sections;
    }

    /**
     * Returns one part of the sheet.
     *
     * @param step which part
     * @return the part
     */
    public SheetSection section(SheetStep step) {
        return sections.stream()
                .filter(section -> section.step() == step)
                .findFirst()
                .orElseThrow();
    }

    /** Returns every problem: errors, findings and notices; empty if there are none. */
    public List<Problem> problems() {
        return problems;
    }

    /** Returns every check on the sheet, in its order. */
    public List<Check<?>> checks() {
        List<Check<?>> checks = new ArrayList<>();
        for (SheetSection section : sections) {
            section.items().forEach(item -> {
                if (item instanceof SheetCheck check) {
                    checks.add(check.check());
                }
            });
        }
        return List.copyOf(checks);
    }

    /** Returns the outcomes of the checks in one line, worst first; empty if nothing was checked. */
    String outcomes() {
        List<String> counts = new ArrayList<>();
        for (Outcome outcome : Outcome.values()) {
            long count = checks().stream()
                    .filter(check -> check.outcome() == outcome)
                    .count();
            if (count > 0) {
                counts.add(outcome + ": " + count);
            }
        }
        return String.join("; ", counts);
    }

    /** Returns the labels of the checks that fall short, each once, with the number of its part of the sheet. */
    List<String> shortfalls() {
        List<String> labels = new ArrayList<>();
        for (SheetSection section : sections) {
            section.items().forEach(item -> {
                if (item instanceof SheetCheck check && check.check().outcome() == Outcome.FALLS_SHORT) {
                    labels.add(check.label() + " (part " + (section.step().ordinal() + 1) + ")");
                }
            });
        }
        return labels.stream().distinct().toList();
    }

    /** Returns the order; empty if nothing could be counted. */
    public Optional<Order> order() {
        return Optional.ofNullable(order);
    }

    /** Returns every line with a number, in the order of the sheet. */
    public List<SheetLine> lines() {
        List<SheetLine> lines = new ArrayList<>();
        for (SheetSection section : sections) {
            section.items().forEach(item -> {
                if (item instanceof SheetLine line) {
                    lines.add(line);
                }
            });
        }
        return List.copyOf(lines);
    }

    /**
     * Returns the numbers on the sheet that stand under a term, with their workings; one for each face or place that has it.
     *
     * @param <T> the type of the number
     * @param term which number
     * @return the numbers in the order of the sheet; empty if the sheet has none
     */
    @SuppressWarnings("unchecked") // a line is found under the term it was recorded with, so the types agree
    public <T> List<Figure<T>> figures(Term<T> term) {
        return lines().stream()
                .filter(line -> line.term().equals(term))
                .map(line -> (Figure<T>) line.figure())
                .toList();
    }

    /** Returns the sheet as plain text, for the terminal and for paper. */
    public String toText() {
        return SheetText.of(this);
    }

    /** Returns the sheet as Markdown. */
    public String toMarkdown() {
        return SheetMarkdown.of(this);
    }

    /** Returns the sheet as plain maps, lists, texts and numbers, ready for any JSON writer. */
    public Map<String, Object> toTree() {
        return SheetTree.of(this);
    }

    /** Returns a summary, such as {@code site sheet for fernside: 3 problems, 9 checks, 43 lines}. */
    @Override
    public String toString() {
        return "site sheet for " + job.name() + ": " + problems.size()
                + (problems.size() == 1 ? " problem, " : " problems, ") + checks().size() + " checks, " + lines().size()
                + " lines";
    }
}
