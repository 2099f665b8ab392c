package org.roofmaths.settingout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.covering.PartUnit;
import org.roofmaths.roof.End;
import org.roofmaths.units.Length;

/**
 * Looks at every way of filling a width with double-lap units in half bond.
 *
 * <p>Two kinds of course take turns. The first full course starts with a whole unit at the left, the next with a unit-and-a-half, or
 * with a half where there is no such unit; so every joint lies over the middle of a unit below. A width of an even number of half
 * units ends as it starts; an odd one the other way round. Each kind of course has its own joint, so that both end on one line.
 */
final class DoubleLapColumns {
    private static final Length RESOLUTION = Length.STORAGE_RESOLUTION;

    private final ColumnPlan plan;
    private final DoubleLapUnit unit;
    private final Length least;
    private final Length greatest;
    private final List<Length> walls;

    DoubleLapColumns(ColumnPlan plan, DoubleLapUnit unit) {
        this.plan = plan;
        this.unit = unit;
        this.least = unit.jointRange().lower().orElse(unit.joint());
        this.greatest = unit.jointRange().upper().orElse(unit.joint());
        this.walls = plan.isTapered()
                ? List.of(plan.wallAtEaves().value(), plan.wallAtTop().value())
                : List.of(plan.wallAtEaves().value());
    }

    /** The end pieces and the number of whole units of one kind of course. */
    private record Shape(List<PieceKind> left, int whole, List<PieceKind> right) {
        int joints() {
            return left.size() + whole + right.size() - 1;
        }
    }

    Length width(PieceKind kind) {
        return switch (kind) {
            case UNIT_AND_A_HALF -> unit.unitAndAHalf().map(PartUnit::width).orElseThrow();
            case HALF -> unit.width().dividedBy(2);
            default -> unit.width();
        };
    }

    private Length width(Shape shape) {
        Length sum = unit.width().times(shape.whole());
        for (PieceKind kind : shape.left()) {
            sum = sum.plus(width(kind));
        }
        for (PieceKind kind : shape.right()) {
            sum = sum.plus(width(kind));
        }
        return sum;
    }

    /** The two kinds of course of a width of so many half units; empty if it is too narrow for the bond. */
    private List<Shape> shapes(int halves, boolean wide) {
        List<PieceKind> edge = List.of(wide ? PieceKind.UNIT_AND_A_HALF : PieceKind.HALF);
        int edgeHalves = wide ? 3 : 1;
        boolean even = halves % 2 == 0;
        int between = (halves - (even ? 2 : 1) * edgeHalves) / 2;
        if (between < 0 || halves < 2) {
            return List.of();
        }
        return even
                ? List.of(new Shape(List.of(), halves / 2, List.of()), new Shape(edge, between, edge))
                : List.of(new Shape(List.of(), between, edge), new Shape(edge, between, List.of()));
    }

    List<ColumnChoice> choices() {
        List<ColumnChoice> all = new ArrayList<>();
        boolean hasWide = unit.unitAndAHalf().isPresent();
        Length narrowest = plan.leastWidth(walls.get(0));
        Length widest = plan.greatestWidth(walls.get(0));
        int from = halves(narrowest, greatest, true);
        int to = halves(widest, least, false);
        for (int m = Math.max(2, Math.min(from, to)); m <= Math.max(from, to); m++) {
            all.add(uncut(hasWide ? Arrangement.WHOLE_UNITS : Arrangement.HALF_UNIT, m, hasWide));
        }
        all.add(cut(Arrangement.ONE_CUT, plan.smallestCut().value()));
        return all;
    }

    /** How many half units and their joints fill a width, or go into it. */
    private int halves(Length width, Length joint, boolean fills) {
        Length twice = width.plus(joint).times(2);
        Length cover = unit.width().plus(joint);
        if (!twice.isPositive()) {
            return 0;
        }
        return Math.toIntExact(
                fills ? cover.timesToCover(twice) : cover.timesIn(twice).count());
    }

    private ColumnChoice uncut(Arrangement arrangement, int halves, boolean wide) {
        List<Shape> shapes = shapes(halves, wide);
        int count = shapes.isEmpty() ? halves / 2 : shapes.get(0).whole();
        if (shapes.isEmpty()) {
            return ColumnChoice.rejected(arrangement, count, "the face is too narrow for the bond");
        }
        if (!wide && !width(PieceKind.HALF).meetsLeast(plan.smallestCut().value())) {
            return ColumnChoice.rejected(
                    arrangement,
                    count,
                    "halves are " + width(PieceKind.HALF) + " wide, but the smallest cut is "
                            + plan.smallestCut().value());
        }
        List<ColumnChoice.Level> levels = new ArrayList<>();
        for (Length wall : walls) {
            Length low = plan.leastWidth(wall);
            Length high = plan.greatestWidth(wall);
            Length nominal = Length.ZERO;
            for (Shape shape : shapes) {
                Length units = width(shape);
                low = low.max(units.plus(least.times(shape.joints())));
                high = high.min(units.plus(greatest.times(shape.joints())));
                nominal = nominal.plus(units.plus(unit.joint().times(shape.joints())));
            }
            if (low.minus(RESOLUTION).isLongerThan(high)) {
                return ColumnChoice.rejected(arrangement, count, wantsJoint(wall, shapes));
            }
            boolean overhangRules = plan.preference().puts(Aim.LEAST_CHANGE, Aim.NOMINAL_COVER);
            Length aim = overhangRules ? plan.wantedWidth(wall) : nominal.dividedBy(shapes.size());
            Length covered = aim.max(low).min(high);
            List<ColumnChoice.RowShape> rows = new ArrayList<>();
            for (Shape shape : shapes) {
                Length joint = covered.minus(width(shape)).dividedBy(Math.max(1, shape.joints()));
                rows.add(row(shape, joint));
            }
            levels.add(new ColumnChoice.Level(wall, covered, unit.coverWidth(), Length.ZERO, List.copyOf(rows)));
        }
        return ColumnChoice.fitting(arrangement, count, levels);
    }

