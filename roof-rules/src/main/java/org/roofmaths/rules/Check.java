package org.roofmaths.rules;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Mend;
import org.roofmaths.units.Quantity;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Provenance;
import org.roofmaths.working.Sourced;

/**
 * What was got, held against what a row asks: the outcome, by how much, and which row decides.
 *
 * <p>A value that differs from a limit by no more than the stored resolution (100 nm of length, a millionth of a degree of pitch,
 * 1e-9 of a ratio) is the limit, and meets it with a margin of zero. Any larger shortfall is reported. A check says that a row is
 * met or missed; whether the roof is sound is for a person who knows the site, the unit's own declaration and the law of the place.
 *
 * <p>Immutable and thread-safe.
 *
 * @param <V> the type of the figure
 * @since 0.1
 */
public final class Check<V> implements Serializable {
    private static final long serialVersionUID = 1L;
    private static final int TREE_VERSION = 1;
    private static final int PRINTED_DECIMALS = 6;

    private final Ruling<V> ruling;
    private final @Nullable Figure<V> got;
    private final Outcome outcome;
    private final @Nullable Quantity margin;

    private Check(Ruling<V> ruling, @Nullable Figure<V> got, Outcome outcome, @Nullable Quantity margin) {
        this.ruling = ruling;
        this.got = got;
        this.outcome = outcome;
        this.margin = margin;
    }

    static <V> Check<V> of(Ruling<V> ruling, Optional<? extends Figure<V>> got) {
        Figure<V> figure = got.orElse(null);
        return switch (ruling.kind()) {
            case SILENT, NOT_COVERED -> new Check<>(ruling, figure, Outcome.NOT_COVERED, null);
            case FACT_MISSING -> new Check<>(ruling, figure, Outcome.NEEDS_JUDGEMENT, null);
            case FOUND ->
                figure == null
                        ? new Check<>(ruling, null, Outcome.NEEDS_JUDGEMENT, null)
                        : compared(ruling, ruling.orThrow().value(), figure);
        };
    }

    private static <V> Check<V> compared(Ruling<V> ruling, V asked, Figure<V> got) {
        Subject<V> subject = ruling.subject();
        Quantity margin = subject.kind().margin(subject.limit(), asked, got.value());
        if (margin != null) {
            return new Check<>(ruling, got, margin.toSi() < 0 ? Outcome.FALLS_SHORT : Outcome.MEETS, margin);
        }
        // Words and plain sizes limit nothing by themselves: the same is met, anything else is a person's to judge.
        return new Check<>(ruling, got, asked.equals(got.value()) ? Outcome.MEETS : Outcome.NEEDS_JUDGEMENT, null);
    }

    /** Returns how it came out. */
    public Outcome outcome() {
        return outcome;
    }

    /** Returns what was checked. */
    public Subject<V> subject() {
        return ruling.subject();
    }

    /** Returns the ruling that the check rests on. */
    public Ruling<V> ruling() {
        return ruling;
    }

    /** Returns the row that decides; empty if none holds. */
    public Optional<RuleRow<V>> row() {
        return ruling.row();
    }

    /** Returns what is asked, with its citation; empty if no row holds. */
    public Optional<Sourced<V>> asked() {
        return ruling.figure();
    }

    /** Returns what was got; empty if it was not told. */
    public Optional<Figure<V>> got() {
        return Optional.ofNullable(got);
    }

    /**
     * Returns by how much the row is met, negative if it is missed. A margin of pitch is an angle; that of a batten's section is the
     * lesser of its two; that of a range is the one at the nearer end.
     *
     * @return the margin; empty if nothing was compared
     */
    public Optional<Quantity> margin() {
        return Optional.ofNullable(margin);
    }

