package org.roofmaths.settingout.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;

import org.junit.jupiter.api.Test;
import org.roofmaths.settingout.BuildUp;
import org.roofmaths.settingout.EavesSection;
import org.roofmaths.settingout.Layer;
import org.roofmaths.units.Length;

class EavesAndLayersSpecTest {
    private static double rad(double degrees) {
        return Math.toRadians(degrees);
    }

    private static void assertNear(Length got, double millimetres) {
        // stored to the nearest nanometre
        assertThat(got.toMillimetres()).isCloseTo(millimetres, within(1e-6));
    }

    @Test
    void a_fascia_takes_batten_and_one_unit() {
        // a roofing consultancy's article series, Tips 25
        EavesSection eaves = EavesSection.of(pitch("40°"), mm(25), mm(20));

        assertThat(eaves.fasciaHeightSquare()).isEqualTo(mm(25 + 20));
        assertNear(eaves.fasciaHeightPlumb(), 45 / Math.cos(rad(40)));
        assertThat(eaves).hasToString("fascia 45 mm over the rafter plane, square; 58.743328 mm plumb");
        assertThat(eaves.bevelDrop()).isEmpty();
        assertThat(eaves.trayFall()).isEmpty();
    }

    @Test
    void counter_battens_raise_the_fascia_and_a_vent_strip_lowers_it() {
        EavesSection eaves = EavesSection.of(pitch("40°"), mm(25), mm(20))
                .withCounterBatten(mm(38))
                .withVentStrip(mm(10))
                .withFascia(mm(22));

        assertThat(eaves.fasciaHeightSquare()).isEqualTo(mm(25 + 38 + 20 - 10));
        assertNear(eaves.bevelDrop().orElseThrow(), 22 * Math.tan(rad(40)));
        assertThat(eaves.working().disagreements()).isEmpty();
    }

    @Test
    void a_tray_falls_by_the_pitch_less_the_height_over_its_depth() {
        EavesSection eaves = EavesSection.of(pitch("17.5°"), mm(25), mm(20)).withTray(mm(200));

        assertThat(eaves.trayFall().orElseThrow().toDegrees())
                .isCloseTo(17.5 - Math.toDegrees(Math.atan(45 / 200.0)), within(1e-9)); // rounding of the formula
        assertThat(eaves.problems()).isEmpty();
        assertThat(eaves.working().disagreements()).isEmpty();
    }

    @Test
    void a_tray_that_ponds_is_a_finding() {
        EavesSection eaves = EavesSection.of(pitch("15°"), mm(25), mm(20)).withTray(mm(150));

        // 15 less arctan (45 / 150) is -1.7
        assertThat(eaves.trayFall().orElseThrow().toDegrees()).isCloseTo(-1.7, within(0.05)); // one printed digit
        assertThat(eaves.problems())
                .singleElement()
                .hasToString("the eaves tray does not fall to the gutter: its fall is "
                        + eaves.trayFall().orElseThrow()
                        + ", so water stands behind the fascia\n"
                        + "  mend: fascia height, square to the slope: more than "
                        + mm(45).minus(mm(150 * Math.tan(rad(15))))
                        + " less; a tray that falls\n"
                        + "  mend: tray depth: more than "
                        + mm(45 / Math.tan(rad(15))).minus(mm(150))
                        + " more; a tray that falls");
    }

    @Test
    void a_fascia_out_of_height_kicks_the_first_course() {
        assertThat(EavesSection.kick(mm(10), mm(395)).value().toDegrees())
                .isCloseTo(Math.toDegrees(Math.asin(10 / 395.0)), within(1e-9)); // rounding of the formula
        assertThat(EavesSection.kick(mm(-10), mm(395)).working().disagreements())
                .isEmpty();
    }

