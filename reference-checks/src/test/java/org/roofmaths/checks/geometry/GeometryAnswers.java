package org.roofmaths.checks.geometry;

import java.util.HashMap;
import java.util.Map;
import org.roofmaths.framing.Birdsmouth;
import org.roofmaths.framing.BoardCuts;
import org.roofmaths.framing.CommonRafter;
import org.roofmaths.framing.CompoundMitre;
import org.roofmaths.framing.CornerRafter;
import org.roofmaths.framing.GableStuds;
import org.roofmaths.framing.JackRafters;
import org.roofmaths.framing.ShedDormer;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.roof.MeetingLine;
import org.roofmaths.roof.MeetingLine.Side;
import org.roofmaths.roof.Roof;
import org.roofmaths.roof.RoofEdge;
import org.roofmaths.roof.RoofEnd;
import org.roofmaths.roof.Roofs;
import org.roofmaths.roof.Slope;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Offset;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Figure;

/**
 * What the library answers to a row, by the name of each expected number without its unit; nothing where it offers no
 * such number.
 */
final class GeometryAnswers {
    private static final Angle SQUARE = Angle.ofDegrees(90);
    private static final Offset NO_OVERHANG = Offset.level(Length.ZERO);

    private final Map<String, Object> found = new HashMap<>();

    private GeometryAnswers() {}

    static Map<String, Object> to(GeometryCase row) {
        GeometryAnswers answers = new GeometryAnswers();
        switch (row.topic) {
            case "pitch-conversion", "slope-factor" -> answers.pitch(row);
            case "common-rafter" -> answers.commonRafter(row);
            case "hip-valley", "hip-drop", "backing", "irregular-plan", "unequal-pitch" -> answers.line(row);
            case "jack" -> answers.jacks(row);
            case "cuts" -> answers.cuts(row);
            case "birdsmouth" -> answers.birdsmouth(row);
            case "compound-mitre" -> answers.mitre(row);
            case "stud-dormer" -> answers.studs(row);
            case "dihedral" -> answers.dihedral(row);
            case "polygon-roof" -> answers.polygon(row);
            case "area", "ridge-length" -> answers.roof(row);
            default -> {
                // lengths in feet and inches, units and developments belong to other checks
            }
        }
        return answers.found;
    }

    private void put(String name, Object value) {
        found.put(name, value);
    }

    private void pitch(GeometryCase row) {
        if (row.has("pitch_deg") && row.number("pitch_deg") == 0) {
            return; // level: no pitch in this library
        }
        Pitch pitch = row.pitch();
        if (pitch == null) {
            return;
        }
        put("angle", pitch);
        put("percent", pitch.toPercent());
        put("rise_over_span", pitch.toRiseOverSpan());
        put("one_in_n", pitch.toOneIn());
        put("slope_factor", pitch.slopeFactor());
        put("rise_per_12", pitch.toRiseIn12());
        put("hip_factor", MeetingLine.of(pitch, pitch, SQUARE).trueLengthPerRun());
        if (row.has("other_angle_deg")) {
            put(
                    "one_in_n_of_other_angle",
                    Pitch.ofDegrees(row.number("other_angle_deg")).toOneIn());
        }
        if (row.has("plan_ft2")) {
            put("area", Area.ofSquareFeet(row.number("plan_ft2")).times(pitch.slopeFactor()));
        }
    }

    private void commonRafter(GeometryCase row) {
        Pitch pitch = row.pitch();
        if (pitch == null) {
            return;
        }
        put("angle", pitch);
        put("pitch", pitch);
        put("rise_per_12", pitch.toRiseIn12());
        put("unit", CommonRafter.of(Length.ofDecimalInches(12), pitch).length());
        Length span = row.length("span");
        Length run = row.length("run");
        run = run == null ? row.length("half_span") : run;
        if (span != null || run != null) {
            CommonRafter rafter = span == null ? CommonRafter.of(run, pitch) : CommonRafter.ofSpan(span, pitch);
            put("line", rafter.length());
            put("slope", rafter.length());
            put("rise", rafter.rise());
            if (span != null) {
                put("line_per_span", rafter.length().dividedBy(span));
            }
        }
        CommonRafter any = CommonRafter.of(Length.ofMetres(3), pitch);
        Length overhang = row.length("overhang_level");
        overhang = overhang == null ? row.length("projection_level") : overhang;
        if (overhang != null) {
            Length tail = any.withOverhang(Offset.level(overhang)).tail();
            put("tail", tail);
            put("overhang_slope", tail);
        }
        if (row.length("ridge") != null) {
            put("deduct_along_rafter", any.withRidge(row.length("ridge")).ridgeDeduction());
            put(
                    "deduct_horizontal",
                    any.withRidge(row.length("ridge"))
                            .working()
                            .at(CommonRafter.RIDGE_DEDUCTION_LEVEL)
                            .value());
        }
    }

