package org.roofmaths.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.kg;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.onSlope;
import static org.roofmaths.units.Quantities.percent;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.settingout.FaceEnd;
import org.roofmaths.settingout.FaceLayout;
import org.roofmaths.settingout.LayoutScheme;
import org.roofmaths.settingout.Opening;
import org.roofmaths.settingout.PieceKind;
import org.roofmaths.settingout.Samples;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Range;
import org.roofmaths.working.Figure;

class TakeOffTest {
    private static final Pitch LEAN_TO_PITCH = Pitch.ofRiseAndRun(mm(1875), mm(3000));
    private static final FaceLayout LEAN_TO = FaceLayout.on(
            FlatShape.rectangle(mm(5245), LEAN_TO_PITCH.slopeOver(mm(3150))).withPitch(LEAN_TO_PITCH),
            Samples.FERNSIDE);

    private static Map<String, FaceLayout> garage() {
        Map<String, FaceLayout> faces = new LinkedHashMap<>();
        faces.put("front", FaceLayout.on(FlatShape.of(Ends.of(mm(3459), mm(3441)), mm(6100)), Samples.TOLLBAR));
        faces.put("back", FaceLayout.on(FlatShape.rectangle(mm(6100), mm(3459.33)), Samples.TOLLBAR));
        return faces;
    }

    @Test
    void counts_the_tiles_of_the_lean_to_worked_by_hand() {
        TakeOff takeOff = TakeOff.of(Map.of("main", LEAN_TO));

        // 11 courses of 17 tiles and a half one; 11 battens and 5 rows of underlay of 5.245 m
        assertThat(takeOff)
                .hasToString(
                        "roll tile, half unit: 11; roll tile: 187; batten 25 x 50: 57.695 m; underlay 1 m wide: 26.225 m");
        assertThat(takeOff.problems()).isEmpty();
        assertThat(takeOff.item("roll tile").massOfOne()).hasValue(kg(4.4));
        assertThat(takeOff.item("batten 25 x 50").massOfOne()).isEmpty();
    }

    @Test
    void counts_the_slates_of_the_garage_worked_by_hand() {
        TakeOff takeOff = TakeOff.of(garage());

        assertThat(takeOff.item("500 x 250 slate").net().value()).isEqualTo(Amount.pieces(810)); // 2 × 405
        assertThat(takeOff.item("500 x 250 slate, unit-and-a-half").net().value())
                .isEqualTo(Amount.pieces(36)); // 2 × 18
        assertThat(takeOff.item("batten 25 x 50").net().value()).isEqualTo(Amount.of(metres(2 * 17 * 6.1)));
    }

    @Test
    void agrees_with_the_counts_of_the_layout() {
        garage().forEach((face, layout) -> {
            TakeOff takeOff = TakeOff.of(Map.of(face, layout));
            assertThat(takeOff.item("500 x 250 slate").net().value().toPieces())
                    .isEqualTo(layout.counts().orThrow().wholeUnits()
                            + layout.counts().orThrow().count(PieceKind.HALF));
        });
    }

    @Test
    void keeps_the_trail_to_the_courses() {
        OrderLine slates = TakeOff.of(garage()).item("500 x 250 slate").on(OrderTerms.none());

        assertThat(slates.working().at(TakeOff.ON_THE_FACE).formula().toText())
                .startsWith("units on the face = courses laid so (");
        assertThat(slates.working().at(TakeOff.FULL_COURSES).formula().toText())
                .isEqualTo("full courses = number of gauges + 1");
        assertThat(slates.working().disagreements()).isEmpty();
        assertThat(slates.massToBuy()).hasValue(kg(1296)); // 810 × 1.6
    }

    @Test
    void orders_what_was_taken_off() {
        TakeOff takeOff = TakeOff.of(Map.of("main", LEAN_TO));
        OrderTerms tiles = OrderTerms.builder()
                .addAllowances(Allowance.breakage(percent(3)), Allowance.cutting(percent(2)))
                .stock(Stock.packs(180))
                .build();
        Order order = takeOff.order(Map.of("roll tile", tiles));

        assertThat(order.line("roll tile").toBuyInWords()).isEqualTo("2 packs of 180");
        assertThat(order.line("roll tile, half unit").needed()).isEqualTo(Amount.pieces(11));
        assertThat(order.netMass()).isEqualTo(kg(851.4)); // 187 × 4.4 + 11 × 2.6
        assertThat(order.working().disagreements()).isEmpty();
        assertThatThrownBy(() -> takeOff.order(Map.of("slate", tiles)))
                .isInstanceOf(ProblemsException.class)
                .hasMessage(
                        "items of the terms must be among those taken off (roll tile, half unit, roll tile, batten 25 x 50,"
                                + " underlay 1 m wide), but was \"slate\"");
    }

