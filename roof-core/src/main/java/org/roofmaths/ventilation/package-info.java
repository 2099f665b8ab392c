/**
 * Air to the roof: the free area asked at each edge, and the openings and bays that give it.
 *
 * <p>Read in this order:
 *
 * <ol>
 *   <li>{@link org.roofmaths.ventilation.VentDemand}: what is asked at an edge. No figure of a document lives in this package: rule
 *       data fills the demand, or the caller does.
 *   <li>{@link org.roofmaths.ventilation.EdgeVents}: the free area along an edge, and the continuous gap or slot that gives it.
 *   <li>{@link org.roofmaths.ventilation.RafterBays}: the bays between rafters; {@link org.roofmaths.ventilation.SpotVents}: single
 *       vents, at least one in every bay.
 *   <li>{@link org.roofmaths.ventilation.Ventilation}: a whole roof, every edge kept apart, and the bays that would get no air.
 *   <li>{@link org.roofmaths.ventilation.InsulationDepth}: what a clear void leaves for insulation.
 * </ol>
 *
 * <p>Free area is what air can pass through. Whether a roof stays dry also hangs on ceiling, underlay and use, which a person judges.
 * No method here takes or returns null; all types are immutable and safe to share between threads.
 */
@NullMarked
package org.roofmaths.ventilation;

import org.jspecify.annotations.NullMarked;
