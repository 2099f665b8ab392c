package org.roofmaths.checks.hand;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.roofmaths.covering.UnitKind;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.rules.BattenSize;
import org.roofmaths.rules.CeilingForm;
import org.roofmaths.rules.Detail;
import org.roofmaths.rules.Exposure;
import org.roofmaths.rules.Facts;
import org.roofmaths.rules.Situation;
import org.roofmaths.rules.Subjects;
import org.roofmaths.rules.UnderlayClass;
import org.roofmaths.rules.UnderlaySupport;
import org.roofmaths.rules.UnitGeometry;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;

/** Which line of the sheet answers which row of the page on tollbar. */
final class TollbarProbes {
    private static final String NOW = "nhbc-standards/2024";
    private static final String BEFORE = "nhbc-standards/2020";
    private static final String FRONT_MARKS = "front: nail line, up";
    private static final String BACK_MARKS = "back: nail line, up";
    private static final String ODD = "front: right edge of each unit, odd courses";
    private static final String EVEN = "front: right edge of each unit, even courses";

    private static final Situation SLATE = Situation.of(UnitKind.NATURAL_SLATE)
            .withPitch(Pitch.parse("40°"))
            .withExposure(Exposure.SHELTERED)
            .withRafterCentres(Length.parse("400 mm"))
            .withUnderlay(UnderlayClass.HIGH_RESISTANCE, UnderlaySupport.UNSUPPORTED)
            .withFact(Facts.UNIT_GEOMETRY, UnitGeometry.WITHIN_STANDARD)
            .withFact(Facts.CEILING_FORM, CeilingForm.LEVEL);

    private TollbarProbes() {}

