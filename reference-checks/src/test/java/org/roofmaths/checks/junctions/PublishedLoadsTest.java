package org.roofmaths.checks.junctions;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.kg;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.squareMetres;
import static org.roofmaths.working.Figure.given;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.roofmaths.checks.junctions.Cases.Answers;
import org.roofmaths.checks.junctions.Cases.Case;
import org.roofmaths.loads.CoveringItem;
import org.roofmaths.loads.CoveringMass;
import org.roofmaths.loads.DriftDemand;
import org.roofmaths.loads.GroundSnow;
import org.roofmaths.loads.SlopeLoad;
import org.roofmaths.loads.SnowDemand;
import org.roofmaths.loads.SnowDrift;
import org.roofmaths.loads.SnowHold;
import org.roofmaths.loads.SnowIndicative;
import org.roofmaths.loads.TileBalance;
import org.roofmaths.loads.WindDemand;
import org.roofmaths.loads.WindIndicative;
import org.roofmaths.loads.WindZones;
import org.roofmaths.units.ArealMass;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Pressure;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Worked;

/** The figures of {@code data/loads/cases.csv}, sources named there, put to the library row by row. */
class PublishedLoadsTest {
    private static final String TABLE = "a table of a document and no sum: the caller brings its figure";
    private static final String REFUSED = "left to an engineer on purpose";
    private static final String NOT_OFFERED = "a rule that the library does not offer";

    /** The rows that the library does not answer, by id or by topic, and why. */
    private static final Map<String, String> CANNOT_DECIDE = Map.ofEntries(
            entry("SNS-11", REFUSED), // valley peaks
            entry("SNS-12", REFUSED),
            entry("SNS-14", REFUSED),
            entry("SNS-15", REFUSED),
            entry("snow-shape-uk", NOT_OFFERED),
            entry("SNG-15", TABLE),
            entry("snow-ce", TABLE),
            entry("snow-obstruction", REFUSED),
            entry("snow-exceptional", REFUSED),
            entry("snow-overhang", REFUSED),
            entry("SNA-10", NOT_OFFERED),
            entry("snow-ontario", NOT_OFFERED),
            entry("WQ-01", "the peak pressure is told, not the basic one"),
            entry("wind-basic-uk", NOT_OFFERED),
            entry("wind-basic", NOT_OFFERED),
            entry("wind-cpe-duopitch", TABLE),
            entry("wind-cpe-monopitch", TABLE),
            entry("WC-13", NOT_OFFERED),
            entry("WZ-05", "zones of walls are not those of a roof"),
            entry("wind-historic", NOT_OFFERED),
            entry("uplift-ras127", NOT_OFFERED),
            entry("uplift-permit-table", TABLE),
            entry("UP-08", "factored loads are a design, and that is left to an engineer"),
            entry("UP-10", "factored loads are a design, and that is left to an engineer"),
            entry("uplift-underlay", TABLE),
            entry("uplift-minimum-fixing", TABLE),
            entry("rafter-line", REFUSED),
            entry("imposed-uk", TABLE),
            entry("imposed-uk-legacy", TABLE),
            entry("imposed-nl", TABLE),
            entry("imposed-ibc", TABLE),
            entry("timber-values", TABLE),
            entry("timber-span", REFUSED),
            entry("timber-creep", REFUSED),
            entry("deflection-limit", TABLE),
            entry("span-table", REFUSED));

