package org.roofmaths.settingout.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.roofmaths.units.Quantities.kg;
import static org.roofmaths.units.Quantities.level;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.onSlope;
import static org.roofmaths.units.Quantities.pitch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.roofmaths.covering.PartUnit;
import org.roofmaths.covering.SingleLapUnit;
import org.roofmaths.covering.UnitKind;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.settingout.BuildUp;
import org.roofmaths.settingout.Courses;
import org.roofmaths.settingout.EavesSection;
import org.roofmaths.settingout.FaceEnd;
import org.roofmaths.settingout.FaceLayout;
import org.roofmaths.settingout.GaugeRod;
import org.roofmaths.settingout.Layer;
import org.roofmaths.settingout.LayoutScheme;
import org.roofmaths.settingout.Opening;
import org.roofmaths.settingout.OpeningFit;
import org.roofmaths.settingout.SameLevels;
import org.roofmaths.settingout.Samples;
import org.roofmaths.units.Range;
import org.roofmaths.working.Figure;

/** The snippets of {@code docs/guide/setting-out.md}, compiled; what the page says they print must stand on the page. */
class SettingOutGuideTest {
    private static String page() throws IOException {
        return Files.readString(Path.of("..", "docs", "guide", "setting-out.md"));
    }

    private static void assertOnPage(Object printed) throws IOException {
        // a printed block is indented by four on the page
        for (String line : printed.toString().split("\n", -1)) {
            assertThat(page()).contains(line);
        }
    }

    @Test
    void courses_at_both_ends() throws IOException {
        Courses courses = Courses.divide(Ends.of(mm(3912), mm(3897)), Range.closed(mm(320), mm(345)));

        assertOnPage(courses);
        assertOnPage(courses.marks().right().subList(0, 5).toString().replace("]", ", …"));
        assertOnPage("11 gauges would pass the greatest gauge by "
                + courses.excessWithOneFewer().orElseThrow());
        assertThat(courses.gaugeCount()).isEqualTo(12);
        assertOnPage(GaugeRod.drift(50, mm(1)));
    }

    @Test
    void nothing_fits() throws IOException {
        assertOnPage(Courses.attemptDivide(Ends.both(mm(700)), Range.closed(mm(310), mm(345))));
    }

    @Test
    void a_face() throws IOException {
        SingleLapUnit tile = SingleLapUnit.builder()
                .name("roll tile")
                .kind(UnitKind.CONCRETE_SINGLE_LAP_TILE)
                .length(mm(420))
                .hangingLength(mm(395))
                .overallWidth(mm(330))
                .coverWidth(mm(300))
                .leastHeadlap(mm(75))
                .thickness(mm(25))
                .mass(kg(4.4))
                .coverRange(Range.closed(mm(297), mm(303)))
                .halfUnit(new PartUnit(mm(150), kg(2.6)))
                .build();
        LayoutScheme scheme = LayoutScheme.builder()
                .unit(tile)
                .headlap(Figure.given(mm(75)))
                .overhangIntoGutter(level(mm(50)))
                .topDistance(mm(30))
                .left(FaceEnd.abutment(Range.closed(mm(0), mm(10))))
                .right(FaceEnd.verge(mm(45), Range.closed(mm(38), mm(50))))
                .build();
        FlatShape face = FlatShape.rectangle(mm(5245), mm(3714)).withPitch(pitch("32°"));
        FaceLayout layout = FaceLayout.on(face, scheme);

        assertOnPage(layout);
        assertOnPage(layout.columns().orThrow().considered().get(0));
        assertOnPage(layout.counts().orThrow());

        Opening window = Opening.builder()
                .name("window")
                .along(mm(1375))
                .up(mm(1000))
                .width(mm(850))
                .height(mm(900))
                .build();
        FaceLayout withWindow = FaceLayout.on(face, scheme.withOpenings(List.of(window)));
        assertThat(withWindow.counts().orThrow().total())
                .isLessThan(layout.counts().orThrow().total());
        assertThat(OpeningFit.of(
                                window,
                                layout.courses().orThrow(),
                                layout.columns().orThrow(),
                                mm(150))
                        .alongsWithoutSlivers())
                .isNotEmpty();
    }

    @Test
    void slates() throws IOException {
        LayoutScheme scheme = Samples.TOLLBAR.withOverhangIntoGutter(onSlope(mm(50)));
        Courses courses = FaceLayout.on(FlatShape.rectangle(mm(6100), mm(4060)), scheme)
                .courses()
                .orThrow();

        assertOnPage(courses.gaugeCount() + " gauges of " + courses.gauge().left() + " from "
                + courses.firstLine().left() + ", and the headlap is "
                + courses.headlap().orElseThrow().left());
    }

    @Test
    void same_levels_and_layers() throws IOException {
        assertOnPage(SameLevels.over(metres(3), Range.closed(mm(88), mm(100)), pitch("45°"), pitch("50°")));
        assertOnPage(EavesSection.of(pitch("17.5°"), mm(25), mm(20))
                .withTray(mm(200))
                .fasciaHeightSquare());
        assertOnPage(BuildUp.of(new Layer("insulation", mm(150))).growthAtRidge(pitch("30°"), pitch("50°")));
    }
}
