package org.linedrop.network;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.FloatValve;
import org.linedrop.circuit.GearPump;
import org.linedrop.circuit.OneWayValve;
import org.linedrop.circuit.Pump;
import org.linedrop.circuit.Rail;
import org.linedrop.circuit.Regulator;
import org.linedrop.circuit.Resistance;
import org.linedrop.circuit.form.RatedPoint;
import org.linedrop.circuit.form.Rise;
import org.linedrop.fact.Explanation.Given;
import org.linedrop.fact.Explanation.Quantity;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.hydraulics.RatedLoss;

/** What devices tell of themselves. */
final class DeviceTales {
    private static final Source GIVEN = Source.of("the circuit", Status.GIVEN);

    private DeviceTales() {}

    private static Story story(List<Given> given) {
        return Story.of(given, "bore", null);
    }

    private static void rated(List<Given> given, String name, @Nullable RatedPoint point) {
        if (point == null) {
            return;
        }
        given.add(new Given(name + " drop", point.drop(), "Pa"));
        given.add(new Given(name + " flow", point.flow(), "m3/s"));
        if (point.viscosity() != null) {
            given.add(new Given(name + " with", point.viscosity(), "m2/s"));
        }
    }

    static Story given(Resistance device) {
        List<Given> given = new ArrayList<>();
        rated(given, "rated", device.rated());
        rated(given, "second", device.second());
        if (device.second() == null) {
            given.add(new Given("exponent", device.exponent(), ""));
        }
        if (device.kind().equals(Resistance.FILTER)) {
            given.add(new Given("clogging", device.clog(), ""));
        }
        if (device.kind().equals(Resistance.TAP)) {
            given.add(new Given("open", device.open(), ""));
        }
        if (device.bypassPa() != null) {
            given.add(new Given("bypass opens", device.bypassPa(), "Pa"));
        }
        return story(given);
    }

    static Term resistance(Resistance device, Law law, Stream stream) {
        double density = stream.densityKgPerM3();
        Figure rated = device.rated().viscosity();
        boolean two = device.second() != null;
        Formula formula = two
                ? RatedLoss.TWO_POINTS
                : new Formula(
                        device.kind() + " power law",
                        rated == null
                                ? "dp = c dp_r (Q/Q_r)^n, c 1 when clean and open"
                                : "dp = c dp_r (Q/Q_r)^n (nu/nu_r)^(2 - n), c 1 when clean and open",
                        device.exponent().source(),
                        "between laminar (n 1) and turbulent (n 2)");
        List<Quantity> fixed = new ArrayList<>(List.of(
                new Quantity("c", "clogging and opening", device.factor(), ""),
                new Quantity("dp", "rated drop", device.rated().drop().value(), "Pa"),
                new Quantity("Qr", "rated flow", device.rated().flow().value(), "m3/s"),
                new Quantity("n", "exponent", device.exponent().value(), "")));
        if (rated != null) {
            fixed.add(new Quantity("nu", "viscosity", stream.dynamicViscosityPaS() / density, "m2/s"));
            fixed.add(new Quantity("nur", "viscosity it was rated with", rated.value(), "m2/s"));
        }
        String power = "{c} x {dp} x ({Q}/{Qr})^{n}" + (rated == null ? "" : " x ({nu}/{nur})^(2 - {n})");
        Law element = law instanceof Bypassed bypassed ? bypassed.element() : law;
        return new Term(law, massFlow -> {
            double[] out = new double[2];
            element.evaluate(massFlow, out);
            boolean open =
                    device.bypassPa() != null && out[0] > device.bypassPa().value();
            String step = open ? "bypass open" : two ? "through two points" : "power law";
            String equation = open
                    ? "the element alone would lose more than its bypass lets stand"
                    : two ? "a mu Q + b rho Q^2 through its two points" : power;
            List<Quantity> inputs = new ArrayList<>(open || two ? List.of() : fixed);
            inputs.add(new Quantity("Q", "flow", Math.abs(massFlow) / density, "m3/s"));
            return Accounts.whole(device.kind(), law, massFlow, step, equation, inputs, formula);
        });
    }

    static Story given(OneWayValve device) {
        List<Given> given = new ArrayList<>();
        given.add(new Given("opens", device.opensPa(), "Pa"));
        rated(given, device.kind().equals(OneWayValve.CHECK) ? "rated" : "wide open", device.rated());
        return story(given);
    }

