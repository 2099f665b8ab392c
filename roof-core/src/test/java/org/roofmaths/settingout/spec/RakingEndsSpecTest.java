package org.roofmaths.settingout.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.onSlope;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.roof.End;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.FacePoint;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.settingout.Arrangement;
import org.roofmaths.settingout.Columns;
import org.roofmaths.settingout.CourseRow;
import org.roofmaths.settingout.FaceEnd;
import org.roofmaths.settingout.FaceLayout;
import org.roofmaths.settingout.LayoutScheme;
import org.roofmaths.settingout.PieceKind;
import org.roofmaths.settingout.Samples;
import org.roofmaths.settingout.UnitCut;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Figure;

class RakingEndsSpecTest {
    private static final double COS_40 = Math.cos(Math.toRadians(40));

    static LayoutScheme scheme(CoveringUnit unit, FaceEnd left, FaceEnd right) {
        boolean slate = unit == Samples.SLATE;
        return LayoutScheme.builder()
                .unit(unit)
                .headlap(Figure.given(mm(slate ? 90 : 75)))
                .overhangIntoGutter(onSlope(mm(50)))
                .topDistance(mm(slate ? 60 : 30))
                .left(left)
                .right(right)
                .battens(Samples.BATTENS_50)
                .build();
    }

    /** A face with square equal hips at 40 degrees: its edges come in by the run of each length up the slope. */
    static FlatShape hipped(double eaves, double slope, boolean left, boolean right) {
        double in = slope * COS_40;
        return FlatShape.ofCorners(List.of(
                        FacePoint.of(mm(0), mm(0)),
                        FacePoint.of(mm(eaves), mm(0)),
                        FacePoint.of(mm(right ? eaves - in : eaves), mm(slope)),
                        FacePoint.of(mm(left ? in : 0), mm(slope))))
                .withPitch(Pitch.ofDegrees(40));
    }

    @Test
    void a_course_shrinks_by_its_gauge_times_the_cosine_at_a_square_equal_hip() {
        // distance to divide 3575 / 325 = 11 gauges
        FaceLayout layout = FaceLayout.on(
                hipped(8000, 395 - 50 + 3575 + 30, false, true),
                scheme(Samples.TILE, FaceEnd.verge(mm(0)), FaceEnd.hip()));
        List<UnitCut> cuts = layout.cuts();

        assertThat(layout.courses().orThrow().gauge()).isEqualTo(Ends.both(mm(325)));
        assertThat(layout.columns().orThrow().arrangement()).isEqualTo(Arrangement.RAKED);
        // where the hip crosses the tails of a course: eaves less (tail times cos 40), tails from -50 up
        for (UnitCut cut : cuts) {
            double tail = -50 + 325 * (cut.line().number() - 1);
            double hip = 8000 - tail * COS_40;
            double width = Math.max(0, Math.min(300, hip - cut.piece().from().toMillimetres()));
            // edges below the fascia line are carried on from two stored points 100 mm apart
            assertThat(cut.widthAtTail().toMillimetres()).isCloseTo(width, within(1e-4));
            double headWidth =
                    Math.max(0, hip - 420 * COS_40 - cut.piece().from().toMillimetres());
            if (tail + 420 < 3950) {
                assertThat(cut.widthAtHead().toMillimetres()).isCloseTo(headWidth, within(1e-4));
            }
        }
        assertThat(325 * COS_40).isCloseTo(249.0, within(0.05)); // one printed digit
    }

    @Test
    void every_cut_along_a_straight_hip_has_one_angle() {
        FaceLayout layout = FaceLayout.on(
                hipped(8000, 4000, false, true), scheme(Samples.TILE, FaceEnd.verge(mm(0)), FaceEnd.hip()));

        double angle = Math.toDegrees(Math.atan2(1, COS_40));
        List<UnitCut> cuts = layout.cuts();
        assertThat(cuts).allMatch(cut -> cut.gone() == End.RIGHT && cut.where().equals("right hip"));
        // the head of the last course passes the top of the face, where the edge ends
        assertThat(cuts)
                .filteredOn(cut -> cut.line().number() < 12)
                .allSatisfy(cut -> assertThat(cut.angle().toDegrees()).isCloseTo(angle, within(1e-4))); // nm storage
    }

    @Test
    void a_square_end_keeps_its_whole_units() {
        FaceLayout layout = FaceLayout.on(
                hipped(8000, 4000, false, true), scheme(Samples.TILE, FaceEnd.verge(mm(0)), FaceEnd.hip()));

        assertThat(layout.rows()).allSatisfy(row -> {
            assertThat(row.row().pieces().get(0).kind()).isEqualTo(PieceKind.WHOLE);
            assertThat(row.row().pieces().get(0).from()).isEqualTo(mm(0));
        });
        assertThat(layout.columns().orThrow().toString()).endsWith("left overhang 0 mm, right hip");
        assertThat(layout.columns().orThrow().working().at(Columns.COVER_GOT).value())
                .isEqualTo(mm(300));
    }

    @Test
    void a_mirrored_face_is_cut_in_mirror_image() {
        FaceLayout right = FaceLayout.on(
                hipped(8000, 4000, false, true), scheme(Samples.SLATE, FaceEnd.verge(mm(50)), FaceEnd.hip()));
        FaceLayout left = FaceLayout.on(
                hipped(8000, 4000, true, false), scheme(Samples.SLATE, FaceEnd.hip(), FaceEnd.verge(mm(50))));

        assertThat(left.counts().orThrow()).isEqualTo(right.counts().orThrow());
        for (int i = 0; i < right.rows().size(); i++) {
            List<PieceKind> there = left.rows().get(i).row().pieces().stream()
                    .map(piece -> piece.kind())
                    .toList();
            List<PieceKind> here = right.rows().get(i).row().pieces().stream()
                    .map(piece -> piece.kind())
                    .toList();
            List<PieceKind> mirrored = new ArrayList<>(here);
            Collections.reverse(mirrored);
            assertThat(there).isEqualTo(mirrored);
        }
    }

