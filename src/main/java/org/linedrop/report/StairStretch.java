package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.result.Result;
import org.linedrop.study.FlowPath;
import org.linedrop.units.Display;

/**
 * What shares a scale of a staircase.
 *
 * @param heading what stands over it; empty for a way of one scale
 * @param startPa the pressure that a device leaves, NaN where the first row says it
 * @param stops   its lines
 */
record StairStretch(String heading, double startPa, List<StairStretch.Stop> stops) {
    /** A device that adds or takes more than so many times what the line does would press the line's steps to nothing. */
    private static final double TALL = 3;

    /** One line of the picture: a row of the table, or a place between runs with the run behind it. */
    record Stop(FlowPath.@Nullable Row row, String place, String run, boolean start) {
        static Stop at(String place, String run, boolean start) {
            return new Stop(null, place, run, start);
        }

        static Stop of(FlowPath.Row row) {
            return new Stop(row, "", "", false);
        }
    }

    /** The stretches of a way, the first one first. */
    static List<StairStretch> of(Result result, FlowPath path, Display display) {
        List<Stop> stops = new ArrayList<>();
        List<FlowPath.Leg> legs = path.legs();
        for (FlowPath.Leg leg : legs) {
            stops.add(Stop.at(leg.from(), legs.size() > 1 ? leg.run() : "", stops.isEmpty()));
            leg.rows().forEach(met -> stops.add(Stop.of(met)));
        }
        stops.add(Stop.at(legs.get(legs.size() - 1).to(), "", false));
        double taken = 0;
        for (FlowPath.Row met : path.rows()) {
            taken += device(result, met) ? 0 : Math.abs(met.dropPa());
        }
        return parted(result, stops, taken, display);
    }

    private static boolean device(Result result, FlowPath.Row met) {
        return result.circuit().device(met.row().part()).isPresent();
    }

    /** Before and behind each device that adds or takes much more than the line does. */
    private static List<StairStretch> parted(Result result, List<Stop> stops, double takenPa, Display display) {
        List<StairStretch> stretches = new ArrayList<>();
        List<Stop> here = new ArrayList<>();
        String heading = "";
        double start = Double.NaN;
        for (Stop stop : stops) {
            FlowPath.Row met = stop.row();
            if (met == null || !device(result, met) || Math.abs(met.dropPa()) <= TALL * takenPa) {
                here.add(stop);
                continue;
            }
            String name = met.row().part();
            if (here.stream().anyMatch(each -> each.row() != null)) {
                here.add(Stop.at(name, "", false));
                stretches.add(new StairStretch(heading.isEmpty() ? "before " + name : heading, start, here));
            }
            here = new ArrayList<>();
            start = met.pressureOutPa();
            heading = "behind " + name + ", which " + (met.dropPa() < 0 ? "adds " : "takes ")
                    + Scale.DROP.number(Math.abs(met.dropPa()), display, 1) + " "
                    + Scale.DROP.unit(display).symbol();
        }
        if (here.stream().anyMatch(each -> each.row() != null)) {
            stretches.add(new StairStretch(heading, start, here));
        }
        return stretches.isEmpty() ? List.of(new StairStretch("", Double.NaN, stops)) : stretches;
    }
}
