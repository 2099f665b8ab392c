package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;
import org.roofmaths.working.Working;

/**
 * The section through the eaves: how high the fascia stands over the rafter plane so that the first course lies in one plane with the
 * others, and whether the eaves tray still falls to the gutter.
 *
 * <p>The fascia takes the place of the unit below: its height over the rafters, square to the slope, is batten and counter-batten and
 * one thickness of unit, less a vent strip laid on it. In double lap the under-eaves unit is that thickness. For example, a batten of
 * 25 mm and a tile of 20 mm at 40° want 45 mm square, 58.7 mm plumb.
 *
 * <pre>{@code
 * EavesSection eaves = EavesSection.of(pitch("17.5°"), mm(25), mm(20)).withTray(mm(200));
 * eaves.fasciaHeightPlumb();      // 45 ÷ cos 17.5°
 * eaves.trayFall();               // 17.5° less arctan (45 ÷ 200): 4.8°
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class EavesSection implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** A size is below zero, or so large that nothing is left of the fascia. */
    public static final ProblemCode SIZE = ProblemCode.of("eaves-section.size", "Check the size and its unit.");

    /** The eaves tray does not fall to the gutter. */
    public static final ProblemCode PONDS =
            ProblemCode.of("eaves-section.ponds", "Lower the fascia or use a deeper tray, so that water runs off.");

    /** The depth of a batten, square to the slope. */
    public static final Term<Length> BATTEN_DEPTH = Term.of("batten depth", "b", Length.class);

    /** The depth of a counter-batten, square to the slope. */
    public static final Term<Length> COUNTER_BATTEN_DEPTH = Term.of("counter-batten depth", "k", Length.class);

    /** The thickness of one unit where it lies on the fascia. */
    public static final Term<Length> UNIT_THICKNESS = Term.of("unit thickness at the eaves", "t", Length.class);

    /** The height of a vent strip laid on the fascia. */
    public static final Term<Length> VENT_STRIP = Term.of("vent strip on the fascia", "v", Length.class);

    /** The height of the fascia over the rafter plane, square to the slope. */
    public static final Term<Length> FASCIA_SQUARE =
            Term.of("fascia over the rafter plane, square to the slope", "F", Length.class);

    /** The height of the fascia over the rafter plane, plumb. */
    public static final Term<Length> FASCIA_PLUMB = Term.of("fascia over the rafter plane, plumb", "Fp", Length.class);

    /** The thickness of the fascia board. */
    public static final Term<Length> FASCIA_THICKNESS = Term.of("fascia thickness", "tf", Length.class);

    /** How much lower the outer edge of the fascia's top is than its inner edge. */
    public static final Term<Length> BEVEL_DROP = Term.of("drop of the bevel on the fascia", "bd", Length.class);

    /** How far the eaves tray reaches up the slope from the fascia. */
    public static final Term<Length> TRAY_DEPTH = Term.of("depth of the eaves tray", "D", Length.class);

    /** By how much the eaves tray falls to the gutter. */
    public static final Term<Angle> TRAY_FALL = Term.of("fall of the eaves tray", "f", Angle.class);

    /** By how much the height of the fascia is out. */
    public static final Term<Length> FASCIA_ERROR = Term.of("error in the height of the fascia", "e", Length.class);

    /** The angle by which that tilts the first course out of the plane of the others. */
    public static final Term<Angle> KICK = Term.of("kick of the first course", "ki", Angle.class);

    private static final Formula FASCIA_BY_LAYERS = Formula.of(
            FASCIA_SQUARE,
            BATTEN_DEPTH.plus(COUNTER_BATTEN_DEPTH).plus(UNIT_THICKNESS).minus(VENT_STRIP));
    private static final Formula PLUMB_BY_PITCH =
            Formula.of(FASCIA_PLUMB, FASCIA_SQUARE.over(RoofFace.RAFTER_PITCH.cos()));
    private static final Formula BEVEL_BY_PITCH =
            Formula.of(BEVEL_DROP, FASCIA_THICKNESS.times(RoofFace.RAFTER_PITCH.tan()));
    private static final Formula FALL_BY_TRAY = Formula.of(
            TRAY_FALL,
            RoofFace.RAFTER_PITCH.minus(FASCIA_SQUARE.over(TRAY_DEPTH).arcTan()));
    private static final Formula KICK_BY_ERROR =
            Formula.of(KICK, FASCIA_ERROR.over(Courses.HANGING_LENGTH).arcSin());

    private final Figure<Pitch> pitch;
    private final Length batten;
    private final Length unit;
    private final Length counterBatten;
    private final Length ventStrip;
    private final @Nullable Length fascia;
    private final @Nullable Length tray;
    private final Numbers numbers;

    private record Numbers(
            Length square,
            Length plumb,
            @Nullable Length bevel,
            @Nullable Angle fall) implements Serializable {}

    private EavesSection(
            Figure<Pitch> pitch,
            Length batten,
            Length unit,
            Length counterBatten,
            Length ventStrip,
            @Nullable Length fascia,
            @Nullable Length tray) {
        this.pitch = Objects.requireNonNull(pitch, "pitch");
        this.batten = batten;
        this.unit = unit;
        this.counterBatten = counterBatten;
        this.ventStrip = ventStrip;
        this.fascia = fascia;
        this.tray = tray;
        Problems problems = Problems.none();
        problems.require(batten.isPositive(), SIZE, "batten depth", batten, "be above 0 mm");
        problems.require(unit.isPositive(), SIZE, "unit thickness", unit, "be above 0 mm");
        problems.require(!counterBatten.isNegative(), SIZE, "counter-batten depth", counterBatten, "be 0 mm or more");
        Length all = batten.plus(unit).plus(counterBatten);
        problems.require(
                !ventStrip.isNegative() && ventStrip.isShorterThan(all),
                SIZE,
                "vent strip",
                ventStrip,
                "be 0 mm or more and below the " + all + " of battens and unit");
        if (fascia != null) {
            problems.require(fascia.isPositive(), SIZE, "fascia thickness", fascia, "be above 0 mm");
        }
        if (tray != null) {
            problems.require(tray.isPositive(), SIZE, "tray depth", tray, "be above 0 mm");
        }
        problems.throwIfErrors();
        this.numbers = compute(Recorder.off());
    }

    /**
     * Returns the section for battens laid straight on the rafters or on what covers them.
     *
     * @param pitch the rafter pitch at the eaves
     * @param battenDepth the depth of a batten, square to the slope
     * @param unitThickness the thickness of one unit where it lies on the fascia
     * @return the section
     * @throws ProblemsException if a size is not above zero
     */
    public static EavesSection of(Pitch pitch, Length battenDepth, Length unitThickness) {
        return of(Figure.given(pitch), battenDepth, unitThickness);
    }

    /**
     * Returns the section at a pitch that comes with its origin.
     *
     * @param pitch the rafter pitch at the eaves
     * @param battenDepth the depth of a batten, square to the slope
     * @param unitThickness the thickness of one unit where it lies on the fascia
     * @return the section
     * @throws ProblemsException if a size is not above zero
     */
    public static EavesSection of(Figure<Pitch> pitch, Length battenDepth, Length unitThickness) {
        return new EavesSection(pitch, battenDepth, unitThickness, Length.ZERO, Length.ZERO, null, null);
    }

    /** Returns the same section with counter-battens of a depth under the battens. */
    public EavesSection withCounterBatten(Length depth) {
        return new EavesSection(pitch, batten, unit, depth, ventStrip, fascia, tray);
    }

    /** Returns the same section with a vent strip of a height on the fascia, which the fascia is lower by. */
    public EavesSection withVentStrip(Length height) {
        return new EavesSection(pitch, batten, unit, counterBatten, height, fascia, tray);
    }

    /** Returns the same section with a fascia board of a thickness, whose top is bevelled to the slope. */
    public EavesSection withFascia(Length thickness) {
        return new EavesSection(
                pitch, batten, unit, counterBatten, ventStrip, Objects.requireNonNull(thickness, "thickness"), tray);
    }

    /** Returns the same section with an eaves tray that reaches a depth up the slope from the fascia. */
    public EavesSection withTray(Length depth) {
        return new EavesSection(
                pitch, batten, unit, counterBatten, ventStrip, fascia, Objects.requireNonNull(depth, "depth"));
    }

    private Numbers compute(Recorder r) {
        Pitch p = r.use(RoofFace.RAFTER_PITCH, pitch);
        r.use(BATTEN_DEPTH, batten);
        r.use(COUNTER_BATTEN_DEPTH, counterBatten);
        r.use(UNIT_THICKNESS, unit);
        r.use(VENT_STRIP, ventStrip);
        Length square =
                r.record(FASCIA_SQUARE, batten.plus(counterBatten).plus(unit).minus(ventStrip), FASCIA_BY_LAYERS);
        Length plumb = r.record(FASCIA_PLUMB, square.dividedBy(p.cos()), PLUMB_BY_PITCH);
        Length bevel = null;
        if (fascia != null) {
            r.use(FASCIA_THICKNESS, fascia);
            bevel = r.record(BEVEL_DROP, p.riseOver(fascia), BEVEL_BY_PITCH);
        }
        Angle fall = null;
        if (tray != null) {
            r.use(TRAY_DEPTH, tray);
            double back = StrictMath.atan(square.toMetres() / tray.toMetres());
            fall = r.record(TRAY_FALL, Angle.ofRadians(p.toRadians() - back), FALL_BY_TRAY);
        }
        return new Numbers(square, plumb, bevel, fall);
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    /** Returns the height of the fascia over the rafter plane, square to the slope. */
    public Length fasciaHeightSquare() {
        return numbers.square;
    }

    /** Returns the height of the fascia over the rafter plane, plumb. */
    public Length fasciaHeightPlumb() {
        return numbers.plumb;
    }

    /** Returns how much lower the outer edge of the fascia's top is than its inner edge; empty without a fascia thickness. */
    public Optional<Length> bevelDrop() {
        return Optional.ofNullable(numbers.bevel);
    }

    /** Returns by how much the eaves tray falls to the gutter, below zero if it ponds; empty without a tray. */
    public Optional<Angle> trayFall() {
        return Optional.ofNullable(numbers.fall);
    }

    /**
     * Returns the angle by which the first course is tilted out of the plane of the others if the fascia is too high or too low.
     *
     * @param error by how much the fascia is too high, square to the slope; below zero if it is too low
     * @param hangingLength the hanging length of the units of the first course
     * @return the angle: the tails are up by it if it is above zero
     */
    public static Worked<Angle> kick(Length error, Length hangingLength) {
        return Worked.by(KICK, r -> {
            Length out = r.use(FASCIA_ERROR, error);
            Length over = r.use(Courses.HANGING_LENGTH, hangingLength);
            return r.record(KICK, Angle.ofRadians(StrictMath.asin(out.toMetres() / over.toMetres())), KICK_BY_ERROR);
        });
    }

    /** Returns a finding if the eaves tray does not fall to the gutter; empty otherwise. */
    public List<Problem> problems() {
        Angle fall = numbers.fall;
        if (fall == null || tray == null || fall.isPositive()) {
            return List.of();
        }
        double tan = pitch.value().tan();
        Length highest = tray.times(tan);
        Length deepest = numbers.square.dividedBy(tan);
        Length less = numbers.square.minus(highest);
        Length more = deepest.minus(tray);
        return List.of(Problem.finding(
                PONDS,
                "eaves",
                fall,
                "above 0°",
                "the eaves tray does not fall to the gutter: its fall is " + fall
                        + ", so water stands behind the fascia",
                List.of(
                        Mend.of(
                                "fascia height, square to the slope",
                                "more than " + less + " less",
                                less.negated(),
                                "a tray that falls"),
                        Mend.of("tray depth", "more than " + more + " more", more, "a tray that falls"))));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof EavesSection e
                && pitch.equals(e.pitch)
                && batten.equals(e.batten)
                && unit.equals(e.unit)
                && counterBatten.equals(e.counterBatten)
                && ventStrip.equals(e.ventStrip)
                && Objects.equals(fascia, e.fascia)
                && Objects.equals(tray, e.tray);
    }

    @Override
    public int hashCode() {
        return Objects.hash(pitch, batten, unit, counterBatten, ventStrip, fascia, tray);
    }

    /** Returns for example {@code fascia 45 mm over the rafter plane, square; 58.743328 mm plumb}. */
    @Override
    public String toString() {
        return "fascia " + numbers.square + " over the rafter plane, square; " + numbers.plumb + " plumb"
                + (numbers.fall == null ? "" : "; eaves tray falls " + numbers.fall);
    }
}
