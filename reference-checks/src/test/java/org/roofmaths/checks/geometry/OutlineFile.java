package org.roofmaths.checks.geometry;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.roofmaths.problem.Attempt;
import org.roofmaths.roof.EdgeTreatment;
import org.roofmaths.roof.Roof;
import org.roofmaths.roof.RoofPlan;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;

/** Reads outlines, one JSON object a line, and raises roofs over them. */
final class OutlineFile {
    private static final ObjectMapper JSON = new ObjectMapper();

    private OutlineFile() {}

    static List<JsonNode> read(String path) throws IOException {
        List<JsonNode> outlines = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of(path))) {
            outlines.add(JSON.readTree(line));
        }
        return outlines;
    }

    /** Raises a roof with the pitches of the file, or with one pitch for all sides where it has none; side names are ring:edge. */
    static Attempt<Roof> roof(JsonNode outline, Pitch otherwise) {
        RoofPlan.Builder plan = RoofPlan.builder();
        List<JsonNode> rings = new ArrayList<>();
        rings.add(outline.get("outer"));
        outline.get("holes").forEach(rings::add);
        for (int ring = 0; ring < rings.size(); ring++) {
            if (ring > 0) {
                plan.courtyard();
            }
            for (int edge = 0; edge < rings.get(ring).size(); edge++) {
                JsonNode corner = rings.get(ring).get(edge);
                plan.corner(
                        ring + ":" + edge,
                        Length.ofMetres(corner.get(0).asDouble()),
                        Length.ofMetres(corner.get(1).asDouble()));
                plan.side(ring + ":" + edge, treatment(outline, ring, edge, otherwise));
            }
        }
        Attempt<RoofPlan> built = plan.attempt();
        return built.hasValue() ? Roof.attempt(built.orThrow()) : Attempt.failed(built.problems());
    }

    private static EdgeTreatment treatment(JsonNode outline, int ring, int edge, Pitch otherwise) {
        if (!outline.has("pitches_deg")) {
            return EdgeTreatment.eaves(otherwise);
        }
        double degrees = outline.get("pitches_deg").get(ring).get(edge).asDouble();
        return degrees == 90 ? EdgeTreatment.gable() : EdgeTreatment.eaves(Pitch.ofDegrees(degrees));
    }
}
