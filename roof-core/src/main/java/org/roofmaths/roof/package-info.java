/** Roofs as shapes: faces, edges, lines. */
@NullMarked
package org.roofmaths.roof;

import org.jspecify.annotations.NullMarked;
