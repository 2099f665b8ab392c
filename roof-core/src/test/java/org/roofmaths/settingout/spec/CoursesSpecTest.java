package org.roofmaths.settingout.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.roofmaths.units.Quantities.kg;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.onSlope;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.covering.Hanging;
import org.roofmaths.covering.UnitKind;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.problem.Severity;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.settingout.Aim;
import org.roofmaths.settingout.BattenDemand;
import org.roofmaths.settingout.BattenEdge;
import org.roofmaths.settingout.Change;
import org.roofmaths.settingout.CourseKind;
import org.roofmaths.settingout.CourseLine;
import org.roofmaths.settingout.Courses;
import org.roofmaths.settingout.FaceEnd;
import org.roofmaths.settingout.FaceLayout;
import org.roofmaths.settingout.LayoutScheme;
import org.roofmaths.settingout.Preference;
import org.roofmaths.settingout.Samples;
import org.roofmaths.units.Length;
import org.roofmaths.units.Range;
import org.roofmaths.working.Figure;

class CoursesSpecTest {
    private static final Range<Length> TILE_GAUGES = Range.closed(mm(310), mm(345));

    @Test
    void both_ends_have_the_same_number_of_gauges() {
        Courses courses = Courses.divide(Ends.of(mm(3912), mm(3897)), Range.closed(mm(320), mm(345)));

        assertThat(courses.gaugeCount()).isEqualTo(12);
        assertThat(courses.courseCount()).isEqualTo(13);
        assertThat(courses.battenCount()).isEqualTo(13);
        assertThat(courses.gauge()).isEqualTo(Ends.of(mm(3912 / 12.0), mm(3897 / 12.0)));
        assertThat(courses).hasToString("13 courses, 12 gauges: 326 mm left, 324.75 mm right");
        assertThat(courses.working().at(Courses.GAUGE.at("right")).value()).isEqualTo(mm(324.75));
    }

    @Test
    void running_marks_are_rounded_not_the_gauge() {
        Courses courses = Courses.divide(Ends.of(mm(3912), mm(3897)), Range.closed(mm(320), mm(345)));

        // 4 x 324.75 = 1299: rounding the gauge to 325 would have made it 1300
        assertThat(courses.marks().right())
                .startsWith(mm(0), mm(325), mm(650), mm(974), mm(1299))
                .endsWith(mm(3897));
        assertThat(courses.exactMarks().right()).startsWith(mm(0), mm(324.75), mm(2 * 324.75));
    }

    @Test
    void what_rounding_leaves_stands_at_the_last_mark() {
        Courses courses = Courses.divide(mm(3348.6), TILE_GAUGES);

        assertThat(courses.marks().left()).endsWith(mm(3349));
        assertThat(courses.restAtLastMark()).isEqualTo(Ends.both(mm(3348.6 - 3349)));
    }

    @Test
    void one_gauge_fewer_would_pass_the_greatest_gauge() {
        Courses courses = Courses.divide(mm(4890), TILE_GAUGES);

        // Roof Tiling and Slating: a practical guide (2013), ch. 6: 15 gauges of 326
        assertThat(courses.gaugeCount()).isEqualTo(15);
        assertThat(courses.gauge()).isEqualTo(Ends.both(mm(326)));
        assertThat(courses.excessWithOneFewer()).contains(mm(4890 / 14.0 - 345));
        assertThat(Courses.divide(mm(340), TILE_GAUGES).excessWithOneFewer()).isEmpty();
    }

    @Test
    void a_whole_count_is_not_pushed_over_by_storage() {
        assertThat(Courses.divide(metres(2.07), Range.atMost(metres(0.345))).gaugeCount())
                .isEqualTo(6);
        // 1750 + 25 + 25 mm at a slope of 4 in 3 is 3000 mm up the slope
        assertThat(Courses.divide(mm(3000.0001), Range.atMost(mm(300))).gaugeCount())
                .isEqualTo(10);
        assertThat(Courses.divide(mm(3000.001), Range.atMost(mm(300))).gaugeCount())
                .isEqualTo(11);
    }

