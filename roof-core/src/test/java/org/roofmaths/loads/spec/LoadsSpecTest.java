package org.roofmaths.loads.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.kg;
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
import org.roofmaths.loads.Caution;
import org.roofmaths.loads.CoveringItem;
import org.roofmaths.loads.CoveringMass;
import org.roofmaths.loads.DriftDemand;
import org.roofmaths.loads.GroundSnow;
import org.roofmaths.loads.LeftToOthers;
import org.roofmaths.loads.SlopeLoad;
import org.roofmaths.loads.SnowDemand;
import org.roofmaths.loads.SnowDrift;
import org.roofmaths.loads.SnowHold;
import org.roofmaths.loads.SnowIndicative;
import org.roofmaths.loads.TileBalance;
import org.roofmaths.loads.WindDemand;
import org.roofmaths.loads.WindIndicative;
import org.roofmaths.loads.WindZones;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.units.ArealMass;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Pressure;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Worked;

class LoadsSpecTest {
    private static ArealMass kgPerSquareMetre(double mass) {
        return ArealMass.ofKilogramsPerSquareMetre(mass);
    }

    private static Pressure kilopascals(double load) {
        return Pressure.ofKilopascals(load);
    }

    // Mass

    @Test
    void layers_add_up_on_the_slope_and_on_plan() {
        CoveringMass covering = CoveringMass.of(List.of(
                CoveringItem.units("tiles", given(kg(4.4)), given(mm(345)), given(mm(300))),
                CoveringItem.bars("battens", given(mm(50)), given(mm(25)), given(mm(345)), given(420.0)),
                CoveringItem.of("underlay", kgPerSquareMetre(0.15))));

        double expected = 4.4 / (0.345 * 0.3) + 0.05 * 0.025 * 420 / 0.345 + 0.15;
        assertThat(covering.onSlope().toKilogramsPerSquareMetre()).isCloseTo(expected, within(1e-9));
        assertThat(covering.onPlan(pitch("40°")).value().toKilogramsPerSquareMetre())
                .isCloseTo(expected / Math.cos(Math.toRadians(40)), within(1e-9));
        assertThat(covering.of(squareMetres(10)).toKilograms()).isCloseTo(10 * expected, within(1e-9));
        assertThat(covering.onPlan(pitch("40°")).working().disagreements()).isEmpty();
        assertThat(covering.weight().value().toPascals()).isCloseTo(expected * 9.81, within(1e-9));
        assertThat(covering.weight().working().toText())
                .contains("gravity in m/s² = 9.81  (assumed: customary in building");
        assertThat(covering.weight().working().disagreements()).isEmpty();
        assertThat(covering.caution()).isEqualTo(Caution.MASS);
    }

    @Test
    void battens_and_sheets_by_size_and_density() {
        // 38 × 25 at 100, 420 kg/m³: 3.99 kg/m²; lead 1.8 mm, 11 358 kg/m³: 20.4444 kg/m² (densities: an open textbook,
        // quoted)
        assertThat(CoveringItem.bars("battens", given(mm(38)), given(mm(25)), given(mm(100)), given(420.0))
                        .mass()
                        .value()
                        .toKilogramsPerSquareMetre())
                .isCloseTo(3.99, within(1e-9));
        assertThat(CoveringItem.sheet("lead", given(mm(1.8)), given(11358.0))
                        .mass()
                        .value()
                        .toKilogramsPerSquareMetre())
                .isCloseTo(20.4444, within(1e-9));
        assertThat(((Worked<ArealMass>) CoveringItem.sheet("lead", given(mm(1.8)), given(11358.0))
                                .mass())
                        .working()
                        .disagreements())
                .isEmpty();
    }

