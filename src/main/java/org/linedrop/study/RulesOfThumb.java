package org.linedrop.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.RuleOfThumb;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Limit;
import org.linedrop.circuit.Resistance;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Service;
import org.linedrop.circuit.Tank;
import org.linedrop.circuit.form.LimitText;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.result.DeviceRow;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;
import org.linedrop.solver.Outcome;
import org.linedrop.units.Dimension;

/** The rules of thumb of each service, held against solved cases. */
final class RulesOfThumb {
    private static final Source MEMORY = Source.of("common practice", Status.FROM_MEMORY);
    private static final Source OWN =
            Source.of("a rule of this program: more than half is worth a look", Status.GUESSED);
    private static final double INJECTED_LOSS_PA = 35_000;
    private static final double CARBURETTOR_LOSS_PA = 7_000;
    private static final double OIL_LOSS_PA = 70_000;
    private static final double MOST_OF_ONE_PART = 0.5;
    /** Less is not worth a change, whoever takes it. */
    private static final double LEAST_LOSS_PA = 2_000;
    /** From here on oil counts as hot. */
    private static final double HOT_OIL_K = 353.15;

    private final List<CaseCheck> cases;
    private final @Nullable Service service;
    private final Map<String, Advice> worst = new LinkedHashMap<>();

    RulesOfThumb(List<CaseCheck> cases) {
        this.cases = cases.stream()
                .filter(each -> each.result().outcome() == Outcome.CONVERGED)
                .toList();
        this.service = cases.isEmpty() ? null : cases.get(0).result().circuit().service();
    }

    List<Advice> list() {
        if (service == null || service == Service.BRAKE) {
            return List.of();
        }
        cases.forEach(this::loss);
        cases.forEach(this::pumps);
        cases.forEach(this::filters);
        cases.forEach(this::speeds);
        return List.copyOf(worst.values());
    }

    private boolean fuel() {
        return service == Service.INJECTED_FUEL || service == Service.CARBURETTOR_FUEL;
    }

    private boolean oil() {
        return service == Service.ENGINE_OIL || service == Service.GEARBOX_OIL;
    }

    private static boolean hot(CaseCheck check) {
        return check.result().circuit().surroundings().temperatureK().value() >= HOT_OIL_K;
    }

    /** Keeps the worst of a rule over its elements and cases. */
    private void add(Advice advice) {
        Advice before = worst.get(advice.words());
        if (Double.isFinite(advice.value()) && (before == null || advice.excess() > before.excess())) {
            worst.put(advice.words(), advice);
        }
    }

    /** What the way to the consumer loses, and whether one part takes most of it. */
    private void loss(CaseCheck check) {
        CaseCheck.Culprit culprit = check.culprit();
        if (culprit == null || check.decisive() == null || !(fuel() || oil())) {
            return;
        }
        if (check.verdict() == CaseVerdict.RETURN_LIMITED) {
            return; // what it names lies behind the consumer
        }
        if (fuel()) {
            double most = service == Service.INJECTED_FUEL ? INJECTED_LOSS_PA : CARBURETTOR_LOSS_PA;
            add(atMost(
                    "feed loss with height",
                    "",
                    check,
                    culprit.allLossPa(),
                    most,
                    Dimension.PRESSURE_DIFFERENCE,
                    MEMORY));
        } else if (hot(check)) {
            add(atMost(
                    "loss outside the engine, hot",
                    "",
                    check,
                    culprit.allLossPa(),
                    OIL_LOSS_PA,
                    Dimension.PRESSURE_DIFFERENCE,
                    MEMORY));
        }
        double all = 0;
        List<String> parts = new ArrayList<>();
        for (PartRow row : Way.to(check.result().usual(), check.decisive().limit())) {
            if (!row.kind().endsWith("pump")) {
                all += Math.max(0, row.frictionDropPa() + row.localDropPa());
                parts.add(row.part());
            }
        }
        if (all >= LEAST_LOSS_PA && parts.stream().distinct().count() > 1) {
            add(atMost(
                    "share of one part in the loss",
                    culprit.part(),
                    check,
                    culprit.lossPa() / all,
                    MOST_OF_ONE_PART,
                    Dimension.RATIO,
                    OWN));
        }
    }