    /**
     * Returns the margin in per cent of what is asked, negative if it is missed.
     *
     * @return the per cent; empty if nothing was compared or what is asked has no size of its own, such as a range or zero
     */
    public OptionalDouble marginPercent() {
        if (margin == null || !(ruling.orThrow().value() instanceof Quantity asked) || asked.toSi() == 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(100 * margin.toSi() / asked.toSi());
    }

    /** Returns what a person has to confirm before the row may be relied on; empty if nothing. */
    public List<String> conditions() {
        return row().map(RuleRow::toConfirm).orElse(List.of());
    }

    /** Returns the facts that were not told and on which the outcome hangs; empty if none. */
    public List<Fact<?>> missing() {
        if (!ruling.missing().isEmpty() || got != null) {
            return ruling.missing();
        }
        return ruling.kind() == Ruling.Kind.FOUND
                ? subject().measuredBy().<List<Fact<?>>>map(List::of).orElse(List.of())
                : List.of();
    }

    /** Returns what would make it meet the row: the least change of what was got; empty unless it falls short. */
    public List<Mend> mends() {
        if (outcome != Outcome.FALLS_SHORT || margin == null) {
            return List.of();
        }
        String what = subject().measuredBy().map(Fact::words).orElse(subject().words());
        Quantity shortfall = withoutSign(margin);
        String result = "at the limit of row " + rowId();
        return List.of(
                switch (subject().limit()) {
                    case AT_LEAST -> Mend.of(what, text(shortfall) + " more", shortfall, result);
                    case AT_MOST -> Mend.of(what, text(shortfall) + " less", margin, result);
                    case WITHIN, AS_PRINTED -> Mend.of(what, text(shortfall) + " nearer the range", shortfall, result);
                });
    }

    /** Every quantity prints its sign first and reads its own print back. */
    private static Quantity withoutSign(Quantity quantity) {
        String printed = quantity.toString();
        return printed.startsWith("-") ? quantity.kind().parse(printed.substring(1)) : quantity;
    }

    /** Returns the weakest ground that the check stands on: the row's, or that of what was got; empty if neither is sourced. */
    public Optional<Provenance> weakestProvenance() {
        return Stream.concat(row().map(RuleRow::provenance).stream(), got().flatMap(Figure::weakestProvenance).stream())
                .reduce((a, b) -> b.isWeakerThan(a) ? b : a);
    }

    private String rowId() {
        return row().map(RuleRow::id).orElse("");
    }

    /**
     * Returns the check in words: how it came out and by how much, the row with its source and the kind of its document, and what a
     * person has still to confirm.
     *
     * @return for example {@code Meets row least-pitch.concrete-single-lap by 2° (6.7 %): pitch 32°, at least 30° asked. …}
     */
    public String toText() {
        StringBuilder text = new StringBuilder(sentence());
        row().ifPresent(row -> text.append(' ').append(row.citation().toText()).append('.'));
        weakestProvenance()
                .filter(weakest -> weakest.isWeakerThan(Provenance.QUOTED))
                .ifPresent(weakest ->
                        text.append(" Rests on ").append(weakness(weakest)).append('.'));
        conditions()
                .forEach(condition ->
                        text.append(" To be confirmed: ").append(condition).append('.'));
        mends().forEach(mend -> text.append(" Mend: ").append(mend).append('.'));
        return text.toString();
    }

    private static String weakness(Provenance weakest) {
        return weakest == Provenance.MEMORY
                ? "a figure that is recalled, not read"
                : "a figure of trade habit or of a page without standing";
    }

    private String sentence() {
        return switch (outcome) {
            case MEETS -> "Meets row " + rowId() + marginText(" by ") + ": " + gotAndAsked() + ".";
            case FALLS_SHORT -> "Short" + marginText(" by ") + " of row " + rowId() + ": " + gotAndAsked() + ".";
            case NOT_COVERED -> "Not covered: " + ruling.message() + ".";
            case NEEDS_JUDGEMENT -> "Needs a person's judgement: " + openQuestion() + ".";
        };
    }

    private String openQuestion() {
        if (ruling.kind() == Ruling.Kind.FACT_MISSING) {
            return ruling.message();
        }
        return got == null
                ? subject().measuredBy().map(Fact::words).orElse("what was got") + " was not told; " + asking()
                : gotAndAsked();
    }

    private String marginText(String before) {
        if (margin == null) {
            return "";
        }
        OptionalDouble percent = marginPercent();
        String share =
                percent.isEmpty() ? "" : String.format(Locale.ROOT, " (%.1f %%)", Math.abs(percent.getAsDouble()));
        return before + text(withoutSign(margin)) + share;
    }

    /** Prints a difference without the digits that lie below the resolution at which limits are compared. */
    private static String text(Quantity quantity) {
        String printed = quantity.toString();
        int end = 0;
        while (end < printed.length() && ".0123456789E-".indexOf(printed.charAt(end)) >= 0) {
            end++;
        }
        return new BigDecimal(printed.substring(0, end))
                        .setScale(PRINTED_DECIMALS, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString()
                + printed.substring(end);
    }

    private String gotAndAsked() {
        String what = subject().measuredBy().map(Fact::words).orElse("got");
        return what + " " + got().map(Figure::value).orElseThrow() + ", " + asking();
    }

    private String asking() {
        return subject().limit() + " " + asked().map(Sourced::value).orElseThrow() + " asked";
    }

    /**
     * Returns the check as plain maps, lists and strings, ready for any JSON writer.
     *
     * @return a map with the keys version, subject, outcome, message, asked, got, margin, marginPercent, row, edition, locus,
     *     asPrinted, kindOfDocument, provenance, weakestProvenance, conditions, missing and mends; what does not apply is left out
     */
    public Map<String, Object> toTree() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("version", TREE_VERSION);
        map.put("subject", subject().id());
        map.put("outcome", outcome.name());
        map.put("message", toText());
        asked().ifPresent(asked -> map.put("asked", asked.value().toString()));
        got().ifPresent(figure -> map.put("got", figure.value().toString()));
        margin().ifPresent(by -> map.put("margin", by.toString()));
        marginPercent().ifPresent(percent -> map.put("marginPercent", percent));
        row().ifPresent(row -> {
            map.put("row", row.id());
            map.put("edition", row.reference());
            map.put("locus", row.locus());
            map.put("asPrinted", row.asPrinted());
            map.put("kindOfDocument", row.citation().kind().toString());
            map.put("provenance", row.provenance().toString());
        });
        weakestProvenance().ifPresent(weakest -> map.put("weakestProvenance", weakest.toString()));
        map.put("conditions", List.copyOf(conditions()));
        map.put("missing", missing().stream().map(Fact::id).toList());
        List<Object> ways = new ArrayList<>();
        mends().forEach(mend -> ways.add(mend.toString()));
        map.put("mends", Collections.unmodifiableList(ways));
        return Collections.unmodifiableMap(map);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Check<?> c && ruling.equals(c.ruling) && Objects.equals(got, c.got);
    }

    @Override
    public int hashCode() {
        return Objects.hash(ruling, got);
    }

    /** Returns the check in words. */
    @Override
    public String toString() {
        return toText();
    }
}