    private static MeetingLine lineOf(GeometryCase row) {
        Angle corner = row.has("corner_deg") ? Angle.ofDegrees(row.number("corner_deg")) : SQUARE;
        Pitch one = row.pitch();
        Pitch other = one;
        for (String which : new String[] {"_1", "_side_1"}) {
            if (row.has("pitch" + which + "_deg") || row.has("rise_per_12" + which)) {
                one = row.pitch(which);
                other = row.pitch(which.replace('1', '2'));
            }
        }
        if (row.length("run_side_1") != null && row.length("rise") != null) {
            one = Pitch.ofRiseAndRun(row.length("rise"), row.length("run_side_1"));
            other = Pitch.ofRiseAndRun(row.length("rise"), row.length("run_side_2"));
        }
        return one == null ? null : MeetingLine.of(one, other, corner);
    }

    private void line(GeometryCase row) {
        if (row.length("plan_shortening") != null) {
            put("unit", row.pitch().slopeFactor());
            put(
                    "shortening",
                    CommonRafter.of(row.length("plan_shortening"), row.pitch()).length());
            return;
        }
        MeetingLine line = lineOf(row);
        if (line == null) {
            // the plan alone: any pitch gives the same
            line = MeetingLine.of(Pitch.ofDegrees(40), Pitch.ofDegrees(40), SQUARE);
            if (!row.has("corner_deg")) {
                return;
            }
        } else {
            put("hip_pitch", line.pitch());
            put("rise_per_12_of_hip", line.pitch().toRiseIn12());
            put("hip_factor", line.trueLengthPerRun());
            put("unit", Length.ofDecimalInches(12).times(line.trueLengthPerRun()));
            put("backing", line.backing(Side.FIRST));
            put("backing1", line.backing(Side.FIRST));
            put("backing2", line.backing(Side.SECOND));
            put("dihedral", line.angleInside());
            sideCuts(line);
        }
        put("hip_run_factor", line.planLengthPerRun());
        put("plan_angle_from_eaves1", line.planAngle(Side.FIRST));
        put("plan_angle_from_eaves2", line.planAngle(Side.SECOND));
        Length run = row.length("run");
        run = run == null ? row.length("run_part") : run;
        run = run == null ? row.length("run_side_1") : run;
        if (run != null) {
            CornerRafter hip = CornerRafter.of(line, run);
            put("hip_run", hip.planLength());
            put("line", hip.length());
            put("hip", hip.length());
            put("rise", hip.rise());
            put("common", CommonRafter.of(run, line.slopePitch(Side.FIRST)).length());
            put(
                    "rafter_side_1",
                    CommonRafter.of(run, line.slopePitch(Side.FIRST)).length());
        }
        if (row.length("run_side_2") != null) {
            put(
                    "rafter_side_2",
                    CommonRafter.of(row.length("run_side_2"), line.slopePitch(Side.SECOND))
                            .length());
        }
        CornerRafter any = CornerRafter.of(line, Length.ofMetres(3));
        if (row.length("projection_level") != null) {
            put("overhang", any.withOverhang(row.length("projection_level")).tail());
        }
        if (row.length("ridge") != null) {
            put(
                    "shorten_horizontal",
                    any.withRidge(row.length("ridge"))
                            .working()
                            .at(CornerRafter.SHORTENING_LEVEL)
                            .value());
        }
        if (row.topic.equals("hip-drop")) {
            CornerRafter hip = any.withThickness(row.length("hip"));
            put("vertical_drop", hip.dropPlumb(Side.FIRST));
            put("perpendicular_drop", hip.dropSquare(Side.FIRST));
        }
    }

