package org.roofmaths.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.problem.Severity;
import org.roofmaths.units.Length;

class RoofPlanTest {
    private static final EdgeTreatment.Eaves EAVES = EdgeTreatment.eaves(pitch("40°"));

    private static RoofPlan.Builder house() {
        return RoofPlan.builder()
                .corner("south", metres(0), metres(0))
                .corner("east", metres(10), metres(0))
                .corner("north", metres(10), metres(6))
                .corner("west", metres(0), metres(6))
                .everySide(EAVES);
    }

    private static RoofPlan.Builder numbered(double... coordinates) {
        RoofPlan.Builder builder = RoofPlan.builder().everySide(EAVES);
        for (int i = 0; i < coordinates.length; i += 2) {
            builder.corner(metres(coordinates[i]), metres(coordinates[i + 1]));
        }
        return builder;
    }

    @Test
    void names_its_sides_and_knows_what_the_roof_does_along_each() {
        RoofPlan plan = house().side("east", EdgeTreatment.gable()).build();

        assertThat(plan.outline()).extracting(PlanSide::name).containsExactly("south", "east", "north", "west");
        assertThat(plan.side("east").treatment()).isEqualTo(EdgeTreatment.gable());
        assertThat(plan.side("west").treatment()).isEqualTo(EAVES);
        assertThat(plan.side("north")).hasToString("north: eaves at 40°, from (10000 mm, 6000 mm) to (0 mm, 6000 mm)");
        assertThat(plan)
                .hasToString("plan of 4 sides")
                .isEqualTo(house().side("east", EdgeTreatment.gable()).build());
    }

    @Test
    void a_corner_without_a_name_names_its_side_by_number() {
        assertThat(numbered(0, 0, 4, 0, 4, 3).build().outline())
                .extracting(PlanSide::name)
                .containsExactly("1", "2", "3");
    }

    @Test
    void a_courtyard_has_the_roof_to_the_left_of_its_sides() {
        RoofPlan plan = house().courtyard()
                .corner("inner south", metres(3), metres(2))
                .corner("inner east", metres(6), metres(2))
                .corner("inner north", metres(6), metres(4))
                .corner("inner west", metres(3), metres(4))
                .build();

        assertThat(plan).hasToString("plan of 4 sides and a courtyard of 4 sides");
        assertThat(plan.courtyards()).hasSize(1);
        assertThat(plan.side("inner south"))
                .hasToString("inner south: eaves at 40°, from (6000 mm, 2000 mm) to (3000 mm, 2000 mm)");
    }

    @Test
    void a_clockwise_ring_is_turned_round_and_noted() {
        Attempt<RoofPlan> plan = RoofPlan.builder()
                .corner("west", metres(0), metres(0))
                .corner("north", metres(0), metres(6))
                .corner("east", metres(10), metres(6))
                .corner("south", metres(10), metres(0))
                .everySide(EAVES)
                .attempt();

        assertThat(plan.problems()).extracting(Problem::severity).containsExactly(Severity.NOTICE);
        assertThat(plan.problems())
                .extracting(Problem::message)
                .containsExactly("the corners of the outline were given clockwise; they are kept against the clock");
        assertThat(plan.orThrow().outline())
                .extracting(PlanSide::name)
                .containsExactly("south", "east", "north", "west");
        assertThat(plan.orThrow().side("south")).isEqualTo(house().build().side("south"));
    }

    @Test
    void refuses_a_bow_tie() {
        assertThatThrownBy(() -> numbered(0, 0, 4, 4, 4, 0, 0, 4).build())
                .isInstanceOf(ProblemsException.class)
                .hasMessage("side \"3\" must keep clear of side \"1\","
                        + " but was from (4000 mm, 0 mm) to (0 mm, 4000 mm)");
    }

    @Test
    void refuses_a_repeated_corner() {
        assertThatThrownBy(() -> numbered(0, 0, 4, 0, 4, 0, 4, 4).build())
                .hasMessage("corner where side \"3\" starts must differ from the corner before it,"
                        + " but was (4000 mm, 0 mm)");
    }

    @Test
    void refuses_a_ring_that_closes_twice() {
        assertThatThrownBy(() -> numbered(0, 0, 4, 0, 4, 4, 0, 0).build())
                .hasMessage(
                        "corner where side \"1\" starts must differ from the corner before it, but was (0 mm, 0 mm)");
    }

    @Test
    void refuses_a_spike() {
        assertThatThrownBy(() -> numbered(0, 0, 4, 0, 6, 0, 4, 0, 4, 4).build())
                .hasMessage("corner where side \"3\" starts must not turn straight back along the side before it,"
                        + " but was (6000 mm, 0 mm)");
    }

    @Test
    void refuses_a_ring_that_touches_itself() {
        assertThatThrownBy(() -> numbered(0, 0, 6, 0, 6, 4, 3, 0, 0, 4).build())
                .hasMessage(
                        "side \"3\" must keep clear of side \"1\", but was from (6000 mm, 4000 mm) to (3000 mm, 0 mm)\n"
                                + "side \"4\" must keep clear of side \"1\", but was from (3000 mm, 0 mm) to (0 mm, 4000 mm)");
    }

    @Test
    void a_sliver_of_a_micrometre_is_no_repeated_corner() {
        RoofPlan plan = RoofPlan.builder()
                .corner(mm(0), mm(0))
                .corner(mm(4000), mm(0))
                .corner(mm(4000), mm(0.001))
                .corner(mm(4000), mm(3000))
                .everySide(EAVES)
                .build();

        assertThat(plan.outline()).hasSize(4);
    }

