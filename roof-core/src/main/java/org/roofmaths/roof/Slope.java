package org.roofmaths.roof;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Tolerance;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Worked;

/**
 * How steep a roof is, as the drawing says it: by a pitch, by two heights, or by both.
 *
 * <p>A drawing that gives both contradicts itself more often than not. Then the heights rule, since they are what is
 * built, and the difference at the apex is reported: a notice up to the tolerance, an error beyond it.
 *
 * <pre>{@code
 * Slope.of(pitch("32°"))                                                       // heights over the plate line
 * Slope.of(pitch("32°")).fromPlateAt(metres(2.3))                              // heights over the floor
 * Slope.heights(metres(2.3), metres(4.175))                                    // pitch from the run
 * Slope.both(pitch("32°"), metres(2.3), metres(4.175), Tolerance.of(mm(5)))    // heights rule
 * }</pre>
 *
 * <p>Heights are those of the rafter plane (the tops of the rafters), at the plate line and at the apex line, over one
 * datum of the caller's. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Slope implements Serializable {
    private static final long serialVersionUID = 1L;

    /** The apex does not lie above the plate, or a height is beyond a kilometre. */
    public static final ProblemCode HEIGHTS =
            ProblemCode.of("slope.heights", "Give both heights over one datum, the plate first.");

    /** The slope is so steep that the roof would rise beyond a kilometre. */
    public static final ProblemCode TOO_STEEP = ProblemCode.of("slope.too-steep", "Check the pitch and its unit.");

    /** Pitch and heights do not agree. */
    public static final ProblemCode CONTRADICTION =
            ProblemCode.of("slope.contradiction", "Ask which is right; the heights are what is built.");

    private static final Formula PITCH_BY_HEIGHTS = Formula.of(
            RoofFace.RAFTER_PITCH,
            RoofFace.APEX_HEIGHT.minus(RoofFace.PLATE_HEIGHT).arcTanOver(RoofFace.RUN));

    private final @Nullable Figure<Pitch> pitch;
    private final @Nullable Figure<Length> plateHeight;
    private final @Nullable Figure<Length> apexHeight;
    private final @Nullable Tolerance<Length> tolerance;

    private Slope(
            @Nullable Figure<Pitch> pitch,
            @Nullable Figure<Length> plateHeight,
            @Nullable Figure<Length> apexHeight,
            @Nullable Tolerance<Length> tolerance) {
        this.pitch = pitch;
        this.plateHeight = plateHeight;
        this.apexHeight = apexHeight;
        this.tolerance = tolerance;
    }

    /**
     * Returns a slope of a given pitch, its heights counted from the plate line.
     *
     * @param pitch the pitch of the rafters
     * @return the slope
     */
    public static Slope of(Pitch pitch) {
        return of(Figure.given(Objects.requireNonNull(pitch, "pitch")));
    }

    /**
     * Returns a slope of a pitch that a rule or an earlier sum gave, its heights counted from the plate line.
     *
     * @param pitch the pitch of the rafters and where it came from
     * @return the slope
     */
    public static Slope of(Figure<Pitch> pitch) {
        return new Slope(Objects.requireNonNull(pitch, "pitch"), null, null, null);
    }

    /**
     * Returns a slope between two heights; its pitch follows from the run.
     *
     * @param plate height of the rafter plane at the plate line
     * @param apex height of the rafter plane at the apex line, over the same datum
     * @return the slope
     */
    public static Slope heights(Length plate, Length apex) {
        return heights(
                Figure.given(Objects.requireNonNull(plate, "plate")),
                Figure.given(Objects.requireNonNull(apex, "apex")));
    }

    /**
     * Returns a slope between two heights with their origin; its pitch follows from the run.
     *
     * @param plate height of the rafter plane at the plate line
     * @param apex height of the rafter plane at the apex line, over the same datum
     * @return the slope
     */
    public static Slope heights(Figure<Length> plate, Figure<Length> apex) {
        return new Slope(null, Objects.requireNonNull(plate, "plate"), Objects.requireNonNull(apex, "apex"), null);
    }

    /**
     * Returns a slope for which the drawing gives both a pitch and two heights. The heights rule; the difference that
     * the pitch would make at the apex is reported.
     *
     * @param pitch the pitch of the rafters as drawn
     * @param plate height of the rafter plane at the plate line
     * @param apex height of the rafter plane at the apex line, over the same datum
     * @param tolerance how far the two apex heights may lie apart and still be one drawing
     * @return the slope
     */
    public static Slope both(Pitch pitch, Length plate, Length apex, Tolerance<Length> tolerance) {
        return new Slope(
                Figure.given(Objects.requireNonNull(pitch, "pitch")),
                Figure.given(Objects.requireNonNull(plate, "plate")),
                Figure.given(Objects.requireNonNull(apex, "apex")),
                Objects.requireNonNull(tolerance, "tolerance"));
    }

    /**
     * Returns the same slope with its plate line at a height over the caller's datum. For a slope by heights, which has
     * one already, the new height takes its place.
     *
     * @param height height of the rafter plane at the plate line
     * @return the slope from that plate
     */
    public Slope fromPlateAt(Length height) {
        return new Slope(pitch, Figure.given(Objects.requireNonNull(height, "height")), apexHeight, tolerance);
    }

    /** Returns the pitch as the drawing gives it; empty if it gives heights alone. */
    public Optional<Figure<Pitch>> pitch() {
        return Optional.ofNullable(pitch);
    }

    /** Returns the height at the plate line; empty if none was given, when heights count from the plate line. */
    public Optional<Figure<Length>> plateHeight() {
        return Optional.ofNullable(plateHeight);
    }

    /** Returns the height at the apex line as the drawing gives it; empty if it gives the pitch alone. */
    public Optional<Figure<Length>> apexHeight() {
        return Optional.ofNullable(apexHeight);
    }

    /** Returns how far pitch and heights may disagree at the apex; empty unless both were given. */
    public Optional<Tolerance<Length>> tolerance() {
        return Optional.ofNullable(tolerance);
    }

    /** What a slope comes to over a known run. */
    record Resolved(Figure<Pitch> pitch, Figure<Length> plateHeight) {}

    /** The pitch and the plate height over a run, or null and the reasons among the problems. */
    @Nullable
    Resolved resolved(Figure<Length> run, boolean runIsSound, Problems problems) {
        Figure<Length> plate = plateHeight == null ? Figure.given(Length.ZERO) : plateHeight;
        Sizes.requireWithin(problems, HEIGHTS, "plate height", plate.value());
        if (apexHeight == null) {
            Figure<Pitch> given = Objects.requireNonNull(pitch);
            if (runIsSound) {
                problems.require(
                        run.value().toMetres() * given.value().tan() <= Sizes.LONGEST.toMetres(),
                        TOO_STEEP,
                        "pitch",
                        given.value(),
                        "give a rise of at most " + Sizes.LONGEST + " over a run of " + run.value());
            }
            return new Resolved(given, plate);
        }
        Figure<Length> apex = apexHeight;
        Sizes.requireWithin(problems, HEIGHTS, "apex height", apex.value());
        problems.require(
                apex.value().isLongerThan(plate.value()),
                HEIGHTS,
                "apex height",
                apex.value(),
                "be above the plate height of " + plate.value());
        if (!runIsSound || problems.hasErrors()) {
            return null;
        }
        Pitch built = Pitch.ofRiseAndRun(apex.value().minus(plate.value()), run.value());
        Pitch drawn = pitch == null ? built : pitch.value();
        if (pitch != null && tolerance != null) {
            compare(drawn, built, plate.value(), apex.value(), run.value(), tolerance, problems);
        }
        return new Resolved(Worked.by(RoofFace.RAFTER_PITCH, r -> pitchByHeights(run, plate, apex, r)), plate);
    }

    private static Pitch pitchByHeights(Figure<Length> run, Figure<Length> plate, Figure<Length> apex, Recorder r) {
        Length level = r.use(RoofFace.RUN, run);
        Length rise = r.use(RoofFace.APEX_HEIGHT, apex).minus(r.use(RoofFace.PLATE_HEIGHT, plate));
        return r.record(RoofFace.RAFTER_PITCH, Pitch.ofRiseAndRun(rise, level), PITCH_BY_HEIGHTS);
    }

    private void compare(
            Pitch drawn,
            Pitch built,
            Length plate,
            Length apex,
            Length run,
            Tolerance<Length> within,
            Problems problems) {
        Length drawnApex = plate.plus(drawn.riseOver(run));
        Length apart = drawnApex.minus(apex);
        if (!apart.abs().isLongerThan(Length.STORAGE_RESOLUTION)) {
            return;
        }
        String side = apart.isPositive() ? "above" : "below";
        if (apex.isWithin(within, drawnApex)) {
            problems.add(Problem.notice(
                    CONTRADICTION,
                    "slope",
                    this,
                    "pitch " + drawn + " puts the apex at " + drawnApex + ", " + apart.abs() + " " + side
                            + " the given height of " + apex + "; the heights rule, so the pitch is " + built));
        } else {
            problems.add(Problem.error(
                            CONTRADICTION,
                            "slope",
                            this + ", which puts the apex at " + drawnApex,
                            "have a pitch and heights that agree at the apex " + within)
                    .withMend(Mend.of("pitch", "take " + built, "agrees with the heights"))
                    .withMend(Mend.of("apex height", "take " + drawnApex, apart, "agrees with the pitch")));
        }
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Slope s
                && Objects.equals(pitch, s.pitch)
                && Objects.equals(plateHeight, s.plateHeight)
                && Objects.equals(apexHeight, s.apexHeight)
                && Objects.equals(tolerance, s.tolerance);
    }

    @Override
    public int hashCode() {
        return Objects.hash(pitch, plateHeight, apexHeight, tolerance);
    }

    /** Returns for example {@code 32°} or {@code from 2300 mm to 4175 mm}. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        if (pitch != null) {
            text.append(pitch.value());
        }
        if (plateHeight != null) {
            text.append(pitch == null ? "from " : " from ").append(plateHeight.value());
        }
        if (apexHeight != null) {
            text.append(" to ").append(apexHeight.value());
        }
        return text.toString();
    }
}
