/** The one place that touches the numerics library; nothing of it shows outside. */
@NullMarked
package org.roofmaths.internal.numerics;

import org.jspecify.annotations.NullMarked;