    @Test
    void a_heavier_covering_is_for_a_person_to_decide() {
        CoveringMass slates = CoveringMass.of(List.of(CoveringItem.of("slates", kgPerSquareMetre(40))));
        CoveringMass tiles = CoveringMass.of(List.of(CoveringItem.of("tiles", kgPerSquareMetre(50))));

        assertThat(tiles.ratioTo(slates).value()).isEqualTo(Ratio.of(1.25));
        assertThat(tiles.ratioTo(slates).working().disagreements()).isEmpty();
        assertThat(tiles.changeFrom(slates, percent(15)))
                .extracting(Problem::toString)
                .containsExactly(
                        "the new covering weighs 50 kg/m² where the old one weighed 40 kg/m², 25 % more: a person competent in structures decides");
        assertThat(slates.changeFrom(tiles, percent(15))).hasSize(1);
        assertThat(tiles.changeFrom(slates, percent(25))).isEmpty();
        assertThat(slates).hasToString("40 kg/m² of slope: slates 40 kg/m²");
    }

    @Test
    void refuses_layers_that_weigh_nothing() {
        assertThatThrownBy(() -> CoveringMass.of(List.of())).hasMessage("layers must be one or more, but was none");
        assertThatThrownBy(() -> CoveringItem.of("air", kgPerSquareMetre(-1)))
                .hasMessage("mass of the layer per area of slope must be 0 kg/m² or more, but was -1 kg/m²");
        assertThatThrownBy(() -> CoveringItem.units("tiles", given(kg(0)), given(mm(0)), given(mm(0))))
                .hasMessage("""
                mass of one unit of the layer must be above 0 kg, but was 0 kg
                gauge of the layer's units must be above 0 mm, but was 0 mm
                cover width of the layer's units must be above 0 mm, but was 0 mm""");
        assertThatThrownBy(
                        () -> CoveringItem.bars("battens", given(mm(0)), given(mm(0)), given(mm(0)), given(Double.NaN)))
                .hasMessage("""
                        width of the layer's bars must be above 0 mm, but was 0 mm
                        depth of the layer's bars must be above 0 mm, but was 0 mm
                        spacing of the layer's bars must be above 0 mm, but was 0 mm
                        density of the layer in kg/m³ must be above 0 and finite, but was NaN""");
    }

    // Conversions: elementary statics

    @ParameterizedTest
    @CsvSource({"0.75, 30", "0.65, 45", "0.785, 22.5"})
    void a_weight_on_the_slope_in_all_its_ways(double load, double degrees) {
        SlopeLoad weight = SlopeLoad.ofSlope(kilopascals(load), Pitch.ofDegrees(degrees));
        double angle = Math.toRadians(degrees);

        assertThat(weight.onPlan().toKilopascals()).isCloseTo(load / Math.cos(angle), within(1e-12));
        assertThat(weight.squareToSlope().toKilopascals()).isCloseTo(load * Math.cos(angle), within(1e-12));
        assertThat(weight.alongSlope().toKilopascals()).isCloseTo(load * Math.sin(angle), within(1e-12));
        assertThat(weight.working().disagreements()).isEmpty();
    }

    @Test
    void a_load_on_plan_is_spread_over_more_slope() {
        SlopeLoad snow = SlopeLoad.ofPlan(kilopascals(1), pitch("60°"));

        assertThat(snow.onSlope().toKilopascals()).isCloseTo(0.5, within(1e-12));
        assertThat(snow.squareToSlope().toKilopascals()).isCloseTo(0.25, within(1e-12));
        assertThat(snow.working().disagreements()).isEmpty();
    }

    // Snow. The figures of EN 1991-1-3:2003 were quoted from secondary pages, not read in the standard.

    private static SnowDemand snow(double ground, SnowHold hold) {
        return SnowDemand.builder()
                .ruleSet("EN 1991-1-3:2003, recommended values")
                .ground(given(kilopascals(ground)))
                .flatCoefficient(given(Ratio.of(0.8)))
                .fullUpTo(given(pitch("30°")))
                .noneFrom(given(pitch("60°")))
                .exposure(given(Ratio.of(1)))
                .thermal(given(Ratio.of(1)))
                .hold(hold)
                .build();
    }

    @ParameterizedTest
    @CsvSource({"15, 0.8", "30, 0.8", "35, 0.6666666667", "52.5, 0.2", "60, 0", "75, 0"})
    void snow_slides_off_a_steep_slope(double degrees, double coefficient) {
        SnowIndicative snow = SnowIndicative.on(Pitch.ofDegrees(degrees), snow(0.7, SnowHold.SLIDES_OFF));

        assertThat(snow.coefficient().toDouble()).isCloseTo(coefficient, within(1e-9));
        assertThat(snow.working().disagreements()).isEmpty();
    }

