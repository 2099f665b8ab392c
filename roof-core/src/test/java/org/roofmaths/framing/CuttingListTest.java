package org.roofmaths.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.roofmaths.units.Quantities.degrees;
import static org.roofmaths.units.Quantities.level;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Length;
import org.roofmaths.units.Rounding;

class CuttingListTest {
    private final CommonRafter rafter = CommonRafter.of(mm(3600), pitch("35°")).withOverhang(level(mm(300)));

    @Test
    void equal_timbers_stand_on_one_line() {
        CuttingList list = CuttingList.of(List.of(rafter.toCut(10)))
                .plus(CuttingList.of(List.of(rafter.withRidge(mm(32)).toCut(2), rafter.toCut(2))));

        assertThat(list.lines()).hasSize(2);
        assertThat(list.lines().get(0).count()).isEqualTo(12);
        assertThat(list.memberCount()).isEqualTo(14);
        assertThat(list.totalLength())
                .isEqualTo(rafter.lengthToCut()
                        .times(12L)
                        .plus(rafter.withRidge(mm(32)).lengthToCut().times(2L)));
    }

    @Test
    void goes_to_the_saw_rounded_with_every_angle_s_datum() {
        CuttingList list = CuttingList.of(List.of(rafter.toCut(12)))
                .rounded(Rounding.toNearest(mm(1)), Rounding.toNearest(degrees(0.5)));

        // 3900 / cos 35° = 4761.02
        assertThat(list)
                .hasToString("12 × common rafter 4761 mm; plumb cut 35° from square; seat cut 35° from the edge");
    }

    @Test
    void a_line_has_at_least_one_timber() {
        assertThatThrownBy(() -> rafter.toCut(0)).hasMessage("count of common rafter must be at least 1, but was 0");
        assertThat(CuttingList.of(List.of()).totalLength()).isEqualTo(Length.ZERO);
    }

    @Test
    void long_and_short_point_are_both_told() {
        CuttingLine line = new CuttingLine("jack rafter", 1, mm(900), mm(850), List.of());

        assertThat(line).hasToString("1 × jack rafter 900 mm long point, 850 mm short point");
    }

    @Test
    void rafters_stand_at_equal_centres_no_wider_than_asked() {
        EvenSpacing spacing = EvenSpacing.of(mm(5153), mm(600));

        assertThat(spacing.gapCount()).isEqualTo(9);
        assertThat(spacing.memberCount()).isEqualTo(10);
        assertThat(spacing.centres()).isEqualTo(mm(5153 / 9.0));
        List<Length> marks = spacing.marks(Rounding.toNearest(mm(1)));
        assertThat(marks).hasSize(10).startsWith(mm(0), mm(573)).endsWith(mm(4580), mm(5153));
        assertThat(spacing.working().disagreements()).isEmpty();
        assertThat(spacing).hasToString("10 members, 9 gaps of 572.555556 mm");
        assertThat(EvenSpacing.of(metres(5.4), mm(600)).gapCount()).isEqualTo(9);
        assertThatThrownBy(() -> EvenSpacing.of(mm(0), mm(-1)))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("distance must be above 0 mm and at most 1000000 mm, but was 0 mm\n"
                        + "greatest centres must be above 0 mm and at most 1000000 mm, but was -1 mm");
        assertThatThrownBy(() -> EvenSpacing.of(metres(900), mm(1)))
                .hasMessage("greatest centres must give at most 100000 gaps, but was 1 mm");
    }
}
