package org.roofmaths.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.roofmaths.units.Quantities.mm;

import org.junit.jupiter.api.Test;
import org.roofmaths.problem.ProblemsException;

class UnitsAlongTest {
    @Test
    void counts_ridge_units() {
        UnitsAlong ridge = UnitsAlong.of(mm(6100), mm(450));

        assertThat(ridge.count()).isEqualTo(14); // 6100 / 450 = 13.6
        assertThat(ridge.cutLength()).isEqualTo(mm(250)); // 6100 − 13 × 450
        assertThat(ridge.problems()).isEmpty();
        assertThat(ridge).hasToString("14 units of 450 mm along 6100 mm: 13 whole, 1 cut to 250 mm");
        assertThat(ridge.working().disagreements()).isEmpty();
    }

    /** A length of 4850 with a cover of 450 takes 11 units: a check value from the trade's practice. */
    @Test
    void counts_a_mono_ridge() {
        assertThat(UnitsAlong.of(mm(4850), mm(450)).count()).isEqualTo(11);
    }

    @Test
    void whole_units_fit_without_a_cut() {
        UnitsAlong ridge = UnitsAlong.of(mm(4500), mm(450));
        assertThat(ridge.count()).isEqualTo(10);
        assertThat(ridge.wholeUnits()).isEqualTo(10);
        assertThat(ridge).hasToString("10 units of 450 mm along 4500 mm: 10 whole");
    }

    @Test
    void a_last_piece_under_half_is_shared_and_said() {
        UnitsAlong ridge = UnitsAlong.of(mm(6000), mm(450));

        assertThat(ridge.count()).isEqualTo(14);
        assertThat(ridge.wholeUnits()).isEqualTo(12);
        assertThat(ridge.cutLength()).isEqualTo(mm((450 + 150) / 2.0)); // 6000 − 13 × 450 = 150
        assertThat(ridge.problems()).singleElement().hasToString("""
                the last of 14 units would be 150 mm long, under half of 450 mm
                  mend: last two units: cut both to 300 mm; no piece under half a unit
                  mend: length of the line: 150 mm shorter; 13 whole units""");
        assertThat(ridge.working().at(UnitsAlong.SHARED).value()).isEqualTo(mm(300));
        assertThat(ridge.working().disagreements()).isEmpty();
    }

    @Test
    void exactly_half_is_not_under_half() {
        assertThat(UnitsAlong.of(mm(450 * 3 + 225), mm(450)).problems()).isEmpty();
    }

    @Test
    void one_short_unit_has_no_neighbour_to_share_with() {
        UnitsAlong stub = UnitsAlong.of(mm(100), mm(450));
        assertThat(stub.problems()).isEmpty();
        assertThat(stub).hasToString("1 unit of 450 mm along 100 mm: 0 whole, 1 cut to 100 mm");
    }

    @Test
    void refuses_nothing_with_every_reason_at_once() {
        assertThatThrownBy(() -> UnitsAlong.of(mm(0), mm(-1)))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("""
                        length of the line must be above 0 mm, but was 0 mm
                        cover of a unit along the line must be above 0 mm, but was -1 mm""");
    }
}
