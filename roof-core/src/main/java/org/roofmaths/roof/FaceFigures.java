package org.roofmaths.roof;

import java.io.Serializable;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;

/**
 * The numbers of a face that a ready-made plan knows by name, each with its origin: a drawing says {@code span 5 m},
 * and the working of the slope length shall start there and not at a coordinate.
 */
record FaceFigures(Figure<Length> eavesWidth, Figure<Length> topWidth, Figure<Length> run) implements Serializable {}
