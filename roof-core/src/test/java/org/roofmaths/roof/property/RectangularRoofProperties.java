package org.roofmaths.roof.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.roof.Roof;
import org.roofmaths.roof.RoofEdge;
import org.roofmaths.roof.RoofEnd;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.roof.Roofs;
import org.roofmaths.roof.Slope;
import org.roofmaths.roof.SpacePoint;
import org.roofmaths.units.Length;
import org.roofmaths.units.Offset;
import org.roofmaths.units.Pitch;

class RectangularRoofProperties {
    private static Roof leanTo(
            Length wall, Length projection, double pitch, Length eaves, RoofEnd left, RoofEnd right) {
        return Roofs.leanTo()
                .wallLength(wall)
                .projection(projection)
                .slope(Slope.of(Pitch.ofDegrees(pitch)))
                .eavesOverhang(Offset.level(eaves))
                .left(left)
                .right(right)
                .build();
    }

    private static Roof duoPitch(Length length, Length span, double pitch, Length eaves, RoofEnd left, RoofEnd right) {
        return Roofs.duoPitch()
                .length(length)
                .span(span)
                .slope(Slope.of(Pitch.ofDegrees(pitch)))
                .eavesOverhang(Offset.level(eaves))
                .left(left)
                .right(right)
                .build();
    }

    @Provide
    Arbitrary<Length> sizes() {
        return Arbitraries.longs().between(1_000_000_000L, 60_000_000_000L).map(Length::ofNanometres);
    }

    @Provide
    Arbitrary<Length> overhangs() {
        return Arbitraries.longs().between(0, 400_000_000L).map(Length::ofNanometres);
    }

    @Provide
    Arbitrary<RoofEnd> ends() {
        return Arbitraries.oneOf(
                Arbitraries.of(RoofEnd.abutment()), overhangs().map(overhang -> RoofEnd.verge(Offset.level(overhang))));
    }

    @Property
    void area_along_the_slope_is_area_on_plan_over_the_cosine(
            @ForAll("sizes") Length wall,
            @ForAll("sizes") Length projection,
            @ForAll("overhangs") Length eaves,
            @ForAll("ends") RoofEnd left,
            @ForAll("ends") RoofEnd right,
            @ForAll @DoubleRange(min = 5, max = 80) double pitch) {
        for (Roof roof : new Roof[] {
            leanTo(wall, projection, pitch, eaves, left, right), duoPitch(wall, projection, pitch, eaves, left, right)
        }) {
            double expected = roof.areaOnPlan().toSquareMetres() / Math.cos(Math.toRadians(pitch));
            // the slope length is stored to the nanometre: 1e-9 of a metre
            assertThat(roof.areaAlongSlope().toSquareMetres()).isCloseTo(expected, within(expected * 2e-9));
            assertThat(roof.working().disagreements()).isEmpty();
        }
    }

    @Property
    void a_mirrored_roof_has_the_same_totals(
            @ForAll("sizes") Length wall,
            @ForAll("sizes") Length projection,
            @ForAll("overhangs") Length eaves,
            @ForAll("ends") RoofEnd left,
            @ForAll("ends") RoofEnd right,
            @ForAll @DoubleRange(min = 5, max = 80) double pitch) {
        Roof one = duoPitch(wall, projection, pitch, eaves, left, right);
        Roof other = duoPitch(wall, projection, pitch, eaves, right, left);

        // the solver keeps its corners from the least x: mirrored, the last nanometre of a length may fall otherwise
        double area = one.areaAlongSlope().toSquareMetres();
        assertThat(other.areaAlongSlope().toSquareMetres()).isCloseTo(area, within(area * 4e-9));
        assertThat(other.areaOnPlan().toSquareMetres())
                .isCloseTo(one.areaOnPlan().toSquareMetres(), within(area * 4e-9));
        for (EdgeKind kind : EdgeKind.values()) {
            assertThat(other.edges(kind)).hasSameSizeAs(one.edges(kind));
            Length apart = other.lengthOf(kind).minus(one.lengthOf(kind)).abs();
            assertThat(apart)
                    .isLessThanOrEqualTo(
                            Length.ofNanometres(2L * one.edges(kind).size()));
        }
    }

