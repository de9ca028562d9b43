package stillturning.report.joint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stillturning.likelihood.Inspection;
import stillturning.parts.Part;
import stillturning.runup.Card;
import stillturning.runup.Check;
import stillturning.runup.Latent;

/** What reveals each latent failure of a candidate. */
final class Hidden {

    private final Jointly found;
    private final EventNames names;

    Hidden(Jointly found) {
        this.found = found;
        this.names = new EventNames(found.joint().events());
    }

    /** Number of the first check of the card that reveals it, counted from 1. */
    Optional<Integer> check(int event) {
        Card card = found.card();
        if (card.unconfirmed().contains(event)) {
            return Optional.empty();
        }
        for (int i = 0; i < card.checks().size(); i++) {
            if (reveals(card.checks().get(i), event)) {
                return Optional.of(i + 1);
            }
        }
        return Optional.empty();
    }

    private static boolean reveals(Check check, int event) {
        return check.reveals().stream().anyMatch(revealed -> revealed.event() == event);
    }

    /** How to look for it otherwise. */
    String way(int event) {
        Part part = found.candidate().part(names.part(event)).orElseThrow();
        String mode = names.event(event).failure().hits().get(0).mode().name();
        return InspectionWays.of(part, mode);
    }

    /** How often to look for it; empty where nobody says. */
    Optional<Inspection> inspection(int event) {
        return found.likely().inspections().stream().filter(i -> i.event() == event).findFirst();
    }

    /** Its check, or its inspection, or nothing. */
    String revealedBy(int event) {
        return check(event)
                .map(number -> "check " + number)
                .orElseGet(
                        () ->
                                inspection(event)
                                        .map(i -> "no check; " + way(event) + ", " + i.words())
                                        .orElse("nothing"));
    }

    /** Latent failures that matter, those of one fate together. */
    Map<String, List<Latent>> thatMatter() {
        return found.card().thatMatter().stream()
                .collect(
                        Collectors.groupingBy(
                                latent -> latent.with() + revealedBy(latent.event()),
                                LinkedHashMap::new,
                                Collectors.toCollection(ArrayList::new)));
    }

    /** Those that no check reveals, by how and how often to look for them. */
    Map<String, List<Integer>> inspected() {
        Map<String, List<Integer>> all = new LinkedHashMap<>();
        for (Inspection inspection : found.likely().inspections()) {
            String how = way(inspection.event()) + ", " + inspection.words();
            all.computeIfAbsent(how, h -> new ArrayList<>()).add(inspection.event());
        }
        return all;
    }
}
