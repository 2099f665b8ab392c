package org.roofmaths.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;

class FlatShapeTest {
    private static FacePoint at(double along, double up) {
        return FacePoint.of(mm(along), mm(up));
    }

    /** An L: 6 m wide at the eaves and 2 m high, its left 2 m going on to 5 m. */
    private static FlatShape ell() {
        return FlatShape.ofCorners(
                List.of(at(0, 0), at(6000, 0), at(6000, 2000), at(2000, 2000), at(2000, 5000), at(0, 5000)));
    }

    @Test
    void a_rectangle_is_the_same_all_over() {
        FlatShape face = FlatShape.rectangle(mm(5200), mm(3700));

        assertThat(face.slopeLengths()).isEqualTo(Ends.both(mm(3700)));
        assertThat(face.eavesWidth()).isEqualTo(face.topWidth()).isEqualTo(mm(5200));
        assertThat(face.slopeLengthAt(mm(0))).isEqualTo(mm(3700));
        assertThat(face.slopeLengthAt(mm(2600))).isEqualTo(mm(3700));
        assertThat(face.slopeLengthAt(mm(5200))).isEqualTo(mm(3700));
        assertThat(face.slopeLengthAt(mm(5201))).isEqualTo(Length.ZERO);
        assertThat(face.slopeLengthAt(mm(-1))).isEqualTo(Length.ZERO);
        assertThat(face.widthAt(mm(0))).isEqualTo(mm(5200));
        assertThat(face.widthAt(mm(3700))).isEqualTo(mm(5200));
        assertThat(face.widthAt(mm(3701))).isEqualTo(Length.ZERO);
        assertThat(face.edgesAt(mm(1000))).isEqualTo(Ends.of(mm(0), mm(5200)));
        assertThat(face.area()).isEqualTo(metres(5.2).times(metres(3.7)));
        assertThat(face.pitch()).isEmpty();
        assertThat(face)
                .hasToString("face 5200 mm wide at the eaves, 5200 mm at the top, slope length 3700 mm at both ends");
    }

    @Test
    void two_ends_that_differ_are_both_kept() {
        FlatShape face = FlatShape.of(Ends.of(mm(3459), mm(3441)), mm(6100));

        assertThat(face.slopeLengths()).isEqualTo(Ends.of(mm(3459), mm(3441)));
        // 18 mm in 6100, straight from end to end
        assertThat(face.slopeLengthAt(mm(3050))).isEqualTo(mm(3450));
        assertThat(face.slopeLengthAt(mm(6100))).isEqualTo(mm(3441));
        assertThat(face.area().toSquareMetres()).isCloseTo(6.1 * 3.45, within(1e-12));
        assertThat(face)
                .hasToString(
                        "face 6100 mm wide at the eaves, 6100 mm at the top, slope length 3459 mm left, 3441 mm right");
    }

    @Test
    void the_right_end_takes_the_taper() {
        FlatShape face = FlatShape.of(Ends.both(mm(4000)), mm(6000), mm(5900));

        assertThat(face.corners()).containsExactly(at(0, 0), at(6000, 0), at(5900, 4000), at(0, 4000));
        assertThat(face.widthAt(mm(2000))).isEqualTo(mm(5950));
        assertThat(face.edgesAt(mm(4000))).isEqualTo(Ends.of(mm(0), mm(5900)));
        assertThat(face.topWidth()).isEqualTo(mm(5900));
        assertThat(face.slopeLengthAt(mm(5950))).isEqualTo(mm(2000));
    }

    @Test
    void a_hip_end_runs_to_a_point() {
        FlatShape end = FlatShape.ofCorners(List.of(at(0, 0), at(6000, 0), at(3000, 4000)));

        assertThat(end.slopeLengths()).isEqualTo(Ends.both(mm(4000)));
        assertThat(end.topWidth()).isEqualTo(Length.ZERO);
        assertThat(end.slopeLengthAt(mm(1500))).isEqualTo(mm(2000));
        assertThat(end.widthAt(mm(1000))).isEqualTo(mm(4500));
        assertThat(end.widthAt(mm(4000))).isEqualTo(Length.ZERO);
        assertThat(end.area().toSquareMetres()).isEqualTo(12);
    }

    @Test
    void a_face_with_an_inward_corner_is_cut_where_it_is() {
        FlatShape face = ell();

        assertThat(face.slopeLengths()).isEqualTo(Ends.both(mm(5000)));
        assertThat(face.topWidth()).isEqualTo(mm(2000));
        assertThat(face.slopeLengthAt(mm(1000))).isEqualTo(mm(5000));
        assertThat(face.slopeLengthAt(mm(2000))).isEqualTo(mm(5000));
        assertThat(face.slopeLengthAt(mm(2001))).isEqualTo(mm(2000));
        assertThat(face.widthAt(mm(2000))).isEqualTo(mm(6000));
        assertThat(face.widthAt(mm(2001))).isEqualTo(mm(2000));
        assertThat(face.area().toSquareMetres()).isCloseTo(6 * 2 + 2 * 3, within(1e-12));
    }

