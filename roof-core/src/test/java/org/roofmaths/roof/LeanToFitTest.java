package org.roofmaths.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;
import static org.roofmaths.working.Figure.given;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.roofmaths.flashing.BedJoints;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.problem.Severity;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;

class LeanToFitTest {
    // Heights and sizes invented for these tests: a bed joint at 4575 under a sill, plate at 2300, 3 m out.
    private static LeanToSiteBuilderStages.BuildFinal fernside() {
        return LeanToSite.builder()
                .plateHeight(metres(2.3))
                .projection(metres(3))
                .upperLimit(given(mm(4575)))
                .upstand(given(mm(75)))
                .buildUp(mm(90));
    }

    @Test
    void the_greatest_pitch_uses_up_the_height_at_the_wall() {
        Pitch greatest = LeanToFit.of(fernside().build()).greatestPitch().orElseThrow();

        // plate + rise + build-up plumb + upstand = limit; a rounding of the pitch is 1e-14 of 3 m
        double top = 2300 + 3000 * greatest.tan() + 90 / greatest.cos() + 75;
        assertThat(top).isCloseTo(4575, within(1e-9));
        assertThat(LeanToFit.of(fernside().build()).working().disagreements()).isEmpty();
    }

    @Test
    void agrees_with_a_root_found_by_brent_s_method() {
        double root = new BrentSolver(1e-15)
                .solve(100, p -> 2300 + 3000 * Math.tan(p) + 90 / Math.cos(p) + 75 - 4575, 0.1, 1.2);

        assertThat(LeanToFit.of(fernside().build())
                        .greatestPitch()
                        .orElseThrow()
                        .toRadians())
                .isCloseTo(root, within(1e-12)); // the search stops a thousand roundings from the root
    }

    @Test
    void the_build_up_counts_plumb_and_not_square_to_the_slope() {
        Pitch greatest = LeanToFit.of(fernside().build()).greatestPitch().orElseThrow();
        // had the 90 mm been counted square to the slope, the pitch would come out steeper than it is
        Pitch wrong = Pitch.ofRiseAndRun(mm(4575 - 75 - 90 - 2300), metres(3));

        assertThat(greatest).isLessThan(wrong);
    }

    @Test
    void seventy_five_millimetres_of_upstand_are_over_a_degree_of_pitch() {
        // with the build-up left out, from 75 to 150 of upstand at 3.0 m of run near 35 degrees
        Pitch less = LeanToFit.of(fernside().build()).greatestPitch().orElseThrow();
        Pitch more = LeanToFit.of(LeanToSite.builder()
                        .plateHeight(metres(2.3))
                        .projection(metres(3))
                        .upperLimit(given(mm(4575)))
                        .upstand(given(mm(150)))
                        .buildUp(mm(90))
                        .build())
                .greatestPitch()
                .orElseThrow();

        assertThat(less.toDegrees() - more.toDegrees()).isBetween(0.9, 1.1);
    }

    @Test
    void each_covering_fits_or_misses_by_so_much() {
        LeanToFit fit = LeanToFit.of(fernside()
                .addDemands(
                        PitchDemand.of("slates", pitch("25°")),
                        PitchDemand.of("plain tiles", pitch("35°")),
                        PitchDemand.of("thin plain tiles", pitch("35°")).withBuildUp(mm(60)))
                .build());

        double t25 = Math.toRadians(25);
        double t35 = Math.toRadians(35);
        assertThat(fit.lines()).hasSize(3);
        assertThat(fit.lines().get(0).spare().value())
                .isEqualTo(mm(4575 - 75 - (2300 + 3000 * Math.tan(t25) + 90 / Math.cos(t25))));
        assertThat(fit.lines().get(0).fits()).isTrue();
        assertThat(fit.lines().get(1).spare().value())
                .isEqualTo(mm(4575 - 75 - (2300 + 3000 * Math.tan(t35) + 90 / Math.cos(t35))));
        assertThat(fit.lines().get(1).fits()).isFalse();
        assertThat(fit.lines().get(2).spare().value())
                .isEqualTo(mm(4575 - 75 - (2300 + 3000 * Math.tan(t35) + 60 / Math.cos(t35))));
        assertThat(fit.lines().get(2).fits()).isTrue();
        fit.lines()
                .forEach(line ->
                        assertThat(line.spare().working().disagreements()).isEmpty());
        assertThat(fit)
                .hasToString("greatest pitch available 34.87°\n"
                        + "slates: at least 25° fits with "
                        + fit.lines().get(0).spare().value() + " to spare\n"
                        + "plain tiles: at least 35° misses by "
                        + fit.lines().get(1).spare().value().negated() + "\n"
                        + "thin plain tiles: at least 35° fits with "
                        + fit.lines().get(2).spare().value() + " to spare");
    }

