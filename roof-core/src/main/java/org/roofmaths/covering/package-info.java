/**
 * The tiles and slates of a roof: what they are, how large, and what gauge and headlap they give.
 *
 * <p>Read in this order:
 *
 * <ol>
 *   <li>{@link org.roofmaths.covering.SingleLapUnit}: a tile that covers the next course only. Greatest gauge is length less
 *       headlap.
 *   <li>{@link org.roofmaths.covering.DoubleLapUnit}: a plain tile or a sized slate. Length is two gauges and a headlap.
 *   <li>{@link org.roofmaths.covering.CoveringUnit}: what both have, with gauge, headlap, numbers and mass per area as formulas with
 *       their workings.
 *   <li>{@link org.roofmaths.covering.UnitKind}: what rule tables call the unit.
 * </ol>
 *
 * <p>Sizes are the caller's: of the unit in hand, not of any maker. No figure of a document stands here; a builder refuses only what
 * cannot be, such as a hanging length above the length.
 *
 * <p>No method here takes or returns null, except {@code equals}. All types are immutable and safe to share between threads.
 */
@NullMarked
package org.roofmaths.covering;

import org.jspecify.annotations.NullMarked;
