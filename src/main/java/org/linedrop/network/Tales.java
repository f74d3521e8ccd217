package org.linedrop.network;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import org.linedrop.catalogue.EndSize;
import org.linedrop.circuit.Adapter;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Route;
import org.linedrop.circuit.StatedLaw;
import org.linedrop.circuit.Tube;
import org.linedrop.fact.Explanation.Given;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/** What parts and devices tell of themselves. */
final class Tales {
    private static final Source STATED = Source.of("stated in the circuit", Status.GIVEN);

    private static final Source RADIUS =
            Source.of("the circuit, or 3 times the outside diameter where it says none", Status.GIVEN);

    private Tales() {}

    static Story hose(Hose part, DoubleFunction<List<Term>> atBore) {
        List<Given> given = new ArrayList<>(List.of(
                new Given("hose bore", part.size().boreM(), "m"),
                new Given("length", part.lengthM(), "m"),
                new Given("roughness", part.size().roughnessM(), "m")));
        return Story.of(given, "hose bore", atBore);
    }

    static Story tube(Tube part, DoubleFunction<List<Term>> atBore) {
        List<Given> given = List.of(
                new Given("tube bore", part.size().boreM(), "m"),
                new Given("length", part.lengthM(), "m"),
                new Given("roughness", part.size().roughnessM(), "m"));
        return Story.of(given, "tube bore", atBore);
    }

    static Story bends(Tube part, Route bends, DoubleFunction<List<Term>> atBore) {
        List<Given> given = List.of(
                new Given("tube bore", part.size().boreM(), "m"),
                new Given("bend radius", Figure.exact(bends.radiusM(), RADIUS), "m"));
        return Story.of(given, "tube bore", atBore);
    }

    static Story end(
            EndSize end,
            Hose hose,
            boolean hoseFirst,
            DoubleFunction<List<Term>> atBore,
            Function<String, List<Term>> kind) {
        List<Given> given = new ArrayList<>();
        given.add(new Given("hose bore", hose.size().boreM(), "m"));
        given.add(new Given("nipple bore", end.nippleBoreM(), "m"));
        given.add(new Given("nipple length", end.nippleLengthM(), "m"));
        given.add(new Given("through bore", end.throughBoreM(), "m"));
        if (end.bendRatio() != null) {
            given.add(new Given("bend R/D", end.bendRatio(), ""));
        }
        if (end.lossCoefficient() != null) {
            given.add(new Given("K on it", end.lossCoefficient(), ""));
        }
        String in = "from hose to fitting";
        String out = "from fitting to hose";
        Story story = Story.of(given, "nipple bore", atBore).through(hoseFirst ? in : out, hoseFirst ? out : in);
        long degrees = Math.round(Math.toDegrees(end.angleRad()));
        return switch (end.kind()) {
            case "swept" -> story.or(forged(degrees), () -> kind.apply("forged"));
            case "forged" -> story.or(swept(degrees), () -> kind.apply("swept"));
            default -> story;
        };
    }

    private static String forged(long degrees) {
        return "a forged (machined, low-profile) " + degrees;
    }

    private static String swept(long degrees) {
        return "a swept (bent-tube) " + degrees;
    }

    static Story adapter(Adapter part, Supplier<List<Term>> other) {
        List<Given> given = List.of(
                new Given("first bore", part.size().fromBoreM(), "m"),
                new Given("second bore", part.size().toBoreM(), "m"));
        Story story = Story.of(given, "bore", null);
        double angle = part.size().angleRad();
        if (!(angle > 0)) {
            return story;
        }
        long degrees = Math.round(Math.toDegrees(angle));
        return story.or(part.size().forged() ? swept(degrees) : forged(degrees), other);
    }

    static Story stated(StatedLaw part) {
        List<Given> given = new ArrayList<>();
        if (part.boreM() != null) {
            given.add(new Given("bore", part.boreM(), "m"));
        }
        if (part.lengthM() != null) {
            given.add(new Given("length", part.lengthM(), "m"));
        }
        if (part.coefficient() != null) {
            given.add(new Given("coefficient", part.coefficient(), ""));
        }
        if (part.exponent() != null) {
            given.add(new Given("exponent", part.exponent(), ""));
        }
        return Story.of(given, "bore", null);
    }

    static Term law(StatedLaw part, Law law) {
        String equation = switch (part.law()) {
            case CONSTANT_F -> "f (L/d) rho v2/2";
            case LAMINAR -> "32 mu L v/d^2";
            case K -> "K rho v2/2";
            case POWER -> "rho g r Q^n";
            case PUMP_POLYNOMIAL -> "-rho g (c0 + c1 Q + c2 Q^2 ...)";
            case PUMP_POWER -> "-P/Q";
        };
        Formula formula = Accounts.stated(part.law().word() + " law", "dp = " + equation, STATED);
        return new Term(
                law, massFlow -> Accounts.whole("law", law, massFlow, "as stated", equation, List.of(), formula));
    }
}