    @Test
    void held_snow_stays() {
        SnowIndicative held = SnowIndicative.on(pitch("52.5°"), snow(0.7, SnowHold.HELD));

        assertThat(held.coefficient()).isEqualTo(Ratio.of(0.8));
        assertThat(held.onPlan().toKilopascals()).isCloseTo(0.56, within(1e-12));
        assertThat(held.onSlope().onSlope().toKilopascals())
                .isCloseTo(0.56 * Math.cos(Math.toRadians(52.5)), within(1e-12));
        assertThat(held.onSlope().working().disagreements()).isEmpty();
        assertThat(held.caution().toString()).startsWith("Indicative, not a design:");
        assertThat(held.toString()).endsWith("by EN 1991-1-3:2003, recommended values; indicative, not a design");
    }

    private static final DriftDemand DRIFT = DriftDemand.builder()
            .snowWeight(given(2000.0))
            .least(given(Ratio.of(0.8)))
            .greatest(given(Ratio.of(4)))
            .leastLength(given(metres(5)))
            .greatestLength(given(metres(15)))
            .noSlideUpTo(given(pitch("15°")))
            .build();

    /** Steel Buildings in Europe, Part 3, p. 3-40 for the first; the others by the same rules, p. 3-19. */
    @ParameterizedTest
    @CsvSource({"10, 40, 3, 0.65, 4, 6, 2.6, 0.52", "6, 4, 2.5, 0.6, 2, 5, 1.2, 0.48", "3, 2, 6, 0.5, 0.8, 12, 0.4, 0.4"
    })
    void snow_piles_up_against_a_taller_wall(
            double upper,
            double lower,
            double height,
            double ground,
            double coefficient,
            double length,
            double atWall,
            double beyond) {
        SnowDrift drift = SnowDrift.against(
                        metres(upper),
                        metres(lower),
                        metres(height),
                        pitch("8.5°"),
                        snow(ground, SnowHold.SLIDES_OFF),
                        DRIFT)
                .orThrow();

        assertThat(drift.coefficient().toDouble()).isCloseTo(coefficient, within(1e-9));
        assertThat(drift.length()).isEqualTo(metres(length));
        assertThat(drift.atWall().toKilopascals()).isCloseTo(atWall, within(1e-9));
        assertThat(drift.beyond().toKilopascals()).isCloseTo(beyond, within(1e-9));
        assertThat(drift.at(metres(length / 2)).toKilopascals()).isCloseTo((atWall + beyond) / 2, within(1e-9));
        assertThat(drift.at(metres(100))).isEqualTo(drift.beyond());
        assertThat(drift.working().disagreements()).isEmpty();
    }

    @Test
    void sliding_snow_is_refused_in_so_many_words() {
        Attempt<SnowDrift> attempt = SnowDrift.against(
                metres(10), metres(4), metres(3), pitch("30°"), snow(0.6, SnowHold.SLIDES_OFF), DRIFT);

        assertThat(attempt.hasValue()).isFalse();
        assertThat(attempt.problems())
                .extracting(Problem::message)
                .containsExactly("snow that slides from an upper roof: not worked out here; it is for an engineer");
        assertThat(attempt.problems()).extracting(Problem::code).containsExactly(LeftToOthers.LEFT_TO_OTHERS);
        assertThat(SnowDrift.against(mm(0), mm(0), mm(0), pitch("5°"), snow(0.6, SnowHold.SLIDES_OFF), DRIFT)
                        .problems())
                .extracting(Problem::message)
                .containsExactly(
                        "width of the upper roof must be above 0 mm, but was 0 mm",
                        "width of the lower roof must be above 0 mm, but was 0 mm",
                        "height of the upper roof over the lower must be above 0 mm, but was 0 mm");
    }

    @Test
    void every_refusal_names_who_it_is_for() {
        for (LeftToOthers left : LeftToOthers.values()) {
            assertThat(left.answer().hasValue()).isFalse();
            assertThat(left.problem().message()).isEqualTo(left + ": not worked out here; it is for " + left.who());
        }
    }

