package org.roofmaths.order;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.covering.PartUnit;
import org.roofmaths.covering.ShortUnit;
import org.roofmaths.covering.SingleLapUnit;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.settingout.BattenDemand;
import org.roofmaths.settingout.BattenRuns;
import org.roofmaths.settingout.Columns;
import org.roofmaths.settingout.CourseKind;
import org.roofmaths.settingout.CourseRow;
import org.roofmaths.settingout.Courses;
import org.roofmaths.settingout.FaceLayout;
import org.roofmaths.settingout.Piece;
import org.roofmaths.settingout.PieceKind;
import org.roofmaths.settingout.Underlay;
import org.roofmaths.settingout.UnitCut;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;

/**
 * What the layouts of some faces take: units of every kind counted by courses and rows, battens and underlay by length.
 *
 * <p>This is the one place where an order meets setting out. Nothing is estimated from an area; {@link #check} holds the count of a face
 * against its area and explains the difference. A piece cut from a unit takes that unit: its offcut is not counted on. Amounts of all faces
 * are added before anything is rounded.
 *
 * <pre>{@code
 * TakeOff takeOff = TakeOff.of(Map.of("main", layout));
 * Order order = takeOff.order(Map.of("roll tile", tiles, "roll tile, half unit", halves, "batten 25 x 50", battens));
 * }</pre>
 *
 * @since 0.1
 */
public final class TakeOff implements Serializable {
    private static final long serialVersionUID = 1L;

    /** The full courses of a face. */
    public static final Term<Integer> FULL_COURSES = Term.of("full courses", "n", Integer.class);

    /** The courses that are laid in one way; at the place of the way, such as odd courses. */
    public static final Term<Integer> COURSES = Term.of("courses laid so", "n", Integer.class);

    /** The units of the item in each course laid in one way; at the place of the way. */
    public static final Term<Integer> IN_A_COURSE = Term.of("units in a course laid so", "u", Integer.class);

    /** The units of the item on a face. */
    public static final Term<Long> ON_THE_FACE = Term.of("units on the face", "N", Long.class);

    /** No face to take off. */
    public static final ProblemCode NO_FACE = ProblemCode.of("take-off.no-face", "Give at least one layout.");

    /** A face whose units cannot be counted. */
    public static final ProblemCode NOT_COUNTED =
            ProblemCode.of("take-off.not-counted", "Mend what does not fit on that face, then take off again.");

    /** Terms for something that is not taken off. */
    public static final ProblemCode NO_SUCH_ITEM =
            ProblemCode.of("take-off.no-such-item", "Name the items as the take-off names them.");

    private static final String ALL = "every course";
    private static final String ODD = "odd courses";
    private static final String EVEN = "even courses";
    private static final Formula ONE_MORE_THAN_GAUGES = Formula.of(FULL_COURSES, Courses.GAUGE_COUNT.plus(1));
    private static final Formula EVERY = Formula.of(COURSES.at(ALL), FULL_COURSES);
    private static final Formula HALF_UP =
            Formula.of(COURSES.at(ODD), FULL_COURSES.over(2).roundedUp());
    private static final Formula HALF_DOWN =
            Formula.of(COURSES.at(EVEN), FULL_COURSES.over(2).roundedDown());

    private final Map<String, FaceLayout> layouts;
    private final List<TakeOffItem> items;
    private final List<Problem> problems;

    private TakeOff(Map<String, FaceLayout> layouts, List<TakeOffItem> items, List<Problem> problems) {
        this.layouts = layouts;
        this.items = List.copyOf(items);
        this.problems = List.copyOf(problems);
    }

