package org.roofmaths.settingout.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.onSlope;

import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.roofmaths.problem.Attempt;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.settingout.Courses;
import org.roofmaths.settingout.FaceEnd;
import org.roofmaths.settingout.FaceLayout;
import org.roofmaths.settingout.LayoutScheme;
import org.roofmaths.settingout.Samples;
import org.roofmaths.units.Length;
import org.roofmaths.units.Range;
import org.roofmaths.working.Figure;

class CoursesProperties {
    @Property
    void differences_of_exact_marks_sum_to_the_distance_and_each_is_a_gauge(
            @ForAll @DoubleRange(min = 300, max = 12_000) double left,
            @ForAll @DoubleRange(min = -40, max = 40) double lean) {
        Attempt<Courses> attempt = Courses.attemptDivide(Ends.of(mm(left), mm(left + lean)), Range.atMost(mm(345)));
        Courses courses = attempt.orThrow();

        List<Length> marks = courses.exactMarks().right();
        assertThat(marks.get(0)).isEqualTo(Length.ZERO);
        assertThat(marks.get(marks.size() - 1)).isEqualTo(mm(left + lean));
        double gauge = mm(left + lean).toNanometres() / (double) courses.gaugeCount();
        for (int i = 1; i < marks.size(); i++) {
            double step = marks.get(i).minus(marks.get(i - 1)).toNanometres();
            assertThat(Math.abs(step - gauge)).isLessThanOrEqualTo(1); // each mark is stored to the nearest nanometre
        }
    }

    @Property
    void a_rounded_mark_is_never_off_by_more_than_half_a_step(
            @ForAll @DoubleRange(min = 300, max = 12_000) double distance) {
        Courses courses = Courses.divide(mm(distance), Range.atMost(mm(345)));
        List<Length> exact = courses.exactMarks().left();
        List<Length> marks = courses.marks().left();

        for (int i = 0; i < marks.size(); i++) {
            assertThat(marks.get(i).minus(exact.get(i)).abs().compareTo(mm(0.5)))
                    .isLessThanOrEqualTo(0);
            assertThat(marks.get(i).toNanometres() % 1_000_000).isZero();
        }
    }

    @Property
    void the_gauge_keeps_both_limits_or_there_is_a_finding_and_no_count_would_do(
            @ForAll @IntRange(min = 1, max = 6000) int left,
            @ForAll @IntRange(min = -60, max = 60) int lean,
            @ForAll @IntRange(min = 60, max = 400) int least,
            @ForAll @IntRange(min = 0, max = 60) int play) {
        int right = left + lean;
        Assume.that(right > 0);
        int greatest = least + play;
        Attempt<Courses> attempt =
                Courses.attemptDivide(Ends.of(mm(left), mm(right)), Range.closed(mm(least), mm(greatest)));

        // every number of gauges, tried one by one in whole millimetres
        int found = 0;
        for (int n = 1; n <= 6100 / least + 1 && found == 0; n++) {
            boolean both = left >= n * least && right >= n * least && left <= n * greatest && right <= n * greatest;
            found = both ? n : 0;
        }
        if (found > 0) {
            assertThat(attempt.orThrow().gaugeCount()).isEqualTo(found);
        } else {
            assertThat(attempt.value()).isEmpty();
            assertThat(attempt.problems()).hasSize(1);
        }
    }

    @Property
    void the_first_mend_of_the_distance_mends_it_and_a_millimetre_less_does_not(
            @ForAll @IntRange(min = 400, max = 6000) int distance) {
        Range<Length> gauge = Range.closed(mm(310), mm(330));
        Attempt<Courses> attempt = Courses.attemptDivide(Ends.both(mm(distance)), gauge);
        Assume.that(!attempt.hasValue());

        Length by = (Length) attempt.problems().get(0).mends().get(0).by().orElseThrow();
        Length toward = by.isPositive() ? mm(-1) : mm(1);
        assertThat(Courses.attemptDivide(Ends.both(mm(distance).plus(by)), gauge)
                        .hasValue())
                .isTrue();
        assertThat(Courses.attemptDivide(Ends.both(mm(distance).plus(by).plus(toward)), gauge)
                        .hasValue())
                .isFalse();
        assertThat(Courses.attemptDivide(Ends.both(mm(distance).minus(by).minus(toward)), gauge)
                        .hasValue())
                .isFalse();
    }

