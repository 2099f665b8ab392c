package org.roofmaths.order;

/**
 * What a nail is made of, with the density of the metal in kilograms per cubic metre.
 *
 * @since 0.1
 */
public enum NailMetal {
    /** Steel, galvanised or stainless: 7850 kg/m³. */
    STEEL("steel", 7850),
    /** Copper: 8960 kg/m³. */
    COPPER("copper", 8960),
    /** Aluminium: 2700 kg/m³. */
    ALUMINIUM("aluminium", 2700);

    private final String word;
    private final int density;

    NailMetal(String word, int density) {
        this.word = word;
        this.density = density;
    }

    int density() {
        return density;
    }

    /** Returns the metal in a word. */
    @Override
    public String toString() {
        return word;
    }
}
