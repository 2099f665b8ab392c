package org.roofmaths.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.squareMetres;
import static org.roofmaths.working.Figure.given;

import org.junit.jupiter.api.Test;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Ratio;

class CountCheckTest {
    private static final double PRINTED = 0.005; // the hand calculation is printed to two decimals

    /** The lean-to of the hand calculation: 11 courses of 17 tiles and a half one, gauge 334.859, cover 297.647. */
    private static final CountCheck LEAN_TO = CountCheck.of(CountToCheck.builder()
            .courses(given(11))
            .unitsInCourse(given(Ratio.of(17.5)))
            .gauge(given(mm(334.859245)))
            .cover(given(mm(297.647059)))
            .slopeLength(given(mm(19.48323472e6 / 5245)))
            .width(given(mm(5245)))
            .area(given(squareMetres(19.48323472)))
            .build());

    @Test
    void compares_a_count_with_area_over_cover() {
        assertThat(LEAN_TO.byCount()).isEqualTo(Ratio.of(192.5)); // 11 × 17.5
        assertThat(LEAN_TO.byArea().toDouble()).isCloseTo(195.48, within(PRINTED));
        assertThat(LEAN_TO.difference().toPercent()).isCloseTo(-1.52, within(PRINTED));
    }

    @Test
    void explains_the_whole_difference() {
        double parts = LEAN_TO.upTheSlope().toDouble()
                + LEAN_TO.across().toDouble()
                + LEAN_TO.byShape().toDouble();
        // rounding of doubles of about 200
        assertThat(parts)
                .isCloseTo(LEAN_TO.byCount().toDouble() - LEAN_TO.byArea().toDouble(), within(1e-10));
        assertThat(LEAN_TO)
                .hasToString(
                        "192.5 units by count, 195.48 by area (-1.52 %): -1.64 up the slope, -1.34 across, 0 by the shape of the face");
        assertThat(LEAN_TO.working().disagreements()).isEmpty();
    }

    @Test
    void a_triangle_differs_by_its_shape() {
        CountCheck triangle = CountCheck.of(CountToCheck.builder()
                .courses(given(10))
                .unitsInCourse(given(Ratio.of(10)))
                .gauge(given(mm(300)))
                .cover(given(mm(300)))
                .slopeLength(given(mm(3000)))
                .width(given(mm(3000)))
                .area(given(squareMetres(4.5)))
                .build());
        assertThat(triangle.byShape().toDouble()).isCloseTo(50, within(1e-12)); // (9 − 4.5) / 0.09
        assertThat(triangle.upTheSlope().toDouble()).isCloseTo(0, within(1e-12));
        assertThat(triangle.across().toDouble()).isCloseTo(0, within(1e-12));
    }

    @Test
    void refuses_nothing_with_every_reason_at_once() {
        assertThatThrownBy(() -> CountCheck.of(CountToCheck.builder()
                        .courses(given(0))
                        .unitsInCourse(given(Ratio.of(-1)))
                        .gauge(given(mm(0)))
                        .cover(given(mm(0)))
                        .slopeLength(given(mm(-3)))
                        .width(given(mm(0)))
                        .area(given(squareMetres(0)))
                        .build()))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("""
                        courses counted must be above 0, but was 0
                        units counted in a course must be above 0, but was -1
                        gauge counted with must be above 0 mm, but was 0 mm
                        cover counted with must be above 0 mm, but was 0 mm
                        slope length counted over must be above 0 mm, but was -3 mm
                        width counted over must be above 0 mm, but was 0 mm
                        area counted over must be above 0 m², but was 0 m²""");
    }
}