    @Test
    void no_equal_division_tells_by_how_much_and_what_would_mend_it() {
        Attempt<Courses> attempt = Courses.attemptDivide(Ends.both(mm(700)), TILE_GAUGES);

        assertThat(attempt.value()).isEmpty();
        assertThat(attempt.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.severity()).isEqualTo(Severity.FINDING);
            assertThat(problem.code()).isEqualTo(Courses.NO_EQUAL_DIVISION);
            assertThat(problem).hasToString("""
                            no equal division: 2 gauges of 350 mm pass the greatest gauge of 345 mm by 5 mm, and 3 gauges of 233.333333 mm fall short of the least gauge of 310 mm by 76.666667 mm
                              mend: distance: 10 mm less; 2 gauges of 345 mm
                              mend: distance: 230 mm more; 3 gauges of 310 mm
                              mend: number of gauges: 3 gauges, 76.666667 mm under the least gauge; gauge 233.333333 mm, if the unit can be laid so close""");
        });
    }

    @Test
    void ends_that_differ_too_much_want_packing() {
        assertThat(Courses.attemptDivide(Ends.of(mm(3912), mm(3600)), Range.closed(mm(340), mm(345)))
                        .problems())
                .singleElement()
                .hasToString("""
                        the ends differ by 312 mm, but 12 gauges from 340 mm to 345 mm take up 60 mm only
                          mend: packing: eaves or top packed at the left end until it is 252 mm shorter; the ends differ by 60 mm""");
    }

    @Test
    void wrong_sizes_are_told_together() {
        assertThatThrownBy(() -> Courses.divide(Ends.of(mm(0), mm(1e9)), Range.<Length>empty()))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("""
                        distance at the left must be above 0 mm and at most 1000000 mm, but was 0 mm
                        distance at the right must be above 0 mm and at most 1000000 mm, but was 1000000000 mm
                        gauge must have a greatest gauge above 0 mm, but was empty""");
    }

    @Test
    void a_division_that_throws_carries_its_finding() {
        assertThatThrownBy(() -> Courses.divide(mm(700), TILE_GAUGES))
                .isInstanceOf(ProblemsException.class)
                .hasMessageStartingWith(
                        "no equal division: 2 gauges of 350 mm pass the greatest gauge of 345 mm by 5 mm");
    }

    private static LayoutScheme slates(double clearance, double overhang, double headlap) {
        DoubleLapUnit slate = DoubleLapUnit.builder()
                .name("slate")
                .kind(UnitKind.NATURAL_SLATE)
                .length(mm(500))
                .width(mm(250))
                .joint(mm(5))
                .thickness(mm(6))
                .mass(kg(1.6))
                .hanging(Hanging.centreNailed(mm(clearance)))
                .build();
        return LayoutScheme.builder()
                .unit(slate)
                .headlap(Figure.given(mm(headlap)))
                .overhangIntoGutter(onSlope(mm(overhang)))
                .topDistance(mm(60))
                .left(FaceEnd.verge(mm(50)))
                .right(FaceEnd.verge(mm(50)))
                .battens(Samples.BATTENS_50)
                .build();
    }

    @Test
    void centre_nailed_slates_are_solved_for_the_headlap_got() {
        // top nail line at 4000: 19 gauges of 197 from 257, headlap 106; dividing once from 249 would give 197.4
        Courses courses = FaceLayout.on(FlatShape.rectangle(mm(5100), mm(4060)), slates(4, 50, 90))
                .courses()
                .orThrow();

        assertThat(courses.gaugeCount()).isEqualTo(19);
        assertThat(courses.courseCount()).isEqualTo(20);
        assertThat(courses.gauge()).isEqualTo(Ends.both(mm((4000 - 500 - 4 + 50) / 18.0)));
        assertThat(courses.firstLine()).isEqualTo(Ends.both(mm(500 - 197 + 4 - 50)));
        assertThat(courses.headlap()).contains(Ends.both(mm(500 - 2 * 197)));
        assertThat(courses.topLine()).isEqualTo(Ends.both(mm(4000)));
        assertThat(courses.battenEdge()).isEqualTo(BattenEdge.NAIL_LINE);
        assertThat(courses.holingGauge()).contains(Ends.both(mm(500 - 197 + 4)));
        assertThat(courses.underEavesLength()).contains(Ends.both(mm(500 - 197)));
        assertThat(courses.topCourseLength()).contains(Ends.both(mm(307 + 60)));
        assertThat(courses.coverNeededAtTop()).contains(Ends.both(mm(60 + 4 + 90)));
        assertThat(courses.working().disagreements()).isEmpty();
    }

    @Test
    void two_nail_lines_at_the_eaves_want_one_bearer() {
        Courses courses = FaceLayout.on(FlatShape.rectangle(mm(5100), mm(4060)), slates(4, 50, 90))
                .courses()
                .orThrow();

        assertThat(courses.underEavesLine().orElseThrow().exact()).isEqualTo(Ends.both(mm(257 - 25 - 4)));
        assertThat(courses.sharesFirstBatten()).isTrue();
        assertThat(courses.battenCount()).isEqualTo(20);
        assertThat(courses.problems()).singleElement().hasToString("""
                        the under-eaves course and the first full course lie 29 mm apart, less than a batten of 50 mm is wide
                          mend: battens at the eaves: one for both courses; each course fixed near an edge of the batten
                          mend: battens at the eaves: a bearer 79 mm wide or wider; each course fixed as far from an edge as on a batten of its own""");
    }

    private static LayoutScheme plainTiles() {
        return LayoutScheme.builder()
                .unit(Samples.PLAIN_TILE)
                .headlap(Figure.given(mm(65)))
                .overhangIntoGutter(onSlope(mm(50)))
                .topDistance(mm(30))
                .left(FaceEnd.verge(mm(40)))
                .right(FaceEnd.verge(mm(40)))
                .battens(Samples.BATTENS_38)
                .build();
    }

    @Test
    void tops_of_plain_tiles_clash_and_a_last_gauge_mends_it() {
        // 4180 - 30 - 38 - 200 = 3912 = 40 x 97.8; tops headlap 265 - 97.8 - 113 = 54.2; a last gauge of 87 gives 65
        Courses courses = FaceLayout.on(FlatShape.rectangle(mm(5080), mm(4180)), plainTiles())
                .courses()
                .orThrow();

        assertThat(courses.gauge()).isEqualTo(Ends.both(mm(97.8)));
        assertThat(courses.topsHeadlap()).contains(Ends.both(mm(265 - 97.8 - 113)));
        assertThat(courses.underEavesLine().orElseThrow().exact()).isEqualTo(Ends.both(mm(175 - 50)));
        assertThat(courses.lines().stream().map(CourseLine::kind).distinct())
                .containsExactly(CourseKind.UNDER_EAVES, CourseKind.FULL, CourseKind.TOPS);
        assertThat(courses.lines().get(41).exact()).isEqualTo(Ends.both(mm(4150 - 38)));
        assertThat(courses.battenCount()).isEqualTo(1 + 41 + 1);
        assertThat(courses.working().at(Courses.EAVES_GAP).value()).isEqualTo(mm(250 - 175 - 38));
        assertThat(courses.problems()).singleElement().hasToString("""
                        with battens 38 mm apart under the ridge the tops course has a headlap of 54.2 mm, 10.8 mm short of the 65 mm asked
                          mend: last gauge: 87 mm there alone; headlap of the tops course 65 mm
                          mend: tops course: fixed without a batten of its own; headlap as elsewhere""");
        assertThat(courses.working().disagreements()).isEmpty();
    }

    @Test
    void tops_that_have_room_keep_the_headlap_of_all_courses() {
        LayoutScheme narrow = plainTiles()
                .withBattens(new BattenDemand(
                        Figure.given(mm(20)),
                        Figure.given(mm(25)),
                        Figure.given(mm(1200)),
                        Figure.given(3),
                        List.of()));
        Courses courses = FaceLayout.on(FlatShape.rectangle(mm(5080), mm(4180)), narrow)
                .courses()
                .orThrow();

        // (4150 - 200 + 250 - 175) / 41 parts = 98.17...: 40 gauges and a last step shorter by 75
        assertThat(courses.gaugeCount()).isEqualTo(40);
        assertThat(courses.gauge()).isEqualTo(Ends.both(mm((4150 - 200 + 75) / 41.0)));
        assertThat(courses.topsHeadlap()).isEqualTo(courses.headlap());
        assertThat(courses.problems()).isEmpty();
        assertThat(courses.working().disagreements()).isEmpty();
    }

    @Test
    void head_nailed_slates_hang_from_a_fixed_hole() {
        DoubleLapUnit slate = DoubleLapUnit.builder()
                .name("slate")
                .kind(UnitKind.NATURAL_SLATE)
                .length(mm(450))
                .width(mm(250))
                .joint(mm(5))
                .thickness(mm(6))
                .mass(kg(1.6))
                .hanging(Hanging.headNailed(mm(25)))
                .build();
        LayoutScheme scheme = slates(4, 50, 90).withUnit(slate);
        Courses courses = FaceLayout.on(FlatShape.rectangle(mm(5100), mm(4060)), scheme)
                .courses()
                .orThrow();

        double first = 450 - 25 - 50;
        assertThat(courses.firstLine()).isEqualTo(Ends.both(mm(first)));
        assertThat(courses.gaugeCount()).isEqualTo((int) Math.ceil((4000 - first) / ((450 - 25 - 90) / 2.0)));
        assertThat(courses.underEavesLine().orElseThrow().exact().left())
                .isEqualTo(mm(450 - 25 - 50).minus(courses.gauge().left()));
        assertThat(courses.coverNeededAtTop().orElseThrow().left())
                .isEqualTo(mm(60 - 25 + 90).plus(courses.gauge().left()));
        assertThat(courses.working().disagreements()).isEmpty();
    }

    private static LayoutScheme fixedTile(Preference preference) {
        return LayoutScheme.builder()
                .unit(Samples.TILE)
                .headlap(Figure.given(mm(75)))
                .overhangIntoGutter(onSlope(mm(50)))
                .topDistance(mm(30))
                .left(FaceEnd.verge(mm(45)))
                .right(FaceEnd.verge(mm(45)))
                .overhangRange(Range.closed(mm(40), mm(55)))
                .topDistanceRange(Range.closed(mm(25), mm(40)))
                .preference(preference)
                .build();
    }

    private static FlatShape slopeFor(double distance) {
        return FlatShape.rectangle(mm(6000), mm(distance + 395 - 50 + 30));
    }

    @Test
    void play_is_taken_in_the_callers_order() {
        // 692 mm hold two gauges of 345 if the distance shrinks by 2
        Courses byOverhang = FaceLayout.on(slopeFor(692), fixedTile(Preference.usual()))
                .courses()
                .orThrow();
        Courses byTop = FaceLayout.on(
                        slopeFor(692), fixedTile(Preference.usual().changing(Change.TOP_DISTANCE)))
                .courses()
                .orThrow();

        assertThat(byOverhang.gauge()).isEqualTo(Ends.both(mm(345)));
        assertThat(byOverhang.firstLine()).isEqualTo(Ends.both(mm(395 - 48)));
        assertThat(byTop.gauge()).isEqualTo(Ends.both(mm(345)));
        assertThat(byTop.firstLine()).isEqualTo(Ends.both(mm(395 - 50)));
        assertThat(FaceLayout.on(slopeFor(692), fixedTile(Preference.usual())).problems())
                .singleElement()
                .hasToString("overhang into the gutter is 48 mm, moved from the 50 mm wanted, within [40 mm..55 mm],"
                        + " so that equal gauges fit");
    }

    @Test
    void plays_join_when_one_is_not_enough() {
        // 708 mm must shrink by 18: 10 from the overhang, 8 from the top
        FaceLayout layout = FaceLayout.on(slopeFor(708), fixedTile(Preference.usual()));

        Courses courses = layout.courses().orThrow();
        assertThat(courses.firstLine()).isEqualTo(Ends.both(mm(395 - 40)));
        assertThat(courses.topLine()).isEqualTo(Ends.both(mm(708 + 345 + 30 - 38)));
        assertThat(layout.problems()).hasSize(2);
        assertThat(courses.working().disagreements()).isEmpty();
    }

    @Test
    void beyond_all_play_the_mends_tell_the_rest() {
        assertThat(FaceLayout.on(slopeFor(740), fixedTile(Preference.usual().changing(Change.TOP_DISTANCE)))
                        .courses()
                        .problems())
                .singleElement()
                .hasToString("""
                        no equal division: 2 gauges of 370 mm pass the greatest gauge of 345 mm by 25 mm, and 3 gauges of 246.666667 mm fall short of the least gauge of 310 mm by 63.333333 mm
                          mend: top distance: 50 mm more; 2 gauges of 345 mm
                          mend: overhang into the gutter, on the slope: 50 mm less; 2 gauges of 345 mm
                          mend: overhang into the gutter, on the slope: 190 mm more; 3 gauges of 310 mm
                          mend: fascia: packed out by 190 mm on the slope; 3 gauges of 310 mm
                          mend: number of gauges: 3 gauges, 63.333333 mm under the least gauge; gauge 246.666667 mm, headlap 173.333333 mm, if the unit can be laid so close""");
    }

    @Test
    void the_largest_headlap_takes_as_many_gauges_as_the_unit_allows() {
        Preference most = Preference.usual().aimingFor(Aim.LARGEST_HEADLAP);
        Courses courses =
                FaceLayout.on(slopeFor(3450), fixedTile(most)).courses().orThrow();

        assertThat(courses.gaugeCount()).isEqualTo(3450 / 310);
        assertThat(courses.headlap().orElseThrow().left())
                .isEqualTo(mm(420).minus(courses.gauge().left()));
        assertThat(courses.working().disagreements()).isEmpty();
    }

    @Test
    void a_slope_under_two_courses_is_a_finding() {
        assertThat(FaceLayout.on(FlatShape.rectangle(mm(6000), mm(370)), fixedTile(Preference.usual()))
                        .courses()
                        .problems())
                .singleElement()
                .hasToString("""
                        the slope is too short for two courses: the distance to divide is -5 mm
                          mend: slope length: 315 mm more; 2 courses at a gauge of 310 mm
                          mend: unit: a shorter one, or one course only; no gauge to divide""");
    }

    @Test
    void limits_that_cross_are_a_finding() {
        LayoutScheme scheme = fixedTile(Preference.usual()).withHeadlap(Figure.given(mm(120)));

        assertThat(FaceLayout.on(slopeFor(3450), scheme).courses().problems())
                .singleElement()
                .hasToString("""
                        the limits of the gauge cross: the greatest gauge is 300 mm, the least is 310 mm
                          mend: headlap: 10 mm less; headlap 110 mm, if the rules allow it
                          mend: unit: a longer one; a greater gauge at the same headlap""");
    }

    @Test
    void without_a_batten_width_a_notice_says_that_nobody_looked() {
        LayoutScheme scheme = LayoutScheme.builder()
                .unit(Samples.SLATE)
                .headlap(Figure.given(mm(90)))
                .overhangIntoGutter(onSlope(mm(50)))
                .topDistance(mm(60))
                .left(FaceEnd.verge(mm(50)))
                .right(FaceEnd.verge(mm(50)))
                .build();
        Courses courses = FaceLayout.on(FlatShape.rectangle(mm(6100), mm(3459)), scheme)
                .courses()
                .orThrow();

        assertThat(courses.problems()).singleElement().satisfies(notice -> {
            assertThat(notice.severity()).isEqualTo(Severity.NOTICE);
            assertThat(notice)
                    .hasToString(
                            "the batten width was not given, so nobody looked whether the battens of the under-eaves course and"
                                    + " of the first full course, 29 mm at both ends apart, overlap");
        });
        assertThat(courses.battenCount()).isEqualTo(18);
    }
}
