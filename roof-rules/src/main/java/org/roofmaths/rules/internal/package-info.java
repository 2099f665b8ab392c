/** Reading of comma-separated values, kept behind one type so that nobody sees the library that does it. */
@NullMarked
package org.roofmaths.rules.internal;

import org.jspecify.annotations.NullMarked;