    @Test
    void ground_snow_by_altitude() {
        // UK annex with the sign A − 100 (read in its correction list): zone 4 at 250 m: 0.15 + 0.45 + 150 ÷ 525
        Worked<Pressure> uk = GroundSnow.linear(
                given(kilopascals(0.15 + 0.1 * 4 + 0.05)), given(metres(250)), given(metres(100)), given(metres(525)));
        // German annex zone 3 at 700 m (quoted from open code): 0.31 + 2.91 × ((700 + 140) ÷ 760)²
        Worked<Pressure> de = GroundSnow.bySquare(
                given(kilopascals(1.1)),
                given(kilopascals(0.31)),
                given(kilopascals(2.91)),
                given(metres(700)),
                given(metres(140)),
                given(metres(760)));

        assertThat(uk.value().toKilopascals()).isCloseTo(0.6 + 150.0 / 525, within(1e-9));
        assertThat(de.value().toKilopascals()).isCloseTo(0.31 + 2.91 * Math.pow(840.0 / 760, 2), within(1e-9));
        assertThat(uk.working().disagreements()).isEmpty();
        assertThat(de.working().disagreements()).isEmpty();
        assertThatThrownBy(() ->
                        GroundSnow.linear(given(kilopascals(1)), given(metres(1)), given(metres(1)), given(mm(0))))
                .hasMessage("altitude for each kPa more must be above 0 mm, but was 0 mm");
    }

    // Wind. The figures of EN 1991-1-4:2005 were quoted from a project guide and open code, not read in the standard.

    private static WindDemand wind(double roughness, double leastHeight, double speed) {
        return WindDemand.builder()
                .ruleSet("EN 1991-1-4:2005, recommended values")
                .speed(given(speed))
                .roughness(given(metres(roughness)))
                .leastHeight(given(metres(leastHeight)))
                .referenceRoughness(given(mm(50)))
                .terrainCoefficient(given(0.19))
                .terrainExponent(given(0.07))
                .gust(given(7.0))
                .airDensity(given(1.25))
                .build();
    }

    @ParameterizedTest
    @CsvSource({
        "0.05, 2, 25, 10, 0.9188632907",
        "1, 10, 26, 9, 0.4969325612",
        "0.01, 1, 22, 6, 0.7470568155",
        "0.003, 1, 27, 7, 1.269350267"
    })
    void peak_pressure_by_the_logarithmic_law(
            double roughness, double least, double speed, double height, double peak) {
        WindIndicative wind = WindIndicative.at(metres(height), wind(roughness, least, speed));

        assertThat(wind.peakPressure().toKilopascals()).isCloseTo(peak, within(peak * 1e-6)); // ten digits in the cases
        assertThat(wind.working().disagreements()).isEmpty();
        assertThat(wind.caution()).isEqualTo(Caution.WIND);
    }

    @Test
    void outward_pressure_is_below_zero() {
        WindIndicative wind = WindIndicative.at(metres(10), wind(0.05, 2, 25));

        Worked<Pressure> net = wind.net(given(Ratio.of(-0.5)), given(Ratio.of(0.2)));

        assertThat(net.value().toPascals()).isCloseTo(wind.peakPressure().toPascals() * -0.7, within(1e-9));
        assertThat(net.working().disagreements()).isEmpty();
        assertThatThrownBy(() -> WindIndicative.at(mm(0), wind(0.05, 2, 25)))
                .hasMessage("height over the ground must be above 0 mm, but was 0 mm");
        assertThatThrownBy(() -> wind(2, 1, 0)).hasMessage("""
                basic wind speed in m/s must be above 0 and finite, but was 0.0
                least height of the terrain must be more than the roughness length of 2000 mm, but was 1000 mm""");
    }

