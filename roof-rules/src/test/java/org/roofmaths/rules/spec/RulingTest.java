package org.roofmaths.rules.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;

import org.junit.jupiter.api.Test;
import org.roofmaths.covering.UnitKind;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.rules.BattenSize;
import org.roofmaths.rules.Detail;
import org.roofmaths.rules.Edition;
import org.roofmaths.rules.Exposure;
import org.roofmaths.rules.Facts;
import org.roofmaths.rules.Insulation;
import org.roofmaths.rules.JointLimit;
import org.roofmaths.rules.Metal;
import org.roofmaths.rules.RoofForm;
import org.roofmaths.rules.RuleSet;
import org.roofmaths.rules.Rules;
import org.roofmaths.rules.Ruling;
import org.roofmaths.rules.Situation;
import org.roofmaths.rules.Subjects;
import org.roofmaths.rules.UnderlayClass;
import org.roofmaths.rules.UnderlaySupport;
import org.roofmaths.rules.UnitGeometry;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Ratio;

/** What an edition says: found, silent, not covered, or hanging on a fact. Expected figures are the printed ones, with their place. */
class RulingTest {
    private static final Rules GB = Rules.of("gb");
    private static final Edition NHBC_2020 = GB.edition("nhbc-standards", "2020");
    private static final Edition NHBC_2021 = GB.edition("nhbc-standards", "2021");
    private static final Edition BS_5250 = GB.edition("bs-5250", "2011");
    private static final Situation COLD = Situation.unknown()
            .withUnderlay(UnderlayClass.HIGH_RESISTANCE, UnderlaySupport.UNSUPPORTED)
            .withInsulation(Insulation.AT_CEILING);

    @Test
    void a_row_that_holds_gives_its_figure_and_its_source() {
        Ruling<Pitch> ruling = NHBC_2020.find(Subjects.LEAST_PITCH, Situation.of(UnitKind.CONCRETE_SINGLE_LAP_TILE));
        assertThat(ruling.kind()).isEqualTo(Ruling.Kind.FOUND);
        assertThat(ruling.orThrow().value()).isEqualTo(pitch("30°"));
        assertThat(ruling.orThrow().citation().rowId()).isEqualTo("least-pitch.concrete-single-lap");
        assertThat(ruling.message())
                .isEqualTo(
                        "least pitch: 30° (least-pitch.concrete-single-lap; NHBC Standards, chapter 7.2 Pitched roofs,"
                                + " edition 2020, cl. 7.2.19, Table 12 and its note 2 (warranty body's condition; read))");
    }

    @Test
    void least_headlap_of_clay_plain_tiles_goes_by_exposure() {
        // NHBC Standards 2020, Table 12: 65 generally, 75 in severe exposure
        Situation tile = Situation.of(UnitKind.CLAY_PLAIN_TILE);
        assertThat(headlap(tile.withExposure(Exposure.MODERATE))).isEqualTo(mm(65));
        assertThat(headlap(tile.withExposure(Exposure.SEVERE))).isEqualTo(mm(75));
    }

    private static Length headlap(Situation situation) {
        return NHBC_2020.find(Subjects.LEAST_HEADLAP, situation).orThrow().value();
    }

    @Test
    void a_fact_that_was_not_told_is_named_and_never_guessed() {
        Ruling<Length> ruling = NHBC_2020.find(Subjects.LEAST_HEADLAP, Situation.of(UnitKind.CLAY_PLAIN_TILE));
        assertThat(ruling.kind()).isEqualTo(Ruling.Kind.FACT_MISSING);
        assertThat(ruling.missing()).containsExactly(Facts.EXPOSURE);
        assertThat(ruling.figure()).isEmpty();
        assertThat(ruling)
                .hasToString("least headlap depends on the exposure (sheltered, moderate, severe, very-severe),"
                        + " which was not told (gb/nhbc-standards/2020)");
    }

    @Test
    void several_missing_facts_are_all_named() {
        Ruling<BattenSize> ruling = NHBC_2021.find(Subjects.BATTEN_SIZE, Situation.unknown());
        assertThat(ruling.missing()).containsExactly(Facts.UNIT_KIND, Facts.RAFTER_CENTRES);
    }

