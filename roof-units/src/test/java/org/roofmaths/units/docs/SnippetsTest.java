package org.roofmaths.units.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.roofmaths.units.Quantities.degrees;
import static org.roofmaths.units.Quantities.inches;
import static org.roofmaths.units.Quantities.length;
import static org.roofmaths.units.Quantities.level;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;
import static org.roofmaths.units.Quantities.squareToSlope;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.roofmaths.units.Angle;
import org.roofmaths.units.AngleFormat;
import org.roofmaths.units.Area;
import org.roofmaths.units.AreaPerLength;
import org.roofmaths.units.ArealMass;
import org.roofmaths.units.Direction;
import org.roofmaths.units.FlowRate;
import org.roofmaths.units.Length;
import org.roofmaths.units.LengthFormat;
import org.roofmaths.units.Mass;
import org.roofmaths.units.Offset;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.PitchFormat;
import org.roofmaths.units.Pressure;
import org.roofmaths.units.QuantityParseException;
import org.roofmaths.units.RainfallIntensity;
import org.roofmaths.units.Range;
import org.roofmaths.units.Ratio;
import org.roofmaths.units.Rounding;
import org.roofmaths.units.Tolerance;

/**
 * Every line of a snippet in the comments of this package stands here too, where it is compiled and its answer compared.
 * The last test holds the two together.
 */
class SnippetsTest {
    private static final Path SOURCES = Path.of("src", "main", "java", "org", "roofmaths", "units");
    private static final Path THIS =
            Path.of("src", "test", "java", "org", "roofmaths", "units", "docs", "SnippetsTest.java");

    private static void prints(String answer, Supplier<Object> line) {
        String printed;
        try {
            printed = String.valueOf(line.get());
        } catch (QuantityParseException e) {
            printed = e.getMessage();
        }
        assertThat(printed).isEqualTo(answer);
    }

    @Test
    void the_tour_of_the_package() {
        prints("0.3 mm", () -> mm(0.1).plus(mm(0.2)));
        prints("344.4875 mm", () -> inches(13, 9, 16));
        prints("12.42 m²", () -> metres(4.6).times(metres(2.7)));
        prints("12 times, rest 12 mm", () -> mm(325).timesIn(mm(3912)));

        prints("2857.5 mm", () -> length("9' 4 1/2\""));
        prints("5200 mm", () -> length("5.2 m"));
        prints("\"5200\": unit must be mm, cm, m, in, ft or yd, but the text ended (at index 4)", () -> length("5200"));

        prints("30.25643716352927°", () -> pitch("7 in 12"));
        prints("40.0", () -> pitch("1 in 2.5").toPercent());
        prints("4394.78852 mm", () -> pitch("35°").slopeOver(mm(3600)));
        prints("\"95°\": pitch must be above 0° and below 90°, but was 95° (at index 0)", () -> pitch("95°"));

        prints("61.038729 mm", () -> level(mm(50)).to(Direction.ON_SLOPE, pitch("35°")));
        prints("58.743328 mm", () -> squareToSlope(mm(45)).to(Direction.PLUMB, pitch("40°")));

        prints("[30°..35°)", () -> Range.closedOpen(pitch("30°"), pitch("35°")));
        prints("true", () -> mm(300.5).isWithin(Tolerance.ofMillimetres(0.5), mm(300)));
        prints("10", () -> mm(300).timesToCover(mm(3000.000001)));

        Rounding<Length> whole = Rounding.toNearest(mm(1));
        prints("to the nearest 1 mm", () -> whole);
        prints("344 mm", () -> whole.apply(inches(13, 9, 16)));
        prints(
                "[325 mm, 325 mm, 324 mm, 325 mm]",
                () -> whole.running(List.of(mm(324.75), mm(324.75), mm(324.75), mm(324.75))));

        prints("9 ft 4 1/2 in", () -> LengthFormat.feetAndInches(16).format(mm(2857.5)));
        prints("4,39 m", () -> LengthFormat.metres(2).withLocale(Locale.GERMANY).format(metres(4.39479)));
        prints("22° 30' 15\"", () -> AngleFormat.degreesMinutesSeconds(0).format(degrees(22.504166)));
        prints("8.40 in 12", () -> PitchFormat.riseIn12(2).format(pitch("35°")));
    }

