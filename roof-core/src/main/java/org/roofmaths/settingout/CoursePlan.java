package org.roofmaths.settingout;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.roof.Ends;
import org.roofmaths.units.Direction;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Rounding;
import org.roofmaths.working.Figure;

/**
 * Everything that decides the courses of one face, play already settled. Without a unit it is a bare division: {@code lengths} are
 * then the distances to divide.
 */
record CoursePlan(
        Ends<Figure<Length>> lengths,
        @Nullable CoveringUnit unit,
        @Nullable Figure<Length> headlap,
        @Nullable Figure<Length> leastGauge,
        @Nullable Figure<Length> greatestGauge,
        Figure<Length> overhang,
        Direction overhangDirection,
        @Nullable Figure<Pitch> pitch,
        Figure<Length> topDistance,
        @Nullable Figure<Length> battenWidth,
        @Nullable Figure<Length> underEavesHoleToHead,
        Preference preference,
        Rounding<Length> rounding)
        implements Serializable {

    CoursePlan withOverhang(Figure<Length> other) {
        return new CoursePlan(
                lengths,
                unit,
                headlap,
                leastGauge,
                greatestGauge,
                other,
                overhangDirection,
                pitch,
                topDistance,
                battenWidth,
                underEavesHoleToHead,
                preference,
                rounding);
    }

    CoursePlan withTopDistance(Figure<Length> other) {
        return new CoursePlan(
                lengths,
                unit,
                headlap,
                leastGauge,
                greatestGauge,
                overhang,
                overhangDirection,
                pitch,
                other,
                battenWidth,
                underEavesHoleToHead,
                preference,
                rounding);
    }
}
