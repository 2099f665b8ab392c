package org.roofmaths.sheet;

import java.util.ArrayList;
import java.util.List;
import org.roofmaths.problem.Problem;

/** Writes a site sheet as plain text: 100 columns, figures in one column, tables aligned. */
final class SheetText {
    private static final int WIDTH = 100;
    private static final int LABEL = 58;

    private final StringBuilder out = new StringBuilder();

    private SheetText() {}

    static String of(SiteSheet sheet) {
        SheetText text = new SheetText();
        text.head(sheet);
        text.outcomes(sheet);
        sheet.sections().forEach(text::section);
        return text.out.toString();
    }

    private void head(SiteSheet sheet) {
        String title = "SITE SHEET: " + sheet.job().name();
        out.append(title).append('\n').append("=".repeat(title.length())).append('\n');
        if (!sheet.job().note().isEmpty()) {
            wrapped("", sheet.job().note());
        }
        wrapped(
                "",
                "Held against: " + sheet.job().jurisdiction() + " "
                        + String.join(", ", sheet.job().editions()) + ".");
        if (!sheet.problems().isEmpty()) {
            out.append('\n')
                    .append("PROBLEMS: ")
                    .append(sheet.problems().size())
                    .append(" on this sheet\n");
            for (Problem problem : sheet.problems()) {
                wrapped("  " + problem.severity() + ": ", Show.readable(problem.message()));
                problem.mends().forEach(mend -> wrapped("    mend: ", Show.readable(mend.toString())));
            }
        }
    }

    private void outcomes(SiteSheet sheet) {
        if (!sheet.outcomes().isEmpty()) {
            out.append('\n');
            wrapped("CHECKS: ", sheet.outcomes() + ".");
        }
        sheet.shortfalls().forEach(label -> wrapped("  falls short: ", label));
    }

    private void section(SheetSection section) {
        String title = (section.step().ordinal() + 1) + ". " + section.step().title();
        out.append('\n')
                .append(title)
                .append('\n')
                .append("-".repeat(title.length()))
                .append('\n');
        section.items().forEach(this::item);
    }

    private void item(SheetItem item) {
        if (item instanceof SheetLine line) {
            String label = "  " + line.label() + " ";
            out.append(label)
                    .append(".".repeat(Math.max(2, LABEL - label.length())))
                    .append(' ')
                    .append(line.shown())
                    .append('\n');
        } else if (item instanceof SheetTable table) {
            table(table);
        } else if (item instanceof SheetCheck check) {
            wrapped("  " + check.label() + ": ", Show.readable(check.check().toText()));
        } else if (item instanceof SheetSentence sentence) {
            wrapped("  " + lead(sentence.kind()), Show.readable(sentence.text()));
        }
    }

    static String lead(SheetSentence.Kind kind) {
        return switch (kind) {
            case REMARK -> "";
            case CAUTION -> "CAUTION: ";
            case DOES_NOT_APPLY -> "Does not apply: ";
            case STEP -> "- ";
            case HOLD_POINT -> "  HOLD: ";
        };
    }

    private void table(SheetTable table) {
        out.append("  ").append(table.title()).append('\n');
        List<List<String>> all = new ArrayList<>();
        all.add(table.header());
        all.addAll(table.rows());
        int[] widths = new int[table.header().size()];
        all.forEach(row -> {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        });
        for (List<String> row : all) {
            StringBuilder line = new StringBuilder("    ");
            for (int i = 0; i < widths.length; i++) {
                line.append(row.get(i)).append(" ".repeat(widths[i] - row.get(i).length() + 2));
            }
            out.append(line.toString().stripTrailing()).append('\n');
        }
    }

    /** Text broken between words, later lines indented under the first word. */
    private void wrapped(String lead, String text) {
        String indent = " ".repeat(Math.min(lead.length(), 12));
        StringBuilder line = new StringBuilder(lead);
        boolean empty = true;
        for (String word : text.split("\\s+", -1)) {
            if (!empty && line.length() + 1 + word.length() > WIDTH) {
                out.append(line).append('\n');
                line = new StringBuilder(indent);
                empty = true;
            }
            if (!empty) {
                line.append(' ');
            }
            line.append(word);
            empty = false;
        }
        out.append(line).append('\n');
    }
}