    static Story given(Regulator device) {
        List<Given> given = new ArrayList<>();
        given.add(new Given("holds", device.holds().pressurePa(), "Pa"));
        Rise slope = device.slope();
        if (slope != null) {
            Source source = Source.of("the circuit", slope.status());
            given.add(new Given(device.bypass() ? "rise" : "droop", Figure.exact(slope.risePa(), source), "Pa"));
        }
        rated(given, "wide open", device.wideOpen());
        return story(given);
    }

    static Story given(GearPump device) {
        List<Given> given = new ArrayList<>();
        given.add(new Given("moves", device.movesM3(), "m3"));
        given.add(new Given("speed", Figure.exact(device.speedRevPerS(), GIVEN), "1/s"));
        rated(given, "leak", device.leaks());
        return story(given);
    }

    static Story given(Rail device) {
        return story(List.of(
                new Given("rail bore", device.boreM(), "m"),
                new Given("length", device.lengthM(), "m"),
                new Given("injectors", Figure.exact(device.taps(), GIVEN), "")));
    }

    static Story given(FloatValve device) {
        return story(List.of(
                new Given("seat", device.seatM(), "m"), new Given("discharge coefficient", device.discharge(), "")));
    }

    static Term gearPump(GearPump device, Law law, Stream stream) {
        Formula formula = new Formula(
                "swept volume less leak",
                "Q = V n - Q_l (dp/dp_l) (nu_l/nu)",
                new Source("laminar flow through clearances", "", Status.DERIVED),
                "while the clearances stay laminar");
        double density = stream.densityKgPerM3();
        return new Term(
                law,
                massFlow -> Accounts.whole(
                        "gear pump",
                        law,
                        massFlow,
                        "rise",
                        "at {Q}, of {Q0} swept",
                        List.of(
                                new Quantity("Q", "flow", massFlow / density, "m3/s"),
                                new Quantity("Q0", "swept", device.sweptM3PerS(), "m3/s")),
                        formula));
    }

    static Term rail(Rail device, Law law) {
        Formula formula = new Formula(
                "friction with spread draw",
                "sum over the stretches between injectors, each at its own flow",
                new Source("Darcy-Weisbach and Colebrook", "", Status.DERIVED),
                "losses of the ports themselves left out");
        return new Term(
                law,
                massFlow -> Accounts.whole(
                        "rail",
                        law,
                        massFlow,
                        "friction",
                        "over {n} injectors that take equal shares",
                        List.of(new Quantity("n", "injectors", device.taps(), "")),
                        formula));
    }

    static Term floatValve(FloatValve device, Law law) {
        Formula formula = new Formula(
                "hole with a discharge coefficient",
                "dp = rho/2 (Q/(Cd A))^2",
                new Source("ISO 5167 form, coefficient as given", "", Status.GIVEN),
                "needle wide open");
        return new Term(
                law,
                massFlow -> Accounts.whole(
                        "float valve",
                        law,
                        massFlow,
                        "seat",
                        "through {d} with Cd {C}",
                        List.of(
                                new Quantity("d", "seat", device.seatM().value(), "m"),
                                new Quantity(
                                        "C",
                                        "discharge coefficient",
                                        device.discharge().value(),
                                        "")),
                        formula));
    }

    static Term pump(Pump device, Law law, double densityKgPerM3) {
        Formula formula = new Formula(
                "pump table",
                device.straight() ? "rise between its rows: straight line" : "rise between its rows: monotone cubic",
                Source.of("the pump's table as given in the circuit", Status.GIVEN),
                "inside the table");
        return new Term(law, massFlow -> {
            double flow = massFlow / densityKgPerM3;
            List<Double> flows = device.table().flowM3PerS();
            List<Double> rises = device.table().risePa();
            int row = 1; // flow falls from row to row
            while (row < flows.size() - 1 && flows.get(row) > flow) {
                row++;
            }
            return Accounts.whole(
                    "pump",
                    law,
                    massFlow,
                    "rise",
                    "at {Q}, between {p1} at {Q1} and {p2} at {Q2}",
                    List.of(
                            new Quantity("Q", "flow", flow, "m3/s"),
                            new Quantity("p1", "rise of the row before", rises.get(row - 1), "Pa"),
                            new Quantity("Q1", "flow of the row before", flows.get(row - 1), "m3/s"),
                            new Quantity("p2", "rise of the row behind", rises.get(row), "Pa"),
                            new Quantity("Q2", "flow of the row behind", flows.get(row), "m3/s")),
                    formula);
        });
    }
}
