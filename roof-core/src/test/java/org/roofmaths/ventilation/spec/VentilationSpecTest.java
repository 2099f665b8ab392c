package org.roofmaths.ventilation.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.percent;
import static org.roofmaths.units.Quantities.squareMetres;
import static org.roofmaths.working.Figure.given;

import org.junit.jupiter.api.Test;
import org.roofmaths.problem.Problem;
import org.roofmaths.units.Area;
import org.roofmaths.units.AreaPerLength;
import org.roofmaths.units.Ratio;
import org.roofmaths.ventilation.Bay;
import org.roofmaths.ventilation.EdgeVents;
import org.roofmaths.ventilation.InsulationDepth;
import org.roofmaths.ventilation.RafterBays;
import org.roofmaths.ventilation.SpotVents;
import org.roofmaths.ventilation.Vent;
import org.roofmaths.ventilation.VentDemand;

class VentilationSpecTest {
    private static final RafterBays FERNSIDE = RafterBays.of(mm(5200), mm(600), mm(47));
    private static final Vent TILE_VENT = Vent.of("tile vent", Area.ofSquareMillimetres(5000));

    @Test
    void a_continuous_gap_of_ten_millimetres_is_ten_thousand_for_each_metre() {
        assertThat(EdgeVents.along("eaves", metres(12.5), VentDemand.gap(mm(10)))
                        .asked())
                .isEqualTo(Area.ofSquareMillimetres(125_000));
        assertThat(EdgeVents.along(
                                "eaves",
                                metres(12.5),
                                VentDemand.perMetre(given(AreaPerLength.ofSquareMillimetresPerMetre(7000))))
                        .continuousGap())
                .isEqualTo(mm(7));
    }

    @Test
    void a_share_of_an_area() {
        // 1/300 of 111.5 m², all of it here, then half of it
        VentDemand whole =
                VentDemand.shareOfArea(given(Ratio.of(1.0 / 300)), given(squareMetres(111.5)), given(Ratio.of(1)));
        VentDemand half =
                VentDemand.shareOfArea(given(Ratio.of(1.0 / 300)), given(squareMetres(111.5)), given(percent(50)));

        EdgeVents all = EdgeVents.along("eaves", metres(10), whole);
        assertThat(all.asked().toSquareMillimetres()).isCloseTo(111.5e6 / 300, within(1e-6));
        assertThat(EdgeVents.along("eaves", metres(10), half).asked().toSquareMillimetres())
                .isCloseTo(111.5e6 / 600, within(1e-6));
        assertThat(all.working().disagreements()).isEmpty();
    }

    @Test
    void none_asked_says_under_which_conditions() {
        EdgeVents ridge = EdgeVents.along("ridge", metres(6), VentDemand.noneAsked("pitch not above 35° by row R"));

        assertThat(ridge.asked()).isEqualTo(Area.ZERO);
        assertThat(ridge.continuousGap()).isEqualTo(mm(0));
        assertThat(ridge).hasToString("ridge: no opening asked for: pitch not above 35° by row R");
        assertThat(ridge.working().toText()).contains("note: no opening asked for: pitch not above 35° by row R");
        assertThat(ridge.working().disagreements()).isEmpty();
    }

    @Test
    void vents_by_area_do_not_gain_one_on_an_exact_division() {
        RafterBays few = RafterBays.of(metres(2), mm(600), mm(47));
        // 10 mm over 10 m by vents of 10 000 mm²: 10; 5 mm over 10 m by vents of 7500 mm²: 7
        assertThat(EdgeVents.along("eaves", metres(10), VentDemand.gap(mm(10)))
                        .provided(Vent.of("strip", Area.ofSquareMillimetres(10_000)), few)
                        .count())
                .isEqualTo(10);
        assertThat(EdgeVents.along("eaves", metres(10), VentDemand.gap(mm(5)))
                        .provided(Vent.of("strip", Area.ofSquareMillimetres(7500)), few)
                        .count())
                .isEqualTo(7);
    }

    @Test
    void at_least_one_vent_in_every_bay() {
        SpotVents vents =
                EdgeVents.along("top abutment", mm(5245), VentDemand.gap(mm(5))).provided(TILE_VENT, FERNSIDE);

        // 26 225 ÷ 5000 = 5.2: 6 by area, but 9 bays
        assertThat(vents.countByArea()).isEqualTo(6);
        assertThat(vents.count()).isEqualTo(9);
        assertThat(vents.perBay()).containsOnly(1).hasSize(9);
        assertThat(vents.provided()).isEqualTo(Area.ofSquareMillimetres(45_000));
        assertThat(vents.places().get(0)).isEqualTo(mm((47 + 600) / 2.0));
        assertThat(vents.problems()).isEmpty();
        assertThat(vents).hasToString("9 × tile vent of 5000 mm² along the top abutment");
        assertThat(vents.working().disagreements()).isEmpty();
    }

