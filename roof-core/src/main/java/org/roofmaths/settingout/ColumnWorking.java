package org.roofmaths.settingout;

import static org.roofmaths.covering.DoubleLapUnit.UNIT_WIDTH;
import static org.roofmaths.settingout.Columns.COVERED_WIDTH;
import static org.roofmaths.settingout.Columns.COVER_GOT;
import static org.roofmaths.settingout.Columns.CUT_WIDTH;
import static org.roofmaths.settingout.Columns.GREATEST_COVER;
import static org.roofmaths.settingout.Columns.GREATEST_JOINT;
import static org.roofmaths.settingout.Columns.HALF_UNITS_ACROSS;
import static org.roofmaths.settingout.Columns.HALF_WIDTH;
import static org.roofmaths.settingout.Columns.JOINT_GOT;
import static org.roofmaths.settingout.Columns.LEAST_REACH;
import static org.roofmaths.settingout.Columns.LEFT_VERGE_WIDTH;
import static org.roofmaths.settingout.Columns.NOMINAL_COVER;
import static org.roofmaths.settingout.Columns.OVERALL_WIDTH;
import static org.roofmaths.settingout.Columns.REACH;
import static org.roofmaths.settingout.Columns.RIGHT_VERGE_WIDTH;
import static org.roofmaths.settingout.Columns.SHOWN_BEYOND_COVER;
import static org.roofmaths.settingout.Columns.SIDELAP_GOT;
import static org.roofmaths.settingout.Columns.SMALLEST_CUT;
import static org.roofmaths.settingout.Columns.UNITS_TOGETHER;
import static org.roofmaths.settingout.Columns.UNIT_COUNT;
import static org.roofmaths.settingout.Columns.WALL_WIDTH;
import static org.roofmaths.settingout.Columns.WIDE_WIDTH;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.covering.PartUnit;
import org.roofmaths.covering.SingleLapUnit;
import org.roofmaths.roof.End;
import org.roofmaths.roof.Ends;
import org.roofmaths.units.Length;
import org.roofmaths.working.Assumed;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;

/** Tells a recorder how the columns at one level of a face were reached. */
final class ColumnWorking {
    private final ColumnPlan plan;
    private final ColumnChoice chosen;
    private final ColumnChoice.Level level;
    private final Places at;
    private final Recorder r;

    ColumnWorking(ColumnPlan plan, ColumnChoice chosen, ColumnChoice.Level level, Places at, Recorder r) {
        this.plan = plan;
        this.chosen = chosen;
        this.level = level;
        this.at = at;
        this.r = r;
    }

    private void coveredWidth() {
        boolean isTop = plan.isTapered() && level.wall().equals(plan.wallAtTop().value());
        r.use(at.of(WALL_WIDTH), isTop ? plan.wallAtTop() : plan.wallAtEaves());
        Ends<Length> reach = plan.reach(level.wall(), level.covered());
        for (End end : End.values()) {
            r.use(reachAt(end), reachFigure(plan.ends().at(end), reach.at(end)));
        }
        record(
                COVERED_WIDTH,
                level.covered(),
                at.of(WALL_WIDTH).plus(reachAt(End.LEFT)).plus(reachAt(End.RIGHT)));
    }

    private Term<Length> reachAt(End end) {
        String place = at.of(REACH).place();
        return REACH.at(place.isEmpty() ? end.toString() : place + ", " + end);
    }

    private static Figure<Length> reachFigure(FaceEnd end, Length reach) {
        return reach.equals(end.wantedReach())
                ? Figure.given(reach)
                : Assumed.of(
                        reach,
                        "moved from the " + end.wanted() + " wanted, within " + end.room() + ", so that the units fit",
                        "give another range for this end");
    }

    private <T> void record(Term<T> term, T value, Expression by) {
        r.record(at.of(term), value, Formula.of(at.of(term), by));
    }