    @Test
    void a_miss_is_a_finding_with_ways_to_mend_it() {
        LeanToFit fit = LeanToFit.of(fernside()
                .addDemands(PitchDemand.of("plain tiles", pitch("35°")))
                .build());

        Length missing = fit.lines().get(0).spare().value().negated();
        assertThat(fit.problems()).hasSize(1);
        Problem problem = fit.problems().get(0);
        assertThat(problem.severity()).isEqualTo(Severity.FINDING);
        assertThat(problem.code()).isEqualTo(LeanToFit.DEMAND_MISSED);
        assertThat(problem.message())
                .isEqualTo("plain tiles asks for 35°, which misses by " + missing
                        + " at the wall; the greatest pitch available is "
                        + fit.greatestPitch().orElseThrow());
        Length projection = fit.greatestProjection(pitch("35°")).value();
        assertThat(problem.mends())
                .extracting(Object::toString)
                .containsExactly(
                        "plate height: " + missing + " less; a plate at " + mm(2300).minus(missing),
                        "projection: " + metres(3).minus(projection) + " less; a projection of " + projection);
        assertThat(LeanToFit.attempt(fit.site()).problems()).isEqualTo(fit.problems());
    }

    @Test
    void a_wanted_pitch_gives_the_greatest_plate_height_and_projection() {
        LeanToFit fit = LeanToFit.of(fernside().build());
        double t = Math.toRadians(35);

        assertThat(fit.greatestPlateHeight(pitch("35°")).value())
                .isEqualTo(mm(4575 - 75 - 90 / Math.cos(t) - 3000 * Math.tan(t)));
        // the plumb build-up is stored to the nanometre before it is divided by the tangent
        assertThat(fit.greatestProjection(pitch("35°")).value().toMillimetres())
                .isCloseTo((4575 - 75 - 2300 - 90 / Math.cos(t)) / Math.tan(t), within(2e-6));
        assertThat(fit.greatestPlateHeight(pitch("35°")).working().disagreements())
                .isEmpty();
        assertThat(fit.greatestProjection(pitch("35°")).working().disagreements())
                .isEmpty();
    }

    @Test
    void a_door_head_limits_the_gutter() {
        // plate 2300, overhang 300, gutter 150 below the rafter plane, head at 1990: tan p ≤ (2300 − 150 − 1990) / 300
        LeanToFit fit = LeanToFit.of(fernside()
                .eavesOverhang(mm(300))
                .gutterDrop(mm(150))
                .lowerLimit(given(mm(1990)))
                .addDemands(PitchDemand.of("slates", pitch("25°")), PitchDemand.of("pantiles", pitch("30°")))
                .build());

        assertThat(fit.greatestPitch().orElseThrow().toDegrees())
                .isCloseTo(Math.toDegrees(Math.atan(160 / 300.0)), within(1e-12));
        double t30 = Math.toRadians(30);
        assertThat(fit.gutterUnderside(pitch("30°")).value()).isEqualTo(mm(2300 - 300 * Math.tan(t30) - 150));
        assertThat(fit.leastPlateHeight(pitch("30°")).value()).isEqualTo(mm(1990 + 150 + 300 * Math.tan(t30)));
        assertThat(fit.lines()).extracting(LeanToFit.Line::fits).containsExactly(true, false);
        Length short1 = fit.lines().get(1).spareAtEaves().orElseThrow().value().negated();
        assertThat(fit.problems())
                .extracting(Problem::message)
                .containsExactly(
                        "pantiles asks for 30°, at which the gutter hangs " + short1 + " below the lower limit");
        assertThat(fit.lines().get(1)).hasToString("pantiles: at least 30° misses by " + short1);
        assertThat(fit.working().disagreements()).isEmpty();
        assertThat(fit.leastPlateHeight(pitch("30°")).working().disagreements()).isEmpty();
        assertThat(fit.lines().get(0).spareAtEaves().orElseThrow().working().disagreements())
                .isEmpty();
    }

    @Test
    void a_limit_under_a_sill_is_snapped_down_to_a_bed_joint_and_says_so() {
        BedJoints joints = BedJoints.of(Length.ZERO, mm(75));
        LeanToFit fit = LeanToFit.of(LeanToSite.builder()
                .plateHeight(metres(2.3))
                .projection(metres(3))
                .upperLimit(joints.highestUnder(given(mm(4600))))
                .upstand(given(mm(75)))
                .buildUp(mm(90))
                .build());

        // 61 courses of 75 are 4575, one more would be 4650
        assertThat(fit.site().upperLimit().value()).isEqualTo(mm(61 * 75));
        assertThat(fit.greatestPitch())
                .isEqualTo(LeanToFit.of(fernside().build()).greatestPitch());
        assertThat(fit.working().at(LeanToFit.AVAILABLE).working().toText()).isEqualTo("""
                height available at the wall = upper limit at the wall − upstand at the wall − plate height
                  upper limit at the wall = bed joint under the limit
                    bed joint under the limit = bed-joint datum + whole number down from ((limit of height − bed-joint datum) ÷ brick course) × brick course
                      bed-joint datum = 0 mm  (given)
                      limit of height = 4600 mm  (given)
                      brick course = 75 mm  (given)
                    = 4575 mm
                  upstand at the wall = 75 mm  (given)
                  plate height = 2300 mm  (given)
                = 2200 mm
                """);
        assertThat(joints.highestUnder(given(mm(-10))).value()).isEqualTo(mm(-75));
        assertThat(joints.highestUnder(given(mm(-10))).working().disagreements())
                .isEmpty();
    }