    private void sideCuts(MeetingLine line) {
        JackRafters first = JackRafters.of(line, Side.FIRST, Length.ofMetres(0.4), Length.ofMetres(3));
        put("jack1_from_edge", first.sideCutFromEdge());
        put("jack_from_edge", first.sideCutFromEdge());
        put(
                "jack2_from_edge",
                JackRafters.of(line, Side.SECOND, Length.ofMetres(0.4), Length.ofMetres(3))
                        .sideCutFromEdge());
    }

    private void jacks(GeometryCase row) {
        if (row.word("member").equals("cripple")) {
            put("line", CommonRafter.of(row.length("plate"), row.pitch()).length());
            put("run", row.length("plate"));
            return;
        }
        MeetingLine line = lineOf(row);
        Length centres = row.length("centres");
        if (centres == null) {
            // jacks equally spaced under the common rafter
            Length run = row.length("run");
            int jacks = (int) row.number("jacks");
            centres = run.dividedBy(jacks + 1.0);
            put("common", CommonRafter.of(run, row.pitch()).length());
            put(
                    "longest",
                    JackRafters.of(line, Side.FIRST, centres, run)
                            .jacks()
                            .get(jacks - 1)
                            .length());
        }
        JackRafters jacks = JackRafters.of(line, Side.FIRST, centres, centres.times(10L));
        put("diff", jacks.commonDifference());
        put("one", jacks.jacks().get(0).length());
        put("two", jacks.jacks().get(1).length());
        put("four", jacks.jacks().get(3).length());
        if (row.has("jack_number")) {
            put("length", jacks.jacks().get((int) row.number("jack_number") - 1).length());
        }
    }

    private void cuts(GeometryCase row) {
        if (row.has("rise_per_12_main")) {
            put(
                    "angle_between_slopes",
                    ShedDormer.of(Length.ofMetres(1), row.pitch("_main"), row.pitch("_dormer"))
                            .angleBetweenSlopes());
            return;
        }
        if (row.has("sides")) {
            double mitre = 180 / row.number("sides");
            CompoundMitre plate = CompoundMitre.of(SQUARE, Angle.ofDegrees(180 - 2 * mitre));
            put("true_from_square", plate.mitreFromSquare());
            put("true_from_edge", SQUARE.minus(plate.mitreFromSquare()));
            put("mitre", plate.mitreFromSquare());
            put("on_12", 12 * plate.mitreFromSquare().tan());
            return;
        }
        MeetingLine line = lineOf(row);
        if (line == null) {
            return;
        }
        CornerRafter hip = CornerRafter.of(line, Length.ofMetres(3));
        JackRafters jacks = JackRafters.of(line, Side.FIRST, Length.ofMetres(0.4), Length.ofMetres(3));
        BoardCuts boards = BoardCuts.of(line, Side.FIRST);
        put("hip_pitch", line.pitch());
        put("common_pitch", line.slopePitch(Side.FIRST));
        put("jack_from_edge", jacks.sideCutFromEdge());
        put("hip_from_edge", hip.sideCutFromEdge(Side.FIRST));
        put(
                "plumb_cut_from_square",
                CommonRafter.of(Length.ofMetres(3), line.slopePitch(Side.FIRST)).plumbCutFromSquare());
        put(
                "seat_cut_from_edge",
                CommonRafter.of(Length.ofMetres(3), line.slopePitch(Side.FIRST)).seatCutFromEdge());
        put("hip_to_eaves_in_roof_plane", boards.hipToEavesInSlope());
        put("mitre_from_square", boards.faceCutFromSquare());
        // the rows mean the tilt of the blade, not the line that the cut leaves on the edge
        put(
                "edge_bevel",
                CompoundMitre.inTheSlope(line.slopePitch(Side.FIRST), line.corner())
                        .bevelFromSquare());
        if (row.word("cut").equals("jack-side")) {
            put("from_edge", jacks.sideCutFromEdge());
            put("from_square", jacks.sideCutFromSquare());
            put(
                    "length",
                    CommonRafter.of(Length.ofDecimalInches(12), line.slopePitch(Side.FIRST))
                            .length());
        }
        if (row.word("cut").equals("hip-side-unbacked")) {
            put("from_edge", hip.sideCutFromEdge(Side.FIRST));
            put("from_square", hip.sideCutFromSquare(Side.FIRST));
        }
    }

