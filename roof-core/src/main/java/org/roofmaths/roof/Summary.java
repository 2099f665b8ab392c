package org.roofmaths.roof;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;

/** Rounds numbers for the one-line summaries of roofs; every number is to be had in full from its accessor. */
final class Summary {
    private Summary() {}

    static String area(Area area) {
        return rounded(area.toSquareMetres()) + " m²";
    }

    static String length(Length length) {
        return rounded(length.toMillimetres()) + " mm";
    }

    static String pitch(Pitch pitch) {
        return rounded(pitch.toDegrees()) + "°";
    }

    static String angle(Angle angle) {
        return rounded(angle.toDegrees()) + "°";
    }

    private static String rounded(double number) {
        return new BigDecimal(number)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
