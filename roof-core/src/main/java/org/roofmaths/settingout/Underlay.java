package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.units.Length;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * The underlay of one face: how many rows, where each lies, how many metres of the roll.
 *
 * <p>Rows run along the eaves, each over the row below by the lap asked. The slope to cover runs from the fascia line past the apex
 * line by the extension asked. For example, 5.2 m of slope from a roll 1 m wide with laps of 150 mm takes
 * 1 + 4.2 ÷ 0.85, rounded up, 6 rows.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Underlay implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The slope under the underlay, at the longer end. */
    public static final Term<Length> SLOPE = Term.of("slope under the underlay", "Su", Length.class);

    /** How far the underlay goes past the apex line. */
    public static final Term<Length> TOP_EXTENSION = Term.of("underlay past the apex line", "eu", Length.class);

    /** The width of the roll. */
    public static final Term<Length> ROLL_WIDTH = Term.of("roll width", "Wr", Length.class);

    /** The length on a roll. */
    public static final Term<Length> ROLL_LENGTH = Term.of("roll length", "Lr", Length.class);

    /** How far each row laps over the row below. */
    public static final Term<Length> HORIZONTAL_LAP = Term.of("horizontal lap of the underlay", "lh", Length.class);

    /** How far two pieces of a row lap at their ends. */
    public static final Term<Length> VERTICAL_LAP = Term.of("vertical lap of the underlay", "lv", Length.class);

    /** How many rows there are. */
    public static final Term<Integer> ROWS = Term.of("rows of underlay", "nu", Integer.class);

    /** The length of a row: the width of the face. */
    public static final Term<Length> ROW_LENGTH = Term.of("length of a row of underlay", "lu", Length.class);

    /** The lengths of all rows together, without end laps. */
    public static final Term<Length> TOGETHER = Term.of("rows of underlay together", "U", Length.class);

    /** How many rows begin on one roll and end on another. */
    public static final Term<Integer> JOINS = Term.of("joins in the underlay", "nj", Integer.class);

    /** The lengths of all rows together with their end laps. */
    public static final Term<Length> WITH_JOINS = Term.of("underlay with its joins", "Uj", Length.class);

    private static final Formula ROWS_BY_SLOPE = Formula.of(
            ROWS,
            SLOPE.plus(TOP_EXTENSION)
                    .minus(ROLL_WIDTH)
                    .greatest(Expression.number(0))
                    .timesToCover(ROLL_WIDTH.minus(HORIZONTAL_LAP))
                    .plus(1));
    private static final Formula TOGETHER_BY_ROWS = Formula.of(TOGETHER, ROWS.times(ROW_LENGTH));
    private static final Formula JOINS_BY_ROLL =
            Formula.of(JOINS, TOGETHER.timesToCover(ROLL_LENGTH).minus(1));
    private static final Formula WITH_JOINS_BY_LAP = Formula.of(WITH_JOINS, TOGETHER.plus(JOINS.times(VERTICAL_LAP)));

    private final Figure<Length> slope;
    private final Figure<Length> rowLength;
    private final UnderlayRoll roll;
    private final UnderlayDemand demand;
    private final int rows;
    private final Length withJoins;

    private Underlay(Figure<Length> slope, Figure<Length> rowLength, UnderlayRoll roll, UnderlayDemand demand) {
        this.slope = slope;
        this.rowLength = rowLength;
        this.roll = roll;
        this.demand = demand;
        Length step = roll.width().minus(demand.horizontalLap().value());
        Length over = slope.value()
                .plus(demand.topExtension().value())
                .minus(roll.width())
                .max(Length.ZERO);
        this.rows = 1 + Math.toIntExact(step.timesToCover(over));
        this.withJoins = tell(Recorder.off());
    }

    /**
     * Lays underlay on a slope.
     *
     * @param slope the slope length to cover, from the fascia line to the apex line
     * @param rowLength the width of the face
     * @param roll the roll
     * @param demand laps and extension
     * @return the underlay
     */
    public static Underlay over(Length slope, Length rowLength, UnderlayRoll roll, UnderlayDemand demand) {
        return over(Figure.given(slope), Figure.given(rowLength), roll, demand);
    }

    static Underlay over(Figure<Length> slope, Figure<Length> rowLength, UnderlayRoll roll, UnderlayDemand demand) {
        return new Underlay(slope, rowLength, roll, demand);
    }

    Length tell(Recorder r) {
        r.use(SLOPE, slope);
        r.use(TOP_EXTENSION, demand.topExtension());
        r.use(ROLL_WIDTH, Figure.given(roll.width()));
        r.use(HORIZONTAL_LAP, demand.horizontalLap());
        int count = r.record(ROWS, rows, ROWS_BY_SLOPE);
        Length one = r.use(ROW_LENGTH, rowLength);
        Length together = r.record(TOGETHER, one.times(count), TOGETHER_BY_ROWS);
        r.use(ROLL_LENGTH, Figure.given(roll.length()));
        int joins = r.record(JOINS, Math.toIntExact(roll.length().timesToCover(together)) - 1, JOINS_BY_ROLL);
        Length lap = r.use(VERTICAL_LAP, demand.verticalLap());
        return r.record(WITH_JOINS, together.plus(lap.times(joins)), WITH_JOINS_BY_LAP);
    }

    @Override
    public Working working() {
        return Working.of(this::tell);
    }

    /** Returns the number of rows. */
    public int rowCount() {
        return rows;
    }

    /** Returns where the lower edge of each row lies, up the slope from the fascia line, at the lap asked. */
    public List<Length> lowerEdges() {
        Length step = roll.width().minus(demand.horizontalLap().value());
        List<Length> edges = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            edges.add(step.times(i));
        }
        return List.copyOf(edges);
    }

    /** Returns the length of one row. */
    public Length rowLength() {
        return rowLength.value();
    }

    /** Returns the lengths of all rows together, without end laps. */
    public Length together() {
        return rowLength.value().times(rows);
    }

    /** Returns the lengths of all rows together with an end lap wherever a roll ends. */
    public Length withJoins() {
        return withJoins;
    }

    /** Returns how much of the last row lies beyond what has to be covered: room for larger laps. */
    public Length spare() {
        Length covered = roll.width()
                .plus(roll.width().minus(demand.horizontalLap().value()).times(rows - 1));
        return covered.minus(slope.value()).minus(demand.topExtension().value());
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Underlay u
                && slope.equals(u.slope)
                && rowLength.equals(u.rowLength)
                && roll.equals(u.roll)
                && demand.equals(u.demand);
    }

    @Override
    public int hashCode() {
        return Objects.hash(slope, rowLength, roll, demand);
    }

    /** Returns for example {@code 5 rows of underlay, 26225 mm together}. */
    @Override
    public String toString() {
        return rows + (rows == 1 ? " row" : " rows") + " of underlay, " + together() + " together";
    }
}
