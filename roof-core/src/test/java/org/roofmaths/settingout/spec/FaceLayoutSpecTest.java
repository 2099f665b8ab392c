package org.roofmaths.settingout.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.roofmaths.units.Quantities.level;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.plumb;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import org.junit.jupiter.api.Test;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.roof.Roof;
import org.roofmaths.roof.RoofEnd;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.roof.Roofs;
import org.roofmaths.roof.Slope;
import org.roofmaths.settingout.Columns;
import org.roofmaths.settingout.CourseKind;
import org.roofmaths.settingout.Courses;
import org.roofmaths.settingout.FaceEnd;
import org.roofmaths.settingout.FaceLayout;
import org.roofmaths.settingout.LayoutScheme;
import org.roofmaths.settingout.PieceKind;
import org.roofmaths.settingout.Samples;
import org.roofmaths.settingout.Underlay;
import org.roofmaths.settingout.UnderlayDemand;
import org.roofmaths.settingout.UnderlayRoll;
import org.roofmaths.settingout.UnitCounts;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Range;
import org.roofmaths.working.Figure;

class FaceLayoutSpecTest {
    private static final Roof LEAN_TO = Roofs.leanTo()
            .wallLength(metres(5.2))
            .projection(metres(3))
            .slope(Slope.heights(metres(2.3), metres(4.175)))
            .eavesOverhang(level(mm(150)))
            .left(RoofEnd.abutment())
            .right(RoofEnd.verge(level(mm(45))))
            .build();

    @Test
    void a_lean_to_is_set_out_from_its_face() {
        RoofFace face = LEAN_TO.face("main");
        FaceLayout layout = FaceLayout.on(face, Samples.FERNSIDE);
        Courses courses = layout.courses().orThrow();

        // by hand: 3348.592453 / 10 between 336.04 and 3684.63
        assertThat(courses.gaugeCount()).isEqualTo(10);
        assertThat(courses.marks().left())
                .containsExactly(
                        mm(336), mm(671), mm(1006), mm(1341), mm(1675), mm(2010), mm(2345), mm(2680), mm(3015),
                        mm(3350), mm(3685));
        assertThat(layout.columns().orThrow().rows().get(0)).hasToString("1 half unit, 17 whole units");
        assertThat(layout.counts().orThrow()).hasToString("187 whole units, 11 half units");
        assertThat(layout.battens().orThrow()).hasToString("11 battens, 57695 mm together");
        assertThat(layout.underlay().orElseThrow()).hasToString("5 rows of underlay, 26225 mm together");
        assertThat(layout.problems()).isEmpty();
        assertThat(layout.working().disagreements()).isEmpty();
    }

    @Test
    void the_working_reaches_back_to_the_roof() {
        FaceLayout layout = FaceLayout.on(LEAN_TO.face("main"), Samples.FERNSIDE);

        assertThat(layout.working().toText())
                .contains("slope length at the end = slope length between the lines")
                .contains("projection = 3000 mm  (given)");
        assertThat(layout.working().at(Columns.COVER_GOT).value()).isEqualTo(mm((5200 - 5 + 45 - 30 - 150) / 17.0));
    }

    @Test
    void a_garage_face_as_found_is_set_out_with_both_ends() {
        FaceLayout layout = FaceLayout.on(FlatShape.of(Ends.of(mm(3459), mm(3441)), mm(6100)), Samples.TOLLBAR);
        Courses courses = layout.courses().orThrow();

        assertThat(courses.gauge()).isEqualTo(Ends.of(mm(2945 / 15.0), mm(2927 / 15.0)));
        assertThat(courses.marks().left())
                .startsWith(mm(258), mm(454))
                .endsWith(mm(3203), mm(3399))
                .hasSize(17);
        assertThat(courses.marks().right())
                .startsWith(mm(259), mm(454))
                .endsWith(mm(3186), mm(3381))
                .hasSize(17);
        UnitCounts counts = layout.counts().orThrow();
        assertThat(counts.wholeUnits()).isEqualTo(9 * 24 + 9 * 21);
        assertThat(counts.unitsAndAHalf()).isEqualTo(9 * 2);
        assertThat(counts.count(CourseKind.UNDER_EAVES, PieceKind.WHOLE)).isEqualTo(21);
        assertThat(counts.total()).isEqualTo(405 + 18);
        assertThat(layout.battens().orThrow().count()).isEqualTo(17);
        assertThat(layout.working().disagreements()).isEmpty();
    }

    @Test
    void what_fits_is_kept_beside_what_does_not() {
        FaceLayout layout =
                FaceLayout.on(FlatShape.rectangle(mm(200), mm(3714)).withPitch(Pitch.ofDegrees(32)), Samples.FERNSIDE);

        assertThat(layout.courses().hasValue()).isTrue();
        assertThat(layout.columns().hasValue()).isFalse();
        assertThat(layout.counts().problems()).isEqualTo(layout.columns().problems());
        assertThat(layout.battens().hasValue()).isTrue();
        assertThat(layout.problems()).hasSize(1);
        assertThat(layout)
                .hasToString(
                        layout.courses().orThrow()
                                + "\nthe face is too narrow for a whole unit: at most 205 mm can be covered, and one unit covers 297 mm at least");
    }

