package org.roofmaths.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.flashing.CoverFlashing;
import org.roofmaths.order.JointedRows;
import org.roofmaths.order.StockCutting;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.LeanToFit;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.rules.BattenSize;
import org.roofmaths.rules.Detail;
import org.roofmaths.rules.Situation;
import org.roofmaths.rules.Subjects;
import org.roofmaths.settingout.BattenRuns;
import org.roofmaths.settingout.Columns;
import org.roofmaths.settingout.Courses;
import org.roofmaths.settingout.Underlay;
import org.roofmaths.units.Length;
import org.roofmaths.units.Range;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;

/** The parts of the sheet about the covering: does it suit, what it weighs, underlay, battens, courses, columns. */
final class CoverParts {
    private final JobFigures figures;
    private final Job job;

    CoverParts(JobFigures figures) {
        this.figures = figures;
        this.job = figures.job();
    }

    List<SheetSection> sections() {
        return List.of(
                suitability(),
                roomAtWall(),
                weight(),
                underlayAndBattens(),
                fixedPoints(),
                gauge(),
                taper(),
                columns(),
                openings(),
                edges());
    }

    private SheetSection suitability() {
        Part part = new Part(SheetStep.SUITABILITY);
        Situation situation = figures.situation();
        figures.roof()
                .ifPresent(roof -> part.checks(
                        "pitch",
                        figures.checks(
                                Subjects.LEAST_PITCH,
                                situation,
                                roof.faces().get(0).working().figure(RoofFace.RAFTER_PITCH))));
        for (JobFigures.Face face : figures.faces()) {
            face.layout()
                    .courses()
                    .value()
                    .ifPresent(courses -> courses.headlap()
                            .ifPresent(laps -> eachEnd(laps, (place, lap) -> {
                                Figure<Length> got = courses.working().figure(at(Courses.HEADLAP, place));
                                part.checks(
                                        "headlap, " + named(face, place),
                                        figures.checks(Subjects.LEAST_HEADLAP, situation, got));
                                if (job.covering() instanceof DoubleLapUnit unit) {
                                    Ratio share = lap.dividedBy(unit.length());
                                    part.checks(
                                            "headlap over length, " + named(face, place),
                                            figures.checks(
                                                    Subjects.GREATEST_HEADLAP_SHARE, situation, Figure.given(share)));
                                }
                            })));
        }
        part.remark(
                "Each row is of the rafter pitch at its flattest. The unit's own declaration, the exposure and the rafter length are still"
                        + " to be shown.");
        return part.section();
    }

    private SheetSection roomAtWall() {
        Part part = new Part(SheetStep.ROOM_AT_WALL);
        Optional<JobRoof.UpperLimit> limit = job.roof().upperLimit();
        if (limit.isEmpty()) {
            part.doesNotApply("Nothing above the roof was given that it must stay below.");
            return part.section();
        }
        figures.topFlashing().ifPresent(flashing -> {
            part.line(
                    "highest part of the covering at the wall",
                    Show.whole(flashing.line().startHeight()),
                    flashing,
                    org.roofmaths.flashing.CoveringLine.START_HEIGHT);
            flashing.joint().ifPresent(joint -> {
                part.line("bed joint that takes the flashing", Show.whole(joint), flashing, CoverFlashing.JOINT);
                part.line("upstand got at that joint", Show.whole(flashing.upstand()), flashing, CoverFlashing.UPSTAND);
                Length room = limit.get().height().minus(joint);
                part.remark(
                        room.isNegative()
                                ? "The joint is " + Show.whole(room.abs()) + " above the "
                                        + limit.get().what() + " at "
                                        + Show.whole(limit.get().height()) + "."
                                : "The joint is " + Show.whole(room) + " below the "
                                        + limit.get().what() + " at "
                                        + Show.whole(limit.get().height()) + ".");
            });
            part.checks(
                    "upstand",
                    figures.checks(
                            Subjects.FLASHING_UPSTAND,
                            figures.situation().at(Detail.COVER_FLASHING),
                            Figure.given(flashing.upstand())));
            figures.leanToFit().ifPresent(fit -> {
                fit.greatestPitch()
                        .ifPresent(pitch -> part.line(
                                "greatest pitch that the wall allows",
                                Show.pitch(pitch),
                                fit,
                                LeanToFit.GREATEST_PITCH));
                fit.lines()
                        .forEach(line -> part.line(
                                "to spare at " + line.demand().leastPitch().value() + ", the least for "
                                        + line.demand().covering(),
                                Show.whole(line.spare().value()),
                                line.spare(),
                                line.spare().term()));
                figures.roof().ifPresent(roof -> {
                    Worked<Length> highest =
                            fit.greatestPlateHeight(roof.faces().get(0).pitch());
                    Worked<Length> furthest =
                            fit.greatestProjection(roof.faces().get(0).pitch());
                    part.line("highest plate at this pitch", Show.whole(highest.value()), highest, highest.term());
                    part.line(
                            "longest projection at this pitch",
                            Show.whole(furthest.value()),
                            furthest,
                            furthest.term());
                });
            });
            part.remark("Geometry only: the wall's own damp-proofing must be joined to it.");
        });
        return part.section();
    }

