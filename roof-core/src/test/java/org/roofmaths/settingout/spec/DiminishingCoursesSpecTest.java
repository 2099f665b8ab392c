package org.roofmaths.settingout.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.roofmaths.settingout.DiminishingCourses;
import org.roofmaths.settingout.SlateGroup;

class DiminishingCoursesSpecTest {
    @Test
    void tails_and_laths_follow_the_lengths() {
        // rule: Stone Roofing Association, Random slating; headlap 80, overhang 50
        DiminishingCourses courses =
                DiminishingCourses.of(List.of(mm(500), mm(500), mm(450), mm(450), mm(400)), mm(80), mm(-50));

        double margin = (500 - 80) / 2.0;
        assertThat(courses.tails()).containsExactly(mm(-50), mm(-50 + margin), mm(370), mm(370 + 185), mm(740));
        assertThat(courses.laths()).containsExactly(mm(450), mm(660), mm(820), mm(1005), mm(1140));
        assertThat(courses.lathGauges()).containsExactly(mm(210), mm(160), mm(185), mm(135));
        assertThat(courses.headlaps()).containsExactly(mm(450 - 370), mm(660 - 555), mm(820 - 740));
        assertThat(courses.working().disagreements()).isEmpty();
        assertThat(courses).hasToString("5 courses from 500 mm to 400 mm long; headlap 80 mm");
    }

    @Test
    void laths_come_closer_where_a_shorter_length_begins() {
        assertThat(DiminishingCourses.dropGauge(mm(450), mm(400), mm(75)).value())
                .isEqualTo(mm((400 - 75) / 2.0 - (450 - 400) / 2.0));
        assertThat(DiminishingCourses.lapOverLastLong(mm(450), mm(400), mm(75)).value())
                .isEqualTo(mm(75 + 25));
        assertThat(DiminishingCourses.dropGauge(mm(450), mm(400), mm(75))
                        .working()
                        .disagreements())
                .isEmpty();
        assertThat(DiminishingCourses.lapOverLastLong(mm(450), mm(400), mm(75))
                        .working()
                        .disagreements())
                .isEmpty();
    }

    @Test
    void a_group_makes_as_many_courses_as_its_width_holds() {
        // Stone Roofing Association, Using a gauging stick: rounded down
        assertThat(new SlateGroup(mm(600), metres(34)).coursesOver(metres(8))).isEqualTo(4);
        assertThat(new SlateGroup(mm(550), metres(50)).coursesOver(metres(8))).isEqualTo(6);
        assertThat(SlateGroup.of(mm(500), mm(300), 200).coursesOver(metres(8))).isEqualTo(7);
    }

    @Test
    void a_pile_is_laid_longest_first_until_the_slope_is_full() {
        List<SlateGroup> pile = List.of(
                new SlateGroup(mm(450), metres(50)),
                new SlateGroup(mm(550), metres(17)),
                new SlateGroup(mm(500), metres(25)));
        DiminishingCourses courses = DiminishingCourses.fromPile(pile, metres(8), mm(80), mm(-50), mm(1500))
                .orThrow();

        assertThat(courses.lengths()).startsWith(mm(550), mm(550), mm(500), mm(500), mm(500), mm(450));
        assertThat(courses.laths().get(courses.laths().size() - 1)).isLessThanOrEqualTo(mm(1500));
    }

    @Test
    void a_pile_too_small_is_a_finding_beside_what_it_makes() {
        List<SlateGroup> pile = List.of(new SlateGroup(mm(500), metres(17)));

        assertThat(DiminishingCourses.fromPile(pile, metres(8), mm(80), mm(-50), mm(3000))
                        .problems())
                .singleElement()
                .hasToString("the pile makes 2 courses, up to 660 mm of 3000 mm: 2340 mm of slope stay bare\n"
                        + "  mend: pile: more slates; whole courses of 8000 mm each");
    }

    @Test
    void lengths_that_grow_upwards_are_refused_with_every_reason() {
        assertThatThrownBy(() -> DiminishingCourses.of(List.of(mm(400), mm(450), mm(70)), mm(80), mm(0)))
                .hasMessage("course 2 must be at most 400 mm, the length below, but was 450 mm\n"
                        + "course 3 must be longer than the headlap of 80 mm, but was 70 mm");
        assertThatThrownBy(() -> DiminishingCourses.of(List.of(mm(400)), mm(-1), mm(0)))
                .hasMessage("courses must be at least 2, but was 1\nheadlap must be 0 mm or more, but was -1 mm");
        assertThatThrownBy(() -> new SlateGroup(mm(0), mm(-5)))
                .hasMessage("length must be above 0 mm, but was 0 mm\ntogether must be above 0 mm, but was -5 mm");
    }
}
