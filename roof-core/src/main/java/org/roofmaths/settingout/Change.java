package org.roofmaths.settingout;

/**
 * What may be changed when a layout does not fit.
 *
 * @since 0.1
 */
public enum Change {
    /** How far the eaves course reaches into the gutter. */
    OVERHANG("overhang into the gutter"),
    /** How far the top batten lies below the apex line, and with it the cover that ridge or flashing gives. */
    TOP_DISTANCE("top distance"),
    /** The fascia, packed out. */
    FASCIA("fascia"),
    /** The number of gauges, against a limit of the gauge. */
    COURSES("number of gauges"),
    /** Packing at one end, where the ends differ. */
    PACKING("packing");

    private final String words;

    Change(String words) {
        this.words = words;
    }

    /** Returns the thing to change in words, such as {@code top distance}. */
    @Override
    public String toString() {
        return words;
    }
}
