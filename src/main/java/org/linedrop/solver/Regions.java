package org.linedrop.solver;

import java.util.Arrays;
import org.linedrop.network.Network;

/** Sets of points that the pieces active in a state tie together, and what is forced into each. */
final class Regions {
    /** Flow forced into a region that counts, over the flow scale. */
    private static final double FORCED = 1e-12;

    private final Workspace w;
    private final int[] region;
    private final double[] forced;

    Regions(Workspace workspace) {
        w = workspace;
        region = new int[workspace.pressure.length];
        forced = new double[workspace.pressure.length];
    }

    /** Finds the regions of the state last evaluated. */
    void find(Network network) {
        Checks.joinActive(network, w);
        Arrays.fill(forced, 0);
        for (int i = 0; i < region.length; i++) {
            region[i] = Groups.find(w.group, i);
            forced[region[i]] += network.drawKgPerS(i);
        }
        for (int b : w.borderBranch) {
            if (network.kind(b) == Network.Kind.DEVICE && !network.device(b).relatesPressures()) {
                forced[region[network.from(b)]] += w.flow[b];
                forced[region[network.to(b)]] -= w.flow[b];
            }
        }
    }

    /** The point that led the region of a point when they were found. */
    int of(int point) {
        return region[point];
    }

    boolean isForced(Network network, int leader) {
        return !network.fixed(leader) && Math.abs(forced[leader]) > FORCED * w.flowScale;
    }
}
