/** How generated definitions and their builders look; the same in every module. */
@NullMarked
package org.roofmaths.internal.style;

import org.jspecify.annotations.NullMarked;
