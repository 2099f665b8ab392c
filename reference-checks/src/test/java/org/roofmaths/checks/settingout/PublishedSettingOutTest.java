package org.roofmaths.checks.settingout;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.covering.Hanging;
import org.roofmaths.covering.PartUnit;
import org.roofmaths.covering.ShortUnit;
import org.roofmaths.covering.SingleLapUnit;
import org.roofmaths.covering.UnitKind;
import org.roofmaths.problem.Attempt;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.settingout.BattenDemand;
import org.roofmaths.settingout.BuildUp;
import org.roofmaths.settingout.Columns;
import org.roofmaths.settingout.CourseKind;
import org.roofmaths.settingout.Courses;
import org.roofmaths.settingout.DiminishingCourses;
import org.roofmaths.settingout.EavesSection;
import org.roofmaths.settingout.FaceEnd;
import org.roofmaths.settingout.FaceLayout;
import org.roofmaths.settingout.GaugeRod;
import org.roofmaths.settingout.Layer;
import org.roofmaths.settingout.LayoutScheme;
import org.roofmaths.settingout.PieceKind;
import org.roofmaths.settingout.SameLevels;
import org.roofmaths.settingout.SlateGroup;
import org.roofmaths.settingout.Underlay;
import org.roofmaths.settingout.UnderlayDemand;
import org.roofmaths.settingout.UnderlayRoll;
import org.roofmaths.units.Direction;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;
import org.roofmaths.units.Offset;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Range;
import org.roofmaths.working.Figure;

/** The figures of {@code data/tiling-slating/cases.csv}, sources named there, put to setting out row by row. */
class PublishedSettingOutTest {
    private static final Path CASES = Path.of("data", "tiling-slating", "cases.csv");
    private static final String DOCUMENT = "a figure of a document: kept with the rules, not worked out by setting out";
    private static final String ORDER = "a quantity to order: not setting out";
    private static final String GEOMETRY = "geometry of the roof or its metal: not setting out";
    private static final String NO_PART = "no part of the library answers it";

    /** The rows that setting out does not answer, and why. */
    private static final Map<String, String> CANNOT_DECIDE = cannotDecide();

    private static Map<String, String> cannotDecide() {
        Map<String, String> map = new TreeMap<>();
        for (String id : List.of(
                "004 005 016 038 039 041 052 081 082 083 085 086 100 101 102 103 104 105 106 107 111 112 114 118 121 122 123 124"
                        .split(" "))) {
            map.put("TS-" + id, DOCUMENT);
        }
        for (String id : List.of(
                "126 127 128 129 130 131 137 138 140 141 142 143 145 147 148 149 150 151 152 155 156 157 163 166 169 190 192 193"
                        .split(" "))) {
            map.put("TS-" + id, DOCUMENT);
        }
        for (String id : List.of("194 201 202 203 204 207 208 209".split(" "))) {
            map.put("TS-" + id, DOCUMENT);
        }
        for (String id : List.of("161 170 172 173 174 175 177 179 181 182 184 185 187".split(" "))) {
            map.put("TS-" + id, ORDER);
        }
        for (String id : List.of("158 165 167 195".split(" "))) {
            map.put("TS-" + id, GEOMETRY);
        }
        map.put("TS-028", NO_PART + ": the width of a unit-and-a-half is measured, not worked out");
        map.put("TS-136", NO_PART + ": laps widened to the next batten");
        map.put("TS-007", DOCUMENT + "; half bond has its joints at half a cover");
        return map;
    }

    private static Map<String, String> parsed(String keysAndValues) {
        Map<String, String> map = new LinkedHashMap<>();
        for (String part : (Iterable<String>) Stream.of(keysAndValues.split("; ", -1))::iterator) {
            int equals = part.indexOf('=');
            if (!part.startsWith("note=")) {
                map.put(part.substring(0, equals), part.substring(equals + 1));
            }
        }
        return map;
    }

    /** The given quantities of a row, lengths by the end of their key. */
    private record Row(Map<String, String> given) {
        boolean has(String key) {
            return given.containsKey(key)
                    || given.containsKey(key + "_mm")
                    || given.containsKey(key + "_in")
                    || given.containsKey(key + "_m");
        }

        double number(String key) {
            return Double.parseDouble(given.get(key));
        }

        Length length(String key) {
            if (given.containsKey(key + "_mm")) {
                return Length.ofMillimetres(number(key + "_mm"));
            }
            return given.containsKey(key + "_in")
                    ? Length.ofDecimalInches(number(key + "_in"))
                    : Length.ofMetres(number(key + "_m"));
        }

