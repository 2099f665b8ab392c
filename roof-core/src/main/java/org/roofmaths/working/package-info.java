/**
 * Where a number came from and how it was reached: figures, formulas and workings.
 *
 * <p>Read in this order:
 *
 * <ol>
 *   <li>{@link org.roofmaths.working.Figure}: a value and its origin. {@link org.roofmaths.working.Given} (the caller said so),
 *       {@link org.roofmaths.working.Sourced} (a row of a document), {@link org.roofmaths.working.Assumed} (our own default),
 *       {@link org.roofmaths.working.Worked} (the answer of a sum).
 *   <li>{@link org.roofmaths.working.Term}: the typed name and symbol of a number, such as {@code rafter length}. Terms are
 *       constants of the class that works them out, and the key by which apps and classroom sheets pick a number.
 *   <li>{@link org.roofmaths.working.Formula}: how a term follows from other terms, as data that can be printed and evaluated.
 *   <li>{@link org.roofmaths.working.Working}: the whole tree, as text, Markdown or plain JDK maps and lists.
 *   <li>{@link org.roofmaths.working.Recorder}: how a calculation tells its steps. The method that computes is the method that
 *       records; it runs with a recorder that does nothing, and again with one that listens when a working is asked for. So a
 *       working costs nothing until asked for and cannot drift from the answer.
 * </ol>
 *
 * <p>A class with numbers of its own implements {@link org.roofmaths.working.HasWorking}. Full precision is kept in the tree;
 * rounding is a step of its own.
 *
 * <p>No method here takes or returns null. All types are immutable and safe to share between threads, the recorder of one run
 * excepted.
 */
@NullMarked
package org.roofmaths.working;

import org.jspecify.annotations.NullMarked;
