package org.roofmaths.problem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.roofmaths.units.Length;

class ProblemTest {
    private static final ProblemCode PITCH = ProblemCode.of("test.pitch", "Give a pitch above 0° and below 90°.");
    private static final ProblemCode GAUGE = ProblemCode.of("test.gauge", "Widen the gauge range.");
    private static final Problem STEEP = Problem.error(PITCH, "pitch", "95°", "be above 0° and below 90°");
    private static final Problem SHORT = Problem.finding(
            GAUGE,
            "front",
            Length.ofMillimetres(345.4),
            Length.ofMillimetres(345),
            "10 gauges would pass the greatest gauge of 345 mm by 0.4 mm",
            List.of(Mend.of("overhang", "4 mm more", Length.ofMillimetres(4), "10 gauges of 345 mm")));

    @Test
    void an_error_says_what_it_must_be_and_what_it_was() {
        assertThat(STEEP).hasToString("pitch must be above 0° and below 90°, but was 95°");
        assertThat(STEEP.at("/roof/pitch").message())
                .isEqualTo("/roof/pitch must be above 0° and below 90°, but was 95°");
        assertThat(SHORT.at("/x").message()).isEqualTo(SHORT.message());
    }

    @Test
    void a_finding_prints_its_mends() {
        assertThat(SHORT).hasToString("""
                10 gauges would pass the greatest gauge of 345 mm by 0.4 mm
                  mend: overhang: 4 mm more; 10 gauges of 345 mm""");
    }

    @Test
    void becomes_plain_maps() {
        assertThat(Problem.toTree(List.of(SHORT)))
                .containsExactly(Map.of(
                        "code", "test.gauge",
                        "severity", "finding",
                        "where", "front",
                        "given", "345.4 mm",
                        "allowed", "345 mm",
                        "message", "10 gauges would pass the greatest gauge of 345 mm by 0.4 mm",
                        "remedy", "Widen the gauge range.",
                        "mends",
                                List.of(Map.of(
                                        "what",
                                        "overhang",
                                        "change",
                                        "4 mm more",
                                        "by",
                                        "4 mm",
                                        "result",
                                        "10 gauges of 345 mm"))));
    }

    @Test
    void all_errors_are_thrown_at_once() {
        Problems problems = Problems.none()
                .add(STEEP)
                .require(true, GAUGE, "gauge", "1 mm", "be above 2 mm")
                .require(false, GAUGE, "gauge", "1 mm", "be above 2 mm");

        assertThatThrownBy(problems::throwIfErrors)
                .isInstanceOf(IllegalArgumentException.class)
                .isInstanceOf(ProblemsException.class)
                .hasMessage("""
                        pitch must be above 0° and below 90°, but was 95°
                        gauge must be above 2 mm, but was 1 mm""");
        assertThat(problems.<String>attempt(() -> "never made").problems()).hasSize(2);
    }

    @Test
    void findings_stand_beside_a_value_and_stop_nothing() {
        Problems problems = Problems.none().add(SHORT);
        problems.throwIfErrors();

        Attempt<String> attempt = problems.attempt(() -> "a layout");
        assertThat(attempt.orThrow()).isEqualTo("a layout");
        assertThat(attempt.problems()).containsExactly(SHORT);
        assertThat(attempt).hasToString("a layout\nfinding: " + SHORT);
    }

    @Test
    void a_failed_attempt_throws_its_problems_and_stays_failed() {
        Attempt<String> failed = Attempt.call(() -> {
            throw new ProblemsException(List.of(STEEP));
        });

        assertThat(failed.hasValue()).isFalse();
        assertThat(failed.value()).isEmpty();
        assertThat(failed.map(String::length).problems()).containsExactly(STEEP);
        assertThatThrownBy(failed::orThrow)
                .isInstanceOf(ProblemsException.class)
                .hasMessage(STEEP.message());
        assertThatThrownBy(() -> Attempt.failed(List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a failed attempt must carry at least one problem");
    }

    @Test
    void codes_have_one_form() {
        assertThatThrownBy(() -> ProblemCode.of("NoGood", ""))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a problem code must be lower-case words parted by dots, such as courses.no-equal-division,"
                        + " but was \"NoGood\"");
    }
}
