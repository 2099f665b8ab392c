package org.roofmaths.settingout.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.roofmaths.units.Quantities.level;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.roofmaths.roof.Roof;
import org.roofmaths.roof.RoofEnd;
import org.roofmaths.roof.Roofs;
import org.roofmaths.roof.Slope;
import org.roofmaths.settingout.PieceKind;
import org.roofmaths.settingout.RoofLayout;
import org.roofmaths.settingout.Samples;

class RoofLayoutSpecTest {
    private static final Roof GARAGE = Roofs.duoPitch()
            .length(metres(6))
            .span(metres(5))
            .slope(Slope.of(pitch("40°")))
            .eavesOverhang(level(mm(150)))
            .left(RoofEnd.verge(level(mm(50))))
            .right(RoofEnd.verge(level(mm(50))))
            .build();

    @Test
    void both_faces_of_a_garage() {
        RoofLayout layout = RoofLayout.on(GARAGE, Samples.TOLLBAR);

        assertThat(layout.faces().keySet()).containsExactly("front", "back");
        assertThat(layout.count(PieceKind.WHOLE)).isEqualTo(2 * (9 * 24 + 9 * 21));
        assertThat(layout.count(PieceKind.UNIT_AND_A_HALF)).isEqualTo(2 * 9 * 2);
        assertThat(layout.face("back").courses().orThrow().gaugeCount()).isEqualTo(16);
        assertThat(layout.problems()).hasSize(2);
        assertThat(layout.problems().get(1).where()).isEqualTo("face \"back\", courses");
        assertThat(layout.toString()).startsWith("\"front\": 17 courses, 16 gauges:");
    }

    @Test
    void schemes_and_faces_must_go_together() {
        assertThatThrownBy(() -> RoofLayout.on(GARAGE, Map.of("side", Samples.TOLLBAR)))
                .hasMessage("schemes must hold one for each face, but was none for \"front\"\n"
                        + "schemes must hold one for each face, but was none for \"back\"\n"
                        + "schemes must be for front, back, but was one for \"side\"");
        assertThatThrownBy(() -> RoofLayout.on(GARAGE, Samples.TOLLBAR).face("side"))
                .hasMessage("face must be one of front, back, but was side");
    }
}