    private static Answers answers(Case row) {
        return switch (row.topic()) {
            case "snow-shape" -> snowShape(row);
            case "snow-roof" -> snowRoof(row);
            case "snow-ground-uk", "snow-ground-de", "snow-ground-it", "snow-ground-annexc" -> ground(row);
            case "snow-drift" -> drift(row);
            case "snow-slide" -> Answers.of("mu_s", noneSlidesAt(row.number("upper_pitch_deg")) ? 0 : -1);
            case "snow-asce" -> asce(row);
            case "snow-nbc" -> Answers.of("cs", coefficient(row.number("slope_deg"), 1, 30, 70));
            case "wind-qp", "wind-qp-nl" -> wind(row);
            case "wind-cpe-area" ->
                Answers.of(
                        "cpe",
                        WindIndicative.coefficientByArea(
                                        given(Ratio.of(row.number("cpe_1"))),
                                        given(Ratio.of(row.number("cpe_10"))),
                                        given(squareMetres(1)),
                                        given(squareMetres(10)),
                                        squareMetres(row.number("loaded_area_m2")))
                                .value()
                                .toDouble());
            case "wind-zones" -> zones(row);
            case "wind-pressure" -> pressure(row);
            case "uplift-statics" -> tile(row);
            case "dead-sum" -> deadSum(row);
            case "dead-convert" -> convert(row);
            case "dead-weight-table" ->
                Answers.of("mass_min_kg_per_m2", pounds(row.number("load_min_lb_per_ft2")))
                        .and("mass_max_kg_per_m2", pounds(row.number("load_max_lb_per_ft2")));
            case "dead-from-size" -> fromSize(row);
            case "dead-units" -> units(row);
            default -> throw new AssertionError("no answer for " + row);
        };
    }

    private static SnowDemand snow(
            Pressure ground, double flat, double fullUpTo, double noneFrom, double ce, double ct) {
        return SnowDemand.builder()
                .ruleSet("as the case names it")
                .ground(given(ground))
                .flatCoefficient(given(Ratio.of(flat)))
                .fullUpTo(given(Pitch.ofDegrees(fullUpTo)))
                .noneFrom(given(Pitch.ofDegrees(noneFrom)))
                .exposure(given(Ratio.of(ce)))
                .thermal(given(Ratio.of(ct)))
                .hold(SnowHold.SLIDES_OFF)
                .build();
    }

    /** The least pitch stands for a flat roof, on which the coefficient is that of every flat one. */
    private static Pitch pitch(double degrees) {
        return Pitch.ofDegrees(degrees == 0 ? 0.001 : degrees);
    }

    private static double coefficient(double degrees, double flat, double fullUpTo, double noneFrom) {
        return SnowIndicative.on(pitch(degrees), snow(Pressure.ofKilopascals(1), flat, fullUpTo, noneFrom, 1, 1))
                .coefficient()
                .toDouble();
    }

    private static Answers snowShape(Case row) {
        if (row.has("slope_percent")) {
            Pitch slope = Pitch.ofPercent(row.number("slope_percent"));
            return Answers.of("pitch_deg", slope.toDegrees()).and("mu1", coefficient(slope.toDegrees(), 0.8, 30, 60));
        }
        return Answers.of("mu1", coefficient(row.number("pitch_deg"), 0.8, 30, 60));
    }

    private static Answers snowRoof(Case row) {
        double ground = row.number("sk_kn_per_m2") * (row.has("cesl") ? row.number("cesl") : 1);
        double ce = row.has("ce") ? row.number("ce") : 1;
        double ct = row.has("ct") ? row.number("ct") : 1;
        double load = SnowIndicative.on(
                        pitch(row.number("pitch_deg")), snow(Pressure.ofKilopascals(ground), 0.8, 30, 60, ce, ct))
                .onPlan()
                .toKilopascals();
        return Answers.of("s_kn_per_m2", load)
                .and("s_left_kn_per_m2", load)
                .and("s_right_kn_per_m2", load)
                .and("sad_kn_per_m2", ground);
    }

    private static Answers asce(Case row) {
        if (row.has("pg_psf")) {
            double load = SnowIndicative.on(
                            pitch(0),
                            snow(
                                    Pressure.ofPoundsForcePerSquareFoot(row.number("pg_psf")),
                                    0.7 * row.number("is"),
                                    30,
                                    70,
                                    row.number("ce"),
                                    row.number("ct")))
                    .onPlan()
                    .toPoundsForcePerSquareFoot();
            return Answers.of("pf_psf", load);
        }
        // the pitch from which the coefficient falls: ASCE 7 as open code has it, by thermal factor and surface
        boolean isSlippery = row.word("slippery").equals("yes");
        double ct = row.number("ct");
        double ordinary = ct <= 1 ? 30 : ct <= 1.1 ? 37.5 : 45;
        double slippery = ct <= 1 ? 5 : ct <= 1.1 ? 10 : 15;
        return Answers.of("cs", coefficient(row.number("slope_deg"), 1, isSlippery ? slippery : ordinary, 70));
    }