    void singleLap(SingleLapUnit tile) {
        coveredWidth();
        SingleLapColumns columns = new SingleLapColumns(plan, tile);
        Arrangement arrangement = chosen.arrangement();
        Expression beside = null;
        Optional<PartUnit> left = plan.ends().left().isVerge() ? tile.leftVergeUnit() : Optional.empty();
        if (left.isPresent()) {
            r.use(LEFT_VERGE_WIDTH, Figure.given(left.orElseThrow().width()));
            beside = plus(beside, LEFT_VERGE_WIDTH);
        }
        Optional<PartUnit> right = plan.ends().right().isVerge() ? tile.rightVergeUnit() : Optional.empty();
        r.use(NOMINAL_COVER, Figure.given(tile.coverWidth()));
        if (right.isPresent()) {
            r.use(RIGHT_VERGE_WIDTH, Figure.given(right.orElseThrow().width()));
            beside = plus(beside, RIGHT_VERGE_WIDTH);
        } else if (!columns.cutsAtRight(arrangement)) {
            r.use(OVERALL_WIDTH, Figure.given(tile.overallWidth()));
            r.record(
                    SHOWN_BEYOND_COVER,
                    tile.sideLock(),
                    Formula.of(SHOWN_BEYOND_COVER, OVERALL_WIDTH.minus(NOMINAL_COVER)));
            beside = plus(beside, SHOWN_BEYOND_COVER);
        }
        if (SingleLapColumns.hasHalf(arrangement)) {
            r.use(HALF_WIDTH, Figure.given(tile.halfUnit().orElseThrow().width()));
            beside = plus(beside, HALF_WIDTH);
        }
        Expression forUnits =
                beside == null ? at.of(COVERED_WIDTH) : at.of(COVERED_WIDTH).minus(beside);
        if (arrangement.cuts() == 0) {
            countUncut(tile, columns.fixed(arrangement), beside);
            record(COVER_GOT, level.cover(), forUnits.over(at.of(UNIT_COUNT)));
        } else {
            countCut(tile, columns.fixed(arrangement), beside);
            r.use(at.of(COVER_GOT), coverFigure(tile));
            record(
                    CUT_WIDTH,
                    level.cut(),
                    over(forUnits.minus(at.of(COVER_GOT).times(at.of(UNIT_COUNT))), arrangement.cuts()));
        }
    }

    private Figure<Length> coverFigure(SingleLapUnit tile) {
        return level.cover().equals(tile.coverWidth())
                ? Figure.given(level.cover())
                : Assumed.of(
                        level.cover(),
                        "moved from the nominal cover, within " + tile.coverRange()
                                + ", so that the cut is not too narrow",
                        "give another range of covers");
    }

    /** As many as fill the least width at the greatest cover, or so many more. */
    private void countUncut(SingleLapUnit tile, Length fixed, @Nullable Expression beside) {
        Length greatest =
                r.use(GREATEST_COVER, Figure.given(tile.coverRange().upper().orElse(tile.coverWidth())));
        Length leastReach =
                plan.ends().left().leastReach().plus(plan.ends().right().leastReach());
        r.use(LEAST_REACH, Figure.given(leastReach));
        Expression room = at.of(WALL_WIDTH).plus(LEAST_REACH);
        int fewest = (int)
                greatest.timesToCover(plan.leastWidth(level.wall()).minus(fixed).max(Length.ZERO));
        Expression count = (beside == null ? room : room.minus(beside)).timesToCover(GREATEST_COVER);
        record(UNIT_COUNT, chosen.count(), more(count, chosen.count() - fewest));
    }

    /** As many as go into the wanted width at the nominal cover, or so many fewer. */
    private void countCut(SingleLapUnit tile, Length fixed, @Nullable Expression beside) {
        Length room = level.covered().minus(fixed);
        int most = (int) tile.coverWidth().timesIn(room.max(Length.ZERO)).count();
        Expression width =
                beside == null ? at.of(COVERED_WIDTH) : at.of(COVERED_WIDTH).minus(beside);
        record(UNIT_COUNT, chosen.count(), more(width.timesIn(NOMINAL_COVER), chosen.count() - most));
    }

    void doubleLap(DoubleLapUnit unit, Optional<Length> sidelap) {
        coveredWidth();
        r.use(UNIT_WIDTH, Figure.given(unit.width()));
        unit.unitAndAHalf().ifPresent(wide -> r.use(WIDE_WIDTH, Figure.given(wide.width())));
        r.use(HALF_WIDTH, Figure.given(unit.width().dividedBy(2)));
        boolean uncut = chosen.arrangement().cuts() == 0;
        if (uncut) {
            countHalves(unit);
        } else {
            r.use(SMALLEST_CUT, plan.smallestCut());
        }
        List<ColumnChoice.RowShape> rows = level.rows();
        for (int i = 0; i < rows.size(); i++) {
            String kind = i == 0 ? "odd courses" : "even courses";
            String place = at.of(REACH).place();
            Places row = Places.at(place.isEmpty() ? kind : place + ", " + kind);
            if (uncut) {
                uncutRow(unit, rows.get(i), row);
            } else {
                cutRow(unit, rows.get(i), row);
            }
        }
        sidelap.ifPresent(this::sidelap);
    }

    private void countHalves(DoubleLapUnit unit) {
        Length joint =
                r.use(GREATEST_JOINT, Figure.given(unit.jointRange().upper().orElse(unit.joint())));
        Length leastReach =
                plan.ends().left().leastReach().plus(plan.ends().right().leastReach());
        r.use(LEAST_REACH, Figure.given(leastReach));
        Length twice = plan.leastWidth(level.wall()).plus(joint).times(2);
        int fewest = (int) unit.width().plus(joint).timesToCover(twice.max(Length.ZERO));
        Expression count = at.of(WALL_WIDTH)
                .plus(LEAST_REACH)
                .plus(GREATEST_JOINT)
                .times(2)
                .timesToCover(UNIT_WIDTH.plus(GREATEST_JOINT));
        record(HALF_UNITS_ACROSS, halves(), more(count, halves() - fewest));
    }

