/** Published figures with their source, checks against them, the site sheet and exercises. */
module org.roofmaths.rules {
    requires transitive org.roofmaths.core;
    requires de.siegmar.fastcsv;
    requires static org.immutables.value.annotations;
    requires static org.jspecify;

    // An empty package cannot be exported: take a line out of the comment when the package gets its first class.
    exports org.roofmaths.rules;
    exports org.roofmaths.sheet;
// exports org.roofmaths.exercise;
}