    /**
     * Returns what some faces take.
     *
     * @param layouts the layouts by the names of their faces, at least one
     * @return the take-off; a face whose units cannot be counted is left out and said so in its problems
     * @throws org.roofmaths.problem.ProblemsException if there is no face
     */
    public static TakeOff of(Map<String, FaceLayout> layouts) {
        Problems found =
                Problems.none().require(!layouts.isEmpty(), NO_FACE, "layouts", "none", "hold at least one face");
        found.throwIfErrors();
        Map<String, Map<String, Figure<Amount>>> amounts = new LinkedHashMap<>();
        Map<String, Mass> masses = new LinkedHashMap<>();
        layouts.forEach((face, layout) -> {
            if (layout.counts().hasValue()) {
                units(face, layout, amounts, masses);
            } else {
                String why = layout.counts().problems().get(0).message();
                found.add(Problem.notice(NOT_COUNTED, face, why, "the units of " + face + " are not counted: " + why));
            }
            layout.battens()
                    .value()
                    .ifPresent(battens -> layout.scheme()
                            .battens()
                            .ifPresent(demand -> put(
                                    amounts,
                                    name(demand),
                                    face,
                                    Amount.ofLength(battens.working().at(BattenRuns.TOGETHER)))));
            layout.underlay()
                    .ifPresent(underlay -> layout.scheme()
                            .underlayRoll()
                            .ifPresent(roll -> put(
                                    amounts,
                                    "underlay " + metres(roll.width()) + " wide",
                                    face,
                                    Amount.ofLength(underlay.working().at(Underlay.WITH_JOINS)))));
        });
        List<TakeOffItem> items = new ArrayList<>();
        amounts.forEach((name, parts) -> items.add(new TakeOffItem(name, Amount.sum(parts), masses.get(name))));
        return new TakeOff(new LinkedHashMap<>(layouts), items, found.list());
    }

    private static String name(BattenDemand demand) {
        return "batten " + Amount.plain(Amount.shortest(demand.depth().value().toMillimetres())) + " x "
                + Amount.plain(Amount.shortest(demand.width().value().toMillimetres()));
    }

    private static String metres(Length length) {
        return Amount.of(length).toString();
    }

    private static void put(
            Map<String, Map<String, Figure<Amount>>> amounts, String item, String face, Figure<Amount> amount) {
        amounts.computeIfAbsent(item, name -> new LinkedHashMap<>()).put(face, amount);
    }

    /** What one item takes of the courses laid in one way: how many courses, and how many pieces in each. */
    private record Share(String way, int courses, int inEach) implements Serializable {}

    private static void units(
            String face,
            FaceLayout layout,
            Map<String, Map<String, Figure<Amount>>> amounts,
            Map<String, Mass> masses) {
        Courses courses = layout.courses().orThrow();
        CoveringUnit unit = layout.scheme().unit();
        int kinds = layout.columns().orThrow().rows().size();
        Map<String, Map<String, List<Integer>>> found = new LinkedHashMap<>();
        Map<String, Integer> laid = new LinkedHashMap<>();
        int number = 0;
        for (CourseRow course : layout.rows()) {
            CourseKind kind = course.line().kind();
            number += kind == CourseKind.UNDER_EAVES ? 0 : 1;
            String way = way(kind, number, kinds);
            laid.merge(way, 1, Integer::sum);
            Map<String, Integer> inRow = new LinkedHashMap<>();
            for (Piece piece : course.row().pieces()) {
                Made made = made(unit, kind, piece.kind());
                inRow.merge(made.name, 1, Integer::sum);
                masses.put(made.name, made.mass);
            }
            inRow.forEach((item, count) -> found.computeIfAbsent(item, name -> new LinkedHashMap<>())
                    .computeIfAbsent(way, name -> new ArrayList<>())
                    .add(count));
        }
        found.forEach((item, ways) -> {
            List<Share> shares = new ArrayList<>();
            ways.forEach((way, counts) -> shares.addAll(shares(way, counts, laid.getOrDefault(way, 0))));
            List<Share> kept = List.copyOf(shares);
            Worked<Long> count = Worked.by(ON_THE_FACE, r -> count(courses, kept, r));
            put(amounts, item, face, Amount.ofCount(count));
        });
    }

    /** One share if every course laid so has the same number; otherwise one for each number, as at hips and openings. */
    private static List<Share> shares(String way, List<Integer> counts, int laid) {
        if (counts.size() == laid && counts.stream().distinct().count() == 1) {
            return List.of(new Share(way, laid, counts.get(0)));
        }
        Map<Integer, Integer> byCount = new TreeMap<>();
        counts.forEach(count -> byCount.merge(count, 1, Integer::sum));
        List<Share> shares = new ArrayList<>();
        byCount.forEach((count, many) -> shares.add(new Share(way + " with " + count, many, count)));
        return shares;
    }

