package org.roofmaths.rules;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.rules.internal.CsvTable;
import org.roofmaths.rules.internal.CsvTable.CsvRow;
import org.roofmaths.working.Citation;
import org.roofmaths.working.Provenance;
import org.roofmaths.working.SourceKind;

/** Turns the cells of a table into rows, and says of every cell that is wrong what it must be. */
final class RowReader {
    static final ProblemCode UNREADABLE =
            ProblemCode.of("rows.unreadable", "Mend the text so that every line is a row of comma-separated cells.");
    static final ProblemCode NO_COLUMN =
            ProblemCode.of("rows.no-column", "Add the column to the first line and to every row.");
    static final ProblemCode UNKNOWN_COLUMN = ProblemCode.of(
            "rows.unknown-column", "Name the column as one of those that the message lists, or take it out.");
    static final ProblemCode CELL_COUNT = ProblemCode.of(
            "rows.cell-count", "Give every row as many cells as the first line has; quote a cell with a comma.");
    static final ProblemCode BAD_CELL =
            ProblemCode.of("rows.bad-cell", "Write the cell in the form that the message gives.");
    static final ProblemCode DUPLICATE_ID = ProblemCode.of("rows.duplicate-id", "Give every row an id of its own.");
    static final ProblemCode OVERLAP = ProblemCode.of(
            "rows.overlap", "Narrow the conditions of one row, so that one row alone holds in any case.");
    static final ProblemCode NO_ROWS =
            ProblemCode.of("rows.none", "Add at least one row below the names of the columns.");

    private static final String NOTHING = "-";
    private static final String NONE = "none";
    private static final List<String> BEFORE = List.of("id");
    private static final List<String> FIGURE = List.of("value", "unit", "as_printed", "locus", "provenance");
    private static final List<String> OURS = List.of("seen_in", "confirm", "note");
    private static final List<String> THEIRS = List.of("subject", "source", "source_edition", "source_kind");
    private static final List<String> THEIRS_IF_WANTED = List.of("confirm", "note");

    private final String name;
    private final SourceInfo info;
    private final @Nullable Subject<?> subjectOfAll;
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, Long> lineOfId = new HashMap<>();
    private final Map<RuleRow<?>, Long> lineOfRow = new LinkedHashMap<>();

    private RowReader(String name, SourceInfo info, @Nullable Subject<?> subjectOfAll) {
        this.name = name;
        this.info = info;
        this.subjectOfAll = subjectOfAll;
    }

    /** What a table held: its rows, or every problem. */
    record Result(List<RuleRow<?>> rows, List<Problem> problems) {}

    /** Reads a table of ours: all its rows are about one subject, and the source of all is that of the edition. */
    static Result readOurs(String name, SourceInfo info, Subject<?> subject, CsvTable table) {
        return new RowReader(name, info, subject).read(table);
    }

    /** Reads a table of a caller's: each row names its subject and its own source. */
    static Result readTheirs(String name, SourceInfo info, CsvTable table) {
        return new RowReader(name, info, null).read(table);
    }

    private Result read(CsvTable table) {
        if (!table.fault().isEmpty()) {
            problems.add(Problem.error(UNREADABLE, name, table.fault(), "be rows of comma-separated cells"));
        } else if (table.rows().isEmpty()) {
            problems.add(Problem.error(NO_ROWS, name, "no row", "have a line of column names and at least one row"));
        } else if (checkColumns(table.columns())) {
            for (CsvRow row : table.rows()) {
                readLine(table.columns(), row);
            }
            // Our own tables are held against overlaps when they are built, not each time they are read.
            if (subjectOfAll == null) {
                problems.addAll(overlaps(name, lineOfRow));
            }
        }
        return new Result(problems.isEmpty() ? List.copyOf(lineOfRow.keySet()) : List.of(), List.copyOf(problems));
    }