    @Test
    void a_least_plate_height_needs_a_lower_limit() {
        assertThatThrownBy(() -> LeanToFit.of(fernside().build()).leastPlateHeight(pitch("30°")))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("lower limit must be set to ask for a least plate height, but was not set");
    }

    @Test
    void where_the_build_up_alone_takes_the_height_no_pitch_fits() {
        LeanToFit fit = LeanToFit.of(LeanToSite.builder()
                .plateHeight(mm(4420))
                .projection(metres(3))
                .upperLimit(given(mm(4575)))
                .upstand(given(mm(75)))
                .buildUp(mm(90))
                .build());

        assertThat(fit.greatestPitch()).isEmpty();
        assertThat(fit).hasToString("no pitch fits");
        assertThat(fit.problems())
                .extracting(Object::toString)
                .containsExactly(
                        "no pitch fits: the height available at the wall is 80 mm, and the build-up alone takes 90 mm\n"
                                + "  mend: plate height: 10 mm less and more; room for the rafters to rise");
        assertThat(fit.working().toText()).contains("height available at the wall = upper limit at the wall");
    }

    @Test
    void where_the_gutter_hangs_too_low_at_any_pitch_no_pitch_fits() {
        LeanToFit fit = LeanToFit.of(
                fernside().gutterDrop(mm(150)).lowerLimit(given(mm(2200))).build());

        assertThat(fit.greatestPitch()).isEmpty();
        assertThat(fit.problems())
                .extracting(Problem::message)
                .containsExactly("no pitch fits: the gutter would hang below the lower limit at any pitch");
    }

    @Test
    void a_gutter_without_overhang_limits_no_pitch() {
        LeanToFit free = LeanToFit.of(fernside().build());
        LeanToFit fit = LeanToFit.of(
                fernside().gutterDrop(mm(100)).lowerLimit(given(mm(2200))).build());

        assertThat(fit.greatestPitch()).isEqualTo(free.greatestPitch());
    }

    @Test
    void reports_everything_that_is_wrong_at_once() {
        Attempt<LeanToFit> fit = LeanToFit.attempt(LeanToSite.builder()
                .plateHeight(mm(2e6))
                .projection(mm(0))
                .upperLimit(given(mm(-2e6)))
                .upstand(given(mm(-75)))
                .buildUp(mm(-90))
                .eavesOverhang(mm(-1))
                .gutterDrop(mm(-2))
                .lowerLimit(given(mm(3e6)))
                .addDemands(PitchDemand.of("tiles", pitch("35°")).withBuildUp(mm(-3)))
                .build());

        assertThat(fit.problems())
                .extracting(Problem::message)
                .containsExactly(
                        "plate height must be from -1000000 mm to 1000000 mm, but was 2000000 mm",
                        "projection must be above 0 mm and at most 1000000 mm, but was 0 mm",
                        "upper limit must be from -1000000 mm to 1000000 mm, but was -2000000 mm",
                        "upstand must be from 0 mm to 1000000 mm, but was -75 mm",
                        "build-up must be from 0 mm to 1000000 mm, but was -90 mm",
                        "eaves overhang must be from 0 mm to 1000000 mm, but was -1 mm",
                        "gutter drop must be from 0 mm to 1000000 mm, but was -2 mm",
                        "lower limit must be from -1000000 mm to 1000000 mm, but was 3000000 mm",
                        "build-up of tiles must be from 0 mm to 1000000 mm, but was -3 mm");
    }

    @Test
    void the_pitch_that_is_available_is_the_pitch_of_the_roof_that_is_built() {
        LeanToFit fit = LeanToFit.of(fernside().build());
        Pitch greatest = fit.greatestPitch().orElseThrow();
        RoofFace main = Roofs.leanTo()
                .wallLength(metres(5.2))
                .projection(metres(3))
                .slope(Slope.of(greatest).fromPlateAt(metres(2.3)))
                .eavesOverhang(org.roofmaths.units.Offset.level(mm(150)))
                .build()
                .face("main");

        Length top = main.apexHeight().plus(mm(90).dividedBy(greatest.cos())).plus(mm(75));
        assertThat(top.minus(mm(4575)).abs()).isLessThanOrEqualTo(Length.ofNanometres(2));
    }
}
