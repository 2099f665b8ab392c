/**
 * The solver of roofs: the eaves of a plan rise as one wavefront, and where its lines meet are the hips, valleys and ridges.
 *
 * <p>Read {@link org.roofmaths.roof.internal.Skeleton} first, then {@link org.roofmaths.roof.internal.Wavefront}, which says why it
 * decides exactly. Not null-marked: fronts
 * and corners of the moving wavefront are unset until their neighbours are. Not exported; {@link org.roofmaths.roof.Roof} is the way in.
 */
package org.roofmaths.roof.internal;