    @Test
    void a_size_outside_the_rows_says_what_they_cover() {
        Ruling<Length> ruling = NHBC_2020.find(
                Subjects.LEAST_HEADLAP,
                Situation.of(UnitKind.NATURAL_SLATE).withPitch(pitch("40°")).withExposure(Exposure.SHELTERED));
        assertThat(ruling.kind()).isEqualTo(Ruling.Kind.NOT_COVERED);
        assertThat(ruling.rows())
                .singleElement()
                .satisfies(row -> assertThat(row.id()).isEqualTo("least-headlap.slate-steep"));
        assertThat(ruling)
                .hasToString("least headlap for natural-slate covers pitch (45°..); 40° is below it"
                        + " (gb/nhbc-standards/2020, cl. 7.2.19, Table 12 and its note 1)");
    }

    @Test
    void a_size_above_all_rows_says_so() {
        Situation wide = Situation.of(UnitKind.NATURAL_SLATE).withRafterCentres(mm(601));
        assertThat(NHBC_2021.find(Subjects.BATTEN_SIZE, wide))
                .hasToString("batten size for natural-slate covers rafter centres (..450 mm], (450 mm..600 mm];"
                        + " 601 mm is above them (gb/nhbc-standards/2021, cl. 7.2.17, Table 9)");
    }

    @Test
    void a_kind_of_unit_without_rows_lists_those_with() {
        assertThat(NHBC_2020.find(Subjects.GREATEST_HEADLAP_SHARE, Situation.of(UnitKind.STONE_SLATE)))
                .hasToString("greatest headlap share has no row for kind of unit stone-slate; there are rows for"
                        + " clay-plain-tile or concrete-plain-tile, natural-slate or fibre-cement-slate or concrete-slate"
                        + " (gb/nhbc-standards/2020)");
    }

    @Test
    void a_document_may_be_silent_in_so_many_words() {
        Ruling<Length> ruling = GB.edition("ad-c", "2004").find(Subjects.LOW_VENT_GAP, COLD);
        assertThat(ruling.kind()).isEqualTo(Ruling.Kind.SILENT);
        assertThat(ruling.row()).isPresent();
        assertThat(ruling)
                .hasToString("gb/ad-c/2004 is silent on low vent gap (section 6, C2):"
                        + " the document gives no figure of its own and sends the reader to BS 5250");
    }

    @Test
    void an_edition_without_any_row_on_it_is_not_called_silent() {
        Ruling<Length> ruling = NHBC_2020.find(Subjects.LOW_VENT_GAP, COLD);
        assertThat(ruling.kind()).isEqualTo(Ruling.Kind.NOT_COVERED);
        assertThat(ruling.rows()).isEmpty();
        assertThat(ruling).hasToString("gb/nhbc-standards/2020 holds no row on low vent gap");
    }

    @Test
    void no_figure_throws_only_when_asked_to() {
        Ruling<Length> ruling = NHBC_2020.find(Subjects.LOW_VENT_GAP, COLD);
        assertThatThrownBy(ruling::orThrow)
                .isInstanceOf(ProblemsException.class)
                .hasMessage("gb/nhbc-standards/2020 holds no row on low vent gap");
    }

    @Test
    void a_pitch_on_the_boundary_of_two_rows_belongs_to_the_one_that_includes_it() {
        // BS 5250 as quoted gives 15° the 25 mm of the flatter roofs, Approved Document F2 (1995) the 10 mm of the
        // steeper ones.
        assertThat(lowGap(BS_5250, "15°")).isEqualTo(mm(25));
        assertThat(lowGap(BS_5250, "15.00001°")).isEqualTo(mm(10));
        assertThat(GB.edition("ad-f2", "1995")
                        .find(
                                Subjects.LOW_VENT_GAP,
                                COLD.withPitch(pitch("15°"))
                                        .withFact(Facts.CEILING_FORM, org.roofmaths.rules.CeilingForm.LEVEL))
                        .orThrow()
                        .value())
                .isEqualTo(mm(10));
    }