    private static Answers ground(Case row) {
        Length altitude = metres(row.number("altitude_m"));
        double zone = row.word("zone").matches("[0-9.]+") ? row.number("zone") : 0;
        Worked<Pressure> snow = switch (row.word("rule")) {
            case "uk-na-eq-na-1" -> linear(0.15 + 0.1 * zone + 0.05, altitude, 100, 525);
            case "din-en-1991-1-3-na" ->
                switch ((int) zone) {
                    case 1 -> square(0.65, 0.19, 0.91, altitude, 140, 760);
                    case 2 -> square(0.85, 0.25, 1.91, altitude, 140, 760);
                    default -> square(1.10, 0.31, 2.91, altitude, 140, 760);
                };
            case "ntc-2018-3-4-2" ->
                row.word("zone").equals("ii")
                        ? square(0, 0.85, 0.85, altitude, 0, 481)
                        : square(0, 0.51, 0.51, altitude, 0, 481);
            default ->
                switch (row.word("region")) {
                    case "central-east" -> square(0, 0.264 * zone - 0.002, 0.264 * zone - 0.002, altitude, 0, 256);
                    case "mediterranean" -> square(0, 0.498 * zone - 0.209, 0.498 * zone - 0.209, altitude, 0, 452);
                    case "central-west" -> linear(0.164 * zone - 0.082, altitude, 0, 966);
                    case "uk-and-ireland" -> linear(0.140 * zone - 0.1, altitude, 0, 501);
                    default -> throw new AssertionError("no region for " + row);
                };
        };
        assertThat(snow.working().disagreements()).isEmpty();
        return Answers.of("sk_kn_per_m2", snow.value().toKilopascals())
                .and("qsk_kn_per_m2", snow.value().toKilopascals());
    }

    private static Worked<Pressure> linear(double zone, Length altitude, double base, double each) {
        return GroundSnow.linear(
                given(Pressure.ofKilopascals(zone)), given(altitude), given(metres(base)), given(metres(each)));
    }

    private static Worked<Pressure> square(
            double floor, double zone, double factor, Length altitude, double shift, double scale) {
        return GroundSnow.bySquare(
                given(Pressure.ofKilopascals(floor)),
                given(Pressure.ofKilopascals(zone)),
                given(Pressure.ofKilopascals(factor)),
                given(altitude),
                given(metres(shift)),
                given(metres(scale)));
    }

    private static final DriftDemand DRIFT = DriftDemand.builder()
            .snowWeight(given(2000.0))
            .least(given(Ratio.of(0.8)))
            .greatest(given(Ratio.of(4)))
            .leastLength(given(metres(5)))
            .greatestLength(given(metres(15)))
            .noSlideUpTo(given(Pitch.ofDegrees(15)))
            .build();

    private static boolean noneSlidesAt(double upperPitch) {
        return SnowDrift.against(
                        metres(10),
                        metres(5),
                        metres(3),
                        pitch(upperPitch),
                        snow(Pressure.ofKilopascals(0.6), 0.8, 30, 60, 1, 1),
                        DRIFT)
                .hasValue();
    }

