package org.roofmaths.checks.units;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Pressure;
import org.roofmaths.units.Rounding;

/** The figures of {@code data/units/cases.csv}, sources named there, put to the library row by row. */
class PublishedUnitsTest {
    private static final Path CASES = Path.of("data", "units", "cases.csv");

    /** The rows that the library does not answer, and why. */
    private static final Map<String, String> CANNOT_DECIDE = new TreeMap<>(Map.of(
            "GEO-016", "no pitch is made from rafter over span",
            "GEO-021", "a level face has no pitch",
            "GEO-272", "no area is made from square yards",
            "GEO-275", "there is no density",
            "GEO-282", "no angle is made from gons"));

    /** Numbers by the names that the rows use, lengths in inches unless the name says otherwise. */
    private static final class Answers extends LinkedHashMap<String, Object> {
        private static final long serialVersionUID = 1L;

        Answers with(String name, Object value) {
            put(name, value);
            return this;
        }

        Answers withPitch(Pitch pitch) {
            Length run = Length.ofMetres(1);
            return with("angle_deg", pitch.toDegrees())
                    .with("percent", pitch.toPercent())
                    .with("rise_over_span", pitch.toRiseOverSpan().toDouble())
                    .with("one_in_n", pitch.toOneIn())
                    .with("rise_per_12", pitch.toRiseIn12())
                    .with("slope_factor", pitch.slopeFactor().toDouble())
                    .with("rise_m_per_m_run", pitch.riseOver(run).toMetres())
                    .with("length_m_per_m_run", pitch.slopeOver(run).toMetres());
        }

        /** Feet, inches and a fraction in lowest terms, by the rounding and the units of the library. */
        Answers withNearest(Length length, int denominator) {
            Length nearest =
                    Rounding.toFractionOfInch(denominator).apply(length).abs();
            long feet = Length.ofDecimalFeet(1).timesIn(nearest).count();
            Length belowAFoot = nearest.minus(Length.ofDecimalFeet(1).times(feet));
            long inches = Length.ofDecimalInches(1).timesIn(belowAFoot).count();
            Length part = belowAFoot.minus(Length.ofInches(inches, 0, 1));
            int lowest = 1;
            while (Length.ofInches(0, 1, 64)
                    .times(64 / lowest)
                    .timesIn(part)
                    .rest()
                    .isPositive()) {
                lowest *= 2;
            }
            return with("nearest_ft", (double) feet)
                    .with("nearest_in", (double) inches)
                    .with("nearest_numerator", part.toInches() * lowest)
                    .with("nearest_denominator", (double) lowest);
        }
    }

    private static Map<String, String> parsed(String keysAndValues) {
        Map<String, String> map = new LinkedHashMap<>();
        for (String part : (Iterable<String>) Stream.of(keysAndValues.split("; ", -1))::iterator) {
            int equals = part.indexOf('=');
            if (!part.startsWith("note=")) {
                map.put(part.substring(0, equals), part.substring(equals + 1));
            }
        }
        return map;
    }

    private static double number(Map<String, String> given, String key) {
        return Double.parseDouble(given.get(key));
    }

    private static int whole(Map<String, String> given, String key) {
        return Integer.parseInt(given.getOrDefault(key, "0"));
    }

    private static Length feetAndInches(Map<String, String> given, String side) {
        if (given.containsKey(side + "_twelfths")) {
            return Length.ofFeetAndInches(whole(given, side + "_ft"), whole(given, side + "_in"), 0, 1)
                    .plus(Length.ofDecimalInches(number(given, side + "_twelfths") / 12));
        }
        return Length.ofInches(
                        whole(given, side + "_in"),
                        whole(given, side + "_numerator"),
                        Integer.parseInt(given.getOrDefault(side + "_denominator", "1")))
                .plus(Length.ofDecimalFeet(whole(given, side + "_ft")));
    }

