/** Holds no types: it gives every package below it in this module the one style of generated builders. */
@RoofStyle
package org.roofmaths;

import org.roofmaths.internal.style.RoofStyle;
