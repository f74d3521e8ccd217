package org.linedrop.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.linedrop.fact.Notice;
import org.linedrop.study.CaseCheck;

/** Warnings or assumptions of several cases: what is said of several parts is said once and names the parts. */
final class Notices {
    private Notices() {}

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(?:\\.\\d+)?");

    /** What is said, of which elements, in which cases. */
    private static final class Said {
        private final Set<String> elements = new LinkedHashSet<>();
        private final Set<String> cases = new LinkedHashSet<>();
        private final Set<String> texts = new LinkedHashSet<>();
        private Notice worst;

        Said(Notice first) {
            this.worst = first;
        }

        void add(Notice notice, String caseName) {
            elements.add(notice.element());
            cases.add(caseName);
            texts.add(notice.text());
            if (beyond(notice) > beyond(worst)) {
                worst = notice;
            }
        }

        /** How far a figure is beyond what it is compared with, to either side; of what is only near it, how near. */
        private static double beyond(Notice notice) {
            double ratio = Math.abs(Math.log(notice.value() / notice.limit()));
            return !Double.isFinite(ratio) ? 0 : notice.id().startsWith("near-") ? -ratio : ratio;
        }
    }

    /** The same kind of notice with the same words, whatever its figures. */
    private record Words(String id, String text) {
        static Words of(Notice notice) {
            boolean figures = Double.isFinite(notice.value());
            return new Words(
                    notice.id(), figures ? NUMBER.matcher(notice.text()).replaceAll("#") : notice.text());
        }
    }

    static List<String> lines(List<CaseCheck> cases, Function<CaseCheck, List<Notice>> which) {
        List<String> lines = new ArrayList<>();
        said(cases, which).forEach(text -> lines.addAll(Plain.wrap("- " + text, Plain.WIDTH, 2)));
        return lines;
    }

    /** Without those that the table of ratings says already. */
    static List<Notice> warnings(CaseCheck check) {
        List<String> said =
                Standing.judged(check.result().circuit()) ? List.of("rating-not-judged", "over-rating") : List.of();
        return check.result().usual().warnings().stream()
                .filter(notice -> !said.contains(notice.id()))
                .toList();
    }

    /** Each as one text. */
    static List<String> said(List<CaseCheck> cases, Function<CaseCheck, List<Notice>> which) {
        Map<Words, Said> found = new LinkedHashMap<>();
        for (CaseCheck each : cases) {
            for (Notice notice : which.apply(each)) {
                found.computeIfAbsent(Words.of(notice), words -> new Said(notice))
                        .add(notice, each.caseName());
            }
        }
        List<String> lines = new ArrayList<>();
        found.values()
                .forEach(said -> lines.add(line(
                        said.worst.text() + (said.texts.size() > 1 ? " (the worst of these)" : ""),
                        said,
                        cases.size())));
        return lines;
    }

    private static String line(String text, Said said, int cases) {
        List<String> elements =
                said.elements.stream().filter(element -> !element.isEmpty()).toList();
        boolean named = elements.size() == 1 && text.startsWith(elements.get(0));
        String of = elements.isEmpty() || named ? "" : String.join(", ", elements);
        String where = said.cases.size() == cases
                ? ""
                : (said.cases.size() == 1 ? "case " : "cases ") + String.join(", ", said.cases);
        String head = of.isEmpty() || where.isEmpty() ? of + where : of + " (" + where + ")";
        return (head.isEmpty() ? "" : head + ": ") + text;
    }
}
