package org.roofmaths.settingout.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.roofmaths.problem.Problem;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.settingout.FaceEnd;
import org.roofmaths.settingout.FaceLayout;
import org.roofmaths.settingout.LayoutScheme;
import org.roofmaths.settingout.Opening;
import org.roofmaths.settingout.OpeningFit;
import org.roofmaths.settingout.PieceKind;
import org.roofmaths.settingout.Samples;
import org.roofmaths.units.Length;

class OpeningSpecTest {
    private static final FlatShape FACE = FlatShape.rectangle(mm(9030), mm(4000));
    /** 30 tiles of 300 and 30 shown beyond the last: joints at multiples of 300 from the left edge. */
    private static final LayoutScheme TILES =
            RakingEndsSpecTest.scheme(Samples.TILE_WITHOUT_HALF, FaceEnd.verge(mm(0)), FaceEnd.verge(mm(0)));

    private static Opening opening(double along, double up, double width, double height) {
        return Opening.builder()
                .name("window")
                .along(mm(along))
                .up(mm(up))
                .width(mm(width))
                .height(mm(height))
                .build();
    }

    private static OpeningFit fit(Opening opening) {
        FaceLayout layout = FaceLayout.on(FACE, TILES);
        return OpeningFit.of(
                opening, layout.courses().orThrow(), layout.columns().orThrow(), mm(150));
    }

    @Test
    void an_opening_leaves_cuts_by_the_joints_beside_it() {
        // covers of 300, opening of 850: from 150 to 200 past a joint both cuts are wide enough; 175 gives 175 and 175
        assertThat(fit(opening(1200 + 175, 1000, 850, 900)))
                .hasToString("opening \"window\": cuts 175 mm at both ends");
        for (int x = 0; x < 300; x++) {
            boolean good = x >= 150 && x <= 200;
            assertThat(fit(opening(1200 + x, 1000, 850, 900)).isWithoutSlivers())
                    .as("at %s", x)
                    .isEqualTo(good);
        }
    }

    @Test
    void the_nearest_places_without_slivers() {
        assertThat(fit(opening(1200 + 140, 1000, 850, 900)).alongsWithoutSlivers())
                .containsExactly(mm(1200 + 150), mm(900 + 200));
        assertThat(fit(opening(1200 + 230, 1000, 850, 900)).alongsWithoutSlivers())
                .containsExactly(mm(1200 + 200), mm(1500 + 150));
        assertThat(fit(opening(1200 + 160, 1000, 850, 900)).alongsWithoutSlivers())
                .containsExactly(mm(1360));
    }

    @Test
    void the_nearest_levels_at_which_no_unit_is_cut_to_length() {
        double gauge = (4000 - 30 - 345) / 11.0;
        OpeningFit fit = fit(opening(1375, 1000, 850, 3 * gauge));

        // tails lie at -50 and every gauge above: 938.6 and 1268.2 are the nearest
        List<Length> ups = fit.upsOnALine();
        assertThat(ups.get(0).toMillimetres()).isCloseTo(-50 + 3 * gauge, within(1e-5)); // nm storage of the gauge
        assertThat(ups.get(1).toMillimetres()).isCloseTo(-50 + 4 * gauge, within(1e-5));
        assertThat(fit.overALineAtTop(ups.get(0)).toMillimetres()).isCloseTo(0, within(1e-5));
        assertThat(fit.overALineAtTop(mm(1000)).toMillimetres()).isCloseTo(1000 - (-50 + 3 * gauge), within(1e-5));
        Opening onLine = opening(1375, 1000, 850, 900).at(mm(1375), ups.get(0));
        assertThat(fit(onLine).upsOnALine()).containsExactly(ups.get(0));
    }

