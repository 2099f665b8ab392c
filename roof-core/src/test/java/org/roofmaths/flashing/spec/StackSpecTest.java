package org.roofmaths.flashing.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.level;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;
import static org.roofmaths.units.Quantities.plumb;
import static org.roofmaths.units.Quantities.squareToSlope;
import static org.roofmaths.working.Figure.given;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.roofmaths.flashing.Apron;
import org.roofmaths.flashing.BackGutter;
import org.roofmaths.flashing.BackGutterDemand;
import org.roofmaths.flashing.BedJoints;
import org.roofmaths.flashing.CornerKind;
import org.roofmaths.flashing.CornerWork;
import org.roofmaths.flashing.CoverFlashing;
import org.roofmaths.flashing.CoveringLine;
import org.roofmaths.flashing.Demands;
import org.roofmaths.flashing.Flashing;
import org.roofmaths.flashing.FlashingPiece;
import org.roofmaths.flashing.Leg;
import org.roofmaths.flashing.Returns;
import org.roofmaths.flashing.RollCutting;
import org.roofmaths.flashing.SheetPieces;
import org.roofmaths.flashing.Stack;
import org.roofmaths.flashing.StackCricket;
import org.roofmaths.flashing.StackDemand;
import org.roofmaths.flashing.StackFlashings;
import org.roofmaths.flashing.StepFlashing;
import org.roofmaths.problem.Problem;
import org.roofmaths.roof.FacePoint;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.roof.Roofs;
import org.roofmaths.roof.Slope;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;

class StackSpecTest {
    private static final BedJoints JOINTS = BedJoints.of(mm(0), mm(75));
    private static final CornerWork WELDED = CornerWork.welded(given(mm(25)));
    private static final BackGutterDemand GUTTER = BackGutterDemand.builder()
            .sheet(Demands.CODE_4)
            .upTheStack(given(mm(100)))
            .sole(given(mm(150)))
            .upTheSlope(given(mm(225)))
            .sideLap(given(mm(100)))
            .longestPiece(given(metres(1.5)))
            .build();
    private static final StackDemand DEMAND = StackDemand.builder()
            .walls(Demands.WALL)
            .apronReturns(new Returns(given(mm(150)), WELDED))
            .gutter(GUTTER)
            .gutterReturns(new Returns(given(mm(200)), WELDED))
            .lapDown(given(mm(75)))
            .cricketAbove(given(mm(762)))
            .build();
    /** 665 × 440 on plan at 35°, covering at 5030 mm in front of it; invented. */
    private static final Stack STACK = Stack.of(mm(665), mm(440), pitch("35°"), mm(5030));

    @Test
    void an_apron_goes_round_both_corners() {
        Apron apron = Apron.along(STACK.frontLine(), JOINTS, DEMAND.apronReturns(), Demands.WALL);

        // covering 5030 + 75 = 5105: joint at 5175, upstand 145
        assertThat(apron.joint()).contains(mm(5175));
        assertThat(apron.upstand()).isEqualTo(mm(145));
        assertThat(apron.metalLength()).isEqualTo(mm(665 + 2 * (150 + 25)));
        assertThat(apron.girth()).isEqualTo(mm(25 + 145 + 150));
        assertThat(apron.legs())
                .containsExactly(new Leg("cover", mm(150)), new Leg("upstand", mm(145)), new Leg("tuck", mm(25)));
        // one seam up each corner
        assertThat(apron.seams()).isEqualTo(mm(2 * 145));
        assertThat(apron.working().at(Apron.SEAMS).value()).isEqualTo(mm(290));
        assertThat(apron.working().disagreements()).isEmpty();
        assertThat(apron.name()).isEqualTo("apron");
    }

    @Test
    void a_bossed_corner_has_an_allowance_and_no_seam() {
        Returns bossed = new Returns(given(mm(150)), CornerWork.bossed(given(mm(60))));

        Apron apron = Apron.inChase(STACK.frontLine(), bossed, Demands.WALL);

        assertThat(apron.metalLength()).isEqualTo(mm(665 + 2 * (150 + 60)));
        assertThat(apron.seams()).isEqualTo(Length.ZERO);
        assertThat(apron.working().find(Apron.SEAMS)).isEmpty();
        assertThat(bossed.corners().kind()).isEqualTo(CornerKind.BOSSED);
        assertThat(bossed.corners()).hasToString("bossed corners, 60 mm each");
    }

