package org.roofmaths.order;

import java.io.Serializable;
import org.immutables.value.Value;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Figure;

/**
 * A count of units that is to be held against the area of its face.
 *
 * <p>The builder asks for the parts in this order: courses, units in a course, gauge got, cover got, slope length, width, area. Figures are
 * plain values by {@link Figure#given}, or the worked figures of a layout.
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public interface CountToCheck extends Serializable {

    /** Returns the number of courses that show a whole gauge; an under-eaves course lies under them and is not among them. */
    Figure<? extends Number> courses();

    /** Returns the units in a course, a half unit counted as a half and a unit-and-a-half as one and a half: 17.5. */
    Figure<Ratio> unitsInCourse();

    /** Returns the gauge got, not the greatest one. */
    Figure<Length> gauge();

    /** Returns the width that one unit covers as laid. */
    Figure<Length> cover();

    /** Returns the length of the face up its slope. */
    Figure<Length> slopeLength();

    /** Returns the width of the face along its eaves. */
    Figure<Length> width();

    /** Returns the area of the face along its slope; that of a rectangle is slope length times width. */
    Figure<Area> area();

    /** Starts a count to check; the builder asks for each part in turn. */
    static CountToCheckBuilderStages.BuildStart builder() {
        return CountToCheckBuilderStages.start();
    }
}
