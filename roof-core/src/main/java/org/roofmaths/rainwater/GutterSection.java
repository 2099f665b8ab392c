package org.roofmaths.rainwater;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * The cross-section of a gutter up to the level at which it spills.
 *
 * <p>A true half-round of diameter {@code D} has {@code π × D² ÷ 8}: 3926.99 mm² for 100 mm. A nominal half-round holds less than a true
 * one: give its measured section.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class GutterSection implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The diameter of a half-round gutter. */
    public static final Term<Length> DIAMETER = Term.of("diameter of the gutter", "Dg", Length.class);
    /** The width of a rectangular gutter. */
    public static final Term<Length> WIDTH = Term.of("width of the gutter", "Wg", Length.class);
    /** The depth of water at which the gutter spills. */
    public static final Term<Length> DEPTH = Term.of("depth of the gutter to its spill level", "hg", Length.class);
    /** The section up to the spill level. */
    public static final Term<Area> SECTION = Term.of("section of the gutter", "S", Area.class);

    private static final Formula HALF_CIRCLE = Formula.of(
            SECTION, DIAMETER.squared().times(Expression.number(StrictMath.PI)).over(8));
    private static final Formula HALF_DIAMETER = Formula.of(DEPTH, DIAMETER.over(2));
    private static final Formula RECTANGLE = Formula.of(SECTION, WIDTH.times(DEPTH));

    /** How the section is told. */
    private enum Kind {
        HALF_ROUND,
        RECTANGULAR,
        MEASURED
    }

    private final Kind kind;
    private final Figure<Length> first; // diameter, width or depth
    private final @Nullable Figure<Length> depth;
    private final @Nullable Figure<Area> measured;

    private GutterSection(
            Kind kind, Figure<Length> first, @Nullable Figure<Length> depth, @Nullable Figure<Area> measured) {
        this.kind = kind;
        this.first = first;
        this.depth = depth;
        this.measured = measured;
    }

    /**
     * Returns a true half-round.
     *
     * @param diameter its inside diameter, above zero
     * @return the section
     * @throws org.roofmaths.problem.ProblemsException if the diameter is not above zero
     */
    public static GutterSection halfRound(Length diameter) {
        Problems problems = Problems.none();
        requirePositive(problems, DIAMETER, diameter);
        problems.throwIfErrors();
        return new GutterSection(Kind.HALF_ROUND, Given.of(diameter), null, null);
    }

    /**
     * Returns a rectangle.
     *
     * @param width its inside width, above zero
     * @param depth its depth to the spill level, above zero
     * @return the section
     * @throws org.roofmaths.problem.ProblemsException if a size is not above zero
     */
    public static GutterSection rectangular(Length width, Length depth) {
        Problems problems = Problems.none();
        requirePositive(problems, WIDTH, width);
        requirePositive(problems, DEPTH, depth);
        problems.throwIfErrors();
        return new GutterSection(Kind.RECTANGULAR, Given.of(width), Given.of(depth), null);
    }

    /**
     * Returns a section of any shape, as its maker states it or as it was measured.
     *
     * @param section the area up to the spill level, above zero
     * @param depth the depth to the spill level, above zero
     * @return the section
     * @throws org.roofmaths.problem.ProblemsException if a size is not above zero
     */
    public static GutterSection measured(Figure<Area> section, Figure<Length> depth) {
        Problems problems = Problems.none()
                .require(
                        section.value().isPositive(),
                        Catchment.WRONG_SIZE,
                        SECTION.name(),
                        section.value(),
                        "be above 0 m²");
        requirePositive(problems, DEPTH, depth.value());
        problems.throwIfErrors();
        return new GutterSection(Kind.MEASURED, depth, null, section);
    }

    static void requirePositive(Problems problems, Term<Length> term, Length size) {
        problems.require(size.isPositive(), Catchment.WRONG_SIZE, term.name(), size, "be above 0 mm");
    }

    Area compute(Recorder r) {
        return switch (kind) {
            case HALF_ROUND -> {
                double diameter = r.use(DIAMETER, first).toSi();
                yield r.record(SECTION, Area.ofSquareMetres(diameter * diameter * StrictMath.PI / 8), HALF_CIRCLE);
            }
            case RECTANGULAR -> {
                Length width = r.use(WIDTH, first);
                Length deep = r.use(DEPTH, Objects.requireNonNull(depth));
                yield r.record(SECTION, width.times(deep), RECTANGLE);
            }
            case MEASURED -> r.use(SECTION, Objects.requireNonNull(measured));
        };
    }

    /** The depth to the spill level; of a half-round, half its diameter. */
    Length depth(Recorder r) {
        return switch (kind) {
            case HALF_ROUND -> r.record(DEPTH, r.use(DIAMETER, first).dividedBy(2), HALF_DIAMETER);
            case RECTANGULAR -> r.use(DEPTH, Objects.requireNonNull(depth));
            case MEASURED -> r.use(DEPTH, first);
        };
    }

    /** Returns the area up to the spill level. */
    public Area area() {
        return compute(Recorder.off());
    }

    /** Returns the depth to the spill level. */
    public Length depth() {
        return depth(Recorder.off());
    }

    @Override
    public Working working() {
        return Working.of(r -> {
            compute(r);
            depth(r);
        });
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof GutterSection s
                && kind == s.kind
                && first.equals(s.first)
                && Objects.equals(depth, s.depth)
                && Objects.equals(measured, s.measured);
    }

    @Override
    public int hashCode() {
        return Objects.hash(kind, first, depth, measured);
    }

    /** Returns for example {@code half-round gutter of 100 mm}. */
    @Override
    public String toString() {
        return switch (kind) {
            case HALF_ROUND -> "half-round gutter of " + first.value();
            case RECTANGULAR ->
                "rectangular gutter of " + first.value() + " × "
                        + Objects.requireNonNull(depth).value();
            case MEASURED -> "gutter of " + area() + ", " + first.value() + " deep";
        };
    }
}
