package org.roofmaths.settingout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.units.Length;

/** What is wrong with the openings of a face: where they lie, and the slivers beside them. */
final class OpeningProblems {
    private final FlatShape shape;
    private final LayoutScheme scheme;
    private final Attempt<Courses> courses;
    private final Attempt<Columns> columns;
    private final List<CourseRow> rows;

    OpeningProblems(
            FlatShape shape,
            LayoutScheme scheme,
            Attempt<Courses> courses,
            Attempt<Columns> columns,
            List<CourseRow> rows) {
        this.shape = shape;
        this.scheme = scheme;
        this.courses = courses;
        this.columns = columns;
        this.rows = rows;
    }

    List<Problem> list() {
        List<Problem> found = new ArrayList<>();
        List<Opening> openings = scheme.openings();
        for (int i = 0; i < openings.size(); i++) {
            Opening opening = openings.get(i);
            outside(opening).ifPresent(found::add);
            for (int j = 0; j < i; j++) {
                overlap(openings.get(j), opening).ifPresent(found::add);
            }
            sliver(opening).ifPresent(found::add);
        }
        return found;
    }

    private Optional<Problem> outside(Opening opening) {
        Length top = shape.slopeLengths().left().min(shape.slopeLengths().right());
        boolean levels = !opening.up().isNegative() && !opening.top().isLongerThan(top);
        boolean inside = levels && isBetweenEdges(opening, opening.up()) && isBetweenEdges(opening, opening.top());
        if (inside) {
            return Optional.empty();
        }
        return Optional.of(Problem.finding(
                FaceLayout.OPENING_OUTSIDE,
                "opening \"" + opening.name() + "\"",
                "from " + opening.along() + " along, " + opening.up() + " up to " + opening.right() + " along, "
                        + opening.top() + " up",
                "on the face",
                "the opening \"" + opening.name() + "\" does not lie wholly on the face: from " + opening.along()
                        + " along, " + opening.up() + " up to " + opening.right() + " along, " + opening.top() + " up",
                List.of(Mend.of(
                        "opening", "set out on each of the faces that it crosses", "one opening on each face"))));
    }

    private boolean isBetweenEdges(Opening opening, Length up) {
        Ends<Length> edges = shape.edgesAt(up);
        return !opening.along().isShorterThan(edges.left()) && !opening.right().isLongerThan(edges.right());
    }

    private static Optional<Problem> overlap(Opening one, Opening other) {
        boolean apart = !one.right().isLongerThan(other.along())
                || !other.right().isLongerThan(one.along())
                || !one.top().isLongerThan(other.up())
                || !other.top().isLongerThan(one.up());
        return apart
                ? Optional.empty()
                : Optional.of(Problem.finding(
                        FaceLayout.OPENINGS_OVERLAP,
                        "opening \"" + other.name() + "\"",
                        other.name(),
                        "clear of the others",
                        "the openings \"" + one.name() + "\" and \"" + other.name() + "\" overlap",
                        List.of()));
    }

    private Optional<Problem> sliver(Opening opening) {
        Length smallest = scheme.smallestCut()
                .orElseGet(() -> Columns.halfAUnit(scheme.unit()))
                .value();
        String where = "opening \"" + opening.name() + "\"";
        List<UnitCut> slivers = rows.stream()
                .flatMap(row -> row.cuts().stream())
                .filter(cut -> cut.where().equals(where))
                .filter(cut -> cut.widest().isPositive() && !cut.widest().meetsLeast(smallest))
                .toList();
        if (slivers.isEmpty() || !courses.hasValue() || !columns.hasValue()) {
            return Optional.empty();
        }
        UnitCut narrowest =
                slivers.stream().min(Comparator.comparing(UnitCut::widest)).orElseThrow();
        Length width = narrowest.widest();
        List<Mend> mends = new ArrayList<>();
        if (columns.orThrow().arrangement() != Arrangement.RAKED) {
            OpeningFit fit = OpeningFit.of(opening, courses.orThrow(), columns.orThrow(), smallest);
            for (Length along : fit.alongsWithoutSlivers()) {
                Length by = along.minus(opening.along());
                mends.add(Mend.of(
                        "opening",
                        by.abs() + (by.isPositive() ? " to the right" : " to the left"),
                        by,
                        "no cut beside it under " + smallest));
            }
        }
        mends.add(Mend.of("cut", "bonded or fixed to its neighbour", "held although narrow"));
        return Optional.of(Problem.finding(
                Columns.SLIVER,
                where,
                width,
                smallest,
                "beside the " + where + " " + slivers.size() + (slivers.size() == 1 ? " piece is" : " pieces are")
                        + " under the smallest cut of " + smallest + "; the narrowest is " + width + " wide",
                mends));
    }
}