        Pitch pitch(String key) {
            return Pitch.ofDegrees(number(key + "_deg"));
        }
    }

    /** The answers of a row; a length is given in millimetres, inches and metres, for the row to pick. */
    private static final class Answers extends LinkedHashMap<String, Object> {
        private static final long serialVersionUID = 1L;

        Answers length(String name, Length length) {
            put(name + "_mm", length.toMillimetres());
            put(name + "_in", length.toInches());
            put(name + "_m", length.toMetres());
            return this;
        }

        Answers number(String name, double number) {
            put(name, number);
            return this;
        }

        Answers word(String name, String word) {
            put(name, word);
            return this;
        }
    }

    private static DoubleLapUnit doubleLap(Length length, Length width, Length joint, Hanging hanging) {
        return DoubleLapUnit.builder()
                .name("unit of the row")
                .kind(UnitKind.NATURAL_SLATE)
                .length(length)
                .width(width)
                .joint(joint)
                .thickness(Length.ofMillimetres(6))
                .mass(Mass.ofKilograms(1))
                .hanging(hanging)
                .build();
    }

    private static SingleLapUnit singleLap(Length length, Length cover, Length overall, Range<Length> covers) {
        return SingleLapUnit.builder()
                .name("unit of the row")
                .kind(UnitKind.CONCRETE_SINGLE_LAP_TILE)
                .length(length)
                .hangingLength(length.minus(Length.ofMillimetres(25)))
                .overallWidth(overall)
                .coverWidth(cover)
                .leastHeadlap(Length.ofMillimetres(1))
                .thickness(Length.ofMillimetres(20))
                .mass(Mass.ofKilograms(4))
                .coverRange(covers)
                .build();
    }

    private static void perArea(Answers answers, CoveringUnit unit, Length gauge) {
        double perSquareMetre = unit.unitsPerSquareMetre(gauge).value();
        answers.number("tiles_per_m2", perSquareMetre)
                .number("slates_per_m2", perSquareMetre)
                // 100 square feet, and a square yard
                .number("slates_per_square", perSquareMetre * 100 * 0.3048 * 0.3048)
                .number("tiles_per_yd2", perSquareMetre * 0.9144 * 0.9144)
                .number("battens_m_per_m2", unit.battenPerSquareMetre(gauge).value());
    }

