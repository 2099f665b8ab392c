package org.roofmaths.rules;

import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.roofmaths.covering.UnitKind;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;

/**
 * What is known of a roof when a rule is asked for: kind of unit, pitch, exposure and so on, as far as they were told.
 *
 * <p>A fact that a row needs and that was not told is never guessed: the answer is that it is missing. Any fact of {@link Facts} can
 * be told by {@link #withFact(Fact, Object)}; the usual ones have methods of their own. Immutable and thread-safe; two situations are
 * equal if they tell the same facts.
 *
 * <pre>{@code
 * Situation.of(UnitKind.CONCRETE_SINGLE_LAP_TILE).withPitch(pitch("32°")).withExposure(Exposure.SHELTERED)
 * }</pre>
 *
 * @since 0.1
 */
public final class Situation implements Serializable {
    private static final long serialVersionUID = 1L;

    /** A word that is none of those a fact may be. */
    static final ProblemCode NO_SUCH_CHOICE =
            ProblemCode.of("situation.no-such-choice", "Choose one of the words that the message lists.");

    private static final Situation UNKNOWN = new Situation(Map.of());

    private final LinkedHashMap<Fact<?>, Object> told;

    private Situation(Map<Fact<?>, Object> told) {
        this.told = new LinkedHashMap<>(told);
    }

    /** Returns the situation of which nothing is known yet. */
    public static Situation unknown() {
        return UNKNOWN;
    }

    /**
     * Returns a situation of which the kind of unit is known.
     *
     * @param kind the kind of unit
     * @return the situation
     */
    public static Situation of(UnitKind kind) {
        return UNKNOWN.withFact(Facts.UNIT_KIND, kind);
    }

    /**
     * Returns this situation with one fact told, or told anew.
     *
     * @param <T> the type of its value
     * @param fact the fact
     * @param value its value
     * @return the situation with it
     * @throws ProblemsException if the fact is a choice of words and the value is none of them
     */
    public <T> Situation withFact(Fact<T> fact, T value) {
        Objects.requireNonNull(fact, "fact");
        Objects.requireNonNull(value, "value");
        if (fact.isChoice() && !fact.choices().contains(value)) {
            throw new ProblemsException(
                    List.of(Problem.error(NO_SUCH_CHOICE, fact.words(), value, "be one of " + fact.form())));
        }
        Map<Fact<?>, Object> more = new LinkedHashMap<>(told);
        more.put(fact, value);
        return new Situation(more);
    }

    /**
     * Returns this situation without what it tells of some facts.
     *
     * @param facts the facts
     * @return the situation without them
     */
    public Situation without(Fact<?>... facts) {
        Map<Fact<?>, Object> fewer = new LinkedHashMap<>(told);
        for (Fact<?> fact : facts) {
            fewer.remove(fact);
        }
        return new Situation(fewer);
    }

    /**
     * Returns this situation with the kind of unit.
     *
     * @param kind the kind of unit
     * @return the situation with it
     */
    public Situation withUnit(UnitKind kind) {
        return withFact(Facts.UNIT_KIND, kind);
    }

    /**
     * Returns this situation with the rafter pitch at its flattest part, which is the pitch that rows mean.
     *
     * @param pitch the rafter pitch, not the true pitch of the laid unit nor that of a hip or valley
     * @return the situation with it
     */
    public Situation withPitch(Pitch pitch) {
        return withFact(Facts.PITCH, pitch);
    }

    /**
     * Returns this situation with the exposure of the site.
     *
     * @param exposure the exposure
     * @return the situation with it
     */
    public Situation withExposure(Exposure exposure) {
        return withFact(Facts.EXPOSURE, exposure);
    }

    /**
     * Returns this situation with the headlap got.
     *
     * @param headlap the headlap
     * @return the situation with it
     */
    public Situation withHeadlap(Length headlap) {
        return withFact(Facts.HEADLAP, headlap);
    }

    /**
     * Returns this situation with the gauge got.
     *
     * @param gauge the gauge
     * @return the situation with it
     */
    public Situation withGauge(Length gauge) {
        return withFact(Facts.GAUGE, gauge);
    }

    /**
     * Returns this situation with the rafter centres.
     *
     * @param centres middle of rafter to middle of rafter
     * @return the situation with them
     */
    public Situation withRafterCentres(Length centres) {
        return withFact(Facts.RAFTER_CENTRES, centres);
    }

    /**
     * Returns this situation with the length of the rafter along the slope.
     *
     * @param length the length
     * @return the situation with it
     */
    public Situation withRafterLength(Length length) {
        return withFact(Facts.RAFTER_LENGTH, length);
    }

    /**
     * Returns this situation with the form of the roof.
     *
     * @param form the form
     * @return the situation with it
     */
    public Situation withRoofForm(RoofForm form) {
        return withFact(Facts.ROOF_FORM, form);
    }

    /**
     * Returns this situation with the span between the plates.
     *
     * @param span the span
     * @return the situation with it
     */
    public Situation withSpan(Length span) {
        return withFact(Facts.SPAN, span);
    }

    /**
     * Returns this situation with the underlay and what lies under it.
     *
     * @param underlay the class of the underlay
     * @param support what lies under it
     * @return the situation with both
     */
    public Situation withUnderlay(UnderlayClass underlay, UnderlaySupport support) {
        return withFact(Facts.UNDERLAY, underlay).withFact(Facts.SUPPORT, support);
    }

    /**
     * Returns this situation with the place of the insulation.
     *
     * @param insulation where it lies
     * @return the situation with it
     */
    public Situation withInsulation(Insulation insulation) {
        return withFact(Facts.INSULATION, insulation);
    }

    /**
     * Returns this situation at one place of the roof.
     *
     * @param detail the place
     * @return the situation there
     */
    public Situation at(Detail detail) {
        return withFact(Facts.DETAIL, detail);
    }

    /**
     * Returns what was told of a fact.
     *
     * @param <T> the type of its value
     * @param fact the fact
     * @return its value; empty if it was not told
     */
    public <T> Optional<T> get(Fact<T> fact) {
        return Optional.ofNullable(told(fact));
    }

    /** Returns what was told of a fact, or null. */
    <T> @Nullable T told(Fact<T> fact) {
        return fact.valueType().cast(told.get(fact));
    }

    /** Returns everything told, in the order in which it was told. */
    public Map<Fact<?>, Object> facts() {
        return Collections.unmodifiableMap(told);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Situation s && told.equals(s.told);
    }

    @Override
    public int hashCode() {
        return told.hashCode();
    }

    /** Returns what was told in one line, such as {@code kind of unit natural-slate, pitch 40°}. */
    @Override
    public String toString() {
        return told.isEmpty()
                ? "nothing told"
                : told.entrySet().stream()
                        .map(fact -> fact.getKey().words() + " " + fact.getKey().text(fact.getValue()))
                        .collect(Collectors.joining(", "));
    }
}
