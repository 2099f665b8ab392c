package org.roofmaths.rules.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.percent;
import static org.roofmaths.units.Quantities.pitch;
import static org.roofmaths.units.Quantities.squareMetres;

import org.junit.jupiter.api.Test;
import org.roofmaths.covering.UnitKind;
import org.roofmaths.flashing.FlashingDemand;
import org.roofmaths.flashing.SoakerDemand;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.rules.Demands;
import org.roofmaths.rules.Detail;
import org.roofmaths.rules.Exposure;
import org.roofmaths.rules.Facts;
import org.roofmaths.rules.Insulation;
import org.roofmaths.rules.RoofForm;
import org.roofmaths.rules.RuleSet;
import org.roofmaths.rules.Rules;
import org.roofmaths.rules.Situation;
import org.roofmaths.rules.UnderlayClass;
import org.roofmaths.rules.UnderlaySupport;
import org.roofmaths.rules.VapourRetarder;
import org.roofmaths.settingout.BattenDemand;
import org.roofmaths.settingout.UnderlayDemand;
import org.roofmaths.units.AreaPerLength;
import org.roofmaths.units.ArealMass;
import org.roofmaths.units.Length;
import org.roofmaths.units.Range;
import org.roofmaths.units.Ratio;
import org.roofmaths.ventilation.VentDemand;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Provenance;
import org.roofmaths.working.Sourced;
import org.roofmaths.working.Worked;

/** The demands of a whole job, filled from documents in a stated order. Expected figures are the printed ones. */
class DemandsTest {
    private static final Rules GB = Rules.of("gb");
    private static final RuleSet ORDER = GB.inOrder(
            "nhbc-standards/2024",
            "nhbc-standards/2021",
            "nhbc-standards/2020",
            "bs-5250/2011",
            "bs-5534/unstated",
            "bs-en-12588/unstated",
            "roof-tile-association/undated",
            "lead-sheet-manual/unstated",
            "roofing-consultancy-articles/tips",
            "trade-practice/undated");
    private static final Situation LEAN_TO = Situation.of(UnitKind.CONCRETE_SINGLE_LAP_TILE)
            .withPitch(pitch("32°"))
            .withExposure(Exposure.SHELTERED)
            .withRafterCentres(mm(600))
            .withUnderlay(UnderlayClass.HIGH_RESISTANCE, UnderlaySupport.UNSUPPORTED)
            .withInsulation(Insulation.AT_CEILING)
            .withRoofForm(RoofForm.LEAN_TO);
    private static final Demands DEMANDS = Demands.of(ORDER, LEAN_TO);

    @Test
    void the_headlap_carries_its_row() {
        Figure<Length> headlap = DEMANDS.lap().orThrow().leastHeadlap();
        assertThat(headlap.value()).isEqualTo(mm(75));
        assertThat(headlap.origin())
                .isEqualTo("NHBC Standards, chapter 7.2 Pitched roofs, edition 2024, cl. 7.2.19, Table 21"
                        + " (warranty body's condition; read)");
    }

    @Test
    void battens_have_section_least_piece_supports_and_joints_by_gauge() {
        // NHBC Standards 2021, clause 7.2.17 and Table 9
        BattenDemand battens = DEMANDS.battens().orThrow();
        assertThat(battens.width().value()).isEqualTo(mm(50));
        assertThat(battens.depth().value()).isEqualTo(mm(25));
        assertThat(battens.leastPiece().value()).isEqualTo(metres(1.2));
        assertThat(battens.leastSupports().value()).isEqualTo(3);
        assertThat(battens.joints())
                .extracting(rule -> rule.gauge() + ": " + rule)
                .containsExactly(
                        "(200 mm..): at most 1 joint in 4 battens on one rafter",
                        "(..200 mm]: at most 3 joints in 12 battens on one rafter");
        assertThat(battens.joints().get(0).gauge()).isEqualTo(Range.above(mm(200)));
    }

