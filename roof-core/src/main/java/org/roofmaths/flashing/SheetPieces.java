package org.roofmaths.flashing;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;

/**
 * Loose pieces of sheet of one size, such as lead saddles or slates for pipes: sizes given, mass worked out.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class SheetPieces extends Flashing {
    private static final long serialVersionUID = 1L;

    /** How many loose pieces. */
    public static final Term<Integer> COUNT = Term.of("loose pieces of sheet", "nl", Integer.class);
    /** The length of a loose piece. */
    public static final Term<Length> LENGTH = Term.of("length of a loose piece", "Ll", Length.class);
    /** The width of a loose piece. */
    public static final Term<Length> WIDTH = Term.of("width of a loose piece", "Wl", Length.class);

    private static final Formula LENGTH_OF_ALL = Formula.of(METAL_LENGTH, COUNT.times(LENGTH));
    private static final Formula WIDTH_GIVEN = Formula.of(GIRTH, WIDTH);
    private static final Formula AREA_OF_ALL = Formula.of(METAL_AREA, METAL_LENGTH.times(GIRTH));

    private final String name;
    private final Figure<Integer> count;
    private final Figure<Length> length;
    private final Figure<Length> width;
    private final MetalSheet sheet;

    private final SheetWork work;

    private SheetPieces(
            String name, Figure<Integer> count, Figure<Length> length, Figure<Length> width, MetalSheet sheet) {
        this.name = name;
        this.count = count;
        this.length = length;
        this.width = width;
        this.sheet = sheet;
        work = compute(Recorder.off());
    }

    /**
     * Returns loose pieces of one size.
     *
     * @param name what one is called, such as {@code lead saddle}
     * @param count how many, 1 or more
     * @param length the length of one, above zero
     * @param width the width of one, above zero
     * @param sheet the sheet
     * @return the pieces
     * @throws org.roofmaths.problem.ProblemsException with everything that is wrong with the three numbers
     */
    public static SheetPieces of(String name, int count, Length length, Length width, MetalSheet sheet) {
        return of(name, Given.of(count), Given.of(length), Given.of(width), sheet);
    }

    /**
     * Returns loose pieces of one size.
     *
     * @param name what one is called, such as {@code lead saddle}
     * @param count how many, 1 or more
     * @param length the length of one, above zero
     * @param width the width of one, above zero
     * @param sheet the sheet
     * @return the pieces
     * @throws org.roofmaths.problem.ProblemsException with everything that is wrong with the three numbers
     */
    public static SheetPieces of(
            String name, Figure<Integer> count, Figure<Length> length, Figure<Length> width, MetalSheet sheet) {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(sheet, "sheet");
        Problems problems = Problems.none()
                .require(count.value() >= 1, FlashingDemand.WRONG_SIZE, COUNT.name(), count.value(), "be 1 or more");
        Sizes.requirePositive(problems, LENGTH, length);
        Sizes.requirePositive(problems, WIDTH, width);
        problems.throwIfErrors();
        return new SheetPieces(name, count, length, width, sheet);
    }

    @Override
    SheetWork compute(Recorder r) {
        int pieces = r.use(COUNT, count);
        Length one = r.use(LENGTH, length);
        Length across = r.use(WIDTH, width);
        Length girth = r.record(GIRTH, across, WIDTH_GIVEN);
        Length total = r.record(METAL_LENGTH, one.times((long) pieces), LENGTH_OF_ALL);
        Area area = r.record(METAL_AREA, total.times(girth), AREA_OF_ALL);
        List<FlashingPiece> list = IntStream.rangeClosed(1, pieces)
                .mapToObj(i -> new FlashingPiece(
                        pieces == 1 ? name : name + " " + i + " of " + pieces, Length.ZERO, one, girth))
                .toList();
        return new SheetWork(girth, total, area, SheetWork.mass(r, area, sheet), list, List.of());
    }

    @Override
    SheetWork work() {
        return work;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public MetalSheet sheet() {
        return sheet;
    }

    @Override
    public List<Leg> legs() {
        return List.of(new Leg("flat", width.value()));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SheetPieces p
                && name.equals(p.name)
                && count.equals(p.count)
                && length.equals(p.length)
                && width.equals(p.width)
                && sheet.equals(p.sheet);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, count, length, width, sheet);
    }
}
