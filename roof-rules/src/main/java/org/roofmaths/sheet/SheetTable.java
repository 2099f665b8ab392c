package org.roofmaths.sheet;

import java.util.List;

/**
 * A table on a site sheet: marks, edges, pieces, order lines.
 *
 * @param title what the table holds
 * @param header the heads of the columns
 * @param rows the rows, each as long as the header
 * @since 0.1
 */
public record SheetTable(String title, List<String> header, List<List<String>> rows) implements SheetItem {

    /** Copies the lists, so that the table cannot change. */
    public SheetTable {
        header = List.copyOf(header);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<String> row : rows) {
            if (row.size() != header.size()) {
                throw new IllegalArgumentException("each row of \"" + title + "\" must have " + header.size()
                        + " cells, but one has " + row.size());
            }
        }
    }
}
