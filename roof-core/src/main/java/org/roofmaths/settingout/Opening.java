package org.roofmaths.settingout;

import java.io.Serializable;
import org.immutables.value.Value;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;

/**
 * A hole in the covering of a face: for a stack, a roof window, a pipe or a dormer.
 *
 * <p>Sizes are those of the hole in the covering, measured on the slope: the thing itself and the clearances that its flashing asks
 * all round. They come from the paper that came with it, not from here.
 *
 * <pre>{@code
 * Opening stack = Opening.builder().name("stack").along(mm(2100)).up(mm(1850)).width(mm(600)).height(mm(720)).build();
 * }</pre>
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public interface Opening extends Serializable {
    /** A size of an opening is not above zero. */
    ProblemCode SIZE = ProblemCode.of("opening.size", "Check the sizes of the opening.");

    /** Returns what it is called; each opening of a face has its own name. */
    String name();

    /** Returns how far its left edge lies to the right of the left end of the eaves of the covered face. */
    Length along();

    /** Returns how far its lower edge lies up the slope from the fascia line. */
    Length up();

    /** Returns its width, along the courses. */
    Length width();

    /** Returns its height, on the slope. */
    Length height();

    /** Returns how far its right edge lies to the right of the left end of the eaves. */
    default Length right() {
        return along().plus(width());
    }

    /** Returns how far its upper edge lies up the slope from the fascia line. */
    default Length top() {
        return up().plus(height());
    }

    /** Returns the same opening at another place. */
    default Opening at(Length along, Length up) {
        return builder()
                .name(name())
                .along(along)
                .up(up)
                .width(width())
                .height(height())
                .build();
    }

    /** Refuses sizes that are not above zero, with every reason at once. */
    @Value.Check
    default void check() {
        Problems problems = Problems.none();
        problems.require(!name().isBlank(), SIZE, "name", "\"" + name() + "\"", "say what the opening is for");
        problems.require(width().isPositive(), SIZE, "width", width(), "be above 0 mm");
        problems.require(height().isPositive(), SIZE, "height", height(), "be above 0 mm");
        problems.throwIfErrors();
    }

    /**
     * Starts an opening; the builder asks for the parts in the order in which a person would say them.
     *
     * @return the first stage of the builder
     */
    static OpeningBuilderStages.BuildStart builder() {
        return OpeningBuilderStages.start();
    }
}
