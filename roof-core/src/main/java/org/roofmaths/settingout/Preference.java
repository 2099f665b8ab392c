package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;

/**
 * What the caller prefers: the aims that choose among layouts that fit, and the order in which changes are tried or proposed when
 * none does.
 *
 * <pre>{@code
 * Preference.usual().aimingFor(Aim.LARGEST_HEADLAP)
 *         .changing(Change.TOP_DISTANCE, Change.OVERHANG)
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Preference implements Serializable {
    private static final long serialVersionUID = 1L;
    private static final Preference USUAL = new Preference(
            List.of(
                    Aim.NO_CUT,
                    Aim.FEWEST_CUTS,
                    Aim.LEAST_CHANGE,
                    Aim.NOMINAL_COVER,
                    Aim.FEWEST_COURSES,
                    Aim.LARGEST_HEADLAP),
            List.of(Change.OVERHANG, Change.TOP_DISTANCE, Change.FASCIA, Change.COURSES, Change.PACKING));

    private final List<Aim> aims;
    private final List<Change> changes;

    private Preference(List<Aim> aims, List<Change> changes) {
        this.aims = aims;
        this.changes = changes;
    }

    /**
     * Returns the usual preference: no cut, then fewest cuts, then least change, then nominal cover, then fewest courses; and when
     * nothing fits, change the overhang first, then the top distance, the fascia, the number of gauges, packing.
     *
     * @return the preference
     */
    public static Preference usual() {
        return USUAL;
    }

    /**
     * Returns the same preference with these aims before all others, in this order.
     *
     * @param first the most important aim
     * @param more further aims
     * @return the preference
     */
    public Preference aimingFor(Aim first, Aim... more) {
        return new Preference(inFront(EnumSet.allOf(Aim.class), aims, first, more), changes);
    }

    /**
     * Returns the same preference with these changes tried and proposed before all others, in this order.
     *
     * @param first the change to try first
     * @param more further changes
     * @return the preference
     */
    public Preference changing(Change first, Change... more) {
        return new Preference(aims, inFront(EnumSet.allOf(Change.class), changes, first, more));
    }

    @SafeVarargs
    @SuppressWarnings("varargs") // the array is read only
    private static <E extends Enum<E>> List<E> inFront(EnumSet<E> all, List<E> now, E first, E... more) {
        List<E> ordered = new ArrayList<>();
        List<E> wanted = new ArrayList<>();
        wanted.add(first);
        Collections.addAll(wanted, more);
        wanted.addAll(now);
        for (E each : wanted) {
            if (all.remove(Objects.requireNonNull(each, "preference"))) {
                ordered.add(each);
            }
        }
        return List.copyOf(ordered);
    }

    /** Returns every aim, the most important first. */
    public List<Aim> aims() {
        return aims;
    }

    /** Returns every change, the one to try first in front. */
    public List<Change> changes() {
        return changes;
    }

    /**
     * Tells whether one aim matters more than another.
     *
     * @param aim the one
     * @param other the other
     * @return true if it comes first
     */
    public boolean puts(Aim aim, Aim other) {
        return aims.indexOf(aim) < aims.indexOf(other);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Preference p && aims.equals(p.aims) && changes.equals(p.changes);
    }

    @Override
    public int hashCode() {
        return Objects.hash(aims, changes);
    }

    /** Returns for example {@code no cut, then fewest cuts, …; change overhang into the gutter, then top distance, …}. */
    @Override
    public String toString() {
        return String.join(", then ", aims.stream().map(Aim::toString).toList()) + "; change "
                + String.join(", then ", changes.stream().map(Change::toString).toList());
    }
}