    private static Answers answers(String id, String topic, Row row) {
        Answers answers = new Answers();
        Length zero = Length.ZERO;
        switch (id) {
            case "TS-001", "TS-003", "TS-026", "TS-197", "TS-198" -> {
                boolean biber = id.compareTo("TS-190") > 0;
                Length width = biber ? row.length("width") : Length.ofMillimetres(165);
                DoubleLapUnit tile = doubleLap(
                        row.length("length"),
                        width,
                        zero,
                        Hanging.onNibs(row.length("length").minus(Length.ofMillimetres(15))));
                // least overlaps of the tile by pitch: German roofers' open wiki, in the expected column
                Length headlap = biber ? Length.ofMillimetres(id.equals("TS-197") ? 80 : 60) : row.length("headlap");
                Length gauge = tile.gaugeFor(headlap).value();
                answers.length("gauge", gauge).length("lath_spacing_max", gauge).length("overlap_min", headlap);
                perArea(answers, tile, gauge);
            }
            case "TS-008", "TS-009", "TS-011", "TS-013" ->
                perArea(
                        answers,
                        doubleLap(
                                Length.ofMillimetres(265),
                                row.length("cover_width"),
                                zero,
                                Hanging.onNibs(Length.ofMillimetres(250))),
                        row.length("gauge"));
            case "TS-014", "TS-018" -> plainTileSpecials(row, answers);
            case "TS-019", "TS-031", "TS-034", "TS-089" -> divided(row, answers);
            case "TS-021", "TS-035", "TS-036" -> limits(row, answers);
            case "TS-023" -> {
                SameLevels levels = SameLevels.over(
                        row.length("vertical_rise"),
                        Range.closed(row.length("gauge_min"), row.length("gauge_max")),
                        row.pitch("pitch_1"),
                        row.pitch("pitch_2"));
                answers.number("gaps", levels.gaugeCount())
                        .length("gauge_1", levels.gauges().get(0))
                        .length("gauge_2", levels.gauges().get(1))
                        .word("feasible", "yes");
            }
            case "TS-025" ->
                answers.number(
                        "pitch_steepest_deg",
                        SameLevels.steepestBeside(
                                        row.pitch("pitch_shallow"),
                                        row.length("gauge_shallow"),
                                        row.length("gauge_min"))
                                .value()
                                .toDegrees());
            case "TS-027" -> wideTilesAtAVerge(row, answers);
            case "TS-029", "TS-030" -> {
                Length cover = row.length("cover_width");
                SingleLapUnit tile = singleLap(row.length("length"), cover, cover, Range.closed(cover, cover));
                Length gauge = tile.gaugeFor(row.length("headlap")).value();
                answers.length("gauge_max", gauge);
                perArea(answers, tile, gauge);
            }
            case "TS-040" ->
                answers.length(
                        "overhang_slope",
                        Offset.level(row.length("overhang_level")).to(Direction.ON_SLOPE, row.pitch("pitch")));
            case "TS-042" -> columns(row, answers);
            case "TS-045" ->
                answers.length(
                        "eaves_support_above_rafter_top",
                        EavesSection.of(
                                        Pitch.ofDegrees(30),
                                        row.length("batten_thickness"),
                                        row.length("tile_thickness"))
                                .fasciaHeightSquare());
            case "TS-046", "TS-047" ->
                answers.length(
                        "extension",
                        BuildUp.of(new Layer("counter-batten", row.length("counter_batten")))
                                .growthAtWall(row.pitch("pitch"))
                                .value());
            case "TS-050", "TS-051", "TS-053", "TS-056", "TS-057", "TS-059", "TS-060", "TS-078" -> slate(row, answers);
            case "TS-061", "TS-062", "TS-063", "TS-064", "TS-066" -> {
                DoubleLapUnit slate = doubleLap(
                        row.length("length"), row.length("width"), row.length("joint"), Hanging.centreNailed(zero));
                Length gauge = slate.gaugeFor(row.length("headlap")).value();
                answers.length("gauge", gauge);
                perArea(answers, slate, gauge);
            }
            case "TS-067", "TS-068", "TS-069", "TS-070", "TS-071", "TS-072", "TS-077" -> {
                DoubleLapUnit slate =
                        doubleLap(row.length("length"), row.length("width"), zero, Hanging.centreNailed(zero));
                perArea(answers, slate, slate.gaugeFor(row.length("headlap")).value());
            }
            case "TS-091", "TS-092", "TS-094" -> changeOfLength(row, answers);
            case "TS-095" -> {
                for (String length : List.of("600", "550", "500")) {
                    answers.number(
                            "courses_" + length,
                            new SlateGroup(
                                            Length.ofMillimetres(Double.parseDouble(length)),
                                            row.length("total_width_" + length))
                                    .coursesOver(row.length("roof_width")));
                }
            }
            case "TS-098" -> diminishing(row, answers);
            case "TS-099" -> {
                Length effective = row.length("length_overall").minus(row.length("peg_hole_below_head"));
                DoubleLapUnit slate = doubleLap(
                        row.length("length_overall"),
                        Length.ofMillimetres(300),
                        zero,
                        Hanging.headNailed(row.length("peg_hole_below_head")));
                answers.length("effective_length", slate.hangingLengthAt(zero))
                        .length("gauge", slate.gaugeFor(row.length("headlap")).value());
                assertThat(slate.hangingLengthAt(zero)).isEqualTo(effective);
            }
            case "TS-119" ->
                answers.length(
                        "penetration",
                        row.length("nail_length")
                                .minus(BuildUp.of(new Layer("batten", row.length("batten_depth")))
                                        .together()
                                        .value()));
            case "TS-120" ->
                answers.length(
                        "nail_length",
                        BuildUp.of(
                                        new Layer("counter-batten", row.length("counter_batten")),
                                        new Layer("batten", row.length("batten_depth")))
                                .nailLength(row.length("penetration"))
                                .value());
            case "TS-132", "TS-134" -> underlay(row, answers);
            case "TS-188" -> {
                Length whole = row.length("gauge").times((long) row.number("courses"));
                Length left = whole.plus(GaugeRod.drift((int) row.number("courses"), row.length("error_left"))
                        .value());
                Length right = whole.plus(GaugeRod.drift((int) row.number("courses"), row.length("error_right"))
                        .value());
                answers.length("left", left).length("right", right).length("difference", left.minus(right));
            }
            default -> throw new IllegalStateException("no answer for " + id + " (" + topic + ")");
        }
        return answers;
    }

