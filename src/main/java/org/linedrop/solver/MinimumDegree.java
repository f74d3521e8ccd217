package org.linedrop.solver;

import java.util.Arrays;

/**
 * An order of elimination that keeps the Cholesky factor sparse: minimum degree on the quotient graph with the
 * approximate external degree of P. R. Amestoy, T. A. Davis and I. S. Duff, SIAM J. Matrix Anal. Appl. 17 (1996)
 * 886-905, without supervariables. Ties go to the point eliminated or touched last; the same pattern gives the same
 * order.
 */
final class MinimumDegree {
    private static final int[] NONE = {};

    private final int n;
    /** Neighbours not yet eliminated, per variable. */
    private final int[][] variables;
    /** Eliminated cliques a variable belongs to, per variable. */
    private final int[][] elements;

    private final int[] variableCount;
    private final int[] elementCount;
    /** Members of the clique left by an eliminated variable; empty when absorbed. */
    private final int[][] members;

    private final int[] degree;
    private final boolean[] eliminated;
    private final int[] head;
    private final int[] next;
    private final int[] previous;
    private final int[] mark;
    private final int[] outside;
    private final int[] outsideStamp;

    private MinimumDegree(int[][] neighbours) {
        n = neighbours.length;
        variables = new int[n][];
        elements = new int[n][];
        variableCount = new int[n];
        elementCount = new int[n];
        members = new int[n][];
        degree = new int[n];
        eliminated = new boolean[n];
        head = new int[n + 1];
        next = new int[n];
        previous = new int[n];
        mark = new int[n];
        outside = new int[n];
        outsideStamp = new int[n];
        Arrays.fill(head, -1);
        Arrays.fill(mark, -1);
        Arrays.fill(outsideStamp, -1);
        for (int i = n - 1; i >= 0; i--) {
            variables[i] = neighbours[i].clone();
            elements[i] = new int[4];
            members[i] = NONE;
            variableCount[i] = neighbours[i].length;
            degree[i] = variableCount[i];
            insert(i);
        }
    }

    /**
     * Finds an order.
     *
     * @param neighbours for each row the other rows it shares an entry with, each once; not modified
     * @return order[k] is the row to eliminate as number k
     */
    static int[] order(int[][] neighbours) {
        return new MinimumDegree(neighbours).run();
    }

    private int[] run() {
        int[] order = new int[n];
        int least = 0;
        for (int k = 0; k < n; k++) {
            while (head[least] < 0) {
                least++;
            }
            int pivot = head[least];
            remove(pivot);
            eliminated[pivot] = true;
            order[k] = pivot;
            int[] clique = clique(pivot);
            members[pivot] = clique;
            countOutside(pivot, clique);
            for (int i : clique) {
                remove(i);
                update(i, pivot, clique.length, n - k - 1);
                insert(i);
                least = Math.min(least, degree[i]);
            }
        }
        return order;
    }

    /** Live neighbours of the pivot, directly or through cliques, which are absorbed. */
    private int[] clique(int pivot) {
        int bound = variableCount[pivot];
        for (int e = 0; e < elementCount[pivot]; e++) {
            bound += members[elements[pivot][e]].length;
        }
        int[] clique = new int[bound];
        int count = 0;
        mark[pivot] = pivot;
        for (int v = 0; v < variableCount[pivot]; v++) {
            count = collect(variables[pivot][v], pivot, clique, count);
        }
        for (int e = 0; e < elementCount[pivot]; e++) {
            int element = elements[pivot][e];
            for (int i : members[element]) {
                count = collect(i, pivot, clique, count);
            }
            members[element] = NONE;
        }
        return Arrays.copyOf(clique, count);
    }

    private int collect(int i, int stamp, int[] clique, int count) {
        if (eliminated[i] || mark[i] == stamp) {
            return count;
        }
        mark[i] = stamp;
        clique[count] = i;
        return count + 1;
    }

    /** For each clique touching the new one: how many of its members lie outside the new one. */
    private void countOutside(int pivot, int[] clique) {
        for (int i : clique) {
            for (int e = 0; e < elementCount[i]; e++) {
                int element = elements[i][e];
                if (outsideStamp[element] != pivot) {
                    outsideStamp[element] = pivot;
                    // members are always live: eliminating one absorbs its cliques
                    outside[element] = members[element].length;
                }
                outside[element]--;
            }
        }
    }

    private void update(int i, int pivot, int cliqueSize, int left) {
        int kept = 0;
        int sum = cliqueSize - 1;
        for (int e = 0; e < elementCount[i]; e++) {
            int element = elements[i][e];
            if (members[element].length > 0 && outside[element] > 0) {
                elements[i][kept++] = element;
                sum += outside[element];
            }
        }
        if (kept == elements[i].length) {
            elements[i] = Arrays.copyOf(elements[i], 2 * kept);
        }
        elements[i][kept++] = pivot;
        elementCount[i] = kept;
        int keptVariables = 0;
        for (int v = 0; v < variableCount[i]; v++) {
            int j = variables[i][v];
            if (!eliminated[j] && mark[j] != pivot) {
                variables[i][keptVariables++] = j;
            }
        }
        variableCount[i] = keptVariables;
        degree[i] = Math.min(Math.max(0, left - 1), Math.min(degree[i] + cliqueSize - 1, sum + keptVariables));
    }

    private void insert(int i) {
        int d = degree[i];
        previous[i] = -1;
        next[i] = head[d];
        if (head[d] >= 0) {
            previous[head[d]] = i;
        }
        head[d] = i;
    }

    private void remove(int i) {
        if (previous[i] >= 0) {
            next[previous[i]] = next[i];
        } else {
            head[degree[i]] = next[i];
        }
        if (next[i] >= 0) {
            previous[next[i]] = previous[i];
        }
    }
}
