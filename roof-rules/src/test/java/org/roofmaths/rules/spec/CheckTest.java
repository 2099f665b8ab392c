package org.roofmaths.rules.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.roofmaths.units.Quantities.degrees;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.roofmaths.covering.UnitKind;
import org.roofmaths.rules.BattenSize;
import org.roofmaths.rules.Check;
import org.roofmaths.rules.Edition;
import org.roofmaths.rules.Exposure;
import org.roofmaths.rules.Facts;
import org.roofmaths.rules.JointLimit;
import org.roofmaths.rules.Outcome;
import org.roofmaths.rules.Rules;
import org.roofmaths.rules.SideBySide;
import org.roofmaths.rules.Situation;
import org.roofmaths.rules.Subjects;
import org.roofmaths.rules.Suitability;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Range;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Citation;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Provenance;
import org.roofmaths.working.SourceKind;
import org.roofmaths.working.Sourced;

/** What was got, held against a row. */
class CheckTest {
    private static final Rules GB = Rules.of("gb");
    private static final Edition NHBC_2020 = GB.edition("nhbc-standards", "2020");
    private static final Edition NHBC_2021 = GB.edition("nhbc-standards", "2021");
    private static final Edition TIPS = GB.edition("roofing-consultancy-articles", "tips");
    private static final Situation TILE = Situation.of(UnitKind.CONCRETE_SINGLE_LAP_TILE);
    private static final String SOURCE =
            " NHBC Standards, chapter 7.2 Pitched roofs, edition 2020, cl. 7.2.19, Table 12 and its note 2"
                    + " (warranty body's condition; read).";

    @Test
    void meets_a_row_by_a_margin() {
        Check<Pitch> check = NHBC_2020.check(Subjects.LEAST_PITCH, TILE.withPitch(pitch("32°")));
        assertThat(check.outcome()).isEqualTo(Outcome.MEETS);
        assertThat(check.margin()).contains(degrees(32 - 30));
        assertThat(check.marginPercent()).hasValue(100.0 * 2 / 30);
        assertThat(check.toText())
                .isEqualTo("Meets row least-pitch.concrete-single-lap by 2° (6.7 %): pitch 32°, at least 30° asked."
                        + SOURCE);
        assertThat(check.mends()).isEmpty();
    }

    @Test
    void falls_short_by_a_margin_and_says_what_would_meet_the_row() {
        Check<Pitch> check = NHBC_2020.check(Subjects.LEAST_PITCH, TILE.withPitch(pitch("27.5°")));
        assertThat(check.outcome()).isEqualTo(Outcome.FALLS_SHORT);
        assertThat(check.margin()).contains(degrees(27.5 - 30));
        assertThat(check.toText())
                .isEqualTo(
                        "Short by 2.5° (8.3 %) of row least-pitch.concrete-single-lap: pitch 27.5°, at least 30° asked."
                                + SOURCE
                                + " Mend: pitch: 2.5° more; at the limit of row least-pitch.concrete-single-lap.");
        assertThat(check.mends())
                .singleElement()
                .satisfies(mend -> assertThat(mend.by()).contains(degrees(2.5)));
    }

    @Test
    void the_limit_itself_meets_the_row_with_no_margin() {
        Check<Pitch> check = NHBC_2020.check(Subjects.LEAST_PITCH, TILE.withPitch(pitch("30°")));
        assertThat(check.outcome()).isEqualTo(Outcome.MEETS);
        assertThat(check.margin()).contains(degrees(0));
    }

    @Test
    void a_rise_that_is_the_nearest_nanometre_to_the_limit_meets_it() {
        // For a run of 3000 mm: 3000 × tan(30°), stored to the nanometre.
        Pitch stored = Pitch.ofRiseAndRun(mm(3000 * Math.tan(Math.toRadians(30))), mm(3000));
        assertThat(NHBC_2020.check(Subjects.LEAST_PITCH, TILE.withPitch(stored)).outcome())
                .isEqualTo(Outcome.MEETS);
        assertThat(NHBC_2020
                        .check(Subjects.LEAST_PITCH, TILE.withPitch(pitch("29.99999°")))
                        .outcome())
                .isEqualTo(Outcome.FALLS_SHORT);
    }