    private static LayoutScheme plainTiles(Length full, ShortUnit underEaves, ShortUnit tops, Length overhang) {
        DoubleLapUnit tile = DoubleLapUnit.builder()
                .name("plain tile")
                .kind(UnitKind.CLAY_PLAIN_TILE)
                .length(Length.ofMillimetres(265))
                .width(Length.ofMillimetres(165))
                .joint(Length.ZERO)
                .thickness(Length.ofMillimetres(12))
                .mass(Mass.ofKilograms(1.2))
                .hanging(Hanging.onNibs(full))
                .unitAndAHalf(new PartUnit(Length.ofMillimetres(247.5), Mass.ofKilograms(1.8)))
                .underEavesUnit(underEaves)
                .topsUnit(tops)
                .build();
        return LayoutScheme.builder()
                .unit(tile)
                .headlap(Figure.given(Length.ofMillimetres(65)))
                .overhangIntoGutter(Offset.onSlope(overhang))
                .topDistance(Length.ZERO)
                .left(FaceEnd.verge(Length.ZERO))
                .right(FaceEnd.verge(Length.ZERO))
                .build();
    }

    private static BattenDemand battens(Length width) {
        return new BattenDemand(
                Figure.given(width),
                Figure.given(Length.ofMillimetres(25)),
                Figure.given(Length.ofMetres(1.2)),
                Figure.given(3),
                List.of());
    }

    private static ShortUnit hanging(Length length) {
        return new ShortUnit(length.plus(Length.ofMillimetres(15)), length, Mass.ofKilograms(0.8));
    }

    private static void plainTileSpecials(Row row, Answers answers) {
        Length full = row.length("hanging_length_full");
        Length batten = row.length("batten_width");
        if (row.has("hanging_length_tops")) {
            Length small = row.length("hanging_length_tops");
            Length overhang = Length.ofMillimetres(50);
            LayoutScheme scheme = plainTiles(full, hanging(small), hanging(small), overhang);
            // a slope on which forty gauges are those of the row, and a last step with its short unit
            Length slope = full.minus(overhang)
                    .minus(full)
                    .plus(small)
                    .plus(row.length("gauge").times(41L));
            FlatShape face = FlatShape.rectangle(Length.ofMetres(5), slope);
            Length step = step(face, scheme);
            answers.length("tops_batten_above_last_full_batten", step)
                    .length("clear_gap", step.minus(batten))
                    .word(
                            "fits",
                            step(face, scheme.withBattens(battens(batten))).equals(step) ? "yes" : "no");
            return;
        }
        ShortUnit underEaves = hanging(row.length("hanging_length_under_eaves"));
        LayoutScheme scheme = plainTiles(full, underEaves, underEaves, row.length("overhang_slope"))
                .withBattens(battens(batten));
        Courses courses = FaceLayout.on(FlatShape.rectangle(Length.ofMetres(5), Length.ofMetres(4)), scheme)
                .courses()
                .orThrow();
        answers.length(
                        "full_batten_top_edge_from_fascia_edge",
                        courses.firstLine().left())
                .length(
                        "under_eaves_batten_top_edge",
                        courses.underEavesLine().orElseThrow().exact().left())
                .length(
                        "clear_gap_between_battens",
                        courses.working().at(Courses.EAVES_GAP).value());
    }

    private static Length step(FlatShape face, LayoutScheme scheme) {
        return FaceLayout.on(face, scheme)
                .courses()
                .orThrow()
                .working()
                .at(Courses.TOPS_STEP)
                .value();
    }

    private static void divided(Row row, Answers answers) {
        Length distance = row.length("first_to_top_batten");
        Length greatest;
        CoveringUnit unit = null;
        if (row.has("gauge_max")) {
            greatest = row.length("gauge_max");
        } else {
            unit = row.has("hole_clearance")
                    ? doubleLap(
                            row.length("length"),
                            Length.ofMillimetres(250),
                            Length.ZERO,
                            Hanging.centreNailed(row.length("hole_clearance")))
                    : singleLap(
                            row.length("length"),
                            Length.ofMillimetres(300),
                            Length.ofMillimetres(330),
                            Range.closed(Length.ofMillimetres(300), Length.ofMillimetres(300)));
            greatest = unit.gaugeFor(row.length("headlap_min")).value();
        }
        Courses courses = Courses.divide(distance, Range.atMost(greatest));
        Length gauge = courses.gauge().left();
        answers.number("gaps", courses.gaugeCount())
                .number("courses", courses.courseCount())
                .length("gauge", gauge);
        if (unit != null) {
            answers.length("headlap_achieved", unit.headlapAt(gauge).value());
        }
        if (unit instanceof DoubleLapUnit slate) {
            answers.length("holing_gauge", slate.holingGauge(gauge).value());
        }
    }

