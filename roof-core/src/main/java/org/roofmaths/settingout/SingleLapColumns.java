package org.roofmaths.settingout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roofmaths.covering.PartUnit;
import org.roofmaths.covering.SingleLapUnit;
import org.roofmaths.roof.End;
import org.roofmaths.units.Length;

/** Looks at every way of filling a width with single-lap units. */
final class SingleLapColumns {
    private static final Length RESOLUTION = Length.STORAGE_RESOLUTION;

    private final ColumnPlan plan;
    private final SingleLapUnit unit;
    private final Length least;
    private final Length greatest;
    private final List<Length> walls;

    SingleLapColumns(ColumnPlan plan, SingleLapUnit unit) {
        this.plan = plan;
        this.unit = unit;
        this.least = unit.coverRange().lower().orElse(unit.coverWidth());
        this.greatest = unit.coverRange().upper().orElse(unit.coverWidth());
        this.walls = plan.isTapered()
                ? List.of(plan.wallAtEaves().value(), plan.wallAtTop().value())
                : List.of(plan.wallAtEaves().value());
    }

    private Optional<PartUnit> leftVerge() {
        return plan.ends().left().isVerge() ? unit.leftVergeUnit() : Optional.empty();
    }

    private Optional<PartUnit> rightVerge() {
        return plan.ends().right().isVerge() ? unit.rightVergeUnit() : Optional.empty();
    }

    /** What stands beside the ordinary covers of a course: verge units, what the last unit shows, a half unit. */
    Length fixed(Arrangement arrangement) {
        Length sum = leftVerge().map(PartUnit::width).orElse(Length.ZERO);
        if (rightVerge().isPresent()) {
            sum = sum.plus(rightVerge().orElseThrow().width());
        } else if (!cutsAtRight(arrangement)) {
            sum = sum.plus(unit.sideLock());
        }
        return hasHalf(arrangement) ? sum.plus(unit.halfUnit().orElseThrow().width()) : sum;
    }

    static boolean hasHalf(Arrangement arrangement) {
        return arrangement == Arrangement.HALF_UNIT || arrangement == Arrangement.HALF_AND_CUT;
    }

    boolean cutsAtRight(Arrangement arrangement) {
        return arrangement == Arrangement.CUT_AT_BOTH_ENDS || (arrangement.cuts() == 1 && plan.cutEnd() == End.RIGHT);
    }

    List<ColumnChoice> choices() {
        List<ColumnChoice> all = new ArrayList<>(uncut(Arrangement.WHOLE_UNITS));
        if (unit.halfUnit().isPresent()) {
            all.addAll(uncut(Arrangement.HALF_UNIT));
        }
        all.add(cut(Arrangement.ONE_CUT));
        if (unit.halfUnit().isPresent()) {
            all.add(cut(Arrangement.HALF_AND_CUT));
        }
        all.add(cut(Arrangement.CUT_AT_BOTH_ENDS));
        return all;
    }

    private List<ColumnChoice> uncut(Arrangement arrangement) {
        Length fixed = fixed(arrangement);
        Length wall = walls.get(0);
        long from = count(plan.leastWidth(wall).minus(fixed), greatest, true);
        long to = count(plan.greatestWidth(wall).minus(fixed), least, false);
        List<ColumnChoice> found = new ArrayList<>();
        // where nothing fits the two nearest numbers tell by how much
        for (long n = Math.max(1, Math.min(from, to)); n <= Math.max(from, to); n++) {
            found.add(uncut(arrangement, Math.toIntExact(n), fixed));
        }
        return found;
    }

    /** The least number of covers that fill a width, or the greatest number that go into it. */
    private static long count(Length width, Length cover, boolean fills) {
        if (!width.isPositive()) {
            return 0;
        }
        return fills ? cover.timesToCover(width) : cover.timesIn(width).count();
    }

    private ColumnChoice uncut(Arrangement arrangement, int n, Length fixed) {
        List<ColumnChoice.Level> levels = new ArrayList<>();
        for (Length wall : walls) {
            Length low = plan.leastWidth(wall).max(fixed.plus(least.times(n)));
            Length high = plan.greatestWidth(wall).min(fixed.plus(greatest.times(n)));
            if (low.minus(RESOLUTION).isLongerThan(high)) {
                return ColumnChoice.rejected(arrangement, n, wantsCover(wall, fixed, n));
            }
            boolean overhangRules = plan.preference().puts(Aim.LEAST_CHANGE, Aim.NOMINAL_COVER);
            Length aim = overhangRules
                    ? plan.wantedWidth(wall)
                    : fixed.plus(unit.coverWidth().times(n));
            Length covered = aim.max(low).min(high);
            levels.add(level(wall, covered, covered.minus(fixed).dividedBy(n), Length.ZERO, arrangement, n));
        }
        return ColumnChoice.fitting(arrangement, n, levels);
    }

    private String wantsCover(Length wall, Length fixed, int n) {
        Length from = plan.leastWidth(wall).minus(fixed).dividedBy(n);
        Length to = plan.greatestWidth(wall).minus(fixed).dividedBy(n);
        return "want a cover from " + from + " to " + to + ", but the unit gives " + least + " to " + greatest;
    }

    private ColumnChoice cut(Arrangement arrangement) {
        Length fixed = fixed(arrangement);
        int cuts = arrangement.cuts();
        Length smallest = plan.smallestCut().value();
        Length spare = cuts == 1 ? Length.ZERO : smallest.times(2);
        Length room = plan.wantedWidth(walls.get(0)).minus(fixed).minus(spare);
        if (room.isNegative()) {
            return ColumnChoice.rejected(arrangement, 0, "there is no room for it");
        }
        int n = Math.toIntExact(unit.coverWidth().timesIn(room).count());
        ColumnChoice first = cut(arrangement, n, fixed, cuts);
        return first.fits() || n == 0 ? first : retry(first, arrangement, n, fixed, cuts);
    }

