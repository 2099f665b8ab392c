package org.roofmaths.sheet;

/**
 * The steps from a drawing to a finished roof, in the order in which they are decided.
 *
 * @since 0.1
 */
public enum SheetStep {
    /** Which sizes of the drawing rule. */
    DRAWING("The drawing, agreed"),
    /** What is really there. */
    AS_FOUND("As found"),
    /** Slopes, faces, areas, edges. */
    SHAPE("Faces and edges"),
    /** Rafters, where the builder cuts them. */
    FRAME("Rafters"),
    /** Does the covering suit pitch and exposure. */
    SUITABILITY("Does the covering suit"),
    /** What a lean-to has room for under a window. */
    ROOM_AT_WALL("Room at the wall"),
    /** Weight of the covering. */
    WEIGHT("Weight of the covering"),
    /** Underlay and battens. */
    UNDERLAY_AND_BATTENS("Underlay and battens"),
    /** Where the first and the last batten go. */
    FIXED_POINTS("First and last batten"),
    /** Batten spacing. */
    GAUGE("Gauge"),
    /** What differs between the two ends. */
    TAPER("Left against right"),
    /** Units across. */
    COLUMNS("Across the slope"),
    /** Stacks, windows, pipes. */
    OPENINGS("Openings"),
    /** Eaves, verge, ridge. */
    EDGES("Eaves, verges and ridge"),
    /** Flashings at walls. */
    FLASHINGS("Flashings"),
    /** Hips and valleys. */
    HIPS_AND_VALLEYS("Hips and valleys"),
    /** The path of air. */
    VENTILATION("Air path"),
    /** Rain to the gutter. */
    RAINWATER("Rainwater"),
    /** Nails and clips. */
    FIXINGS("Fixings"),
    /** What to buy. */
    ORDER("Order"),
    /** Lifting and stacking. */
    LOADING_OUT("Loading out"),
    /** The page of marks. */
    MARKS("Marks to take up the ladder"),
    /** What is done when. */
    ORDER_OF_WORK("Order of work"),
    /** What to measure when done. */
    FINAL_CHECKS("Measure when done"),
    /** For whoever repairs or extends. */
    LATER("For later repair");

    private final String title;

    SheetStep(String title) {
        this.title = title;
    }

    /** Returns the heading, in a builder's words. */
    public String title() {
        return title;
    }
}