    @Test
    void a_third_of_the_length_is_allowed_for_the_headlap() {
        // 500 / 3 = 166.666… mm, stored to the nanometre; NHBC Standards 2020, Table 12
        Ratio third = Ratio.of(mm(500.0 / 3).toMillimetres() / 500);
        Situation slate = Situation.of(UnitKind.NATURAL_SLATE);
        assertThat(NHBC_2020
                        .check(Subjects.GREATEST_HEADLAP_SHARE, slate, third)
                        .outcome())
                .isEqualTo(Outcome.MEETS);
        Check<Ratio> over = NHBC_2020.check(Subjects.GREATEST_HEADLAP_SHARE, slate, Ratio.of(167.0 / 500));
        assertThat(over.outcome()).isEqualTo(Outcome.FALLS_SHORT);
        assertThat(over.mends())
                .hasToString(
                        "[headlap over length of unit: 0.000667 less; at the limit of row greatest-headlap-share.slate]");
    }

    @Test
    void two_limits_that_contradict_are_both_reported() {
        // A gauge of 88 mm is the least in one row; its headlap, 265 − 2 × 88 = 89 mm, is over 265 / 3 in another.
        Situation plain = Situation.of(UnitKind.CLAY_PLAIN_TILE)
                .withGauge(mm(88))
                .withFact(Facts.HEADLAP_SHARE, Ratio.of((265 - 2 * 88) / 265.0));
        assertThat(TIPS.check(Subjects.LEAST_GAUGE, plain).outcome()).isEqualTo(Outcome.MEETS);
        assertThat(GB.edition("bs-5534", "unstated")
                        .check(Subjects.GREATEST_HEADLAP_SHARE, plain)
                        .outcome())
                .isEqualTo(Outcome.FALLS_SHORT);
    }

    @Test
    void conditions_are_for_a_person_to_confirm() {
        Check<Length> check = NHBC_2020.check(Subjects.LEAST_HEADLAP, TILE.withHeadlap(mm(80)));
        assertThat(check.outcome()).isEqualTo(Outcome.MEETS);
        assertThat(check.conditions()).containsExactly("the maker of the tile gives no other headlap");
        assertThat(check.toText()).endsWith(" To be confirmed: the maker of the tile gives no other headlap.");
    }

    @Test
    void what_was_not_got_needs_a_person() {
        Check<Length> check = NHBC_2020.check(Subjects.LEAST_HEADLAP, TILE);
        assertThat(check.outcome()).isEqualTo(Outcome.NEEDS_JUDGEMENT);
        assertThat(check.missing()).containsExactly(Facts.HEADLAP);
        assertThat(check.toText())
                .startsWith("Needs a person's judgement: headlap was not told; at least 75 mm asked. NHBC Standards");
    }

    @Test
    void a_missing_fact_needs_a_person() {
        Check<Length> check = NHBC_2020.check(
                Subjects.LEAST_HEADLAP, Situation.of(UnitKind.CLAY_PLAIN_TILE).withHeadlap(mm(70)));
        assertThat(check.outcome()).isEqualTo(Outcome.NEEDS_JUDGEMENT);
        assertThat(check.missing()).containsExactly(Facts.EXPOSURE);
        assertThat(check)
                .hasToString("Needs a person's judgement: least headlap depends on the exposure"
                        + " (sheltered, moderate, severe, very-severe), which was not told (gb/nhbc-standards/2020).");
    }

    @Test
    void what_no_row_covers_is_not_covered() {
        Check<Pitch> check = NHBC_2021.check(Subjects.LEAST_PITCH, TILE.withPitch(pitch("32°")));
        assertThat(check.outcome()).isEqualTo(Outcome.NOT_COVERED);
        assertThat(check.margin()).isEmpty();
        assertThat(check.marginPercent()).isEmpty();
        assertThat(check.weakestProvenance()).isEmpty();
        assertThat(check).hasToString("Not covered: gb/nhbc-standards/2021 holds no row on least pitch.");
    }

    @Test
    void a_section_is_as_good_as_its_worse_side() {
        // NHBC Standards 2021, Table 9: 50 x 25 for single-lap tiles on 600 centres
        Situation roof = TILE.withRafterCentres(mm(600));
        Check<BattenSize> narrow = NHBC_2021.check(Subjects.BATTEN_SIZE, roof, new BattenSize(mm(38), mm(25)));
        assertThat(narrow.outcome()).isEqualTo(Outcome.FALLS_SHORT);
        assertThat(narrow.margin()).contains(mm(38 - 50));
        assertThat(narrow.marginPercent()).isEmpty();
        assertThat(NHBC_2021
                        .check(Subjects.BATTEN_SIZE, roof, new BattenSize(mm(50), mm(30)))
                        .margin())
                .contains(mm(0));
    }

