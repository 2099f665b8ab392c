package org.roofmaths.working;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.roofmaths.units.Length;
import org.roofmaths.units.Tolerance;

class FigureTest {
    private static final Length LAP = Length.ofMillimetres(75);

    @Test
    void each_kind_says_where_it_comes_from() {
        Citation citation = Citation.builder()
                .kind(SourceKind.WARRANTY_CONDITION)
                .title("Example standards")
                .edition("2020")
                .locus("clause 7")
                .rowId("lap.1")
                .asPrinted("75")
                .provenance(Provenance.READ)
                .build();

        assertThat(Given.of(LAP)).hasToString("75 mm (given)");
        assertThat(Given.of(LAP).measuredWithin(Tolerance.ofMillimetres(5)))
                .hasToString("75 mm (given, measured " + Tolerance.ofMillimetres(5) + ")");
        assertThat(Sourced.of(LAP, citation))
                .hasToString("75 mm (Example standards, edition 2020, clause 7 (warranty body's condition; read))");
        assertThat(Assumed.of(LAP, "common practice", "set headlap"))
                .hasToString("75 mm (assumed: common practice; to change it, set headlap)");
    }

    @Test
    void equal_values_of_different_origin_differ() {
        assertThat(Given.of(LAP)).isEqualTo(Figure.given(LAP)).hasSameHashCodeAs(Figure.given(LAP));
        assertThat((Object) Given.of(LAP)).isNotEqualTo(Assumed.of(LAP, "", ""));
        assertThat(Given.of(LAP)).isNotEqualTo(Given.of(LAP).measuredWithin(Tolerance.ofMillimetres(5)));
    }

    @Test
    void practice_is_the_weakest_ground_and_arithmetic_adds_no_doubt() {
        assertThat(Provenance.PRACTICE.isWeakerThan(Provenance.MEMORY)).isTrue();
        assertThat(Provenance.MEMORY.isWeakerThan(Provenance.QUOTED)).isTrue();
        assertThat(Provenance.QUOTED.isWeakerThan(Provenance.READ)).isTrue();
        assertThat(Provenance.READ.isWeakerThan(Provenance.DERIVED)).isTrue();
        assertThat(Provenance.READ.isWeakerThan(Provenance.READ)).isFalse();
    }
}
