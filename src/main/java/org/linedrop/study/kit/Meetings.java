package org.linedrop.study.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Connection;
import org.linedrop.catalogue.Mating;
import org.linedrop.catalogue.MatingResult;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Fitted;
import org.linedrop.circuit.Joint;
import org.linedrop.circuit.Point;
import org.linedrop.circuit.Port;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * The joints of a circuit that are plumbing. Where two runs meet at a point without a fitting, their two ends are one
 * joint; where three do, a fitting is missing and each has its own.
 */
final class Meetings {
    private static final Source PRACTICE = Source.of("Custom of the trade", Status.COMMON_PRACTICE);

    private Meetings() {}

    static List<Fitted.Joint> joints(Circuit circuit) {
        Map<String, List<Fitted.Joint>> met = atJoints(circuit);
        List<Fitted.Joint> joints = new ArrayList<>();
        for (Fitted.Joint joint : Fitted.joints(circuit)) {
            if (!joint.plumbing()) {
                continue;
            }
            List<Fitted.Joint> here = met.getOrDefault(point(joint), List.of());
            if (here.size() != 2) {
                joints.add(joint);
            } else if (here.get(1).equals(joint)) {
                joints.add(one(here));
            }
        }
        return joints;
    }

    /** Two ends of runs as the one joint they are. */
    private static Fitted.Joint one(List<Fitted.Joint> two) {
        Fitted.Joint first = two.get(0);
        Fitted.Joint second = two.get(1);
        return new Fitted.Joint(
                second.run(),
                first.before() != null ? first.before() : first.after(),
                second.after() != null ? second.after() : second.before(),
                second.port(),
                side(first),
                side(second));
    }

    /** The connection of the part, not of the point. */
    private static Connection side(Fitted.Joint joint) {
        return joint.before() != null ? joint.a() : joint.b();
    }

    private static String point(Fitted.Joint joint) {
        Port port = joint.port();
        return port == null ? "" : port.element();
    }

    /** Plumbing that ends at each point which is a place and no fitting. */
    private static Map<String, List<Fitted.Joint>> atJoints(Circuit circuit) {
        Map<String, List<Fitted.Joint>> met = new LinkedHashMap<>();
        for (Point point : circuit.points()) {
            if (point instanceof Joint) {
                met.put(
                        point.id(),
                        Fitted.joints(circuit).stream()
                                .filter(joint ->
                                        joint.plumbing() && point(joint).equals(point.id()))
                                .toList());
            }
        }
        return met;
    }

    /** What is missing where runs meet. */
    static List<Notice> missing(Circuit circuit) {
        List<Notice> notices = new ArrayList<>();
        atJoints(circuit).forEach((point, here) -> {
            String text = missing(here);
            if (text != null) {
                notices.add(Notice.of("fitting-missing", point, text, PRACTICE));
            }
        });
        return notices;
    }

    private static @Nullable String missing(List<Fitted.Joint> here) {
        if (here.size() > 2) {
            return here.size()
                    + " lines meet here and no fitting is named, so none is in the list: write kind: tee or kind:"
                    + " Y block";
        }
        if (here.size() == 2) {
            MatingResult found = Mating.between(side(here.get(0)), side(here.get(1)));
            return found.text().isEmpty() ? null : found.text();
        }
        return null;
    }
}
