package org.roofmaths.flashing.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.level;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.plumb;
import static org.roofmaths.units.Quantities.squareToSlope;

import org.junit.jupiter.api.Test;
import org.roofmaths.flashing.BedJoints;
import org.roofmaths.flashing.CoverFlashing;
import org.roofmaths.flashing.CoveringLine;
import org.roofmaths.flashing.Demands;
import org.roofmaths.flashing.Flashing;
import org.roofmaths.flashing.StepFlashing;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.roof.Roof;
import org.roofmaths.roof.RoofEnd;
import org.roofmaths.roof.Roofs;
import org.roofmaths.roof.Slope;
import org.roofmaths.units.Pitch;
import org.roofmaths.ventilation.EdgeVents;
import org.roofmaths.ventilation.VentDemand;

class CoveringLineSpecTest {
    /** The lean-to worked by hand: 5.2 m, 3 m out, 2.3 m to 4.175 m, abutment on the left, verge of 45 mm on the right. */
    private static final Roof FERNSIDE = Roofs.leanTo()
            .wallLength(metres(5.2))
            .projection(metres(3))
            .slope(Slope.heights(metres(2.3), metres(4.175)))
            .eavesOverhang(level(mm(150)))
            .left(RoofEnd.abutment())
            .right(RoofEnd.verge(level(mm(45))))
            .build();

    @Test
    void a_top_abutment_makes_a_level_line_at_the_crown_of_the_covering() {
        CoveringLine top = CoveringLine.of(FERNSIDE.edges(EdgeKind.TOP_ABUTMENT).get(0), squareToSlope(mm(90)));

        assertThat(top.isLevel()).isTrue();
        assertThat(top.trueLength()).isEqualTo(mm(5245));
        // 4175 + 90 ÷ cos(pitch) with 5 in 8: 90 × √89 ÷ 8
        assertThat(top.startHeight()).isEqualTo(mm(4175 + 90 * Math.sqrt(89) / 8));

        CoverFlashing flashing = CoverFlashing.along(top, BedJoints.of(mm(4200), mm(75)), Demands.WALL);
        assertThat(flashing.joint()).contains(mm(4425));
        assertThat(flashing.working().disagreements()).isEmpty();
        assertThat(flashing.working().toText()).contains("height of the rafter line at the wall = apex height");
    }

    @Test
    void a_side_abutment_makes_a_sloping_line_from_the_fascia_line() {
        CoveringLine side =
                CoveringLine.of(FERNSIDE.edges(EdgeKind.SIDE_ABUTMENT).get(0), squareToSlope(mm(90)));

        assertThat(side.isLevel()).isFalse();
        assertThat(side.planLength()).isEqualTo(mm(3150));

        StepFlashing steps = StepFlashing.along(side, BedJoints.of(mm(0), mm(75)), Demands.WALL);
        assertThat(steps.stepCount()).isEqualTo(28);
        // the page prints the water line over the datum at the fascia line as 2389.03
        assertThat(steps.working().at(StepFlashing.WATER_START).value().toMillimetres())
                .isCloseTo(2389.03, within(0.005));
        assertThat(steps.working().at(Flashing.METAL_MASS).value().toKilograms())
                .isCloseTo(23.95, within(0.005));
        assertThat(steps.working().disagreements()).isEmpty();
        assertThat(steps.working().toText()).contains("height of the rafter line at the wall = fascia height");
    }

    @Test
    void a_plumb_covering_is_taken_as_it_stands() {
        CoveringLine top = CoveringLine.of(FERNSIDE.edges(EdgeKind.TOP_ABUTMENT).get(0), plumb(mm(106)));

        assertThat(top.startHeight()).isEqualTo(mm(4175 + 106));
        assertThat(CoverFlashing.inChase(top, Demands.WALL).working().disagreements())
                .isEmpty();
    }

    @Test
    void refuses_an_edge_without_a_wall_and_a_level_covering() {
        assertThatThrownBy(() -> CoveringLine.of(FERNSIDE.edges(EdgeKind.EAVES).get(0), level(mm(-90))))
                .hasMessage("""
                edge must be a top or side abutment, but was eaves "main eaves"
                covering must be square to the slope or plumb, but was -90 mm level
                covering must be 0 mm or more, but was -90 mm level""");
    }

    @Test
    void prints_where_it_lies() {
        assertThat(CoveringLine.level(mm(5200), mm(4281))).hasToString("level line of 5200 mm at 4281 mm");
        assertThat(CoveringLine.sloping(mm(4000), Pitch.ofRiseAndRun(mm(3), mm(4)), mm(2400))
                        .toString())
                .startsWith("line of 5000 mm at 36.8")
                .endsWith(" from 2400 mm");
    }

    @Test
    void vents_run_the_length_of_the_edge() {
        EdgeVents eaves = EdgeVents.along(FERNSIDE.edges(EdgeKind.EAVES).get(0), VentDemand.gap(mm(10)));

        assertThat(eaves).hasToString("main eaves: 52450 mm² free over 5245 mm, a continuous gap of 10 mm");
        assertThat(eaves.working().disagreements()).isEmpty();
    }
}
