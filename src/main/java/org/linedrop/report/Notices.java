package org.linedrop.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.linedrop.fact.Notice;
import org.linedrop.study.CaseCheck;

/** Warnings or assumptions of several cases: what is said of several parts is said once and names the parts. */
final class Notices {
    private Notices() {}

    /** What is said, of which elements, in which cases. */
    private record Said(Set<String> elements, Set<String> cases) {}

    /** The same kind of notice with the same words. */
    private record Words(String id, String text) {}

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
                Said said = found.computeIfAbsent(
                        new Words(notice.id(), notice.text()),
                        words -> new Said(new LinkedHashSet<>(), new LinkedHashSet<>()));
                said.elements().add(notice.element());
                said.cases().add(each.caseName());
            }
        }
        List<String> lines = new ArrayList<>();
        found.forEach((words, said) -> lines.add(line(words.text(), said, cases.size())));
        return lines;
    }

    private static String line(String text, Said said, int cases) {
        List<String> elements =
                said.elements().stream().filter(element -> !element.isEmpty()).toList();
        boolean named = elements.size() == 1 && text.startsWith(elements.get(0));
        String of = elements.isEmpty() || named ? "" : String.join(", ", elements);
        String where = said.cases().size() == cases
                ? ""
                : (said.cases().size() == 1 ? "case " : "cases ") + String.join(", ", said.cases());
        String head = of.isEmpty() || where.isEmpty() ? of + where : of + " (" + where + ")";
        return (head.isEmpty() ? "" : head + ": ") + text;
    }
}
