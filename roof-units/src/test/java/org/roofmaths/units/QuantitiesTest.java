package org.roofmaths.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.roofmaths.units.Quantities.cm;
import static org.roofmaths.units.Quantities.degrees;
import static org.roofmaths.units.Quantities.feet;
import static org.roofmaths.units.Quantities.inches;
import static org.roofmaths.units.Quantities.kg;
import static org.roofmaths.units.Quantities.length;
import static org.roofmaths.units.Quantities.level;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.onSlope;
import static org.roofmaths.units.Quantities.percent;
import static org.roofmaths.units.Quantities.pitch;
import static org.roofmaths.units.Quantities.plumb;
import static org.roofmaths.units.Quantities.squareMetres;
import static org.roofmaths.units.Quantities.squareToSlope;

import org.junit.jupiter.api.Test;

class QuantitiesTest {
    @Test
    void every_short_name_is_the_factory_it_names() {
        assertThat(mm(5)).isEqualTo(Length.ofMillimetres(5));
        assertThat(cm(5)).isEqualTo(Length.ofCentimetres(5));
        assertThat(metres(5)).isEqualTo(Length.ofMetres(5));
        assertThat(inches(5.5)).isEqualTo(Length.ofDecimalInches(5.5));
        assertThat(inches(5, 1, 2)).isEqualTo(Length.ofInches(5, 1, 2));
        assertThat(feet(5)).isEqualTo(Length.ofDecimalFeet(5));
        assertThat(length("9' 4 1/2\"")).isEqualTo(Length.ofFeetAndInches(9, 4, 1, 2));
        assertThat(degrees(35)).isEqualTo(Angle.ofDegrees(35));
        assertThat(pitch("7 in 12")).isEqualTo(Pitch.ofRiseIn12(7));
        assertThat(percent(25)).isEqualTo(Ratio.of(0.25));
        assertThat(kg(4.4)).isEqualTo(Mass.ofKilograms(4.4));
        assertThat(squareMetres(15.46)).isEqualTo(Area.ofSquareMetres(15.46));
        assertThat(level(mm(5))).isEqualTo(Offset.level(mm(5)));
        assertThat(plumb(mm(5))).isEqualTo(Offset.plumb(mm(5)));
        assertThat(onSlope(mm(5))).isEqualTo(Offset.onSlope(mm(5)));
        assertThat(squareToSlope(mm(5))).isEqualTo(Offset.squareToSlope(mm(5)));
    }
}
