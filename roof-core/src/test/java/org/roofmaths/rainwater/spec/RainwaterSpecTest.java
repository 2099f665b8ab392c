package org.roofmaths.rainwater.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.level;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.percent;
import static org.roofmaths.units.Quantities.pitch;
import static org.roofmaths.units.Quantities.squareMetres;
import static org.roofmaths.working.Figure.given;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.rainwater.Catchment;
import org.roofmaths.rainwater.CatchmentDemand;
import org.roofmaths.rainwater.Downpipe;
import org.roofmaths.rainwater.Gutter;
import org.roofmaths.rainwater.GutterDemand;
import org.roofmaths.rainwater.GutterPlace;
import org.roofmaths.rainwater.GutterRun;
import org.roofmaths.rainwater.GutterSection;
import org.roofmaths.rainwater.GutterSize;
import org.roofmaths.rainwater.KickOut;
import org.roofmaths.rainwater.LandingStrip;
import org.roofmaths.rainwater.Outlet;
import org.roofmaths.rainwater.OutletDemand;
import org.roofmaths.rainwater.OutletRegime;
import org.roofmaths.rainwater.RainDemands;
import org.roofmaths.rainwater.Stretch;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.roof.Roof;
import org.roofmaths.roof.Roofs;
import org.roofmaths.roof.Slope;
import org.roofmaths.units.Area;
import org.roofmaths.units.FlowRate;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.RainfallIntensity;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Worked;

class RainwaterSpecTest {
    private static final RainfallIntensity STORM = RainfallIntensity.ofMillimetresPerHour(75);
    private static final Ratio FIVE_PER_CENT = percent(5); // common practice

    /** City and Guilds, Plumbing Book 1, p. 528: length, run, rise, effective area. */
    @ParameterizedTest
    @CsvSource({"12, 7, 3, 102", "8, 8, 4, 80", "10, 8, 4, 100"})
    void half_the_rise_is_added_to_the_run(double length, double run, double rise, double area) {
        Catchment catchment = Catchment.of(
                metres(length), metres(run), Pitch.ofRiseAndRun(metres(rise), metres(run)), RainDemands.HALF_THE_RISE);

        assertThat(catchment.effectiveArea().toSquareMetres()).isCloseTo(area, within(1e-9));
        assertThat(catchment.working().disagreements()).isEmpty();
    }

    /** Approved Document H Table 1 as the same book quotes it: 1.29, 1.50 and 1.87 are 1 + tan(pitch) ÷ 2. */
    @ParameterizedTest
    @CsvSource({"30, 1.29", "45, 1.50", "60, 1.87"})
    void the_printed_factors_are_the_formula(double degrees, double printed) {
        Catchment catchment = Catchment.of(squareMetres(60), Pitch.ofDegrees(degrees), RainDemands.HALF_THE_RISE);

        assertThat(catchment.effectiveArea().toSquareMetres() / 60).isCloseTo(printed, within(0.005));
    }

    @Test
    void other_rule_sets_count_other_areas() {
        CatchmentDemand printed = CatchmentDemand.planTimes(given(Ratio.of(1.29)), given(Ratio.of(0.5)));
        CatchmentDemand slope = CatchmentDemand.alongSlope(given(Ratio.of(0.5)));
        CatchmentDemand plan = CatchmentDemand.planAndRise(given(Ratio.ZERO), given(Ratio.of(0.25)));

        assertThat(Catchment.of(squareMetres(60), pitch("30°"), printed).effectiveArea())
                .isEqualTo(squareMetres(77.4));
        assertThat(Catchment.of(squareMetres(60), pitch("60°"), slope)
                        .effectiveArea()
                        .toSquareMetres())
                .isCloseTo(120, within(1e-9));
        // a quarter of the wall (Chicago Plumbing Code 18-29-1106)
        assertThat(Catchment.of(squareMetres(60), pitch("30°"), plan)
                        .plusWall(squareMetres(20))
                        .effectiveArea())
                .isEqualTo(squareMetres(65));
        assertThat(Catchment.of(squareMetres(60), pitch("60°"), slope).working().disagreements())
                .isEmpty();
        assertThat(Catchment.of(squareMetres(60), pitch("30°"), printed)
                        .plusWall(squareMetres(20))
                        .working()
                        .disagreements())
                .isEmpty();
        assertThat(printed).hasToString("1.29 × plan, 0.5 of walls");
        assertThat(slope).hasToString("area along the slope, 0.5 of walls");
        assertThat(RainDemands.HALF_THE_RISE).hasToString("plan and 0.5 of the rise, 0.5 of walls");
    }

