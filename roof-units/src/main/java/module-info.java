/** Numbers with units: lengths, areas, angles, pitches and their text. */
module org.roofmaths.units {
    requires static org.jspecify;

    exports org.roofmaths.units;
}