    @Test
    void a_range_got_must_lie_in_the_range_asked() {
        // Tips 13: a verge overhangs 38 to 50 mm
        Check<Range<Length>> tapered = TIPS.check(Subjects.VERGE_OVERHANG, TILE, Range.closed(mm(36), mm(45)));
        assertThat(tapered.outcome()).isEqualTo(Outcome.FALLS_SHORT);
        assertThat(tapered.margin()).contains(mm(36 - 38));
        assertThat(TIPS.check(Subjects.VERGE_OVERHANG, TILE, Range.closed(mm(38), mm(50)))
                        .margin())
                .contains(mm(0));
        assertThat(TIPS.check(Subjects.VERGE_OVERHANG, TILE, Range.closed(mm(40), mm(51)))
                        .margin())
                .contains(mm(50 - 51));
    }

    @Test
    void what_limits_nothing_by_itself_is_a_persons_to_judge_unless_it_is_the_same() {
        Situation roof = TILE.withGauge(mm(345));
        assertThat(NHBC_2021
                        .check(Subjects.BATTEN_JOINTS, roof, new JointLimit(1, 4))
                        .outcome())
                .isEqualTo(Outcome.MEETS);
        assertThat(NHBC_2021.check(Subjects.BATTEN_JOINTS, roof, new JointLimit(2, 4)))
                .hasToString("Needs a person's judgement: got 2 in any 4, as printed 1 in any 4 asked."
                        + " NHBC Standards, chapter 7.2 Pitched roofs, edition 2021, cl. 7.2.17 (warranty body's condition; read)."
                        + " To be confirmed: each joint square, butted over the rafter, skew-nailed both sides.");
    }

    @Test
    void a_check_that_rests_on_a_recalled_figure_says_so() {
        Check<Length> check =
                GB.edition("trade-practice", "undated").check(Subjects.WATER_LINE, Situation.unknown(), mm(70));
        assertThat(check.weakestProvenance()).contains(Provenance.MEMORY);
        assertThat(check)
                .hasToString("Meets row water-line.step by 5 mm (7.7 %): got 70 mm, at least 65 mm asked."
                        + " Common practice of the trade, without a document, edition undated, step flashing"
                        + " (trade practice; memory). Rests on a figure that is recalled, not read.");
    }

    @Test
    void the_weakest_ground_may_be_that_of_what_was_got() {
        Citation practice = Citation.builder()
                .kind(SourceKind.TRADE_PRACTICE)
                .title("invented sheet")
                .edition("1")
                .locus("line 1")
                .rowId("x.y")
                .asPrinted("80")
                .provenance(Provenance.PRACTICE)
                .build();
        Figure<Length> got = Sourced.of(mm(80), practice);
        Check<Length> check = NHBC_2020.check(Subjects.LEAST_HEADLAP, TILE, got);
        assertThat(check.weakestProvenance()).contains(Provenance.PRACTICE);
        assertThat(check.toText()).contains(" Rests on a figure of trade habit or of a page without standing.");
        assertThat(check.got()).contains(got);
    }

    @Test
    void a_check_is_also_plain_maps_and_lists() {
        Map<String, Object> tree = NHBC_2020
                .check(Subjects.LEAST_PITCH, TILE.withPitch(pitch("27.5°")))
                .toTree();
        assertThat(tree)
                .containsEntry("version", 1)
                .containsEntry("subject", "least-pitch")
                .containsEntry("outcome", "FALLS_SHORT")
                .containsEntry("asked", "30°")
                .containsEntry("got", "27.5°")
                .containsEntry("margin", "-2.5°")
                .containsEntry("row", "least-pitch.concrete-single-lap")
                .containsEntry("edition", "gb/nhbc-standards/2020")
                .containsEntry("asPrinted", "30 (2)")
                .containsEntry("kindOfDocument", "warranty body's condition")
                .containsEntry("weakestProvenance", "read")
                .containsEntry("conditions", List.of())
                .containsEntry("missing", List.of())
                .containsEntry(
                        "mends", List.of("pitch: 2.5° more; at the limit of row least-pitch.concrete-single-lap"));
    }

