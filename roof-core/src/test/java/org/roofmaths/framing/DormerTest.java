package org.roofmaths.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.degrees;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;

import org.junit.jupiter.api.Test;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Pitch;

/** Dormers, the studs under a slope, and the sprockets at its foot. */
class DormerTest {
    private static final double T40 = Math.tan(Math.toRadians(40));
    private static final double T5 = Math.tan(Math.toRadians(5));

    @Test
    void a_shed_dormer_runs_back_until_it_meets_the_main_roof() {
        ShedDormer dormer = ShedDormer.of(mm(1200), pitch("40°"), pitch("5°"));

        assertThat(dormer.depth()).isEqualTo(mm(1200 / (T40 - T5)));
        assertThat(dormer.slopeLength().toMillimetres())
                .isCloseTo(1200 / (T40 - T5) / Math.cos(Math.toRadians(5)), within(2e-6));
        assertThat(dormer.cheekArea().toSquareMetres()).isCloseTo(1.2 * 1.2 / (T40 - T5) / 2, within(1e-9));
        assertThat(dormer.angleBetweenSlopes()).isEqualTo(degrees(35));
        assertThat(dormer.studDifference(mm(400)).value()).isEqualTo(mm(400 * (T40 - T5)));
        assertThat(dormer.working().disagreements()).isEmpty();
        assertThat(dormer.studDifference(mm(400)).working().disagreements()).isEmpty();
    }

    @Test
    void a_dormer_as_steep_as_the_roof_never_meets_it() {
        assertThatThrownBy(() -> ShedDormer.of(mm(1200), pitch("40°"), pitch("40°")))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("dormer pitch must be flatter than the main pitch of 40° and meet it within 1000000 mm,"
                        + " but was 40°");
    }

    @Test
    void a_gabled_dormer_meets_the_roof_in_two_valleys() {
        GabledDormer dormer = GabledDormer.of(mm(1800), pitch("40°"), pitch("45°"));

        assertThat(dormer.rise()).isEqualTo(mm(900));
        assertThat(dormer.backRun()).isEqualTo(mm(900 / T40));
        double valley = Math.sqrt(900 * 900 * 2 + 900 / T40 * 900 / T40);
        assertThat(dormer.valleyLength().toMillimetres()).isCloseTo(valley, within(2e-6));
        assertThat(dormer.valleyPitch().toDegrees()).isCloseTo(Math.toDegrees(Math.asin(900 / valley)), within(1e-7));
        assertThat(dormer.working().disagreements()).isEmpty();
        assertThatThrownBy(() -> GabledDormer.of(mm(0), pitch("40°"), pitch("45°")))
                .hasMessage("width must be above 0 mm and at most 1000000 mm, but was 0 mm");
    }

    @Test
    void gable_studs_grow_by_the_rise_between_them() {
        GableStuds studs = GableStuds.of(mm(600), Pitch.ofRiseIn12(6));

        assertThat(studs.commonDifference()).isEqualTo(mm(300));
        assertThat(studs.heightAt(mm(1400)).value()).isEqualTo(mm(700));
        assertThat(studs.working().disagreements()).isEmpty();
        assertThat(studs.heightAt(mm(1400)).working().disagreements()).isEmpty();
        assertThat(studs).hasToString("studs at 600 mm, common difference 300 mm");
        assertThatThrownBy(() -> GableStuds.of(mm(-1), pitch("40°")))
                .hasMessage("centres must be above 0 mm and at most 1000000 mm, but was -1 mm");
    }

    @Test
    void a_sprocket_is_a_wedge_on_the_rafter() {
        Sprocket sprocket = Sprocket.of(mm(600), pitch("30°"), pitch("45°"));

        assertThat(sprocket.fill()).isEqualTo(mm(600 * Math.sin(Math.toRadians(15))));
        assertThat(sprocket.reach()).isEqualTo(mm(600 * Math.cos(Math.toRadians(15))));
        assertThat(sprocket.working().disagreements()).isEmpty();
        assertThatThrownBy(() -> Sprocket.of(mm(600), pitch("45°"), pitch("45°")))
                .hasMessage("sprocket pitch must be flatter than the rafter's 45°, but was 45°");
    }
}
