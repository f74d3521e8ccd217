package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The laws as functions make small records of their coefficients, which compiled code keeps in registers. What was run before
 * decides what the compiler puts together, so that this is measured in a JVM of its own. The kernel, which keeps those
 * records, has its own test.
 */
class LawsAllocationTest {
    private static final int ROUNDS = 200;
    private static final int MOST_PASSES = 50;

    @Test
    void noLawAllocates() throws IOException, InterruptedException {
        String surefire = System.getProperty("surefire.test.class.path");
        Process java = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        surefire == null ? System.getProperty("java.class.path") : surefire,
                        LawsAllocationTest.class.getName())
                .redirectErrorStream(true)
                .start();
        String said = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(java.waitFor()).as(said).isZero();
        // far less than one object a call
        assertThat(Double.parseDouble(said.strip())).as("bytes a call").isLessThan(1);
    }

    /**
     * Prints the bytes that a call leaves once everything is compiled.
     *
     * @param none nothing
     */
    public static void main(String[] none) {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        double[] out = new double[6];
        Tee tee = Tee.of(LawsPropertyTest.BORE, 0.9 * LawsPropertyTest.BORE, 1, 0);
        List<LawsPropertyTest.Law> all = LawsPropertyTest.laws().toList();
        double bytes = Double.POSITIVE_INFINITY;
        for (int pass = 0; pass < MOST_PASSES && bytes >= 1; pass++) {
            long before = threads.getCurrentThreadAllocatedBytes();
            for (int round = -20; round < ROUNDS; round++) {
                for (LawsPropertyTest.Law law : all) {
                    law.drop().at(round * 1e-6, out);
                    tee.evaluate(
                            round * 1e-6, -round * 0.3e-6, LawsPropertyTest.DENSITY, LawsPropertyTest.VISCOSITY, out);
                }
            }
            bytes = (threads.getCurrentThreadAllocatedBytes() - before) / (double) (2 * ROUNDS * all.size());
        }
        System.out.println(bytes);
    }
}
