package org.roofmaths.working;

/**
 * Something with numbers that can show how it reached them.
 *
 * @since 0.1
 */
public interface HasWorking {

    /**
     * Returns the working: the same calculation, run again with a recorder that listens.
     *
     * @return the tree of figures, formulas and sources
     */
    Working working();
}
