package org.roofmaths.loads;

/**
 * What must stand beside every number of this package.
 *
 * @since 0.1
 */
public enum Caution {
    /** Beside a mass. */
    MASS(
            "Indicative, not a design: a changed weight of covering is a structural change, and a person competent in structures decides."),
    /** Beside a snow load. */
    SNOW(
            "Indicative, not a design: the ground snow, the rule set and its edition are the caller's; drifts, sites and members are for an"
                    + " engineer."),
    /** Beside a wind pressure. */
    WIND(
            "Indicative, not a design: site, height, openings and neighbours change the wind; fixings and members are for an engineer or the"
                    + " covering's maker.");

    private final String sentence;

    Caution(String sentence) {
        this.sentence = sentence;
    }

    /** Returns the sentence to print beside the number. */
    @Override
    public String toString() {
        return sentence;
    }
}