    private void birdsmouth(GeometryCase row) {
        Length depth = row.length("rafter_depth");
        if (row.has("notch_limit_divisor")) {
            Figure<Ratio> share = Figure.given(Ratio.of(1 / row.number("notch_limit_divisor")));
            put("max_notch", Birdsmouth.greatestNotch(depth, share).value());
            if (row.pitch() != null) {
                put(
                        "max_seat",
                        Birdsmouth.greatestSeat(depth, row.pitch(), share).value());
            }
            return;
        }
        Birdsmouth mouth = Birdsmouth.of(depth, row.length("seat"), row.pitch());
        put("notch_square_to_rafter", mouth.notch());
        put("heel_plumb_height", mouth.heel());
        put("plumb_depth", mouth.plumbDepth());
        put("height_above_plate", mouth.heightAbovePlate());
        put("left_square_to_rafter", mouth.left());
    }

    private void mitre(GeometryCase row) {
        if (row.word("board").equals("bargeboards-at-apex")) {
            put(
                    "cut_from_square",
                    CommonRafter.of(Length.ofMetres(3), row.pitch()).plumbCutFromSquare());
            return;
        }
        Angle corner = Angle.ofDegrees(row.number("corner_deg"));
        CompoundMitre cut = switch (row.word("board")) {
            case "crown" -> CompoundMitre.of(Angle.ofDegrees(row.number("tilt_from_wall_deg")), corner);
            case "boarding-in-the-slope" -> CompoundMitre.inTheSlope(row.pitch(), corner);
            default -> CompoundMitre.squareToRafters(row.pitch(), corner);
        };
        put("mitre", cut.mitreFromSquare());
        put("mitre_from_square", cut.mitreFromSquare());
        put("bevel", cut.bevelFromSquare());
        put("blade_bevel", cut.bevelFromSquare());
    }

    private void studs(GeometryCase row) {
        if (row.has("rise_per_12_main")) {
            put(
                    "diff",
                    ShedDormer.of(Length.ofMetres(1), row.pitch("_main"), row.pitch("_dormer"))
                            .studDifference(row.length("centres"))
                            .value());
            return;
        }
        Length centres = row.length("centres");
        GableStuds studs = GableStuds.of(centres == null ? Length.ofMetres(0.6) : centres, row.pitch());
        put("diff", studs.commonDifference());
        if (row.length("distance") != null) {
            put("length", studs.heightAt(row.length("distance")).value());
        }
    }

    private void dihedral(GeometryCase row) {
        if (row.word("edge").equals("ridge") && row.pitch("_1").equals(row.pitch("_2"))) {
            RoofEdge ridge = Roofs.duoPitch()
                    .length(Length.ofMetres(6))
                    .span(Length.ofMetres(5))
                    .slope(Slope.of(row.pitch("_1")))
                    .eavesOverhang(NO_OVERHANG)
                    .build()
                    .between("front", "back");
            put("dihedral", ridge.angleInside());
        } else if (row.word("edge").equals("ridge")) {
            put(
                    "dihedral",
                    Roofs.hipped()
                            .length(Length.ofMetres(9))
                            .span(Length.ofMetres(5))
                            .slope(Slope.of(row.pitch("_1")))
                            .eavesOverhang(NO_OVERHANG)
                            .pitch("back", row.pitch("_2"))
                            .build()
                            .between("front", "back")
                            .angleInside());
        } else if (row.word("solid").equals("square-pyramid")) {
            // all edges equal: the height is 1 / √2 of an edge
            Length edge = Length.ofMetres(1);
            Roof roof = Roofs.pyramid()
                    .span(edge)
                    .slope(Slope.heights(Length.ZERO, edge.dividedBy(StrictMath.sqrt(2))))
                    .eavesOverhang(NO_OVERHANG)
                    .build();
            put("dihedral", roof.between("front", "right").angleInside());
        }
    }

