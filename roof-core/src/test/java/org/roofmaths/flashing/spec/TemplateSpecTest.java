package org.roofmaths.flashing.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.roofmaths.flashing.BedJoints;
import org.roofmaths.flashing.CoverFlashing;
import org.roofmaths.flashing.CoveringLine;
import org.roofmaths.flashing.Demands;
import org.roofmaths.flashing.FlashingPiece;
import org.roofmaths.flashing.Fold;
import org.roofmaths.flashing.PieceTemplate;
import org.roofmaths.flashing.StepFlashing;
import org.roofmaths.roof.FacePoint;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;

class TemplateSpecTest {
    private static final Pitch THREE_IN_FOUR = Pitch.ofRiseAndRun(mm(3), mm(4));
    private static final BedJoints JOINTS = BedJoints.of(mm(0), mm(75));
    // corners of the outline are sums of a handful of lengths stored to the nanometre
    private static final double STORAGE = 1e-4;

    @Test
    void a_cover_flashing_is_a_rectangle_with_two_folds() {
        CoverFlashing flashing = CoverFlashing.along(metres(1.2), Demands.WALL);

        PieceTemplate template = flashing.template(flashing.pieces().get(0));

        assertThat(template.outline())
                .containsExactly(
                        FacePoint.of(mm(0), mm(0)),
                        FacePoint.of(mm(1200), mm(0)),
                        FacePoint.of(mm(1200), mm(250)),
                        FacePoint.of(mm(0), mm(250)));
        assertThat(template.folds())
                .containsExactly(
                        new Fold("cover to upstand", FacePoint.of(mm(0), mm(150)), FacePoint.of(mm(1200), mm(150))),
                        new Fold("upstand to tuck", FacePoint.of(mm(0), mm(225)), FacePoint.of(mm(1200), mm(225))));
        assertThat(template.area()).isEqualTo(flashing.metalArea());
    }

    @Test
    void a_step_flashing_steps_from_joint_to_joint() {
        // 3 in 4; water line 65 square is 81.25 plumb. Covering at −81.25 at the start, so the water line starts on a
        // joint; 200 of run
        // rise 150: two steps
        CoveringLine line = CoveringLine.sloping(mm(200), THREE_IN_FOUR, mm(-81.25));
        StepFlashing flashing = StepFlashing.along(line, JOINTS, Demands.WALL);

        PieceTemplate template = StepFlashing.along(
                        line.extendedBy(mm(0), flashing.plumbCutPastEnd()), JOINTS, Demands.WALL)
                .template(StepFlashing.along(line.extendedBy(mm(0), flashing.plumbCutPastEnd()), JOINTS, Demands.WALL)
                        .pieces()
                        .get(0));

        // the plumb cut at the end: 81.25 above the covering to the joint at 150, and the tuck of 25, times sin = 0.6
        assertThat(flashing.plumbCutPastEnd()).isEqualTo(mm((81.25 + 25) * 0.6));
        // highest corner, at the start of the first step: joint 75 over the water line, with tuck: the whole girth
        double girth = flashing.girth().toMillimetres();
        assertThat(girth).isEqualTo(150 + 65 + 100 * 0.8);
        assertThat(up(template)).isCloseTo(girth, within(STORAGE));
        assertThat(template.outline()).hasSize(9);
        // the notch between the steps lies on the water line, with the tuck beyond it: 65 + 25 × 0.8 over the fold
        assertThat(template.outline())
                .anySatisfy(point ->
                        assertThat(point.up().toMillimetres()).isCloseTo(150 + 65 + 25 * 0.8, within(STORAGE)));
        assertThat(template.folds())
                .extracting(Fold::name)
                .containsExactly("cover to wall", "tuck of step 2", "tuck of step 1");
    }

    private static double up(PieceTemplate template) {
        return template.outline().stream()
                .mapToDouble(point -> point.up().toMillimetres())
                .max()
                .orElseThrow();
    }

    @Test
    void pieces_of_a_step_flashing_make_up_its_shape() {
        CoveringLine line = CoveringLine.sloping(metres(3), Pitch.ofDegrees(35), metres(2.4));
        StepFlashing flashing = StepFlashing.along(line, JOINTS, Demands.WALL);
        StepFlashing soakers = StepFlashing.overSoakers(line, JOINTS, Demands.WALL);

        for (StepFlashing each : List.of(flashing, soakers)) {
            for (FlashingPiece piece : each.pieces()) {
                PieceTemplate template = each.template(piece);
                assertThat(template.outline())
                        .allSatisfy(point -> assertThat(point.along().toMillimetres())
                                .isBetween(-STORAGE, piece.length().toMillimetres() + STORAGE))
                        .allSatisfy(point -> assertThat(point.up().toMillimetres())
                                .isBetween(-STORAGE, each.girth().toMillimetres() + STORAGE));
                assertThat(template.area().isPositive()).isTrue();
                assertThat(template.area().isLessThan(piece.length().times(piece.girth())))
                        .isTrue();
            }
        }
    }

    @Test
    void metal_beyond_the_start_is_part_of_the_cover_only() {
        CoveringLine line =
                CoveringLine.sloping(metres(1), THREE_IN_FOUR, mm(-81.25)).extendedBy(mm(50), mm(0));
        StepFlashing flashing = StepFlashing.along(line, JOINTS, Demands.WALL);

        PieceTemplate template = flashing.template(flashing.pieces().get(0));

        assertThat(template.outline())
                .contains(FacePoint.of(mm(0), mm(0)), FacePoint.of(mm(0), mm(150)), FacePoint.of(mm(50), mm(150)));
    }

    @Test
    void refuses_a_piece_of_another_flashing() {
        FlashingPiece other = new FlashingPiece("a stranger", Length.ZERO, mm(100), mm(100));
        CoverFlashing flashing = CoverFlashing.along(metres(1.2), Demands.WALL);
        StepFlashing step =
                StepFlashing.along(CoveringLine.sloping(metres(1), THREE_IN_FOUR, mm(0)), JOINTS, Demands.WALL);

        assertThatThrownBy(() -> flashing.template(other))
                .hasMessage("piece must be one of the cover flashing, but was a stranger: 100 mm × 100 mm");
        assertThatThrownBy(() -> step.template(other)).isInstanceOf(IllegalArgumentException.class);
    }
}
