package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import org.junit.jupiter.api.Test;

/** On its own because it cannot run in an instrumented class file, which allocates: profile mutation leaves it out. */
class LawsAllocationTest {
    private static final int MOST_PASSES = 400;

    @Test
    void noLawAllocates() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        double[] out = new double[6];
        Tee tee = Tee.of(LawsPropertyTest.BORE, 0.9 * LawsPropertyTest.BORE, 1, 0);
        List<LawsPropertyTest.Law> all = LawsPropertyTest.laws().toList();
        int rounds = 200;
        long most = (long) rounds * all.size(); // far less than one object a call
        long bytes = Long.MAX_VALUE;
        // code that is not compiled yet allocates what compiled code keeps in registers: as many passes as that takes
        for (int pass = 0; pass < MOST_PASSES && bytes >= most; pass++) {
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
        assertThat(bytes).isLessThan(most);
    }
}
