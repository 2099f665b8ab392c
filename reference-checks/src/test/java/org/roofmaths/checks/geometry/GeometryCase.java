package org.roofmaths.checks.geometry;

import java.util.LinkedHashMap;
import java.util.Map;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Ratio;

/** One row of the geometry cases: what is given, what is expected, and how near it must come. */
final class GeometryCase {
    final String id;
    final String topic;
    final String tolerance;
    private final Map<String, String> given;
    private final Map<String, String> expected;

    GeometryCase(String id, String topic, String given, String expected, String tolerance) {
        this.id = id;
        this.topic = topic;
        this.given = pairs(given);
        this.expected = pairs(expected);
        this.tolerance = tolerance;
    }

    private static Map<String, String> pairs(String text) {
        Map<String, String> pairs = new LinkedHashMap<>();
        int note = text.indexOf("note=");
        String without = note < 0 ? text : text.substring(0, note);
        for (String pair : without.split(";", -1)) {
            int at = pair.indexOf('=');
            if (at > 0) {
                pairs.put(pair.substring(0, at).strip(), pair.substring(at + 1).strip());
            }
        }
        return pairs;
    }

    Map<String, String> expected() {
        return expected;
    }

    boolean has(String key) {
        return given.containsKey(key);
    }

    String word(String key) {
        return given.getOrDefault(key, "");
    }

    double number(String key) {
        return Double.parseDouble(given.get(key));
    }

    /** A given length by its name without the unit, or null. */
    Length length(String name) {
        for (Map.Entry<String, String> entry : given.entrySet()) {
            if (entry.getKey().startsWith(name + "_")) {
                String unit = entry.getKey().substring(name.length() + 1);
                double number = Double.parseDouble(entry.getValue());
                switch (unit) {
                    case "mm" -> {
                        return Length.ofMillimetres(number);
                    }
                    case "cm" -> {
                        return Length.ofCentimetres(number);
                    }
                    case "m" -> {
                        return Length.ofMetres(number);
                    }
                    case "in" -> {
                        return Length.ofDecimalInches(number);
                    }
                    case "ft" -> {
                        return Length.ofDecimalFeet(number);
                    }
                    case "yd" -> {
                        return Length.ofYards(number);
                    }
                    default -> {
                        // another unit than of length: not the field asked for
                    }
                }
            }
        }
        return null;
    }

    /** The pitch that the row gives, in whichever way it does. */
    Pitch pitch() {
        return pitch("");
    }

    Pitch pitch(String which) {
        if (has("pitch" + which + "_deg")) {
            return Pitch.ofDegrees(number("pitch" + which + "_deg"));
        }
        if (has("rise_per_12" + which)) {
            return Pitch.ofRiseIn12(number("rise_per_12" + which));
        }
        if (has("one_in_n")) {
            return Pitch.ofOneIn(number("one_in_n"));
        }
        if (has("rise_over_span")) {
            return Pitch.ofPercent(200 * number("rise_over_span"));
        }
        if (length("span") != null && length("rise") != null) {
            return Pitch.ofRiseOverSpan(length("rise"), length("span"));
        }
        if (length("unit_rise") != null) {
            return Pitch.ofRiseAndRun(length("unit_rise"), length("unit_run"));
        }
        if (length("rise") != null && length("run") != null) {
            return Pitch.ofRiseAndRun(length("rise"), length("run"));
        }
        return null;
    }

    /** The number in the unit that the end of an expected key names. */
    static double in(String key, Object value) {
        String unit = key.substring(key.lastIndexOf('_') + 1);
        if (value instanceof Length length) {
            return switch (unit) {
                case "mm" -> length.toMillimetres();
                case "cm" -> length.toCentimetres();
                case "m" -> length.toMetres();
                case "in" -> length.toInches();
                case "ft" -> length.toFeet();
                case "yd" -> length.toYards();
                default -> throw new IllegalArgumentException(key);
            };
        }
        if (value instanceof Area area) {
            double yard = 0.9144 * 0.9144;
            return switch (unit) {
                case "m2" -> area.toSquareMetres();
                case "cm2" -> area.toSquareMetres() * 1e4;
                case "ft2" -> area.toSquareFeet();
                case "in2" -> area.toSquareFeet() * 144;
                case "yd2" -> area.toSquareMetres() / yard;
                default -> throw new IllegalArgumentException(key);
            };
        }
        if (value instanceof Angle angle) {
            return angle.toDegrees();
        }
        if (value instanceof Pitch pitch) {
            return pitch.toDegrees();
        }
        if (value instanceof Ratio ratio) {
            return ratio.toDouble();
        }
        return ((Number) value).doubleValue();
    }

    /**
     * How far a number may lie off: what the row says, and beside it what storage and solver leave. A length holds to a
     * nanometre, of which a few go into a sum; an angle between solved corners to a few nanometres in a metre.
     */
    double margin(String key, double wanted, Object value) {
        double said = tolerance.startsWith("rel ") ? Math.abs(wanted) * Double.parseDouble(tolerance.substring(4)) : 0;
        if (value instanceof Length) {
            return said + in(key, Length.ofNanometres(4));
        }
        if (value instanceof Area) {
            return said + Math.abs(wanted) * 1e-8;
        }
        return said + 1e-8;
    }
}
