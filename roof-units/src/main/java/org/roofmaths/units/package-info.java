/**
 * Numbers with units: lengths, areas, angles and pitches that are exact where it matters, print as a person would write
 * them, and read back what they print.
 * <p>
 * Start with {@link org.roofmaths.units.Length}, {@link org.roofmaths.units.Pitch},
 * {@link org.roofmaths.units.Offset}, {@link org.roofmaths.units.Range} and {@link org.roofmaths.units.Rounding};
 * {@link org.roofmaths.units.Quantities} has short names for all of them. Every snippet below is compiled and its
 * printed answer compared in a test.
 *
 * <h2>A length is exact</h2>
 * It is a whole number of nanometres, and so are the millimetre and 1/64 of an inch. Sums are exact.
 * <pre>{@code
 * mm(0.1).plus(mm(0.2))                // 0.3 mm
 * inches(13, 9, 16)                    // 344.4875 mm
 * metres(4.6).times(metres(2.7))       // 12.42 m²
 * mm(325).timesIn(mm(3912))            // 12 times, rest 12 mm
 * }</pre>
 *
 * <h2>A text says its unit, or it is refused</h2>
 * {@code toString} never depends on the machine's locale, and {@code parse} reads it back to an equal value. Other
 * forms are read too; none is guessed.
 * <pre>{@code
 * length("9' 4 1/2\"")                 // 2857.5 mm
 * length("5.2 m")                      // 5200 mm
 * length("5200")                       // "5200": unit must be mm, cm, m, in, ft or yd, but the text ended (at index 4)
 * }</pre>
 *
 * <h2>A pitch is one thing with many notations</h2>
 * <pre>{@code
 * pitch("7 in 12")                     // 30.25643716352927°
 * pitch("1 in 2.5").toPercent()        // 40.0
 * pitch("35°").slopeOver(mm(3600))     // 4394.78852 mm
 * pitch("95°")                         // "95°": pitch must be above 0° and below 90°, but was 95° (at index 0)
 * }</pre>
 *
 * <h2>A distance says how it was measured</h2>
 * Level for slope is the commonest mistake on a roof, so what a person types is an offset with its direction.
 * <pre>{@code
 * level(mm(50)).to(Direction.ON_SLOPE, pitch("35°"))        // 61.038729 mm
 * squareToSlope(mm(45)).to(Direction.PLUMB, pitch("40°"))   // 58.743328 mm
 * }</pre>
 *
 * <h2>A limit shows its ends, a tolerance is passed along</h2>
 * Equality is exact. Nearness is asked for with a tolerance in hand. Limits and whole counts are decided at a stated
 * resolution far below a measurement, so that storage never costs a course.
 * <pre>{@code
 * Range.closedOpen(pitch("30°"), pitch("35°"))              // [30°..35°)
 * mm(300.5).isWithin(Tolerance.ofMillimetres(0.5), mm(300)) // true
 * mm(300).timesToCover(mm(3000.000001))                     // 10
 * }</pre>
 *
 * <h2>Nothing rounds by itself</h2>
 * A rounding is an object with a name. For marks on one tape the running values are rounded, so that the sum closes.
 * <pre>{@code
 * Rounding<Length> whole = Rounding.toNearest(mm(1));
 * whole                                                                  // to the nearest 1 mm
 * whole.apply(inches(13, 9, 16))                                         // 344 mm
 * whole.running(List.of(mm(324.75), mm(324.75), mm(324.75), mm(324.75))) // [325 mm, 325 mm, 324 mm, 325 mm]
 * }</pre>
 *
 * <h2>Writing for people is apart</h2>
 * <pre>{@code
 * LengthFormat.feetAndInches(16).format(mm(2857.5))                          // 9 ft 4 1/2 in
 * LengthFormat.metres(2).withLocale(Locale.GERMANY).format(metres(4.39479))  // 4,39 m
 * AngleFormat.degreesMinutesSeconds(0).format(degrees(22.504166))            // 22° 30' 15"
 * PitchFormat.riseIn12(2).format(pitch("35°"))                               // 8.40 in 12
 * }</pre>
 * <p>
 * No parameter takes null and no method returns it. Every type is immutable and thread-safe. Angles are stored in
 * degrees; a plain {@code double} of a length or an angle appears only in the methods named {@code ofX} and
 * {@code toX}, and in sines, cosines and tangents.
 *
 * @since 0.1
 */
@NullMarked
package org.roofmaths.units;

import org.jspecify.annotations.NullMarked;
