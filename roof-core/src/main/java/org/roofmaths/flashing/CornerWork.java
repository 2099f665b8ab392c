package org.roofmaths.flashing;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Term;

/**
 * How the outside corners of a sheet are made: welded, or bossed.
 *
 * <p>A welded corner has a seam up its upstand and takes a lap for it. A bossed corner is worked out of the sheet, has no flat pattern and
 * takes more metal; how much is the plumber's allowance. Neither is nothing, so there is no default.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class CornerWork implements Serializable {
    private static final long serialVersionUID = 1L;

    /** The metal added to the length at each corner. */
    public static final Term<Length> METAL_AT_CORNER = Term.of("metal added at each corner", "xc", Length.class);

    private final CornerKind kind;
    private final Figure<Length> metal;

    private CornerWork(CornerKind kind, Figure<Length> metal) {
        this.kind = kind;
        this.metal = metal;
    }

    /**
     * Returns welded corners.
     *
     * @param seamLap the lap of each seam, above zero; 25 mm is common practice
     * @return the corners
     * @throws org.roofmaths.problem.ProblemsException if the lap is not above zero
     */
    public static CornerWork welded(Figure<Length> seamLap) {
        return of(CornerKind.WELDED, seamLap);
    }

    /**
     * Returns bossed corners.
     *
     * @param allowance the metal that the plumber adds for each corner, above zero
     * @return the corners
     * @throws org.roofmaths.problem.ProblemsException if the allowance is not above zero
     */
    public static CornerWork bossed(Figure<Length> allowance) {
        return of(CornerKind.BOSSED, allowance);
    }

    private static CornerWork of(CornerKind kind, Figure<Length> metal) {
        Problems problems = Problems.none();
        Sizes.requirePositive(problems, METAL_AT_CORNER, metal);
        problems.throwIfErrors();
        return new CornerWork(kind, metal);
    }

    /** Returns how the corners are made. */
    public CornerKind kind() {
        return kind;
    }

    /** Returns the metal added to the length at each corner. */
    public Figure<Length> metal() {
        return metal;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof CornerWork c && kind == c.kind && metal.equals(c.metal);
    }

    @Override
    public int hashCode() {
        return Objects.hash(kind, metal);
    }

    /** Returns for example {@code welded corners, 25 mm each}. */
    @Override
    public String toString() {
        return kind + " corners, " + metal.value() + " each";
    }
}
