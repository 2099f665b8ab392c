package org.roofmaths.rainwater;

import static org.roofmaths.working.Figure.given;

import org.roofmaths.units.Ratio;

/** Demands for tests. The figures are inputs of a test, not rules; where they come from memory it says so. */
public final class RainDemands {
    /** Half the rise and half the wall, for rain that falls two down to one across (EN 12056-3 as a plumbing textbook quotes it). */
    public static final CatchmentDemand HALF_THE_RISE =
            CatchmentDemand.planAndRise(given(Ratio.of(0.5)), given(Ratio.of(0.5)));

    /** 2.78e-5 and 0.9: EN 12056-3 from memory; they return the printed flows of Approved Document H Table 2 to within 1 %. */
    public static final GutterDemand HALF_ROUND = GutterDemand.builder()
            .coefficient(given(2.78e-5))
            .designFactor(given(Ratio.of(0.9)))
            .build();

    /** 7500 and 15000: EN 12056-3 from memory. */
    public static final OutletDemand OPEN = new OutletDemand(given(Ratio.of(1)), given(7500.0), given(15000.0));

    /** The same with a grating. */
    public static final OutletDemand GRATED = new OutletDemand(given(Ratio.of(0.5)), given(7500.0), given(15000.0));

    private RainDemands() {}
}
