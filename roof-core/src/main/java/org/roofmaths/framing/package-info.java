/**
 * The timbers of a roof by their lengths and cuts. No member is sized here: what it must carry is for a person
 * competent in structures.
 *
 * <p>Read in this order:
 *
 * <ol>
 *   <li>{@link org.roofmaths.framing.CommonRafter}: the rafter that runs straight up the slope, and its
 *       {@link org.roofmaths.framing.Birdsmouth}.
 *   <li>{@link org.roofmaths.framing.CornerRafter}: the hip or valley rafter, and the
 *       {@link org.roofmaths.framing.JackRafters} that meet it.
 * <li>{@link org.roofmaths.framing.BoardCuts} and {@link org.roofmaths.framing.CompoundMitre}: members along the eaves
 * that turn a corner.
 *   <li>{@link org.roofmaths.framing.ShedDormer}, {@link org.roofmaths.framing.GabledDormer},
 *       {@link org.roofmaths.framing.GableStuds}, {@link org.roofmaths.framing.Sprocket},
 *       {@link org.roofmaths.framing.EvenSpacing}.
 *   <li>{@link org.roofmaths.framing.CuttingList}: what goes to the saw.
 * </ol>
 *
 * <pre>{@code
 * CommonRafter rafter = CommonRafter.ofSpan(metres(7.2), pitch("35°")).withRidge(mm(32)).withOverhang(level(mm(300)));
 * rafter.length();              // 4394.78852 mm, plate line to apex line
 * rafter.lengthToCut();         // 4741.488504 mm, along the top edge
 * rafter.plumbCutFromSquare();  // 35°
 * }</pre>
 *
 * <p>The name of every angle tells its datum: from square, or from the edge. No method here takes or returns null. All
 * types are immutable and safe to share between threads.
 */
@NullMarked
package org.roofmaths.framing;

import org.jspecify.annotations.NullMarked;