    private static Answers drift(Case row) {
        double ground = row.number("sk_kn_per_m2");
        SnowDrift drift = SnowDrift.against(
                        metres(row.number("b1_m")),
                        metres(row.number("b2_m")),
                        metres(row.number("h_m")),
                        pitch(row.number("upper_pitch_deg")),
                        snow(Pressure.ofKilopascals(ground), 0.8, 30, 60, 1, 1),
                        DRIFT)
                .orThrow();
        return Answers.of("mu_w", drift.coefficient().toDouble())
                .and("raw_mu_w", drift.working().at(SnowDrift.RAW).value().toDouble())
                .and("limit_gamma_h_over_sk", 2 * row.number("h_m") / ground)
                .and("mu_s", 0)
                .and("s_kn_per_m2", drift.atWall().toKilopascals())
                .and("s_peak_kn_per_m2", drift.atWall().toKilopascals())
                .and("s_far_kn_per_m2", drift.beyond().toKilopascals())
                .and("ls_m", drift.length().toMetres());
    }

    private static WindIndicative windAt(double roughness, double least, double speed, double height) {
        return WindIndicative.at(
                metres(height),
                WindDemand.builder()
                        .ruleSet("EN 1991-1-4:2005, recommended values (not read)")
                        .speed(given(speed))
                        .roughness(given(metres(roughness)))
                        .leastHeight(given(metres(least)))
                        .referenceRoughness(given(mm(50)))
                        .terrainCoefficient(given(0.19))
                        .terrainExponent(given(0.07))
                        .gust(given(7.0))
                        .airDensity(given(1.25))
                        .build());
    }

    private static Answers wind(Case row) {
        double speed = row.has("vb_m_per_s") ? row.number("vb_m_per_s") : row.number("vb0_m_per_s");
        WindIndicative wind = windAt(row.number("z0_m"), row.number("zmin_m"), speed, row.number("z_m"));
        double mean = wind.working().at(WindIndicative.MEAN_SPEED).value();
        return Answers.of("kr", wind.working().at(WindIndicative.TERRAIN_FACTOR).value())
                .and("cr", mean / speed)
                .and("vm_m_per_s", mean)
                .and("iv", wind.working().at(WindIndicative.TURBULENCE).value())
                .and("qp_kn_per_m2", wind.peakPressure().toKilopascals());
    }

    private static Answers pressure(Case row) {
        // the note of the row: basic speed 24, terrain III, height 7 m
        WindIndicative wind = windAt(0.3, 5, 24, 7);
        assertThat(wind.peakPressure().toKilopascals()).isCloseTo(row.number("qp_kn_per_m2"), within(5e-7));
        Ratio outside = Ratio.of(row.number("cpe_10"));
        return Answers.of(
                        "we_kn_per_m2",
                        wind.net(given(outside), given(Ratio.ZERO)).value().toKilopascals())
                .and(
                        "net_kn_per_m2",
                        wind.net(given(outside), given(Ratio.of(row.number("cpi"))))
                                .value()
                                .toKilopascals());
    }

    private static Answers zones(Case row) {
        WindZones zones = WindZones.duoPitch(
                        metres(row.number("b_crosswind_m")),
                        metres(row.number("d_m")),
                        metres(row.number("ridge_h_m")),
                        given(Ratio.of(2)),
                        given(Ratio.of(0.25)),
                        given(Ratio.of(0.1)))
                .orThrow();
        return Answers.of("e_m", zones.zoneLength().toMetres())
                .and("e_over_4_m", zones.zoneLength().toMetres() / 4)
                .and("e_over_10_m", zones.zoneLength().toMetres() / 10)
                .and("f_each_m2", zones.corner().toSquareMetres())
                .and("g_m2", zones.eaves().toSquareMetres())
                .and("h_m2", zones.windwardField().toSquareMetres())
                .and("j_m2", zones.ridge().toSquareMetres())
                .and("i_m2", zones.leewardField().toSquareMetres())
                .and(
                        "total_m2",
                        zones.corner()
                                .times(2)
                                .plus(zones.eaves())
                                .plus(zones.windwardField())
                                .plus(zones.ridge())
                                .plus(zones.leewardField())
                                .toSquareMetres());
    }