    @ParameterizedTest
    @CsvSource({"-2, -0.9, 2, -1.668867005", "-1.5, -1, 10, -1", "-1.5, -0.5, 0.5, -1.5"})
    void a_coefficient_between_small_and_large_areas_is_logarithmic(
            double small, double large, double loaded, double expected) {
        Worked<Ratio> coefficient = WindIndicative.coefficientByArea(
                given(Ratio.of(small)),
                given(Ratio.of(large)),
                given(squareMetres(1)),
                given(squareMetres(10)),
                squareMetres(loaded));

        assertThat(coefficient.value().toDouble()).isCloseTo(expected, within(1e-9));
        assertThat(coefficient.working().disagreements()).isEmpty();
    }

    @Test
    void zones_make_up_the_plan() {
        WindZones zones = WindZones.duoPitch(
                        metres(12),
                        metres(8),
                        metres(7),
                        given(Ratio.of(2)),
                        given(Ratio.of(0.25)),
                        given(Ratio.of(0.1)))
                .orThrow();

        assertThat(zones.zoneLength()).isEqualTo(metres(12));
        assertThat(zones.corner().toSquareMetres()).isCloseTo(3.6, within(1e-9));
        assertThat(zones.eaves().toSquareMetres()).isCloseTo(7.2, within(1e-9));
        assertThat(zones.windwardField().toSquareMetres()).isCloseTo(33.6, within(1e-9));
        assertThat(zones.ridge().toSquareMetres()).isCloseTo(14.4, within(1e-9));
        assertThat(zones.leewardField().toSquareMetres()).isCloseTo(33.6, within(1e-9));
        assertThat(zones.corner()
                        .times(2)
                        .plus(zones.eaves())
                        .plus(zones.windwardField())
                        .plus(zones.ridge())
                        .plus(zones.leewardField())
                        .toSquareMetres())
                .isCloseTo(12 * 8, within(1e-9));
        assertThat(zones.working().disagreements()).isEmpty();
        assertThat(WindZones.duoPitch(mm(0), mm(0), mm(0), given(Ratio.ZERO), given(Ratio.of(0.6)), given(Ratio.ZERO))
                        .problems())
                .extracting(Problem::message)
                .containsExactly(
                        "width across the wind must be above 0 mm, but was 0 mm",
                        "depth along the wind must be above 0 mm, but was 0 mm",
                        "ridge height for the zones must be above 0 mm, but was 0 mm",
                        "heights in the zone length must be above 0, but was 0",
                        "corner's share of the zone length must be above 0 and at most 0.5, but was 0.6",
                        "edge strip's share of the zone length must be above 0 and at most 0.5, but was 0");
        assertThat(WindZones.duoPitch(
                                metres(12),
                                metres(2),
                                metres(7),
                                given(Ratio.of(2)),
                                given(Ratio.of(0.25)),
                                given(Ratio.of(0.1)))
                        .problems())
                .extracting(Problem::message)
                .containsExactly(
                        "depth along the wind must be more than twice the edge strip of 1200 mm, but was 2000 mm");
    }

    @Test
    void one_tile_held_by_its_weight_alone() {
        TileBalance tile = TileBalance.of(
                given(Pressure.ofPascals(600)), given(mm(300)), given(mm(345)), given(kg(4.4)), given(pitch("30°")));

        assertThat(tile.working().at(TileBalance.UPLIFT).value()).isCloseTo(600 * 0.3 * 0.345, within(1e-9));
        assertThat(tile.working().at(TileBalance.HELD_BY_WEIGHT).value())
                .isCloseTo(4.4 * 9.81 * Math.cos(Math.toRadians(30)), within(1e-9));
        assertThat(tile.working().at(TileBalance.SHORT_BY).value()).isCloseTo(24.71887947, within(1e-6));
        assertThat(tile.working().disagreements()).isEmpty();
        assertThat(tile)
                .hasToString("uplift beyond the weight 24.7 N; a balance of forces, not a specification of fixings");
        assertThatThrownBy(() -> TileBalance.of(
                        given(Pressure.ofPascals(-1)), given(mm(0)), given(mm(0)), given(kg(0)), given(pitch("30°"))))
                .hasMessage("""
                        outward pressure on the tile must be 0 Pa or more, but was -1 Pa
                        cover width of the layer's units must be above 0 mm, but was 0 mm
                        gauge of the layer's units must be above 0 mm, but was 0 mm
                        mass of one unit of the layer must be above 0 kg, but was 0 kg""");
    }
}