    @Test
    void three_editions_stand_side_by_side() {
        Situation roof = TILE.withPitch(pitch("32°"));
        List<Check<Pitch>> checks = SideBySide.of(
                        NHBC_2020, GB.edition("nhbc-standards", "2024"), GB.edition("bs-5534", "2014"))
                .check(Subjects.LEAST_PITCH, roof);
        assertThat(checks)
                .extracting(Check::outcome)
                .containsExactly(Outcome.MEETS, Outcome.MEETS, Outcome.NOT_COVERED);
        assertThat(checks.get(1).row().orElseThrow().locus()).isEqualTo("cl. 7.2.19, Table 21 and its note 2");
    }

    @Test
    void side_by_side_a_steep_slate_is_covered_by_one_edition_and_not_by_the_other() {
        // Note 1: over 45° in 2020; over 45° and under 75° in the edition current in 2024
        Situation slate = Situation.of(UnitKind.NATURAL_SLATE)
                .withPitch(pitch("75°"))
                .withExposure(Exposure.SHELTERED)
                .withHeadlap(mm(60));
        assertThat(SideBySide.of(NHBC_2020, GB.edition("nhbc-standards", "2024"))
                        .check(Subjects.LEAST_HEADLAP, slate))
                .extracting(Check::outcome)
                .containsExactly(Outcome.MEETS, Outcome.NOT_COVERED);
    }

    @Test
    void suitability_lists_what_falls_short_first() {
        Situation roof = Situation.of(UnitKind.CONCRETE_PLAIN_TILE)
                .withPitch(pitch("32°"))
                .withFact(Facts.HEADLAP_SHARE, Ratio.of(65 / 265.0));
        Suitability suitability = Suitability.of(NHBC_2020, roof);
        assertThat(suitability.outcome()).isEqualTo(Outcome.FALLS_SHORT);
        assertThat(suitability.checks())
                .extracting(check -> check.subject().id() + " " + check.outcome())
                .containsExactly(
                        "least-pitch falls short", "least-headlap not covered", "greatest-headlap-share meets the row");
        assertThat(suitability.toText())
                .startsWith(
                        "kind of unit concrete-plain-tile, pitch 32°, headlap over length of unit 0.24528301886792453: falls short\n"
                                + "  Short by 3° (8.6 %) of row least-pitch.concrete-plain")
                .endsWith("\n  The unit's own declaration, the exposure and the rafter length are still to be shown.");
    }

    @Test
    void suitability_takes_in_the_reach_of_a_document_where_it_has_one() {
        // DTU 40.241 (2023) as summarised: at most 12 m on the slope, 8 m on plan
        Suitability suitability = Suitability.of(
                Rules.of("fr").edition("dtu-40-241", "2023"),
                TILE.withRafterLength(metres(12.5)).withFact(Facts.PLAN_LENGTH, metres(8)));
        assertThat(suitability.checks())
                .extracting(check -> check.subject().id() + " " + check.outcome())
                .containsExactly(
                        "greatest-rafter-length falls short",
                        "least-pitch not covered",
                        "least-headlap not covered",
                        "greatest-plan-length meets the row");
    }

    @Test
    void suitability_of_every_kind_answers_for_each_kind_with_a_row() {
        List<Suitability> kinds = Suitability.ofEveryKind(
                NHBC_2020, TILE.withPitch(pitch("32°")).withHeadlap(mm(75)).withExposure(Exposure.SHELTERED));
        assertThat(kinds)
                .extracting(kind -> kind.situation().get(Facts.UNIT_KIND).orElseThrow() + " " + kind.outcome())
                .containsExactly(
                        "concrete single-lap tile needs a person's judgement",
                        "concrete plain tile falls short",
                        "clay plain tile needs a person's judgement",
                        "natural slate not covered",
                        "fibre-cement slate not covered",
                        "concrete slate not covered");
        assertThat(kinds)
                .allSatisfy(
                        kind -> assertThat(kind.situation().get(Facts.HEADLAP)).isEmpty());
    }

    @Test
    void a_situation_refuses_a_word_that_is_no_choice() {
        org.assertj.core.api.Assertions.assertThatThrownBy(
                        () -> Situation.unknown().withFact(Facts.SOIL, "clay"))
                .isInstanceOf(org.roofmaths.problem.ProblemsException.class)
                .hasMessage("soil must be one of expansive-or-collapsible, other, but was clay");
    }

    @Test
    void no_outcome_says_more_than_that_a_row_is_met() {
        assertThat(Outcome.values())
                .extracting(Outcome::toString)
                .containsExactly("falls short", "needs a person's judgement", "not covered", "meets the row");
    }
}
