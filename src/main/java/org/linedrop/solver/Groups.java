package org.linedrop.solver;

/** Disjoint sets of points in an array the caller owns. */
final class Groups {
    private Groups() {}

    /** The representative of a member's set; shortens the path on the way. */
    static int find(int[] group, int member) {
        int i = member;
        while (group[i] != i) {
            group[i] = group[group[i]];
            i = group[i];
        }
        return i;
    }

    /** Makes one set of two. */
    static void join(int[] group, int a, int b) {
        int i = find(group, a);
        int j = find(group, b);
        // the lower number leads, so that the result does not depend on the order of the arguments
        if (i < j) {
            group[j] = i;
        } else {
            group[i] = j;
        }
    }
}
