package org.roofmaths.drawing;

import java.io.Serializable;
import org.immutables.value.Value;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.settingout.EavesSection;
import org.roofmaths.units.Length;

/**
 * The parts of the eaves that a layout does not know and a section shows. The builder asks for them in the order below.
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public interface EavesParts extends Serializable {
    /** Returns the section that gives the fascia its height. */
    EavesSection section();

    /** Returns the depth of the rafter, square to the slope. */
    Length rafterDepth();

    /** Returns the level distance from the outer face of the wall plate to the outer face of the fascia. */
    Length eavesOverhang();

    /** Returns the width of the wall plate. */
    Length plateWidth();

    /** Returns the thickness of the fascia board. */
    Length fasciaThickness();

    /** Returns the height of the fascia board, plumb. */
    Length fasciaDepth();

    /** Returns the width of the gutter, drawn as half a circle. */
    Length gutterWidth();

    /** Starts the parts; the builder asks for each in turn. */
    static EavesPartsBuilderStages.BuildStart builder() {
        return EavesPartsBuilderStages.start();
    }
}
