/**
 * A whole job: what was asked, and the page of results to take up the ladder.
 */
@NullMarked
@RoofStyle
package org.roofmaths.sheet;

import org.jspecify.annotations.NullMarked;
import org.roofmaths.internal.style.RoofStyle;
