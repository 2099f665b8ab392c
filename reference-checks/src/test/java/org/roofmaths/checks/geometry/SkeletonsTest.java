package org.roofmaths.checks.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.roofmaths.problem.Attempt;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.roof.Roof;
import org.roofmaths.units.Pitch;

/** Roofs over the reference outlines and over real footprints, through the public interface only. */
class SkeletonsTest {
    /** The library keeps corners to the nanometre; the reference prints 1e-9 m. */
    private static final double HEIGHT_METRES = 4e-9;

    private static final double AREA_SHARE = 1e-8;

    @Test
    void areas_heights_and_lines_agree_with_the_reference_skeletons() throws IOException {
        List<String> wrong = new ArrayList<>();
        List<JsonNode> outlines = OutlineFile.read("data/skeletons/skeletons.jsonl");
        assertThat(outlines).hasSize(102);
        for (JsonNode outline : outlines) {
            String id = outline.get("id").asText();
            Attempt<Roof> roof = OutlineFile.roof(outline, Pitch.ofDegrees(35));
            if (!roof.hasValue()) {
                wrong.add(id + ": " + roof.problems().get(0).message());
                continue;
            }
            JsonNode totals = outline.get("totals");
            compare(
                    wrong,
                    id,
                    "plan area",
                    roof.orThrow().areaOnPlan().toSquareMetres(),
                    totals,
                    "plan_area",
                    AREA_SHARE);
            compare(
                    wrong,
                    id,
                    "slope area",
                    roof.orThrow().areaAlongSlope().toSquareMetres(),
                    totals,
                    "slope_area",
                    AREA_SHARE);
            double height = roof.orThrow().highestHeight().toMetres();
            if (Math.abs(height - totals.get("max_height").asDouble()) > HEIGHT_METRES) {
                wrong.add(id + ": height " + height + ", reference " + totals.get("max_height"));
            }
            if (!id.startsWith("degenerate-")) {
                lines(wrong, id, roof.orThrow(), totals, EdgeKind.VALLEY, "valley");
                lines(wrong, id, roof.orThrow(), totals, EdgeKind.EAVES, "eaves");
            }
        }
        assertThat(wrong).isEmpty();
    }

    private static void lines(List<String> wrong, String id, Roof roof, JsonNode totals, EdgeKind kind, String field) {
        compare(
                wrong,
                id,
                kind.toString(),
                roof.lengthOf(kind).toMetres(),
                totals,
                field,
                1e-7); // many short lines, each stored to 1 nm
    }

    private static void compare(
            List<String> wrong, String id, String what, double got, JsonNode totals, String field, double share) {
        double reference = totals.get(field).asDouble();
        if (Math.abs(got - reference) > share * Math.max(1, reference)) {
            wrong.add(id + ": " + what + " " + got + ", reference " + reference);
        }
    }

    @Test
    void every_real_footprint_carries_a_roof_whose_faces_cover_it() throws IOException {
        List<String> wrong = new ArrayList<>();
        List<JsonNode> outlines = OutlineFile.read("data/footprints-odbl/footprints.jsonl");
        assertThat(outlines).hasSize(1497);
        for (JsonNode outline : outlines) {
            Attempt<Roof> roof = OutlineFile.roof(outline, Pitch.ofDegrees(35));
            String id = outline.get("id").asText();
            if (!roof.hasValue()) {
                wrong.add(id + ": " + roof.problems().get(0).message());
                continue;
            }
            double area = ringArea(outline.get("outer"));
            for (JsonNode hole : outline.get("holes")) {
                area -= Math.abs(ringArea(hole));
            }
            double covered = roof.orThrow().areaOnPlan().toSquareMetres();
            // equal pitch: area along the slope = area on plan ÷ cos(35°)
            double sloped = covered / Math.cos(Math.toRadians(35));
            if (Math.abs(covered - area) > 1e-7 * area + 1e-7) {
                wrong.add(id + ": faces cover " + covered + " m² of " + area);
            } else if (Math.abs(roof.orThrow().areaAlongSlope().toSquareMetres() - sloped) > 1e-7 * sloped + 1e-7) {
                wrong.add(id + ": area along the slope " + roof.orThrow().areaAlongSlope() + ", wanted " + sloped);
            }
        }
        assertThat(wrong).isEmpty();
    }

    private static double ringArea(JsonNode ring) {
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            JsonNode a = ring.get(i);
            JsonNode b = ring.get((i + 1) % ring.size());
            twice += a.get(0).asDouble() * b.get(1).asDouble()
                    - b.get(0).asDouble() * a.get(1).asDouble();
        }
        return twice / 2;
    }
}
