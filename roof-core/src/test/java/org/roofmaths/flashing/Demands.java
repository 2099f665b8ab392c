package org.roofmaths.flashing;

import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.working.Figure.given;

import org.roofmaths.units.ArealMass;

/** Demands for tests. The figures are inputs of a test, not rules. */
public final class Demands {
    /** 1.80 mm and 20.41 kg/m²: code 4 of BS EN 12588 as general web pages print it (not read in the standard). */
    public static final LeadSheet CODE_4 =
            LeadSheet.of("lead code 4", given(mm(1.8)), given(ArealMass.ofKilogramsPerSquareMetre(20.41)));

    /** 1.32 mm and 14.97 kg/m²: code 3, from the same pages. */
    public static final LeadSheet CODE_3 =
            LeadSheet.of("lead code 3", given(mm(1.32)), given(ArealMass.ofKilogramsPerSquareMetre(14.97)));

    /** Upstand 75, cover 150, tuck 25, lap 100, pieces of 1.5 m, water line 65, wedges at 450. */
    public static final FlashingDemand WALL = FlashingDemand.builder()
            .sheet(CODE_4)
            .upstand(given(mm(75)))
            .cover(given(mm(150)))
            .tuck(given(mm(25)))
            .sideLap(given(mm(100)))
            .longestPiece(given(metres(1.5)))
            .waterLine(given(mm(65)))
            .wedgeSpacing(given(mm(450)))
            .build();

    /** Up the wall 75, under the covering 100, turned over the head 25. */
    public static final SoakerDemand SOAKER = SoakerDemand.builder()
            .sheet(CODE_3)
            .upTheWall(given(mm(75)))
            .underCovering(given(mm(100)))
            .turnOver(given(mm(25)))
            .build();

    private Demands() {}
}
