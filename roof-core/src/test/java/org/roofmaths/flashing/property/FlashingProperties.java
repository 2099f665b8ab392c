package org.roofmaths.flashing.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.mm;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.roofmaths.flashing.BedJoints;
import org.roofmaths.flashing.CoverFlashing;
import org.roofmaths.flashing.CoveringLine;
import org.roofmaths.flashing.Demands;
import org.roofmaths.flashing.FlashingPiece;
import org.roofmaths.flashing.Step;
import org.roofmaths.flashing.StepFlashing;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;

class FlashingProperties {
    // each piece is stored to the nearest nanometre, so a run of n pieces may differ by n/2 nm
    private static final double STORAGE = 1e-4;

    @Property
    void pieces_cover_the_run_with_their_laps(@ForAll @IntRange(min = 1, max = 60_000) int run) {
        CoverFlashing flashing = CoverFlashing.along(mm(run), Demands.WALL);

        FlashingPiece last = flashing.pieces().get(flashing.pieceCount() - 1);
        assertThat(last.start().plus(last.length()).toMillimetres()).isCloseTo(run, within(STORAGE));
        assertThat(flashing.pieces()).allMatch(piece -> piece.length().meetsGreatest(mm(1500)));
        for (int i = 1; i < flashing.pieceCount(); i++) {
            FlashingPiece before = flashing.pieces().get(i - 1);
            Length lap = before.start()
                    .plus(before.length())
                    .minus(flashing.pieces().get(i).start());
            assertThat(lap.toMillimetres()).isCloseTo(100, within(STORAGE));
        }
    }

    @Property
    void one_piece_fewer_would_be_too_long(@ForAll @IntRange(min = 1501, max = 60_000) int run) {
        int pieces = CoverFlashing.along(mm(run), Demands.WALL).pieceCount();

        assertThat((pieces - 1) * 1500 - (pieces - 2) * 100).isLessThan(run);
    }

    @Property
    void mass_scales_with_the_metal(@ForAll @IntRange(min = 200, max = 60_000) int run) {
        CoverFlashing flashing = CoverFlashing.along(mm(run), Demands.WALL);

        assertThat(flashing.mass().toKilograms())
                .isCloseTo(flashing.metalLength().toMetres() * 0.25 * 20.41, within(1e-9));
        assertThat(CoverFlashing.along(mm(run + 500), Demands.WALL).mass().isHeavierThan(flashing.mass()))
                .isTrue();
    }

    @Property
    void steps_stay_when_roof_and_joints_move_together(
            @ForAll @IntRange(min = 0, max = 5000) int start,
            @ForAll @IntRange(min = 100, max = 6000) int run,
            @ForAll @DoubleRange(min = 10, max = 70) double degrees,
            @ForAll @IntRange(min = -3000, max = 3000) int up) {
        Pitch pitch = Pitch.ofDegrees(degrees);
        StepFlashing here = StepFlashing.along(
                CoveringLine.sloping(mm(run), pitch, mm(start)), BedJoints.of(mm(0), mm(75)), Demands.WALL);
        StepFlashing there = StepFlashing.along(
                CoveringLine.sloping(mm(run), pitch, mm(start + up)), BedJoints.of(mm(up), mm(75)), Demands.WALL);

        assertThat(there.stepCount()).isEqualTo(here.stepCount());
        assertThat(there.steps().stream().map(Step::end).toList())
                .isEqualTo(here.steps().stream().map(Step::end).toList());
        assertThat(there.working().disagreements()).isEmpty();
    }

    @Property
    void every_step_is_let_in_above_the_water_line_and_less_than_a_course_above_its_start(
            @ForAll @IntRange(min = 0, max = 5000) int start,
            @ForAll @IntRange(min = 100, max = 6000) int run,
            @ForAll @DoubleRange(min = 10, max = 70) double degrees) {
        Pitch pitch = Pitch.ofDegrees(degrees);
        StepFlashing flashing = StepFlashing.along(
                CoveringLine.sloping(mm(run), pitch, mm(start)), BedJoints.of(mm(0), mm(75)), Demands.WALL);

        double water = start + 65 / pitch.cos();
        for (Step step : flashing.steps()) {
            double joint = step.joint().toMillimetres();
            assertThat(joint).isGreaterThanOrEqualTo(water + step.end().toMillimetres() * pitch.tan() - STORAGE);
            assertThat(joint - 75).isLessThanOrEqualTo(water + step.start().toMillimetres() * pitch.tan() + STORAGE);
        }
        assertThat(flashing.steps().get(flashing.stepCount() - 1).end()).isEqualTo(mm(run));
        assertThat(flashing.trays()).hasSize(flashing.stepCount() + 1);
    }
}
