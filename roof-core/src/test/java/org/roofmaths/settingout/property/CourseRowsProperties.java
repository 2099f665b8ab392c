package org.roofmaths.settingout.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.onSlope;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.roof.FacePoint;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.settingout.CourseKind;
import org.roofmaths.settingout.CourseRow;
import org.roofmaths.settingout.Courses;
import org.roofmaths.settingout.FaceEnd;
import org.roofmaths.settingout.FaceLayout;
import org.roofmaths.settingout.LayoutScheme;
import org.roofmaths.settingout.Opening;
import org.roofmaths.settingout.Piece;
import org.roofmaths.settingout.PieceKind;
import org.roofmaths.settingout.Samples;
import org.roofmaths.settingout.UnitCut;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;

class CourseRowsProperties {
    private static LayoutScheme scheme(CoveringUnit unit) {
        boolean slate = unit == Samples.SLATE;
        return LayoutScheme.builder()
                .unit(unit)
                .headlap(Figure.given(mm(slate ? 90 : 75)))
                .overhangIntoGutter(onSlope(mm(50)))
                .topDistance(mm(slate ? 60 : 30))
                .left(FaceEnd.hip())
                .right(FaceEnd.hip())
                .battens(Samples.BATTENS_50)
                .build();
    }

    /** A trapezium: the ends come in by so much for each millimetre up the slope. */
    private static FlatShape trapezium(double eaves, double slope, double left, double right) {
        return FlatShape.ofCorners(List.of(
                FacePoint.of(mm(0), mm(0)),
                FacePoint.of(mm(eaves), mm(0)),
                FacePoint.of(mm(eaves - right * slope), mm(slope)),
                FacePoint.of(mm(left * slope), mm(slope))));
    }

    @Property(tries = 300)
    void what_is_seen_of_every_course_is_covered_from_edge_to_edge(
            @ForAll @DoubleRange(min = 7000, max = 12_000) double eaves,
            @ForAll @DoubleRange(min = 2500, max = 3500) double slope,
            @ForAll @DoubleRange(min = -0.8, max = 0.9) double left,
            @ForAll @DoubleRange(min = -0.8, max = 0.9) double right,
            @ForAll boolean slates) {
        CoveringUnit unit = slates ? Samples.SLATE : Samples.TILE_WITHOUT_HALF;
        FaceLayout layout = FaceLayout.on(trapezium(eaves, slope, left, right), scheme(unit));
        Courses courses = layout.courses().orThrow();
        double gauge = courses.gauge().left().toMillimetres();

        for (CourseRow row : layout.rows()) {
            List<Piece> pieces = row.row().pieces();
            double tail = row.line().exact().left().toMillimetres()
                    - (slates ? courses.holingGauge().orElseThrow().left().toMillimetres() : 395);
            if (row.line().kind() != CourseKind.FULL || tail + gauge > slope) {
                continue;
            }
            for (double up : new double[] {tail, tail + gauge}) {
                // edges are carried on from stored corners; joints of 3 mm stay open between slates
                assertThat(pieces.get(0).from().toMillimetres()).isLessThanOrEqualTo(left * up + 3 + 1e-3);
                assertThat(pieces.get(pieces.size() - 1).to().toMillimetres())
                        .isGreaterThanOrEqualTo(eaves - right * up - 3 - 1e-3);
            }
            for (int i = 1; i < pieces.size(); i++) {
                double gap = pieces.get(i).from().minus(pieces.get(i - 1).to()).toMillimetres();
                // a wide piece that ends where a hip cuts it may reach over its neighbour's place
                assertThat(gap).isLessThanOrEqualTo((slates ? 3 : 0) + 1e-6);
            }
        }
    }

