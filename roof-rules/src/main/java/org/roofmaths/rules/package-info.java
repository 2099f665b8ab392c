/**
 * Published figures with their document, edition and place, and checks of a roof against them.
 *
 * <p>Read in this order:
 *
 * <ol>
 *   <li>{@link org.roofmaths.rules.Rules}: the documents of a jurisdiction. An {@link org.roofmaths.rules.Edition} is chosen by name or
 *       by the day on which it is in force; there is no latest by default. Several can be asked in a stated order, never merged.
 *   <li>{@link org.roofmaths.rules.Subjects}: what there are figures about; {@link org.roofmaths.rules.Situation}: what is known of the
 *       roof, told fact by fact. A fact that was not told is never guessed.
 *   <li>{@link org.roofmaths.rules.Ruling}: what a document says: a figure with its row, that it is silent, that its rows do not cover
 *       the case, or which fact is missing.
 *   <li>{@link org.roofmaths.rules.Check}: what was got, held against a row: meets the row by so much, short by so much, not covered, or
 *       a person's to judge. {@link org.roofmaths.rules.Suitability} puts the checks of a covering together.
 *   <li>{@link org.roofmaths.rules.Demands}: the figures as the records that setting out, flashings and ventilation work from.
 * </ol>
 *
 * <p>A figure stands in a row of data with its place in the document, its mark (how it is known) and the kind of its document; a contract
 * term is not a law. No outcome says that a roof is sound: local codes, the unit's own declaration and a competent person decide.
 *
 * <p>Figures are typed and carry their unit; limits are compared at the resolution to which values are stored. No method here takes or
 * returns null. All types are immutable and safe to share between threads.
 */
@NullMarked
@RoofStyle
package org.roofmaths.rules;

import org.jspecify.annotations.NullMarked;
import org.roofmaths.internal.style.RoofStyle;
