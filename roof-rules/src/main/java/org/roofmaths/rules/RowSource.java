package org.roofmaths.rules;

import java.io.Reader;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Properties;
import java.util.regex.Pattern;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.rules.internal.CsvTable;

/**
 * Rows of the caller's own, such as the figures that a unit's maker declares, to be asked beside ours.
 *
 * <p>The text is comma-separated values. The first line names the columns: {@code id}, {@code subject}, any {@linkplain Facts facts}
 * that the rows depend on, {@code value}, {@code unit}, {@code as_printed}, {@code locus}, {@code provenance}, {@code source},
 * {@code source_edition}, {@code source_kind} and, if wanted, {@code confirm} and {@code note}. Each row carries its own source. A cell of a
 * fact is {@code any}, one or more words parted by {@code /}, or a size or a range such as {@code [30°..35°)}. Lines that start with
 * {@code #} are left out. If one cell is wrong the whole is refused, with every problem.
 *
 * <pre>{@code
 * id,subject,unit_kind,value,unit,as_printed,locus,provenance,source,source_edition,source_kind
 * own.pitch,least-pitch,concrete-single-lap-tile,17.5,deg,17.5°,page 2,read,data sheet (invented),2026,trade-practice
 * }</pre>
 *
 * <p>Own rows never hide ours: they are an edition of their own, to be asked by name. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class RowSource implements Serializable {
    private static final long serialVersionUID = 1L;

    /** The most rows that one source may hold; more are refused. */
    public static final int GREATEST_ROW_COUNT = 5000;

    /** The name of the edition that own rows form. */
    static final String EDITION = "own";

    /** The jurisdiction shown for own rows. */
    static final String JURISDICTION = "own";

    private static final ProblemCode BAD_NAME =
            ProblemCode.of("rows.bad-name", "Name the source in lower-case words parted by hyphens.");
    private static final Pattern NAME = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    private final Edition edition;

    private RowSource(Edition edition) {
        this.edition = edition;
    }

    /**
     * Reads own rows. The reader is read to its end and left open.
     *
     * @param name a short name for them, lower-case words parted by hyphens; messages name it
     * @param rows the text
     * @return the rows
     * @throws ProblemsException with every problem, each naming line and column, if one cell is wrong
     */
    public static RowSource of(String name, Reader rows) {
        return attempt(name, rows).orThrow();
    }

    /**
     * Reads own rows, or tells every problem.
     *
     * @param name a short name for them, lower-case words parted by hyphens; messages name it
     * @param rows the text
     * @return the rows, or every problem
     */
    public static Attempt<RowSource> attempt(String name, Reader rows) {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(rows, "rows");
        if (!NAME.matcher(name).matches()) {
            return Attempt.failed(List.of(Problem.error(
                    BAD_NAME, "name", "\"" + name + "\"", "be lower-case words parted by hyphens, such as own-tiles")));
        }
        SourceInfo info = new SourceInfo(JURISDICTION, name, EDITION, properties(name));
        RowReader.Result result = RowReader.readTheirs(name, info, CsvTable.read(rows, GREATEST_ROW_COUNT));
        return result.problems().isEmpty()
                ? Attempt.of(new RowSource(Edition.ofRows(info, result.rows())))
                : Attempt.failed(result.problems());
    }

    private static Properties properties(String name) {
        Properties properties = new Properties();
        properties.setProperty("title", "own rows, " + name);
        properties.setProperty("publisher", "the caller");
        properties.setProperty("kind", "trade-practice");
        properties.setProperty("edition", EDITION);
        properties.setProperty("published", "undated");
        properties.setProperty("where-read", "the caller's rows, each with its own source");
        return properties;
    }

    /** Returns the short name. */
    public String name() {
        return edition.document();
    }

    /** Returns the rows as an edition, to be asked alone or {@linkplain RuleSet#backedBy before or behind} others. */
    public Edition edition() {
        return edition;
    }

    /** Returns the name and the number of rows. */
    @Override
    public String toString() {
        long count = edition.subjects().stream()
                .mapToLong(subject -> edition.rows(subject).size())
                .sum();
        return name() + ": " + count + (count == 1 ? " row" : " rows");
    }
}
