package org.roofmaths.flashing;

/**
 * The two kinds of cavity tray over a step flashing.
 *
 * @since 0.1
 */
public enum TrayKind {
    /** The lowest tray: it takes the water of all the others, has a stop end and a weep hole. */
    CATCH("catch tray with stop end and weep"),
    /** A tray at a step, running on to the one below. */
    STEPPED("stepped tray");

    private final String words;

    TrayKind(String words) {
        this.words = words;
    }

    /** Returns the kind in words. */
    @Override
    public String toString() {
        return words;
    }
}
