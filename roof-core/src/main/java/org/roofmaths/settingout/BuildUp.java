package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;

/**
 * The layers between rafters and covering, and how far they move every edge of it.
 *
 * <p>Layers are measured square to the slope. They raise the covering by more than that, plumb; they lengthen the slope where it meets
 * a wall or another slope; and at a ridge of unequal pitches they move the apex sideways. For example, 150 mm of insulation on slopes
 * of 30° and 50° lengthens each by 150 × tan 40°, 125.9 mm, and moves the apex 34.0 mm towards the steeper side.
 *
 * <pre>{@code
 * BuildUp layers = BuildUp.of(new Layer("insulation", mm(120)), new Layer("counter-batten", mm(38)), new Layer("batten", mm(25)));
 * layers.plumb(pitch("40°"))                 // 183 ÷ cos 40° = 238.9 mm
 * layers.nailLength(mm(40))                  // through all layers, 40 mm into the rafter
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class BuildUp implements Serializable {
    private static final long serialVersionUID = 1L;

    /** There is no layer, two have one name, or one is not thicker than nothing. */
    public static final ProblemCode LAYERS =
            ProblemCode.of("build-up.layers", "Name each layer once and give its thickness, square to the slope.");

    /** The thickness of one layer; at the place of its name. */
    public static final Term<Length> LAYER = Term.of("thickness of the layer", "tl", Length.class);

    /** All layers together, square to the slope. */
    public static final Term<Length> TOGETHER = Term.of("layers together, square to the slope", "T", Length.class);

    /** The pitch of the slope; at a ridge, at the places {@code this slope} and {@code other slope}. */
    public static final Term<Pitch> PITCH = Term.of("pitch under the layers", "pl", Pitch.class);

    /** By how much the covering is raised, plumb. */
    public static final Term<Length> PLUMB = Term.of("layers together, plumb", "Tp", Length.class);

    /** By how much the slope grows up to a plumb wall. */
    public static final Term<Length> GROWTH_AT_WALL = Term.of("growth of the slope at a wall", "Gw", Length.class);

    /** By how much each of two slopes grows up to their ridge. */
    public static final Term<Length> GROWTH_AT_RIDGE = Term.of("growth of each slope at the ridge", "Gr", Length.class);

    /** How far the apex moves from this slope towards the other. */
    public static final Term<Length> APEX_SHIFT = Term.of("sideways shift of the apex", "ax", Length.class);

    /** How far a nail is to reach into what holds it. */
    public static final Term<Length> PENETRATION = Term.of("penetration of the nail", "pn", Length.class);

    /** The least length of a nail through all layers. */
    public static final Term<Length> NAIL_LENGTH = Term.of("nail length through the layers", "ln", Length.class);

    private static final String THIS = "this slope";
    private static final String OTHER = "other slope";

    private final List<Layer> layers;

    private BuildUp(List<Layer> layers) {
        this.layers = layers;
    }

    /**
     * Returns the layers from the rafter up.
     *
     * @param layers each with a name of its own and a thickness above zero
     * @return the build-up
     * @throws ProblemsException with every reason, if there is no layer, a name occurs twice or a thickness is not above zero
     */
    public static BuildUp of(Layer... layers) {
        return of(List.of(layers));
    }

    /**
     * Returns the layers from the rafter up.
     *
     * @param layers each with a name of its own and a thickness above zero
     * @return the build-up
     * @throws ProblemsException with every reason, if there is no layer, a name occurs twice or a thickness is not above zero
     */
    public static BuildUp of(List<Layer> layers) {
        Problems problems = Problems.none();
        problems.require(!layers.isEmpty(), LAYERS, "layers", "none", "hold at least one layer");
        Set<String> names = new HashSet<>();
        for (Layer layer : layers) {
            problems.require(names.add(layer.name()), LAYERS, "layer name", layer.name(), "occur once");
            problems.require(
                    layer.thickness().isPositive(), LAYERS, layer.name(), layer.thickness(), "be above 0 mm thick");
        }
        problems.throwIfErrors();
        return new BuildUp(List.copyOf(layers));
    }

    /** Returns the layers from the rafter up. */
    public List<Layer> layers() {
        return layers;
    }

    /** Returns all layers together, square to the slope. */
    public Worked<Length> together() {
        return Worked.by(TOGETHER, this::together);
    }

    private Length together(Recorder r) {
        Length sum = layers.stream().map(Layer::thickness).reduce(Length.ZERO, Length::plus);
        if (!r.isOn()) {
            return sum;
        }
        List<Term<Length>> terms = new ArrayList<>();
        for (Layer layer : layers) {
            Term<Length> term = LAYER.at(layer.name());
            r.use(term, layer.thickness());
            terms.add(term);
        }
        Expression all = terms.get(0);
        for (int i = 1; i < terms.size(); i++) {
            all = all.plus(terms.get(i));
        }
        return r.record(TOGETHER, sum, Formula.of(TOGETHER, all));
    }

    /**
     * Returns by how much the layers raise the covering, plumb.
     *
     * @param pitch the pitch of the slope
     * @return the layers over the cosine of the pitch
     */
    public Worked<Length> plumb(Pitch pitch) {
        return Worked.by(PLUMB, r -> {
            Length all = together(r);
            Pitch p = r.use(PITCH, pitch);
            return r.record(PLUMB, all.dividedBy(p.cos()), Formula.of(PLUMB, TOGETHER.over(PITCH.cos())));
        });
    }

    /**
     * Returns by how much the slope grows up to a plumb wall, or up to a ridge with an equal slope.
     *
     * @param pitch the pitch of the slope
     * @return the layers times the tangent of the pitch
     */
    public Worked<Length> growthAtWall(Pitch pitch) {
        return Worked.by(GROWTH_AT_WALL, r -> {
            Length all = together(r);
            Pitch p = r.use(PITCH, pitch);
            return r.record(
                    GROWTH_AT_WALL, all.times(p.tan()), Formula.of(GROWTH_AT_WALL, TOGETHER.times(PITCH.tan())));
        });
    }

    /**
     * Returns by how much each of two slopes grows up to their ridge. Both grow by the same, also if their pitches differ.
     *
     * @param pitch the pitch of this slope
     * @param other the pitch of the other slope
     * @return the layers times the tangent of half the sum of the pitches
     */
    public Worked<Length> growthAtRidge(Pitch pitch, Pitch other) {
        return Worked.by(GROWTH_AT_RIDGE, r -> {
            Length all = together(r);
            Pitch p = r.use(PITCH.at(THIS), pitch);
            Pitch q = r.use(PITCH.at(OTHER), other);
            return r.record(
                    GROWTH_AT_RIDGE,
                    all.times(StrictMath.tan((p.toRadians() + q.toRadians()) / 2)),
                    Formula.of(
                            GROWTH_AT_RIDGE,
                            TOGETHER.times(
                                    PITCH.at(THIS).plus(PITCH.at(OTHER)).over(2).tan())));
        });
    }

    /**
     * Returns how far the apex of two slopes moves from this slope towards the other.
     *
     * @param pitch the pitch of this slope
     * @param other the pitch of the other slope
     * @return above zero if the other slope is the steeper; zero if both are equal
     */
    public Worked<Length> apexShift(Pitch pitch, Pitch other) {
        return Worked.by(APEX_SHIFT, r -> {
            Length all = together(r);
            Pitch p = r.use(PITCH.at(THIS), pitch);
            Pitch q = r.use(PITCH.at(OTHER), other);
            Expression one = Expression.number(1);
            return r.record(
                    APEX_SHIFT,
                    all.times((1 / q.cos() - 1 / p.cos()) / (p.tan() + q.tan())),
                    Formula.of(
                            APEX_SHIFT,
                            TOGETHER.times(one.over(PITCH.at(OTHER).cos())
                                            .minus(one.over(PITCH.at(THIS).cos())))
                                    .over(PITCH.at(THIS)
                                            .tan()
                                            .plus(PITCH.at(OTHER).tan()))));
        });
    }

    /**
     * Returns the least length of a nail that goes through all layers and reaches into what lies under them.
     *
     * <p>That holds only where the layers lie straight on each other down to the rafter. Over rigid insulation the batten is nailed into
     * the counter-batten alone, which must then be as deep as the penetration asked.
     *
     * @param penetration how far the nail is to reach into the rafter
     * @return layers and penetration together: 25 + 25 + 40 = 90 mm for batten, counter-batten and 40 mm into the rafter
     */
    public Worked<Length> nailLength(Length penetration) {
        return Worked.by(NAIL_LENGTH, r -> {
            Length all = together(r);
            Length into = r.use(PENETRATION, penetration);
            return r.record(NAIL_LENGTH, all.plus(into), Formula.of(NAIL_LENGTH, TOGETHER.plus(PENETRATION)));
        });
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BuildUp b && layers.equals(b.layers);
    }

    @Override
    public int hashCode() {
        return layers.hashCode();
    }

    /** Returns for example {@code counter-batten 25 mm, batten 25 mm}. */
    @Override
    public String toString() {
        return String.join(", ", layers.stream().map(Layer::toString).toList());
    }
}
