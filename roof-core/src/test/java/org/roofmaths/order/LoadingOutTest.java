package org.roofmaths.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.roofmaths.units.Quantities.kg;
import static org.roofmaths.units.Quantities.metres;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Mass;

class LoadingOutTest {
    private static final LoadingOut BOTH = LoadingOut.of(
            List.of(
                    new StackedLoad("front", 276, kg(4.4), metres(6.9), 12),
                    new StackedLoad("back", 276, kg(4.4), metres(6.9), 12)),
            kg(200),
            8);

    /** Check value of the trade: 552 × 4.4 = 2428.8 kg, 176.0 kg per metre of eaves each side (common practice, no document). */
    @Test
    void weighs_both_slopes() {
        assertThat(BOTH.mass()).isEqualTo(kg(2428.8));
        assertThat(BOTH.massOn("front")).isEqualTo(kg(1214.4));
        assertThat(BOTH.massPerMetreOfEaves("back")).isEqualTo(kg(176));
        assertThat(BOTH.working().at(LoadingOut.MASS_PER_METRE.at("front")).value())
                .isEqualTo(kg(176));
        assertThat(BOTH.working().disagreements()).isEmpty();
    }

    @Test
    void loads_the_slopes_in_turn() {
        assertThat(BOTH.liftCount("front")).isEqualTo(7); // 200 / 4.4 = 45.45, 276 / 45 = 6.1
        assertThat(BOTH.lifts()).hasSize(14);
        assertThat(BOTH.lifts()).extracting(Lift::slope).startsWith("front", "back", "front", "back");
        assertThat(BOTH.lifts().get(0)).hasToString("lift 1 to front: 45 units, 198 kg; 198 kg there");
        assertThat(BOTH.lifts().get(13)).hasToString("lift 14 to back: 6 units, 26.4 kg; 1214.4 kg there");
        assertThat(BOTH).hasToString("2428.8 kg in 14 lifts on 2 slopes");
    }

    @Test
    void spreads_stacks_over_the_rafter_lines() {
        assertThat(BOTH.stackCount("front")).isEqualTo(35); // 276 / 8 = 34.5
        assertThat(BOTH.stackMass("front")).isEqualTo(kg(35.2));
        assertThat(BOTH.stacksOnLines("front")).hasSize(12).containsOnly(2L, 3L);
        assertThat(BOTH.stacksOnLines("front").stream()
                        .mapToLong(Long::longValue)
                        .sum())
                .isEqualTo(35);
    }

    @Test
    void prints_the_plan_and_no_verdict() {
        LoadingOut one = LoadingOut.of(List.of(new StackedLoad("main", 60, kg(4.4), metres(5), 9)), kg(150), 10);
        assertThat(one.toText()).isEqualTo("""
                main: 60 units, 264 kg, 52.8 kg to each metre of eaves; 2 lifts of up to 34; 6 stacks of up to 10 (44 kg), at most 1 on each of 9 rafter lines
                lift 1 to main: 34 units, 149.6 kg; 149.6 kg there
                lift 2 to main: 26 units, 114.4 kg; 264 kg there
                Masses are for planning; hoist, scaffold and roof were not assessed.
                """);
    }

    @Test
    void a_lift_that_carries_exactly_so_many_carries_them() {
        // 45 × 4.4 = 198: in binary 198 / 4.4 is 44.99999999999999
        assertThat(LoadingOut.of(List.of(new StackedLoad("main", 90, kg(4.4), metres(5), 9)), kg(198), 10)
                        .lifts())
                .hasSize(2);
    }

    @Property
    void no_slope_gets_ahead_of_the_other_by_more_than_a_lift_while_both_are_loaded(
            @ForAll @IntRange(min = 1, max = 900) int front,
            @ForAll @IntRange(min = 1, max = 900) int back,
            @ForAll @IntRange(min = 5, max = 300) int capacity) {
        LoadingOut plan = LoadingOut.of(
                List.of(
                        new StackedLoad("front", front, kg(4.4), metres(6), 11),
                        new StackedLoad("back", back, kg(2.6), metres(6), 11)),
                kg(capacity),
                6);
        Mass onFront = Mass.ZERO;
        Mass onBack = Mass.ZERO;
        long units = 0;
        for (Lift lift : plan.lifts()) {
            assertThat(lift.mass()).isLessThanOrEqualTo(kg(capacity));
            boolean toFront = lift.slope().equals("front");
            onFront = toFront ? lift.onSlope() : onFront;
            onBack = toFront ? onBack : lift.onSlope();
            units += lift.units();
            if (onFront.isLighterThan(plan.massOn("front")) && onBack.isLighterThan(plan.massOn("back"))) {
                // a hair for the rounding of the sums
                assertThat(onFront.minus(onBack).abs()).isLessThanOrEqualTo(kg(capacity + 1e-9));
            }
        }
        assertThat(units).isEqualTo(front + back);
        assertThat(plan.lifts()).hasSize((int) (plan.liftCount("front") + plan.liftCount("back")));
        assertThat(plan.working().disagreements()).isEmpty();
    }

    @Test
    void refuses_what_cannot_be_lifted_with_every_reason_at_once() {
        assertThatThrownBy(() -> LoadingOut.of(
                        List.of(
                                new StackedLoad("front", 0, kg(4.4), metres(0), 0),
                                new StackedLoad("front", 10, kg(0), metres(5), 1)),
                        kg(4),
                        0))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("""
                        units in a stack must be 1 or more, but was 0
                        units of front must be from 1 to 1000000, but was 0
                        eaves of front must be above 0 mm, but was 0 mm
                        rafter lines of front must be 1 or more, but was 0
                        capacity of a lift must be at least the mass of one unit of front, 4.4 kg, but was 4 kg
                        slopes must each have a name of their own, but was "front" twice
                        mass of one of front must be above 0 kg, but was 0 kg""");
        assertThatThrownBy(() -> LoadingOut.of(List.of(), kg(4), 1)).hasMessage("slopes must be given, but was none");
        assertThatThrownBy(() -> BOTH.massOn("side"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no slope \"side\" in this loading; it has: front, back");
    }
}
