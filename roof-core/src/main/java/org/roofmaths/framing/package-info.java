/**
 * The timbers of a roof by their lengths and cuts. No member is sized here: what it must carry is for a person
 * competent in structures.
 *
 * <p>Start with {@link org.roofmaths.framing.CommonRafter}: the rafter that runs straight up the slope.
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