    private SheetSection weight() {
        Part part = new Part(SheetStep.WEIGHT);
        for (JobFigures.Face face : figures.faces()) {
            face.layout().courses().value().ifPresent(courses -> {
                CoveringUnit unit = job.covering();
                Length gauge = courses.gauge().left();
                part.line(
                        face.face().name() + ": units to a square metre",
                        Show.number(unit.unitsPerSquareMetre(gauge).value(), 2),
                        unit.unitsPerSquareMetre(gauge),
                        CoveringUnit.UNITS_PER_SQUARE_METRE);
                part.line(
                        face.face().name() + ": mass of the covering on the slope",
                        Show.arealMass(unit.massOnSlope(gauge).value()),
                        unit.massOnSlope(gauge),
                        CoveringUnit.MASS_ON_SLOPE);
                part.line(
                        face.face().name() + ": mass of the covering on plan",
                        Show.arealMass(
                                unit.massOnPlan(gauge, face.face().pitch()).value()),
                        unit.massOnPlan(gauge, face.face().pitch()),
                        CoveringUnit.MASS_ON_PLAN);
            });
        }
        part.remark("By nominal cover and the gauge got at the left end; the order has the counted mass.");
        part.caution(
                "A covering heavier or lighter than the one before changes what the structure carries, and wind lifts a light one more: a"
                        + " person competent in structures decides. Snow and wind are not worked out here.");
        return part.section();
    }

    private SheetSection underlayAndBattens() {
        Part part = new Part(SheetStep.UNDERLAY_AND_BATTENS);
        JobSettingOut s = job.settingOut();
        part.checks(
                "batten",
                figures.checks(
                        Subjects.BATTEN_SIZE,
                        figures.situation(),
                        Figure.given(new BattenSize(s.battenWidth(), s.battenDepth()))));
        for (JobFigures.Face face : figures.faces()) {
            String name = face.face().name();
            face.layout().battens().value().ifPresent(battens -> {
                part.line(name + ": battens", battens.count() + "", battens, BattenRuns.COUNT);
                part.line(name + ": battens together", Show.metres(battens.together()), battens, BattenRuns.TOGETHER);
            });
            face.layout().underlay().ifPresent(underlay -> {
                part.line(name + ": rows of underlay", underlay.rowCount() + "", underlay, Underlay.ROWS);
                part.line(
                        name + ": underlay with its joins",
                        Show.metres(underlay.withJoins()),
                        underlay,
                        Underlay.WITH_JOINS);
                part.table(
                        name + ": lower edge of each row, up the slope from the fascia line",
                        List.of("row", "edge"),
                        numbered(underlay.lowerEdges().stream().map(Show::whole).toList()));
            });
        }
        figures.battenPlan().ifPresent(plan -> battenPlan(part, plan));
        figures.battenJoints().forEach(rule -> part.remark("Batten joints: " + rule + "."));
        part.remark(
                "The size of a batten is nominal: its grade mark and measured size are to be seen. Joints lie square over a rafter.");
        part.caution("A batten is a foothold only if it is graded and fixed for it.");
        return part.section();
    }

