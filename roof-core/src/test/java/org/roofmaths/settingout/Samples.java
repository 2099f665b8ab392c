package org.roofmaths.settingout;

import static org.roofmaths.units.Quantities.kg;
import static org.roofmaths.units.Quantities.level;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.onSlope;

import java.util.List;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.covering.Hanging;
import org.roofmaths.covering.PartUnit;
import org.roofmaths.covering.ShortUnit;
import org.roofmaths.covering.SingleLapUnit;
import org.roofmaths.covering.UnitKind;
import org.roofmaths.units.Range;
import org.roofmaths.working.Figure;

/** Units and schemes for the tests. All names and sizes are invented. */
public final class Samples {
    private Samples() {}

    /** A roll tile with a half unit; 297 to 303 mm of cover. */
    public static final SingleLapUnit TILE = SingleLapUnit.builder()
            .name("roll tile")
            .kind(UnitKind.CONCRETE_SINGLE_LAP_TILE)
            .length(mm(420))
            .hangingLength(mm(395))
            .overallWidth(mm(330))
            .coverWidth(mm(300))
            .leastHeadlap(mm(75))
            .thickness(mm(25))
            .mass(kg(4.4))
            .coverRange(Range.closed(mm(297), mm(303)))
            .leastGauge(mm(310))
            .greatestGauge(mm(345))
            .crownHeight(mm(65))
            .halfUnit(new PartUnit(mm(150), kg(2.6)))
            .build();

    /** The same tile without a half unit. */
    public static final SingleLapUnit TILE_WITHOUT_HALF = SingleLapUnit.builder()
            .name("roll tile")
            .kind(UnitKind.CONCRETE_SINGLE_LAP_TILE)
            .length(mm(420))
            .hangingLength(mm(395))
            .overallWidth(mm(330))
            .coverWidth(mm(300))
            .leastHeadlap(mm(75))
            .thickness(mm(25))
            .mass(kg(4.4))
            .coverRange(Range.closed(mm(297), mm(303)))
            .build();

    /** A slate of 500 x 250 mm, centre-nailed, joints of 3 to 5 mm, with a slate-and-a-half. */
    public static final DoubleLapUnit SLATE = DoubleLapUnit.builder()
            .name("500 x 250 slate")
            .kind(UnitKind.NATURAL_SLATE)
            .length(mm(500))
            .width(mm(250))
            .joint(mm(3))
            .thickness(mm(6))
            .mass(kg(1.6))
            .hanging(Hanging.centreNailed(mm(4)))
            .jointRange(Range.closed(mm(3), mm(5)))
            .unitAndAHalf(new PartUnit(mm(375), kg(2.4)))
            .build();

    /** A plain tile of 265 x 165 mm with under-eaves and tops units. */
    public static final DoubleLapUnit PLAIN_TILE = DoubleLapUnit.builder()
            .name("plain tile")
            .kind(UnitKind.CLAY_PLAIN_TILE)
            .length(mm(265))
            .width(mm(165))
            .joint(mm(1))
            .thickness(mm(12))
            .mass(kg(1.2))
            .hanging(Hanging.onNibs(mm(250)))
            .jointRange(Range.closed(mm(0), mm(3)))
            .unitAndAHalf(new PartUnit(mm(248), kg(1.8)))
            .underEavesUnit(new ShortUnit(mm(190), mm(175), kg(0.85)))
            .topsUnit(new ShortUnit(mm(190), mm(175), kg(0.85)))
            .leastGauge(mm(88))
            .build();

    /** Battens of 50 x 25 mm. */
    public static final BattenDemand BATTENS_50 = battens(50);

    /** Battens of 38 x 25 mm. */
    public static final BattenDemand BATTENS_38 = battens(38);

    static BattenDemand battens(double width) {
        return new BattenDemand(
                Figure.given(mm(width)),
                Figure.given(mm(25)),
                Figure.given(metres(1.2)),
                Figure.given(3),
                List.of(
                        new JointRule(Range.above(mm(200)), Figure.given(1), Figure.given(4)),
                        new JointRule(Range.atMost(mm(200)), Figure.given(3), Figure.given(12))));
    }

    /** A lean-to at 32 degrees with a wall at its left. */
    public static final LayoutScheme FERNSIDE = LayoutScheme.builder()
            .unit(TILE)
            .headlap(Figure.given(mm(75)))
            .overhangIntoGutter(level(mm(50)))
            .topDistance(mm(30))
            .left(FaceEnd.abutment(Range.closed(mm(0), mm(10))))
            .right(FaceEnd.verge(mm(45), Range.closed(mm(38), mm(50))))
            .battens(BATTENS_50)
            .underlayRoll(new UnderlayRoll(metres(1), metres(50)))
            .underlay(new UnderlayDemand(Figure.given(mm(150)), Figure.given(mm(100)), Figure.given(mm(100))))
            .build();

    /** Slates on a garage roof with two verges. */
    public static final LayoutScheme TOLLBAR = LayoutScheme.builder()
            .unit(SLATE)
            .headlap(Figure.given(mm(90)))
            .overhangIntoGutter(onSlope(mm(50)))
            .topDistance(mm(60))
            .left(FaceEnd.verge(mm(50)))
            .right(FaceEnd.verge(mm(50)))
            .battens(BATTENS_50)
            .build();
}
