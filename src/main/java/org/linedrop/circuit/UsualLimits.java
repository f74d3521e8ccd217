package org.linedrop.circuit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.LimitText;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.units.Dimension;

/** Limits that a service brings with it; the file replaces one by its own, or takes it off with a reason. */
final class UsualLimits {
    /** Who asks for them. */
    static final String FROM = "usual: service";

    private static final Source MEMORY = Source.of("common practice", Status.FROM_MEMORY);
    private static final Source TEN_PSI =
            Source.of("common practice of engine builders: 10 psi per 1000 rpm", Status.COMMON_PRACTICE);
    private static final Source EIGHT_PSI = Source.of(
            "common practice: 6-8 psi at a carburettor, over 8 psi wants a regulator", Status.COMMON_PRACTICE);
    private static final Source STACKED_COOLER =
            Source.of("common practice: stacked-plate oil coolers are sold for 10 bar", Status.COMMON_PRACTICE);
    private static final Source QUART =
            Source.of("common practice of workshops: one quart in 30 s at hot idle", Status.COMMON_PRACTICE);
    private static final Source BOILING =
            Source.of("common practice: margin over boiling at the pump's inlet", Status.FROM_MEMORY);
    private static final Dimension DROP = Dimension.PRESSURE_DIFFERENCE;
    private static final String INLET_VACUUM = "inlet vacuum";

    private final Tree.@Nullable Branch said;
    private final List<Limit> limits;
    private final List<Notice> assumptions;

    private UsualLimits(Tree.@Nullable Branch said, List<Limit> limits, List<Notice> assumptions) {
        this.said = said;
        this.limits = limits;
        this.assumptions = assumptions;
    }

    /** Adds what the service asks and the file says nothing of. */
    static void add(
            @Nullable Service service,
            @Nullable Engine engine,
            @Nullable Tree said,
            List<Point> points,
            List<Device> devices,
            List<Limit> limits,
            List<Notice> assumptions) {
        UsualLimits usual = new UsualLimits(said instanceof Tree.Branch branch ? branch : null, limits, assumptions);
        if (service == null) {
            return;
        }
        for (Device device : devices) {
            usual.device(service, device);
        }
        for (Point point : points) {
            if (service == Service.ENGINE_OIL) {
                usual.oil(point, engine);
            } else if (service == Service.CARBURETTOR_FUEL && point instanceof Draw) {
                usual.add(point.id(), "pressure", "at most 8 psi", Dimension.GAUGE_PRESSURE, EIGHT_PSI);
            }
        }
    }

    private void device(Service service, Device device) {
        String id = device.id();
        boolean pump = device.kind().endsWith("pump");
        boolean cooler = device.kind().equals(Resistance.COOLER);
        switch (service) {
            case INJECTED_FUEL, CARBURETTOR_FUEL -> {
                if (pump) {
                    // electric roller, vane and turbine pumps: 2 to 3 inHg
                    add(id, INLET_VACUUM, "at most 10 kPa", DROP, MEMORY);
                } else if (device.kind().equals(Regulator.BYPASS)) {
                    add(id, LimitReader.STATE, "in control", DROP, Source.of("what a regulator is for", Status.GIVEN));
                } else if (device.kind().equals(FloatValve.KIND)) {
                    add(id, "inlet pressure", "at most 8 psi", Dimension.GAUGE_PRESSURE, EIGHT_PSI);
                }
            }
            case ENGINE_OIL -> {
                if (pump) {
                    // cold oil pulls harder than hot: 25 to 30 kPa; the rule for hot oil is advice
                    add(id, INLET_VACUUM, "at most 30 kPa", DROP, MEMORY);
                } else if (cooler) {
                    add(id, "inlet pressure", "at most 10 bar", Dimension.GAUGE_PRESSURE, STACKED_COOLER);
                }
            }
            case GEARBOX_OIL -> {
                if (pump) {
                    add(id, INLET_VACUUM, "at most 30 kPa", DROP, MEMORY);
                } else if (cooler) {
                    add(id, "flow", "at least 1.9 L/min", Dimension.VOLUME_FLOW, QUART);
                }
            }
            case COOLANT -> {
                if (pump) {
                    add(id, "inlet margin", "at least 30 kPa", DROP, BOILING);
                }
            }
            case POWER_STEERING -> {
                if (pump) {
                    add(id, INLET_VACUUM, "at most 7 kPa", DROP, MEMORY);
                } else if (cooler) {
                    // the cooler sits in the return line
                    add(id, "inlet pressure", "at most 200 kPa", Dimension.GAUGE_PRESSURE, MEMORY);
                }
            }
            case BRAKE -> {
                // quantities only, never a verdict
            }
        }
    }

    private void oil(Point point, @Nullable Engine engine) {
        Figure speed = engine == null ? null : engine.speedRevPerS();
        if (speed != null
                && speed.value() > 0
                && point instanceof Draw draw
                && draw.law().equals("bearings")) {
            LimitText bound = LimitText.read("at least 10 psi per 1000 rpm", Dimension.GAUGE_PRESSURE);
            add(point.id(), "pressure", bound.atSpeed(speed.value()), "at least 10 psi per 1000 rpm", TEN_PSI);
        }
    }

    private void add(String subject, String quantity, String text, Dimension dimension, Source source) {
        LimitText bound = quantity.equals(LimitReader.STATE)
                ? LimitText.readState(text, List.of(text))
                : LimitText.read(text, dimension);
        add(subject, quantity, bound, text, source);
    }

    private void add(String subject, String quantity, LimitText bound, String text, Source source) {
        boolean own = said != null && said.get(subject) instanceof Tree.Branch all && all.get(quantity) != null;
        if (own) {
            return;
        }
        limits.add(new Limit(subject, quantity, bound, FROM));
        assumptions.add(Notice.of(
                "usual-limit",
                subject,
                quantity + " " + text + " is a usual limit of this service (" + source.title() + ", "
                        + source.status().word() + "): write your own under limits, or off because and why",
                source));
    }
}
