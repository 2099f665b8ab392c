package org.roofmaths.sheet;

import java.util.ArrayList;
import java.util.List;
import org.roofmaths.framing.CommonRafter;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.roof.Roof;
import org.roofmaths.roof.RoofEdge;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.units.Length;
import org.roofmaths.ventilation.RafterBays;

/** The parts of the sheet about the roof itself: drawing, as found, shape, rafters. */
final class ShapeParts {
    private final JobFigures figures;

    ShapeParts(JobFigures figures) {
        this.figures = figures;
    }

    List<SheetSection> sections() {
        return List.of(drawing(), asFound(), shape(), frame());
    }

    private SheetSection drawing() {
        Part part = new Part(SheetStep.DRAWING);
        figures.roof().ifPresent(roof -> {
            RoofFace face = roof.faces().get(0);
            part.line("rafter pitch", Show.pitch(face.pitch()), face, RoofFace.RAFTER_PITCH);
            part.line(
                    "height of the rafters over the plate",
                    Show.whole(face.plateHeight()),
                    face,
                    RoofFace.PLATE_HEIGHT);
            part.line("height of the apex line", Show.whole(face.apexHeight()), face, RoofFace.APEX_HEIGHT);
            part.line("rise, plate to apex", Show.whole(face.rise()), face, RoofFace.RISE);
            part.line("run, plate to apex", Show.whole(face.run()), face, RoofFace.RUN);
            roof.problems().forEach(problem -> part.remark(problem.message() + "."));
            part.remark(
                    "Heights are of the rafter plane (the tops of the rafters) over the datum of the drawing. Sizes are called level,"
                            + " plumb, on the slope or square to it; they are never mixed.");
        });
        return part.section();
    }

    private SheetSection asFound() {
        Part part = new Part(SheetStep.AS_FOUND);
        List<List<String>> rows = new ArrayList<>();
        for (JobFigures.Face face : figures.faces()) {
            if (face.asFound()) {
                Length left = face.shape().slopeLengths().left();
                Length right = face.shape().slopeLengths().right();
                rows.add(List.of(
                        face.face().name(),
                        Show.whole(face.face().slopeLength()),
                        Show.whole(left),
                        Show.whole(right),
                        Show.whole(left.minus(right).abs())
                                + (left.isLongerThan(right) ? " longer left" : " longer right")));
            }
        }
        if (rows.isEmpty()) {
            part.doesNotApply(
                    "No sizes found on the building were given: the drawing is taken as built. Measure slope lengths at both ends and"
                            + " both diagonals before marking.");
        } else {
            part.table("Slope length, fascia to apex", List.of("face", "drawing", "left", "right", "difference"), rows);
            part.remark("Courses are set out to the lengths found, left and right apart; nothing is averaged.");
        }
        return part.section();
    }

    private SheetSection shape() {
        Part part = new Part(SheetStep.SHAPE);
        figures.roof().ifPresent(roof -> {
            for (RoofFace face : roof.faces()) {
                part.line(
                        face.name() + ": width along the eaves",
                        Show.whole(face.eavesWidth()),
                        face,
                        RoofFace.EAVES_WIDTH);
                part.line(
                        face.name() + ": slope length, fascia to apex",
                        Show.whole(face.slopeLength()),
                        face,
                        RoofFace.SLOPE_LENGTH);
                part.line(
                        face.name() + ": area along the slope",
                        Show.area(face.areaAlongSlope()),
                        face,
                        RoofFace.AREA_ALONG_SLOPE);
                part.line(face.name() + ": area on plan", Show.area(face.areaOnPlan()), face, RoofFace.AREA_ON_PLAN);
            }
            part.line(
                    "all faces: area along the slope",
                    Show.area(roof.areaAlongSlope()),
                    roof,
                    Roof.TOTAL_AREA_ALONG_SLOPE);
            part.line("all faces: area on plan", Show.area(roof.areaOnPlan()), roof, Roof.TOTAL_AREA_ON_PLAN);
            List<List<String>> rows = new ArrayList<>();
            for (RoofEdge edge : roof.edges()) {
                rows.add(List.of(
                        edge.name(),
                        edge.kind().toString(),
                        Show.whole(edge.planLength()),
                        Show.whole(edge.trueLength()),
                        Show.angle(edge.slopeAngle())));
            }
            part.table("Edges", List.of("edge", "kind", "on plan", "true length", "slope"), rows);
        });
        return part.section();
    }

    private SheetSection frame() {
        Part part = new Part(SheetStep.FRAME);
        figures.roof().ifPresent(roof -> {
            CommonRafter rafter = CommonRafter.of(roof.faces().get(0))
                    .withOverhang(figures.job().roof().eavesOverhang());
            part.line(
                    "rafter along its top edge, plate to apex",
                    Show.whole(rafter.length()),
                    rafter,
                    CommonRafter.LENGTH);
            part.line("tail beyond the plate, on the slope", Show.whole(rafter.tail()), rafter, CommonRafter.TAIL);
            part.line(
                    "plumb cut, from square",
                    Show.angle(rafter.plumbCutFromSquare()),
                    rafter,
                    CommonRafter.PLUMB_CUT_FROM_SQUARE);
            part.line(
                    "seat cut, from the edge",
                    Show.angle(rafter.seatCutFromEdge()),
                    rafter,
                    CommonRafter.SEAT_CUT_FROM_EDGE);
            figures.bays()
                    .ifPresent(bays -> part.line("bays between rafters", bays.count() + "", bays, RafterBays.BAYS));
            if (!roof.edges(EdgeKind.RIDGE).isEmpty()) {
                part.remark("No ridge board was given: take half its thickness, measured level, off each rafter.");
            }
            part.remark("Leave tails long and cut them to a line.");
            part.caution(
                    "Sizes of rafters, plates and their fixings are not worked out here: span tables or a person competent in structures"
                            + " decide.");
        });
        return part.section();
    }
}