    private static String way(CourseKind kind, int number, int rows) {
        if (kind != CourseKind.FULL) {
            return kind.toString();
        }
        return rows == 1 ? ALL : number % 2 == 1 ? ODD : EVEN;
    }

    private static long count(Courses courses, List<Share> shares, Recorder r) {
        long sum = 0;
        Expression formula = null;
        if (r.isOn()
                && shares.stream().anyMatch(share -> List.of(ALL, ODD, EVEN).contains(share.way))) {
            r.use(Courses.GAUGE_COUNT, courses.working().at(Courses.GAUGE_COUNT));
            r.record(FULL_COURSES, courses.gaugeCount() + 1, ONE_MORE_THAN_GAUGES);
        }
        for (Share share : shares) {
            Term<Integer> many = COURSES.at(share.way);
            Term<Integer> each = IN_A_COURSE.at(share.way);
            switch (share.way) {
                case ALL -> r.record(many, share.courses, EVERY);
                case ODD -> r.record(many, share.courses, HALF_UP);
                case EVEN -> r.record(many, share.courses, HALF_DOWN);
                default -> r.use(many, share.courses);
            }
            r.use(each, share.inEach);
            sum += (long) share.courses * share.inEach;
            formula = formula == null ? many.times(each) : formula.plus(many.times(each));
        }
        return r.record(ON_THE_FACE, sum, Formula.of(ON_THE_FACE, Objects.requireNonNull(formula)));
    }

    /** Of what a piece is made. */
    private record Made(String name, Mass mass) {}

    private static Made made(CoveringUnit unit, CourseKind course, PieceKind piece) {
        if (unit instanceof SingleLapUnit single) {
            return switch (piece) {
                case HALF -> part(unit, "half unit", single.halfUnit());
                case LEFT_VERGE -> part(unit, "left-hand verge unit", single.leftVergeUnit());
                case RIGHT_VERGE -> part(unit, "right-hand verge unit", single.rightVergeUnit());
                default -> new Made(unit.name(), unit.mass());
            };
        }
        DoubleLapUnit twice = (DoubleLapUnit) unit;
        if (piece == PieceKind.UNIT_AND_A_HALF || piece == PieceKind.CUT_UNIT_AND_A_HALF) {
            return part(unit, "unit-and-a-half", twice.unitAndAHalf());
        }
        Optional<ShortUnit> made = course == CourseKind.UNDER_EAVES
                ? twice.underEavesUnit()
                : course == CourseKind.TOPS ? twice.topsUnit() : Optional.empty();
        return made.map(shortUnit ->
                        new Made(unit.name() + ", " + course.toString().replace(" course", " unit"), shortUnit.mass()))
                .orElseGet(() -> new Made(unit.name(), unit.mass()));
    }

    /** A unit made for its place; where none is made, the piece is cut from an ordinary one. */
    private static Made part(CoveringUnit unit, String words, Optional<PartUnit> made) {
        return made.map(part -> new Made(unit.name() + ", " + words, part.mass()))
                .orElseGet(() -> new Made(unit.name(), unit.mass()));
    }

    /** Returns the items: units first, then battens and underlay, in the order in which the faces name them. */
    public List<TakeOffItem> items() {
        return items;
    }

