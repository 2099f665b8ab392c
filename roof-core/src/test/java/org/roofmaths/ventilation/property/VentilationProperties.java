package org.roofmaths.ventilation.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.mm;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.roofmaths.units.Area;
import org.roofmaths.units.Ratio;
import org.roofmaths.ventilation.EdgeVents;
import org.roofmaths.ventilation.RafterBays;
import org.roofmaths.ventilation.SpotVents;
import org.roofmaths.ventilation.Vent;
import org.roofmaths.ventilation.VentDemand;

class VentilationProperties {

    @Property
    void vents_are_never_fewer_than_bays_nor_give_less_than_asked(
            @ForAll @IntRange(min = 1000, max = 30_000) int length,
            @ForAll @IntRange(min = 200, max = 900) int centres,
            @ForAll @IntRange(min = 1, max = 25) int gap,
            @ForAll @IntRange(min = 1000, max = 30_000) int freeArea) {
        RafterBays bays = RafterBays.of(mm(length), mm(centres), mm(47));
        EdgeVents edge = EdgeVents.along("eaves", mm(length), VentDemand.gap(mm(gap)));
        SpotVents vents = edge.provided(Vent.of("vent", Area.ofSquareMillimetres(freeArea)), bays);

        assertThat(vents.count()).isGreaterThanOrEqualTo(bays.count());
        assertThat(edge.shortfall(vents.provided())).isEmpty();
        assertThat(vents.perBay()).allMatch(n -> n >= 1).hasSize(bays.count());
        assertThat(vents.perBay().stream().mapToInt(n -> n).sum()).isEqualTo(vents.count());
        assertThat(vents.perBay().stream().mapToInt(n -> n).max().orElseThrow()
                        - vents.perBay().stream().mapToInt(n -> n).min().orElseThrow())
                .isLessThanOrEqualTo(1);
        assertThat(vents.working().disagreements()).isEmpty();
    }

    @Property
    void bays_and_rafters_make_up_the_length(
            @ForAll @IntRange(min = 1000, max = 30_000) int length,
            @ForAll @IntRange(min = 200, max = 900) int centres) {
        RafterBays bays = RafterBays.of(mm(length), mm(centres), mm(47));

        double clear = bays.bays().stream()
                .mapToDouble(bay -> bay.clearWidth().toMillimetres())
                .sum();
        assertThat(clear + (bays.count() + 1) * 47).isCloseTo(length, within(1e-6));
        assertThat(bays.clearWidth().toMillimetres()).isCloseTo(clear, within(1e-6));
    }

    @Property
    void the_slot_by_the_bays_gives_what_is_asked(
            @ForAll @IntRange(min = 1000, max = 30_000) int length,
            @ForAll @IntRange(min = 200, max = 900) int centres,
            @ForAll @IntRange(min = 1, max = 25) int gap) {
        RafterBays bays = RafterBays.of(mm(length), mm(centres), mm(47));
        EdgeVents edge = EdgeVents.along("eaves", mm(length), VentDemand.gap(mm(gap)));
        Ratio open = Ratio.of(0.7);

        double made = edge.areaOfSlot(edge.slotByBays(bays, open).value(), bays, open)
                .value()
                .toSquareMillimetres();
        // the slot is stored to the nearest nanometre, half of which over 30 m is 15 mm² ÷ 1000
        assertThat(made).isCloseTo(edge.asked().toSquareMillimetres(), within(0.02));
    }
}