    @Test
    void the_examples_of_the_classes() {
        prints("0.3 mm", () -> Length.ofMillimetres(0.1).plus(Length.ofMillimetres(0.2)));
        prints("344.4875 mm", () -> Length.ofInches(13, 9, 16));
        prints("12.42 m²", () -> Length.ofMetres(4.6).times(Length.ofMetres(2.7)));
        prints("0.25", () -> Ratio.ofPercent(25));
        prints("75.0", () -> Length.ofMetres(3).dividedBy(Length.ofMetres(4)).toPercent());
        prints("2428.8 kg", () -> Mass.ofKilograms(4.4).times(552));
        prints("436 kg", () -> ArealMass.ofKilogramsPerSquareMetre(43.6).times(Area.ofSquareMetres(10)));
        prints("600 Pa", () -> Pressure.parse("0.6 kN/m²"));
        prints("1.25 l/s", () -> FlowRate.ofLitresPerMinute(75));
        prints("2 l/s", () -> RainfallIntensity.ofMillimetresPerHour(75).times(Area.ofSquareMetres(96)));
        prints("10000 mm²/m", () -> AreaPerLength.ofGap(Length.ofMillimetres(10)));
        prints("22.504166666666666°", () -> Angle.ofDegreesMinutesSeconds(22, 30, 15));
        prints("330°", () -> Angle.ofDegrees(-30).normalised());
        prints("4394.78852 mm", () -> Pitch.ofDegrees(35).slopeOver(Length.ofMillimetres(3600)));
        prints("58.33333333333335", () -> Pitch.parse("7 in 12").toPercent());
        prints(
                "61.038729 mm",
                () -> Offset.level(Length.ofMillimetres(50)).to(Direction.ON_SLOPE, Pitch.ofDegrees(35)));
        prints(
                "58.743328 mm",
                () -> Offset.squareToSlope(Length.ofMillimetres(45)).to(Direction.PLUMB, Pitch.ofDegrees(40)));
        prints("344 mm", () -> Rounding.toNearest(Length.ofMillimetres(1)).apply(Length.ofMillimetres(344.4875)));
        prints("65 mm", () -> Rounding.upToMultipleOf(Length.ofMillimetres(5)).apply(Length.ofMillimetres(61.038729)));
        prints("4.395 m", () -> LengthFormat.metres(3).format(Length.ofMillimetres(4394.78852)));
        prints("9 ft 4 1/2 in", () -> LengthFormat.feetAndInches(16).format(Length.ofMillimetres(2857.5)));
        prints("36.87°", () -> AngleFormat.degrees(2).format(Angle.ofDegrees(36.8699)));
        prints("22° 30' 15\"", () -> AngleFormat.degreesMinutesSeconds(0).format(Angle.ofDegrees(22.504166)));
        prints("30.3°", () -> PitchFormat.degrees(1).format(Pitch.ofRiseIn12(7)));
        prints("8.40 in 12", () -> PitchFormat.riseIn12(2).format(Pitch.ofDegrees(35)));
    }

    @Test
    void every_line_of_a_snippet_in_the_comments_is_among_the_lines_above() throws IOException {
        String here = withoutSpaces(Files.readString(THIS, StandardCharsets.UTF_8));
        List<String> missing = new ArrayList<>();
        int lines = 0;
        try (Stream<Path> sources = Files.list(SOURCES)) {
            for (Path source : sources.sorted().toList()) {
                for (String line : snippetLines(Files.readString(source, StandardCharsets.UTF_8))) {
                    lines++;
                    if (!here.contains(withoutSpaces(asTestLine(line)))) {
                        missing.add(source.getFileName() + ": " + line);
                    }
                }
            }
        }
        assertThat(missing).isEmpty();
        // If the pattern stopped finding snippets, nothing would be missing.
        assertThat(lines).isGreaterThan(40);
    }

    private static List<String> snippetLines(String source) {
        List<String> lines = new ArrayList<>();
        Matcher snippet = Pattern.compile("<pre>\\{@code\n(.*?)\n \\* }</pre>", Pattern.DOTALL)
                .matcher(source);
        while (snippet.find()) {
            snippet.group(1)
                    .lines()
                    .map(line -> line.replaceFirst("^ \\* ?", "").strip())
                    .filter(line -> !line.isEmpty())
                    .forEach(lines::add);
        }
        return lines;
    }

    /** The formatter may break a long line. */
    private static String withoutSpaces(String text) {
        return text.replaceAll("\\s+", "");
    }

    /** A line is a statement that ends in a semicolon, or an expression and what it prints behind two slashes. */
    private static String asTestLine(String line) {
        if (line.endsWith(";")) {
            return line;
        }
        String[] parts = line.split("\\s+// ", 2);
        assertThat(parts).as("expression and answer in: %s", line).hasSize(2);
        String answer = parts[1].replace("\\", "\\\\").replace("\"", "\\\"");
        return "prints(\"" + answer + "\", () -> " + parts[0] + ");";
    }
}