    @Property(tries = 200)
    void units_times_cover_and_gauge_are_never_less_than_the_area_they_cover(
            @ForAll @DoubleRange(min = 7000, max = 12_000) double eaves,
            @ForAll @DoubleRange(min = 2500, max = 3500) double slope,
            @ForAll @DoubleRange(min = -0.8, max = 0.9) double left,
            @ForAll @DoubleRange(min = -0.8, max = 0.9) double right) {
        FaceLayout layout = FaceLayout.on(trapezium(eaves, slope, left, right), scheme(Samples.TILE_WITHOUT_HALF));
        double gauge = layout.courses().orThrow().gauge().left().toMetres();
        int courses = layout.courses().orThrow().courseCount();

        // from the tails to the top of the last margin that a gauge gives
        double top = Math.min(slope / 1000, -0.05 + courses * gauge);
        double covered = (eaves / 1000 * 2 - (left + right) * (top - 0.05)) / 2 * (top + 0.05);
        double units = layout.counts().orThrow().total() * 0.300 * gauge;
        assertThat(units).isGreaterThanOrEqualTo(covered - 1e-6);
    }

    @Property(tries = 200)
    void what_is_left_of_a_cut_unit_lies_on_the_face(
            @ForAll @DoubleRange(min = 7000, max = 12_000) double eaves,
            @ForAll @DoubleRange(min = 0.05, max = 0.9) double left,
            @ForAll @DoubleRange(min = 0.05, max = 0.9) double right) {
        FaceLayout layout = FaceLayout.on(trapezium(eaves, 3000, left, right), scheme(Samples.SLATE));

        for (UnitCut cut : layout.cuts()) {
            assertThat(cut.widthAtTail().isNegative()).isFalse();
            assertThat(cut.widthAtHead().isNegative()).isFalse();
            assertThat(cut.widest().meetsGreatest(cut.piece().width())).isTrue();
            assertThat(cut.offcutAtTail().plus(cut.widthAtTail()))
                    .isEqualTo(cut.piece().width());
        }
        // a wide slate of 375 holds a whole one, a joint of 3 and 122 more: only from there to half a slate is a cut
        // too narrow, and said
        Length narrowest =
                layout.cuts().stream().map(UnitCut::widest).reduce(Length::min).orElseThrow();
        assertThat(narrowest.meetsLeast(mm(375 - 250 - 3))).isTrue();
        assertThat(layout.columns().problems().isEmpty()).isEqualTo(narrowest.meetsLeast(mm(125)));
    }

    @Property(tries = 200)
    void an_opening_never_adds_units_and_leaves_other_courses_alone(
            @ForAll @IntRange(min = 400, max = 5000) int along,
            @ForAll @IntRange(min = 100, max = 2200) int up,
            @ForAll @IntRange(min = 100, max = 1000) int width,
            @ForAll @IntRange(min = 100, max = 1100) int height) {
        FlatShape face = FlatShape.rectangle(mm(6100), mm(3459));
        Opening opening = Opening.builder()
                .name("hole")
                .along(mm(along))
                .up(mm(up))
                .width(mm(width))
                .height(mm(height))
                .build();
        FaceLayout without = FaceLayout.on(face, Samples.TOLLBAR);
        FaceLayout with = FaceLayout.on(face, Samples.TOLLBAR.withOpenings(List.of(opening)));

        assertThat(with.counts().orThrow().total())
                .isLessThanOrEqualTo(without.counts().orThrow().total());
        Length slate = mm(500);
        for (int i = 0; i < with.rows().size(); i++) {
            Length tail = without.rows().get(i).line().exact().left().minus(mm(310));
            boolean far = tail.minus(mm(10)).isLongerThan(opening.top())
                    || tail.plus(slate).plus(mm(10)).isShorterThan(opening.up());
            if (far) {
                assertThat(with.rows().get(i).row())
                        .isEqualTo(without.rows().get(i).row());
            }
            // nothing whole lies inside the opening
            CourseRow row = with.rows().get(i);
            for (Piece piece : row.row().pieces()) {
                boolean inside = piece.from().plus(mm(50)).isLongerThan(opening.along())
                        && piece.to().plus(mm(50)).isShorterThan(opening.right());
                boolean seenInside =
                        tail.isLongerThan(opening.up()) && tail.plus(mm(200)).isShorterThan(opening.top());
                assertThat(inside && seenInside && piece.kind() == PieceKind.WHOLE)
                        .isFalse();
            }
        }
    }
}
