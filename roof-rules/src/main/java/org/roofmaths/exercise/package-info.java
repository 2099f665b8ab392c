/**
 * Exercise sheets for a class, made from the same figures and workings as a real job.
 */
@NullMarked
@RoofStyle
package org.roofmaths.exercise;

import org.jspecify.annotations.NullMarked;
import org.roofmaths.internal.style.RoofStyle;