    private static void battenPlan(Part part, StockCutting plan) {
        part.line(
                "battens to buy, every joint on a rafter", Show.metres(plan.totalLength()), plan, StockCutting.BOUGHT);
        List<List<String>> rows = new ArrayList<>();
        for (JointedRows row : plan.rows()) {
            List<String> joints = row.joints().stream().map(Show::whole).toList();
            rows.add(List.of(
                    row.run(), Long.toString(row.times()), joints.isEmpty() ? "none" : String.join(", ", joints)));
        }
        part.table(
                "Joints of battens, from the left end of the batten",
                List.of("battens", "how many", "joints at"),
                rows);
        part.remark("Saw cut of " + Show.whole(JobFigures.SAW_CUT)
                + ". The plan counts stock and does not stagger: move joints to other rafters so that no more of them lie on one rafter than"
                + " the rows on batten joints allow.");
    }

    private SheetSection fixedPoints() {
        Part part = new Part(SheetStep.FIXED_POINTS);
        for (JobFigures.Face face : figures.faces()) {
            face.layout().courses().value().ifPresent(courses -> {
                String edge = courses.battenEdge().toString();
                eachEnd(
                        courses.firstLine(),
                        (place, first) -> part.line(
                                named(face, place) + ": first batten, " + edge,
                                Show.fine(first),
                                courses,
                                at(Courses.FIRST_LINE, place)));
                courses.underEavesLine()
                        .ifPresent(line -> part.remark(named(face, "") + ": under-eaves course, " + edge + " at "
                                + Show.whole(line.exact().left()) + " from the fascia line."));
                eachEnd(
                        courses.topLine(),
                        (place, top) -> part.line(
                                named(face, place) + ": top batten, " + edge,
                                Show.fine(top),
                                courses,
                                at(Courses.TOP_LINE, place)));
            });
        }
        part.remark(
                "Measured up the slope from the fascia line: the plumb line over the outer face of the fascia, in the plane under the"
                        + " battens.");
        part.remark(
                "The fascia must hold the first course in plane: batten plus one unit, square to the slope, over the tops of the rafters;"
                        + " and the eaves tray must still fall to the gutter. Check both.");
        return part.section();
    }

    private SheetSection gauge() {
        Part part = new Part(SheetStep.GAUGE);
        for (JobFigures.Face face : figures.faces()) {
            part.problems(face.face().name(), face.layout().courses().problems());
            face.layout().courses().value().ifPresent(courses -> {
                String name = face.face().name();
                eachEnd(
                        courses.gauge(),
                        (place, gauge) -> part.line(
                                named(face, place) + ": gauge", Show.fine(gauge), courses, at(Courses.GAUGE, place)));
                part.line(name + ": gauges (spaces)", courses.gaugeCount() + "", courses, Courses.GAUGE_COUNT);
                part.remark(name + ": " + courses.courseCount() + " courses.");
                part.line(
                        name + ": greatest gauge", Show.fine(courses.greatestGauge()), courses, Courses.GREATEST_GAUGE);
                courses.headlap()
                        .ifPresent(laps -> eachEnd(
                                laps,
                                (place, lap) -> part.line(
                                        named(face, place) + ": headlap got",
                                        Show.fine(lap),
                                        courses,
                                        at(Courses.HEADLAP, place))));
                courses.excessWithOneFewer()
                        .ifPresent(excess ->
                                part.remark(name + ": with one gauge fewer the greatest gauge would be passed by "
                                        + Show.fine(excess) + "."));
            });
        }
        return part.section();
    }

    private SheetSection taper() {
        Part part = new Part(SheetStep.TAPER);
        boolean found = false;
        for (JobFigures.Face face : figures.faces()) {
            Optional<Courses> courses = face.layout().courses().value();
            if (courses.isPresent() && !courses.get().gauge().isEqual()) {
                found = true;
                Ends<Length> gauge = courses.get().gauge();
                Ends<Length> top = courses.get().topLine();
                part.remark(face.face().name() + ": each gauge is "
                        + Show.fine(gauge.left().minus(gauge.right()).abs())
                        + (gauge.left().isLongerThan(gauge.right()) ? " wider at the left" : " wider at the right")
                        + ", shared over all " + courses.get().gaugeCount() + "; the top lines differ by "
                        + Show.whole(top.left().minus(top.right()).abs())
                        + ". Strike each line from its own two marks.");
            }
        }
        if (!found) {
            part.doesNotApply("Left and right ends are alike on every face.");
        }
        return part.section();
    }

