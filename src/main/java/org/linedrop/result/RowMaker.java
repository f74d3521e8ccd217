package org.linedrop.result;

import java.util.ArrayList;
import java.util.List;
import org.linedrop.network.CircuitNetwork;
import org.linedrop.network.Stream;
import org.linedrop.network.Trace;
import org.linedrop.solver.Solution;

/** Makes the rows of a result by evaluating the laws of each row at the solved flow. */
final class RowMaker {
    private final CircuitNetwork network;
    private final Solution solution;
    private final Junctions junctions;

    RowMaker(CircuitNetwork network, Solution solution) {
        this.network = network;
        this.solution = solution;
        this.junctions = new Junctions(network, solution);
    }

    List<PartRow> rows() {
        List<PartRow> rows = new ArrayList<>();
        for (Trace.RunTrace run : network.runs()) {
            double lost = 0;
            for (Trace.Section section : run.sections()) {
                double flow = solution.massFlowKgPerS(section.branch());
                for (Trace.Row row : section.rows()) {
                    if (row.plumbing()) {
                        lost += row.frictionDropPa(flow) + local(section, row, flow);
                    }
                }
            }
            double pressure = junctions.totalPressurePa(run.from());
            for (int i = 0; i < run.sections().size(); i++) {
                Trace.Section section = run.sections().get(i);
                int size = section.rows().size();
                for (int k = 0; k < size; k++) {
                    Trace.Row row = section.rows().get(k);
                    boolean last = k == size - 1 && i + 1 < run.sections().size();
                    Trace.Section behind = last ? run.sections().get(i + 1) : section;
                    double flowOut = solution.massFlowKgPerS(behind.branch());
                    PartRow made = row(run, section, row, flowOut, pressure, lost);
                    rows.add(made);
                    pressure = made.totalPressureOutPa();
                }
            }
        }
        return List.copyOf(rows);
    }

    /** A row; what leaves it is less than what enters where something is taken on the way. */
    private PartRow row(
            Trace.RunTrace run,
            Trace.Section section,
            Trace.Row row,
            double massFlowOut,
            double pressureIn,
            double lost) {
        Stream stream = row.stream();
        double massFlow = solution.massFlowKgPerS(section.branch());
        double friction = row.frictionDropPa(massFlow);
        double local = local(section, row, massFlow);
        double drop = friction + local + row.liftPa();
        double bore = row.usedBoreM();
        boolean open = bore > 0;
        double head = open ? stream.velocityHeadPa(massFlow, bore) : Double.NaN;
        double reynolds = open ? stream.reynolds(massFlow, bore) : Double.NaN;
        double sense = massFlow < 0 ? -1 : 1;
        double length = row.friction().isEmpty() ? Double.NaN : lengthOverBore(row);
        return new PartRow(
                run.id(),
                row.row(),
                row.name(),
                row.kind(),
                row.part(),
                row.size(),
                row.boreM(),
                massFlow,
                massFlow / stream.densityKgPerM3(),
                open ? stream.velocityMPerS(massFlow, bore) : Double.NaN,
                reynolds,
                regime(stream, reynolds),
                head > 0 && !row.friction().isEmpty() ? sense * friction / (head * length) : Double.NaN,
                head > 0 && (!row.local().isEmpty() || row.leg() != null) ? sense * local / head : Double.NaN,
                friction,
                local,
                row.liftPa(),
                drop,
                pressureIn,
                pressureIn - drop,
                stream.velocityHeadPa(massFlow, row.inBoreM()),
                stream.velocityHeadPa(massFlowOut, row.outBoreM()),
                row.plumbing() && lost != 0 ? (friction + local) / lost : Double.NaN);
    }

    private double local(Trace.Section section, Trace.Row row, double massFlow) {
        if (section.gate()) { // what a device that switches loses is what stands on its two sides
            return Result.overPa(network, solution, section.branch());
        }
        return row.localDropPa(massFlow) + (row.leg() == null ? 0 : junctions.dropPa(row.leg()));
    }

    private static double lengthOverBore(Trace.Row row) {
        return row.lengthM() / row.usedBoreM();
    }

    private static PartRow.Regime regime(Stream stream, double reynolds) {
        if (!(reynolds > stream.transition().fromReynolds())) {
            return PartRow.Regime.LAMINAR;
        }
        return reynolds < stream.transition().toReynolds() ? PartRow.Regime.MIXED : PartRow.Regime.TURBULENT;
    }
}
