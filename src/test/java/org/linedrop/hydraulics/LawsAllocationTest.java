package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import org.junit.jupiter.api.Test;

/** On its own because it cannot run in an instrumented class file, which allocates: profile mutation leaves it out. */
class LawsAllocationTest {
    @Test
    void noLawAllocates() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        double[] out = new double[6];
        Tee tee = Tee.of(LawsPropertyTest.BORE, 0.9 * LawsPropertyTest.BORE, 1, 0);
        List<LawsPropertyTest.Law> all = LawsPropertyTest.laws().toList();
        int rounds = 200;
        long bytes = 0;
        // the first pass links what is used for the first time, on either side of zero
        for (int pass = 0; pass < 2; pass++) {
            long before = threads.getCurrentThreadAllocatedBytes();
            for (int round = -20; round < rounds; round++) {
                for (int i = 0; i < all.size(); i++) {
                    LawsPropertyTest.Law law = all.get(i);
                    law.drop().at(round * 1e-6, out);
                    tee.evaluate(
                            round * 1e-6, -round * 0.3e-6, LawsPropertyTest.DENSITY, LawsPropertyTest.VISCOSITY, out);
                }
            }
            bytes = threads.getCurrentThreadAllocatedBytes() - before;
        }
        // far less than one object a call; what remains is the test's own bookkeeping
        assertThat(bytes).isLessThan((long) rounds * all.size());
    }
}