    static Map<String, Supplier<Object>> of(SheetProbes p) {
        p.line("a01-01", "run, plate to apex")
                .line("a01-02", "rise, plate to apex")
                .line("a01-03", "height of the apex line");
        p.probe(
                "a02-04",
                () -> SheetProbes.number(p.table("Slope length").rows().get(0).get(4)));
        p.line("a03-02", "back: slope length, fascia to apex")
                .line("a02-01", "front: slope length, fascia to apex")
                .line("a03-05", "front: width along the eaves")
                .line("a03-06", "back: area along the slope")
                .line("a03-07", "front: area along the slope")
                .line("a03-10", "front: area on plan")
                .line("a03-11", "all faces: area on plan")
                .line("a03-04", "tail beyond the plate, on the slope")
                .line("a04-01", "rafter along its top edge, plate to apex")
                .line("a04-02", "tail beyond the plate, on the slope")
                .line("a04-03", "plumb cut, from square")
                .line("a04-04", "bays between rafters");
        p.trueLength("a03-13", "front eaves")
                .trueLength("a03-14", "back eaves")
                .probe(
                        "a03-15",
                        () -> SheetProbes.plain(
                                p.roof().edges(EdgeKind.RIDGE).get(0).trueLength()))
                .trueLength("a03-16", "back left verge")
                .trueLength("a03-17", "back right verge")
                .slopeAngle("a03-21", "front left verge")
                .probe(
                        "a03-20",
                        () -> SheetProbes.plain(
                                p.roof().edge("front left verge").planLength()))
                .probe(
                        "a03-22",
                        () -> SheetProbes.plain(
                                p.roof().edges(EdgeKind.RIDGE).get(0).angleInside()))
                .probe("a22-10", () -> SheetProbes.plain(p.roof().face("front").fasciaHeight()))
                .line("a24-02", "back: headlap got")
                .line("a24-04", "front left: headlap got")
                .line("a24-06", "front right: headlap got")
                .line("a24-08", "front: least sidelap")
                .line("a24-09", "low, front eaves: continuous gap")
                .line("a25-01", "back: headlap got")
                .line("a25-02", "back: greatest gauge")
                .rule("a08-04", "roof-tile-association/undated", Subjects.UNDERLAY_HORIZONTAL_LAP, SLATE)
                .rule("a08-05", "bs-5534/unstated", Subjects.UNDERLAY_HORIZONTAL_LAP, SLATE)
                .rule("a08-06", "roof-tile-association/undated", Subjects.UNDERLAY_EDGE_LAP, SLATE.at(Detail.RIDGE))
                .rule("a08-01", "nhbc-standards/2021", Subjects.BATTEN_SIZE, SLATE, BattenSize::width)
                .rule("a08-02", "nhbc-standards/2021", Subjects.BATTEN_SIZE, SLATE, BattenSize::depth)
                .rule("a05-07", "notes-on-building-construction/fidler", Subjects.LEAST_PITCH, SLATE)
                .rule("a05-12", "notes-on-building-construction/fidler", Subjects.LEAST_HEADLAP, SLATE)
                .rule("a14-05", "roof-tiling-and-slating/2013", Subjects.RIDGE_COVER, SLATE.at(Detail.RIDGE))
                .rule(
                        "a12-16",
                        "roofing-consultancy-articles/tips",
                        Subjects.VERGE_OVERHANG,
                        SLATE,
                        range -> range.lower().orElseThrow())
                .rule(
                        "a12-17",
                        "roofing-consultancy-articles/tips",
                        Subjects.VERGE_OVERHANG,
                        SLATE,
                        range -> range.upper().orElseThrow())
                .rule("a17-03", "ad-f2/1995", Subjects.LOW_VENT_GAP, SLATE)
                .outcome("a05-10", "headlap, back", NOW);
        suitability(p);
        p.line("a07-01", "back: units to a square metre")
                .line("a07-02", "back: mass of the covering on the slope")
                .line("a07-03", "back: mass of the covering on plan")
                .line("a07-06", "net mass of the units");
        p.outcome("a08-03", "batten", "nhbc-standards/2021")
                .line("a08-07", "front: rows of underlay")
                .probe("a08-09", () -> p.order("underlay").net().toBigDecimal())
                .probe(
                        "a08-10",
                        () -> BigDecimal.valueOf(
                                p.order("underlay").numberToBuy().orElseThrow()))
                .probe("a08-11", () -> p.order("underlay").left().toBigDecimal())
                .line("a08-13", "front: battens")
                .probe("a08-14", () -> p.order("batten 25").net().toBigDecimal());
        p.line("a09-04", "back: top batten, nail line")
                .line("a09-05", "front left: top batten, nail line")
                .line("a09-06", "front right: top batten, nail line")
                .line("a09-07", "back: first batten, nail line")
                .line("a09-10", "front left: first batten, nail line")
                .line("a09-13", "front right: first batten, nail line");
        gauge(p);
        columns(p);
        air(p);
        order(p);
        return p.all();
    }

    private static void suitability(SheetProbes p) {
        p.asked("a05-01", "pitch", NOW)
                .margin("a05-02", "pitch", NOW)
                .marginPercent("a05-03", "pitch", NOW)
                .outcome("a05-04", "pitch", NOW)
                .asked("a05-05", "pitch", BEFORE)
                .outcome("a05-06", "pitch", BEFORE)
                .line("a05-15", "back: headlap got")
                .line("a05-18", "front left: headlap got")
                .line("a05-21", "front right: headlap got");
    }

    private static void gauge(SheetProbes p) {
        p.line("a10-01", "back: greatest gauge")
                .line("a10-03", "back: gauges (spaces)")
                .line("a10-04", "back: gauge")
                .line("a10-07", "back: headlap got")
                .line("a10-29", "front: gauges (spaces)")
                .line("a10-30", "front left: gauge")
                .line("a10-33", "front left: headlap got")
                .line("a10-56", "front right: gauge")
                .line("a10-59", "front right: headlap got");
        marks(p, 10, BACK_MARKS, 2);
        marks(p, 36, FRONT_MARKS, 2);
        marks(p, 62, FRONT_MARKS, 3);
    }

