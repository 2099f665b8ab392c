package org.roofmaths.settingout;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.covering.SingleLapUnit;
import org.roofmaths.roof.End;
import org.roofmaths.units.Length;

/** Strikes the grid of a face with a raking end: from its square end, or from the perp that leaves the fewest slivers. */
final class RakedColumns {
    private final CoveringUnit unit;
    private final CourseRows rows;
    private final CourseStrips strips;
    private final ColumnPlan plan;

    RakedColumns(ColumnPlan plan, CourseRows rows, CourseStrips strips) {
        this.unit = plan.unit();
        this.rows = rows;
        this.strips = strips;
        this.plan = plan;
    }

    /** A grid with the rows it gives. */
    record Struck(RakedGrid grid, List<CourseRow> rows, List<ColumnChoice> considered) {}

    private boolean isSquare(End end) {
        return !plan.ends().at(end).isRaking()
                && strips.edge(end, Length.ZERO)
                                .minus(strips.edge(end, strips.lowestTop()))
                                .abs()
                                .compareTo(Length.STORAGE_RESOLUTION)
                        <= 0;
    }

    Struck strike() {
        if (isSquare(End.LEFT)) {
            return struck(new RakedGrid(unit, RakedGrid.Anchor.LEFT, strips.edge(End.LEFT, Length.ZERO)));
        }
        if (isSquare(End.RIGHT)) {
            Length edge = strips.edge(End.RIGHT, Length.ZERO);
            boolean vergeUnit = plan.ends().right().isVerge()
                    && unit instanceof SingleLapUnit s
                    && s.rightVergeUnit().isPresent();
            Length lock = unit instanceof SingleLapUnit tile && !vergeUnit ? tile.sideLock() : Length.ZERO;
            return struck(new RakedGrid(unit, RakedGrid.Anchor.RIGHT, edge.minus(lock)));
        }
        return fewestSlivers();
    }

    private Struck struck(RakedGrid grid) {
        List<CourseRow> found = rows.raked(grid);
        return new Struck(grid, found, List.of(choice(found)));
    }

    /** A perp at the middle of the eaves, or a unit astride it, or half way between: the one with the fewest slivers, then pieces. */
    private Struck fewestSlivers() {
        Length middle = strips.edge(End.LEFT, Length.ZERO)
                .plus(strips.edge(End.RIGHT, Length.ZERO))
                .dividedBy(2);
        Struck best = null;
        long bestScore = Long.MAX_VALUE;
        List<ColumnChoice> considered = new ArrayList<>();
        for (int quarter : new int[] {0, 2, 1, 3}) {
            RakedGrid grid = new RakedGrid(
                    unit, RakedGrid.Anchor.PERP, middle.plus(unit.coverWidth().times(quarter / 4.0)));
            List<CourseRow> found = rows.raked(grid);
            long pieces =
                    found.stream().mapToLong(row -> row.row().pieces().size()).sum();
            long score = slivers(found) * 1_000_000 + pieces;
            considered.add(choice(found));
            if (score < bestScore) {
                bestScore = score;
                best = new Struck(grid, found, List.of());
            }
        }
        Struck chosen = Objects.requireNonNull(best);
        return new Struck(chosen.grid, chosen.rows, considered);
    }

    private ColumnChoice choice(List<CourseRow> found) {
        int count = found.isEmpty() ? 0 : found.get(0).row().count(PieceKind.WHOLE);
        long slivers = slivers(found);
        return slivers == 0
                ? ColumnChoice.fitting(Arrangement.RAKED, count, List.of())
                : ColumnChoice.rejected(
                        Arrangement.RAKED,
                        count,
                        "leaves " + slivers + " cuts under "
                                + plan.smallestCut().value());
    }

    private long slivers(List<CourseRow> found) {
        return found.stream()
                .flatMap(row -> row.cuts().stream())
                .filter(cut -> !cut.widest().meetsLeast(plan.smallestCut().value()))
                .count();
    }
}
