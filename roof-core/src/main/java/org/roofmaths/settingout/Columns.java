package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.covering.SingleLapUnit;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.End;
import org.roofmaths.roof.Ends;
import org.roofmaths.units.Length;
import org.roofmaths.units.Rounding;
import org.roofmaths.working.Assumed;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * The columns across one face: how many units stand side by side, at what cover, with what overhang at each end, and what is cut.
 *
 * <p>Whole units are tried first, inside the room that the shunt of the unit and the ends of the face give; then a half unit; then a
 * cut of a width that is not too narrow. A cut narrower than allowed is laid out only if nothing else fits, and is reported.
 *
 * <pre>{@code
 * Columns columns = Columns.across(metres(9), tile, Ends.both(FaceEnd.verge(mm(45), Range.closed(mm(38), mm(50)))));
 * columns                 // 30 whole units, cover 302 mm; overhang 45 mm at both ends
 * columns.considered()    // every arrangement that was looked at, with the reason where it does not fit
 * }</pre>
 *
 * <p>In double lap two kinds of course take turns; {@link #rows} gives both. Distances run from the left wall line: the outer face of
 * the end wall, or the face of the wall beside the roof; left and right as seen from outside looking up the slope.
 *
 * <p>Immutable and thread-safe. Two are equal if they were made from equal sizes.
 *
 * @since 0.1
 */
public final class Columns implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** A width is zero, below zero or beyond a kilometre. */
    public static final ProblemCode SIZE = ProblemCode.of("columns.size", "Check the size and its unit.");

    /** Not even one unit goes into the width. */
    public static final ProblemCode TOO_NARROW =
            ProblemCode.of("columns.too-narrow", "Use a narrower unit, or cover the strip with metal.");

    /** A cut narrower than allowed cannot be avoided. */
    public static final ProblemCode SLIVER =
            ProblemCode.of("columns.sliver", "Move an end of the covering, or use a unit of another width.");

    /** The face has raking ends, so that its columns wait for its courses. */
    public static final ProblemCode NO_COURSES =
            ProblemCode.of("columns.no-courses", "Mend the courses of the face first.");

    /** The width between the wall lines, along the eaves. */
    public static final Term<Length> WALL_WIDTH = Term.of("width between the wall lines", "W", Length.class);

    /** How far the covering reaches past the wall line at one end: an overhang, or a gap with a minus sign. */
    public static final Term<Length> REACH = Term.of("reach past the wall line", "u", Length.class);

    /** The least reach of both ends together. */
    public static final Term<Length> LEAST_REACH = Term.of("least reach of both ends", "umin", Length.class);

    /** The width that is covered, from edge to edge. */
    public static final Term<Length> COVERED_WIDTH = Term.of("covered width", "T", Length.class);

    /** The overall width of a single-lap unit. */
    public static final Term<Length> OVERALL_WIDTH = Term.of("overall width of the unit", "wo", Length.class);

    /** The cover width at which the unit is meant to be laid. */
    public static final Term<Length> NOMINAL_COVER = Term.of("nominal cover width", "c0", Length.class);

    /** The greatest cover width that the shunt allows. */
    public static final Term<Length> GREATEST_COVER = Term.of("greatest cover width", "cmax", Length.class);

    /** What the last unit at the right shows beyond its cover. */
    public static final Term<Length> SHOWN_BEYOND_COVER =
            Term.of("width shown beyond the last cover", "eR", Length.class);

    /** The width of the left-hand verge unit. */
    public static final Term<Length> LEFT_VERGE_WIDTH =
            Term.of("width of the left-hand verge unit", "wL", Length.class);

    /** The width of the right-hand verge unit. */
    public static final Term<Length> RIGHT_VERGE_WIDTH =
            Term.of("width of the right-hand verge unit", "wR", Length.class);

    /** The width of the half unit. */
    public static final Term<Length> HALF_WIDTH = Term.of("width of the half unit", "wh", Length.class);

    /** The width of the unit-and-a-half. */
    public static final Term<Length> WIDE_WIDTH = Term.of("width of the unit-and-a-half", "w15", Length.class);

    /** The number of ordinary units in a course. */
    public static final Term<Integer> UNIT_COUNT = Term.of("ordinary units in a course", "nc", Integer.class);

    /** The cover width got. */
    public static final Term<Length> COVER_GOT = Term.of("cover width got", "c", Length.class);

    /** The width of a cut piece. */
    public static final Term<Length> CUT_WIDTH = Term.of("width of the cut piece", "k", Length.class);

    /** The narrowest piece that may be cut. */
    public static final Term<Length> SMALLEST_CUT = Term.of("smallest cut", "kmin", Length.class);

    /** The greatest joint between double-lap units. */
    public static final Term<Length> GREATEST_JOINT = Term.of("greatest side joint", "jmax", Length.class);

    /** The width in half units of a double-lap course. */
    public static final Term<Integer> HALF_UNITS_ACROSS = Term.of("half units across", "m", Integer.class);

    /** The widths of the units of one kind of double-lap course together, joints left out. */
    public static final Term<Length> UNITS_TOGETHER = Term.of("widths of the units together", "Wu", Length.class);

    /** The joint got in one kind of double-lap course. */
    public static final Term<Length> JOINT_GOT = Term.of("side joint got", "jg", Length.class);

    /** The least sidelap got. */
    public static final Term<Length> SIDELAP_GOT = Term.of("least sidelap got", "slg", Length.class);

    private static final Length LONGEST = Length.ofMetres(1000);

    private final ColumnPlan plan;
    private final List<ColumnChoice> considered;
    private final ColumnChoice chosen;
    private final List<Row> atEaves;
    private final List<Row> atTop;

    private Columns(ColumnPlan plan, List<ColumnChoice> considered, ColumnChoice chosen) {
        this.plan = plan;
        this.considered = List.copyOf(considered);
        this.chosen = chosen;
        this.atEaves = rowsOf(chosen.levels().get(0));
        this.atTop =
                chosen.levels().size() == 1 ? atEaves : rowsOf(chosen.levels().get(1));
    }

    private Columns(ColumnPlan plan, List<ColumnChoice> considered, ColumnChoice chosen, List<Row> rows) {
        this.plan = plan;
        this.considered = List.copyOf(considered);
        this.chosen = chosen;
        this.atEaves = rows;
        this.atTop = rows;
    }

    /** The columns of a face with a raking end, whose courses differ: the first ones stand for the grid. */
    static Columns raked(ColumnPlan plan, List<ColumnChoice> considered, List<CourseRow> courses) {
        List<Row> rows = new ArrayList<>();
        for (CourseRow course : courses) {
            if (course.line().kind() != CourseKind.UNDER_EAVES
                    && rows.size() < (plan.unit() instanceof DoubleLapUnit ? 2 : 1)) {
                rows.add(course.row());
            }
        }
        Length wall = plan.wallAtEaves().value();
        Length joint = plan.unit() instanceof DoubleLapUnit d ? d.joint() : null;
        ColumnChoice chosen = ColumnChoice.fitting(
                Arrangement.RAKED,
                rows.get(0).count(PieceKind.WHOLE),
                List.of(new ColumnChoice.Level(
                        wall,
                        plan.wantedWidth(wall),
                        plan.unit().coverWidth(),
                        Length.ZERO,
                        List.of(new ColumnChoice.RowShape(List.of(), 0, List.of(), joint)))));
        return new Columns(plan, considered, chosen, List.copyOf(rows));
    }

    /**
     * Fills a width from edge to edge.
     *
     * @param width the width to cover, above zero
     * @param unit the unit
     * @return the columns
     * @throws ProblemsException if the width is wrong or holds no unit
     */
    public static Columns across(Length width, CoveringUnit unit) {
        return across(width, unit, Ends.both(FaceEnd.verge(Length.ZERO)));
    }

    /**
     * Fills the width between two wall lines, with the room there is at its ends.
     *
     * @param wallWidth the width between the wall lines, above zero
     * @param unit the unit
     * @param ends how the covering ends at the left and at the right
     * @return the columns
     * @throws ProblemsException if the width is wrong or holds no unit
     */
    public static Columns across(Length wallWidth, CoveringUnit unit, Ends<FaceEnd> ends) {
        return attemptAcross(wallWidth, unit, ends).orThrow();
    }

    /**
     * Fills the width between two wall lines, or says why not.
     *
     * @param wallWidth the width between the wall lines, above zero
     * @param unit the unit
     * @param ends how the covering ends at the left and at the right
     * @return the columns, with a finding if a sliver could not be avoided; or errors; or a finding that tells by how much the face
     *     is too narrow
     */
    public static Attempt<Columns> attemptAcross(Length wallWidth, CoveringUnit unit, Ends<FaceEnd> ends) {
        Problems problems = Problems.none();
        problems.require(
                wallWidth.isPositive() && !wallWidth.isLongerThan(LONGEST),
                SIZE,
                "width",
                wallWidth,
                "be above 0 mm and at most " + LONGEST);
        if (problems.hasErrors()) {
            return Attempt.failed(problems.list());
        }
        Figure<Length> wall = Figure.given(wallWidth);
        return attempt(new ColumnPlan(
                wall, wall, unit, ends, halfAUnit(unit), cutEnd(ends), Preference.usual(), Courses.oneMillimetre()));
    }

    /** The narrowest cut where nobody says otherwise. */
    static Figure<Length> halfAUnit(CoveringUnit unit) {
        Length whole = unit instanceof DoubleLapUnit d ? d.width() : unit.coverWidth();
        return Assumed.of(whole.dividedBy(2), "half a unit, common practice", "set smallestCut in the layout scheme");
    }

    /** Where a cut goes if nobody says otherwise: to the wall if one end has one, else to the left. */
    static End cutEnd(Ends<FaceEnd> ends) {
        return ends.left().isVerge() && !ends.right().isVerge() ? End.RIGHT : End.LEFT;
    }

    static Attempt<Columns> attempt(ColumnPlan plan) {
        if (widest(plan).isShorterThan(oneUnit(plan))) {
            return Attempt.failed(List.of(tooNarrow(plan)));
        }
        List<ColumnChoice> all;
        Optional<ColumnChoice> sliver;
        if (plan.unit() instanceof SingleLapUnit tile) {
            SingleLapColumns columns = new SingleLapColumns(plan, tile);
            all = columns.choices();
            sliver = columns.sliver();
        } else {
            DoubleLapColumns columns = new DoubleLapColumns(plan, (DoubleLapUnit) plan.unit());
            all = columns.choices();
            sliver = columns.sliver();
        }
        Optional<ColumnChoice> best = all.stream()
                .filter(ColumnChoice::fits)
                .min(Comparator.comparing(choice -> score(plan, choice), Columns::compare));
        if (best.isPresent()) {
            return Attempt.of(new Columns(plan, all, best.orElseThrow()));
        }
        if (sliver.isEmpty()) {
            return Attempt.failed(List.of(tooNarrow(plan)));
        }
        Columns columns = new Columns(plan, all, sliver.orElseThrow());
        return Attempt.of(columns, columns.problems());
    }

    /** What each aim counts against a choice, in the order of the aims; the plainer arrangement breaks a tie. */
    private static List<Long> score(ColumnPlan plan, ColumnChoice choice) {
        List<Long> score = new ArrayList<>();
        for (Aim aim : plan.preference().aims()) {
            score.add(
                    switch (aim) {
                        case NO_CUT -> choice.arrangement() == Arrangement.WHOLE_UNITS ? 0L : 1L;
                        case FEWEST_CUTS -> (long) choice.arrangement().cuts();
                        case LEAST_CHANGE ->
                            worst(choice, level -> level.covered().minus(plan.wantedWidth(level.wall())));
                        case NOMINAL_COVER ->
                            worst(
                                    choice,
                                    level -> level.cover().minus(plan.unit().coverWidth()));
                        case FEWEST_COURSES, LARGEST_HEADLAP -> 0L;
                    });
        }
        score.add((long) choice.arrangement().ordinal());
        return score;
    }

    private static long worst(ColumnChoice choice, Function<ColumnChoice.Level, Length> departure) {
        return choice.levels().stream()
                .mapToLong(level -> departure.apply(level).abs().toNanometres())
                .max()
                .orElse(0);
    }

    private static int compare(List<Long> a, List<Long> b) {
        for (int i = 0; i < a.size(); i++) {
            int order = Long.compare(a.get(i), b.get(i));
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }

    private static Length widest(ColumnPlan plan) {
        return plan.greatestWidth(plan.wallAtEaves().value())
                .min(plan.greatestWidth(plan.wallAtTop().value()));
    }

    private static Length oneUnit(ColumnPlan plan) {
        return plan.unit() instanceof DoubleLapUnit d
                ? d.width()
                : plan.unit().coverRange().lower().orElse(plan.unit().coverWidth());
    }

    private static Problem tooNarrow(ColumnPlan plan) {
        Length widest = widest(plan);
        Length one = oneUnit(plan);
        Length more = one.minus(widest);
        if (!more.isPositive()) {
            return Problem.finding(
                    TOO_NARROW,
                    "columns",
                    widest,
                    one,
                    "the face is too narrow for units in bond: at most " + widest
                            + " can be covered, and one unit covers " + one,
                    List.of(Mend.of("unit", "a narrower one", "joints broken in every course")));
        }
        return Problem.finding(
                TOO_NARROW,
                "columns",
                widest,
                one,
                "the face is too narrow for a whole unit: at most " + widest + " can be covered, and one unit covers "
                        + one + " at least",
                List.of(
                        Mend.of("width", more + " more", more, "1 whole unit"),
                        Mend.of("unit", "one unit cut to " + widest + " in each course", "held at both sides")));
    }

    private List<Row> rowsOf(ColumnChoice.Level level) {
        Ends<Length> reach = plan.reach(level.wall(), level.covered());
        List<Row> rows = new ArrayList<>();
        for (ColumnChoice.RowShape shape : level.rows()) {
            rows.add(rowOf(level, shape, reach.left().negated()));
        }
        return List.copyOf(rows);
    }

    private Row rowOf(ColumnChoice.Level level, ColumnChoice.RowShape shape, Length from) {
        return shape.joint() == null ? lockedRow(level, shape, from) : jointedRow(level, shape, from);
    }

    /** Single lap: what the pieces at the ends leave is shared by the whole units, each edge rounded to the nanometre by itself. */
    private Row lockedRow(ColumnChoice.Level level, ColumnChoice.RowShape shape, Length from) {
        List<Piece> pieces = new ArrayList<>();
        Length at = from;
        for (ColumnChoice.End end : shape.left()) {
            pieces.add(new Piece(end.kind(), at, end.width()));
            at = at.plus(end.width());
        }
        Length others = sum(shape.left()).plus(sum(shape.right())).plus(beyondCover());
        Length wholes = level.covered().minus(others);
        for (int i = 0; i < shape.whole(); i++) {
            Length left = share(wholes, i, shape.whole());
            pieces.add(new Piece(
                    PieceKind.WHOLE,
                    at.plus(left),
                    share(wholes, i + 1, shape.whole()).minus(left)));
        }
        at = at.plus(wholes);
        for (ColumnChoice.End end : shape.right()) {
            pieces.add(new Piece(end.kind(), at, end.width()));
            at = at.plus(end.width());
        }
        return new Row(pieces, null);
    }

    /** Double lap: the pieces keep their widths, and what they leave is shared by the joints. */
    private Row jointedRow(ColumnChoice.Level level, ColumnChoice.RowShape shape, Length from) {
        List<ColumnChoice.End> all = new ArrayList<>(shape.left());
        Length unit = ((DoubleLapUnit) plan.unit()).width();
        for (int i = 0; i < shape.whole(); i++) {
            all.add(new ColumnChoice.End(PieceKind.WHOLE, unit));
        }
        all.addAll(shape.right());
        Length open = level.covered().minus(sum(all));
        List<Piece> pieces = new ArrayList<>(all.size());
        Length units = Length.ZERO;
        for (int i = 0; i < all.size(); i++) {
            Length at = from.plus(units).plus(share(open, i, Math.max(1, all.size() - 1)));
            pieces.add(new Piece(all.get(i).kind(), at, all.get(i).width()));
            units = units.plus(all.get(i).width());
        }
        return new Row(pieces, shape.joint());
    }

    private static Length sum(List<ColumnChoice.End> ends) {
        return ends.stream().map(ColumnChoice.End::width).reduce(Length.ZERO, Length::plus);
    }

    /** So many of so many equal shares of a length, to the nearest nanometre. */
    private static Length share(Length whole, int count, int of) {
        return Length.ofNanometres(Math.floorDiv(2 * whole.toNanometres() * count + of, 2L * of));
    }

    private Length beyondCover() {
        if (!(plan.unit() instanceof SingleLapUnit tile)) {
            return Length.ZERO;
        }
        boolean vergeUnit =
                plan.ends().right().isVerge() && tile.rightVergeUnit().isPresent();
        boolean cutAtRight = new SingleLapColumns(plan, tile).cutsAtRight(chosen.arrangement());
        return vergeUnit || cutAtRight ? Length.ZERO : tile.sideLock();
    }

    void tell(Recorder r) {
        if (!r.isOn()) {
            return; // every number stands in the choice; only a listener wants to see how it was reached
        }
        if (chosen.arrangement() == Arrangement.RAKED) {
            tellRaked(r);
            return;
        }
        List<ColumnChoice.Level> levels = chosen.levels();
        for (int i = 0; i < levels.size(); i++) {
            Places level = Places.at(levels.size() == 1 ? "" : i == 0 ? "at the eaves" : "at the top");
            if (plan.unit() instanceof SingleLapUnit tile) {
                new ColumnWorking(plan, chosen, levels.get(i), level, r).singleLap(tile);
            } else {
                new ColumnWorking(plan, chosen, levels.get(i), level, r)
                        .doubleLap((DoubleLapUnit) plan.unit(), sidelap());
            }
        }
    }

    private void tellRaked(Recorder r) {
        if (plan.unit() instanceof DoubleLapUnit d) {
            r.use(DoubleLapUnit.UNIT_WIDTH, d.width());
            r.use(DoubleLapUnit.JOINT, d.joint());
            r.record(COVER_GOT, coverGot(), Formula.of(COVER_GOT, DoubleLapUnit.UNIT_WIDTH.plus(DoubleLapUnit.JOINT)));
        } else {
            r.use(NOMINAL_COVER, plan.unit().coverWidth());
            r.record(COVER_GOT, coverGot(), Formula.of(COVER_GOT, NOMINAL_COVER));
        }
    }

    @Override
    public Working working() {
        return Working.of(this::tell);
    }

    /** Returns how the width is filled. */
    public Arrangement arrangement() {
        return chosen.arrangement();
    }

    /** Returns the number of pieces side by side in the first full course. */
    public int columnCount() {
        return atEaves.get(0).pieces().size();
    }

    /**
     * Returns the kinds of course that take turns up the slope, as they lie at the eaves: one for single lap, two for double lap, the
     * first full course first.
     *
     * @return the rows
     */
    public List<Row> rows() {
        return atEaves;
    }

    /** Returns the same rows as they lie at the top of the face; equal to {@link #rows()} unless the face is wider at one level. */
    public List<Row> rowsAtTop() {
        return atTop;
    }

    /**
     * Returns the row of one course. On a face with a raking end every course differs; ask {@link FaceLayout#rows()} there.
     *
     * @param kind which kind of course
     * @param number the number of the course, 1 for the first full one; an under-eaves course is laid like an even one
     * @return the row as it lies at the eaves
     */
    public Row row(CourseKind kind, int number) {
        if (atEaves.size() == 1) {
            return atEaves.get(0);
        }
        boolean odd = kind != CourseKind.UNDER_EAVES && number % 2 == 1;
        return atEaves.get(odd ? 0 : 1);
    }

    /** Returns the width that each ordinary unit adds to a course at the eaves: the cover got, or the unit and its joint. */
    public Length coverGot() {
        ColumnChoice.Level level = chosen.levels().get(0);
        Length joint = level.rows().get(0).joint();
        return joint == null
                ? level.cover()
                : ((DoubleLapUnit) plan.unit()).width().plus(joint);
    }

    /** Returns the width that is covered at the eaves, from edge to edge. */
    public Length coveredWidth() {
        return chosen.levels().get(0).covered();
    }

    /**
     * Returns how far the covering reaches past the wall line at each end, at the eaves: the overhang got at a verge, the gap got with
     * a minus sign at a wall.
     *
     * @return the reaches
     */
    public Ends<Length> reachGot() {
        ColumnChoice.Level level = chosen.levels().get(0);
        return plan.reach(level.wall(), level.covered());
    }

    /** Returns the unit. */
    public CoveringUnit unit() {
        return plan.unit();
    }

    /** Returns how the covering ends at each side, as it was asked. */
    public Ends<FaceEnd> ends() {
        return plan.ends();
    }

    /** Returns the end at which a cut or a half unit is laid. */
    public End cutEnd() {
        return plan.cutEnd();
    }

    /** Returns the narrowest piece cut in any course, at the eaves or at the top; empty if none is cut. */
    public Optional<Piece> narrowestCut() {
        List<Row> all = new ArrayList<>(atEaves);
        all.addAll(atTop);
        return all.stream()
                .flatMap(row -> row.pieces().stream())
                .filter(piece -> piece.kind().isCut())
                .min(Comparator.comparing(Piece::width));
    }

    /**
     * Returns the least sidelap got: how near a joint comes to a joint of the course below, edge to edge, looked at joint by joint.
     *
     * @return empty for single lap
     */
    public Optional<Length> sidelap() {
        if (atEaves.size() < 2) {
            return Optional.empty();
        }
        Length least = sidelap(atEaves);
        return Optional.of(atTop.equals(atEaves) ? least : least.min(sidelap(atTop)));
    }

    /** The least distance between a joint of the one row and a joint of the other: both lists rise, so one pass meets every near pair. */
    private static Length sidelap(List<Row> rows) {
        List<Piece> a = rows.get(0).pieces();
        List<Piece> b = rows.get(1).pieces();
        Length least = a.get(a.size() - 1).to().minus(a.get(0).from());
        int i = 0;
        int j = 0;
        while (i + 1 < a.size() && j + 1 < b.size()) {
            Length rightwards = b.get(j).to().minus(a.get(i + 1).from());
            Length leftwards = a.get(i).to().minus(b.get(j + 1).from());
            least = least.min(rightwards.max(leftwards));
            if (a.get(i).to().compareTo(b.get(j).to()) < 0) {
                i++;
            } else {
                j++;
            }
        }
        return least;
    }

    /** Returns every arrangement that was looked at, with the reason where it does not fit. */
    public List<ColumnChoice> considered() {
        return considered;
    }

    /** Returns a finding if a cut is narrower than allowed; empty otherwise. */
    public List<Problem> problems() {
        if (chosen.arrangement() != Arrangement.SLIVER) {
            return List.of();
        }
        Piece cut = narrowestCut().orElseThrow();
        Length smallest = plan.smallestCut().value();
        Length more = smallest.minus(cut.width());
        return List.of(Problem.finding(
                SLIVER,
                "columns",
                cut.width(),
                smallest,
                "a cut of " + cut.width() + " at the " + plan.cutEnd() + " end cannot be avoided, " + more
                        + " under the smallest cut of " + smallest,
                List.of(
                        Mend.of("covered width", more + " more", more, "a cut of " + smallest),
                        Mend.of(
                                "covered width",
                                cut.width() + " less",
                                cut.width().negated(),
                                "no cut"),
                        Mend.of("cut", "bonded or fixed to its neighbour", "held although narrow"))));
    }

    /**
     * Returns the right edges of the pieces of one row as running marks from the left wall line, rounded as running values.
     *
     * @param row one of {@link #rows()}
     * @return the marks, rising
     */
    public List<Length> marks(Row row) {
        return row.marks(Length.ZERO, plan.rounding());
    }

    /**
     * Returns the right edges of the pieces of one row as running marks from the left edge of the covering.
     *
     * @param row one of {@link #rows()}
     * @return the marks, rising
     */
    public List<Length> marksFromLeftEdge(Row row) {
        return row.marks(row.pieces().get(0).from(), plan.rounding());
    }

    /** Returns how the marks are rounded. */
    public Rounding<Length> rounding() {
        return plan.rounding();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Columns c && plan.equals(c.plan) && atEaves.equals(c.atEaves);
    }

    @Override
    public int hashCode() {
        return plan.hashCode();
    }

    /** Returns for example {@code 1 half unit, 17 whole units; cover 297.647059 mm; left gap 5 mm, right overhang 45 mm}. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(atEaves.get(0).toString());
        if (atEaves.size() > 1) {
            text.append(", then ").append(atEaves.get(1));
        }
        text.append("; cover ").append(coverGot());
        for (End end : End.values()) {
            FaceEnd at = plan.ends().at(end);
            Length reach = reachGot().at(end);
            text.append(end == End.LEFT ? "; " : ", ").append(end);
            if (at.isRaking()) {
                text.append(' ').append(at);
            } else {
                text.append(at.isVerge() ? " overhang " : " gap ").append(at.isVerge() ? reach : reach.negated());
            }
        }
        return text.toString();
    }
}