    /** A cut that is too narrow beside n units may be wide enough beside one unit fewer, made of more than a cover. */
    private ColumnChoice retry(ColumnChoice first, Arrangement arrangement, int n, Length fixed, int cuts) {
        ColumnChoice second = cut(arrangement, n - 1, fixed, cuts);
        return second.fits() ? second : first;
    }

    private ColumnChoice cut(Arrangement arrangement, int n, Length fixed, int cuts) {
        Length smallest = plan.smallestCut().value();
        List<ColumnChoice.Level> levels = new ArrayList<>();
        for (Length wall : walls) {
            ColumnChoice.Level level = cutLevel(arrangement, n, fixed, cuts, wall, smallest);
            if (level == null) {
                Length width = plan.wantedWidth(wall)
                        .minus(fixed)
                        .minus(unit.coverWidth().times(n))
                        .dividedBy(cuts);
                return ColumnChoice.rejected(
                        arrangement,
                        n,
                        "leaves a cut of " + width + ", which must be from " + smallest + " to " + greatest);
            }
            levels.add(level);
        }
        return ColumnChoice.fitting(arrangement, n, levels);
    }

    /** Cuts as the wanted width and the nominal cover leave them; where that is too narrow or too wide, uses the play. */
    private ColumnChoice.@Nullable Level cutLevel(
            Arrangement arrangement, int n, Length fixed, int cuts, Length wall, Length smallest) {
        Length covered = plan.wantedWidth(wall);
        Length cover = unit.coverWidth();
        Length cut = covered.minus(fixed).minus(cover.times(n)).dividedBy(cuts);
        Length wanted = cut.max(smallest).min(greatest);
        Length over = wanted.minus(cut).times(cuts);
        if (!over.isZero()) {
            boolean coverFirst = plan.preference().puts(Aim.LEAST_CHANGE, Aim.NOMINAL_COVER);
            if (coverFirst) {
                cover = giveWay(cover, over, n);
                covered = widen(wall, fixed.plus(cover.times(n)).plus(wanted.times(cuts)));
            } else {
                covered = widen(wall, covered.plus(over));
                cover = giveWay(
                        cover, wanted.times(cuts).minus(covered.minus(fixed).minus(cover.times(n))), n);
            }
            cut = covered.minus(fixed).minus(cover.times(n)).dividedBy(cuts);
        }
        boolean fits = cut.meetsLeast(smallest) && cut.meetsGreatest(greatest);
        return fits ? level(wall, covered, cover, cut, arrangement, n) : null;
    }

    private Length widen(Length wall, Length covered) {
        return covered.max(plan.leastWidth(wall)).min(plan.greatestWidth(wall));
    }

    private Length giveWay(Length cover, Length over, int n) {
        return n == 0 ? cover : cover.minus(over.dividedBy(n)).max(least).min(greatest);
    }

    /** A cut that is too narrow, taken as it comes because nothing else fits. */
    Optional<ColumnChoice> sliver() {
        Length fixed = fixed(Arrangement.SLIVER);
        Length room = plan.wantedWidth(walls.get(0)).minus(fixed);
        if (room.isNegative()) {
            return Optional.empty();
        }
        int n = Math.toIntExact(unit.coverWidth().timesIn(room).count());
        List<ColumnChoice.Level> levels = new ArrayList<>();
        for (Length wall : walls) {
            Length covered = plan.wantedWidth(wall);
            Length cut = covered.minus(fixed).minus(unit.coverWidth().times(n));
            if (!cut.isPositive() || cut.isLongerThan(greatest)) {
                return Optional.empty();
            }
            levels.add(level(wall, covered, unit.coverWidth(), cut, Arrangement.SLIVER, n));
        }
        return Optional.of(ColumnChoice.fitting(Arrangement.SLIVER, n, levels));
    }

    private ColumnChoice.Level level(
            Length wall, Length covered, Length cover, Length cut, Arrangement arrangement, int n) {
        List<ColumnChoice.End> left = new ArrayList<>();
        List<ColumnChoice.End> right = new ArrayList<>();
        boolean both = arrangement == Arrangement.CUT_AT_BOTH_ENDS;
        leftVerge().ifPresent(verge -> left.add(new ColumnChoice.End(PieceKind.LEFT_VERGE, verge.width())));
        boolean atLeft = plan.cutEnd() == End.LEFT;
        List<ColumnChoice.End> atCutEnd = atLeft ? left : right;
        if (arrangement.cuts() > 0) {
            (both ? left : atCutEnd).add(new ColumnChoice.End(PieceKind.CUT, cut));
        }
        if (hasHalf(arrangement)) {
            PartUnit half = unit.halfUnit().orElseThrow();
            ColumnChoice.End piece = new ColumnChoice.End(PieceKind.HALF, half.width());
            atCutEnd.add(atLeft ? atCutEnd.size() : 0, piece);
        }
        if (both) {
            right.add(new ColumnChoice.End(PieceKind.CUT, cut));
        }
        rightVerge().ifPresent(verge -> right.add(new ColumnChoice.End(PieceKind.RIGHT_VERGE, verge.width())));
        return new ColumnChoice.Level(
                wall,
                covered,
                cover,
                cut,
                List.of(new ColumnChoice.RowShape(List.copyOf(left), n, List.copyOf(right), null)));
    }
}
