package org.roofmaths.flashing;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Working;

/**
 * A stack cricket: a small framed ridge behind a wide stack that turns the water to both sides.
 *
 * <p>With the stack's width {@code w}, the cricket's pitch {@code k} and the roof's pitch {@code p}: rise
 * {@code w ÷ 2 × tan(k)}, ridge back to the slope {@code rise ÷ tan(p)}, each valley {@code √((w ÷ 2)² + ridge² + rise²)}. For example,
 * 1200 mm wide with a cricket of 30° on a roof of 40°: rise 346.4 mm, ridge 412.8 mm, valleys 806.4 mm at 25.4°.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class StackCricket implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The pitch of the cricket's two small slopes. */
    public static final Term<Pitch> CRICKET_PITCH = Term.of("pitch of the cricket", "pk", Pitch.class);
    /** The pitch of the roof behind the stack. */
    public static final Term<Pitch> ROOF_PITCH = Term.of("pitch of the roof behind the stack", "pb", Pitch.class);
    /** The height of the cricket's ridge over its eaves. */
    public static final Term<Length> RISE = Term.of("rise of the cricket", "ck", Length.class);
    /** The level length of its ridge, from the stack back to the slope. */
    public static final Term<Length> RIDGE = Term.of("ridge of the cricket", "rk", Length.class);
    /** The true length of each of its two valleys. */
    public static final Term<Length> VALLEY = Term.of("valley of the cricket", "vk", Length.class);
    /** The pitch of its valleys. */
    public static final Term<Pitch> VALLEY_PITCH = Term.of("pitch of the cricket's valley", "qk", Pitch.class);
    /** The area of its two slopes together. */
    public static final Term<Area> AREA = Term.of("area of the cricket", "Ak", Area.class);

    private static final Formula RISE_BY_PITCH =
            Formula.of(RISE, Stack.WIDTH.over(2).times(CRICKET_PITCH.tan()));
    private static final Formula RIDGE_BY_ROOF = Formula.of(RIDGE, RISE.over(ROOF_PITCH.tan()));
    private static final Formula VALLEY_BY_SIDES = Formula.of(
            VALLEY,
            Stack.WIDTH
                    .over(2)
                    .squared()
                    .plus(RIDGE.squared())
                    .plus(RISE.squared())
                    .squareRoot());
    private static final Formula VALLEY_BY_RISE =
            Formula.of(VALLEY_PITCH, RISE.over(VALLEY).arcSin());
    private static final Formula TWO_TRIANGLES =
            Formula.of(AREA, Stack.WIDTH.over(2).over(CRICKET_PITCH.cos()).times(RIDGE));

    private final Figure<Length> width;
    private final Figure<Pitch> roofPitch;
    private final Figure<Pitch> cricketPitch;
    private final Numbers sizes;

    private record Numbers(Length rise, Length ridge, Length valley, Pitch valleyPitch, Area area)
            implements Serializable {}

    private StackCricket(Figure<Length> width, Figure<Pitch> roofPitch, Figure<Pitch> cricketPitch) {
        this.width = width;
        this.roofPitch = roofPitch;
        this.cricketPitch = cricketPitch;
        sizes = compute(Recorder.off());
    }

    /**
     * Returns the cricket behind a stack.
     *
     * @param stack the stack
     * @param cricketPitch the pitch of the cricket's two slopes
     * @return the cricket
     */
    public static StackCricket behind(Stack stack, Pitch cricketPitch) {
        return new StackCricket(stack.width(), stack.pitch(), Given.of(cricketPitch));
    }

    /**
     * Returns the cricket behind a stack of a width.
     *
     * @param width the width of the stack, above zero
     * @param roofPitch the pitch of the roof
     * @param cricketPitch the pitch of the cricket's two slopes
     * @return the cricket
     * @throws org.roofmaths.problem.ProblemsException if the width is not above zero
     */
    public static StackCricket behind(Length width, Pitch roofPitch, Pitch cricketPitch) {
        Problems problems = Problems.none();
        Sizes.requirePositive(problems, Stack.WIDTH, Given.of(width));
        problems.throwIfErrors();
        return new StackCricket(Given.of(width), Given.of(roofPitch), Given.of(cricketPitch));
    }

    private Numbers compute(Recorder r) {
        double half = r.use(Stack.WIDTH, width).toSi() / 2;
        Pitch cricket = r.use(CRICKET_PITCH, cricketPitch);
        Pitch roof = r.use(ROOF_PITCH, roofPitch);
        Length rise = r.record(RISE, Length.ofMetres(half * cricket.tan()), RISE_BY_PITCH);
        Length ridge = r.record(RIDGE, Length.ofMetres(rise.toSi() / roof.tan()), RIDGE_BY_ROOF);
        double squares = half * half + ridge.toSi() * ridge.toSi() + rise.toSi() * rise.toSi();
        Length valley = r.record(VALLEY, Length.ofMetres(StrictMath.sqrt(squares)), VALLEY_BY_SIDES);
        Pitch valleyPitch = r.record(
                VALLEY_PITCH,
                Pitch.ofDegrees(StrictMath.toDegrees(StrictMath.asin(rise.toSi() / valley.toSi()))),
                VALLEY_BY_RISE);
        Area area = r.record(AREA, Area.ofSquareMetres(half / cricket.cos() * ridge.toSi()), TWO_TRIANGLES);
        return new Numbers(rise, ridge, valley, valleyPitch, area);
    }

    /** Returns the height of its ridge over its eaves. */
    public Length rise() {
        return sizes.rise();
    }

    /** Returns the level length of its ridge, from the stack back to the slope. */
    public Length ridge() {
        return sizes.ridge();
    }

    /** Returns the true length of each of its two valleys, for {@link ValleyLining#along(Length, Pitch, ValleyDemand)}. */
    public Length valley() {
        return sizes.valley();
    }

    /** Returns the pitch of its valleys. */
    public Pitch valleyPitch() {
        return sizes.valleyPitch();
    }

    /** Returns the area of its two slopes together. */
    public Area area() {
        return sizes.area();
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof StackCricket c
                && width.equals(c.width)
                && roofPitch.equals(c.roofPitch)
                && cricketPitch.equals(c.cricketPitch);
    }

    @Override
    public int hashCode() {
        return Objects.hash(width, roofPitch, cricketPitch);
    }

    /** Returns for example {@code stack cricket: rise 346.4 mm, ridge 412.8 mm, valleys 806.4 mm at 25.4°}. */
    @Override
    public String toString() {
        return "stack cricket: rise " + rise() + ", ridge " + ridge() + ", valleys " + valley() + " at "
                + valleyPitch();
    }
}