    @Test
    void a_hip_end_of_slates_has_no_sliver() {
        FlatShape end = FlatShape.ofCorners(List.of(
                FacePoint.of(mm(0), mm(0)), FacePoint.of(mm(5000), mm(0)), FacePoint.of(mm(2500), mm(2500 / COS_40))));
        FaceLayout layout = FaceLayout.on(end, scheme(Samples.SLATE, FaceEnd.hip(), FaceEnd.hip()));

        assertThat(layout.columns().problems()).isEmpty();
        assertThat(layout.cuts()).allMatch(cut -> cut.widest().meetsLeast(mm(125)));
        assertThat(layout.counts().orThrow().count(PieceKind.CUT_UNIT_AND_A_HALF))
                .isPositive();
        assertThat(layout.columns().orThrow().considered()).hasSize(4);
    }

    @Test
    void slivers_of_tiles_at_a_hip_are_counted_and_said() {
        FaceLayout layout =
                FaceLayout.on(hipped(8000, 4000, true, true), scheme(Samples.TILE, FaceEnd.hip(), FaceEnd.hip()));
        List<UnitCut> narrow = layout.cuts().stream()
                .filter(cut -> cut.widest().isShorterThan(mm(150)))
                .toList();
        UnitCut narrowest =
                narrow.stream().min(Comparator.comparing(UnitCut::widest)).orElseThrow();

        assertThat(layout.columns().problems())
                .singleElement()
                .hasToString(narrow.size() + " cuts are under the smallest cut of 150 mm; the narrowest is "
                        + narrowest.widest() + " wide, in line "
                        + narrowest.line().number() + " at the "
                        + narrowest.where()
                        + "\n  mend: cut: made one with its neighbour; a wider piece, where a wide unit can be had"
                        + "\n  mend: cut: bonded or fixed to its neighbour; held although narrow");
    }

    @Test
    void a_valley_is_held_back_square_to_its_line() {
        // a face that widens upwards by its run: the valley runs at atan(1 / cos 40) from the courses
        FlatShape shape = FlatShape.ofCorners(List.of(
                FacePoint.of(mm(0), mm(0)),
                FacePoint.of(mm(4000), mm(0)),
                FacePoint.of(mm(4000 + 4000 * COS_40), mm(4000)),
                FacePoint.of(mm(0), mm(4000))));
        FaceLayout layout = FaceLayout.on(shape, scheme(Samples.TILE, FaceEnd.verge(mm(0)), FaceEnd.valley(mm(62.5))));
        UnitCut cut = layout.cuts().stream()
                .filter(each -> each.line().number() == 5)
                .reduce((a, b) -> b)
                .orElseThrow();

        double back = 62.5 * Math.sqrt(1 + COS_40 * COS_40);
        double tail = layout.courses().orThrow().lines().get(4).exact().left().toMillimetres() - 395;
        double edgeAtHead = 4000 + (tail + 420) * COS_40 - back;
        assertThat(cut.where()).isEqualTo("right valley");
        assertThat(cut.widthAtHead().toMillimetres())
                .isCloseTo(Math.min(300, edgeAtHead - cut.piece().from().toMillimetres()), within(1e-4)); // nm storage
        assertThat(FaceEnd.valley(mm(62.5))).hasToString("valley, held back 62.5 mm");
        assertThatThrownBy(() -> FaceEnd.valley(mm(-1))).hasMessage("heldBack must be 0 mm or more, but was -1 mm");
    }

    @Test
    void a_verge_far_out_of_square_is_cut_course_by_course() {
        FlatShape shape = FlatShape.of(Ends.of(mm(4000), mm(4000)), mm(6000), mm(5400));
        FaceLayout layout =
                FaceLayout.on(shape, scheme(Samples.TILE_WITHOUT_HALF, FaceEnd.verge(mm(0)), FaceEnd.verge(mm(0))));

        assertThat(layout.columns().orThrow().arrangement()).isEqualTo(Arrangement.RAKED);
        assertThat(layout.cuts()).allMatch(cut -> cut.where().equals("right verge"));
    }

    @Test
    void without_courses_a_raking_face_has_no_columns() {
        FaceLayout layout =
                FaceLayout.on(hipped(8000, 300, true, true), scheme(Samples.TILE, FaceEnd.hip(), FaceEnd.hip()));

        assertThat(layout.rows()).isEmpty();
        assertThat(layout.columns().problems())
                .singleElement()
                .hasToString("columns that are cut course by course cannot be laid out before the courses fit\n"
                        + "  mend: courses: mended first; columns after them");
    }

    @Test
    void battens_are_as_long_as_the_face_is_wide_at_their_line() {
        FaceLayout layout =
                FaceLayout.on(hipped(8000, 4000, true, true), scheme(Samples.TILE, FaceEnd.hip(), FaceEnd.hip()));

        for (CourseRow row : layout.rows()) {
            double line = row.line().exact().left().toMillimetres();
            assertThat(layout.battens()
                            .orThrow()
                            .runs()
                            .get(row.line().number() - 1)
                            .toMillimetres())
                    .isCloseTo(8000 - 2 * line * COS_40, within(1e-4)); // nm storage of corners
        }
        assertThat(layout.battens().orThrow().working().disagreements()).isEmpty();
    }
}
