import java.util.Optional;
import java.util.TreeMap;

/** Loads the classes it is told and prints from which modules they came. Run as a single file, see JarsIT. */
class Probe {
    public static void main(String[] names) throws ClassNotFoundException {
        var counts = new TreeMap<String, Integer>();
        for (String name : names) {
            Module module = Class.forName(name).getModule();
            counts.merge(Optional.ofNullable(module.getName()).orElse("no module"), 1, Integer::sum);
        }
        counts.forEach((module, count) -> System.out.println(module + ": " + count + " classes"));
    }
}