    @Test
    void a_face_drains_by_its_area_on_plan() {
        Roof garage = Roofs.duoPitch()
                .length(metres(6))
                .span(metres(5))
                .slope(Slope.of(pitch("45°")))
                .eavesOverhang(level(mm(150)))
                .build();

        Catchment front = Catchment.of(garage.face("front"), RainDemands.HALF_THE_RISE);

        // 6 m × 2.65 m × (1 + 1 ÷ 2)
        assertThat(front.effectiveArea().toSquareMetres()).isCloseTo(6 * 2.65 * 1.5, within(1e-9));
        assertThat(front.working().disagreements()).isEmpty();
        assertThatThrownBy(() -> Catchment.ofValley(garage.edges(EdgeKind.RIDGE).get(0), RainDemands.HALF_THE_RISE))
                .hasMessage("edge must be a valley, but was ridge \"ridge front/back\"");
    }

    @Test
    void flow_is_area_times_rain() {
        Worked<FlowRate> flow = Catchment.of(squareMetres(100), pitch("45°"), RainDemands.HALF_THE_RISE)
                .flow(RainfallIntensity.ofLitresPerSecondPerSquareMetre(0.022));

        assertThat(flow.value().toLitresPerSecond()).isCloseTo(150 * 0.022, within(1e-9));
        assertThat(flow.working().disagreements()).isEmpty();
        assertThat(flow.formula().toText()).isEqualTo("flow of rainwater = effective area × rainfall intensity");
    }

    /** Approved Document H Table 2 from memory; the formula returns each to within 1 %. */
    @ParameterizedTest
    @CsvSource({"75, 0.38", "100, 0.78", "115, 1.11", "125, 1.37", "150, 2.16"})
    void a_true_half_round_carries_what_the_table_prints(double diameter, double printed) {
        Gutter gutter = Gutter.of(GutterSection.halfRound(mm(diameter)), RainDemands.HALF_ROUND);

        assertThat(gutter.capacity().toLitresPerSecond()).isCloseTo(printed, within(printed * 0.01));
        assertThat(gutter.working().disagreements()).isEmpty();
    }

    @Test
    void factors_multiply() {
        GutterDemand bent = GutterDemand.builder()
                .coefficient(given(2.78e-5))
                .designFactor(given(Ratio.of(0.9)))
                .lengthFactor(given(Ratio.of(0.93)))
                .bendFactor(given(Ratio.of(0.85)))
                .shapeFactor(given(Ratio.of(1)))
                .build();
        double straight = Gutter.of(GutterSection.halfRound(mm(100)), RainDemands.HALF_ROUND)
                .capacity()
                .toLitresPerSecond();

        Gutter gutter = Gutter.of(GutterSection.halfRound(mm(100)), bent);

        assertThat(gutter.capacity().toLitresPerSecond()).isCloseTo(straight * 0.93 * 0.85, within(1e-12));
        assertThat(gutter.working().disagreements()).isEmpty();
        assertThat(gutter.working().at(Gutter.NOMINAL).formula().toText())
                .isEqualTo(
                        "nominal capacity in l/s = capacity coefficient of the gutter × section of the gutter in mm²^1.25");
    }

