package org.roofmaths.rainwater;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Area;
import org.roofmaths.units.FlowRate;
import org.roofmaths.units.Length;
import org.roofmaths.units.RainfallIntensity;
import org.roofmaths.units.Ratio;

/**
 * A level gutter along one eaves and where its outlets are.
 *
 * <p>Water parts half way between two outlets. A slope's water reaches the gutter all along; an upper roof's lands on one part of it and goes
 * whole to the stretch that it lands on, so a central outlet does not halve it. The gutter is sized for the stretch that carries most, an
 * outlet for both its sides.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class GutterRun implements Serializable {
    private static final long serialVersionUID = 1L;

    private final Length eaves;
    private final List<Length> outlets;
    private final Catchment catchment;
    private final List<Stretch> stretches;

    private GutterRun(Length eaves, List<Length> outlets, Catchment catchment) {
        this.eaves = eaves;
        this.outlets = List.copyOf(outlets);
        this.catchment = catchment;
        stretches = List.copyOf(part());
    }

    /**
     * Returns a gutter with its outlets at given places.
     *
     * @param eaves the length of the eaves, above zero
     * @param outlets the places of the outlets, from the left end of the eaves; one or more, rising, on the eaves
     * @param catchment what drains to the eaves
     * @return the gutter
     * @throws org.roofmaths.problem.ProblemsException with everything that is wrong with length and places
     */
    public static GutterRun along(Length eaves, List<Length> outlets, Catchment catchment) {
        Problems problems = Problems.none();
        GutterSection.requirePositive(problems, Catchment.ALONG_EAVES, eaves);
        problems.require(!outlets.isEmpty(), Catchment.WRONG_SIZE, "outlets", "none", "be one or more");
        for (int i = 0; i < outlets.size(); i++) {
            Length place = outlets.get(i);
            problems.require(
                    !place.isNegative() && !place.isLongerThan(eaves),
                    Catchment.WRONG_SIZE,
                    "place of outlet " + (i + 1),
                    place,
                    "lie on the eaves, from 0 mm to " + eaves);
            problems.require(
                    i == 0 || place.isLongerThan(outlets.get(i - 1)),
                    Catchment.WRONG_SIZE,
                    "place of outlet " + (i + 1),
                    place,
                    "lie beyond that of the outlet before it");
        }
        catchment
                .landed()
                .forEach(landed -> problems.require(
                        !landed.strip().to().isLongerThan(eaves),
                        Catchment.WRONG_SIZE,
                        "end of the landing strip",
                        landed.strip().to(),
                        "lie on the eaves of " + eaves));
        problems.throwIfErrors();
        return new GutterRun(eaves, outlets, catchment);
    }

    /**
     * Returns a gutter with its outlets spread evenly: each drains the same length to both sides.
     *
     * @param eaves the length of the eaves, above zero
     * @param count how many outlets, 1 or more
     * @param catchment what drains to the eaves
     * @return the gutter
     * @throws org.roofmaths.problem.ProblemsException if the length or the count is out of range
     */
    public static GutterRun evenly(Length eaves, int count, Catchment catchment) {
        Problems.none()
                .require(count >= 1, Catchment.WRONG_SIZE, "outlets", count, "be 1 or more")
                .throwIfErrors();
        return along(
                eaves,
                IntStream.range(0, count)
                        .mapToObj(i -> eaves.times((2.0 * i + 1) / (2.0 * count)))
                        .toList(),
                catchment);
    }

    /**
     * Returns the gutter with the fewest evenly spread outlets for which no stretch carries more than a gutter can.
     *
     * @param eaves the length of the eaves, above zero
     * @param most the most outlets to try, 1 or more
     * @param catchment what drains to the eaves
     * @param intensity the rainfall intensity
     * @param capacity what the gutter carries
     * @return the gutter, or a finding that says by how much even the most outlets fall short
     * @throws org.roofmaths.problem.ProblemsException if the length or the count is out of range
     */
    public static Attempt<GutterRun> fewestOutlets(
            Length eaves, int most, Catchment catchment, RainfallIntensity intensity, FlowRate capacity) {
        GutterRun run = evenly(eaves, 1, catchment);
        for (int count = 1; count <= most; count++) {
            run = evenly(eaves, count, catchment);
            if (!intensity.times(run.fullestStretch().area()).isGreaterThan(capacity)) {
                return Attempt.of(run);
            }
        }
        FlowRate flow = intensity.times(run.fullestStretch().area());
        List<Problem> shortfall = Gutter.Margin.problems(
                "gutter with " + most + (most == 1 ? " outlet" : " outlets"), flow, capacity, Ratio.ZERO);
        return Attempt.failed(
                catchment.landed().isEmpty()
                        ? shortfall
                        : shortfall.stream()
                                .map(problem -> problem.withMend(Mend.of(
                                        "upper roof", "its water carried down in a pipe of its own", "less here")))
                                .toList());
    }

    private List<Stretch> part() {
        List<Stretch> found = new ArrayList<>();
        double perMetre = catchment.spreadArea().toSi() / eaves.toSi();
        for (int i = 0; i < outlets.size(); i++) {
            Length place = outlets.get(i);
            Length left = i == 0 ? Length.ZERO : outlets.get(i - 1).plus(place).dividedBy(2);
            Length right = i == outlets.size() - 1
                    ? eaves
                    : place.plus(outlets.get(i + 1)).dividedBy(2);
            addStretch(found, i + 1, left, place, perMetre);
            addStretch(found, i + 1, place, right, perMetre);
        }
        return found;
    }

    private void addStretch(List<Stretch> found, int outlet, Length from, Length to, double perMetre) {
        if (from.equals(to)) {
            return;
        }
        double area = perMetre * to.minus(from).toSi();
        for (LandedArea landed : catchment.landed()) {
            area += landed.area().toSi() * shareOn(landed.strip(), from, to);
        }
        found.add(new Stretch(outlet, from, to, Area.ofSquareMetres(area)));
    }

    /** A pipe lands on one place; where that is an outlet or the parting of two, it counts with the stretch to the left. */
    private static double shareOn(LandingStrip strip, Length from, Length to) {
        if (strip.from().equals(strip.to())) {
            boolean isInside = strip.from().isLongerThan(from) && !strip.from().isLongerThan(to);
            return isInside || (from.isZero() && strip.from().isZero()) ? 1 : 0;
        }
        Length overlap = strip.to().min(to).minus(strip.from().max(from));
        return overlap.isPositive()
                ? overlap.toSi() / strip.to().minus(strip.from()).toSi()
                : 0;
    }

    /** Returns the places of the outlets. */
    public List<Length> outlets() {
        return outlets;
    }

    /** Returns the stretches, from the left. */
    public List<Stretch> stretches() {
        return stretches;
    }

    /** Returns the stretch that carries most: the gutter is sized for it. */
    public Stretch fullestStretch() {
        return stretches.stream().max(Comparator.comparing(Stretch::area)).orElseThrow();
    }

    /**
     * Returns the effective area whose water reaches an outlet, from both its sides.
     *
     * @param outlet which outlet, from 1 at the left
     * @return the area
     * @throws IllegalArgumentException if there is no such outlet
     */
    public Area areaTo(int outlet) {
        if (outlet < 1 || outlet > outlets.size()) {
            throw new IllegalArgumentException("outlet must be from 1 to " + outlets.size() + ", but was " + outlet);
        }
        return stretches.stream()
                .filter(stretch -> stretch.outlet() == outlet)
                .map(Stretch::area)
                .reduce(Area.ZERO, Area::plus);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof GutterRun r
                && eaves.equals(r.eaves)
                && outlets.equals(r.outlets)
                && catchment.equals(r.catchment);
    }

    @Override
    public int hashCode() {
        return Objects.hash(eaves, outlets, catchment);
    }

    /** Returns the stretches, one a line. */
    @Override
    public String toString() {
        return String.join("\n", stretches.stream().map(Stretch::toString).toList());
    }
}
