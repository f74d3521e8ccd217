package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.EndSize;
import org.linedrop.catalogue.HoseSize;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/** Says which figures of the hoses in a circuit are the user's own. */
final class UserRows {
    /** How the locator of every such figure begins. */
    static final String LOCATOR = "user's catalogue";

    private UserRows() {}

    /** One notice for each size of the user's own that is used. */
    static List<Notice> notices(Catalogue catalogue, List<Run> runs) {
        List<Notice> notices = new ArrayList<>();
        List<String> told = new ArrayList<>();
        for (Run run : runs) {
            for (Part part : run.parts()) {
                if (part instanceof Hose hose
                        && !told.contains(hose.size().name())
                        && !catalogue.family(hose.size().family()).like().isEmpty()) {
                    told.add(hose.size().name());
                    notices.add(notice(catalogue.family(hose.size().family()).like(), hose));
                }
            }
        }
        return notices;
    }

    private static Notice notice(String like, Hose hose) {
        HoseSize size = hose.size();
        Map<String, @Nullable Figure> figures = new LinkedHashMap<>();
        figures.put("bore", size.boreM());
        figures.put("end bore", nipple(hose));
        figures.put("roughness", size.roughnessM());
        figures.put("outside diameter", size.outsideDiameterM());
        figures.put("bend radius", size.minBendRadiusM());
        figures.put("working pressure", size.workingPressurePa());
        figures.put("proof pressure", size.proofPressurePa());
        figures.put("burst pressure", size.burstPressurePa());
        figures.put("vacuum", size.vacuumPa());
        figures.put("lowest temperature", size.minTemperatureK());
        figures.put("highest temperature", size.maxTemperatureK());
        List<String> own = new ArrayList<>();
        Source source = Source.of(LOCATOR, Status.GIVEN);
        for (Map.Entry<String, @Nullable Figure> entry : figures.entrySet()) {
            Figure figure = entry.getValue();
            if (figure != null && figure.source().locator().startsWith(LOCATOR)) {
                source = own.isEmpty() ? figure.source() : source;
                own.add(entry.getKey() + " (" + figure.status().word() + ")");
            }
        }
        String yours = own.isEmpty() ? "no figure of its own" : String.join(", ", own) + " from " + source.title();
        return Notice.of("user-hose", size.name(), yours + "; the rest as " + like, source);
    }

    private static @Nullable Figure nipple(Hose hose) {
        EndSize end = hose.fromEnd() != null ? hose.fromEnd() : hose.toEnd();
        return end == null ? null : end.nippleBoreM();
    }
}
