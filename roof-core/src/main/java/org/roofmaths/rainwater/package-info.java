/**
 * Rainwater: the area that catches it, the flow, and the gutters, outlets and pipes that take it.
 *
 * <p>Read in this order:
 *
 * <ol>
 *   <li>{@link org.roofmaths.rainwater.Catchment}: the effective area of slopes, walls and upper roofs by one rule set
 *       ({@link org.roofmaths.rainwater.CatchmentDemand}), and its flow at a rainfall intensity.
 *   <li>{@link org.roofmaths.rainwater.Gutter}: what an eaves gutter carries; {@link org.roofmaths.rainwater.GutterSize}: a row of a table
 *       that sizes gutters by area.
 *   <li>{@link org.roofmaths.rainwater.GutterRun}: the outlets along an eaves and what reaches each.
 *   <li>{@link org.roofmaths.rainwater.Outlet}, {@link org.roofmaths.rainwater.Downpipe}: what they take.
 * </ol>
 *
 * <p>No figure of a document lives in this package: rule data fills the demands, or the caller does. Rainfall is that of the place, from its
 * authority's map. Valley, parapet and internal gutters are not worked out: what overflows there enters the building. No method here takes
 * or returns null; all types are immutable and safe to share between threads.
 */
@NullMarked
package org.roofmaths.rainwater;

import org.jspecify.annotations.NullMarked;
