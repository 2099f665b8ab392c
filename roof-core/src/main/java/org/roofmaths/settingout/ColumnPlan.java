package org.roofmaths.settingout;

import java.io.Serializable;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.roof.End;
import org.roofmaths.roof.Ends;
import org.roofmaths.units.Length;
import org.roofmaths.units.Rounding;
import org.roofmaths.working.Figure;

/** Everything that decides the columns of one face: the width between the wall lines, at the eaves and at the top. */
record ColumnPlan(
        Figure<Length> wallAtEaves,
        Figure<Length> wallAtTop,
        CoveringUnit unit,
        Ends<FaceEnd> ends,
        Figure<Length> smallestCut,
        End cutEnd,
        Preference preference,
        Rounding<Length> rounding)
        implements Serializable {

    boolean isTapered() {
        return !wallAtEaves.value().equals(wallAtTop.value());
    }

    Length wantedWidth(Length wall) {
        return wall.plus(ends.left().wantedReach()).plus(ends.right().wantedReach());
    }

    Length leastWidth(Length wall) {
        return wall.plus(ends.left().leastReach()).plus(ends.right().leastReach());
    }

    Length greatestWidth(Length wall) {
        return wall.plus(ends.left().greatestReach()).plus(ends.right().greatestReach());
    }

    /** Shares what a covered width has over the wanted one between the ends, half and half as far as there is room. */
    Ends<Length> reach(Length wall, Length covered) {
        Length over = covered.minus(wantedWidth(wall));
        Length half = over.dividedBy(2);
        Length left = within(ends.left(), ends.left().wantedReach().plus(half));
        Length right = within(ends.right(), covered.minus(wall).minus(left));
        return Ends.of(covered.minus(wall).minus(right), right);
    }

    private static Length within(FaceEnd end, Length reach) {
        return reach.max(end.leastReach()).min(end.greatestReach());
    }
}