    @Property
    void scaling_by_k_scales_lengths_by_k_and_areas_by_k_squared(
            @ForAll("sizes") Length wall,
            @ForAll("sizes") Length projection,
            @ForAll("overhangs") Length eaves,
            @ForAll @DoubleRange(min = 5, max = 55) double pitch,
            @ForAll @IntRange(min = 2, max = 10) int k) {
        Roof small = leanTo(wall, projection, pitch, eaves, RoofEnd.abutment(), RoofEnd.verge());
        Roof large =
                leanTo(wall.times(k), projection.times(k), pitch, eaves.times(k), RoofEnd.abutment(), RoofEnd.verge());

        for (int i = 0; i < small.edges().size(); i++) {
            // half a nanometre of storage, times k
            Length apart = large.edges()
                    .get(i)
                    .trueLength()
                    .minus(small.edges().get(i).trueLength().times(k));
            assertThat(apart.abs()).isLessThanOrEqualTo(Length.ofNanometres(k));
        }
        double expected = small.areaAlongSlope().toSquareMetres() * k * k;
        assertThat(large.areaAlongSlope().toSquareMetres()).isCloseTo(expected, within(expected * 2e-9));
    }

    @Property
    void a_steeper_pitch_never_lowers_the_area(
            @ForAll("sizes") Length wall,
            @ForAll("sizes") Length projection,
            @ForAll("overhangs") Length eaves,
            @ForAll @DoubleRange(min = 5, max = 80) double flatter,
            @ForAll @DoubleRange(min = 0, max = 5) double more) {
        Roof one = leanTo(wall, projection, flatter, eaves, RoofEnd.verge(), RoofEnd.verge());
        Roof other = leanTo(wall, projection, flatter + more, eaves, RoofEnd.verge(), RoofEnd.verge());

        assertThat(other.areaAlongSlope()).isGreaterThanOrEqualTo(one.areaAlongSlope());
        assertThat(other.areaOnPlan()).isEqualTo(one.areaOnPlan());
    }

    @Property
    void corners_lie_in_the_plane_of_their_face_and_edges_join_them(
            @ForAll("sizes") Length wall,
            @ForAll("sizes") Length span,
            @ForAll("overhangs") Length eaves,
            @ForAll @DoubleRange(min = 5, max = 80) double pitch) {
        Roof roof = duoPitch(wall, span, pitch, eaves, RoofEnd.verge(), RoofEnd.abutment());
        for (RoofFace face : roof.faces()) {
            SpacePoint foot = face.polygon().get(0);
            for (SpacePoint corner : face.polygon()) {
                double in = Math.abs(corner.y().minus(foot.y()).toMetres());
                double height = foot.height().toMetres() + in * Math.tan(Math.toRadians(pitch));
                // each coordinate is stored to the nanometre; at 80° that is 6 nm of height
                assertThat(corner.height().toMetres()).isCloseTo(height, within(1e-8));
            }
            for (RoofEdge edge : face.edges()) {
                assertThat(face.polygon()).contains(edge.from(), edge.to());
            }
        }
    }

    @Property
    void the_flat_shape_keeps_area_and_lengths(
            @ForAll("sizes") Length wall,
            @ForAll("sizes") Length projection,
            @ForAll("overhangs") Length eaves,
            @ForAll @DoubleRange(min = 5, max = 80) double pitch) {
        RoofFace face = leanTo(wall, projection, pitch, eaves, RoofEnd.verge(), RoofEnd.verge())
                .face("main");
        FlatShape flat = face.flatShape();

        double area = face.areaAlongSlope().toSquareMetres();
        assertThat(flat.area().toSquareMetres()).isCloseTo(area, within(area * 4e-9));
        assertThat(flat.slopeLengths().left().minus(face.slopeLength()).abs())
                .isLessThanOrEqualTo(Length.ofNanometres(1));
        assertThat(flat.eavesWidth()).isEqualTo(face.eavesWidth());
    }
}
