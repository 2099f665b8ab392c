package org.roofmaths.sheet;

import java.util.ArrayList;
import java.util.List;
import org.roofmaths.order.OrderLine;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.rules.Edition;
import org.roofmaths.rules.RuleSet;
import org.roofmaths.rules.Subjects;
import org.roofmaths.settingout.Columns;
import org.roofmaths.settingout.CourseLine;
import org.roofmaths.settingout.Row;

/** The parts of the sheet for buying, for the ladder and for later. */
final class SiteParts {
    private final JobFigures figures;
    private final Job job;

    SiteParts(JobFigures figures) {
        this.figures = figures;
        this.job = figures.job();
    }

    List<SheetSection> sections() {
        return List.of(fixings(), order(), loadingOut(), marks(), orderOfWork(), finalChecks(), later());
    }

    private SheetSection fixings() {
        Part part = new Part(SheetStep.FIXINGS);
        figures.order()
                .ifPresent(order -> order.lines().stream()
                        .filter(line -> line.item().endsWith("nail"))
                        .forEach(line -> part.line(line.item() + "s", line.net().toString(), line, OrderLine.NET)));
        for (Edition edition : figures.rules().map(RuleSet::editions).orElse(List.of())) {
            for (var subject : List.of(Subjects.FIELD_FIXING, Subjects.PERIMETER_FIXING)) {
                edition.find(subject, figures.situation())
                        .figure()
                        .ifPresent(figure -> part.remark(
                                subject.words() + ": " + figure.citation().asPrinted() + " - "
                                        + figure.citation().toText() + "."));
            }
        }
        part.remark("nails to a unit in this count: " + figures.nailsToAUnit() + ".");
        part.remark(
                "Counted from the pattern given; no wind design was made. Every unit at an edge needs a mechanical fixing; a cut piece loses its"
                        + " nail holes and needs a clip.");
        return part.section();
    }

    private SheetSection order() {
        Part part = new Part(SheetStep.ORDER);
        figures.order().ifPresent(order -> {
            List<List<String>> rows = new ArrayList<>();
            for (OrderLine line : order.lines()) {
                rows.add(List.of(
                        line.item(),
                        line.net().toString(),
                        line.allowancesInWords(),
                        line.needed().toString(),
                        line.toBuyInWords(),
                        line.left().toString()));
                part.line(line.item(), "buy " + line.toBuyInWords(), line, OrderLine.TO_BUY);
            }
            part.table("To buy, once", List.of("item", "net", "allowance", "needed", "to buy", "left over"), rows);
            part.remark("Counted course by course, allowances added up and applied once, rounded up once.");
        });
        return part.section();
    }

    private SheetSection loadingOut() {
        Part part = new Part(SheetStep.LOADING_OUT);
        figures.order().filter(order -> order.netMass().isPositive()).ifPresent(order -> {
            part.line(
                    "net mass of the units",
                    Show.mass(order.netMass()),
                    order,
                    org.roofmaths.order.Order.TOTAL_NET_MASS);
            part.line("mass as bought", Show.mass(order.massToBuy()), order, org.roofmaths.order.Order.TOTAL_MASS);
        });
        if (figures.faces().size() > 1) {
            part.remark("Load both slopes in turns, in small stacks over rafters.");
        } else {
            part.remark("Load in small stacks over rafters, from the eaves up.");
        }
        part.caution("Mass is given for planning; neither lifting nor scaffold nor rafters are assessed.");
        return part.section();
    }

    private SheetSection marks() {
        Part part = new Part(SheetStep.MARKS);
        for (JobFigures.Face face : figures.faces()) {
            face.layout().courses().value().ifPresent(courses -> {
                List<List<String>> rows = new ArrayList<>();
                for (CourseLine line : courses.lines()) {
                    rows.add(List.of(
                            Integer.toString(line.number()),
                            line.kind().toString(),
                            Show.whole(line.mark().left()),
                            Show.whole(line.mark().right())));
                }
                part.table(
                        face.face().name() + ": " + courses.battenEdge() + ", up the slope from the fascia line",
                        List.of("no.", "course", "left", "right"),
                        rows);
                part.remark(face.face().name()
                        + ": the tape stays at the fascia line; every mark is the running sum, rounded "
                        + courses.rounding() + ", so the last one closes within half a step.");
            });
            face.layout()
                    .columns()
                    .value()
                    .ifPresent(columns -> columnMarks(part, face.face().name(), columns));
        }
        return part.section();
    }

