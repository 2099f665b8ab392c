package org.roofmaths.checks.hand;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.roofmaths.covering.UnitKind;
import org.roofmaths.rules.BattenSize;
import org.roofmaths.rules.CeilingForm;
import org.roofmaths.rules.Detail;
import org.roofmaths.rules.Exposure;
import org.roofmaths.rules.Facts;
import org.roofmaths.rules.Insulation;
import org.roofmaths.rules.Metal;
import org.roofmaths.rules.RoofForm;
import org.roofmaths.rules.Situation;
import org.roofmaths.rules.Subjects;
import org.roofmaths.rules.UnderlayClass;
import org.roofmaths.rules.UnderlaySupport;
import org.roofmaths.sheet.SheetTable;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;

/** Which line of the sheet answers which row of the page on fernside. */
final class FernsideProbes {
    private static final String NOW = "nhbc-standards/2024";
    private static final String BEFORE = "nhbc-standards/2020";
    private static final String EDGES = "Edges";
    private static final String MARKS = "main: top edge of the batten";
    private static final String COLUMNS = "main: right edge of each unit";

    private FernsideProbes() {}

    static Map<String, Supplier<Object>> of(SheetProbes p) {
        p.line("a01-01", "rise, plate to apex").line("a01-02", "rafter pitch");
        shape(p);
        p.line("a04-01", "rafter along its top edge, plate to apex")
                .line("a04-02", "tail beyond the plate, on the slope")
                .line("a04-03", "plumb cut, from square")
                .line("a04-06", "bays between rafters");
        suitability(p);
        room(p);
        p.line("a08-07", "main: rows of underlay")
                .probe("a08-09", () -> metres(p, "main: underlay with its joins"))
                .line("a08-13", "main: battens")
                .probe("a08-14", () -> metres(p, "main: battens together"))
                .outcome("a08-03", "batten", "nhbc-standards/2021");
        p.line("a09-02", "main: first batten, top edge of the batten")
                .line("a09-03", "main: top batten, top edge of the batten");
        gauge(p);
        columns(p);
        p.margin("a14-03", "verge overhang, main right", "roofing-consultancy-articles/tips")
                .margin("a14-06", "verge overhang, main right", "trade-practice/undated");
        flashings(p);
        corners(p);
        air(p);
        order(p);
        site(p);
        rules(p);
        return p.all();
    }

    private static BigDecimal metres(SheetProbes p, String label) {
        return ((BigDecimal) p.figure(label)).movePointLeft(3);
    }

    private static BigDecimal cell(SheetProbes p, String table, String row, int column) {
        SheetTable found = p.table(table);
        return found.rows().stream()
                .filter(cells -> cells.get(0).equals(row))
                .map(cells -> SheetProbes.number(cells.get(column)))
                .findFirst()
                .orElseThrow();
    }

    private static void shape(SheetProbes p) {
        p.trueLength("a03-14", "main right verge")
                .slopeAngle("a03-10", "main eaves")
                .slopeAngle("a03-12", "main top abutment")
                .slopeAngle("a03-15", "main right verge")
                .trueLength("a03-17", "main left side abutment")
                .slopeAngle("a03-18", "main left side abutment")
                .probe(
                        "a03-01",
                        () -> SheetProbes.plain(
                                p.roof().edge("main right verge").planLength()))
                .probe("a22-06", () -> SheetProbes.plain(p.roof().face("main").fasciaHeight()));
        p.line("a03-02", "main: slope length, fascia to apex")
                .line("a03-05", "main: width along the eaves")
                .line("a03-06", "main: area along the slope")
                .line("a03-07", "main: area on plan")
                .line("a03-08", "all faces: area on plan")
                .line("a03-04", "tail beyond the plate, on the slope")
                .probe("a03-09", () -> cell(p, EDGES, "main eaves", 3))
                .probe("a03-11", () -> cell(p, EDGES, "main top abutment", 3))
                .probe("a03-13", () -> cell(p, EDGES, "main right verge", 2))
                .probe("a03-16", () -> cell(p, EDGES, "main left side abutment", 2));
    }