    /**
     * Returns one item.
     *
     * @param name what it is called here
     * @return the item
     * @throws IllegalArgumentException if there is none; the message lists those there are
     */
    public TakeOffItem item(String name) {
        return items.stream()
                .filter(item -> item.name().equals(name))
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException("no \"" + name + "\" in this take-off; it has: " + names()));
    }

    private String names() {
        return String.join(", ", items.stream().map(TakeOffItem::name).toList());
    }

    /** Returns the faces whose units could not be counted, as notices; empty if all were. */
    public List<Problem> problems() {
        return problems;
    }

    /**
     * Returns the order of everything taken off; an item without terms is ordered without allowance, pieces singly and the rest as needed.
     *
     * @param terms the terms by the names of the items
     * @return the order
     * @throws org.roofmaths.problem.ProblemsException if terms are given for something that is not taken off, or do not suit their item
     */
    public Order order(Map<String, OrderTerms> terms) {
        Problems wrong = Problems.none();
        for (String name : terms.keySet()) {
            wrong.require(
                    items.stream().anyMatch(item -> item.name().equals(name)),
                    NO_SUCH_ITEM,
                    "items of the terms",
                    "\"" + name + "\"",
                    "be among those taken off (" + names() + ")");
        }
        wrong.throwIfErrors();
        return Order.ofLines(items.stream()
                .map(item -> item.on(terms.getOrDefault(item.name(), OrderTerms.none())))
                .toList());
    }

    /**
     * Holds the count of one face against its area, at the gauge and the cover got, and explains the difference.
     *
     * <p>Where the two ends of a face differ, their mean gauge is taken: for this check alone. Where rows differ, so is their mean number
     * of units.
     *
     * @param face the name of the face
     * @return the check; empty if the units of the face could not be counted
     * @throws IllegalArgumentException if there is no such face
     */
    public Optional<CountCheck> check(String face) {
        FaceLayout layout = layouts.get(face);
        if (layout == null) {
            throw new IllegalArgumentException(
                    "no face \"" + face + "\" in this take-off; it has: " + String.join(", ", layouts.keySet()));
        }
        if (!layout.counts().hasValue()) {
            return Optional.empty();
        }
        Courses courses = layout.courses().orThrow();
        Columns columns = layout.columns().orThrow();
        Area area = layout.shape().area();
        Length width = layout.shape().eavesWidth();
        return Optional.of(CountCheck.of(CountToCheck.builder()
                .courses(Figure.given(courses.gaugeCount() + 1))
                .unitsInCourse(Figure.given(unitsInCourse(layout)))
                .gauge(Figure.given(
                        courses.gauge().left().plus(courses.gauge().right()).dividedBy(2)))
                .cover(Figure.given(columns.coverGot()))
                .slopeLength(Figure.given(layout.shape()
                        .slopeLengths()
                        .left()
                        .plus(layout.shape().slopeLengths().right())
                        .dividedBy(2)))
                .width(Figure.given(width))
                .area(Figure.given(area))
                .build()));
    }

    /** The units of a full course, each piece by its width as a share of an ordinary one; the mean of the courses. */
    private static Ratio unitsInCourse(FaceLayout layout) {
        double sum = 0;
        int full = 0;
        for (CourseRow course : layout.rows()) {
            if (course.line().kind() == CourseKind.FULL) {
                full++;
                for (Piece piece : course.row().pieces()) {
                    sum += share(layout, course, piece);
                }
            }
        }
        return Ratio.of(sum / full);
    }

    private static double share(FaceLayout layout, CourseRow course, Piece piece) {
        CoveringUnit unit = layout.scheme().unit();
        Length ordinary = unit instanceof DoubleLapUnit
                ? unit.coverWidth()
                : layout.columns().orThrow().coverGot();
        for (UnitCut cut : course.cuts()) {
            if (cut.piece().equals(piece)) {
                return (cut.widthAtTail().toMetres() + cut.widthAtHead().toMetres()) / 2 / ordinary.toMetres();
            }
        }
        return switch (piece.kind()) {
            case WHOLE -> 1;
            case HALF -> 0.5;
            case UNIT_AND_A_HALF -> 1.5;
            default -> piece.width().toMetres() / ordinary.toMetres();
        };
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof TakeOff t && layouts.equals(t.layouts);
    }

    @Override
    public int hashCode() {
        return layouts.hashCode();
    }

    /** Returns the items in one line, such as {@code roll tile: 187; roll tile, half unit: 11; batten 25 x 50: 57.695 m}. */
    @Override
    public String toString() {
        return String.join("; ", items.stream().map(TakeOffItem::toString).toList());
    }
}