    private int halves() {
        ColumnChoice.RowShape first = level.rows().get(0);
        return 2 * first.whole() + edgeHalves(first);
    }

    private static int edgeHalves(ColumnChoice.RowShape row) {
        int sum = 0;
        for (ColumnChoice.End end : ends(row)) {
            sum += end.kind() == PieceKind.UNIT_AND_A_HALF ? 3 : 1;
        }
        return sum;
    }

    private static List<ColumnChoice.End> ends(ColumnChoice.RowShape row) {
        return Stream.concat(row.left().stream(), row.right().stream()).toList();
    }

    private void uncutRow(DoubleLapUnit unit, ColumnChoice.RowShape row, Places p) {
        List<ColumnChoice.End> ends = ends(row);
        Expression halves = more(at.of(HALF_UNITS_ACROSS), -edgeHalves(row));
        p.record(r, UNIT_COUNT, row.whole(), q -> halves.over(2));
        boolean wide = !ends.isEmpty() && ends.get(0).kind() == PieceKind.UNIT_AND_A_HALF;
        Length together = unit.width().times(row.whole());
        for (ColumnChoice.End end : ends) {
            together = together.plus(end.width());
        }
        p.record(r, UNITS_TOGETHER, together, q -> {
            Expression wholes = UNIT_WIDTH.times(q.of(UNIT_COUNT));
            Expression edge = wide ? WIDE_WIDTH : HALF_WIDTH;
            return ends.isEmpty() ? wholes : wholes.plus(ends.size() == 1 ? edge : edge.times(ends.size()));
        });
        int joints = row.whole() + ends.size() - 1;
        if (joints > 0) {
            p.record(
                    r,
                    JOINT_GOT,
                    Objects.requireNonNull(row.joint()),
                    q -> at.of(COVERED_WIDTH)
                            .minus(q.of(UNITS_TOGETHER))
                            .over(more(q.of(UNIT_COUNT), ends.size() - 1)));
        }
    }

    private void cutRow(DoubleLapUnit unit, ColumnChoice.RowShape row, Places p) {
        boolean right = plan.cutEnd() == End.RIGHT;
        List<ColumnChoice.End> start = right ? row.left() : row.right();
        Length cut = (right ? row.right() : row.left()).get(0).width();
        Length joint = Objects.requireNonNull(row.joint());
        p.use(
                r,
                JOINT_GOT,
                joint.equals(unit.joint())
                        ? Figure.given(joint)
                        : Assumed.of(
                                joint,
                                "moved from the joint wanted, within " + unit.jointRange()
                                        + ", so that the cut is not too narrow",
                                "give another range of joints"));
        Expression first = start.isEmpty()
                ? at.of(COVERED_WIDTH)
                : at.of(COVERED_WIDTH)
                        .minus(start.get(0).kind() == PieceKind.UNIT_AND_A_HALF ? WIDE_WIDTH : HALF_WIDTH)
                        .minus(p.of(JOINT_GOT));
        Expression cover = UNIT_WIDTH.plus(p.of(JOINT_GOT));
        boolean sliver = chosen.arrangement() == Arrangement.SLIVER;
        Length left = level.covered();
        for (ColumnChoice.End end : start) {
            left = left.minus(end.width()).minus(joint);
        }
        int most = (int) unit.width().plus(joint).timesIn(left).count();
        Expression count = sliver
                ? more(first.timesIn(cover), row.whole() - most)
                : first.minus(SMALLEST_CUT).timesIn(cover);
        p.record(r, UNIT_COUNT, row.whole(), q -> count);
        p.record(r, CUT_WIDTH, cut, q -> first.minus(cover.times(q.of(UNIT_COUNT))));
    }

    /** In the usual bond the least sidelap lies where the unit-and-a-half meets the first joint below; elsewhere it is found, not summed. */
    private void sidelap(Length least) {
        String place = at.of(REACH).place();
        Term<Length> joint = JOINT_GOT.at(place.isEmpty() ? "odd courses" : place + ", odd courses");
        Length open = level.rows().get(0).joint();
        ColumnChoice.RowShape second = level.rows().get(1);
        Optional<PartUnit> wide = ((DoubleLapUnit) plan.unit()).unitAndAHalf();
        if (open == null || wide.isEmpty() || second.left().isEmpty()) {
            return;
        }
        Length summed = wide.orElseThrow()
                .width()
                .minus(((DoubleLapUnit) plan.unit()).width())
                .minus(open);
        if (summed.minus(least).abs().compareTo(Length.STORAGE_RESOLUTION) <= 0) {
            record(SIDELAP_GOT, summed, WIDE_WIDTH.minus(UNIT_WIDTH).minus(joint));
        }
    }

    private static Expression plus(@Nullable Expression sum, Expression part) {
        return sum == null ? part : sum.plus(part);
    }

    private static Expression over(Expression sum, int parts) {
        return parts == 1 ? sum : sum.over(parts);
    }

    private static Expression more(Expression count, int by) {
        return by == 0 ? count : by > 0 ? count.plus(by) : count.minus(-by);
    }
}
