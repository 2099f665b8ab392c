package org.roofmaths.roof.internal;

/** Sorts indices by a key; equal keys keep their order. */
final class Sort {
    private static final int FEW = 8;

    private Sort() {}

    static int[] ascending(double[] key) {
        int[] order = new int[key.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        merge(order, new int[order.length], 0, order.length, key);
        return order;
    }

    private static void merge(int[] order, int[] spare, int from, int to, double[] key) {
        if (to - from <= FEW) {
            for (int i = from + 1; i < to; i++) {
                int moved = order[i];
                int j = i;
                while (j > from && key[order[j - 1]] > key[moved]) {
                    order[j] = order[j - 1];
                    j--;
                }
                order[j] = moved;
            }
            return;
        }
        int middle = (from + to) >>> 1;
        merge(order, spare, from, middle, key);
        merge(order, spare, middle, to, key);
        System.arraycopy(order, from, spare, from, to - from);
        int a = from;
        int b = middle;
        for (int k = from; k < to; k++) {
            boolean first = b == to || a < middle && key[spare[a]] <= key[spare[b]];
            order[k] = spare[first ? a++ : b++];
        }
    }
}
