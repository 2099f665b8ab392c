package org.roofmaths.checks.junctions;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.roofmaths.units.Quantities.inches;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.squareMetres;
import static org.roofmaths.working.Figure.given;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.roofmaths.checks.junctions.Cases.Answers;
import org.roofmaths.checks.junctions.Cases.Case;
import org.roofmaths.flashing.BedJoints;
import org.roofmaths.flashing.CoverFlashing;
import org.roofmaths.flashing.CoveringLine;
import org.roofmaths.flashing.FlashingDemand;
import org.roofmaths.flashing.LeadLap;
import org.roofmaths.flashing.LeadSheet;
import org.roofmaths.flashing.SheetMovement;
import org.roofmaths.flashing.SoakerDemand;
import org.roofmaths.flashing.Soakers;
import org.roofmaths.flashing.StepFlashing;
import org.roofmaths.rainwater.Catchment;
import org.roofmaths.rainwater.CatchmentDemand;
import org.roofmaths.rainwater.Downpipe;
import org.roofmaths.rainwater.Gutter;
import org.roofmaths.rainwater.GutterDemand;
import org.roofmaths.rainwater.GutterSection;
import org.roofmaths.rainwater.Outlet;
import org.roofmaths.rainwater.OutletDemand;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Area;
import org.roofmaths.units.ArealMass;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.RainfallIntensity;
import org.roofmaths.units.Ratio;
import org.roofmaths.ventilation.EdgeVents;
import org.roofmaths.ventilation.RafterBays;
import org.roofmaths.ventilation.Vent;
import org.roofmaths.ventilation.VentDemand;

/** The figures of {@code data/junctions/cases.csv}, sources named there, put to the library row by row. */
class PublishedJunctionsTest {
    private static final String TABLE = "a table of a document and no sum: held by the rule data and tested there";
    private static final String NOT_OFFERED = "a rule of thumb or unit that the library does not offer";

    /** The rows that the core does not answer, by id or by topic, and why. */
    private static final Map<String, String> CANNOT_DECIDE = Map.ofEntries(
            entry("F01", TABLE),
            entry("F02", TABLE),
            entry("valley", TABLE),
            entry("F26", TABLE),
            entry("F34", "the older US rule has a length of its own: exposure and 2 in"),
            entry("F36", TABLE),
            entry("F43", TABLE),
            entry("irc-flashing", TABLE),
            entry("obc-flashing", TABLE),
            entry("de-flashing", TABLE),
            entry("nz-flashing", TABLE),
            entry("vent-uk", TABLE),
            entry("vent-uk-judgement", "the sources leave open whether 35° and 10 m are included"),
            entry("V18", "0.6 % of the roof area is told without saying where it is to be: no edge to ask it at"),
            entry("V24", TABLE),
            entry("V25", TABLE),
            entry("V27", TABLE),
            entry("V29", TABLE),
            entry("V30", TABLE),
            entry("vent-ca", TABLE),
            entry("vent-au", TABLE),
            entry("R05", TABLE),
            entry("R06", TABLE),
            entry("R15", TABLE),
            entry("gutter-select", TABLE),
            entry("R28", TABLE),
            entry("R30", "the bend factor is applied to a section, not to a capacity typed in"),
            entry("us-leader", TABLE),
            entry("uk-drain", TABLE),
            entry("irc-drain", TABLE),
            entry("handling", NOT_OFFERED),
            entry("handling-judgement", "a mass is told; whether it can be lifted is not assessed"));

    private static LeadSheet sheet(double massPerSquareMetre) {
        return LeadSheet.of("lead", given(mm(1.8)), given(ArealMass.ofKilogramsPerSquareMetre(massPerSquareMetre)));
    }

