package org.roofmaths.roof;

/**
 * One of the two parallel planes of a face in which sizes are taken.
 *
 * @since 0.1
 */
public enum RoofPlane {
    /** The plane of the tops of the rafters. */
    RAFTER("rafter plane"),
    /**
     * The plane on which the battens lie: the tops of the rafters, raised by counter-battens or boarding where there
     * are any.
     */
    BATTEN("batten plane");

    private final String words;

    RoofPlane(String words) {
        this.words = words;
    }

    /** Returns the words used in text, such as {@code rafter plane}. */
    @Override
    public String toString() {
        return words;
    }
}