    private boolean checkColumns(List<String> columns) {
        List<String> required = new ArrayList<>(BEFORE);
        required.addAll(FIGURE);
        required.addAll(subjectOfAll == null ? THEIRS : OURS);
        List<String> allowed = new ArrayList<>(required);
        allowed.addAll(THEIRS_IF_WANTED);
        for (String column : required) {
            if (!columns.contains(column)) {
                problems.add(Problem.error(
                        NO_COLUMN, name + ", line 1", String.join(", ", columns), "have a column " + column));
            }
        }
        for (String column : columns) {
            if (!allowed.contains(column) && Facts.of(column).isEmpty()) {
                String facts = Facts.all().stream().map(Fact::id).sorted().collect(Collectors.joining(", "));
                problems.add(Problem.error(
                        UNKNOWN_COLUMN,
                        name + ", line 1, column " + (columns.indexOf(column) + 1),
                        "\"" + column + "\"",
                        "be one of "
                                + String.join(", ", allowed.stream().distinct().toList()) + " or a fact: " + facts));
            }
        }
        if (columns.stream().distinct().count() < columns.size()) {
            problems.add(Problem.error(
                    UNKNOWN_COLUMN, name + ", line 1", String.join(", ", columns), "name every column once"));
        }
        return problems.isEmpty();
    }

    /** One row of the table, its cells by the names of their columns. */
    private record Line(long number, Map<String, String> cells) {
        /** Returns a cell, or the sign for nothing where the table has no such column. */
        String cell(String column) {
            return cells.getOrDefault(column, NOTHING);
        }
    }

    private void readLine(List<String> columns, CsvRow row) {
        if (row.cells().size() != columns.size()) {
            problems.add(Problem.error(
                    CELL_COUNT,
                    name + ", line " + row.line(),
                    row.cells().size() + " cells",
                    "have " + columns.size() + " cells, as the first line has"));
            return;
        }
        int before = problems.size();
        Line line = new Line(row.line(), new LinkedHashMap<>());
        for (int i = 0; i < columns.size(); i++) {
            String cell = row.cells().get(i);
            line.cells().put(columns.get(i), cell);
            if (cell.isEmpty()) {
                bad(line, columns.get(i), "\"\"", "not be blank; write " + NOTHING + " for nothing");
            }
        }
        if (problems.size() > before) {
            return;
        }
        Optional<Subject<?>> subject =
                subjectOfAll == null ? Subjects.of(line.cell("subject")) : Optional.of(subjectOfAll);
        if (subject.isEmpty()) {
            bad(
                    line,
                    "subject",
                    line.cell("subject"),
                    "be one of "
                            + Subjects.all().stream().map(Subject::id).sorted().collect(Collectors.joining(", ")));
        }
        List<Condition<?>> conditions = conditions(line);
        Optional<Citation> citation = citation(line);
        checkId(line, line.cell("id"));
        subject.ifPresent(about -> readFigure(about, line, conditions, citation, before));
    }

    private <V> void readFigure(
            Subject<V> subject,
            Line line,
            List<Condition<?>> conditions,
            Optional<Citation> citation,
            int problemsBefore) {
        String unit = line.cell("unit");
        V value = null;
        if (!line.cell("value").equals(NONE)) {
            if (!subject.units().contains(unit)) {
                bad(line, "unit", unit, "be " + oneOf(subject.units()) + ", for " + subject.words());
            } else {
                value = value(subject, line, line.cell("value"), unit);
            }
        }
        if (problems.size() == problemsBefore && citation.isPresent()) {
            lineOfRow.put(
                    new RuleRow<>(
                            subject,
                            info.reference(),
                            conditions,
                            value,
                            citation.get(),
                            unit,
                            seenIn(line),
                            listOf(line.cell("confirm")),
                            textOf(line.cell("note"))),
                    line.number());
        }
    }

    private <V> @Nullable V value(Subject<V> subject, Line line, String value, String unit) {
        try {
            return subject.kind().read(value, unit);
        } catch (IllegalArgumentException | ArithmeticException unreadable) {
            bad(line, "value", value, "be a " + subject.kind().form() + " in " + unit + ", or " + NONE);
            return null;
        }
    }