    @Test
    void holds_the_count_against_the_area() {
        CountCheck leanTo = TakeOff.of(Map.of("main", LEAN_TO)).check("main").orElseThrow();
        assertThat(leanTo)
                .hasToString(
                        "192.5 units by count, 195.48 by area (-1.52 %): -1.64 up the slope, -1.34 across, 0 by the shape of the face");

        // the hand page: 17 × 24 = 408 against 424.77 by area, 3.95 per cent less
        CountCheck back = TakeOff.of(garage()).check("back").orElseThrow();
        assertThat(back.byCount().toDouble()).isCloseTo(408, within(1e-9)); // rounding of doubles
        assertThat(back.working().disagreements()).isEmpty();
        assertThatThrownBy(() -> TakeOff.of(garage()).check("side"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no face \"side\" in this take-off; it has: front, back");
    }

    @Test
    void counts_what_is_left_round_an_opening() {
        Opening stack = Opening.builder()
                .name("stack")
                .along(mm(2100))
                .up(mm(1850))
                .width(mm(600))
                .height(mm(720))
                .build();
        FaceLayout layout = FaceLayout.on(LEAN_TO.shape(), Samples.FERNSIDE.withOpenings(List.of(stack)));
        TakeOff takeOff = TakeOff.of(Map.of("main", layout));

        long tiles = takeOff.item("roll tile").net().value().toPieces();
        assertThat(tiles).isLessThan(187).isEqualTo(layout.counts().orThrow().wholeUnits());
        assertThat(takeOff.item("roll tile").on(OrderTerms.none()).working().disagreements())
                .isEmpty();
    }

    @Test
    void plain_tiles_take_short_units_at_eaves_and_top() {
        LayoutScheme scheme = LayoutScheme.builder()
                .unit(Samples.PLAIN_TILE)
                .headlap(Figure.given(mm(65)))
                .overhangIntoGutter(onSlope(mm(50)))
                .topDistance(mm(30))
                .left(FaceEnd.verge(mm(40), Range.closed(mm(30), mm(60))))
                .right(FaceEnd.verge(mm(40), Range.closed(mm(30), mm(60))))
                .build();
        FaceLayout layout = FaceLayout.on(FlatShape.rectangle(mm(5000), mm(4000)), scheme);
        TakeOff takeOff = TakeOff.of(Map.of("main", layout));

        assertThat(takeOff.items())
                .extracting(TakeOffItem::name)
                .contains("plain tile", "plain tile, under-eaves unit", "plain tile, tops unit");
        long all = takeOff.items().stream()
                .mapToLong(item -> item.net().value().toPieces())
                .sum();
        assertThat(all).isEqualTo(layout.counts().orThrow().total());
    }

    @Test
    void a_face_that_does_not_fit_is_said_and_left_out() {
        FaceLayout narrow =
                FaceLayout.on(FlatShape.rectangle(mm(200), mm(3714)).withPitch(LEAN_TO_PITCH), Samples.FERNSIDE);
        TakeOff takeOff = TakeOff.of(Map.of("main", narrow));

        assertThat(takeOff.items())
                .extracting(TakeOffItem::name)
                .containsExactly("batten 25 x 50", "underlay 1 m wide");
        assertThat(takeOff.problems())
                .singleElement()
                .extracting(Problem::message)
                .asString()
                .startsWith("the units of main are not counted: ");
        assertThat(takeOff.check("main")).isEmpty();
        assertThatThrownBy(() -> TakeOff.of(Map.of())).hasMessage("layouts must hold at least one face, but was none");
        assertThatThrownBy(() -> takeOff.item("tile"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no \"tile\" in this take-off; it has: batten 25 x 50, underlay 1 m wide");
    }
}
