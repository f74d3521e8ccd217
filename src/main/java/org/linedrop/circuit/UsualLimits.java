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
        if (service.fuel()) {
            devices.forEach(usual::fuel);
        } else if (service == Service.POWER_STEERING) {
            devices.stream()
                    .filter(device -> device instanceof Pump)
                    .forEach(pump -> usual.add(pump.id(), INLET_VACUUM, "at most 7 kPa", MEMORY));
        } else if (service == Service.ENGINE_OIL) {
            points.forEach(point -> usual.oil(point, engine));
        }
    }

    private void fuel(Device device) {
        if (device instanceof Pump) {
            // electric roller, vane and turbine pumps: 2 to 3 inHg
            add(device.id(), INLET_VACUUM, "at most 10 kPa", MEMORY);
        } else if (device.kind().equals("bypass regulator")) {
            add(device.id(), LimitReader.STATE, "in control", Source.of("what a regulator is for", Status.GIVEN));
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

    private void add(String subject, String quantity, String text, Source source) {
        LimitText bound = quantity.equals(LimitReader.STATE)
                ? LimitText.readState(text, List.of(text))
                : LimitText.read(text, Dimension.PRESSURE_DIFFERENCE);
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
