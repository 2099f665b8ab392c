package org.roofmaths.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.roofmaths.units.Quantities.level;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.percent;
import static org.roofmaths.units.Quantities.pitch;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.roofmaths.covering.UnitKind;
import org.roofmaths.framing.CommonRafter;
import org.roofmaths.order.Allowance;
import org.roofmaths.order.Amount;
import org.roofmaths.order.Order;
import org.roofmaths.order.OrderLine;
import org.roofmaths.order.OrderTerms;
import org.roofmaths.order.Stock;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.Roof;
import org.roofmaths.roof.Roofs;
import org.roofmaths.roof.Slope;
import org.roofmaths.rules.Outcome;
import org.roofmaths.rules.Rules;
import org.roofmaths.rules.SideBySide;
import org.roofmaths.rules.Situation;
import org.roofmaths.rules.Subjects;
import org.roofmaths.settingout.Courses;
import org.roofmaths.sheet.Job;
import org.roofmaths.units.Range;
import org.roofmaths.working.Working;

/** Calls as a caller would type them, at most eight lines each: the measure of how the library reads. */
class TenCallsTest {

    @Test
    void area_and_pitch_of_a_lean_to_from_two_heights() {
        Roof roof = Roofs.leanTo()
                .wallLength(metres(5.2))
                .projection(metres(3))
                .slope(Slope.heights(metres(2.3), metres(4.175)))
                .eavesOverhang(level(mm(150)))
                .build();

        // rise 1875 over run 3000 is 5 in 8; area = 5.2 × 3.15 ÷ cos(arctan(5/8))
        assertThat(roof.face("main").pitch().tan()).isEqualTo(5.0 / 8, org.assertj.core.api.Assertions.within(1e-15));
        assertThat(roof.areaAlongSlope().toSquareMetres())
                .isEqualTo(
                        5.2 * 3.15 * Math.sqrt(64 + 25) / 8,
                        org.assertj.core.api.Assertions.within(1e-8)); // nm storage
    }

    @Test
    void courses_on_a_face_whose_ends_differ() {
        Courses courses = Courses.divide(Ends.of(mm(3912), mm(3897)), Range.closed(mm(320), mm(345)));

        // 3912 ÷ 345 = 11.3, so 12 gauges: 3912 ÷ 12 = 326 and 3897 ÷ 12 = 324.75
        assertThat(courses.gaugeCount()).isEqualTo(12);
        assertThat(courses.gauge()).isEqualTo(Ends.of(mm(326), mm(324.75)));
        assertThat(courses.marks().right().get(12)).isEqualTo(mm(3897));
    }

    @Test
    void the_same_when_nothing_fits() {
        Attempt<Courses> courses = Courses.attemptDivide(Ends.both(mm(700)), Range.closed(mm(360), mm(400)));

        // 700 ÷ 1 = 700 is over 400, 700 ÷ 2 = 350 is under 360
        assertThat(courses.value()).isEmpty();
        assertThat(courses.problems().get(0).message())
                .isEqualTo(
                        "no equal division: 1 gauge of 700 mm passes the greatest gauge of 400 mm by 300 mm, and 2 gauges of 350 mm"
                                + " fall short of the least gauge of 360 mm by 10 mm");
        assertThat(courses.problems().get(0).mends()).isNotEmpty();
    }

    @Test
    void least_pitch_under_two_editions_side_by_side() {
        Rules gb = Rules.of("gb");
        Situation situation = Situation.of(UnitKind.CONCRETE_PLAIN_TILE).withPitch(pitch("32.5°"));

        assertThat(SideBySide.of(gb.edition("nhbc-standards", "2020"), gb.edition("nhbc-standards", "2024"))
                        .check(Subjects.LEAST_PITCH, situation))
                .allSatisfy(check -> {
                    assertThat(check.outcome()).isEqualTo(Outcome.FALLS_SHORT); // 32.5 − 35
                    assertThat(check.margin().orElseThrow()).hasToString("-2.5°");
                });
    }

    // The valley of an L-shaped hipped roof, the vents of each of its eaves: when ready-made plans of that shape land.
    //
    // Roof roof = Roofs.lShape().…pitch(pitch("35°")).build();
    // RoofEdge valley = roof.edges(EdgeKind.VALLEY).get(0);
    // valley.trueLength();  valley.slopeAngle();  valley.angleInside();  valley.working().toText();
    // Ventilation.of(roof, demands.lowVents(), demands.highVents()).low();

    @Test
    void an_order_with_packs_and_allowance() {
        OrderTerms terms = OrderTerms.builder()
                .addAllowances(Allowance.breakage(percent(3)), Allowance.cutting(percent(2)))
                .stock(Stock.packs(180))
                .build();
        OrderLine tiles =
                Order.ofLines(OrderLine.of("tile", Amount.pieces(187), terms)).line("tile");

        assertThat(tiles.needed()).hasToString("196.35"); // 187 × 1.05
        assertThat(tiles.toBuyInWords()).isEqualTo("2 packs of 180");
        assertThat(tiles.left()).hasToString("163.65"); // 360 − 196.35
    }

    @Test
    void an_app_shows_all_errors_of_a_form_at_once() {
        Attempt<Job> job = Job.attemptFromTree(Map.of("format", "roof-maths job", "version", 2, "colour", "red"));

        List<Map<String, Object>> forJson = Problem.toTree(job.problems());
        assertThat(job.value()).isEmpty();
        assertThat(forJson)
                .extracting(problem -> problem.get("where"))
                .containsExactlyInAnyOrder(
                        "/version",
                        "/name",
                        "/rules",
                        "/exposure",
                        "/roof",
                        "/covering",
                        "/settingOut",
                        "/underlay",
                        "/order",
                        "/colour");
    }

    @Test
    void a_working_with_blanks_and_its_key() {
        Working sheet = CommonRafter.ofSpan(metres(6), pitch("35°")).working().blanked(CommonRafter.LENGTH);

        assertThat(sheet.toText()).contains("= (a) ________");
        assertThat(sheet.key()).hasSize(1);
        assertThat(sheet.key().get(0).answer()).isEqualTo(mm(3000 / Math.cos(Math.toRadians(35))));
    }
}
