/**
 * Numbers with units: lengths, areas, angles, pitches and their text.
 * <p>
 * No parameter takes null and no method returns it.
 *
 * @since 0.1
 */
@NullMarked
package org.roofmaths.units;

import org.jspecify.annotations.NullMarked;
