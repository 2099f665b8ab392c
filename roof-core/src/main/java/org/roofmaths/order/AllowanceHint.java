package org.roofmaths.order;

import org.roofmaths.units.Ratio;
import org.roofmaths.working.Assumed;

/**
 * What is commonly allowed over the net amount: hints to show to a person, never used unless the caller passes one on.
 *
 * <p>All are common practice of the trade, from no document. A hint is passed on as a figure that says so wherever it is printed:
 *
 * <pre>{@code
 * Allowance.of(Cause.CUTTING, AllowanceHint.BATTENS.least())     // cutting 5 % (assumed: common practice …)
 * }</pre>
 *
 * @since 0.1
 */
public enum AllowanceHint {
    /** Tiles on plain slopes, cutting and breakage together: 3 to 5 per cent. */
    TILES("tiles on plain slopes, cutting and breakage together", 3, 5),
    /** Slates on plain slopes, cutting and breakage together: 5 to 10 per cent. */
    SLATES("slates on plain slopes, cutting and breakage together", 5, 10),
    /** Reclaimed units and slates of random width: 10 to 15 per cent. */
    RECLAIMED_OR_RANDOM("reclaimed units and slates of random width", 10, 15),
    /** Battens: 5 per cent. */
    BATTENS("battens", 5, 5),
    /** Underlay, after its laps: 10 per cent. */
    UNDERLAY("underlay, after its laps", 10, 10),
    /** Units laid by a beginner, or round roof windows: 10 to 15 per cent. */
    FIRST_ROOF("units laid by a beginner or round roof windows", 10, 15);

    private final String what;
    private final int least;
    private final int most;

    AllowanceHint(String what, int least, int most) {
        this.what = what;
        this.least = least;
        this.most = most;
    }

    /** Returns the smaller share commonly allowed. */
    public Assumed<Ratio> least() {
        return figure(least);
    }

    /** Returns the greater share commonly allowed. */
    public Assumed<Ratio> most() {
        return figure(most);
    }

    private Assumed<Ratio> figure(int percent) {
        return Assumed.of(Ratio.ofPercent(percent), "common practice for " + what, "give an allowance of your own");
    }

    /** Returns the hint in words, such as {@code slates on plain slopes, cutting and breakage together: 5 % to 10 %}. */
    @Override
    public String toString() {
        return what + ": " + least + " %" + (least == most ? "" : " to " + most + " %") + " (common practice)";
    }
}
