package org.roofmaths.order;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Assumed;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * Which pieces are sawn from which stock length, so that as little stock as possible is bought.
 *
 * <p>The plan comes with a bound: no plan at all can do with less stock. The gap between plan and bound says how good the plan is; where
 * it is zero, no plan is better. For small demands every plan is looked at, and the gap is always zero. The bound comes from
 * linear programming with column generation, as published by Gilmore and Gomory (A linear programming approach to the
 * cutting-stock problem, Operations Research 9, 1961).
 *
 * <p>The saw takes its kerf with each cut, and that can cost whole lengths where pieces divide exactly: from 4.8 m come four pieces of
 * 1.2 m with shears, three with a saw of 3 mm.
 *
 * <p>Rows that may be joined on supports ({@link JointedRun}) are divided so that the offcut of one row serves another. Their plan is good but not
 * always the best; the gap says by how much at most. Joints are not staggered here.
 *
 * <pre>{@code
 * StockCutting plan = StockCutting.of(demand);
 * plan.cuts()            // 2 × 4800 mm: 3 of 1200 mm (trimmer); offcut 1191 mm …
 * plan.totalLength()     // what to buy
 * plan.gap()             // 0 mm: no plan needs less
 * }</pre>
 *
 * @since 0.1
 */
public final class StockCutting implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** How many of a stock length are bought; at the place of the length. */
    public static final Term<Long> STOCK_COUNT = Term.of("stock lengths bought", "k", Long.class);

    /** A stock length; at the place of the length. */
    public static final Term<Length> STOCK_LENGTH = Term.of("stock length", "S", Length.class);

    /** All stock bought, laid end to end. */
    public static final Term<Length> BOUGHT = Term.of("length of stock bought", "B", Length.class);

    /** All pieces, laid end to end. */
    public static final Term<Length> PIECES = Term.of("length of all pieces", "P", Length.class);

    /** A piece that is cut; at the place of its length. */
    public static final Term<Length> PIECE = Term.of("piece to cut", "l", Length.class);

    /** How many pieces of a length are cut; at the place of the length. */
    public static final Term<Long> PIECE_COUNT = Term.of("number of pieces to cut", "n", Long.class);

    /** What is bought and does not become a piece: offcuts and sawdust. */
    public static final Term<Length> WASTE = Term.of("waste of stock", "w", Length.class);

    /** The waste as a share of what is bought. */
    public static final Term<Ratio> WASTE_SHARE = Term.of("share of stock wasted", "w%", Ratio.class);

    /** The least stock that any plan needs. */
    public static final Term<Length> BOUND = Term.of("least stock of any plan", "B₀", Length.class);

    /** What the plan buys over the bound. */
    public static final Term<Length> GAP = Term.of("stock over the bound", "Δ", Length.class);

    /** No stock length that can be used. */
    public static final ProblemCode NO_STOCK = ProblemCode.of("cutting.no-stock", "Give at least one stock length.");

    /** A size that is nothing, or a count below one. */
    public static final ProblemCode OUT_OF_RANGE = ProblemCode.of(
            "cutting.out-of-range", "Give lengths above zero, a kerf of zero or more, and counts of one or more.");

    /** Nothing to cut. */
    public static final ProblemCode NOTHING = ProblemCode.of("cutting.nothing", "Give at least one piece or row.");

    /** Two pieces, or two rows, of one name and different lengths. */
    public static final ProblemCode NAME_TWICE =
            ProblemCode.of("cutting.name-twice", "Give rows different names, so that their joints can be told apart.");

    /** Supports out of order or beyond the row. */
    public static final ProblemCode SUPPORTS =
            ProblemCode.of("cutting.supports", "Give the supports from the left end, in rising order, within the row.");

    /** Stock longer than can be carried. */
    public static final ProblemCode BEYOND_TRANSPORT =
            ProblemCode.of("cutting.beyond-transport", "Ask for a longer vehicle, or do without that stock length.");

    /** A piece that no stock holds. */
    public static final ProblemCode LONGER_THAN_STOCK =
            ProblemCode.of("cutting.longer-than-stock", "Buy longer stock, or allow joints on supports.");

    /** Rows that cannot be joined as asked. */
    public static final ProblemCode NO_JOINT = ProblemCode.of(
            "cutting.no-joint", "Buy longer stock, allow shorter pieces, or put supports closer together.");

    private static final long MOST = 100_000;
    private static final int WAYS_TRIED = 12;
    private static final Formula ALL_WASTE = Formula.of(WASTE, BOUGHT.minus(PIECES));
    private static final Formula SHARE_OF_WASTE = Formula.of(WASTE_SHARE, WASTE.over(BOUGHT));
    private static final Formula OVER_BOUND = Formula.of(GAP, BOUGHT.minus(BOUND));

    private final CuttingDemand demand;
    private final List<StockCut> cuts;
    private final List<JointedRows> rows;
    private final Length bound;
    private final List<Problem> problems;

    private StockCutting(
            CuttingDemand demand, List<StockCut> cuts, List<JointedRows> rows, Length bound, List<Problem> problems) {
        this.demand = demand;
        this.cuts = List.copyOf(cuts);
        this.rows = List.copyOf(rows);
        this.bound = bound;
        this.problems = List.copyOf(problems);
    }

    /**
     * Returns a cutting plan.
     *
     * @param demand the pieces, the rows, the stock and the kerf
     * @return the plan; pieces and rows that no stock holds are left out and are findings of the plan
     * @throws org.roofmaths.problem.ProblemsException with every problem, if a size or count is out of range or no stock can be used
     */
    public static StockCutting of(CuttingDemand demand) {
        return attempt(demand).orThrow();
    }

    /**
     * Returns a cutting plan, or every problem that stands against it.
     *
     * @param demand the pieces, the rows, the stock and the kerf
     * @return the plan with its findings and notices, or the problems
     */
    public static Attempt<StockCutting> attempt(CuttingDemand demand) {
        Problems problems = Problems.none();
        check(demand, problems);
        if (problems.hasErrors()) {
            return Attempt.failed(problems.list());
        }
        List<Length> stock = usableStock(demand, problems);
        if (stock.isEmpty()) {
            problems.add(Problem.error(
                    NO_STOCK,
                    "stock lengths",
                    demand.stockLengths(),
                    "hold one no longer than the transport limit of "
                            + demand.transportLimit().orElseThrow()));
            return Attempt.failed(problems.list());
        }
        Length longest = Collections.max(stock);
        List<CutPiece> pieces = new ArrayList<>();
        for (CutPiece piece : demand.pieces()) {
            if (piece.length().meetsGreatest(longest)) {
                pieces.add(piece);
            } else {
                problems.add(tooLong(piece, longest));
            }
        }
        List<CuttingRows> runs = new ArrayList<>();
        for (JointedRun run : demand.runs()) {
            CuttingRows ways = CuttingRows.of(run, longest, demand.joining());
            if (ways.isPossible()) {
                runs.add(ways);
            } else {
                problems.add(noJoint(run, longest));
            }
        }
        StockCutting plan = plan(demand, stock, pieces, runs, problems.list());
        return Attempt.of(plan, plan.problems);
    }

    private static void check(CuttingDemand demand, Problems problems) {
        problems.require(!demand.kerf().isNegative(), OUT_OF_RANGE, "kerf", demand.kerf(), "be zero or more");
        problems.require(!demand.stockLengths().isEmpty(), NO_STOCK, "stock lengths", "none", "be given");
        for (Length stock : demand.stockLengths()) {
            problems.require(isLong(stock), OUT_OF_RANGE, "stock length", stock, "be above 0 mm");
        }
        demand.transportLimit()
                .ifPresent(limit ->
                        problems.require(isLong(limit), OUT_OF_RANGE, "transport limit", limit, "be above 0 mm"));
        problems.require(
                !demand.pieces().isEmpty() || !demand.runs().isEmpty(), NOTHING, "pieces and rows", "none", "be given");
        for (CutPiece piece : demand.pieces()) {
            problems.require(
                    isLong(piece.length()), OUT_OF_RANGE, "length of " + piece.name(), piece.length(), "be above 0 mm");
            checkCount(piece.name(), piece.count(), problems);
        }
        List<String> names = new ArrayList<>();
        for (JointedRun run : demand.runs()) {
            problems.require(
                    !names.contains(run.name()),
                    NAME_TWICE,
                    "rows",
                    "\"" + run.name() + "\" twice",
                    "each have a name of their own");
            names.add(run.name());
            problems.require(
                    isLong(run.length()), OUT_OF_RANGE, "length of " + run.name(), run.length(), "be above 0 mm");
            problems.require(
                    isLong(run.leastPiece()),
                    OUT_OF_RANGE,
                    "least piece of " + run.name(),
                    run.leastPiece(),
                    "be above 0 mm");
            problems.require(
                    run.leastSupports() >= 1,
                    OUT_OF_RANGE,
                    "least supports of " + run.name(),
                    run.leastSupports(),
                    "be 1 or more");
            checkCount(run.name(), run.count(), problems);
            boolean inOrder = !run.supports().isEmpty();
            for (int i = 0; i < run.supports().size(); i++) {
                Length at = run.supports().get(i);
                inOrder &= !at.isNegative()
                        && at.meetsGreatest(run.length())
                        && (i == 0 || at.isLongerThan(run.supports().get(i - 1)));
            }
            problems.require(
                    inOrder,
                    SUPPORTS,
                    "supports of " + run.name(),
                    run.supports(),
                    "rise from the left end to no more than " + run.length());
        }
    }

    private static void checkCount(String name, long count, Problems problems) {
        problems.require(count >= 1 && count <= MOST, OUT_OF_RANGE, "number of " + name, count, "be from 1 to " + MOST);
    }

    private static boolean isLong(Length length) {
        return length.isLongerThan(Length.STORAGE_RESOLUTION);
    }

    private static List<Length> usableStock(CuttingDemand demand, Problems problems) {
        List<Length> usable = new ArrayList<>();
        for (Length stock : demand.stockLengths().stream().distinct().toList()) {
            if (demand.transportLimit().map(stock::meetsGreatest).orElse(true)) {
                usable.add(stock);
            } else {
                Length limit = demand.transportLimit().orElseThrow();
                problems.add(Problem.notice(
                        BEYOND_TRANSPORT,
                        "stock length",
                        stock,
                        "stock of " + stock + " is left out: it is longer than the transport limit of " + limit));
            }
        }
        return usable;
    }

    private static Problem tooLong(CutPiece piece, Length longest) {
        Length over = piece.length().minus(longest);
        return Problem.finding(
                LONGER_THAN_STOCK,
                piece.name(),
                piece.length(),
                longest,
                piece + " left out: longer than the longest stock of " + longest + " by " + over,
                List.of(
                        Mend.of("stock length", over + " longer", over, "cut in one piece"),
                        Mend.of(piece.name(), "allow joints on supports", "cut in two pieces or more")));
    }

    private static Problem noJoint(JointedRun run, Length longest) {
        return Problem.finding(
                NO_JOINT,
                run.name(),
                run.length(),
                longest,
                run + " left out: no joint on a support leaves pieces of at least " + run.leastPiece()
                        + " over at least " + run.leastSupports() + " supports and no longer than " + longest,
                List.of(
                        Mend.of(
                                "stock length",
                                run.length().minus(longest) + " longer",
                                run.length().minus(longest),
                                "rows in one piece"),
                        Mend.of("least piece", "shorter than " + run.leastPiece(), "more places for a joint")));
    }

    private static StockCutting plan(
            CuttingDemand demand,
            List<Length> stock,
            List<CutPiece> pieces,
            List<CuttingRows> runs,
            List<Problem> found) {
        if (pieces.isEmpty() && runs.isEmpty()) {
            return new StockCutting(demand, List.of(), List.of(), Length.ZERO, found);
        }
        LongStream lengths = LongStream.concat(
                pieces.stream().mapToLong(piece -> piece.length().toNanometres()),
                runs.stream()
                        .flatMapToLong(run -> LongStream.range(0, run.joints.size())
                                .flatMap(way -> run.lengths((int) way).stream().mapToLong(Length::toNanometres))));
        CuttingModel model = new CuttingModel(
                lengths.toArray(),
                stock.stream().mapToLong(Length::toNanometres).toArray(),
                demand.kerf().toNanometres(),
                Length.STORAGE_RESOLUTION.toNanometres());
        runs.forEach(run -> run.index(model));
        long[] fixed = new long[model.count()];
        pieces.forEach(piece -> fixed[model.indexOf(piece.length().toNanometres())] += piece.count());

        CuttingBound bound = new CuttingBound(model, runs);
        bound.find(fixed);
        long least = model.roundedUp(bound.bound());
        CuttingSearch best = null;
        long[][] bestWays = new long[0][];
        for (long[][] ways : waysToTry(model, fixed, bound, runs)) {
            long[] all = demandWith(fixed, runs, ways);
            CuttingBound fresh = new CuttingBound(model, List.of());
            fresh.find(all);
            CuttingSearch search =
                    CuttingSearch.find(model, all, fresh, Math.max(least, model.roundedUp(fresh.bound())));
            if (best == null || search.cost() < best.cost()) {
                best = search;
                bestWays = ways;
            }
            if (best.cost() <= least) {
                break;
            }
        }
        CuttingSearch chosen = Objects.requireNonNull(best);
        if (runs.isEmpty() && chosen.isComplete()) {
            least = chosen.cost(); // every plan was looked at
        }
        return new StockCutting(
                demand,
                cuts(model, chosen.plan(), named(pieces, runs, bestWays)),
                rows(runs, bestWays),
                Length.ofNanometres(least),
                found);
    }

    private static long[] demandWith(long[] fixed, List<CuttingRows> runs, long[][] ways) {
        long[] all = fixed.clone();
        for (int r = 0; r < runs.size(); r++) {
            for (int way = 0; way < ways[r].length; way++) {
                for (int i = 0; i < all.length; i++) {
                    all[i] += ways[r][way] * runs.get(r).pieces.get(way)[i];
                }
            }
        }
        return all;
    }

    /**
     * Chooses a few ways of sharing the rows among the places for joints: as the linear program shares them, and then what moving single rows from
     * there makes cheaper at a greedy cut.
     */
    private static List<long[][]> waysToTry(
            CuttingModel model, long[] fixed, CuttingBound bound, List<CuttingRows> runs) {
        if (runs.isEmpty()) {
            return List.<long[][]>of(new long[0][]);
        }
        List<long[][]> tries = new ArrayList<>();
        double[] parts = bound.primal();
        long[][] shared = new long[runs.size()][];
        int at = bound.patterns().size();
        for (int r = 0; r < runs.size(); r++) {
            int ways = runs.get(r).pieces.size();
            double[] share = new double[ways];
            for (int way = 0; way < ways; way++) {
                share[way] = parts.length == 0 ? 0 : parts[at + way];
            }
            at += ways;
            shared[r] = wholeRows(share, runs.get(r).run.count());
        }
        tries.add(shared);
        tries.addAll(improved(model, fixed, runs, shared, bound.worth()));
        return tries;
    }

    /** Rounds shares of rows to whole rows that add up: down first, then one more for the largest rests. */
    private static long[] wholeRows(double[] share, long count) {
        long[] whole = new long[share.length];
        long left = count;
        for (int i = 0; i < share.length; i++) {
            whole[i] = Math.min(left, (long) StrictMath.floor(share[i] + 1e-6));
            left -= whole[i];
        }
        while (left > 0) {
            int largest = 0;
            for (int i = 1; i < share.length; i++) {
                if (share[i] - whole[i] > share[largest] - whole[largest]) {
                    largest = i;
                }
            }
            whole[largest]++;
            left--;
        }
        return whole;
    }

    private static List<long[][]> improved(
            CuttingModel model, long[] fixed, List<CuttingRows> runs, long[][] start, double[] worth) {
        List<long[][]> better = new ArrayList<>();
        long[][] now = copy(start);
        long cost = CuttingSearch.greedyCost(model, demandWith(fixed, runs, now));
        boolean moved = true;
        while (moved && better.size() < WAYS_TRIED) {
            moved = false;
            for (int r = 0; r < runs.size() && !moved; r++) {
                for (int from = 0; from < now[r].length && !moved; from++) {
                    if (now[r][from] == 0) {
                        continue;
                    }
                    for (int to : cheapest(runs.get(r), worth)) {
                        if (to == from) {
                            continue;
                        }
                        now[r][from]--;
                        now[r][to]++;
                        long moving = CuttingSearch.greedyCost(model, demandWith(fixed, runs, now));
                        if (moving < cost) {
                            cost = moving;
                            better.add(copy(now));
                            moved = true;
                            break;
                        }
                        now[r][from]++;
                        now[r][to]--;
                    }
                }
            }
        }
        Collections.reverse(better); // the cheapest first
        return better;
    }

    /** The ways of joining whose pieces are worth least by the linear program. */
    private static int[] cheapest(CuttingRows run, double[] worth) {
        Integer[] ways = new Integer[run.pieces.size()];
        Arrays.setAll(ways, i -> i);
        Arrays.sort(ways, Comparator.comparingDouble(way -> {
            double sum = 0;
            for (int i = 0; i < worth.length; i++) {
                sum += run.pieces.get(way)[i] * worth[i];
            }
            return sum;
        }));
        return Arrays.stream(ways)
                .limit(2L * WAYS_TRIED)
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private static long[][] copy(long[][] ways) {
        long[][] copy = new long[ways.length][];
        for (int r = 0; r < ways.length; r++) {
            copy[r] = ways[r].clone();
        }
        return copy;
    }

    /** Every single piece by its length, with the name of what it is for, to be handed out to the cuts one by one. */
    private static Map<Long, List<CutPiece>> named(List<CutPiece> pieces, List<CuttingRows> runs, long[][] ways) {
        Map<Long, List<CutPiece>> named = new TreeMap<>();
        for (CutPiece piece : pieces) {
            named.computeIfAbsent(piece.length().toNanometres(), l -> new ArrayList<>())
                    .add(piece);
        }
        for (int r = 0; r < runs.size(); r++) {
            for (int way = 0; way < ways[r].length; way++) {
                if (ways[r][way] > 0) {
                    for (Length length : runs.get(r).lengths(way)) {
                        named.computeIfAbsent(length.toNanometres(), l -> new ArrayList<>())
                                .add(CutPiece.of(runs.get(r).run.name(), length, ways[r][way]));
                    }
                }
            }
        }
        return named;
    }

    private static List<StockCut> cuts(CuttingModel model, List<CuttingPattern> plan, Map<Long, List<CutPiece>> named) {
        Map<StockCut, Long> times = new LinkedHashMap<>();
        List<CuttingPattern> ordered = new ArrayList<>(plan);
        ordered.sort(Comparator.<CuttingPattern>comparingLong(pattern -> -model.stock[pattern.stock()])
                .thenComparing(CuttingPattern::counts, (a, b) -> -Arrays.compare(a, b)));
        for (CuttingPattern pattern : ordered) {
            List<CutPiece> pieces = new ArrayList<>();
            for (int i = 0; i < pattern.counts().length; i++) {
                take(named, model.length(i), pattern.counts()[i], pieces);
            }
            StockCut cut = new StockCut(
                    Length.ofNanometres(model.stock[pattern.stock()]),
                    pieces,
                    Length.ofNanometres(model.offcut(pattern)),
                    1);
            times.merge(cut, 1L, Long::sum);
        }
        List<StockCut> cuts = new ArrayList<>();
        times.forEach((cut, count) -> cuts.add(new StockCut(cut.stock(), cut.pieces(), cut.offcut(), count)));
        return cuts;
    }

    private static void take(Map<Long, List<CutPiece>> named, long length, int count, List<CutPiece> into) {
        int left = count;
        List<CutPiece> waiting = named.getOrDefault(length, List.of());
        while (left > 0) {
            CutPiece next = waiting.remove(0);
            long taken = Math.min(left, next.count());
            CutPiece last = into.isEmpty() ? next : into.get(into.size() - 1);
            if (!into.isEmpty()
                    && last.name().equals(next.name())
                    && last.length().equals(next.length())) {
                into.set(into.size() - 1, CutPiece.of(last.name(), last.length(), last.count() + taken));
            } else {
                into.add(CutPiece.of(next.name(), next.length(), taken));
            }
            if (taken < next.count()) {
                waiting.add(0, CutPiece.of(next.name(), next.length(), next.count() - taken));
            }
            left -= (int) taken;
        }
    }

    private static List<JointedRows> rows(List<CuttingRows> runs, long[][] ways) {
        List<JointedRows> rows = new ArrayList<>();
        for (int r = 0; r < runs.size(); r++) {
            for (int way = 0; way < ways[r].length; way++) {
                if (ways[r][way] > 0) {
                    rows.add(new JointedRows(
                            runs.get(r).run.name(), runs.get(r).joints.get(way), ways[r][way]));
                }
            }
        }
        return rows;
    }

    /** Returns what was to be cut. */
    public CuttingDemand demand() {
        return demand;
    }

    /** Returns the ways of cutting, each with how often it is used; the longest stock first. */
    public List<StockCut> cuts() {
        return cuts;
    }

    /** Returns where the rows that may be joined are joined. */
    public List<JointedRows> rows() {
        return rows;
    }

    /** Returns how many of each stock length are bought, the longest first; lengths that are not bought are left out. */
    public Map<Length, Long> stockCounts() {
        Map<Length, Long> counts = new TreeMap<>(Comparator.reverseOrder());
        cuts.forEach(cut -> counts.merge(cut.stock(), cut.times(), Long::sum));
        return Collections.unmodifiableMap(counts);
    }

    /** Returns how many stock lengths are bought, whatever their length. */
    public long stockCount() {
        return cuts.stream().mapToLong(StockCut::times).sum();
    }

    /** Returns all stock bought, laid end to end. */
    public Length totalLength() {
        return cuts.stream().map(cut -> cut.stock().times(cut.times())).reduce(Length.ZERO, Length::plus);
    }

    /** Returns all pieces cut, laid end to end. */
    public Length pieceLength() {
        Length sum = Length.ZERO;
        for (StockCut cut : cuts) {
            for (CutPiece piece : cut.pieces()) {
                sum = sum.plus(piece.length().times(piece.count() * cut.times()));
            }
        }
        return sum;
    }

    /** Returns what is bought and does not become a piece: offcuts and sawdust. */
    public Length waste() {
        return totalLength().minus(pieceLength());
    }

    /** Returns the waste as a share of what is bought; zero if nothing is bought. */
    public Ratio wasteShare() {
        return cuts.isEmpty() ? Ratio.ZERO : waste().dividedBy(totalLength());
    }

    /** Returns the least stock that any plan needs. */
    public Length bound() {
        return bound;
    }

    /** Returns what the plan buys over the bound; zero if no plan can be better. */
    public Length gap() {
        return totalLength().minus(bound);
    }

    /** Returns pieces and rows that were left out, and stock that cannot be carried; empty if there are none. */
    public List<Problem> problems() {
        return problems;
    }

    private void compute(Recorder r) {
        Expression bought = null;
        for (Map.Entry<Length, Long> entry : stockCounts().entrySet()) {
            String place = entry.getKey().toString();
            r.use(STOCK_LENGTH.at(place), entry.getKey());
            r.use(STOCK_COUNT.at(place), found(entry.getValue(), "the cutting plan"));
            Expression part = STOCK_COUNT.at(place).times(STOCK_LENGTH.at(place));
            bought = bought == null ? part : bought.plus(part);
        }
        Map<Length, Long> counts = new TreeMap<>(Comparator.reverseOrder());
        cuts.forEach(cut ->
                cut.pieces().forEach(piece -> counts.merge(piece.length(), piece.count() * cut.times(), Long::sum)));
        Expression cut = null;
        for (Map.Entry<Length, Long> entry : counts.entrySet()) {
            String place = entry.getKey().toString();
            r.use(PIECE.at(place), entry.getKey());
            r.use(PIECE_COUNT.at(place), entry.getValue());
            Expression part = PIECE_COUNT.at(place).times(PIECE.at(place));
            cut = cut == null ? part : cut.plus(part);
        }
        if (bought == null || cut == null) {
            return; // everything was left out
        }
        r.record(BOUGHT, totalLength(), Formula.of(BOUGHT, bought));
        r.record(PIECES, pieceLength(), Formula.of(PIECES, cut));
        r.record(WASTE, waste(), ALL_WASTE);
        r.record(WASTE_SHARE, wasteShare(), SHARE_OF_WASTE);
        r.use(
                BOUND,
                found(bound, gap().isZero() ? "reached by the plan, and no plan needs less" : "linear programming"));
        r.record(GAP, gap(), OVER_BOUND);
    }

    private static <T> Figure<T> found(T value, String how) {
        return Assumed.of(value, "found by search, " + how, "change the pieces, the stock lengths or the kerf");
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    /** Returns the plan as plain text: what to buy, each way of cutting, the joints, waste and gap. */
    public String toText() {
        StringBuilder text = new StringBuilder();
        stockCounts()
                .forEach((stock, count) -> text.append("buy ")
                        .append(count)
                        .append(" of ")
                        .append(stock)
                        .append('\n'));
        cuts.forEach(cut -> text.append("cut ").append(cut).append('\n'));
        rows.forEach(row -> text.append("join ").append(row).append('\n'));
        text.append("kerf ")
                .append(demand.kerf())
                .append(", waste ")
                .append(waste())
                .append(" of ")
                .append(totalLength());
        text.append(gap().isZero() ? "; no plan needs less\n" : "; any plan needs at least " + bound + "\n");
        problems.forEach(problem -> text.append(problem.severity())
                .append(": ")
                .append(problem.message())
                .append('\n'));
        return text.toString();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof StockCutting s && demand.equals(s.demand); // the same demand always gives the same plan
    }

    @Override
    public int hashCode() {
        return demand.hashCode();
    }

    /** Returns a summary, such as {@code 3 stock lengths, 14400 mm; no plan needs less}. */
    @Override
    public String toString() {
        return stockCount()
                + (stockCount() == 1 ? " stock length, " : " stock lengths, ")
                + totalLength()
                + (gap().isZero() ? "; no plan needs less" : "; any plan needs at least " + bound);
    }
}
