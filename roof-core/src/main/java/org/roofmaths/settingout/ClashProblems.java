package org.roofmaths.settingout;

import java.util.List;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.units.Length;

/** The findings on battens that have no room beside each other. */
final class ClashProblems {
    private ClashProblems() {}

    static Problem atEaves(Length apart, Length width) {
        return Problem.finding(
                Courses.EAVES_CLASH,
                "courses",
                apart,
                width,
                "the under-eaves course and the first full course lie " + apart + " apart, less than a batten of "
                        + width + " is wide",
                List.of(
                        Mend.of(
                                "battens at the eaves",
                                "one for both courses",
                                "each course fixed near an edge of the batten"),
                        Mend.of(
                                "battens at the eaves",
                                "a bearer " + apart.plus(width) + " wide or wider",
                                apart,
                                "each course fixed as far from an edge as on a batten of its own")));
    }

    static Problem atTops(Length got, Length asked, Length step, Length lastGauge) {
        return Problem.finding(
                Courses.TOPS_CLASH,
                "courses",
                got,
                asked,
                "with battens " + step + " apart under the ridge the tops course has a headlap of " + got + ", "
                        + asked.minus(got) + " short of the " + asked + " asked",
                List.of(
                        Mend.of(
                                "last gauge",
                                lastGauge + " there alone",
                                lastGauge,
                                "headlap of the tops course " + asked),
                        Mend.of("tops course", "fixed without a batten of its own", "headlap as elsewhere")));
    }
}
