import static org.roofmaths.units.Quantities.length;

import java.util.Optional;
import java.util.TreeMap;
import org.roofmaths.rules.Rules;

/** Loads the classes it is told, prints from which modules they came, and asks each module for one thing it does. */
class Probe {
    public static void main(String[] names) throws ClassNotFoundException {
        var counts = new TreeMap<String, Integer>();
        for (String name : names) {
            Module module = Class.forName(name).getModule();
            counts.merge(Optional.ofNullable(module.getName()).orElse("no module"), 1, Integer::sum);
        }
        counts.forEach((module, count) -> System.out.println(module + ": " + count + " classes"));
        System.out.println("units read: " + length("9' 4 1/2\""));
        System.out.println("rules read: " + !Rules.of("gb").documents().isEmpty());
    }
}
