package org.roofmaths.ventilation.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.roofmaths.units.Quantities.level;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.roofmaths.problem.Problem;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.roof.Roof;
import org.roofmaths.roof.RoofEnd;
import org.roofmaths.roof.Roofs;
import org.roofmaths.roof.Slope;
import org.roofmaths.units.Area;
import org.roofmaths.ventilation.BayPath;
import org.roofmaths.ventilation.EdgeVents;
import org.roofmaths.ventilation.RafterBays;
import org.roofmaths.ventilation.VentDemand;
import org.roofmaths.ventilation.Ventilation;

class RoofVentilationSpecTest {
    /** The garage worked by hand: 6 m, span 5 m, 40°, verges of 50 mm. */
    private static final Roof TOLLBAR = Roofs.duoPitch()
            .length(metres(6))
            .span(metres(5))
            .slope(Slope.of(pitch("40°")))
            .eavesOverhang(level(mm(150)))
            .left(RoofEnd.verge(level(mm(50))))
            .right(RoofEnd.verge(level(mm(50))))
            .build();

    private static final RafterBays BAYS = RafterBays.of(mm(6000), mm(400), mm(47));

    private static Ventilation of(VentDemand eaves, VentDemand ridge) {
        return Ventilation.of(
                TOLLBAR,
                Map.of(
                        TOLLBAR.face("front").edge(EdgeKind.EAVES), eaves,
                        TOLLBAR.face("back").edge(EdgeKind.EAVES), eaves,
                        TOLLBAR.edge("ridge front/back"), ridge));
    }

    @Test
    void every_edge_is_kept_apart() {
        Ventilation air = of(VentDemand.gap(mm(10)), VentDemand.gap(mm(5)));

        // 10 mm and 5 mm from BS 5250:2011 (not read, from two makers' sheets); eaves and ridge of 6.1 m
        assertThat(air.low())
                .extracting(EdgeVents::asked)
                .containsOnly(Area.ofSquareMillimetres(61_000))
                .hasSize(2);
        assertThat(air.high()).extracting(EdgeVents::asked).containsExactly(Area.ofSquareMillimetres(30_500));
        assertThat(air.lowAsked()).isEqualTo(Area.ofSquareMillimetres(122_000));
        assertThat(air.highAsked()).isEqualTo(Area.ofSquareMillimetres(30_500));
        assertThat(air.at("front eaves").continuousGap()).isEqualTo(mm(10));
        assertThat(air.working().at(EdgeVents.ASKED.at("ridge front/back")).value())
                .isEqualTo(Area.ofSquareMillimetres(30_500));
        assertThat(air.working().disagreements()).isEmpty();
        assertThat(air.toString().lines())
                .contains("front eaves: 61000 mm² free over 6100 mm, a continuous gap of 10 mm");
    }

    @Test
    void every_bay_runs_from_eaves_to_ridge() {
        Ventilation air = of(VentDemand.gap(mm(10)), VentDemand.gap(mm(5)));

        assertThat(air.paths("front", BAYS, mm(50))).hasSize(15);
        assertThat(air.paths("front", BAYS, mm(50)).get(0))
                .hasToString("bay 1, 97 mm to 450 mm: front eaves (open) to ridge front/back (open)");
        assertThat(air.baysWithoutAir("front", BAYS, mm(50))).isEmpty();
    }

    @Test
    void bays_under_a_closed_ridge_are_listed() {
        Ventilation air = of(VentDemand.gap(mm(10)), VentDemand.noneAsked("pitch not above 35° by row R"));

        assertThat(air.paths("back", BAYS, mm(50)))
                .allMatch(BayPath::lacksOutlet)
                .noneMatch(BayPath::lacksInlet);
        // 10 mm over the clear width of 353
        assertThat(air.baysWithoutAir("back", BAYS, mm(50)))
                .extracting(Problem::toString)
                .containsExactly("""
                bays 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15 of the face "back" have no outlet, since the ridge \
                "ridge front/back" at their head is closed
                  mend: ridge "ridge front/back": an opening in each of these bays; outlet in every bay
                  mend: way across to the next bay: at least 3530 mm² clear from each of these bays; air through the neighbouring bays""");
    }

    @Test
    void an_edge_left_out_is_closed() {
        Ventilation air = Ventilation.of(TOLLBAR, Map.of(TOLLBAR.edge("ridge front/back"), VentDemand.gap(mm(5))));

        assertThat(air.low()).isEmpty();
        assertThat(air.paths("front", BAYS, mm(50))).allMatch(BayPath::lacksInlet);
        assertThat(air.baysWithoutAir("front", RafterBays.of(mm(600), mm(560), mm(40)), mm(50)))
                .extracting(Problem::message)
                .containsExactly(
                        "bay 1 of the face \"front\" has no inlet, since the eaves \"front eaves\" at its foot is closed");
    }

    @Test
    void refuses_edges_that_take_no_air() {
        assertThatThrownBy(
                        () -> Ventilation.of(TOLLBAR, Map.of(TOLLBAR.edge("front left verge"), VentDemand.gap(mm(5)))))
                .hasMessage(
                        "edge must be an eaves, ridge, mono ridge, hip or top abutment of the roof, but was verge \"front left verge\"");
        assertThatThrownBy(
                        () -> of(VentDemand.gap(mm(10)), VentDemand.gap(mm(5))).at("front left verge"))
                .hasMessage(
                        "edge must be one of front eaves, ridge front/back, back eaves, but was \"front left verge\"");
    }
}