    @Test
    void a_back_gutter_by_its_legs() {
        BackGutter gutter = BackGutter.behind(mm(665), DEMAND.gutterReturns(), GUTTER);

        assertThat(gutter.girth()).isEqualTo(mm(100 + 150 + 225));
        assertThat(gutter.metalLength()).isEqualTo(mm(665 + 2 * (200 + 25)));
        assertThat(gutter.seams()).isEqualTo(mm(2 * 100));
        assertThat(gutter.mass().toKilograms()).isCloseTo(1.115 * 0.475 * 20.41, within(1e-9));
        assertThat(gutter.working().disagreements()).isEmpty();
    }

    @Test
    void a_cover_flashing_hangs_over_the_upstand_of_another_sheet() {
        // upstand up to 5438 mm: joint at 5475, 37 above it; 75 down over it
        CoverFlashing cover =
                CoverFlashing.overUpstand(CoveringLine.level(mm(665), mm(5438)), JOINTS, given(mm(75)), Demands.WALL);

        assertThat(cover.joint()).contains(mm(5475));
        assertThat(cover.girth()).isEqualTo(mm(25 + 37 + 75));
        assertThat(cover.working().disagreements()).isEmpty();
        assertThatThrownBy(() -> CoverFlashing.overUpstand(STACK.sideLine(), JOINTS, given(mm(0)), Demands.WALL))
                .hasMessage("line must be level, but was " + STACK.sideLine()
                        + "\nlap down over the upstand must be above 0 mm, but was 0 mm");
    }

    @Test
    void a_stack_on_four_sides() {
        StackFlashings round = StackFlashings.around(STACK, JOINTS, DEMAND);

        // 440 ÷ cos(35°) = 537.1 along the slope
        assertThat(round.left().metalLength()).isEqualTo(mm(440 / Math.cos(Math.toRadians(35))));
        assertThat(STACK.sideAlongSlope()).isEqualTo(round.left().metalLength());
        // covering behind 5030 + 440 × tan(35°) = 5338.09; upstand to 5438.09; joint at 5475
        assertThat(round.backCover().joint()).contains(mm(5475));
        assertThat(STACK.backHeight().value()).isEqualTo(mm(5030 + 440 * Math.tan(Math.toRadians(35))));
        assertThat(round.all()).hasSize(5);
        assertThat(round.mass())
                .isEqualTo(round.all().stream().map(Flashing::mass).reduce(Mass.ZERO, Mass::plus));
        assertThat(round.problems()).isEmpty();
        assertThat(round.working().at(Flashing.GIRTH.at("back gutter")).value()).isEqualTo(mm(475));
        assertThat(round.working().at(StepFlashing.STEPS.at("left side")).value())
                .isEqualTo(((StepFlashing) round.left()).stepCount());
        assertThat(round.working().disagreements()).isEmpty();
    }

    @Test
    void prints_a_cutting_list() {
        assertThat(StackFlashings.around(STACK, JOINTS, DEMAND)
                        .toString()
                        .lines()
                        .limit(2))
                .containsExactly(
                        "stack of 665 mm × 440 mm on plan at 35°",
                        "  apron: 1 piece of 1015 mm × 320 mm, 6.629168 kg of lead code 4; cover 150 mm + upstand 145 mm + tuck"
                                + " 25 mm");
    }

    @Test
    void a_double_lap_covering_takes_soakers_at_both_sides() {
        StackFlashings round = StackFlashings.aroundWithSoakers(STACK, JOINTS, mm(100), mm(65), DEMAND, Demands.SOAKER);

        // 537.1 ÷ 100: 6, and one more
        assertThat(round.soakersOfOneSide().orElseThrow().count()).isEqualTo(7);
        assertThat(round.all()).hasSize(7);
        assertThat(round.left().name()).isEqualTo("step flashing over soakers");
        assertThat(round.working().disagreements()).isEmpty();
    }

    @Test
    void a_stack_of_stone_takes_straight_chases() {
        StackFlashings round = StackFlashings.inChases(STACK, DEMAND);

        assertThat(round.left().girth()).isEqualTo(mm(25 + 65 + 150));
        assertThat(round.apron().joint()).isEmpty();
        assertThat(round.backCover().girth()).isEqualTo(mm(25 + 75));
        assertThat(round.working().disagreements()).isEmpty();
    }

    @Test
    void sides_may_run_past_the_stack() {
        StackDemand longer = StackDemand.builder()
                .walls(Demands.WALL)
                .apronReturns(DEMAND.apronReturns())
                .gutter(GUTTER)
                .gutterReturns(DEMAND.gutterReturns())
                .lapDown(given(mm(75)))
                .sideBeyondBack(given(mm(100)))
                .build();

        assertThat(StackFlashings.around(STACK, JOINTS, longer).left().metalLength())
                .isEqualTo(mm(440 / Math.cos(Math.toRadians(35))).plus(mm(100)));
    }

