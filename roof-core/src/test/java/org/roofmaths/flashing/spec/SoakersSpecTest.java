package org.roofmaths.flashing.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.working.Figure.given;

import org.junit.jupiter.api.Test;
import org.roofmaths.flashing.Demands;
import org.roofmaths.flashing.FlashingPiece;
import org.roofmaths.flashing.SoakerDemand;
import org.roofmaths.flashing.Soakers;
import org.roofmaths.units.Length;

class SoakersSpecTest {
    @Test
    void one_at_each_course_above_the_under_eaves_course_tops_included() {
        // 42 full courses and one of tops: 43 (common practice)
        Soakers soakers = Soakers.of(42 + 1, mm(100), mm(65), Demands.SOAKER);

        assertThat(soakers.count()).isEqualTo(43);
        assertThat(soakers.soakerLength()).isEqualTo(mm(100 + 65 + 25));
        assertThat(soakers.soakerWidth()).isEqualTo(mm(75 + 100));
        assertThat(soakers.pieces()).extracting(FlashingPiece::length).containsOnly(mm(190));
    }

    @Test
    void forty_soakers_of_code_three() {
        // 40 × 0.190 m × 0.175 m × 14.97 kg/m², the sheet as general web pages print BS EN 12588
        assertThat(Soakers.of(40, mm(100), mm(65), Demands.SOAKER).mass().toKilograms())
                .isCloseTo(40 * 0.190 * 0.175 * 14.97, within(1e-9)); // order of the products
    }

    @Test
    void courses_by_slope_length_and_beside_a_stack() {
        assertThat(Soakers.coursesOn(mm(4200), mm(100)).value()).isEqualTo(42);
        // 440 on plan at 35° is 537.1 along the slope: 6 gauges and one more
        assertThat(Soakers.coursesBesideStack(mm(440 / Math.cos(Math.toRadians(35))), mm(100))
                        .value())
                .isEqualTo(6 + 1);
        assertThat(Soakers.of(Soakers.coursesOn(mm(4200), mm(100)), given(mm(100)), given(mm(65)), Demands.SOAKER)
                        .working()
                        .toText())
                .contains(
                        "courses above the under-eaves course = whole number up from (slope length beside the wall ÷ gauge beside"
                                + " the wall)");
    }

    @Test
    void refuses_wrong_numbers_all_at_once() {
        assertThatThrownBy(() -> Soakers.of(0, mm(0), mm(-1), Demands.SOAKER)).hasMessage("""
                courses above the under-eaves course must be 1 or more, but was 0
                gauge beside the wall must be above 0 mm, but was 0 mm
                headlap beside the wall must be 0 mm or more, but was -1 mm""");
        assertThatThrownBy(() -> Soakers.coursesOn(Length.ZERO, mm(100)))
                .hasMessage("slope length beside the wall must be above 0 mm, but was 0 mm");
        assertThat(Soakers.attempt(0, mm(100), mm(65), Demands.SOAKER).hasValue())
                .isFalse();
        assertThatThrownBy(() -> SoakerDemand.builder()
                        .sheet(Demands.CODE_3)
                        .upTheWall(given(mm(0)))
                        .underCovering(given(mm(0)))
                        .turnOver(given(mm(-1)))
                        .build())
                .hasMessage("""
                        soaker up the wall must be above 0 mm, but was 0 mm
                        soaker under the covering must be above 0 mm, but was 0 mm
                        soaker turned over the head must be 0 mm or more, but was -1 mm""");
    }

    @Test
    void prints_what_to_cut() {
        assertThat(Soakers.of(42, mm(100), mm(65), Demands.SOAKER))
                .hasToString("soakers: 42 pieces of 190 mm × 175 mm, 20.905605 kg of lead code 3");
    }

    @Test
    void shows_its_working() {
        Soakers soakers = Soakers.of(43, mm(100), mm(65), Demands.SOAKER);

        assertThat(soakers.working().at(Soakers.SOAKERS).value()).isEqualTo(43);
        assertThat(soakers.working().at(Soakers.SOAKER_LENGTH).value()).isEqualTo(mm(190));
        assertThat(soakers.working().disagreements()).isEmpty();
        assertThat(soakers).isEqualTo(Soakers.of(43, mm(100), mm(65), Demands.SOAKER));
    }
}
