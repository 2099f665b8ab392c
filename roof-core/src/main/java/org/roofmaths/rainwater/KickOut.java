package org.roofmaths.rainwater;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * The end of an eaves gutter at a side wall: the lowest side piece kicks the water out into the gutter, whose stop end stays clear of the
 * wall.
 *
 * <p>The kick-out stands at least as high as the gutter is deep; the gutter is shorter than the eaves by the clearance at each wall. For
 * example, 5.2 m of eaves with one wall and 25 mm clear takes 5.175 m of gutter; one kick-out at each wall (common practice).
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class KickOut implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** How far the stop end stays off the wall. */
    public static final Term<Length> CLEAR_OF_WALL = Term.of("stop end clear of the wall", "cs", Length.class);
    /** How many ends of the gutter meet a wall. */
    public static final Term<Integer> WALLS = Term.of("ends of the gutter at a wall", "nx", Integer.class);
    /** The length of gutter. */
    public static final Term<Length> GUTTER_LENGTH = Term.of("length of the gutter", "Lg", Length.class);
    /** The least height of a kick-out. */
    public static final Term<Length> LEAST_HEIGHT = Term.of("least height of the kick-out", "hk", Length.class);

    private static final Formula EAVES_LESS_CLEARANCE =
            Formula.of(GUTTER_LENGTH, Catchment.ALONG_EAVES.minus(WALLS.times(CLEAR_OF_WALL)));
    private static final Formula AS_HIGH_AS_DEEP = Formula.of(LEAST_HEIGHT, GutterSection.DEPTH);

    private final Figure<Length> eaves;
    private final int walls;
    private final GutterSection section;
    private final Figure<Length> clearance;

    private KickOut(Figure<Length> eaves, int walls, GutterSection section, Figure<Length> clearance) {
        this.eaves = eaves;
        this.walls = walls;
        this.section = section;
        this.clearance = clearance;
    }

    /**
     * Returns the gutter ends of an eaves between walls.
     *
     * @param eaves the length of the eaves, above zero
     * @param walls how many of its ends meet a wall, 1 or 2
     * @param section the gutter
     * @param clearance how far the stop end stays off the wall, zero or more
     * @return the gutter ends
     * @throws org.roofmaths.problem.ProblemsException with everything that is out of range
     */
    public static KickOut of(Length eaves, int walls, GutterSection section, Figure<Length> clearance) {
        Problems problems = Problems.none();
        GutterSection.requirePositive(problems, Catchment.ALONG_EAVES, eaves);
        problems.require(walls == 1 || walls == 2, Catchment.WRONG_SIZE, WALLS.name(), walls, "be 1 or 2");
        problems.require(
                !clearance.value().isNegative(),
                Catchment.WRONG_SIZE,
                CLEAR_OF_WALL.name(),
                clearance.value(),
                "be 0 mm or more");
        problems.throwIfErrors();
        return new KickOut(Given.of(eaves), walls, Objects.requireNonNull(section, "section"), clearance);
    }

    private Length compute(Recorder r) {
        r.record(LEAST_HEIGHT, section.depth(r), AS_HIGH_AS_DEEP);
        Length along = r.use(Catchment.ALONG_EAVES, eaves);
        int ends = r.use(WALLS, walls);
        Length clear = r.use(CLEAR_OF_WALL, clearance);
        return r.record(GUTTER_LENGTH, along.minus(clear.times((long) ends)), EAVES_LESS_CLEARANCE);
    }

    /** Returns how many kick-outs there are: one at each wall. */
    public int count() {
        return walls;
    }

    /** Returns the least height of each. */
    public Length leastHeight() {
        return section.depth();
    }

    /** Returns the length of gutter between its stop ends. */
    public Length gutterLength() {
        return compute(Recorder.off());
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof KickOut k
                && eaves.equals(k.eaves)
                && walls == k.walls
                && section.equals(k.section)
                && clearance.equals(k.clearance);
    }

    @Override
    public int hashCode() {
        return Objects.hash(eaves, walls, section, clearance);
    }

    /** Returns for example {@code 1 kick-out at least 50 mm high, gutter of 5175 mm}. */
    @Override
    public String toString() {
        return walls + (walls == 1 ? " kick-out" : " kick-outs") + " at least " + leastHeight() + " high, gutter of "
                + gutterLength();
    }
}