    /** The first mark of the sheet is that of the under-eaves course, which the page keeps apart. */
    private static void marks(SheetProbes p, int first, String table, int column) {
        List<List<String>> rows = p.table(table).rows();
        for (int i = 1; i < rows.size(); i++) {
            String cell = rows.get(i).get(column);
            p.probe("a10-" + SheetProbes.two(first + i - 1), () -> SheetProbes.number(cell));
        }
    }

    private static void columns(SheetProbes p) {
        p.probe("a12-01", () -> BigDecimal.valueOf(p.table(ODD).rows().size()))
                .line("a12-13", "front: least sidelap")
                .probe("a12-24", () -> p.order("invented slate").net().toBigDecimal())
                .probe("a12-25", () -> p.order("unit-and-a-half").net().toBigDecimal());
        edges(p, 26, ODD);
        edges(p, 50, EVEN);
        p.line("a14-01", "ridge units");
    }

    /** The page measures from the outer edge of the covering, 50 mm outside the wall line that the sheet measures from. */
    private static void edges(SheetProbes p, int first, String table) {
        List<List<String>> rows = p.table(table).rows();
        for (int i = 0; i < rows.size(); i++) {
            String cell = rows.get(i).get(2);
            p.probe(
                    "a12-" + SheetProbes.two(first + i),
                    () -> SheetProbes.number(cell).add(BigDecimal.valueOf(50)));
        }
    }

    private static void air(SheetProbes p) {
        p.line("a17-01", "low, front eaves: continuous gap")
                .line("a17-02", "high, ridge front/back: continuous gap")
                .line("a17-05", "low, front eaves: free area")
                .line("a17-07", "high, ridge front/back: free area")
                .line("a17-08", "bays between rafters")
                .line("a17-09", "low, front eaves: slot if it is open only between rafters");
    }

    private static void order(SheetProbes p) {
        p.probe("a08-17", () -> p.order("batten 25").numberToBuy().orElseThrow())
                .probe("a19-01", () -> p.order("unit nail").net().toBigDecimal())
                .probe("a19-02", () -> p.order("batten nail").net().toBigDecimal())
                .probe("a20-01", () -> p.order("invented slate").net().toBigDecimal())
                .probe("a20-02", () -> p.order("invented slate").needed().toBigDecimal())
                .probe("a20-03", () -> p.order("invented slate").toBuy().toBigDecimal())
                .probe("a20-04", () -> p.order("invented slate").left().toBigDecimal())
                .probe("a20-05", () -> p.order("unit-and-a-half").net().toBigDecimal())
                .probe("a20-06", () -> p.order("unit-and-a-half").needed().toBigDecimal())
                .probe("a20-07", () -> p.order("unit-and-a-half").toBuy().toBigDecimal())
                .probe("a20-08", () -> p.order("ridge unit").toBuy().toBigDecimal())
                .probe("a20-09", () -> p.order("batten 25").net().toBigDecimal())
                .probe("a20-10", () -> p.order("batten 25").needed().toBigDecimal())
                .probe(
                        "a20-11",
                        () -> BigDecimal.valueOf(
                                p.order("batten 25").numberToBuy().orElseThrow()))
                .probe("a20-12", () -> p.order("batten 25").left().toBigDecimal())
                .probe("a20-13", () -> p.order("underlay").net().toBigDecimal())
                .probe(
                        "a20-14",
                        () -> BigDecimal.valueOf(
                                p.order("underlay").numberToBuy().orElseThrow()))
                .probe("a20-15", () -> p.order("unit nail").toBuy().toBigDecimal())
                .probe("a20-16", () -> p.order("batten nail").toBuy().toBigDecimal())
                .line("a21-03", "mass as bought")
                .line("a22-09", "height of the rafters over the plate")
                .line("a22-12", "height of the apex line");
    }
}