    private static Answers answers(Case row) {
        return switch (row.topic()) {
            case "lead-mass" -> leadMass(row);
            case "lead-lap" -> leadLap(row);
            case "lead-pieces" -> leadPieces(row);
            case "lead-fixing" ->
                Answers.of("wedges_min", steps(row.number("steps")).wedges());
            case "lead-expansion" ->
                Answers.of(
                        "movement_mm",
                        SheetMovement.of(
                                        given(metres(row.number("length_m"))),
                                        given(Ratio.of(row.number("alpha_per_k"))),
                                        given(row.number("temp_range_k")))
                                .value()
                                .toMillimetres());
            case "soaker" -> soaker(row);
            case "step-flashing" -> stepFlashing(row);
            case "secret-gutter" ->
                Answers.of("lap_mm", lap(row.number("true_pitch_deg"), row).toMillimetres());
            case "vent-conversion" ->
                Answers.of("free_area_mm2", edge(row).asked().toSquareMillimetres());
            case "vent-count" ->
                Answers.of(
                        "vents",
                        edge(row)
                                .provided(
                                        Vent.of("vent", Area.ofSquareMillimetres(row.number("vent_free_area_mm2"))),
                                        RafterBays.of(metres(2), mm(600), mm(47)))
                                .countByArea());
            case "vent-irc" -> share(row);
            case "rain-area" -> rainArea(row);
            case "rain-flow" -> rainFlow(row);
            case "gutter-capacity" -> gutter(row);
            case "outlet" -> outlet(row);
            case "downpipe" ->
                Answers.of(
                        "flow_l_per_s",
                        Downpipe.capacity(
                                        given(mm(row.number("pipe_diameter_mm"))),
                                        given(2.5e-4), // EN 12056-3, from memory
                                        given(mm(row.number("kb_mm"))),
                                        given(Ratio.of(row.number("filling"))))
                                .value()
                                .toLitresPerSecond());
            case "gutter-fall" ->
                Answers.of(
                        "drop_mm",
                        Gutter.drop(metres(row.number("length_m")), Ratio.of(1 / row.number("fall_one_in")))
                                .value()
                                .toMillimetres());
            case "us-flow" ->
                Answers.of(
                        "flow_gpm",
                        RainfallIntensity.ofInchesPerHour(row.number("rainfall_in_per_h"))
                                        .times(Area.ofSquareFeet(row.number("area_ft2")))
                                        .toLitresPerMinute()
                                / 3.785411784); // litres in a US gallon, by definition
            case "us-area" ->
                Answers.of(
                        "design_area_ft2",
                        Catchment.of(
                                        Area.ofSquareFeet(row.number("roof_plan_ft2")),
                                        Pitch.ofDegrees(30),
                                        CatchmentDemand.planAndRise(given(Ratio.ZERO), given(Ratio.of(0.5))))
                                .plusWall(Area.ofSquareFeet(row.number("wall_ft2")))
                                .effectiveArea()
                                .toSquareFeet());
            default -> throw new AssertionError("no answer for " + row);
        };
    }

    private static Answers leadMass(Case row) {
        if (row.has("lead_density_kg_per_m3")) {
            return Answers.of(
                    "mass_kg_per_m2",
                    LeadSheet.ofDensity(
                                    "lead",
                                    given(mm(row.number("thickness_mm"))),
                                    given(ArealMass.ofKilogramsPerSquareMetre(
                                            row.number("lead_density_kg_per_m3") / 1000)))
                            .arealMass()
                            .value()
                            .toKilogramsPerSquareMetre());
        }
        return Answers.of(
                "mass_kg",
                sheet(row.number("mass_kg_per_m2"))
                        .massOf(metres(row.number("length_m")).times(mm(row.number("girth_mm"))))
                        .toKilograms());
    }

    private static Length lap(double truePitch, Case row) {
        return LeadLap.upTheSlope(
                        given(Pitch.ofDegrees(truePitch)),
                        given(mm(row.number("vertical_weathering_mm"))),
                        given(mm(row.number("minimum_lap_mm"))))
                .value();
    }

    private static Answers leadLap(Case row) {
        if (row.has("rafter_pitch_deg")) {
            Angle flatter = Angle.ofDegrees(row.number("true_pitch_reduction_deg"));
            Pitch laid =
                    Pitch.from(Angle.ofDegrees(row.number("rafter_pitch_deg")).minus(flatter));
            return Answers.of("true_pitch_deg", laid.toDegrees())
                    .and("lap_mm", lap(laid.toDegrees(), row).toMillimetres());
        }
        return Answers.of("lap_mm", lap(row.number("true_pitch_deg"), row).toMillimetres());
    }

    private static FlashingDemand demand(Length longest, Length lap, Length tuck, Length waterLine) {
        return FlashingDemand.builder()
                .sheet(sheet(20.41))
                .upstand(given(mm(75)))
                .cover(given(mm(150)))
                .tuck(given(tuck))
                .sideLap(given(lap))
                .longestPiece(given(longest))
                .waterLine(given(waterLine))
                .build();
    }

