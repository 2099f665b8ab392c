package org.roofmaths.units;

import java.io.Serializable;

/**
 * A number with its unit: a length, an area, a pitch and so on.
 * <p>
 * The family is closed. Every member is final, immutable, safe to share between threads, ordered by an exact
 * {@code compareTo} that agrees with {@code equals}, and printed by {@code toString} in a form that the {@code parse}
 * method of its class reads back to an equal value, whatever the locale of the machine.
 *
 * @since 0.1
 */
public sealed interface Quantity extends Serializable
        permits Length,
                Area,
                Angle,
                Pitch,
                Ratio,
                Mass,
                ArealMass,
                Pressure,
                FlowRate,
                RainfallIntensity,
                AreaPerLength {

    /**
     * Returns the bare number in the coherent unit of the International System (SI): metres, square metres, radians
     * (angle and pitch), 1 (ratio), kilograms, kilograms per square metre, pascals, cubic metres per second, metres per
     * second (rainfall) or square metres per metre.
     *
     * @return the number, finite
     * @since 0.1
     */
    double toSi();

    /**
     * Returns which of the kinds this is.
     *
     * @return the kind
     * @since 0.1
     */
    QuantityKind kind();
}
