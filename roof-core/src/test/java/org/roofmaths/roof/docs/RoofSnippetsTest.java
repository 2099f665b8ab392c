package org.roofmaths.roof.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.roofmaths.units.Quantities.level;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;

import org.junit.jupiter.api.Test;
import org.roofmaths.framing.CommonRafter;
import org.roofmaths.roof.Roof;
import org.roofmaths.roof.RoofLine;
import org.roofmaths.roof.Roofs;
import org.roofmaths.roof.Slope;

/** The snippets of the package pages of roofs and framing, with what they print. */
class RoofSnippetsTest {
    @Test
    void the_page_of_the_roof_package() {
        Roof shed = Roofs.leanTo()
                .wallLength(metres(4.6))
                .projection(metres(2.7))
                .slope(Slope.of(pitch("32°")))
                .eavesOverhang(level(mm(150)))
                .build();

        assertThat(shed).hasToString("lean-to at 32°: 1 face \"main\", 15.46 m² along the slope");
        assertThat(shed.areaAlongSlope()).hasToString("15.459028870000001 m²");
        assertThat(shed.face("main").slopeLength()).hasToString("3360.65845 mm");
        assertThat(shed.face("main").slopeLength(RoofLine.PLATE, RoofLine.APEX).value())
                .hasToString("3183.781689 mm");
        assertThat(shed.edge("main eaves").trueLength()).hasToString("4600 mm");
    }

    @Test
    void the_page_of_the_framing_package() {
        CommonRafter rafter =
                CommonRafter.ofSpan(metres(7.2), pitch("35°")).withRidge(mm(32)).withOverhang(level(mm(300)));

        assertThat(rafter.length()).hasToString("4394.78852 mm");
        assertThat(rafter.lengthToCut()).hasToString("4741.488504 mm");
        assertThat(rafter.plumbCutFromSquare()).hasToString("35°");
    }
}
