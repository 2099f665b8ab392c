package org.roofmaths.order;

import java.util.ArrayList;
import java.util.List;
import org.roofmaths.units.Length;

/** Rows that may be joined: every allowed way of joining one, as joints and as numbers of pieces of each size. */
final class CuttingRows {
    private static final int MOST_WAYS = 3000;

    final JointedRun run;
    final List<List<Length>> joints = new ArrayList<>();
    final List<int[]> pieces = new ArrayList<>();

    private CuttingRows(JointedRun run) {
        this.run = run;
    }

    /** Finds the allowed ways with the fewest joints and, where stock matters more, those with one joint more. */
    static CuttingRows of(JointedRun run, Length longestStock, Joining joining) {
        CuttingRows rows = new CuttingRows(run);
        int fewest = -1;
        int more = joining == Joining.LEAST_STOCK ? 1 : 0;
        for (int n = 0; n <= run.supports().size() && (fewest < 0 || n <= fewest + more); n++) {
            rows.find(new ArrayList<>(), Length.ZERO, n, longestStock);
            if (fewest < 0 && !rows.joints.isEmpty()) {
                fewest = n;
            }
        }
        return rows;
    }

    private void find(List<Length> made, Length from, int left, Length longest) {
        if (joints.size() >= MOST_WAYS) {
            return;
        }
        if (left == 0) {
            if (isAllowed(from, run.length(), longest)) {
                joints.add(List.copyOf(made));
            }
            return;
        }
        for (Length at : run.supports()) {
            if (at.isLongerThan(from) && at.isShorterThan(run.length()) && isAllowed(from, at, longest)) {
                made.add(at);
                find(made, at, left - 1, longest);
                made.remove(made.size() - 1);
            }
        }
    }

    private boolean isAllowed(Length from, Length to, Length longest) {
        Length piece = to.minus(from);
        long under = run.supports().stream()
                .filter(at -> at.meetsLeast(from) && at.meetsGreatest(to))
                .count();
        return piece.meetsGreatest(longest) && piece.meetsLeast(run.leastPiece()) && under >= run.leastSupports();
    }

    boolean isPossible() {
        return !joints.isEmpty();
    }

    /** Returns the pieces of one way of joining, from left to right. */
    List<Length> lengths(int way) {
        List<Length> lengths = new ArrayList<>();
        Length from = Length.ZERO;
        for (Length at : joints.get(way)) {
            lengths.add(at.minus(from));
            from = at;
        }
        lengths.add(run.length().minus(from));
        return lengths;
    }

    void index(CuttingModel model) {
        for (int way = 0; way < joints.size(); way++) {
            int[] counts = new int[model.count()];
            for (Length length : lengths(way)) {
                counts[model.indexOf(length.toNanometres())]++;
            }
            pieces.add(counts);
        }
    }
}
