/**
 * Setting out: where every batten and every column of a roof goes, how many units that takes, and what to do if it does not fit.
 *
 * <p>Read in this order:
 *
 * <ol>
 *   <li>{@link org.roofmaths.settingout.Courses}: gauges, headlap and running marks up the slope, at both ends. A one-line sum needs no
 *       roof: {@code Courses.divide(Ends.of(mm(3912), mm(3897)), Range.closed(mm(320), mm(345)))}.
 *   <li>{@link org.roofmaths.settingout.Columns}: units, cover, overhangs and cuts across the slope.
 *   <li>{@link org.roofmaths.settingout.LayoutScheme}: how a face is to be covered. {@link org.roofmaths.settingout.FaceEnd} says how
 *       the covering ends at one side, {@link org.roofmaths.settingout.Preference} what is wanted most.
 *   <li>{@link org.roofmaths.settingout.FaceLayout}: courses, columns, counted units, battens and underlay of one face.
 *   <li>{@link org.roofmaths.settingout.LapDemand}, {@link org.roofmaths.settingout.BattenDemand} and
 *       {@link org.roofmaths.settingout.UnderlayDemand}: what this package needs to know of a rule. Rules fill them, or the caller.
 * </ol>
 *
 * <p>Distances up the slope are measured from the fascia line in the rafter plane; distances across from the left wall line, left and
 * right as seen from outside looking up the slope. Two ends stay two ends, never a mean. What does not fit is a finding with its mends,
 * not an exception.
 *
 * <p>No method here takes or returns null, except {@code equals}. All types are immutable and safe to share between threads.
 */
@NullMarked
package org.roofmaths.settingout;

import org.jspecify.annotations.NullMarked;