    @Test
    void refuses_a_courtyard_that_crosses_touches_or_lies_outside() {
        assertThatThrownBy(() -> numbered(0, 0, 6, 0, 6, 6, 0, 6)
                        .courtyard()
                        .corner(metres(5), metres(2))
                        .corner(metres(8), metres(2))
                        .corner(metres(5), metres(4))
                        .build())
                .hasMessage(
                        "side \"5\" must keep clear of side \"2\", but was from (5000 mm, 2000 mm) to (8000 mm, 2000 mm)\n"
                                + "side \"6\" must keep clear of side \"2\", but was from (8000 mm, 2000 mm) to (5000 mm, 4000 mm)");
        assertThatThrownBy(() -> numbered(0, 0, 6, 0, 6, 6, 0, 6)
                        .courtyard()
                        .corner(metres(6), metres(2))
                        .corner(metres(4), metres(3))
                        .corner(metres(4), metres(2))
                        .build())
                .hasMessageStartingWith("side \"5\" must keep clear of side \"2\"");
        assertThatThrownBy(() -> numbered(0, 0, 6, 0, 6, 6, 0, 6)
                        .courtyard()
                        .corner(metres(7), metres(2))
                        .corner(metres(8), metres(2))
                        .corner(metres(8), metres(3))
                        .build())
                .hasMessage("courtyard 1 must lie inside the outline, but was at (7000 mm, 2000 mm)");
        assertThatThrownBy(() -> numbered(0, 0, 9, 0, 9, 9, 0, 9)
                        .courtyard()
                        .corner(metres(1), metres(1))
                        .corner(metres(8), metres(1))
                        .corner(metres(1), metres(8))
                        .courtyard()
                        .corner(metres(2), metres(2))
                        .corner(metres(3), metres(2))
                        .corner(metres(2), metres(3))
                        .build())
                .hasMessage("courtyard 2 must not lie inside courtyard 1, but was at (2000 mm, 2000 mm)");
    }

    @Test
    void reports_everything_that_is_wrong_at_once() {
        Attempt<RoofPlan> plan = RoofPlan.builder()
                .corner("a", metres(0), metres(0))
                .corner("a", metres(2e7), metres(0))
                .corner(" ", metres(4), metres(4))
                .side("b", EdgeTreatment.gable())
                .side("a", EAVES.withOverhang(mm(-1)).withPlateAt(mm(2e6)))
                .courtyard()
                .corner("c", metres(1), metres(1))
                .attempt();

        assertThat(plan.problems())
                .extracting(Problem::message)
                .containsExactly(
                        "name \"a\" must name one side, but was the name of 2",
                        "name of a side must have a letter or a digit, but was \" \"",
                        "side to treat must be one of a,  , c, but was \"b\"",
                        "overhang of side \"a\" must be from 0 mm to 1000000 mm, but was -1 mm",
                        "plate height of side \"a\" must be from -1000000 mm to 1000000 mm, but was 2000000 mm",
                        "overhang of side \"a\" must be from 0 mm to 1000000 mm, but was -1 mm",
                        "plate height of side \"a\" must be from -1000000 mm to 1000000 mm, but was 2000000 mm",
                        "side \" \" must be an eaves, a gable or an abutment, but was not said",
                        "side \"c\" must be an eaves, a gable or an abutment, but was not said",
                        "corner where side \"a\" starts must have coordinates from -10000000000 mm to 10000000000 mm,"
                                + " but was (20000000000 mm, 0 mm)",
                        "courtyard 1 must have at least 3 corners, but was 1 corners");
    }

    @Test
    void refuses_a_plan_from_which_no_water_can_leave() {
        assertThatThrownBy(() -> house().everySide(EdgeTreatment.gable()).build())
                .hasMessage("plan must have an eaves, but was without one");
    }

    @Test
    void refuses_a_plan_beyond_a_kilometre() {
        assertThatThrownBy(() -> numbered(0, 0, 1001, 0, 1001, 5, 0, 5).build())
                .hasMessage("outline must be at most 1000000 mm from end to end, but was 1001000 mm");
    }

    @Test
    void asks_for_a_side_that_exists() {
        assertThatThrownBy(() -> house().build().side("front"))
                .hasMessage("side must be one of south, east, north, west, but was \"front\"");
    }

    @Test
    void ten_thousand_corners_are_checked_without_delay() {
        RoofPlan.Builder builder = RoofPlan.builder().everySide(EAVES);
        IntStream.range(0, 10_000).forEach(i -> {
            double turn = Math.toRadians(i * 360.0 / 10_000);
            builder.corner(metres(100 * Math.cos(turn)), metres(100 * Math.sin(turn)));
        });

        assertThat(builder.build().outline()).hasSize(10_000);
    }

    @Test
    void a_plan_far_from_the_origin_keeps_its_nanometres() {
        Length far = metres(10_000_000).minus(metres(10));
        RoofPlan plan = RoofPlan.builder()
                .corner(far, far)
                .corner(far.plus(Length.ofNanometres(3)), far)
                .corner(far.plus(metres(4)), far.plus(metres(4)))
                .corner(far, far.plus(Length.ofNanometres(1)))
                .everySide(EAVES)
                .build();

        assertThat(plan.outline()).hasSize(4);
    }
}
