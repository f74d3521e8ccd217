package org.linedrop.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.report.KitSection;
import org.linedrop.report.PageReport;
import org.linedrop.report.Picture;
import org.linedrop.report.Pictures;
import org.linedrop.study.FeedCheck;
import org.linedrop.study.kit.Kit;
import org.linedrop.study.kit.OwnFigures;
import org.linedrop.units.Display;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code linedrop report}. */
@Command(
        name = "report",
        description = {
            "Writes a page to read on a screen and to print: the answer first, then the circuit as a diagram, where"
                    + " pressure goes, pump and line, cases, tables, assumptions and sources.",
            "One HTML file of its own: nothing is fetched and nothing runs. Takes all cases; pictures of one case show"
                    + " the worst."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop report feed.yaml --out feed.html",
            "  linedrop report feed.yaml --out feed.html --units us --case \"hot idle\"",
            "  linedrop report feed.yaml --svg pictures      The pictures alone, as SVG files in that directory.",
            "",
            "Exit codes: 0 all limits hold, 1 a limit is broken or unsure, 2 bad input, 3 not solved."
        },
        sortOptions = false)
final class ReportCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "FILE", description = "Circuit file, YAML or JSON.")
    @SuppressWarnings("NullAway.Init") // required
    private String file;

    @Option(
            names = "--case",
            paramLabel = "NAME",
            description = "Only this case; may be given several times. \"this case\" of the file counts as one.")
    private List<String> cases = new ArrayList<>();

    @Option(
            names = "--units",
            paramLabel = "metric|us",
            converter = FileOptions.Units.class,
            description = "Units: metric (mm, kPa, L/h) or us (in, psi, US gal/h). Default: metric.")
    private Display units = Display.METRIC;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Write the page to this file, whole or not at all, instead of showing it.")
    private @Nullable String out;

    @Option(
            names = "--svg",
            paramLabel = "DIR",
            description =
                    "Write each picture to a file of its own in this directory. Without --out there is no page then.")
    private @Nullable String svg;

    @Mixin
    @SuppressWarnings("UnusedVariable") // the parser acts on it
    private final HelpOption help = new HelpOption();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        FileOptions options = new FileOptions();
        options.file = file;
        options.out = out;
        options.cases = cases;
        return new FileJob(options, spec.commandLine()).answer(this::reported, Circuit::caseNames);
    }

    private FileJob.Answer reported(Circuit circuit, List<String> names) {
        Path directory = svg == null ? null : directory(svg);
        FeedCheck check = FeedCheck.of(circuit, names);
        if (directory != null) {
            draw(Pictures.of(check, units), directory);
        }
        boolean page = out != null || svg == null;
        return new FileJob.Answer(page ? page(circuit, check) : "", FileJob.code(check));
    }

    private String page(Circuit circuit, FeedCheck check) {
        return PageReport.html(check, units, KitSection.of(Kit.of(List.of(circuit), OwnFigures.NONE), units));
    }

    private Path directory(String name) {
        try {
            if (name.isBlank() || !Files.isDirectory(Path.of(name))) {
                throw FileOptions.bad(spec.commandLine(), "--svg \"" + name + "\" is no directory here. Make it first");
            }
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw FileOptions.bad(spec.commandLine(), "--svg \"" + name + "\" is no directory: " + e.getReason());
        }
    }

    private void draw(List<Picture> pictures, Path directory) {
        try {
            List<OutFile> files = new ArrayList<>(); // all are looked at before the first is written
            for (Picture picture : pictures) {
                files.add(OutFile.of(directory.resolve(picture.name() + ".svg").toString(), file));
            }
            for (int i = 0; i < files.size(); i++) {
                files.get(i).write(pictures.get(i).svg());
            }
        } catch (OutFile.Trouble trouble) {
            throw FileOptions.bad(spec.commandLine(), String.valueOf(trouble.getMessage()));
        } catch (IOException e) {
            throw FileOptions.bad(spec.commandLine(), "cannot write into " + directory + ": " + e.getMessage());
        }
    }
}
