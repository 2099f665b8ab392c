package org.roofmaths.rules.spec;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.roofmaths.rules.Edition;
import org.roofmaths.rules.EditionDifference;
import org.roofmaths.rules.Rules;
import org.roofmaths.rules.Subjects;

/** What moved from one edition to another. */
class DifferenceTest {
    private static final Edition OLDER = Rules.of("gb").edition("nhbc-standards", "2020");
    private static final Edition NEWER = Rules.of("gb").edition("nhbc-standards", "2024");

    @Test
    void a_figure_that_moved_is_listed_with_both_prints() {
        // NHBC Standards: zinc 0.6 in 2020, 0.8 in the edition current in 2024
        assertThat(OLDER.difference(NEWER).changes())
                .anySatisfy(change -> assertThat(change)
                        .hasToString("least-metal-thickness.zinc: 0.6 for zinc,"
                                + " apron/cover-flashing/step-flashing/step-and-cover became 0.8 for zinc,"
                                + " apron/cover-flashing/step-flashing/step-and-cover"));
    }

    @Test
    void a_condition_that_moved_is_listed_though_the_figure_stayed() {
        assertThat(OLDER.difference(NEWER).changes())
                .anySatisfy(change -> assertThat(change)
                        .hasToString("least-headlap.slate-steep: 54mm (1) minimum for"
                                + " natural-slate/fibre-cement-slate/concrete-slate, sheltered/moderate, (45°..) became"
                                + " 54mm (1) minimum for natural-slate/fibre-cement-slate/concrete-slate, sheltered/moderate,"
                                + " (45°..75°)"));
    }

    @Test
    void a_row_that_only_one_holds_has_no_other_side() {
        assertThat(OLDER.difference(NEWER).changes())
                .filteredOn(change -> change.rowId().equals("least-lead-code.flashing"))
                .singleElement()
                .satisfies(change -> {
                    assertThat(change.before()).isEmpty();
                    assertThat(change.after()).isPresent();
                });
    }

    @Test
    void rows_that_say_the_same_are_not_listed() {
        assertThat(OLDER.difference(NEWER).changes())
                .noneMatch(change -> change.rowId().startsWith("least-pitch."));
    }

    @Test
    void subjects_that_only_one_holds_are_listed_apart() {
        EditionDifference difference = OLDER.difference(NEWER);
        assertThat(difference.onlyInOlder()).contains(Subjects.FLASHING_TUCK).doesNotContain(Subjects.LEAST_PITCH);
        assertThat(difference.onlyInNewer()).contains(Subjects.COATED_TUCK);
    }

    @Test
    void an_edition_does_not_differ_from_itself() {
        assertThat(OLDER.difference(OLDER).changes()).isEmpty();
        assertThat(OLDER.difference(OLDER)).hasToString("gb/nhbc-standards/2020 to gb/nhbc-standards/2020");
    }
}
