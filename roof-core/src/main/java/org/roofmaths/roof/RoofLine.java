package org.roofmaths.roof;

/**
 * A level line of a face from which or to which a slope length is taken.
 *
 * <p>A slope length means nothing until both its lines and its plane are named. All these lines are parallel to the
 * eaves; they are in the rafter plane unless {@link RoofPlane} says otherwise.
 *
 * @since 0.1
 */
public enum RoofLine {
    /** The tails of the eaves course of the covering: the fascia line and beyond it the overhang into the gutter. */
    TAIL("tail line"),
    /**
     * The line plumb over the outer face of the fascia: the plate line and beyond it the eaves overhang, measured
     * level.
     */
    FASCIA("fascia line"),
    /** The line plumb over the outer face of the wall plate. */
    PLATE("plate line"),
    /** The highest line of the face: where it meets the wall above, or the opposite face at the ridge. */
    APEX("apex line");

    private final String words;

    RoofLine(String words) {
        this.words = words;
    }

    /** Returns the words used in text, such as {@code fascia line}. */
    @Override
    public String toString() {
        return words;
    }
}
