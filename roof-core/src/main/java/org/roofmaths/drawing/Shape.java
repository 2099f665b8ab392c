package org.roofmaths.drawing;

import java.io.Serializable;

/**
 * One thing on a drawing, in real size: a line, a polygon, an arc, an arrow, a label or a dimension.
 *
 * @since 0.1
 */
public sealed interface Shape extends Serializable permits Line, Polygon, Arc, Arrow, Label, Dimension {}