    @Test
    void units_in_an_opening_are_left_out_and_those_beside_it_cut() {
        double gauge = (4000 - 30 - 345) / 11.0;
        Opening window = opening(1200 + 175, -50 + 3 * gauge, 850, 2 * gauge);
        FaceLayout whole = FaceLayout.on(FACE, TILES);
        FaceLayout layout = FaceLayout.on(FACE, TILES.withOpenings(List.of(window)));

        // 850 is 125 + 300 + 300 + 125: in two courses two units go and two are cut; in the course below heads are
        // trimmed
        long before = whole.counts().orThrow().total();
        assertThat(layout.counts().orThrow().total()).isEqualTo(before - 2 * 2);
        assertThat(layout.rows().get(3).row().count(PieceKind.CUT)).isEqualTo(2);
        assertThat(layout.rows().get(4).row().count(PieceKind.CUT)).isEqualTo(2);
        assertThat(layout.rows().get(2).row().count(PieceKind.CUT)).isEqualTo(4);
        assertThat(layout.rows().get(5).row().count(PieceKind.CUT)).isZero();
        assertThat(layout.problems()).isEmpty();
        assertThat(layout.cuts().get(4))
                .hasToString("4 course, opening \"window\": cut unit 175 mm at the tail, 175 mm at the head");
        // two battens lie between its edges
        assertThat(layout.battens().orThrow().together())
                .isEqualTo(whole.battens().orThrow().together().minus(mm(2 * 850)));
    }

    @Test
    void slivers_beside_an_opening_are_said_with_the_nearest_places() {
        FaceLayout layout = FaceLayout.on(FACE, TILES.withOpenings(List.of(opening(1200 + 140, 1000, 850, 900))));

        // course 5 alone lies beside the opening from tail (1268) to head (1688); others keep their full width at one
        // end
        assertThat(layout.problems()).extracting(Problem::toString).containsExactly("""
                        beside the opening "window" 1 piece is under the smallest cut of 150 mm; the narrowest is 140 mm wide
                          mend: opening: 10 mm to the right; no cut beside it under 150 mm
                          mend: opening: 240 mm to the left; no cut beside it under 150 mm
                          mend: cut: bonded or fixed to its neighbour; held although narrow""");
    }

    @Test
    void slates_beside_an_opening_are_cut_from_wide_ones() {
        FaceLayout layout = FaceLayout.on(
                FlatShape.of(Ends.both(mm(3459)), mm(6100)),
                Samples.TOLLBAR.withOpenings(List.of(opening(2100, 1500, 600, 720))));

        assertThat(layout.cuts())
                .allMatch(cut -> cut.widest().isZero() || cut.widest().meetsLeast(mm(125)));
        assertThat(layout.counts().orThrow().count(PieceKind.CUT_UNIT_AND_A_HALF))
                .isEqualTo(2);
    }

    @Test
    void an_opening_off_the_face_is_a_finding() {
        FaceLayout layout = FaceLayout.on(FACE, TILES.withOpenings(List.of(opening(8500, 1000, 850, 900))));

        assertThat(layout.problems().get(0)).hasToString("""
                        the opening "window" does not lie wholly on the face: from 8500 mm along, 1000 mm up to 9350 mm along, 1900 mm up
                          mend: opening: set out on each of the faces that it crosses; one opening on each face""");
    }

    @Test
    void an_opening_across_a_hip_is_a_finding() {
        FaceLayout layout = FaceLayout.on(
                RakingEndsSpecTest.hipped(8000, 4000, false, true),
                RakingEndsSpecTest.scheme(Samples.TILE, FaceEnd.verge(mm(0)), FaceEnd.hip())
                        .withOpenings(List.of(opening(6000, 2000, 850, 900))));

        assertThat(layout.problems()).anyMatch(problem -> problem.code().equals(FaceLayout.OPENING_OUTSIDE));
    }

    @Test
    void openings_that_overlap_are_a_finding() {
        Opening stack = Opening.builder()
                .name("stack")
                .along(mm(1900))
                .up(mm(1500))
                .width(mm(600))
                .height(mm(600))
                .build();
        FaceLayout layout = FaceLayout.on(FACE, TILES.withOpenings(List.of(opening(1375, 1000, 850, 900), stack)));

        assertThat(layout.problems())
                .extracting(Problem::message)
                .contains("the openings \"window\" and \"stack\" overlap");
    }

    @Test
    void sizes_and_names_of_openings_are_refused_together() {
        assertThatThrownBy(() -> Opening.builder()
                        .name(" ")
                        .along(mm(0))
                        .up(mm(0))
                        .width(mm(0))
                        .height(mm(-1))
                        .build())
                .hasMessage("name must say what the opening is for, but was \" \"\n"
                        + "width must be above 0 mm, but was 0 mm\n"
                        + "height must be above 0 mm, but was -1 mm");
        assertThatThrownBy(() -> TILES.withOpenings(List.of(opening(0, 0, 100, 100), opening(500, 0, 100, 100))))
                .hasMessage("opening name must occur once, but was window");
    }
}