    @Test
    void a_gap_in_the_middle_is_not_counted() {
        // a U: two towers of 1 m at the ends, 2 m apart
        FlatShape face = FlatShape.ofCorners(List.of(
                at(0, 0),
                at(4000, 0),
                at(4000, 3000),
                at(3000, 3000),
                at(3000, 1000),
                at(1000, 1000),
                at(1000, 3000),
                at(0, 3000)));

        assertThat(face.widthAt(mm(2000))).isEqualTo(mm(2000));
        assertThat(face.edgesAt(mm(2000))).isEqualTo(Ends.of(mm(0), mm(4000)));
    }

    @Test
    void a_pitch_can_be_added() {
        FlatShape face = FlatShape.rectangle(mm(5200), mm(3700)).withPitch(Pitch.ofDegrees(30));

        assertThat(face.pitch()).contains(Pitch.ofDegrees(30));
        assertThat(face).isNotEqualTo(FlatShape.rectangle(mm(5200), mm(3700)));
        assertThat(face).isEqualTo(FlatShape.rectangle(mm(5200), mm(3700)).withPitch(Pitch.ofDegrees(30)));
        assertThat(face)
                .hasSameHashCodeAs(FlatShape.rectangle(mm(5200), mm(3700)).withPitch(Pitch.ofDegrees(30)));
    }

    @Test
    void refuses_sizes_that_are_none_all_at_once() {
        assertThatThrownBy(() -> FlatShape.of(Ends.of(mm(0), mm(-1)), mm(1e9), mm(2e9)))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("slope length at the left must be above 0 mm and at most 1000000 mm, but was 0 mm\n"
                        + "slope length at the right must be above 0 mm and at most 1000000 mm, but was -1 mm\n"
                        + "width at the eaves must be above 0 mm and at most 1000000 mm, but was 1000000000 mm\n"
                        + "width at the top must be above 0 mm and at most 1000000 mm, but was 2000000000 mm");
    }

    @Test
    void refuses_corners_that_make_no_face() {
        assertThatThrownBy(() -> FlatShape.ofCorners(List.of(at(0, 0), at(1, 0))))
                .hasMessage("a face must have at least 3 corners, but was 2 corners");
        assertThatThrownBy(() -> FlatShape.ofCorners(List.of(at(0, 0), at(1000, 10), at(0, -5))))
                .hasMessage("corner 2 must lie on the eaves, 0 mm up, but was 1000 mm along, 10 mm up\n"
                        + "corner 3 must not lie below the eaves, but was 0 mm along, -5 mm up");
        assertThatThrownBy(() -> FlatShape.ofCorners(List.of(at(1000, 0), at(0, 0), at(0, 5))))
                .hasMessage("corner 2 must lie to the right of corner 1, at 1000 mm along, 0 mm up,"
                        + " but was 0 mm along, 0 mm up");
        assertThatThrownBy(() -> FlatShape.ofCorners(List.of(at(0, 0), at(2000, 0), at(0, 1000), at(2000, 1000))))
                .hasMessage("side 4 must keep clear of side 2,"
                        + " but was from 2000 mm along, 1000 mm up to 0 mm along, 0 mm up");
        assertThatThrownBy(() ->
                        FlatShape.ofCorners(List.of(at(0, 0), at(2000, 0), at(2000, 1000), at(2000, 500), at(0, 500))))
                .hasMessage("corner 3 must not turn straight back along the side before it,"
                        + " but was 2000 mm along, 1000 mm up");
        assertThatThrownBy(() -> FlatShape.ofCorners(List.of(at(0, 0), at(2000, 0), at(2000, 1000), at(2000, 1000))))
                .hasMessage("corner 4 must differ from the corner before it, but was 2000 mm along, 1000 mm up");
        assertThatThrownBy(() -> FlatShape.ofCorners(List.of(at(0, 0), at(2e9, 0), at(2000, 1000))))
                .hasMessage("corner 2 must lie within 1000000 mm, but was 2000000000 mm along, 0 mm up");
    }

    @Test
    void refuses_a_level_off_the_face() {
        assertThatThrownBy(() -> ell().edgesAt(mm(5001)))
                .hasMessage("up must be from 0 mm to 5000 mm, but was 5001 mm");
    }
}
