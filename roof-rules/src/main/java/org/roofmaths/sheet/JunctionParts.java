package org.roofmaths.sheet;

import java.util.ArrayList;
import java.util.List;
import org.roofmaths.flashing.CoverFlashing;
import org.roofmaths.flashing.Flashing;
import org.roofmaths.flashing.FlashingPiece;
import org.roofmaths.flashing.StepFlashing;
import org.roofmaths.ventilation.EdgeVents;
import org.roofmaths.ventilation.SpotVents;

/** The parts of the sheet about junctions: flashings, hips and valleys, air, rain. */
final class JunctionParts {
    private final JobFigures figures;

    JunctionParts(JobFigures figures) {
        this.figures = figures;
    }

    List<SheetSection> sections() {
        return List.of(flashings(), hipsAndValleys(), ventilation(), rainwater());
    }

    private SheetSection flashings() {
        Part part = new Part(SheetStep.FLASHINGS);
        if (figures.topFlashing().isEmpty() && figures.sideFlashings().isEmpty()) {
            if (figures.roof().isPresent() && !figures.meetsAWall()) {
                part.doesNotApply("The roof meets no wall.");
            }
            return part.section();
        }
        figures.topFlashing().ifPresent(flashing -> {
            pieces(part, "top", flashing);
            flashing.joint()
                    .ifPresent(joint -> part.line(
                            "top: bed joint of the flashing", Show.whole(joint), flashing, CoverFlashing.JOINT));
            flashing.wedges().ifPresent(wedges -> part.line("top: wedges", wedges + "", flashing, Flashing.WEDGES));
        });
        for (StepFlashing flashing : figures.sideFlashings()) {
            pieces(part, "side", flashing);
            part.line("side: steps", flashing.stepCount() + "", flashing, StepFlashing.STEPS);
            part.line(
                    "side: step along the slope",
                    Show.fine(flashing.stepSpacing()),
                    flashing,
                    StepFlashing.STEP_SPACING);
            part.line("side: level length of a step", Show.fine(flashing.stepRun()), flashing, StepFlashing.STEP_RUN);
            part.line("side: wall leg", Show.fine(flashing.wallLeg()), flashing, StepFlashing.WALL_LEG);
            List<List<String>> rows = new ArrayList<>();
            flashing.steps()
                    .forEach(step -> rows.add(List.of(
                            Integer.toString(step.number()),
                            Show.whole(step.joint()),
                            Show.whole(step.start()),
                            Show.whole(step.end()),
                            Show.fine(step.endAlongSlope()))));
            part.table(
                    "side: steps, from the fascia line",
                    List.of("step", "bed joint at", "from, level", "to, level", "to, on the slope"),
                    rows);
            part.remark("side: " + flashing.trays().size()
                    + " cavity trays if the wall has a cavity, one for each change of joint; the lowest has a"
                    + " stop end and a weep, and each lies over the flashing in its joint.");
        }
        part.remark("Joints between lead and brick are sealed with lead sealant: movement cracks mortar.");
        part.caution(
                "Lead is poisonous: wash before eating or smoking, do not sand or sweep it dry, keep children and pregnant women away; lead"
                        + " work and hot work are for people competent in them, under the law of the place. No lead on a roof that feeds a"
                        + " drinking-water tank.");
        return part.section();
    }

    private static void pieces(Part part, String place, Flashing flashing) {
        part.line(place + ": pieces", flashing.pieceCount() + "", flashing, Flashing.PIECES);
        part.line(place + ": girth", Show.fine(flashing.girth()), flashing, Flashing.GIRTH);
        part.line(place + ": metal with laps", Show.metres(flashing.metalLength()), flashing, Flashing.METAL_LENGTH);
        part.line(place + ": mass of metal", Show.mass(flashing.mass()), flashing, Flashing.METAL_MASS);
        List<List<String>> rows = new ArrayList<>();
        for (FlashingPiece piece : flashing.pieces()) {
            rows.add(List.of(
                    Integer.toString(rows.size() + 1), Show.whole(piece.length()), Show.whole(flashing.girth())));
        }
        part.table(
                place + ": " + flashing.name() + ", " + flashing.sheet().name(),
                List.of("piece", "length", "girth"),
                rows);
    }

    private SheetSection hipsAndValleys() {
        return new Part(SheetStep.HIPS_AND_VALLEYS)
                .doesNotApply("The roof has no hip and no valley.")
                .section();
    }

    private SheetSection ventilation() {
        Part part = new Part(SheetStep.VENTILATION);
        for (EdgeVents vents : figures.lowVents()) {
            vents(part, "low, " + vents.name(), vents);
            if (vents.demand().isAsked()) {
                figures.bays()
                        .ifPresent(bays -> part.line(
                                "low, " + vents.name() + ": slot if it is open only between rafters",
                                Show.fine(vents.slot(bays).value()),
                                vents.slot(bays),
                                EdgeVents.SLOT));
            }
        }
        figures.highVents().ifPresent(vents -> vents(part, "high, " + vents.name(), vents));
        figures.topVents().ifPresent(vents -> {
            part.line("high: vents by area", vents.countByArea() + "", vents, SpotVents.BY_AREA);
            part.line("high: vents, one at least in every bay", vents.count() + "", vents, SpotVents.COUNT);
            part.line("high: free area provided", Show.opening(vents.provided()), vents, SpotVents.PROVIDED);
        });
        part.remark(
                "Openings by the row named, for insulation at the ceiling and the underlay class given. A certificate or another edition may"
                        + " ask another figure. Keep the path open at the eaves: insulation pushed into it is the usual cause of rot.");
        return part.section();
    }

    private static void vents(Part part, String label, EdgeVents vents) {
        if (vents.demand().isAsked()) {
            part.line(label + ": free area", Show.opening(vents.asked()), vents, EdgeVents.ASKED);
            part.line(label + ": continuous gap", Show.fine(vents.continuousGap()), vents, EdgeVents.CONTINUOUS_GAP);
        } else {
            part.remark(label + ": " + vents.demand() + ".");
        }
    }

    private SheetSection rainwater() {
        return new Part(SheetStep.RAINWATER)
                .remark(
                        "No rainfall was given, so no flow is worked out. Take it from the authority's map; count the wall above and any roof that"
                                + " drains here. Eaves gutter on an open edge only: parapet, valley and internal gutters need a person's design.")
                .section();
    }
}
