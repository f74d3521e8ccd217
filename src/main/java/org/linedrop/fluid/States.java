package org.linedrop.fluid;

import java.util.ArrayList;
import java.util.List;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/** What all kinds of fluid share: the state and the notices of five properties. */
final class States {
    private static final Source OURS = Source.of("Linedrop fluid tables", Status.DERIVED);

    private States() {}

    static FluidState at(Fluid fluid, List<Property> p, double temperatureK, Band band) {
        String refusal = fluid.refusal(temperatureK);
        if (refusal != null) {
            throw new FluidRangeException(refusal);
        }
        FluidState state = new FluidState(
                temperatureK,
                p.get(0).at(temperatureK, band),
                p.get(1).at(temperatureK, band),
                p.get(2).at(temperatureK, band),
                p.get(3).at(temperatureK, band),
                p.get(4).at(temperatureK, band));
        double rho = state.densityKgPerM3();
        double mu = state.dynamicViscosityPaS();
        if (!(rho > 0 && mu > 0 && rho < Double.POSITIVE_INFINITY && mu < Double.POSITIVE_INFINITY)) {
            throw new FluidRangeException(fluid.name() + " at " + Text.celsius(temperatureK)
                    + ": density " + rho + " kg/m3 and viscosity " + mu
                    + " Pa s are not both positive; it is meant for "
                    + Text.celsius(fluid.lowestK()) + " to " + Text.celsius(fluid.highestK()));
        }
        return state;
    }

    static Grade grade(List<Property> p) {
        Grade grade = Grade.worse(p.get(0).grade(), p.get(1).grade());
        return p.get(2).known() ? Grade.worse(grade, p.get(2).grade()) : grade;
    }

    static List<Notice> notices(
            String name, List<Property> properties, Range range, List<String> remarks, double temperatureK) {
        List<Notice> notices = new ArrayList<>();
        for (Property p : properties) {
            rangeNotice(name, p, temperatureK, notices);
            gradeNotice(name, p, notices);
            if (!p.known()) {
                String text = p.kind().word() + " of " + name + " is not known: " + p.expectedError();
                notices.add(Notice.of("fluid-unknown-" + Names.id(p.kind().word()), name, text, p.source()));
            }
        }
        if (temperatureK < range.freezingK()) {
            notices.add(below(name, temperatureK, range.freezingK()));
        }
        boiling(name, range, temperatureK, notices);
        for (String remark : remarks) {
            notices.add(Notice.of("fluid-remark", name, remark, OURS));
        }
        return List.copyOf(notices);
    }

    private static void rangeNotice(String name, Property p, double temperatureK, List<Notice> notices) {
        boolean cold = temperatureK < p.lowK();
        if (!cold && !(temperatureK > p.highK())) {
            return;
        }
        double limit = cold ? p.lowK() : p.highK();
        String text = p.kind().word() + " of " + name + " is used at " + Text.celsius(temperatureK) + ", "
                + Text.number(Math.abs(temperatureK - limit)) + " K " + (cold ? "below" : "above") + " its range ("
                + Text.celsius(p.lowK()) + " to " + Text.celsius(p.highK()) + "): extrapolated";
        notices.add(new Notice(
                "fluid-range-" + Names.id(p.kind().word()), name, text, temperatureK, limit, "K", p.source()));
    }

    private static void gradeNotice(String name, Property p, List<Notice> notices) {
        if (!p.known() || p.grade() != Grade.C) {
            return;
        }
        String error = p.expectedError().isEmpty() ? "" : " (" + p.expectedError() + ")";
        notices.add(Notice.of(
                "fluid-grade-" + Names.id(p.kind().word()),
                name,
                p.kind().word() + " of " + name + " is from memory or estimated (grade C)" + error,
                p.source()));
    }

    private static Notice below(String name, double temperatureK, double freezingK) {
        String text = name + " freezes at " + Text.celsius(freezingK) + "; " + Text.celsius(temperatureK) + " is "
                + Text.number(freezingK - temperatureK) + " K below that";
        return new Notice("fluid-freezes", name, text, temperatureK, freezingK, "K", OURS);
    }

    private static void boiling(String name, Range range, double temperatureK, List<Notice> notices) {
        if (temperatureK > range.boilsDryFromK()) {
            notices.add(boilingNotice(name, "dry", temperatureK, range.boilsDryFromK()));
        } else if (temperatureK > range.boilsFromK()) {
            notices.add(boilingNotice(name, "wet", temperatureK, range.boilsFromK()));
        }
    }

    private static Notice boilingNotice(String name, String state, double temperatureK, double boilingK) {
        String text = name + " may boil: " + Text.celsius(temperatureK) + " is above the " + Text.celsius(boilingK)
                + " its class must reach when " + state;
        return new Notice("fluid-boils", name, text, temperatureK, boilingK, "K", OURS);
    }
}
