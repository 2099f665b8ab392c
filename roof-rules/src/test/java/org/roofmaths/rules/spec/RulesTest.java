package org.roofmaths.rules.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.rules.Edition;
import org.roofmaths.rules.RuleDocument;
import org.roofmaths.rules.RuleRow;
import org.roofmaths.rules.Rules;
import org.roofmaths.rules.Subjects;
import org.roofmaths.working.Provenance;
import org.roofmaths.working.SourceKind;

/** Choosing documents and editions, and reading their rows. */
class RulesTest {
    private static final Rules GB = Rules.of("gb");

    @Test
    void lists_jurisdictions_by_their_codes() {
        assertThat(Rules.jurisdictions())
                .contains("au", "ca-on", "ca-qc", "de", "fr", "gb", "gb-sct", "nz", "us")
                .isSorted();
    }

    @Test
    void lists_the_documents_of_a_jurisdiction_with_their_kind_and_editions() {
        RuleDocument warranty = GB.documents().stream()
                .filter(document -> document.id().equals("nhbc-standards"))
                .findFirst()
                .orElseThrow();
        assertThat(warranty)
                .hasToString("nhbc-standards: NHBC Standards, chapter 7.2 Pitched roofs"
                        + " (warranty body's condition; 2011, 2012, 2019, 2020, 2021, 2024)");
    }

    @Test
    void a_region_has_its_own_documents_and_those_of_its_country() {
        List<String> documents =
                Rules.of("gb-sct").documents().stream().map(RuleDocument::id).toList();
        assertThat(documents).contains("technical-handbook", "bs-5534");
        assertThat(Rules.of("ca-on").edition("building-code", "undated").jurisdiction())
                .isEqualTo("ca-on");
    }

    @Test
    void an_edition_says_what_it_is_and_what_was_not_found() {
        Edition edition = GB.edition("bs-5534", "2014");
        assertThat(edition)
                .hasToString("gb/bs-5534/2014: BS 5534 Slating and tiling for pitched roofs and vertical cladding,"
                        + " code of practice, edition 2014 (standard)");
        assertThat(edition.kind()).isEqualTo(SourceKind.STANDARD);
        assertThat(edition.published()).isEqualTo("2014-08-31");
        assertThat(edition.inForceFrom()).contains(LocalDate.of(2014, 8, 31));
        assertThat(edition.notFound()).startsWith("slate headlap formulas and full tables");
    }

    @Test
    void rows_can_be_read_without_computing_anything() {
        // NHBC Standards 2020, clause 7.2.19, Table 12, read
        RuleRow<?> row =
                GB.edition("nhbc-standards", "2020").rows(Subjects.LEAST_PITCH).get(0);
        assertThat(row)
                .hasToString("least pitch: 35° (least-pitch.clay-plain; NHBC Standards, chapter 7.2 Pitched roofs,"
                        + " edition 2020, cl. 7.2.19, Table 12 (warranty body's condition; read))");
        assertThat(row.asPrinted()).isEqualTo("35 (clay)");
        assertThat(row.provenance()).isEqualTo(Provenance.READ);
        assertThat(row.seenIn()).isEqualTo("clause 7.2.19 of the 2020 web edition, Table 12");
        assertThat(row.toConfirm()).containsExactly("the tile meets the dimensions and geometry of BS EN 1304");
    }

    @Test
    void an_edition_without_a_table_has_no_rows_on_it() {
        assertThat(GB.edition("nhbc-standards", "2021").rows(Subjects.LEAST_PITCH))
                .isEmpty();
    }

    @Test
    void finds_the_edition_in_force_on_a_day() {
        assertThat(GB.inForceOn("nhbc-standards", LocalDate.of(2020, 1, 1)).id())
                .isEqualTo("2020");
        assertThat(GB.inForceOn("nhbc-standards", LocalDate.of(2020, 12, 31)).id())
                .isEqualTo("2020");
        assertThat(GB.inForceOn("nhbc-standards", LocalDate.of(2026, 6, 1)).id())
                .isEqualTo("2024");
        assertThat(GB.inForceOn("ad-f2", LocalDate.of(2004, 11, 30)).id()).isEqualTo("1995");
    }

    @Test
    void refuses_a_day_before_any_edition_and_lists_their_days() {
        assertThatThrownBy(() -> GB.inForceOn("bs-5534", LocalDate.of(1990, 1, 1)))
                .isInstanceOf(ProblemsException.class)
                .hasMessage(
                        "day for gb/bs-5534 must be one on which an edition held here is in force (2003 without a day;"
                                + " 2014 from 2014-08-31 to 2018-12-10; 2014-a2-2018 from 2018-12-11; unstated without a day),"
                                + " but was 1990-01-01");
    }

    @Test
    void refuses_a_day_in_a_gap_between_the_editions_held() {
        assertThatThrownBy(() -> GB.inForceOn("nhbc-standards", LocalDate.of(2022, 6, 1)))
                .hasMessageStartingWith(
                        "day for gb/nhbc-standards must be one on which an edition held here is in force (");
    }

    @Test
    void an_unknown_jurisdiction_lists_what_there_is() {
        assertThatThrownBy(() -> Rules.of("xx"))
                .isInstanceOf(ProblemsException.class)
                .hasMessage(
                        "jurisdiction must be one of " + String.join(", ", Rules.jurisdictions()) + ", but was \"xx\"");
    }

    @Test
    void an_unknown_document_lists_what_there_is() {
        assertThatThrownBy(() -> Rules.of("ie").edition("bs-5534", "2014"))
                .hasMessage("document of ie must be one of tgd-f, but was \"bs-5534\"");
    }

    @Test
    void an_unknown_edition_lists_what_there_is() {
        assertThatThrownBy(() -> GB.edition("nhbc-standards", "2018"))
                .hasMessage(
                        "edition of gb/nhbc-standards must be one of 2011, 2012, 2019, 2020, 2021, 2024, but was \"2018\"");
    }

    @Test
    void several_editions_in_order_report_every_name_that_is_none() {
        assertThatThrownBy(() -> Rules.of("ie").inOrder("tgd-f/2000", "tgd-f", "tgd-f/unstated"))
                .hasMessage(
                        "edition of ie/tgd-f must be one of unstated, but was \"2000\"\n"
                                + "edition must be document and edition parted by /, such as nhbc-standards/2024, but was tgd-f");
        assertThatThrownBy(() -> GB.inOrder(List.of()))
                .hasMessage("editions must name at least one edition, but was none");
    }

    @Test
    void refuses_null_by_name() {
        assertThatThrownBy(() -> Rules.of(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("jurisdiction");
        assertThatThrownBy(() -> GB.edition(null, "2014"))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("document");
        assertThatThrownBy(() -> GB.edition("bs-5534", null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("edition");
        assertThatThrownBy(() -> GB.inForceOn("bs-5534", null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("day");
    }
}