    /** Suction and spare flow of pumps, where the circuit has no limit of its own on them. */
    private void pumps(CaseCheck check) {
        for (DeviceRow device : check.result().usual().devices()) {
            if (!device.kind().endsWith("pump")) {
                continue;
            }
            if (fuel()) {
                device(check, device, "inlet margin", "at least 20 kPa", "suction: margin of a pump over boiling");
                device(check, device, "spare flow", "at least 20 %", "spare flow of a pump");
            } else if (oil() && hot(check)) {
                device(check, device, "inlet vacuum", "at most 10 kPa", "suction: inlet vacuum of a pump, hot");
            }
        }
    }

    /** Fuel filters: little before a pump, more behind it. */
    private void filters(CaseCheck check) {
        Result result = check.result().usual();
        for (Run run : fuel() ? result.circuit().runs() : List.<Run>of()) {
            List<PartRow> rows = result.rows(run.id());
            int pump = pump(rows);
            for (int i = 0; i < rows.size(); i++) {
                DeviceRow filter = result.device(rows.get(i).part()).orElse(null);
                if (filter == null || !filter.kind().equals(Resistance.FILTER)) {
                    continue;
                }
                boolean before = i < pump;
                boolean carburettor = service == Service.CARBURETTOR_FUEL;
                device(
                        check,
                        filter,
                        "drop",
                        before || carburettor ? "at most 2 kPa" : "at most 10 kPa",
                        before ? "drop of a filter before a pump" : "drop of a filter");
            }
        }
    }

    /** Index of the last pump in a run, -1 where there is none. */
    private static int pump(List<PartRow> rows) {
        int pump = -1;
        for (int i = 0; i < rows.size(); i++) {
            pump = rows.get(i).kind().endsWith("pump") ? i : pump;
        }
        return pump;
    }

    private void device(CaseCheck check, DeviceRow device, String quantity, String bound, String words) {
        Circuit circuit = check.result().circuit();
        if (circuit.limits().stream()
                .anyMatch(limit ->
                        limit.subject().equals(device.id()) && limit.quantity().equals(quantity))) {
            return;
        }
        Dimension dimension = quantity.equals("spare flow") ? Dimension.RATIO : Dimension.PRESSURE_DIFFERENCE;
        LimitText text = LimitText.read(bound, dimension);
        double margin = check.result().usual().margin(new Limit(device.id(), quantity, text, "advice"));
        boolean least = text.kind() == LimitText.Kind.AT_LEAST;
        double limit = least ? text.low() : text.high();
        add(new Advice(
                words,
                device.id(),
                check.caseName(),
                least ? limit + margin : limit - margin,
                limit,
                least,
                dimension,
                MEMORY));
    }

    private static Advice atMost(
            String words,
            String element,
            CaseCheck check,
            double value,
            double most,
            Dimension dimension,
            Source source) {
        return new Advice(words, element, check.caseName(), value, most, false, dimension, source);
    }

    private void speeds(CaseCheck check) {
        Result result = check.result().usual();
        for (Run run : result.circuit().runs()) {
            List<PartRow> rows = result.rows(run.id());
            int pump = pump(rows);
            boolean home = result.circuit().point(run.to().element()).orElse(null) instanceof Tank;
            for (int i = 0; i < rows.size(); i++) {
                PartRow row = rows.get(i);
                String line = i < pump ? "suction" : home && pump < 0 ? "return" : "pressure";
                RuleOfThumb rule = speed(result.circuit(), line);
                boolean bore = row.kind().equals("hose") || row.kind().equals("tube");
                if (bore && rule != null && rule.high() != null) {
                    add(atMost(
                            "speed in a " + line + " line",
                            row.run() + " " + row.row(),
                            check,
                            Math.abs(row.velocityMPerS()),
                            rule.high(),
                            Dimension.SPEED,
                            rule.source()));
                }
            }
        }
    }

    /** The rule of the trade for a line of this service. */
    private @Nullable RuleOfThumb speed(Circuit circuit, String line) {
        String words;
        if (fuel()) {
            words = switch (line) {
                case "suction" -> "fuel suction side (pump inlet)";
                case "return" -> "fuel return";
                default -> "fuel pressure side";
            };
        } else if (service == Service.COOLANT) {
            words = "coolant hose";
        } else if (service == Service.ENGINE_OIL && !line.equals("return")) {
            words = line.equals("suction") ? "engine oil suction / dry-sump scavenge" : "engine oil pressure";
        } else {
            words = "hydraulic oil, " + line + " line (European maker)";
        }
        return circuit.catalogue().rules().stream()
                .filter(rule -> rule.rule().equals(words))
                .findFirst()
                .orElse(null);
    }
}
