package org.roofmaths.ventilation;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * The bays between rafters along one edge.
 *
 * <p>The end rafters stand flush inside both ends of the length; the others stand at their centres from the left, so the last bay may
 * be narrower: {@code bays = whole number up from ((length − rafter width) ÷ centres)}. For example, 5.2 m with rafters 47 mm wide at
 * 600 mm has 9 bays, eight of 553 mm clear and one of 306 mm.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class RafterBays implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The length over the end rafters. */
    public static final Term<Length> LENGTH = Term.of("length over the end rafters", "Lb", Length.class);
    /** The distance of the rafters, centre to centre. */
    public static final Term<Length> CENTRES = Term.of("rafter centres of the bays", "e", Length.class);
    /** The width of a rafter. */
    public static final Term<Length> RAFTER_WIDTH = Term.of("rafter width between the bays", "br", Length.class);
    /** How many bays. */
    public static final Term<Integer> BAYS = Term.of("bays", "nb", Integer.class);
    /** How many rafters stand beside the bays. */
    public static final Term<Integer> RAFTERS = Term.of("rafters beside the bays", "nr", Integer.class);
    /** The clear width of all the bays together. */
    public static final Term<Length> CLEAR_WIDTH = Term.of("clear width of all bays", "Lc", Length.class);

    private static final Formula BAYS_BY_CENTRES =
            Formula.of(BAYS, LENGTH.minus(RAFTER_WIDTH).timesToCover(CENTRES));
    private static final Formula RAFTERS_BY_BAYS = Formula.of(RAFTERS, BAYS.plus(1));
    private static final Formula CLEAR_BY_BAYS = Formula.of(CLEAR_WIDTH, LENGTH.minus(RAFTERS.times(RAFTER_WIDTH)));
    private static final double RESOLUTION = Length.STORAGE_RESOLUTION.toSi();

    private final Figure<Length> length;
    private final Figure<Length> centres;
    private final Figure<Length> rafterWidth;

    private final List<Bay> bays;

    private RafterBays(Figure<Length> length, Figure<Length> centres, Figure<Length> rafterWidth) {
        this.length = length;
        this.centres = centres;
        this.rafterWidth = rafterWidth;
        bays = List.copyOf(layOut(count(Recorder.off())));
    }

    /**
     * Returns the bays of an edge.
     *
     * @param length the length over the end rafters, more than two rafters wide
     * @param centres the distance of the rafters, centre to centre; more than a rafter's width
     * @param rafterWidth the width of a rafter, above zero
     * @return the bays
     * @throws org.roofmaths.problem.ProblemsException with everything that is wrong with the three sizes
     */
    public static RafterBays of(Figure<Length> length, Figure<Length> centres, Figure<Length> rafterWidth) {
        Length width = rafterWidth.value();
        Problems.none()
                .require(width.isPositive(), VentDemand.WRONG_FIGURE, RAFTER_WIDTH.name(), width, "be above 0 mm")
                .require(
                        centres.value().isLongerThan(width),
                        VentDemand.WRONG_FIGURE,
                        CENTRES.name(),
                        centres.value(),
                        "be more than the rafter width of " + width)
                .require(
                        length.value().isLongerThan(width.times(2L)),
                        VentDemand.WRONG_FIGURE,
                        LENGTH.name(),
                        length.value(),
                        "be more than two rafters of " + width)
                .throwIfErrors();
        return new RafterBays(length, centres, rafterWidth);
    }

    /**
     * Returns the bays of an edge.
     *
     * @param length the length over the end rafters, more than two rafters wide
     * @param centres the distance of the rafters, centre to centre; more than a rafter's width
     * @param rafterWidth the width of a rafter, above zero
     * @return the bays
     * @throws org.roofmaths.problem.ProblemsException with everything that is wrong with the three sizes
     */
    public static RafterBays of(Length length, Length centres, Length rafterWidth) {
        return of(Given.of(length), Given.of(centres), Given.of(rafterWidth));
    }

    int count(Recorder r) {
        Length over = r.use(LENGTH, length);
        Length apart = r.use(CENTRES, centres);
        Length width = r.use(RAFTER_WIDTH, rafterWidth);
        double between = over.minus(width).toSi() - RESOLUTION;
        return r.record(BAYS, (int) StrictMath.ceil(between / apart.toSi()), BAYS_BY_CENTRES);
    }

    Length clearWidth(Recorder r) {
        int rafters = r.record(RAFTERS, count(r) + 1, RAFTERS_BY_BAYS);
        return r.record(CLEAR_WIDTH, length.value().minus(rafterWidth.value().times((long) rafters)), CLEAR_BY_BAYS);
    }

    private List<Bay> layOut(int count) {
        Length width = rafterWidth.value();
        Length lastRafter = length.value().minus(width);
        List<Bay> found = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Length start = centres.value().times((long) i).plus(width);
            Length end = i == count - 1 ? lastRafter : centres.value().times(i + 1L);
            found.add(new Bay(i + 1, start, end));
        }
        return found;
    }

    /** Returns the bays from the left, as seen from outside looking up the slope. */
    public List<Bay> bays() {
        return bays;
    }

    /** Returns how many bays there are. */
    public int count() {
        return bays.size();
    }

    /** Returns how many rafters there are, one more than bays. */
    public int rafterCount() {
        return bays.size() + 1;
    }

    /** Returns the clear width of all the bays together. */
    public Length clearWidth() {
        return clearWidth(Recorder.off());
    }

    Figure<Length> centres() {
        return centres;
    }

    Figure<Length> rafterWidth() {
        return rafterWidth;
    }

    @Override
    public Working working() {
        return Working.of(this::clearWidth);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof RafterBays b
                && length.equals(b.length)
                && centres.equals(b.centres)
                && rafterWidth.equals(b.rafterWidth);
    }

    @Override
    public int hashCode() {
        return Objects.hash(length, centres, rafterWidth);
    }

    /** Returns for example {@code 9 bays at 600 mm}. */
    @Override
    public String toString() {
        return count() + (count() == 1 ? " bay at " : " bays at ") + centres.value();
    }
}