    private static void rules(SheetProbes p) {
        Situation tile = Situation.of(UnitKind.CONCRETE_SINGLE_LAP_TILE)
                .withPitch(Pitch.parse("32°"))
                .withExposure(Exposure.SHELTERED)
                .withRafterCentres(Length.parse("600 mm"))
                .withUnderlay(UnderlayClass.HIGH_RESISTANCE, UnderlaySupport.UNSUPPORTED)
                .withInsulation(Insulation.AT_CEILING)
                .withRoofForm(RoofForm.LEAN_TO)
                .withFact(Facts.CEILING_FORM, CeilingForm.LEVEL);
        Situation lead = tile.at(Detail.COVER_FLASHING).withFact(Facts.METAL, Metal.LEAD);
        p.rule("a08-01", "nhbc-standards/2021", Subjects.BATTEN_SIZE, tile, BattenSize::width)
                .rule("a08-02", "nhbc-standards/2021", Subjects.BATTEN_SIZE, tile, BattenSize::depth)
                .rule("a08-05", "roof-tile-association/undated", Subjects.UNDERLAY_HORIZONTAL_LAP, tile)
                .rule("a08-06", "bs-5534/unstated", Subjects.UNDERLAY_HORIZONTAL_LAP, tile)
                .rule("a08-17", "nhbc-standards/2021", Subjects.LEAST_BATTEN_LENGTH, tile)
                .rule("a09-07", "nhbc-standards/2021", Subjects.EAVES_OVERHANG, tile)
                .rule(
                        "a14-01",
                        "roofing-consultancy-articles/tips",
                        Subjects.VERGE_OVERHANG,
                        tile,
                        range -> range.lower().orElseThrow())
                .rule(
                        "a14-02",
                        "roofing-consultancy-articles/tips",
                        Subjects.VERGE_OVERHANG,
                        tile,
                        range -> range.upper().orElseThrow())
                .rule(
                        "a14-04",
                        "trade-practice/undated",
                        Subjects.VERGE_OVERHANG,
                        tile,
                        range -> range.lower().orElseThrow())
                .rule(
                        "a14-05",
                        "trade-practice/undated",
                        Subjects.VERGE_OVERHANG,
                        tile,
                        range -> range.upper().orElseThrow())
                .rule("a15-01", NOW, Subjects.LEAST_LEAD_CODE, lead)
                .rule("a15-02", "bs-en-12588/unstated", Subjects.LEAD_MASS, tile.withFact(Facts.LEAD_CODE, 4))
                .rule("a15-03", NOW, Subjects.LONGEST_PIECE, lead)
                .rule("a15-04", BEFORE, Subjects.FLASHING_SIDE_LAP, lead)
                .rule("a15-05", BEFORE, Subjects.FLASHING_TUCK, lead)
                .rule("a15-06", "roofing-consultancy-articles/tips", Subjects.FLASHING_COVER, lead)
                .rule("a17-03", "ad-f2/1995", Subjects.LOW_VENT_GAP, tile)
                .rule("a17-04", "ad-f2/1995", Subjects.HIGH_VENT_GAP, tile)
                .rule("a24-05", NOW, Subjects.LONGEST_PIECE, lead)
                .outcome("a09-08", "overhang into the gutter", "roof-tiling-and-slating/2013");
    }

    private static void suitability(SheetProbes p) {
        p.asked("a05-01", "pitch", NOW)
                .margin("a05-02", "pitch", NOW)
                .marginPercent("a05-03", "pitch", NOW)
                .outcome("a05-04", "pitch", NOW)
                .asked("a05-05", "pitch", BEFORE)
                .outcome("a05-06", "pitch", BEFORE)
                .asked("a05-07", "headlap, main", NOW)
                .line("a05-08", "main: headlap got")
                .margin("a05-09", "headlap, main", NOW)
                .marginPercent("a05-10", "headlap, main", NOW)
                .outcome("a05-11", "headlap, main", NOW)
                .asked("a05-12", "headlap, main", BEFORE)
                .outcome("a05-13", "headlap, main", BEFORE)
                .line("a05-14", "main: greatest gauge");
    }

    private static void room(SheetProbes p) {
        p.line("a06-06", "highest part of the covering at the wall")
                .asked("a06-07", "upstand", "roofing-consultancy-articles/tips")
                .line("a06-12", "bed joint that takes the flashing")
                .line("a06-14", "upstand got at that joint")
                .line("a06-16", "greatest pitch that the wall allows")
                .line("a06-19", "highest plate at this pitch")
                .line("a06-20", "longest projection at this pitch");
    }

    private static void gauge(SheetProbes p) {
        p.line("a10-02", "main: gauges (spaces)")
                .line("a10-03", "main: gauge")
                .probe("a10-04", () -> BigDecimal.valueOf(p.table(MARKS).rows().size()))
                .line("a10-07", "main: headlap got")
                .cells("a10-", 10, MARKS, 2)
                .probe("a22-03", () -> p.column(MARKS, 3));
    }