    @Test
    void says_by_how_much_one_in_every_bay_is_short() {
        SpotVents vents =
                EdgeVents.along("eaves", mm(5245), VentDemand.gap(mm(10))).provided(TILE_VENT, FERNSIDE);

        assertThat(vents.count()).isEqualTo(11);
        assertThat(vents.perBay()).containsOnly(1, 2);
        assertThat(vents.perBay().stream().mapToInt(i -> i).sum()).isEqualTo(11);
        assertThat(vents.places()).hasSize(11).isSorted();
        assertThat(vents.problems())
                .extracting(Problem::toString)
                .containsExactly(
                        "one tile vent in each of 9 bays gives 45000 mm², 7450 mm² short of the 52450 mm² asked along the"
                                + " eaves: 11 are set, more than one in some bays");
    }

    @Test
    void bays_of_the_lean_to_worked_by_hand() {
        assertThat(FERNSIDE.count()).isEqualTo(9);
        assertThat(FERNSIDE.bays().subList(0, 8)).extracting(Bay::clearWidth).containsOnly(mm(553));
        assertThat(FERNSIDE.bays().get(8).clearWidth()).isEqualTo(mm(306));
        assertThat(FERNSIDE.clearWidth()).isEqualTo(mm(5200 - 10 * 47));
        assertThat(FERNSIDE).hasToString("9 bays at 600 mm");
        assertThat(FERNSIDE.bays().get(0)).hasToString("bay 1, 47 mm to 600 mm");
        assertThat(FERNSIDE.working().disagreements()).isEmpty();
    }

    @Test
    void bays_that_divide_exactly_gain_none() {
        // (6000 − 45) ÷ 397 = 15 exactly
        assertThat(RafterBays.of(mm(6000), mm(397), mm(45)).count()).isEqualTo(15);
    }

    @Test
    void a_slot_between_rafters_is_wider_than_the_gap() {
        EdgeVents eaves = EdgeVents.along("eaves", mm(5245), VentDemand.gap(mm(25)));

        // 25 × 600 ÷ (600 − 47) = 27.1; with a screen 0.7 open 38.7
        assertThat(eaves.slot(FERNSIDE).value()).isEqualTo(mm(25.0 * 600 / 553));
        assertThat(eaves.slot(FERNSIDE, Ratio.of(0.7)).value()).isEqualTo(mm(25.0 * 600 / 553 / 0.7));
        assertThat(eaves.slot(FERNSIDE, Ratio.of(0.7)).working().disagreements())
                .isEmpty();
    }

    @Test
    void a_slot_by_the_bays_as_they_are_counts_the_narrow_one() {
        EdgeVents eaves = EdgeVents.along("eaves", mm(5245), VentDemand.gap(mm(10)));

        // 52 450 ÷ 4730
        assertThat(eaves.slotByBays(FERNSIDE, Ratio.of(1)).value()).isEqualTo(mm(52_450.0 / 4730));
        assertThat(eaves.slotByBays(FERNSIDE, Ratio.of(1)).working().disagreements())
                .isEmpty();
        assertThat(eaves.areaOfSlot(mm(10), FERNSIDE, Ratio.of(1)).value()).isEqualTo(squareMetres(0.0473));
        assertThat(eaves.areaOfSlot(mm(10), FERNSIDE, percent(70)).working().disagreements())
                .isEmpty();
    }

    @Test
    void a_shortfall_is_told_with_the_gap_that_mends_it() {
        EdgeVents eaves = EdgeVents.along("eaves", metres(5), VentDemand.gap(mm(10)));

        assertThat(eaves.shortfall(squareMetres(0.05))).isEmpty();
        assertThat(eaves.shortfall(squareMetres(0.06))).isEmpty();
        assertThat(eaves.shortfall(squareMetres(0.04)))
                .extracting(Problem::toString)
                .containsExactly("""
                        the openings along the eaves give 40000 mm², 10000 mm² short of the 50000 mm² asked
                          mend: opening along the eaves: a continuous gap 2 mm wider; free area of 50000 mm²""");
    }

