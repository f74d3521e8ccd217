package org.linedrop.circuit;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.Connection;
import org.linedrop.catalogue.EndSize;
import org.linedrop.catalogue.TubeSize;
import org.linedrop.circuit.form.TubeChoice;

/**
 * What a part shows its neighbours.
 *
 * @param from its connection at the side the flow comes from
 * @param to   its connection at the other side
 */
record PartSides(Connection from, Connection to) {

    /** The two connections of a part. */
    static PartSides of(Part part, Catalogue catalogue, Map<String, DevicePorts> ports) {
        return part.accept(new Part.Visitor<>() {
            @Override
            public PartSides hose(Hose hose) {
                return new PartSides(end(hose.fromEnd(), hose), end(hose.toEnd(), hose));
            }

            @Override
            public PartSides tube(Tube tube) {
                Connection end = catalogue.tubeEnd(tube.size(), tubeText(tube.size()));
                return new PartSides(end, end);
            }

            @Override
            public PartSides adapter(Adapter adapter) {
                return new PartSides(adapter.size().from(), adapter.size().to());
            }

            @Override
            public PartSides through(Through through) {
                DevicePorts known = ports.get(through.device());
                return known == null ? unknown(through.device()) : new PartSides(known.inlet(), known.outlet());
            }

            @Override
            public PartSides restriction(Restriction restriction) {
                return unknown(restriction.id());
            }

            @Override
            public PartSides valve(Valve valve) {
                return new PartSides(valve.size().from(), valve.size().to());
            }

            @Override
            public PartSides statedLaw(StatedLaw law) {
                return unknown(law.id());
            }
        });
    }

    private static PartSides unknown(String name) {
        Connection unknown = Connection.notStated(name);
        return new PartSides(unknown, unknown);
    }

    /** A bare piece was measured by itself: nobody says what it is held by. */
    private static Connection end(@Nullable EndSize end, Hose hose) {
        return end == null ? Connection.notStated(hose.id()) : end.connection();
    }

    /** {@code 5/16 in tube}. */
    private static String tubeText(TubeSize size) {
        String written = new TubeChoice("", size.outsideDiameterM(), size.wallM())
                .write()
                .strip();
        return written.substring(0, written.indexOf(" x ")) + " tube";
    }
}