    @Test
    void a_pitch_that_is_the_boundary_but_for_its_last_stored_digit_is_the_boundary() {
        Pitch almost = Pitch.ofRiseAndRun(mm(1000 * Math.tan(Math.toRadians(15))), mm(1000));
        assertThat(lowGap(BS_5250, almost.toString())).isEqualTo(mm(25));
    }

    private static Length lowGap(Edition edition, String pitch) {
        return edition.find(Subjects.LOW_VENT_GAP, COLD.withPitch(pitch(pitch)))
                .orThrow()
                .value();
    }

    @Test
    void high_openings_of_a_cold_roof_go_by_form_pitch_and_span() {
        // BS 5250 as quoted: 5 mm over 35°, over 10 m of span, and at a single pitch; at exactly 35° and 10 m the rows
        // say more than.
        assertThat(highGap(RoofForm.DUO_PITCH, "35°", 10)).isEqualTo(Length.ZERO);
        assertThat(highGap(RoofForm.DUO_PITCH, "36°", 8)).isEqualTo(mm(5));
        assertThat(highGap(RoofForm.DUO_PITCH, "30°", 10.001)).isEqualTo(mm(5));
        assertThat(highGap(RoofForm.LEAN_TO, "32°", 3)).isEqualTo(mm(5));
    }

    @Test
    void a_fact_that_no_row_left_depends_on_need_not_be_told() {
        Situation steep = COLD.withRoofForm(RoofForm.DUO_PITCH).withPitch(pitch("40°"));
        assertThat(BS_5250.find(Subjects.HIGH_VENT_GAP, steep).orThrow().value())
                .isEqualTo(mm(5));
    }

    private static Length highGap(RoofForm form, String pitch, double span) {
        Situation roof = COLD.withRoofForm(form).withPitch(pitch(pitch)).withSpan(metres(span));
        return BS_5250.find(Subjects.HIGH_VENT_GAP, roof).orThrow().value();
    }

    @Test
    void figures_keep_their_kind() {
        // NHBC Standards 2021, clause 7.2.17; NHBC Standards 2020, Table 12
        Situation single = Situation.of(UnitKind.CONCRETE_SINGLE_LAP_TILE);
        assertThat(NHBC_2021
                        .find(Subjects.BATTEN_SIZE, single.withRafterCentres(mm(600)))
                        .orThrow()
                        .value())
                .isEqualTo(new BattenSize(mm(50), mm(25)));
        assertThat(NHBC_2021
                        .find(Subjects.BATTEN_JOINTS, single.withGauge(mm(345)))
                        .orThrow()
                        .value())
                .isEqualTo(new JointLimit(1, 4));
        assertThat(NHBC_2021
                        .find(Subjects.BATTEN_JOINTS, single.withGauge(mm(100)))
                        .orThrow()
                        .value())
                .isEqualTo(new JointLimit(3, 12));
        assertThat(NHBC_2020
                        .find(Subjects.GREATEST_HEADLAP_SHARE, Situation.of(UnitKind.NATURAL_SLATE))
                        .orThrow()
                        .value())
                .isEqualTo(Ratio.of(1.0 / 3));
    }

    @Test
    void underlay_laps_go_by_pitch_and_support() {
        // Tips 35, citing BS 5534: unsupported 225, 150, 100; supported 150, 100, 75
        Edition quoted = GB.edition("bs-5534", "unstated");
        assertThat(lap(quoted, "13°", UnderlaySupport.UNSUPPORTED)).isEqualTo(mm(225));
        assertThat(lap(quoted, "13°", UnderlaySupport.SUPPORTED)).isEqualTo(mm(150));
        assertThat(lap(quoted, "34.9°", UnderlaySupport.UNSUPPORTED)).isEqualTo(mm(150));
        assertThat(lap(quoted, "20°", UnderlaySupport.SUPPORTED)).isEqualTo(mm(100));
        assertThat(lap(quoted, "35°", UnderlaySupport.UNSUPPORTED)).isEqualTo(mm(100));
        assertThat(lap(quoted, "40°", UnderlaySupport.SUPPORTED)).isEqualTo(mm(75));
    }