    @Test
    void a_screen_counts_by_its_open_share() {
        Vent vent = Vent.screened("soffit vent", squareMetres(0.01), percent(60));

        assertThat(vent.freeArea().value()).isEqualTo(squareMetres(0.006));
        assertThat(vent).hasToString("soffit vent of 6000 mm²");
    }

    @Test
    void the_drape_takes_from_the_insulation() {
        assertThat(InsulationDepth.left(given(mm(175)), given(mm(50)), given(mm(15)))
                        .value())
                .isEqualTo(mm(110));
        assertThat(InsulationDepth.left(given(mm(175)), given(mm(50)), given(mm(15)))
                        .working()
                        .disagreements())
                .isEmpty();
        assertThat(InsulationDepth.attemptLeft(given(mm(175)), given(mm(50)), given(mm(15)))
                        .problems())
                .isEmpty();
        assertThat(InsulationDepth.attemptLeft(given(mm(60)), given(mm(50)), given(mm(15)))
                        .problems())
                .extracting(Problem::toString)
                .containsExactly("""
                        a rafter of 60 mm leaves no depth for insulation: a void of 50 mm and a drape of 15 mm take 65 mm
                          mend: rafter depth: more than 5 mm deeper; some depth left for insulation""");
    }

    @Test
    void refuses_wrong_figures_all_at_once() {
        assertThatThrownBy(() -> RafterBays.of(mm(90), mm(40), mm(47))).hasMessage("""
                rafter centres of the bays must be more than the rafter width of 47 mm, but was 40 mm
                length over the end rafters must be more than two rafters of 47 mm, but was 90 mm""");
        assertThatThrownBy(() -> VentDemand.gap(mm(0)))
                .hasMessage("continuous gap asked must be above 0 mm, but was 0 mm");
        assertThatThrownBy(() -> VentDemand.perMetre(given(AreaPerLength.ZERO)))
                .hasMessage("free area asked for each metre must be above 0 mm²/m, but was 0 mm²/m");
        assertThatThrownBy(() -> VentDemand.shareOfArea(given(Ratio.of(2)), given(Area.ZERO), given(Ratio.ZERO)))
                .hasMessage("""
                        open share asked of an area must be above 0 and at most 1, but was 2
                        area to be ventilated must be above 0 m², but was 0 m²
                        portion at this edge must be above 0 and at most 1, but was 0""");
        assertThatThrownBy(() -> EdgeVents.along("eaves", mm(0), VentDemand.gap(mm(10))))
                .hasMessage("length to be ventilated must be above 0 mm, but was 0 mm");
        assertThatThrownBy(() -> Vent.of("tile vent", Area.ZERO))
                .hasMessage("free area of a vent must be above 0 m², but was 0 m²");
        assertThatThrownBy(() -> Vent.screened("tile vent", Area.ZERO, Ratio.of(1.5)))
                .hasMessage("""
                hole behind the screen must be above 0 m², but was 0 m²
                open share of the screen must be above 0 and at most 1, but was 1.5""");
        EdgeVents eaves = EdgeVents.along("eaves", metres(5), VentDemand.gap(mm(10)));
        assertThatThrownBy(() -> eaves.slot(FERNSIDE, Ratio.ZERO))
                .hasMessage("open share of the screen must be above 0 and at most 1, but was 0");
        assertThatThrownBy(() -> eaves.areaOfSlot(mm(-1), FERNSIDE, Ratio.of(1)))
                .hasMessage("slot made must be 0 mm or more, but was -1 mm");
        assertThatThrownBy(() -> InsulationDepth.left(given(mm(0)), given(mm(-1)), given(mm(-1))))
                .hasMessage("""
                rafter depth of the bay must be above 0 mm, but was 0 mm
                clear void over the insulation must be 0 mm or more, but was -1 mm
                drape of the underlay must be 0 mm or more, but was -1 mm""");
        assertThat(InsulationDepth.attemptLeft(given(mm(0)), given(mm(0)), given(mm(0)))
                        .hasValue())
                .isFalse();
    }

    @Test
    void prints_what_is_asked() {
        assertThat(EdgeVents.along("eaves", mm(5245), VentDemand.gap(mm(10))))
                .hasToString("eaves: 52450 mm² free over 5245 mm, a continuous gap of 10 mm");
        assertThat(VentDemand.gap(mm(10))).hasToString("a continuous gap of 10 mm");
        assertThat(VentDemand.perMetre(given(AreaPerLength.ofSquareMillimetresPerMetre(7000))))
                .hasToString("7000 mm²/m of free area");
    }
}
