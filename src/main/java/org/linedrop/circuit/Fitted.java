package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.Connection;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Inner;

/**
 * The joints of a circuit: where a part meets its neighbour or the port that its run begins or ends at. A drilled
 * restrictor sits inside one of its neighbours and has no joint of its own; what has a stated law only is no thing that
 * could be joined.
 */
@Inner
public final class Fitted {
    private final Circuit circuit;
    private final Map<String, DevicePorts> ports = new LinkedHashMap<>();
    private final List<Joint> joints = new ArrayList<>();

    /**
     * One joint.
     *
     * @param run    name of the run
     * @param before the part upstream, or null where the run begins
     * @param after  the part downstream, or null where the run ends
     * @param port   the port of a point or device that the run begins or ends at, or null between two parts
     * @param a      the connection upstream
     * @param b      the connection downstream
     */
    public record Joint(
            String run,
            @Nullable Part before,
            @Nullable Part after,
            @Nullable Port port,
            Connection a,
            Connection b) {

        /**
         * Whether something that is made up or bought for the plumbing is joined here.
         *
         * @return false between two devices, and between a device and a point that is none of the plumbing
         */
        public boolean plumbing() {
            return isPlumbing(before) || isPlumbing(after);
        }

        private static boolean isPlumbing(@Nullable Part part) {
            return part != null && !(part instanceof Through) && !(part instanceof StatedLaw);
        }
    }

    private Fitted(Circuit circuit) {
        this.circuit = circuit;
    }

    /**
     * Finds the joints of a circuit.
     *
     * @param circuit the circuit, in the case it is in
     * @return in the order of the runs, in flow order
     */
    public static List<Joint> joints(Circuit circuit) {
        Fitted fitted = new Fitted(circuit);
        fitted.readPorts();
        circuit.runs().forEach(fitted::run);
        return List.copyOf(fitted.joints);
    }

    /** Ports are said in the file and not kept in the devices: no law needs them. */
    private void readPorts() {
        Catalogue catalogue = circuit.catalogue();
        if (circuit.words().here().get("devices") instanceof Tree.Branch devices) {
            for (Tree.Entry entry : devices.entries()) {
                if (entry.value() instanceof Tree.Branch device
                        && device.get(DeviceKeys.PORTS.name()) instanceof Tree.Text said) {
                    ports.put(
                            entry.key(),
                            DevicePorts.read(said.text(), catalogue).of(entry.key()));
                }
            }
        }
    }

    private void run(Run run) {
        Part before = null;
        Connection last = connection(run.from());
        boolean stated = false;
        for (Part part : run.parts()) {
            if (part instanceof Restriction) {
                continue;
            }
            PartSides sides = PartSides.of(part, circuit.catalogue(), ports);
            if (!stated && !(part instanceof StatedLaw)) {
                joints.add(new Joint(run.id(), before, part, before == null ? run.from() : null, last, sides.from()));
            }
            stated = part instanceof StatedLaw;
            before = part;
            last = sides.to();
        }
        if (before != null && !stated) {
            joints.add(new Joint(run.id(), before, null, run.to(), last, connection(run.to())));
        }
    }

    private Connection connection(Port port) {
        return circuit.point(port.element())
                .filter(Junction.class::isInstance)
                .map(point -> ((Junction) point).connection(port.name()))
                .orElseGet(() -> Connection.notStated(port.text()));
    }
}