    @Test
    void sections_of_other_shapes() {
        assertThat(GutterSection.rectangular(mm(120), mm(75)).area()).isEqualTo(Area.ofSquareMillimetres(9000));
        assertThat(GutterSection.halfRound(mm(100)).area().toSquareMillimetres())
                .isCloseTo(Math.PI * 100 * 100 / 8, within(1e-9));
        assertThat(GutterSection.halfRound(mm(100)).depth()).isEqualTo(mm(50));
        assertThat(GutterSection.measured(given(Area.ofSquareMillimetres(4200)), given(mm(60))))
                .hasToString("gutter of 0.0042 m², 60 mm deep");
        assertThat(GutterSection.rectangular(mm(120), mm(75))).hasToString("rectangular gutter of 120 mm × 75 mm");
        assertThat(GutterSection.halfRound(mm(100)).working().disagreements()).isEmpty();
        assertThat(Gutter.lengthToDepth(GutterSection.halfRound(mm(100)), metres(5))
                        .value())
                .isEqualTo(Ratio.of(100));
        assertThat(Gutter.lengthToDepth(GutterSection.rectangular(mm(120), mm(75)), metres(3))
                        .working()
                        .disagreements())
                .isEmpty();
    }

    @Test
    void a_gutter_where_overflow_enters_the_building_is_refused() {
        for (GutterPlace place : List.of(GutterPlace.PARAPET, GutterPlace.VALLEY, GutterPlace.INTERNAL)) {
            Attempt<Gutter> attempt =
                    Gutter.attempt(place, GutterSection.rectangular(mm(300), mm(150)), RainDemands.HALF_ROUND);

            assertThat(attempt.hasValue()).isFalse();
        }
        assertThat(Gutter.attempt(
                                GutterPlace.PARAPET,
                                GutterSection.rectangular(mm(300), mm(150)),
                                RainDemands.HALF_ROUND)
                        .problems())
                .extracting(Problem::message)
                .containsExactly(
                        "a parapet gutter is not worked out here: what overflows enters the building, so it is for a competent"
                                + " person to design");
        assertThat(Gutter.attempt(GutterPlace.EAVES, GutterSection.halfRound(mm(100)), RainDemands.HALF_ROUND)
                        .hasValue())
                .isTrue();
    }

    @Test
    void a_margin_of_a_tenth_of_a_per_cent_is_no_real_margin() {
        // 37.3 m² at 75 mm/h on a half-round of 100 mm: 0.7771 l/s of 0.7778
        Gutter gutter = Gutter.of(GutterSection.halfRound(mm(100)), RainDemands.HALF_ROUND);
        FlowRate flow = STORM.times(squareMetres(37.3));

        assertThat(gutter.problems(flow, FIVE_PER_CENT))
                .extracting(Problem::toString)
                .containsExactly(
                        "the half-round gutter of 100 mm carries 0.7778 l/s, 0.0007 l/s (0.1 %) over the 0.7771 l/s that reach it: no real margin");
        assertThat(gutter.problems(STORM.times(squareMetres(30)), FIVE_PER_CENT))
                .isEmpty();
    }

    @Test
    void a_gutter_too_small_says_by_how_much() {
        Gutter gutter = Gutter.of(GutterSection.halfRound(mm(100)), RainDemands.HALF_ROUND);

        assertThat(gutter.problems(FlowRate.ofLitresPerSecond(1), FIVE_PER_CENT))
                .extracting(Problem::toString)
                .containsExactly("""
                the half-round gutter of 100 mm carries 0.7778 l/s, 0.2222 l/s (22.2 %) short of the 1 l/s that reach it
                  mend: half-round gutter of 100 mm: a larger one; at least 1 l/s
                  mend: outlets: more of them, or set so that each takes less; at most 0.7778 l/s to each""");
    }

    @Test
    void a_gutter_falls_to_its_outlet() {
        // Building Services Engineering, 5th ed., p. 224: 1 in 600 over 9 m
        assertThat(Gutter.drop(metres(9), Ratio.of(1.0 / 600)).value()).isEqualTo(mm(15));
        assertThat(Gutter.drop(metres(9), Ratio.of(1.0 / 600)).working().disagreements())
                .isEmpty();
        assertThatThrownBy(() -> Gutter.drop(mm(0), Ratio.ZERO)).hasMessage("""
                length of the fall must be above 0 mm, but was 0 mm
                fall of the gutter must be above 0, but was 0""");
    }