    private static Answers leadPieces(Case row) {
        CoverFlashing flashing = CoverFlashing.along(
                metres(row.number("run_m")),
                demand(metres(row.number("piece_max_m")), mm(row.number("lap_mm")), mm(25), mm(65)));
        return Answers.of("pieces", flashing.pieceCount())
                .and("total_lead_length_m", flashing.metalLength().toMetres());
    }

    /** A flashing of so many steps of 75 mm, at 35°, whose water line starts and ends on a joint. */
    private static StepFlashing steps(double count) {
        Pitch pitch = Pitch.ofDegrees(35);
        return StepFlashing.along(
                CoveringLine.sloping(mm(count * 75 / pitch.tan()), pitch, mm(-65 / pitch.cos())),
                BedJoints.of(mm(0), mm(75)),
                demand(metres(1.5), mm(100), mm(25), mm(65)));
    }

    private static Answers soaker(Case row) {
        if (row.has("slope_length_mm")) {
            return Answers.of(
                    "soakers",
                    Soakers.coursesOn(mm(row.number("slope_length_mm")), mm(row.number("gauge_mm")))
                            .value());
        }
        if (row.has("count")) {
            // given by its sizes: gauge 100, headlap 65 and 25 turned over make its 190; 75 and 100 its 175
            SoakerDemand sized = soakers(sheet(row.number("mass_kg_per_m2")), 75, 100, 25);
            Soakers all = Soakers.of((int) row.number("count"), mm(100), mm(65), sized);
            assertThat(all.soakerLength()).isEqualTo(mm(row.number("soaker_length_mm")));
            assertThat(all.soakerWidth()).isEqualTo(mm(row.number("soaker_width_mm")));
            return Answers.of("mass_kg", all.mass().toKilograms());
        }
        if (row.has("upstand_mm")) {
            SoakerDemand legs = soakers(sheet(14.97), row.number("upstand_mm"), row.number("under_tile_mm"), 25);
            return Answers.of(
                    "soaker_width_mm",
                    Soakers.of(1, mm(100), mm(65), legs).soakerWidth().toMillimetres());
        }
        SoakerDemand turned = soakers(sheet(14.97), 75, 100, row.number("turn_over_mm"));
        return Answers.of(
                "soaker_length_mm",
                Soakers.of(1, mm(row.number("gauge_mm")), mm(row.number("headlap_mm")), turned)
                        .soakerLength()
                        .toMillimetres());
    }

    private static SoakerDemand soakers(LeadSheet sheet, double up, double under, double turn) {
        return SoakerDemand.builder()
                .sheet(sheet)
                .upTheWall(given(mm(up)))
                .underCovering(given(mm(under)))
                .turnOver(given(mm(turn)))
                .build();
    }

    private static Answers stepFlashing(Case row) {
        if (row.has("water_line_in")) {
            return Answers.of(
                            "water_line_mm", inches(row.number("water_line_in")).toMillimetres())
                    .and(
                            "turn_into_joint_mm",
                            inches(row.number("turn_into_joint_in")).toMillimetres())
                    .and("on_roof_mm", inches(row.number("on_roof_in")).toMillimetres());
        }
        Pitch pitch = Pitch.ofDegrees(row.number("roof_pitch_deg"));
        double rise = row.has("abutment_rise_mm") ? row.number("abutment_rise_mm") : 1500;
        double water = row.has("water_line_mm") ? row.number("water_line_mm") : 65;
        StepFlashing flashing = StepFlashing.along(
                CoveringLine.sloping(mm(rise / pitch.tan()), pitch, mm(-water / pitch.cos())),
                BedJoints.of(mm(0), mm(row.number("brick_course_mm"))),
                demand(metres(1.5), mm(100), mm(row.has("tuck_mm") ? row.number("tuck_mm") : 25), mm(water)));
        return Answers.of("step_spacing_slope_mm", flashing.stepSpacing().toMillimetres())
                .and("step_run_mm", flashing.stepRun().toMillimetres())
                .and("wall_leg_width_mm", flashing.wallLeg().toMillimetres())
                .and("steps", flashing.stepCount())
                .and("slope_length_mm", flashing.line().trueLength().toMillimetres());
    }

    private static EdgeVents edge(Case row) {
        return EdgeVents.along(
                "edge", metres(row.number("length_m")), VentDemand.gap(mm(row.number("continuous_gap_mm"))));
    }