    @Test
    void underlay_laps_come_from_the_documents_that_print_them() {
        // Tips 35, citing BS 5534: 150 unsupported from 15° to 34°; Roof Tile Association: 100 at the ends, 100 up a
        // wall
        UnderlayDemand underlay = DEMANDS.underlay(Detail.ABUTMENT).orThrow();
        assertThat(underlay.horizontalLap().value()).isEqualTo(mm(150));
        assertThat(underlay.verticalLap().value()).isEqualTo(mm(100));
        assertThat(underlay.topExtension().value()).isEqualTo(mm(100));
        assertThat(DEMANDS.underlay(Detail.RIDGE).orThrow().topExtension().value())
                .isEqualTo(mm(150));
    }

    @Test
    void a_cover_flashing_has_every_figure_with_its_own_source() {
        FlashingDemand flashing = DEMANDS.flashing(Detail.COVER_FLASHING).orThrow();
        assertThat(flashing.sheet().name()).isEqualTo("lead code 4");
        assertThat(flashing.sheet().thickness().value()).isEqualTo(mm(1.8));
        assertThat(flashing.sheet().arealMass().value()).isEqualTo(ArealMass.ofKilogramsPerSquareMetre(20.41));
        assertThat(flashing.upstand().value()).isEqualTo(mm(75));
        assertThat(flashing.cover().value()).isEqualTo(mm(150));
        assertThat(flashing.tuck().value()).isEqualTo(mm(25));
        assertThat(flashing.sideLap().value()).isEqualTo(mm(100));
        assertThat(flashing.longestPiece().value()).isEqualTo(metres(1.5));
        assertThat(flashing.waterLine().orElseThrow().value()).isEqualTo(mm(65));
        assertThat(flashing.wedgeSpacing().orElseThrow().value()).isEqualTo(mm(450));
        assertThat(((Sourced<Length>) flashing.sideLap()).citation().edition()).isEqualTo("2020");
        assertThat(flashing.waterLine().orElseThrow().weakestProvenance()).contains(Provenance.MEMORY);
    }

    @Test
    void a_stepped_flashing_takes_the_same_figures() {
        assertThat(DEMANDS.flashing(Detail.STEP_AND_COVER).orThrow())
                .isEqualTo(DEMANDS.flashing(Detail.COVER_FLASHING).orThrow());
    }

    @Test
    void soakers_are_of_code_3() {
        SoakerDemand soakers = DEMANDS.soakers().orThrow();
        assertThat(soakers.sheet().name()).isEqualTo("lead code 3");
        assertThat(soakers.upTheWall().value()).isEqualTo(mm(75));
        assertThat(soakers.underCovering().value()).isEqualTo(mm(100));
        assertThat(soakers.turnOver().value()).isEqualTo(mm(25));
    }

    @Test
    void a_lap_up_the_slope_goes_by_the_true_pitch() {
        // Tips 4, quoting the Lead Sheet Manual: 75 / sin(22°), printed 200; never under 150
        Worked<Length> lap =
                DEMANDS.slopeLap(Detail.VALLEY, Figure.given(pitch("22°"))).orThrow();
        assertThat(lap.value()).isEqualTo(Length.ofMetres(0.075 / pitch("22°").sin()));
        assertThat(lap.weakestProvenance()).contains(Provenance.QUOTED);
        assertThat(DEMANDS.slopeLap(Detail.VALLEY, Figure.given(pitch("55°")))
                        .orThrow()
                        .value())
                .isEqualTo(mm(150));
    }

    @Test
    void vents_of_a_lean_to_are_low_and_high() {
        // BS 5250 as quoted: 10 mm at the eaves over 15°, 5 mm at the top of a single pitch
        assertThat(DEMANDS.lowVents().orThrow()).hasToString("a continuous gap of 10 mm");
        assertThat(DEMANDS.highVents().orThrow()).hasToString("a continuous gap of 5 mm");
    }

    @Test
    void no_opening_asked_is_told_with_its_row() {
        Situation duo =
                LEAN_TO.withRoofForm(RoofForm.DUO_PITCH).withSpan(metres(5)).withPitch(pitch("30°"));
        assertThat(Demands.of(ORDER, duo).highVents().orThrow())
                .isEqualTo(VentDemand.noneAsked(
                        "row high-vent-gap.cold-hr.plain asks for none, if the figure is checked against"
                                + " the standard, which was not read"));
    }