    @Test
    void a_wide_stack_is_told_to_want_a_cricket() {
        // 762 mm: International Residential Code 2021 R903.2.2, 30 in
        StackFlashings round = StackFlashings.attemptAround(
                        Stack.of(mm(800), mm(440), pitch("35°"), mm(5030)), JOINTS, DEMAND)
                .orThrow();

        assertThat(round.problems()).extracting(Problem::toString).containsExactly("""
                a stack 800 mm wide is above 762 mm: a stack cricket is asked for behind it
                  mend: stack: a stack cricket behind it; water led round both sides""");
    }

    @Test
    void a_cricket_is_a_small_gable() {
        StackCricket cricket = StackCricket.behind(mm(1200), pitch("40°"), pitch("30°"));

        // rise 600 × tan(30°); ridge rise ÷ tan(40°)
        assertThat(cricket.rise()).isEqualTo(mm(600 * Math.tan(Math.toRadians(30))));
        assertThat(cricket.ridge().toMillimetres())
                .isCloseTo(600 * Math.tan(Math.toRadians(30)) / Math.tan(Math.toRadians(40)), within(1e-5));
        assertThat(cricket.valley().toMillimetres())
                .isCloseTo(Math.hypot(Math.hypot(600, 412.84), 346.41), within(0.01));
        assertThat(cricket.valleyPitch().toDegrees()).isCloseTo(25.4, within(0.05));
        // two triangles, each half of eaves-to-ridge slope length by ridge
        assertThat(cricket.area().toSquareMetres())
                .isCloseTo(0.6 / Math.cos(Math.toRadians(30)) * 0.41284, within(1e-5));
        assertThat(cricket.working().disagreements()).isEmpty();
        assertThat(StackCricket.behind(STACK, pitch("30°")).rise()).isEqualTo(mm(332.5 * Math.tan(Math.toRadians(30))));
        assertThatThrownBy(() -> StackCricket.behind(mm(0), pitch("40°"), pitch("30°")))
                .hasMessage("width of the stack must be above 0 mm, but was 0 mm");
    }

    private static final RoofFace MAIN = Roofs.leanTo()
            .wallLength(metres(5))
            .projection(metres(3))
            .slope(Slope.heights(metres(2.4), metres(4.65)))
            .eavesOverhang(level(mm(200)))
            .build()
            .face("main");

    @Test
    void a_stack_on_a_face_knows_its_heights() {
        // 3 in 4: fascia line 2400 − 150 = 2250; 1000 up the slope rises 600; covering 80 square is 100 plumb
        Stack stack = Stack.on(MAIN, FacePoint.of(metres(2), metres(1)), mm(600), mm(440), squareToSlope(mm(80)));

        assertThat(stack.frontLine().startHeight()).isEqualTo(mm(2250 + 600 + 100));
        assertThat(stack.sideAlongSlope()).isEqualTo(mm(550));
        assertThat(Stack.on(MAIN, FacePoint.of(metres(2), metres(1)), mm(600), mm(440), plumb(mm(100)))
                        .frontLine()
                        .startHeight())
                .isEqualTo(mm(2950));
        StackFlashings round = StackFlashings.around(stack, JOINTS, DEMAND);
        assertThat(round.working().disagreements()).isEmpty();
        assertThat(round.working().toText()).contains("front of the stack up the slope = 1000 mm  (given)");
    }

    @Test
    void a_stack_across_an_edge_is_refused() {
        assertThatThrownBy(() ->
                        Stack.on(MAIN, FacePoint.of(metres(4.5), metres(1)), mm(600), mm(440), squareToSlope(mm(80))))
                .hasMessage(
                        "stack must stand within the face \"main\", but was 600 mm wide from 4500 mm along and 1000 mm to 1550 mm up"
                                + " the slope");
        assertThatThrownBy(() -> Stack.on(MAIN, FacePoint.of(metres(2), metres(3.9)), mm(600), mm(440), level(mm(80))))
                .hasMessage("covering must be square to the slope or plumb, but was 80 mm level");
        assertThatThrownBy(() -> Stack.on(MAIN, FacePoint.of(metres(2), metres(3.9)), mm(600), mm(440), plumb(mm(80))))
                .hasMessageStartingWith("stack must stand within the face \"main\"");
    }

