package org.roofmaths.order;

import java.util.Arrays;

/** How many pieces of each size are cut from one stock length. */
record CuttingPattern(int[] counts, int stock) {

    @Override
    public boolean equals(Object other) {
        return other instanceof CuttingPattern p && stock == p.stock && Arrays.equals(counts, p.counts);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(counts) * 31 + stock;
    }

    @Override
    public String toString() {
        return Arrays.toString(counts) + " from stock " + stock;
    }
}
