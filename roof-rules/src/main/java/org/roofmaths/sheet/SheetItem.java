package org.roofmaths.sheet;

import java.io.Serializable;

/**
 * One thing on a site sheet: a line with a number, a table, a check, or a sentence.
 *
 * @since 0.1
 */
public sealed interface SheetItem extends Serializable permits SheetLine, SheetTable, SheetCheck, SheetSentence {}