    @Property
    void mirroring_a_face_mirrors_its_courses(
            @ForAll @IntRange(min = 1200, max = 6000) int left, @ForAll @IntRange(min = -30, max = 30) int lean) {
        Ends<Length> lengths = Ends.of(mm(left), mm(left + lean));
        FaceLayout here = FaceLayout.on(FlatShape.of(lengths, mm(6100)), Samples.TOLLBAR);
        FaceLayout there = FaceLayout.on(FlatShape.of(lengths.mirrored(), mm(6100)), Samples.TOLLBAR);

        assertThat(there.courses().hasValue()).isEqualTo(here.courses().hasValue());
        here.courses().value().ifPresent(courses -> {
            Courses other = there.courses().orThrow();
            assertThat(other.marks()).isEqualTo(courses.marks().mirrored());
            assertThat(other.headlap()).isEqualTo(courses.headlap().map(Ends::mirrored));
        });
    }

    @Property
    void headlap_got_is_never_under_the_headlap_asked(
            @ForAll @IntRange(min = 1000, max = 9000) int left, @ForAll @IntRange(min = -60, max = 60) int lean) {
        FaceLayout layout = FaceLayout.on(FlatShape.of(Ends.of(mm(left), mm(left + lean)), mm(6100)), Samples.TOLLBAR);
        Courses courses = layout.courses().orThrow();
        Ends<Length> headlap = courses.headlap().orElseThrow();

        assertThat(headlap.left().meetsLeast(mm(90))).isTrue();
        assertThat(headlap.right().meetsLeast(mm(90))).isTrue();
        // tails stay where they were asked: the first line less what hangs below it
        assertThat(courses.firstLine()
                        .left()
                        .minus(courses.holingGauge().orElseThrow().left()))
                .isEqualTo(mm(-50));
        assertThat(courses.working().disagreements()).isEmpty();
    }

    @Property
    void play_finds_what_a_search_of_every_millimetre_finds(@ForAll @IntRange(min = 60, max = 1500) int distance) {
        LayoutScheme scheme = LayoutScheme.builder()
                .unit(Samples.TILE)
                .headlap(Figure.given(mm(75)))
                .overhangIntoGutter(onSlope(mm(50)))
                .topDistance(mm(30))
                .left(FaceEnd.verge(mm(45)))
                .right(FaceEnd.verge(mm(45)))
                .overhangRange(Range.closed(mm(40), mm(65)))
                .topDistanceRange(Range.closed(mm(25), mm(45)))
                .build();
        Attempt<Courses> attempt = FaceLayout.on(FlatShape.rectangle(mm(6000), mm(distance + 395 - 50 + 30)), scheme)
                .courses();

        int best = Integer.MAX_VALUE;
        for (int overhang = 40; overhang <= 65; overhang++) {
            for (int top = 25; top <= 45; top++) {
                int divide = distance + (overhang - 50) - (top - 30);
                for (int n = 1; n <= 5; n++) {
                    if (divide >= 310 * n && divide <= 345 * n) {
                        best = Math.min(best, Math.abs(overhang - 50) + Math.abs(top - 30));
                    }
                }
            }
        }
        assertThat(attempt.hasValue()).isEqualTo(best != Integer.MAX_VALUE);
        if (attempt.hasValue()) {
            Courses courses = attempt.orThrow();
            Length overhang = mm(395).minus(courses.firstLine().left());
            Length top = mm(distance + 395 - 50 + 30).minus(courses.topLine().left());
            Length change = overhang.minus(mm(50)).abs().plus(top.minus(mm(30)).abs());
            assertThat(change).isEqualTo(mm(best));
        }
    }
}