    private static Answers answers(Map<String, String> given) {
        Answers answers = new Answers();
        switch (given.keySet().iterator().next()) {
            case "rise_per_12" -> answers.withPitch(Pitch.ofRiseIn12(number(given, "rise_per_12")));
            case "pitch_deg" -> answers.withPitch(Pitch.ofDegrees(number(given, "pitch_deg")));
            case "one_in_n" -> {
                answers.withPitch(Pitch.ofOneIn(number(given, "one_in_n")));
                if (given.containsKey("other_angle_deg")) {
                    answers.with(
                            "one_in_n_of_other_angle",
                            Pitch.ofDegrees(number(given, "other_angle_deg")).toOneIn());
                }
            }
            case "span_ft" ->
                answers.withPitch(Pitch.ofRiseOverSpan(
                        Length.ofDecimalFeet(number(given, "rise_ft")),
                        Length.ofDecimalFeet(number(given, "span_ft"))));
            case "decimal_in" -> {
                Length length = Length.ofDecimalInches(number(given, "decimal_in"));
                answers.with("sixteenths", length.toInches() * 16).withNearest(length, whole(given, "denominator"));
                if (given.containsKey("true_in")) {
                    answers.with(
                            "true_nearest_in",
                            Rounding.toFractionOfInch(whole(given, "denominator"))
                                    .apply(Length.ofDecimalInches(number(given, "true_in")))
                                    .toInches());
                }
            }
            case "count" -> {
                Length product =
                        Length.ofDecimalInches(number(given, "unit_in")).times(number(given, "count"));
                answers.with("product_in", product.toInches()).withNearest(product, whole(given, "denominator"));
            }
            case "operation" -> {
                Length result = result(given);
                answers.with("total_in", result.toInches())
                        .with("sum_ft", Math.floor(result.toFeet()))
                        .with("sum_in", result.toInches() % 12)
                        .with("sign", result.isNegative() ? "negative" : "positive")
                        .withNearest(result, 16);
            }
            case "a_ft" -> {
                Length a = feetAndInches(given, "a");
                answers.with("decimal_ft", a.toFeet())
                        .with("sum_in", a.plus(feetAndInches(given, "b")).toInches());
            }
            case "decimal_ft" ->
                answers.with(
                        "total_in",
                        Length.ofDecimalFeet(number(given, "decimal_ft")).toInches());
            case "length_mm" -> {
                Length length = Length.ofMillimetres(number(given, "length_mm"));
                answers.with("total_in", length.toInches()).withNearest(length, whole(given, "denominator"));
            }
            case "length_ft" ->
                answers.with(
                        "length_m",
                        Length.ofDecimalFeet(number(given, "length_ft")).toMetres());
            case "length_in" ->
                answers.with(
                        "length_mm",
                        Length.ofDecimalInches(number(given, "length_in")).toMillimetres());
            case "area_ft2" -> {
                Area area = Area.ofSquareFeet(number(given, "area_ft2"));
                Area square = Area.ofSquareFeet(100);
                answers.with("area_m2", area.toSquareMetres())
                        .with("squares", area.dividedBy(square).toDouble())
                        .with(
                                "whole_squares",
                                Rounding.upToMultipleOf(square)
                                        .apply(area)
                                        .dividedBy(square)
                                        .toDouble());
            }
            case "squares" -> {
                Area area = Area.ofSquareFeet(100 * number(given, "squares"));
                answers.with("area_ft2", area.toSquareFeet()).with("area_m2", area.toSquareMetres());
            }
            case "mass_lb" ->
                answers.with("mass_kg", Mass.ofPounds(number(given, "mass_lb")).toKilograms());
            case "angle_deg" ->
                answers.with(
                        "angle_rad", Angle.ofDegrees(number(given, "angle_deg")).toRadians());
            case "angle_whole_deg" ->
                answers.with(
                                "angle_deg",
                                Angle.ofDegreesMinutesSeconds(
                                                whole(given, "angle_whole_deg"),
                                                whole(given, "angle_min"),
                                                number(given, "angle_s"))
                                        .toDegrees())
                        .with("atan_half_deg", Pitch.ofOneIn(2).toDegrees());
            case "pressure_lbf_per_ft2" ->
                answers.with(
                        "pressure_pa",
                        Pressure.ofPoundsForcePerSquareFoot(number(given, "pressure_lbf_per_ft2"))
                                .toPascals());
            default -> throw new AssertionError("no answer for " + given);
        }
        return answers;
    }

    private static Length result(Map<String, String> given) {
        Length a = feetAndInches(given, "a");
        DoubleFunction<Length> times = a::times;
        return switch (given.get("operation")) {
            case "add" -> a.plus(feetAndInches(given, "b"));
            case "subtract" -> a.minus(feetAndInches(given, "b"));
            case "multiply" -> times.apply(number(given, "count"));
            default -> throw new AssertionError(given.get("operation"));
        };
    }

    private static boolean agrees(String expected, Object got, String tolerance) {
        if (!(got instanceof Double number)) {
            return expected.equals(got);
        }
        double wanted = Double.parseDouble(expected);
        double allowed = tolerance.equals("exact")
                ? 0
                : Double.parseDouble(tolerance.substring("rel ".length())) * (wanted == 0 ? 1 : Math.abs(wanted));
        return Math.abs(number - wanted) <= allowed;
    }

    @Test
    void every_published_figure_agrees_or_is_listed_as_not_decided() throws IOException {
        Map<String, String> differ = new TreeMap<>();
        int agree = 0;
        int decided = 0;
        try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(CASES, StandardCharsets.UTF_8)) {
            for (NamedCsvRecord row : rows) {
                if (CANNOT_DECIDE.containsKey(row.getField("id"))) {
                    continue;
                }
                decided++;
                Answers answers = answers(parsed(row.getField("given")));
                for (Map.Entry<String, String> expected :
                        parsed(row.getField("expected")).entrySet()) {
                    Object got = answers.get(expected.getKey());
                    if (agrees(expected.getValue(), got, row.getField("tolerance"))) {
                        agree++;
                    } else {
                        differ.put(row.getField("id") + " " + expected, "library: " + got);
                    }
                }
            }
        }
        assertThat(differ).isEmpty();
        assertThat(decided).isEqualTo(43 - CANNOT_DECIDE.size());
        // Every row has at least one figure.
        assertThat(agree).isGreaterThan(decided);
    }
}