    private static Answers tile(Case row) {
        TileBalance tile = TileBalance.of(
                given(Pressure.ofKilopascals(row.number("p_kn_per_m2"))),
                given(mm(row.number("exposed_width_mm"))),
                given(mm(row.number("exposed_length_mm"))),
                given(kg(row.number("mass_kg"))),
                given(Pitch.ofDegrees(row.number("pitch_deg"))));
        return Answers.of("uplift_n", tile.working().at(TileBalance.UPLIFT).value())
                .and(
                        "weight_normal_n",
                        tile.working().at(TileBalance.HELD_BY_WEIGHT).value())
                .and("shortfall_n", tile.working().at(TileBalance.SHORT_BY).value());
    }

    private static Answers deadSum(Case row) {
        List<CoveringItem> items = row.given().entrySet().stream()
                .filter(entry -> entry.getKey().endsWith("_kn_per_m2"))
                .map(entry -> CoveringItem.of(
                        entry.getKey(),
                        ArealMass.ofKilogramsPerSquareMetre(Double.parseDouble(entry.getValue()) * 1000 / 9.81)))
                .toList();
        return Answers.of(
                "slope_total_kn_per_m2", CoveringMass.of(items).weight().value().toKilopascals());
    }

    private static Answers convert(Case row) {
        SlopeLoad load = SlopeLoad.ofSlope(
                Pressure.ofKilopascals(row.number("g_slope_kn_per_m2")), Pitch.ofDegrees(row.number("pitch_deg")));
        return Answers.of("g_plan_kn_per_m2", load.onPlan().toKilopascals())
                .and("normal_kn_per_m2_slope", load.squareToSlope().toKilopascals())
                .and("along_kn_per_m2_slope", load.alongSlope().toKilopascals());
    }

    private static double pounds(double perSquareFoot) {
        return ArealMass.ofPoundsPerSquareFoot(perSquareFoot).toKilogramsPerSquareMetre();
    }

    private static Answers fromSize(Case row) {
        CoveringItem item;
        if (row.has("tiles_per_m2")) {
            item = CoveringItem.units(
                    "tiles",
                    given(kg(row.number("mass_each_kg"))),
                    given(metres(1 / row.number("tiles_per_m2"))),
                    given(metres(1)));
        } else if (row.has("batten_width_mm")) {
            item = CoveringItem.bars(
                    "battens",
                    given(mm(row.number("batten_width_mm"))),
                    given(mm(row.number("batten_depth_mm"))),
                    given(mm(row.number("gauge_mm"))),
                    given(row.number("density_kg_per_m3")));
        } else {
            item = CoveringItem.sheet(
                    "sheet", given(mm(row.number("thickness_mm"))), given(row.number("density_kg_per_m3")));
        }
        Answers answers = Answers.of("mass_kg_per_m2", item.mass().value().toKilogramsPerSquareMetre())
                .and(
                        "load_kn_per_m2",
                        CoveringMass.of(List.of(item)).weight().value().toKilopascals());
        return row.has("gauge_mm") ? answers.and("length_m_per_m2", 1000 / row.number("gauge_mm")) : answers;
    }

    private static Answers units(Case row) {
        double perSquareFoot = row.number("load_lb_per_square") / 100; // a square is 100 square feet
        CoveringItem item = CoveringItem.of("tiles", ArealMass.ofPoundsPerSquareFoot(perSquareFoot));
        return Answers.of("load_lb_per_ft2", perSquareFoot)
                .and("mass_kg_per_m2", item.mass().value().toKilogramsPerSquareMetre())
                .and(
                        "load_kn_per_m2",
                        CoveringMass.of(List.of(item)).weight().value().toKilopascals());
    }

    @Test
    void every_published_figure_agrees_or_is_listed_as_not_decided() throws IOException {
        Cases.Report report =
                Cases.compare(Path.of("data", "loads", "cases.csv"), CANNOT_DECIDE, PublishedLoadsTest::answers);

        assertThat(report.differ()).isEmpty();
        assertThat(report.agree().size() + report.cannotDecide().size()).isEqualTo(132);
        assertThat(report.agree()).hasSizeGreaterThanOrEqualTo(60);
    }
}
