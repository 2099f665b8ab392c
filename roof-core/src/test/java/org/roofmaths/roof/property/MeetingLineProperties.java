package org.roofmaths.roof.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.roofmaths.roof.MeetingLine;
import org.roofmaths.roof.MeetingLine.Side;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;

/**
 * Holds the closed forms against vectors: two planes through one corner, their normals, and the direction both share.
 * With pitches from 3° to 85° and corners from 5° to 175° no step loses more than a few thousand roundings.
 */
class MeetingLineProperties {
    private static final double ROUNDING = 1e-9;

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double angle(double[] a, double[] b) {
        double[] c = cross(a, b);
        return Math.toDegrees(Math.atan2(Math.sqrt(dot(c, c)), dot(a, b)));
    }

    /** The outward normal of a plane that rises from an eaves along a direction, the roof to its left. */
    private static double[] normal(double eavesX, double eavesY, double pitch) {
        return new double[] {eavesY * Math.sin(pitch), -eavesX * Math.sin(pitch), Math.cos(pitch)};
    }

    @Property
    void a_hip_is_where_two_planes_over_one_corner_meet(
            @ForAll @DoubleRange(min = 3, max = 85) double first,
            @ForAll @DoubleRange(min = 3, max = 85) double second,
            @ForAll @DoubleRange(min = 5, max = 175) double corner) {
        MeetingLine hip = MeetingLine.of(Pitch.ofDegrees(first), Pitch.ofDegrees(second), Angle.ofDegrees(corner));
        double w = Math.toRadians(corner);
        // the first eaves leaves the corner along x, the second arrives from the direction at the corner's angle
        double[] n1 = normal(1, 0, Math.toRadians(first));
        double[] n2 = normal(-Math.cos(w), -Math.sin(w), Math.toRadians(second));
        double[] line = cross(n1, n2);
        if (line[2] < 0) {
            line = new double[] {-line[0], -line[1], -line[2]};
        }

        double onPlan = Math.hypot(line[0], line[1]);
        assertThat(hip.planAngle(Side.FIRST).toDegrees())
                .isCloseTo(Math.toDegrees(Math.atan2(line[1], line[0])), within(ROUNDING));
        assertThat(hip.planAngle(Side.FIRST).plus(hip.planAngle(Side.SECOND)).toDegrees())
                .isCloseTo(corner, within(ROUNDING));
        assertThat(hip.pitch().toDegrees()).isCloseTo(Math.toDegrees(Math.atan2(line[2], onPlan)), within(ROUNDING));
        assertThat(hip.angleInside().toDegrees()).isCloseTo(180 - angle(n1, n2), within(ROUNDING));
        assertThat(hip.working().disagreements()).isEmpty();
    }

    @Property
    void the_backing_is_the_angle_to_a_plane_through_the_line_that_is_level_across_it(
            @ForAll @DoubleRange(min = 3, max = 85) double first,
            @ForAll @DoubleRange(min = 3, max = 85) double second,
            @ForAll @DoubleRange(min = 5, max = 175) double corner) {
        MeetingLine hip = MeetingLine.of(Pitch.ofDegrees(first), Pitch.ofDegrees(second), Angle.ofDegrees(corner));
        double d = hip.planAngle(Side.FIRST).toRadians();
        double p = hip.pitch().toRadians();
        double[] levelAcross = {-Math.cos(d) * Math.sin(p), -Math.sin(d) * Math.sin(p), Math.cos(p)};

        assertThat(hip.backing(Side.FIRST).abs().toDegrees())
                .isCloseTo(angle(normal(1, 0, Math.toRadians(first)), levelAcross), within(ROUNDING));
    }

    @Property
    void the_covering_s_line_is_where_the_lifted_planes_meet(
            @ForAll @DoubleRange(min = 10, max = 70) double first,
            @ForAll @DoubleRange(min = 10, max = 70) double second,
            @ForAll @DoubleRange(min = 20, max = 160) double corner) {
        MeetingLine hip = MeetingLine.of(Pitch.ofDegrees(first), Pitch.ofDegrees(second), Angle.ofDegrees(corner));
        double t1 = Math.toRadians(first);
        double t2 = Math.toRadians(second);
        double w = Math.toRadians(corner);
        double shift = hip.shiftOfCovering(Length.ofMetres(0.1)).value().toMetres();

        // a point of the shifted line, moved square to it towards the second slope
        double d = hip.planAngle(Side.FIRST).toRadians();
        double x = 5 * Math.cos(d) - shift * Math.sin(d);
        double y = 5 * Math.sin(d) + shift * Math.cos(d);
        double heightOnFirst = y * Math.tan(t1) + 0.1 / Math.cos(t1);
        double heightOnSecond = (x * Math.sin(w) - y * Math.cos(w)) * Math.tan(t2) + 0.1 / Math.cos(t2);
        // the shift is stored to the nanometre; a slope of 70° turns that into 3 nm of height
        assertThat(heightOnFirst).isCloseTo(heightOnSecond, within(1e-8));
    }
}
