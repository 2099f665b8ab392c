package org.roofmaths.covering.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.inches;
import static org.roofmaths.units.Quantities.kg;
import static org.roofmaths.units.Quantities.mm;

import org.junit.jupiter.api.Test;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.covering.Hanging;
import org.roofmaths.covering.PartUnit;
import org.roofmaths.covering.ShortUnit;
import org.roofmaths.covering.SingleLapUnit;
import org.roofmaths.covering.UnitKind;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.settingout.Samples;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Range;

class CoveringUnitSpecTest {
    private static DoubleLapUnit slate(Length length, Hanging hanging) {
        return DoubleLapUnit.builder()
                .name("slate")
                .kind(UnitKind.NATURAL_SLATE)
                .length(length)
                .width(mm(250))
                .joint(mm(5))
                .thickness(mm(6))
                .mass(kg(1.6))
                .hanging(hanging)
                .build();
    }

    @Test
    void greatest_gauge_of_a_single_lap_unit_is_length_less_headlap() {
        // Roof Tiling and Slating: a practical guide (2013), ch. 6
        assertThat(Samples.TILE.gaugeFor(mm(75)).value()).isEqualTo(mm(420 - 75));
        assertThat(Samples.TILE.headlapAt(mm(326)).value()).isEqualTo(mm(420 - 326));
    }

    @Test
    void gauge_of_a_plain_tile_is_half_of_what_the_headlap_leaves() {
        // a roofing consultancy's article series, Tips 8, citing BS 5534
        assertThat(Samples.PLAIN_TILE.gaugeFor(mm(65)).value()).isEqualTo(mm((265 - 65) / 2.0));
        assertThat(Samples.PLAIN_TILE.headlapAt(mm(88)).value()).isEqualTo(mm(265 - 2 * 88));
    }

    @Test
    void gauge_of_a_head_nailed_slate_counts_its_lap_from_the_hole() {
        // Notes on Building Construction, Fidler revision, ch. XIII: Ladies, 16 x 8 in, headlap 3 in, hole 1 in from
        // the head
        DoubleLapUnit ladies = slate(inches(16), Hanging.headNailed(inches(1)));

        assertThat(ladies.gaugeFor(inches(3)).value()).isEqualTo(inches(6));
        assertThat(ladies.headlapAt(inches(6)).value()).isEqualTo(inches(3));
        assertThat(ladies.gaugeFor(inches(3)).working().toText()).isEqualTo("""
                        gauge = (unit length − hole to head − headlap) ÷ 2
                          unit length = 406.4 mm  (given)
                          hole to head = 25.4 mm  (given)
                          headlap = 76.2 mm  (given)
                        = 152.4 mm
                        """);
    }

    @Test
    void holing_gauge_of_a_centre_nailed_slate_clears_the_slate_below() {
        // a roofing consultancy's article series, Tips 75: gauge + headlap + clearance
        DoubleLapUnit slate = slate(mm(600), Hanging.centreNailed(mm(4)));

        assertThat(slate.holingGauge(mm(250)).value()).isEqualTo(mm(250 + 100 + 4));
        assertThat(slate(mm(400), Hanging.centreNailed(mm(4)))
                        .holingGauge(mm(162.5))
                        .value())
                .isEqualTo(mm(162.5 + 75 + 4));
        assertThat(slate(mm(600), Hanging.headNailed(mm(25)))
                        .holingGauge(mm(250))
                        .value())
                .isEqualTo(mm(600 - 25));
    }

    @Test
    void a_unit_on_nibs_has_no_holing_gauge() {
        assertThatThrownBy(() -> Samples.PLAIN_TILE.holingGauge(mm(100)))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage(
                        "holing gauge must be asked of a nailed unit, but plain tile is hung on nibs, hanging length 250 mm");
    }

    @Test
    void under_eaves_slates_are_shorter_by_the_gauge() {
        // Modern Buildings, vol. 1: 450 slates, headlap 90: 270 centre-nailed at 180, 282.5 head-nailed at 167.5
        assertThat(slate(mm(450), Hanging.centreNailed(mm(4)))
                        .underEavesLength(mm(180))
                        .value())
                .isEqualTo(mm(450 - 180));
        assertThat(slate(mm(450), Hanging.headNailed(mm(25)))
                        .underEavesLength(mm(167.5))
                        .value())
                .isEqualTo(mm(167.5 + 90 + 25));
    }

    @Test
    void holed_slates_allow_twice_the_hole_less_the_length() {
        assertThat(slate(mm(500), Hanging.centreNailed(mm(4)))
                        .greatestHeadlapForHole(mm(291.5))
                        .value())
                .isEqualTo(mm(2 * 291.5 - 500));
    }

    @Test
    void sidelap_in_half_bond_is_half_of_width_less_joint() {
        assertThat(Samples.SLATE.sidelap().value()).isEqualTo(mm((250 - 3) / 2.0));
    }

