package org.roofmaths.settingout;

import java.util.Comparator;
import java.util.List;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Worked;

/** Finds the columns of a face and what lies in each of its courses: straight through between square ends, cut course by course else. */
final class FaceColumns {
    private static final Formula WALL_BY_FACE = Formula.of(
            Columns.WALL_WIDTH,
            FaceLayout.FACE_WIDTH
                    .minus(FaceLayout.VERGE_OVERHANG_WANTED.at("left"))
                    .minus(FaceLayout.VERGE_OVERHANG_WANTED.at("right")));

    private final FlatShape shape;
    private final LayoutScheme scheme;
    private final Attempt<Courses> courses;
    private final Ends<FaceEnd> ends;

    FaceColumns(FlatShape shape, LayoutScheme scheme, Attempt<Courses> courses) {
        this.shape = shape;
        this.scheme = scheme;
        this.courses = courses;
        this.ends = Ends.of(scheme.left(), scheme.right());
    }

    /** Columns, with the rows of all courses; no rows if courses or columns are missing. */
    record Found(Attempt<Columns> columns, List<CourseRow> rows) {}

    Found find() {
        Figure<Length> eaves = wall(shape.eavesWidth());
        Figure<Length> top = isTapered() ? wall(shape.topWidth()) : eaves;
        ColumnPlan plan = new ColumnPlan(
                eaves,
                top,
                scheme.unit(),
                ends,
                scheme.smallestCut().orElseGet(() -> Columns.halfAUnit(scheme.unit())),
                scheme.cutEnd().orElseGet(() -> Columns.cutEnd(ends)),
                scheme.preference(),
                scheme.rounding());
        if (!eaves.value().isPositive()) {
            return new Found(Attempt.failed(List.of(nothingLeft(eaves.value()))), List.of());
        }
        boolean raking = ends.left().isRaking() || ends.right().isRaking();
        if (!raking && top.value().isPositive()) {
            Attempt<Columns> straight = Columns.attempt(plan);
            boolean good = straight.hasValue() && straight.problems().isEmpty();
            if (good || !isTapered()) {
                return new Found(
                        straight,
                        courses.hasValue() && straight.hasValue() ? straightRows(plan, straight.orThrow()) : List.of());
            }
        }
        return raked(plan);
    }

    private boolean isTapered() {
        return !shape.topWidth().equals(shape.eavesWidth()) || shape.corners().size() != 4;
    }

    private List<CourseRow> straightRows(ColumnPlan plan, Columns columns) {
        return rows(plan).square(columns);
    }

    private CourseRows rows(ColumnPlan plan) {
        return new CourseRows(
                shape,
                scheme.unit(),
                ends,
                courses.orThrow(),
                scheme.openings(),
                plan.smallestCut().value());
    }

    private Found raked(ColumnPlan plan) {
        if (!courses.hasValue()) {
            return new Found(Attempt.failed(List.of(needsCourses())), List.of());
        }
        RakedColumns.Struck struck = new RakedColumns(plan, rows(plan), new CourseStrips(shape, ends)).strike();
        Columns columns = Columns.raked(plan, struck.considered(), struck.rows());
        List<UnitCut> slivers = struck.rows().stream()
                .flatMap(row -> row.cuts().stream())
                .filter(cut -> !cut.where().startsWith("opening")
                        && !cut.widest().meetsLeast(plan.smallestCut().value()))
                .toList();
        return new Found(
                slivers.isEmpty() ? Attempt.of(columns) : Attempt.of(columns, List.of(slivers(slivers, plan))),
                struck.rows());
    }

    private static Problem slivers(List<UnitCut> slivers, ColumnPlan plan) {
        UnitCut narrowest =
                slivers.stream().min(Comparator.comparing(UnitCut::widest)).orElseThrow();
        Length smallest = plan.smallestCut().value();
        return Problem.finding(
                Columns.SLIVER,
                "columns",
                narrowest.widest(),
                smallest,
                slivers.size() + (slivers.size() == 1 ? " cut is" : " cuts are") + " under the smallest cut of "
                        + smallest
                        + "; the narrowest is " + narrowest.widest() + " wide, in line "
                        + narrowest.line().number()
                        + " at the " + narrowest.where(),
                List.of(
                        Mend.of("cut", "made one with its neighbour", "a wider piece, where a wide unit can be had"),
                        Mend.of("cut", "bonded or fixed to its neighbour", "held although narrow")));
    }

    private Problem needsCourses() {
        return Problem.finding(
                Columns.NO_COURSES,
                "columns",
                "no courses",
                "courses that fit",
                "columns that are cut course by course cannot be laid out before the courses fit",
                List.of(Mend.of("courses", "mended first", "columns after them")));
    }

    private Problem nothingLeft(Length left) {
        return Problem.finding(
                Columns.TOO_NARROW,
                "columns",
                left,
                "above 0 mm",
                "nothing is left between the wall lines: the face is " + shape.eavesWidth()
                        + " wide at the eaves, verge overhangs included",
                List.of());
    }

    private Figure<Length> wall(Length width) {
        Ends<Length> overhang = ends.map(end -> end.isVerge() ? end.wanted() : Length.ZERO);
        return Worked.by(Columns.WALL_WIDTH, r -> {
            r.use(FaceLayout.FACE_WIDTH, Figure.given(width));
            r.use(FaceLayout.VERGE_OVERHANG_WANTED.at("left"), Figure.given(overhang.left()));
            r.use(FaceLayout.VERGE_OVERHANG_WANTED.at("right"), Figure.given(overhang.right()));
            return r.record(Columns.WALL_WIDTH, width.minus(overhang.left()).minus(overhang.right()), WALL_BY_FACE);
        });
    }
}