    @Test
    void a_table_gives_the_smallest_gutter_that_takes_the_area() {
        // Approved Document H Table 2: 100 mm 37 m² with a 63 outlet (quoted), 150 mm 103 m² with 89 (memory)
        List<GutterSize> table = List.of(
                new GutterSize("150 mm half-round", given(squareMetres(103)), given(mm(89))),
                new GutterSize("100 mm half-round", given(squareMetres(37)), given(mm(63))));

        assertThat(GutterSize.smallest(table, squareMetres(37)).orThrow().name())
                .isEqualTo("100 mm half-round");
        assertThat(GutterSize.smallest(table, squareMetres(37.3))
                        .orThrow()
                        .outlet()
                        .value())
                .isEqualTo(mm(89));
        assertThat(GutterSize.smallest(table, squareMetres(250)).problems())
                .extracting(Problem::toString)
                .containsExactly("""
                an effective area of 250 m² is beyond the largest gutter of the table, 150 mm half-round for 103 m²
                  mend: outlets: at least 3 stretches of equal area; at most 103 m² to each""");
        assertThatThrownBy(() -> GutterSize.smallest(List.of(), squareMetres(1)))
                .hasMessage("table must have one row or more, but has none");
    }

    @Test
    void an_outlet_is_a_weir_up_to_half_its_diameter() {
        Outlet weir = Outlet.of(mm(75), mm(30), RainDemands.OPEN);
        Outlet orifice = Outlet.of(mm(75), mm(50), RainDemands.OPEN);

        assertThat(weir.regime()).isEqualTo(OutletRegime.WEIR);
        assertThat(weir.capacity().toLitresPerSecond()).isCloseTo(75 * Math.pow(30, 1.5) / 7500, within(1e-12));
        assertThat(orifice.regime()).isEqualTo(OutletRegime.ORIFICE);
        assertThat(orifice.capacity().toLitresPerSecond()).isCloseTo(75 * 75 * Math.sqrt(50) / 15000, within(1e-12));
        assertThat(Outlet.of(mm(75), mm(30), RainDemands.GRATED).capacity().toLitresPerSecond())
                .isCloseTo(weir.capacity().toLitresPerSecond() / 2, within(1e-12));
        assertThat(weir.working().disagreements()).isEmpty();
        assertThat(orifice.working().disagreements()).isEmpty();
        assertThat(weir.problems(FlowRate.ofLitresPerSecond(2), FIVE_PER_CENT))
                .extracting(Problem::message)
                .containsExactly(
                        "the outlet of 75 mm carries 1.6432 l/s, 0.3568 l/s (17.8 %) short of the 2 l/s that reach it");
        assertThat(weir.toString()).startsWith("outlet of 75 mm under 30 mm (weir): 1.643");
    }

    @Test
    void a_downpipe_runs_part_full() {
        // Wyly-Eaton as in EN 12056-3, from memory: 68 mm, filling 0.33, roughness 0.25 mm
        Worked<FlowRate> pipe = Downpipe.capacity(given(mm(68)), given(2.5e-4), given(mm(0.25)), given(Ratio.of(0.33)));

        assertThat(pipe.value().toLitresPerSecond()).isCloseTo(3.829552566, within(1e-6));
        assertThat(pipe.working().disagreements()).isEmpty();
        assertThatThrownBy(() -> Downpipe.capacity(given(mm(0)), given(-1.0), given(mm(0)), given(Ratio.of(2))))
                .hasMessage("""
                inside diameter of the pipe must be above 0 mm, but was 0 mm
                capacity coefficient of the pipe must be above 0 and finite, but was -1.0
                roughness of the pipe must be above 0 mm, but was 0 mm
                filling of the pipe must be above 0 and at most 1, but was 2""");
    }

    private static final Catchment EAVES = Catchment.of(metres(10), metres(4), pitch("45°"), RainDemands.HALF_THE_RISE);