    private ColumnChoice.RowShape row(Shape shape, Length joint) {
        return new ColumnChoice.RowShape(ends(shape.left()), shape.whole(), ends(shape.right()), joint);
    }

    private List<ColumnChoice.End> ends(List<PieceKind> kinds) {
        return kinds.stream()
                .map(kind -> new ColumnChoice.End(kind, width(kind)))
                .toList();
    }

    private String wantsJoint(Length wall, List<Shape> shapes) {
        Shape shape = shapes.get(0);
        Length from = plan.leastWidth(wall).minus(width(shape)).dividedBy(Math.max(1, shape.joints()));
        Length to = plan.greatestWidth(wall).minus(width(shape)).dividedBy(Math.max(1, shape.joints()));
        return "want joints from " + from + " to " + to + ", but they may be " + least + " to " + greatest;
    }

    /** One piece cut in each course, at the end for cuts; the other end as usual. */
    private ColumnChoice cut(Arrangement arrangement, Length smallest) {
        int count = 0;
        List<ColumnChoice.Level> levels = new ArrayList<>();
        for (Length wall : walls) {
            ColumnChoice.Level level = cutLevel(wall, smallest);
            if (level == null) {
                return ColumnChoice.rejected(
                        arrangement, count, "leaves a cut under " + smallest + " in one of the two kinds of course");
            }
            levels.add(level);
            count = Math.max(count, level.rows().get(0).whole());
        }
        return ColumnChoice.fitting(arrangement, count, levels);
    }

    Optional<ColumnChoice> sliver() {
        ColumnChoice any = cut(Arrangement.SLIVER, Length.ofMillimetres(1));
        return any.fits() ? Optional.of(any) : Optional.empty();
    }

    private ColumnChoice.@Nullable Level cutLevel(Length wall, Length smallest) {
        List<Length> joints = List.of(unit.joint(), least, greatest);
        List<Length> widths = List.of(plan.wantedWidth(wall), plan.leastWidth(wall), plan.greatestWidth(wall));
        boolean jointFirst = plan.preference().puts(Aim.LEAST_CHANGE, Aim.NOMINAL_COVER);
        for (int i = 0; i < joints.size() * widths.size(); i++) {
            Length joint = joints.get(jointFirst ? i % joints.size() : i / joints.size());
            Length covered = widths.get(jointFirst ? i / joints.size() : i % joints.size());
            ColumnChoice.RowShape first = cutRow(List.of(), covered, joint, smallest);
            PieceKind edge = unit.unitAndAHalf().isPresent() ? PieceKind.UNIT_AND_A_HALF : PieceKind.HALF;
            ColumnChoice.RowShape second = cutRow(List.of(edge), covered, joint, smallest);
            if (first != null && second != null) {
                Length narrowest = cut(first).min(cut(second));
                return new ColumnChoice.Level(wall, covered, unit.coverWidth(), narrowest, List.of(first, second));
            }
        }
        return null;
    }

    private Length cut(ColumnChoice.RowShape row) {
        List<ColumnChoice.End> ends = plan.cutEnd() == End.RIGHT ? row.right() : row.left();
        return ends.isEmpty() ? unit.width() : ends.get(0).width();
    }

    /** A course that starts with a piece at the end away from the cut, goes on with whole units, and ends with the cut piece. */
    private ColumnChoice.@Nullable RowShape cutRow(
            List<PieceKind> start, Length covered, Length joint, Length smallest) {
        Length left = covered;
        for (PieceKind kind : start) {
            left = left.minus(width(kind)).minus(joint);
        }
        Length spare = left.minus(smallest);
        if (spare.isNegative()) {
            return null;
        }
        Length cover = unit.width().plus(joint);
        int whole = Math.toIntExact(cover.timesIn(spare).count());
        Length piece = left.minus(cover.times(whole));
        boolean fromWhole = piece.meetsGreatest(unit.width());
        if (!fromWhole) {
            Optional<PartUnit> wide = unit.unitAndAHalf();
            if (wide.isEmpty() || !piece.meetsGreatest(wide.orElseThrow().width())) {
                return null;
            }
        }
        PieceKind kind = piece.equals(unit.width())
                ? PieceKind.WHOLE
                : fromWhole ? PieceKind.CUT : PieceKind.CUT_UNIT_AND_A_HALF;
        List<ColumnChoice.End> cut = List.of(new ColumnChoice.End(kind, piece));
        List<ColumnChoice.End> other = ends(start);
        return plan.cutEnd() == End.RIGHT
                ? new ColumnChoice.RowShape(other, whole, cut, joint)
                : new ColumnChoice.RowShape(cut, whole, other, joint);
    }
}