    private void polygon(GeometryCase row) {
        if (!row.has("sides")) {
            return;
        }
        int sides = (int) row.number("sides");
        Length run = row.length("common_run");
        if (run == null) {
            return;
        }
        Pitch pitch = row.pitch() == null ? Pitch.ofDegrees(40) : row.pitch();
        MeetingLine line = MeetingLine.of(pitch, pitch, Angle.ofDegrees(180 - 360.0 / sides));
        CornerRafter hip = CornerRafter.of(line, run);
        put("hip_run", hip.planLength());
        put("tangent", run.times(StrictMath.tan(StrictMath.PI / sides)));
        if (row.pitch() != null) {
            put("hip", hip.length());
            put("hip_pitch", line.pitch());
            put("dihedral", line.angleInside());
        }
    }

    private void roof(GeometryCase row) {
        Length length = row.length("length");
        Length width = row.length("width");
        switch (row.word("roof_form")) {
            case "hip", "pyramid" -> {
                Pitch pitch = row.pitch() == null ? Pitch.ofDegrees(40) : row.pitch();
                Roof roof = Roofs.hipped()
                        .length(length)
                        .span(width)
                        .slope(Slope.of(pitch))
                        .eavesOverhang(NO_OVERHANG)
                        .build();
                put("area", roof.areaAlongSlope());
                put("area_by_rule", roof.areaAlongSlope());
                put("total", roof.areaAlongSlope());
                put("trapezium", roof.face("front").areaAlongSlope());
                put("triangle", roof.face("right").areaAlongSlope());
                put("face", roof.face("front").areaAlongSlope());
                put("hip", roof.between("front", "right").trueLength());
                put("ridge", roof.lengthOf(EdgeKind.RIDGE));
            }
            case "gable" -> {
                Roof roof = Roofs.duoPitch()
                        .length(length)
                        .span(row.length("span"))
                        .slope(Slope.of(row.pitch()))
                        .eavesOverhang(NO_OVERHANG)
                        .build();
                put("area", roof.areaAlongSlope());
                put("squares", roof.areaAlongSlope().toSquareFeet() / 100);
                put("girt", roof.face("front").slopeLength().times(2L));
            }
            case "mono-pitch" -> {
                Roof roof = Roofs.leanTo()
                        .wallLength(length)
                        .projection(row.length("run"))
                        .slope(Slope.of(row.pitch()))
                        .eavesOverhang(NO_OVERHANG)
                        .build();
                put("area", roof.areaAlongSlope());
                put("rise", roof.face("main").rise());
            }
            case "saltbox" -> {
                Roof roof = Roofs.hipped()
                        .length(length)
                        .span(row.length("span"))
                        .slope(Slope.of(row.pitch("_front")))
                        .eavesOverhang(NO_OVERHANG)
                        .pitch("back", row.pitch("_back"))
                        .end("left", RoofEnd.verge())
                        .end("right", RoofEnd.verge())
                        .build();
                put("front", roof.face("front").areaAlongSlope());
                put("back", roof.face("back").areaAlongSlope());
                put("total", roof.areaAlongSlope());
            }
            default -> {
                if (row.word("plan_form").equals("t")) {
                    Roof roof = Roofs.tShape()
                            .length(row.length("main_length"))
                            .span(row.length("main_width"))
                            .wingProjection(row.length("wing_projection"))
                            .wingSpan(row.length("wing_width"))
                            .slope(Slope.of(row.pitch()))
                            .eavesOverhang(NO_OVERHANG)
                            .end("left", RoofEnd.verge())
                            .end("right", RoofEnd.verge())
                            .end("wing end", RoofEnd.verge())
                            .build();
                    put("area", roof.areaAlongSlope());
                    put("valley", roof.edges(EdgeKind.VALLEY).get(0).trueLength());
                    put("wing_ridge", roof.between("wing right", "wing left").trueLength());
                    put("ridge_height", roof.highestHeight());
                }
            }
        }
    }
}