    private static Answers share(Case row) {
        Area area = row.has("attic_area_ft2")
                ? Area.ofSquareFeet(row.number("attic_area_ft2"))
                : squareMetres(row.number("attic_area_m2"));
        Area asked = EdgeVents.along(
                        "edge",
                        metres(10),
                        VentDemand.shareOfArea(
                                given(Ratio.of(1 / row.number("ratio_one_in"))), given(area), given(Ratio.of(1))))
                .asked();
        return Answers.of("nfva_ft2", asked.toSquareFeet())
                .and("nfva_in2", asked.toSquareFeet() * 144)
                .and("nfva_mm2", asked.toSquareMillimetres());
    }

    private static final CatchmentDemand HALF = CatchmentDemand.planAndRise(given(Ratio.of(0.5)), given(Ratio.of(0.5)));

    private static Answers rainArea(Case row) {
        if (row.has("width_m")) {
            Length run = metres(row.number("width_m"));
            Pitch pitch = Pitch.ofRiseAndRun(metres(row.number("height_m")), run);
            return Answers.of(
                    "effective_area_m2",
                    Catchment.of(metres(row.number("length_m")), run, pitch, HALF)
                            .effectiveArea()
                            .toSquareMetres());
        }
        if (row.has("elevation_m2")) {
            Catchment without = Catchment.of(squareMetres(1), Pitch.ofDegrees(45), HALF);
            return Answers.of(
                    "effective_area_m2",
                    without.plusWall(squareMetres(row.number("elevation_m2")))
                            .effectiveArea()
                            .minus(without.effectiveArea())
                            .toSquareMetres());
        }
        Answers answers = new Answers();
        for (int i = 1; row.has("pitch_" + i + "_deg"); i++) {
            Pitch pitch = Pitch.ofDegrees(row.number("pitch_" + i + "_deg"));
            answers.and(
                    "factor_" + i,
                    Catchment.of(squareMetres(1), pitch, HALF).effectiveArea().toSquareMetres());
        }
        return answers;
    }

    private static Answers rainFlow(Case row) {
        if (row.has("effective_area_m2")) {
            RainfallIntensity rain =
                    RainfallIntensity.ofLitresPerSecondPerSquareMetre(row.number("intensity_l_per_s_per_m2"));
            CatchmentDemand plan = CatchmentDemand.planAndRise(given(Ratio.ZERO), given(Ratio.ZERO));
            return Answers.of(
                            "flow_l_per_s",
                            Catchment.of(squareMetres(row.number("effective_area_m2")), Pitch.ofDegrees(30), plan)
                                    .flow(rain)
                                    .value()
                                    .toLitresPerSecond())
                    .and("rainfall_mm_per_h", rain.toMillimetresPerHour());
        }
        return Answers.of(
                "intensity_l_per_s_per_m2",
                RainfallIntensity.ofMillimetresPerHour(row.number("rainfall_mm_per_h"))
                        .toLitresPerSecondPerSquareMetre());
    }

    private static Answers gutter(Case row) {
        Gutter gutter = Gutter.of(
                GutterSection.halfRound(mm(row.number("diameter_mm"))),
                GutterDemand.builder()
                        .coefficient(given(2.78e-5)) // EN 12056-3, from memory
                        .designFactor(given(Ratio.of(0.9)))
                        .build());
        return Answers.of("area_mm2", gutter.section().area().toSquareMillimetres())
                .and("qn_l_per_s", gutter.working().at(Gutter.NOMINAL).value())
                .and("design_capacity_l_per_s", gutter.capacity().toLitresPerSecond());
    }

    private static Answers outlet(Case row) {
        Outlet outlet = Outlet.of(
                mm(row.number("outlet_diameter_mm")),
                mm(row.number("head_mm")),
                // EN 12056-3, from memory
                new OutletDemand(given(Ratio.of(row.number("k0"))), given(7500.0), given(15000.0)));
        return Answers.of("regime", outlet.regime().toString())
                .and("flow_l_per_s", outlet.capacity().toLitresPerSecond());
    }

    @Test
    void every_published_figure_agrees_or_is_listed_as_not_decided() throws IOException {
        Cases.Report report = Cases.compare(
                Path.of("data", "junctions", "cases.csv"), CANNOT_DECIDE, PublishedJunctionsTest::answers);

        assertThat(report.differ()).isEmpty();
        assertThat(report.agree().size() + report.cannotDecide().size()).isEqualTo(100);
        assertThat(report.agree()).hasSizeGreaterThanOrEqualTo(46);
    }
}