    @Test
    void sizes_of_an_eaves_section_are_refused_together() {
        assertThatThrownBy(() -> EavesSection.of(pitch("40°"), mm(0), mm(-1)))
                .hasMessage("batten depth must be above 0 mm, but was 0 mm\n"
                        + "unit thickness must be above 0 mm, but was -1 mm\n"
                        + "vent strip must be 0 mm or more and below the -1 mm of battens and unit, but was 0 mm");
        assertThatThrownBy(() -> EavesSection.of(pitch("40°"), mm(25), mm(20)).withVentStrip(mm(45)))
                .hasMessage("vent strip must be 0 mm or more and below the 45 mm of battens and unit, but was 45 mm");
    }

    @Test
    void layers_raise_the_covering_plumb() {
        BuildUp layers = BuildUp.of(
                new Layer("insulation", mm(120)), new Layer("counter-batten", mm(38)), new Layer("batten", mm(25)));

        assertThat(layers.together().value()).isEqualTo(mm(120 + 38 + 25));
        assertNear(layers.plumb(pitch("40°")).value(), 183 / Math.cos(rad(40)));
        assertThat(layers.plumb(pitch("40°")).working().disagreements()).isEmpty();
        assertThat(layers).hasToString("insulation 120 mm, counter-batten 38 mm, batten 25 mm");
    }

    @Test
    void a_counter_batten_lengthens_the_slope_at_a_wall() {
        // a building portal, Layout of roof slopes, prints 17, 20 and 25 for 30 mm at 30, 35 and 40 degrees; 20 is 1 mm
        // low
        BuildUp counterBatten = BuildUp.of(new Layer("counter-batten", mm(30)));

        assertNear(counterBatten.growthAtWall(pitch("30°")).value(), 30 * Math.tan(rad(30)));
        assertNear(counterBatten.growthAtWall(pitch("35°")).value(), 30 * Math.tan(rad(35)));
        assertNear(counterBatten.growthAtWall(pitch("40°")).value(), 30 * Math.tan(rad(40)));
    }

    @Test
    void both_slopes_of_unequal_pitch_grow_alike_and_the_apex_moves() {
        BuildUp insulation = BuildUp.of(new Layer("insulation", mm(150)));

        assertNear(insulation.growthAtRidge(pitch("30°"), pitch("50°")).value(), 150 * Math.tan(rad(40)));
        assertNear(insulation.growthAtRidge(pitch("50°"), pitch("30°")).value(), 150 * Math.tan(rad(40)));
        // the raised planes meet where x tan 30 + 150 / cos 30 = -x tan 50 + 150 / cos 50
        double x = 150 * (1 / Math.cos(rad(50)) - 1 / Math.cos(rad(30))) / (Math.tan(rad(30)) + Math.tan(rad(50)));
        assertNear(insulation.apexShift(pitch("30°"), pitch("50°")).value(), x);
        assertThat(x).isCloseTo(34.0, within(0.05)); // one printed digit
        assertThat(insulation.apexShift(pitch("40°"), pitch("40°")).value()).isEqualTo(mm(0));
        assertThat(insulation.apexShift(pitch("30°"), pitch("50°")).working().disagreements())
                .isEmpty();
        assertThat(insulation
                        .growthAtRidge(pitch("30°"), pitch("50°"))
                        .working()
                        .disagreements())
                .isEmpty();
    }

    @Test
    void a_nail_goes_through_all_layers() {
        BuildUp layers = BuildUp.of(new Layer("counter-batten", mm(25)), new Layer("batten", mm(25)));

        assertThat(layers.nailLength(mm(40)).value()).isEqualTo(mm(25 + 25 + 40));
        assertThat(layers.nailLength(mm(40)).working().disagreements()).isEmpty();
    }

    @Test
    void layers_without_name_or_thickness_are_refused_together() {
        assertThatThrownBy(() -> BuildUp.of(new Layer("board", mm(0)), new Layer("board", mm(18))))
                .hasMessage("board must be above 0 mm thick, but was 0 mm\nlayer name must occur once, but was board");
        assertThatThrownBy(BuildUp::of).hasMessage("layers must hold at least one layer, but was none");
    }
}
