package org.roofmaths.order;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.roofmaths.problem.Problem;

/** Writes an order as plain text and as Markdown. */
final class OrderText {
    private static final int DECIMALS = 2;
    private static final String NOTE = "Needed is shown rounded up and left over rounded down, to 0.01.";

    private OrderText() {}

    static String text(Order order) {
        List<List<String>> rows = rows(order);
        int[] widths = new int[rows.get(0).size()];
        for (List<String> row : rows) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(
                        widths[i], row.get(i).codePointCount(0, row.get(i).length()));
            }
        }
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                String cell = row.get(i);
                line.append(cell).append(" ".repeat(widths[i] - cell.codePointCount(0, cell.length()) + 2));
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
        text.append('\n');
        beneath(order).forEach(line -> text.append(line).append('\n'));
        return text.toString();
    }

    static String markdown(Order order) {
        List<List<String>> rows = rows(order);
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i)
                    .forEach(cell -> text.append("| ")
                            .append(cell.replace("\\", "\\\\").replace("|", "\\|"))
                            .append(' '));
            text.append("|\n");
            if (i == 0) {
                text.append("| --- ")
                        .append("| ---: ".repeat(rows.get(0).size() - 1))
                        .append("|\n");
            }
        }
        text.append('\n');
        beneath(order).forEach(line -> text.append("- ").append(line).append('\n'));
        return text.toString();
    }

    private static List<List<String>> rows(Order order) {
        boolean second = order.lines().stream().anyMatch(OrderLine::isSecond);
        List<List<String>> rows = new ArrayList<>();
        List<String> head = new ArrayList<>(List.of("item", "net", "needed"));
        if (second) {
            head.add("on site");
        }
        head.addAll(List.of("to buy", "left over"));
        rows.add(head);
        for (OrderLine line : order.lines()) {
            List<String> row = new ArrayList<>(List.of(
                    line.item(),
                    line.net().toText(DECIMALS, RoundingMode.UP),
                    line.needed().toText(DECIMALS, RoundingMode.UP)));
            if (second) {
                row.add(line.delivered().toText(DECIMALS, RoundingMode.DOWN));
            }
            row.add(line.toBuyInWords());
            row.add(line.left().toText(DECIMALS, RoundingMode.DOWN));
            rows.add(row);
        }
        return rows;
    }

    private static List<String> beneath(Order order) {
        List<String> lines = new ArrayList<>();
        for (OrderLine line : order.lines()) {
            lines.add(line.item() + ": allowances " + line.allowancesInWords() + "; sold "
                    + (line.terms().stock().isPresent() ? "" : "(not said, taken as) ")
                    + inOrAs(line.stock().toString())
                    + line.pallets().stream()
                            .mapToObj(count -> "; " + count + (count == 1 ? " pallet" : " pallets"))
                            .findFirst()
                            .orElse(""));
        }
        if (order.hasMass()) {
            lines.add(String.format(
                    Locale.ROOT,
                    "mass: %s net, %s to buy%s; for planning, lifting is not assessed",
                    order.netMass(),
                    order.massToBuy(),
                    without(order.itemsWithoutMass())));
        }
        for (Price cost : order.costs()) {
            lines.add("cost: " + cost + without(order.itemsWithoutPrice()));
        }
        for (Problem problem : order.problems()) {
            lines.add(problem.severity() + ": " + problem.message());
        }
        lines.add(NOTE);
        return lines;
    }

    private static String inOrAs(String stock) {
        return stock.startsWith("singly") || stock.startsWith("as needed") ? stock : "in " + stock;
    }

    private static String without(List<String> items) {
        return items.isEmpty() ? "" : " (without " + String.join(", ", items) + ")";
    }
}
