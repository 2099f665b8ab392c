package org.roofmaths.loads;

import java.util.List;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;

/**
 * What this library does not work out, and who it is for. Each is an answer of its own: {@link #answer()} gives it in the form of an attempt
 * without a value, so that a caller treats it like any other result.
 *
 * @since 0.1
 */
public enum LeftToOthers {
    /** Whether a rafter, purlin, hip, valley, ridge or batten is strong enough. */
    MEMBER("whether a member is strong enough", "an engineer"),
    /** An alteration, a loft conversion, solar panels, a heavier covering. */
    ALTERATION("whether a roof bears an alteration or a heavier covering", "an engineer"),
    /** Snow that slides from an upper roof on to a lower one. */
    SLIDING_SNOW("snow that slides from an upper roof", "an engineer"),
    /** Snow in valleys and behind parapets, and on roofs of several levels. */
    DRIFT_BEYOND_THE_PLAIN_CASE("snow in valleys, behind parapets and on roofs of several levels", "an engineer"),
    /** Sites high up, on hills and cliffs, or on the coast. */
    EXPOSED_SITE("loads on high, hilly, cliff and coastal sites", "an engineer"),
    /** Buildings that are tall, odd-shaped or open-sided, and canopies. */
    UNUSUAL_BUILDING("wind on tall, odd-shaped and open-sided buildings and canopies", "an engineer"),
    /** Wind zones of a hipped roof. */
    HIPPED_WIND_ZONES("the wind zones of a hipped roof", "an engineer"),
    /** How tiles, slates, ridges, hips, verges and underlay are fixed against wind. */
    FIXING_SPECIFICATION(
            "how the covering and its underlay are fixed against wind", "the covering's maker or an engineer"),
    /** Ties, bracing, straps, bearings and notches. */
    TIES_AND_BEARINGS("ties, bracing, straps, bearings and notches", "an engineer");

    /** A number that is not worked out here. */
    public static final ProblemCode LEFT_TO_OTHERS = ProblemCode.of(
            "loads.left-to-others",
            "Ask the person named; give them the sizes and the site, not this library's numbers alone.");

    private final String what;
    private final String who;

    LeftToOthers(String what, String who) {
        this.what = what;
        this.who = who;
    }

    /** Returns who it is for. */
    public String who() {
        return who;
    }

    /** Returns the refusal as a finding. */
    public Problem problem() {
        return Problem.finding(
                LEFT_TO_OTHERS, "loads", what, who, what + ": not worked out here; it is for " + who, List.of());
    }

    /**
     * Returns the refusal as an answer without a value.
     *
     * @param <T> the type that an answer would have had
     * @return an attempt that failed with {@link #problem()}
     */
    public <T> Attempt<T> answer() {
        return Attempt.failed(List.of(problem()));
    }

    /** Returns what is left, in words. */
    @Override
    public String toString() {
        return what;
    }
}