    private static void limits(Row row, Answers answers) {
        Length distance = row.length("distance");
        Attempt<Courses> attempt = Courses.attemptDivide(
                Ends.both(distance), Range.closed(row.length("gauge_min"), row.length("gauge_max")));
        answers.word("feasible", attempt.hasValue() ? "yes" : "no");
        attempt.value()
                .ifPresent(courses -> answers.number("gaps", courses.gaugeCount())
                        .length("gauge", courses.gauge().left()));
        for (int n = 1; n <= 3; n++) {
            String gauges = n == 1 ? "_gap" : "_gaps";
            answers.length(
                    "gauge_for_" + n + gauges,
                    Courses.divide(distance, Range.closed(distance.dividedBy(n), distance.dividedBy(n)))
                            .gauge()
                            .left());
        }
    }

    /** Wide tiles stand at a verge in every other course; the greater number is theirs if the bottom course starts with one. */
    private static void wideTilesAtAVerge(Row row, Answers answers) {
        int courses = (int) row.number("courses");
        ShortUnit small = hanging(Length.ofMillimetres(175));
        LayoutScheme scheme = plainTiles(Length.ofMillimetres(250), small, small, Length.ofMillimetres(50));
        // full courses and one of tops
        Length slope = Length.ofMillimetres(200 - 75 + 100 * (courses - 1));
        FaceLayout layout = FaceLayout.on(FlatShape.rectangle(Length.ofMillimetres(30 * 165), slope), scheme);
        assertThat(layout.courses().orThrow().courseCount()).isEqualTo(courses);
        long wide = layout.rows().stream()
                .filter(course -> course.line().kind() != CourseKind.UNDER_EAVES)
                .filter(course -> course.row().pieces().get(0).kind() == PieceKind.UNIT_AND_A_HALF)
                .count();
        answers.number("per_verge_min", Math.min(wide, courses - wide))
                .number("per_verge_max", Math.max(wide, courses - wide));
    }

    private static void columns(Row row, Answers answers) {
        Length overall = row.length("tile_overall_width");
        Range<Length> covers = Range.closed(row.length("cover_min"), row.length("cover_max"));
        SingleLapUnit tile = singleLap(Length.ofMillimetres(420), Length.ofMillimetres(300), overall, covers);
        List<Columns> both = new ArrayList<>();
        for (String end : List.of("overhang_min", "overhang_max")) {
            both.add(Columns.across(row.length("wall_to_wall"), tile, Ends.both(FaceEnd.verge(row.length(end)))));
        }
        answers.number("tiles", both.get(0).columnCount())
                .length("cover_low", both.get(0).coverGot())
                .length("cover_high", both.get(1).coverGot())
                .word("cut_tile", both.get(0).narrowestCut().isEmpty() ? "no" : "yes");
    }

    private static void slate(Row row, Answers answers) {
        Length clearance = row.has("hole_clearance") ? row.length("hole_clearance") : Length.ZERO;
        Length width = Length.ofMillimetres(200);
        DoubleLapUnit centre = doubleLap(row.length("length"), width, Length.ZERO, Hanging.centreNailed(clearance));
        // thirds slating: headlap a third of the length
        Length headlap = row.has("headlap")
                ? row.length("headlap")
                : row.length("length").dividedBy(3);
        boolean head = "head".equals(row.given().get("nailing"));
        Length gauge = centre.gaugeFor(headlap).value();
        if (row.has("hole_to_head")) {
            DoubleLapUnit headNailed =
                    doubleLap(row.length("length"), width, Length.ZERO, Hanging.headNailed(row.length("hole_to_head")));
            Length headGauge = headNailed.gaugeFor(headlap).value();
            answers.length("gauge_head_nailed", headGauge)
                    .length(
                            "under_eaves_head_nailed",
                            headNailed.underEavesLength(headGauge).value());
            gauge = head ? headGauge : gauge;
        }
        answers.length("gauge", gauge)
                .length("headlap", headlap)
                .length("gauge_centre_nailed", gauge)
                .length("holing_gauge", centre.holingGauge(gauge).value())
                .length(
                        "under_eaves_centre_nailed",
                        centre.underEavesLength(gauge).value())
                .length("under_eaves_length", centre.underEavesLength(gauge).value());
    }

