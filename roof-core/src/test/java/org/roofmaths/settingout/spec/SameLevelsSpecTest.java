package org.roofmaths.settingout.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;

import org.junit.jupiter.api.Test;
import org.roofmaths.roof.End;
import org.roofmaths.settingout.Courses;
import org.roofmaths.settingout.GaugeRod;
import org.roofmaths.settingout.SameLevels;
import org.roofmaths.units.Length;
import org.roofmaths.units.Range;

class SameLevelsSpecTest {
    private static final Range<Length> PLAIN = Range.closed(mm(88), mm(100));

    private static double sin(double degrees) {
        return Math.sin(Math.toRadians(degrees));
    }

    @Test
    void courses_meet_at_a_hip_of_unequal_slopes() {
        // limits and method: a roofing consultancy's article series, Tips 16
        SameLevels levels = SameLevels.over(metres(3), PLAIN, pitch("45°"), pitch("50°"));

        assertThat(levels.gaugeCount()).isEqualTo((int) Math.ceil(3000 / sin(45) / 100));
        // stored to the nearest nanometre
        assertThat(levels.gauges().get(0).toMillimetres()).isCloseTo(3000 / sin(45) / 43, within(1e-6));
        assertThat(levels.gauges().get(1).toMillimetres()).isCloseTo(3000 / sin(50) / 43, within(1e-6));
        assertThat(levels.levels()).startsWith(mm(0)).endsWith(mm(3000)).hasSize(44);
        assertThat(levels).hasToString("43 gauges: 98.666062 mm on 45°, 91.074927 mm on 50°");
        assertThat(levels.working().disagreements()).isEmpty();
    }

    @Test
    void the_flattest_slope_sets_the_number_wherever_it_stands() {
        assertThat(SameLevels.over(metres(3), PLAIN, pitch("50°"), pitch("45°"), pitch("47°"))
                        .gaugeCount())
                .isEqualTo(43);
    }

    @Test
    void the_steepest_slope_beside_a_flatter_one() {
        assertThat(SameLevels.steepestBeside(pitch("35°"), mm(100), mm(88))
                        .value()
                        .toDegrees())
                .isCloseTo(Math.toDegrees(Math.asin(sin(35) * 100 / 88)), within(1e-9)); // rounding of the formula
        assertThat(SameLevels.steepestBeside(pitch("35°"), mm(100), mm(88))
                        .working()
                        .disagreements())
                .isEmpty();
        assertThatThrownBy(() -> SameLevels.steepestBeside(pitch("80°"), mm(100), mm(88)))
                .hasMessage("least gauge must be so great that a pitch below 90° reaches it, but was 88 mm");
    }

    @Test
    void pitches_that_differ_too_much_are_a_finding() {
        String most = SameLevels.steepestBeside(pitch("35°"), mm(3000 / sin(35) / 53), mm(88))
                .value()
                .toString();

        assertThat(SameLevels.attemptOver(metres(3), PLAIN, pitch("35°"), pitch("45°"))
                        .problems())
                .singleElement()
                .hasToString("53 gauges at the same levels are " + mm(3000 / sin(35) / 53) + " on 35° but "
                        + mm(3000 / sin(45) / 53) + " on 45°, " + mm(88).minus(mm(3000 / sin(45) / 53))
                        + " under the least gauge of 88 mm\n"
                        + "  mend: pitch: at most " + most + " on the steeper slope; courses at the same levels\n"
                        + "  mend: courses: divided for each slope by itself; courses that do not meet");
    }

    @Test
    void sizes_are_refused_together() {
        assertThat(SameLevels.attemptOver(mm(0), Range.atLeast(mm(88)), pitch("45°"))
                        .problems())
                .extracting(problem -> problem.message())
                .containsExactly(
                        "rise must be above 0 mm and at most 1000000 mm, but was 0 mm",
                        "gauge must have a greatest gauge above 0 mm, but was [88 mm..)",
                        "pitches must be of at least 2 slopes, but was 1 slopes");
    }

    @Test
    void a_rod_carries_running_values_too() {
        Courses courses = Courses.divide(mm(3348.592453), Range.closed(mm(310), mm(345)));
        GaugeRod rod = GaugeRod.of(courses, End.LEFT, metres(1.8));

        // 5 x 334.859245 = 1674.30
        assertThat(rod.gaugesOnRod()).isEqualTo(5);
        assertThat(rod.marks()).containsExactly(mm(335), mm(670), mm(1005), mm(1339), mm(1674));
        assertThat(rod.placings()).isEqualTo(2);
        assertThat(rod.lossAtTop().toMillimetres()).isCloseTo(3348.592453 - 2 * 1674, within(1e-5)); // 10 gauges in nm
        assertThat(rod).hasToString("rod for the left end: 5 gauges, laid down 2 times");
    }

    @Test
    void a_rod_longer_than_the_slope_is_laid_down_once() {
        GaugeRod rod = GaugeRod.of(Courses.divide(mm(1000), Range.atMost(mm(345))), End.RIGHT, metres(2));

        assertThat(rod.marks()).containsExactly(mm(333), mm(667), mm(1000));
        assertThat(rod).hasToString("rod for the right end: 3 gauges, laid down 1 time");
    }

    @Test
    void a_rod_shorter_than_a_gauge_is_refused() {
        Courses courses = Courses.divide(mm(1000), Range.atMost(mm(345)));

        assertThatThrownBy(() -> GaugeRod.of(courses, End.LEFT, mm(300)))
                .hasMessage("rod length must be at least a gauge of 333.333333 mm, but was 300 mm");
    }

    @Test
    void a_slip_at_every_batten_adds_up() {
        // a UK roofing textbook, chapter on marking up gauges: 1 mm fifty times, both ways, is a whole course of 100
        Length drift = GaugeRod.drift(50, mm(1)).value();

        assertThat(drift.minus(GaugeRod.drift(50, mm(-1)).value())).isEqualTo(mm(100));
        assertThat(GaugeRod.drift(50, mm(1)).working().disagreements()).isEmpty();
    }
}
