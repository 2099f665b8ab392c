package org.roofmaths.checks.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.function.ToDoubleFunction;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import javax.measure.quantity.Mass;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** The reference implementation of JSR-385 as an independent converter, over random values. */
class IndependentConverterProperties {
    private static final Unit<javax.measure.quantity.Length> MILLIMETRE = MetricPrefix.MILLI(Units.METRE);

    // That library has no inch of its own: 127/5 mm, exact by definition.
    private static final Unit<javax.measure.quantity.Length> INCH =
            MILLIMETRE.multiply(127).divide(5);
    private static final Unit<javax.measure.quantity.Length> FOOT = INCH.multiply(12);

    private static final Map<Unit<javax.measure.quantity.Length>, ToDoubleFunction<Length>> LENGTH_UNITS = Map.of(
            MILLIMETRE,
            Length::toMillimetres,
            MetricPrefix.CENTI(Units.METRE),
            Length::toCentimetres,
            Units.METRE,
            Length::toMetres,
            INCH,
            Length::toInches,
            FOOT,
            Length::toFeet,
            FOOT.multiply(3),
            Length::toYards);

    /** Three or four roundings of a double on each side. */
    private static final double RELATIVE = 8 * 0x1p-53;

    /** Half a nanometre of storage. */
    private static final double HALF_A_NANOMETRE_IN_MM = 0.5e-6;

    @Provide
    Arbitrary<Double> numbers() {
        return Arbitraries.doubles().between(-100_000, 100_000).ofScale(6);
    }

    @Property
    void lengths_convert_alike(@ForAll("numbers") double number) {
        Map<Unit<javax.measure.quantity.Length>, Length> made = Map.of(
                MILLIMETRE,
                Length.ofMillimetres(number),
                MetricPrefix.CENTI(Units.METRE),
                Length.ofCentimetres(number),
                Units.METRE,
                Length.ofMetres(number),
                INCH,
                Length.ofDecimalInches(number),
                FOOT,
                Length.ofDecimalFeet(number),
                FOOT.multiply(3),
                Length.ofYards(number));
        made.forEach((from, length) -> LENGTH_UNITS.forEach((to, reader) -> {
            double theirs =
                    Quantities.getQuantity(number, from).to(to).getValue().doubleValue();
            double storage = HALF_A_NANOMETRE_IN_MM
                    * Quantities.getQuantity(1, MILLIMETRE).to(to).getValue().doubleValue();
            assertThat(reader.applyAsDouble(length))
                    .as("%s %s in %s", number, from, to)
                    .isCloseTo(theirs, within(storage + Math.abs(theirs) * RELATIVE));
        }));
    }

    @Property
    void areas_convert_alike(@ForAll("numbers") double number) {
        Unit<javax.measure.quantity.Area> squareFoot = FOOT.multiply(FOOT).asType(javax.measure.quantity.Area.class);
        double theirs = Quantities.getQuantity(number, squareFoot)
                .to(Units.SQUARE_METRE)
                .getValue()
                .doubleValue();
        assertThat(Area.ofSquareFeet(number).toSquareMetres()).isCloseTo(theirs, within(Math.abs(theirs) * RELATIVE));
    }

    @Property
    void masses_convert_alike(@ForAll("numbers") double number) {
        Unit<Mass> pound = Units.KILOGRAM.multiply(45_359_237).divide(100_000_000);
        double theirs = Quantities.getQuantity(number, pound)
                .to(Units.KILOGRAM)
                .getValue()
                .doubleValue();
        assertThat(org.roofmaths.units.Mass.ofPounds(number).toKilograms())
                .isCloseTo(theirs, within(Math.abs(theirs) * RELATIVE));
    }
}