    @Test
    void a_level_overhang_needs_the_pitch() {
        assertThatThrownBy(() -> FaceLayout.on(FlatShape.rectangle(mm(5245), mm(3714)), Samples.FERNSIDE))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("overhangIntoGutter must be measured on the slope, as the face does not know its pitch,"
                        + " but was 50 mm level");
    }

    @Test
    void a_scheme_that_contradicts_itself_is_refused_with_every_reason() {
        assertThatThrownBy(() -> LayoutScheme.builder()
                        .unit(Samples.TILE)
                        .headlap(Figure.given(mm(420)))
                        .overhangIntoGutter(plumb(mm(500)))
                        .topDistance(mm(-1))
                        .left(FaceEnd.verge(mm(45)))
                        .right(FaceEnd.verge(mm(45)))
                        .overhangRange(Range.closed(mm(40), mm(60)))
                        .topDistanceRange(Range.atLeast(mm(0)))
                        .rafterCentres(mm(0))
                        .smallestCut(Figure.given(mm(0)))
                        .underlayRoll(new UnderlayRoll(mm(100), mm(0)))
                        .underlay(new UnderlayDemand(Figure.given(mm(150)), Figure.given(mm(100)), Figure.given(mm(0))))
                        .build())
                .isInstanceOf(ProblemsException.class)
                .hasMessage("""
                        headlap must be 0 mm or more and below the unit's length of 420 mm, but was 420 mm
                        overhangIntoGutter must be measured level or on the slope, but was 500 mm plumb
                        overhangIntoGutter must be shorter than the unit's length of 420 mm, but was 500 mm
                        topDistance must be 0 mm or more, but was -1 mm
                        overhangIntoGutter must lie in its range [40 mm..60 mm], which needs two ends, but was 500 mm
                        topDistance must lie in its range [0 mm..), which needs two ends, but was -1 mm
                        rafterCentres must be above 0 mm, but was 0 mm
                        smallestCut must be above 0 mm, but was 0 mm
                        underlayRoll length must be above 0 mm, but was 0 mm
                        underlay lap must be shorter than the roll is wide, 100 mm, but was 150 mm""");
    }

    @Test
    void a_scheme_changes_one_part_at_a_time() {
        LayoutScheme other = Samples.FERNSIDE
                .withTopDistance(mm(40))
                .withOverhangIntoGutter(level(mm(45)))
                .withLeft(FaceEnd.verge(mm(40)))
                .withRight(FaceEnd.abutment(Range.closed(mm(0), mm(4))));

        assertThat(other.topDistance()).isEqualTo(mm(40));
        assertThat(other.overhangIntoGutter()).isEqualTo(level(mm(45)));
        assertThat(other.left()).hasToString("verge, overhang 40 mm of [40 mm..40 mm]");
        assertThat(other.right()).hasToString("side abutment, gap 2 mm of [0 mm..4 mm]");
        assertThat(other.unit()).isEqualTo(Samples.TILE);
        assertThat(other.underlayRoll()).isEqualTo(Samples.FERNSIDE.underlayRoll());
    }

    @Test
    void a_layout_survives_a_stream() throws Exception {
        FaceLayout layout = FaceLayout.on(LEAN_TO.face("main"), Samples.FERNSIDE);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(layout);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            FaceLayout read = (FaceLayout) in.readObject();
            assertThat(read).isEqualTo(layout);
            assertThat(read.working().toText()).isEqualTo(layout.working().toText());
        }
    }

    @Test
    void underlay_rows_lap_up_the_slope() {
        // Roof Tile Association, technical library, installing underlay: lap 150 under 35 degrees
        Underlay underlay = Underlay.over(
                metres(5.2),
                metres(12),
                new UnderlayRoll(metres(1), metres(50)),
                new UnderlayDemand(Figure.given(mm(150)), Figure.given(mm(100)), Figure.given(mm(0))));

        assertThat(underlay.rowCount()).isEqualTo(1 + (int) Math.ceil((5200 - 1000) / 850.0));
        assertThat(underlay.lowerEdges()).startsWith(mm(0), mm(850), mm(1700)).hasSize(6);
        assertThat(underlay.together()).isEqualTo(metres(6 * 12));
        assertThat(underlay.withJoins()).isEqualTo(metres(72 + 0.1));
        assertThat(underlay.spare()).isEqualTo(mm(1000 + 5 * 850 - 5200));
        assertThat(underlay.working().disagreements()).isEmpty();
    }

    @Test
    void one_row_of_underlay_covers_a_short_slope() {
        Underlay underlay = Underlay.over(
                mm(600),
                metres(3),
                new UnderlayRoll(metres(1), metres(50)),
                new UnderlayDemand(Figure.given(mm(150)), Figure.given(mm(100)), Figure.given(mm(100))));

        assertThat(underlay).hasToString("1 row of underlay, 3000 mm together");
        assertThat(underlay.working().disagreements()).isEmpty();
    }
}