    @Test
    void refuses_wrong_sizes() {
        assertThatThrownBy(() -> Stack.of(mm(0), mm(-1), pitch("35°"), mm(0))).hasMessage("""
                width of the stack must be above 0 mm, but was 0 mm
                depth of the stack on plan must be above 0 mm, but was -1 mm""");
        assertThatThrownBy(() -> CornerWork.welded(given(mm(0))))
                .hasMessage("metal added at each corner must be above 0 mm, but was 0 mm");
        assertThatThrownBy(() -> new Returns(given(mm(-1)), WELDED))
                .hasMessage("metal past the stack must be 0 mm or more, but was -1 mm");
        assertThatThrownBy(() -> Apron.along(STACK.sideLine(), JOINTS, DEMAND.apronReturns(), Demands.WALL))
                .hasMessage("line must be level; an apron lies along the front, but was " + STACK.sideLine());
        assertThat(Apron.attemptAlong(STACK.sideLine(), JOINTS, DEMAND.apronReturns(), Demands.WALL)
                        .hasValue())
                .isFalse();
        assertThatThrownBy(() -> BackGutterDemand.builder()
                        .sheet(Demands.CODE_4)
                        .upTheStack(given(mm(0)))
                        .sole(given(mm(0)))
                        .upTheSlope(given(mm(0)))
                        .sideLap(given(mm(100)))
                        .longestPiece(given(mm(50)))
                        .build())
                .hasMessage("""
                        back gutter up the stack must be above 0 mm, but was 0 mm
                        sole of the back gutter must be above 0 mm, but was 0 mm
                        back gutter up the slope must be above 0 mm, but was 0 mm
                        longest flashing piece must be longer than its lap of 100 mm, but was 50 mm""");
    }

    @Test
    void pieces_are_cut_from_the_narrowest_roll_that_holds_them() {
        StackFlashings round = StackFlashings.around(STACK, JOINTS, DEMAND);

        RollCutting plan = RollCutting.of(round.all(), List.of(mm(450), mm(300), mm(375)), metres(3));

        // cover over the upstand 136.9 wide and both sides 296.9 wide from the 300 roll, the apron of 320 from the 375
        // roll
        assertThat(plan.rolls()).extracting(RollCutting.Roll::width).containsExactly(mm(300), mm(375));
        assertThat(plan.rolls().get(0).cuts()).hasSize(3);
        assertThat(plan.rolls().get(1)).hasToString("lead code 4, 375 mm × 3000 mm: 1 piece, 1985 mm left");
        assertThat(plan.rolls().get(1).mass().toKilograms()).isCloseTo(0.375 * 3 * 20.41, within(1e-9));
        assertThat(plan.mass().isHeavierThan(plan.rolls().get(1).mass())).isTrue();
        // the back gutter is 475 wide
        assertThat(plan.uncut()).extracting(FlashingPiece::name).containsExactly("back gutter");
        assertThat(plan.problems()).extracting(Problem::toString).containsExactly("""
                back gutter: 1115 mm × 475 mm fits no roll: its girth is 25 mm over 450 mm
                  mend: widest roll: 25 mm more; one piece without a seam""");
        assertThat(plan.toString().lines()).hasSize(2);
    }

    @Test
    void a_piece_longer_than_the_roll_is_told() {
        RollCutting plan = RollCutting.of(
                List.of(SheetPieces.of("lead saddle", 1, metres(1), mm(300), Demands.CODE_4)),
                List.of(mm(300)),
                mm(900));

        assertThat(plan.problems())
                .extracting(Problem::message)
                .containsExactly("lead saddle: 1000 mm × 300 mm fits no roll: its length is 100 mm over 900 mm");
        assertThatThrownBy(() -> RollCutting.of(List.of(), List.of(), mm(0))).hasMessage("""
                roll widths must be one or more, but was none
                roll length must be above 0 mm, but was 0 mm""");
        assertThatThrownBy(() -> RollCutting.of(List.of(), List.of(mm(0)), mm(1)))
                .hasMessage("roll width must be above 0 mm, but was 0 mm");
    }

    @Test
    void loose_pieces_have_a_mass() {
        SheetPieces saddles = SheetPieces.of("lead saddle", 2, mm(400), mm(400), Demands.CODE_4);

        assertThat(saddles.mass().toKilograms()).isCloseTo(2 * 0.4 * 0.4 * 20.41, within(1e-9));
        assertThat(saddles.pieces())
                .extracting(FlashingPiece::name)
                .containsExactly("lead saddle 1 of 2", "lead saddle 2 of 2");
        assertThat(saddles.working().disagreements()).isEmpty();
        assertThatThrownBy(() -> SheetPieces.of("lead saddle", 0, mm(0), mm(-1), Demands.CODE_4))
                .hasMessage("""
                loose pieces of sheet must be 1 or more, but was 0
                length of a loose piece must be above 0 mm, but was 0 mm
                width of a loose piece must be above 0 mm, but was -1 mm""");
    }
}
