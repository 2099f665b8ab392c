package org.roofmaths.rules.internal;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * The cells of a file of comma-separated values: a line of column names, then rows; lines that start with # are left out.
 *
 * @param columns the names of the columns
 * @param rows the rows, as far as they were read
 * @param fault what stopped the reading; empty if nothing did
 */
public record CsvTable(List<String> columns, List<CsvRow> rows, String fault) {

    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final int GREATEST_CELL = 1 << 16;

    /**
     * One row.
     *
     * @param line the line of the file on which it starts, from 1
     * @param cells its cells, without blanks around them
     */
    public record CsvRow(long line, List<String> cells) {}

    /**
     * Reads a table; the reader is not closed.
     *
     * @param reader the text
     * @param greatestRowCount reading stops with a fault after this many rows
     * @return the table, with a fault if the text is not of this form
     */
    public static CsvTable read(Reader reader, int greatestRowCount) {
        List<String> columns = new ArrayList<>();
        List<CsvRow> rows = new ArrayList<>();
        try (CsvReader<CsvRecord> records = CsvReader.builder()
                .commentStrategy(CommentStrategy.SKIP)
                .skipEmptyLines(true)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .maxBufferSize(GREATEST_CELL)
                .ofCsvRecord(new WithoutMark(reader))) {
            for (CsvRecord line : records) {
                List<String> cells =
                        line.getFields().stream().map(String::strip).toList();
                if (columns.isEmpty()) {
                    columns.addAll(cells);
                } else if (rows.size() == greatestRowCount) {
                    return new CsvTable(columns, rows, "more than " + greatestRowCount + " rows");
                } else {
                    rows.add(new CsvRow(line.getStartingLineNumber(), cells));
                }
            }
        } catch (CsvParseException broken) {
            long lastGood = rows.isEmpty() ? 0 : rows.get(rows.size() - 1).line();
            return new CsvTable(
                    columns,
                    rows,
                    "a cell after line " + lastGood + " whose quotes do not close or with more than " + GREATEST_CELL
                            + " characters");
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return new CsvTable(columns, rows, "");
    }

    /** The text without the mark that some programs write before it; closing it leaves the text itself open. */
    private static final class WithoutMark extends Reader {
        private final Reader text;
        private boolean isAtStart = true;

        WithoutMark(Reader text) {
            this.text = text;
        }

        @Override
        public int read(char[] into, int from, int count) throws IOException {
            if (isAtStart && count > 0) {
                isAtStart = false;
                int first = text.read();
                if (first < 0) {
                    return -1;
                }
                if (first != BYTE_ORDER_MARK) {
                    into[from] = (char) first;
                    return 1;
                }
            }
            return text.read(into, from, count);
        }

        @Override
        public void close() {
            // The caller opened the text and closes it.
        }
    }
}
