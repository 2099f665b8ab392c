package org.roofmaths.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.working.Figure.given;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.working.Worked;

class FixingsTest {
    private static FixingPattern pattern(int every, int perimeter, int eaves, int top, int left, int right) {
        return FixingPattern.builder()
                .inEveryUnit(every)
                .inPerimeterUnit(perimeter)
                .putDeep(FaceSide.EAVES, eaves)
                .putDeep(FaceSide.TOP, top)
                .putDeep(FaceSide.LEFT, left)
                .putDeep(FaceSide.RIGHT, right)
                .build();
    }

    @Test
    void a_perimeter_unit_is_counted_once() {
        Fixings fixings = Fixings.of(11, 18, pattern(1, 2, 1, 1, 1, 1));

        assertThat(fixings.units()).isEqualTo(11 * 18);
        assertThat(fixings.perimeterUnits()).isEqualTo(18 + 18 + 2 * (11 - 2));
        assertThat(fixings.count()).isEqualTo(198 + 54);
        assertThat(fixings).hasToString("252 fixings in 198 units, 54 of them on the perimeter");
        assertThat(fixings.working().disagreements()).isEmpty();
    }

    @Test
    void a_side_not_named_has_no_perimeter() {
        FixingPattern pattern = FixingPattern.builder()
                .inEveryUnit(0)
                .inPerimeterUnit(1)
                .putDeep(FaceSide.EAVES, 2)
                .build();
        assertThat(Fixings.of(11, 18, pattern).count()).isEqualTo(2 * 18);
    }

    @Property
    void counts_what_walking_over_every_unit_counts(
            @ForAll @IntRange(min = 1, max = 12) int courses,
            @ForAll @IntRange(min = 1, max = 12) int units,
            @ForAll @IntRange(max = 4) int eaves,
            @ForAll @IntRange(max = 4) int top,
            @ForAll @IntRange(max = 4) int left,
            @ForAll @IntRange(max = 4) int right) {
        Fixings fixings = Fixings.of(courses, units, pattern(2, 3, eaves, top, left, right));

        int walked = 0;
        for (int course = 0; course < courses; course++) {
            for (int unit = 0; unit < units; unit++) {
                boolean edge = course < eaves || course >= courses - top || unit < left || unit >= units - right;
                walked += edge ? 3 : 2;
            }
        }
        assertThat(fixings.count()).isEqualTo(walked);
        assertThat(fixings.working().disagreements()).isEmpty();
    }

    @Test
    void refuses_counts_that_are_none_with_every_reason_at_once() {
        assertThatThrownBy(() -> pattern(-1, -2, -3, 1, 1, 1))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("""
                        fixings in every unit must be zero or more, but was -1
                        fixings in a perimeter unit must be zero or more, but was -2
                        depth of the perimeter at the eaves must be zero or more, but was -3""");
        assertThatThrownBy(() -> Fixings.of(given(0), given(2.5), pattern(1, 1, 1, 1, 1, 1)))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("""
                        courses fixed must be a whole number from 1 to 1000000, but was 0
                        units fixed in a course must be a whole number from 1 to 1000000, but was 2.5""");
    }

    @Test
    void battens_are_nailed_at_crossings_and_joints() {
        Worked<Long> nails = Nails.atCrossings(given(11), given(10), given(11));
        assertThat(nails.value()).isEqualTo(11 * 10 + 11);
        assertThat(nails.working().disagreements()).isEmpty();
        assertThatThrownBy(() -> Nails.atCrossings(given(-1), given(-2), given(-3)))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("""
                        rows of battens must be zero or more, but was -1
                        rafters crossed must be zero or more, but was -2
                        joints of battens must be zero or more, but was -3""");
    }

    @Test
    void nails_weigh_what_their_shanks_do() {
        var mass = Nails.mass(given(110), mm(65), mm(3.35), NailMetal.STEEL);
        // printed in the hand calculation to two decimals
        assertThat(mass.value().toKilograms()).isCloseTo(0.49, within(0.005));
        assertThat(mass.value().toKilograms())
                .isCloseTo(110 * Math.PI / 4 * 0.00335 * 0.00335 * 0.065 * 7850, within(1e-12)); // rounding of doubles
        assertThat(mass.working().disagreements()).isEmpty();
        assertThatThrownBy(() -> Nails.mass(given(-1), mm(0), mm(0), NailMetal.COPPER))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("""
                        nails weighed must be zero or more, but was -1
                        length of a nail must be above 0 mm, but was 0 mm
                        shank diameter of a nail must be above 0 mm, but was 0 mm""");
    }

    @Test
    void copper_is_heavier_than_steel_by_its_density() {
        double steel =
                Nails.mass(given(1000), mm(38), mm(3), NailMetal.STEEL).value().toKilograms();
        double copper =
                Nails.mass(given(1000), mm(38), mm(3), NailMetal.COPPER).value().toKilograms();
        assertThat(copper / steel).isCloseTo(8960.0 / 7850, within(1e-12)); // rounding of doubles
    }
}
