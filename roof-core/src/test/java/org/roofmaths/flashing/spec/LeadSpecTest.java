package org.roofmaths.flashing.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;
import static org.roofmaths.working.Figure.given;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roofmaths.flashing.Demands;
import org.roofmaths.flashing.HardMetalSheet;
import org.roofmaths.flashing.LeadLap;
import org.roofmaths.flashing.LeadSheet;
import org.roofmaths.units.ArealMass;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Worked;

class LeadSpecTest {
    private static final ArealMass DENSITY = ArealMass.ofKilogramsPerSquareMetre(11.34);

    /** BS EN 12588 as general web pages print it, two digits; code 6 from memory; 11 340 kg/m³ from memory. */
    @ParameterizedTest
    @CsvSource({"1.32, 14.97", "1.80, 20.41", "2.24, 25.40", "2.65, 30.05", "3.15, 35.72", "3.55, 40.26"})
    void mass_follows_the_thickness(double thickness, double printed) {
        LeadSheet sheet = LeadSheet.ofDensity("lead", given(mm(thickness)), given(DENSITY));

        assertThat(sheet.arealMass().value().toKilogramsPerSquareMetre()).isCloseTo(printed, within(0.005));
        assertThat(((Worked<ArealMass>) sheet.arealMass()).working().disagreements())
                .isEmpty();
    }

    /** A roofing consultancy's article (Tips 4), quoting the Lead Sheet Manual: 150 at 30°, 200 at 22°, 290 at 15°. */
    @ParameterizedTest
    @CsvSource({"30, 150", "22, 200", "15, 290", "55, 150"})
    void laps_grow_as_the_slope_flattens(double degrees, double printed) {
        Worked<Length> lap = LeadLap.upTheSlope(given(Pitch.ofDegrees(degrees)), given(mm(75)), given(mm(150)));

        assertThat(lap.value().toMillimetres()).isCloseTo(printed, within(0.5));
        assertThat(lap.working().disagreements()).isEmpty();
    }

    @Test
    void a_lap_can_be_the_cover_of_a_demand() {
        Worked<Length> lap = LeadLap.upTheSlope(given(pitch("22°")), given(mm(75)), given(mm(150)));

        assertThat(Demands.WALL.withCover(lap).cover().value()).isEqualTo(mm(75 / Math.sin(Math.toRadians(22))));
        assertThat(Demands.WALL.withCover(lap).waterLine()).contains(given(mm(65)));
    }

    /** Own geometry, camber ignored: plain tile 12 on 100 lies 6.8° flatter, interlocking 20 on 345 3.3°, slate 6 on 200 1.7°. */
    @ParameterizedTest
    @CsvSource({"12, 100, 6.8", "20, 345, 3.3", "6, 200, 1.7"})
    void a_laid_unit_lies_flatter_than_its_rafter(double thickness, double gauge, double flatter) {
        Worked<Pitch> laid = LeadLap.truePitch(given(pitch("40°")), given(mm(thickness)), given(mm(gauge)));

        assertThat(40 - laid.value().toDegrees()).isCloseTo(flatter, within(0.05));
        assertThat(laid.working().disagreements()).isEmpty();
    }

    @Test
    void refuses_a_unit_that_would_fall_backwards() {
        assertThatThrownBy(() -> LeadLap.truePitch(given(pitch("5°")), given(mm(12)), given(mm(100))))
                .hasMessage(
                        "rafter pitch under the unit must be steeper than the unit kicks up; a unit of 12 mm at gauge 100 mm would"
                                + " lie level or fall backwards, but was 5°");
        assertThatThrownBy(() -> LeadLap.truePitch(given(pitch("5°")), given(mm(0)), given(mm(0))))
                .hasMessage("""
                thickness of the unit must be above 0 mm, but was 0 mm
                gauge of the unit must be above 0 mm, but was 0 mm""");
        assertThatThrownBy(() -> LeadLap.upTheSlope(given(pitch("5°")), given(mm(0)), given(mm(-1))))
                .hasMessage("""
                weathering height of a lap must be above 0 mm, but was 0 mm
                least lap up the slope must be 0 mm or more, but was -1 mm""");
    }

    @Test
    void refuses_a_sheet_without_thickness_or_mass() {
        assertThatThrownBy(() -> LeadSheet.of("lead", given(mm(0)), given(ArealMass.ZERO)))
                .hasMessage("""
                sheet thickness must be above 0 mm, but was 0 mm
                sheet mass per area must be above 0 kg/m², but was 0 kg/m²""");
        assertThatThrownBy(() -> new HardMetalSheet("zinc", given(mm(-1)), given(ArealMass.ZERO)))
                .hasMessage("""
                sheet thickness must be above 0 mm, but was -1 mm
                sheet mass per area must be above 0 kg/m², but was 0 kg/m²""");
    }

    @Test
    void prints_thickness_and_mass() {
        assertThat(Demands.CODE_4).hasToString("lead code 4, 1.8 mm, 20.41 kg/m²");
        assertThat(new HardMetalSheet("zinc", given(mm(0.8)), given(ArealMass.ofKilogramsPerSquareMetre(5.76))))
                .hasToString("zinc, 0.8 mm, 5.76 kg/m²");
    }
}
