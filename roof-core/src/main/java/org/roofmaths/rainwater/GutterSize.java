package org.roofmaths.rainwater;

import java.io.Serializable;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;

/**
 * A row of a table that sizes gutters by the area they take: the gutter, the greatest effective area, and the outlet that goes with it.
 *
 * @param name what the row calls the gutter, such as {@code 100 mm half-round}
 * @param greatestArea the greatest effective area that may drain to it
 * @param outlet the diameter of the outlet that the row asks for
 * @since 0.1
 */
public record GutterSize(String name, Figure<Area> greatestArea, Figure<Length> outlet) implements Serializable {
    private static final long serialVersionUID = 1L;

    /** No row of the table takes the area. */
    public static final ProblemCode BEYOND_THE_TABLE = ProblemCode.of(
            "rainwater.beyond-the-table",
            "Set more outlets so that each stretch takes less, or have the gutter designed.");

    /** Keeps the parts. */
    public GutterSize {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(greatestArea, "greatestArea");
        Objects.requireNonNull(outlet, "outlet");
    }

    /**
     * Returns the smallest gutter of a table that takes an area.
     *
     * @param table the rows, in any order; one or more
     * @param area the effective area; where the outlet is not at an end, the larger of the two sides
     * @return the row, or a finding that says by how much the area is beyond the table
     * @throws IllegalArgumentException if the table is empty
     */
    public static Attempt<GutterSize> smallest(List<GutterSize> table, Area area) {
        if (table.isEmpty()) {
            throw new IllegalArgumentException("table must have one row or more, but has none");
        }
        List<GutterSize> smallFirst = table.stream()
                .sorted(Comparator.comparing((GutterSize size) -> size.greatestArea.value()))
                .toList();
        return smallFirst.stream()
                .filter(size -> !area.isGreaterThan(size.greatestArea.value()))
                .findFirst()
                .map(Attempt::of)
                .orElseGet(() -> Attempt.failed(List.of(beyond(smallFirst.get(smallFirst.size() - 1), area))));
    }

    private static Problem beyond(GutterSize largest, Area area) {
        Area greatest = largest.greatestArea.value();
        int stretches = (int) StrictMath.ceil(area.toSi() / greatest.toSi());
        return Problem.finding(
                BEYOND_THE_TABLE,
                "gutter",
                area,
                greatest,
                "an effective area of " + area + " is beyond the largest gutter of the table, " + largest.name + " for "
                        + greatest,
                List.of(Mend.of(
                        "outlets",
                        "at least " + stretches + " stretches of equal area",
                        "at most " + greatest + " to each")));
    }
}
