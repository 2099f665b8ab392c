/**
 * Weight, snow and wind on a roof, as indications: numbers for talking to an engineer, not for doing without one.
 *
 * <p>Read in this order:
 *
 * <ol>
 *   <li>{@link org.roofmaths.loads.CoveringMass}: what a covering weighs by the square metre, on the slope and on plan, and how it compares
 *       with the one before.
 *   <li>{@link org.roofmaths.loads.SlopeLoad}: a load on the slope, on plan and square to the slope; adding them unconverted is the classic
 *       error.
 *   <li>{@link org.roofmaths.loads.SnowIndicative}, {@link org.roofmaths.loads.SnowDrift}: snow on a pitch, and against a taller wall.
 *   <li>{@link org.roofmaths.loads.WindIndicative}, {@link org.roofmaths.loads.WindZones}, {@link org.roofmaths.loads.TileBalance}: wind
 *       pressure, edge zones, and one tile held down by its weight alone.
 *   <li>{@link org.roofmaths.loads.LeftToOthers}: what is refused, and who it is for.
 * </ol>
 *
 * <p>Every result carries its {@link org.roofmaths.loads.Caution}. No result says that a member, a fixing or a roof is strong enough. No
 * figure of a document lives in this package: the caller names a rule set and brings its figures. No method here takes or returns null; all
 * types are immutable and safe to share between threads.
 */
@NullMarked
package org.roofmaths.loads;

import org.jspecify.annotations.NullMarked;
