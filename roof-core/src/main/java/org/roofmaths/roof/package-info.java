/**
 * Roofs as shapes: plans, faces, edges, lines and angles.
 *
 * <p>Read in this order:
 *
 * <ol>
 *   <li>{@link org.roofmaths.roof.Roofs}: ready-made roofs from the sizes by which a builder names them.
 *   <li>{@link org.roofmaths.roof.Slope}: how steep, by pitch, by two heights, or by both.
 *   <li>{@link org.roofmaths.roof.Roof}: the shape, made of {@link org.roofmaths.roof.RoofFace faces} and
 *       {@link org.roofmaths.roof.RoofEdge edges} that have names.
 *   <li>{@link org.roofmaths.roof.FlatShape}: a face laid flat, also one as found on site or from bare sizes.
 *   <li>{@link org.roofmaths.roof.MeetingLine}: the hip or valley of two slopes, without a plan.
 * </ol>
 *
 * <pre>{@code
 * Roof shed = Roofs.leanTo()
 *         .wallLength(metres(4.6))
 *         .projection(metres(2.7))
 *         .slope(Slope.of(pitch("32°")))
 *         .eavesOverhang(level(mm(150)))
 *         .build();
 * shed.areaAlongSlope();                                                       // 15.459028870000001 m²
 * shed.face("main").slopeLength();                                             // 3360.65845 mm, fascia to apex
 * shed.face("main").slopeLength(RoofLine.PLATE, RoofLine.APEX).value();        // 3183.781689 mm
 * shed.edge("main eaves").trueLength();                                        // 4600 mm
 * }</pre>
 *
 * <p>The lines of a face are named once ({@link org.roofmaths.roof.RoofLine}): tail, fascia, plate, apex. Left and
 * right are as seen from outside looking up the slope ({@link org.roofmaths.roof.Ends}). Three pitches never share a
 * word: the rafter pitch, the true pitch of a laid unit, the pitch of a hip or valley. Areas and lengths say whether
 * they are along the slope or on plan.
 *
 * <p>No method here takes or returns null. All types are immutable and safe to share between threads, builders
 * excepted. Heights count from the caller's datum; where no plate height is given, from the plate line.
 */
@NullMarked
package org.roofmaths.roof;

import org.jspecify.annotations.NullMarked;
