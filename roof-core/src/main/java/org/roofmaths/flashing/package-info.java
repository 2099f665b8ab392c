/**
 * Sheet metal where the covering meets a wall: what to cut, which bed joints it goes into, what it weighs.
 *
 * <p>Read in this order:
 *
 * <ol>
 *   <li>{@link org.roofmaths.flashing.FlashingDemand}: what is asked of a flashing, as figures with their sources. No figure of a
 *       document lives in this package: rule data fills the demand, or the caller does.
 *   <li>{@link org.roofmaths.flashing.CoveringLine}: where the highest part of the covering meets the wall, level or sloping;
 *       {@link org.roofmaths.flashing.BedJoints}: the joints of the wall.
 *   <li>{@link org.roofmaths.flashing.CoverFlashing}, {@link org.roofmaths.flashing.StepFlashing},
 *       {@link org.roofmaths.flashing.Soakers}, {@link org.roofmaths.flashing.StackFlashings},
 *       {@link org.roofmaths.flashing.ValleyLining} and others: the work itself. All are {@link org.roofmaths.flashing.Flashing}s:
 *       pieces, girth, length, mass, a template of each piece, and what a person should know.
 *   <li>{@link org.roofmaths.flashing.RollCutting}: which piece comes out of which roll.
 *   <li>{@link org.roofmaths.flashing.LeadSheet}: lead by its thickness. {@link org.roofmaths.flashing.LeadLap}: how far lead laps up a
 *       slope.
 * </ol>
 *
 * <p>Heights are over one datum, that of the roof. Girths are measured flat, before folding. No method here takes or returns null;
 * all types are immutable and safe to share between threads.
 */
@NullMarked
package org.roofmaths.flashing;

import org.jspecify.annotations.NullMarked;
