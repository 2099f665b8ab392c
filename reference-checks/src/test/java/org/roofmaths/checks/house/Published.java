package org.roofmaths.checks.house;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.Location;
import java.io.File;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.lang.module.ModuleReference;
import java.net.URI;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The three published modules as this build made them, found on the class path of the tests. */
final class Published {
    static final String UNITS = "org.roofmaths.units";
    static final String CORE = "org.roofmaths.core";
    static final String RULES = "org.roofmaths.rules";

    /** The folders of classes (in {@code mvn test}) or the jars (in {@code mvn verify}). */
    static final List<Path> PLACES = Arrays.stream(
                    System.getProperty("java.class.path").split(File.pathSeparator, -1))
            .filter(entry -> entry.matches(".*[/\\\\]roof-(units|core|rules)[/\\\\]target[/\\\\].*"))
            .map(Path::of)
            .toList();

    static final JavaClasses CLASSES = new ClassFileImporter()
            .importLocations(PLACES.stream().map(Published::location).toList());

    private static final ModuleFinder MODULES = ModuleFinder.of(PLACES.toArray(Path[]::new));

    private static final Map<String, String> MODULE_OF_PACKAGE = modules().stream()
            .flatMap(module -> module.packages().stream().map(name -> Map.entry(name, module.name())))
            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (one, other) -> one));

    private static final Set<String> EXPORTED = modules().stream()
            .flatMap(module -> module.exports().stream())
            .filter(exports -> !exports.isQualified())
            .map(ModuleDescriptor.Exports::source)
            .collect(Collectors.toCollection(TreeSet::new));

    private Published() {}

    private static Location location(Path place) {
        return place.toString().endsWith(".jar")
                ? Location.of(URI.create("jar:" + place.toUri() + "!/"))
                : Location.of(place);
    }

    static ModuleDescriptor module(String name) {
        return MODULES.find(name).orElseThrow().descriptor();
    }

    static Set<ModuleDescriptor> modules() {
        return MODULES.findAll().stream().map(ModuleReference::descriptor).collect(Collectors.toSet());
    }

    /** The packages anybody may use, in order of their names. */
    static Set<String> exportedPackages() {
        return EXPORTED;
    }

    static boolean isExported(JavaClass type) {
        return EXPORTED.contains(type.getPackageName());
    }

    /** The name of the module that holds a class of ours. */
    static String moduleOf(JavaClass type) {
        return Optional.ofNullable(MODULE_OF_PACKAGE.get(type.getPackageName()))
                .orElseThrow(() -> new AssertionError(type.getName() + " is in no published module"));
    }
}