    private static void columnMarks(Part part, String face, Columns columns) {
        int number = 0;
        for (Row row : columns.rows()) {
            number++;
            List<List<String>> rows = new ArrayList<>();
            List<org.roofmaths.units.Length> marks = columns.marks(row);
            for (int i = 0; i < marks.size(); i++) {
                rows.add(List.of(
                        Integer.toString(i + 1), row.pieces().get(i).kind().toString(), Show.whole(marks.get(i))));
            }
            String which = columns.rows().size() == 1 ? "every course" : number == 1 ? "odd courses" : "even courses";
            part.table(
                    face + ": right edge of each unit, " + which + ", from the left wall line",
                    List.of("no.", "unit", "mark"),
                    rows);
        }
    }

    private SheetSection orderOfWork() {
        boolean walls = figures.meetsAWall();
        boolean ridge = figures.roof()
                .map(roof -> !roof.edges(EdgeKind.RIDGE).isEmpty())
                .orElse(false);
        Part part = new Part(SheetStep.ORDER_OF_WORK);
        if (walls) {
            part.step("Cut chases and set cavity trays in the walls.")
                    .holdPoint("Trays and chases seen before anything covers them.");
        }
        part.step("Fascia, brackets fixed to rafters, eaves tray.")
                .holdPoint("Tray falls to the gutter; air path open.")
                .step("Underlay from the eaves up, with battens to the marks.")
                .holdPoint("Laps of the underlay and every batten mark at both ends checked before loading.")
                .step("Load out in small stacks.")
                .step("Lay from the eaves up, each course to its line.");
        if (walls) {
            part.step("Side flashing with the courses; top flashing when the courses reach it.");
        }
        if (ridge) {
            part.step("Ridge, every unit held.");
        }
        part.step("Verges, gutter, clean down.");
        part.caution(
                "Work at height kills. Avoid it where you can, else prevent falls, else limit them; take any roof as fragile until a competent"
                        + " person says it is not; never alone. Law and licensed practice of the place come first.");
        part.caution(
                "Old slates, soffits and flues of fibre cement may hold asbestos: survey first; licensed work. Look for overhead lines. Bats,"
                        + " listing and consent are matters of law: ask the authority. Renewing much of a roof may have to be notified.");
        return part.section();
    }

    private SheetSection finalChecks() {
        Part part = new Part(SheetStep.FINAL_CHECKS);
        List<List<String>> rows = new ArrayList<>();
        for (JobFigures.Face face : figures.faces()) {
            face.layout().courses().value().ifPresent(courses -> {
                String name = face.face().name();
                rows.add(List.of(
                        name + ": ten gauges, left",
                        Show.whole(courses.gauge().left().times(10)),
                        "________"));
                rows.add(List.of(
                        name + ": ten gauges, right",
                        Show.whole(courses.gauge().right().times(10)),
                        "________"));
                courses.headlap()
                        .ifPresent(lap -> rows.add(List.of(
                                name + ": headlap, at three places",
                                Show.whole(lap.left().min(lap.right())),
                                "____  ____  ____")));
            });
            face.layout()
                    .columns()
                    .value()
                    .ifPresent(columns -> columns.sidelap()
                            .ifPresent(sidelap -> rows.add(
                                    List.of(face.face().name() + ": least sidelap", Show.whole(sidelap), "________"))));
        }
        figures.lowVents()
                .forEach(vents -> rows.add(
                        List.of(vents.name() + ": clear opening", Show.whole(vents.continuousGap()), "________")));
        part.table("Measure", List.of("what", "expected", "found"), rows);
        return part.section();
    }

    private SheetSection later() {
        Part part = new Part(SheetStep.LATER);
        for (JobFigures.Face face : figures.faces()) {
            face.layout()
                    .courses()
                    .value()
                    .ifPresent(courses -> part.remark(
                            face.face().name() + ": " + job.covering().name() + ", length "
                                    + job.covering().length() + ", margin seen "
                                    + Show.fine(courses.gauge().left()) + ", " + courses.courseCount() + " courses."));
        }
        part.remark(
                "Keep this page with the spare units: from the margin seen and the unit's length the headlap can be worked back.");
        return part.section();
    }
}