    private static void columns(SheetProbes p) {
        p.line("a12-18", "main: cover width")
                .probe(
                        "a12-22",
                        () -> BigDecimal.valueOf(p.table(COLUMNS).rows().size()))
                .probe("a12-23", () -> p.order("invented profiled tile").net().toBigDecimal())
                .probe("a12-24", () -> p.order("half unit").net().toBigDecimal())
                .cells("a12-", 25, COLUMNS, 2)
                .probe("a22-04", () -> p.column(COLUMNS, 2));
    }

    private static void flashings(SheetProbes p) {
        p.line("a15-07", "top: pieces")
                .line("a15-08", "top: metal with laps")
                .line("a15-11", "top: girth")
                .line("a15-12", "top: mass of metal")
                .line("a15-16", "top: wedges")
                .line("a15-27", "side: steps")
                .line("a15-30", "side: step along the slope")
                .line("a15-31", "side: level length of a step")
                .line("a15-59", "side: wall leg")
                .line("a15-60", "side: girth")
                .line("a15-61", "side: pieces")
                .line("a15-62", "side: metal with laps")
                .line("a15-63", "side: mass of metal")
                .probe(
                        "a15-28",
                        () -> SheetProbes.number(
                                p.table("side: steps").rows().get(0).get(1)))
                .probe(
                        "a15-29",
                        () -> SheetProbes.number(
                                last(p.table("side: steps").rows()).get(1)))
                .probe("a15-70", () -> new BigDecimal(p.value("top: mass of metal") + p.value("side: mass of metal")));
    }

    /** The last step ends at the apex line, which is no corner. */
    private static void corners(SheetProbes p) {
        List<List<String>> rows = p.table("side: steps").rows();
        for (int i = 0; i < rows.size() - 1; i++) {
            String cell = rows.get(i).get(4);
            p.probe("a15-" + SheetProbes.two(32 + i), () -> SheetProbes.number(cell));
        }
    }

    private static <T> T last(List<T> list) {
        return list.get(list.size() - 1);
    }

    private static void air(SheetProbes p) {
        p.line("a17-01", "low, main eaves: continuous gap")
                .line("a17-02", "high, main top abutment: continuous gap")
                .line("a17-06", "low, main eaves: free area")
                .line("a17-08", "high, main top abutment: free area")
                .line("a17-09", "high: vents by area")
                .line("a17-11", "high: vents, one at least in every bay")
                .line("a17-14", "low, main eaves: slot if it is open only between rafters")
                .probe(
                        "a17-12",
                        () -> new BigDecimal(
                                p.value("high: free area provided") - p.value("high, main top abutment: free area")));
    }

    private static void order(SheetProbes p) {
        p.probe("a08-16", () -> p.order("batten 25").numberToBuy().orElseThrow())
                .probe("a19-01", () -> p.order("unit nail").net().toBigDecimal())
                .probe("a19-04", () -> p.order("batten nail").net().toBigDecimal())
                .probe("a20-01", () -> p.order("invented profiled tile").net().toBigDecimal())
                .probe(
                        "a20-02",
                        () -> p.order("invented profiled tile").needed().toBigDecimal())
                .probe(
                        "a20-03",
                        () -> BigDecimal.valueOf(
                                p.order("invented profiled tile").numberToBuy().orElseThrow()))
                .probe("a20-04", () -> p.order("invented profiled tile").toBuy().toBigDecimal())
                .probe("a20-05", () -> p.order("invented profiled tile").left().toBigDecimal())
                .probe("a20-06", () -> p.order("half unit").net().toBigDecimal())
                .probe("a20-07", () -> p.order("half unit").needed().toBigDecimal())
                .probe("a20-08", () -> p.order("half unit").toBuy().toBigDecimal())
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
                .probe("a20-15", () -> p.order("underlay").left().toBigDecimal())
                .probe("a20-16", () -> p.order("unit nail").toBuy().toBigDecimal())
                .probe("a20-17", () -> p.order("batten nail").toBuy().toBigDecimal())
                .probe("a20-18", () -> p.order("top vent").toBuy().toBigDecimal())
                .line("a21-01", "net mass of the units")
                .line("a21-03", "mass as bought")
                .line("a07-05", "net mass of the units")
                .line("a24-02", "main: headlap got")
                .line("a25-01", "main: headlap got")
                .line("a25-02", "main: greatest gauge")
                .line("a24-06", "low, main eaves: continuous gap")
                .line("a15-68", "side: steps");
    }

    private static void site(SheetProbes p) {
        p.line("a07-04", "main: mass of the covering on the slope")
                .line("a22-05", "height of the rafters over the plate")
                .line("a22-08", "highest part of the covering at the wall")
                .line("a22-09", "bed joint that takes the flashing");
    }
}