    private SheetSection columns() {
        Part part = new Part(SheetStep.COLUMNS);
        for (JobFigures.Face face : figures.faces()) {
            part.problems(face.face().name(), face.layout().columns().problems());
            face.layout().columns().value().ifPresent(columns -> {
                String name = face.face().name();
                part.remark(name + ": " + columns + ".");
                columns.working()
                        .find(Columns.COVER_GOT)
                        .ifPresent(cover -> part.line(
                                name + ": cover width", Show.fine(columns.coverGot()), columns, Columns.COVER_GOT));
                columns.sidelap()
                        .ifPresent(sidelap ->
                                part.line(name + ": least sidelap", Show.fine(sidelap), columns, Columns.SIDELAP_GOT));
            });
        }
        return part.section();
    }

    private SheetSection openings() {
        return new Part(SheetStep.OPENINGS)
                .doesNotApply(
                        "No stack, roof window or pipe was given. Each needs its place agreed with courses and columns before marking.")
                .section();
    }

    private SheetSection edges() {
        Part part = new Part(SheetStep.EDGES);
        for (JobFigures.Face face : figures.faces()) {
            face.layout().columns().value().ifPresent(columns -> {
                for (String place : List.of("left", "right")) {
                    boolean left = place.equals("left");
                    if ((left ? columns.ends().left() : columns.ends().right()).isVerge()) {
                        Length reach = left
                                ? columns.reachGot().left()
                                : columns.reachGot().right();
                        part.checks(
                                "verge overhang, " + face.face().name() + " " + place,
                                figures.checks(
                                        Subjects.VERGE_OVERHANG,
                                        figures.situation(),
                                        Figure.given(Range.closed(reach, reach))));
                    }
                }
            });
        }
        figures.roof().ifPresent(roof -> {
            part.checks(
                    "overhang into the gutter",
                    figures.checks(
                            Subjects.EAVES_OVERHANG,
                            figures.situation(),
                            Figure.given(job.settingOut()
                                    .overhangIntoGutter()
                                    .to(
                                            org.roofmaths.units.Direction.LEVEL,
                                            roof.faces().get(0).pitch()))));
            if (!roof.edges(EdgeKind.RIDGE).isEmpty()) {
                figures.ridgeUnits()
                        .ifPresent(units -> part.line(
                                "ridge units", units.count() + "", units, org.roofmaths.order.UnitsAlong.COUNT));
                part.remark("Every ridge unit is held mechanically; mortar alone is a filler, not a fixing.");
            }
        });
        for (JobFigures.Face face : figures.faces()) {
            face.layout()
                    .courses()
                    .value()
                    .flatMap(Courses::coverNeededAtTop)
                    .ifPresent(cover -> part.remark(face.face().name()
                            + ": the ridge must cover the slates by " + Show.whole(cover.left())
                            + " down the slope from the apex, or a shorter top"
                            + " course goes under it."));
        }
        return part.section();
    }

    private static List<List<String>> numbered(List<String> cells) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            rows.add(List.of(Integer.toString(i + 1), cells.get(i)));
        }
        return rows;
    }

    private interface AtEnd<T> {
        void take(String place, T value);
    }

    /** Both ends at once where they are alike, else left and right. */
    private static <T> void eachEnd(Ends<T> ends, AtEnd<T> each) {
        if (ends.isEqual()) {
            each.take("", ends.left());
        } else {
            each.take("left", ends.left());
            each.take("right", ends.right());
        }
    }

    private static <T> Term<T> at(Term<T> term, String place) {
        return place.isEmpty() ? term : term.at(place);
    }

    private static String named(JobFigures.Face face, String place) {
        return place.isEmpty() ? face.face().name() : face.face().name() + " " + place;
    }
}