    @Test
    void no_opening_asked_names_the_conditions() {
        Situation warm = LEAN_TO.withUnderlay(UnderlayClass.LOW_RESISTANCE, UnderlaySupport.UNSUPPORTED)
                .withInsulation(Insulation.AT_RAFTERS)
                .withFact(Facts.CEILING, org.roofmaths.rules.Ceiling.SEALED);
        assertThat(Demands.of(ORDER, warm).lowVents().orThrow())
                .hasToString(
                        "no opening asked for: row low-vent-gap.warm-lr asks for none, if the ceiling is sealed or has a"
                                + " vapour control layer and a drape or counter-batten space is above the underlay");
    }

    @Test
    void areas_for_each_metre_are_asked_where_a_document_prints_them() {
        // National Construction Code 2022, 10.8.3, recalled: 7000 mm²/m at the eaves from 15°, 5000 high
        Situation roof = Situation.unknown()
                .withPitch(pitch("22°"))
                .withFact(Facts.CLIMATE_ZONE, 7)
                .withFact(Facts.CEILING_FORM, org.roofmaths.rules.CeilingForm.LEVEL);
        Demands demands = Demands.of(Rules.of("au").edition("ncc", "2022"), roof);
        assertThat(demands.lowVents().orThrow()).hasToString(AreaPerLength.parse("7000 mm²/m") + " of free area");
        assertThat(demands.highVents().orThrow()).hasToString(AreaPerLength.parse("5000 mm²/m") + " of free area");
    }

    @Test
    void a_share_of_an_area_is_asked_where_a_document_goes_that_way() {
        // International Residential Code 2021, R806.2: 1/300 in a mild zone with 40 to 50 per cent high
        Situation attic = Situation.unknown()
                .withFact(Facts.CLIMATE_ZONE, 4)
                .withFact(Facts.VAPOUR_RETARDER, VapourRetarder.NONE)
                .withFact(Facts.UPPER_SHARE, percent(45));
        Demands demands = Demands.of(Rules.of("us").edition("irc", "2021"), attic);
        assertThat(demands.ventShare(Figure.given(squareMetres(111.5)), Figure.given(percent(45)))
                        .orThrow())
                .hasToString(Ratio.of(1.0 / 300) + " of 111.5 m², 0.45 of it here");
        assertThat(demands.lowVents().problems())
                .extracting(Problem::message)
                .containsExactly("us/irc/2021 holds no row on low vent gap");
    }

    @Test
    void every_missing_figure_is_a_finding_of_its_own() {
        Attempt<FlashingDemand> flashing =
                Demands.of(GB.edition("nhbc-standards", "2024"), LEAN_TO).flashing(Detail.COVER_FLASHING);
        assertThat(flashing.value()).isEmpty();
        assertThat(flashing.problems())
                .extracting(Problem::message)
                .containsExactly(
                        "gb/nhbc-standards/2024 holds no row on lead thickness",
                        "gb/nhbc-standards/2024 holds no row on lead mass",
                        "gb/nhbc-standards/2024 holds no row on flashing upstand",
                        "gb/nhbc-standards/2024 holds no row on flashing cover",
                        "gb/nhbc-standards/2024 holds no row on flashing tuck",
                        "gb/nhbc-standards/2024 holds no row on flashing side lap");
    }

    @Test
    void a_slate_on_a_roof_that_no_row_covers_gets_no_headlap() {
        Situation slates = LEAN_TO.withUnit(UnitKind.NATURAL_SLATE).withPitch(pitch("40°"));
        assertThat(Demands.of(ORDER, slates).lap().problems())
                .extracting(Problem::message)
                .containsExactly("least headlap for natural-slate covers pitch (45°..75°); 40° is below it"
                        + " (gb/nhbc-standards/2024, cl. 7.2.19, Table 21 and its note 1)");
    }
}
