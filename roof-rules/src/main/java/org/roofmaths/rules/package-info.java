/**
 * Published figures with their document, edition and place, and checks of a roof against them.
 */
@NullMarked
@RoofStyle
package org.roofmaths.rules;

import org.jspecify.annotations.NullMarked;
import org.roofmaths.internal.style.RoofStyle;
