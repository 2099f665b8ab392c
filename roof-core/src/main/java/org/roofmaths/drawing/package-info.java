/**
 * Drawings to look at and to print: the roof on plan, each face laid flat, sections, pieces of sheet.
 *
 * <p>Read in this order:
 *
 * <ol>
 *   <li>{@link org.roofmaths.drawing.Drawing}: a drawing as data, in real size, and the picture made of it.
 *   <li>{@link org.roofmaths.drawing.FaceDrawing}: a face laid flat with its courses, units and marks.
 *   <li>{@link org.roofmaths.drawing.PlanDrawing}: the roof from above, with its edges, falls and dimensions.
 * *   <li>{@link org.roofmaths.drawing.SectionDrawing}: eaves, ridge, top abutment and verge cut through.
 * <li>{@link org.roofmaths.drawing.SheetDrawing}: a piece of metal sheet, flat, with its folds.
 * </ol>
 *
 * <p>Nothing is worked out here: what is drawn comes from layouts, roofs and pieces, and the number of a dimension is the distance drawn. Pictures
 * need no colour. No method takes or returns null.
 */
@NullMarked
package org.roofmaths.drawing;

import org.jspecify.annotations.NullMarked;
