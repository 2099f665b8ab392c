package org.roofmaths.framing;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;
import org.roofmaths.working.Working;

/**
 * The saw settings with which two leaning boards meet round a corner, such as fascias square to the rafters.
 *
 * <p>The lean is measured from plumb; the corner is the angle between the boards on plan. The mitre is the angle across
 * the face of the board, from square: tan = sin(lean) ÷ tan(corner ÷ 2). The bevel is the tilt of the blade, from
 * square to the face: sin = cos(lean) × cos(corner ÷ 2). For example, fascias square to rafters of 30° round a square
 * corner are cut at a mitre of 26.57° with the blade tilted by 37.76°.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class CompoundMitre implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** How far the board leans from plumb. */
    public static final Term<Angle> LEAN = Term.of("lean of the board from plumb", "S", Angle.class);

    /** The angle between the two boards on plan. */
    public static final Term<Angle> CORNER = Term.of("corner between the boards", "cw", Angle.class);

    /** The cut across the face of the board, from square. */
    public static final Term<Angle> MITRE_FROM_SQUARE = Term.of("mitre, from square", "cm", Angle.class);

    /** The tilt of the saw blade, from square to the face. */
    public static final Term<Angle> BEVEL_FROM_SQUARE = Term.of("blade bevel, from square", "cb", Angle.class);

    /** An angle is out of range. */
    public static final ProblemCode ANGLE =
            ProblemCode.of("compound-mitre.angle", "Measure the lean from plumb and the corner between the boards.");

    private static final Formula LEAN_IS_PITCH = Formula.of(LEAN, RoofFace.RAFTER_PITCH);
    private static final Formula LEAN_OF_BOARDING =
            Formula.of(LEAN, Expression.degrees(90).minus(RoofFace.RAFTER_PITCH));
    private static final Formula MITRE =
            Formula.of(MITRE_FROM_SQUARE, LEAN.sin().over(CORNER.over(2).tan()).arcTan());
    private static final Formula BEVEL =
            Formula.of(BEVEL_FROM_SQUARE, LEAN.cos().times(CORNER.over(2).cos()).arcSin());

    private final Figure<Angle> lean;
    private final Figure<Angle> corner;
    private final Numbers numbers;

    private record Numbers(Angle mitre, Angle bevel) implements Serializable {}

    private CompoundMitre(Figure<Angle> lean, Figure<Angle> corner) {
        this.lean = Objects.requireNonNull(lean, "lean");
        this.corner = Objects.requireNonNull(corner, "corner");
        Problems problems = Problems.none();
        double leaning = lean.value().toDegrees();
        problems.require(leaning >= 0 && leaning <= 90, ANGLE, "lean", lean.value(), "be from 0° to 90°");
        double turn = corner.value().toDegrees();
        problems.require(turn > 0 && turn < 180, ANGLE, "corner", corner.value(), "be above 0° and below 180°");
        problems.throwIfErrors();
        this.numbers = compute(Recorder.off());
    }

    /**
     * Returns the settings for boards of any lean.
     *
     * @param lean how far the boards lean from plumb, from 0° to 90°
     * @param corner the angle between them on plan, above 0° and below 180°
     * @return the settings
     * @throws ProblemsException if an angle is out of range
     */
    public static CompoundMitre of(Angle lean, Angle corner) {
        return new CompoundMitre(
                Figure.given(Objects.requireNonNull(lean, "lean")),
                Figure.given(Objects.requireNonNull(corner, "corner")));
    }

    /**
     * Returns the settings for fascias or soffit boards fixed square to the rafters: they lean from plumb by the pitch.
     *
     * @param pitch the pitch of the rafters
     * @param corner the angle between the boards on plan, above 0° and below 180°
     * @return the settings
     * @throws ProblemsException if the corner is out of range
     */
    public static CompoundMitre squareToRafters(Pitch pitch, Angle corner) {
        Objects.requireNonNull(pitch, "pitch");
        Figure<Angle> lean = Worked.by(
                LEAN, r -> r.record(LEAN, r.use(RoofFace.RAFTER_PITCH, pitch).toAngle(), LEAN_IS_PITCH));
        return new CompoundMitre(lean, Figure.given(Objects.requireNonNull(corner, "corner")));
    }

    /**
     * Returns the settings for roof boards that lie in the slope and meet over a hip: they lean from plumb by 90° less
     * the pitch.
     *
     * @param pitch the pitch of the rafters
     * @param corner the angle between the eaves on plan, above 0° and below 180°
     * @return the settings; the bevel is the backing of the hip
     * @throws ProblemsException if the corner is out of range
     */
    public static CompoundMitre inTheSlope(Pitch pitch, Angle corner) {
        Objects.requireNonNull(pitch, "pitch");
        Figure<Angle> lean = Worked.by(LEAN, r -> {
            Angle p = r.use(RoofFace.RAFTER_PITCH, pitch).toAngle();
            return r.record(LEAN, Angle.ofDegrees(90).minus(p), LEAN_OF_BOARDING);
        });
        return new CompoundMitre(lean, Figure.given(Objects.requireNonNull(corner, "corner")));
    }

    private Numbers compute(Recorder r) {
        Angle leaning = r.use(LEAN, lean);
        Angle half = r.use(CORNER, corner).dividedBy(2);
        Angle mitre = r.record(MITRE_FROM_SQUARE, Angle.ofRadians(StrictMath.atan(leaning.sin() / half.tan())), MITRE);
        Angle bevel = r.record(BEVEL_FROM_SQUARE, Angle.ofRadians(StrictMath.asin(leaning.cos() * half.cos())), BEVEL);
        return new Numbers(mitre, bevel);
    }

    /** Returns the angle of the cut across the face of the board, from square. */
    public Angle mitreFromSquare() {
        return numbers.mitre;
    }

    /** Returns the tilt of the saw blade, from square to the face of the board. */
    public Angle bevelFromSquare() {
        return numbers.bevel;
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof CompoundMitre c && lean.equals(c.lean) && corner.equals(c.corner);
    }

    @Override
    public int hashCode() {
        return Objects.hash(lean.value(), corner.value());
    }

    /** Returns for example {@code mitre 26.56° from square, blade tilted 37.76°}, in full. */
    @Override
    public String toString() {
        return "mitre " + mitreFromSquare() + " from square, blade tilted " + bevelFromSquare();
    }
}