    private static Length lap(Edition edition, String pitch, UnderlaySupport support) {
        return edition.find(
                        Subjects.UNDERLAY_HORIZONTAL_LAP,
                        Situation.unknown().withPitch(pitch(pitch)).withFact(Facts.SUPPORT, support))
                .orThrow()
                .value();
    }

    @Test
    void editions_in_order_answer_from_the_first_that_speaks_of_the_thing() {
        RuleSet rules = GB.inOrder("nhbc-standards/2024", "nhbc-standards/2020", "trade-practice/undated");
        Situation cover = Situation.unknown()
                .at(Detail.COVER_FLASHING)
                .withFact(Facts.METAL, Metal.LEAD)
                .withExposure(Exposure.SHELTERED);
        // 1.5 m is printed in both; 100 mm only in 2020; 150 mm for any abutment is trade practice.
        assertThat(rules.find(Subjects.LONGEST_PIECE, cover).row().orElseThrow().reference())
                .isEqualTo("gb/nhbc-standards/2024");
        assertThat(rules.find(Subjects.FLASHING_SIDE_LAP, cover)
                        .row()
                        .orElseThrow()
                        .reference())
                .isEqualTo("gb/nhbc-standards/2020");
        assertThat(rules.find(Subjects.FLASHING_UPSTAND, cover)
                        .row()
                        .orElseThrow()
                        .reference())
                .isEqualTo("gb/trade-practice/undated");
        assertThat(rules)
                .hasToString("gb/nhbc-standards/2024, then gb/nhbc-standards/2020, then gb/trade-practice/undated");
    }

    @Test
    void an_edition_that_speaks_of_the_thing_but_does_not_cover_the_case_is_not_passed_over() {
        RuleSet rules = GB.inOrder("nhbc-standards/2024", "trade-practice/undated");
        Situation severe = Situation.unknown().at(Detail.COVER_FLASHING).withExposure(Exposure.SEVERE);
        assertThat(rules.find(Subjects.LEAST_LEAD_CODE, severe))
                .hasToString("least lead code has no row for exposure severe; there are rows for sheltered or moderate"
                        + " (gb/nhbc-standards/2024)");
    }

    @Test
    void a_silent_edition_lets_the_next_one_speak_and_is_named_if_none_does() {
        Situation low = COLD.withPitch(pitch("30°"));
        assertThat(GB.inOrder("ad-c/2004", "bs-5250/2011")
                        .find(Subjects.LOW_VENT_GAP, low)
                        .orThrow()
                        .value())
                .isEqualTo(mm(10));
        assertThat(GB.inOrder("ad-c/2004", "nhbc-standards/2020")
                        .find(Subjects.LOW_VENT_GAP, low)
                        .kind())
                .isEqualTo(Ruling.Kind.SILENT);
    }

    @Test
    void editions_can_be_put_behind_one_another() {
        RuleSet both = NHBC_2021.backedBy(NHBC_2020);
        assertThat(both.editions()).containsExactly(NHBC_2021, NHBC_2020);
        assertThat(both.rows(Subjects.LEAST_PITCH)).isEqualTo(NHBC_2020.rows(Subjects.LEAST_PITCH));
        assertThat(both.subjects()).contains(Subjects.BATTEN_SIZE, Subjects.LEAST_PITCH);
    }

    @Test
    void a_geometry_outside_the_standard_takes_its_own_row() {
        Situation handMade =
                Situation.of(UnitKind.CLAY_PLAIN_TILE).withFact(Facts.UNIT_GEOMETRY, UnitGeometry.OUTSIDE_STANDARD);
        // NHBC Standards 2020, clause 7.2.19: not less than 40°
        assertThat(NHBC_2020.find(Subjects.LEAST_PITCH, handMade).orThrow().value())
                .isEqualTo(pitch("40°"));
    }
}
