package org.roofmaths.sheet;

import java.util.List;
import org.roofmaths.problem.Problem;

/** Writes a site sheet as Markdown: headings, bullet lines, tables. */
final class SheetMarkdown {
    private final StringBuilder out = new StringBuilder();

    private SheetMarkdown() {}

    static String of(SiteSheet sheet) {
        SheetMarkdown text = new SheetMarkdown();
        text.head(sheet);
        text.outcomes(sheet);
        sheet.sections().forEach(text::section);
        return text.out.toString();
    }

    private void head(SiteSheet sheet) {
        out.append("# Site sheet: ").append(escaped(sheet.job().name())).append("\n\n");
        if (!sheet.job().note().isEmpty()) {
            out.append(escaped(sheet.job().note())).append("\n\n");
        }
        out.append("Held against: ")
                .append(escaped(sheet.job().jurisdiction()))
                .append(' ')
                .append(escaped(String.join(", ", sheet.job().editions())))
                .append(".\n");
        if (!sheet.problems().isEmpty()) {
            out.append("\n**Problems: ").append(sheet.problems().size()).append(" on this sheet**\n\n");
            for (Problem problem : sheet.problems()) {
                out.append("- ")
                        .append(problem.severity())
                        .append(": ")
                        .append(escaped(Show.readable(problem.message())))
                        .append('\n');
                problem.mends()
                        .forEach(mend -> out.append("  - mend: ")
                                .append(escaped(Show.readable(mend.toString())))
                                .append('\n'));
            }
        }
    }

    private void outcomes(SiteSheet sheet) {
        if (!sheet.outcomes().isEmpty()) {
            out.append("\n**Checks:** ").append(escaped(sheet.outcomes())).append(".\n");
        }
        if (!sheet.shortfalls().isEmpty()) {
            out.append('\n');
            sheet.shortfalls()
                    .forEach(label ->
                            out.append("- falls short: ").append(escaped(label)).append('\n'));
        }
    }

    private void section(SheetSection section) {
        out.append("\n## ")
                .append(section.step().ordinal() + 1)
                .append(". ")
                .append(section.step().title())
                .append("\n\n");
        section.items().forEach(this::item);
    }

    private void item(SheetItem item) {
        if (item instanceof SheetLine line) {
            out.append("- ")
                    .append(escaped(line.label()))
                    .append(": **")
                    .append(escaped(line.shown()))
                    .append("**\n");
        } else if (item instanceof SheetTable table) {
            table(table);
        } else if (item instanceof SheetCheck check) {
            out.append("- ")
                    .append(escaped(check.label()))
                    .append(": ")
                    .append(escaped(Show.readable(check.check().toText())))
                    .append('\n');
        } else if (item instanceof SheetSentence sentence) {
            String text = escaped(Show.readable(sentence.text()));
            out.append(
                    switch (sentence.kind()) {
                        case REMARK -> "- " + text;
                        case CAUTION -> "- **Caution.** " + text;
                        case DOES_NOT_APPLY -> "- Does not apply: " + text;
                        case STEP -> "- " + text;
                        case HOLD_POINT -> "  - **Hold:** " + text;
                    });
            out.append('\n');
        }
    }

    private void table(SheetTable table) {
        out.append("\n").append(escaped(table.title())).append("\n\n");
        row(table.header());
        out.append("|").append(" --- |".repeat(table.header().size())).append('\n');
        table.rows().forEach(this::row);
        out.append('\n');
    }

    private void row(List<String> cells) {
        out.append('|');
        cells.forEach(cell -> out.append(' ').append(escaped(cell)).append(" |"));
        out.append('\n');
    }

    /** What Markdown would take for marks of its own is taken literally. */
    private static String escaped(String text) {
        return text.replaceAll("([\\\\`*_\\[\\]<>|#&])", "\\\\$1");
    }
}