    @Test
    void water_parts_half_way_between_outlets() {
        GutterRun run = GutterRun.along(metres(10), List.of(metres(0), metres(6)), EAVES);

        // 60 m² over 10 m: outlet at 0 takes 3 m, outlet at 6 m takes 3 m and 4 m
        assertThat(run.stretches()).extracting(Stretch::to).containsExactly(metres(3), metres(6), metres(10));
        assertThat(run.areaTo(1).toSquareMetres()).isCloseTo(18, within(1e-9));
        assertThat(run.areaTo(2).toSquareMetres()).isCloseTo(18 + 24, within(1e-9));
        assertThat(run.fullestStretch().area().toSquareMetres()).isCloseTo(24, within(1e-9));
        assertThat(run.fullestStretch().length()).isEqualTo(metres(4));
        assertThatThrownBy(() -> run.areaTo(3)).hasMessage("outlet must be from 1 to 2, but was 3");
    }

    @Test
    void a_central_outlet_does_not_halve_an_upper_roof() {
        Catchment upper = Catchment.of(squareMetres(20), pitch("45°"), RainDemands.HALF_THE_RISE);
        Catchment both = EAVES.plusUpper(upper, new LandingStrip(metres(6), metres(9)));

        GutterRun run = GutterRun.evenly(metres(10), 1, both);

        assertThat(both.effectiveArea().toSquareMetres()).isCloseTo(60 + 30, within(1e-9));
        assertThat(run.stretches().get(0).area().toSquareMetres()).isCloseTo(30, within(1e-9));
        assertThat(run.fullestStretch().area().toSquareMetres()).isCloseTo(30 + 30, within(1e-9));
        assertThat(both.working().disagreements()).isEmpty();
        assertThat(both.problems())
                .extracting(Problem::toString)
                .containsExactly(
                        "water of 30 m² lands on the eaves from 6000 mm to 9000 mm: that length of gutter takes it whole, and the covering there"
                                + " needs its own look at pitch and lap");
        assertThat(GutterRun.evenly(metres(10), 1, EAVES.plusUpper(upper, LandingStrip.pipeAt(metres(5))))
                        .stretches()
                        .get(0)
                        .area()
                        .toSquareMetres())
                .isCloseTo(30 + 30, within(1e-9));
    }

    @Test
    void the_fewest_outlets_that_serve() {
        FlowRate capacity = Gutter.of(GutterSection.halfRound(mm(100)), RainDemands.HALF_ROUND)
                .capacity();

        // 60 m² × 75 mm/h = 1.25 l/s; one outlet in the middle leaves 0.625 to each side
        assertThat(GutterRun.fewestOutlets(metres(10), 3, EAVES, STORM, capacity)
                        .orThrow()
                        .outlets())
                .containsExactly(metres(5));
        assertThat(GutterRun.fewestOutlets(metres(10), 1, EAVES, STORM, FlowRate.ofLitresPerSecond(0.5))
                        .problems())
                .extracting(Problem::toString)
                .containsExactly("""
                        the gutter with 1 outlet carries 0.5 l/s, 0.125 l/s (20 %) short of the 0.625 l/s that reach it
                          mend: gutter with 1 outlet: a larger one; at least 0.625 l/s
                          mend: outlets: more of them, or set so that each takes less; at most 0.5 l/s to each""");
        assertThat(GutterRun.fewestOutlets(
                                metres(10),
                                1,
                                EAVES.plusUpper(EAVES, LandingStrip.pipeAt(metres(1))),
                                STORM,
                                FlowRate.ofLitresPerSecond(0.5))
                        .problems()
                        .get(0)
                        .mends())
                .last()
                .hasToString("upper roof: its water carried down in a pipe of its own; less here");
    }

    @Test
    void a_gutter_ends_clear_of_a_wall_with_a_kick_out() {
        KickOut end = KickOut.of(metres(5.2), 1, GutterSection.halfRound(mm(112)), given(mm(25)));

        assertThat(end.count()).isEqualTo(1);
        assertThat(end.leastHeight()).isEqualTo(mm(56));
        assertThat(end.gutterLength()).isEqualTo(mm(5175));
        assertThat(end).hasToString("1 kick-out at least 56 mm high, gutter of 5175 mm");
        assertThat(end.working().disagreements()).isEmpty();
        assertThatThrownBy(() -> KickOut.of(mm(0), 3, GutterSection.halfRound(mm(112)), given(mm(-1))))
                .hasMessage("""
                length of eaves that drains must be above 0 mm, but was 0 mm
                ends of the gutter at a wall must be 1 or 2, but was 3
                stop end clear of the wall must be 0 mm or more, but was -1 mm""");
    }