    @Test
    void units_battens_and_mass_on_a_square_metre() {
        // NBS H62 clause 275 (2014) as printed in a published project specification: joints of 5 mm at most
        DoubleLapUnit slate = slate(mm(500), Hanging.centreNailed(mm(4)));

        double number = 1 / (0.255 * 0.2125);
        // printed digits of nothing: these are the same sums, apart from the rounding of a double
        assertThat(slate.unitsPerSquareMetre(mm(212.5)).value()).isCloseTo(number, within(1e-9));
        assertThat(slate.battenPerSquareMetre(mm(212.5)).value()).isCloseTo(1 / 0.2125, within(1e-9));
        assertThat(slate.massOnSlope(mm(212.5)).value().toKilogramsPerSquareMetre())
                .isCloseTo(1.6 * number, within(1e-9));
        assertThat(slate.massOnPlan(mm(212.5), Pitch.ofDegrees(40)).value().toKilogramsPerSquareMetre())
                .isCloseTo(1.6 * number / Math.cos(Math.toRadians(40)), within(1e-9));
        assertThat(slate.massOnPlan(mm(212.5), Pitch.ofDegrees(40)).working().disagreements())
                .isEmpty();
    }

    @Test
    void an_impossible_tile_is_refused_with_every_reason() {
        assertThatThrownBy(() -> SingleLapUnit.builder()
                        .name(" ")
                        .kind(UnitKind.CLAY_PLAIN_TILE)
                        .length(mm(420))
                        .hangingLength(mm(430))
                        .overallWidth(mm(290))
                        .coverWidth(mm(310))
                        .leastHeadlap(mm(420))
                        .thickness(mm(25))
                        .mass(kg(0))
                        .coverRange(Range.closed(mm(297), mm(303)))
                        .leastGauge(mm(345))
                        .greatestGauge(mm(310))
                        .crownHeight(mm(20))
                        .halfUnit(new PartUnit(mm(320), kg(2)))
                        .leftVergeUnit(new PartUnit(mm(0), kg(2)))
                        .build())
                .isInstanceOf(ProblemsException.class)
                .hasMessage("""
                        name must say what the unit is, but was " "
                        kind must be of a single-lap unit, but was clay plain tile
                        hangingLength must be above 0 mm and below the length of 420 mm, but was 430 mm
                        coverWidth must lie in coverRange [297 mm..303 mm], but was 310 mm
                        overallWidth must be at least the cover width of 310 mm, but was 290 mm
                        leastHeadlap must be above 0 mm and below the length of 420 mm, but was 420 mm
                        crownHeight must be at least the thickness of 25 mm, but was 20 mm
                        mass must be above 0 kg, but was 0 kg
                        greatestGauge must be at least the least gauge of 345 mm, but was 310 mm
                        halfUnit must be above 0 mm and below the cover width of 310 mm, but was 320 mm
                        leftVergeUnit must be above 0 mm, but was 0 mm""");
    }

    @Test
    void a_range_of_covers_needs_two_ends() {
        assertThatThrownBy(() -> SingleLapUnit.builder()
                        .name("tile")
                        .kind(UnitKind.CLAY_PANTILE)
                        .length(mm(340))
                        .hangingLength(mm(320))
                        .overallWidth(mm(240))
                        .coverWidth(mm(200))
                        .leastHeadlap(mm(75))
                        .thickness(mm(15))
                        .mass(kg(2.5))
                        .coverRange(Range.atLeast(mm(198)))
                        .build())
                .hasMessage("coverRange must have a least and a greatest width, but was [198 mm..)");
    }

    @Test
    void an_impossible_slate_is_refused_with_every_reason() {
        assertThatThrownBy(() -> DoubleLapUnit.builder()
                        .name("slate")
                        .kind(UnitKind.CONCRETE_SINGLE_LAP_TILE)
                        .length(mm(500))
                        .width(mm(250))
                        .joint(mm(-1))
                        .thickness(mm(0))
                        .mass(kg(1.6))
                        .hanging(Hanging.centreNailed(mm(500)))
                        .jointRange(Range.closed(mm(3), mm(5)))
                        .unitAndAHalf(new PartUnit(mm(250), kg(2.4)))
                        .underEavesUnit(new ShortUnit(mm(190), mm(195), kg(0.8)))
                        .topsUnit(new ShortUnit(mm(600), mm(175), kg(0.8)))
                        .build())
                .hasMessage("""
                        kind must be of a double-lap unit, but was concrete single-lap tile
                        joint must be 0 mm or more and below the width of 250 mm, but was -1 mm
                        joint must lie in jointRange [3 mm..5 mm], but was -1 mm
                        thickness must be above 0 mm, but was 0 mm
                        hole clearance must be 0 mm or more and below the length of 500 mm, but was 500 mm
                        unitAndAHalf must be above 250 mm, but was 250 mm
                        underEavesUnit hanging length must be above 0 mm and below its length of 190 mm, but was 195 mm
                        topsUnit length must be above 0 mm and below the length of 500 mm, but was 600 mm
                        topsUnit must be left out for a centre-nailed unit, whose top course is cut, but was length 600 mm, hanging 175 mm, 0.8 kg""");
    }

    @Test
    void a_headlap_above_a_third_is_no_business_of_the_unit() {
        CoveringUnit slate = slate(mm(500), Hanging.centreNailed(mm(4)));

        assertThat(slate.gaugeFor(mm(200)).value()).isEqualTo(mm((500 - 200) / 2.0));
    }
}
