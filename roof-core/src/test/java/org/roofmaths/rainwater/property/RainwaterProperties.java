package org.roofmaths.rainwater.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;

import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.roofmaths.rainwater.Catchment;
import org.roofmaths.rainwater.Gutter;
import org.roofmaths.rainwater.GutterRun;
import org.roofmaths.rainwater.GutterSection;
import org.roofmaths.rainwater.LandingStrip;
import org.roofmaths.rainwater.Outlet;
import org.roofmaths.rainwater.OutletRegime;
import org.roofmaths.rainwater.RainDemands;
import org.roofmaths.rainwater.Stretch;
import org.roofmaths.units.Pitch;

class RainwaterProperties {

    @Property
    void weir_and_orifice_meet_at_half_the_diameter(@ForAll @IntRange(min = 20, max = 300) int diameter) {
        Outlet weir = Outlet.of(mm(diameter), mm(diameter / 2.0), RainDemands.OPEN);
        Outlet orifice = Outlet.of(mm(diameter), mm(diameter / 2.0 + 0.001), RainDemands.OPEN);

        assertThat(weir.regime()).isEqualTo(OutletRegime.WEIR);
        assertThat(orifice.regime()).isEqualTo(OutletRegime.ORIFICE);
        // a thousandth of a millimetre of head is at most 1/20 000 of the head
        assertThat(orifice.capacity().toLitresPerSecond())
                .isCloseTo(
                        weir.capacity().toLitresPerSecond(),
                        within(weir.capacity().toLitresPerSecond() / 10_000));
    }

    @Property
    void stretches_carry_all_the_water(
            @ForAll @IntRange(min = 1000, max = 30_000) int eaves,
            @ForAll @IntRange(min = 1, max = 6) int outlets,
            @ForAll @DoubleRange(min = 0, max = 1) double from,
            @ForAll @DoubleRange(min = 0, max = 1) double to) {
        Catchment upper = Catchment.of(metres(2), metres(2), Pitch.ofDegrees(40), RainDemands.HALF_THE_RISE);
        LandingStrip strip = new LandingStrip(mm(eaves * Math.min(from, to)), mm(eaves * Math.max(from, to)));
        Catchment all = Catchment.of(mm(eaves), metres(3), Pitch.ofDegrees(30), RainDemands.HALF_THE_RISE)
                .plusUpper(upper, strip);

        GutterRun run = GutterRun.evenly(mm(eaves), outlets, all);

        double sum = run.stretches().stream()
                .mapToDouble(stretch -> stretch.area().toSquareMetres())
                .sum();
        assertThat(sum).isCloseTo(all.effectiveArea().toSquareMetres(), within(1e-6)); // ends stored to the nanometre
        double length = run.stretches().stream()
                .map(Stretch::length)
                .mapToDouble(l -> l.toMillimetres())
                .sum();
        assertThat(length).isCloseTo(eaves, within(1e-9));
        double toOutlets = IntStream.rangeClosed(1, outlets)
                .mapToDouble(i -> run.areaTo(i).toSquareMetres())
                .sum();
        assertThat(toOutlets).isCloseTo(sum, within(1e-9));
    }

    @Property
    void a_steeper_slope_never_catches_less(
            @ForAll @DoubleRange(min = 5, max = 80) double degrees,
            @ForAll @DoubleRange(min = 0.1, max = 5) double more) {
        double flat = Catchment.of(metres(10), metres(4), Pitch.ofDegrees(degrees), RainDemands.HALF_THE_RISE)
                .effectiveArea()
                .toSquareMetres();
        double steep = Catchment.of(metres(10), metres(4), Pitch.ofDegrees(degrees + more), RainDemands.HALF_THE_RISE)
                .effectiveArea()
                .toSquareMetres();

        assertThat(steep).isGreaterThan(flat);
    }

    @Property
    void doubling_the_section_carries_two_and_a_quarter_root_times_more(
            @ForAll @IntRange(min = 50, max = 300) int side) {
        double one = Gutter.of(GutterSection.rectangular(mm(side), mm(50)), RainDemands.HALF_ROUND)
                .capacity()
                .toLitresPerSecond();
        double two = Gutter.of(GutterSection.rectangular(mm(2 * side), mm(50)), RainDemands.HALF_ROUND)
                .capacity()
                .toLitresPerSecond();

        assertThat(two / one).isCloseTo(Math.pow(2, 1.25), within(1e-9));
    }
}
