package org.roofmaths.checks.hand;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.roofmaths.order.OrderLine;
import org.roofmaths.roof.Roof;
import org.roofmaths.roof.Roofs;
import org.roofmaths.rules.Check;
import org.roofmaths.rules.Rules;
import org.roofmaths.rules.Situation;
import org.roofmaths.rules.Subject;
import org.roofmaths.sheet.JobRoof;
import org.roofmaths.sheet.SheetCheck;
import org.roofmaths.sheet.SheetItem;
import org.roofmaths.sheet.SheetLine;
import org.roofmaths.sheet.SheetSection;
import org.roofmaths.sheet.SheetTable;
import org.roofmaths.sheet.SiteSheet;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Area;
import org.roofmaths.units.ArealMass;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Ratio;

/** Reads numbers off a site sheet by label, table and check, in the units of the hand pages, and keeps them by the id of a row. */
final class SheetProbes {
    private final SiteSheet sheet;
    private final String job;
    private final Map<String, Supplier<Object>> probes = new LinkedHashMap<>();

    SheetProbes(String job, SiteSheet sheet) {
        this.job = job;
        this.sheet = sheet;
    }

    Map<String, Supplier<Object>> all() {
        return probes;
    }

    SheetProbes probe(String id, Supplier<Object> value) {
        if (probes.put(job + "-" + id, value) != null) {
            throw new IllegalStateException("two probes for " + id);
        }
        return this;
    }

    /** A row that stands as a line of the sheet. */
    SheetProbes line(String id, String label) {
        return probe(id, () -> figure(label));
    }

    /** Rows of a family, such as marks: the id of each is the start with a number of two digits. */
    SheetProbes cells(String start, int first, String table, int column) {
        List<List<String>> rows = table(table).rows();
        for (int i = 0; i < rows.size(); i++) {
            String cell = rows.get(i).get(column);
            probe(start + two(first + i), () -> number(cell));
        }
        return this;
    }

    static String two(int number) {
        return number < 10 ? "0" + number : Integer.toString(number);
    }

    Object figure(String label) {
        for (SheetSection section : sheet.sections()) {
            for (SheetItem item : section.items()) {
                if (item instanceof SheetLine line && line.label().equals(label)) {
                    return plain(line.figure().value());
                }
            }
        }
        throw new IllegalStateException("no line \"" + label + "\"");
    }

    double value(String label) {
        return ((BigDecimal) figure(label)).doubleValue();
    }

    SheetTable table(String start) {
        return sheet.sections().stream()
                .flatMap(section -> section.items().stream())
                .filter(item ->
                        item instanceof SheetTable table && table.title().startsWith(start))
                .map(SheetTable.class::cast)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no table \"" + start + "\""));
    }

    String column(String table, int column) {
        return table(table).rows().stream()
                .map(row -> number(row.get(column)).toString())
                .collect(Collectors.joining("; "));
    }

    /** The check of a label against an edition. */
    Check<?> check(String label, String edition) {
        return sheet.sections().stream()
                .flatMap(section -> section.items().stream())
                .filter(item -> item instanceof SheetCheck check
                        && check.label().equals(label)
                        && check.check()
                                .toTree()
                                .getOrDefault("edition", check.check().toText())
                                .toString()
                                .contains(edition))
                .map(item -> ((SheetCheck) item).check())
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no check \"" + label + "\" against " + edition));
    }

    SheetProbes asked(String id, String label, String edition) {
        return probe(id, () -> plain(check(label, edition).asked().orElseThrow().value()));
    }

    SheetProbes margin(String id, String label, String edition) {
        return probe(id, () -> plain(check(label, edition).margin().orElseThrow()));
    }

    SheetProbes marginPercent(String id, String label, String edition) {
        return probe(
                id,
                () -> BigDecimal.valueOf(check(label, edition).marginPercent().orElseThrow()));
    }

    SheetProbes outcome(String id, String label, String edition) {
        return probe(id, () -> check(label, edition).outcome().name());
    }

    /** A figure of a document, asked of the rules themselves. */
    <V> SheetProbes rule(String id, String edition, Subject<V> subject, Situation situation, Function<V, Object> read) {
        String[] parts = edition.split("/", -1);
        return probe(
                id,
                () -> plain(read.apply(Rules.of("gb")
                        .edition(parts[0], parts[1])
                        .find(subject, situation)
                        .orThrow()
                        .value())));
    }

    <V> SheetProbes rule(String id, String edition, Subject<V> subject, Situation situation) {
        return rule(id, edition, subject, situation, value -> value);
    }

    /** The roof of the job, built by its own definition. */
    Roof roof() {
        JobRoof r = sheet.job().roof();
        return r.kind() == JobRoof.Kind.LEAN_TO
                ? Roofs.leanTo()
                        .wallLength(r.along())
                        .projection(r.across())
                        .slope(r.slope())
                        .eavesOverhang(r.eavesOverhang())
                        .left(r.left())
                        .right(r.right())
                        .build()
                : Roofs.duoPitch()
                        .length(r.along())
                        .span(r.across())
                        .slope(r.slope())
                        .eavesOverhang(r.eavesOverhang())
                        .left(r.left())
                        .right(r.right())
                        .build();
    }

    SheetProbes trueLength(String id, String edge) {
        return probe(id, () -> plain(roof().edge(edge).trueLength()));
    }

    SheetProbes slopeAngle(String id, String edge) {
        return probe(id, () -> plain(roof().edge(edge).slopeAngle()));
    }

    OrderLine order(String start) {
        return sheet.order().orElseThrow().lines().stream()
                .filter(line -> line.item().startsWith(start))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no order line \"" + start + "\""));
    }

    /** The numbers of a text such as "1005 mm", without its unit. */
    static BigDecimal number(String text) {
        return new BigDecimal(text.split(" ", -1)[0].replace("°", ""));
    }

    /** A value in the unit in which the hand pages print it: mm, m², degrees, kg, kg/m², a count or a ratio. */
    static Object plain(Object value) {
        if (value instanceof Length length) {
            return BigDecimal.valueOf(length.toNanometres(), 6);
        }
        if (value instanceof Area area) {
            return area.toSquareMetres() < 1
                    ? BigDecimal.valueOf(area.toSquareMillimetres())
                    : BigDecimal.valueOf(area.toSquareMetres());
        }
        if (value instanceof Pitch pitch) {
            return BigDecimal.valueOf(pitch.toDegrees());
        }
        if (value instanceof Angle angle) {
            return BigDecimal.valueOf(angle.toDegrees());
        }
        if (value instanceof Mass mass) {
            return BigDecimal.valueOf(mass.toKilograms());
        }
        if (value instanceof ArealMass mass) {
            return BigDecimal.valueOf(mass.toKilogramsPerSquareMetre());
        }
        if (value instanceof Ratio ratio) {
            return BigDecimal.valueOf(ratio.toSi());
        }
        if (value instanceof Number number) {
            return new BigDecimal(number.toString());
        }
        return value.toString();
    }
}