    private List<Condition<?>> conditions(Line line) {
        List<Condition<?>> conditions = new ArrayList<>();
        line.cells()
                .forEach((column, cell) -> Facts.of(column).ifPresent(fact -> {
                    Optional<? extends Condition<?>> condition = Condition.read(fact, cell);
                    if (condition.isPresent()) {
                        conditions.add(condition.get());
                    } else {
                        bad(
                                line,
                                column,
                                cell,
                                "be any, or " + fact.form() + (fact.isChoice() ? ", several parted by /" : ""));
                    }
                }));
        return conditions;
    }

    private Optional<Citation> citation(Line line) {
        Optional<Provenance> provenance = Arrays.stream(Provenance.values())
                .filter(mark -> mark.toString().equals(line.cell("provenance")))
                .findFirst();
        if (provenance.isEmpty()) {
            bad(
                    line,
                    "provenance",
                    line.cell("provenance"),
                    "be "
                            + oneOf(Arrays.stream(Provenance.values())
                                    .map(Provenance::toString)
                                    .toList()));
        }
        Optional<SourceKind> kind =
                subjectOfAll == null ? kind(line, line.cell("source_kind")) : Optional.of(info.kind());
        if (subjectOfAll != null && info.seen(line.cell("seen_in")) == null) {
            bad(line, "seen_in", line.cell("seen_in"), "be one of the texts that source.properties lists");
        }
        if (provenance.isEmpty() || kind.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Citation.builder()
                .kind(kind.get())
                .title(subjectOfAll == null ? line.cell("source") : info.get("title"))
                .edition(subjectOfAll == null ? line.cell("source_edition") : info.get("edition"))
                .locus(line.cell("locus"))
                .rowId(line.cell("id"))
                .asPrinted(line.cell("as_printed"))
                .provenance(provenance.get())
                .build());
    }

    private Optional<SourceKind> kind(Line line, String word) {
        try {
            return Optional.of(SourceInfo.kind(word));
        } catch (IllegalArgumentException unknown) {
            bad(
                    line,
                    "source_kind",
                    word,
                    "be "
                            + oneOf(Arrays.stream(SourceKind.values())
                                    .map(Words::of)
                                    .toList()));
            return Optional.empty();
        }
    }

    private String seenIn(Line line) {
        return subjectOfAll == null ? line.cell("source") : textOf(info.get("seen." + line.cell("seen_in")));
    }

    private void checkId(Line line, String id) {
        Long first = lineOfId.putIfAbsent(id, line.number());
        if (first != null) {
            problems.add(Problem.error(
                    DUPLICATE_ID, place(line, "id"), id, "be an id of its own (line " + first + " has it)"));
        }
    }

    /** Returns a problem for each two rows of a subject that hold in the same case. */
    static List<Problem> overlaps(String name, Map<RuleRow<?>, Long> lineOfRow) {
        List<Problem> problems = new ArrayList<>();
        List<RuleRow<?>> rows = List.copyOf(lineOfRow.keySet());
        for (int i = 0; i < rows.size(); i++) {
            for (int j = 0; j < i; j++) {
                RuleRow<?> earlier = rows.get(j);
                RuleRow<?> later = rows.get(i);
                if (later.subject().equals(earlier.subject()) && later.overlaps(earlier)) {
                    problems.add(Problem.error(
                            OVERLAP,
                            name + ", line " + lineOfRow.get(later),
                            later.id(),
                            "not hold in a case in which " + earlier.id() + " of line " + lineOfRow.get(earlier)
                                    + " holds"));
                }
            }
        }
        return problems;
    }

    private void bad(Line line, String column, String given, String allowed) {
        problems.add(Problem.error(BAD_CELL, place(line, column), given, allowed));
    }

    private String place(Line line, String column) {
        return String.format(Locale.ROOT, "%s, line %d, column %s", name, line.number(), column);
    }

    private static String oneOf(List<String> words) {
        return words.size() == 1 ? words.get(0) : "one of " + String.join(", ", words);
    }

    private static List<String> listOf(String cell) {
        return cell.equals(NOTHING) ? List.of() : Arrays.asList(cell.split("; ", -1));
    }

    private static String textOf(String cell) {
        return cell.equals(NOTHING) ? "" : cell;
    }
}
