package org.linedrop.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.ProblemsException;
import org.linedrop.report.KitReport;
import org.linedrop.report.PriceForm;
import org.linedrop.study.kit.Kit;
import org.linedrop.units.Display;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** {@code linedrop kit}. */
@Command(
        name = "kit",
        description = {
            "What to buy for one or several circuits of a vehicle, and how to make it up: hose by family and size, ends,"
                    + " adapters, seals, joints that can leak, volume held, mass and cost; for each hose its lengths,"
                    + " the angle between its bent ends, its bends. Nothing is solved: quantities only."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop kit fuel.yaml oil.yaml coolant.yaml",
            "  linedrop kit fuel.yaml --price-form --out mine.csv    then fill in what you know, and:",
            "  linedrop kit fuel.yaml --prices mine.csv",
            "  linedrop kit fuel.yaml --rows hoses --format csv      the cut list for the bench",
            "",
            "A filled-in list, here with one end's cut-off:",
            "  item,per,price EUR,mass kg,cut-off mm",
            "  race PTFE -6,m,17.50,0.110,",
            "  \"hose end 90 swept, race PTFE -6\",piece,14.20,0.045,31",
            "The angle between two bent ends needs places: heights, and on a run of one hose",
            "  via: [{ahead: 0.1 m, height: 0.3 m}, {ahead: 0.7 m, height: 0.3 m}]",
            "with the corner of each bent end.",
            "",
            "Exit codes: 0 listed, 2 bad input."
        },
        sortOptions = false)
final class KitCommand implements Callable<Integer> {
    @Parameters(
            arity = "1..*",
            paramLabel = "FILE",
            description = "Circuit files of one vehicle, YAML or JSON; their parts are added up.")
    private List<String> files = new ArrayList<>();

    @Option(
            names = "--case",
            paramLabel = "NAME",
            description = "Make up this case instead of the file as written, in each file that has it.")
    private List<String> cases = new ArrayList<>();

    @Mixin
    private final PriceOptions prices = new PriceOptions();

    @Option(
            names = "--rows",
            paramLabel = "parts|hoses|joints",
            converter = RowsOf.class,
            description = "What CSV has a line for. Default: parts, with totals below. Text and JSON have all.")
    private KitReport.Rows rows = KitReport.Rows.PARTS;

    @Option(
            names = "--units",
            paramLabel = "metric|us",
            converter = FileOptions.Units.class,
            description =
                    "Units of text and CSV: metric (m, mm, kg, L) or us (ft, in, lb, US gal). Default: metric. JSON"
                            + " is always SI.")
    private Display units = Display.METRIC;

    @Option(
            names = "--format",
            paramLabel = "text|json|csv",
            converter = FileOptions.Formats.class,
            description = "text to read, json for programs, csv for a spreadsheet. Default: text.")
    private FileOptions.Format format = FileOptions.Format.TEXT;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Write the kit to this file, whole or not at all, instead of showing it.")
    private @Nullable String out;

    @Mixin
    @SuppressWarnings("UnusedVariable") // the parser acts on it
    private final HelpOption help = new HelpOption();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the parser
    private CommandSpec spec;

    /** Reads the words of --rows. */
    static final class RowsOf implements ITypeConverter<KitReport.Rows> {
        @Override
        public KitReport.Rows convert(String value) {
            List<String> words = new ArrayList<>();
            for (KitReport.Rows each : KitReport.Rows.values()) {
                if (each.word().equals(value)) {
                    return each;
                }
                words.add(each.word());
            }
            throw new TypeConversionException("--rows \"" + value + "\" is none of " + String.join(", ", words) + "."
                    + Complaints.meant(value, words));
        }
    }

    @Override
    public Integer call() {
        if (rows != KitReport.Rows.PARTS && format != FileOptions.Format.CSV) {
            throw bad("--rows is for --format csv: text and json have all rows. Add --format csv");
        }
        if (prices.form && (prices.list != null || format != FileOptions.Format.TEXT)) {
            throw bad("--price-form writes an empty form, always as CSV. Leave --prices and --format out");
        }
        List<Circuit> circuits = new ArrayList<>();
        int code = read(circuits);
        if (code != 0) {
            return code;
        }
        try {
            Kit kit = Kit.of(circuits, prices.read(line()));
            give(text(kit));
            return 0;
        } catch (ProblemsException wrong) {
            return prices.complain(line(), wrong);
        }
    }

    private CommandLine line() {
        return spec.commandLine();
    }

    private CommandLine.ParameterException bad(String message) {
        return FileOptions.bad(line(), message);
    }

    /** All files are looked at, so that all that is wrong is said at once. */
    private int read(List<Circuit> circuits) {
        Set<String> known = new LinkedHashSet<>();
        Set<String> seen = new LinkedHashSet<>();
        int code = 0;
        for (String file : files) {
            if (!seen.add(file)) {
                throw bad(file + " is named twice. Name each circuit once");
            }
            FileOptions one = new FileOptions();
            one.file = file;
            one.out = out;
            int its = new FileJob(one, line())
                    .answer(
                            (circuit, names) -> {
                                known.addAll(circuit.caseNames());
                                circuits.add(asked(circuit, file));
                                return new FileJob.Answer("", 0);
                            },
                            circuit -> List.of(circuit.caseName()));
            code = Math.max(code, its);
        }
        for (String name : cases) {
            if (code == 0 && !known.contains(name)) {
                throw bad("no case \"" + name + "\" in " + String.join(", ", files) + "."
                        + Complaints.meant(name, List.copyOf(known)) + " Cases: " + String.join(", ", known));
            }
        }
        return code;
    }

    private Circuit asked(Circuit circuit, String file) {
        List<String> names =
                cases.stream().filter(circuit.caseNames()::contains).distinct().toList();
        if (names.size() > 1) {
            throw bad(file + " has the cases " + String.join(" and ", names) + ": a kit is of one. Write one of them");
        }
        return names.isEmpty() || names.get(0).equals(circuit.caseName()) ? circuit : circuit.in(names.get(0));
    }

    private String text(Kit kit) {
        if (prices.form) {
            return PriceForm.empty(kit.items(), units);
        }
        return switch (format) {
            case TEXT -> KitReport.text(kit, units);
            case JSON -> KitReport.json(kit);
            case CSV -> KitReport.csv(kit, rows, units);
        };
    }

    private void give(String text) {
        try {
            if (out == null) {
                line().getOut().print(text);
                line().getOut().flush();
            } else {
                if (out.equals(prices.list)) {
                    throw bad("--out " + out + " is the list of --prices itself. Name another file");
                }
                OutFile.of(out, null).write(text);
            }
        } catch (OutFile.Trouble trouble) {
            throw bad(String.valueOf(trouble.getMessage()));
        } catch (IOException e) {
            throw bad("cannot write " + out + ": " + e.getMessage());
        }
    }
}
