package org.roofmaths.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What moved from one edition to another, row by row, over the subjects that both hold rows on.
 *
 * <p>A subject that only one of them holds is listed apart: editions are held as far as they were read, so that a missing table does
 * not mean that the document dropped it. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class EditionDifference {

    /**
     * One row that was added, dropped or changed.
     *
     * @since 0.1
     */
    public static final class RowChange {
        private final String rowId;
        private final @Nullable RuleRow<?> before;
        private final @Nullable RuleRow<?> after;

        private RowChange(String rowId, @Nullable RuleRow<?> before, @Nullable RuleRow<?> after) {
            this.rowId = rowId;
            this.before = before;
            this.after = after;
        }

        /** Returns the identifier of the row. */
        public String rowId() {
            return rowId;
        }

        /** Returns the row of the older edition; empty if that holds none. */
        public Optional<RuleRow<?>> before() {
            return Optional.ofNullable(before);
        }

        /** Returns the row of the newer edition; empty if that holds none. */
        public Optional<RuleRow<?>> after() {
            return Optional.ofNullable(after);
        }

        /** Returns the change in one line. */
        @Override
        public String toString() {
            return rowId + ": " + text(before) + " became " + text(after);
        }

        private static String text(@Nullable RuleRow<?> row) {
            if (row == null) {
                return "no row held";
            }
            String when = row.conditions().isEmpty()
                    ? ""
                    : " for " + String.join(", ", row.conditions().values());
            return row.asPrinted() + when;
        }
    }

    private final Edition older;
    private final Edition newer;
    private final List<RowChange> changes;

    private EditionDifference(Edition older, Edition newer, List<RowChange> changes) {
        this.older = older;
        this.newer = newer;
        this.changes = List.copyOf(changes);
    }

    static EditionDifference between(Edition older, Edition newer) {
        List<RowChange> changes = new ArrayList<>();
        for (Subject<?> subject : older.subjects()) {
            if (newer.subjects().contains(subject)) {
                compare(older.rows(subject), newer.rows(subject), changes);
            }
        }
        return new EditionDifference(older, newer, changes);
    }

    private static void compare(
            List<? extends RuleRow<?>> before, List<? extends RuleRow<?>> after, List<RowChange> changes) {
        for (RuleRow<?> row : before) {
            Optional<RuleRow<?>> same = after.stream()
                    .filter(other -> other.id().equals(row.id()))
                    .<RuleRow<?>>map(other -> other)
                    .findFirst();
            if (same.filter(row::saysTheSameAs).isEmpty()) {
                changes.add(new RowChange(row.id(), row, same.orElse(null)));
            }
        }
        after.stream()
                .filter(row -> before.stream().noneMatch(other -> other.id().equals(row.id())))
                .forEach(row -> changes.add(new RowChange(row.id(), null, row)));
    }

    /** Returns the older edition. */
    public Edition older() {
        return older;
    }

    /** Returns the newer edition. */
    public Edition newer() {
        return newer;
    }

    /** Returns the rows that were added, dropped or changed, in the order of the tables; empty if none was. */
    public List<RowChange> changes() {
        return changes;
    }

    /** Returns the subjects on which only the older edition holds rows. */
    public List<Subject<?>> onlyInOlder() {
        return without(older, newer);
    }

    /** Returns the subjects on which only the newer edition holds rows. */
    public List<Subject<?>> onlyInNewer() {
        return without(newer, older);
    }

    private static List<Subject<?>> without(Edition edition, Edition other) {
        return edition.subjects().stream()
                .filter(subject -> !other.subjects().contains(subject))
                .toList();
    }

    /** Returns every change, one a line. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(older.reference() + " to " + newer.reference());
        changes.forEach(change -> text.append("\n  ").append(change));
        return text.toString();
    }
}
