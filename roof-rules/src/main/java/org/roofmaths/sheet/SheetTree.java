package org.roofmaths.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.roofmaths.order.Order;
import org.roofmaths.problem.Problem;
import org.roofmaths.units.Quantity;

/** Writes a site sheet as plain maps, lists, texts and numbers. */
final class SheetTree {
    private static final int VERSION = 1;

    private SheetTree() {}

    static Map<String, Object> of(SiteSheet sheet) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("format", "roof-maths site sheet");
        map.put("version", VERSION);
        map.put("job", sheet.job().toTree());
        map.put("problems", Problem.toTree(sheet.problems()));
        List<Object> sections = new ArrayList<>();
        sheet.sections().forEach(section -> sections.add(section(section)));
        map.put("sections", sections);
        sheet.order().map(Order::toTree).ifPresent(order -> map.put("order", order));
        return Collections.unmodifiableMap(map);
    }

    private static Map<String, Object> section(SheetSection section) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("step", section.step().ordinal() + 1);
        map.put("title", section.step().title());
        List<Object> items = new ArrayList<>();
        section.items().forEach(item -> items.add(item(item)));
        map.put("items", items);
        return map;
    }

    private static Map<String, Object> item(SheetItem item) {
        Map<String, Object> map = new LinkedHashMap<>();
        if (item instanceof SheetLine line) {
            Object value = line.figure().value();
            map.put("kind", "line");
            map.put("label", line.label());
            map.put("shown", line.shown());
            map.put("term", line.term().toText());
            map.put("value", value.toString());
            if (value instanceof Quantity quantity) {
                map.put("si", quantity.toSi());
            }
        } else if (item instanceof SheetTable table) {
            map.put("kind", "table");
            map.put("title", table.title());
            map.put("header", table.header());
            map.put("rows", table.rows());
        } else if (item instanceof SheetCheck check) {
            map.put("kind", "check");
            map.put("label", check.label());
            map.putAll(check.check().toTree());
        } else if (item instanceof SheetSentence sentence) {
            map.put(
                    "kind",
                    sentence.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
            map.put("text", sentence.text());
        }
        return map;
    }
}
