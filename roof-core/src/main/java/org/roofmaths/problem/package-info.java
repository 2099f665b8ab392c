/**
 * What is wrong, or does not fit, and what would mend it.
 *
 * <p>Read in this order:
 *
 * <ol>
 *   <li>{@link org.roofmaths.problem.Problem}: one thing that is wrong with an input, or one thing that sound input does not allow.
 *       Its facts are parts (code, severity, where, given, allowed, message, mends), so nobody has to parse its text.
 *   <li>{@link org.roofmaths.problem.Mend}: what to change, by how much, and what results.
 *   <li>{@link org.roofmaths.problem.Attempt}: a value, or the problems that stand against it, or a value with findings. Each call
 *       that throws has a twin that returns one of these, for forms, job files and streams.
 *   <li>{@link org.roofmaths.problem.ProblemsException}: the one exception, carrying every problem at once.
 *   <li>{@link org.roofmaths.problem.Problems}: collects problems while a definition is checked.
 * </ol>
 *
 * <p>No method here takes or returns null. Values are immutable and safe to share between threads; {@code Problems} is for one
 * thread.
 */
@NullMarked
package org.roofmaths.problem;

import org.jspecify.annotations.NullMarked;
