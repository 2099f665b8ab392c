/**
 * Geometry, setting out and quantities of tiled and slated roofs.
 * Packages under {@code org.roofmaths.internal} are for this project's own modules.
 */
@SuppressWarnings("module") // the module that the style is exported to is built after this one
module org.roofmaths.core {
    requires transitive org.roofmaths.units;
    requires java.xml;
    requires commons.math3;
    requires static org.immutables.value.annotations;
    requires static org.jspecify;

    exports org.roofmaths.working;
    exports org.roofmaths.problem;
    exports org.roofmaths.roof;
    exports org.roofmaths.framing;
    exports org.roofmaths.covering;
    exports org.roofmaths.settingout;
    exports org.roofmaths.flashing;
    exports org.roofmaths.ventilation;
    exports org.roofmaths.rainwater;
    exports org.roofmaths.loads;
    exports org.roofmaths.order;
    exports org.roofmaths.drawing;
    exports org.roofmaths.internal.style to
            org.roofmaths.rules;
// An empty package cannot be exported: take a line out of the comment when the package gets its first class.
// exports org.roofmaths.survey;
}