    @Test
    void refuses_wrong_figures_all_at_once() {
        assertThatThrownBy(() -> Catchment.of(mm(0), mm(-1), pitch("45°"), RainDemands.HALF_THE_RISE))
                .hasMessage("""
                length of eaves that drains must be above 0 mm, but was 0 mm
                run of the slope that drains must be above 0 mm, but was -1 mm""");
        assertThatThrownBy(() -> Catchment.of(Area.ZERO, pitch("45°"), RainDemands.HALF_THE_RISE))
                .hasMessage("plan area that drains must be above 0 m², but was 0 m²");
        assertThatThrownBy(() -> EAVES.plusWall(Area.ZERO))
                .hasMessage("face of the wall above must be above 0 m², but was 0 m²");
        assertThatThrownBy(() -> EAVES.flow(RainfallIntensity.ZERO))
                .hasMessage("rainfall intensity must be above 0 mm/h, but was 0 mm/h");
        assertThatThrownBy(() -> CatchmentDemand.planAndRise(given(Ratio.of(1.5)), given(Ratio.of(-1))))
                .hasMessage("""
                share of the rise that catches rain must be from 0 to 1, but was 1.5
                share of a wall that catches rain must be from 0 to 1, but was -1""");
        assertThatThrownBy(() -> CatchmentDemand.planTimes(given(Ratio.ZERO), given(Ratio.ZERO)))
                .hasMessage("factor on the plan area must be above 0, but was 0");
        assertThatThrownBy(() -> GutterSection.rectangular(mm(0), mm(0))).hasMessage("""
                width of the gutter must be above 0 mm, but was 0 mm
                depth of the gutter to its spill level must be above 0 mm, but was 0 mm""");
        assertThatThrownBy(() -> GutterDemand.builder()
                        .coefficient(given(0.0))
                        .designFactor(given(Ratio.ZERO))
                        .bendFactor(given(Ratio.ZERO))
                        .build())
                .hasMessage("""
                        capacity coefficient of the gutter must be above 0 and finite, but was 0.0
                        design factor of the gutter must be above 0, but was 0
                        bend factor of the gutter must be above 0, but was 0""");
        assertThatThrownBy(() -> new OutletDemand(given(Ratio.ZERO), given(0.0), given(Double.NaN)))
                .hasMessage("""
                grating factor of the outlet must be above 0, but was 0
                weir divisor of the outlet must be above 0 and finite, but was 0.0
                orifice divisor of the outlet must be above 0 and finite, but was NaN""");
        assertThatThrownBy(() -> Outlet.of(mm(0), mm(0), RainDemands.OPEN)).hasMessage("""
                diameter of the outlet must be above 0 mm, but was 0 mm
                head over the outlet must be above 0 mm, but was 0 mm""");
        assertThatThrownBy(() -> new LandingStrip(mm(-1), mm(-2))).hasMessage("""
                start of the landing strip must be 0 mm or more, but was -1 mm
                end of the landing strip must not lie before its start of -1 mm, but was -2 mm""");
        assertThatThrownBy(() -> GutterRun.along(metres(10), List.of(metres(6), metres(2), metres(11)), EAVES))
                .hasMessage("""
                place of outlet 2 must lie beyond that of the outlet before it, but was 2000 mm
                place of outlet 3 must lie on the eaves, from 0 mm to 10000 mm, but was 11000 mm""");
        assertThatThrownBy(() -> GutterRun.along(
                        metres(10), List.of(), EAVES.plusUpper(EAVES, new LandingStrip(metres(9), metres(12)))))
                .hasMessage("""
                        outlets must be one or more, but was none
                        end of the landing strip must lie on the eaves of 10000 mm, but was 12000 mm""");
        assertThatThrownBy(() -> GutterRun.evenly(metres(10), 0, EAVES))
                .hasMessage("outlets must be 1 or more, but was 0");
    }
}