    private static void changeOfLength(Row row, Answers answers) {
        Length longer = row.length("length_long");
        Length shorter = row.length("length_short");
        Length headlap = row.length("headlap");
        answers.length("gauge_long", longer.minus(headlap).dividedBy(2))
                .length("gauge_short", shorter.minus(headlap).dividedBy(2))
                .length(
                        "drop_course_lath_gauge",
                        DiminishingCourses.dropGauge(longer, shorter, headlap).value())
                .length(
                        "lap_over_last_long",
                        DiminishingCourses.lapOverLastLong(longer, shorter, headlap)
                                .value());
        DiminishingCourses courses =
                DiminishingCourses.of(List.of(longer, longer, shorter, shorter), headlap, Length.ZERO);
        assertThat(courses.tails().get(1)).isEqualTo(longer.minus(headlap).dividedBy(2));
        assertThat(courses.lathGauges().get(1))
                .isEqualTo(
                        DiminishingCourses.dropGauge(longer, shorter, headlap).value());
    }

    private static void diminishing(Row row, Answers answers) {
        List<Length> lengths = new ArrayList<>();
        for (int i = 1; row.has("length_" + i); i++) {
            lengths.add(row.length("length_" + i));
        }
        DiminishingCourses courses = DiminishingCourses.of(lengths, row.length("headlap"), row.length("first_tail"));
        for (int i = 0; i < lengths.size(); i++) {
            answers.length("tail_" + (i + 1), courses.tails().get(i))
                    .length("head_" + (i + 1), courses.laths().get(i));
            if (i > 0) {
                answers.length("lath_gauge_" + i, courses.lathGauges().get(i - 1));
            }
        }
    }

    private static void underlay(Row row, Answers answers) {
        boolean rows = row.has("slope");
        // the second row gives the strips: a slope that six of them just cover
        Length slope = rows ? row.length("slope") : Length.ofMetres(5.2);
        Length end = rows ? Length.ofMillimetres(100) : row.length("end_lap");
        Underlay underlay = Underlay.over(
                slope,
                rows ? Length.ofMetres(12) : row.length("strip_length"),
                new UnderlayRoll(Length.ofMetres(1), rows ? Length.ofMetres(50) : row.length("roll_length")),
                new UnderlayDemand(
                        Figure.given(Length.ofMillimetres(150)), Figure.given(end), Figure.given(Length.ZERO)));
        answers.number("strips", underlay.rowCount())
                .length("net_length", underlay.together())
                .length("length_with_laps", underlay.withJoins())
                .number("end_laps", underlay.working().at(Underlay.JOINS).value())
                .number("rolls", underlay.working().at(Underlay.JOINS).value() + 1);
    }

    private static boolean agrees(String expected, Object got, String tolerance) {
        if (!(got instanceof Double number)) {
            return expected.equals(got);
        }
        double wanted = Double.parseDouble(expected);
        double allowed = tolerance.startsWith("rel ")
                ? Double.parseDouble(tolerance.substring("rel ".length())) * Math.max(1e-9, Math.abs(wanted))
                : tolerance.startsWith("printed 0") ? 0.5 : 1e-9; // exact: the rounding of a double
        return Math.abs(number - wanted) <= allowed;
    }

    @Test
    void every_published_figure_agrees_or_is_listed_as_not_decided() throws IOException {
        Map<String, String> differ = new TreeMap<>();
        int agree = 0;
        int rowsRead = 0;
        int decided = 0;
        try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(CASES, StandardCharsets.UTF_8)) {
            for (NamedCsvRecord row : rows) {
                rowsRead++;
                String id = row.getField("id");
                if (CANNOT_DECIDE.containsKey(id)) {
                    continue;
                }
                decided++;
                Answers answers = answers(id, row.getField("topic"), new Row(parsed(row.getField("given"))));
                for (Map.Entry<String, String> expected :
                        parsed(row.getField("expected")).entrySet()) {
                    Object got = answers.get(expected.getKey());
                    if (agrees(expected.getValue(), got, row.getField("tolerance"))) {
                        agree++;
                    } else {
                        differ.put(id + " " + expected, "library: " + got);
                    }
                }
            }
        }
        assertThat(differ).isEmpty();
        assertThat(decided).isEqualTo(rowsRead - CANNOT_DECIDE.size());
        // every row has at least one figure
        assertThat(agree).isGreaterThan(decided);
    }
}
